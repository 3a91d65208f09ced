//! From trees to the plan: the order of a hand for each way of cutting, versions and sheet numbers
//! given out, equal diagrams numbered alike.

use super::aims;
use super::cover::{Alike, Covered};
use super::joint::Set;
use super::tree::Node;
use crate::cutting::demand::{PaperDemand, SheetsAtHand, Wanted, hand};
use crate::cutting::order::{self, End, Ordered, Sheet};
use crate::cutting::plan::{CutPlan, Missing, Part, SheetPlan, Use};
use crate::cutting::slack::slack;
use crate::design::model::{Design, PieceId, VersionId};
use crate::length::{Length, Units};

/// How many cards a plan gives.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Cards {
    /// All that the design asks for.
    All,
    /// Fewer.
    Short {
        /// The most whole cards found.
        most: u32,
        /// No plan gives more.
        bound: u32,
        /// What found no place.
        missing: Vec<Missing>,
    },
}

/// Puts the plan together. `demands` are what the design asks for in full, `covered` is what is
/// cut, paper by paper.
pub(super) fn assemble(design: &Design, papers: Papers<'_>, cards: &Cards) -> CutPlan {
    put_together(design, papers, cards, &orders(design, papers), 0)
}

/// What is wanted from each paper, how it is cut, and which papers could share diagrams.
pub(super) type Papers<'p> = (&'p [PaperDemand], &'p [Covered], &'p [Set]);

/// Whole plans in which each sheet is cut in another way that a hand likes as well by the aims, up
/// to `count` of them.
pub(super) fn other_ways(design: &Design, papers: Papers<'_>, count: usize) -> Vec<CutPlan> {
    let orders = orders(design, papers);
    let most = orders.iter().flatten().map(Vec::len).max().unwrap_or(0);
    (1..most.min(count + 1)).map(|way| put_together(design, papers, &Cards::All, &orders, way)).collect()
}

/// For each paper, for its sheets that are cut alike: the orders that are best by the aims, the
/// tidiest first.
type Orders = Vec<Vec<Vec<Ordered>>>;

fn orders(design: &Design, (demands, covered, _): Papers<'_>) -> Orders {
    let of = |demand: &PaperDemand, alike: &Alike| best_orders(alike, &demand.sheets[alike.stack], design.units);
    let papers = demands.iter().zip(covered);
    papers.map(|(demand, covered)| covered.sheets.iter().map(|alike| of(demand, alike)).collect()).collect()
}

/// `way` says which of the best orders of a sheet is taken; the first where there are not so many.
fn put_together(design: &Design, papers: Papers<'_>, cards: &Cards, orders: &Orders, way: usize) -> CutPlan {
    let (demands, covered, _) = papers;
    let none = Ordered { parts: Vec::new(), cuts: Vec::new() };
    let mut sheets: Vec<SheetPlan> = Vec::new();
    for ((demand, covered), orders) in demands.iter().zip(covered).zip(orders) {
        let mut versions: Vec<Vec<(Option<VersionId>, u32)>> =
            demand.wanted.iter().map(|wanted| wanted.versions.clone()).collect();
        let mut used = vec![0_u32; demand.sheets.len()];
        for (alike, orders) in covered.sheets.iter().zip(orders) {
            let at_hand = &demand.sheets[alike.stack];
            let ordered = orders.get(way).or_else(|| orders.first()).unwrap_or(&none);
            let whole_lot = covered.sheets.len() == 1;
            for _ in 0..alike.times {
                let parts = name_parts(ordered, &demand.wanted, &mut versions, whole_lot.then_some(alike.times));
                let number = at_hand.first + used[alike.stack];
                used[alike.stack] += 1;
                let same = sheets.iter_mut().find(|sheet| {
                    sheet.paper == demand.paper
                        && sheet.kind == at_hand.kind
                        && sheet.parts == parts
                        && sheet.cuts == ordered.cuts
                });
                if let Some(sheet) = same {
                    sheet.numbers.push(number);
                    continue;
                }
                let diagram = sheets.iter().find(|sheet| same_diagram(design, sheet, &parts, ordered)).map_or_else(
                    || sheets.iter().map(|sheet| sheet.diagram + 1).max().unwrap_or(0),
                    |sheet| sheet.diagram,
                );
                let unit = Length::zero(design.units).unit();
                let size = at_hand.whole.size(unit);
                sheets.push(SheetPlan {
                    paper: demand.paper,
                    kind: at_hand.kind,
                    kept: design.paper(demand.paper).kept_from.is_some(),
                    numbers: vec![number],
                    diagram,
                    width: size.width,
                    height: size.height,
                    slack: size,
                    parts,
                    cuts: ordered.cuts.clone(),
                });
            }
        }
    }
    for sheet in &mut sheets {
        sheet.slack = slack(sheet, hand(design.units));
    }
    let (given, most, missing) = match cards {
        Cards::All => (design.cards.value, None, Vec::new()),
        Cards::Short { most, missing, .. } => (*most, Some(*most), missing.clone()),
    };
    let mut plan = CutPlan { units: design.units, cards: given, most, aims: aims::none(), sheets, missing };
    plan.aims = aims::judge(design, papers, cards, &plan);
    plan
}

