//! A length says no unit. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "missing-unit",
    severity: Severity::Error,
    group: "reading",
    summary: "a length says no unit",
    page: include_str!("missing_unit.md"),
    check: None,
};
