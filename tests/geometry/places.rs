//! What is refused, and the tolerance of turned shapes at its very edge.

use trimwright::geometry::{
    Angle, Comparison, Corner, Edge, FARTHEST, MOST_CORNERS, Mirror, Point, Polygon, PolygonFault, Rect, Region,
    Relation, RingFault, distance, relation,
};

fn ring(list: &[(i64, i64)]) -> Vec<Point> {
    list.iter().map(|(x, y)| Point::new(*x, *y)).collect()
}

fn fault(list: &[(i64, i64)]) -> RingFault {
    Polygon::new(ring(list)).unwrap_err()
}

#[test]
fn rings_that_are_not_simple_say_where() {
    assert_eq!(fault(&[(0, 0), (1, 0)]), RingFault::TooFewCorners { corners: 2 });
    assert_eq!(fault(&[(0, 0), (9, 0), (9, 0), (0, 9)]), RingFault::Repeated { corner: 2 });
    assert_eq!(fault(&[(0, 0), (9, 0), (9, 9), (0, 0)]), RingFault::Repeated { corner: 0 });
    assert_eq!(fault(&[(0, 0), (9, 0), (4, 0), (4, 9)]), RingFault::FoldsBack { corner: 1 });
    assert_eq!(
        fault(&[(0, 0), (10, 10), (10, 0), (0, 10)]),
        RingFault::Crosses { first: 0, second: 2, at: Point::new(5, 5) }
    );
    // A corner on an edge farther on.
    assert_eq!(
        fault(&[(0, 0), (10, 0), (10, 10), (5, 0), (0, 10)]),
        RingFault::Touches { first: 0, second: 2, at: Point::new(5, 0) }
    );
    assert_eq!(fault(&[(0, 0), (FARTHEST + 1, 0), (0, 5)]), RingFault::TooFar { corner: 1 });
    assert_eq!(fault(&[(0, 0), (i64::MIN, 0), (0, i64::MAX)]), RingFault::TooFar { corner: 1 });
    let many: Vec<Point> = (0..=MOST_CORNERS as i64).map(|x| Point::new(x, x * x)).collect();
    assert_eq!(Polygon::new(many).unwrap_err(), RingFault::TooManyCorners { corners: MOST_CORNERS + 1 });
}

#[test]
fn holes_stay_within_and_apart() {
    let outer = Rect::at(0, 0, 100, 100).corners().to_vec();
    let hole = |left, bottom| Rect::at(left, bottom, 20, 20).corners().to_vec();
    let made = |holes| Polygon::with_holes(outer.clone(), holes);
    assert_eq!(made(vec![hole(10, 10), hole(60, 60)]).unwrap().area2(), 2 * (10_000 - 800));
    let reaches =
        |made: Result<Polygon, PolygonFault>| matches!(made, Err(PolygonFault::HoleReachesOut { hole: 0, .. }));
    assert!(reaches(made(vec![hole(80, 10)])), "it touches the edge");
    assert!(reaches(made(vec![hole(90, 10)])));
    assert!(reaches(made(vec![hole(200, 10)])));
    let meet =
        |made: Result<Polygon, PolygonFault>| matches!(made, Err(PolygonFault::HolesMeet { first: 0, second: 1, .. }));
    assert!(meet(made(vec![hole(10, 10), hole(30, 10)])), "they touch");
    assert!(meet(made(vec![hole(10, 10), Rect::at(12, 12, 5, 5).corners().to_vec()])));
    assert!(meet(made(vec![Rect::at(12, 12, 5, 5).corners().to_vec(), hole(10, 10)])));
}

#[test]
fn equal_polygons_are_equal_values() {
    let one = Polygon::new(ring(&[(0, 0), (10, 0), (10, 5), (10, 10), (0, 10)])).unwrap();
    let other = Polygon::new(ring(&[(10, 10), (10, 0), (0, 0), (0, 10)])).unwrap();
    assert_eq!(one, other, "direction, first corner and a corner in line make no difference");
}

#[test]
fn exact_relations() {
    let region = |left, bottom, width, height| Region::from(Rect::at(left, bottom, width, height));
    let base = region(0, 0, 100, 100);
    let lies = |other: &Region| relation(&base, other, Comparison::Exact);
    assert_eq!(lies(&region(101, 0, 5, 5)), Relation::Apart);
    assert_eq!(lies(&region(100, 0, 5, 5)), Relation::Touching);
    assert_eq!(lies(&region(100, 100, 5, 5)), Relation::Touching, "in one corner");
    assert_eq!(lies(&region(99, 0, 5, 5)), Relation::Overlapping, "by a nanometre");
    assert_eq!(lies(&region(0, 0, 100, 50)), Relation::Around);
    assert_eq!(lies(&region(-1, 0, 200, 100)), Relation::Inside);
    assert_eq!(lies(&base), Relation::Same);
    assert_eq!(lies(&Region::empty()), Relation::Apart);
    // A piece that just fills a window touches the frame; one that lies in it is apart.
    let window = Region::from(
        Polygon::with_holes(
            Rect::at(0, 0, 100, 100).corners().to_vec(),
            vec![Rect::at(10, 10, 50, 50).corners().to_vec()],
        )
        .unwrap(),
    );
    assert_eq!(relation(&window, &region(10, 10, 50, 50), Comparison::Exact), Relation::Touching);
    assert_eq!(relation(&window, &region(20, 20, 10, 10), Comparison::Exact), Relation::Apart);
    assert_eq!(relation(&window, &region(5, 5, 60, 60), Comparison::Exact), Relation::Overlapping);
    assert_eq!(relation(&region(5, 5, 60, 60), &window, Comparison::Exact), Relation::Overlapping);
    assert_eq!(relation(&window, &base, Comparison::Exact), Relation::Inside);
    assert_eq!(relation(&base, &window, Comparison::Exact), Relation::Around);
    assert_eq!(distance(&base, &region(10, 20, 30, 30)), Some(10), "the narrowest border");
}

