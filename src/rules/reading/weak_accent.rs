//! An accent too pale for white paper. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "weak-accent",
    severity: Severity::Error,
    group: "reading",
    summary: "an accent is too pale to be read on white paper",
    page: include_str!("weak_accent.md"),
    check: None,
};
