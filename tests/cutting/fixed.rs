//! What a designer fixes of the cutting, both sides of the paper, pads, kept leftovers, and pieces to
//! spare. Each plan is worked out by hand beside its check (plain arithmetic).

use super::{cuts, pieces_of};
use crate::support::sound;
use trimwright::cutting::plan::{CutPlan, SheetPlan, Use};
use trimwright::cutting::search;
use trimwright::cutting::search::cover::{Cover, Lot, Stack, cover};
use trimwright::cutting::search::problem::Kind;
use trimwright::cutting::search::sheet::{Budget, Limits};
use trimwright::cutting::verify::verify;
use trimwright::design::model::{
    AlongEdge, Back, Design, FixedRow, From, Paper, PaperId, Pattern, Piece, PieceId, PieceKind, Side, TurnedOver,
    Version, VersionId,
};
use trimwright::geometry::Edge;
use trimwright::length::{Length, Size};
use trimwright::source::Span;

fn design(cards: u32, sheets: &str, extra: &str, pieces: &[(&str, &str, u32)]) -> Design {
    sound(&cuts(cards, sheets, extra, pieces)).design
}

fn plan(design: &Design) -> CutPlan {
    let plan = search::plan(design);
    assert_eq!(verify(design, &plan), []);
    plan
}

/// The pieces of one kind on a sheet, with their turns.
fn placed(sheet: &SheetPlan, wanted: usize) -> Vec<(trimwright::geometry::Rect, u8)> {
    sheet
        .parts
        .iter()
        .filter_map(|part| match part.r#use {
            Use::Piece { piece, quarter_turns, .. } if piece.0 == wanted => Some((part.rect, quarter_turns)),
            _ => None,
        })
        .collect()
}

#[test]
fn sheets_are_cut_alike_with_a_piece_to_spare() {
    // Four of 3 x 4 in come from a 6 x 8 in sheet. Seven take two sheets; 4 and 4 is one diagram with
    // one to spare, 4 and 3 would be two.
    let design = design(7, "3 of 6 x 8 in", "", &[("tile", "3 x 4 in", 1)]);
    let plan = plan(&design);
    assert_eq!((plan.sheets_used(), plan.diagrams(), plan.cuts(), pieces_of(&plan, 0)), (2, 1, 6, 8));
    assert!(plan.aims.diagrams.proven && plan.aims.cuts.proven);
    // No more are cut to spare than that takes: fewer than there are sheets.
    let mut greedy = plan.clone();
    greedy.sheets[0].numbers.push(3);
    assert!(!verify(&design, &greedy).is_empty());
}

#[test]
fn unlike_sheets_are_cut_in_two_ways_and_no_more() {
    // 5 x 5 in comes once from a 6 x 8 in sheet and leaves room for two of 1 x 8 in beside it at most;
    // four of 3 x 4 in use a sheet up. Two sheets give one of the first and four of the second only
    // if they are cut in two ways.
    let pieces = [("square", "5 x 5 in", 1), ("tile", "3 x 4 in", 4)];
    let plan = plan(&design(1, "2 of 6 x 8 in", "    pattern: one-way\n", &pieces));
    assert_eq!((plan.sheets_used(), plan.diagrams()), (2, 2));
    assert!(plan.aims.diagrams.proven && plan.aims.diagrams.bound == 2);
    // Three cuts give the tiles; two give the square, with two leftovers.
    assert_eq!(plan.cuts(), 5);
    assert!(plan.aims.cuts.proven);
}

#[test]
fn past_its_limits_the_search_still_fills_sheet_after_sheet() {
    // The sheets of the test above, in whole inches, and a search that may look at nothing.
    let kind = |width, height, wanted| Kind { width, height, quarter: false, wanted };
    let kinds = vec![kind(5, 5, 1), kind(3, 4, 4)];
    let lot = Lot { stacks: vec![Stack::plain(6, 8, 2)], kinds, hand: None, alike: false };
    let none = Budget { pairs: 0, entries: 0, meter: None };
    let limits = Limits { fit: none, cuts: none, ways: 0, leftovers: 0, looks: 0, nodes: 0 };
    let Cover::Yes(covered) = cover(&lot, &limits) else { panic!("nothing was found") };
    let mut given = [0, 0];
    for sheets in &covered.sheets {
        for (all, own) in given.iter_mut().zip(&sheets.counts) {
            *all += own * sheets.times;
        }
        assert_eq!(sheets.cuts[0].ways[0].counts(2), sheets.counts);
    }
    assert_eq!(given, [1, 4]);
    // Found without a proof, and none is claimed: by area alone two sheets are needed.
    assert_eq!((covered.least_sheets, covered.least_diagrams), (2, 1));
}

