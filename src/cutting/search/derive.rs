//! From a filled table back to trees of cuts: of the many ways to reach the same counts with the
//! same number of parts, those that ask for few different measures and leave a large leftover.

use super::counts::Counts;
use super::points::Axis;
use super::table::{Entry, Table};
use super::tree::Tree;
use std::cmp::Reverse;
use std::collections::HashMap;
use std::rc::Rc;

/// A way to cut a part, with what speaks for it.
#[derive(Debug, Clone)]
pub(crate) struct Draft {
    pub(crate) tree: Rc<Tree>,
    /// Which of [`Drafts::measures`] are set.
    measures: u64,
    /// Area of the largest leftover that is worth keeping.
    largest: i64,
    /// How often the direction of cutting changes on the way to the deepest piece.
    levels: u32,
    /// Parts it ends in.
    pub(crate) parts: u32,
}

impl Draft {
    /// Less is better.
    fn score(&self) -> (u32, u32, u32, Reverse<i64>) {
        (self.parts, self.measures.count_ones(), self.levels.max(3), Reverse(self.largest))
    }
}

/// Drafts kept of one part.
const KEPT: usize = 8;

/// Drafts kept of the whole sheet, which are then put in the order of a hand and compared so.
const KEPT_OF_SHEET: usize = 24;

/// What a draft of a part is remembered by: width, height, counts needed, most parts.
type Place = (i64, i64, Counts, u32);

/// Drafts of the parts of one sheet.
#[derive(Debug)]
pub(crate) struct Drafts<'t, 'a> {
    table: &'t Table<'a>,
    /// Never walked over, so its order is of no account.
    known: HashMap<Place, Rc<Vec<Draft>>>,
    measures: Vec<i64>,
    /// Ways that may still be looked at before the first one is taken everywhere.
    looks: u64,
}

impl<'t, 'a> Drafts<'t, 'a> {
    /// Drafts from a table, looking at so many ways at most.
    pub(crate) fn new(table: &'t Table<'a>, looks: u64) -> Self {
        Self { table, known: HashMap::new(), measures: Vec::new(), looks }
    }

    /// Ways to cut the whole sheet, the best first. `parts` is what the table says it takes.
    pub(crate) fn of_sheet(&mut self, target: Counts, parts: u32) -> Vec<Draft> {
        let problem = self.table.ground.problem;
        let drafts = self.of(problem.width, problem.height, target, parts);
        drafts.as_ref().clone()
    }

    fn of(&mut self, width: i64, height: i64, need: Counts, parts: u32) -> Rc<Vec<Draft>> {
        if let Some(known) = self.known.get(&(width, height, need, parts)) {
            return Rc::clone(known);
        }
        let drafts = Rc::new(self.find(width, height, need, parts));
        self.known.insert((width, height, need, parts), Rc::clone(&drafts));
        drafts
    }

    fn find(&mut self, width: i64, height: i64, need: Counts, parts: u32) -> Vec<Draft> {
        if need == 0 {
            let short = width.min(height);
            let usable = self.table.ground.problem.hand.is_none_or(|hand| short >= hand.hold);
            let largest = if usable { width * height } else { 0 };
            return vec![Draft { tree: Rc::new(Tree::Waste), measures: 0, largest, levels: 0, parts: 1 }];
        }
        let lanes = self.table.ground.lanes;
        if lanes.total(need) == 1 {
            for (kind, wanted) in self.table.ground.problem.kinds.iter().enumerate() {
                if lanes.count(need, kind) == 1
                    && let Some((_, _, lying)) = wanted.ways().find(|(w, h, _)| (*w, *h) == (width, height))
                {
                    let tree = Rc::new(Tree::Piece(kind, lying));
                    return vec![Draft { tree, measures: 0, largest: 0, levels: 0, parts: 1 }];
                }
            }
        }
        let (Some(x), Some(y)) = (self.table.ground.across.class(width), self.table.ground.up.class(height)) else {
            return Vec::new();
        };
        let mut best: Vec<Draft> = Vec::new();
        let table = self.table;
        for axis in [Axis::Up, Axis::Across] {
            let line = if axis == Axis::Across { &table.ground.across } else { &table.ground.up };
            let here = if axis == Axis::Across { x } else { y };
            // Long first parts first: the first way found then has its large pieces in front.
            for parting in line.partings[here].iter().rev() {
                let (ones, others) = match axis {
                    Axis::Across => (table.front(parting.first, y), table.front(parting.rest, y)),
                    Axis::Up => (table.front(x, parting.first), table.front(x, parting.rest)),
                };
                for one in ones {
                    for other in others {
                        if self.looks == 0 && !best.is_empty() {
                            return best;
                        }
                        if !self.serves(one, other, need, parts) {
                            continue;
                        }
                        self.looks = self.looks.saturating_sub(1);
                        let rest_is_sum = line.is_sum(parting.rest);
                        self.add(&mut best, (width, height), axis, parting.at, rest_is_sum, (one, other), need);
                    }
                }
            }
        }
        best
    }

