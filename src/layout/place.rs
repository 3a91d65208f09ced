//! Design to layout: exact outlines from centring, distances, neighbours, repeats and turns.
//!
//! Takes a settled design, gives a [`Layout`] of the same number of layers. Cannot fail: what it
//! refers to was checked when the design was settled. Must never judge: that is the rules' work.

use super::model::{Laid, Layout, Placed, Turn};
pub use super::repeat::pivot;
use super::repeat::{self, Copy};
use crate::design::model::{Along, Bound, Card, Design, Face, Layer, LayerId, Onto, Part};
use crate::geometry::{Angle, Point, Polygon, Rect, Region};
use std::cmp::Ordering;

/// Lays every layer of every face.
#[must_use]
pub fn place(design: &Design) -> Layout {
    let mut layout =
        Layout { card: design.card.as_ref().map(|card| card.size), faces: faces(design), layers: Vec::new() };
    for id in design.layer_ids() {
        let placed = place_layer(design, &layout, id);
        layout.layers.push(placed);
    }
    // Trimming may be to a layer that is laid later (a unit's mat is laid before, the card last).
    for id in design.layer_ids() {
        let Some(target) = design.layer(id).trim_flush else { continue };
        let target = match target.value {
            Onto::Card => Region::from(&Polygon::from(layout.face(design.layer(id).face))),
            Onto::Layer(layer) => {
                let outlines: Vec<Polygon> =
                    layout.placed(layer).laid.iter().map(|laid| laid.outline.filled()).collect();
                Region::covered_by(&outlines)
            }
        };
        let placed = &mut layout.layers[id.0];
        for (laid, trimmed) in placed.laid.iter_mut().zip(&mut placed.trimmed) {
            laid.shown = laid.shown.intersection(&target);
            *trimmed = laid.shown.bounds();
        }
    }
    layout
}

/// Every face that there is, the front first.
fn faces(design: &Design) -> Vec<(Face, Rect)> {
    let mut faces = Vec::new();
    if let Some(Card { size, fold, .. }) = &design.card {
        faces.push((Face::Front, Rect::of(*size)));
        faces.push((Face::Inside(None), Rect::of(fold.flat(*size))));
        for (panel, number) in fold.panels(*size).into_iter().zip(0..) {
            faces.push((Face::Inside(Some(number)), Rect::at(0, 0, panel.width(), panel.height())));
        }
        faces.push((Face::Back, Rect::of(*size)));
    }
    if let Some(envelope) = &design.envelope {
        let (front, flap) = (Rect::of(envelope.size), envelope.flap);
        faces.push((Face::EnvelopeFront, front));
        let flap = flap.map_or(front.height(), |flap| flap.nm());
        faces.push((Face::EnvelopeFlap, Rect::at(0, 0, front.width(), flap)));
    }
    faces
}

fn place_layer(design: &Design, layout: &Layout, id: LayerId) -> Placed {
    let layer = design.layer(id);
    let onto = layout.rect(layer.face, layer.onto);
    let copies = copies_on(design, layout, id);
    let frame = frame_on(design, layout, layer);
    let form = form(design, layer);
    let laid: Vec<Laid> = copies.iter().map(|copy| lay(copy, layer, &form, onto, &frame)).collect();
    let trimmed = laid.iter().map(|laid| Some(laid.outline.bounds())).collect();
    let block = repeat::hull(&copies);
    let copies = copies.iter().map(|copy| copy.rect).collect();
    Placed { layer: id, face: layer.face, onto, copies, trimmed, block, laid, frame }
}

/// The outline of a layer's piece, unturned; its rectangle where the shape cannot be made.
fn form(design: &Design, layer: &Layer) -> Polygon {
    let piece = design.piece(layer.piece);
    piece.shape.make().map_or_else(|_| Polygon::from(Rect::of(piece.size)), |made| made.outline)
}

/// The copies of a layer where they lie, mirrored ones last.
fn copies_on(design: &Design, layout: &Layout, id: LayerId) -> Vec<Copy> {
    let layer = design.layer(id);
    let onto = layout.rect(layer.face, layer.onto);
    let turned = design.piece(layer.piece).size.turned(layer.quarter_turns);
    let repeated = repeat::copies(layer, turned, design.units);
    let block = repeat::hull(&repeated);

    let left = start(layer.across, (onto.left, onto.right), block.width(), |other| {
        let other = layout.placed(other).block;
        (other.left, other.right)
    });
    let bottom = start(layer.up, (onto.bottom, onto.top), block.height(), |other| {
        let other = layout.placed(other).block;
        (other.bottom, other.top)
    });
    let (x, y) = (left + layer.shifted.0 - block.left, bottom + layer.shifted.1 - block.bottom);
    let mut copies: Vec<Copy> = repeated.into_iter().map(|copy| copy.moved(x, y)).collect();
    if let Some(mirror) = layer.mirrored {
        let images: Vec<Copy> = copies.iter().map(|copy| copy.mirrored(mirror, onto)).collect();
        copies.extend(images);
    }
    copies
}

/// One copy as a hand lays it, measured from the edges of what it lies on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ByHand {
    /// Its rectangle before it is turned by another angle than quarters; of a mirrored copy the image's.
    pub rect: Rect,
    /// Its own turns, that of a fan first; of a mirrored copy the original's.
    pub turns: Vec<Turn>,
    /// Its outline before these turns.
    pub straight: Polygon,
    /// Its outline when it is turned, before any trimming.
    pub outline: Polygon,
}

