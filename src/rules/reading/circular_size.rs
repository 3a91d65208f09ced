//! Sizes refer to each other in a circle. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "circular-size",
    severity: Severity::Error,
    group: "reading",
    summary: "sizes refer to each other in a circle",
    page: include_str!("circular_size.md"),
    check: None,
};
