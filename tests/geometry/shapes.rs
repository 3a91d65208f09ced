//! Shapes from a trimmed rectangle: their outlines, areas, cuts and refusals.

use proptest::prelude::*;
use trimwright::geometry::{Corner, Edge, Mirror, Point, Rect, RingFault};
use trimwright::length::{LARGEST_NM, NM_PER_INCH, NM_PER_MM};
use trimwright::shape::{CHORD_ERROR, End, Finish, Form, LARGEST_ROUND, Making, Shape, ShapeFault, Spot, Window};

const MM: i64 = NM_PER_MM;
const DIE: Making = Making::Die { margin: 3 * MM };

fn stamped(form: Form, width: i64, height: i64) -> Shape {
    Shape { making: DIE, ..Shape::by_hand(form, width, height) }
}

fn triangle(right_angle: Corner) -> Shape {
    Shape::by_hand(Form::Triangle { right_angle }, 60 * MM, 40 * MM)
}

/// Twice an area in square millimetres.
fn square_mm2(area: i64) -> i128 {
    2 * i128::from(area) * i128::from(MM) * i128::from(MM)
}

#[test]
fn a_triangle_is_half_its_rectangle_cut_from_corner_to_corner() {
    for right_angle in Corner::ALL {
        let made = triangle(right_angle).make().unwrap();
        assert_eq!(made.area2(), square_mm2(1_200));
        assert_eq!(made.blank, Rect::at(0, 0, 60 * MM, 40 * MM));
        let [Finish::Cut { from, to, begin: Spot::Corner(begin), end: Spot::Corner(end), runs_through: true }] =
            made.finish[..]
        else {
            panic!("{:?}", made.finish)
        };
        assert_eq!(begin.opposite(), end, "along a diagonal");
        assert!(begin != right_angle && end != right_angle);
        assert_eq!(from.distance(to), 72_111_026, "the square root of 60² + 40² mm, 72.111 025 5");
    }
}

#[test]
fn two_triangles_from_one_rectangle() {
    let lower_left = triangle(Corner::LowerLeft);
    assert_eq!(lower_left.per_rectangle(true), 2, "the second lies turned half round");
    assert_eq!(lower_left.per_rectangle(false), 1, "one-way paper");
    // Upright, the other half is the triangle with its right angle across: one of each where both are wanted.
    assert!(lower_left.shares_rectangle_with(&triangle(Corner::UpperRight), false));
    assert!(lower_left.shares_rectangle_with(&lower_left, true));
    assert!(!lower_left.shares_rectangle_with(&lower_left, false));
    // The other hand lies along the other diagonal.
    for half_turn in [false, true] {
        assert!(!lower_left.shares_rectangle_with(&triangle(Corner::LowerRight), half_turn));
        assert!(!lower_left.shares_rectangle_with(&triangle(Corner::UpperLeft), half_turn));
    }
    let die = Shape { making: DIE, ..lower_left.clone() };
    assert_eq!(die.per_rectangle(true), 1, "a die needs its margin");
    assert_eq!(Shape::by_hand(Form::Diamond, 60 * MM, 40 * MM).per_rectangle(true), 1);
    let larger = Shape { width: 61 * MM, ..triangle(Corner::UpperRight) };
    assert!(!lower_left.shares_rectangle_with(&larger, false));
}

#[test]
fn the_other_half_is_what_the_rectangle_leaves() {
    use trimwright::geometry::Region;
    for right_angle in Corner::ALL {
        let shape = triangle(right_angle);
        let other = Shape { form: shape.form.other_half().unwrap(), ..shape.clone() };
        let left = Region::from(shape.frame()).difference(&shape.make().unwrap().outline.into());
        assert_eq!(left, Region::from(other.make().unwrap().outline));
    }
}

#[test]
fn a_diamond_joins_the_middles() {
    let made = Shape::by_hand(Form::Diamond, 60 * MM, 40 * MM).make().unwrap();
    assert_eq!(made.area2(), square_mm2(1_200));
    assert_eq!(made.finish.len(), 4);
    for cut in &made.finish {
        assert!(
            matches!(cut, Finish::Cut { begin: Spot::Middle(_), end: Spot::Middle(_), runs_through: true, .. }),
            "{cut:?}"
        );
    }
}

