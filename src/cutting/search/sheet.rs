//! One sheet: everything that is wanted from it, in as few cuts as can be.

use super::counts::Lanes;
use super::derive::Drafts;
use super::greedy;
use super::points::Cuts;
use super::problem::Problem;
pub use super::table::{Budget, Spent};
use super::table::{Ground, Question, Table};
use super::tree::Node;
use std::cell::Cell;

/// How far a search goes. Counts of states and room, never time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Limits<'m> {
    /// For the question what fits.
    pub fit: Budget<'m>,
    /// For the question with how few cuts.
    pub cuts: Budget<'m>,
    /// Ways to cut, over all sizes of part, up to which the fewest cuts are searched exactly.
    pub ways: usize,
    /// The most leftovers of one sheet that are searched exactly.
    pub leftovers: u32,
    /// Ways looked at to find one with few measures and a large leftover.
    pub looks: u64,
    /// Nodes of the search over several sheets.
    pub nodes: u64,
}

impl Default for Limits<'_> {
    fn default() -> Self {
        Self {
            fit: Budget { pairs: 60_000_000, entries: 4_000_000, meter: None },
            cuts: Budget { pairs: 12_000_000, entries: 1_000_000, meter: None },
            ways: 2_000_000,
            leftovers: 8,
            looks: 6_000,
            nodes: 100_000,
        }
    }
}

impl Limits<'_> {
    /// The same, with what is used noted there.
    #[must_use]
    pub const fn noting<'n>(&self, meter: &'n Cell<Spent>) -> Limits<'n> {
        let Self { fit, cuts, ways, leftovers, looks, nodes } = *self;
        let fit = Budget { meter: Some(meter), ..fit.unmetered() };
        let cuts = Budget { meter: Some(meter), ..cuts.unmetered() };
        Limits { fit, cuts, ways, leftovers, looks, nodes }
    }

    /// The same, with nothing noted: for what is remembered longer than one search.
    #[must_use]
    pub const fn unmetered(&self) -> Limits<'static> {
        let Self { fit, cuts, ways, leftovers, looks, nodes } = *self;
        Limits { fit: fit.unmetered(), cuts: cuts.unmetered(), ways, leftovers, looks, nodes }
    }
}

/// Entries kept of one part where not all can be.
const BEAM: usize = 150;

/// One sheet cut.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CutSheet {
    /// Ways to cut it, in the problem's unit, with the same number of cuts; the likeliest first.
    pub ways: Vec<Node>,
    /// What is known to be the least number of leftovers.
    pub least_leftovers: u32,
}

impl CutSheet {
    /// Leftovers of the first way.
    #[must_use]
    pub fn leftovers(&self) -> u32 {
        let count = self.ways[0].leaves().iter().filter(|leaf| leaf.is_waste()).count();
        u32::try_from(count).unwrap_or(u32::MAX)
    }
}

/// Whether a sheet gives all that is wanted.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fit {
    /// It does, so.
    Yes(CutSheet),
    /// It does not; that is proven.
    No,
    /// None was found within the limits.
    Unknown,
}

/// Cuts everything that is wanted from one sheet.
#[must_use]
pub fn cut_sheet(problem: &Problem, limits: &Limits) -> Fit {
    let (small, unit) = problem.in_largest_unit();
    match cut_small(&small, limits) {
        Fit::Yes(mut cut) => {
            cut.ways = cut.ways.iter().map(|node| node.times(unit)).collect();
            Fit::Yes(cut)
        }
        other => other,
    }
}

fn cut_small(problem: &Problem, limits: &Limits) -> Fit {
    let wanted: Vec<u32> = problem.kinds.iter().map(|kind| kind.wanted).collect();
    let area = problem.area_of(&wanted);
    let misfit = |kind: &super::problem::Kind| kind.wanted > 0 && !kind.fits(problem.width, problem.height);
    if area > problem.area() || problem.kinds.iter().any(misfit) {
        return Fit::No;
    }
    let Some(lanes) = Lanes::new(&wanted) else { return greedy_fit(problem) };
    let area = i64::try_from(area).unwrap_or(i64::MAX / 4);
    let question = Question { leftovers: None, area, beam: None, root: false };
    let mut least = u32::from(i128::from(area) < problem.area());
    if lanes.whole() {
        if let Some(cut) = in_fewest_cuts(problem, &lanes, question, &mut least, limits) {
            return Fit::Yes(cut);
        }
        if let Some(cut) = in_blocks(problem, &lanes, question, least, limits) {
            return Fit::Yes(cut);
        }
    }
    fits_at_all(problem, &lanes, question, least, limits)
}

