//! Strips of a ring: each goes along the whole side of what lies there before it.

use super::RULE;
use crate::design::model::{Along, LayerId};
use crate::diagnostic::Finding;
use crate::geometry::Rect;
use crate::project::Project;
use crate::rules::tell::{Axis, length, the_layer};

/// A strip that is longer or shorter than the side it lies along. Strips are laid straight, so that
/// rectangles of the frame decide.
pub(super) fn strip(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let before = layer.ring.iter().map(|before| project.layout.placed(*before).block).reduce(Rect::hull)?;
    let own = project.layout.placed(id).block;
    let axis = if matches!(layer.across, Along::After(..) | Along::Before(..)) { Axis::Up } else { Axis::Across };
    let (side, reach) = (axis.extent(before), axis.extent(own));
    if side == reach {
        return None;
    }
    let the_layer = the_layer(design, id);
    let off = length(project, (reach - side).abs());
    let (fact, fault) = if reach < side {
        (format!("a gap of {off} at its end"), "too short")
    } else {
        (format!("{off} stands over at its end"), "too long")
    };
    let piece = design.piece(layer.piece);
    let side = length(project, side);
    let word = if layer.quarter_turns.is_multiple_of(2) { axis } else { other(axis) }.measure();
    let middle = the_layer_of(project, layer.ring.first().copied()?);
    Some(
        Finding::warning(
            RULE.code,
            piece.size_span,
            format!("{the_layer} is {fault} for its side of the ring round {middle}"),
            fact.clone(),
        )
        .also(layer.span, format!("the side is {side} there"))
        .plainly(format!("{the_layer} lies along a side of {side} of the ring round {middle}, with {fact}"))
        .help(format!("make it {side} {word}")),
    )
}

const fn other(axis: Axis) -> Axis {
    match axis {
        Axis::Across => Axis::Up,
        Axis::Up => Axis::Across,
    }
}

fn the_layer_of(project: &Project, id: LayerId) -> String {
    the_layer(&project.design, id)
}
