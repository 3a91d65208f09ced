//! A key that a design cannot do without is missing. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "missing-key",
    severity: Severity::Error,
    group: "reading",
    summary: "a key that a design cannot do without is missing",
    page: include_str!("missing_key.md"),
    check: None,
};
