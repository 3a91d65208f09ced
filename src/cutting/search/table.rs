//! The bounded dynamic programme: for every size of part that can be reached, the best vectors of
//! counts that can be cut from it.
//!
//! Two questions are put to it. *What fits?* keeps the maximal vectors (the antichain), clipped at
//! what is wanted. *With how few parts?* keeps vectors with the number of parts they leave on the
//! table, pieces and leftovers together (a sheet cut into `n` parts took `n - 1` cuts), and drops
//! whatever leaves more leftovers than asked; a piece too many is a leftover.

use super::counts::{Counts, Lanes};
use super::points::{Axis, Line};
use super::problem::Problem;

/// One thing that can be cut from a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Entry {
    pub(crate) counts: Counts,
    /// Area of the counts.
    pub(crate) area: i64,
    /// Parts it is cut into, where parts are counted; else 0.
    pub(crate) parts: u32,
}

/// What is asked of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Question {
    /// The most leftovers, where parts are counted.
    pub(crate) leftovers: Option<u32>,
    /// The most area that may go unused in the whole sheet.
    pub(crate) waste: i64,
    /// The most entries kept of one part, where not all are kept.
    pub(crate) beam: Option<usize>,
    /// Whether the sums hold the hand's own lengths too.
    pub(crate) thorough: bool,
    /// Whether the last cell, the whole sheet, is filled too.
    pub(crate) root: bool,
}

/// Work that may still be done: pairs of entries met, and entries kept. A count, never a time, so
/// that the same input gives the same plan on any machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Budget {
    /// Pairs of entries that may still be put together.
    pub pairs: u64,
    /// Entries that one table may hold (32 bytes each).
    pub entries: usize,
}

impl Budget {
    /// Takes `pairs` off; false where it is used up.
    pub(crate) const fn spend(&mut self, pairs: u64) -> bool {
        if self.pairs < pairs {
            self.pairs = 0;
            return false;
        }
        self.pairs -= pairs;
        true
    }
}

/// The filled table.
#[derive(Debug)]
pub(crate) struct Table<'a> {
    pub(crate) problem: &'a Problem,
    pub(crate) lanes: &'a Lanes,
    pub(crate) across: Line,
    pub(crate) up: Line,
    question: Question,
    /// Where the entries of a cell lie in `entries`.
    cells: Vec<(usize, usize)>,
    entries: Vec<Entry>,
    complete: bool,
    areas: Vec<i64>,
}

impl<'a> Table<'a> {
    /// Fills the table; none where the sheet has too many points or too large an area.
    pub(crate) fn fill(
        problem: &'a Problem,
        lanes: &'a Lanes,
        question: Question,
        budget: &mut Budget,
    ) -> Option<Self> {
        i64::try_from(problem.area()).ok().filter(|area| *area < i64::MAX / 4)?;
        let across = Line::new(problem, Axis::Across, question.thorough)?;
        let up = Line::new(problem, Axis::Up, question.thorough)?;
        let areas = problem.kinds.iter().map(|kind| i64::try_from(kind.area()).unwrap_or(i64::MAX / 4)).collect();
        let count = across.classes.len() * up.classes.len();
        let mut table = Self {
            problem,
            lanes,
            across,
            up,
            question,
            cells: vec![(0, 0); count],
            entries: Vec::new(),
            complete: lanes.whole() && question.beam.is_none(),
            areas,
        };
        table.fill_cells(budget);
        Some(table)
    }

    /// Whether nothing was dropped for want of budget or room, so that not finding is a proof.
    pub(crate) const fn complete(&self) -> bool {
        self.complete
    }

    pub(crate) fn front(&self, x: usize, y: usize) -> &[Entry] {
        let (start, end) = self.cells[x * self.up.classes.len() + y];
        &self.entries[start..end]
    }

    /// The classes of the whole sheet.
    pub(crate) fn sheet(&self) -> (usize, usize) {
        (self.across.classes.len() - 1, self.up.classes.len() - 1)
    }

    /// Two entries side by side, if the pair is worth keeping in a part that must hold `least`.
    #[inline]
    pub(crate) fn join(&self, one: &Entry, other: &Entry, least: i64) -> Option<Entry> {
        if one.area + other.area < least {
            return None;
        }
        let counts = self.lanes.sum(one.counts, other.counts);
        let area = if counts == one.counts.wrapping_add(other.counts) {
            one.area + other.area
        } else {
            let area = self.area(counts);
            if area < least {
                return None;
            }
            area
        };
        let parts = one.parts + other.parts;
        if self.question.leftovers.is_some_and(|most| parts > self.lanes.total(counts) + most) {
            return None;
        }
        Some(Entry { counts, area, parts })
    }

    fn area(&self, counts: Counts) -> i64 {
        self.areas.iter().enumerate().map(|(kind, area)| area * i64::from(self.lanes.count(counts, kind))).sum()
    }

