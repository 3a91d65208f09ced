//! Exact lengths.
//!
//! Takes nothing, gives [`Length`]: a whole number of nanometres that remembers the unit it was
//! written in. Must never know a file, a page or a pen.
//!
//! 1 in = 25.4 mm exactly (international yard and pound agreement of 1959), so 1/64 in is
//! 396 875 nm, 0.001 in is 25 400 nm and 0.01 mm is 10 000 nm, all whole numbers.

mod find;
mod parse;
mod print;

pub use find::{Found, lengths_in};
pub use parse::{Instead, LengthError, LengthFault, parse_length, parse_size};
pub use print::fraction;

use std::cmp::Ordering;
use std::hash::{Hash, Hasher};
use std::ops::{Add, AddAssign, Mul, Neg, Sub, SubAssign};

/// Nanometres in an inch.
pub const NM_PER_INCH: i64 = 25_400_000;
/// Nanometres in a millimetre.
pub const NM_PER_MM: i64 = 1_000_000;
/// The largest length that a design may state: 100 m, far past any sheet and far inside `i64`;
/// areas are taken in `i128`.
pub const LARGEST_NM: i64 = 100_000 * NM_PER_MM;

/// The unit a length was written in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Unit {
    /// Inches, printed as fractions in lowest terms.
    Inch,
    /// Millimetres.
    Millimetre,
    /// Centimetres.
    Centimetre,
}

/// A system of units: what one edition of a handout is printed in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Units {
    /// Inches and fractions of them.
    Inch,
    /// Millimetres.
    Metric,
}

impl Units {
    /// The word used in design files, file names and JSON.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Inch => "inch",
            Self::Metric => "metric",
        }
    }

    /// The other system.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Inch => Self::Metric,
            Self::Metric => Self::Inch,
        }
    }
}

impl Unit {
    /// The system this unit belongs to.
    #[must_use]
    pub const fn system(self) -> Units {
        match self {
            Self::Inch => Units::Inch,
            Self::Millimetre | Self::Centimetre => Units::Metric,
        }
    }
}

/// An exact length in nanometres, with the unit it is printed back in.
///
/// Two lengths are equal when their nanometres are; the unit is only manners. Arithmetic keeps the
/// unit of the left operand.
#[derive(Debug, Clone, Copy)]
pub struct Length {
    nm: i64,
    unit: Unit,
}

impl Length {
    /// A length of `nm` nanometres, printed in `unit`.
    #[must_use]
    pub const fn new(nm: i64, unit: Unit) -> Self {
        Self { nm, unit }
    }

    /// Whole millimetres.
    #[must_use]
    pub const fn mm(mm: i64) -> Self {
        Self::new(mm * NM_PER_MM, Unit::Millimetre)
    }

    /// `numerator / denominator` inches; the denominator must divide an inch into whole
    /// nanometres (every power of two up to 64 does).
    #[must_use]
    pub const fn inch(numerator: i64, denominator: i64) -> Self {
        assert!((numerator * NM_PER_INCH) % denominator == 0);
        Self::new(numerator * NM_PER_INCH / denominator, Unit::Inch)
    }

    /// Nothing, in the main unit of a system.
    #[must_use]
    pub const fn zero(units: Units) -> Self {
        Self::of(0, units)
    }

    /// `nm` nanometres in the main unit of a system (inches or millimetres).
    #[must_use]
    pub const fn of(nm: i64, units: Units) -> Self {
        match units {
            Units::Inch => Self::new(nm, Unit::Inch),
            Units::Metric => Self::new(nm, Unit::Millimetre),
        }
    }

    /// One of two figures, by system: the hand's limits are stated so.
    #[must_use]
    pub const fn either(units: Units, inch: Self, metric: Self) -> Self {
        match units {
            Units::Inch => inch,
            Units::Metric => metric,
        }
    }

    /// The nanometres.
    #[must_use]
    pub const fn nm(self) -> i64 {
        self.nm
    }

