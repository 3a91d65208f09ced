//! One picture for every shape, relation and arrangement: compared with the text that stands in
//! `golden`, and each drawn ring with the layout.

use super::fixture::{NOWHERE, e, layer, len, paper, piece, said, size, step};
use std::path::PathBuf;
use trimwright::assembly::model::{Action, Steps};
use trimwright::cutting::plan::{Aim, Aims, CutPlan};
use trimwright::design::model::{
    Along, Arrangement, Bound, Card, Design, Envelope, Face, Fold, Frames, From, Layer, LayerId, Month, Onto, PaperId,
    Part, Pattern, Piece, PieceId, PieceKind, Pivot, Tilt, Version, VersionId, Work, Workshop,
};
use trimwright::drawing::canvas::extent;
use trimwright::drawing::figures::Room;
use trimwright::drawing::figures::finish::finish;
use trimwright::drawing::figures::front::{face, front};
use trimwright::drawing::figures::step::step as draw_step;
use trimwright::drawing::figures::view::{View, views};
use trimwright::drawing::outline::Outline;
use trimwright::drawing::scale::Print;
use trimwright::drawing::scale::{Frame, Scale};
use trimwright::drawing::scene::{At, Item, Lettering, Role, Scene};
use trimwright::drawing::svg::svg;
use trimwright::geometry::{Angle, Corner, Edge, Mirror, Point, Polygon, Rect, Region};
use trimwright::layout::place::place;
use trimwright::length::{Length, Units};
use trimwright::paper::made::made;
use trimwright::preview;
use trimwright::project::Project;
use trimwright::shape::{End, Form, Making, Shape, Window};
use trimwright::words::{Language, Words};

const ROOM: Room = Room::tenths_of_mm(830, 500);
/// Papers: the base's, one with an "up", one that may be turned, plain cardstock.
const WHITE: usize = 0;
const ONE_WAY: usize = 1;
const ANY: usize = 2;
const PLAIN: usize = 3;

fn from(paper: usize) -> From {
    From::Paper(PaperId(paper))
}

fn shaped(name: &str, width: i64, height: i64, paper: usize, form: Form) -> Piece {
    let mut piece = piece(name, size(width, height), from(paper));
    piece.shape = Shape::by_hand(form, e(width), e(height));
    if matches!(piece.shape.form, Form::Circle | Form::Oval) {
        piece.shape.making = Making::Die { margin: e(1) };
    }
    piece
}

/// A card of 2 1/2 x 2 1/2 in with some pieces and layers; the piece at index 0 is its base.
fn project(pieces: Vec<Piece>, layers: Vec<Layer>) -> Project {
    folded(Fold::Side, pieces, layers)
}

fn folded(fold: Fold, pieces: Vec<Piece>, layers: Vec<Layer>) -> Project {
    let sheet = size(96, 96);
    let front = size(20, 20);
    let mut all = vec![piece("base", fold.flat(front), from(WHITE))];
    all.extend(pieces);
    let design = Design {
        units: Units::Inch,
        asked: vec![Units::Inch],
        asked_span: None,
        languages: vec![Language::ENGLISH],
        words: Words::english().clone(),
        has_readers_names: false,
        untold: Vec::new(),
        restated: Vec::new(),
        title: said("Paper Shapes".to_owned()),
        month: Some(said(Month { year: 2026, month: 11 })),
        designer: None,
        imprint: None,
        photo: None,
        about: None,
        cards: said(1),
        workshop: Workshop {
            ruler: Length::inch(1, 16),
            cutting_error: Length::inch(1, 32),
            placing_error: Length::inch(1, 16),
            trimmer: Length::inch(12, 1),
            trimmer_span: None,
        },
        card: Some(Card { size: front, span: NOWHERE, fold, from: PaperId(WHITE), base: PieceId(0) }),
        papers: vec![
            paper("white", sheet, Pattern::Any, Some("110 lb cover")),
            paper("dusk", sheet, Pattern::OneWay, None),
            paper("ember", sheet, Pattern::Any, None),
            paper("slate", sheet, Pattern::Any, Some("80 lb cover")),
        ],
        pieces: all,
        versions: vec![Version {
            name: String::new(),
            span: NOWHERE,
            cards: 1,
            papers: Vec::new(),
            side: None,
            photo: None,
        }],
        envelope: Some(Envelope { size: size(22, 22), span: NOWHERE, flap: Some(len(8)) }),
        layers,
        notes: Vec::new(),
        leftovers: Vec::new(),
        allow: Vec::new(),
        handouts: Vec::new(),
        frames: Frames::No,
        supplies: Vec::new(),
        tools: Vec::new(),
        has_front: true,
    };
    let aim = Aim { found: 0, bound: 0, proven: true };
    let plan = CutPlan {
        units: Units::Inch,
        cards: 1,
        most: None,
        aims: Aims { cards: aim, sheets: aim, diagrams: aim, cuts: aim, changes: aim, leftover: aim },
        sheets: Vec::new(),
        missing: Vec::new(),
    };
    let layout = place(&design);
    Project {
        made: made(&design, &layout),
        design,
        layout,
        plan,
        steps: Steps::default(),
        others: Vec::new(),
        told: Vec::new(),
        made_in: None,
    }
}

