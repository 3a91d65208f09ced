//! A text means something else to YAML than to a reader. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "yaml-surprise",
    severity: Severity::Error,
    group: "reading",
    summary: "a text means something else to YAML than to a reader",
    page: include_str!("yaml_surprise.md"),
    check: None,
};
