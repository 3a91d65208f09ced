//! The bounded dynamic programme: for every size of part that can be reached, the best vectors of
//! counts that can be cut from it.
//!
//! Two questions are put to it. *What fits?* keeps the maximal vectors (the antichain), clipped at
//! what is wanted. *With how few parts?* keeps vectors with the number of parts they leave on the
//! table, pieces and leftovers together (a sheet cut into `n` parts took `n - 1` cuts), and drops
//! whatever leaves more leftovers than asked; a piece too many is a leftover.

use super::counts::{Counts, Lanes};
use super::points::{Axis, Cuts, Line, most_around};
use super::problem::Problem;
use std::cell::Cell;

/// One thing that can be cut from a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Entry {
    pub(crate) counts: Counts,
    /// Area of the counts.
    pub(crate) area: i64,
    /// Parts it is cut into, where parts are counted; else 0.
    pub(crate) parts: u32,
    /// Pieces in the counts, kept beside them: taking counts apart is slow.
    pieces: u32,
}

/// What is asked of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Question {
    /// The most leftovers, where parts are counted.
    pub(crate) leftovers: Option<u32>,
    /// The least area of pieces that the whole sheet must give.
    pub(crate) area: i64,
    /// The most entries kept of one part, where not all are kept.
    pub(crate) beam: Option<usize>,
    /// Whether the last cell, the whole sheet, is filled too.
    pub(crate) root: bool,
}

/// Work that may still be done: pairs of entries met, and entries kept. A count, never a time, so
/// that the same input gives the same plan on any machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Budget<'m> {
    /// Pairs of entries that may still be put together.
    pub pairs: u64,
    /// Entries that one table may hold (32 bytes each).
    pub entries: usize,
    /// Where it is noted what was used, if anybody asks.
    pub meter: Option<&'m Cell<Spent>>,
}

/// What a search has used so far.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Spent {
    /// States: entries of all tables.
    pub states: u64,
    /// Bytes of the largest table.
    pub bytes: u64,
}

impl Budget<'_> {
    /// The same, with nothing noted.
    pub(crate) const fn unmetered(self) -> Budget<'static> {
        Budget { pairs: self.pairs, entries: self.entries, meter: None }
    }

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

/// What all tables of one sheet stand on: the sizes of part that can be reached, and how much can
/// lie outside a part of each size.
#[derive(Debug)]
pub(crate) struct Ground<'a> {
    pub(crate) problem: &'a Problem,
    pub(crate) lanes: &'a Lanes,
    pub(crate) across: Line,
    pub(crate) up: Line,
    /// For a part of each size, the most area of pieces, were there enough of them, that the rest
    /// of the sheet around it can hold.
    outside: Vec<i64>,
    areas: Vec<i64>,
}

impl<'a> Ground<'a> {
    /// The ground of a problem; none where the sheet has too many points, too large an area, or
    /// more ways to cut than `most`.
    pub(crate) fn new(problem: &'a Problem, lanes: &'a Lanes, cuts: Cuts, most: usize) -> Option<Self> {
        i64::try_from(problem.area()).ok().filter(|area| *area < i64::MAX / 4)?;
        let across = Line::new(problem, Axis::Across, cuts)?;
        let up = Line::new(problem, Axis::Up, cuts)?;
        let ways = |line: &Line| line.partings.iter().map(Vec::len).sum::<usize>();
        if ways(&across) * up.classes.len() + ways(&up) * across.classes.len() > most {
            return None;
        }
        let areas = problem.kinds.iter().map(|kind| i64::try_from(kind.area()).unwrap_or(i64::MAX / 4)).collect();
        let mut ground = Self { problem, lanes, across, up, outside: Vec::new(), areas };
        ground.find_most_outside();
        Some(ground)
    }

    /// The classes of the whole sheet.
    pub(crate) const fn sheet(&self) -> (usize, usize) {
        (self.across.classes.len() - 1, self.up.classes.len() - 1)
    }

