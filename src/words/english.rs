//! The English catalogue.

pub mod figures;
