//! Handout.
