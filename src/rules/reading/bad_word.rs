//! A word is none of those that may stand there. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "bad-word",
    severity: Severity::Error,
    group: "reading",
    summary: "a word is none of those that may stand there",
    page: include_str!("bad_word.md"),
    check: None,
};
