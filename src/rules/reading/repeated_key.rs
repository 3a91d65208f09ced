//! A key stands twice in one place. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "repeated-key",
    severity: Severity::Error,
    group: "reading",
    summary: "a key stands twice in one place",
    page: include_str!("repeated_key.md"),
    check: None,
};