#[test]
fn rows_that_are_fixed_come_first() {
    let pieces = [("strip", "12 x 1 in", 2), ("tile", "4 x 5 in", 1)];
    let mut design = design(3, "1 of 12 x 12 in", "", &pieces);
    let row = |measure, from, times| FixedRow { measure, from, times, span: Span::default() };
    design.papers[0].fixed.rows = vec![row(Length::inch(1, 1), Edge::Bottom, 6), row(Length::inch(5, 1), Edge::Top, 1)];
    let plan = plan(&design);
    let rows: Vec<_> = plan.sheets[0].cuts.iter().map(|row| (row.from, row.measure, row.cuts)).collect();
    assert_eq!(rows[..2], [(Edge::Bottom, Length::inch(1, 1), 6), (Edge::Top, Length::inch(5, 1), 1)]);
    // Six strips come off whole; the row of 5 in holds the tiles side by side: two cuts of 4 in.
    assert_eq!((plan.cuts(), plan.aims.cards.proven), (9, true));
    // A plan without the fixed rows is refused.
    let mut free = design.clone();
    free.papers[0].fixed.rows.clear();
    assert!(!verify(&design, &search::plan(&free)).is_empty());
    // What cannot be completed is said to go short: no tile is 4 in deep.
    design.papers[0].fixed.rows = vec![row(Length::inch(2, 1), Edge::Top, 5)];
    let short = search::plan(&design);
    assert_eq!(verify(&design, &short), []);
    assert_eq!(short.cards, 0);
    assert!(short.missing.iter().any(|missing| missing.piece == PieceId(1) && missing.count == 3));
}

#[test]
fn a_piece_along_the_edge_lies_there() {
    for edge in Edge::ALL {
        let pieces = [("panel", "3 x 2 in", 2), ("dot", "1 x 1 in", 4)];
        let mut design = design(2, "1 of 12 x 12 in", "    edge strip: 1/2 in at the bottom, within\n", &pieces);
        design.papers[0].fixed.edges = vec![AlongEdge { piece: PieceId(0), edge, span: Span::default() }];
        let plan = plan(&design);
        let panels = placed(&plan.sheets[0], 0);
        assert_eq!(panels.len(), 4);
        let strip = Length::inch(1, 2).nm();
        let whole = Length::inch(12, 1).nm();
        for (rect, turns) in panels {
            let there = match edge {
                Edge::Left => rect.left == 0,
                Edge::Right => rect.right == whole,
                Edge::Top => rect.top == whole,
                Edge::Bottom => rect.bottom == strip,
            };
            assert!(there && turns == 0, "{edge:?} {rect:?}");
        }
        // The same plan for another edge is refused.
        let mut other = design.clone();
        other.papers[0].fixed.edges[0].edge = edge.opposite();
        assert!(!verify(&other, &plan).is_empty());
    }
}

#[test]
fn a_pad_of_different_sheets_is_cut_alike() {
    // A 6 x 6 in sheet gives two of 3 x 6 in. Five and five dots take three sheets, all alike.
    let pieces = [("panel", "3 x 5 in", 1), ("dot", "1 x 1 in", 1)];
    let mut design = design(5, "4 of 6 x 6 in", "", &pieces);
    design.papers[0].different = Some(Span::default());
    let plan = plan(&design);
    assert_eq!((plan.sheets_used(), plan.diagrams()), (3, 1));
    assert_eq!((pieces_of(&plan, 0), pieces_of(&plan, 1)), (6, 6));
    assert!(plan.aims.sheets.proven);
    // Three panels and two dots from each of two sheets would be fewer sheets, were they to fit.
    design.papers[0].sheets[0].count = 2;
    let short = search::plan(&design);
    assert_eq!(verify(&design, &short), []);
    assert_eq!((short.cards, short.aims.cards.proven), (4, true));
}

