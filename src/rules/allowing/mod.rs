//! What a design says that it allows: the rules by name, each with a reason.
//!
//! Takes the findings of all editions, marks those that are allowed, and finds what is wrong with the list itself.
//! An error is never allowed: a handout that spoils paper is not published for any reason.

pub mod allowed_error;
pub mod allowed_for_nothing;
pub mod unknown_rule;

use crate::design::model::Allowance;
use crate::diagnostic::{Finding, Severity};
use crate::rules::{REGISTRY, Rule};

/// The rule that a design names; blanks and capitals are forgiven, as in `explain`.
fn named(allowance: &Allowance) -> Option<&'static Rule> {
    let wanted = spelt(&allowance.rule.value);
    REGISTRY.iter().copied().find(|rule| rule.code == wanted)
}

/// A rule's name as it may be typed or copied out of a report.
#[must_use]
pub fn spelt(typed: &str) -> String {
    typed.trim().trim_matches(['[', ']']).to_lowercase().replace([' ', '_'], "-")
}

/// Marks what is allowed; everything else stays as it is.
#[must_use]
pub fn mark(allow: &[Allowance], findings: Vec<Finding>) -> Vec<Finding> {
    let reason = |finding: &Finding| {
        let free = finding.severity != Severity::Error;
        allow
            .iter()
            .filter(|_| free)
            .find(|it| spelt(&it.rule.value) == finding.code)
            .map(|it| it.because.value.clone())
    };
    findings.into_iter().map(|finding| Finding { allowed: reason(&finding), ..finding }).collect()
}

/// Marks what is allowed, and adds what is wrong with the list.
#[must_use]
pub fn judge(allow: &[Allowance], findings: Vec<Finding>) -> Vec<Finding> {
    let mut findings = mark(allow, findings);
    let wrong: Vec<Finding> = allow
        .iter()
        .filter_map(|it| match named(it) {
            None => Some(unknown_rule::find(it)),
            Some(rule) => allowed_error::find(it, rule, &findings).or_else(|| {
                // What later stages would have found is not known where an edition is missing.
                let found = findings.iter().any(|finding| finding.code == rule.code);
                (!found).then(|| allowed_for_nothing::find(it, rule)).flatten()
            }),
        })
        .collect();
    findings.extend(wrong);
    findings
}
