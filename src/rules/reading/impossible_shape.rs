//! A shape that cannot be cut from its rectangle. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "impossible-shape",
    severity: Severity::Error,
    group: "reading",
    summary: "a shape that cannot be cut from its rectangle",
    page: include_str!("impossible_shape.md"),
    check: None,
};