/// The copies of a layer as a hand lays them, in the frame of what they lie on ([`Placed::onto`]).
#[must_use]
pub fn by_hand(design: &Design, layout: &Layout, id: LayerId) -> Vec<ByHand> {
    let layer = design.layer(id);
    let onto = layout.rect(layer.face, layer.onto);
    let form = form(design, layer);
    copies_on(design, layout, id)
        .iter()
        .map(|copy| ByHand {
            rect: copy.rect,
            turns: turns(copy, layer).collect(),
            straight: {
                let (outline, _) = straight(copy, layer, &form, onto);
                copy.image.map_or_else(|| outline.clone(), |mirror| outline.mirrored(mirror, onto))
            },
            outline: lay(copy, layer, &form, onto, &[]).outline,
        })
        .collect()
}

/// A copy's own turns: its place in a fan, then the layer's.
fn turns(copy: &Copy, layer: &Layer) -> impl Iterator<Item = Turn> {
    let tilt = layer.tilt.map(|tilt| Turn { angle: tilt.angle, about: copy.pivot });
    copy.fan.into_iter().chain(tilt)
}

/// One copy with its shape before any turn but quarters, and those; of a mirrored copy the original.
fn straight(copy: &Copy, layer: &Layer, form: &Polygon, onto: Rect) -> (Polygon, Angle) {
    let quarters = (layer.quarter_turns + copy.quarter_turns) % 4;
    let upright = form.bounds();
    // The rectangle round an outline with a window, or any other, begins at nothing.
    let outline = form.quarter_turned_in(quarters, upright);
    let lies = outline.bounds();
    // Of a mirrored copy the original is turned, then its image taken.
    let rect = copy.image.map_or(copy.rect, |mirror| copy.rect.mirrored(mirror, onto));
    (outline.moved(rect.left - lies.left, rect.bottom - lies.bottom), Angle::quarters(quarters))
}

/// One copy with its shape, turned in its place and then with everything that it lies on.
fn lay(copy: &Copy, layer: &Layer, form: &Polygon, onto: Rect, frame: &[Turn]) -> Laid {
    let (mut outline, mut angle) = straight(copy, layer, form, onto);
    for turn in turns(copy, layer) {
        outline = outline.turned(turn.angle, turn.about);
        angle = angle.then(turn.angle);
    }
    if let Some(mirror) = copy.image {
        outline = outline.mirrored(mirror, onto);
        angle = angle.back();
    }
    for turn in frame {
        outline = outline.turned(turn.angle, turn.about);
        angle = angle.then(turn.angle);
    }
    let shown = Region::from(&outline);
    Laid { outline, shown, angle, mirrored: copy.image.is_some() }
}

/// The turns of what a layer lies on, that layer's own first.
fn frame_on(design: &Design, layout: &Layout, layer: &Layer) -> Vec<Turn> {
    match layer.onto {
        Onto::Card => Vec::new(),
        Onto::Layer(below) => frame_within(design, layout, below),
    }
}

/// The turns of the frame that everything on a layer lies straight in: the layer's own, then those of its
/// frame.
#[must_use]
pub fn frame_within(design: &Design, layout: &Layout, id: LayerId) -> Vec<Turn> {
    let (own, placed) = (design.layer(id), layout.placed(id));
    let tilt = own.tilt.map(|tilt| Turn {
        angle: tilt.angle,
        about: repeat::pivot(tilt.about, placed.copies.first().copied().unwrap_or(placed.block)),
    });
    tilt.into_iter().chain(placed.frame.iter().copied()).collect()
}

/// Where a block of a given length starts between two edges; a middle that falls between two nanometres
/// is rounded half up, relative to what the block lies on.
fn start(along: Along, (low, high): (i64, i64), length: i64, of: impl Fn(LayerId) -> (i64, i64)) -> i64 {
    let middle = |low: i64, high: i64| low + (high - low - length + 1).div_euclid(2);
    match along {
        Along::Centre => middle(low, high),
        Along::FromLow(distance) => low + distance.nm(),
        Along::FromHigh(distance) => high - distance.nm() - length,
        Along::After(other, gap) => of(other).1 + gap.nm(),
        Along::Before(other, gap) => of(other).0 - gap.nm() - length,
        Along::With(other, Part::Low) => of(other).0,
        Along::With(other, Part::High) => of(other).1 - length,
        Along::With(other, Part::Middle) => middle(of(other).0, of(other).1),
        Along::Midway(one, other) => {
            let reach = |bound: Bound| match bound {
                Bound::Low => (low, low),
                Bound::High => (high, high),
                Bound::Layer(layer) => of(layer),
            };
            let (one, other) = (reach(one), reach(other));
            // The lower is the one whose middle is; where both have one middle, that is meant.
            match (one.0 + one.1).cmp(&(other.0 + other.1)) {
                Ordering::Less => middle(one.1, other.0),
                Ordering::Greater => middle(other.1, one.0),
                Ordering::Equal => middle(one.0, one.1),
            }
        }
    }
}

/// The layers that lie on a layer, directly or one on another.
#[must_use]
pub fn stack_on(design: &Design, base: LayerId) -> Vec<LayerId> {
    let lies_on = |layer: &Layer, under: &[LayerId]| matches!(layer.onto, Onto::Layer(on) if under.contains(&on));
    let mut stack = vec![base];
    for id in design.layer_ids() {
        if id != base && lies_on(design.layer(id), &stack) {
            stack.push(id);
        }
    }
    stack.remove(0);
    stack
}

/// A point of a frame on its face.
#[must_use]
pub fn on_face(frame: &[Turn], point: Point) -> Point {
    frame.iter().fold(point, |point, turn| point.turned(turn.angle, turn.about))
}
