//! The bases are cut so that their folds run across the fibres.

use crate::design::model::Card;
use crate::diagnostic::{Finding, Severity};
use crate::paper::grain::{Folds, folds};
use crate::project::Project;
use crate::rules::Rule;
use crate::weight::Grammage;
use crate::words::english::counted;

/// The rule.
pub static RULE: Rule = Rule {
    code: "fold-across-the-grain",
    severity: Severity::Warning,
    group: "folding",
    summary: "the folds of the bases run across the fibres of their paper",
    page: include_str!("fold_across_the_grain.md"),
    check: Some(check),
};

/// Lighter paper folds well either way: a mill advises to score from 150 g/m2 on (condat-pap.com).
const SCORED: Grammage = Grammage::grams(150);

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let Some(card) = &design.card else { return Vec::new() };
    let paper = design.paper(card.from);
    let weight = paper.weight.as_ref().map(|weight| weight.value.grammage);
    let is_light = weight.is_some_and(|weight| weight < SCORED);
    let Some(folds) = folds(design, &project.plan).filter(|folds| folds.across > 0 && !is_light) else {
        return Vec::new();
    };
    match paper.grain {
        Some(grain) => vec![finding(project, card, folds, Severity::Warning, grain.span)],
        // What is usual is said of what is known to be cardstock.
        None if weight.is_some() => vec![finding(project, card, folds, Severity::Note, card.span)],
        None => Vec::new(),
    }
}

fn finding(project: &Project, card: &Card, folds: Folds, severity: Severity, span: crate::source::Span) -> Finding {
    let paper = &project.design.paper(card.from).name;
    let bases = counted(folds.across, "base");
    let (verb, label) = if folds.across == 1 { ("folds", bases) } else { ("fold", bases) };
    let usual = if folds.is_stated { "" } else { ", if the sheets are grain long as letter usually is" };
    let help = if folds.is_stated {
        "turn the card's fold or take sheets of the other grain; else test 1 base, scored well"
    } else {
        "say `grain: short` or `grain: long` of the paper, and test 1 base, scored well"
    };
    Finding::new(
        severity,
        RULE.code,
        span,
        format!("bases of {paper} fold across the grain"),
        format!("{label} {verb} across the fibres{usual}"),
    )
    .help(help)
    .plainly(format!("a fold across the fibres of {paper} cracks more easily than one along them"))
}
