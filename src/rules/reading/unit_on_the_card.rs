//! What is put together first lies on the card. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "unit-on-the-card",
    severity: Severity::Error,
    group: "reading",
    summary: "what is put together first lies on the card",
    page: include_str!("unit_on_the_card.md"),
    check: None,
};
