//! There is no room for even gaps. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "no-room-for-gaps",
    severity: Severity::Error,
    group: "reading",
    summary: "there is no room for even gaps",
    page: include_str!("no_room_for_gaps.md"),
    check: None,
};
