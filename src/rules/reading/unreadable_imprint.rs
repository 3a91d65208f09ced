//! An imprint that cannot be read. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "unreadable-imprint",
    severity: Severity::Error,
    group: "reading",
    summary: "an imprint that cannot be read",
    page: include_str!("unreadable_imprint.md"),
    check: None,
};
