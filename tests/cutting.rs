//! Cutting: published instances, worked arithmetic, an independent brute force, the referee.

mod by_hand;
mod cells;
mod fewest;
mod fixed;
mod instances;
mod whole;

use crate::support::{demo, demos, editions_at, run, sound};
use proptest::prelude::*;
use std::collections::BTreeMap;
use trimwright::cutting::plan::{CutPlan, PartId, SheetPlan, Use};
use trimwright::cutting::search::problem::{Kind, Problem};
use trimwright::cutting::search::sheet::{Fit, Limits, cut_sheet};
use trimwright::cutting::verify::verify;
use trimwright::geometry::Edge;
use trimwright::length::{Length, NM_PER_INCH, NM_PER_MM};
use trimwright::project::Project;

/// A file for `cuts` with one paper: its sheets, and pieces as name, size and number a card.
fn cuts(cards: u32, sheets: &str, extra: &str, pieces: &[(&str, &str, u32)]) -> String {
    let mut text = format!("cards: {cards}\npapers:\n  paper:\n    sheets: {sheets}\n{extra}pieces:\n");
    for (name, size, each) in pieces {
        text.push_str(&format!("  {name}:\n    size: {size}\n    from: paper\n    per card: {each}\n"));
    }
    text
}

fn pieces_of(plan: &CutPlan, piece: usize) -> u32 {
    let of = |sheet: &SheetPlan| sheet.pieces().into_iter().filter(|(p, _)| p.0 == piece).map(|(_, n)| n).sum::<u32>();
    plan.sheets.iter().map(|sheet| of(sheet) * u32::try_from(sheet.numbers.len()).unwrap_or(0)).sum()
}

fn checked(text: &str) -> Project {
    let project = sound(text);
    assert_eq!(verify(&project.design, &project.plan), []);
    project
}

#[test]
fn cgcut1_reaches_244_and_no_more() {
    // Christofides & Whitlock 1977, "An algorithm for two-dimensional cutting problems", Operations
    // Research 25:30-44: instance 1 with limited copies, pieces not turned; the optimum 244 from memory.
    let figures: [(i64, i64, u32, u32); 7] =
        [(8, 4, 2, 66), (3, 7, 1, 35), (8, 2, 3, 24), (3, 4, 5, 17), (3, 3, 2, 11), (3, 2, 2, 8), (2, 1, 1, 2)];
    let kinds: Vec<Kind> =
        figures.iter().map(|&(width, height, wanted, _)| Kind { width, height, quarter: false, wanted }).collect();
    let sheet = Problem { width: 15, height: 10, kinds, hand: None };
    let mut vectors: Vec<(u32, Vec<u32>)> = vec![(0, Vec::new())];
    for &(_, _, copies, value) in &figures {
        vectors = vectors
            .into_iter()
            .flat_map(|(sum, counts)| {
                (0..=copies).map(move |n| (sum + n * value, counts.iter().copied().chain([n]).collect()))
            })
            .collect();
    }
    vectors.retain(|(value, counts)| *value >= 244 && sheet.area_of(counts) <= sheet.area());
    assert!(vectors.iter().filter(|(value, _)| *value > 244).count() > 20, "there is something to refuse");
    let mut reached = false;
    for (value, counts) in vectors {
        match cut_sheet(&sheet.wanting(&counts), &Limits::default()) {
            Fit::Yes(_) => {
                assert_eq!(value, 244, "{counts:?}");
                reached = true;
            }
            Fit::No => {}
            Fit::Unknown => panic!("{counts:?} was neither cut nor refused"),
        }
    }
    assert!(reached);
}

