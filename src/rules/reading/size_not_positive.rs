//! A size comes out as nothing or less. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "size-not-positive",
    severity: Severity::Error,
    group: "reading",
    summary: "a size comes out as nothing or less",
    page: include_str!("size_not_positive.md"),
    check: None,
};
