//! The most value from one sheet, for instances that a library caller brings: kinds of rectangle,
//! each worth something, as many as fit or at most so many of each, without the rules of the hand.
//!
//! Unlimited copies are the programme of Gilmore and Gomory (1966, from memory) over raster points.
//! Limited copies are the same with a price on every copy, tuned so that the bound is tight
//! (Lagrange; compare Velasco & Uchoa 2019), and then a table of count vectors under a target: what
//! cannot reach the target with everything around it is dropped. The target falls from the bound
//! until it is met, so the first plan found is proven best.

use super::counts::{Counts, Lanes};
use super::points::{Raster, most_around};
use super::problem::Problem;

/// What a search of value found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Valued {
    /// The best value found.
    pub value: u64,
    /// No plan is worth more; equal to `value` where that is proven best.
    pub bound: u64,
    /// States of the largest table.
    pub states: usize,
    /// Bytes of the tables at their largest.
    pub bytes: usize,
}

/// How far a search of value goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ValueLimits {
    /// Pairs of states met, over all targets.
    pub pairs: u64,
    /// States held at once.
    pub states: usize,
    /// Cells of the table.
    pub cells: usize,
    /// Rounds of tuning the prices.
    pub rounds: u32,
}

impl Default for ValueLimits {
    fn default() -> Self {
        Self { pairs: 4_000_000_000, states: 6_000_000, cells: 16_000_000, rounds: 150 }
    }
}

/// Prices are in this part of a unit of value.
const SCALE: i64 = 64;

/// The most value with as many copies as fit; `wanted` is not looked at. `values` says what one of
/// each kind is worth. None where the sheet has too many points, values are too large, or their
/// number is not that of the kinds.
#[must_use]
pub fn unlimited(problem: &Problem, values: &[u64], limits: &ValueLimits) -> Option<Valued> {
    let plate = Plate::new(problem, values, limits)?;
    let worth = plate.worths(1)?;
    let inside = plate.inside(&worth);
    let value = u64::try_from(*inside.last()?).ok()?;
    Some(Valued { value, bound: value, states: inside.len(), bytes: inside.len() * size_of::<i64>() })
}

/// The same, with the copies of each kind in a plan of that value.
#[must_use]
pub fn unlimited_counts(problem: &Problem, values: &[u64], limits: &ValueLimits) -> Option<(u64, Vec<u32>)> {
    let plate = Plate::new(problem, values, limits)?;
    let worth = plate.worths(1)?;
    let inside = plate.inside(&worth);
    let value = u64::try_from(*inside.last()?).ok()?;
    Some((value, plate.counts(&inside, &worth)))
}

/// The most value with at most `wanted` copies of each kind, `values` and none as above.
#[must_use]
pub fn limited(problem: &Problem, values: &[u64], limits: &ValueLimits) -> Option<Valued> {
    let plate = Plate::new(problem, values, limits)?;
    let wanted: Vec<u32> = problem.kinds.iter().map(|kind| kind.wanted).collect();
    let lanes = Lanes::new(&wanted).filter(Lanes::whole)?;
    let worth = plate.worths(SCALE)?;
    let mut best = plate.first_plan(&lanes);
    let prices = plate.tune(&worth, best * SCALE, limits.rounds);
    let reduced: Vec<i64> = worth.iter().zip(&prices.each).map(|(worth, price)| worth - price).collect();
    let inside = plate.inside(&reduced);
    let outside = plate.outside(&inside);
    let mut bound = prices.bound.div_euclid(SCALE).max(best);
    let mut search =
        Search { plate: &plate, lanes: &lanes, reduced, outside, pairs: limits.pairs, states: limits.states };
    let (mut states, mut step) = (inside.len(), (bound / 400).max(1));
    // A few of every part first, for a plan to beat.
    let beam = search.run(((best + 1) * SCALE) - prices.total, Some(24));
    let mut entries = beam.entries;
    if let Some(value) = beam.value {
        best = best.max(value);
    }
    while best < bound {
        let target = (bound - step).max(best + 1);
        let run = search.run(target * SCALE - prices.total, None);
        entries = entries.max(run.entries);
        if let Some(value) = run.value.filter(|&value| value > best) {
            best = value;
        }
        if !run.whole {
            break;
        }
        // Everything worth the target was kept: what was found is the best, or nothing reaches it.
        bound = if best >= target { best } else { target - 1 };
        step *= 2;
    }
    states += entries;
    let bytes = inside.len() * (2 * size_of::<i64>() + size_of::<Vec<State>>()) + entries * size_of::<State>();
    Some(Valued { value: u64::try_from(best).ok()?, bound: u64::try_from(bound).ok()?, states, bytes })
}

/// The sheet's sizes of part.
struct Plate<'p> {
    problem: &'p Problem,
    values: &'p [u64],
    across: Raster,
    up: Raster,
}

struct Prices {
    each: Vec<i64>,
    /// The price of all copies wanted.
    total: i64,
    bound: i64,
}

