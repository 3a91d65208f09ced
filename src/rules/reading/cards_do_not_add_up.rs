//! The cards of the versions do not add up. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "cards-do-not-add-up",
    severity: Severity::Error,
    group: "reading",
    summary: "the cards of the versions do not add up",
    page: include_str!("cards_do_not_add_up.md"),
    check: None,
};