fn centred(name: &str, piece: usize) -> Layer {
    layer(name, piece, Onto::Card, None, Along::Centre, Along::Centre)
}

fn at(name: &str, piece: usize, left: i64, bottom: i64) -> Layer {
    layer(name, piece, Onto::Card, None, Along::FromLow(len(left)), Along::FromLow(len(bottom)))
}

fn one(form: Form) -> Project {
    project(vec![shaped("shape", 12, 10, ANY, form)], vec![centred("shape", 1)])
}

fn square(form: Form) -> Project {
    project(vec![shaped("shape", 12, 12, ANY, form)], vec![centred("shape", 1)])
}

/// A strip of a given arrangement, of paper with an "up".
fn arranged(width: i64, height: i64, arrangement: Arrangement) -> Project {
    let mut own = centred("strip", 1);
    own.arrangement = arrangement;
    project(vec![piece("strip", size(width, height), from(ONE_WAY))], vec![own])
}

/// A strip beside a block that lies 3/8 in from the left and 1/2 in from the bottom.
fn beside(change: impl FnOnce(&mut Layer)) -> Project {
    let pieces = vec![piece("block", size(6, 6), from(PLAIN)), piece("strip", size(8, 4), from(ANY))];
    let mut strip = centred("strip", 2);
    change(&mut strip);
    project(pieces, vec![at("block", 1, 3, 4), strip])
}

fn tilted(hundredths: i64, about: Pivot) -> Project {
    let mut strip = centred("strip", 1);
    strip.tilt = Some(Tilt { angle: Angle::left(hundredths), about, span: NOWHERE });
    project(vec![piece("strip", size(14, 5), from(ONE_WAY))], vec![strip])
}

fn leaf() -> Form {
    let points = [(0, 3), (2, 1), (6, 0), (10, 2), (12, 5), (10, 8), (6, 10), (2, 8)];
    Form::Polygon { corners: points.map(|(x, y)| Point::new(e(x), e(y))).to_vec() }
}

/// As an outline from a designer's file comes: many short edges, flattened from curves.
fn drop() -> Form {
    let (width, height) = (e(12), e(10));
    let mut corners: Vec<Point> = (0..=60)
        .map(|step| {
            // Three quarters of an ellipse, then a straight way to the upper right corner.
            let turn = f64::from(step) / 60.0 * 1.5 * core::f64::consts::PI + 0.5 * core::f64::consts::PI;
            #[allow(clippy::cast_precision_loss, clippy::cast_possible_truncation)]
            let at = |half: i64, share: f64| half + (half as f64 * share).round() as i64;
            Point::new(at(width / 2, turn.cos()), at(height / 2, turn.sin()))
        })
        .collect();
    corners.push(Point::new(width, height));
    Form::Polygon { corners }
}

fn windowed() -> Project {
    let mut frame = shaped("frame", 14, 14, PLAIN, Form::Rectangle);
    let window = |form, width, height, left, bottom| Window {
        form,
        width: e(width),
        height: e(height),
        left: e(left),
        bottom: e(bottom),
        making: Making::Die { margin: 0 },
    };
    frame.shape.windows = vec![window(Form::Circle, 6, 6, 4, 6), window(Form::Rectangle, 10, 3, 2, 1)];
    let below = piece("panel", size(10, 10), from(ONE_WAY));
    project(vec![below, frame], vec![centred("panel", 1), centred("frame", 2)])
}

