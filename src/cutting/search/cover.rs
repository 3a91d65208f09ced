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

    fn area(&self, stack: usize) -> i128 {
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
    let mut fronts = Fronts::new(lot, limits);
    let first = least;
    for sheets in first..=at_hand {
        let (found, complete) = cover_with(lot, sheets, &mut fronts, limits);
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

/// Covers with exactly so many sheets; and whether not finding one is a proof.
fn cover_with(lot: &Lot, sheets: u32, fronts: &mut Fronts<'_>, limits: &Limits) -> (Option<Vec<Alike>>, bool) {
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
    let Some(complete) = fronts.fill(sheets) else { return (None, false) };
    for stack in 0..lot.stacks.len() {
        if lot.stacks[stack].count < sheets {
            continue;
        }
        let fits = |counts: &[u32]| fronts.fits(stack, counts);
        if let Some(shares) = in_two_ways(&wanted, sheets, fits)
            && let Some(found) = realise(lot, stack, &shares, None, limits)
        {
            return (Some(found), false);
        }
    }
    let mut nodes = limits.nodes;
    let Some(chosen) = fronts.choose(sheets, &mut nodes) else { return (None, complete && nodes > 0) };
    let mut found: Vec<Alike> = Vec::new();
    for (stack, counts, times) in chosen {
        let Fit::Yes(cut) = cut_sheet(&lot.problem(stack, &counts), limits) else { return (None, false) };
        found.push(Alike { stack, times, cut, counts });
    }
    (Some(found), false)
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
    for (counts, times) in shares {
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

/// The maximal vectors of each kind of sheet.
struct Fronts<'l> {
    lot: &'l Lot,
    limits: &'l Limits,
    lanes: Option<Lanes>,
    filled: Option<(Vec<Vec<Counts>>, bool)>,
    /// The number of sheets that they are filled for.
    sheets: u32,
}

impl<'l> Fronts<'l> {
    fn new(lot: &'l Lot, limits: &'l Limits) -> Self {
        Self { lot, limits, lanes: Lanes::new(&lot.wanted()), filled: None, sheets: 0 }
    }

    /// Fills them for so many sheets; says whether they are complete.
    fn fill(&mut self, sheets: u32) -> Option<bool> {
        if let Some((_, complete)) = self.filled.as_ref().filter(|_| self.sheets == sheets) {
            return Some(*complete);
        }
        self.sheets = sheets;
        let lanes = self.lanes.as_ref()?;
        let wanted = self.lot.wanted();
        let mut fronts = Vec::new();
        let mut complete = true;
        for stack in 0..self.lot.stacks.len() {
            let (front, whole) = self.front_of(stack, &wanted, lanes);
            complete &= whole;
            fronts.push(front);
        }
        self.filled = Some((fronts, complete));
        Some(complete)
    }

    fn front_of(&self, stack: usize, wanted: &[u32], lanes: &Lanes) -> (Vec<Counts>, bool) {
        let (problem, unit) = self.lot.problem(stack, wanted).in_largest_unit();
        // However full the other sheets are, this one must give the rest.
        let largest = (0..self.lot.stacks.len()).map(|stack| self.lot.area(stack)).max().unwrap_or(0);
        let others = (largest / (i128::from(unit) * i128::from(unit)) + 1) * i128::from(self.sheets.saturating_sub(1));
        let area = i64::try_from((problem.area_of(wanted) - others).max(0)).unwrap_or(0);
        let exact = if problem.hand_binds() { Cuts::AllAndHeld } else { Cuts::All };
        for (cuts, beam) in [(exact, None), (Cuts::All, Some(6)), (Cuts::Blocks, Some(6))] {
            let mut budget = self.limits.fit;
            let question = Question { leftovers: None, area, beam, root: true };
            let Some(ground) = Ground::new(&problem, lanes, cuts, usize::MAX) else { continue };
            let table = Table::fill(&ground, question, &mut budget);
            let (x, y) = ground.sheet();
            let mut front: Vec<(i64, Counts)> =
                table.front(x, y).iter().map(|entry| (entry.area, entry.counts)).collect();
            if front.is_empty() {
                continue;
            }
            front.sort_unstable_by(|a, b| b.cmp(a));
            return (front.into_iter().map(|(_, counts)| counts).collect(), table.complete());
        }
        let node = super::greedy::fill(&problem);
        (vec![lanes.pack(&node.counts(wanted.len()))], false)
    }

    fn fits(&self, stack: usize, counts: &[u32]) -> bool {
        let (Some(lanes), Some((fronts, _))) = (&self.lanes, &self.filled) else { return false };
        let packed = lanes.pack(counts);
        lanes.unpack(packed) == counts && fronts[stack].iter().any(|&front| lanes.covers(front, packed))
    }

    /// Vectors for so many sheets that add up to all that is wanted: `(stack, counts, times)`.
    fn choose(&self, sheets: u32, nodes: &mut u64) -> Option<Vec<(usize, Vec<u32>, u32)>> {
        let lanes = self.lanes.as_ref()?;
        let (fronts, _) = self.filled.as_ref()?;
        let mut all: Vec<(usize, Counts)> = Vec::new();
        for (stack, front) in fronts.iter().enumerate() {
            all.extend(front.iter().map(|&counts| (stack, counts)));
        }
        let mut left: Vec<u32> = self.lot.stacks.iter().map(|stack| stack.count).collect();
        let mut chosen = Vec::new();
        // Where a count is capped the demand cannot be told from the word.
        let wanted = self.lot.wanted();
        if lanes.unpack(lanes.pack(&wanted)) != wanted {
            return None;
        }
        if !search(lanes, &all, 0, sheets, lanes.caps(), &mut left, &mut chosen, nodes) {
            return None;
        }
        let mut missing = lanes.caps();
        let mut found: Vec<(usize, Vec<u32>, u32)> = Vec::new();
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
        Some(found)
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
