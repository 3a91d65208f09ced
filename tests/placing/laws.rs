//! Laws of placing over random designs: a whole design moved, mirrored and half turned; and nothing panics,
//! whatever is written.

use proptest::prelude::*;
use trimwright::design::model::Design;
use trimwright::design::nodes::read;
use trimwright::design::settle::settle;
use trimwright::geometry::{Mirror, Point, Polygon, Rect};
use trimwright::layout::place::place;
use trimwright::length::{NM_PER_MM, Units};
use trimwright::pipeline;
use trimwright::source::Source;

/// The front, in millimetres; all lengths here are whole ones, so every half of a half is exact.
const CARD: [i64; 2] = [120, 180];
/// Sizes of the pieces, in millimetres.
const SIZES: [[i64; 2]; 4] = [[80, 100], [30, 20], [8, 60], [14, 14]];

/// One direction of a placing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Way {
    Centre,
    Low(i64),
    High(i64),
    /// Beside a layer, after it or before it, with a gap that both directions share.
    Beside(usize, bool),
    /// Level with the low edge, middle or high edge of a layer.
    Level(usize, i8),
    Midway(Bound, Bound),
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Bound {
    Low,
    High,
    Layer(usize),
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Copies {
    One,
    Row(u32, i64),
    Column(u32, i64),
    Grid(u32, u32, i64),
    Steps(u32, i64, i64),
    Triangle(u32, i64, bool),
    Fan(u32, u32, [i8; 2]),
    Pinwheel(bool),
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Turn {
    None,
    Quarters(u8),
    /// Whole degrees to the left or right, about a point at the low, middle or high of both directions.
    Degrees(u32, bool, [i8; 2]),
}

#[derive(Debug, Clone, Copy)]
struct Item {
    piece: usize,
    onto: Option<usize>,
    along: [Way; 2],
    gap: i64,
    shift: [i64; 2],
    copies: Copies,
    mirrored: Option<bool>,
    turn: Turn,
}

/// A ring round the first layer: which strips, from which edge, which way.
#[derive(Debug, Clone)]
struct Ring {
    strips: Vec<usize>,
    start: usize,
    clockwise: bool,
}

#[derive(Debug, Clone)]
pub(crate) struct Whole {
    items: Vec<Item>,
    ring: Option<Ring>,
}

impl Item {
    fn is_turned(&self) -> bool {
        matches!(self.turn, Turn::Degrees(..)) || matches!(self.copies, Copies::Fan(..))
    }

    /// Whether something may lie on it: no copies that are each turned by themselves.
    fn carries(&self) -> bool {
        !self.is_turned() || self.copies == Copies::One && self.mirrored.is_none()
    }
}

const EDGES: [[&str; 2]; 2] = [["left", "right"], ["bottom", "top"]];
const ROUND: [&str; 4] = ["left", "top", "right", "bottom"];

impl Whole {
    /// What is drawn at random, with references only to earlier layers that lie straight in the same frame.
    fn mended(mut self) -> Self {
        for number in 0..self.items.len() {
            let (before, rest) = self.items.split_at_mut(number);
            let item = &mut rest[0];
            item.onto = item.onto.filter(|_| number > 0).map(|onto| onto % number.max(1));
            item.onto = item.onto.filter(|onto| before[*onto].carries());
            let onto = item.onto;
            let fits = |other: usize| {
                let other = other % number.max(1);
                before.get(other).is_some_and(|before| before.onto == onto && !before.is_turned()).then_some(other)
            };
            for way in &mut item.along {
                *way = match *way {
                    Way::Beside(other, after) => fits(other).map_or(Way::Low(5), |other| Way::Beside(other, after)),
                    Way::Level(other, part) => fits(other).map_or(Way::High(4), |other| Way::Level(other, part)),
                    Way::Midway(one, two) => {
                        let bound = |bound: Bound| match bound {
                            Bound::Layer(other) => fits(other).map(Bound::Layer),
                            edge => Some(edge),
                        };
                        match (bound(one), bound(two)) {
                            // Between a thing and itself there is no facing edge to speak of.
                            (Some(one), Some(two)) if one != two => Way::Midway(one, two),
                            _ => Way::Centre,
                        }
                    }
                    way => way,
                };
            }
        }
        if self.items[0].is_turned() {
            self.ring = None;
        }
        self
    }

    /// Everything measured from one edge: what lies on the card at a distance, or by what lies there.
    pub(crate) fn held_at_one_edge(mut self) -> Self {
        for item in self.items.iter_mut().filter(|item| item.onto.is_none()) {
            item.mirrored = None;
            for way in &mut item.along {
                *way = match *way {
                    Way::Centre => Way::Low(11),
                    Way::High(by) => Way::Low(by),
                    Way::Midway(one, two) if ![one, two].iter().all(|bound| matches!(bound, Bound::Layer(_))) => {
                        Way::Low(3)
                    }
                    way => way,
                };
            }
        }
        self
    }

    pub(crate) fn moved(mut self, by: [i64; 2]) -> Self {
        for item in self.items.iter_mut().filter(|item| item.onto.is_none()) {
            for (way, by) in item.along.iter_mut().zip(by) {
                if let Way::Low(from) = way {
                    *from += by;
                }
            }
        }
        self
    }

    /// The words of one direction changed for each other, turns reversed.
    pub(crate) fn mirrored(mut self, mirror: Mirror) -> Self {
        let (side, is_across) = if mirror == Mirror::LeftToRight { (0, true) } else { (1, false) };
        for item in &mut self.items {
            let bound = |bound: Bound| match bound {
                Bound::Low => Bound::High,
                Bound::High => Bound::Low,
                layer @ Bound::Layer(_) => layer,
            };
            item.along[side] = match item.along[side] {
                Way::Centre => Way::Centre,
                Way::Low(by) => Way::High(by),
                Way::High(by) => Way::Low(by),
                Way::Beside(other, after) => Way::Beside(other, !after),
                Way::Level(other, part) => Way::Level(other, -part),
                Way::Midway(one, two) => Way::Midway(bound(one), bound(two)),
            };
            item.shift[side] *= -1;
            let pivot = |mut about: [i8; 2]| {
                about[side] *= -1;
                about
            };
            item.copies = match item.copies {
                Copies::Steps(count, right, up) => {
                    let (right, up) = if is_across { (-right, up) } else { (right, -up) };
                    Copies::Steps(count, right, up)
                }
                Copies::Triangle(rows, gap, up) => Copies::Triangle(rows, gap, up == is_across),
                Copies::Fan(count, step, about) => Copies::Fan(count, step, pivot(about)),
                Copies::Pinwheel(clockwise) => Copies::Pinwheel(!clockwise),
                same => same,
            };
            item.turn = match item.turn {
                Turn::None => Turn::None,
                Turn::Quarters(turns) => Turn::Quarters((4 - turns) % 4),
                Turn::Degrees(by, left, about) => Turn::Degrees(by, !left, pivot(about)),
            };
        }
        if let Some(ring) = &mut self.ring {
            ring.clockwise = !ring.clockwise;
            if (ring.start % 2 == 0) == is_across {
                ring.start = (ring.start + 2) % 4;
            }
        }
        self
    }

    pub(crate) fn text(&self) -> String {
        let pieces: String = SIZES
            .iter()
            .enumerate()
            .map(|(number, [width, height])| {
                format!("  piece {number}: {{size: {width} x {height} mm, from: plain}}\n")
            })
            .collect();
        let mut text = format!(
            "title: Test\nmonth: 2026-11\ncards: 1\nunits: metric\ncard: {{size: {} x {} mm, fold: none, from: plain}}\n\
             papers: {{plain: {{sheets: 40 of A3}}}}\npieces:\n{pieces}front:\n",
            CARD[0], CARD[1]
        );
        for (number, item) in self.items.iter().enumerate() {
            text.push_str(&format!("  - place: piece {}\n    as: layer {number}\n", item.piece));
            for key in item.keys() {
                text.push_str(&format!("    {key}\n"));
            }
            // The ring stands behind the first layer, so that others may come to lie on it.
            if let (0, Some(ring)) = (number, &self.ring) {
                let strips: Vec<String> = ring.strips.iter().map(|piece| format!("piece {piece}")).collect();
                let way = if ring.clockwise { "clockwise" } else { "anticlockwise" };
                text.push_str(&format!(
                    "  - ring round: layer 0\n    strips: [{}]\n    starting: {}\n    going: {way}\n",
                    strips.join(", "),
                    ROUND[ring.start]
                ));
            }
        }
        text
    }
}

/// A point of a piece by name.
fn point([across, up]: [i8; 2]) -> String {
    let up = ["bottom", "", "top"][(up + 1) as usize];
    let across = ["left", "", "right"][(across + 1) as usize];
    match (up, across) {
        ("", "") => "middle".to_owned(),
        _ => format!("{up} {across}").trim().to_owned(),
    }
}

impl Item {
    fn keys(&self) -> Vec<String> {
        let mut keys = Vec::new();
        if let Some(onto) = self.onto {
            keys.push(format!("onto: layer {onto}"));
        }
        match self.along {
            [Way::Centre, Way::Centre] => keys.push("centre: both ways".to_owned()),
            [Way::Centre, _] => keys.push("centre: across".to_owned()),
            [_, Way::Centre] => keys.push("centre: up and down".to_owned()),
            _ => {}
        }
        for (side, way) in self.along.iter().enumerate() {
            let [low, high] = EDGES[side];
            let direction = ["across", "up"][side];
            match *way {
                Way::Centre => {}
                Way::Low(by) => keys.push(format!("{low}: {by} mm")),
                Way::High(by) => keys.push(format!("{high}: {by} mm")),
                Way::Beside(other, after) => {
                    let words = [["left of", "right of"], ["below", "above"]];
                    keys.push(format!("{}: layer {other}", words[side][usize::from(after)]));
                }
                Way::Level(other, part) => keys.push(match part {
                    0 => format!("centred {direction}: layer {other}"),
                    part => format!("{} with: layer {other}", if part < 0 { low } else { high }),
                }),
                Way::Midway(one, two) => {
                    let bound = |bound: Bound| match bound {
                        Bound::Low => format!("{low} edge"),
                        Bound::High => format!("{high} edge"),
                        Bound::Layer(layer) => format!("layer {layer}"),
                    };
                    keys.push(format!("midway {direction}: {} and {}", bound(one), bound(two)));
                }
            }
        }
        if self.along.iter().any(|way| matches!(way, Way::Beside(..))) {
            keys.push(format!("gap: {} mm", self.gap));
        }
        let shifts: Vec<String> = self
            .shift
            .iter()
            .zip([["left", "right"], ["down", "up"]])
            .filter(|(by, _)| **by != 0)
            .map(|(by, [less, more])| format!("{} mm {}", by.abs(), if *by < 0 { less } else { more }))
            .collect();
        if !shifts.is_empty() {
            keys.push(format!("shifted: {}", shifts.join(" and ")));
        }
        keys.extend(match self.copies {
            Copies::One => None,
            Copies::Row(count, gap) => Some(format!("row: {{count: {count}, gap: {gap} mm}}")),
            Copies::Column(count, gap) => Some(format!("column: {{count: {count}, gap: {gap} mm}}")),
            Copies::Grid(columns, rows, gap) => {
                Some(format!("grid: {{columns: {columns}, rows: {rows}, gap: {gap} mm}}"))
            }
            Copies::Steps(count, right, up) => {
                let right_word = if right < 0 { "left" } else { "right" };
                let up_word = if up < 0 { "down" } else { "up" };
                Some(format!("steps: {{count: {count}, {right_word}: {} mm, {up_word}: {} mm}}", right.abs(), up.abs()))
            }
            Copies::Triangle(rows, gap, up) => {
                Some(format!("triangle: {{rows: {rows}, gap: {gap} mm, pointing: {}}}", if up { "up" } else { "down" }))
            }
            Copies::Fan(count, step, about) => {
                Some(format!("fan: {{count: {count}, step: {step} degrees, about: {}}}", point(about)))
            }
            Copies::Pinwheel(clockwise) => {
                Some(format!("pinwheel: {}", if clockwise { "clockwise" } else { "anticlockwise" }))
            }
        });
        keys.extend(
            self.mirrored.map(|across| format!("mirrored: {}", if across { "left to right" } else { "top to bottom" })),
        );
        keys.extend(match self.turn {
            Turn::None | Turn::Quarters(0) => None,
            Turn::Quarters(turns) => {
                Some(format!("turned: {}", ["quarter left", "half", "quarter right"][usize::from(turns) - 1]))
            }
            Turn::Degrees(by, left, about) => {
                Some(format!("turned: {by} degrees {} about {}", if left { "left" } else { "right" }, point(about)))
            }
        });
        keys
    }
}

pub(crate) fn any_whole() -> impl Strategy<Value = Whole> {
    let bound = || prop_oneof![Just(Bound::Low), Just(Bound::High), (0..6_usize).prop_map(Bound::Layer)];
    let way = move || {
        prop_oneof![
            Just(Way::Centre),
            (0..40_i64).prop_map(Way::Low),
            (0..40_i64).prop_map(Way::High),
            (0..6_usize, any::<bool>()).prop_map(|(other, after)| Way::Beside(other, after)),
            (0..6_usize, -1..=1_i8).prop_map(|(other, part)| Way::Level(other, part)),
            (bound(), bound()).prop_map(|(one, two)| Way::Midway(one, two)),
        ]
    };
    let pivot = || (-1..=1_i8, -1..=1_i8).prop_map(|(across, up)| [across, up]);
    let copies = prop_oneof![
        4 => Just(Copies::One),
        1 => (1..4_u32, 0..9_i64).prop_map(|(count, gap)| Copies::Row(count, gap)),
        1 => (1..4_u32, 0..9_i64).prop_map(|(count, gap)| Copies::Column(count, gap)),
        1 => (1..3_u32, 1..3_u32, 0..9_i64).prop_map(|(columns, rows, gap)| Copies::Grid(columns, rows, gap)),
        1 => (1..5_u32, -9..9_i64, -9..9_i64).prop_map(|(count, right, up)| Copies::Steps(count, right, up)),
        1 => (1..4_u32, 0..9_i64, any::<bool>()).prop_map(|(rows, gap, up)| Copies::Triangle(rows, gap, up)),
        1 => (1..5_u32, 1..50_u32, pivot()).prop_map(|(count, step, about)| Copies::Fan(count, step, about)),
        1 => any::<bool>().prop_map(Copies::Pinwheel),
    ];
    let turn = prop_oneof![
        2 => Just(Turn::None),
        1 => (1..4_u8).prop_map(Turn::Quarters),
        2 => (1..360_u32, any::<bool>(), pivot()).prop_map(|(by, left, about)| Turn::Degrees(by, left, about)),
    ];
    let shift = || prop_oneof![3 => Just(0), 1 => -6..6_i64];
    let item = (
        (0..SIZES.len(), prop::option::of(0..6_usize)),
        (way(), way(), 0..6_i64),
        (shift(), shift()),
        copies,
        prop::option::weighted(0.2, any::<bool>()),
        turn,
    )
        .prop_map(|((piece, onto), (across, up, gap), (right, above), copies, mirrored, turn)| Item {
            piece,
            onto,
            along: [across, up],
            gap,
            shift: [right, above],
            copies,
            mirrored,
            turn,
        });
    let ring = (prop::collection::vec(0..SIZES.len(), 2..7), 0..4_usize, any::<bool>())
        .prop_map(|(strips, start, clockwise)| Ring { strips, start, clockwise });
    (prop::collection::vec(item, 1..6), prop::option::of(ring)).prop_map(|(items, ring)| Whole { items, ring }.mended())
}

fn settled(whole: &Whole) -> Design {
    let text = whole.text();
    let source = Source::new("design.yaml", text.as_str());
    let root = read(&source).expect("a sound text");
    let settled = settle(&root, &source, "design", Units::Metric);
    assert!(settled.findings.is_empty(), "{:#?}\n{text}", settled.findings);
    settled.design.expect("a design")
}

/// Every outline of a layer as the sorted set of its corners; the copies in any order.
type Seen = Vec<Vec<Vec<Point>>>;

fn seen(whole: &Whole, through: impl Fn(&Polygon) -> Polygon) -> Seen {
    let layout = place(&settled(whole));
    layout
        .layers
        .iter()
        .map(|layer| {
            let mut copies: Vec<Vec<Point>> = layer
                .laid
                .iter()
                .map(|laid| {
                    let mut corners = through(&laid.outline).outer().to_vec();
                    corners.sort();
                    corners
                })
                .collect();
            copies.sort();
            copies
        })
        .collect()
}

const FRONT: Rect = Rect { left: 0, bottom: 0, right: CARD[0] * NM_PER_MM, top: CARD[1] * NM_PER_MM };

proptest! {
    #![proptest_config(crate::support::cases(192))]

    #[test]
    fn moving_a_design_moves_every_layer_by_just_that(whole in any_whole(), right in 0..50_i64, up in 0..50_i64) {
        let whole = whole.held_at_one_edge();
        let moved = whole.clone().moved([right, up]);
        let by = [right * NM_PER_MM, up * NM_PER_MM];
        prop_assert_eq!(seen(&whole, |outline| outline.moved(by[0], by[1])), seen(&moved, Polygon::clone));
    }

    #[test]
    fn mirroring_a_design_mirrors_its_layout(whole in any_whole()) {
        for mirror in [Mirror::LeftToRight, Mirror::TopToBottom] {
            let image = whole.clone().mirrored(mirror);
            prop_assert_eq!(seen(&whole, |outline| outline.mirrored(mirror, FRONT)), seen(&image, Polygon::clone), "{}", image.text());
        }
    }

    #[test]
    fn half_turning_a_design_half_turns_its_layout(whole in any_whole()) {
        let turned = whole.clone().mirrored(Mirror::LeftToRight).mirrored(Mirror::TopToBottom);
        prop_assert_eq!(seen(&whole, |outline| outline.quarter_turned_in(2, FRONT)), seen(&turned, Polygon::clone));
    }
}

/// A line of a layer at random: mostly sound.
fn any_key() -> impl Strategy<Value = String> {
    let layer = || prop::sample::select(vec!["l0", "l1", "l2", "card", "nobody", "left edge", ""]);
    let length =
        || prop::sample::select(vec!["1/8 in", "1 in", "3 mm", "0 in", "-1 in", "1/4", "90000 mm", "1/8 in | 3 mm"]);
    let count = || prop::sample::select(vec!["0", "1", "3", "44", "900", "many"]);
    let by_length = prop::sample::select(vec!["left", "right", "top", "bottom", "gap"]);
    let by_layer = prop::sample::select(vec![
        "onto",
        "below",
        "above",
        "left of",
        "right of",
        "left with",
        "right with",
        "top with",
        "bottom with",
        "centred across",
        "centred up",
        "trim flush",
    ]);
    let turn = || {
        (
            prop::sample::select(vec!["12.5", "90", "359.99", "0", "400", "x"]),
            prop::sample::select(vec!["left", "right", "up"]),
        )
            .prop_map(|(by, side)| format!("{by} degrees {side}"))
    };
    let point = || prop::sample::select(vec!["top left", "middle", "bottom", "nose", "{left: 1 in, bottom: 1 in}"]);
    prop_oneof![
        (by_length, length()).prop_map(|(key, by)| format!("{key}: {by}")),
        (by_layer, layer()).prop_map(|(key, other)| format!("{key}: {other}")),
        prop::sample::select(vec!["across", "up and down", "both ways", "round"])
            .prop_map(|way| format!("centre: {way}")),
        (prop::sample::select(vec!["across", "up"]), layer(), layer())
            .prop_map(|(way, a, b)| format!("midway {way}: {a} and {b}")),
        (length(), length()).prop_map(|(a, b)| format!("shifted: {a} left and {b} up")),
        (prop::sample::select(vec!["row", "column", "grid", "steps", "triangle"]), count(), length(), any::<bool>())
            .prop_map(|(key, count, gap, even)| {
                let gap = if even { "even" } else { gap };
                match key {
                    "grid" => format!("grid: {{columns: {count}, rows: {count}, gap: {gap}}}"),
                    "steps" => format!("steps: {{count: {count}, right: {gap}, down: {gap}}}"),
                    "triangle" => format!("triangle: {{rows: {count}, gap: {gap}, pointing: up}}"),
                    key => format!("{key}: {{count: {count}, gap: {gap}}}"),
                }
            }),
        (count(), turn(), point()).prop_map(|(count, step, about)| {
            format!("fan: {{count: {count}, step: {}, about: {about}}}", step.trim_end_matches(" left"))
        }),
        prop::sample::select(vec!["clockwise", "anticlockwise", "round"]).prop_map(|way| format!("pinwheel: {way}")),
        prop::sample::select(vec!["left to right", "top to bottom"]).prop_map(|way| format!("mirrored: {way}")),
        prop::sample::select(vec!["quarter left", "quarter right", "half"]).prop_map(|way| format!("turned: {way}")),
        (turn(), point()).prop_map(|(by, about)| format!("turned: {{by: {by}, about: {about}}}")),
        "shows: [a-z0-9 /]{0,8}",
    ]
}

proptest! {
    #![proptest_config(crate::support::cases(96))]

    #[test]
    fn nothing_panics_whatever_is_written(
        layers in prop::collection::vec((0..3_usize, prop::collection::vec(any_key(), 0..5), any::<bool>()), 1..5),
        ring in prop::option::of((0..4_usize, prop::collection::vec(0..4_usize, 0..5))),
    ) {
        let mut text = super::inches(
            "  p0: {size: 4 x 5 in, from: plain}\n  p1: {size: 1 x 1/2 in, from: plain}\n  p2: {size: 1/4 x 6 in, from: plain}\n",
            "",
        );
        for (number, (piece, keys, both)) in layers.iter().enumerate() {
            text.push_str(&format!("  - place: p{piece}\n    as: l{number}\n"));
            let mut known: Vec<&str> = Vec::new();
            if *both {
                text.push_str("    centre: both ways\n");
                known.push("centre");
            }
            for key in keys {
                let name = key.split(':').next().unwrap_or("");
                if !known.contains(&name) {
                    text.push_str(&format!("    {key}\n"));
                    known.push(name);
                }
            }
        }
        if let Some((middle, strips)) = ring {
            let strips: Vec<String> = strips.iter().map(|strip| format!("p{strip}")).collect();
            text.push_str(&format!(
                "  - ring round: l{middle}\n    strips: [{}]\n    starting: top\n    going: clockwise\n",
                strips.join(", ")
            ));
        }
        let source = Source::new("design.yaml", text.as_str());
        let outcome = pipeline::run(&source, "design");
        for project in &outcome.editions {
            prop_assert_eq!(project.layout.layers.len(), project.design.layers.len());
            // What is told and read back does not panic either.
            let _ = trimwright::readback::read_back(project);
            for step in &project.steps.steps {
                let _ = trimwright::assembly::tell::step(&project.design, &project.layout, step);
            }
        }
    }
}
