//! A pad of different sheets that are cut alike has sheets of several sizes.

use crate::design::model::{Paper, Sheets};
use crate::diagnostic::{Finding, Severity};
use crate::length::Size;
use crate::project::Project;
use crate::rules::Rule;
use crate::source::Span;

/// The rule.
pub static RULE: Rule = Rule {
    code: "pad-of-several-sizes",
    severity: Severity::Error,
    group: "papers",
    summary: "a pad of different sheets that are cut alike has sheets of several sizes",
    page: include_str!("pad_of_several_sizes.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let mut findings = Vec::new();
    for paper in project.design.papers.iter().filter(|paper| paper.kept_from.is_none()) {
        let Some(different) = paper.different else { continue };
        let pads = std::iter::once(&paper.sheets).chain(paper.also.iter().map(|also| &also.sheets));
        findings.extend(pads.filter_map(|sheets| tell(project, &paper.name, different, sheets)));
    }
    findings
}

/// Whether the sheets of a pad are of several sizes.
pub(crate) fn is_mixed(paper: &Paper) -> bool {
    paper.different.is_some() && paper.sheets.iter().any(|kind| kind.size != paper.sheets[0].size)
}

fn tell(project: &Project, paper: &str, different: Span, sheets: &[Sheets]) -> Option<Finding> {
    let first = sheets.first()?;
    let odd = sheets.iter().find(|kind| kind.size != first.size)?;
    let mut sizes: Vec<Size> = Vec::new();
    for kind in sheets {
        if !sizes.contains(&kind.size) {
            sizes.push(kind.size);
        }
    }
    let (one, other) = (first.size.in_units(project.units()), odd.size.in_units(project.units()));
    let finding = Finding::error(
        RULE.code,
        odd.span,
        format!("the different sheets of {paper} are not of 1 size"),
        format!("{other} here, {} sizes in all", sizes.len()),
    )
    .also(first.span, format!("{one} here"))
    .also(different, "so all of them are cut alike")
    .plainly(format!(
        "the sheets of {paper} differ and are all cut alike, which sheets of {} sizes cannot be",
        sizes.len()
    ))
    .help("make 1 paper of each size, or take `sheets are: different` out");
    Some(finding)
}
