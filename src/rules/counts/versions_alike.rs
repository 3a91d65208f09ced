//! Two versions take the same papers.

use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "versions-alike",
    severity: Severity::Warning,
    group: "counts",
    summary: "two versions take the same papers",
    page: include_str!("versions_alike.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let versions = &project.design.versions;
    let mut findings = Vec::new();
    for (n, version) in versions.iter().enumerate() {
        let mut papers = version.papers.clone();
        papers.sort_unstable();
        let twin = versions[..n].iter().find(|other| {
            let mut others = other.papers.clone();
            others.sort_unstable();
            others == papers && other.side == version.side
        });
        let Some(twin) = twin else { continue };
        findings.push(
            Finding::warning(
                RULE.code,
                version.span,
                format!("the versions {} and {} take the same papers", twin.name, version.name),
                "no piece differs",
            )
            .also(twin.span, "the same papers")
            .plainly(format!("the versions {} and {} come out alike", twin.name, version.name))
            .help(format!(
                "give {} another paper, or make one version of {} cards",
                version.name,
                twin.cards.saturating_add(version.cards)
            )),
        );
    }
    findings
}
