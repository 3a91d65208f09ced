//! Shapes with a left and a right hand, and what is found where they are laid mirrored.

use super::kite::of;
use std::collections::BTreeSet;
use trimwright::assembly::model::Action;
use trimwright::diagnostic::Severity;
use trimwright::geometry::{Mirror, Point};
use trimwright::shape::{Form, Image, Making, Shape, Window};

/// A card with something laid mirrored.
fn mirrored(paper: &str, piece: &str, layer: &str) -> Vec<(String, Severity)> {
    let text = format!(
        "title: Kite\nmonth: 2026-04\ncards: 1\nunits: inch\n\
         card: {{size: 4 1/4 x 5 1/2 in, fold: side, from: white}}\n\
         papers:\n  white: {{sheets: 1 of letter}}\n  dusk: {{sheets: 2 of 12 x 12 in{paper}}}\n\
         pieces:\n  sail: {{size: 1 x 2 in, from: dusk, {piece}}}\n\
         front:\n  - {{place: sail, left: 1/2 in, top: 1 in, glue: tape, {layer}}}\n"
    );
    let found = of(&text, "hands-missing").into_iter();
    found.map(|finding| (finding.help.unwrap_or_default(), finding.severity)).collect()
}

const TRIANGLE: &str = "shape: \"triangle, right angle at bottom right\"";
const STRIP: &str = "shape: {fishtail: top, deep: 1/4 in}";

#[test]
fn a_triangle_has_two_hands_and_a_fishtail_two_ends() {
    let over = "mirrored: left to right";
    let help = "take `mirrored` out and lay 1 more piece there: `shape: triangle, right angle at bottom left`";
    for paper in [", pattern: one-way", ", pattern: two-way"] {
        assert_eq!(mirrored(paper, TRIANGLE, over), [(help.to_owned(), Severity::Error)], "{paper}");
    }
    let sides = ", sides: {front: any, back: any}, turned over: left to right";
    assert_eq!(mirrored(sides, TRIANGLE, over)[0].1, Severity::Error, "the other side is another");
    assert_eq!(mirrored("", TRIANGLE, over)[0].1, Severity::Note, "paper alike on both sides is turned over");
    assert_eq!(mirrored("", &format!("{TRIANGLE}, stamp: hello"), over)[0].1, Severity::Error, "words behind");
    // A fishtail at the top is its own image to the side, and half turned upside down.
    assert_eq!(mirrored(", pattern: one-way", STRIP, over), []);
    let down = "mirrored: top to bottom";
    assert_eq!(
        mirrored(", pattern: one-way", STRIP, down),
        [(
            "take `mirrored` out and lay 1 more piece there: one with its fishtail at the bottom".to_owned(),
            Severity::Error
        )]
    );
    assert_eq!(mirrored(", pattern: two-way", STRIP, down), []);
    assert_eq!(mirrored("", STRIP, down), []);
    assert_eq!(mirrored("", &format!("{STRIP}, pattern: upright"), down)[0].1, Severity::Error);
    assert_eq!(mirrored(", pattern: one-way", "shape: rectangle", down), []);
}

#[test]
fn a_window_off_the_middle_has_two_hands() {
    let window = |place: &str| format!("window: {{size: 1/4 x 1/4 in, {place}}}");
    let over = "mirrored: left to right";
    assert_eq!(mirrored("", &window("centre: both ways"), over), []);
    // Beside the middle, but half way up: half a turn brings it over.
    assert_eq!(mirrored(", pattern: two-way", &window("left: 1/8 in, centre: up and down"), over), []);
    assert_eq!(mirrored(", pattern: one-way", &window("left: 1/8 in, centre: up and down"), over).len(), 1);
    let both = mirrored(", pattern: two-way", &window("left: 1/8 in, top: 1/8 in"), over);
    assert_eq!(
        both,
        [(
            "take `mirrored` out and lay 1 more piece there: the sail with left and right changed for each other"
                .to_owned(),
            Severity::Error
        )]
    );
}

#[test]
fn the_step_says_what_is_turned_over() {
    let line = |paper: &str, piece: &str| {
        let text = format!(
            "title: Kite\nmonth: 2026-04\ncards: 1\nunits: inch\n\
             card: {{size: 4 1/4 x 5 1/2 in, fold: side, from: white}}\n\
             papers:\n  white: {{sheets: 1 of letter}}\n  dusk: {{sheets: 2 of 12 x 12 in{paper}}}\n\
             pieces:\n  sail: {{size: 1 x 2 in, from: dusk, {piece}}}\n\
             front:\n  - {{place: sail, left: 1/2 in, top: 1 in, glue: tape, mirrored: left to right}}\n"
        );
        let project = crate::support::sound(&text);
        let step = project.steps.steps.iter().find(|step| matches!(step.action, Action::Glue { .. })).unwrap();
        trimwright::assembly::tell::step(&project.design, &project.layout, step).line.to_plain()
    };
    assert!(line("", TRIANGLE).contains("the other turned over and mirrored: as far"), "{}", line("", TRIANGLE));
    assert!(line("", "shape: rectangle").contains("the other mirrored: as far"));
}

type Cells = BTreeSet<(i64, i64)>;

fn settled(cells: &Cells) -> Cells {
    let (x, y) = (cells.iter().map(|c| c.0).min().unwrap(), cells.iter().map(|c| c.1).min().unwrap());
    cells.iter().map(|c| (c.0 - x, c.1 - y)).collect()
}

