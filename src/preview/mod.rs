//! Preview.
