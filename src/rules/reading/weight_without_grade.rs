//! A weight in pounds does not say of which grade. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "weight-without-grade",
    severity: Severity::Error,
    group: "reading",
    summary: "a weight in pounds does not say of which grade",
    page: include_str!("weight_without_grade.md"),
    check: None,
};
