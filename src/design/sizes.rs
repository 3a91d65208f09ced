//! Named sizes.
