//! What a piece takes up on the page: an upright rectangle, or any area with holes and parts.
//!
//! Upright rectangles are by far the most, and everything about them is told by their four edges; so
//! they are kept as such.

use super::area::Area;
use super::canvas::Canvas;
use super::scale::Frame;
use super::scene::{At, Item, Role};
use crate::geometry::{Angle, Point, Polygon, Rect, Region};
use std::rc::Rc;

/// An area on the page, never empty. Cheap to copy.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Outline {
    area: Area,
    /// Rings of which an odd number encloses each point inside; none: the rectangle itself.
    rings: Option<Rc<Vec<Vec<At>>>>,
}

impl From<Area> for Outline {
    fn from(area: Area) -> Self {
        Self { area, rings: None }
    }
}

/// The upright rectangle that a region is, if it is one.
#[must_use]
pub fn plain(region: &Region) -> Option<Rect> {
    let [only] = region.parts() else { return None };
    let bounds = only.bounds();
    (Polygon::from(bounds) == *only).then_some(bounds)
}

impl Outline {
    /// A region laid onto the page; none where there is nothing of it.
    #[must_use]
    pub fn of(frame: Frame, region: &Region) -> Option<Self> {
        if let Some(rect) = plain(region) {
            return Some(frame.area(rect).into());
        }
        let ring = |ring: &[Point]| ring.iter().map(|corner| frame.point(*corner)).collect();
        Self::of_rings(region.parts().iter().flat_map(Polygon::rings).map(ring).collect())
    }

    /// From closed rings; none where there are none.
    #[must_use]
    pub fn of_rings(rings: Vec<Vec<At>>) -> Option<Self> {
        let area = rings.iter().flatten().map(|at| Area::between(*at, *at)).reduce(Area::hull)?;
        Some(Self { area, rings: Some(Rc::new(rings)) })
    }

    /// The upright rectangle round it.
    #[must_use]
    pub const fn area(&self) -> Area {
        self.area
    }

    /// The rectangle that it is, if it is one.
    #[must_use]
    pub fn plain(&self) -> Option<Area> {
        self.rings.is_none().then_some(self.area)
    }

    /// Its closed rings.
    #[must_use]
    pub fn rings(&self) -> Vec<Vec<At>> {
        self.rings.as_ref().map_or_else(|| vec![self.area.corners().to_vec()], |rings| rings.to_vec())
    }

    fn edges(&self) -> impl Iterator<Item = (At, At)> + '_ {
        let own = self.rings.iter().flat_map(|rings| rings.iter());
        own.flat_map(|ring| ring.iter().copied().zip(ring.iter().copied().cycle().skip(1)))
    }

    /// Draws it as a closed shape.
    pub fn draw(&self, canvas: &mut Canvas, role: Role) {
        match &self.rings {
            None => canvas.area(role, self.area),
            Some(rings) => canvas.items.push(Item::Shape { role, rings: rings.to_vec() }),
        }
    }

    /// Draws its edges as open runs, which nothing fills.
    pub fn stroke(&self, canvas: &mut Canvas, role: Role) {
        for mut points in self.rings() {
            points.extend_from_within(..2.min(points.len()));
            canvas.items.push(Item::Path { role, points, closed: false });
        }
    }

    /// Turned to the left about a point of the page, by hundredths of a degree exactly rounded.
    #[must_use]
    pub fn turned(&self, angle: Angle, about: At) -> Self {
        if angle == Angle::NONE {
            return self.clone();
        }
        let rings = self.rings().into_iter().map(|ring| ring.into_iter().map(|at| turned(at, angle, about)).collect());
        Self::of_rings(rings.collect()).unwrap_or_else(|| self.clone())
    }

    /// The stretches of it along the level line at `y`, from left to right.
    #[must_use]
    pub fn stretches(&self, y: i64) -> Vec<(i64, i64)> {
        if self.rings.is_none() {
            let is_at = self.area.top < y && y < self.area.bottom;
            return if is_at { vec![(self.area.left, self.area.right)] } else { Vec::new() };
        }
        if y < self.area.top || self.area.bottom < y {
            return Vec::new();
        }
        let mut crossings: Vec<i64> = self
            .edges()
            .filter(|(a, b)| (a.y > y) != (b.y > y))
            .map(|(a, b)| {
                let share = i128::from(b.x - a.x) * i128::from(y - a.y);
                a.x + i64::try_from(share.div_euclid(i128::from(b.y - a.y))).unwrap_or(0)
            })
            .collect();
        crossings.sort_unstable();
        crossings.chunks_exact(2).map(|pair| (pair[0], pair[1])).filter(|(low, high)| low < high).collect()
    }

    /// The stretches at `y` that keep `inset` off its edges, above and below too.
    #[must_use]
    pub fn inner_stretches(&self, y: i64, inset: i64) -> Vec<(i64, i64)> {
        let near = [y - inset, y, y + inset].map(|y| self.stretches(y));
        let [above, at, below] = near.map(|stretches| {
            stretches
                .into_iter()
                .map(|(low, high)| (low + inset, high - inset))
                .filter(|(l, h)| l < h)
                .collect::<Vec<(i64, i64)>>()
        });
        common(&common(&at, &above), &below)
    }

    /// Whether a point lies within.
    #[must_use]
    pub fn holds(&self, at: At) -> bool {
        if self.rings.is_none() {
            return self.area.holds(at);
        }
        self.area.holds(at) && self.stretches(at.y).iter().any(|(low, high)| *low <= at.x && at.x <= *high)
    }

    fn is_parted(&self, area: Area) -> bool {
        self.edges().any(|(from, to)| area.is_crossed(from, to))
    }

    /// Whether an edge of it runs through `area`.
    #[must_use]
    pub fn divides(&self, area: Area) -> bool {
        if self.rings.is_none() {
            return self.area.overlaps(area) && !self.area.contains(area);
        }
        self.area.overlaps(area) && self.is_parted(area)
    }

    /// Whether the two share an area.
    #[must_use]
    pub fn overlaps(&self, area: Area) -> bool {
        self.area.overlaps(area) && (self.rings.is_none() || self.is_parted(area) || self.holds(area.middle()))
    }

    /// Whether `area` lies wholly within.
    #[must_use]
    pub fn contains(&self, area: Area) -> bool {
        self.area.contains(area) && (self.rings.is_none() || (!self.is_parted(area) && self.holds(area.middle())))
    }
}

