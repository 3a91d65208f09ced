//! The file cannot be read as YAML. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "not-yaml",
    severity: Severity::Error,
    group: "reading",
    summary: "the file cannot be read as YAML",
    page: include_str!("not_yaml.md"),
    check: None,
};
