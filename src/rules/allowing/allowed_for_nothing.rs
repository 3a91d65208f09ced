//! A design allows what it does not do.

use crate::design::model::Allowance;
use crate::diagnostic::{Finding, Severity};
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "allowed-for-nothing",
    severity: Severity::Warning,
    group: "allowing",
    summary: "a design allows what it does not do",
    page: include_str!("allowed_for_nothing.md"),
    check: None,
};

/// Something for a rule that found nothing; a rule of this group is found too late to be judged.
pub(super) fn find(allowance: &Allowance, rule: &Rule) -> Option<Finding> {
    if rule.group == RULE.group {
        return None;
    }
    Some(
        Finding::warning(
            RULE.code,
            allowance.rule.span,
            format!("`{}` is allowed, and nothing breaks that rule", rule.code),
            "found 0 times",
        )
        .plainly(format!("the design allows {}, and nothing needs that", rule.code))
        .help("delete this 1 line, so that the rule speaks again when it is needed"),
    )
}
