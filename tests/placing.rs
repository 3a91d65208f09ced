//! Placing tests.
