//! A month is none of the calendar. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "bad-month",
    severity: Severity::Error,
    group: "reading",
    summary: "a month is none of the calendar",
    page: include_str!("bad_month.md"),
    check: None,
};
