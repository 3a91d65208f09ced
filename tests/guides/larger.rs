//! What is larger than the page: half a frame, or parts that are joined.

use trimwright::design::variants::Page;
use trimwright::geometry::{Point, Polygon, Rect, Region};
use trimwright::guides::half::half;
use trimwright::guides::model::{Guide, Role};
use trimwright::guides::{frame, sheets};

use super::{card, laid, pages};
use trimwright::design::model::{LayerId, Onto};

const MM: i64 = 1_000_000;

fn guides(text: &str) -> Vec<Guide> {
    let (design, layout) = laid(text).remove(0);
    let sheets = sheets(&design, &layout, Page::A4);
    pages::hold("a large card", &sheets);
    sheets.into_iter().flat_map(|sheet| sheet.guides).collect()
}

fn named<'g>(guides: &'g [Guide], start: &str) -> Vec<&'g Guide> {
    guides.iter().filter(|guide| guide.word.starts_with(start)).collect()
}

/// A card of 240 x 240 fits no page; its panel of 150 x 150, 20 from the left and 60 from the bottom, is laid by two
/// arms in the corner nearest to it.
#[test]
fn two_arms_lie_in_a_corner() {
    let pieces = "  tag: {size: 150 x 150 mm, from: slate}\n";
    let layer = "  - {place: tag, onto: mat, left: 20 mm, bottom: 60 mm, glue: tape}\n";
    let text = card("260 x 260 mm", "none", "240 x 240 mm", pieces, layer, "frames: [tag on mat]\n");
    let guides = guides(&text);
    let [arms] = named(&guides, "half-frame-tag")[..] else { panic!("{guides:#?}") };
    let (design, layout) = laid(&text).remove(0);
    let whole = frame::frame(&design, &layout, &[LayerId(1)], Onto::Layer(LayerId(0))).unwrap();
    let half = half(&design, &whole, &[(180 * MM, 190 * MM)]).unwrap();
    let ring = |corners: &[(i64, i64)]| {
        Polygon::new(corners.iter().map(|(x, y)| Point::new((10 + x) * MM, (10 + y) * MM)).collect()).unwrap()
    };
    // From the upper left corner, which is 20 and 30 away: 20 wide to 180 x 190.
    let by_hand = ring(&[(0, 50), (20, 50), (20, 210), (180, 210), (180, 240), (0, 240)]);
    assert_eq!(half.outline, by_hand);
    // Its two long edges are edges of the mat, its inner corner that of the opening.
    let (mat, opening) = (whole.outline.bounds(), whole.openings.bounds().unwrap());
    assert!(half.outline.outer().contains(&Point::new(mat.left, mat.top)));
    assert!(half.outline.outer().contains(&Point::new(opening.left, opening.top)));
    assert!(arms.lines.iter().filter(|line| line.role == Role::Cut).count() == 1);
}

/// Twice the area that closed cuts enclose, an inner ring taken off.
fn area2(guide: &Guide) -> i128 {
    let rings = guide.lines.iter().filter(|line| line.role == Role::Cut);
    let mut areas: Vec<i128> = rings.map(|line| Polygon::new(line.points.clone()).unwrap().area2()).collect();
    areas.sort_unstable();
    let outer = areas.pop().unwrap();
    outer - areas.iter().sum::<i128>()
}

#[test]
fn parts_joined_again_are_the_whole() {
    let pieces = "  tag: {size: 80 x 60 mm, from: slate, shape: diamond}\n";
    let layer = "  - {place: tag, onto: mat, left: 70 mm, bottom: 80 mm, turned: 17 degrees left, glue: tape}\n";
    let text = card("260 x 260 mm", "none", "240 x 240 mm", pieces, layer, "frames: [tag on mat]\n");
    let guides = guides(&text);
    let parts = named(&guides, "frame-tag-part-");
    assert!(parts.len() > 1, "{}", parts.len());
    let (design, layout) = laid(&text).remove(0);
    let whole = frame::frame(&design, &layout, &[LayerId(1)], Onto::Layer(LayerId(0))).unwrap();
    let joined: i128 = parts.iter().map(|part| area2(part)).sum();
    // Where a slope is parted its new corner is rounded to a nanometre.
    assert!((joined - whole.body.area2()).abs() < 4 * i128::from(300 * MM), "{joined}");
    // Each mark has its other half, and ends on the edge of its part.
    let marks: Vec<_> =
        parts.iter().map(|part| part.lines.iter().filter(|line| line.role == Role::Draw).count()).collect();
    assert_eq!(marks.iter().sum::<usize>() % 2, 0);
    assert!(marks.iter().all(|count| *count > 0), "{marks:?}");
    for part in &parts {
        for mark in part.lines.iter().filter(|line| line.role == Role::Draw) {
            let edges = part.lines.iter().filter(|line| line.role == Role::Cut);
            let on_edge = edges.clone().any(|line| {
                let polygon = Polygon::new(line.points.clone()).unwrap();
                let near = Rect::between(mark.points[0], mark.points[0]).grown(2);
                !Region::from(near).intersection(&Region::from(&polygon)).is_empty()
                    && !Region::from(near).difference(&Region::from(&polygon)).is_empty()
            });
            assert!(on_edge, "a mark of {} begins within", part.word);
        }
    }
}

/// Score positions of four panels of 100 mm: 400 mm long.
#[test]
fn a_long_strip_is_parted_beside_its_scores() {
    let layer = "  - {place: tag, onto: mat, left: 10 mm, bottom: 10 mm, glue: tape}\n";
    let text = card(
        "100 x 100 mm",
        "{accordion: 4}",
        "80 x 80 mm",
        "  tag: {size: 20 x 20 mm, from: slate}\n",
        layer,
        "frames: [tag]\n",
    );
    let guides = guides(&text);
    let parts = named(&guides, "scores-base-part-");
    assert!(parts.len() > 1);
    let scores: usize = parts.iter().flat_map(|part| &part.lines).filter(|line| line.role == Role::Score).count();
    assert_eq!(scores, 3);
    assert_eq!(parts.iter().map(|part| area2(part)).sum::<i128>(), 2 * 400 * 25 * i128::from(MM) * i128::from(MM));
}
