//! A layer is not placed in one direction. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "not-placed",
    severity: Severity::Error,
    group: "reading",
    summary: "a layer is not placed in one direction",
    page: include_str!("not_placed.md"),
    check: None,
};
