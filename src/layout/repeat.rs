//! The copies of one layer, in the frame of what it lies on.
//!
//! Takes an arrangement and the size of one copy, gives rectangles with the turns that the arrangement
//! itself asks for. Must never know what the layer lies on, except where copies are mirrored in it.

use super::model::Turn;
use crate::design::model::{Arrangement, Layer, Pivot};
use crate::geometry::{Angle, Edge, Mirror, Point, Rect};
use crate::length::{Size, Units};

/// One copy before the turns of its layer and of what that lies on.
#[derive(Debug, Clone, Copy)]
pub(super) struct Copy {
    /// Its rectangle; of a mirrored copy the image's.
    pub(super) rect: Rect,
    /// Quarter turns to the left, besides the layer's own.
    pub(super) quarter_turns: u8,
    /// The point that the layer's own turn is about; of a mirrored copy the original's.
    pub(super) pivot: Point,
    /// Its own turn in a fan; of a mirrored copy the original's.
    pub(super) fan: Option<Turn>,
    /// How it is mirrored, if it is.
    pub(super) image: Option<Mirror>,
}

impl Copy {
    pub(super) fn moved(self, x: i64, y: i64) -> Self {
        let moved = |point: Point| Point::new(point.x + x, point.y + y);
        Self {
            rect: self.rect.moved(x, y),
            pivot: moved(self.pivot),
            fan: self.fan.map(|turn| Turn { about: moved(turn.about), ..turn }),
            ..self
        }
    }

    pub(super) fn mirrored(self, mirror: Mirror, within: Rect) -> Self {
        Self { rect: self.rect.mirrored(mirror, within), image: Some(mirror), ..self }
    }
}

/// Every copy of a layer, `size` being one copy as it lies; where the block stands is of no account.
pub(super) fn copies(layer: &Layer, size: Size, units: Units) -> Vec<Copy> {
    let about = layer.tilt.map_or(Pivot::Middle, |tilt| tilt.about);
    let (width, height) = (size.width.nm(), size.height.nm());
    let copy = |left: i64, bottom: i64| Copy {
        rect: Rect::at(left, bottom, width, height),
        quarter_turns: 0,
        pivot: pivot(about, Rect::at(left, bottom, width, height)),
        fan: None,
        image: None,
    };
    match layer.arrangement {
        Arrangement::Single | Arrangement::Row { .. } | Arrangement::Column { .. } | Arrangement::Grid { .. } => {
            let (columns, rows) = layer.arrangement.columns_rows();
            let (columns, rows) = (i64::from(columns.max(1)), i64::from(rows.max(1)));
            let (across, down) = layer.arrangement.gaps(units);
            let (across, down) = (width + across.nm(), height + down.nm());
            let place = |row: i64, column: i64| copy(column * across, (rows - 1 - row) * down);
            (0..rows).flat_map(|row| (0..columns).map(move |column| place(row, column))).collect()
        }
        Arrangement::Steps { count, right, up } => {
            (0..i64::from(count)).map(|step| copy(step * right.nm(), step * up.nm())).collect()
        }
        Arrangement::Triangle { rows, across, down, points_up } => {
            let (across, down) = (width + across.nm(), height + down.nm());
            let rows = i64::from(rows);
            let row = |from_top: i64| {
                let count = if points_up { from_top + 1 } else { rows - from_top };
                // The longest row begins at nothing; the others are centred over it.
                let left = ((rows - count) * across + 1).div_euclid(2);
                (0..count).map(move |column| copy(left + column * across, (rows - 1 - from_top) * down))
            };
            (0..rows).flat_map(row).collect()
        }
        Arrangement::Fan { count, step, about } => {
            let step = i64::from(step.hundredths());
            let leftmost = (step * (i64::from(count) - 1)).div_euclid(2);
            let lies = copy(0, 0);
            let fanned = (0..i64::from(count)).map(|place| {
                let turn = Turn { angle: Angle::left(leftmost - place * step), about: pivot(about, lies.rect) };
                Copy { fan: Some(turn), ..lies }
            });
            fanned.collect()
        }
        Arrangement::Pinwheel { clockwise } => pinwheel(width, height, clockwise)
            .into_iter()
            .map(|(rect, quarter_turns)| Copy { rect, quarter_turns, pivot: pivot(about, rect), ..copy(0, 0) })
            .collect(),
    }
}

/// Four strips round a square: left, top, right, bottom, each turned a quarter to the right from the one
/// before, or the mirror image of that.
fn pinwheel(width: i64, height: i64, clockwise: bool) -> [(Rect, u8); 4] {
    let (short, long) = (width.min(height), width.max(height));
    // A strip written lying down stands up first.
    let first = u8::from(width > height);
    let square = Rect::at(0, 0, short + long, short + long);
    let ring = [
        (Rect::at(0, 0, short, long), first),
        (Rect::at(0, long, long, short), first + 3),
        (Rect::at(long, short, short, long), first + 2),
        (Rect::at(short, 0, long, short), first + 1),
    ];
    ring.map(|(rect, turns)| {
        let rect = if clockwise { rect } else { rect.mirrored(Mirror::TopToBottom, square) };
        (rect, turns % 4)
    })
}

/// The point of a rectangle that is turned about.
#[must_use]
pub fn pivot(about: Pivot, rect: Rect) -> Point {
    match about {
        Pivot::Middle => rect.middle(),
        Pivot::Corner(corner) => corner.of(rect),
        Pivot::Edge(edge) => {
            let middle = rect.middle();
            match edge {
                Edge::Left | Edge::Right => Point::new(rect.edge(edge), middle.y),
                Edge::Top | Edge::Bottom => Point::new(middle.x, rect.edge(edge)),
            }
        }
        Pivot::Point(left, bottom) => Point::new(rect.left + left.nm(), rect.bottom + bottom.nm()),
    }
}

/// The smallest rectangle round all copies.
pub(super) fn hull(copies: &[Copy]) -> Rect {
    copies.iter().map(|copy| copy.rect).reduce(Rect::hull).unwrap_or(Rect::at(0, 0, 0, 0))
}
