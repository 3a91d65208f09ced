//! Points, rectangles, edges, polygons and what lies over what, in exact nanometres.
//!
//! The plane of a card or sheet: x to the right, y upward, origin at the lower left. Takes integer
//! coordinates, gives integer coordinates; must never know a layer, a paper or a page.
//!
//! Two kinds of truth. Everything that is unturned, quarter turned or mirrored is exact. A shape turned by
//! another angle has each corner's offset from the pivot rounded once to a nanometre, and where sloping
//! edges cross the crossing is rounded to a nanometre; such shapes are compared with [`TOLERANCE`].

mod angle;
mod corner;
mod disc;
mod mirror;
mod overlay;
mod point;
mod polygon;
mod reach;
mod relation;
mod ring;

pub use angle::Angle;
pub use corner::Corner;
pub use mirror::Mirror;
pub use overlay::{Region, visible};
pub use point::Point;
pub use polygon::{Place, Polygon, PolygonFault};
pub use reach::{Span, span};
pub use relation::{Comparison, Relation, distance, farthest, relation};
pub use ring::{MOST_CORNERS, RingFault};

use crate::length::{LARGEST_NM, Length, Size, Unit};

/// The one tolerance for turned shapes: 1 µm. A part of a shape counts when a disc of this diameter fits
/// into it, and two shapes touch when they come this near.
pub const TOLERANCE: i64 = 1_000;

/// The farthest coordinate that a polygon may have, 400 m either way: four times the largest length, below
/// 2^39. Products of two differences stay below 2^82, far inside `i128`; the overlay engine allows 2^62.
pub const FARTHEST: i64 = 4 * LARGEST_NM;

/// An upright rectangle in nanometres: `left < right`, `bottom < top`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Rect {
    /// Left edge.
    pub left: i64,
    /// Bottom edge.
    pub bottom: i64,
    /// Right edge.
    pub right: i64,
    /// Top edge.
    pub top: i64,
}

/// An edge of a rectangle as it lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Edge {
    /// The left edge.
    Left,
    /// The right edge.
    Right,
    /// The top edge.
    Top,
    /// The bottom edge.
    Bottom,
}

impl Edge {
    /// All four, clockwise from the left.
    pub const ALL: [Self; 4] = [Self::Left, Self::Top, Self::Right, Self::Bottom];

    /// Its name.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Left => "left",
            Self::Right => "right",
            Self::Top => "top",
            Self::Bottom => "bottom",
        }
    }

    /// Whether a cut measured from this edge moves along x.
    #[must_use]
    pub const fn is_side(self) -> bool {
        matches!(self, Self::Left | Self::Right)
    }

    /// The edge across from it.
    #[must_use]
    pub const fn opposite(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
            Self::Top => Self::Bottom,
            Self::Bottom => Self::Top,
        }
    }
}

impl Rect {
    /// The part of so much along an edge, and the rest.
    #[must_use]
    pub const fn parted(self, edge: Edge, measure: i64) -> (Self, Self) {
        let (mut slice, mut rest) = (self, self);
        match edge {
            Edge::Left => {
                slice.right = self.left + measure;
                rest.left = slice.right;
            }
            Edge::Right => {
                slice.left = self.right - measure;
                rest.right = slice.left;
            }
            Edge::Top => {
                slice.bottom = self.top - measure;
                rest.top = slice.bottom;
            }
            Edge::Bottom => {
                slice.top = self.bottom + measure;
                rest.bottom = slice.top;
            }
        }
        (slice, rest)
    }

    /// A rectangle from its lower left corner and its sides.
    #[must_use]
    pub const fn at(left: i64, bottom: i64, width: i64, height: i64) -> Self {
        Self { left, bottom, right: left + width, top: bottom + height }
    }

    /// A size at the origin.
    #[must_use]
    pub const fn of(size: Size) -> Self {
        Self::at(0, 0, size.width.nm(), size.height.nm())
    }

    /// Width in nanometres.
    #[must_use]
    pub const fn width(self) -> i64 {
        self.right - self.left
    }

    /// Height in nanometres.
    #[must_use]
    pub const fn height(self) -> i64 {
        self.top - self.bottom
    }

    /// Its size, printed in `unit`.
    #[must_use]
    pub const fn size(self, unit: Unit) -> Size {
        Size::new(Length::new(self.width(), unit), Length::new(self.height(), unit))
    }

    /// Moved by `x`, `y`.
    #[must_use]
    pub const fn moved(self, x: i64, y: i64) -> Self {
        Self { left: self.left + x, bottom: self.bottom + y, right: self.right + x, top: self.top + y }
    }

    /// The coordinate of an edge.
    #[must_use]
    pub const fn edge(self, edge: Edge) -> i64 {
        match edge {
            Edge::Left => self.left,
            Edge::Right => self.right,
            Edge::Top => self.top,
            Edge::Bottom => self.bottom,
        }
    }

    /// How far `inner`'s edge lies inside the same edge of `self` (negative: it reaches past).
    #[must_use]
    pub const fn border(self, inner: Self, edge: Edge) -> i64 {
        match edge {
            Edge::Left => inner.left - self.left,
            Edge::Right => self.right - inner.right,
            Edge::Top => self.top - inner.top,
            Edge::Bottom => inner.bottom - self.bottom,
        }
    }

    /// Whether `inner` lies wholly within (touching edges allowed).
    #[must_use]
    pub const fn contains(self, inner: Self) -> bool {
        self.left <= inner.left && self.bottom <= inner.bottom && self.right >= inner.right && self.top >= inner.top
    }

    /// The common part, if it has an area.
    #[must_use]
    pub fn overlap(self, other: Self) -> Option<Self> {
        let both = Self {
            left: self.left.max(other.left),
            bottom: self.bottom.max(other.bottom),
            right: self.right.min(other.right),
            top: self.top.min(other.top),
        };
        (both.left < both.right && both.bottom < both.top).then_some(both)
    }

    /// The smallest rectangle that holds both.
    #[must_use]
    pub fn hull(self, other: Self) -> Self {
        Self {
            left: self.left.min(other.left),
            bottom: self.bottom.min(other.bottom),
            right: self.right.max(other.right),
            top: self.top.max(other.top),
        }
    }

    /// Area in square nanometres.
    #[must_use]
    pub fn area(self) -> i128 {
        i128::from(self.width()) * i128::from(self.height())
    }

    /// Its middle; half a nanometre is rounded up and to the right.
    #[must_use]
    pub const fn middle(self) -> Point {
        Point::new(half_up(self.left + self.right), half_up(self.bottom + self.top))
    }

    /// Larger by `border` on every edge (smaller where it is negative).
    #[must_use]
    pub const fn grown(self, border: i64) -> Self {
        Self {
            left: self.left - border,
            bottom: self.bottom - border,
            right: self.right + border,
            top: self.top + border,
        }
    }

    /// Its four corners, counter-clockwise from the lower left.
    #[must_use]
    pub const fn corners(self) -> [Point; 4] {
        [
            Point::new(self.left, self.bottom),
            Point::new(self.right, self.bottom),
            Point::new(self.right, self.top),
            Point::new(self.left, self.top),
        ]
    }
}

/// Half of a number, half a unit rounded up (towards plus infinity).
const fn half_up(twice: i64) -> i64 {
    (twice + 1).div_euclid(2)
}
