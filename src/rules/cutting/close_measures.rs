//! Two measures of one sheet are one mark apart and easily mixed up.

use super::rows::written;
use crate::cutting::plan::SheetPlan;
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::tell::length;
use crate::rules::{Rule, hand};

/// The rule.
pub static RULE: Rule = Rule {
    code: "close-measures",
    severity: Severity::Note,
    group: "cutting",
    summary: "two measures of one sheet are one mark apart and easily mixed up",
    page: include_str!("close_measures.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let mut findings: Vec<Finding> = Vec::new();
    for sheet in &project.plan.sheets {
        let finding = closest(project, sheet).map(|(one, other)| tell(project, sheet, one, other));
        findings.extend(finding.filter(|finding| !findings.contains(finding)).into_iter().collect::<Vec<_>>());
    }
    findings
}

/// The two smallest measures of a sheet that are no further apart than one mark of a ruler.
fn closest(project: &Project, sheet: &SheetPlan) -> Option<(i64, i64)> {
    let mark = hand::mark(project.units()).nm();
    let mut measures: Vec<i64> = sheet.cuts.iter().map(|row| row.measure.nm()).collect();
    measures.sort_unstable();
    measures.dedup();
    measures.windows(2).map(|pair| (pair[0], pair[1])).find(|(one, other)| other - one <= mark)
}

fn tell(project: &Project, sheet: &SheetPlan, one: i64, other: i64) -> Finding {
    let paper = &project.design.paper(sheet.paper).name;
    let (apart, one, other) = (length(project, other - one), length(project, one), length(project, other));
    let fact = format!("{one} and {other}, {apart} apart");
    Finding::note(
        RULE.code,
        written(project, sheet),
        format!("two measures of {paper} are easily mixed up"),
        fact.clone(),
    )
    .plainly(format!("{paper} is cut at {fact}, and a reader may take the one for the other"))
    .help(format!("make both {one} if the card allows it"))
}
