//! Design to layout: exact rectangles from centring, distances, neighbours and rows.
//!
//! Takes a settled design, gives a [`Layout`] of the same number of layers. Cannot fail: what it
//! refers to was checked when the design was settled. Must never judge: that is the rules' work.

use super::model::{Layout, Placed};
use crate::design::model::{Along, Design, Layer, LayerId, Onto};
use crate::geometry::Rect;

/// Lays every layer of the front.
#[must_use]
pub fn place(design: &Design) -> Layout {
    let mut layout = Layout { card: design.card.as_ref().map(|card| card.size), layers: Vec::new() };
    for id in design.layer_ids() {
        let placed = place_layer(design, &layout, id);
        layout.layers.push(placed);
    }
    // Trimming may be to a layer that is laid later (a unit's mat is laid before, the card last).
    for id in design.layer_ids() {
        let target = design.layer(id).trim_flush.map(|target| layout.rect(target.value));
        let placed = &mut layout.layers[id.0];
        placed.trimmed = placed
            .copies
            .iter()
            .map(|copy| match target {
                Some(target) => copy.overlap(target),
                None => Some(*copy),
            })
            .collect();
    }
    layout
}

fn place_layer(design: &Design, layout: &Layout, id: LayerId) -> Placed {
    let layer = design.layer(id);
    let onto = layout.rect(layer.onto);
    let copy = design.piece(layer.piece).size.turned(layer.quarter_turns);
    let (width, height) = (copy.width.nm(), copy.height.nm());
    let (columns, rows) = layer.arrangement.columns_rows();
    let (columns, rows) = (i64::from(columns.max(1)), i64::from(rows.max(1)));
    let (across, down) = layer.arrangement.gaps(design.units);
    let (across, down) = (across.nm(), down.nm());
    let block_width = columns * width + (columns - 1) * across;
    let block_height = rows * height + (rows - 1) * down;

    let left = start(layer.across, onto.left, onto.right, block_width, |other| {
        let other = layout.placed(other).block;
        (other.left, other.right)
    });
    let bottom = start(layer.up, onto.bottom, onto.top, block_height, |other| {
        let other = layout.placed(other).block;
        (other.bottom, other.top)
    });

    let mut copies = Vec::new();
    for row in 0..rows {
        for column in 0..columns {
            copies.push(Rect::at(
                left + column * (width + across),
                bottom + (rows - 1 - row) * (height + down),
                width,
                height,
            ));
        }
    }
    // A negative gap (the rules refuse it) may put the first copy past the last: hull all of them.
    let block = copies.iter().copied().reduce(Rect::hull).unwrap_or(Rect::at(left, bottom, width, height));
    Placed { layer: id, onto, trimmed: copies.iter().copied().map(Some).collect(), copies, block }
}

/// Where a block of a given length starts between `low` and `high`; a centre that falls between
/// two nanometres is rounded half up, relative to what the block lies on.
fn start(along: Along, low: i64, high: i64, length: i64, of: impl Fn(LayerId) -> (i64, i64)) -> i64 {
    match along {
        Along::Centre => low + (high - low - length + 1).div_euclid(2),
        Along::FromLow(distance) => low + distance.nm(),
        Along::FromHigh(distance) => high - distance.nm() - length,
        Along::After(other, gap) => of(other).1 + gap.nm(),
        Along::Before(other, gap) => of(other).0 - gap.nm() - length,
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