/// The least of the eight images of a polyomino.
fn free(cells: &Cells) -> Cells {
    let mut images = Vec::new();
    let mut turned = cells.clone();
    for _ in 0..4 {
        turned = turned.iter().map(|(x, y)| (-y, *x)).collect();
        images.push(settled(&turned));
        images.push(settled(&turned.iter().map(|(x, y)| (-x, *y)).collect()));
    }
    images.into_iter().min().unwrap()
}

/// The outline of a polyomino that nowhere touches itself, a cell being 10 mm wide.
fn outline(cells: &Cells) -> Shape {
    const CELL: i64 = 10_000_000;
    let mut next = std::collections::BTreeMap::new();
    for (x, y) in cells {
        let sides =
            [((0, -1), (0, 0), (1, 0)), ((1, 0), (1, 0), (1, 1)), ((0, 1), (1, 1), (0, 1)), ((-1, 0), (0, 1), (0, 0))];
        for ((dx, dy), from, to) in sides {
            if !cells.contains(&(x + dx, y + dy)) {
                let clear = next.insert((x + from.0, y + from.1), (x + to.0, y + to.1)).is_none();
                assert!(clear, "it touches itself");
            }
        }
    }
    let first = *next.keys().next().unwrap();
    let (mut at, mut ring) = (first, Vec::new());
    loop {
        ring.push(at);
        at = next[&at];
        if at == first {
            break;
        }
    }
    let straight = |n: usize| {
        let (a, b, c) = (ring[(n + ring.len() - 1) % ring.len()], ring[n], ring[(n + 1) % ring.len()]);
        (b.0 - a.0, b.1 - a.1) == (c.0 - b.0, c.1 - b.1)
    };
    let corners: Vec<Point> =
        (0..ring.len()).filter(|n| !straight(*n)).map(|n| Point::new(ring[n].0 * CELL, ring[n].1 * CELL)).collect();
    let (width, height) = (corners.iter().map(|c| c.x).max().unwrap(), corners.iter().map(|c| c.y).max().unwrap());
    Shape::by_hand(Form::Polygon { corners }, width, height)
}

#[test]
fn as_many_polyominoes_have_two_hands_as_are_published() {
    // The number of one-sided polyominoes with n cells is that of free ones and of those without a mirror image of
    // their own together: OEIS A000988, read at oeis.org, n from 1 to 6.
    const ONE_SIDED: [usize; 6] = [1, 1, 2, 7, 18, 60];
    let mut all: BTreeSet<Cells> = BTreeSet::from([Cells::from([(0, 0)])]);
    for one_sided in ONE_SIDED {
        let handed = all.iter().filter(|cells| {
            let images = Mirror::ALL.map(|mirror| outline(cells).image(mirror) == Image::OtherHand);
            assert_eq!(images[0], images[1], "whichever way it is turned over");
            images[0]
        });
        assert_eq!(all.len() + handed.count(), one_sided);
        let grown = all.iter().flat_map(|cells| {
            let beside = cells.iter().flat_map(|(x, y)| [(x + 1, *y), (x - 1, *y), (*x, y + 1), (*x, y - 1)]);
            let new: Vec<(i64, i64)> = beside.filter(|cell| !cells.contains(cell)).collect();
            new.into_iter().map(|cell| free(&cells.iter().copied().chain([cell]).collect()))
        });
        all = grown.collect();
    }
}

#[test]
fn an_image_may_need_a_turn_that_is_no_quarter() {
    // An isosceles triangle on its side, its axis at a slant: a turn that is no whole quarter brings it over.
    // Corners at 0,0; 40,20 and 20,40 mm: the axis is the diagonal, and a quarter turn follows.
    let shape = |corners: [(i64, i64); 3]| {
        let corners = corners.map(|(x, y)| Point::new(x * 1_000_000, y * 1_000_000)).to_vec();
        Shape::by_hand(Form::Polygon { corners }, 40_000_000, 40_000_000)
    };
    assert_eq!(shape([(0, 0), (40, 20), (20, 40)]).image(Mirror::LeftToRight), Image::Turned);
    // 0,40; 0,0 and 40,30: sides 40, 50 and 41.2 mm, all unlike.
    assert_eq!(shape([(0, 40), (0, 0), (40, 30)]).image(Mirror::LeftToRight), Image::OtherHand);
    // 0,0; 30,40 and 40,10...: sides 50, 50 and 31.6 mm about an axis that is no diagonal.
    let slant = Shape::by_hand(
        Form::Polygon {
            corners: vec![Point::new(0, 0), Point::new(50_000_000, 0), Point::new(30_000_000, 40_000_000)],
        },
        50_000_000,
        40_000_000,
    );
    assert_eq!(slant.image(Mirror::LeftToRight), Image::Turned);
    // A round window off the middle of a round frame comes over by a turn; two unlike windows may not.
    let round = |windows: Vec<(i64, i64, i64)>| Shape {
        form: Form::Circle,
        width: 60_000_000,
        height: 60_000_000,
        making: Making::Die { margin: 0 },
        windows: windows
            .into_iter()
            .map(|(left, bottom, wide)| Window {
                form: Form::Rectangle,
                width: wide * 1_000_000,
                height: wide * 1_000_000,
                left: left * 1_000_000,
                bottom: bottom * 1_000_000,
                making: Making::ByHand,
            })
            .collect(),
    };
    assert_eq!(round(vec![(10, 25, 10)]).image(Mirror::LeftToRight), Image::HalfTurned);
    assert_eq!(round(vec![(10, 25, 10), (40, 26, 8), (25, 40, 6)]).image(Mirror::LeftToRight), Image::OtherHand);
    assert_eq!(round(vec![(10, 25, 10)]).image(Mirror::TopToBottom), Image::Itself);
}
