//! What a plan reaches, and what is known to be the limit. `proven` stands only where the plan
//! meets a bound that holds for every plan, given the aims before it.

use super::assemble::Cards;
use super::cover::Covered;
use crate::cutting::demand::{PaperDemand, hand};
use crate::cutting::plan::{Aim, Aims, CutPlan, Use};
use crate::design::model::Design;

const NM_PER_UM: i128 = 1_000;

/// Aims of a plan that is not yet put together.
pub(super) const fn none() -> Aims {
    let aim = Aim { found: 0, bound: 0, proven: false };
    Aims { cards: aim, sheets: aim, diagrams: aim, cuts: aim, changes: aim, leftover: aim }
}

/// Judges a plan.
pub(super) fn judge(
    design: &Design,
    demands: &[PaperDemand],
    covered: &[Covered],
    cards: &Cards,
    plan: &CutPlan,
) -> Aims {
    let whole = *cards == Cards::All;
    let cards = match cards {
        Cards::All => at_most(u64::from(plan.cards), u64::from(design.cards.value)),
        Cards::Short { bound, .. } => at_most(u64::from(plan.cards), u64::from(*bound)),
    };
    let least_sheets: u64 = covered.iter().map(|paper| u64::from(paper.least_sheets)).sum();
    let mut sheets = at_least(plan.sheets_used() as u64, least_sheets);
    let mut diagrams = at_least(plan.diagrams() as u64, least_diagrams(demands, covered, plan));
    // What is missing is not settled by an aim, so a short plan's sheets prove nothing.
    sheets.proven &= whole;
    diagrams.proven &= sheets.proven;
    let cuts = at_least(plan.cuts(), least_cuts(demands, covered, diagrams.proven));
    // Every diagram with a cut has at least one measure, which differs from none before it.
    let least_changes = plan_diagrams(plan).filter(|&sheet| !plan.sheets[sheet].cuts.is_empty()).count();
    let changes = at_least(plan.changes(), least_changes as u64);
    let leftover = at_most(largest_leftover(plan, hand(design.units).hold), most_left(demands, covered));
    let mut aims = Aims { cards, sheets, diagrams, cuts, changes, leftover };
    aims.cuts.proven &= aims.diagrams.proven;
    aims.changes.proven &= aims.cuts.proven;
    aims.leftover.proven &= aims.changes.proven;
    aims
}

fn at_least(found: u64, bound: u64) -> Aim {
    let bound = bound.min(found);
    Aim { found, bound, proven: found == bound }
}

fn at_most(found: u64, bound: u64) -> Aim {
    let bound = bound.max(found);
    Aim { found, bound, proven: found == bound }
}

/// The first sheet of each diagram.
fn plan_diagrams(plan: &CutPlan) -> impl Iterator<Item = usize> + '_ {
    (0..plan.sheets.len())
        .filter(|&sheet| plan.sheets[..sheet].iter().all(|earlier| earlier.diagram != plan.sheets[sheet].diagram))
}

/// Papers of which no two can share a diagram, each with at least one of its own: no sheet size in
/// common, or no piece in common. Picked in order, which gives a bound though not always the best.
fn least_diagrams(demands: &[PaperDemand], covered: &[Covered], plan: &CutPlan) -> u64 {
    let mut picked: Vec<&PaperDemand> = Vec::new();
    let mut bound = 0;
    for (demand, covered) in demands.iter().zip(covered) {
        if demand.wanted.is_empty() || covered.sheets.is_empty() {
            continue;
        }
        let apart = |other: &&PaperDemand| {
            let sizes =
                demand.sheets.iter().any(|a| other.sheets.iter().any(|b| (a.whole, a.usable) == (b.whole, b.usable)));
            let pieces = demand.wanted.iter().any(|a| other.wanted.iter().any(|b| a.piece == b.piece));
            !(sizes && pieces)
        };
        if picked.iter().all(apart) {
            picked.push(demand);
            // Given the number of sheets, equal sheets all cut alike would share every count out
            // evenly.
            let sheets: u32 = covered.sheets.iter().map(|alike| alike.times).sum();
            let even = demand.wanted.iter().all(|wanted| wanted.count() % sheets == 0);
            let sole = demands
                .iter()
                .filter(|other| !other.wanted.is_empty())
                .all(|other| other.paper == demand.paper || apart_from(demand, other));
            bound += if even || !sole { 1 } else { 2 };
        }
    }
    bound.min(plan.diagrams() as u64)
}

