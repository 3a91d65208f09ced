//! A piece is larger than the window that it comes from. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "larger-than-its-window",
    severity: Severity::Error,
    group: "reading",
    summary: "a piece is larger than the window that it comes from",
    page: include_str!("larger_than_its_window.md"),
    check: None,
};
