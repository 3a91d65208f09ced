//! What a plan reaches, and what is known to be the limit. `proven` stands only where the plan
//! meets a bound that holds for every plan, given the aims before it.

use super::assemble::{Cards, Papers};
use super::cover::{Alike, Covered};
use super::joint::Set;
use crate::cutting::demand::{PaperDemand, Wanted, hand};
use crate::cutting::plan::{Aim, Aims, CutPlan, Use};
use crate::design::model::Design;

const NM_PER_UM: i128 = 1_000;

/// Aims of a plan that is not yet put together.
pub(super) const fn none() -> Aims {
    let aim = Aim { found: 0, bound: 0, proven: false };
    Aims { cards: aim, sheets: aim, diagrams: aim, cuts: aim, changes: aim, leftover: aim }
}

/// Judges a plan.
pub(super) fn judge(design: &Design, (demands, covered, sets): Papers<'_>, cards: &Cards, plan: &CutPlan) -> Aims {
    let whole = *cards == Cards::All;
    let cards = match cards {
        Cards::All => at_most(u64::from(plan.cards), u64::from(design.cards.value)),
        Cards::Short { bound, .. } => at_most(u64::from(plan.cards), u64::from(*bound)),
    };
    let bought = demands.iter().zip(covered).filter(|(demand, _)| design.paper(demand.paper).kept_from.is_none());
    let least_sheets: u64 = bought.map(|(_, covered)| u64::from(covered.least_sheets)).sum();
    let mut sheets = at_least(plan.sheets_used() as u64, least_sheets);
    let mut diagrams = at_least(plan.diagrams() as u64, sets.iter().map(|set| set.least_diagrams).sum());
    // What is missing is not settled by an aim, so a short plan's sheets prove nothing.
    sheets.proven &= whole;
    diagrams.proven &= sheets.proven;
    let cuts = at_least(plan.cuts(), least_cuts(demands, covered, sets));
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

/// A sheet cut into `n` parts took `n - 1` cuts, and its parts are its pieces, its leftovers and
/// its edge strip. How few parts there can be is known from the search; and there is a leftover at
/// least where any area is left over.
fn least_cuts(demands: &[PaperDemand], covered: &[Covered], sets: &[Set]) -> u64 {
    let mut bound = 0;
    for set in sets {
        let (mut pieces, mut uncut) = (0, 0);
        for &paper in &set.papers {
            let (demand, covered) = (&demands[paper], &covered[paper]);
            pieces += demand.wanted.iter().map(|wanted| u64::from(wanted.count())).sum::<u64>();
            pieces += u64::from(used(demand, covered) > wanted(demand));
            // A strip is a part of its own, and every sheet is a part before it is cut.
            let strip = |a: &Alike| demand.sheets[a.stack].strip.is_some();
            uncut += covered.sheets.iter().filter(|a| !strip(a)).map(|a| u64::from(a.times)).sum::<u64>();
        }
        bound += pieces.max(set.least_parts).saturating_sub(uncut);
    }
    bound
}

/// Area of the sheets used, in square nanometres.
fn used(demand: &PaperDemand, covered: &Covered) -> i128 {
    covered.sheets.iter().map(|a| i128::from(a.times) * demand.sheets[a.stack].usable.area()).sum()
}

/// Area of all that is wanted of a paper, in square nanometres.
fn wanted(demand: &PaperDemand) -> i128 {
    let area = |w: &Wanted| i128::from(w.size.width.nm()) * i128::from(w.size.height.nm());
    demand.wanted.iter().map(|wanted| area(wanted) * i128::from(wanted.count())).sum()
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
        let sheet = covered.sheets.iter().map(|a| demand.sheets[a.stack].usable.area()).max().unwrap_or(0);
        most = most.max((used(demand, covered) - wanted(demand)).min(sheet));
    }
    u64::try_from(most / (NM_PER_UM * NM_PER_UM)).unwrap_or(u64::MAX)
}
