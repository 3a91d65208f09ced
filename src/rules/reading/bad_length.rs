//! A text cannot be read as a length. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "bad-length",
    severity: Severity::Error,
    group: "reading",
    summary: "a text cannot be read as a length",
    page: include_str!("bad_length.md"),
    check: None,
};