    fn serves(&self, one: &Entry, other: &Entry, need: Counts, parts: u32) -> bool {
        one.parts + other.parts <= parts
            && self.table.ground.lanes.covers(self.table.ground.lanes.sum(one.counts, other.counts), need)
    }

    #[expect(clippy::too_many_arguments, reason = "one cut of one part")]
    fn add(
        &mut self,
        best: &mut Vec<Draft>,
        (width, height): (i64, i64),
        axis: Axis,
        at: i64,
        rest_is_sum: bool,
        (one, other): (&Entry, &Entry),
        need: Counts,
    ) {
        let first_need = self.table.ground.lanes.lesser(one.counts, need);
        let rest_need = need - first_need;
        let (first, rest) = match axis {
            Axis::Across => ((at, height), (width - at, height)),
            Axis::Up => ((width, at), (width, height - at)),
        };
        let firsts = self.of(first.0, first.1, first_need, one.parts);
        let rests = self.of(rest.0, rest.1, rest_need, other.parts);
        let length = if axis == Axis::Across { width } else { height };
        let problem = self.table.ground.problem;
        let whole = (width, height) == (problem.width, problem.height);
        let most = if whole { KEPT_OF_SHEET } else { KEPT };
        for first in firsts.iter() {
            for rest in rests.iter() {
                let together = first.measures | rest.measures;
                let mut measure = self.measure(at);
                // The other part may be measured instead, from the opposite edge.
                if (first_need == 0 || (together & measure == 0 && rest_is_sum)) && rest_need != 0 {
                    let opposite = self.measure(length - at);
                    if first_need == 0 || together & opposite != 0 {
                        measure = opposite;
                    }
                }
                let deeper = |draft: &Draft| match draft.tree.as_ref() {
                    Tree::Cut { axis: same, .. } if *same == axis => draft.levels,
                    _ => draft.levels + 1,
                };
                let draft = Draft {
                    measures: together | measure,
                    largest: first.largest.max(rest.largest),
                    levels: deeper(first).max(deeper(rest)),
                    parts: first.parts + rest.parts,
                    tree: Rc::new(Tree::Cut { axis, at, first: Rc::clone(&first.tree), rest: Rc::clone(&rest.tree) }),
                };
                keep(best, draft, most);
            }
        }
    }

    fn measure(&mut self, length: i64) -> u64 {
        let place = self.measures.iter().position(|&known| known == length).unwrap_or_else(|| {
            self.measures.push(length);
            self.measures.len() - 1
        });
        // Past 64 measures the last bit stands for all others: only a preference is at stake.
        1 << place.min(63)
    }
}

/// Keeps the best few drafts that differ in what speaks for them.
fn keep(best: &mut Vec<Draft>, draft: Draft, most: usize) {
    let alike = |old: &Draft| {
        old.measures & draft.measures == old.measures
            && old.parts <= draft.parts
            && old.levels.max(3) <= draft.levels.max(3)
            && old.largest >= draft.largest
    };
    if best.iter().any(alike) {
        return;
    }
    let place = best.partition_point(|old| old.score() <= draft.score());
    if place < most {
        best.insert(place, draft);
        best.truncate(most);
    }
}
