//! A window that cannot be cut out of its piece. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "impossible-window",
    severity: Severity::Error,
    group: "reading",
    summary: "a window that cannot be cut out of its piece",
    page: include_str!("impossible_window.md"),
    check: None,
};
