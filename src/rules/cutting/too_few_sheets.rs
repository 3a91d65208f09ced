//! The sheets do not give every piece.

use super::larger_than_its_sheet::fits;
use crate::cutting::plan::Missing;
use crate::design::model::PaperId;
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{count, list};

/// The rule.
pub static RULE: Rule = Rule {
    code: "too-few-sheets",
    severity: Severity::Error,
    group: "cutting",
    summary: "the sheets do not give every piece",
    page: include_str!("too_few_sheets.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    design
        .paper_ids()
        .filter_map(|paper| {
            // A piece that no sheet can hold is another mistake.
            let missing: Vec<&Missing> = project
                .plan
                .missing
                .iter()
                .filter(|missing| missing.paper == paper && missing.count > 0 && fits(design, missing.piece, paper))
                .collect();
            (!missing.is_empty()).then(|| tell(project, paper, &missing))
        })
        .collect()
}

fn tell(project: &Project, id: PaperId, missing: &[&Missing]) -> Finding {
    let design = &project.design;
    let paper = design.paper(id);
    let span = paper.sheets.iter().map(|sheets| sheets.span).reduce(|all, span| all.to(span)).unwrap_or(paper.span);
    let sheets: u64 = paper.sheets.iter().map(|sheets| u64::from(sheets.count)).sum();
    let told: Vec<String> = missing
        .iter()
        .map(|missing| format!("{} of the {}", missing.count, design.piece(missing.piece).name))
        .collect();
    let verb = if sheets == 1 { "gives" } else { "give" };
    let fact = format!("{} {verb} all but {}", count(sheets, "sheet"), list(&told));
    let cards = design.cards.value;
    let help = match project.plan.most {
        Some(most) if most > 0 && most < cards => {
            format!("take more than {} of {}, or make {}", count(sheets, "sheet"), paper.name, count(most, "card"))
        }
        _ => format!("take more than {} of {}", count(sheets, "sheet"), paper.name),
    };
    let mut finding =
        Finding::error(RULE.code, span, format!("the sheets of {} do not give every piece", paper.name), fact.clone())
            .plainly(format!("for {} the {fact}", count(cards, "card")))
            .help(help);
    if let Some(most) = project.plan.most.filter(|most| *most < cards) {
        let sure = if project.plan.aims.cards.proven { "at most" } else { "so far as was found" };
        finding = finding.also(design.cards.span, format!("the sheets give {} {sure}", count(most, "card")));
    }
    finding
}
