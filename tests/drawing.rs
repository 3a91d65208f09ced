//! Drawing tests.
