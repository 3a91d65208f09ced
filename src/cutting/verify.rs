//! Verify.
