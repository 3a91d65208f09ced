//! Printed cells do not fit on their sheet. Raised while a design is read.

use crate::diagnostic::Severity;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "cells-off-the-sheet",
    severity: Severity::Error,
    group: "reading",
    summary: "printed cells do not fit on their sheet",
    page: include_str!("cells_off_the_sheet.md"),
    check: None,
};
