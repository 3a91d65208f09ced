//! The order of a hand: takes the tree of one sheet, gives its parts and the printed rows.
//!
//! Equal slices come off one after another at one measure; all loose parts that are cut at the
//! same measure from the same edge share a row; and the measures follow one another so that the
//! measure is changed as seldom as the tree allows, the wide ones first.

use std::collections::{BTreeMap, BTreeSet};

use super::demand::FixedCut;
use super::plan::{CutRow, PartId};
use super::search::points::Axis;
use super::search::problem::Hand;
use super::search::tree::{Body, Node, can_be_cut_one_by_one};
use crate::geometry::{Edge, Rect};
use crate::length::{Length, Unit};

/// A part of a sheet in the order it comes about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Made {
    /// The part it was cut from.
    pub parent: Option<PartId>,
    /// Where it lies.
    pub rect: Rect,
    /// What becomes of it.
    pub end: End,
}

/// What becomes of a part, before pieces have names.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum End {
    /// Cut further.
    Divided,
    /// A piece of a kind, on its side or not.
    Piece(usize, bool),
    /// Left over.
    Leftover,
    /// The printed edge strip.
    EdgeStrip,
}

/// One sheet as a hand cuts it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Ordered {
    /// Its parts, the whole sheet first.
    pub parts: Vec<Made>,
    /// The rows.
    pub cuts: Vec<CutRow>,
}

impl Ordered {
    /// Rows whose measure differs from the row before.
    #[must_use]
    pub fn changes(&self) -> u64 {
        let mut last = None;
        let mut changes = 0;
        for row in &self.cuts {
            changes += u64::from(last != Some(row.measure));
            last = Some(row.measure);
        }
        changes
    }
}

/// The sheet that trees lie on, in nanometres.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sheet {
    /// The whole of it.
    pub whole: Rect,
    /// The edge strip and how wide it is.
    pub strip: Option<(Edge, i64)>,
    /// Rows that come first, when the edge strip is off.
    pub fixed: Vec<FixedCut>,
    /// What these part the sheet into, in the order that it comes off, the rest last: the trees' own
    /// sizes.
    pub sections: Vec<Rect>,
    /// The unit that measures are printed in.
    pub unit: Unit,
}

/// Orders the cuts of one sheet, given a tree for each of its sections.
#[must_use]
pub fn order(nodes: &[&Node], sheet: &Sheet, hand: Hand) -> Ordered {
    let mut chains = Vec::new();
    let firsts: Vec<Option<usize>> = nodes.iter().map(|node| collect(node, &mut chains)).collect();
    let phases = phases(&chains, &firsts, hand);
    Bench::new(nodes, &firsts, sheet, hand, chains).cut(&phases)
}

/// Parts side by side that a hand cuts off one by one.
#[derive(Debug, Clone)]
struct Chain<'n> {
    axis: Axis,
    /// Slices of equal length, the longest first.
    groups: Vec<Group<'n>>,
    waste: Option<&'n Node>,
}

#[derive(Debug, Clone)]
struct Group<'n> {
    length: i64,
    /// Whether one of its slices holds no piece just so long.
    odd: bool,
    members: Vec<Member<'n>>,
}

#[derive(Debug, Clone, Copy)]
struct Member<'n> {
    node: &'n Node,
    /// The chain it is cut into, if it is.
    chain: Option<usize>,
}

/// Collects the chains of a tree, parents first; gives the index of the node's own.
fn collect<'n>(node: &'n Node, chains: &mut Vec<Chain<'n>>) -> Option<usize> {
    let Body::Split { axis, parts } = &node.body else { return None };
    let here = chains.len();
    chains.push(Chain { axis: *axis, groups: Vec::new(), waste: None });
    let mut groups: BTreeMap<std::cmp::Reverse<i64>, Vec<Member<'n>>> = BTreeMap::new();
    let mut waste = None;
    for part in parts {
        if part.is_waste() {
            waste = Some(part);
        } else {
            let chain = collect(part, chains);
            groups.entry(std::cmp::Reverse(part.along(*axis))).or_default().push(Member { node: part, chain });
        }
    }
    chains[here].groups = groups
        .into_iter()
        .map(|(length, members)| {
            let own = |member: &Member<'_>| {
                member.node.leaves().iter().any(|leaf| !leaf.is_waste() && leaf.along(*axis) == length.0)
            };
            Group { length: length.0, odd: !members.iter().all(own), members }
        })
        .collect();
    chains[here].waste = waste;
    Some(here)
}

