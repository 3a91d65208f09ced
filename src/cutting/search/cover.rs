//! Several sheets: the fewest that give everything wanted, cut in as few different ways as can be.

use super::counts::Lanes;
use super::diagrams;
use super::fixed;
use super::fronts::{Fronts, Round};
use super::greedy;
use super::points::Axis;
use super::problem::{Hand, Kind, Problem};
use super::sheet::{Budget, CutSheet, Fit, Limits, cut_sheet, most_of};

/// Equal sheets at hand.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stack {
    /// What each sheet is parted into before anything else, in order: itself alone where no cuts are
    /// fixed.
    pub sections: Vec<Section>,
    /// How many there are.
    pub count: u32,
}

/// A part of a sheet between cuts that are fixed, or the whole sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Section {
    /// Its width.
    pub width: i64,
    /// Its height.
    pub height: i64,
    /// For each kind, whether it may not come from here; none may be barred by leaving the list empty.
    pub barred: Vec<bool>,
}

impl Stack {
    /// So many sheets on which no cuts are fixed.
    #[must_use]
    pub fn plain(width: i64, height: i64, count: u32) -> Self {
        Self { sections: vec![Section { width, height, barred: Vec::new() }], count }
    }
}

/// What is wanted from which sheets.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Lot {
    /// The sheets at hand.
    pub stacks: Vec<Stack>,
    /// What is wanted, over all sheets.
    pub kinds: Vec<Kind>,
    /// The rules of the hand.
    pub hand: Option<Hand>,
    /// Whether every sheet that is used must be cut like the others.
    pub alike: bool,
}

/// Sheets cut alike.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Alike {
    /// Index into [`Lot::stacks`].
    pub stack: usize,
    /// How many sheets.
    pub times: u32,
    /// How each section is cut.
    pub cuts: Vec<CutSheet>,
    /// What each sheet gives.
    pub counts: Vec<u32>,
}

impl Alike {
    /// Parts that each sheet ends in, pieces and leftovers.
    #[must_use]
    pub fn parts(&self) -> u64 {
        self.cuts.iter().map(|cut| cut.ways[0].leaves().len() as u64).sum()
    }
}

/// How a lot is cut. Over all sheets a kind may be cut more often than it is wanted, though never as
/// often more as there are sheets: such spare pieces make sheets alike.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Covered {
    /// The sheets used.
    pub sheets: Vec<Alike>,
    /// No fewer sheets can do.
    pub least_sheets: u32,
    /// No fewer different diagrams can do, given so many sheets as are used.
    pub least_diagrams: u32,
    /// No fewer parts can do over all sheets, given so many sheets and diagrams as are used.
    pub least_parts: u64,
}

impl Covered {
    /// No sheet at all.
    #[must_use]
    pub const fn nothing() -> Self {
        Self { sheets: Vec::new(), least_sheets: 0, least_diagrams: 0, least_parts: 0 }
    }

    /// Parts that all sheets end in, pieces and leftovers.
    #[must_use]
    pub fn parts(&self) -> u64 {
        self.sheets.iter().map(|alike| u64::from(alike.times) * alike.parts()).sum()
    }
}

/// Whether the sheets at hand give everything.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Cover {
    /// They do.
    Yes(Covered),
    /// They do not; that is proven.
    No,
    /// None was found within the limits.
    Unknown,
}

/// Sheets that give everything, with what is known of their diagrams and parts.
#[derive(Debug, Clone)]
pub(super) struct Found {
    pub(super) sheets: Vec<Alike>,
    pub(super) least_diagrams: u32,
    pub(super) least_parts: u64,
}

impl Lot {
    /// A sheet of a stack on which no cuts are fixed, as a problem of its own.
    pub(super) fn problem(&self, stack: usize, counts: &[u32]) -> Problem {
        self.problem_of(&self.stacks[stack].sections[0], counts)
    }

