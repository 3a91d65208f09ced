//! Reading tests.
