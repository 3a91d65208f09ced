//! A placing frame is to lie on what is not below its layer. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "not-below",
    severity: Severity::Error,
    group: "reading",
    summary: "a placing frame is to lie on what is not below its layer",
    page: include_str!("not_below.md"),
    check: None,
};