    /// The unit it prints back in.
    #[must_use]
    pub const fn unit(self) -> Unit {
        self.unit
    }

    /// The same length, printed in another unit.
    #[must_use]
    pub const fn in_unit(self, unit: Unit) -> Self {
        Self::new(self.nm, unit)
    }

    /// The same length without its sign.
    #[must_use]
    pub const fn abs(self) -> Self {
        Self::new(self.nm.abs(), self.unit)
    }

    /// Half of it, rounded half up to a nanometre (towards plus infinity).
    #[must_use]
    pub const fn half(self) -> Self {
        Self::new((self.nm + 1).div_euclid(2), self.unit)
    }

    /// A whole share of it: `self / parts`, rounded half up to a nanometre.
    #[must_use]
    pub const fn share(self, parts: i64) -> Self {
        Self::new((2 * self.nm + parts).div_euclid(2 * parts), self.unit)
    }

    /// Whether it is a whole number of `step`s.
    #[must_use]
    pub const fn is_on(self, step: Self) -> bool {
        step.nm > 0 && self.nm % step.nm == 0
    }

    /// Whether it is an odd number of `step`s: midway between two that are even, and easily misread.
    #[must_use]
    pub const fn is_odd(self, step: Self) -> bool {
        self.is_on(step) && (self.nm / step.nm) % 2 != 0
    }

    /// The nearest whole number of `step`s at or below it.
    #[must_use]
    pub const fn floor_to(self, step: Self) -> Self {
        Self::new(self.nm - self.nm.rem_euclid(step.nm), self.unit)
    }

    /// Nothing at all?
    #[must_use]
    pub const fn is_zero(self) -> bool {
        self.nm == 0
    }
}

impl PartialEq for Length {
    fn eq(&self, other: &Self) -> bool {
        self.nm == other.nm
    }
}
impl Eq for Length {}
impl Hash for Length {
    fn hash<H: Hasher>(&self, state: &mut H) {
        self.nm.hash(state);
    }
}
impl PartialOrd for Length {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}
impl Ord for Length {
    fn cmp(&self, other: &Self) -> Ordering {
        self.nm.cmp(&other.nm)
    }
}
impl Add for Length {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.nm + other.nm, self.unit)
    }
}
impl Sub for Length {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.nm - other.nm, self.unit)
    }
}
impl Mul<i64> for Length {
    type Output = Self;
    fn mul(self, times: i64) -> Self {
        Self::new(self.nm * times, self.unit)
    }
}
impl Neg for Length {
    type Output = Self;
    fn neg(self) -> Self {
        Self::new(-self.nm, self.unit)
    }
}
impl AddAssign for Length {
    fn add_assign(&mut self, other: Self) {
        self.nm += other.nm;
    }
}
impl SubAssign for Length {
    fn sub_assign(&mut self, other: Self) {
        self.nm -= other.nm;
    }
}

/// Width and height of an unturned rectangle.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Size {
    /// From left to right.
    pub width: Length,
    /// From bottom to top.
    pub height: Length,
}

impl Size {
    /// A size from its two lengths.
    #[must_use]
    pub const fn new(width: Length, height: Length) -> Self {
        Self { width, height }
    }

    /// The same rectangle lying on its side.
    #[must_use]
    pub const fn lying(self) -> Self {
        Self::new(self.height, self.width)
    }

    /// The size after a number of quarter turns.
    #[must_use]
    pub const fn turned(self, quarter_turns: u8) -> Self {
        if quarter_turns % 2 == 1 { self.lying() } else { self }
    }

    /// Smaller by `border` on every edge.
    #[must_use]
    pub fn less_all_round(self, border: Length) -> Self {
        Self::new(self.width - border * 2, self.height - border * 2)
    }

    /// The same size, printed in the main unit of a system.
    #[must_use]
    pub const fn in_units(self, units: Units) -> Self {
        Self::new(Length::of(self.width.nm(), units), Length::of(self.height.nm(), units))
    }
}
