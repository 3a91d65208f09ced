//! Edition.