#[test]
fn ends_are_notched_or_pointed() {
    let strip = |end, opposite| Shape::by_hand(Form::Ended { edge: Edge::Bottom, end, opposite }, 20 * MM, 80 * MM);
    let notch = End::Fishtail { depth: 8 * MM };
    let tip = End::Pointed { depth: 10 * MM };
    let notched = strip(notch, None).make().unwrap();
    assert_eq!(notched.area2(), square_mm2(20 * 80 - 20 * 8 / 2));
    assert!(notched.outline.outer().contains(&Point::new(10 * MM, 8 * MM)));
    assert_eq!(notched.finish.len(), 2);
    for cut in &notched.finish {
        assert!(matches!(cut, Finish::Cut { runs_through: false, .. }), "a notch stops in the middle: {cut:?}");
    }
    let pointed = strip(tip, None).make().unwrap();
    assert_eq!(pointed.area2(), square_mm2(20 * 80 - 20 * 10 / 2));
    assert!(pointed.finish.iter().all(|cut| matches!(cut, Finish::Cut { runs_through: true, .. })));
    assert!(pointed.outline.outer().contains(&Point::new(10 * MM, 0)));
    assert_eq!(strip(notch, Some(tip)).make().unwrap().area2(), square_mm2(1_600 - 80 - 100));
    assert_eq!(strip(notch, Some(notch)).make().unwrap().finish.len(), 4);
    // Two points that meet make a diamond, one as long as the strip a triangle.
    let whole = |depth| End::Pointed { depth: depth * MM };
    assert_eq!(strip(whole(40), Some(whole(40))).make().unwrap().outline.outer().len(), 4);
    assert_eq!(strip(whole(80), None).make().unwrap().outline.outer().len(), 3);
    let deep = |depth, opposite| strip(End::Fishtail { depth: depth * MM }, opposite).make().unwrap_err();
    assert_eq!(deep(80, None), ShapeFault::TooDeep { depth: 80 * MM, length: 80 * MM });
    assert_eq!(deep(72, Some(notch)), ShapeFault::TooDeep { depth: 80 * MM, length: 80 * MM });
    assert_eq!(deep(0, None), ShapeFault::NoDepth { edge: Edge::Bottom, depth: 0 });
    assert_eq!(
        strip(notch, Some(End::Pointed { depth: -1 })).make().unwrap_err(),
        ShapeFault::NoDepth { edge: Edge::Top, depth: -1 }
    );
    assert_eq!(
        deep(i64::MAX / MM, Some(whole(i64::MAX / MM))),
        ShapeFault::TooDeep { depth: i64::MAX / MM * MM, length: 80 * MM }
    );
}

#[test]
fn polygons_fill_their_rectangle() {
    let of = |list: &[(i64, i64)]| {
        let corners = list.iter().map(|(x, y)| Point::new(x * MM, y * MM)).collect();
        Shape::by_hand(Form::Polygon { corners }, 50 * MM, 40 * MM).make()
    };
    // A house: 50 x 25 and a roof of 15.
    let house = of(&[(0, 0), (50, 0), (50, 25), (25, 40), (0, 25)]).unwrap();
    assert_eq!(house.area2(), square_mm2(50 * 25 + 50 * 15 / 2));
    assert_eq!(house.finish.len(), 2, "the roof; the rest is trimmed");
    assert!(matches!(
        house.finish[0],
        Finish::Cut {
            begin: Spot::OnEdge { edge: Edge::Right, from_start: 25_000_000 },
            end: Spot::Middle(Edge::Top),
            runs_through: true,
            ..
        }
    ));
    assert_eq!(
        of(&[(0, 0), (50, 40), (50, 0), (0, 40)]).unwrap_err(),
        ShapeFault::Corners(RingFault::Crosses { first: 0, second: 2, at: Point::new(25 * MM, 20 * MM) })
    );
    assert_eq!(
        of(&[(0, 0), (53, 0), (25, 40)]).unwrap_err(),
        ShapeFault::CornerOutside { corner: 1, edge: Edge::Right, past: 3 * MM }
    );
    assert_eq!(
        of(&[(0, 0), (50, 0), (25, 38)]).unwrap_err(),
        ShapeFault::ShortOfEdge { edge: Edge::Top, short: 2 * MM }
    );
}

