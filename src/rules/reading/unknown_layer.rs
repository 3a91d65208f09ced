//! A layer is named that does not lie there yet. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "unknown-layer",
    severity: Severity::Error,
    group: "reading",
    summary: "a layer is named that does not lie there yet",
    page: include_str!("unknown_layer.md"),
    check: None,
};
