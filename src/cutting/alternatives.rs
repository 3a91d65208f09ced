//! Other ways of equal worth: takes a design and its plan, gives whole plans that cut the sheets
//! differently and are as good in every aim. Paper whose pattern differs at its edges, or a reader
//! who likes to start elsewhere, is why anybody wants one.
//!
//! Two ways are truly different where the set of rectangles that hold pieces is; a way that only
//! changes the order of cuts is none. The more of the paper shows another piece, the more different
//! a way is, and the most different stand first. Each is replayed by the referee before it is given.

use std::collections::{BTreeMap, BTreeSet};

use super::demand::{demand, hand};
use super::lay::{Lay, Measured, lay};
use super::plan::{CutPlan, SheetPlan, Use};
use super::slack::slack;
use super::verify::verify;
use crate::design::model::{Design, PieceId};
use crate::geometry::Rect;

/// Another plan of equal worth.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Alternative {
    /// All of it; its sheets are those of the first plan, in the same order.
    pub plan: CutPlan,
    /// How each sheet differs from the first plan's; none where it is cut as there.
    pub differs: Vec<Option<Differs>>,
    /// Area of paper, over one sheet of each diagram, that shows another piece, or a piece where the
    /// first plan leaves none; square nanometres.
    pub area: i128,
}

/// How a sheet is cut differently.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Differs {
    /// The edges that are measured from.
    pub lay: Lay,
    /// Whether its parts differ too: `lay` is then said of parts that the first plan does not have.
    pub parts: Option<OtherParts>,
}

/// How the parts of a sheet differ from the first plan's.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OtherParts {
    /// Whether the first cut that is free goes the other way.
    pub first_cut: bool,
    /// Pieces that lie on their side, where the first plan has another number of them.
    pub lying: Option<u32>,
}

/// Up to `count` other plans, the most different first. `ways` are further plans of the same design
/// that may be as good, from the search. Fewer where no more differ truly.
#[must_use]
pub fn alternatives(design: &Design, plan: &CutPlan, ways: &[CutPlan], count: usize) -> Vec<Alternative> {
    let found: Vec<Vec<Way>> = diagrams(plan).iter().map(|sheets| other_ways(design, plan, ways, sheets)).collect();
    let most = found.iter().map(Vec::len).max().unwrap_or(0);
    let together = (0..most).map(|place| {
        let picked: Vec<&Way> = found.iter().filter_map(|ways| ways.get(place)).collect();
        put_together(plan, &picked)
    });
    together.filter(|other| is_sound(design, &other.plan)).take(count).collect()
}

/// The way to print beside the plan's for the diagram that a sheet is cut by: the most different of
/// those that leave the same over, so that leftovers keep their numbers.
#[must_use]
pub fn for_sheet(design: &Design, plan: &CutPlan, sheet: usize) -> Option<Alternative> {
    let group = diagrams(plan).into_iter().find(|group| group.contains(&sheet))?;
    let left = |plan: &CutPlan| -> Vec<_> {
        plan.leftovers().into_iter().map(|left| (left.number, left.sheet, left.size, left.parts.len())).collect()
    };
    other_ways(design, plan, &[], &group)
        .iter()
        .map(|way| put_together(plan, &[way]))
        .find(|other| left(&other.plan) == left(plan) && is_sound(design, &other.plan))
}

/// Sheets by diagram: indices into the plan's.
fn diagrams(plan: &CutPlan) -> Vec<Vec<usize>> {
    let mut groups: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for (index, sheet) in plan.sheets.iter().enumerate() {
        groups.entry(sheet.diagram).or_default().push(index);
    }
    groups.into_values().collect()
}

/// Another way to cut the sheets of one diagram.
struct Way {
    /// Index into the plan's sheets, and what stands there instead.
    sheets: Vec<(usize, SheetPlan)>,
    differs: Differs,
    shown: Shown,
}

/// How much of the paper shows something else: first by the piece, then by where pieces end.
type Shown = (i128, i128);

fn other_ways(design: &Design, plan: &CutPlan, ways: &[CutPlan], group: &[usize]) -> Vec<Way> {
    let first = &plan.sheets[group[0]];
    // A fixed row is kept on every sheet of the diagram.
    let kept = group.iter().map(|&sheet| fixed_rows(design, &plan.sheets[sheet])).max().unwrap_or(0);
    let mut known = BTreeSet::from([places(design, first)]);
    let mut found: Vec<Way> = Vec::new();
    let own = Some((group.iter().map(|&sheet| &plan.sheets[sheet]).collect::<Vec<_>>(), None));
    let others = ways.iter().map(|way| {
        let sheets = same_sheets(plan, way, group)?;
        let parts = other_parts(first, sheets[0], kept);
        Some((sheets, Some(parts)))
    });
    for (sheets, parts) in std::iter::once(own).chain(others).flatten() {
        for wish in Lay::all() {
            let laid: Vec<SheetPlan> = sheets.iter().map(|sheet| relaid(design, sheet, kept, wish)).collect();
            let there = places(design, &laid[0]);
            if worth(design, &laid[0]) != worth(design, first) || !known.insert(there.clone()) {
                continue;
            }
            let shown = shown(&places(design, first), &there);
            let sheets = group.iter().copied().zip(laid).collect();
            found.push(Way { sheets, differs: Differs { lay: wish, parts }, shown });
        }
    }
    found.retain(|way| is_sound(design, &put_together(plan, &[way]).plan));
    // The plan's own parts from other edges before other parts, where they differ as much.
    found.sort_by_key(|way| (std::cmp::Reverse(way.shown), way.differs.parts.is_some(), way.differs.lay));
    found
}

