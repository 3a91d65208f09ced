//! Which of the two stated lengths an edition takes.
//!
//! Takes what the designer stated and the system of an edition, gives the value for that edition,
//! or says that its twin is missing. Rules that make a twin from the other system belong here, and
//! here only: that is why every length comes with its [`Role`].

use super::sizes::sheet_twin;
use crate::length::{Length, Size, Units};

/// What a length or size is for; it decides how a twin may be made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Role {
    /// What shows round a layer, or a distance from an edge.
    Border,
    /// Between neighbours.
    Gap,
    /// A size given outright: a card or a piece.
    Outright,
    /// An opening, which must not come out smaller.
    Opening,
    /// A sheet of paper.
    Sheet,
    /// An edge strip, which must not come out narrower.
    Strip,
    /// The workshop: ruler and errors.
    Workshop,
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

/// What an edition takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Chosen<T> {
    /// The value for the edition.
    Taken(T),
    /// No twin is stated and none can be made. The other system's value stands in, so that the
    /// rest of the design can still be judged.
    StandIn(T),
}

/// A value that may have a twin of its own in another system.
pub trait Restate: Clone {
    /// The twin in `units`, where a rule makes one for this role.
    fn restated(&self, role: Role, units: Units) -> Option<Self>;
}

impl Restate for Length {
    fn restated(&self, role: Role, units: Units) -> Option<Self> {
        // Nothing is nothing in both systems; other lengths are stated twice.
        let _ = role;
        self.is_zero().then(|| Self::zero(units))
    }
}

impl Restate for Size {
    fn restated(&self, role: Role, units: Units) -> Option<Self> {
        (role == Role::Sheet).then(|| sheet_twin(*self, units).map(|(size, _)| size)).flatten()
    }
}

/// The value that the edition in `units` takes: the one stated in that system; else, in a design
/// that asks for one system, the one stated; else a twin by rule. None where nothing is stated.
pub fn choose<T: Restate>(stated: &Stated<T>, role: Role, units: Units, both: bool) -> Option<Chosen<T>> {
    if let Some(value) = stated.of(units) {
        return Some(Chosen::Taken(value.clone()));
    }
    let other = stated.of(units.other())?;
    if !both {
        return Some(Chosen::Taken(other.clone()));
    }
    Some(other.restated(role, units).map_or_else(|| Chosen::StandIn(other.clone()), Chosen::Taken))
}

/// The systems in which a value is not stated and none can be made.
pub fn lacking<T: Restate>(stated: &Stated<T>, role: Role, asked: &[Units]) -> Vec<Units> {
    let both = asked.len() > 1;
    asked
        .iter()
        .copied()
        .filter(|units| matches!(choose(stated, role, *units, both), Some(Chosen::StandIn(_))))
        .collect()
}

/// The twin to suggest for a length that has none: on the other ruler (whole millimetres, 16ths of
/// an inch), nearest for borders and gaps, down for sizes given outright and for the ruler, up for
/// openings and strips, and never nothing.
#[must_use]
pub fn suggested(length: Length, role: Role, units: Units) -> Length {
    let step = Length::either(units, Length::inch(1, 16), Length::mm(1));
    let same = Length::of(length.nm(), units);
    let rounded = match role {
        Role::Border | Role::Gap => (same + step.half()).floor_to(step),
        Role::Outright | Role::Sheet | Role::Workshop => same.floor_to(step),
        Role::Opening | Role::Strip => -((-same).floor_to(step)),
    };
    Length::of(rounded.nm().max(step.nm()), units)
}

/// The twin to suggest for a size that has none.
#[must_use]
pub fn suggested_size(size: Size, role: Role, units: Units) -> Size {
    Size::new(suggested(size.width, role, units), suggested(size.height, role, units))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_stated_wins() {
        let border = Stated { inch: Some(Length::inch(1, 8)), metric: Some(Length::mm(3)) };
        assert_eq!(choose(&border, Role::Border, Units::Inch, true), Some(Chosen::Taken(Length::inch(1, 8))));
        assert_eq!(choose(&border, Role::Border, Units::Metric, true), Some(Chosen::Taken(Length::mm(3))));
    }

    #[test]
    fn a_missing_twin_is_known_in_either_edition() {
        let border = Stated::one(Length::inch(1, 8), Units::Inch);
        assert_eq!(choose(&border, Role::Border, Units::Metric, true), Some(Chosen::StandIn(Length::inch(1, 8))));
        assert_eq!(choose(&border, Role::Border, Units::Metric, false), Some(Chosen::Taken(Length::inch(1, 8))));
        assert_eq!(lacking(&border, Role::Border, &[Units::Inch, Units::Metric]), vec![Units::Metric]);
        assert_eq!(lacking(&border, Role::Border, &[Units::Metric]), vec![]);
    }

    #[test]
    fn sheets_have_built_in_twins_and_pieces_have_not() {
        let letter = Size::new(Length::inch(17, 2), Length::inch(11, 1));
        let stated = Stated::one(letter, Units::Inch);
        let a4 = Size::new(Length::mm(210), Length::mm(297));
        assert_eq!(choose(&stated, Role::Sheet, Units::Metric, true), Some(Chosen::Taken(a4)));
        assert_eq!(choose(&stated, Role::Outright, Units::Metric, true), Some(Chosen::StandIn(letter)));
    }

    /// Maxima are rounded down, never past them: ASME A112.18.1/CSA B125.1 Annex A.2. The values
    /// follow from 25.4 mm: 4 1/4 in = 107.95 mm, A6 = 4.134 x 5.827 in.
    #[test]
    fn a_suggested_twin_keeps_inside() {
        assert_eq!(suggested(Length::inch(17, 4), Role::Outright, Units::Metric), Length::mm(107));
        assert_eq!(suggested(Length::inch(17, 4), Role::Opening, Units::Metric), Length::mm(108));
        assert_eq!(suggested(Length::inch(1, 8), Role::Border, Units::Metric), Length::mm(3));
        let a6 = Size::new(Length::mm(105), Length::mm(148));
        let inch = Size::new(Length::inch(4 * 16 + 2, 16), Length::inch(5 * 16 + 13, 16));
        assert_eq!(suggested_size(a6, Role::Outright, Units::Inch), inch);
        assert_eq!(suggested(Length::mm(0), Role::Gap, Units::Inch), Length::inch(1, 16));
    }
}