/// Few leftovers first: found so, the cuts are the fewest. `least` is raised as far as that is
/// proven.
fn in_fewest_cuts(
    problem: &Problem,
    lanes: &Lanes,
    question: Question,
    least: &mut u32,
    limits: &Limits,
) -> Option<CutSheet> {
    let ground = Ground::new(problem, lanes, Cuts::All, limits.ways)?;
    let free = problem.without_hand();
    let mut proof = problem.hand_binds().then(|| Proof::new(problem, &free, lanes, limits));
    let mut budget = limits.cuts;
    let mut sure = true;
    for leftovers in *least..=limits.leftovers {
        let question = Question { leftovers: Some(leftovers), ..question };
        let table = Table::fill(&ground, question, &mut budget);
        if let Some(ways) = ways_to(&table, &mut budget, limits) {
            return Some(CutSheet { ways, least_leftovers: *least });
        }
        if !table.complete() || budget.pairs == 0 {
            break;
        }
        match proof.as_mut().map_or(Shown::No, |proof| proof.show(question, &mut budget, limits)) {
            Shown::No => {}
            Shown::Ways(ways) => return Some(CutSheet { ways, least_leftovers: *least }),
            Shown::Nothing => sure = false,
        }
        if sure {
            *least = leftovers + 1;
        }
    }
    None
}

/// Where the rules of the hand bind, a search at sums of pieces alone proves nothing. So few
/// leftovers are out of reach for certain where they are even with the rules off, or where the
/// hand's own lengths are in the sums too.
struct Proof<'a> {
    free: Option<Ground<'a>>,
    held: Option<Option<Ground<'a>>>,
    problem: &'a Problem,
    lanes: &'a Lanes,
}

enum Shown {
    No,
    Ways(Vec<Node>),
    Nothing,
}

impl<'a> Proof<'a> {
    fn new(problem: &'a Problem, free: &'a Problem, lanes: &'a Lanes, limits: &Limits) -> Self {
        Self { free: Ground::new(free, lanes, Cuts::All, limits.ways), held: None, problem, lanes }
    }

    fn show(&mut self, question: Question, budget: &mut Budget, limits: &Limits) -> Shown {
        if let Some(free) = &self.free {
            let table = Table::fill(free, question, budget);
            if table.complete() && table.reaches(self.lanes.caps(), budget).is_none() && budget.pairs > 0 {
                return Shown::No;
            }
        }
        let (problem, lanes) = (self.problem, self.lanes);
        let held = self.held.get_or_insert_with(|| Ground::new(problem, lanes, Cuts::AllAndHeld, limits.ways));
        let Some(held) = held else { return Shown::Nothing };
        let table = Table::fill(held, question, budget);
        match ways_to(&table, budget, limits) {
            Some(ways) => Shown::Ways(ways),
            None if table.complete() && budget.pairs > 0 => Shown::No,
            None => Shown::Nothing,
        }
    }
}

/// Ways to all that is wanted, if the table reaches it.
fn ways_to(table: &Table<'_>, budget: &mut Budget, limits: &Limits) -> Option<Vec<Node>> {
    let parts = table.reaches(table.ground.lanes.caps(), budget)?;
    let ways = ways(table, if parts == 0 { u32::MAX } else { parts }, limits);
    (!ways.is_empty()).then_some(ways)
}

/// The same with cuts at so many times one side only, where the whole search is too long.
fn in_blocks(problem: &Problem, lanes: &Lanes, question: Question, least: u32, limits: &Limits) -> Option<CutSheet> {
    let ground = Ground::new(problem, lanes, Cuts::Blocks, usize::MAX)?;
    let mut budget = limits.cuts;
    for leftovers in least..=limits.leftovers {
        let question = Question { leftovers: Some(leftovers), beam: Some(BEAM), ..question };
        let table = Table::fill(&ground, question, &mut budget);
        if let Some(ways) = ways_to(&table, &mut budget, limits) {
            return Some(CutSheet { ways, least_leftovers: least });
        }
        if budget.pairs == 0 {
            break;
        }
    }
    None
}

