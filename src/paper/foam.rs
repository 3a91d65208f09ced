//! How far foam stands off. Both figures are common practice, no source.

use crate::length::{Length, Units};

/// Thin foam: 1/16 in, 1.5 mm.
#[must_use]
pub const fn thin_foam(units: Units) -> Length {
    Length::either(units, Length::inch(1, 16), Length::of(1_500_000, Units::Metric))
}

/// Thick foam: 1/8 in, 3 mm.
#[must_use]
pub const fn thick_foam(units: Units) -> Length {
    Length::either(units, Length::inch(1, 8), Length::mm(3))
}
