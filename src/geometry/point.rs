//! A point, and the exact sums that decide how points lie to each other.

/// A point, or the step from one point to another, in nanometres.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Point {
    /// To the right.
    pub x: i64,
    /// Upward.
    pub y: i64,
}

impl Point {
    /// A point from its coordinates.
    #[must_use]
    pub const fn new(x: i64, y: i64) -> Self {
        Self { x, y }
    }

    /// Moved by `x`, `y`.
    #[must_use]
    pub const fn moved(self, x: i64, y: i64) -> Self {
        Self::new(self.x + x, self.y + y)
    }

    /// The step from `origin` to here.
    #[must_use]
    pub const fn from(self, origin: Self) -> Self {
        Self::new(self.x - origin.x, self.y - origin.y)
    }

    /// Turned to the left (counter-clockwise) about `pivot` by a number of quarter turns, exactly.
    #[must_use]
    pub const fn quarter_turned(self, turns: u8, pivot: Self) -> Self {
        let Self { x, y } = self.from(pivot);
        let (x, y) = match turns % 4 {
            0 => (x, y),
            1 => (-y, x),
            2 => (-x, -y),
            _ => (y, -x),
        };
        pivot.moved(x, y)
    }

    /// The square of the distance to another point, in square nanometres.
    #[must_use]
    pub const fn distance_squared(self, other: Self) -> i128 {
        let Self { x, y } = other.from(self);
        x as i128 * x as i128 + y as i128 * y as i128
    }

    /// The distance to another point, to the nearest nanometre.
    #[must_use]
    pub fn distance(self, other: Self) -> i64 {
        let square = self.distance_squared(other);
        let floor = square.isqrt();
        // The next half lies at floor^2 + floor + 1/4.
        i64::try_from(if square - floor * floor > floor { floor + 1 } else { floor }).unwrap_or(i64::MAX)
    }
}

/// Twice the signed area of the triangle `a`, `b`, `c`: positive where `c` lies to the left of the way
/// from `a` to `b`, nothing where the three lie in line.
pub(super) const fn side_of(a: Point, b: Point, c: Point) -> i128 {
    let (along, aside) = (b.from(a), c.from(a));
    along.x as i128 * aside.y as i128 - along.y as i128 * aside.x as i128
}

/// Whether `c`, known to lie in line with `a` and `b`, lies on the stretch between them (ends included).
pub(super) fn is_between(a: Point, b: Point, c: Point) -> bool {
    c.x >= a.x.min(b.x) && c.x <= a.x.max(b.x) && c.y >= a.y.min(b.y) && c.y <= a.y.max(b.y)
}

/// Where the lines through two stretches cross, rounded half up to a nanometre; the stretches are known
/// not to be parallel.
pub(super) fn crossing(first: (Point, Point), second: (Point, Point)) -> Point {
    let from_start = side_of(second.0, second.1, first.0);
    let whole = from_start - side_of(second.0, second.1, first.1);
    let step = first.1.from(first.0);
    let share = |length: i64| {
        let (top, below) = if whole < 0 { (-from_start, -whole) } else { (from_start, whole) };
        let rounded = (2 * top * i128::from(length) + below).div_euclid(2 * below);
        i64::try_from(rounded).unwrap_or(length)
    };
    first.0.moved(share(step.x), share(step.y))
}