/// The best few of every part first, which is quick and finds most plans; then all of them, which
/// alone proves that there is none.
fn fits_at_all(problem: &Problem, lanes: &Lanes, question: Question, least: u32, limits: &Limits) -> Fit {
    for cuts in [Cuts::Blocks, Cuts::All] {
        let mut budget = limits.cuts;
        if let Some(ground) = Ground::new(problem, lanes, cuts, usize::MAX) {
            let table = Table::fill(&ground, Question { beam: Some(6), ..question }, &mut budget);
            if let Some(cut) = reached(&table, &mut budget, least, limits) {
                return Fit::Yes(cut);
            }
        }
    }
    let rounds: &[Cuts] = if problem.hand_binds() { &[Cuts::All, Cuts::AllAndHeld] } else { &[Cuts::All] };
    for (round, &cuts) in rounds.iter().enumerate() {
        let mut budget = limits.fit;
        let Some(ground) = Ground::new(problem, lanes, cuts, usize::MAX) else { break };
        let table = Table::fill(&ground, question, &mut budget);
        if let Some(cut) = reached(&table, &mut budget, least, limits) {
            return Fit::Yes(cut);
        }
        if !table.complete() || budget.pairs == 0 {
            break;
        }
        if round + 1 == rounds.len() {
            return Fit::No;
        }
    }
    greedy_fit(problem)
}

fn reached(table: &Table<'_>, budget: &mut Budget, least: u32, limits: &Limits) -> Option<CutSheet> {
    let whole = table.ground.lanes.whole();
    let ways = if whole { ways_to(table, budget, limits)? } else { return None };
    Some(CutSheet { ways, least_leftovers: least })
}

fn ways(table: &Table<'_>, parts: u32, limits: &Limits) -> Vec<Node> {
    let problem = table.ground.problem;
    let drafts = Drafts::new(table, limits.looks).of_sheet(table.ground.lanes.caps(), parts);
    let fewest = drafts.iter().map(|draft| draft.parts).min();
    drafts
        .iter()
        .filter(|draft| Some(draft.parts) == fewest)
        .map(|draft| draft.tree.gather(problem.width, problem.height, problem.hand))
        .collect()
}

/// Room for the table of a sheet that is filled as far as is quickly found.
const QUICK: Budget<'static> = Budget { pairs: 6_000_000, entries: 500_000, meter: None };
/// Entries kept of one part of it.
const QUICK_BEAM: usize = 24;

/// As much of what is wanted as a sheet is quickly found to give, by area, and how it is cut.
pub(super) fn most_of(problem: &Problem, looks: u64) -> Option<(Vec<u32>, CutSheet)> {
    let (small, unit) = problem.in_largest_unit();
    let wanted: Vec<u32> = small.kinds.iter().map(|kind| kind.wanted).collect();
    let lanes = Lanes::new(&wanted)?;
    let question = Question { leftovers: None, area: 0, beam: Some(QUICK_BEAM), root: true };
    let mut best: Option<(i64, Node)> = None;
    for cuts in [Cuts::Blocks, Cuts::All] {
        let Some(ground) = Ground::new(&small, &lanes, cuts, usize::MAX) else { continue };
        let table = Table::fill(&ground, question, &mut QUICK.clone());
        let (x, y) = ground.sheet();
        let most = table.front(x, y).iter().max_by_key(|entry| (entry.area, entry.counts));
        let Some(most) = most.filter(|most| best.as_ref().is_none_or(|(area, ..)| most.area > *area)) else { continue };
        let drafts = Drafts::new(&table, looks.max(1)).of_sheet(most.counts, u32::MAX);
        if let Some(draft) = drafts.first() {
            let node = draft.tree.gather(small.width, small.height, small.hand);
            best = Some((most.area, node));
        }
    }
    let node = best.map_or_else(|| greedy::fill(problem), |(_, node)| node.times(unit));
    // A piece that is more than is asked of a draft is a leftover in it.
    let counts = node.counts(wanted.len());
    counts.iter().any(|&n| n > 0).then(|| (counts, CutSheet { ways: vec![node], least_leftovers: 0 }))
}

fn greedy_fit(problem: &Problem) -> Fit {
    let wanted: Vec<u32> = problem.kinds.iter().map(|kind| kind.wanted).collect();
    let node = greedy::fill(problem);
    if node.counts(wanted.len()) == wanted {
        Fit::Yes(CutSheet { ways: vec![node], least_leftovers: 0 })
    } else {
        Fit::Unknown
    }
}
