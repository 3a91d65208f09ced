//! A text cannot be read as the weight of a paper. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "bad-weight",
    severity: Severity::Error,
    group: "reading",
    summary: "a text cannot be read as the weight of a paper",
    page: include_str!("bad_weight.md"),
    check: None,
};
