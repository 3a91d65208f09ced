//! The corners of an upright rectangle.

use super::{Edge, Mirror, Point, Rect};

/// A corner of a rectangle as it lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Corner {
    /// Lower left.
    LowerLeft,
    /// Lower right.
    LowerRight,
    /// Upper right.
    UpperRight,
    /// Upper left.
    UpperLeft,
}

impl Corner {
    /// All four, counter-clockwise from the lower left, as [`Rect::corners`] gives them.
    pub const ALL: [Self; 4] = [Self::LowerLeft, Self::LowerRight, Self::UpperRight, Self::UpperLeft];

    /// Its name.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::LowerLeft => "bottom left",
            Self::LowerRight => "bottom right",
            Self::UpperRight => "top right",
            Self::UpperLeft => "top left",
        }
    }

    /// The corner across the rectangle.
    #[must_use]
    pub const fn opposite(self) -> Self {
        self.quarter_turned(2)
    }

    /// Where it comes to lie after quarter turns to the left.
    #[must_use]
    pub const fn quarter_turned(self, turns: u8) -> Self {
        Self::ALL[(self as usize + turns as usize) % 4]
    }

    /// Where it comes to lie when the rectangle is mirrored.
    #[must_use]
    pub const fn mirrored(self, mirror: Mirror) -> Self {
        match (mirror, self) {
            (Mirror::LeftToRight, Self::LowerLeft) | (Mirror::TopToBottom, Self::UpperRight) => Self::LowerRight,
            (Mirror::LeftToRight, Self::LowerRight) | (Mirror::TopToBottom, Self::UpperLeft) => Self::LowerLeft,
            (Mirror::LeftToRight, Self::UpperRight) | (Mirror::TopToBottom, Self::LowerLeft) => Self::UpperLeft,
            (Mirror::LeftToRight, Self::UpperLeft) | (Mirror::TopToBottom, Self::LowerRight) => Self::UpperRight,
        }
    }

    /// Its place on a rectangle.
    #[must_use]
    pub const fn of(self, rect: Rect) -> Point {
        rect.corners()[self as usize]
    }
}

impl Edge {
    /// Where it comes to lie after quarter turns to the left.
    #[must_use]
    pub const fn quarter_turned(self, turns: u8) -> Self {
        const ROUND: [Edge; 4] = [Edge::Bottom, Edge::Right, Edge::Top, Edge::Left];
        let at = match self {
            Self::Bottom => 0,
            Self::Right => 1,
            Self::Top => 2,
            Self::Left => 3,
        };
        ROUND[(at + turns as usize) % 4]
    }

    /// Where it comes to lie when the rectangle is mirrored.
    #[must_use]
    pub const fn mirrored(self, mirror: Mirror) -> Self {
        match (mirror, self.is_side()) {
            (Mirror::LeftToRight, true) | (Mirror::TopToBottom, false) => self.opposite(),
            _ => self,
        }
    }
}