/// The polyline stays within 1 µm of the curve, measured at every corner and the middle of every line;
/// its area tends to pi a b (Archimedes).
#[test]
fn curves_keep_their_chord_error() {
    for (width, height) in
        [(10 * MM, 10 * MM), (NM_PER_INCH, NM_PER_INCH), (127 * MM, 127 * MM), (LARGEST_ROUND, LARGEST_ROUND)]
    {
        let made = stamped(Form::Circle, width, height).make().unwrap();
        let ring = made.outline.outer();
        let radius = width as f64 / 2.0;
        let off = |x: f64, y: f64| radius - (x - radius).hypot(y - radius);
        for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
            assert!(off(a.x as f64, a.y as f64).abs() <= 1.0);
            let middle = off((a.x + b.x) as f64 / 2.0, (a.y + b.y) as f64 / 2.0);
            assert!((0.0..=CHORD_ERROR as f64).contains(&middle), "{middle}");
        }
        assert!(ring.len() <= trimwright::geometry::MOST_CORNERS, "{}", ring.len());
        let area = std::f64::consts::PI * radius * radius;
        let missing = area - made.area2() as f64 / 2.0;
        assert!(missing > 0.0 && missing <= CHORD_ERROR as f64 * std::f64::consts::TAU * radius, "{missing}");
        assert_eq!(made.blank, Rect::at(0, 0, width, height).grown(3 * MM));
        assert_eq!(made.finish, [Finish::Stamp { making: DIE }]);
        assert_eq!(made.outline.bounds(), Rect::at(0, 0, width, height), "it reaches all four edges");
        assert_eq!(made.outline, made.outline.quarter_turned_in(1, Rect::at(0, 0, width, height)));
    }
    // 48 in across, as the documentation says.
    assert_eq!(stamped(Form::Circle, LARGEST_ROUND, LARGEST_ROUND).make().unwrap().outline.outer().len(), 1_744);
    // An oval: no corner off the curve, no middle of a line farther within than the bound. The distance to
    // an ellipse is at most the step along the ray, and that at most the longer half axis times (1 - share).
    let (width, height) = (100 * MM, 60 * MM);
    let made = stamped(Form::Oval, width, height).make().unwrap();
    let ring = made.outline.outer();
    let (a, b) = (width as f64 / 2.0, height as f64 / 2.0);
    for (p, q) in ring.iter().zip(ring.iter().cycle().skip(1)) {
        let (x, y) = ((p.x + q.x) as f64 / 2.0 - a, (p.y + q.y) as f64 / 2.0 - b);
        let share = (x / a).hypot(y / b);
        assert!(share <= 1.0 && a * (1.0 - share) <= CHORD_ERROR as f64);
    }
    let missing = std::f64::consts::PI * a * b - made.area2() as f64 / 2.0;
    assert!(missing > 0.0 && missing < CHORD_ERROR as f64 * std::f64::consts::TAU * a);
    for mirror in Mirror::ALL {
        assert_eq!(made.outline.mirrored(mirror, Rect::at(0, 0, width, height)), made.outline);
    }
}

