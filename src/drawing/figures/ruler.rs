//! A bit of ruler for each odd sixteenth of an inch, which is easily misread: the inch it lies in, with the mark
//! itself pointed at.

use crate::drawing::area::Area;
use crate::drawing::canvas::Canvas;
use crate::drawing::scene::{Anchor, At, Item, Lettering, Role, Scene};
use crate::drawing::text;
use crate::length::{Length, Units};
use crate::words::{Words, figures as words};

const UM: i64 = 1000;
/// An inch on the page: drawn as long as it is.
const INCH: i64 = 25_400 * UM;
/// Marks in an inch.
const MARKS: i64 = 16;
/// Room for one bit: its inch, and half a label at either end of it.
const CELL: i64 = INCH + 8000 * UM;
/// Between the edge and what points at it.
const CLEAR: i64 = 300 * UM;
/// Arrow's length and half its width, as a dimension line has them.
const ARROW: (i64, i64) = (2400 * UM, 450 * UM);
/// Between the arrow or a mark and its label.
const GAP: i64 = 900 * UM;
/// The edge runs on so far at both ends.
const PAST: i64 = 1500 * UM;
/// Between two rows of them.
const ROW_GAP: i64 = 3500 * UM;

/// Length of a mark, so many sixteenths past a whole inch: longer for halves than for quarters, and so on.
const fn mark(sixteenths: i64) -> i64 {
    match sixteenths.rem_euclid(MARKS).trailing_zeros() {
        0 => 2200 * UM,
        1 => 3400 * UM,
        2 => 4600 * UM,
        3 => 5800 * UM,
        _ => 7000 * UM,
    }
}

/// The odd sixteenths of an inch among some lengths, small to large, each once; none in metric.
#[must_use]
pub fn odd(units: Units, lengths: impl IntoIterator<Item = Length>) -> Vec<Length> {
    let step = Length::inch(1, MARKS);
    let mut found: Vec<Length> =
        lengths.into_iter().filter(|length| units == Units::Inch && length.nm() > 0 && length.is_odd(step)).collect();
    found.sort_unstable_by_key(|length| length.nm());
    found.dedup_by_key(|length| length.nm());
    found
}

/// A bit of ruler at true size for each of `measures` (odd sixteenths of an inch), as many beside each other as
/// `width` (nm) allows; none for none.
#[must_use]
pub fn rulers(say: &Words, name: String, measures: &[Length], width: i64) -> Option<Scene> {
    let cap = text::cap_height(Lettering::Figure);
    let high = cap + GAP + ARROW.0 + CLEAR + mark(0) + GAP + cap + ROW_GAP;
    let across = (width / CELL).max(1);
    let mut canvas = Canvas::new();
    let mut told = Vec::new();
    for (n, measure) in (0_i64..).zip(measures) {
        let at = At::new(n % across * CELL + (CELL - INCH) / 2, n / across * high + cap + GAP + ARROW.0 + CLEAR);
        put(say, &mut canvas, at, *measure);
        let near = |by: i64| Length::inch(sixteenths(*measure) + by, MARKS).number(Units::Inch);
        told.push((measure.number(Units::Inch), near(-1), near(1)));
    }
    let area = canvas.extent()?;
    Some(canvas.finish(name, Some(10), words::rulers(say, &told), Area { left: 0, top: 0, ..area }))
}

/// A whole number of sixteenths.
const fn sixteenths(measure: Length) -> i64 {
    measure.nm() / (INCH / MARKS)
}

/// One bit with the left end of its inch at `at`, on the ruler's edge.
fn put(say: &Words, canvas: &mut Canvas, at: At, measure: Length) {
    let (whole, rest) = (sixteenths(measure).div_euclid(MARKS), sixteenths(measure).rem_euclid(MARKS));
    let x = |sixteenths: i64| at.x + INCH * sixteenths / MARKS;
    canvas.line(Role::Ruler, at.moved(-PAST, 0), at.moved(INCH + PAST, 0));
    for n in 0..=MARKS {
        let role = if n == rest { Role::Bar } else { Role::Ruler };
        canvas.line(role, At::new(x(n), at.y), At::new(x(n), at.y + mark(n)));
    }
    let foot = at.y + mark(0) + GAP + text::cap_height(Lettering::Figure);
    for (end, inch) in [(0, whole), (MARKS, whole + 1)] {
        let number = Length::inch(inch, 1).number(Units::Inch);
        canvas.text(Lettering::Figure, At::new(x(end), foot), Anchor::Middle, &number);
    }
    canvas.text(Lettering::Small, At::new(at.x + INCH / 2, foot), Anchor::Middle, &words::scale(say, 10));
    let tip = At::new(x(rest), at.y - CLEAR);
    let base = tip.moved(0, -ARROW.0);
    let points = vec![tip, base.moved(ARROW.1, 0), base.moved(-ARROW.1, 0)];
    canvas.items.push(Item::Path { role: Role::Arrow, points, closed: true });
    let number = measure.number(Units::Inch);
    canvas.text(Lettering::Figure, base.moved(0, -GAP), Anchor::Middle, &number);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_odd_sixteenths_have_a_ruler() {
        let lengths = || [(7, 16), (1, 2), (55, 16), (7, 16), (1, 32), (3, 8)].map(|(n, d)| Length::inch(n, d));
        assert_eq!(odd(Units::Inch, lengths()), [Length::inch(7, 16), Length::inch(55, 16)]);
        assert_eq!(odd(Units::Metric, lengths()), []);
        assert_eq!(rulers(Words::english(), "none".to_owned(), &[], 1), None);
    }

    #[test]
    fn an_inch_is_an_inch_and_the_arrow_is_at_its_mark() {
        let scene = rulers(Words::english(), "ruler".to_owned(), &[Length::inch(55, 16)], CELL).unwrap();
        let marks: Vec<(Role, At, At)> = scene
            .items
            .iter()
            .filter_map(|item| match item {
                Item::Path { role: role @ (Role::Ruler | Role::Bar), points, .. } if points[0].x == points[1].x => {
                    Some((*role, points[0], points[1]))
                }
                _ => None,
            })
            .collect();
        // 1 in is 25.4 mm exactly (the international inch, in NIST SP 811, appendix B.6).
        assert_eq!(marks[16].1.x - marks[0].1.x, 25_400_000);
        let long = |n: usize| marks[n].2.y - marks[n].1.y;
        assert!(long(0) > long(8) && long(8) > long(4) && long(4) > long(2) && long(2) > long(1));
        assert!(long(12) == long(4) && long(7) == long(1) && long(16) == long(0));
        // 3 7/16 lies 7 marks past 3, one short of the middle.
        let Some(Item::Path { points, .. }) =
            scene.items.iter().find(|item| matches!(item, Item::Path { role: Role::Arrow, .. }))
        else {
            panic!("an arrow")
        };
        assert_eq!((points[0].x, marks[7].0), (marks[7].1.x, Role::Bar));
        let texts: Vec<&str> = scene
            .items
            .iter()
            .filter_map(|item| if let Item::Text { text, .. } = item { Some(text.as_str()) } else { None })
            .collect();
        assert_eq!(texts, ["3", "4", "Scale 1:1", "3 7/16"]);
        assert!(scene.alt.contains("3 7/16") && scene.alt.contains("3 3/8") && scene.alt.contains("3 1/2"));
    }
}
