//! A layer is measured from one that is turned otherwise. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "measured-across-a-turn",
    severity: Severity::Error,
    group: "reading",
    summary: "a layer is measured from one that is turned otherwise",
    page: include_str!("measured_across_a_turn.md"),
    check: None,
};
