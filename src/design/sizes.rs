//! Named sizes.
//!
//! Takes a name, gives a size as it is named: upright, width before height.

use crate::length::{Length, Size, Units};

/// A size that has a name.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NamedSize {
    /// The name, as this program writes it.
    pub name: &'static str,
    /// Width and height, upright.
    pub size: Size,
}

const fn inch(name: &'static str, width: (i64, i64), height: (i64, i64)) -> NamedSize {
    NamedSize { name, size: Size::new(Length::inch(width.0, width.1), Length::inch(height.0, height.1)) }
}

const fn mm(name: &'static str, width: i64, height: i64) -> NamedSize {
    NamedSize { name, size: Size::new(Length::mm(width), Length::mm(height)) }
}

/// Every named size. Letter and tabloid: ANSI/ASME Y14.1 sizes A and B; half and quarter letter are
/// its halves; legal from memory; A3 to A7: ISO 216.
pub const NAMED: [NamedSize; 10] = [
    inch("letter", (17, 2), (11, 1)),
    inch("half letter", (11, 2), (17, 2)),
    inch("quarter letter", (17, 4), (11, 2)),
    inch("legal", (17, 2), (14, 1)),
    inch("tabloid", (11, 1), (17, 1)),
    mm("A3", 297, 420),
    mm("A4", 210, 297),
    mm("A5", 148, 210),
    mm("A6", 105, 148),
    mm("A7", 74, 105),
];

/// The size of a name, capitals or not.
#[must_use]
pub fn named(name: &str) -> Option<NamedSize> {
    NAMED.into_iter().find(|size| size.name.eq_ignore_ascii_case(name))
}

/// The sheet that a sheet is in the other system, upright or lying, and its name: letter is A4; square
/// sheets of 6, 8 and 12 in are planned as 152, 203 and 304 mm, whole millimetres that they hold (a 12 in
/// sheet measures 11 15/16 in at the least, and is sold as 305 mm; common practice, no source).
#[must_use]
pub fn sheet_twin(size: Size, units: Units) -> Option<(Size, Option<&'static str>)> {
    let square = |mm: i64, inch: i64| {
        let inch = Size::new(Length::inch(inch, 1), Length::inch(inch, 1));
        (inch, Size::new(Length::mm(mm), Length::mm(mm)), None)
    };
    let pairs = [
        (NAMED[0].size, NAMED[6].size, Some((NAMED[0].name, NAMED[6].name))),
        square(304, 12),
        square(305, 12),
        square(152, 6),
        square(203, 8),
    ];
    pairs.into_iter().find_map(|(inch, metric, names)| {
        let twin = of_a_pair(size, units, inch, metric)?;
        let name = names.filter(|_| twin == inch || twin == metric).map(|(inch, metric)| match units {
            Units::Inch => inch,
            Units::Metric => metric,
        });
        Some((twin, name))
    })
}

/// The card that a card is in the other system: A4 does not give two cards of 4 1/4 x 5 1/2 in, so that
/// one is an A6 card there (ISO 216), and the other way round.
#[must_use]
pub fn card_twin(size: Size, units: Units) -> Option<Size> {
    of_a_pair(size, units, NAMED[2].size, NAMED[8].size)
}

/// The envelope that goes with these cards: 4 3/8 x 5 3/4 in (common practice, no source) and C6, 114 x
/// 162 mm (ISO 269).
#[must_use]
pub fn envelope_twin(size: Size, units: Units) -> Option<Size> {
    let inch = Size::new(Length::inch(23, 4), Length::inch(35, 8));
    of_a_pair(size, units, inch, Size::new(Length::mm(162), Length::mm(114)))
}

