//! The maximal vectors of every kind of sheet, and sums of them that make up all that is wanted.

use super::counts::{Counts, Lanes};
use super::cover::{Alike, Lot, in_two_ways, realise};
use super::points::Cuts;
use super::sheet::{Fit, Limits, cut_sheet};
use super::table::{Budget, Ground, Question, Table};

/// Sheets of a stack, what each gives, and how many there are of them.
type Chosen = (usize, Vec<u32>, u32);

/// What the maximal vectors are looked for with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Round {
    /// Cuts at sums of pieces, as the hand can make them.
    Hand,
    /// The same, the best few of every part.
    FewOfAll,
    /// Cuts at so many times one side, the best few of every part.
    FewOfBlocks,
    /// The rules of the hand off.
    NoRules,
    /// Cuts at sums of pieces and the hand's own lengths.
    Held,
}

/// What is asked of one kind of sheet.
#[derive(Debug, Clone, Copy)]
pub(super) struct Ask {
    pub(super) cuts: Cuts,
    /// The most vectors kept of one part, where not all are.
    pub(super) beam: Option<usize>,
    /// The most leftovers, where parts are counted.
    pub(super) leftovers: Option<u32>,
    /// Whether the rules of the hand hold.
    pub(super) rules: bool,
    /// The most ways to cut that are searched.
    pub(super) ways: usize,
}

/// One thing that a sheet can give.
#[derive(Debug, Clone, Copy)]
pub(super) struct Gives {
    pub(super) area: i64,
    pub(super) counts: Counts,
    /// Parts it is cut into, where parts are counted; else 0.
    pub(super) parts: u32,
}

/// What one sheet of a kind can give as one of so many; and whether that is all. None where the
/// sheet is past searching.
pub(super) fn front(
    lot: &Lot,
    lanes: &Lanes,
    stack: usize,
    sheets: u32,
    ask: Ask,
    budget: &mut Budget,
) -> Option<(Vec<Gives>, bool)> {
    let wanted = lot.wanted();
    let (mut problem, unit) = lot.problem(stack, &wanted).in_largest_unit();
    // However full the other sheets are, this one must give the rest.
    let largest = (0..lot.stacks.len())
        .filter(|&stack| lot.stacks[stack].count > 0)
        .map(|stack| lot.area(stack))
        .max()
        .unwrap_or(0);
    let others = (largest / (i128::from(unit) * i128::from(unit)) + 1) * i128::from(sheets - 1);
    let all: i128 = lot.kinds.iter().map(|kind| kind.area() * i128::from(kind.wanted)).sum();
    let area = all / (i128::from(unit) * i128::from(unit)) - others;
    let area = i64::try_from(area.max(0)).unwrap_or(0);
    if !ask.rules {
        problem = problem.without_hand();
    }
    let question = Question { leftovers: ask.leftovers, area, beam: ask.beam, root: true };
    let ground = Ground::new(&problem, lanes, ask.cuts, ask.ways)?;
    let table = Table::fill(&ground, question, budget);
    let (x, y) = ground.sheet();
    let given = table.front(x, y).iter();
    let given = given.map(|entry| Gives { area: entry.area, counts: entry.counts, parts: entry.parts });
    Some((given.collect(), table.complete()))
}

/// The maximal vectors of each kind of sheet that can be one of so many.
pub(super) struct Fronts<'l> {
    lot: &'l Lot,
    lanes: &'l Lanes,
    vectors: Vec<Vec<Counts>>,
    /// Whether none is wanting, so that finding no sum is a proof.
    pub(super) complete: bool,
}

impl<'l> Fronts<'l> {
    pub(super) fn fill(lot: &'l Lot, lanes: &'l Lanes, sheets: u32, round: Round, limits: &Limits) -> Self {
        let mut fronts = Self { lot, lanes, vectors: Vec::new(), complete: lanes.whole() };
        for stack in 0..lot.stacks.len() {
            let vectors = if lot.stacks[stack].count == 0 {
                Vec::new()
            } else {
                fronts.front_of(stack, sheets, round, limits).unwrap_or_else(|| {
                    fronts.complete = false;
                    Vec::new()
                })
            };
            fronts.vectors.push(vectors);
        }
        fronts
    }

