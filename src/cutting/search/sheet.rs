//! One sheet: everything that is wanted from it, in as few cuts as can be.

use super::counts::Lanes;
use super::derive::Drafts;
use super::greedy;
use super::problem::Problem;
use super::table::{Budget, Question, Table};
use super::tree::Node;

/// How far a search goes. Counts of states and room, never time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Limits {
    /// For the question what fits.
    pub fit: Budget,
    /// For the question with how few cuts.
    pub cuts: Budget,
    /// The most leftovers of one sheet that are searched exactly.
    pub leftovers: u32,
    /// Ways looked at to find one with few measures and a large leftover.
    pub looks: u64,
    /// Nodes of the search over several sheets.
    pub nodes: u64,
}

impl Default for Limits {
    fn default() -> Self {
        Self {
            fit: Budget { pairs: 60_000_000, entries: 4_000_000 },
            cuts: Budget { pairs: 12_000_000, entries: 1_000_000 },
            leftovers: 8,
            looks: 6_000,
            nodes: 100_000,
        }
    }
}

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
    let slack = i64::try_from(problem.area() - area).unwrap_or(i64::MAX);
    let question = Question { leftovers: None, waste: slack, beam: None, thorough: false, root: false };

    // Few leftovers first: found so, the cuts are the fewest.
    let mut budget = limits.cuts;
    let mut least = u32::from(slack > 0);
    let mut sure = true;
    for leftovers in least..=limits.leftovers {
        let question = Question { leftovers: Some(leftovers), ..question };
        let Some(table) = Table::fill(problem, &lanes, question, &mut budget) else { break };
        let found = table.reaches(lanes.caps(), &mut budget).filter(|_| lanes.whole());
        if let Some(parts) = found {
            let ways = ways(&table, &lanes, parts, limits);
            if !ways.is_empty() {
                return Fit::Yes(CutSheet { ways, least_leftovers: least });
            }
        }
        if !table.complete() || budget.pairs == 0 {
            break;
        }
        sure &= !problem.hand_binds() || not_even_without_rules(problem, &lanes, question, &mut budget);
        if sure {
            least = leftovers + 1;
        }
    }
    fits_at_all(problem, &lanes, question, least, limits)
}

/// Whether so few leftovers are out of reach even with the rules of the hand off, which proves it
/// for the hand.
fn not_even_without_rules(problem: &Problem, lanes: &Lanes, question: Question, budget: &mut Budget) -> bool {
    let free = problem.without_hand();
    Table::fill(&free, lanes, question, budget)
        .is_some_and(|table| table.complete() && table.reaches(lanes.caps(), budget).is_none() && budget.pairs > 0)
}

fn fits_at_all(problem: &Problem, lanes: &Lanes, question: Question, least: u32, limits: &Limits) -> Fit {
    let rounds: &[bool] = if problem.hand_binds() { &[false, true] } else { &[false] };
    let mut no = false;
    for &thorough in rounds {
        let mut budget = limits.fit;
        let Some(table) = Table::fill(problem, lanes, Question { thorough, ..question }, &mut budget) else { break };
        if lanes.whole() && table.reaches(lanes.caps(), &mut budget).is_some() {
            let ways = ways(&table, lanes, u32::MAX, limits);
            if !ways.is_empty() {
                return Fit::Yes(CutSheet { ways, least_leftovers: least });
            }
        }
        no = table.complete() && budget.pairs > 0;
        if !no {
            break;
        }
    }
    if no {
        return Fit::No;
    }
    // Out of room: the best few of every part instead of all.
    let mut budget = Budget { pairs: limits.fit.pairs, entries: limits.fit.entries };
    let question = Question { beam: Some(6), ..question };
    if let Some(table) = Table::fill(problem, lanes, question, &mut budget)
        && lanes.whole()
        && table.reaches(lanes.caps(), &mut budget).is_some()
    {
        let ways = ways(&table, lanes, u32::MAX, limits);
        if !ways.is_empty() {
            return Fit::Yes(CutSheet { ways, least_leftovers: least });
        }
    }
    greedy_fit(problem)
}

fn ways(table: &Table<'_>, lanes: &Lanes, parts: u32, limits: &Limits) -> Vec<Node> {
    let problem = table.problem;
    let drafts = Drafts::new(table, limits.looks).of_sheet(lanes.caps(), parts);
    let fewest = drafts.iter().map(|draft| draft.parts).min();
    drafts
        .iter()
        .filter(|draft| Some(draft.parts) == fewest)
        .map(|draft| draft.tree.gather(problem.width, problem.height, problem.hand))
        .collect()
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