    /// A section as a problem of its own.
    pub(super) fn problem_of(&self, section: &Section, counts: &[u32]) -> Problem {
        let barred = |kind: usize| section.barred.get(kind).copied().unwrap_or(false);
        let kinds = self.kinds.iter().zip(counts).enumerate();
        let kinds = kinds.map(|(n, (kind, &wanted))| Kind { wanted: if barred(n) { 0 } else { wanted }, ..*kind });
        Problem { width: section.width, height: section.height, kinds: kinds.collect(), hand: self.hand }
    }

    pub(super) fn wanted(&self) -> Vec<u32> {
        self.kinds.iter().map(|kind| kind.wanted).collect()
    }

    pub(super) fn area(&self, stack: usize) -> i128 {
        let sections = self.stacks[stack].sections.iter();
        sections.map(|section| i128::from(section.width) * i128::from(section.height)).sum()
    }

    /// The fewest sheets by area alone; none where all of them have too little.
    pub(super) fn least_by_area(&self) -> Option<u32> {
        let mut order: Vec<usize> = (0..self.stacks.len()).collect();
        order.sort_by_key(|&stack| std::cmp::Reverse(self.area(stack)));
        let mut missing: i128 = self.kinds.iter().map(|kind| kind.area() * i128::from(kind.wanted)).sum();
        let mut sheets = 0;
        for stack in order {
            if missing <= 0 {
                break;
            }
            let (area, count) = (self.area(stack).max(1), self.stacks[stack].count);
            let needed = u32::try_from((missing + area - 1) / area).unwrap_or(u32::MAX).min(count);
            sheets += needed;
            missing -= area * i128::from(needed);
        }
        (missing <= 0).then_some(sheets)
    }

    fn fits_somewhere(&self, number: usize) -> bool {
        let kind = &self.kinds[number];
        self.stacks.iter().filter(|stack| stack.count > 0).flat_map(|stack| &stack.sections).any(|section| {
            !section.barred.get(number).copied().unwrap_or(false) && kind.fits(section.width, section.height)
        })
    }

    /// Whether the rules of the hand can bind on any piece.
    pub(super) fn hand_binds(&self) -> bool {
        let problem = Problem { width: 1, height: 1, kinds: self.kinds.clone(), hand: self.hand };
        problem.hand_binds()
    }

    /// Sheets that can be of use: every one gives a piece at least.
    fn at_hand(&self) -> u32 {
        let pieces: u32 = self.wanted().iter().fold(0, |sum, n| sum.saturating_add(*n));
        self.stacks.iter().fold(0_u32, |sum, stack| sum.saturating_add(stack.count)).min(pieces)
    }
}

/// Finds the fewest sheets, then the fewest ways to cut them, then the fewest cuts.
#[must_use]
pub fn cover(lot: &Lot, limits: &Limits) -> Cover {
    if lot.kinds.iter().all(|kind| kind.wanted == 0) {
        return Cover::Yes(Covered::nothing());
    }
    if (0..lot.kinds.len()).any(|kind| lot.kinds[kind].wanted > 0 && !lot.fits_somewhere(kind)) {
        return Cover::No;
    }
    let Some(by_area) = lot.least_by_area() else { return Cover::No };
    let (mut least, mut proven) = (by_area, true);
    for sheets in by_area..=lot.at_hand() {
        let (found, complete) = cover_with(lot, sheets, limits);
        if let Some(found) = found {
            let Found { sheets: found, least_diagrams, least_parts } = diagrams::fewest(lot, sheets, found, limits);
            return Cover::Yes(Covered { sheets: found, least_sheets: least, least_diagrams, least_parts });
        }
        proven &= complete;
        if proven {
            least = sheets + 1;
        }
    }
    if proven {
        return Cover::No;
    }
    // Past the limits: one sheet after another, each with as much as it is found to take.
    by_turns(lot, limits).map_or(Cover::Unknown, |sheets| {
        Cover::Yes(Covered { sheets, least_sheets: least, least_diagrams: 1, least_parts: 0 })
    })
}

