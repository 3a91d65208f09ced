//! A length has no twin in the other units. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "missing-twin",
    severity: Severity::Error,
    group: "reading",
    summary: "a length has no twin in the other units",
    page: include_str!("missing_twin.md"),
    check: None,
};