/// How far one chain is cut: whether it is loose, and how many slices of each group it still holds.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
struct Progress {
    loose: bool,
    left: Vec<u32>,
}

/// One row's work on one chain: which group, how many slices, at which measure.
#[derive(Debug, Clone, Copy)]
struct Job {
    group: usize,
    slices: u32,
    measure: i64,
    /// Measured from the opposite edge, since the slice itself is under the least measure.
    opposite: bool,
}

fn length_left(chain: &Chain<'_>, progress: &Progress) -> i64 {
    let slices: i64 = chain.groups.iter().zip(&progress.left).map(|(g, &n)| g.length * i64::from(n)).sum();
    slices + chain.waste.map_or(0, |waste| waste.along(chain.axis))
}

/// What may be done next on a chain.
fn jobs(chain: &Chain<'_>, progress: &Progress, hand: Hand) -> Vec<Job> {
    let pieces: u32 = progress.left.iter().sum();
    if !progress.loose || pieces + u32::from(chain.waste.is_some()) < 2 {
        return Vec::new();
    }
    let mut all = Vec::new();
    for (group, slices) in chain.groups.iter().enumerate() {
        let held = progress.left[group];
        if held == 0 {
            continue;
        }
        let thin = slices.length < hand.least;
        // The last slice of all needs no cut of its own.
        let wanted = if thin {
            1
        } else if held == pieces && chain.waste.is_none() {
            held - 1
        } else {
            held
        };
        let total = length_left(chain, progress);
        let mut left = total;
        let fine = (0..wanted).all(|_| {
            left -= slices.length;
            hand.allows(slices.length, left)
        });
        let mut after: Vec<i64> = Vec::new();
        for (other, group_after) in chain.groups.iter().enumerate() {
            let count = progress.left[other] - if other == group { wanted } else { 0 };
            after.extend(std::iter::repeat_n(group_after.length, count as usize));
        }
        after.extend(chain.waste.map(|waste| waste.along(chain.axis)));
        // Where no order at all keeps the rules the caller works without them.
        if fine && (after.len() < 2 || can_be_cut_one_by_one(&after, chain.waste.is_some(), Some(hand))) {
            let measure = if thin { total - slices.length } else { slices.length };
            all.push(Job { group, slices: wanted, measure, opposite: thin });
        }
    }
    all
}

