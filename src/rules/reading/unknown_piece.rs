//! A piece is named that is not listed. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "unknown-piece",
    severity: Severity::Error,
    group: "reading",
    summary: "a piece is named that is not listed",
    page: include_str!("unknown_piece.md"),
    check: None,
};
