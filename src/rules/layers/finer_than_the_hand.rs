//! A border is finer than a hand lays a layer, so that it shows crooked.

use crate::design::model::LayerId;
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Edge;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::hand;
use crate::rules::outlines::{is_bought, is_turned, on_a_rectangle};
use crate::rules::tell::{Axis, ground_span, length, the_ground, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "finer-than-the-hand",
    severity: Severity::Warning,
    group: "layers",
    summary: "a border is finer than a hand lays a layer, so that it shows crooked",
    page: include_str!("finer_than_the_hand.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.layer_ids().filter_map(|id| fine(project, id)).collect()
}

/// The finest border that lies opposite another as fine: one that is crooked shows beside it.
fn fine(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let (layer, ruler) = (design.layer(id), design.workshop.ruler);
    if is_bought(design, layer) || is_turned(layer) || layer.trim_flush.is_some() || !on_a_rectangle(project, layer) {
        return None;
    }
    let placed = project.layout.placed(id);
    let error = design.workshop.placing_error.nm();
    let both = |axis: &Axis| {
        let (low, high) = (placed.shows(axis.low()), placed.shows(axis.high()));
        (low > 0 && high > 0 && low.max(high) <= error).then(|| (low.min(high), axis.low(), axis.high()))
    };
    let (border, low, high): (i64, Edge, Edge) = Axis::BOTH.iter().filter_map(both).min_by_key(|found| found.0)?;
    let border = length(project, border);
    // What no mark of the ruler gives is said already.
    if !border.is_on(ruler) {
        return None;
    }
    let (name, ground) = (the_layer(design, id), the_ground(design, layer.onto));
    let usual = hand::border(project.units());
    let error = length(project, error);
    let fact = format!("{border} shows at the {} and {}, and a hand is up to {error} off", low.word(), high.word());
    let finding = if border < hand::mark(project.units()) {
        Finding::warning(RULE.code, layer.span, format!("the border of {name} is finer than the hand"), fact.clone())
    } else {
        Finding::note(RULE.code, layer.span, format!("the border of {name} is as fine as the hand"), fact.clone())
    };
    let finding = finding
        .plainly(format!("round {name} {fact}, so that it may show crooked"))
        .help(format!("let {usual} of {ground} show, or {} at the least", hand::mark(project.units())));
    Some(match ground_span(design, layer.onto) {
        Some(span) => finding.also(span, format!("{ground} below it")),
        None => finding,
    })
}
