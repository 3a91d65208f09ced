//! Sums by hand and from textbooks.

use std::f64::consts::FRAC_1_SQRT_2;
use trimwright::geometry::{Angle, Point, Polygon, Rect, Region, Span, span, visible};
use trimwright::length::{NM_PER_INCH, NM_PER_MM};

fn points(list: &[(i64, i64)]) -> Vec<Point> {
    list.iter().map(|(x, y)| Point::new(*x, *y)).collect()
}

/// The corner-coordinate formula of Meister (1769) and Gauss, with the worked example that encyclopaedias
/// print for it: (1,6) (3,1) (7,2) (4,4) (8,5) has the area 16 1/2 (from memory; summed again by hand:
/// 1*1-3*6 + 3*2-7*1 + 7*4-4*2 + 4*5-8*4 + 8*6-1*5 = -17-1+20-12+43 = 33).
#[test]
fn area_by_corner_coordinates() {
    assert_eq!(Polygon::new(points(&[(1, 6), (3, 1), (7, 2), (4, 4), (8, 5)])).unwrap().area2(), 33);
}

/// Pick (1899): on whole coordinates area = inner points + edge points / 2 - 1. Counted by the program's
/// own point test, so that area and place hold each other.
#[test]
fn area_by_counting_points() {
    use trimwright::geometry::Place;
    let star = Polygon::new(points(&[(0, 0), (9, 2), (14, 0), (11, 7), (13, 15), (6, 10), (1, 14), (3, 6)])).unwrap();
    let (mut inside, mut on_edge) = (0, 0);
    for x in -1..16 {
        for y in -1..17 {
            match star.place_of(Point::new(x, y)) {
                Place::Inside => inside += 1,
                Place::OnEdge => on_edge += 1,
                Place::Outside => {}
            }
        }
    }
    assert_eq!(star.area2(), 2 * inside + on_edge - 2);
}

/// Rotation of axes, x' = x cos a - y sin a, y' = x sin a + y cos a (any handbook of mathematics, for
/// instance Bronshtein and Semendyayev; sines from memory, to more places than a nanometre needs:
/// sin 30° = 1/2, cos 30° = 0.866 025 403 784, sin 45° = half the square root of 2, sin 18° = 0.309 016 994 375,
/// cos 18° = 0.951 056 516 295).
#[test]
fn turns_by_known_sines() {
    let inch = Point::new(NM_PER_INCH, 0);
    let origin = Point::new(0, 0);
    for (hundredths, x, y) in [
        (3_000, 0.866_025_403_784, 0.5),
        (6_000, 0.5, 0.866_025_403_784),
        (4_500, FRAC_1_SQRT_2, FRAC_1_SQRT_2),
        (1_800, 0.951_056_516_295, 0.309_016_994_375),
        (7_200, 0.309_016_994_375, 0.951_056_516_295),
        (10_800, -0.309_016_994_375, 0.951_056_516_295),
    ] {
        let want = Point::new((25_400_000.0_f64 * x).round() as i64, (25_400_000.0_f64 * y).round() as i64);
        assert_eq!(inch.turned(Angle::left(hundredths), origin), want, "{hundredths}");
    }
}

/// 3-4-5: the diagonal of 3 x 4 in is 5 in, and a line along it covers just that (Euclid I.47).
#[test]
fn the_diagonal_of_three_by_four() {
    let card = Polygon::from(Rect::at(0, 0, 4 * NM_PER_INCH, 3 * NM_PER_INCH));
    assert_eq!(Point::new(0, 0).distance(Point::new(4 * NM_PER_INCH, 3 * NM_PER_INCH)), 5 * NM_PER_INCH);
    // 45° across the middle of a card 3 in high: a line leaves by top and bottom, 3 in * square root of 2.
    let middle = Point::new(2 * NM_PER_INCH, 3 * NM_PER_INCH / 2);
    let line = span(&card, middle, Angle::left(4_500), 0).unwrap();
    let half = (3.0 * 25_400_000.0 * FRAC_1_SQRT_2).round() as i64;
    assert_eq!(line, Span { from: -half, to: half });
    // A strip of width w at 45° reaches w/2 farther at each end: its corner on the farther side.
    let strip = span(&card, middle, Angle::left(4_500), NM_PER_INCH / 2).unwrap();
    assert_eq!(strip.length(), 2 * (half + NM_PER_INCH / 4));
    // One of 1 in covers the card's corner and ends there: (2 in + 1 1/2 in) / square root of 2 each way.
    let wide = span(&card, middle, Angle::left(4_500), NM_PER_INCH).unwrap();
    let corner = (3.5 * 25_400_000.0 * FRAC_1_SQRT_2).round() as i64;
    assert_eq!(wide, Span { from: -corner, to: corner });
    assert_eq!(strip.centred(), strip.length());
}

/// Across and upright a strip needs the card's own width and height, wherever it lies, exactly.
#[test]
fn an_unturned_strip_needs_the_cards_width() {
    let card = Polygon::from(Rect::at(5, 7, 107_950_000, 139_700_000));
    let through = Point::new(1_000, 900_000);
    assert_eq!(span(&card, through, Angle::NONE, 6_350_000).unwrap(), Span { from: -995, to: 107_949_005 });
    assert_eq!(span(&card, through, Angle::quarters(1), 1).unwrap().length(), 139_700_000);
    assert_eq!(span(&card, Point::new(0, 139_700_008), Angle::NONE, 0), None);
    assert_eq!(span(&card, Point::new(0, 139_700_007), Angle::NONE, 0).unwrap().length(), 107_950_000);
}

/// A regular pentagon of circumradius 1 turned onto itself: five turns of 72° are a whole one.
#[test]
fn turns_add_up() {
    let mut turned = Angle::NONE;
    for _ in 0..5 {
        turned = turned.then(Angle::left(7_200));
    }
    assert_eq!(turned, Angle::NONE);
    assert_eq!(Angle::right(9_000), Angle::left(27_000));
    assert_eq!(Angle::right(i64::MIN), Angle::left(-(i64::MIN % 36_000)));
    assert_eq!(Angle::left(9_000).whole_quarters(), Some(1));
    assert_eq!(Angle::left(9_001).whole_quarters(), None);
}

/// A stack by hand: a 100 x 80 mat, a panel 5 in all round on it, a strip of 10 right across, and a window
/// of 20 x 20 in the panel clear of the strip.
#[test]
fn what_is_seen_of_a_stack() {
    let mm = NM_PER_MM;
    let mat = Region::from(Rect::at(0, 0, 100 * mm, 80 * mm));
    let hole = Rect::at(20 * mm, 50 * mm, 20 * mm, 20 * mm);
    let panel = Polygon::with_holes(
        Rect::at(5 * mm, 5 * mm, 90 * mm, 70 * mm).corners().to_vec(),
        vec![hole.corners().to_vec()],
    )
    .unwrap();
    let strip = Region::from(Rect::at(0, 20 * mm, 100 * mm, 10 * mm));
    let seen = visible(&[mat, panel.into(), strip]);
    let square = i128::from(mm) * i128::from(mm) * 2;
    // Of the mat: the border 8000 - 6300, less the strip's two ends of 5 x 10, and the window of 400.
    let areas: Vec<i128> = seen.iter().map(|region| region.area2() / square).collect();
    assert_eq!(areas, [8000 - 6300 - 100 + 400, 6300 - 400 - 900, 1000]);
    assert_eq!(seen[1].parts().len(), 2, "the strip parts the panel");
}
