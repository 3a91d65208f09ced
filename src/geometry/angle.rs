//! Turning by hundredths of a degree.

use super::Point;

/// A turn to the left (counter-clockwise) in hundredths of a degree, at least nothing and less than a
/// whole turn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Angle(u32);

const QUARTER: u32 = 9_000;
const WHOLE: i64 = 36_000;

impl Angle {
    /// No turn.
    pub const NONE: Self = Self(0);

    /// A turn to the left by hundredths of a degree; whole turns are taken off, a negative one turns to
    /// the right.
    #[must_use]
    pub const fn left(hundredths: i64) -> Self {
        Self(hundredths.rem_euclid(WHOLE) as u32)
    }

    /// A turn to the right by hundredths of a degree.
    #[must_use]
    pub const fn right(hundredths: i64) -> Self {
        Self::left(-(hundredths % WHOLE))
    }

    /// A number of quarter turns to the left.
    #[must_use]
    pub const fn quarters(turns: u8) -> Self {
        Self(turns as u32 % 4 * QUARTER)
    }

    /// The turn to the left in hundredths of a degree, 0 to 35 999.
    #[must_use]
    pub const fn hundredths(self) -> u32 {
        self.0
    }

    /// One turn after the other.
    #[must_use]
    pub const fn then(self, other: Self) -> Self {
        Self::left(self.0 as i64 + other.0 as i64)
    }

    /// The turn back.
    #[must_use]
    pub const fn back(self) -> Self {
        Self::left(-(self.0 as i64))
    }

    /// The number of quarter turns, where it is a whole one: then everything stays exact.
    #[must_use]
    pub const fn whole_quarters(self) -> Option<u8> {
        if self.0.is_multiple_of(QUARTER) { Some((self.0 / QUARTER) as u8) } else { None }
    }

    /// Cosine and sine. Taken from the first half quarter only, so that turning the other way, or a
    /// quarter further, gives the same figures; exact where they are 0, 1/2 or 1.
    pub(super) fn unit(self) -> (f64, f64) {
        let rest = self.0 % QUARTER;
        let radians = |hundredths: u32| f64::from(hundredths) * (core::f64::consts::PI / 18_000.0);
        let first = |hundredths: u32| match hundredths {
            0 => (1.0, 0.0),
            3_000 => (libm::sqrt(0.75), 0.5),
            4_500 => (libm::sqrt(0.5), libm::sqrt(0.5)),
            _ => (libm::cos(radians(hundredths)), libm::sin(radians(hundredths))),
        };
        let (x, y) = if rest <= QUARTER / 2 {
            first(rest)
        } else {
            let (y, x) = first(QUARTER - rest);
            (x, y)
        };
        match self.0 / QUARTER {
            0 => (x, y),
            1 => (-y, x),
            2 => (-x, -y),
            _ => (y, -x),
        }
    }
}

impl Point {
    /// Turned about `pivot`: exactly by whole quarter turns, else the offset from the pivot is rounded once
    /// to the nearest nanometre, halves away from the pivot, so that mirroring and turning back to front
    /// give the same lengths. Sines come from `libm`, hence equal figures on every machine.
    #[must_use]
    pub fn turned(self, angle: Angle, pivot: Self) -> Self {
        if let Some(turns) = angle.whole_quarters() {
            return self.quarter_turned(turns, pivot);
        }
        let (cosine, sine) = angle.unit();
        let step = self.from(pivot);
        // Coordinates lie below 2^39, so a float holds them exactly and the sum to about 2^-12 nm.
        let (x, y) = (step.x as f64, step.y as f64);
        pivot.moved(libm::round(x * cosine - y * sine) as i64, libm::round(x * sine + y * cosine) as i64)
    }
}
