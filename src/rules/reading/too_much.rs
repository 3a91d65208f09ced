//! A file is larger or deeper than a design can be. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "too-much",
    severity: Severity::Error,
    group: "reading",
    summary: "a file is larger or deeper than a design can be",
    page: include_str!("too_much.md"),
    check: None,
};
