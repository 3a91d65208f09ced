//! A text that is not a colour. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "bad-colour",
    severity: Severity::Error,
    group: "reading",
    summary: "a text is no colour",
    page: include_str!("bad_colour.md"),
    check: None,
};
