//! Where a cut may lie in one direction, and which lengths are alike.
//!
//! Only lengths that are sums of sides of pieces matter (Herz 1972, Christofides & Whitlock 1977,
//! from memory): of the two parts of any cut, one can always be shrunk to such a sum, the waste
//! moving to the other. So a length is either such a sum exactly, or lies strictly between two
//! neighbouring sums; all lengths between the same two are alike, since every cut leaves them
//! between the same two sums again. A length between is stood for by the sum below it plus one.
//!
//! The rules of the hand add two lengths from which sums are made, the narrow slice and the hold:
//! a part that is as short as the rules let it be may end in just so much waste.

use super::problem::Problem;

/// The direction a cut moves along.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Axis {
    /// From the left: parts lie side by side.
    Across,
    /// From the top: parts lie one above another.
    Up,
}

impl Axis {
    /// The other direction.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Across => Self::Up,
            Self::Up => Self::Across,
        }
    }
}

/// One way to cut a length in two.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Parting {
    /// The length of the first part, exactly.
    pub(crate) at: i64,
    /// Class of the first part.
    pub(crate) first: usize,
    /// Class of the rest.
    pub(crate) rest: usize,
}

/// Where cuts may lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Cuts {
    /// At every sum of sides: a search that fails is a proof.
    All,
    /// At every sum of sides and of the lengths that the rules of the hand ask for. Where the rules
    /// bind, only a search that fails with these is a proof; plans found with fewer are sound all
    /// the same, since a longer loose part never breaks a rule that a shorter one keeps.
    AllAndHeld,
    /// At so many times one side only, as a hand likes it: quick, but no proof.
    Blocks,
}

/// The classes of length that can be reached from one side of the sheet.
#[derive(Debug, Clone)]
pub(crate) struct Line {
    /// Every sum, ascending.
    sums: Vec<i64>,
    /// A length of each class, ascending: the sum itself, or the sum below plus one.
    pub(crate) classes: Vec<i64>,
    /// The ways to cut a length of each class.
    pub(crate) partings: Vec<Vec<Parting>>,
}

/// More points than this are not searched exactly.
const MOST_POINTS: usize = 1_500;

impl Line {
    /// The classes of one side, or none where there are too many.
    pub(crate) fn new(problem: &Problem, axis: Axis, cuts: Cuts) -> Option<Self> {
        let length = match axis {
            Axis::Across => problem.width,
            Axis::Up => problem.height,
        };
        let mut sides: Vec<(i64, u32)> = Vec::new();
        for kind in problem.kinds.iter().filter(|kind| kind.wanted > 0) {
            for (width, height, _) in kind.ways() {
                let fits = width <= problem.width && height <= problem.height;
                let side = if axis == Axis::Across { width } else { height };
                if fits && side <= length {
                    match sides.iter_mut().find(|(s, _)| *s == side) {
                        Some((_, wanted)) => *wanted = wanted.saturating_add(kind.wanted),
                        None => sides.push((side, kind.wanted)),
                    }
                }
            }
        }
        let held = match problem.hand {
            Some(hand) if cuts == Cuts::AllAndHeld && problem.hand_binds() => vec![hand.narrow, hand.hold],
            _ => Vec::new(),
        };
        let generators: Vec<i64> = sides.iter().map(|(side, _)| *side).chain(held.iter().copied()).collect();
        let sums = sums_of(&generators, length)?;
        let cuts = match cuts {
            Cuts::Blocks => multiples_of(&sides, length)?,
            // With waste of the hand in them any sum may serve; else only sums that the wanted
            // pieces can make.
            _ if !held.is_empty() => sums.clone(),
            _ => sums_of_wanted(&sides, length)?,
        };

        let mut classes = vec![class_of(&sums, length)];
        let mut todo = classes.clone();
        while let Some(here) = todo.pop() {
            for &at in cuts.iter().take_while(|&&at| at < here) {
                for part in [at, class_of(&sums, here - at)] {
                    if let Err(place) = classes.binary_search(&part) {
                        classes.insert(place, part);
                        todo.push(part);
                        if classes.len() > MOST_POINTS {
                            return None;
                        }
                    }
                }
            }
        }
        let number = |part: i64| classes.binary_search(&part).unwrap_or(0);
        let mut partings = Vec::with_capacity(classes.len());
        for &here in &classes {
            let mut ways: Vec<Parting> = Vec::new();
            for &at in cuts.iter().take_while(|&&at| at < here) {
                let rest = here - at;
                if problem.hand.is_some_and(|hand| !hand.allows(at, rest)) {
                    continue;
                }
                // A cut in the middle of a sum is met from both ends: keep the shorter first part.
                if at > rest && cuts.binary_search(&rest).is_ok() && sums.binary_search(&here).is_ok() {
                    continue;
                }
                ways.push(Parting { at, first: number(at), rest: number(class_of(&sums, rest)) });
            }
            partings.push(ways);
        }
        Some(Self { sums, classes, partings })
    }

    /// The class of a length that can be reached.
    pub(crate) fn class(&self, length: i64) -> Option<usize> {
        self.classes.binary_search(&class_of(&self.sums, length)).ok()
    }

    /// Whether a class is a sum exactly.
    pub(crate) fn is_sum(&self, class: usize) -> bool {
        self.sums.binary_search(&self.classes[class]).is_ok()
    }
}

/// The length that stands for all lengths like this one.
fn class_of(sums: &[i64], length: i64) -> i64 {
    match sums.binary_search(&length) {
        Ok(_) => length,
        Err(0) => length.min(1),
        Err(place) => sums[place - 1] + 1,
    }
}

