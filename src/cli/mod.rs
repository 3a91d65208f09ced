//! Cli.
