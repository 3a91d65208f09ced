//! A cut is longer than the trimmer.

use super::rows::{Cut, written};
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::length;

/// The rule.
pub static RULE: Rule = Rule {
    code: "longer-than-the-trimmer",
    severity: Severity::Warning,
    group: "cutting",
    summary: "a cut is longer than the trimmer",
    page: include_str!("longer_than_the_trimmer.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let workshop = &project.design.workshop;
    let mut findings: Vec<Finding> = Vec::new();
    for sheet in &project.plan.sheets {
        // The longest is the first: a part is never longer than what it was cut from.
        let Some(cut) = Cut::all(sheet).max_by_key(Cut::long).filter(|cut| cut.long() > workshop.trimmer.nm()) else {
            continue;
        };
        let finding = tell(project, &cut);
        if !findings.contains(&finding) {
            findings.push(finding);
        }
    }
    findings
}

/// A trimmer that nobody spoke of is only taken to be the usual one.
fn tell(project: &Project, cut: &Cut<'_>) -> Finding {
    let workshop = &project.design.workshop;
    let paper = &project.design.paper(cut.sheet.paper).name;
    let (long, trimmer) = (length(project, cut.long()), length(project, workshop.trimmer.nm()));
    let span = written(project, cut.sheet);
    let message = format!("a cut of {paper} is longer than the trimmer");
    let label = format!("a cut {long} long");
    let (severity, which) = match workshop.trimmer_span {
        Some(_) => (Severity::Warning, "yours"),
        None => (Severity::Note, "a usual one"),
    };
    let finding = Finding::new(severity, RULE.code, span, message, label)
        .plainly(format!("a cut of {paper} is {long} long, and {which} cuts {trimmer}"))
        .help(format!(
            "take sheets that are {trimmer} or less one way, cut it in 2 goes from both ends, or say `trimmer: {long}`"
        ));
    match workshop.trimmer_span {
        Some(span) => finding.also(span, format!("the trimmer cuts {trimmer}")),
        None => finding,
    }
}