/// A paper from which both sides are wanted: four cards show its front, four its back.
fn two_sided(front: Pattern, back: Pattern) -> Design {
    let mut design = design(8, "1 of 12 x 12 in", "", &[("panel", "5 x 3 in", 1)]);
    design.papers[0].pattern = front;
    design.papers[0].back = Some(Back { pattern: back, turned_over: TurnedOver::LeftToRight, span: Span::default() });
    design.pieces[0].from = From::Varies;
    let version = |name: &str, side| Version {
        name: name.to_owned(),
        span: Span::default(),
        cards: 4,
        papers: vec![(PieceId(0), PaperId(0))],
        side: Some(side),
        photo: None,
    };
    design.versions = vec![version("day", Side::Front), version("night", Side::Back)];
    design
}

#[test]
fn pieces_of_both_sides_are_counted_by_side() {
    // Upright, a 12 x 12 in sheet holds two columns of four: eight. The four of one-way front stand;
    // those of the back may lie.
    let design = two_sided(Pattern::OneWay, Pattern::Any);
    let plan = plan(&design);
    assert_eq!(pieces_of(&plan, 0), 8);
    let of = |version: usize| {
        let parts = plan.sheets.iter().flat_map(|sheet| &sheet.parts);
        parts.filter(|part| matches!(part.r#use, Use::Piece { version: Some(v), .. } if v.0 == version)).count()
    };
    assert_eq!((of(0), of(1)), (4, 4));
    // Turned on its side, the front is refused and the back is not.
    let mut turned = plan.clone();
    for part in &mut turned.sheets[0].parts {
        if let Use::Piece { version, .. } = &mut part.r#use {
            *version = Some(VersionId(1 - version.map_or(0, |version| version.0)));
        }
    }
    let lies = plan.sheets[0].parts.iter().any(|part| matches!(part.r#use, Use::Piece { quarter_turns: 1, .. }));
    assert_eq!(verify(&design, &turned).is_empty(), !lies);
}

#[test]
fn a_leftover_is_kept_whole_and_cut_again() {
    // 12 x 12 in less a row of three 4 x 5 in tiles leaves 12 x 7 in: a kept 6 x 7 in leaves as much.
    let mut design =
        design(3, "1 of 12 x 12 in", "    pattern: one-way\n", &[("tile", "4 x 5 in", 1), ("tag", "2 x 3 1/2 in", 2)]);
    let size = Size::new(Length::inch(6, 1), Length::inch(7, 1));
    let source = design.papers[0].clone();
    let mut sheets = source.sheets[0].clone();
    (sheets.count, sheets.size) = (1, size);
    design.papers.push(Paper {
        name: "tag paper".to_owned(),
        sheets: vec![sheets],
        kept_from: Some(PaperId(0)),
        ..source
    });
    design.pieces[1].from = From::Paper(PaperId(1));
    design.pieces.push(Piece {
        name: "tag paper".to_owned(),
        kind: PieceKind::Kept { paper: PaperId(1), count: 1 },
        size,
        from: From::Paper(PaperId(0)),
        per_card: None,
        ..design.pieces[0].clone()
    });
    let plan = plan(&design);
    assert_eq!(plan.cards, 3);
    // It is no sheet of paper, though it is cut: six tags, five cuts and none to spare.
    assert_eq!((plan.sheets_used(), plan.sheets.len()), (1, 2));
    assert_eq!((pieces_of(&plan, 1), pieces_of(&plan, 2)), (6, 1));
    assert_eq!(plan.sheets[1].cut_count(), 5);
    // Kept too large to leave room for the tiles, it makes the sheet too small.
    design.pieces[2].size = Size::new(Length::inch(12, 1), Length::inch(8, 1));
    design.papers[1].sheets[0].size = design.pieces[2].size;
    let short = search::plan(&design);
    assert_eq!(verify(&design, &short), []);
    assert!(!short.missing.is_empty());
}
