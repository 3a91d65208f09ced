//! A flat card has no inside. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "no-inside",
    severity: Severity::Error,
    group: "reading",
    summary: "a flat card has no inside",
    page: include_str!("no_inside.md"),
    check: None,
};
