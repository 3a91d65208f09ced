//! What a hand with an ordinary trimmer can do. Every figure is common practice, no source.

use crate::length::{Length, Units};

/// The thinnest slice that can be cut at all, and the least that an end to trim may be: 1/8 in, 3 mm.
pub(crate) const fn least(units: Units) -> Length {
    Length::either(units, Length::inch(1, 8), Length::mm(3))
}

/// The thinnest slice that is easy to cut, and a comfortable end to trim: 1/4 in, 6 mm.
pub(crate) const fn easy(units: Units) -> Length {
    Length::either(units, Length::inch(1, 4), Length::mm(6))
}

/// The paper that a die or punch needs on every side of its outline, and the narrowest paper beside a window
/// that does not tear or curl: 1/8 in, 3 mm.
pub(crate) const fn around_a_shape(units: Units) -> Length {
    Length::either(units, Length::inch(1, 8), Length::mm(3))
}

/// How far the ends of a band lie over each other: 1/2 in, 12 mm.
pub(crate) const fn overlap(units: Units) -> Length {
    Length::either(units, Length::inch(1, 2), Length::mm(12))
}

/// A piece with words that is no wider is a label, with its words along its middle: 1 1/2 in, 40 mm.
pub(crate) const fn widest_label(units: Units) -> Length {
    Length::either(units, Length::inch(3, 2), Length::mm(40))
}

/// The usual border: 1/8 in, 3 mm.
pub(crate) const fn border(units: Units) -> Length {
    Length::either(units, Length::inch(1, 8), Length::mm(3))
}

/// A border wider than this is a place, no border: 1/2 in, 12 mm.
pub(crate) const fn widest_border(units: Units) -> Length {
    Length::either(units, Length::inch(1, 2), Length::mm(12))
}

/// The short side of a piece that is worth cutting from what would be lost, as of a leftover: 1 in, 25 mm.
pub(crate) const fn usable(units: Units) -> Length {
    Length::either(units, Length::inch(1, 1), Length::mm(25))
}

/// The marks of a usual ruler lie so far apart: 1/16 in, 1 mm.
pub(crate) const fn mark(units: Units) -> Length {
    Length::either(units, Length::inch(1, 16), Length::mm(1))
}