    /// Whether a part of this class is a piece of this kind just as it is.
    fn is_piece(&self, kind: usize, x: usize, y: usize) -> bool {
        let size = (self.across.classes[x], self.up.classes[y]);
        let kind = &self.problem.kinds[kind];
        kind.wanted > 0 && kind.ways().any(|(width, height, _)| (width, height) == size)
    }

    fn area(&self, counts: Counts) -> i64 {
        self.areas.iter().enumerate().map(|(kind, area)| area * i64::from(self.lanes.count(counts, kind))).sum()
    }

    /// The programme of Gilmore and Gomory (1966, from memory) with areas for values, then the same
    /// from the sheet down to its parts.
    fn find_most_outside(&mut self) {
        let (columns, rows) = (self.across.classes.len(), self.up.classes.len());
        let mut inside = vec![0_i64; columns * rows];
        for x in 0..columns {
            for y in 0..rows {
                let pieces = (0..self.problem.kinds.len()).filter(|&kind| self.is_piece(kind, x, y));
                let mut best = pieces.map(|kind| self.areas[kind]).max().unwrap_or(0);
                for way in &self.across.partings[x] {
                    best = best.max(inside[way.first * rows + y] + inside[way.rest * rows + y]);
                }
                let column = &inside[x * rows..(x + 1) * rows];
                for way in &self.up.partings[y] {
                    best = best.max(column[way.first] + column[way.rest]);
                }
                inside[x * rows + y] = best;
            }
        }
        self.outside = most_around(
            (columns, rows),
            &inside,
            |x| self.across.partings[x].iter().map(|way| (way.first, way.rest)),
            |y| self.up.partings[y].iter().map(|way| (way.first, way.rest)),
        );
    }
}

/// The filled table.
#[derive(Debug)]
pub(crate) struct Table<'a> {
    pub(crate) ground: &'a Ground<'a>,
    question: Question,
    /// Where the entries of a cell lie in `entries`.
    cells: Vec<(usize, usize)>,
    entries: Vec<Entry>,
    complete: bool,
}

impl<'a> Table<'a> {
    /// Fills the table.
    pub(crate) fn fill(ground: &'a Ground<'a>, question: Question, budget: &mut Budget) -> Self {
        let mut table = Self {
            ground,
            question,
            cells: vec![(0, 0); ground.across.classes.len() * ground.up.classes.len()],
            entries: Vec::new(),
            complete: ground.lanes.whole() && question.beam.is_none(),
        };
        table.fill_cells(budget);
        if let Some(meter) = budget.meter {
            let Spent { states, bytes } = meter.get();
            let own = size_of_val(table.entries.as_slice()) + size_of_val(table.cells.as_slice());
            meter.set(Spent { states: states + table.entries.len() as u64, bytes: bytes.max(own as u64) });
        }
        table
    }

    /// Whether nothing was dropped for want of budget or room, so that not finding is a proof.
    pub(crate) const fn complete(&self) -> bool {
        self.complete
    }

    pub(crate) fn front(&self, x: usize, y: usize) -> &[Entry] {
        let (start, end) = self.cells[x * self.ground.up.classes.len() + y];
        &self.entries[start..end]
    }

    /// Two entries side by side, if the pair is worth keeping in a part that must give so much.
    #[inline]
    fn join(&self, one: &Entry, other: &Entry, least: i64) -> Option<Entry> {
        let lanes = self.ground.lanes;
        let parts = one.parts + other.parts;
        let too_many = |pieces: u32| self.question.leftovers.is_some_and(|most| parts > pieces + most);
        let pieces = one.pieces + other.pieces;
        // Clipping only makes pieces into leftovers.
        if too_many(pieces) {
            return None;
        }
        let counts = lanes.sum(one.counts, other.counts);
        if counts == one.counts.wrapping_add(other.counts) {
            return Some(Entry { counts, area: one.area + other.area, parts, pieces });
        }
        let area = self.ground.area(counts);
        if area < least {
            return None;
        }
        let pieces = lanes.total(counts);
        (!too_many(pieces)).then_some(Entry { counts, area, parts, pieces })
    }

