//! A strip that is trimmed flush at a slant, or along a piece that is no rectangle: judged along its true
//! length.
//!
//! The strip is a rectangle with two long edges. At each end it must cover the target up to its outline over
//! its whole width, so that the edge, or the corner of the target between the two, that asks for most
//! decides. All measures are taken along the strip.

use super::ends::least;
use crate::design::model::{LayerId, Onto, Pivot};
use crate::geometry::{Angle, Point, Polygon, Rect, Region, TOLERANCE, span};
use crate::layout::place::frame_within;
use crate::length::Length;
use crate::project::Project;
use crate::rules::hand;
use crate::rules::outlines::{Ground, ground, is_turned, side_of_middle, up_to_ruler};
use crate::rules::tell::{Axis, length};
use crate::shape::Form;
use crate::words::english::listed_words;

/// One end of one strip.
pub(super) struct End {
    /// On which side of the strip it lies: `top right`.
    pub(super) side: String,
    /// How far it reaches past the outline where the outline lies farthest out under it; negative where it
    /// ends short of that.
    pub(super) over: i64,
    /// The least that it must reach past it.
    pub(super) least: i64,
    /// Whether its middle reaches the outline, or all but does, so that all of it is meant to.
    meant: bool,
}

/// A strip at a slant.
pub(super) struct Strip {
    pub(super) ends: [End; 2],
    /// How long it must be to end at the outline, its middle kept.
    pub(super) centred: i64,
    /// Whether there is anything to trim at all.
    is_past: bool,
}

/// Whether a trimmed layer lies otherwise than straight to a rectangle.
pub(super) fn lies_aslant(project: &Project, id: LayerId, target: Onto) -> bool {
    let layer = project.design.layer(id);
    let within = match target {
        Onto::Card => Vec::new(),
        Onto::Layer(target) => frame_within(&project.design, &project.layout, target),
    };
    is_turned(layer)
        || project.layout.placed(id).frame != within
        || matches!(ground(project, layer.face, target), Ground::Shape(_))
}

/// The outlines on the face of what a layer is trimmed to.
pub(super) fn target(project: &Project, id: LayerId, onto: Onto) -> Vec<Polygon> {
    match onto {
        Onto::Card => vec![Polygon::from(project.layout.face(project.design.layer(id).face))],
        Onto::Layer(layer) => project.layout.placed(layer).laid.iter().map(|laid| laid.outline.filled()).collect(),
    }
}

/// So many times as long as wide is a strip. What is broader may hang over an edge by a corner on purpose, and
/// has no ends.
const SLIMMEST: i64 = 3;

/// The steepest that an outline meets a strip at its end, as a fraction: 60 degrees off the square, whose
/// tangent is the root of 3, near 1.732.
const STEEPEST: (i128, i128) = (1_732, 1_000);

/// The strips of every layer that is trimmed at a slant, those of which something is left. A piece that is
/// no rectangle has no two long edges, and is left to the eye.
pub(super) fn each_slanted(project: &Project) -> impl Iterator<Item = (LayerId, Onto, Vec<Strip>)> + '_ {
    project.design.layer_ids().filter_map(|id| {
        let layer = project.design.layer(id);
        let onto = layer.trim_flush.as_ref()?.value;
        let rectangle = project.design.piece(layer.piece).shape.form == Form::Rectangle;
        if !rectangle || !lies_aslant(project, id, onto) {
            return None;
        }
        let strips = strips(project, id, &target(project, id, onto));
        (!strips.is_empty()).then_some((id, onto, strips))
    })
}

