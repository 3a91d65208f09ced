//! Upright rectangles on the page, y downward: what a label or a flag takes up.

use super::scene::At;
use crate::geometry::Edge;

/// A rectangle on the page in nanometres: `left <= right`, `top <= bottom`, y downward.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Area {
    /// Left edge.
    pub left: i64,
    /// Upper edge.
    pub top: i64,
    /// Right edge.
    pub right: i64,
    /// Lower edge.
    pub bottom: i64,
}

impl Area {
    /// From the upper left corner and the sides.
    #[must_use]
    pub const fn at(left: i64, top: i64, width: i64, height: i64) -> Self {
        Self { left, top, right: left + width, bottom: top + height }
    }

    /// Round a middle.
    #[must_use]
    pub const fn round(middle: At, width: i64, height: i64) -> Self {
        Self::at(middle.x - width / 2, middle.y - height / 2, width, height)
    }

    /// The smallest one that holds two points.
    #[must_use]
    pub fn between(one: At, other: At) -> Self {
        Self {
            left: one.x.min(other.x),
            top: one.y.min(other.y),
            right: one.x.max(other.x),
            bottom: one.y.max(other.y),
        }
    }

    /// Width.
    #[must_use]
    pub const fn width(self) -> i64 {
        self.right - self.left
    }

    /// Height.
    #[must_use]
    pub const fn height(self) -> i64 {
        self.bottom - self.top
    }

    /// Where an edge lies.
    #[must_use]
    pub const fn edge(self, edge: Edge) -> i64 {
        match edge {
            Edge::Left => self.left,
            Edge::Right => self.right,
            Edge::Top => self.top,
            Edge::Bottom => self.bottom,
        }
    }

    /// The middle.
    #[must_use]
    pub const fn middle(self) -> At {
        At::new((self.left + self.right) / 2, (self.top + self.bottom) / 2)
    }

    /// Larger by `by` on every side (smaller where negative).
    #[must_use]
    pub const fn grown(self, by: i64) -> Self {
        Self { left: self.left - by, top: self.top - by, right: self.right + by, bottom: self.bottom + by }
    }

    /// Moved by `x` to the right and `y` downward.
    #[must_use]
    pub const fn moved(self, x: i64, y: i64) -> Self {
        Self { left: self.left + x, top: self.top + y, right: self.right + x, bottom: self.bottom + y }
    }

    /// Whether the two share an area (touching edges do not).
    #[must_use]
    pub const fn overlaps(self, other: Self) -> bool {
        self.left < other.right && other.left < self.right && self.top < other.bottom && other.top < self.bottom
    }

    /// Whether `other` lies wholly within.
    #[must_use]
    pub const fn contains(self, other: Self) -> bool {
        self.left <= other.left && self.top <= other.top && self.right >= other.right && self.bottom >= other.bottom
    }

    /// Whether a point lies within or on the edge.
    #[must_use]
    pub const fn holds(self, point: At) -> bool {
        self.left <= point.x && point.x <= self.right && self.top <= point.y && point.y <= self.bottom
    }

    /// The smallest one that holds both.
    #[must_use]
    pub fn hull(self, other: Self) -> Self {
        Self {
            left: self.left.min(other.left),
            top: self.top.min(other.top),
            right: self.right.max(other.right),
            bottom: self.bottom.max(other.bottom),
        }
    }

    /// The common part, if it has an area.
    #[must_use]
    pub fn common(self, other: Self) -> Option<Self> {
        let both = Self {
            left: self.left.max(other.left),
            top: self.top.max(other.top),
            right: self.right.min(other.right),
            bottom: self.bottom.min(other.bottom),
        };
        (both.left < both.right && both.top < both.bottom).then_some(both)
    }

    /// The four corners, clockwise from the upper left.
    #[must_use]
    pub const fn corners(self) -> [At; 4] {
        [
            At::new(self.left, self.top),
            At::new(self.right, self.top),
            At::new(self.right, self.bottom),
            At::new(self.left, self.bottom),
        ]
    }

    /// Whether a straight line from `from` to `to` passes through the inside.
    #[must_use]
    pub fn is_crossed(self, from: At, to: At) -> bool {
        // Most lines pass far away.
        let is_beside = from.x.max(to.x) <= self.left || from.x.min(to.x) >= self.right;
        if is_beside || from.y.max(to.y) <= self.top || from.y.min(to.y) >= self.bottom {
            return false;
        }
        // Clip the parameter range of the segment to the four half planes; exact in i128.
        let (dx, dy) = (i128::from(to.x - from.x), i128::from(to.y - from.y));
        let (mut low, mut high) = ((0_i128, 1_i128), (1_i128, 1_i128));
        let sides = [
            (-dx, i128::from(from.x - self.left)),
            (dx, i128::from(self.right - from.x)),
            (-dy, i128::from(from.y - self.top)),
            (dy, i128::from(self.bottom - from.y)),
        ];
        for (slope, room) in sides {
            if slope == 0 {
                if room <= 0 {
                    return false;
                }
                continue;
            }
            // `t * slope < room`
            if slope > 0 {
                if room * high.1 < high.0 * slope {
                    high = (room, slope);
                }
            } else {
                let (n, d) = (-room, -slope);
                if n * low.1 > low.0 * d {
                    low = (n, d);
                }
            }
        }
        low.0 * high.1 < high.0 * low.1
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_crosses_only_what_it_passes_through() {
        let area = Area::at(10, 10, 10, 10);
        assert!(area.is_crossed(At::new(0, 15), At::new(30, 15)));
        assert!(area.is_crossed(At::new(0, 15), At::new(12, 15)));
        assert!(!area.is_crossed(At::new(0, 15), At::new(9, 15)));
        assert!(!area.is_crossed(At::new(0, 10), At::new(30, 10)));
        assert!(area.is_crossed(At::new(5, 5), At::new(25, 25)));
        assert!(!area.is_crossed(At::new(0, 21), At::new(21, 0)) || area.overlaps(Area::at(10, 10, 1, 1)));
        assert!(!area.is_crossed(At::new(0, 19), At::new(19, 0)));
    }
}
