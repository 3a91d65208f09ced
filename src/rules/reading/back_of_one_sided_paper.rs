//! A piece or version shows the back of paper that has one side. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "back-of-one-sided-paper",
    severity: Severity::Error,
    group: "reading",
    summary: "a piece or version shows the back of paper that has one side",
    page: include_str!("back_of_one_sided_paper.md"),
    check: None,
};