/// Carries out a job: what comes loose by it is loose.
fn carry_out(chains: &[Chain<'_>], state: &mut [Progress], chain: usize, job: Job) {
    let members = &chains[chain].groups[job.group].members;
    let total = members.len();
    let before = state[chain].left[job.group] as usize;
    let first = total - before;
    for member in &members[first..first + job.slices as usize] {
        if let Some(inner) = member.chain {
            state[inner].loose = true;
        }
    }
    state[chain].left[job.group] -= job.slices;
    if chains[chain].waste.is_none() && state[chain].left.iter().sum::<u32>() == 1 {
        let group = state[chain].left.iter().position(|&n| n == 1).unwrap_or(0);
        state[chain].left[group] = 0;
        if let Some(inner) = chains[chain].groups[group].members.last().and_then(|member| member.chain) {
            state[inner].loose = true;
        }
    }
}

/// States looked at before the first sequence that works is taken.
const MOST_STATES: usize = 2_000;

/// How little a hand likes a sequence: slices cut at a measure that none of their pieces has, then
/// the measures, short ones being easier to set.
type Dislike = (u32, i64);

/// The measures in order, such that the measure is changed as seldom as can be: breadth first over
/// the sets of cuts done; of sequences of one length the one a hand dislikes least, wide measures
/// before narrow ones.
fn phases(chains: &[Chain<'_>], firsts: &[Option<usize>], hand: Hand) -> Vec<i64> {
    let mut start: Vec<Progress> = chains
        .iter()
        .map(|chain| Progress {
            loose: false,
            left: chain.groups.iter().map(|g| u32::try_from(g.members.len()).unwrap_or(u32::MAX)).collect(),
        })
        .collect();
    for &first in firsts.iter().flatten() {
        start[first].loose = true;
    }
    let mut level: Vec<(Vec<Progress>, Dislike, Vec<i64>)> = vec![(start, (0, 0), Vec::new())];
    let mut seen: BTreeSet<Vec<Progress>> = BTreeSet::new();
    loop {
        let mut next: Vec<(Vec<Progress>, Dislike, Vec<i64>)> = Vec::new();
        // Where in `next` each state stands.
        let mut places: BTreeMap<Vec<Progress>, usize> = BTreeMap::new();
        let mut ends: Vec<(Dislike, Vec<i64>)> = Vec::new();
        'level: for (state, dislike, done) in level {
            let mut measures: BTreeSet<std::cmp::Reverse<i64>> = BTreeSet::new();
            for (chain, progress) in chains.iter().zip(&state) {
                measures.extend(jobs(chain, progress, hand).iter().map(|job| std::cmp::Reverse(job.measure)));
            }
            if measures.is_empty() {
                ends.push((dislike, done));
                continue;
            }
            for measure in measures {
                let mut after = state.clone();
                let odd = run(chains, &mut after, measure.0, hand);
                let dislike = (dislike.0 + odd, dislike.1 + measure.0);
                let longer = || done.iter().copied().chain([measure.0]).collect::<Vec<i64>>();
                if let Some(&place) = places.get(&after) {
                    if dislike < next[place].1 {
                        next[place].1 = dislike;
                        next[place].2 = longer();
                    }
                } else if seen.insert(after.clone()) {
                    places.insert(after.clone(), next.len());
                    next.push((after, dislike, longer()));
                }
                if seen.len() > MOST_STATES && !next.is_empty() {
                    break 'level;
                }
            }
        }
        // The first of equals: `min_by_key` keeps it.
        if let Some((_, done)) = ends.into_iter().min_by_key(|(dislike, _)| *dislike) {
            return done;
        }
        if seen.len() > MOST_STATES {
            // Only the likeliest sequence is followed from here.
            let likeliest = next.into_iter().min_by_key(|(_, dislike, _)| *dislike);
            next = likeliest.into_iter().collect();
            seen.clear();
        }
        level = next;
    }
}

/// Does everything that can be done at one measure; gives the number of slices whose own pieces are
/// none of them so long.
fn run(chains: &[Chain<'_>], state: &mut [Progress], measure: i64, hand: Hand) -> u32 {
    let mut odd = 0;
    let mut busy = true;
    while busy {
        busy = false;
        for chain in 0..chains.len() {
            let job = jobs(&chains[chain], &state[chain], hand).into_iter().find(|job| job.measure == measure);
            if let Some(job) = job {
                if chains[chain].groups[job.group].odd || job.opposite {
                    odd += job.slices;
                }
                carry_out(chains, state, chain, job);
                busy = true;
            }
        }
    }
    odd
}

/// The table with the sheet on it.
struct Bench<'n> {
    chains: Vec<Chain<'n>>,
    state: Vec<Progress>,
    /// The part that each chain's rest is now, where it is loose.
    rests: Vec<Option<PartId>>,
    made: Ordered,
    hand: Hand,
    unit: Unit,
    next: u32,
}

impl<'n> Bench<'n> {
    fn new(nodes: &[&'n Node], firsts: &[Option<usize>], sheet: &Sheet, hand: Hand, chains: Vec<Chain<'n>>) -> Self {
        let state = chains
            .iter()
            .map(|chain| Progress {
                loose: false,
                left: chain.groups.iter().map(|g| u32::try_from(g.members.len()).unwrap_or(u32::MAX)).collect(),
            })
            .collect();
        let rests = vec![None; chains.len()];
        let made = Ordered { parts: Vec::new(), cuts: Vec::new() };
        let mut bench = Self { chains, state, rests, made, hand, unit: sheet.unit, next: 1 };
        let mut part = bench.part(None, sheet.whole, End::Divided);
        if let Some((edge, width)) = sheet.strip {
            let whole = part;
            let (strip, usable) = sheet.whole.parted(edge, width);
            let strip = bench.part(Some(whole), strip, End::EdgeStrip);
            part = bench.part(Some(whole), usable, End::Divided);
            let side = if edge.is_side() { usable.width() } else { usable.height() };
            if width < hand.least {
                bench.row(vec![whole], edge.opposite(), side, 1, vec![part, strip]);
            } else {
                bench.row(vec![whole], edge, width, 1, vec![strip, part]);
            }
        }
        let mut sections = Vec::new();
        for cut in &sheet.fixed {
            let whole = part;
            let mut rest = bench.made.parts[whole.0].rect;
            let mut gives = Vec::new();
            for _ in 0..cut.cuts {
                let (slice, left) = rest.parted(cut.from, cut.measure);
                gives.push(bench.part(Some(whole), slice, End::Divided));
                rest = left;
            }
            part = bench.part(Some(whole), rest, End::Divided);
            sections.extend(&gives);
            gives.push(part);
            bench.row(vec![whole], cut.from, cut.measure, cut.cuts, gives);
        }
        sections.push(part);
        for ((node, &first), section) in nodes.iter().zip(firsts).zip(sections) {
            bench.lay(node, first, section);
        }
        bench
    }

    fn part(&mut self, parent: Option<PartId>, rect: Rect, end: End) -> PartId {
        self.made.parts.push(Made { parent, rect, end });
        PartId(self.made.parts.len() - 1)
    }

    fn row(&mut self, parts: Vec<PartId>, from: Edge, measure: i64, cuts: u32, gives: Vec<PartId>) {
        let measure = Length::new(measure, self.unit);
        self.made.cuts.push(CutRow { n: self.next, parts, from, measure, cuts, gives });
        self.next += cuts;
    }

    /// Says what a part that has come loose is.
    fn lay(&mut self, node: &Node, chain: Option<usize>, part: PartId) {
        self.made.parts[part.0].end = match node.body {
            Body::Piece { kind, lying } => End::Piece(kind, lying),
            Body::Waste => End::Leftover,
            Body::Split { .. } => End::Divided,
        };
        if let Some(chain) = chain {
            self.rests[chain] = Some(part);
            self.state[chain].loose = true;
        }
    }

    fn cut(mut self, phases: &[i64]) -> Ordered {
        for &measure in phases {
            while self.cut_rows(measure) {}
        }
        self.made
    }

    /// One row for each edge at this measure over all parts that are loose now.
    fn cut_rows(&mut self, measure: i64) -> bool {
        let mut found: BTreeMap<(Axis, bool), Vec<(usize, Job)>> = BTreeMap::new();
        for (index, chain) in self.chains.iter().enumerate() {
            let job = jobs(chain, &self.state[index], self.hand).into_iter().find(|job| job.measure == measure);
            if let Some(job) = job {
                found.entry((chain.axis, job.opposite)).or_default().push((index, job));
            }
        }
        // Most parts first: a row shared by many is read once.
        let Some(((axis, opposite), work)) =
            found.into_iter().max_by_key(|(key, work)| (work.len(), std::cmp::Reverse(*key)))
        else {
            return false;
        };
        let from = match axis {
            Axis::Across => Edge::Left,
            Axis::Up => Edge::Top,
        };
        let from = if opposite { from.opposite() } else { from };
        let (mut parts, mut gives, mut cuts) = (Vec::new(), Vec::new(), 0);
        for (chain, job) in work {
            let Some(part) = self.rests[chain] else { continue };
            parts.push(part);
            cuts += job.slices;
            gives.extend(self.cut_part(chain, job, part, from));
        }
        self.row(parts, from, measure, cuts, gives);
        true
    }

    fn cut_part(&mut self, chain: usize, job: Job, part: PartId, from: Edge) -> Vec<PartId> {
        let group = &self.chains[chain].groups[job.group];
        let first = group.members.len() - self.state[chain].left[job.group] as usize;
        let taken: Vec<Member<'n>> = group.members[first..first + job.slices as usize].to_vec();
        let mut rect = self.made.parts[part.0].rect;
        let mut gives = Vec::new();
        for member in taken {
            let (slice, rest) = rect.parted(from, job.measure);
            // Measured from the opposite edge it is the rest that falls off as the slice.
            let (slice, rest) = if job.opposite { (rest, slice) } else { (slice, rest) };
            let slice = self.part(Some(part), slice, End::Leftover);
            self.lay(member.node, member.chain, slice);
            gives.push(slice);
            rect = rest;
        }
        self.state[chain].left[job.group] -= job.slices;
        let rest = self.part(Some(part), rect, End::Divided);
        if job.opposite {
            gives.insert(0, rest);
        } else {
            gives.push(rest);
        }
        let left = self.state[chain].left.clone();
        match (left.iter().sum::<u32>(), self.chains[chain].waste) {
            (0, Some(waste)) => self.lay(waste, None, rest),
            (1, None) => {
                let last = left.iter().position(|&n| n == 1).unwrap_or(0);
                self.state[chain].left[last] = 0;
                if let Some(member) = self.chains[chain].groups[last].members.last().copied() {
                    self.lay(member.node, member.chain, rest);
                }
            }
            _ => self.rests[chain] = Some(rest),
        }
        gives
    }
}
