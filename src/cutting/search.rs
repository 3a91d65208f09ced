//! The search: takes a settled design, gives the plan of all its sheets.
//!
//! The aims in their order: all cards, the fewest sheets, the fewest different diagrams, the fewest
//! cuts, the fewest changes of measure, the largest usable leftover. The core below knows no
//! designs: [`sheet::cut_sheet`] answers for one sheet, [`cover::cover`] for several. Must never
//! know where a layer lies.

mod aims;
mod assemble;
pub mod counts;
pub mod cover;
mod derive;
mod diagrams;
mod fixed;
mod fronts;
mod greedy;
mod joint;
pub mod most;
pub mod points;
pub mod problem;
pub mod sheet;
mod shortage;
mod table;
pub mod tree;
pub mod value;

use super::demand::{self, PaperDemand};
use super::plan::CutPlan;
use crate::design::model::{Design, PaperId};
use cover::{Cover, Covered, Lot, Section, Stack};
use problem::{Hand, Kind};
use sheet::Limits;

/// Plans the cutting of a design.
///
/// Where the sheets do not suffice, the plan gives the most whole cards that was found and says
/// what is missing.
#[must_use]
pub fn plan(design: &Design) -> CutPlan {
    plan_within(design, &Limits::default())
}

/// The same within other limits.
#[must_use]
pub fn plan_within(design: &Design, limits: &Limits) -> CutPlan {
    plan_knowing(design, limits, &mut Known::default())
}

/// The same, not looking again for what is known from designs planned before within the same limits.
#[must_use]
pub fn plan_knowing(design: &Design, limits: &Limits, known: &mut Known) -> CutPlan {
    let demands = demand::demand(design);
    let lots = lots_of(design, &demands);
    let covers = cover_all(&demands, &lots, limits, known);
    match all_covered(&covers) {
        Some(mut covered) => {
            let sets = joint::sets(&demands, &lots, &mut covered, Some(limits));
            assemble::assemble(design, (&demands, &covered, &sets), &assemble::Cards::All)
        }
        None => shortage::plan(design, &demands, &covers, limits),
    }
}

/// The first plan found within the sheets: nothing in it is the fewest, and nothing is proven. For whether the
/// sheets suffice, where that is all that is asked; where they do not, the answer is [`plan`]'s.
#[must_use]
pub fn plan_enough(design: &Design) -> CutPlan {
    let demands = demand::demand(design);
    let lots = lots_of(design, &demands);
    let limits = Limits::default();
    let mut covers: Vec<Cover> = Vec::new();
    for (place, lot) in lots.iter().enumerate() {
        // Papers that ask for the same are looked at once.
        let known = lots[..place].iter().position(|earlier| earlier == lot);
        covers.push(known.map_or_else(|| cover::enough(lot, &limits), |known| covers[known].clone()));
    }
    match all_covered(&covers) {
        Some(mut covered) => {
            let sets = joint::sets(&demands, &lots, &mut covered, None);
            assemble::assemble(design, (&demands, &covered, &sets), &assemble::Cards::All)
        }
        None => plan(design),
    }
}

/// Whether a whole plan is found; it is remembered where it is.
fn is_covered(design: &Design, limits: &Limits, known: &mut Known) -> bool {
    let demands = demand::demand(design);
    let lots = lots_of(design, &demands);
    cover_all(&demands, &lots, limits, known).iter().all(|cover| matches!(cover, Cover::Yes(_)))
}

/// Whole plans of the same worth as [`plan`]'s that cut sheets in other ways which the search came
/// by, up to `count`; none where the sheets do not suffice.
#[must_use]
pub fn other_ways(design: &Design, count: usize) -> Vec<CutPlan> {
    let limits = Limits::default();
    let demands = demand::demand(design);
    let lots = lots_of(design, &demands);
    let covers = cover_all(&demands, &lots, &limits, &mut Known::default());
    let Some(mut covered) = all_covered(&covers) else { return Vec::new() };
    let sets = joint::sets(&demands, &lots, &mut covered, Some(&limits));
    assemble::other_ways(design, (&demands, &covered, &sets), count)
}

/// What covers everything, or none where one paper is not covered.
fn all_covered(covers: &[Cover]) -> Option<Vec<Covered>> {
    covers
        .iter()
        .map(|cover| match cover {
            Cover::Yes(covered) => Some(covered.clone()),
            Cover::No | Cover::Unknown => None,
        })
        .collect()
}

fn lots_of(design: &Design, demands: &[PaperDemand]) -> Vec<Lot> {
    let hand = demand::hand(design.units);
    demands.iter().map(|demand| lot_of(demand, hand)).collect()
}

/// What is wanted from one paper, as the core takes it.
fn lot_of(demand: &PaperDemand, hand: Hand) -> Lot {
    let stacks = demand
        .sheets
        .iter()
        .map(|sheets| {
            let sections = sheets.sections.iter().map(|section| Section {
                width: section.rect.width().max(0),
                height: section.rect.height().max(0),
                barred: demand.wanted.iter().map(|wanted| section.barred.contains(&wanted.piece)).collect(),
            });
            // A strip that nothing holds cannot be cut off, so such a sheet gives nothing; nor does
            // one on which the fixed cuts cannot be made.
            let fine = strip_comes_off(sheets, hand) && !sheets.sections.is_empty();
            Stack { sections: sections.collect(), count: if fine { sheets.count } else { 0 } }
        })
        .collect();
    let kinds = demand
        .wanted
        .iter()
        .map(|wanted| Kind {
            width: wanted.size.width.nm(),
            height: wanted.size.height.nm(),
            quarter: wanted.quarter,
            wanted: wanted.count(),
        })
        .collect();
    Lot { stacks, kinds, hand: Some(hand), alike: demand.alike }
}

