//! Handout tests.