/// Name and project of every picture of a front.
fn fronts() -> Vec<(&'static str, Project)> {
    by_hand().into_iter().chain(super::settled::fronts()).collect()
}

/// Those whose design is written out here.
fn by_hand() -> Vec<(&'static str, Project)> {
    let fishtail = End::Fishtail { depth: e(3) };
    let row = |count, gap| Arrangement::Row { count, gap: len(gap) };
    let mut turned = centred("strip", 1);
    turned.quarter_turns = 1;
    let mut mirrored = layer("half", 1, Onto::Card, None, Along::FromLow(len(2)), Along::Centre);
    mirrored.mirrored = Some(Mirror::LeftToRight);
    let half = Form::Triangle { right_angle: Corner::LowerRight };
    let pearls = {
        let mut pearl = shaped("pearl", 2, 2, ANY, Form::Circle);
        pearl.kind = PieceKind::Decoration { roll: None, thick: None };
        pearl.from = From::Bought;
        let mut own = centred("pearl", 1);
        own.arrangement = Arrangement::Triangle { rows: 3, across: len(1), down: len(1), points_up: true };
        project(vec![pearl], vec![own])
    };
    let on_turned = {
        let mut base = centred("panel", 1);
        base.tilt = Some(Tilt { angle: Angle::left(1500), about: Pivot::Middle, span: NOWHERE });
        let mut strip = layer("strip", 2, Onto::Layer(LayerId(0)), None, Along::Centre, Along::FromHigh(len(2)));
        strip.trim_flush = Some(said(Onto::Layer(LayerId(0))));
        let pieces = vec![piece("panel", size(12, 12), from(ONE_WAY)), piece("strip", size(16, 3), from(PLAIN))];
        project(pieces, vec![base, strip])
    };
    vec![
        ("shape-rectangle", one(Form::Rectangle)),
        ("shape-triangle", one(Form::Triangle { right_angle: Corner::LowerLeft })),
        ("shape-diamond", one(Form::Diamond)),
        ("shape-polygon", one(leaf())),
        ("shape-svg-outline", one(drop())),
        ("shape-fishtail", one(Form::Ended { edge: Edge::Bottom, end: fishtail, opposite: None })),
        (
            "shape-pointed",
            one(Form::Ended { edge: Edge::Right, end: End::Pointed { depth: e(3) }, opposite: Some(fishtail) }),
        ),
        ("shape-rounded", one(Form::Rounded { radius: e(2), corners: vec![Corner::UpperLeft, Corner::LowerRight] })),
        ("shape-circle", square(Form::Circle)),
        ("shape-oval", {
            let mut oval = one(Form::Oval);
            oval.design.pieces[1].from = from(ONE_WAY);
            oval
        }),
        ("shape-windowed", windowed()),
        ("place-centre", beside(|_| {})),
        (
            "place-distances",
            beside(|strip| (strip.across, strip.up) = (Along::FromHigh(len(1)), Along::FromHigh(len(2)))),
        ),
        (
            "place-neighbours",
            beside(|strip| {
                (strip.across, strip.up) = (Along::After(LayerId(0), len(2)), Along::After(LayerId(0), len(0)));
            }),
        ),
        (
            "place-level-with",
            beside(|strip| {
                (strip.across, strip.up) = (Along::After(LayerId(0), len(1)), Along::With(LayerId(0), Part::High));
            }),
        ),
        (
            "place-midway",
            beside(|strip| {
                (strip.across, strip.up) = (Along::Centre, Along::Midway(Bound::Layer(LayerId(0)), Bound::High));
            }),
        ),
        ("place-shifted", beside(|strip| strip.shifted = (e(2), -e(1)))),
        ("arrange-row", arranged(4, 8, row(3, 2))),
        ("arrange-column", arranged(8, 4, Arrangement::Column { count: 3, gap: len(2) })),
        ("arrange-grid", arranged(4, 4, Arrangement::Grid { columns: 3, rows: 2, across: len(1), down: len(2) })),
        ("arrange-steps", arranged(7, 7, Arrangement::Steps { count: 3, right: len(4), up: len(3) })),
        (
            "arrange-triangle",
            arranged(4, 4, Arrangement::Triangle { rows: 3, across: len(1), down: len(1), points_up: true }),
        ),
        (
            "arrange-fan",
            arranged(3, 12, Arrangement::Fan { count: 5, step: Angle::left(1200), about: Pivot::Edge(Edge::Bottom) }),
        ),
        ("arrange-pinwheel", arranged(4, 10, Arrangement::Pinwheel { clockwise: true })),
        ("arrange-ring", ring()),
        ("arrange-mirrored", project(vec![shaped("half", 6, 12, ONE_WAY, half)], vec![mirrored])),
        ("arrange-quarter-turned", project(vec![piece("strip", size(14, 5), from(ONE_WAY))], vec![turned])),
        ("arrange-turned", tilted(3000, Pivot::Middle)),
        ("arrange-turned-right", tilted(-1250, Pivot::Corner(Corner::LowerLeft))),
        ("on-a-turned-layer", on_turned),
        ("decoration", pearls),
        ("gate-front", folded(Fold::Gate, vec![shaped("shape", 8, 8, ANY, Form::Diamond)], vec![centred("shape", 1)])),
    ]
}

