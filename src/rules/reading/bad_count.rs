//! A text is no whole number that may stand there. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "bad-count",
    severity: Severity::Error,
    group: "reading",
    summary: "a text is no whole number that may stand there",
    page: include_str!("bad_count.md"),
    check: None,
};