fn strips(project: &Project, id: LayerId, target: &[Polygon]) -> Vec<Strip> {
    let size = project.design.piece(project.design.layer(id).piece).size;
    let (long, wide) = (size.width.max(size.height).nm(), size.width.min(size.height).nm());
    let upright = size.height > size.width;
    if long < SLIMMEST * wide {
        return Vec::new();
    }
    let area = Region::covered_by(target);
    let laid = project.layout.placed(id).laid.iter().filter(|laid| !laid.shown.is_empty());
    laid.filter_map(|laid| {
        let along = if upright { laid.angle.then(Angle::quarters(1)) } else { laid.angle };
        let middle = laid.outline.bounds().middle();
        let whole = reach(target, middle, along, wide)?;
        // How steeply the outline runs where it asks for most: not at all at a corner under the strip.
        let aside = (wide / 8).max(1);
        let narrower = reach(target, middle, along, wide - 2 * aside);
        let line = |by: i64| reach(target, middle.moved(0, by).turned(along, middle), along, 0);
        let (one, through, other) = (line(-aside), line(0), line(aside));
        let end = |ahead: bool| {
            let out = |(from, to): (i64, i64)| if ahead { to } else { -from };
            let over = long / 2 - out(whole);
            let slant = narrower.map_or(0, |narrower| out(whole) - out(narrower));
            let side = side_of_middle(
                Rect::between(middle, middle),
                middle.moved(if ahead { long } else { -long }, 0).turned(along, middle),
            );
            let reaches = through.is_some_and(|through| long / 2 - out(through) > -hand::least(project.units()).nm());
            // Where its side runs out over an edge of the target, the outline goes almost along it.
            let squarely = one.zip(other).is_none_or(|(one, other)| {
                let off = i128::from((out(one) - out(other)).abs());
                off * STEEPEST.1 <= 2 * i128::from(aside) * STEEPEST.0
            });
            End { side, over, least: least(project, (hypotenuse(aside, slant), aside)), meant: reaches && squarely }
        };
        Some(Strip {
            ends: [end(false), end(true)],
            centred: 2 * (-whole.0).max(whole.1),
            is_past: Region::from(&laid.outline).difference(&area).holds_disc(TOLERANCE),
        })
    })
    .collect()
}

/// From where to where outlines lie under a strip.
fn reach(target: &[Polygon], through: Point, along: Angle, width: i64) -> Option<(i64, i64)> {
    let spans = target.iter().filter_map(|polygon| span(polygon, through, along, width));
    spans.map(|span| (span.from, span.to)).reduce(|one, other| (one.0.min(other.0), one.1.max(other.1)))
}

/// The long side of a right triangle, rounded up.
fn hypotenuse(one: i64, other: i64) -> i64 {
    let square = i128::from(one) * i128::from(one) + i128::from(other) * i128::from(other);
    let root = square.isqrt();
    i64::try_from(if root * root < square { root + 1 } else { root }).unwrap_or(i64::MAX / 2)
}

impl Strip {
    /// The ends that were meant to reach and do not.
    pub(super) fn short(&self) -> impl Iterator<Item = &End> {
        let nothing = !self.is_past;
        self.ends.iter().filter(move |end| end.over < -TOLERANCE && (end.meant || nothing))
    }

    /// The ends that reach, but by less than a hand needs.
    pub(super) fn little(&self) -> impl Iterator<Item = &End> {
        self.ends.iter().filter(|end| end.meant && (-TOLERANCE..end.least - TOLERANCE).contains(&end.over))
    }
}

/// How long the strips of a layer must be, up to the ruler, so that `spare` is left to trim: whether at both
/// ends, as where the length grows to both sides, else longer by what the shortest end lacks.
pub(super) fn length_for(project: &Project, id: LayerId, strips: &[Strip], spare: Length) -> (Length, bool) {
    let layer = project.design.layer(id);
    let size = project.design.piece(layer.piece).size;
    let axis =
        if (size.width >= size.height) == layer.quarter_turns.is_multiple_of(2) { Axis::Across } else { Axis::Up };
    let about_middle = layer.tilt.is_none_or(|tilt| tilt.about == Pivot::Middle);
    let alone = axis.copies(project, layer).0 == 1 && layer.mirrored.is_none();
    if about_middle && alone && axis.along(layer) == crate::design::model::Along::Centre {
        let most = strips.iter().map(|strip| strip.centred).max().unwrap_or(0);
        return (up_to_ruler(project, most + 2 * spare.nm()), true);
    }
    let ends = strips.iter().flat_map(|strip| strip.ends.iter().filter(|end| end.over < spare.nm() && end.meant));
    let lacks = ends.map(|end| spare.nm() - end.over).max().unwrap_or(0);
    (up_to_ruler(project, size.width.max(size.height).nm() + lacks), false)
}

/// The spare that is asked for: comfortable, and no less than the most that any end needs.
pub(super) fn spare(project: &Project, strips: &[Strip]) -> Length {
    let most = strips.iter().flat_map(|strip| strip.ends.iter().map(|end| end.least)).max().unwrap_or(0);
    let easy = hand::easy(project.units());
    length(project, easy.nm().max(up_to_ruler(project, most).nm()))
}

/// The sides that ends lie at: `bottom left and top right`.
pub(super) fn sides<'a>(ends: impl Iterator<Item = &'a End>) -> String {
    let mut sides: Vec<String> = ends.map(|end| end.side.clone()).collect();
    sides.sort();
    sides.dedup();
    listed_words(&sides)
}