/// The half of a pair in `units` where `size` is the other half, both lying where it lies.
fn of_a_pair(size: Size, units: Units, inch: Size, metric: Size) -> Option<Size> {
    let (from, to) = match units {
        Units::Inch => (metric, inch),
        Units::Metric => (inch, metric),
    };
    if size == from {
        return Some(to);
    }
    (size == from.lying()).then(|| to.lying())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn millimetres(name: &str) -> (i64, i64) {
        let size = named(name).unwrap().size;
        (size.width.nm(), size.height.nm())
    }

    /// ISO 216, A series: each side rounded to the millimetre, each size half the one before.
    #[test]
    fn the_a_series() {
        for (name, width, height) in
            [("A3", 297, 420), ("a4", 210, 297), ("A5", 148, 210), ("A6", 105, 148), ("A7", 74, 105)]
        {
            assert_eq!(millimetres(name), (width * 1_000_000, height * 1_000_000), "{name}");
        }
        for pair in ["A3", "A4", "A5", "A6", "A7"].windows(2) {
            let (large, small) = (millimetres(pair[0]), millimetres(pair[1]));
            assert_eq!(small.1, large.0, "{pair:?}");
            assert_eq!(small.0 / 1_000_000, large.1 / 2_000_000, "{pair:?}");
        }
    }

    /// ANSI/ASME Y14.1: size A 8 1/2 x 11 in (215.9 x 279.4 mm), size B 11 x 17 in (279.4 x 431.8 mm).
    #[test]
    fn the_ansi_sizes() {
        assert_eq!(millimetres("Letter"), (215_900_000, 279_400_000));
        assert_eq!(millimetres("tabloid"), (279_400_000, 431_800_000));
        // Half letter: 139.7 x 215.9 mm, the published half of it.
        assert_eq!(millimetres("half letter"), (139_700_000, 215_900_000));
        assert_eq!(millimetres("quarter letter"), (107_950_000, 139_700_000));
    }

    #[test]
    fn sheets_have_twins_both_ways() {
        let letter = named("letter").unwrap().size;
        let (a4, name) = sheet_twin(letter, Units::Metric).unwrap();
        assert_eq!((a4, name), (named("A4").unwrap().size, Some("A4")));
        assert_eq!(sheet_twin(a4, Units::Inch), Some((letter, Some("letter"))));
        assert_eq!(sheet_twin(letter, Units::Inch), None);
        let square = Size::new(Length::mm(304), Length::mm(304));
        assert_eq!(sheet_twin(square, Units::Inch).unwrap().0, Size::new(Length::inch(12, 1), Length::inch(12, 1)));
        assert_eq!(sheet_twin(letter.lying(), Units::Metric), Some((a4.lying(), None)));
        for (mm, inch) in [(305, 12), (203, 8), (152, 6)] {
            let square = Size::new(Length::mm(mm), Length::mm(mm));
            let twin = Size::new(Length::inch(inch, 1), Length::inch(inch, 1));
            assert_eq!(sheet_twin(square, Units::Inch), Some((twin, None)), "{mm} mm");
            if mm != 305 {
                assert_eq!(sheet_twin(twin, Units::Metric), Some((square, None)), "{inch} in");
            }
        }
    }

    /// A6 is 105 x 148 mm (ISO 216), C6 114 x 162 mm (ISO 269). A letter sheet is four cards of 4 1/4 x
    /// 5 1/2 in, an A4 sheet four of A6.
    #[test]
    fn cards_and_their_envelopes_have_twins_both_ways() {
        let card = Size::new(Length::inch(17, 4), Length::inch(11, 2));
        let a6 = Size::new(Length::mm(105), Length::mm(148));
        assert_eq!(card_twin(card, Units::Metric), Some(a6));
        assert_eq!(card_twin(a6.lying(), Units::Inch), Some(card.lying()));
        assert_eq!(card_twin(a6, Units::Metric), None);
        let envelope = Size::new(Length::inch(35, 8), Length::inch(23, 4));
        let c6 = Size::new(Length::mm(114), Length::mm(162));
        assert_eq!(envelope_twin(envelope, Units::Metric), Some(c6));
        assert_eq!(envelope_twin(c6.lying(), Units::Inch), Some(envelope.lying()));
    }
}
