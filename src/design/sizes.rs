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

/// The sheet that a sheet is in the other system: letter is A4, a 12 x 12 in sheet is planned as
/// 304 x 304 mm (a real one measures 11 15/16 in at the least; common practice, no source).
#[must_use]
pub fn sheet_twin(size: Size, units: Units) -> Option<(Size, Option<&'static str>)> {
    let letter = NAMED[0];
    let a4 = NAMED[6];
    let square = Size::new(Length::inch(12, 1), Length::inch(12, 1));
    let planned = Size::new(Length::mm(304), Length::mm(304));
    let pairs = [(letter.size, a4.size, Some(letter.name), Some(a4.name)), (square, planned, None, None)];
    pairs.into_iter().find_map(|(inch, metric, inch_name, metric_name)| match units {
        Units::Inch => (size == metric).then_some((inch, inch_name)),
        Units::Metric => (size == inch).then_some((metric, metric_name)),
    })
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
    }
}