#[test]
fn corners_are_rounded() {
    let rounded = |radius, corners: &[Corner]| {
        Shape::by_hand(Form::Rounded { radius, corners: corners.to_vec() }, 60 * MM, 40 * MM).make()
    };
    let made = rounded(6 * MM, &Corner::ALL).unwrap();
    // Each corner loses (1 - pi/4) of its square.
    let lost = 4.0 * 36.0 * (1.0 - std::f64::consts::FRAC_PI_4);
    assert!((made.area2() as f64 / 2e12 - (2_400.0 - lost)).abs() < 0.04);
    assert_eq!(made.finish.len(), 4);
    assert_eq!(
        rounded(6 * MM, &[Corner::UpperLeft]).unwrap().finish,
        [Finish::RoundCorner { corner: Corner::UpperLeft, radius: 6 * MM }]
    );
    assert_eq!(rounded(20 * MM, &Corner::ALL).unwrap().outline.bounds(), Rect::at(0, 0, 60 * MM, 40 * MM));
    let fault = |radius, corners: &[Corner]| rounded(radius, corners).unwrap_err();
    assert_eq!(fault(21 * MM, &Corner::ALL), ShapeFault::RadiusTooLarge { radius: 21 * MM, most: 20 * MM });
    // Corners side by side share the width only; one alone has the whole height.
    let top = [Corner::UpperLeft, Corner::UpperRight];
    assert_eq!(fault(31 * MM, &top), ShapeFault::RadiusTooLarge { radius: 31 * MM, most: 30 * MM });
    assert!(rounded(40 * MM, &[Corner::LowerRight]).is_ok());
    assert_eq!(fault(0, &top), ShapeFault::NoRadius { radius: 0 });
    assert_eq!(fault(5, &[]), ShapeFault::CornerList { twice: None });
    assert_eq!(fault(5, &[Corner::LowerLeft; 2]), ShapeFault::CornerList { twice: Some(Corner::LowerLeft) });
}

#[test]
fn a_window_leaves_its_waste() {
    let window = |form, left, width, making| Window { form, width, height: 20 * MM, left, bottom: 10 * MM, making };
    let shape = |windows| Shape { windows, ..Shape::by_hand(Form::Rectangle, 80 * MM, 50 * MM) };
    let made = shape(vec![
        window(Form::Rectangle, 5 * MM, 30 * MM, Making::ByHand),
        window(Form::Circle, 50 * MM, 20 * MM, DIE),
    ])
    .make()
    .unwrap();
    assert_eq!(made.outline.holes().len(), 2);
    assert_eq!(made.waste[0].outline, Rect::at(0, 0, 30 * MM, 20 * MM).into(), "a piece of its own, at its own origin");
    let all = made.area2() + made.waste.iter().map(|waste| waste.outline.area2()).sum::<i128>();
    assert_eq!(all, square_mm2(4_000), "nothing is lost");
    assert!(matches!(
        made.finish[..],
        [Finish::CutOut { window: 0, making: Making::ByHand, .. }, Finish::CutOut { window: 1, making: DIE, .. }]
    ));
    let fault = |windows| shape(windows).make().unwrap_err();
    let plain = |left, width| window(Form::Rectangle, left, width, Making::ByHand);
    assert_eq!(fault(vec![plain(60 * MM, 25 * MM)]), ShapeFault::WindowReachesOut { window: 0, past: 5 * MM });
    assert_eq!(fault(vec![plain(0, 25 * MM)]), ShapeFault::WindowReachesOut { window: 0, past: 0 });
    assert_eq!(
        fault(vec![plain(5 * MM, 9 * MM), plain(14 * MM, 9 * MM)]),
        ShapeFault::WindowsMeet { first: 0, second: 1 }
    );
    assert_eq!(fault(vec![plain(i64::MAX, 9 * MM)]), ShapeFault::TooLarge { side: i64::MAX });
    let hand = window(Form::Circle, 5 * MM, 20 * MM, Making::ByHand);
    assert_eq!(fault(vec![hand]), ShapeFault::Window { window: 0, fault: Box::new(ShapeFault::RoundByHand) });
    // Within the rectangle, and yet over a diagonal cut.
    let half = Shape {
        windows: vec![plain(40 * MM, 30 * MM)],
        ..Shape::by_hand(Form::Triangle { right_angle: Corner::LowerLeft }, 80 * MM, 50 * MM)
    };
    assert_eq!(half.make().unwrap_err(), ShapeFault::WindowReachesOut { window: 0, past: 0 });
}