impl<'p> Plate<'p> {
    fn new(problem: &'p Problem, values: &'p [u64], limits: &ValueLimits) -> Option<Self> {
        if values.len() != problem.kinds.len() {
            return None;
        }
        let mut sides = (Vec::new(), Vec::new());
        for kind in problem.kinds.iter() {
            for (width, height, _) in kind.ways() {
                if width <= problem.width && height <= problem.height {
                    sides.0.push(width);
                    sides.1.push(height);
                }
            }
        }
        let across = Raster::new(&sides.0, problem.width)?;
        let up = Raster::new(&sides.1, problem.height)?;
        (across.points.len() * up.points.len() <= limits.cells).then_some(Self { problem, values, across, up })
    }

    fn worths(&self, scale: i64) -> Option<Vec<i64>> {
        // The whole sheet filled with the best of them must stay far from overflow.
        let most = i64::MAX / 1_000_000_000;
        let worth = |value: u64| i64::try_from(value).ok().filter(|&value| value <= most / scale).map(|v| v * scale);
        self.values.iter().map(|&value| worth(value)).collect()
    }

    /// The most worth of each size of part, were there enough copies.
    fn inside(&self, worth: &[i64]) -> Vec<i64> {
        let (columns, rows) = (self.across.points.len(), self.up.points.len());
        let mut inside = vec![0_i64; columns * rows];
        for (kind, &worth) in self.problem.kinds.iter().zip(worth) {
            for (width, height, _) in kind.ways() {
                let (x, y) = (self.across.first_from(width), self.up.first_from(height));
                for column in x..columns {
                    for cell in &mut inside[column * rows + y.min(rows)..(column + 1) * rows] {
                        *cell = worth.max(*cell);
                    }
                }
            }
        }
        for x in 0..columns {
            let (before, here) = inside.split_at_mut(x * rows);
            let here = &mut here[..rows];
            for (first, rest) in self.across.partings(x) {
                let (ones, others) = (&before[first * rows..][..rows], &before[rest * rows..][..rows]);
                for ((cell, one), other) in here.iter_mut().zip(ones).zip(others) {
                    *cell = (one + other).max(*cell);
                }
            }
            for y in 0..rows {
                let best = self.up.partings(y).map(|(first, rest)| here[first] + here[rest]).max();
                here[y] = here[y].max(best.unwrap_or(0));
            }
        }
        inside
    }

    /// The most worth around a part of each size; far under nothing where no cut gives the part.
    fn outside(&self, inside: &[i64]) -> Vec<i64> {
        let (columns, rows) = (self.across.points.len(), self.up.points.len());
        most_around((columns, rows), inside, |x| self.across.partings(x), |y| self.up.partings(y))
    }

    /// Copies of each kind in a best plan of the table.
    fn counts(&self, inside: &[i64], worth: &[i64]) -> Vec<u32> {
        let rows = self.up.points.len();
        let mut counts = vec![0; worth.len()];
        let mut open = vec![(self.across.points.len() - 1, rows - 1)];
        while let Some((x, y)) = open.pop() {
            let here = inside[x * rows + y];
            if here <= 0 {
                continue;
            }
            let size = (self.across.points[x], self.up.points[y]);
            let fits = |kind: &super::problem::Kind| kind.fits(size.0, size.1);
            let kinds = self.problem.kinds.iter().zip(worth);
            if let Some(kind) = kinds.clone().position(|(kind, &worth)| worth == here && fits(kind)) {
                counts[kind] += 1;
                continue;
            }
            let across = self.across.partings(x).map(|(first, rest)| ((first, y), (rest, y)));
            let up = self.up.partings(y).map(|(first, rest)| ((x, first), (x, rest)));
            let cut = across
                .chain(up)
                .find(|(one, other)| inside[one.0 * rows + one.1] + inside[other.0 * rows + other.1] == here);
            open.extend(cut.into_iter().flat_map(|(one, other)| [one, other]));
        }
        counts
    }

    /// Prices of the copies that make the bound small (subgradient steps).
    fn tune(&self, worth: &[i64], goal: i64, rounds: u32) -> Prices {
        let kinds = &self.problem.kinds;
        let mut each = vec![0_i64; worth.len()];
        let mut best = Prices { each: each.clone(), total: 0, bound: i64::MAX };
        // Sixteenths of a full step.
        let (mut stride, mut idle) = (16_i128, 0);
        for _ in 0..rounds {
            let reduced: Vec<i64> = worth.iter().zip(&each).map(|(worth, price)| worth - price).collect();
            let inside = self.inside(&reduced);
            let total: i64 = each.iter().zip(kinds).map(|(price, kind)| price * i64::from(kind.wanted)).sum();
            let bound = inside.last().copied().unwrap_or(0) + total;
            if bound < best.bound {
                best = Prices { each: each.clone(), total, bound };
                idle = 0;
            } else {
                idle += 1;
                if idle == 6 {
                    (stride, idle) = (stride / 2, 0);
                    each.clone_from(&best.each);
                    if stride == 0 {
                        break;
                    }
                }
            }
            let counts = self.counts(&inside, &reduced);
            let over: Vec<i64> =
                counts.iter().zip(kinds).map(|(&count, kind)| i64::from(count) - i64::from(kind.wanted)).collect();
            let moves = |kind: usize| over[kind] > 0 || (over[kind] < 0 && each[kind] > 0);
            let norm: i128 =
                (0..over.len()).filter(|&kind| moves(kind)).map(|kind| i128::from(over[kind]).pow(2)).sum();
            if norm == 0 {
                break;
            }
            let gap = i128::from((bound - goal).max(SCALE));
            let next: Vec<i64> = (0..over.len())
                .map(|kind| {
                    let step = i64::try_from(i128::from(over[kind]) * gap * stride / (norm * 16)).unwrap_or(0);
                    (each[kind] + step).clamp(0, worth[kind])
                })
                .collect();
            each = next;
        }
        best
    }

