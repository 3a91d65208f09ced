//! The English catalogue.
