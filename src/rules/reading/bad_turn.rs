//! A turn is not a number of degrees to a side. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "bad-turn",
    severity: Severity::Error,
    group: "reading",
    summary: "a turn is not a number of degrees to a side",
    page: include_str!("bad_turn.md"),
    check: None,
};
