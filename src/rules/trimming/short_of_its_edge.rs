//! A layer to be trimmed flush does not reach the edge it is trimmed to.

use super::ends::{Trimmed, each_trimmed};
use super::slanted::{Strip, each_slanted, length_for, sides, spare};
use crate::design::model::{Along, LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Edge;
use crate::length::Length;
use crate::project::Project;
use crate::rules::outlines::about;
use crate::rules::tell::{Axis, ground_span, length, the_ground, the_layer};
use crate::rules::{Rule, hand};
use crate::words::english::check;

/// The rule.
pub static RULE: Rule = Rule {
    code: "short-of-its-edge",
    severity: Severity::Error,
    group: "trimming",
    summary: "a layer to be trimmed flush does not reach the edge it is trimmed to",
    page: include_str!("short_of_its_edge.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let straight = each_trimmed(project).filter_map(|(id, trimmed)| {
        let (axis, short) = short(project, &trimmed)?;
        Some((id, tell(project, id, &trimmed, axis, &short)))
    });
    let slanted =
        each_slanted(project).filter_map(|(id, onto, strips)| Some((id, tell_at_a_slant(project, id, onto, &strips)?)));
    let mut found: Vec<(LayerId, Finding)> = straight.chain(slanted).collect();
    found.sort_by_key(|(id, _)| *id);
    found.into_iter().map(|(_, finding)| finding).collect()
}

/// The ends that were meant to reach and do not. Where one end is trimmed, the other may stop
/// anywhere on purpose, but not a hair's breadth before the edge.
fn short(project: &Project, trimmed: &Trimmed) -> Option<(Axis, Vec<Edge>)> {
    if trimmed.axes().next().is_none() {
        // Nothing to trim anywhere: it was meant along the direction that it spans best.
        let axis = Axis::BOTH.into_iter().max_by_key(|axis| trimmed.over(axis.low()) + trimmed.over(axis.high()))?;
        let short: Vec<Edge> = [axis.low(), axis.high()].into_iter().filter(|edge| trimmed.over(*edge) < 0).collect();
        return (!short.is_empty()).then_some((axis, short));
    }
    let least = hand::least(project.units()).nm();
    trimmed.axes().find_map(|axis| {
        [axis.low(), axis.high()]
            .into_iter()
            .find(|edge| (-least + 1..0).contains(&trimmed.over(*edge)))
            .map(|edge| (axis, vec![edge]))
    })
}

fn tell(project: &Project, id: LayerId, trimmed: &Trimmed, axis: Axis, short: &[Edge]) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    let (the_layer, the_target) = (the_layer(design, id), the_ground(design, trimmed.onto));
    let ends: Vec<(Edge, Length)> = short.iter().map(|edge| (*edge, length(project, -trimmed.over(*edge)))).collect();
    let fact = check::short(&ends);
    let end = hand::easy(project.units());
    let centred = axis.along(layer) == Along::Centre;
    let help = if centred && layer.count() == 1 {
        let room = length(project, axis.extent(trimmed.target));
        let side = room + end * 2;
        let word = if layer.quarter_turns.is_multiple_of(2) == (axis == Axis::Across) { "wide" } else { "high" };
        format!("make it {side} {word}, which leaves {end} to trim at each end")
    } else {
        let reach = short.iter().map(|edge| -trimmed.over(*edge)).max().unwrap_or(0);
        format!("make it reach {} further, which leaves {end} to trim", length(project, reach) + end)
    };
    let mut finding = Finding::error(
        RULE.code,
        piece.size_span,
        format!("{the_layer} does not reach the edge of {the_target} that it is trimmed to"),
        fact.clone(),
    )
    .plainly(format!("{the_layer} is to be trimmed level with {the_target}, but it is {fact}"))
    .help(help);
    if let Some(flush) = &layer.trim_flush {
        finding = finding.also(flush.span, format!("trimmed level with {the_target}"));
    }
    if let Some(span) = ground_span(design, trimmed.onto).filter(|span| *span != piece.size_span) {
        let room = length(project, axis.extent(trimmed.target));
        finding = finding.also(span, format!("{the_target} is {room} {}", axis.measure()));
    }
    finding
}

/// A strip at a slant that leaves some of the target bare at an end.
fn tell_at_a_slant(project: &Project, id: LayerId, onto: Onto, strips: &[Strip]) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    let ends: Vec<_> = strips.iter().flat_map(Strip::short).collect();
    let most = ends.iter().map(|end| -end.over).max()?;
    let fact = format!("{} short at the {}", about(project, most), sides(ends.iter().copied()));
    let (the_layer, the_target) = (the_layer(design, id), the_ground(design, onto));
    let spare = spare(project, strips);
    let (long, both) = length_for(project, id, strips, spare);
    let ends = if both { " at each end" } else { "" };
    let mut finding = Finding::error(
        RULE.code,
        piece.size_span,
        format!("{the_layer} does not reach the edge of {the_target} that it is trimmed to"),
        fact.clone(),
    )
    .plainly(format!("{the_layer} is to be trimmed level with {the_target}, but measured along it, it is {fact}"))
    .help(format!("make it {long} long, which leaves {spare} to trim{ends}"));
    if let Some(flush) = &layer.trim_flush {
        finding = finding.also(flush.span, format!("trimmed level with {the_target}"));
    }
    if let Some(span) = ground_span(design, onto).filter(|span| *span != piece.size_span) {
        let size = project.layout.rect(layer.face, onto).size(length(project, 0).unit());
        finding = finding.also(span, format!("{the_target} is {size}"));
    }
    Some(finding)
}