#[test]
fn four_letter_sheets_halved_make_eight_bases() {
    // Common practice, no source.
    let project = checked(&cuts(8, "4 of letter", "", &[("base", "8 1/2 x 5 1/2 in", 1)]));
    assert_eq!((project.plan.cards, project.plan.sheets_used(), project.plan.cuts()), (8, 4, 4));
    assert!(project.plan.aims.sheets.proven && project.plan.aims.cuts.proven);
    assert_eq!(project.plan.diagrams(), 1);
    // A ninth base has no place.
    let outcome = run(&cuts(9, "4 of letter", "", &[("base", "8 1/2 x 5 1/2 in", 1)]));
    let plan = &outcome.editions[0].plan;
    assert_eq!((plan.cards, plan.most, plan.missing.len()), (8, Some(8), 1));
    assert!(outcome.findings.iter().any(|finding| finding.code == "too-few-sheets"));
}

#[test]
fn a_twelve_inch_sheet_gives_four_four_and_one() {
    // Common practice, no source: scattered figures, no layout.
    let project = checked(&cuts(
        1,
        "1 of 12 x 12 in",
        "",
        &[("wide", "5 1/4 x 4 in", 4), ("small", "3 1/4 x 2 in", 4), ("third", "5 1/2 x 4 in", 1)],
    ));
    assert_eq!(project.plan.sheets_used(), 1);
    assert_eq!([0, 1, 2].map(|piece| pieces_of(&project.plan, piece)), [4, 4, 1]);
}

#[test]
fn a_strip_leaves_something_to_hold() {
    // 5 1/2 in gives 18 slices of 1/4 in, not 22: the last inch is what the hand holds.
    let fits = |count| checked(&cuts(1, "1 of 5 1/2 x 6 in", "", &[("strip", "1/4 x 6 in", count)]));
    assert_eq!(fits(18).plan.sheets_used(), 1);
    let outcome = run(&cuts(1, "1 of 5 1/2 x 6 in", "    pattern: one-way\n", &[("strip", "1/4 x 6 in", 19)]));
    assert!(outcome.findings.iter().any(|finding| finding.code == "too-few-sheets"));
    // A strip of 1/2 in may not be split into two of 1/4 in.
    let outcome = run(&cuts(1, "1 of 1/2 x 6 in", "    pattern: one-way\n", &[("strip", "1/4 x 6 in", 2)]));
    assert!(outcome.has_errors());
}

#[test]
fn an_edge_strip_goes_first_and_counts_beside_or_within() {
    let beside = "    pattern: one-way\n    edge strip: 1/2 in at the bottom, beside\n";
    let within = "    pattern: one-way\n    edge strip: 1/2 in at the bottom, within\n";
    let pieces = [("tall", "4 x 6 in", 6)];
    let project = checked(&cuts(1, "1 of 12 x 12 in", beside, &pieces));
    let sheet = &project.plan.sheets[0];
    assert_eq!(sheet.height.nm(), 12 * NM_PER_INCH + NM_PER_INCH / 2, "the strip is part of the sheet");
    assert_eq!((sheet.cuts[0].from, sheet.cuts[0].measure.nm()), (Edge::Bottom, NM_PER_INCH / 2));
    assert!(run(&cuts(1, "1 of 12 x 12 in", within, &pieces)).has_errors(), "11 1/2 in is too low for two of 6 in");
}

