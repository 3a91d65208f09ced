//! Several sheets: the fewest that give everything wanted, cut in as few different ways as can be.

use super::counts::{Counts, Lanes};
use super::points::Cuts;
use super::problem::{Hand, Kind, Problem};
use super::sheet::{CutSheet, Fit, Limits, cut_sheet};
use super::table::{Ground, Question, Table};

/// Equal sheets at hand.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stack {
    /// Width of each.
    pub width: i64,
    /// Height of each.
    pub height: i64,
    /// How many there are.
    pub count: u32,
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
}

/// Sheets of a stack, what each gives, and how many there are of them.
type Chosen = (usize, Vec<u32>, u32);

/// Sheets cut alike.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Alike {
    /// Index into [`Lot::stacks`].
    pub stack: usize,
    /// How many sheets.
    pub times: u32,
    /// How each is cut.
    pub cut: CutSheet,
    /// What each gives.
    pub counts: Vec<u32>,
}

/// How a lot is cut.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Covered {
    /// The sheets used.
    pub sheets: Vec<Alike>,
    /// No fewer sheets can do.
    pub least_sheets: u32,
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

impl Lot {
    fn problem(&self, stack: usize, counts: &[u32]) -> Problem {
        let Stack { width, height, .. } = self.stacks[stack];
        let kinds = self.kinds.iter().zip(counts).map(|(kind, &wanted)| Kind { wanted, ..*kind }).collect();
        Problem { width, height, kinds, hand: self.hand }
    }

    fn wanted(&self) -> Vec<u32> {
        self.kinds.iter().map(|kind| kind.wanted).collect()
    }