/// The first sheets found that give everything, by the quickest way that finds any.
#[must_use]
pub(super) fn enough(lot: &Lot, limits: &Limits) -> Cover {
    if lot.kinds.iter().all(|kind| kind.wanted == 0) {
        return Cover::Yes(Covered::nothing());
    }
    for first in [Axis::Up, Axis::Across] {
        let greedy = |problem: &Problem| {
            let node = greedy::fill_by(problem, first);
            let counts = node.counts(problem.kinds.len());
            counts.iter().any(|&n| n > 0).then(|| (counts, CutSheet { ways: vec![node], least_leftovers: 0 }))
        };
        if let Some(sheets) = sheet_by_sheet(lot, greedy) {
            return Cover::Yes(Covered { sheets, ..Covered::nothing() });
        }
    }
    // Papers that are cut alike take one pattern: the whole search finds it sooner than trying them in turn.
    if lot.alike {
        return cover(lot, limits);
    }
    let quick = Limits {
        fit: Budget { pairs: limits.fit.pairs.min(300_000), ..limits.fit },
        cuts: Budget { pairs: limits.cuts.pairs.min(20_000), ..limits.cuts },
        ways: 0,
        looks: limits.looks.min(1),
        nodes: limits.nodes.min(100),
        ..*limits
    };
    match gives_all(lot, &quick) {
        Cover::Unknown => cover(lot, limits),
        known => known,
    }
}

/// Fills one sheet after another, the largest first, with the largest area of pieces that is found
/// quickly; none where something is left over.
fn by_turns(lot: &Lot, limits: &Limits) -> Option<Vec<Alike>> {
    sheet_by_sheet(lot, |problem| most_of(problem, limits.looks))
}

/// Fills one sheet after another, the largest first, with what `fill` gives; none where something is left over.
fn sheet_by_sheet(lot: &Lot, fill: impl Fn(&Problem) -> Option<(Vec<u32>, CutSheet)>) -> Option<Vec<Alike>> {
    if lot.alike || lot.stacks.iter().any(|stack| stack.sections.len() != 1) {
        return None;
    }
    let mut order: Vec<usize> = (0..lot.stacks.len()).collect();
    order.sort_by_key(|&stack| std::cmp::Reverse(lot.area(stack)));
    let mut rest = lot.wanted();
    let mut all: Vec<Alike> = Vec::new();
    for stack in order {
        for _ in 0..lot.stacks[stack].count {
            if rest.iter().all(|&n| n == 0) {
                return Some(all);
            }
            let Some((counts, cut)) = fill(&lot.problem(stack, &rest)) else { break };
            rest.iter_mut().zip(&counts).for_each(|(rest, n)| *rest -= n);
            match all.iter_mut().find(|alike| alike.stack == stack && alike.counts == counts) {
                Some(same) => same.times += 1,
                None => all.push(Alike { stack, times: 1, cuts: vec![cut], counts }),
            }
        }
    }
    rest.iter().all(|&n| n == 0).then_some(all)
}

/// Whether all sheets at hand together give everything, however many that takes.
#[must_use]
pub(super) fn gives_all(lot: &Lot, limits: &Limits) -> Cover {
    let at_hand = lot.at_hand();
    if at_hand == 0 || lot.least_by_area().is_none() {
        let nothing = lot.kinds.iter().all(|kind| kind.wanted == 0);
        return if nothing { Cover::Yes(Covered::nothing()) } else { Cover::No };
    }
    // Sheets that must be alike are of one kind, and the more of them, the less each must give.
    let most = lot.stacks.iter().map(|stack| stack.count.min(at_hand)).max().unwrap_or(0);
    match cover_with(lot, if lot.alike { most } else { at_hand }, limits) {
        (Some(found), _) => Cover::Yes(Covered {
            sheets: found.sheets,
            least_sheets: 0,
            least_diagrams: 0,
            least_parts: found.least_parts,
        }),
        (None, true) => Cover::No,
        (None, false) => Cover::Unknown,
    }
}

/// Covers with so many sheets at most; and whether not finding a way is a proof.
fn cover_with(lot: &Lot, sheets: u32, limits: &Limits) -> (Option<Found>, bool) {
    if lot.stacks.iter().any(|stack| stack.count > 0 && stack.sections.len() > 1) {
        return fixed::cover_with(lot, sheets, limits);
    }
    // All cut alike: no search over vectors is needed where that fits.
    let (found, refused) = diagrams::one(lot, sheets, limits);
    if found.is_some() || sheets == 1 || lot.alike {
        return (found, refused);
    }
    let least_diagrams = if refused { 2 } else { 1 };
    let (found, refused) = cover_by_sums(lot, sheets, limits);
    let found = found.map(|sheets| Found { sheets, least_diagrams, least_parts: 0 });
    (found, refused)
}

