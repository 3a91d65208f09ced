//! How far a strip at an angle must reach to go right across a shape.

use super::ring::edges;
use super::{Angle, Point, Polygon};

/// A stretch along a direction, measured from a point in nanometres; forward is positive.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Span {
    /// Where it begins.
    pub from: i64,
    /// Where it ends, at or after `from`.
    pub to: i64,
}

impl Span {
    /// Its length.
    #[must_use]
    pub const fn length(self) -> i64 {
        self.to - self.from
    }

    /// How long a strip must be whose middle lies on the point measured from.
    #[must_use]
    pub const fn centred(self) -> i64 {
        let (back, ahead) = (-self.from, self.to);
        2 * if back > ahead { back } else { ahead }
    }
}

/// The stretch that a strip of `width` nanometres covers on `polygon`, when its middle line runs through
/// `through` in the direction that lies `along` to the left of rightward: from the first to the last point
/// of the polygon under the strip, gaps and holes between them not taken off.
///
/// A strip with square ends must be at least as long to be trimmed flush all round. With a width of nothing
/// it is the distance along the line itself. `None` where the strip misses the polygon; one that only runs
/// along its edge covers that edge.
///
/// Exact along whole quarter turns; at other angles to the nearest nanometre.
#[must_use]
pub fn span(polygon: &Polygon, through: Point, along: Angle, width: i64) -> Option<Span> {
    let (cosine, sine) = along.unit();
    // Along and aside of the strip's middle line; below 2^40, so that floats err by less than 2^-11 nm.
    let seen = |corner: Point| {
        let (x, y) = ((corner.x - through.x) as f64, (corner.y - through.y) as f64);
        (x * cosine + y * sine, y * cosine - x * sine)
    };
    let half = width.max(0) as f64 / 2.0;
    // A corner meant to lie on the strip's edge may have been rounded off it, once for the corner and once
    // for the strip.
    let slack = if along.whole_quarters().is_some() { 0.0 } else { 1.5 };
    let mut reach: Option<(f64, f64)> = None;
    let mut note = |at: f64| {
        reach = Some(reach.map_or((at, at), |(low, high)| (low.min(at), high.max(at))));
    };
    for (a, b) in edges(polygon.outer()) {
        let ((along_a, aside_a), (along_b, aside_b)) = (seen(a), seen(b));
        if aside_a.abs() <= half + slack {
            note(along_a);
        }
        for line in [-half, half] {
            if (aside_a < line) != (aside_b < line) && aside_a != aside_b {
                let share = (line - aside_a) / (aside_b - aside_a);
                note(along_a + share * (along_b - along_a));
            }
        }
    }
    reach.map(|(from, to)| Span { from: libm::round(from) as i64, to: libm::round(to) as i64 })
}