    fn fill_cells(&mut self, budget: &mut Budget) {
        let (columns, rows) = (self.ground.across.classes.len(), self.ground.up.classes.len());
        let mut kept: Vec<Entry> = Vec::new();
        for x in 0..columns {
            for y in 0..rows {
                if !self.question.root && (x, y) == self.ground.sheet() {
                    continue;
                }
                kept.clear();
                let fine = self.fill_cell(x, y, &mut kept, budget);
                kept.sort_unstable_by_key(|entry| (std::cmp::Reverse(entry.area), entry.parts, entry.counts));
                if let Some(beam) = self.question.beam {
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
        let ground = self.ground;
        let cell = x * ground.up.classes.len() + y;
        if ground.outside[cell] < 0 {
            return true;
        }
        let least = self.question.area - ground.outside[cell];
        let counting = u32::from(self.question.leftovers.is_some());
        for kind in 0..ground.problem.kinds.len() {
            let one = ground.lanes.one(kind);
            if ground.is_piece(kind, x, y) && ground.areas[kind] >= least {
                self.keep(kept, Entry { counts: one, area: ground.areas[kind], parts: counting, pieces: 1 });
            }
        }
        if least <= 0 && self.question.leftovers != Some(0) {
            self.keep(kept, Entry { counts: 0, area: 0, parts: counting, pieces: 0 });
        }
        for parting in &ground.across.partings[x] {
            if !self.meet(self.front(parting.first, y), self.front(parting.rest, y), least, kept, budget) {
                return false;
            }
        }
        for parting in &ground.up.partings[y] {
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
        // Fronts stand in order of area, the largest first, so the first that is too small ends it.
        let mut met = 1_u64;
        for one in ones {
            if one.area + others[0].area < least {
                break;
            }
            for other in others {
                met += 1;
                if one.area + other.area < least {
                    break;
                }
                if let Some(entry) = self.join(one, other, least) {
                    met += kept.len() as u64 / 16;
                    self.keep(kept, entry);
                }
            }
        }
        budget.spend(met)
    }

    /// Keeps an entry unless one that is kept is as good, and drops those it is better than.
    #[inline]
    fn keep(&self, kept: &mut Vec<Entry>, entry: Entry) {
        for old in kept.iter() {
            if old.parts <= entry.parts && self.ground.lanes.covers(old.counts, entry.counts) {
                return;
            }
        }
        kept.retain(|old| !(entry.parts <= old.parts && self.ground.lanes.covers(entry.counts, old.counts)));
        kept.push(entry);
    }

    /// The fewest parts in which the whole sheet gives `target`; 0 where parts are not counted.
    pub(crate) fn reaches(&self, target: Counts, budget: &mut Budget) -> Option<u32> {
        let ground = self.ground;
        let (x, y) = ground.sheet();
        let mut best: Option<u32> = None;
        let mut note = |entry: Entry| {
            if ground.lanes.covers(entry.counts, target) && best.is_none_or(|parts| entry.parts < parts) {
                best = Some(entry.parts);
            }
        };
        if self.question.root {
            self.front(x, y).iter().copied().for_each(&mut note);
            return best;
        }
        let least = ground.area(target);
        let parts = u32::from(self.question.leftovers.is_some());
        for kind in (0..ground.problem.kinds.len()).filter(|&kind| ground.is_piece(kind, x, y)) {
            note(Entry { counts: ground.lanes.one(kind), area: ground.areas[kind], parts, pieces: 1 });
        }
        let sides = ground.across.partings[x].iter().map(|p| (self.front(p.first, y), self.front(p.rest, y)));
        let ends = ground.up.partings[y].iter().map(|p| (self.front(x, p.first), self.front(x, p.rest)));
        for (ones, others) in sides.chain(ends) {
            let mut met = 1;
            for one in ones {
                for other in others {
                    met += 1;
                    if one.area + other.area < least {
                        break;
                    }
                    if let Some(entry) = self.join(one, other, least) {
                        note(entry);
                    }
                }
            }
            if !budget.spend(met) {
                break;
            }
        }
        best
    }
}
