//! Cutting tests.
