//! How two areas lie to each other: apart, touching, overlapping, one inside the other.

use super::overlay::Region;
use super::point::{is_between, side_of};
use super::polygon::place_among;
use super::ring::{Meeting, edges, meeting};
use super::{Place, Point, TOLERANCE};

/// How one area lies to another.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Relation {
    /// They share no point.
    Apart,
    /// They share points of their edges only.
    Touching,
    /// They share a part, and each has a part of its own.
    Overlapping,
    /// The first lies within the second, edges touching or not.
    Inside,
    /// The second lies within the first, edges touching or not.
    Around,
    /// They cover the same.
    Same,
}

impl Relation {
    /// The same, told from the other area.
    #[must_use]
    pub const fn from_the_other(self) -> Self {
        match self {
            Self::Inside => Self::Around,
            Self::Around => Self::Inside,
            same => same,
        }
    }
}

/// What two areas are compared by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Comparison {
    /// By the nanometre: both unturned, quarter turned or mirrored.
    Exact,
    /// One of them turned by another angle, so that its corners are rounded: a common part or a part that
    /// stands out counts only if a disc of [`TOLERANCE`] fits into it, and edges touch when they come as
    /// near as that.
    Turned,
}

/// How `one` lies to `other`. Nothing at all lies apart from everything.
#[must_use]
pub fn relation(one: &Region, other: &Region, by: Comparison) -> Relation {
    if one.is_empty() || other.is_empty() {
        return Relation::Apart;
    }
    match by {
        Comparison::Exact => exact(one, other),
        Comparison::Turned => turned(one, other),
    }
}

fn named(overlap: bool, one_stands_out: bool, other_stands_out: bool, contact: impl FnOnce() -> bool) -> Relation {
    match (overlap, one_stands_out, other_stands_out) {
        (true, false, false) => Relation::Same,
        (true, false, true) => Relation::Inside,
        (true, true, false) => Relation::Around,
        (true, true, true) => Relation::Overlapping,
        (false, ..) if contact() => Relation::Touching,
        (false, ..) => Relation::Apart,
    }
}

fn turned(one: &Region, other: &Region) -> Relation {
    named(
        one.intersection(other).holds_disc(TOLERANCE),
        one.difference(other).holds_disc(TOLERANCE),
        other.difference(one).holds_disc(TOLERANCE),
        || is_within(one, other, TOLERANCE),
    )
}

/// Where the stretches of one area's edges run, as seen from the other.
#[derive(Default)]
struct Course {
    inside: bool,
    outside: bool,
    along: bool,
    against: bool,
}

type Stretch = (Point, Point);

fn exact(one: &Region, other: &Region) -> Relation {
    let (first, second): (Vec<Stretch>, Vec<Stretch>) =
        (one.rings().flat_map(edges).collect(), other.rings().flat_map(edges).collect());
    let mut contact = false;
    // Corners of the one that lie on an edge of the other, by edge.
    let mut on_first = vec![Vec::new(); first.len()];
    let mut on_second = vec![Vec::new(); second.len()];
    for (a, stops_a) in first.iter().zip(&mut on_first) {
        for (b, stops_b) in second.iter().zip(&mut on_second) {
            match meeting(*a, *b) {
                // Edges that cross leave paper of both on all four sides.
                Some(Meeting::Cross) => return Relation::Overlapping,
                Some(Meeting::Touch(_)) => {
                    contact = true;
                    stops_a.extend([b.0, b.1].into_iter().filter(|end| lies_on(*a, *end)));
                    stops_b.extend([a.0, a.1].into_iter().filter(|end| lies_on(*b, *end)));
                }
                None => {}
            }
        }
    }
    // No edges cross, so between two stops every stretch keeps to one side of the other area, and its
    // middle speaks for it.
    let one_seen = course(&first, on_first, &second, other);
    let other_seen = course(&second, on_second, &first, one);
    named(
        one_seen.inside || other_seen.inside || one_seen.along,
        one_seen.outside || other_seen.inside || one_seen.against,
        other_seen.outside || one_seen.inside || one_seen.against,
        || contact,
    )
}

fn lies_on(stretch: Stretch, point: Point) -> bool {
    side_of(stretch.0, stretch.1, point) == 0 && is_between(stretch.0, stretch.1, point)
}

/// Twice a point, so that the middle of two points is a point too.
const fn twice(point: Point) -> Point {
    Point::new(2 * point.x, 2 * point.y)
}

