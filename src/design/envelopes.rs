//! Named envelopes, all in this one file: none of their sizes stands anywhere else.
//!
//! Sources, beside each family: the announcement sizes of the United States have no standard; they are
//! those of published charts, which agree on the envelopes.

use crate::length::{Length, Size, Units};

/// Where a name comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Family {
    /// The announcement and commercial sizes of the United States, in inches.
    Announcement,
    /// ISO 269, in millimetres.
    Iso,
}

impl Family {
    /// The family that a reader of an edition buys first.
    #[must_use]
    pub const fn of(units: Units) -> Self {
        match units {
            Units::Inch => Self::Announcement,
            Units::Metric => Self::Iso,
        }
    }
}

/// An envelope that has a name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NamedEnvelope {
    /// The name, as this program writes it.
    pub name: &'static str,
    /// Whether the name is that of an envelope alone; else `envelope` belongs behind it.
    pub alone: bool,
    /// Its family.
    pub family: Family,
    /// As the address is written: width is the longer side.
    pub size: Size,
}

/// `height` and `length` in 1/8 in.
const fn eighths(name: &'static str, alone: bool, height: i64, length: i64) -> NamedEnvelope {
    let size = Size::new(Length::inch(length, 8), Length::inch(height, 8));
    NamedEnvelope { name, alone, family: Family::Announcement, size }
}

const fn mm(name: &'static str, height: i64, length: i64) -> NamedEnvelope {
    NamedEnvelope { name, alone: true, family: Family::Iso, size: Size::new(Length::mm(length), Length::mm(height)) }
}

/// Every named envelope.
///
/// A1 to A8, A10 and slimline: thoughtco.com/envelope-design-styles-4122796, and but for A1
/// dimensionsguide.com; A9: the guide of nextdayflyers.com; number 10: univenture.com. Square ones are called
/// by their side. C4 to C7/6, DL and B6: ISO 269, table of iso-216.cluesnet.com.
pub const NAMED_ENVELOPES: [NamedEnvelope; 18] = [
    eighths("A1", false, 29, 41),
    eighths("A2", false, 35, 46),
    eighths("A6", false, 38, 52),
    eighths("A7", false, 42, 58),
    eighths("A8", false, 44, 65),
    eighths("A9", false, 46, 70),
    eighths("A10", false, 48, 76),
    eighths("slimline", false, 31, 71),
    eighths("number 10", false, 33, 76),
    eighths("square 5", false, 40, 40),
    eighths("square 5 1/2", false, 44, 44),
    eighths("square 6", false, 48, 48),
    mm("C7/6", 81, 162),
    mm("C6", 114, 162),
    mm("DL", 110, 220),
    mm("B6", 125, 176),
    mm("C5", 162, 229),
    mm("C4", 229, 324),
];

impl NamedEnvelope {
    /// Its name in a sentence: `A2 envelope`, `C6 envelope`.
    #[must_use]
    pub fn full_name(&self) -> String {
        format!("{} envelope", self.name)
    }
}

/// The envelope of a name, capitals or not: `A2 envelope`, `C6`, `C6 envelope`. A name that sheets or cards
/// have too says `envelope`.
#[must_use]
pub fn named_envelope(name: &str) -> Option<NamedEnvelope> {
    let lower = name.to_lowercase();
    let (short, said) = lower.strip_suffix(" envelope").map_or((lower.as_str(), false), |short| (short, true));
    NAMED_ENVELOPES.into_iter().find(|known| known.name.to_lowercase() == short && (said || known.alone))
}

/// The named envelope of a size, whichever way it lies.
#[must_use]
pub fn envelope_of(size: Size) -> Option<NamedEnvelope> {
    let sides = |size: Size| (size.width.nm().max(size.height.nm()), size.width.nm().min(size.height.nm()));
    NAMED_ENVELOPES.into_iter().find(|known| sides(known.size) == sides(size))
}
