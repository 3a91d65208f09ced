//! The smallest sheet that still serves, pieces to spare, and other ways of equal worth, against sums
//! by hand (plain arithmetic) and the referee, which replays rows with code of its own.

use crate::support::{demos, editions_at, sound};
use std::collections::BTreeSet;
use trimwright::cutting::alternatives::{alternatives, for_sheet};
use trimwright::cutting::json::to_json;
use trimwright::cutting::plan::{CutPlan, SheetPlan, Use};
use trimwright::cutting::search;
use trimwright::cutting::verify::verify;
use trimwright::design::model::PieceId;
use trimwright::geometry::Rect;
use trimwright::length::{Length, Size};
use trimwright::project::Project;

fn one_paper(sheets: &str, extra: &str, pieces: &[(&str, &str, u32)]) -> String {
    let mut text = format!("cards: 1\npapers:\n  paper:\n    sheets: {sheets}\n{extra}pieces:\n");
    for (name, size, each) in pieces {
        text.push_str(&format!("  {name}:\n    size: {size}\n    from: paper\n    per card: {each}\n"));
    }
    text
}

fn slack(text: &str) -> Size {
    let project = sound(text);
    assert_eq!(verify(&project.design, &project.plan), []);
    project.plan.sheets[0].slack
}

fn inches(width: (i64, i64), height: (i64, i64)) -> Size {
    Size::new(Length::inch(width.0, width.1), Length::inch(height.0, height.1))
}

fn editions() -> Vec<Project> {
    demos().into_iter().flat_map(|path| editions_at(&path)).collect()
}

#[test]
fn the_smallest_sheet_is_what_a_hand_works_out() {
    let one_way = "    pattern: one-way\n";
    // Nine of 3 3/4 in each way: 11 1/4 in, and what is over may vanish, since 3 3/4 in is easily held.
    let nine = [("square", "3 3/4 x 3 3/4 in", 9)];
    assert_eq!(slack(&one_paper("1 of 12 x 12 in", one_way, &nine)), inches((45, 4), (45, 4)));
    // The last of four is what remains, so the sheet must have its full width.
    let four = [("strip", "3 x 11 in", 4)];
    assert_eq!(slack(&one_paper("1 of 12 x 12 in", one_way, &four)), inches((12, 1), (11, 1)));
    // Narrow strips leave 1 in to hold: 8 x 1/4 in and that inch.
    let narrow = [("rail", "1/4 x 6 in", 8)];
    assert_eq!(slack(&one_paper("1 of 6 x 6 in", one_way, &narrow)), inches((3, 1), (6, 1)));
    // Of 3/4 in, what remains is nothing or at least 1/2 in, so it stays 1/2 in.
    let middling = [("band", "3/4 x 6 in", 4)];
    assert_eq!(slack(&one_paper("1 of 6 x 6 in", one_way, &middling)), inches((7, 2), (6, 1)));
    // The edge strip keeps its 1/2 in.
    let strip = "    pattern: one-way\n    edge strip: 1/2 in at the bottom, beside\n";
    assert_eq!(slack(&one_paper("1 of 12 x 12 in", strip, &nine)), inches((45, 4), (47, 4)));
    // A sheet that is one piece.
    let whole = [("sheet", "6 x 6 in", 1)];
    assert_eq!(slack(&one_paper("1 of 6 x 6 in", one_way, &whole)), inches((6, 1), (6, 1)));
}

#[test]
fn the_referee_refuses_a_slack_that_is_a_nanometre_off() {
    for project in editions() {
        for sheet in 0..project.plan.sheets.len() {
            for (width, height) in [(-1, 0), (1, 0), (0, -1), (0, 1)] {
                let mut plan = project.plan.clone();
                let slack = plan.sheets[sheet].slack;
                let off = |length: Length, nm: i64| Length::new(length.nm() + nm, length.unit());
                plan.sheets[sheet].slack = Size::new(off(slack.width, width), off(slack.height, height));
                assert!(!verify(&project.design, &plan).is_empty(), "sheet {sheet} {width} {height}");
            }
        }
    }
}

#[test]
fn pieces_to_spare_are_counted() {
    // Seven tiles, four a sheet, two sheets cut alike: one to spare. A third sheet would make five.
    let text = "cards: 7\npapers:\n  paper:\n    sheets: 3 of 6 x 8 in\npieces:\n  tile:\n    size: 3 x 4 in\n    \
                from: paper\n    per card: 1\n";
    let project = sound(text);
    let spares = |plan: &CutPlan| -> Vec<(PieceId, u32)> {
        plan.spares(&project.design).into_iter().map(|spare| (spare.piece, spare.count)).collect()
    };
    assert_eq!(spares(&project.plan), [(PieceId(0), 1)]);
    let mut more = project.plan.clone();
    more.sheets[0].numbers = vec![1, 2, 3];
    assert_eq!(spares(&more), [(PieceId(0), 5)]);
    let mut fewer = project.plan.clone();
    fewer.sheets[0].numbers = vec![1];
    assert_eq!(spares(&fewer), []);
    // Of two sheets cut in two ways the spare is said with the last that gives the piece.
    let mut apart = project.plan.clone();
    apart.sheets.push(SheetPlan { numbers: vec![2], ..apart.sheets[0].clone() });
    apart.sheets[0].numbers = vec![1];
    assert_eq!(apart.spares_after(&project.design, &[0]), []);
    assert_eq!(apart.spares_after(&project.design, &[1]), [(PieceId(0), 1)]);
    let json = to_json(&project.design, &project.plan);
    assert_eq!(json["spares"][0]["count"], 1);
    assert_eq!(json["spares"][0]["piece"], "tile");
}

