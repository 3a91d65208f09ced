//! A closed ring of corners: its area, and whether it is simple.

use super::point::{crossing, is_between, side_of};
use super::{FARTHEST, Point};

/// The most corners that a ring may have: enough for a circle of 24 in radius drawn within 1 µm, and few
/// enough that looking at every pair of edges stays quick.
pub const MOST_CORNERS: usize = 2_048;

/// Why a list of corners is no simple ring. Corners are counted from 0 in the order given; edge `n` runs
/// from corner `n` to the next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RingFault {
    /// Fewer than three corners.
    TooFewCorners {
        /// How many there are.
        corners: usize,
    },
    /// More than [`MOST_CORNERS`].
    TooManyCorners {
        /// How many there are.
        corners: usize,
    },
    /// A corner farther from the origin than [`FARTHEST`].
    TooFar {
        /// The corner.
        corner: usize,
    },
    /// A corner at the place of the one before it.
    Repeated {
        /// The second of the two.
        corner: usize,
    },
    /// The ring turns back on itself at a corner, leaving no paper between.
    FoldsBack {
        /// The corner.
        corner: usize,
    },
    /// Two edges cross.
    Crosses {
        /// The earlier edge.
        first: usize,
        /// The later edge.
        second: usize,
        /// Where, to the nearest nanometre.
        at: Point,
    },
    /// Two edges that are no neighbours touch or lie on each other.
    Touches {
        /// The earlier edge.
        first: usize,
        /// The later edge.
        second: usize,
        /// Where they meet (one of the points).
        at: Point,
    },
}

/// How two stretches meet, if they do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Meeting {
    /// Both go on across the other.
    Cross,
    /// An end of one lies on the other, at this point.
    Touch(Point),
}

/// How the stretches `a` and `b` meet. Exact.
pub(super) fn meeting(a: (Point, Point), b: (Point, Point)) -> Option<Meeting> {
    let apart = |p: i64, q: i64, r: i64, s: i64| p.max(q) < r.min(s) || r.max(s) < p.min(q);
    if apart(a.0.x, a.1.x, b.0.x, b.1.x) || apart(a.0.y, a.1.y, b.0.y, b.1.y) {
        return None;
    }
    let sides = [side_of(a.0, a.1, b.0), side_of(a.0, a.1, b.1), side_of(b.0, b.1, a.0), side_of(b.0, b.1, a.1)];
    if sides[0].signum() * sides[1].signum() < 0 && sides[2].signum() * sides[3].signum() < 0 {
        return Some(Meeting::Cross);
    }
    let touches = [(sides[0], a, b.0), (sides[1], a, b.1), (sides[2], b, a.0), (sides[3], b, a.1)];
    touches
        .into_iter()
        .find(|(side, stretch, end)| *side == 0 && is_between(stretch.0, stretch.1, *end))
        .map(|(_, _, end)| Meeting::Touch(end))
}

/// The edges of a ring, each from a corner to the next.
pub(super) fn edges(ring: &[Point]) -> impl Iterator<Item = (Point, Point)> + '_ {
    ring.iter().copied().zip(ring.iter().copied().cycle().skip(1))
}

/// Twice the signed area of a ring, positive when it runs counter-clockwise. Exact.
pub(super) fn signed_area2(ring: &[Point]) -> i128 {
    // Taken from the first corner, so that a ring far from the origin needs no larger numbers.
    let Some(&first) = ring.first() else { return 0 };
    edges(ring).map(|(a, b)| side_of(first, a, b)).sum()
}

fn is_too_far(corner: Point) -> bool {
    [corner.x, corner.y].into_iter().any(|at| !(-FARTHEST..=FARTHEST).contains(&at))
}

/// Whether the corners make a simple ring.
pub(super) fn check(ring: &[Point]) -> Result<(), RingFault> {
    let corners = ring.len();
    if corners < 3 {
        return Err(RingFault::TooFewCorners { corners });
    }
    if corners > MOST_CORNERS {
        return Err(RingFault::TooManyCorners { corners });
    }
    if let Some(corner) = ring.iter().position(|corner| is_too_far(*corner)) {
        return Err(RingFault::TooFar { corner });
    }
    let at = |corner: usize| ring[corner % corners];
    if let Some(corner) = (0..corners).find(|corner| at(*corner) == at(corner + corners - 1)) {
        return Err(RingFault::Repeated { corner });
    }
    for corner in 0..corners {
        let (before, here, after) = (at(corner + corners - 1), at(corner), at(corner + 1));
        let onward = here.from(before);
        let next = after.from(here);
        let dot = i128::from(onward.x) * i128::from(next.x) + i128::from(onward.y) * i128::from(next.y);
        if side_of(before, here, after) == 0 && dot < 0 {
            return Err(RingFault::FoldsBack { corner });
        }
    }
    for first in 0..corners {
        let one = (at(first), at(first + 1));
        // Neighbours share a corner and, not folding back, nothing else.
        for second in first + 2..corners {
            if first == 0 && second == corners - 1 {
                continue;
            }
            let other = (at(second), at(second + 1));
            match meeting(one, other) {
                Some(Meeting::Cross) => {
                    return Err(RingFault::Crosses { first, second, at: crossing(one, other) });
                }
                Some(Meeting::Touch(at)) => return Err(RingFault::Touches { first, second, at }),
                None => {}
            }
        }
    }
    Ok(())
}

/// The ring in its one form: counter-clockwise or clockwise as asked, no corner in line with its
/// neighbours, starting at the corner that lies farthest left (the lowest of those).
pub(super) fn in_order(mut ring: Vec<Point>, counter_clockwise: bool) -> Vec<Point> {
    if (signed_area2(&ring) > 0) != counter_clockwise {
        ring.reverse();
    }
    let corners = ring.len();
    let mut bent: Vec<Point> = (0..corners)
        .filter(|corner| {
            side_of(ring[(corner + corners - 1) % corners], ring[*corner], ring[(corner + 1) % corners]) != 0
        })
        .map(|corner| ring[corner])
        .collect();
    if bent.len() < 3 {
        // A ring of a few nanometres that rounding has flattened keeps its corners.
        bent = ring;
    }
    if let Some(first) = bent.iter().enumerate().min_by_key(|(_, corner)| **corner).map(|(at, _)| at) {
        bent.rotate_left(first);
    }
    bent
}
