//! Which value an edition takes of what the designer stated in one system or in both.
//!
//! What is stated wins. Else a twin is made by rule from the other system, on the ruler of the
//! edition: that is why every length comes with its [`Role`]. Rules that make a twin belong here,
//! and here only.

use super::sizes::{card_twin, envelope_twin, sheet_twin};
use crate::length::{Length, Size, Units};
use crate::source::Span;

/// What a length or size is for; it decides how a twin is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Role {
    /// What shows round a layer, or a distance from an edge: the nearest step.
    Border,
    /// Between neighbours: the nearest step.
    Gap,
    /// The size of the card: a card of the trade where it is one, else rounded down.
    Card,
    /// A size given outright: rounded down; a side as long as the card's follows the card.
    Outright,
    /// An opening, or what must not come out shorter: rounded up.
    Opening,
    /// The size of an envelope: one of the trade where it is one, else rounded up.
    Envelope,
    /// A sheet of paper: one of the trade where it is one, else rounded down.
    Sheet,
    /// An edge strip, which must not come out narrower: rounded up.
    Strip,
    /// The ruler's step: that of the other ruler which is no coarser.
    Ruler,
    /// How far off a hand may be: the nearest half of a millimetre, or 32nd of an inch.
    Error,
    /// The length that a trimmer cuts: the nearest step.
    Reach,
}

/// A value as stated: in one system or in both.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stated<T> {
    /// In inches.
    pub inch: Option<T>,
    /// In millimetres or centimetres.
    pub metric: Option<T>,
}

impl<T> Stated<T> {
    /// A value stated in one system only.
    pub fn one(value: T, system: Units) -> Self {
        match system {
            Units::Inch => Self { inch: Some(value), metric: None },
            Units::Metric => Self { inch: None, metric: Some(value) },
        }
    }

    /// The value stated in a system.
    pub const fn of(&self, system: Units) -> Option<&T> {
        match system {
            Units::Inch => self.inch.as_ref(),
            Units::Metric => self.metric.as_ref(),
        }
    }
}

/// The edition that a twin is made for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Towards {
    /// Its system.
    pub units: Units,
    /// Its ruler's step, more than nothing.
    pub step: Length,
    /// The card as stated and as this edition has it, where a rule changed it.
    pub card: Option<(Size, Size)>,
}

impl Towards {
    /// An edition with the usual ruler, whose card is the one stated.
    #[must_use]
    pub const fn usual(units: Units) -> Self {
        Self { units, step: Length::either(units, Length::inch(1, 16), Length::mm(1)), card: None }
    }
}

/// A value that an edition has by rule: where it is stated, and what it came to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Restated {
    /// Where it is stated.
    pub span: Span,
    /// Both, as they would be written out: `1/8 in | 3 mm`.
    pub pair: String,
    /// How far the two are apart, nanometres; the longer way of a size.
    pub off: i64,
    /// What it is for.
    pub role: Role,
    /// Whether both are stock of the trade, the one sold here and the other there: letter and A4 are
    /// no rounding.
    pub is_stock: bool,
}

/// What an edition takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Chosen<T> {
    /// The value as stated.
    Stated(T),
    /// A twin made by rule, so many nanometres off what is stated.
    Restated(T, i64),
}

/// A value that may have a twin of its own in another system.
pub trait Restate: Clone {
    /// The twin for an edition in the other system, and how far off it is by rounding, nanometres.
    #[must_use]
    fn restated(&self, role: Role, towards: Towards) -> (Self, i64);
}

impl Restate for Length {
    fn restated(&self, role: Role, towards: Towards) -> (Self, i64) {
        let twin = twin(*self, role, towards);
        (twin, (twin - *self).abs().nm())
    }
}

impl Restate for Size {
    fn restated(&self, role: Role, towards: Towards) -> (Self, i64) {
        let side = |length| twin(length, role, towards);
        let known = match role {
            Role::Card => card_twin(*self, towards.units),
            Role::Envelope => envelope_twin(*self, towards.units),
            Role::Sheet => sheet_twin(*self, towards.units).map(|(size, _)| size),
            _ => None,
        };
        let size = known.unwrap_or_else(|| Self::new(side(self.width), side(self.height)));
        let off = (size.width - self.width).abs().max((size.height - self.height).abs()).nm();
        match towards.card {
            Some((stated, card)) if role == Role::Outright => {
                let width = if self.width == stated.width { card.width } else { size.width };
                let height = if self.height == stated.height { card.height } else { size.height };
                (Self::new(width, height), off)
            }
            _ => (size, off),
        }
    }
}