/// Two strips turned by the same angle, pushed into each other or apart by a stated width, at many angles.
#[test]
fn turned_shapes_are_compared_by_a_micrometre() {
    let origin = Point::new(0, 0);
    let lower = Polygon::from(Rect::at(0, 0, 80_000_000, 20_000_000));
    let lies = |gap: i64, angle: i64| {
        let upper = Polygon::from(Rect::at(3_000_000, 20_000_000 + gap, 70_000_000, 9_000_000));
        let turned = |shape: &Polygon| Region::from(shape.turned(Angle::left(angle), origin));
        relation(&turned(&lower), &turned(&upper), Comparison::Turned)
    };
    for angle in (1..36_000).step_by(1_777) {
        for (gap, want) in [
            (-1_004, Relation::Overlapping),
            (-996, Relation::Touching),
            (0, Relation::Touching),
            (996, Relation::Touching),
            (1_004, Relation::Apart),
        ] {
            assert_eq!(lies(gap, angle), want, "gap {gap} at {angle}");
        }
    }
}

#[test]
fn a_turned_shape_that_stands_out_by_less_is_inside() {
    let card = Region::from(Rect::at(0, 0, 100_000_000, 100_000_000));
    let origin = Point::new(0, 0);
    for angle in [1, 333, 4_500, 12_345] {
        let turned = card.turned(Angle::left(angle), origin);
        let back = turned.turned(Angle::left(angle).back(), origin);
        assert_eq!(relation(&card, &back, Comparison::Turned), Relation::Same, "{angle}");
        let part = Region::from(Rect::at(-900, 0, 50_000_000, 100_000_000));
        assert_eq!(relation(&part, &card, Comparison::Turned), Relation::Inside);
        let part = Region::from(Rect::at(-1_100, 0, 50_000_000, 100_000_000));
        assert_eq!(relation(&part, &card, Comparison::Turned), Relation::Overlapping);
    }
}

#[test]
fn a_disc_fits_or_does_not() {
    let strip = |width: i64, angle: i64| {
        Region::from(Polygon::from(Rect::at(0, 0, 60_000_000, width)).turned(Angle::left(angle), Point::new(0, 0)))
    };
    for angle in (0..18_000).step_by(613) {
        assert!(strip(1_003, angle).holds_disc(1_000), "{angle}");
        assert!(!strip(997, angle).holds_disc(1_000), "{angle}");
    }
    // A long sliver with a bead on it: the area by the edge is small, and yet the bead counts.
    let sliver = Region::from(Rect::at(0, 0, 90_000_000, 10)).union(&Rect::at(0, 0, 1_010, 1_010).into());
    assert!(sliver.holds_disc(1_000));
    // The largest disc in a right triangle with legs a is a (2 - square root of 2) across.
    let triangle = |leg: i64| Region::from(Polygon::new(ring(&[(0, 0), (leg, 0), (0, leg)])).unwrap());
    assert!(triangle(1_715).holds_disc(1_000));
    assert!(!triangle(1_699).holds_disc(1_000));
}

#[test]
fn corners_and_edges_turn_with_the_rectangle() {
    let frame = Rect::at(3, 5, 40, 20);
    for corner in Corner::ALL {
        for turns in 0..8 {
            let moved = corner.of(frame).quarter_turned_in(turns, frame);
            assert_eq!(moved, corner.quarter_turned(turns).of(frame.quarter_turned_in_place(turns)));
        }
        for mirror in Mirror::ALL {
            assert_eq!(corner.of(frame).mirrored(mirror, frame), corner.mirrored(mirror).of(frame));
        }
        assert_eq!(corner.opposite().opposite(), corner);
    }
    assert_eq!(Edge::Top.quarter_turned(1), Edge::Left);
    assert_eq!(Edge::Left.quarter_turned(1), Edge::Bottom);
    assert_eq!(Edge::Right.mirrored(Mirror::LeftToRight), Edge::Left);
    assert_eq!(Edge::Right.mirrored(Mirror::TopToBottom), Edge::Right);
}
