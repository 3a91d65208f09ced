//! Flow tests.