/// Covers with sheets that may differ: vectors of what a sheet can give are put together.
pub(super) fn cover_by_sums(lot: &Lot, sheets: u32, limits: &Limits) -> (Option<Vec<Alike>>, bool) {
    let wanted = lot.wanted();
    let Some(lanes) = Lanes::new(&wanted) else { return (None, false) };
    let fill = |round| Fronts::fill(lot, &lanes, sheets, round, limits);
    let fronts = fill(Round::Hand);
    if let Some(found) = fronts.cut(sheets, limits) {
        return (Some(found), false);
    }
    let binds = lot.hand_binds();
    if !binds && fronts.refute(sheets, limits) {
        return (None, true);
    }
    if !fronts.complete {
        for round in [Round::FewOfAll, Round::FewOfBlocks] {
            if let Some(found) = fill(round).cut(sheets, limits) {
                return (Some(found), false);
            }
        }
    }
    if !binds {
        return (None, false);
    }
    // What no hand without rules can do, none can; else the sums need the hand's own lengths too.
    if fill(Round::NoRules).refute(sheets, limits) {
        return (None, true);
    }
    let fronts = fill(Round::Held);
    let found = fronts.cut(sheets, limits);
    let refuted = found.is_none() && fronts.refute(sheets, limits);
    (found, refuted)
}

/// Cuts sheets of one kind by shares.
pub(super) fn realise(lot: &Lot, stack: usize, shares: &[(Vec<u32>, u32)], limits: &Limits) -> Option<Vec<Alike>> {
    let mut all = Vec::new();
    for (counts, times) in shares.iter().filter(|(counts, _)| counts.iter().any(|&n| n > 0)) {
        let Fit::Yes(cut) = cut_sheet(&lot.problem(stack, counts), limits) else { return None };
        all.push(Alike { stack, times: *times, cuts: vec![cut], counts: counts.clone() });
    }
    Some(all)
}

/// Shares in one way or in two, where they can be found.
pub(super) fn in_two_ways(wanted: &[u32], sheets: u32, fits: impl Fn(&[u32]) -> bool) -> Option<Vec<(Vec<u32>, u32)>> {
    if wanted.iter().all(|n| n % sheets == 0) {
        let counts: Vec<u32> = wanted.iter().map(|n| n / sheets).collect();
        if fits(&counts) {
            return Some(vec![(counts, sheets)]);
        }
    }
    let mut tries = 20_000_u32;
    for many in (sheets.div_ceil(2)..sheets).rev() {
        let few = sheets - many;
        let mut choices: Vec<Vec<u32>> = Vec::new();
        for &n in wanted {
            let even = n.div_ceil(sheets);
            let mut counts: Vec<u32> = (0..=n / many).filter(|c| (n - many * c) % few == 0).collect();
            counts.sort_by_key(|&c| (c.abs_diff(even), c));
            counts.truncate(64);
            choices.push(counts);
        }
        if choices.iter().any(Vec::is_empty) {
            continue;
        }
        let mut pick = vec![0_usize; wanted.len()];
        loop {
            tries = tries.checked_sub(1)?;
            let one: Vec<u32> = pick.iter().zip(&choices).map(|(&p, c)| c[p]).collect();
            let other: Vec<u32> = wanted.iter().zip(&one).map(|(n, c)| (n - many * c) / few).collect();
            if other.iter().any(|&n| n > 0) && one.iter().any(|&n| n > 0) && fits(&one) && fits(&other) {
                return Some(if one == other { vec![(one, sheets)] } else { vec![(one, many), (other, few)] });
            }
            let Some(place) = (0..pick.len()).find(|&place| pick[place] + 1 < choices[place].len()) else { break };
            pick[place] += 1;
            pick[..place].fill(0);
        }
    }
    None
}
