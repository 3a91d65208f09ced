//! A piece comes from a window that is not there. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "no-such-window",
    severity: Severity::Error,
    group: "reading",
    summary: "a piece comes from a window that is not there",
    page: include_str!("no_such_window.md"),
    check: None,
};
