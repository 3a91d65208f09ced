//! A polygon: an outer ring, and the rings of the holes in it.

use super::point::{is_between, side_of};
use super::ring::{Meeting, check, edges, in_order, meeting, signed_area2};
use super::{Angle, Mirror, Point, Rect, RingFault};

/// A simple polygon with holes, in one form: the outer ring counter-clockwise, the holes clockwise, no
/// corner in line with its neighbours, each ring starting at its leftmost (then lowest) corner, the holes
/// in the order of their first corners. Equal polygons are therefore equal values.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Polygon {
    outer: Vec<Point>,
    holes: Vec<Vec<Point>>,
}

/// Why rings make no polygon. Holes are counted from 0 in the order given.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PolygonFault {
    /// The outer ring is not simple.
    Outer(RingFault),
    /// The ring of a hole is not simple.
    Hole {
        /// Which hole.
        hole: usize,
        /// What is wrong with its ring.
        fault: RingFault,
    },
    /// A hole reaches the outer ring or lies outside it.
    HoleReachesOut {
        /// Which hole.
        hole: usize,
        /// A point of the hole that does not lie within, or where the rings meet.
        at: Point,
    },
    /// Two holes meet, or one lies in the other.
    HolesMeet {
        /// The earlier hole.
        first: usize,
        /// The later hole.
        second: usize,
        /// A point that belongs to both.
        at: Point,
    },
}

/// Where a point lies to a polygon.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Place {
    /// Inside, and not in a hole.
    Inside,
    /// On the edge of the polygon or of a hole.
    OnEdge,
    /// Outside, or in a hole.
    Outside,
}

/// Where `point` lies to the area that rings enclose, outer rings and holes alike. Exact.
pub(super) fn place_among<'a>(rings: impl Iterator<Item = &'a [Point]>, point: Point) -> Place {
    let mut inside = false;
    for (a, b) in rings.flat_map(edges) {
        let side = side_of(a, b, point);
        if side == 0 && is_between(a, b, point) {
            return Place::OnEdge;
        }
        // An edge that passes to the right of the point, at its height.
        if (a.y > point.y) != (b.y > point.y) && (side > 0) == (b.y > a.y) {
            inside = !inside;
        }
    }
    if inside { Place::Inside } else { Place::Outside }
}

fn where_rings_meet(one: &[Point], other: &[Point]) -> Option<Point> {
    edges(one).find_map(|a| {
        edges(other).find_map(|b| match meeting(a, b)? {
            Meeting::Cross => Some(super::point::crossing(a, b)),
            Meeting::Touch(at) => Some(at),
        })
    })
}

impl Polygon {
    /// A polygon without holes from its corners, in either direction.
    ///
    /// # Errors
    /// The corners make no simple ring.
    pub fn new(corners: Vec<Point>) -> Result<Self, RingFault> {
        check(&corners)?;
        Ok(Self::trusted(corners, Vec::new()))
    }

    /// A polygon with holes, rings in either direction. Holes lie within the outer ring and apart from it
    /// and from each other.
    ///
    /// # Errors
    /// A ring is not simple, or a hole reaches out or meets another.
    pub fn with_holes(outer: Vec<Point>, holes: Vec<Vec<Point>>) -> Result<Self, PolygonFault> {
        check(&outer).map_err(PolygonFault::Outer)?;
        for (hole, ring) in holes.iter().enumerate() {
            check(ring).map_err(|fault| PolygonFault::Hole { hole, fault })?;
            if let Some(at) = where_rings_meet(ring, &outer) {
                return Err(PolygonFault::HoleReachesOut { hole, at });
            }
            // No edges meet, so one corner speaks for the whole ring.
            if place_among([outer.as_slice()].into_iter(), ring[0]) != Place::Inside {
                return Err(PolygonFault::HoleReachesOut { hole, at: ring[0] });
            }
            for (first, before) in holes[..hole].iter().enumerate() {
                let within =
                    |a: &[Point], b: &[Point]| (place_among([b].into_iter(), a[0]) != Place::Outside).then_some(a[0]);
                let meets = where_rings_meet(before, ring);
                if let Some(at) = meets.or_else(|| within(ring, before)).or_else(|| within(before, ring)) {
                    return Err(PolygonFault::HolesMeet { first, second: hole, at });
                }
            }
        }
        Ok(Self::trusted(outer, holes))
    }

    /// Rings that are known to be simple and to lie as they must.
    pub(crate) fn trusted(outer: Vec<Point>, holes: Vec<Vec<Point>>) -> Self {
        let outer = in_order(outer, true);
        let mut holes: Vec<Vec<Point>> = holes.into_iter().map(|ring| in_order(ring, false)).collect();
        holes.sort();
        Self { outer, holes }
    }

    /// The outer ring, counter-clockwise.
    #[must_use]
    pub fn outer(&self) -> &[Point] {
        &self.outer
    }

    /// The rings of the holes, clockwise.
    #[must_use]
    pub fn holes(&self) -> &[Vec<Point>] {
        &self.holes
    }

    /// All rings, the outer one first.
    pub fn rings(&self) -> impl Iterator<Item = &[Point]> {
        std::iter::once(self.outer.as_slice()).chain(self.holes.iter().map(Vec::as_slice))
    }

    /// Twice its area in square nanometres, holes taken off. Exact.
    #[must_use]
    pub fn area2(&self) -> i128 {
        self.rings().map(signed_area2).sum()
    }

    /// The upright rectangle round it.
    #[must_use]
    pub fn bounds(&self) -> Rect {
        let first = self.outer[0];
        self.outer.iter().fold(Rect::between(first, first), |all, corner| all.hull(Rect::between(*corner, *corner)))
    }

    /// Where a point lies. Exact.
    #[must_use]
    pub fn place_of(&self, point: Point) -> Place {
        place_among(self.rings(), point)
    }

    /// Moved by `x`, `y`.
    #[must_use]
    pub fn moved(&self, x: i64, y: i64) -> Self {
        self.each(|corner| corner.moved(x, y))
    }

    /// Mirrored within `frame`, exactly.
    #[must_use]
    pub fn mirrored(&self, mirror: Mirror, frame: Rect) -> Self {
        self.each(|corner| corner.mirrored(mirror, frame))
    }

    /// Turned to the left by quarter turns together with `frame`, whose lower left corner keeps its place.
    /// Exact.
    #[must_use]
    pub fn quarter_turned_in(&self, turns: u8, frame: Rect) -> Self {
        self.each(|corner| corner.quarter_turned_in(turns, frame))
    }

    /// Turned about `pivot`: exactly by whole quarter turns, else each corner as [`Point::turned`] says.
    #[must_use]
    pub fn turned(&self, angle: Angle, pivot: Point) -> Self {
        self.each(|corner| corner.turned(angle, pivot))
    }

    /// Its holes left out.
    #[must_use]
    pub fn filled(&self) -> Self {
        Self { outer: self.outer.clone(), holes: Vec::new() }
    }

    fn each(&self, change: impl Fn(Point) -> Point) -> Self {
        let ring = |ring: &Vec<Point>| ring.iter().copied().map(&change).collect();
        Self::trusted(ring(&self.outer), self.holes.iter().map(ring).collect())
    }
}

impl From<Rect> for Polygon {
    fn from(rect: Rect) -> Self {
        Self::trusted(rect.corners().to_vec(), Vec::new())
    }
}
