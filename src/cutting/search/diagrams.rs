//! So many sheets cut in as few different ways as can be, then in as few cuts.
//!
//! With `K` sheets of which `m` are cut alike, a diagram that gives a piece once gives it `m` times;
//! so pieces may be cut to spare, fewer than `K` of a kind, where that makes sheets alike. All
//! sheets alike is one question to one sheet. Otherwise everything that a sheet can give is known
//! from the table, and the ways to make up what is wanted from few of these are gone through.

use super::counts::{Counts, Lanes};
use super::cover::{Alike, Found, Lot};
use super::fronts::{Ask, Gives, front};
use super::points::Cuts;
use super::sheet::{Fit, Limits, cut_sheet};
use super::table::Budget;

/// All sheets alike; and whether it is proven that they cannot be.
pub(super) fn one(lot: &Lot, sheets: u32, limits: &Limits) -> (Option<Found>, bool) {
    let share: Vec<u32> = lot.wanted().iter().map(|n| n.div_ceil(sheets)).collect();
    let pieces: u64 = share.iter().map(|&n| u64::from(n)).sum();
    let times = u64::from(sheets);
    let (mut best, mut refused, mut bound): (Option<Alike>, bool, u64) = (None, true, u64::MAX);
    for stack in (0..lot.stacks.len()).filter(|&stack| lot.stacks[stack].count >= sheets) {
        let problem = lot.problem(stack, &share);
        // A kind that may not come from here is none of the problem's.
        if problem.kinds.iter().zip(&share).any(|(kind, &n)| kind.wanted < n) {
            continue;
        }
        match cut_sheet(&problem, limits) {
            Fit::Yes(cut) => {
                bound = bound.min(times * (pieces + u64::from(cut.least_leftovers)));
                let alike = Alike { stack, times: sheets, cuts: vec![cut], counts: share.clone() };
                if best.as_ref().is_none_or(|best| alike.parts() < best.parts()) {
                    best = Some(alike);
                }
            }
            Fit::No => {}
            Fit::Unknown => {
                bound = bound.min(times * pieces);
                refused = false;
            }
        }
    }
    let found = best.map(|alike| Found { sheets: vec![alike], least_diagrams: 1, least_parts: bound });
    let refused = refused && found.is_none();
    (found, refused)
}

/// Makes what was found better, as far as the limits let it, and says what is known to be the least.
pub(super) fn fewest(lot: &Lot, sheets: u32, mut known: Found, limits: &Limits) -> Found {
    let wanted = lot.wanted();
    let pieces: u64 = wanted.iter().map(|&n| u64::from(n)).sum();
    let unsectioned = lot.stacks.iter().all(|stack| stack.sections.len() == 1);
    if known.sheets.len() == 1 || !unsectioned || lot.alike {
        return Found { least_parts: known.least_parts.max(pieces), ..known };
    }
    let mut best = std::mem::take(&mut known.sheets);
    let mut least = Found { least_parts: pieces, ..known };
    let Some(lanes) = Lanes::new(&wanted).filter(Lanes::whole) else { return Found { sheets: best, ..least } };
    let hunt = Hunt::new(lot, &lanes, sheets, limits);
    let mut budget = limits.cuts;

    // How few diagrams: what fits, parts not counted.
    if let Some((given, complete)) = hunt.fill(None, &mut budget, limits) {
        let fewest = u32::try_from(best.len()).unwrap_or(u32::MAX).min(sheets);
        for diagrams in 2..=fewest {
            let (found, searched) = hunt.search(&given, diagrams);
            if let Some(found) = found.and_then(|(_, chosen)| hunt.realise(&chosen, limits)) {
                best = better(best, found);
                break;
            }
            if complete && searched && least.least_diagrams == diagrams && diagrams < fewest {
                least.least_diagrams = diagrams + 1;
            }
        }
    }

    // How few parts, with so many diagrams.
    let diagrams = u32::try_from(best.len()).unwrap_or(u32::MAX);
    let proven = least.least_diagrams == diagrams;
    let mut sure = proven;
    let mut budget = limits.cuts;
    for leftovers in 0..=limits.leftovers {
        let Some((given, complete)) = hunt.fill(Some(leftovers), &mut budget, limits) else { break };
        let (found, searched) = hunt.search(&given, diagrams);
        sure &= complete && searched;
        let parts = found.as_ref().map_or(u64::MAX, |(parts, _)| *parts);
        if let Some(found) = found.and_then(|(_, chosen)| hunt.realise(&chosen, limits)) {
            best = better(best, found);
        }
        // A sheet with more leftovers than were asked for has one more at least.
        if sure {
            least.least_parts = least.least_parts.max(parts.min(pieces + u64::from(leftovers) + 1));
        }
        if all_parts(&best) <= pieces + u64::from(leftovers) + 1 || budget.pairs == 0 {
            break;
        }
    }
    Found { sheets: best, ..least }
}

