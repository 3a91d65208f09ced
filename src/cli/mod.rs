//! Cli.

pub mod explain;
pub mod report;
