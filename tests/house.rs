//! House tests.
