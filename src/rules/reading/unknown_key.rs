//! A key that no design has. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "unknown-key",
    severity: Severity::Error,
    group: "reading",
    summary: "a key that no design has",
    page: include_str!("unknown_key.md"),
    check: None,
};