#[test]
fn sizes_that_cannot_be() {
    let make = |form, width, height| stamped(form, width, height).make().unwrap_err();
    assert_eq!(make(Form::Rectangle, 0, 5), ShapeFault::NotPositive { width: 0, height: 5 });
    assert_eq!(make(Form::Diamond, 5, LARGEST_NM + 1), ShapeFault::TooLarge { side: LARGEST_NM + 1 });
    assert_eq!(make(Form::Circle, 5 * MM, 6 * MM), ShapeFault::NotRound { width: 5 * MM, height: 6 * MM });
    assert_eq!(make(Form::Oval, LARGEST_ROUND + 1, 5), ShapeFault::TooLargeToRound { side: LARGEST_ROUND + 1 });
    let punch = Shape { making: Making::Punch { margin: -1 }, ..Shape::by_hand(Form::Circle, 5 * MM, 5 * MM) };
    assert_eq!(punch.make().unwrap_err(), ShapeFault::NegativeMargin { margin: -1 });
    assert_eq!(Shape::by_hand(Form::Oval, 5 * MM, 6 * MM).make().unwrap_err(), ShapeFault::RoundByHand);
}

fn forms() -> impl Strategy<Value = Form> {
    let corner = || prop::sample::select(Corner::ALL.to_vec());
    let depth = || (1_i64..30).prop_map(|depth| depth * 500_000);
    let end = move || {
        prop_oneof![depth().prop_map(|depth| End::Fishtail { depth }), depth().prop_map(|depth| End::Pointed { depth })]
    };
    prop_oneof![
        Just(Form::Rectangle),
        Just(Form::Diamond),
        Just(Form::Circle),
        Just(Form::Oval),
        corner().prop_map(|right_angle| Form::Triangle { right_angle }),
        (prop::sample::select(Edge::ALL.to_vec()), end(), prop::option::of(end()))
            .prop_map(|(edge, end, opposite)| Form::Ended { edge, end, opposite }),
        (depth(), prop::sample::subsequence(Corner::ALL.to_vec(), 0..=4))
            .prop_map(|(radius, corners)| Form::Rounded { radius, corners }),
        prop::collection::vec((0_i64..12, 0_i64..12), 0..7).prop_map(|corners| Form::Polygon {
            corners: corners.into_iter().map(|(x, y)| Point::new(x * 2 * MM, y * 2 * MM)).collect()
        }),
    ]
}

proptest! {
    #![proptest_config(crate::support::cases(192))]

    /// Whatever is asked for is made or refused, and turning or turning over does to the outline what it
    /// does to paper.
    #[test]
    fn shapes_turn_as_paper_does(
        form in forms(), width in 0_i64..14, height in 0_i64..14, die in any::<bool>(), turns in 0_u8..4, up in any::<bool>(),
    ) {
        let mirror = if up { Mirror::TopToBottom } else { Mirror::LeftToRight };
        let making = if die { DIE } else { Making::ByHand };
        let window = Window { form: Form::Diamond, width: 2 * MM, height: MM, left: 3 * MM, bottom: 2 * MM, making };
        let plain = Shape { making, ..Shape::by_hand(form, width * 2 * MM, height * 2 * MM) };
        for windows in [vec![], vec![window]] {
            let shape = Shape { windows, ..plain.clone() };
            prop_assert_eq!(&shape.mirrored(mirror).mirrored(mirror), &shape);
            let turned_over = shape.mirrored(mirror).make();
            let turned = shape.quarter_turned(turns).make();
            match shape.make() {
                Ok(made) => {
                    prop_assert_eq!(turned_over.unwrap().outline, made.outline.mirrored(mirror, shape.frame()));
                    prop_assert_eq!(turned.unwrap().outline, made.outline.quarter_turned_in(turns, shape.frame()));
                    prop_assert_eq!(made.outline.bounds(), shape.frame());
                    prop_assert!(made.area2() > 0 && made.area2() <= 2 * shape.frame().area());
                }
                Err(_) => prop_assert!(turned_over.is_err() && turned.is_err()),
            }
        }
    }
}
