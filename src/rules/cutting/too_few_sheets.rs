//! The sheets do not give every piece.

use super::fixed_cut_without_room::holds_what_is_fixed;
use super::larger_than_its_sheet::fits;
use crate::cutting::plan::Missing;
use crate::design::model::PaperId;
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::papers::pad_of_several_sizes::is_mixed;
use crate::words::english::{counted, listed_words};

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
        // What is fixed may be why a piece finds no place.
        .filter(|paper| holds_what_is_fixed(project, *paper) && !is_mixed(design.paper(*paper)))
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
    let sheets = paper.sheets.iter().fold(0_u32, |all, sheets| all.saturating_add(sheets.count));
    let told: Vec<String> =
        missing.iter().map(|missing| counted(missing.count, &design.piece(missing.piece).name)).collect();
    let verb = if sheets == 1 { "gives" } else { "give" };
    let fact = format!("{} {verb} all but {}", counted(sheets, "sheet"), listed_words(&told));
    let cards = design.cards.value;
    let help = match project.plan.most {
        _ if paper.kept_from.is_some() => format!("keep more than {sheets} of {}, or a larger one", paper.name),
        Some(most) if most > 0 && most < cards => {
            format!("take more than {} of {}, or make {}", counted(sheets, "sheet"), paper.name, counted(most, "card"))
        }
        _ => format!("take more than {} of {}", counted(sheets, "sheet"), paper.name),
    };
    let mut finding =
        Finding::error(RULE.code, span, format!("the sheets of {} do not give every piece", paper.name), fact.clone())
            .plainly(format!("for {} the {fact}", counted(cards, "card")))
            .help(help);
    if let Some(most) = project.plan.most.filter(|most| *most < cards) {
        let sure = if project.plan.aims.cards.proven { "at most" } else { "so far as was found" };
        finding = finding.also(design.cards.span, format!("the sheets give {} {sure}", counted(most, "card")));
    }
    finding
}
