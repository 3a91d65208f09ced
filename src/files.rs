//! Files.
