//! A drawing that cannot be read, or is none. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "unreadable-drawing",
    severity: Severity::Error,
    group: "reading",
    summary: "a drawing that cannot be read, or is none",
    page: include_str!("unreadable_drawing.md"),
    check: None,
};
