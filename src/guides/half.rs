//! Half a frame: two arms that register in a corner, where a whole one does not fit the page.

use super::frame::Frame;
use crate::design::model::Design;
use crate::geometry::{Corner, Mirror, Point, Polygon, Rect};
use crate::length::Length;

/// Half of a frame.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Half {
    /// The corner of what it lies on that it registers in.
    pub corner: Corner,
    /// Its outline, in the coordinates of the frame. The inner corner is that of the opening.
    pub outline: Polygon,
}

/// Half of a frame that is no larger than one of the `limits` (width, height); none where the frame has several
/// openings, or its edges and those of its opening are not straight and level, or where an arm would not reach along
/// the piece by 1 in or 25 mm, or by all of it. The corner nearest to the opening is taken.
#[must_use]
pub fn half(design: &Design, frame: &Frame, limits: &[(i64, i64)]) -> Option<Half> {
    let outer = frame.outline.bounds();
    let [opening] = frame.openings.parts() else { return None };
    let inner = opening.bounds();
    if frame.outline != Polygon::from(outer) || *opening != Polygon::from(inner) {
        return None;
    }
    let hold = Length::either(design.units, Length::inch(1, 1), Length::mm(25)).nm();
    let mut found: Option<(i64, Half)> = None;
    for corner in Corner::ALL {
        // Laid as if it were the lower left one.
        let to_right = matches!(corner, Corner::LowerRight | Corner::UpperRight);
        let to_top = matches!(corner, Corner::UpperLeft | Corner::UpperRight);
        let across = if to_right { outer.right - inner.right } else { inner.left - outer.left };
        let up = if to_top { outer.top - inner.top } else { inner.bottom - outer.bottom };
        for (width, height) in limits {
            let (width, height) = (outer.width().min(*width), outer.height().min(*height));
            let reaches = width - across >= hold.min(inner.width()) && height - up >= hold.min(inner.height());
            if !reaches || found.as_ref().is_some_and(|(known, _)| *known <= across + up) {
                continue;
            }
            let at = |x: i64, y: i64| Point::new(outer.left + x, outer.bottom + y);
            let arms = Polygon::trusted(
                vec![at(0, 0), at(width, 0), at(width, up), at(across, up), at(across, height), at(0, height)],
                Vec::new(),
            );
            let arms = if to_right { arms.mirrored(Mirror::LeftToRight, outer) } else { arms };
            let outline = if to_top { arms.mirrored(Mirror::TopToBottom, outer) } else { arms };
            found = Some((across + up, Half { corner, outline }));
        }
    }
    found.map(|(_, half)| half)
}

/// The limits for what a title stands under, in a room: upright, and on its side.
pub(super) const fn limits(room: Rect, title: i64) -> [(i64, i64); 2] {
    [(room.width(), room.height() - title), (room.height(), room.width() - title)]
}
