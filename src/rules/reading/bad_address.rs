//! A text that is not a web address. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "bad-address",
    severity: Severity::Error,
    group: "reading",
    summary: "a text is no address of a web page",
    page: include_str!("bad_address.md"),
    check: None,
};
