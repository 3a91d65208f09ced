//! Two versions take the same papers.

use crate::design::model::{Design, PaperId, PieceId, Side, VersionId};
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
    let design = &project.design;
    let mut findings = Vec::new();
    let taken: Vec<_> = design.version_ids().map(|id| taken(design, id)).collect();
    for (n, version) in design.versions.iter().enumerate() {
        let Some(twin) = taken[..n].iter().position(|earlier| *earlier == taken[n]) else { continue };
        let twin = &design.versions[twin];
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

/// The papers of what varies in a version, each with the side that shows.
fn taken(design: &Design, id: VersionId) -> Vec<(PieceId, PaperId, Side)> {
    let papers = design.version(id).papers.iter();
    let mut taken: Vec<_> = papers.map(|(piece, paper)| (*piece, *paper, design.side_of(*piece, id))).collect();
    taken.sort_unstable();
    taken
}
