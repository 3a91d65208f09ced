//! A layer has two placing frames. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "framed-twice",
    severity: Severity::Error,
    group: "reading",
    summary: "a layer stands twice among the placing frames",
    page: include_str!("framed_twice.md"),
    check: None,
};
