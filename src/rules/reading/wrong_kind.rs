//! A list or a group of keys stands where a text belongs, or the reverse. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "wrong-kind",
    severity: Severity::Error,
    group: "reading",
    summary: "a list or a group of keys stands where a text belongs, or the reverse",
    page: include_str!("wrong_kind.md"),
    check: None,
};
