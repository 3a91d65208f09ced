//! A layer is placed twice in one direction. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "placed-twice",
    severity: Severity::Error,
    group: "reading",
    summary: "a layer is placed twice in one direction",
    page: include_str!("placed_twice.md"),
    check: None,
};
