//! More sheets are stated than are cut.

use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::papers::pad_of_several_sizes::is_mixed;
use crate::words::english::counted;

/// The rule.
pub static RULE: Rule = Rule {
    code: "sheets-left-over",
    severity: Severity::Note,
    group: "counts",
    summary: "more sheets are stated than are cut",
    page: include_str!("sheets_left_over.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    if !project.plan.missing.is_empty() {
        return Vec::new();
    }
    let mut findings = Vec::new();
    for id in design.paper_ids() {
        let paper = design.paper(id);
        let plans = || project.plan.sheets.iter().filter(move |sheet| sheet.paper == id);
        if plans().next().is_none() || paper.kept_from.is_some() || is_mixed(paper) {
            // A paper that is not cut at all has a rule of its own, and so has a pad of several
            // sizes; leftovers may be kept for later.
            continue;
        }
        for (kind, sheets) in paper.sheets.iter().enumerate() {
            let used: usize = plans().filter(|sheet| sheet.kind == kind).map(|sheet| sheet.numbers.len()).sum();
            let used = u32::try_from(used).unwrap_or(u32::MAX);
            let stated = sheets.count;
            if used >= stated {
                continue;
            }
            let left = counted(stated - used, "sheet");
            findings.push(
                Finding::note(
                    RULE.code,
                    sheets.span,
                    format!("not every sheet of {} is needed", paper.name),
                    format!("{stated} stated, {used} cut"),
                )
                .plainly(format!("{} of {} are stated, and {used} cut", counted(stated, "sheet"), paper.name))
                .help(format!("state {used}, or keep {left} for a slip of the knife")),
            );
        }
    }
    findings
}