fn apart_from(one: &PaperDemand, other: &PaperDemand) -> bool {
    !(one.sheets.iter().any(|a| other.sheets.iter().any(|b| (a.whole, a.usable) == (b.whole, b.usable)))
        && one.wanted.iter().any(|a| other.wanted.iter().any(|b| a.piece == b.piece)))
}

/// A sheet cut into `n` parts took `n - 1` cuts, and its parts are its pieces, its leftovers and
/// its edge strip. How few leftovers there can be is known from the search where all sheets of a
/// paper are cut alike and no other number of diagrams is as good; else at least one where any area
/// is left over.
fn least_cuts(demands: &[PaperDemand], covered: &[Covered], diagrams_proven: bool) -> u64 {
    let mut bound = 0;
    for (demand, covered) in demands.iter().zip(covered) {
        let pieces: u64 = covered
            .sheets
            .iter()
            .map(|a| u64::from(a.times) * a.counts.iter().map(|&n| u64::from(n)).sum::<u64>())
            .sum();
        let sheets: u64 = covered.sheets.iter().map(|a| u64::from(a.times)).sum();
        let strips: u64 =
            covered.sheets.iter().filter(|a| demand.sheets[a.stack].strip.is_some()).map(|a| u64::from(a.times)).sum();
        let leftovers = match covered.sheets.as_slice() {
            [one] if diagrams_proven || one.times == 1 => u64::from(one.times) * u64::from(one.cut.least_leftovers),
            all => {
                let used: i128 = all.iter().map(|a| i128::from(a.times) * demand.sheets[a.stack].usable.area()).sum();
                let kept: i128 = all
                    .iter()
                    .map(|a| {
                        i128::from(a.times)
                            * a.counts
                                .iter()
                                .zip(&demand.wanted)
                                .map(|(&n, w)| {
                                    i128::from(n) * i128::from(w.size.width.nm()) * i128::from(w.size.height.nm())
                                })
                                .sum::<i128>()
                    })
                    .sum();
                u64::from(used > kept)
            }
        };
        bound += (pieces + leftovers + strips).saturating_sub(sheets);
    }
    bound
}

/// Area of the largest usable leftover in square micrometres.
fn largest_leftover(plan: &CutPlan, hold: i64) -> u64 {
    let areas = plan
        .sheets
        .iter()
        .flat_map(|sheet| &sheet.parts)
        .filter(|part| part.r#use == Use::Leftover && part.rect.width().min(part.rect.height()) >= hold);
    let most = areas.map(|part| part.rect.area()).max().unwrap_or(0);
    u64::try_from(most / (NM_PER_UM * NM_PER_UM)).unwrap_or(u64::MAX)
}

/// No leftover is larger than all that a paper's sheets leave, nor than a sheet of it.
fn most_left(demands: &[PaperDemand], covered: &[Covered]) -> u64 {
    let mut most = 0;
    for (demand, covered) in demands.iter().zip(covered) {
        let used: i128 =
            covered.sheets.iter().map(|a| i128::from(a.times) * demand.sheets[a.stack].usable.area()).sum();
        let kept: i128 = covered
            .sheets
            .iter()
            .map(|a| {
                i128::from(a.times)
                    * a.counts
                        .iter()
                        .zip(&demand.wanted)
                        .map(|(&n, w)| i128::from(n) * i128::from(w.size.width.nm()) * i128::from(w.size.height.nm()))
                        .sum::<i128>()
            })
            .sum();
        let sheet = covered.sheets.iter().map(|a| demand.sheets[a.stack].usable.area()).max().unwrap_or(0);
        most = most.max((used - kept).min(sheet));
    }
    u64::try_from(most / (NM_PER_UM * NM_PER_UM)).unwrap_or(u64::MAX)
}