/// What two lists of stretches share, both from left to right.
fn common(one: &[(i64, i64)], other: &[(i64, i64)]) -> Vec<(i64, i64)> {
    let each = one.iter().flat_map(|(low, high)| other.iter().map(move |(l, h)| (*low.max(l), *high.min(h))));
    each.filter(|(low, high)| low < high).collect()
}

/// A point of the page turned to the left about another.
#[must_use]
pub fn turned(at: At, angle: Angle, about: At) -> At {
    // The page's y runs downward, so a turn to the left is one to the right in its numbers.
    let point = Point::new(at.x, at.y).turned(angle.back(), Point::new(about.x, about.y));
    At::new(point.x, point.y)
}

#[cfg(test)]
mod tests {
    use super::*;

    const MM: i64 = 1_000_000;

    fn triangle() -> Outline {
        Outline::of_rings(vec![vec![At::new(0, 0), At::new(0, 10 * MM), At::new(10 * MM, 10 * MM)]]).unwrap()
    }

    #[test]
    fn a_window_is_not_within() {
        let ring = |area: Area| area.corners().to_vec();
        let (outer, hole) = (Area::at(0, 0, 20 * MM, 20 * MM), Area::at(5 * MM, 5 * MM, 10 * MM, 10 * MM));
        let frame = Outline::of_rings(vec![ring(outer), ring(hole)]).unwrap();
        assert!(!frame.holds(At::new(10 * MM, 10 * MM)) && frame.holds(At::new(2 * MM, 10 * MM)));
        assert_eq!(frame.stretches(10 * MM), [(0, 5 * MM), (15 * MM, 20 * MM)]);
        assert!(frame.contains(Area::at(MM, MM, 3 * MM, 3 * MM)));
        assert!(!frame.overlaps(hole.grown(-MM)) && frame.overlaps(hole.grown(MM)));
    }

    #[test]
    fn a_slope_bounds_what_lies_within() {
        let triangle = triangle();
        assert_eq!(triangle.stretches(4 * MM), [(0, 4 * MM)]);
        assert!(triangle.contains(Area::at(0, 5 * MM, 4 * MM, 4 * MM)));
        assert!(!triangle.contains(Area::at(0, 3 * MM, 4 * MM, 4 * MM)));
        assert!(!triangle.overlaps(Area::at(6 * MM, 0, 3 * MM, 3 * MM)));
    }

    #[test]
    fn a_turn_to_the_left_is_seen_to_the_left() {
        let up = turned(At::new(10, 0), Angle::quarters(1), At::new(0, 0));
        assert_eq!(up, At::new(0, -10), "from right to up, the page's y downward");
    }
}
