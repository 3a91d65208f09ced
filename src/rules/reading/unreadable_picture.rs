//! A picture that cannot be printed, or is none. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "unreadable-picture",
    severity: Severity::Error,
    group: "reading",
    summary: "a logo or photo that cannot be printed, or is none",
    page: include_str!("unreadable_picture.md"),
    check: None,
};
