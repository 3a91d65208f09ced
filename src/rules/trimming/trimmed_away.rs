//! A layer lies wholly beside what it is trimmed to, so that nothing of it is left.

use super::slanted::{lies_aslant, target};
use crate::design::model::{LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Edge, Rect, TOLERANCE};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::outlines::{bounds, up_to_ruler};
use crate::rules::tell::{length, the_ground, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "trimmed-away",
    severity: Severity::Error,
    group: "trimming",
    summary: "trimming leaves nothing of a layer",
    page: include_str!("trimmed_away.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings = Vec::new();
    for id in design.layer_ids() {
        let layer = design.layer(id);
        let Some(onto) = layer.trim_flush.as_ref().map(|flush| flush.value) else { continue };
        let placed = project.layout.placed(id);
        let slivers = || placed.laid.iter().all(|laid| laid.shown.holds_disc(TOLERANCE));
        let aslant = lies_aslant(project, id, onto);
        if placed.trimmed.iter().all(Option::is_some) && (!aslant || slivers()) {
            continue;
        }
        let (the_layer, the_target) = (the_layer(design, id), the_ground(design, onto));
        // The edge it lies beside, and how far it must come back to lie on it with its whole side.
        let (edge, over) = beside(project, id, onto, aslant);
        let back = if aslant { up_to_ruler(project, over) } else { length(project, over) };
        // Between the copies of a repeat, or where a turned layer leaves a corner free, it is past no edge.
        let (fact, mend) = if over > 0 {
            (format!("{back} past the {} edge of {the_target}", edge.word()), format!("lay it {back} further in"))
        } else {
            let ruler = design.workshop.ruler;
            (format!("nothing of it lies on {the_target}"), format!("lay it {ruler} or more over {the_target}"))
        };
        findings.push(
            Finding::error(RULE.code, layer.span, format!("trimming leaves nothing of {the_layer}"), fact)
                .also(
                    layer.trim_flush.as_ref().map_or(layer.span, |flush| flush.span),
                    format!("trimmed level with {the_target}"),
                )
                .plainly(format!("{the_layer} lies beside {the_target}, so that trimming leaves nothing of it"))
                .help(format!("{mend}, or take `trim flush` out")),
        );
    }
    findings
}

/// The edge of what a layer is trimmed to that it lies farthest past, and by how much.
fn beside(project: &Project, id: LayerId, onto: Onto, aslant: bool) -> (Edge, i64) {
    let placed = project.layout.placed(id);
    let target = if aslant { bounds(&target(project, id, onto)) } else { None };
    let target = target.unwrap_or_else(|| project.layout.rect(placed.face, onto));
    let gone = placed.laid.iter().filter(|laid| !laid.shown.holds_disc(TOLERANCE)).map(|laid| laid.outline.bounds());
    let block = if aslant { gone.reduce(Rect::hull).unwrap_or(placed.block) } else { placed.block };
    let past = Edge::ALL.map(|edge| (edge, -target.border(block, edge)));
    past.into_iter().max_by_key(|past| past.1).unwrap_or((Edge::Left, 0))
}
