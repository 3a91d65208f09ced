//! Json.
