//! An idea is about what a paper leaves, and it leaves nothing to use.

use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "idea-without-leftover",
    severity: Severity::Warning,
    group: "text",
    summary: "an idea is about what a paper leaves, and it leaves nothing to use",
    page: include_str!("idea_without_leftover.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    if !project.plan.missing.is_empty() {
        // Too few sheets have a rule of their own.
        return Vec::new();
    }
    let leftovers = project.plan.leftovers();
    let mut findings = Vec::new();
    for idea in &design.leftovers {
        let Some(paper) = idea.paper else { continue };
        if leftovers.iter().any(|left| left.number > 0 && project.plan.sheets[left.sheet].paper == paper) {
            continue;
        }
        let name = &design.paper(paper).name;
        findings.push(
            Finding::warning(
                RULE.code,
                idea.text.span,
                format!("an idea is for what is left of {name}, and nothing is left"),
                "0 leftovers that are more than scrap",
            )
            .plainly(format!("there is an idea for what is left of {name}, and its sheets are used up"))
            .help("take it `from` another paper, or delete this 1 idea"),
        );
    }
    findings
}
