//! A layer is measured from one on another side of the card. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "on-another-side",
    severity: Severity::Error,
    group: "reading",
    summary: "a layer is measured from one on another side of the card",
    page: include_str!("on_another_side.md"),
    check: None,
};