    fn fill_cells(&mut self, budget: &mut Budget) {
        let (columns, rows) = (self.across.classes.len(), self.up.classes.len());
        let mut kept: Vec<Entry> = Vec::new();
        for x in 0..columns {
            for y in 0..rows {
                if !self.question.root && (x, y) == self.sheet() {
                    continue;
                }
                kept.clear();
                let fine = self.fill_cell(x, y, &mut kept, budget);
                if let Some(beam) = self.question.beam
                    && kept.len() > beam
                {
                    kept.sort_by(|a, b| b.area.cmp(&a.area).then(a.parts.cmp(&b.parts)).then(b.counts.cmp(&a.counts)));
                    kept.truncate(beam);
                }
                if !fine || self.entries.len() + kept.len() > budget.entries {
                    self.complete = false;
                    return;
                }
                let start = self.entries.len();
                self.entries.extend_from_slice(&kept);
                self.cells[x * rows + y] = (start, self.entries.len());
            }
        }
    }

    fn fill_cell(&self, x: usize, y: usize, kept: &mut Vec<Entry>, budget: &mut Budget) -> bool {
        let (width, height) = (self.across.classes[x], self.up.classes[y]);
        let least = width * height - self.question.waste;
        let counting = self.question.leftovers.is_some();
        for (kind, wanted) in self.problem.kinds.iter().enumerate() {
            if wanted.wanted > 0 && wanted.ways().any(|(w, h, _)| (w, h) == (width, height)) {
                let entry = Entry { counts: self.lanes.one(kind), area: width * height, parts: u32::from(counting) };
                self.keep(kept, entry);
            }
        }
        if least <= 0 && self.question.leftovers != Some(0) {
            self.keep(kept, Entry { counts: 0, area: 0, parts: u32::from(counting) });
        }
        for parting in &self.across.partings[x] {
            if !self.meet(self.front(parting.first, y), self.front(parting.rest, y), least, kept, budget) {
                return false;
            }
        }
        for parting in &self.up.partings[y] {
            if !self.meet(self.front(x, parting.first), self.front(x, parting.rest), least, kept, budget) {
                return false;
            }
        }
        true
    }

    fn meet(&self, ones: &[Entry], others: &[Entry], least: i64, kept: &mut Vec<Entry>, budget: &mut Budget) -> bool {
        if ones.is_empty() || others.is_empty() {
            return true;
        }
        if !budget.spend((ones.len() * others.len()) as u64) {
            return false;
        }
        for one in ones {
            for other in others {
                if let Some(entry) = self.join(one, other, least) {
                    self.keep(kept, entry);
                }
            }
        }
        true
    }

    /// Keeps an entry unless one that is kept is as good, and drops those it is better than.
    #[inline]
    fn keep(&self, kept: &mut Vec<Entry>, entry: Entry) {
        for old in kept.iter() {
            if old.parts <= entry.parts && self.lanes.covers(old.counts, entry.counts) {
                return;
            }
        }
        kept.retain(|old| !(entry.parts <= old.parts && self.lanes.covers(entry.counts, old.counts)));
        kept.push(entry);
    }

    /// The fewest parts in which the whole sheet gives `target`; 0 where parts are not counted.
    pub(crate) fn reaches(&self, target: Counts, budget: &mut Budget) -> Option<u32> {
        let (x, y) = self.sheet();
        let mut best: Option<u32> = None;
        let mut note = |entry: Entry| {
            if self.lanes.covers(entry.counts, target) && best.is_none_or(|parts| entry.parts < parts) {
                best = Some(entry.parts);
            }
        };
        if self.question.root {
            self.front(x, y).iter().copied().for_each(&mut note);
            return best;
        }
        let least = self.area(target);
        let mut alone = Vec::new();
        let (width, height) = (self.across.classes[x], self.up.classes[y]);
        for (kind, wanted) in self.problem.kinds.iter().enumerate() {
            if wanted.wanted > 0 && wanted.ways().any(|(w, h, _)| (w, h) == (width, height)) {
                let parts = u32::from(self.question.leftovers.is_some());
                alone.push(Entry { counts: self.lanes.one(kind), area: width * height, parts });
            }
        }
        alone.into_iter().for_each(&mut note);
        let sides = self.across.partings[x].iter().map(|p| (self.front(p.first, y), self.front(p.rest, y)));
        let ends = self.up.partings[y].iter().map(|p| (self.front(x, p.first), self.front(x, p.rest)));
        for (ones, others) in sides.chain(ends) {
            if !budget.spend((ones.len() * others.len()) as u64) {
                break;
            }
            for one in ones {
                for other in others {
                    if let Some(entry) = self.join(one, other, least) {
                        note(entry);
                    }
                }
            }
        }
        best
    }
}