    /// A plan to start from: the single piece that is worth most.
    fn first_plan(&self, lanes: &Lanes) -> i64 {
        let fits = |kind: &super::problem::Kind| kind.wanted > 0 && kind.fits(self.problem.width, self.problem.height);
        let most = self
            .problem
            .kinds
            .iter()
            .zip(self.values)
            .filter(|(kind, _)| fits(kind))
            .map(|(_, value)| *value)
            .max()
            .unwrap_or(0);
        debug_assert!(lanes.whole());
        i64::try_from(most).unwrap_or(0)
    }
}

#[derive(Debug, Clone, Copy)]
struct State {
    counts: Counts,
    reduced: i64,
    value: i64,
}

struct Run {
    value: Option<i64>,
    whole: bool,
    entries: usize,
}

struct Search<'s, 'p> {
    plate: &'s Plate<'p>,
    lanes: &'s Lanes,
    reduced: Vec<i64>,
    outside: Vec<i64>,
    pairs: u64,
    states: usize,
}

impl Search<'_, '_> {
    /// The best plan whose reduced worth is `target` or more.
    fn run(&mut self, target: i64, beam: Option<usize>) -> Run {
        let (columns, rows) = (self.plate.across.points.len(), self.plate.up.points.len());
        let mut cells: Vec<Vec<State>> = vec![Vec::new(); columns * rows];
        let mut entries = 0;
        let mut kept: Vec<State> = Vec::new();
        for x in 0..columns {
            for y in 0..rows {
                let least = target - self.outside[x * rows + y];
                if self.outside[x * rows + y] < 0 {
                    continue;
                }
                kept.clear();
                if least <= 0 {
                    kept.push(State { counts: 0, reduced: 0, value: 0 });
                }
                let size = (self.plate.across.points[x], self.plate.up.points[y]);
                for (kind, wanted) in self.plate.problem.kinds.iter().enumerate() {
                    if wanted.wanted > 0 && self.reduced[kind] >= least && wanted.fits(size.0, size.1) {
                        let value = i64::try_from(self.plate.values[kind]).unwrap_or(0);
                        self.keep(
                            &mut kept,
                            State { counts: self.lanes.one(kind), reduced: self.reduced[kind], value },
                        );
                    }
                }
                let across = self.plate.across.partings(x).map(|(first, rest)| (first * rows + y, rest * rows + y));
                let up = self.plate.up.partings(y).map(|(first, rest)| (x * rows + first, x * rows + rest));
                for (ones, others) in across.chain(up).map(|(first, rest)| (&cells[first], &cells[rest])) {
                    let met = (ones.len() * others.len()) as u64;
                    if met > self.pairs {
                        return Run { value: None, whole: false, entries };
                    }
                    self.pairs -= met;
                    for one in ones {
                        // Sorted by worth: past the first that is too little all are.
                        for other in others {
                            if one.reduced + other.reduced < least {
                                break;
                            }
                            let counts = one.counts + other.counts;
                            if self.lanes.covers(self.lanes.caps(), counts) {
                                let reduced = one.reduced + other.reduced;
                                self.keep(&mut kept, State { counts, reduced, value: one.value + other.value });
                            }
                        }
                    }
                }
                kept.sort_unstable_by(|a, b| b.reduced.cmp(&a.reduced).then(a.counts.cmp(&b.counts)));
                if let Some(beam) = beam {
                    kept.truncate(beam);
                }
                entries += kept.len();
                if entries > self.states {
                    return Run { value: None, whole: false, entries };
                }
                cells[x * rows + y] = kept.clone();
            }
        }
        let value = cells.last().and_then(|last| last.iter().map(|state| state.value).max());
        Run { value, whole: beam.is_none(), entries }
    }

    /// Keeps a state unless one that takes no more copies is worth as much.
    #[inline]
    fn keep(&self, kept: &mut Vec<State>, state: State) {
        for old in kept.iter() {
            if old.value >= state.value && self.lanes.covers(state.counts, old.counts) {
                return;
            }
        }
        kept.retain(|old| !(state.value >= old.value && self.lanes.covers(old.counts, state.counts)));
        kept.push(state);
    }
}