fn strip_comes_off(sheets: &demand::SheetsAtHand, hand: Hand) -> bool {
    let (width, height) = (sheets.usable.width(), sheets.usable.height());
    width > 0
        && height > 0
        && sheets.strip.is_none_or(|(edge, strip)| hand.allows(strip, if edge.is_side() { width } else { height }))
}

/// Covers every paper. Papers with the same sheets from which the same pieces are wanted are cut
/// alike where that takes no more sheets: the tree is found with the fewest turns that any of them
/// allows.
fn cover_all(demands: &[PaperDemand], lots: &[Lot], limits: &Limits, known: &mut Known) -> Vec<Cover> {
    let mut covers: Vec<Option<Cover>> = vec![None; lots.len()];
    for first in 0..lots.len() {
        if covers[first].is_some() {
            continue;
        }
        let group: Vec<usize> = (first..lots.len())
            .filter(|&other| covers[other].is_none() && alike(&demands[first], &demands[other]))
            .collect();
        if group.len() < 2 {
            covers[first] = Some(known.cover(&lots[first], limits));
            continue;
        }
        let mut strict = lots[first].clone();
        for &other in &group {
            for (kind, theirs) in strict.kinds.iter_mut().zip(&lots[other].kinds) {
                kind.quarter &= theirs.quarter;
            }
        }
        let together = known.cover(&strict, limits);
        for (&paper, cover) in group.iter().zip(known.shared(lots, &group, &together, limits)) {
            covers[paper] = Some(cover);
        }
    }
    covers.into_iter().map(|cover| cover.unwrap_or(Cover::Unknown)).collect()
}

/// Lots already covered, so that papers and designs that ask for the same are searched once.
#[derive(Debug, Default)]
pub struct Known {
    covers: Vec<(Lot, Cover)>,
    stocks: Vec<(PaperId, most::Stock)>,
    /// The most cards of the design before.
    likely: Option<u32>,
}

impl Known {
    fn cover(&mut self, lot: &Lot, limits: &Limits) -> Cover {
        if let Some((_, cover)) = self.covers.iter().find(|(known, _)| known == lot) {
            return cover.clone();
        }
        let cover = cover::cover(lot, limits);
        self.covers.push((lot.clone(), cover.clone()));
        cover
    }

    /// Covers of papers that could be cut alike, given how they are cut with the fewest turns that
    /// any of them allows.
    fn shared(&mut self, lots: &[Lot], group: &[usize], together: &Cover, limits: &Limits) -> Vec<Cover> {
        let Cover::Yes(shared) = together else {
            return group.iter().map(|&paper| self.cover(&lots[paper], limits)).collect();
        };
        // No freedom of turning takes fewer sheets than their area asks for.
        let best = |lot: &Lot| shared.sheets.len() == 1 && Some(sheets_in(shared)) == lot.least_by_area();
        if group.iter().all(|&paper| best(&lots[paper])) {
            return group.iter().map(|_| together.clone()).collect();
        }
        let alone: Vec<Cover> = group.iter().map(|&paper| self.cover(&lots[paper], limits)).collect();
        // What all of them take when each goes its own way; lots that are the same go one way.
        let (mut diagrams, mut parts) = (0, 0);
        for (place, (&paper, cover)) in group.iter().zip(&alone).enumerate() {
            let Cover::Yes(own) = cover else { continue };
            parts += own.parts();
            if group[..place].iter().all(|&earlier| lots[earlier] != lots[paper]) {
                diagrams += own.sheets.len();
            }
        }
        let together = (shared.sheets.len(), shared.parts() * group.len() as u64);
        let fewer = together < (diagrams, parts);
        alone
            .into_iter()
            .map(|cover| match cover {
                Cover::Yes(own) if fewer && sheets_in(shared) <= sheets_in(&own) => Cover::Yes(Covered {
                    least_sheets: own.least_sheets,
                    least_diagrams: own.least_diagrams.min(shared.least_diagrams),
                    ..shared.clone()
                }),
                own => own,
            })
            .collect()
    }
}

fn sheets_in(covered: &Covered) -> u32 {
    covered.sheets.iter().map(|alike| alike.times).sum()
}

/// Whether two papers could be cut by one diagram: the same sheets, the same pieces.
fn alike(one: &PaperDemand, other: &PaperDemand) -> bool {
    let sheets = |demand: &PaperDemand| -> Vec<_> {
        let sheets = demand.sheets.iter();
        sheets.map(|sheets| (sheets.whole, sheets.usable, sheets.count, sheets.sections.clone())).collect()
    };
    let pieces = |demand: &PaperDemand| -> Vec<_> {
        demand.wanted.iter().map(|wanted| (wanted.piece, wanted.side, wanted.count())).collect()
    };
    sheets(one) == sheets(other) && pieces(one) == pieces(other)
}
