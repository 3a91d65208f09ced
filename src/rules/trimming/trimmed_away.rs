//! A layer lies wholly beside what it is trimmed to, so that nothing of it is left.

use super::ends::trimmed;
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Edge;
use crate::project::Project;
use crate::rules::Rule;
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
        let Some(trimmed) = trimmed(project, id) else { continue };
        if project.layout.placed(id).trimmed.iter().all(Option::is_some) {
            continue;
        }
        let layer = design.layer(id);
        let (the_layer, the_target) = (the_layer(design, id), the_ground(design, trimmed.onto));
        // The edge it lies beside, and how far it must come back to lie on it with its whole side.
        let (edge, over) =
            Edge::ALL.map(|edge| (edge, trimmed.over(edge))).into_iter().max_by_key(|e| e.1).unwrap_or((Edge::Left, 0));
        let back = length(project, over);
        findings.push(
            Finding::error(
                RULE.code,
                layer.span,
                format!("trimming leaves nothing of {the_layer}"),
                format!("{back} past the {} edge of {the_target}", edge.word()),
            )
            .also(
                layer.trim_flush.as_ref().map_or(layer.span, |flush| flush.span),
                format!("trimmed level with {the_target}"),
            )
            .plainly(format!("{the_layer} lies beside {the_target}, so that trimming leaves nothing of it"))
            .help(format!("lay it {back} further in, or take `trim flush` out")),
        );
    }
    findings
}