fn same_diagram(design: &Design, sheet: &SheetPlan, parts: &[Part], ordered: &Ordered) -> bool {
    // Which version a piece is for does not matter, but which side of the paper it shows does.
    let plain = |part: &Part| match part.r#use {
        Use::Piece { piece, version, quarter_turns } => {
            let side = version.map(|version| design.side_of(piece, version));
            (part.parent, part.rect, Some((piece, side, quarter_turns)), Use::Divided)
        }
        other => (part.parent, part.rect, None, other),
    };
    sheet.cuts == ordered.cuts
        && sheet.parts.len() == parts.len()
        && sheet.parts.iter().zip(parts).all(|(one, other)| plain(one) == plain(other))
}

/// Ways to cut a sheet that are put in the order of a hand and compared.
const MOST_WAYS: usize = 48;

/// Of the ways with the same number of cuts, those a hand likes best: fewest changes of measure,
/// then the largest usable leftover; after these aims what is tidy stands first.
fn best_orders(alike: &Alike, at_hand: &SheetsAtHand, units: Units) -> Vec<Ordered> {
    let sheet = Sheet {
        whole: at_hand.whole,
        strip: at_hand.strip,
        fixed: at_hand.fixed.clone(),
        sections: at_hand.sections.iter().map(|section| section.rect).collect(),
        unit: Length::zero(units).unit(),
    };
    let rules = hand(units);
    let ordered = |nodes: &[&Node]| {
        let ordered = order::order(nodes, &sheet, rules);
        let aims = (
            ordered.cuts.iter().map(|row| row.cuts).sum::<u32>(),
            ordered.changes(),
            std::cmp::Reverse(largest(&ordered, rules.hold)),
        );
        let levels = nodes.iter().map(|node| node.levels()).max().unwrap_or(0);
        let tidy = (levels.max(3), ordered.cuts.len(), std::cmp::Reverse(largest(&ordered, 0)));
        let lengths: i64 = ordered.cuts.iter().map(|row| row.measure.nm()).sum();
        ((aims, tidy, lengths), ordered)
    };
    // Every way of every section with every other, the likeliest of all first.
    let mut ways: Vec<Vec<&Node>> = vec![Vec::new()];
    for cut in &alike.cuts {
        let longer = cut.ways.iter().flat_map(|way| ways.iter().map(move |before| (before, way)));
        ways = longer.map(|(before, way)| before.iter().copied().chain([way]).collect()).take(MOST_WAYS).collect();
    }
    let mut all: Vec<_> = ways.iter().map(|nodes| ordered(nodes)).collect();
    all.sort_by_key(|(worth, _)| *worth);
    let best = all.first().map(|((aims, ..), _)| *aims);
    all.into_iter().filter(|((aims, ..), _)| Some(*aims) == best).map(|(_, ordered)| ordered).collect()
}

/// Area of the largest leftover with its short side at least `hold`.
fn largest(ordered: &Ordered, hold: i64) -> i128 {
    let usable = |part: &&order::Made| part.end == End::Leftover && part.rect.width().min(part.rect.height()) >= hold;
    ordered.parts.iter().filter(usable).map(|part| part.rect.area()).max().unwrap_or(0)
}

/// Names the pieces of one sheet and gives out versions. Where all sheets are cut alike and every
/// version's count divides by them, `evenly` gives each sheet the same share, so that they stay
/// one entry. A piece to spare is for the last version that takes it.
fn name_parts(
    ordered: &Ordered,
    wanted: &[Wanted],
    left: &mut [Vec<(Option<VersionId>, u32)>],
    evenly: Option<u32>,
) -> Vec<Part> {
    let even =
        evenly.filter(|&times| wanted.iter().all(|wanted| wanted.versions.iter().all(|(_, count)| count % times == 0)));
    let mut share: Vec<Vec<(Option<VersionId>, u32)>> = match even {
        Some(times) => wanted
            .iter()
            .map(|wanted| wanted.versions.iter().map(|(version, count)| (*version, count / times)).collect())
            .collect(),
        None => left.to_vec(),
    };
    let mut take = |kind: usize| -> (PieceId, Option<VersionId>) {
        let last = wanted[kind].versions.last().and_then(|(version, _)| *version);
        let from = share[kind].iter_mut().find(|(_, count)| *count > 0);
        let version = from.map_or(last, |(version, count)| {
            *count -= 1;
            *version
        });
        (wanted[kind].piece, version)
    };
    let parts = ordered
        .parts
        .iter()
        .map(|made| Part {
            parent: made.parent,
            rect: made.rect,
            r#use: match made.end {
                End::Divided => Use::Divided,
                End::Leftover => Use::Leftover,
                End::EdgeStrip => Use::EdgeStrip,
                End::Piece(kind, lying) => {
                    let (piece, version) = take(kind);
                    Use::Piece { piece, version, quarter_turns: u8::from(lying) }
                }
            },
        })
        .collect();
    if even.is_none() {
        left.clone_from_slice(&share);
    }
    parts
}
