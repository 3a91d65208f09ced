//! A text cannot be read as a size or as sheets. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "bad-size",
    severity: Severity::Error,
    group: "reading",
    summary: "a text cannot be read as a size or as sheets",
    page: include_str!("bad_size.md"),
    check: None,
};
