//! All edge-to-edge patterns of small sheets, counted out: what each sheet can give and in how few
//! parts, and from that the best of all ways to cut several sheets of one or two papers. Lengths are
//! whole units; every cut at a whole unit is tried. Nothing here knows the planner.

use std::collections::{BTreeMap, BTreeSet};

/// Counts of every kind, a byte each.
type Counts = u32;

/// The top bit of every byte.
const TOPS: u32 = 0x8080_8080;

/// A kind of piece, in units.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Kind {
    pub(super) width: usize,
    pub(super) height: usize,
}

/// What a hand can do, in units: a slice under `narrow` needs `hold` beside it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Rules {
    pub(super) narrow: usize,
    pub(super) hold: usize,
}

impl Rules {
    const fn allow(self, one: usize, other: usize) -> bool {
        (one >= self.narrow && other >= self.narrow) || one >= self.hold || other >= self.hold
    }
}

/// Equal sheets of a paper, the edge strip off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Stack {
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) count: usize,
    /// How wide the edge strip is, and at which edge: 0 and 1 are sides.
    pub(super) strip: Option<(usize, usize)>,
}

/// One paper: its sheets, how many of every kind are wanted, and which kinds may lie on their side.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Paper {
    pub(super) stacks: Vec<Stack>,
    pub(super) wanted: Vec<usize>,
    pub(super) turns: Vec<bool>,
}

/// The best of all plans that give everything.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Best {
    pub(super) sheets: u64,
    pub(super) diagrams: u64,
    pub(super) cuts: u64,
}

/// A sheet cut so: which size of sheet, and what it gives.
type Way = (Stack, Counts);

/// Sets of ways that papers could share, each with the fewest ways and then cuts of a plan that
/// holds them; the empty set stands for any plan.
type Plans = BTreeMap<BTreeSet<Way>, (u64, u64)>;

fn pack(counts: &[usize]) -> Counts {
    counts.iter().enumerate().map(|(kind, &count)| (count as u32) << (8 * kind)).sum()
}

fn within(small: Counts, large: Counts) -> bool {
    ((large | TOPS) - small) & TOPS == TOPS
}

/// How few parts a sheet ends in, by what it gives.
fn parts_of(kinds: &[Kind], turns: &[bool], rules: Rules, size: (usize, usize), caps: Counts) -> BTreeMap<Counts, u8> {
    let (columns, rows) = (size.0 + 1, size.1 + 1);
    let mut cells: Vec<Vec<(Counts, u8)>> = vec![Vec::new(); columns * rows];
    let mut steps = [0_usize; 4];
    let mut length = 1;
    for (kind, step) in steps.iter_mut().enumerate() {
        *step = length;
        length *= ((caps >> (8 * kind)) & 0xff) as usize + 1;
    }
    let place =
        |counts: Counts| (0..4).map(|kind| ((counts >> (8 * kind)) & 0xff) as usize * steps[kind]).sum::<usize>();
    for width in 1..columns {
        for height in 1..rows {
            let mut best: Vec<Option<(Counts, u8)>> = vec![None; length];
            let mut note = |counts: Counts, parts: u8| {
                let known = &mut best[place(counts)];
                if known.is_none_or(|(_, fewest)| parts < fewest) {
                    *known = Some((counts, parts));
                }
            };
            // Left over as it is, or a piece as it is.
            note(0, 1);
            for (kind, piece) in kinds.iter().enumerate() {
                let upright = (piece.width, piece.height) == (width, height);
                let lying = turns[kind] && (piece.height, piece.width) == (width, height);
                if (upright || lying) && within(1 << (8 * kind), caps) {
                    note(1 << (8 * kind), 1);
                }
            }
            let across = (1..=width / 2)
                .filter(|&at| rules.allow(at, width - at))
                .map(|at| (at * rows + height, (width - at) * rows + height));
            let up = (1..=height / 2)
                .filter(|&at| rules.allow(at, height - at))
                .map(|at| (width * rows + at, width * rows + height - at));
            for (one, other) in across.chain(up) {
                for &(some, few) in &cells[one] {
                    for &(more, rest) in &cells[other] {
                        if within(some + more, caps) {
                            note(some + more, few + rest);
                        }
                    }
                }
            }
            cells[width * rows + height] = best.into_iter().flatten().collect();
        }
    }
    cells[size.0 * rows + size.1].iter().copied().collect()
}

/// What each sheet of a paper can give, in how few cuts, an edge strip's cut among them.
fn cuts_of(kinds: &[Kind], rules: Rules, paper: &Paper, turns: &[bool]) -> Vec<BTreeMap<Counts, u64>> {
    let sheets: usize = paper.stacks.iter().map(|stack| stack.count).sum();
    let most: Vec<usize> = paper.wanted.iter().map(|&count| if count == 0 { 0 } else { count + sheets - 1 }).collect();
    paper
        .stacks
        .iter()
        .map(|stack| {
            let off = stack
                .strip
                .is_none_or(|(strip, edge)| rules.allow(strip, if edge < 2 { stack.width } else { stack.height }));
            if !off {
                return BTreeMap::new();
            }
            let parts = parts_of(kinds, turns, rules, (stack.width, stack.height), pack(&most));
            let strip = u64::from(stack.strip.is_some());
            parts.into_iter().map(|(counts, parts)| (counts, u64::from(parts) - 1 + strip)).collect()
        })
        .collect()
}

