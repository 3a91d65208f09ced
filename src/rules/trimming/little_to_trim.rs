//! An end to be trimmed is too short to be trimmed well.

use super::ends::{self, Trimmed, each_trimmed};
use super::slanted::{Strip, each_slanted, length_for, spare};
use crate::design::model::{Along, LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Edge;
use crate::length::Length;
use crate::project::Project;
use crate::rules::outlines::{about, up_to_ruler};
use crate::rules::tell::{Axis, length, the_ground, the_layer};
use crate::rules::{Rule, hand};
use crate::words::english::check;

/// The rule.
pub static RULE: Rule = Rule {
    code: "little-to-trim",
    severity: Severity::Warning,
    group: "trimming",
    summary: "an end to be trimmed is too short to be trimmed well",
    page: include_str!("little_to_trim.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let straight = each_trimmed(project).filter_map(|(id, trimmed)| Some((id, little(project, id, &trimmed)?)));
    let slanted = each_slanted(project)
        .filter_map(|(id, onto, strips)| Some((id, little_at_a_slant(project, id, onto, &strips)?)));
    let mut found: Vec<(LayerId, Finding)> = straight.chain(slanted).collect();
    found.sort_by_key(|(id, _)| *id);
    found.into_iter().map(|(_, finding)| finding).collect()
}

fn little(project: &Project, id: LayerId, trimmed: &Trimmed) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let least = length(project, ends::least(project, (1, 1)));
    // Level with both edges of one direction and past none: it fits without any spare.
    let level =
        trimmed.axes().next().is_none().then(|| {
            Axis::BOTH.into_iter().find(|axis| trimmed.over(axis.low()) == 0 && trimmed.over(axis.high()) == 0)
        });
    let axes: Vec<Axis> = match level {
        Some(axis) => axis.into_iter().collect(),
        None => trimmed.axes().collect(),
    };
    let ends: Vec<(Axis, Edge)> = axes
        .iter()
        .flat_map(|axis| [(*axis, axis.low()), (*axis, axis.high())])
        .filter(|(_, edge)| (0..least.nm()).contains(&trimmed.over(*edge)))
        .collect();
    let (axis, _) = *ends.first()?;
    let over: Vec<(Edge, Length)> =
        ends.iter().map(|(_, edge)| (*edge, length(project, trimmed.over(*edge)))).collect();
    let fact = check::overhang(&over);
    let end = hand::easy(project.units()).max(up_to_ruler(project, least.nm()));
    let help = if axis.along(layer) == Along::Centre && layer.count() == 1 {
        let side = length(project, axis.extent(trimmed.target)) + end * 2;
        let word = if layer.quarter_turns.is_multiple_of(2) == (axis == Axis::Across) { "wide" } else { "high" };
        format!("make it {side} {word}, which leaves {end} at each end")
    } else {
        format!("let it reach {end} past the edge, {least} at the least")
    };
    Some(tell(project, id, trimmed.onto, &fact, least)?.help(help))
}

/// A strip at a slant that reaches the outline all along its end, but by less than it may be laid aside and
/// cut short.
fn little_at_a_slant(project: &Project, id: LayerId, onto: Onto, strips: &[Strip]) -> Option<Finding> {
    // An end that is short is said by its own rule, with the length that mends both.
    if strips.iter().any(|strip| strip.short().next().is_some()) {
        return None;
    }
    let ends: Vec<_> = strips.iter().flat_map(Strip::little).collect();
    let worst = ends.iter().min_by_key(|end| end.over - end.least)?;
    let sides = super::slanted::sides(ends.iter().copied());
    let fact = format!("{} over at the {sides}", about(project, worst.over.max(0)));
    let least = up_to_ruler(project, worst.least);
    let spare = spare(project, strips);
    let (long, both) = length_for(project, id, strips, spare);
    let ends = if both { " at each end" } else { "" };
    Some(tell(project, id, onto, &fact, least)?.help(format!("make it {long} long, which leaves {spare}{ends}")))
}

/// What both find: `fact` is what reaches over, `least` what a hand needs.
fn tell(project: &Project, id: LayerId, onto: Onto, fact: &str, least: Length) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let (the_layer, the_target) = (the_layer(design, id), the_ground(design, onto));
    Some(
        Finding::warning(
            RULE.code,
            design.piece(layer.piece).size_span,
            format!("{the_layer} leaves too little to trim at the edge of {the_target}"),
            fact.to_owned(),
        )
        .also(layer.trim_flush.as_ref()?.span, format!("trimmed level with {the_target}"))
        .plainly(format!("{the_layer} has only {fact} of {the_target}, where a hand needs {least} to trim")),
    )
}