/// Four strips round a square, each edge to edge with the one before.
fn ring() -> Project {
    let none = len(0);
    let middle = LayerId(0);
    let strip = |name: &str, across, up, before: Vec<usize>| {
        let lying = usize::from(matches!(up, Along::After(..) | Along::Before(..)));
        let mut own = layer(name, 2 + lying, Onto::Card, None, across, up);
        own.ring = before.into_iter().map(LayerId).collect();
        own
    };
    let pieces = vec![
        piece("heart", size(6, 6), from(ANY)),
        piece("upright strip", size(2, 8), from(PLAIN)),
        piece("lying strip", size(8, 2), from(PLAIN)),
    ];
    let layers = vec![
        centred("heart", 1),
        strip("first", Along::Before(middle, none), Along::With(middle, Part::Low), vec![0]),
        strip("second", Along::With(middle, Part::Low), Along::After(middle, none), vec![0, 1]),
        strip("third", Along::After(middle, none), Along::With(middle, Part::High), vec![0, 1, 2]),
        strip("fourth", Along::With(middle, Part::High), Along::Before(middle, none), vec![0, 1, 2, 3]),
    ];
    project(pieces, layers)
}

/// Pictures of single steps and of other faces.
fn others() -> Vec<(&'static str, Scene)> {
    let glue = |layer, loose| step(1, Work::Units, Action::Glue { layer: LayerId(layer), loose });
    let trim = |layer, loose| step(2, Work::Units, Action::Trim { layer: LayerId(layer), loose });
    let score = || step(1, Work::Folding, Action::ScoreAndFold { piece: PieceId(0) });
    // A unit: a turned panel with a strip across it at another angle, cut too long.
    let unit = || {
        let pieces = vec![
            shaped(
                "panel",
                12,
                12,
                ONE_WAY,
                Form::Ended { edge: Edge::Bottom, end: End::Pointed { depth: e(3) }, opposite: None },
            ),
            piece("strip", size(18, 2), from(PLAIN)),
        ];
        let mut panel = centred("panel", 1);
        panel.tilt = Some(Tilt { angle: Angle::left(1000), about: Pivot::Middle, span: NOWHERE });
        let mut strip = layer("strip", 2, Onto::Layer(LayerId(0)), Some(0), Along::Centre, Along::FromHigh(len(4)));
        strip.tilt = Some(Tilt { angle: Angle::left(2500), about: Pivot::Middle, span: NOWHERE });
        strip.trim_flush = Some(said(Onto::Layer(LayerId(0))));
        let mut project = project(pieces, vec![panel, strip]);
        project.steps = Steps { steps: vec![glue(1, true), trim(1, true), glue(0, false)] };
        project
    };
    let scored = |fold| {
        let mut project = folded(fold, Vec::new(), Vec::new());
        project.steps = Steps { steps: vec![score()] };
        project
    };
    let faces = {
        let on = |name: &str, piece: usize, face| Layer { face, ..centred(name, piece) };
        let pieces = vec![
            piece("liner", size(18, 18), from(ANY)),
            shaped("tag", 10, 6, PLAIN, Form::Diamond),
            piece("stripe", size(22, 3), from(ONE_WAY)),
        ];
        let layers = vec![
            on("liner", 1, Face::Inside(Some(1))),
            on("inner tag", 2, Face::Inside(Some(0))),
            on("back tag", 2, Face::Back),
            on("stripe", 3, Face::EnvelopeFront),
            on("flap tag", 2, Face::EnvelopeFlap),
        ];
        let mut project = project(pieces, layers);
        project.steps = Steps { steps: vec![glue(1, false)] };
        project
    };
    let view = |view| face(&faces, VersionId(0), view, Room::tenths_of_mm(1200, 600)).expect("a face");
    let drawn = |project: &Project, n| draw_step(project, n, Print::NORMAL).expect("a picture");
    let finished = |form, width, height| {
        let pieces = vec![shaped("shape", width, height, ANY, form)];
        finish(&project(pieces, Vec::new()), PieceId(1)).expect("something to finish")
    };
    let ended = Form::Ended {
        edge: Edge::Bottom,
        end: End::Fishtail { depth: e(3) },
        opposite: Some(End::Pointed { depth: e(2) }),
    };
    vec![
        ("finish-triangle", finished(Form::Triangle { right_angle: Corner::LowerLeft }, 12, 10)),
        ("finish-diamond", finished(Form::Diamond, 12, 10)),
        ("finish-ends", finished(ended, 6, 16)),
        ("finish-rounded", finished(Form::Rounded { radius: e(1), corners: vec![Corner::UpperLeft] }, 12, 10)),
        ("finish-drawn", super::settled::followed()),
        ("finish-circle", finished(Form::Circle, 10, 10)),
        ("finish-window", finish(&windowed(), PieceId(2)).expect("a window")),
        ("step-overhang", drawn(&unit(), 0)),
        ("step-face-down", drawn(&unit(), 1)),
        ("step-turned-unit", drawn(&unit(), 2)),
        ("step-scores-gate", drawn(&scored(Fold::Gate), 0)),
        ("step-scores-accordion", drawn(&scored(Fold::Accordion { panels: 4 }), 0)),
        ("step-inside", drawn(&faces, 0)),
        ("face-inside", view(View::Inside)),
        ("face-back", view(View::Back)),
        ("face-envelope-front", view(View::EnvelopeFront)),
        ("face-envelope-flap", view(View::EnvelopeFlap)),
    ]
}