fn all_parts(sheets: &[Alike]) -> u64 {
    sheets.iter().map(|alike| u64::from(alike.times) * alike.parts()).sum()
}

fn to_spare(sheets: &[Alike]) -> u64 {
    sheets.iter().map(|alike| u64::from(alike.times) * alike.counts.iter().map(|&n| u64::from(n)).sum::<u64>()).sum()
}

/// Fewer diagrams, then fewer parts, then fewer pieces to spare; the first of equals.
fn better(one: Vec<Alike>, other: Vec<Alike>) -> Vec<Alike> {
    let worth = |sheets: &[Alike]| (sheets.len(), all_parts(sheets), to_spare(sheets));
    if worth(&other) < worth(&one) { other } else { one }
}

/// A diagram: the kind of sheet, what it gives, and how many sheets are cut so.
type Chosen = (usize, Counts, u32);

/// Steps of one search for so many diagrams, for each of the limit's nodes.
const STEPS_A_NODE: u64 = 100;

/// The ways to make up what is wanted from so many diagrams.
struct Hunt<'l> {
    lot: &'l Lot,
    lanes: &'l Lanes,
    sheets: u32,
    steps: u64,
}

/// One search: what is tried, what is left, and the best so far.
struct Trail<'g> {
    given: &'g [(usize, Gives)],
    /// How many sheets each diagram stands for.
    times: Vec<u32>,
    left: Vec<u32>,
    picked: Vec<usize>,
    parts: u64,
    best: Option<(u64, Vec<Chosen>)>,
    steps: u64,
}

impl<'l> Hunt<'l> {
    const fn new(lot: &'l Lot, lanes: &'l Lanes, sheets: u32, limits: &Limits) -> Self {
        Self { lot, lanes, sheets, steps: limits.nodes.saturating_mul(STEPS_A_NODE) }
    }

    /// What a sheet of each kind can give, in few parts first; and whether that is all.
    fn fill(
        &self,
        leftovers: Option<u32>,
        budget: &mut Budget,
        limits: &Limits,
    ) -> Option<(Vec<(usize, Gives)>, bool)> {
        let binds = self.lot.hand_binds();
        let (mut all, mut complete) = (Vec::new(), true);
        for stack in (0..self.lot.stacks.len()).filter(|&stack| self.lot.stacks[stack].count > 0) {
            let ask = |cuts| Ask { cuts, beam: None, leftovers, rules: true, ways: limits.ways };
            // Where the rules of the hand bind, only sums with the hand's own lengths show all.
            let held = if binds {
                let mut own = Budget { pairs: budget.pairs / 2, ..*budget };
                front(self.lot, self.lanes, stack, self.sheets, ask(Cuts::AllAndHeld), &mut own)
                    .filter(|(_, complete)| *complete)
            } else {
                None
            };
            let (given, whole) = match held {
                Some(held) => held,
                None => {
                    let (given, whole) = front(self.lot, self.lanes, stack, self.sheets, ask(Cuts::All), budget)?;
                    (given, whole && !binds)
                }
            };
            complete &= whole;
            all.extend(given.into_iter().map(|gives| (stack, gives)));
        }
        all.sort_by_key(|(stack, gives)| (gives.parts, std::cmp::Reverse(gives.counts), *stack));
        Some((all, complete))
    }

    /// The fewest parts with so many diagrams; and whether all ways were gone through.
    fn search(&self, given: &[(usize, Gives)], diagrams: u32) -> (Option<(u64, Vec<Chosen>)>, bool) {
        let mut best: Option<(u64, Vec<Chosen>)> = None;
        let mut steps = self.steps;
        let mut partings = Vec::new();
        part_into(self.sheets, diagrams, self.sheets, &mut Vec::new(), &mut partings);
        for times in partings {
            let left = self.lot.stacks.iter().map(|stack| stack.count).collect();
            let mut trail = Trail { given, times, left, picked: Vec::new(), parts: 0, best, steps };
            self.follow(&mut trail, self.lanes.caps());
            (best, steps) = (trail.best, trail.steps);
        }
        (best, steps > 0)
    }

