//! Two things bear one name. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "name-used-twice",
    severity: Severity::Error,
    group: "reading",
    summary: "two things bear one name",
    page: include_str!("name_used_twice.md"),
    check: None,
};
