//! Mirroring and quarter turns within a frame: exact, since the frame's edges only change places.

use super::{Point, Rect};

/// The two ways to turn something over, which mirror it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Mirror {
    /// Left and right change places, as when a sheet is turned over like a page.
    LeftToRight,
    /// Top and bottom change places, as when it is turned over head first.
    TopToBottom,
}

impl Mirror {
    /// Both.
    pub const ALL: [Self; 2] = [Self::LeftToRight, Self::TopToBottom];
}

impl Point {
    /// Mirrored within `frame`, which keeps its place.
    #[must_use]
    pub const fn mirrored(self, mirror: Mirror, frame: Rect) -> Self {
        match mirror {
            Mirror::LeftToRight => Self::new(frame.left + frame.right - self.x, self.y),
            Mirror::TopToBottom => Self::new(self.x, frame.bottom + frame.top - self.y),
        }
    }

    /// Turned to the left by quarter turns together with `frame`, whose lower left corner keeps its place
    /// while width and height change places ([`Rect::quarter_turned_in_place`]).
    #[must_use]
    pub const fn quarter_turned_in(self, turns: u8, frame: Rect) -> Self {
        let (across, up) = (self.x - frame.left, self.y - frame.bottom);
        let (across, up) = match turns % 4 {
            0 => (across, up),
            1 => (frame.height() - up, across),
            2 => (frame.width() - across, frame.height() - up),
            _ => (up, frame.width() - across),
        };
        Self::new(frame.left + across, frame.bottom + up)
    }
}

impl Rect {
    /// Mirrored within `frame`.
    #[must_use]
    pub const fn mirrored(self, mirror: Mirror, frame: Self) -> Self {
        let (one, other) = (
            Point::new(self.left, self.bottom).mirrored(mirror, frame),
            Point::new(self.right, self.top).mirrored(mirror, frame),
        );
        Self::between(one, other)
    }

    /// Turned to the left about `pivot` by quarter turns.
    #[must_use]
    pub const fn quarter_turned(self, turns: u8, pivot: Point) -> Self {
        let (one, other) = (
            Point::new(self.left, self.bottom).quarter_turned(turns, pivot),
            Point::new(self.right, self.top).quarter_turned(turns, pivot),
        );
        Self::between(one, other)
    }

    /// Quarter turned with its lower left corner kept in place.
    #[must_use]
    pub const fn quarter_turned_in_place(self, turns: u8) -> Self {
        if turns % 2 == 1 { Self::at(self.left, self.bottom, self.height(), self.width()) } else { self }
    }

    /// The rectangle that has two points as opposite corners.
    #[must_use]
    pub const fn between(one: Point, other: Point) -> Self {
        const fn low(a: i64, b: i64) -> i64 {
            if a < b { a } else { b }
        }
        const fn high(a: i64, b: i64) -> i64 {
            if a < b { b } else { a }
        }
        Self {
            left: low(one.x, other.x),
            bottom: low(one.y, other.y),
            right: high(one.x, other.x),
            top: high(one.y, other.y),
        }
    }
}
