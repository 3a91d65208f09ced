//! The order of stages.