#[test]
fn one_way_paper_keeps_its_up_and_other_paper_may_be_turned() {
    let piece = [("slat", "2 x 12 in", 1)];
    assert!(run(&cuts(1, "1 of 12 x 6 in", "    pattern: one-way\n", &piece)).has_errors());
    assert!(run(&cuts(1, "1 of 12 x 6 in", "    pattern: two-way\n", &piece)).has_errors());
    let project = checked(&cuts(1, "1 of 12 x 6 in", "", &piece));
    let turned = project.plan.sheets[0]
        .parts
        .iter()
        .any(|part| matches!(part.r#use, Use::Piece { quarter_turns, .. } if quarter_turns % 2 == 1));
    assert!(turned);
}

#[test]
fn sheets_of_several_sizes_are_used_together() {
    let project = checked(&cuts(3, "2 of 6 x 6 in and 1 of 12 x 12 in", "", &[("square", "5 3/4 x 5 3/4 in", 2)]));
    // Four from the large sheet, one from each small one: six in all, on all three sheets.
    assert_eq!(project.plan.sheets_used(), 3);
    assert_eq!(pieces_of(&project.plan, 0), 6);
}

#[test]
fn the_demos_use_every_sheet_and_no_more() {
    for path in demos() {
        for project in editions_at(&path) {
            assert_eq!(verify(&project.design, &project.plan), [], "{}", path.display());
            let plan = &project.plan;
            assert!(plan.aims.cards.proven && plan.aims.sheets.proven, "{}", path.display());
            assert_eq!(plan.cards, project.design.cards.value);
            assert!(plan.missing.is_empty());
        }
    }
}

#[test]
fn rails_come_off_the_full_sheet_in_lantern_row() {
    // Two strips of 1/4 in can come off 8 1/2 in, never out of the 1/2 in that the mats leave.
    let text = std::fs::read_to_string(demo("lantern-row")).expect("the demo");
    let project = sound(&text);
    let slate = project.plan.sheets.iter().find(|s| project.design.paper(s.paper).name == "slate").expect("slate");
    assert_eq!(slate.numbers, [1, 2]);
    for part in &slate.parts {
        if let Some(parent) = part.parent
            && part.rect.width().min(part.rect.height()) < NM_PER_INCH / 2
            && matches!(part.r#use, Use::Piece { .. })
        {
            let parent = slate.part(parent).rect;
            let long = parent.width().max(parent.height());
            assert!(long >= NM_PER_INCH, "a rail is cut from something that can be held");
        }
    }
}

#[test]
fn the_same_design_gives_the_same_plan() {
    let text = std::fs::read_to_string(demo("lantern-row")).expect("the demo");
    assert_eq!(sound(&text).plan, sound(&text).plan);
}

/// One change to a plan.
type Change = Box<dyn Fn(&mut CutPlan)>;

/// A plan with one change, and whether the referee sees it.
fn tampered(change: impl Fn(&mut CutPlan)) -> Vec<String> {
    let text = std::fs::read_to_string(demo("lantern-row")).expect("the demo");
    let project = sound(&text);
    let mut plan = project.plan.clone();
    change(&mut plan);
    assert_ne!(plan, project.plan, "the change changes something");
    verify(&project.design, &plan).into_iter().map(|fault| fault.message).collect()
}

#[test]
fn the_referee_refuses_every_tampered_plan() {
    let a_piece = |sheet: &SheetPlan| {
        sheet.parts.iter().position(|part| matches!(part.r#use, Use::Piece { .. })).expect("a piece")
    };
    let changes: Vec<(&str, Change)> = vec![
        (
            "a measure off by a nanometre",
            Box::new(|plan| {
                let measure = &mut plan.sheets[0].cuts[1].measure;
                *measure += Length::new(1, measure.unit());
            }),
        ),
        (
            "a cut from the other edge",
            Box::new(|plan| {
                let from = &mut plan.sheets[0].cuts[1].from;
                *from = from.opposite();
            }),
        ),
        (
            "a cut from a side instead of an end",
            Box::new(|plan| {
                let row = &mut plan.sheets[0].cuts[1];
                row.from = if row.from.is_side() { Edge::Top } else { Edge::Left };
            }),
        ),
        (
            "one cut fewer",
            Box::new(|plan| {
                let row = plan.sheets[0].cuts.iter_mut().find(|row| row.cuts > 1).expect("a row of several");
                row.cuts -= 1;
            }),
        ),
        (
            "a row left out",
            Box::new(|plan| {
                plan.sheets[0].cuts.pop();
            }),
        ),
        (
            "rows in another order",
            Box::new(|plan| {
                let last = plan.sheets[0].cuts.len() - 1;
                plan.sheets[0].cuts.swap(1, last);
            }),
        ),
        ("a wrong cut number", Box::new(|plan| plan.sheets[0].cuts[1].n += 1)),
        (
            "a part given twice",
            Box::new(|plan| {
                let row = &mut plan.sheets[0].cuts[1];
                row.gives[1] = row.gives[0];
            }),
        ),
        (
            "a part cut that is not loose",
            Box::new(|plan| {
                let parts = plan.sheets[0].parts.len();
                plan.sheets[0].cuts[1].parts = vec![PartId(parts - 1)];
            }),
        ),
        (
            "a piece moved by a nanometre",
            Box::new(move |plan| {
                let piece = a_piece(&plan.sheets[0]);
                let rect = &mut plan.sheets[0].parts[piece].rect;
                *rect = rect.moved(1, 0);
            }),
        ),
        (
            "a piece that is only a leftover",
            Box::new(move |plan| {
                let piece = a_piece(&plan.sheets[0]);
                plan.sheets[0].parts[piece].r#use = Use::Leftover;
            }),
        ),
        (
            "a one-way piece turned a quarter",
            Box::new(move |plan| {
                let piece = a_piece(&plan.sheets[0]);
                if let Use::Piece { quarter_turns, .. } = &mut plan.sheets[0].parts[piece].r#use {
                    *quarter_turns = 1;
                }
            }),
        ),
        (
            "a piece for a version that takes it from another paper",
            Box::new(move |plan| {
                let piece = a_piece(&plan.sheets[0]);
                if let Use::Piece { version, .. } = &mut plan.sheets[0].parts[piece].r#use {
                    let other = usize::from(version.is_none_or(|version| version.0 == 0));
                    *version = Some(trimwright::design::model::VersionId(other));
                }
            }),
        ),
        ("a sheet that there is not", Box::new(|plan| plan.sheets[0].numbers = vec![9])),
        (
            "a sheet used twice",
            Box::new(|plan| {
                let sheet = plan.sheets[0].clone();
                plan.sheets.push(sheet);
            }),
        ),
        ("a larger sheet", Box::new(|plan| plan.sheets[0].width += Length::mm(1))),
        ("fewer cuts promised", Box::new(|plan| plan.aims.cuts.found -= 1)),
        ("more cards promised", Box::new(|plan| plan.cards += 1)),
        (
            "a sheet fewer",
            Box::new(|plan| {
                plan.sheets.pop();
            }),
        ),
    ];
    for (what, change) in changes {
        let faults = tampered(change);
        assert!(!faults.is_empty(), "the referee did not see {what}");
    }
}

/// Whether counts of pieces can be cut from a sheet edge to edge under the rules of the hand: every
/// whole-millimetre-ten cut is tried, with nothing shared with the planner but the problem.
struct Brute {
    pieces: Vec<(i64, i64)>,
    turns: bool,
    seen: BTreeMap<(i64, i64, Vec<u8>), bool>,
}

/// Tens of millimetres: a slice of 1 (10 mm) is under 12 mm, so 25 mm must stay beside it.
fn held(one: i64, other: i64) -> bool {
    let (small, large) = (one.min(other), one.max(other));
    small * 10 >= 12 || large * 10 >= 25
}

impl Brute {
    fn fits(&mut self, width: i64, height: i64, wanted: &[u8]) -> bool {
        let pieces: u32 = wanted.iter().map(|n| u32::from(*n)).sum();
        if pieces == 0 {
            return true;
        }
        let area: i64 = wanted.iter().zip(&self.pieces).map(|(n, (w, h))| i64::from(*n) * w * h).sum();
        if area > width * height {
            return false;
        }
        if pieces == 1 {
            let one = wanted.iter().position(|n| *n > 0).unwrap_or(0);
            let (w, h) = self.pieces[one];
            if (w, h) == (width, height) || (self.turns && (h, w) == (width, height)) {
                return true;
            }
        }
        let key = (width, height, wanted.to_vec());
        if let Some(known) = self.seen.get(&key) {
            return *known;
        }
        let mut found = false;
        'search: for (first, rest) in (1..width)
            .filter(|&at| held(at, width - at))
            .map(|at| ((at, height), (width - at, height)))
            .chain((1..height).filter(|&at| held(at, height - at)).map(|at| ((width, at), (width, height - at))))
        {
            for split in splits(wanted) {
                let other: Vec<u8> = wanted.iter().zip(&split).map(|(all, some)| all - some).collect();
                if self.fits(first.0, first.1, &split) && self.fits(rest.0, rest.1, &other) {
                    found = true;
                    break 'search;
                }
            }
        }
        self.seen.insert(key, found);
        found
    }

    /// The fewest sheets of one size that give everything; none past `most`.
    fn fewest(&mut self, width: i64, height: i64, wanted: &[u8], most: u32) -> Option<u32> {
        if wanted.iter().all(|n| *n == 0) {
            return Some(0);
        }
        if most == 0 {
            return None;
        }
        let mut best: Option<u32> = None;
        for split in splits(wanted) {
            if split.iter().all(|n| *n == 0) || !self.fits(width, height, &split) {
                continue;
            }
            let other: Vec<u8> = wanted.iter().zip(&split).map(|(all, some)| all - some).collect();
            let limit = best.map_or(most, |best| best - 1);
            if limit == 0 {
                break;
            }
            if let Some(rest) = self.fewest(width, height, &other, limit - 1) {
                best = Some(rest + 1);
            }
        }
        best
    }
}

fn splits(wanted: &[u8]) -> Vec<Vec<u8>> {
    let mut all = vec![Vec::new()];
    for &count in wanted {
        all = all
            .into_iter()
            .flat_map(|some: Vec<u8>| (0..=count).map(move |n| some.iter().copied().chain([n]).collect()))
            .collect();
    }
    all
}

/// A small generator with a fixed seed (the multiplier of Knuth's MMIX, from memory).
struct Seeded(u64);

impl Seeded {
    fn under(&mut self, limit: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % limit
    }
}

#[test]
fn an_independent_brute_force_agrees_on_what_fits_and_on_the_fewest_sheets() {
    let mut random = Seeded(20_261_125);
    let (mut fitted, mut refused) = (0, 0);
    for case in 0..120 {
        let (width, height) = (3 + random.under(6) as i64, 3 + random.under(6) as i64);
        let sheets = 1 + random.under(2) as u32;
        let kinds = 1 + random.under(3) as usize;
        let pieces: Vec<(i64, i64)> = (0..kinds)
            .map(|_| (1 + random.under(width as u64) as i64, 1 + random.under(height as u64) as i64))
            .collect();
        let wanted: Vec<u8> = (0..kinds).map(|_| 1 + random.under(3) as u8).collect();
        let turns = random.under(2) == 0;
        let mut brute = Brute { pieces: pieces.clone(), turns, seen: BTreeMap::new() };
        let fewest = brute.fewest(width, height, &wanted, sheets);

        let named: Vec<(String, String, u32)> = pieces
            .iter()
            .zip(&wanted)
            .enumerate()
            .map(|(n, ((w, h), count))| {
                (format!("piece {n}"), format!("{} x {} mm", w * 10, h * 10), u32::from(*count))
            })
            .collect();
        let rows: Vec<(&str, &str, u32)> = named.iter().map(|(n, s, c)| (n.as_str(), s.as_str(), *c)).collect();
        let pattern = if turns { "" } else { "    pattern: one-way\n" };
        let text = cuts(1, &format!("{sheets} of {} x {} mm", width * 10, height * 10), pattern, &rows);
        let outcome = run(&text);
        let project = outcome.editions.first().unwrap_or_else(|| panic!("{text}\n{:?}", outcome.findings));
        assert_eq!(verify(&project.design, &project.plan), [], "case {case}\n{text}");
        let plan = &project.plan;
        match fewest {
            Some(fewest) => {
                fitted += 1;
                assert!(plan.missing.is_empty(), "case {case}: it fits on {fewest}\n{text}");
                assert_eq!(plan.sheets_used(), fewest as usize, "case {case}\n{text}");
            }
            None => {
                refused += 1;
                assert!(!plan.missing.is_empty(), "case {case}: it cannot fit\n{text}");
            }
        }
    }
    assert!(fitted > 20 && refused > 20, "{fitted} fitted, {refused} refused");
}

proptest! {
    #![proptest_config(crate::support::cases(40))]

    #[test]
    fn any_demand_gives_a_plan_that_the_referee_accepts(
        sheets in 1_u32..4,
        size in (100_i64..310, 100_i64..310),
        pieces in prop::collection::vec(((10_i64..120, 10_i64..150), 1_u32..6), 1..5),
        cards in 1_u32..5,
        pattern in 0_usize..3,
    ) {
        let named: Vec<(String, String, u32)> = pieces
            .iter()
            .enumerate()
            .map(|(n, ((w, h), count))| (format!("piece {n}"), format!("{w} x {h} mm"), *count))
            .collect();
        let rows: Vec<(&str, &str, u32)> = named.iter().map(|(n, s, c)| (n.as_str(), s.as_str(), *c)).collect();
        let pattern = ["", "    pattern: two-way\n", "    pattern: one-way\n    edge strip: 13 mm at the left, beside\n"][pattern];
        let text = cuts(cards, &format!("{sheets} of {} x {} mm", size.0, size.1), pattern, &rows);
        let outcome = run(&text);
        for project in &outcome.editions {
            let faults = verify(&project.design, &project.plan);
            prop_assert!(faults.is_empty(), "{faults:?}\n{text}");
            for aim in [project.plan.aims.sheets, project.plan.aims.cuts, project.plan.aims.diagrams] {
                prop_assert!(!aim.proven || aim.found == aim.bound);
            }
            // Children tile their parent: the areas add up to the sheet's.
            for sheet in &project.plan.sheets {
                let ends = sheet.parts.iter().filter(|part| part.r#use != Use::Divided);
                let area: i128 = ends.map(|part| part.rect.area()).sum();
                prop_assert_eq!(area, sheet.parts[0].rect.area());
            }
        }
    }
}

#[test]
fn the_json_says_what_the_plan_says() {
    let text = std::fs::read_to_string(demo("lantern-row")).expect("the demo");
    let project = sound(&text);
    let value = trimwright::cutting::json::to_json(&project.design, &project.plan);
    assert_eq!(value["version"], 1);
    assert_eq!(value["units"], "inch");
    assert_eq!(value["cards"], 8);
    assert_eq!(value["totals"]["sheets"], 8);
    let dusk = &value["sheets"][0];
    assert_eq!(dusk["paper"], "dusk");
    // An edge strip beside is part of the height: 12 1/2 in.
    assert_eq!(dusk["height_nm"], 317_500_000);
    let parts = dusk["parts"].as_array().expect("parts");
    let children = |id: u64| parts.iter().filter(move |part| part["parent"] == id);
    for part in parts.iter().filter(|part| part["use"] == "divided") {
        let id = part["id"].as_u64().expect("an id");
        let area = |part: &serde_json::Value| {
            i128::from(part["width_nm"].as_i64().expect("nm")) * i128::from(part["height_nm"].as_i64().expect("nm"))
        };
        assert_eq!(children(id).map(area).sum::<i128>(), area(part), "children tile part {id}");
    }
    let mut number = 1;
    for row in dusk["cuts"].as_array().expect("cuts") {
        assert_eq!(row["n"], number, "`n` is the first cut's number");
        number += row["cuts"].as_u64().expect("a count");
        assert!(["left", "right", "top", "bottom"].contains(&row["from"].as_str().expect("an edge")));
    }
    assert!(value.get("most").is_none(), "nobody asked for the most cards");
    assert_eq!(NM_PER_MM, 1_000_000);
}
