//! Areas laid over each other: what they share, cover together, and leave of each other.
//!
//! The 64-bit integer engine of `i_overlay` works on the nanometres as they are, neither shifted nor
//! scaled: it allows coordinates to 2^62, and [`super::FARTHEST`] lies below 2^39 (24 in are 609 600 000 nm,
//! below 2^30). Corners that stood in the input come back as they were; a new corner, where edges cross, is
//! rounded to a nanometre, which can move an edge that it lies on by as much. Areas of upright rectangles
//! are therefore exact, others right to about a nanometre times the length of the edges that cross.

use super::ring::signed_area2;
use super::{Angle, Mirror, Point, Polygon, Rect};
use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay::{IntOverlayOptions, Overlay};
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::core::solver::Solver;
use i_overlay::i_float::int::point::IntPoint;

/// An area of any number of parts, none of which lies on another; nothing at all is one too.
///
/// Parts stand in one order, so that equal areas are equal values.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Default)]
pub struct Region {
    parts: Vec<Polygon>,
}

/// Contours as the engine takes them, each a closed list of points.
pub(super) type Contours = Vec<Vec<IntPoint<i64>>>;

impl Region {
    /// Nothing.
    #[must_use]
    pub const fn empty() -> Self {
        Self { parts: Vec::new() }
    }

    /// Everything that any of the polygons covers.
    #[must_use]
    pub fn covered_by(polygons: &[Polygon]) -> Self {
        let contours: Contours = polygons.iter().flat_map(Polygon::rings).map(contour).collect();
        Self::laid_over(&contours, &Contours::new(), OverlayRule::Subject)
    }

    /// Its parts.
    #[must_use]
    pub fn parts(&self) -> &[Polygon] {
        &self.parts
    }

    /// Nothing at all?
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.parts.is_empty()
    }

    /// Twice its area in square nanometres.
    #[must_use]
    pub fn area2(&self) -> i128 {
        self.parts.iter().map(Polygon::area2).sum()
    }

    /// The upright rectangle round all of it; none round nothing.
    #[must_use]
    pub fn bounds(&self) -> Option<Rect> {
        self.parts.iter().map(Polygon::bounds).reduce(Rect::hull)
    }

    /// All rings of all parts.
    pub(super) fn rings(&self) -> impl Iterator<Item = &[Point]> {
        self.parts.iter().flat_map(Polygon::rings)
    }

    /// What both cover.
    #[must_use]
    pub fn intersection(&self, other: &Self) -> Self {
        self.with(other, OverlayRule::Intersect)
    }

    /// What either covers.
    #[must_use]
    pub fn union(&self, other: &Self) -> Self {
        self.with(other, OverlayRule::Union)
    }

    /// What this covers and the other does not.
    #[must_use]
    pub fn difference(&self, other: &Self) -> Self {
        self.with(other, OverlayRule::Difference)
    }

    /// Moved by `x`, `y`.
    #[must_use]
    pub fn moved(&self, x: i64, y: i64) -> Self {
        Self::of(self.parts.iter().map(|part| part.moved(x, y)).collect())
    }

    /// Mirrored within `frame`, exactly.
    #[must_use]
    pub fn mirrored(&self, mirror: Mirror, frame: Rect) -> Self {
        Self::of(self.parts.iter().map(|part| part.mirrored(mirror, frame)).collect())
    }

    /// Turned about `pivot` as [`Polygon::turned`] does.
    #[must_use]
    pub fn turned(&self, angle: Angle, pivot: Point) -> Self {
        Self::of(self.parts.iter().map(|part| part.turned(angle, pivot)).collect())
    }

    /// The contours for the engine.
    pub(super) fn contours(&self) -> Contours {
        self.rings().map(contour).collect()
    }

    fn of(mut parts: Vec<Polygon>) -> Self {
        parts.sort();
        Self { parts }
    }

    fn with(&self, other: &Self, rule: OverlayRule) -> Self {
        Self::laid_over(&self.contours(), &other.contours(), rule)
    }

    fn laid_over(under: &Contours, over: &Contours, rule: OverlayRule) -> Self {
        // Simple rings only (`ogc`): two parts that meet in one corner stay two.
        let options = IntOverlayOptions { ogc: true, ..IntOverlayOptions::default() };
        let mut engine = Overlay::<i64>::from_subj_and_clip_custom(under, over, options, Solver::AUTO);
        let point = |at: IntPoint<i64>| Point::new(at.x, at.y);
        let parts = engine.overlay(rule, FillRule::NonZero).into_iter().filter_map(|shape| {
            let mut rings = shape
                .into_iter()
                .map(|ring| ring.into_iter().map(point).collect::<Vec<_>>())
                .filter(|ring| ring.len() > 2 && signed_area2(ring) != 0);
            let outer = rings.next()?;
            Some(Polygon::trusted(outer, rings.collect()))
        });
        Self::of(parts.collect())
    }
}

impl From<Polygon> for Region {
    fn from(polygon: Polygon) -> Self {
        Self { parts: vec![polygon] }
    }
}

impl From<&Polygon> for Region {
    fn from(polygon: &Polygon) -> Self {
        polygon.clone().into()
    }
}

impl From<Rect> for Region {
    fn from(rect: Rect) -> Self {
        Polygon::from(rect).into()
    }
}

/// What can be seen of each layer of a stack, lowest first: itself less everything that lies above it. A
/// window in an upper layer lets a lower one be seen.
#[must_use]
pub fn visible(stack: &[Region]) -> Vec<Region> {
    let mut above = Region::empty();
    let mut seen: Vec<Region> = Vec::with_capacity(stack.len());
    for layer in stack.iter().rev() {
        seen.push(layer.difference(&above));
        above = above.union(layer);
    }
    seen.reverse();
    seen
}

fn contour(ring: &[Point]) -> Vec<IntPoint<i64>> {
    ring.iter().map(|corner| IntPoint::new(corner.x, corner.y)).collect()
}
