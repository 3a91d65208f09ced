//! A design allows a rule that there is not.

use super::spelt;
use crate::design::model::Allowance;
use crate::diagnostic::{Finding, Severity};
use crate::rules::{REGISTRY, Rule};

/// The rule.
pub static RULE: Rule = Rule {
    code: "unknown-rule",
    severity: Severity::Error,
    group: "allowing",
    summary: "a design allows a rule that there is not",
    page: include_str!("unknown_rule.md"),
    check: None,
};

pub(super) fn find(allowance: &Allowance) -> Finding {
    let typed: String = allowance.rule.value.chars().take(60).collect();
    let help = match nearest(&spelt(&allowance.rule.value)) {
        Some(code) => format!("write `{code}`, the nearest of {} rules", REGISTRY.len()),
        None => format!("name 1 of the {} rules that `trimwright explain` lists", REGISTRY.len()),
    };
    Finding::error(RULE.code, allowance.rule.span, format!("there is no rule `{typed}`"), "no rule has this name")
        .plainly(format!("the design allows \"{typed}\", and no rule is called that"))
        .help(help)
}

/// The rule that was most likely meant.
#[must_use]
pub fn nearest(wanted: &str) -> Option<&'static str> {
    REGISTRY
        .iter()
        .map(|rule| (strsim::jaro_winkler(rule.code, wanted), rule.code))
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .filter(|(likeness, _)| *likeness > 0.7)
        .map(|(_, code)| code)
}