/// The fewest sheets of a paper that give what is wanted.
fn fewest_sheets(paper: &Paper, given: &[BTreeMap<Counts, u64>]) -> Option<usize> {
    let all = pack(&paper.wanted);
    let mut reached: BTreeMap<Counts, usize> = BTreeMap::from([(0, 0)]);
    for (stack, gives) in paper.stacks.iter().zip(given) {
        for _ in 0..stack.count {
            let mut next = reached.clone();
            for (&before, &sheets) in &reached {
                // What one piece fewer gives is in the list too, so only exact sums are needed.
                for &counts in gives.keys().filter(|&&counts| counts > 0 && within(before + counts, all)) {
                    let known = next.entry(before + counts).or_insert(sheets + 1);
                    *known = (*known).min(sheets + 1);
                }
            }
            reached = next;
        }
    }
    reached.get(&all).copied()
}

/// Every plan of one paper with so many sheets.
struct Walk<'w> {
    /// Stack, counts, cuts, and cuts where the other paper's rules of turning hold too.
    ways: Vec<(usize, Counts, u64, Option<u64>)>,
    stacks: &'w [Stack],
    least: Counts,
    most: Counts,
    chosen: Vec<usize>,
    plans: Plans,
}

impl Walk<'_> {
    fn go(&mut self, from: usize, sheets: usize, sum: Counts) {
        if sheets == 0 {
            if within(self.least, sum) {
                self.note();
            }
            return;
        }
        for way in from..self.ways.len() {
            let (stack, counts, ..) = self.ways[way];
            let used = self.chosen.iter().filter(|&&other| self.ways[other].0 == stack).count();
            if used < self.stacks[stack].count && within(sum + counts, self.most) {
                self.chosen.push(way);
                self.go(way, sheets - 1, sum + counts);
                self.chosen.pop();
            }
        }
    }

    fn note(&mut self) {
        let mut different = self.chosen.clone();
        different.dedup();
        for shared in 0..1_u32 << different.len() {
            let is_shared = |way: &usize| different.iter().position(|d| d == way).is_some_and(|n| shared >> n & 1 == 1);
            let cuts: Option<u64> = self
                .chosen
                .iter()
                .map(|way| if is_shared(way) { self.ways[*way].3 } else { Some(self.ways[*way].2) })
                .sum();
            let Some(cuts) = cuts else { continue };
            let set = different.iter().filter(|way| is_shared(way)).map(|&way| {
                let (stack, counts, ..) = self.ways[way];
                (Stack { count: 0, ..self.stacks[stack] }, counts)
            });
            let cost = (different.len() as u64, cuts);
            let known = self.plans.entry(set.collect()).or_insert(cost);
            *known = (*known).min(cost);
        }
    }
}

/// The best way to cut everything that is wanted from one paper or two: the fewest sheets of each,
/// then the fewest different ways over all sheets, then the fewest cuts; none where the sheets do
/// not suffice. With so many sheets of a paper in use, one fewer of every kind may be spare.
pub(super) fn best(kinds: &[Kind], rules: Rules, papers: &[Paper]) -> Option<Best> {
    let strict: Vec<bool> = (0..kinds.len()).map(|kind| papers.iter().all(|paper| paper.turns[kind])).collect();
    let mut sheets = 0;
    let mut plans: Vec<Plans> = Vec::new();
    for paper in papers.iter().filter(|paper| paper.wanted.iter().any(|&count| count > 0)) {
        let given = cuts_of(kinds, rules, paper, &paper.turns);
        let shared = if strict == paper.turns { given.clone() } else { cuts_of(kinds, rules, paper, &strict) };
        let fewest = fewest_sheets(paper, &given)?;
        let most: Vec<usize> =
            paper.wanted.iter().map(|&count| if count == 0 { 0 } else { count + fewest - 1 }).collect();
        let mut ways = Vec::new();
        for (stack, gives) in given.iter().enumerate() {
            for (&counts, &cuts) in gives.iter().filter(|(counts, _)| **counts > 0) {
                ways.push((stack, counts, cuts, shared[stack].get(&counts).copied()));
            }
        }
        let mut walk = Walk {
            ways,
            stacks: &paper.stacks,
            least: pack(&paper.wanted),
            most: pack(&most),
            chosen: Vec::new(),
            plans: Plans::new(),
        };
        walk.go(0, fewest, 0);
        sheets += fewest as u64;
        plans.push(walk.plans);
    }
    let (diagrams, cuts) = match plans.as_slice() {
        [] => (0, 0),
        [one] => *one.get(&BTreeSet::new())?,
        [one, other, ..] => one
            .iter()
            .filter_map(|(shared, (ways, cuts))| {
                let (others, rest) = other.get(shared)?;
                Some((ways + others - shared.len() as u64, cuts + rest))
            })
            .min()?,
    };
    Some(Best { sheets, diagrams, cuts })
}

/// Whether the sheets of a paper give what is wanted.
pub(super) fn gives(kinds: &[Kind], rules: Rules, paper: &Paper) -> bool {
    fewest_sheets(paper, &cuts_of(kinds, rules, paper, &paper.turns)).is_some()
}
