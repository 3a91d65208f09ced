//! The two halves of a pair are far apart.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "twins-far-apart",
    severity: Severity::Warning,
    group: "reading",
    summary: "the two halves of a pair are far apart",
    page: include_str!("twins_far_apart.md"),
    check: None,
};
