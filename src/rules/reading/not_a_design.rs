//! The file holds no list of keys. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "not-a-design",
    severity: Severity::Error,
    group: "reading",
    summary: "the file holds no list of keys",
    page: include_str!("not_a_design.md"),
    check: None,
};
