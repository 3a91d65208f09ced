//! A layer inside the card lies over a fold.

use crate::design::model::LayerId;
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::face::folds;
use crate::rules::outlines::{about, across};
use crate::rules::tell::{length, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "over-the-fold",
    severity: Severity::Warning,
    group: "layers",
    summary: "a layer inside the card lies over a fold",
    page: include_str!("over_the_fold.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.layer_ids().filter_map(|id| over(project, id)).collect()
}

fn over(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let placed = project.layout.placed(id);
    let (fold, (before, after)) =
        folds(design, layer.face).into_iter().find_map(|fold| Some((fold, across(placed, fold)?)))?;
    let the_layer = the_layer(design, id);
    let (low, high) = if fold.upright { ("left", "right") } else { ("bottom", "top") };
    let fact = format!(
        "{} of it lies to the {low} of the fold, {} to the {high}",
        about(project, before),
        about(project, after)
    );
    let fact = fact.replace("to the bottom of the fold", "below the fold").replace("to the top", "above it");
    let at = length(project, fold.at);
    Some(
        Finding::warning(RULE.code, layer.span, format!("{the_layer} lies over a fold of the card"), fact.clone())
            .plainly(format!("{the_layer} is bent when the card is closed, since {fact}"))
            .help(format!(
                "lay it to one side of the fold, which is {at} from the {low} edge, or make 1 layer for each `panel`"
            )),
    )
}