    pub(super) fn area(&self, stack: usize) -> i128 {
        i128::from(self.stacks[stack].width) * i128::from(self.stacks[stack].height)
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
}

/// Finds the fewest sheets.
#[must_use]
pub fn cover(lot: &Lot, limits: &Limits) -> Cover {
    let wanted = lot.wanted();
    let pieces: u32 = wanted.iter().fold(0, |sum, n| sum.saturating_add(*n));
    if pieces == 0 {
        return Cover::Yes(Covered { sheets: Vec::new(), least_sheets: 0 });
    }
    let fits_none = |kind: &Kind| {
        kind.wanted > 0 && !lot.stacks.iter().any(|stack| stack.count > 0 && kind.fits(stack.width, stack.height))
    };
    if lot.kinds.iter().any(fits_none) {
        return Cover::No;
    }
    let Some(mut least) = lot.least_by_area() else { return Cover::No };
    let at_hand = lot.stacks.iter().fold(0_u32, |sum, stack| sum.saturating_add(stack.count)).min(pieces);
    let mut proven = true;
    let first = least;
    for sheets in first..=at_hand {
        let (found, complete) = cover_with(lot, sheets, limits);
        if let Some(sheets) = found {
            return Cover::Yes(Covered { sheets, least_sheets: least });
        }
        proven &= complete;
        if proven {
            least = sheets + 1;
        }
    }
    if proven { Cover::No } else { Cover::Unknown }
}

/// Whether all sheets at hand together give everything, however many that takes.
#[must_use]
pub(super) fn gives_all(lot: &Lot, limits: &Limits) -> Cover {
    let pieces = lot.wanted().iter().fold(0_u32, |sum, n| sum.saturating_add(*n));
    let at_hand = lot.stacks.iter().fold(0_u32, |sum, stack| sum.saturating_add(stack.count)).min(pieces);
    if at_hand == 0 || lot.least_by_area().is_none() {
        return if pieces == 0 { Cover::Yes(Covered { sheets: Vec::new(), least_sheets: 0 }) } else { Cover::No };
    }
    match cover_with(lot, at_hand, limits) {
        (Some(sheets), _) => Cover::Yes(Covered { sheets, least_sheets: 0 }),
        (None, true) => Cover::No,
        (None, false) => Cover::Unknown,
    }
}

/// Covers with at most so many sheets; and whether not finding a way is a proof.
fn cover_with(lot: &Lot, sheets: u32, limits: &Limits) -> (Option<Vec<Alike>>, bool) {
    let wanted = lot.wanted();
    // Evenly over sheets of one kind: no search over vectors is needed where that fits.
    let share: Vec<u32> = wanted.iter().map(|n| n.div_ceil(sheets)).collect();
    let mut refused = true;
    for stack in 0..lot.stacks.len() {
        if lot.stacks[stack].count < sheets {
            continue;
        }
        match cut_sheet(&lot.problem(stack, &share), limits) {
            Fit::Yes(cut) => {
                let shares = spread(&wanted, sheets, |counts| counts.iter().zip(&share).all(|(a, b)| a <= b));
                return (realise(lot, stack, &shares, Some((&share, &cut)), limits), false);
            }
            Fit::No => {}
            Fit::Unknown => refused = false,
        }
    }
    if sheets == 1 {
        return (None, refused);
    }
    let Some(lanes) = Lanes::new(&wanted) else { return (None, false) };
    let fill = |round| Fronts::fill(lot, &lanes, sheets, round, limits);
    let fronts = fill(Round::Hand);
    if let Some(found) = fronts.cut(sheets, limits) {
        return (Some(found), false);
    }
    let binds = lot.problem(0, &wanted).hand_binds();
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
fn realise(
    lot: &Lot,
    stack: usize,
    shares: &[(Vec<u32>, u32)],
    known: Option<(&Vec<u32>, &CutSheet)>,
    limits: &Limits,
) -> Option<Vec<Alike>> {
    let mut all = Vec::new();
    for (counts, times) in shares.iter().filter(|(counts, _)| counts.iter().any(|&n| n > 0)) {
        let cut = match known {
            Some((same, cut)) if same == counts => cut.clone(),
            _ => match cut_sheet(&lot.problem(stack, counts), limits) {
                Fit::Yes(cut) => cut,
                _ => return None,
            },
        };
        all.push(Alike { stack, times: *times, cut, counts: counts.clone() });
    }
    Some(all)
}

/// Shares for so many sheets, each allowed: in one way, else in two, else as evenly as can be.
fn spread(wanted: &[u32], sheets: u32, fits: impl Fn(&[u32]) -> bool) -> Vec<(Vec<u32>, u32)> {
    if let Some(shares) = in_two_ways(wanted, sheets, fits) {
        return shares;
    }
    let mut shares: Vec<(Vec<u32>, u32)> = Vec::new();
    for sheet in 0..sheets {
        let counts: Vec<u32> = wanted.iter().map(|n| n / sheets + u32::from(sheet < n % sheets)).collect();
        match shares.last_mut() {
            Some((last, times)) if *last == counts => *times += 1,
            _ => shares.push((counts, 1)),
        }
    }
    shares
}

/// Shares in one way or in two, where they can be found.
fn in_two_ways(wanted: &[u32], sheets: u32, fits: impl Fn(&[u32]) -> bool) -> Option<Vec<(Vec<u32>, u32)>> {
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

/// What the maximal vectors are looked for with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Round {
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

/// The maximal vectors of each kind of sheet that can be one of so many.
struct Fronts<'l> {
    lot: &'l Lot,
    lanes: &'l Lanes,
    vectors: Vec<Vec<Counts>>,
    /// Whether none is wanting, so that finding no sum is a proof.
    complete: bool,
}

impl<'l> Fronts<'l> {
    fn fill(lot: &'l Lot, lanes: &'l Lanes, sheets: u32, round: Round, limits: &Limits) -> Self {
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
        let wanted = self.lot.wanted();
        let (mut problem, unit) = self.lot.problem(stack, &wanted).in_largest_unit();
        // However full the other sheets are, this one must give the rest.
        let largest = (0..self.lot.stacks.len())
            .filter(|&stack| self.lot.stacks[stack].count > 0)
            .map(|stack| self.lot.area(stack))
            .max()
            .unwrap_or(0);
        let others = (largest / (i128::from(unit) * i128::from(unit)) + 1) * i128::from(sheets - 1);
        let area = i64::try_from((problem.area_of(&wanted) - others).max(0)).unwrap_or(0);
        let (cuts, beam) = match round {
            Round::Hand | Round::NoRules => (Cuts::All, None),
            Round::Held => (Cuts::AllAndHeld, None),
            Round::FewOfAll => (Cuts::All, Some(6)),
            Round::FewOfBlocks => (Cuts::Blocks, Some(6)),
        };
        if round == Round::NoRules {
            problem = problem.without_hand();
        }
        let question = Question { leftovers: None, area, beam, root: true };
        let mut budget = limits.fit;
        let ground = Ground::new(&problem, self.lanes, cuts, usize::MAX)?;
        let table = Table::fill(&ground, question, &mut budget);
        self.complete &= table.complete();
        let (x, y) = ground.sheet();
        let mut front: Vec<(i64, Counts)> = table.front(x, y).iter().map(|entry| (entry.area, entry.counts)).collect();
        front.sort_unstable_by(|a, b| b.cmp(a));
        Some(front.into_iter().map(|(_, counts)| counts).collect())
    }

    fn fits(&self, stack: usize, counts: &[u32]) -> bool {
        let packed = self.lanes.pack(counts);
        self.lanes.unpack(packed) == counts && self.vectors[stack].iter().any(|&front| self.lanes.covers(front, packed))
    }

    /// Cuts so many sheets by these vectors, if they add up to all that is wanted.
    fn cut(&self, sheets: u32, limits: &Limits) -> Option<Vec<Alike>> {
        let wanted = self.lot.wanted();
        for stack in (0..self.lot.stacks.len()).filter(|&stack| self.lot.stacks[stack].count >= sheets) {
            if let Some(shares) = in_two_ways(&wanted, sheets, |counts| self.fits(stack, counts))
                && let Some(found) = realise(self.lot, stack, &shares, None, limits)
            {
                return Some(found);
            }
        }
        let (chosen, _) = self.choose(sheets, limits);
        let mut found = Vec::new();
        for (stack, counts, times) in chosen? {
            let Fit::Yes(cut) = cut_sheet(&self.lot.problem(stack, &counts), limits) else { return None };
            found.push(Alike { stack, times, cut, counts });
        }
        Some(found)
    }

    /// Whether it is proven that so many sheets cannot do.
    fn refute(&self, sheets: u32, limits: &Limits) -> bool {
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
