//! A drawing that is not one closed outline. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "not-one-outline",
    severity: Severity::Error,
    group: "reading",
    summary: "a drawing that is not one closed outline",
    page: include_str!("not_one_outline.md"),
    check: None,
};