    fn follow(&self, trail: &mut Trail<'_>, rest: Counts) {
        let here = trail.picked.len();
        let Some(&times) = trail.times.get(here) else { return };
        let last = here + 1 == trail.times.len();
        // Diagrams for equally many sheets are picked in order.
        let from = match trail.picked.last() {
            Some(&before) if trail.times[here - 1] == times => before,
            _ => 0,
        };
        let need = self.lanes.share(rest, times);
        for pick in from..trail.given.len() {
            if trail.steps == 0 {
                return;
            }
            trail.steps -= 1;
            let (stack, gives) = trail.given[pick];
            let parts = trail.parts + u64::from(times) * u64::from(gives.parts);
            if trail.best.as_ref().is_some_and(|(best, _)| parts >= *best) {
                // Those that follow have no fewer parts.
                return;
            }
            if trail.left[stack] < times {
                continue;
            }
            if last {
                if !self.lanes.covers(gives.counts, need) {
                    continue;
                }
                let mut chosen: Vec<Chosen> =
                    trail.picked.iter().zip(&trail.times).map(|(&p, &t)| self.chosen(trail.given, p, t)).collect();
                chosen.push(self.chosen(trail.given, pick, times));
                trail.best = Some((parts, chosen));
                // The first that covers has the fewest parts.
                return;
            }
            if gives.counts == 0 {
                continue;
            }
            let mut after = rest;
            for _ in 0..times {
                after = self.lanes.beyond(after, gives.counts);
            }
            let before = trail.parts;
            trail.left[stack] -= times;
            trail.picked.push(pick);
            trail.parts = parts;
            self.follow(trail, after);
            trail.parts = before;
            trail.picked.pop();
            trail.left[stack] += times;
        }
    }

    const fn chosen(&self, given: &[(usize, Gives)], pick: usize, times: u32) -> Chosen {
        (given[pick].0, given[pick].1.counts, times)
    }

    /// Cuts the sheets: of each kind no more than is wanted, as far as sheets stay alike.
    fn realise(&self, chosen: &[Chosen], limits: &Limits) -> Option<Vec<Alike>> {
        let mut counts: Vec<Vec<u32>> = chosen.iter().map(|(_, counts, _)| self.lanes.unpack(*counts)).collect();
        for (kind, wanted) in self.lot.wanted().into_iter().enumerate() {
            let cut: u32 = chosen.iter().zip(&counts).map(|((_, _, times), counts)| times * counts[kind]).sum();
            let mut spare = cut.checked_sub(wanted)?;
            for ((_, _, times), counts) in chosen.iter().zip(&mut counts).rev() {
                let off = (spare / times).min(counts[kind]);
                counts[kind] -= off;
                spare -= off * times;
            }
        }
        let mut all: Vec<Alike> = Vec::new();
        for ((stack, _, times), counts) in chosen.iter().zip(counts) {
            if counts.iter().all(|&n| n == 0) {
                continue;
            }
            if let Some(same) = all.iter_mut().find(|alike| alike.stack == *stack && alike.counts == counts) {
                same.times += times;
                continue;
            }
            let Fit::Yes(cut) = cut_sheet(&self.lot.problem(*stack, &counts), limits) else { return None };
            all.push(Alike { stack: *stack, times: *times, cuts: vec![cut], counts });
        }
        Some(all)
    }
}

/// The ways to part a number into so many, the largest first.
fn part_into(number: u32, parts: u32, most: u32, before: &mut Vec<u32>, all: &mut Vec<Vec<u32>>) {
    if parts == 0 || number < parts {
        return;
    }
    if parts == 1 {
        if number <= most {
            let mut one = before.clone();
            one.push(number);
            all.push(one);
        }
        return;
    }
    for first in (number.div_ceil(parts)..=most.min(number - (parts - 1))).rev() {
        before.push(first);
        part_into(number - first, parts - 1, first, before, all);
        before.pop();
    }
}
