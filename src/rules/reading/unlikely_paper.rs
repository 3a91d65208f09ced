//! A paper is lighter, heavier, thinner or thicker than paper is. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "unlikely-paper",
    severity: Severity::Error,
    group: "reading",
    summary: "a paper is lighter, heavier, thinner or thicker than paper is",
    page: include_str!("unlikely_paper.md"),
    check: None,
};
