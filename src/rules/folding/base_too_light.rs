//! The base is of paper too light to stand.

use crate::design::model::Fold;
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;
use crate::weight::Grammage;

/// The rule.
pub static RULE: Rule = Rule {
    code: "base-too-light",
    severity: Severity::Note,
    group: "folding",
    summary: "the base is of paper too light to stand under its layers",
    page: include_str!("base_too_light.md"),
    check: Some(check),
};

/// The lightest base: 65 lb cover is 176 g/m2, and below 160 g/m2 a base bows. Common practice, no source.
const LIGHTEST: Grammage = Grammage::grams(160);

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let Some(card) = design.card.as_ref().filter(|card| card.fold != Fold::None) else { return Vec::new() };
    let paper = design.paper(card.from);
    let Some(weight) = paper.weight.as_ref().filter(|weight| weight.value.grammage < LIGHTEST) else {
        return Vec::new();
    };
    let (grams, least) = (weight.value.grammage.whole(), LIGHTEST.whole());
    vec![
        Finding::note(
            RULE.code,
            weight.span,
            format!("{} is light for a base", paper.name),
            format!("{grams} g/m2, where a base has {least} or more"),
        )
        .also(card.span, "the card stands on this base")
        .help(format!("take cardstock of {least} g/m2 or more, such as `65 lb cover` or `220 gsm`"))
        .plainly(format!("the base weighs {grams} grams a square metre and stands badly")),
    ]
}