/// The value that an edition takes: the one stated in its system; else, in a design that asks for
/// one system, the one stated; else the twin by rule. None where nothing is stated.
pub fn choose<T: Restate>(stated: &Stated<T>, role: Role, towards: Towards, both: bool) -> Option<Chosen<T>> {
    if let Some(value) = stated.of(towards.units) {
        return Some(Chosen::Stated(value.clone()));
    }
    let other = stated.of(towards.units.other())?;
    if !both {
        return Some(Chosen::Stated(other.clone()));
    }
    let (twin, off) = other.restated(role, towards);
    Some(Chosen::Restated(twin, off))
}

/// The twin of a length on the ruler of an edition. Nothing stays nothing, and nothing else becomes
/// nothing.
#[must_use]
pub fn twin(length: Length, role: Role, towards: Towards) -> Length {
    let units = towards.units;
    let same = Length::of(length.nm(), units);
    if same.is_zero() {
        return same;
    }
    let step = match role {
        Role::Error => Length::either(units, Length::inch(1, 32), Length::of(500_000, units)),
        Role::Ruler => return ruler(same),
        _ => towards.step,
    };
    let below = same.floor_to(step);
    let rounded = match role {
        Role::Border | Role::Gap | Role::Error | Role::Reach | Role::Ruler => nearest(same, step),
        Role::Card | Role::Outright | Role::Sheet => below,
        Role::Opening | Role::Envelope | Role::Strip if below == same => below,
        Role::Opening | Role::Envelope | Role::Strip => below + step,
    };
    if rounded.is_zero() { step } else { rounded }
}

/// The nearest whole number of steps; of two that are as near, the even one.
fn nearest(length: Length, step: Length) -> Length {
    let below = length.floor_to(step);
    let twice = (length.nm() - below.nm()) * 2;
    let odd = (below.nm() / step.nm()) % 2 != 0;
    if twice > step.nm() || (twice == step.nm() && odd) { below + step } else { below }
}

/// The coarsest usual ruler that is no coarser: inches halved again and again, whole millimetres.
fn ruler(step: Length) -> Length {
    let (marks, finest) = match step.unit().system() {
        Units::Inch => ([2, 4, 8, 16].map(|parts| Length::inch(1, parts)), Length::inch(1, 16)),
        Units::Metric => ([10, 5, 2, 1].map(Length::mm), Length::mm(1)),
    };
    marks.into_iter().find(|mark| *mark <= step).unwrap_or(finest)
}

#[cfg(test)]
mod tests {
    use super::*;

    const METRIC: Towards = Towards::usual(Units::Metric);
    const INCH: Towards = Towards::usual(Units::Inch);

    #[test]
    fn what_is_stated_wins() {
        let border = Stated { inch: Some(Length::inch(1, 8)), metric: Some(Length::mm(4)) };
        assert_eq!(choose(&border, Role::Border, INCH, true), Some(Chosen::Stated(Length::inch(1, 8))));
        assert_eq!(choose(&border, Role::Border, METRIC, true), Some(Chosen::Stated(Length::mm(4))));
    }

    #[test]
    fn a_twin_is_made_only_where_two_systems_are_asked_for() {
        let border = Stated::one(Length::inch(1, 8), Units::Inch);
        assert_eq!(choose(&border, Role::Border, METRIC, true), Some(Chosen::Restated(Length::mm(3), 175_000)));
        assert_eq!(choose(&border, Role::Border, METRIC, false), Some(Chosen::Stated(Length::inch(1, 8))));
        assert_eq!(choose(&border, Role::Border, INCH, true), Some(Chosen::Stated(Length::inch(1, 8))));
    }

    /// 2 1/2 in is 63.5 mm and 7 1/2 in is 190.5 mm, both just in the middle: to the even one, as
    /// ASME A112.18.1/CSA B125.1 Annex A.2 has it. 1/32 in lies in the middle of 0 and 1/16 in.
    #[test]
    fn a_tie_goes_to_the_even_step() {
        assert_eq!(twin(Length::inch(5, 2), Role::Border, METRIC), Length::mm(64));
        assert_eq!(twin(Length::inch(15, 2), Role::Border, METRIC), Length::mm(190));
        assert_eq!(nearest(Length::inch(1, 32), Length::inch(1, 16)), Length::inch(0, 16));
        assert_eq!(nearest(Length::inch(3, 32), Length::inch(1, 16)), Length::inch(2, 16));
    }

    #[test]
    fn rulers_stay_rulers() {
        for (mm, parts) in [(1, 16), (2, 16), (3, 16), (5, 8), (10, 4)] {
            assert_eq!(twin(Length::mm(mm), Role::Ruler, INCH), Length::inch(1, parts), "{mm} mm");
        }
        for (parts, mm) in [(32, 1), (16, 1), (8, 2), (4, 5), (2, 10)] {
            assert_eq!(twin(Length::inch(1, parts), Role::Ruler, METRIC), Length::mm(mm), "1/{parts} in");
        }
    }
}