fn all() -> Vec<(&'static str, Scene)> {
    let fronts = fronts().into_iter().map(|(name, project)| {
        (name, front(&project, VersionId(0), ROOM).unwrap_or_else(|| panic!("{name}: no front")))
    });
    fronts.chain(others()).collect()
}

fn golden(name: &str) -> PathBuf {
    PathBuf::from(format!("{}/tests/drawing/golden/{name}.svg", env!("CARGO_MANIFEST_DIR")))
}

#[test]
fn pictures_are_what_stands_in_the_golden_folder() {
    let mut stale = Vec::new();
    for (name, scene) in all() {
        let text = svg(&scene);
        if std::env::var_os("UPDATE_PICTURES").is_some() {
            std::fs::write(golden(name), &text).expect("written");
        }
        if std::fs::read_to_string(golden(name)).unwrap_or_default() != text {
            stale.push(name);
        }
    }
    assert!(stale.is_empty(), "{stale:?}: run `UPDATE_PICTURES=1 cargo test golden_folder` and look at them");
}

#[test]
#[ignore = "writes pictures to a temporary folder, to look at"]
fn look_at_outlines() {
    let folder = std::env::temp_dir().join("look").join("outlines");
    std::fs::create_dir_all(&folder).unwrap();
    for (name, scene) in all() {
        let pixels = u32::try_from(scene.width / 84_667).unwrap();
        std::fs::write(folder.join(format!("{name}.png")), preview::png(&scene, pixels).unwrap()).unwrap();
    }
}