/// A plan with other ways in the place of its own.
fn put_together(plan: &CutPlan, ways: &[&Way]) -> Alternative {
    let mut other = plan.clone();
    let mut differs = vec![None; plan.sheets.len()];
    for way in ways {
        for (index, sheet) in &way.sheets {
            let (numbers, diagram) = (other.sheets[*index].numbers.clone(), other.sheets[*index].diagram);
            other.sheets[*index] = SheetPlan { numbers, diagram, ..sheet.clone() };
            differs[*index] = Some(way.differs);
        }
    }
    Alternative { plan: other, differs, area: ways.iter().map(|way| way.shown.0).sum() }
}

fn is_sound(design: &Design, plan: &CutPlan) -> bool {
    verify(design, plan).is_empty()
}

/// Rows at the start of a sheet that are not the planner's to change.
fn fixed_rows(design: &Design, sheet: &SheetPlan) -> usize {
    let demand = demand(design).into_iter().find(|demand| demand.paper == sheet.paper);
    let at_hand = demand.and_then(|demand| demand.sheets.into_iter().find(|sheets| sheets.kind == sheet.kind));
    at_hand.map_or(0, |sheets| usize::from(sheets.strip.is_some()) + sheets.fixed.len())
}

fn relaid(design: &Design, sheet: &SheetPlan, kept: usize, wish: Lay) -> SheetPlan {
    let mut laid = lay(sheet, kept, wish);
    laid.slack = slack(&laid, hand(design.units));
    laid
}

/// What one sheet adds to each aim past the sheets and diagrams, which stay as they are.
fn worth(design: &Design, sheet: &SheetPlan) -> (u32, u64, i128) {
    let hold = hand(design.units).hold;
    let left = sheet.parts.iter().filter(|part| part.r#use == Use::Leftover).map(|part| part.rect);
    let largest = left.filter(|rect| rect.width().min(rect.height()) >= hold).map(Rect::area).max();
    (sheet.cut_count(), sheet.changes(), largest.unwrap_or(0))
}

/// Where a sheet's pieces lie, and whether they show the back of the paper.
type Places = BTreeSet<(PieceId, bool, Rect)>;

fn places(design: &Design, sheet: &SheetPlan) -> Places {
    sheet
        .parts
        .iter()
        .filter_map(|part| match part.r#use {
            Use::Piece { piece, version, .. } => {
                Some((piece, design.shows_back(sheet.paper, piece, version), part.rect))
            }
            _ => None,
        })
        .collect()
}

/// The area on which not the same piece, or a piece on one sheet only, shows; then the area of
/// pieces that lie exactly so on one sheet only.
fn shown(one: &Places, other: &Places) -> Shown {
    let area = |places: &Places| places.iter().map(|(_, _, rect)| rect.area()).sum::<i128>();
    let (mut both, mut same) = (0, 0);
    for (piece, back, rect) in one {
        for (other_piece, other_back, other_rect) in other {
            let common = rect.overlap(*other_rect).map_or(0, Rect::area);
            both += common;
            if (piece, back) == (other_piece, other_back) {
                same += common;
            }
        }
    }
    let moved = one.symmetric_difference(other).map(|(_, _, rect)| rect.area()).sum();
    (area(one) + area(other) - both - same, moved)
}

/// The sheets of another plan that stand for the same sheets of paper, all cut by one diagram.
fn same_sheets<'p>(plan: &CutPlan, other: &'p CutPlan, group: &[usize]) -> Option<Vec<&'p SheetPlan>> {
    let sheets: Vec<&SheetPlan> = group
        .iter()
        .map(|&index| {
            let own = &plan.sheets[index];
            other.sheets.iter().find(|sheet| (sheet.paper, &sheet.numbers) == (own.paper, &own.numbers))
        })
        .collect::<Option<_>>()?;
    sheets.iter().all(|sheet| sheet.diagram == sheets[0].diagram).then_some(sheets)
}

fn other_parts(first: &SheetPlan, other: &SheetPlan, kept: usize) -> OtherParts {
    let across = |sheet: &SheetPlan| sheet.cuts.get(kept).map(|row| row.from.is_side());
    let lying = |sheet: &SheetPlan| {
        let turned = |use_of: Use| matches!(use_of, Use::Piece { quarter_turns, .. } if quarter_turns % 2 == 1);
        u32::try_from(sheet.parts.iter().filter(|part| turned(part.r#use)).count()).unwrap_or(u32::MAX)
    };
    OtherParts {
        first_cut: across(first) != across(other),
        lying: (lying(first) != lying(other)).then(|| lying(other)),
    }
}

impl Differs {
    /// Whether anything is measured from another edge than the rows first had.
    #[must_use]
    pub const fn is_relaid(&self) -> bool {
        !matches!((self.lay.across, self.lay.up), (Measured::AsPlanned, Measured::AsPlanned))
    }
}
