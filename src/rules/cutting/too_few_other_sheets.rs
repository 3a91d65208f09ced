//! Other sheets that somebody may hold do not give every card.

use super::fixed_cut_without_room::all_hold;
use crate::diagnostic::{Finding, Severity};
use crate::project::{Other, Project};
use crate::rules::Rule;
use crate::words::english::{counted, listed_words};

/// The rule.
pub static RULE: Rule = Rule {
    code: "too-few-other-sheets",
    severity: Severity::Warning,
    group: "cutting",
    summary: "other sheets that somebody may hold do not give every card",
    page: include_str!("too_few_other_sheets.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.others.iter().filter_map(|other| tell(project, other)).collect()
}

fn tell(project: &Project, other: &Other) -> Option<Finding> {
    let design = &project.design;
    let paper = design.paper(other.paper);
    let also = paper.also.get(other.also)?;
    let own = other.own_plan();
    // What is fixed may be why a piece finds no place.
    if own.missing.is_empty() || !all_hold(project, other.paper, &also.sheets) {
        return None;
    }
    let told = own.missing.iter().map(|missing| counted(missing.count, &design.piece(missing.piece).name));
    let lacks = listed_words(&told.collect::<Vec<_>>());
    let cards = design.cards.value;
    // Where the paper's own sheets fall short too, that is said of them.
    let most = other.plan.most.filter(|most| *most < cards && project.plan.missing.is_empty());
    let gives =
        most.map_or_else(|| format!("all but {lacks}"), |most| format!("{}, all but {lacks}", counted(most, "card")));
    let sheets = also.sheets.iter().fold(0_u32, |all, sheets| all.saturating_add(sheets.count));
    let verb = if sheets == 1 { "gives" } else { "give" };
    let finding = Finding::warning(
        RULE.code,
        also.span,
        format!("other sheets of {} do not give every card", paper.name),
        format!("{} {verb} {gives}", counted(sheets, "sheet")),
    )
    .also(design.cards.span, format!("{} are wanted", counted(cards, "card")))
    .plainly(format!("the other sheets of {} give {gives}, where {} are wanted", paper.name, counted(cards, "card")))
    .help(format!("state more than {} here, or leave these sheets out", counted(sheets, "sheet")));
    Some(finding)
}
