//! What paper weighs: true areas times grammage, added up exactly and rounded once.

use crate::weight::Grammage;

/// An amount of paper by its weight.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub struct Mass(
    /// Twice the square nanometres times milligrams a square metre.
    i128,
);

impl Mass {
    /// That of an area, given as twice its square nanometres.
    #[must_use]
    pub const fn of(area2: i128, grammage: Grammage) -> Self {
        Self(area2.saturating_mul(grammage.mg() as i128))
    }

    /// Both together.
    #[must_use]
    pub const fn plus(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }

    /// In whole grams, rounded up.
    #[must_use]
    pub fn grams(self) -> i64 {
        self.up(2_000_000_000_000_000_000_000)
    }

    /// In whole milligrams, rounded up.
    #[must_use]
    pub fn milligrams(self) -> i64 {
        self.up(2_000_000_000_000_000_000)
    }

    fn up(self, per: i128) -> i64 {
        i64::try_from((self.0.saturating_add(per - 1)).div_euclid(per)).unwrap_or(i64::MAX)
    }
}