/// The upper left corner of the card in a scene at 1:n.
fn origin(scene: &Scene, width: i64) -> At {
    let found = scene.items.iter().find_map(|item| match item {
        Item::Box { role: Role::Layer, at, width: own, .. } if *own == width => Some(*at),
        _ => None,
    });
    found.expect("the card")
}

/// Rings in one form: each turned to begin at its least corner and run one way.
fn in_order(rings: Vec<Vec<At>>) -> Vec<Vec<(i64, i64)>> {
    let mut rings: Vec<Vec<(i64, i64)>> =
        rings.into_iter().map(|ring| ring.into_iter().map(|at| (at.x, at.y)).collect()).collect();
    for ring in &mut rings {
        let first = (0..ring.len()).min_by_key(|n| ring[*n]).unwrap();
        ring.rotate_left(first);
        let (one, last) = (ring[1], ring[ring.len() - 1]);
        if last < one {
            ring[1..].reverse();
        }
    }
    rings.sort();
    rings
}

fn drawn(scene: &Scene) -> Vec<Vec<Vec<(i64, i64)>>> {
    let rings = scene.items.iter().filter_map(|item| match item {
        Item::Shape { role: Role::Layer, rings } => Some(in_order(rings.clone())),
        Item::Box { role: Role::Layer, at, width, height, .. } => {
            let (right, bottom) = (at.x + width, at.y + height);
            Some(in_order(vec![vec![*at, At::new(right, at.y), At::new(right, bottom), At::new(at.x, bottom)]]))
        }
        _ => None,
    });
    rings.collect()
}

#[test]
fn every_ring_drawn_is_the_layouts_scaled() {
    for (name, project) in fronts() {
        let scene = front(&project, VersionId(0), ROOM).unwrap();
        let tenths = i64::from(scene.scale.unwrap());
        let card = project.layout.card.unwrap();
        // Halves up, as every length on the page is rounded once.
        let page = |nm: i64| (nm * 20 + tenths).div_euclid(2 * tenths);
        let from = origin(&scene, page(card.width.nm()));
        let drawn = drawn(&scene);
        let mut copies = 0;
        for placed in &project.layout.layers {
            for laid in &placed.laid {
                let rings = laid.shown.parts().iter().flat_map(Polygon::rings);
                let rings = rings.map(|ring| {
                    let corner = |p: &Point| At::new(from.x + page(p.x), from.y + page(card.height.nm() - p.y));
                    ring.iter().map(corner).collect()
                });
                let wanted = in_order(rings.collect());
                assert!(drawn.contains(&wanted), "{name}: {wanted:?}\n{drawn:?}");
                copies += 1;
            }
        }
        assert_eq!(drawn.len(), copies + 1, "{name}: each once, and the card");
    }
}

/// Every point that a hatch has ink at.
fn hatch_points(scene: &Scene) -> Vec<At> {
    let hatch = |role: &Role| {
        matches!(role, Role::Hatch | Role::HatchSign | Role::HatchDot | Role::HatchHead | Role::HatchRing)
    };
    let points = scene.items.iter().filter_map(|item| match item {
        Item::Strokes { role, runs } if hatch(role) => Some(runs.concat()),
        Item::Circles { role, centres, .. } if hatch(role) => Some(centres.clone()),
        _ => None,
    });
    points.flatten().collect()
}

#[test]
fn a_hatch_stays_on_what_is_seen_of_its_paper() {
    for (name, project) in fronts() {
        let scene = front(&project, VersionId(0), ROOM).unwrap();
        let tenths = scene.scale.unwrap();
        let card = Rect::of(project.layout.card.unwrap());
        let scale = Scale::stated(tenths, Print::NORMAL);
        let frame = Frame::new(scale, card, origin(&scene, scale.length(card.width())));
        let shown: Vec<Region> = project.layout.layers.iter().map(|placed| placed.shown()).collect();
        let shown: Vec<Outline> = shown.iter().filter_map(|region| Outline::of(frame, region)).collect();
        let points = hatch_points(&scene);
        let is_bought = project.design.pieces[1].from == From::Bought;
        assert_eq!(points.is_empty(), is_bought, "{name}");
        for point in points {
            assert!(shown.iter().any(|outline| outline.holds(point)), "{name}: {point:?}");
        }
    }
}