    /// The vectors of one kind of sheet, the largest first; none where room ran out. Which are
    /// whole is noted.
    fn front_of(&mut self, stack: usize, sheets: u32, round: Round, limits: &Limits) -> Option<Vec<Counts>> {
        let (cuts, beam) = match round {
            Round::Hand | Round::NoRules => (Cuts::All, None),
            Round::Held => (Cuts::AllAndHeld, None),
            Round::FewOfAll => (Cuts::All, Some(6)),
            Round::FewOfBlocks => (Cuts::Blocks, Some(6)),
        };
        let ask = Ask { cuts, beam, leftovers: None, rules: round != Round::NoRules, ways: usize::MAX };
        let mut budget = limits.fit;
        let (mut front, complete) = front(self.lot, self.lanes, stack, sheets, ask, &mut budget)?;
        self.complete &= complete;
        front.sort_unstable_by_key(|entry| std::cmp::Reverse((entry.area, entry.counts)));
        Some(front.into_iter().map(|entry| entry.counts).collect())
    }

    fn fits(&self, stack: usize, counts: &[u32]) -> bool {
        let packed = self.lanes.pack(counts);
        self.lanes.unpack(packed) == counts && self.vectors[stack].iter().any(|&front| self.lanes.covers(front, packed))
    }

    /// Cuts so many sheets by these vectors, if they add up to all that is wanted.
    pub(super) fn cut(&self, sheets: u32, limits: &Limits) -> Option<Vec<Alike>> {
        let wanted = self.lot.wanted();
        for stack in (0..self.lot.stacks.len()).filter(|&stack| self.lot.stacks[stack].count >= sheets) {
            if let Some(shares) = in_two_ways(&wanted, sheets, |counts| self.fits(stack, counts))
                && let Some(found) = realise(self.lot, stack, &shares, limits)
            {
                return Some(found);
            }
        }
        let (chosen, _) = self.choose(sheets, limits);
        let mut found = Vec::new();
        for (stack, counts, times) in chosen? {
            let Fit::Yes(cut) = cut_sheet(&self.lot.problem(stack, &counts), limits) else { return None };
            found.push(Alike { stack, times, cuts: vec![cut], counts });
        }
        Some(found)
    }

    /// Whether it is proven that so many sheets cannot do.
    pub(super) fn refute(&self, sheets: u32, limits: &Limits) -> bool {
        let (chosen, searched) = self.choose(sheets, limits);
        self.complete && searched && chosen.is_none()
    }

    /// Vectors for so many sheets that add up to all that is wanted; and
    /// whether all were looked at.
    fn choose(&self, sheets: u32, limits: &Limits) -> (Option<Vec<Chosen>>, bool) {
        let lanes = self.lanes;
        // Where a count is capped the demand cannot be told from the word.
        if !lanes.whole() {
            return (None, false);
        }
        let mut all: Vec<(usize, Counts)> = Vec::new();
        for (stack, front) in self.vectors.iter().enumerate() {
            all.extend(front.iter().map(|&counts| (stack, counts)));
        }
        let mut left: Vec<u32> = self.lot.stacks.iter().map(|stack| stack.count).collect();
        let (mut chosen, mut nodes) = (Vec::new(), limits.nodes);
        if !search(lanes, &all, 0, sheets, lanes.caps(), &mut left, &mut chosen, &mut nodes) {
            return (None, nodes > 0);
        }
        let mut missing = lanes.caps();
        let mut found: Vec<Chosen> = Vec::new();
        for &pick in &chosen {
            let (stack, counts) = all[pick];
            let part = lanes.lesser(counts, missing);
            missing -= part;
            let counts = lanes.unpack(part);
            match found.iter_mut().find(|(s, c, _)| *s == stack && *c == counts) {
                Some((_, _, times)) => *times += 1,
                None => found.push((stack, counts, 1)),
            }
        }
        found.retain(|(_, counts, _)| counts.iter().any(|&n| n > 0));
        (Some(found), true)
    }
}

/// Depth first over vectors in a fixed order, each sheet's no earlier than the one before.
#[expect(clippy::too_many_arguments, reason = "the state of one recursion")]
fn search(
    lanes: &Lanes,
    all: &[(usize, Counts)],
    from: usize,
    sheets: u32,
    missing: Counts,
    left: &mut [u32],
    chosen: &mut Vec<usize>,
    nodes: &mut u64,
) -> bool {
    if missing == 0 {
        return true;
    }
    if sheets == 0 || *nodes == 0 {
        return false;
    }
    *nodes -= 1;
    for pick in from..all.len() {
        let (stack, counts) = all[pick];
        let part = lanes.lesser(counts, missing);
        if part == 0 || left[stack] == 0 {
            continue;
        }
        if sheets == 1 && part != missing {
            continue;
        }
        left[stack] -= 1;
        chosen.push(pick);
        if search(lanes, all, pick, sheets - 1, missing - part, left, chosen, nodes) {
            return true;
        }
        chosen.pop();
        left[stack] += 1;
        if *nodes == 0 {
            return false;
        }
    }
    false
}
