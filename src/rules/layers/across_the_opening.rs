//! A layer is glued across the line where the two flaps of a gate open.

use crate::design::model::{LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::face::opening;
use crate::rules::outlines::{self, about};
use crate::rules::tell::{length, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "across-the-opening",
    severity: Severity::Warning,
    group: "layers",
    summary: "a layer is glued across the line where the card opens",
    page: include_str!("across_the_opening.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.layer_ids().filter_map(|id| across(project, id)).collect()
}

/// A layer on the card itself that shows on both flaps; what lies on a layer is held by that one. Without
/// glue it is a band that slips off.
fn across(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let opening = opening(design, layer.face)?;
    if layer.onto != Onto::Card || layer.glue.is_none() {
        return None;
    }
    let (left, right) = outlines::across(project.layout.placed(id), opening)?;
    let the_layer = the_layer(design, id);
    let fact = format!("{} of it lies on the left flap, {} on the right", about(project, left), about(project, right));
    let middle = length(project, opening.at);
    Some(
        Finding::warning(
            RULE.code,
            layer.span,
            format!("{the_layer} lies across the opening of the card"),
            fact.clone(),
        )
        .plainly(format!("{the_layer} holds the two flaps together, since {fact}"))
        .help(format!(
            "lay it within {middle} of one edge, make 1 for each flap, or say in a note on {the_layer} which flap alone is glued"
        )),
    )
}