#[test]
fn a_sign_with_an_up_is_turned_with_its_layer() {
    let direction = |project: &Project| {
        let scene = front(project, VersionId(0), ROOM).unwrap();
        let run = scene.items.iter().find_map(|item| match item {
            Item::Strokes { role: Role::HatchSign, runs } => runs.first().cloned(),
            _ => None,
        });
        let [one, tip, other] = run.expect("a chevron")[..] else { panic!("three corners") };
        // From the middle of its feet to its tip, y upward.
        let (x, y) = (2 * tip.x - one.x - other.x, one.y + other.y - 2 * tip.y);
        #[allow(clippy::cast_precision_loss)]
        (y as f64).atan2(x as f64).to_degrees()
    };
    for (hundredths, degrees) in [(0, 90.0), (3000, 120.0), (-1250, 77.5), (18_000, -90.0)] {
        let seen = direction(&tilted(hundredths, Pivot::Middle));
        assert!((seen - degrees).abs() < 0.01, "{hundredths}: {seen}");
    }
}

#[test]
fn a_turn_is_told_by_its_degrees_and_measured_by_no_ruler() {
    let scene = front(&tilted(-1250, Pivot::Corner(Corner::LowerLeft)), VersionId(0), ROOM).unwrap();
    let figures: Vec<String> = super::texts(&scene)
        .into_iter()
        .filter(|(role, ..)| *role == Lettering::Figure)
        .map(|(.., text)| text)
        .collect();
    assert_eq!(figures, ["12.5°", "2 1/2", "2 1/2"]);
    assert!(scene.alt.contains("strip turned 12.5° to the right about its bottom left corner"), "{}", scene.alt);
    assert!(scene.alt.contains("strip (2), 1 3/4 × 5/8, from dusk"), "its size unturned: {}", scene.alt);
}

#[test]
fn a_plain_rectangle_needs_no_finishing() {
    let (_, plain) = fronts().remove(0);
    assert_eq!(finish(&plain, PieceId(1)), None);
    let scene = others().into_iter().find(|(name, _)| *name == "finish-triangle").unwrap().1;
    assert_eq!(
        scene.alt,
        "shape (2) from a rectangle of 1 1/2 × 1 1/4 in: a cut from 1 1/2 from the left and 1 1/4 from the top to 0 from the left and 0 from the top."
    );
}

#[test]
fn only_faces_with_something_on_them_are_views() {
    let (_, plain) = fronts().remove(0);
    assert_eq!(views(&plain), [View::Front]);
    let mut inside = plain;
    inside.design.layers[0].face = Face::Inside(Some(1));
    assert_eq!(views(&inside), [View::Front, View::Inside]);
}

#[test]
fn ink_and_labels_keep_clear_in_every_picture() {
    for (name, scene) in all() {
        let ink = extent(&scene.items).unwrap();
        assert!(ink.left >= 0 && ink.top >= 0 && ink.right <= scene.width && ink.bottom <= scene.height, "{name}");
        assert!(scene.alt.ends_with('.'), "{name}: {}", scene.alt);
        super::clear::labels_are_clear(&scene);
        preview::tree(&svg(&scene)).unwrap();
    }
}

#[test]
fn a_handout_sets_windows_and_turned_layers() {
    // The typesetter refuses what it cannot draw; how it looks is for `look_at_outlines`.
    let mut project = windowed();
    project.steps = Steps {
        steps: vec![
            step(1, Work::Layering, Action::Glue { layer: LayerId(0), loose: false }),
            step(2, Work::Layering, Action::Glue { layer: LayerId(1), loose: false }),
        ],
    };
    let pages = trimwright::handout::page_images(&project, trimwright::design::variants::Wanted::HANDOUT, 100.0)
        .unwrap_or_else(|error| panic!("{error:?}"));
    if std::env::var_os("UPDATE_PICTURES").is_some() {
        let folder = std::env::temp_dir().join("look");
        std::fs::create_dir_all(&folder).unwrap();
        for (n, page) in pages.iter().enumerate() {
            std::fs::write(folder.join(format!("page-{n}.png")), page).unwrap();
        }
    }
    assert!(!pages.is_empty());
}
