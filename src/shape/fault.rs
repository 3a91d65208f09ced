//! Why a shape cannot be made, each with the measured fact in nanometres.

use crate::geometry::{Corner, Edge, RingFault};

/// Why a shape cannot be made. Lengths are nanometres; corners and windows are counted from 0.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ShapeFault {
    /// Width or height is nothing or less.
    NotPositive {
        /// The width.
        width: i64,
        /// The height.
        height: i64,
    },
    /// A length past the largest that a design may state ([`crate::length::LARGEST_NM`]).
    TooLarge {
        /// The length.
        side: i64,
    },
    /// A circle whose width and height differ.
    NotRound {
        /// The width.
        width: i64,
        /// The height.
        height: i64,
    },
    /// A circle or oval too large for its outline to be drawn true ([`super::LARGEST_ROUND`]).
    TooLargeToRound {
        /// The longer side.
        side: i64,
    },
    /// A circle or oval that is to be cut by hand: it needs a die or a punch.
    RoundByHand,
    /// A polygon's corners make no simple ring.
    Corners(RingFault),
    /// A corner of a polygon outside its rectangle.
    CornerOutside {
        /// The corner.
        corner: usize,
        /// The edge it lies past.
        edge: Edge,
        /// How far.
        past: i64,
    },
    /// A polygon that does not reach an edge of its rectangle: a smaller rectangle would do.
    ShortOfEdge {
        /// The edge.
        edge: Edge,
        /// How far the nearest corner stays away.
        short: i64,
    },
    /// A notch or point whose depth is nothing or less.
    NoDepth {
        /// The edge that is the end.
        edge: Edge,
        /// The depth.
        depth: i64,
    },
    /// Notches and points that are deeper than the strip is long: a notch must leave some paper, two
    /// points may just meet.
    TooDeep {
        /// The depth, of both ends together where both are of one kind.
        depth: i64,
        /// How long the strip is.
        length: i64,
    },
    /// A radius of nothing or less.
    NoRadius {
        /// The radius.
        radius: i64,
    },
    /// A radius larger than the corners along an edge leave room for.
    RadiusTooLarge {
        /// The radius.
        radius: i64,
        /// The largest that fits.
        most: i64,
    },
    /// No corner, or a corner twice, in the list of those to be rounded.
    CornerList {
        /// The corner that is named twice; `None` where the list is empty.
        twice: Option<Corner>,
    },
    /// A margin less than nothing.
    NegativeMargin {
        /// The margin.
        margin: i64,
    },
    /// A window that cannot be made.
    Window {
        /// Which window.
        window: usize,
        /// Why.
        fault: Box<ShapeFault>,
    },
    /// A window that reaches the outline or past it.
    WindowReachesOut {
        /// Which window.
        window: usize,
        /// How far it reaches past the rectangle round the outline; nothing where it stays within that.
        past: i64,
    },
    /// Two windows that touch or overlap.
    WindowsMeet {
        /// The earlier one.
        first: usize,
        /// The later one.
        second: usize,
    },
}