fn course(stretches: &[Stretch], stops: Vec<Vec<Point>>, others: &[Stretch], area: &Region) -> Course {
    let doubled: Vec<Vec<Point>> = area.rings().map(|ring| ring.iter().copied().map(twice).collect()).collect();
    let mut seen = Course::default();
    for (&(a, b), mut stops) in stretches.iter().zip(stops) {
        stops.extend([a, b]);
        stops.sort_by_key(|stop| a.distance_squared(*stop));
        stops.dedup();
        for pair in stops.windows(2) {
            let middle = pair[0].moved(pair[1].x, pair[1].y);
            match place_among(doubled.iter().map(Vec::as_slice), middle) {
                Place::Inside => seen.inside = true,
                Place::Outside => seen.outside = true,
                Place::OnEdge => {
                    let same_way = others.iter().any(|&(c, d)| {
                        let (along, other) = (b.from(a), d.from(c));
                        lies_on((twice(c), twice(d)), middle)
                            && i128::from(along.x) * i128::from(other.x) + i128::from(along.y) * i128::from(other.y) > 0
                    });
                    if same_way { seen.along = true } else { seen.against = true }
                }
            }
        }
    }
    seen
}

/// Whether the edges of two areas come as near as `most` anywhere. Exact.
fn is_within(one: &Region, other: &Region, most: i64) -> bool {
    one.rings().flat_map(edges).any(|a| {
        other.rings().flat_map(edges).any(|b| {
            let far = |p: i64, q: i64, r: i64, s: i64| p.max(q) + most < r.min(s) || r.max(s) + most < p.min(q);
            !far(a.0.x, a.1.x, b.0.x, b.1.x)
                && !far(a.0.y, a.1.y, b.0.y, b.1.y)
                && (meeting(a, b).is_some()
                    || [(a, b.0), (a, b.1), (b, a.0), (b, a.1)]
                        .into_iter()
                        .any(|(stretch, end)| is_end_within(stretch, end, most)))
        })
    })
}

fn is_end_within((a, b): Stretch, point: Point, most: i64) -> bool {
    let square = i128::from(most) * i128::from(most);
    if stands_beside((a, b), point) {
        // distance = side / length, compared without a root. A large side is far away, and its square
        // might not fit.
        let side = side_of(a, b, point).abs();
        let rough = i128::from(most) * (i128::from((b.x - a.x).abs()) + i128::from((b.y - a.y).abs()));
        side <= rough && side * side <= square * a.distance_squared(b)
    } else {
        a.distance_squared(point).min(b.distance_squared(point)) <= square
    }
}

/// Whether the foot of the perpendicular from `point` lies on the stretch.
fn stands_beside((a, b): Stretch, point: Point) -> bool {
    let dot = |p: Point, q: Point| i128::from(p.x) * i128::from(q.x) + i128::from(p.y) * i128::from(q.y);
    a != b && dot(b.from(a), point.from(a)) >= 0 && dot(a.from(b), point.from(b)) >= 0
}

/// The smallest distance between the edges of two areas, to the nearest nanometre: nothing where they meet
/// or cross; for an area inside another it is the narrowest border. `None` when either is nothing.
#[must_use]
pub fn distance(one: &Region, other: &Region) -> Option<i64> {
    let mut least: Option<f64> = None;
    for a in one.rings().flat_map(edges) {
        for b in other.rings().flat_map(edges) {
            if meeting(a, b).is_some() {
                return Some(0);
            }
            for (stretch, end) in [(a, b.0), (a, b.1), (b, a.0), (b, a.1)] {
                let away = away_from(stretch, end);
                least = Some(least.map_or(away, |known| known.min(away)));
            }
        }
    }
    least.map(|away| libm::round(away) as i64)
}

/// How far the corner of `one` that lies farthest from the edges of `other` lies from them, to the nearest
/// nanometre, and the corner. `None` when either is nothing.
#[must_use]
pub fn farthest(one: &Region, other: &Region) -> Option<(i64, Point)> {
    let mut most: Option<(f64, Point)> = None;
    for &corner in one.rings().flatten() {
        let stretches = other.rings().flat_map(edges);
        let away = stretches.map(|stretch| away_from(stretch, corner)).reduce(f64::min)?;
        if most.is_none_or(|(known, _)| away > known) {
            most = Some((away, corner));
        }
    }
    most.map(|(away, corner)| (libm::round(away) as i64, corner))
}

/// How far a point lies from a stretch.
fn away_from((p, q): Stretch, point: Point) -> f64 {
    if stands_beside((p, q), point) {
        // Both are whole numbers; a float carries them to one part in 2^52.
        side_of(p, q, point).abs() as f64 / libm::sqrt(p.distance_squared(q) as f64)
    } else {
        libm::sqrt(p.distance_squared(point).min(q.distance_squared(point)) as f64)
    }
}