/// Every sum of any number of the sides, up to `length`; none where there are too many.
fn sums_of(sides: &[i64], length: i64) -> Option<Vec<i64>> {
    let mut open = std::collections::BTreeSet::new();
    open.extend(sides.iter().copied().filter(|&side| side > 0 && side <= length));
    let mut sums = Vec::new();
    while let Some(sum) = open.pop_first() {
        sums.push(sum);
        if sums.len() > MOST_POINTS {
            return None;
        }
        open.extend(sides.iter().filter(|&&side| side > 0).map(|side| side + sum).filter(|&s| s <= length));
    }
    Some(sums)
}

/// Every side so many times, at most as often as it is wanted.
fn multiples_of(sides: &[(i64, u32)], length: i64) -> Option<Vec<i64>> {
    let mut multiples = std::collections::BTreeSet::new();
    for &(side, wanted) in sides {
        multiples.extend((1..=i64::from(wanted).min(length / side)).map(|times| side * times));
        if multiples.len() > MOST_POINTS {
            return None;
        }
    }
    Some(multiples.into_iter().collect())
}

/// Every sum of sides in which none stands more often than it is wanted.
fn sums_of_wanted(sides: &[(i64, u32)], length: i64) -> Option<Vec<i64>> {
    let mut sums = std::collections::BTreeSet::from([0_i64]);
    for &(side, wanted) in sides {
        let before: Vec<i64> = sums.iter().copied().collect();
        for start in before {
            let mut sum = start;
            for _ in 0..wanted {
                sum += side;
                if sum > length {
                    break;
                }
                sums.insert(sum);
            }
            if sums.len() > MOST_POINTS {
                return None;
            }
        }
    }
    sums.remove(&0);
    Some(sums.into_iter().collect())
}

/// The lengths of part that matter where waste is free: every length is as good as the largest sum
/// of sides within it, and of these only the ones that remain when the other part is a sum too
/// (raster points; Scheithauer & Terno, from memory).
#[derive(Debug, Clone)]
pub(crate) struct Raster {
    /// The lengths, ascending, nothing first; the last stands for the whole.
    pub(crate) points: Vec<i64>,
    /// For each length, the ways to cut it: two places in `points`, the shorter part first.
    ways: Vec<Vec<(u32, u32)>>,
}

/// More raster points than this are not searched.
const MOST_RASTER: usize = 4_000;

impl Raster {
    /// The raster of a length, or none where it has too many points.
    pub(crate) fn new(sides: &[i64], length: i64) -> Option<Self> {
        let mut sums = std::collections::BTreeSet::from([0_i64]);
        let mut open = vec![0_i64];
        while let Some(sum) = open.pop() {
            for &side in sides.iter().filter(|&&side| side > 0) {
                if sum + side <= length && sums.insert(sum + side) {
                    open.push(sum + side);
                    if sums.len() > 4 * MOST_RASTER {
                        return None;
                    }
                }
            }
        }
        let sums: Vec<i64> = sums.into_iter().collect();
        let within = |length: i64| sums[sums.partition_point(|&sum| sum <= length) - 1];
        let mut points: Vec<i64> = sums.iter().map(|sum| within(length - sum)).collect();
        points.push(0);
        points.sort_unstable();
        points.dedup();
        if points.len() > MOST_RASTER {
            return None;
        }
        let ways = points
            .iter()
            .map(|&here| {
                let firsts = points.iter().enumerate().filter(|(_, at)| **at > 0 && **at * 2 <= here);
                let place = |length: i64| points.partition_point(|&point| point <= length) - 1;
                let number = |place: usize| u32::try_from(place).unwrap_or(u32::MAX);
                firsts.map(|(first, &at)| (number(first), number(place(here - at)))).collect()
            })
            .collect();
        Some(Self { points, ways })
    }

    /// The first point that is at least so long.
    pub(crate) fn first_from(&self, length: i64) -> usize {
        self.points.partition_point(|&point| point < length)
    }

    /// The ways to cut the length at a place.
    pub(crate) fn partings(&self, place: usize) -> impl Iterator<Item = (usize, usize)> + '_ {
        self.ways[place].iter().map(|&(first, rest)| (first as usize, rest as usize))
    }
}
/// For a part of every size, the most worth that the rest of the sheet around it can hold, given the
/// most worth inside each size; far under nothing where no cut gives such a part. Sizes are counted
/// by column, then row, the whole sheet last; the two functions give the ways to part a side.
pub(crate) fn most_around<A, U>(
    (columns, rows): (usize, usize),
    inside: &[i64],
    across: impl Fn(usize) -> A,
    up: impl Fn(usize) -> U,
) -> Vec<i64>
where
    A: Iterator<Item = (usize, usize)>,
    U: Iterator<Item = (usize, usize)>,
{
    let mut outside = vec![i64::MIN / 4; columns * rows];
    outside[columns * rows - 1] = 0;
    for x in (0..columns).rev() {
        for y in (0..rows).rev() {
            let here = outside[x * rows + y];
            if here < 0 {
                continue;
            }
            let across = across(x).map(|(first, rest)| (first * rows + y, rest * rows + y));
            let up = up(y).map(|(first, rest)| (x * rows + first, x * rows + rest));
            for (first, rest) in across.chain(up) {
                outside[first] = outside[first].max(here + inside[rest]);
                outside[rest] = outside[rest].max(here + inside[first]);
            }
        }
    }
    outside
}
