//! Where the folds of the card run on each of its sides, and where a gate opens.

use crate::design::model::{Design, Face, Fold};
use crate::geometry::Edge;

/// A fold across a side of the card.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Line {
    /// Whether it runs from bottom to top.
    pub(crate) upright: bool,
    /// From the left edge, or from the bottom edge where it runs across.
    pub(crate) at: i64,
}

/// The folds that run across a side: those between the panels of the whole inside.
pub(crate) fn folds(design: &Design, face: Face) -> Vec<Line> {
    let (Face::Inside(None), Some(card)) = (face, &design.card) else { return Vec::new() };
    let panels = card.fold.panels(card.size);
    let upright = card.fold != Fold::Top;
    // Panels stand from left to right, each but the first beginning at a fold; or from top to bottom, each but
    // the last ending at one.
    let lines: Vec<i64> = if upright {
        panels.iter().skip(1).map(|panel| panel.left).collect()
    } else {
        panels.iter().rev().skip(1).map(|panel| panel.bottom).collect()
    };
    lines.into_iter().map(|at| Line { upright, at }).collect()
}

/// The line along which the two flaps of a gate meet on the front.
pub(crate) fn opening(design: &Design, face: Face) -> Option<Line> {
    let card = design.card.as_ref().filter(|card| card.fold == Fold::Gate && face == Face::Front)?;
    Some(Line { upright: true, at: card.size.width.nm() / 2 })
}

/// Whether the card folds at an edge of a side.
pub(crate) fn edge_is_fold(design: &Design, face: Face, edge: Edge) -> bool {
    let Some(fold) = design.card.as_ref().map(|card| card.fold) else { return false };
    match (face, fold) {
        (Face::Front, Fold::Side | Fold::Accordion { .. }) => edge == Edge::Left,
        (Face::Front | Face::Back, Fold::Gate) => edge.is_side(),
        (Face::Front | Face::Back, Fold::Top) => edge == Edge::Top,
        (Face::Back, Fold::Side) => edge == Edge::Right,
        // The folds of an accordion lie at the left and right in turn, as one looks at its front.
        (Face::Back, Fold::Accordion { panels }) => {
            edge == if panels.is_multiple_of(2) { Edge::Right } else { Edge::Left }
        }
        (Face::Inside(Some(panel)), Fold::Top) => panel > 0 && edge == Edge::Top || panel == 0 && edge == Edge::Bottom,
        (Face::Inside(Some(panel)), fold) => {
            let last = match fold {
                Fold::Side => 1,
                Fold::Gate => 2,
                Fold::Accordion { panels } => panels.saturating_sub(1),
                Fold::Top | Fold::None => 0,
            };
            panel > 0 && edge == Edge::Left || panel < last && edge == Edge::Right
        }
        _ => false,
    }
}
