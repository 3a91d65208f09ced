//! Reports tests.