fn places(sheet: &SheetPlan) -> BTreeSet<(PieceId, Rect)> {
    let piece = |r#use: Use| match r#use {
        Use::Piece { piece, .. } => Some(piece),
        _ => None,
    };
    sheet.parts.iter().filter_map(|part| piece(part.r#use).map(|piece| (piece, part.rect))).collect()
}

/// Aims, and where each piece lies on each sheet.
fn all_places(plan: &CutPlan) -> Vec<BTreeSet<(PieceId, Rect)>> {
    plan.sheets.iter().map(places).collect()
}

#[test]
fn other_ways_are_as_good_and_truly_different() {
    for project in editions() {
        let (design, plan) = (&project.design, &project.plan);
        let others = alternatives(design, plan, &search::other_ways(design, 12), 6);
        assert!(others.len() >= 3, "{} ways", others.len());
        let mut known = vec![all_places(plan)];
        for other in &others {
            assert_eq!(verify(design, &other.plan), []);
            let worth = |plan: &CutPlan| (plan.cards, plan.sheets_used(), plan.diagrams(), plan.cuts(), plan.changes());
            assert_eq!(worth(&other.plan), worth(plan));
            assert_eq!(other.plan.aims, plan.aims);
            let here = all_places(&other.plan);
            for (index, differs) in other.differs.iter().enumerate() {
                assert_eq!(differs.is_some(), here[index] != known[0][index], "sheet {index}");
            }
            assert!(!known.contains(&here), "no way is given twice");
            known.push(here);
        }
        // The most different first.
        assert!(others.windows(2).all(|pair| pair[0].area >= pair[1].area));
    }
}

#[test]
fn a_mirror_image_is_another_way_unless_the_sheet_is_its_own() {
    let one_way = "    pattern: one-way\n";
    // One panel in a corner: three more corners, each by measuring from other edges.
    let corner = sound(&one_paper("1 of 12 x 12 in", one_way, &[("panel", "5 x 4 in", 1)]));
    let others = alternatives(&corner.design, &corner.plan, &[], 20);
    let corners: BTreeSet<(i64, i64)> = std::iter::once(&corner.plan)
        .chain(others.iter().map(|other| &other.plan))
        .flat_map(all_places)
        .flatten()
        .map(|(_, rect)| (rect.left, rect.top))
        .collect();
    let (far, whole) = (Length::inch(7, 1).nm(), Length::inch(12, 1).nm());
    let low = Length::inch(4, 1).nm();
    assert_eq!(corners, BTreeSet::from([(0, low), (0, whole), (far, low), (far, whole)]));
    // Two halves of a sheet are the same from every edge.
    let halves = sound(&one_paper("1 of 6 x 8 in", one_way, &[("half", "6 x 4 in", 2)]));
    assert_eq!(alternatives(&halves.design, &halves.plan, &[], 20), []);
    assert_eq!(for_sheet(&halves.design, &halves.plan, 0), None);
}

#[test]
fn other_ways_keep_what_the_designer_fixed() {
    let fixed = "    cut first: [\"3 in from the bottom, 2 times\"]\n    edge strip: 1/2 in at the left, within\n    \
                 along the edge: {panel: top}\n";
    let pieces = [("panel", "3 x 2 in", 2), ("dot", "2 1/2 x 3 in", 3)];
    let project = sound(&one_paper("1 of 12 x 12 in", fixed, &pieces));
    let (design, plan) = (&project.design, &project.plan);
    assert_eq!(verify(design, plan), []);
    let others = alternatives(design, plan, &search::other_ways(design, 12), 9);
    assert!(!others.is_empty());
    assert_eq!((plan.sheets[0].cuts[2].measure, plan.sheets[0].cuts[2].cuts), (Length::inch(3, 1), 2));
    let firsts = |plan: &CutPlan| -> Vec<_> {
        plan.sheets[0].cuts.iter().take(3).map(|row| (row.from, row.measure, row.cuts)).collect()
    };
    for other in others {
        assert_eq!(verify(design, &other.plan), []);
        assert_eq!(firsts(&other.plan), firsts(plan));
    }
}

#[test]
fn the_way_to_print_leaves_the_same_over() {
    for project in editions() {
        for sheet in 0..project.plan.sheets.len() {
            let Some(other) = for_sheet(&project.design, &project.plan, sheet) else { continue };
            assert_eq!(verify(&project.design, &other.plan), []);
            let left = |plan: &CutPlan| -> Vec<_> {
                plan.leftovers().into_iter().map(|left| (left.sheet, left.number, left.size)).collect()
            };
            assert_eq!(left(&other.plan), left(&project.plan));
            assert_ne!(places(&other.plan.sheets[sheet]), places(&project.plan.sheets[sheet]));
        }
    }
}
