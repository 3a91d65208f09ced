//! A design allows what must not be printed.

use crate::design::model::Allowance;
use crate::diagnostic::{Finding, Severity};
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "allowed-error",
    severity: Severity::Error,
    group: "allowing",
    summary: "a design allows what must not be printed",
    page: include_str!("allowed_error.md"),
    check: None,
};

/// Something where the allowed rule found errors; they stand in spite of it.
pub(super) fn find(allowance: &Allowance, rule: &Rule, findings: &[Finding]) -> Option<Finding> {
    let errors = findings.iter().filter(|it| it.code == rule.code && it.severity == Severity::Error);
    let mut errors = errors.peekable();
    let first = errors.peek()?.primary.span;
    let count = errors.count();
    let these = if count == 1 { "1 error".to_owned() } else { format!("{count} errors") };
    Some(
        Finding::error(
            RULE.code,
            allowance.rule.span,
            format!("`{}` is an error and cannot be allowed", rule.code),
            format!("{these} in spite of this line"),
        )
        .also(first, "found here")
        .plainly(format!("the rule {} found {these}, and an error cannot be allowed", rule.code))
        .help(format!("mend the {these} and delete this line")),
    )
}
