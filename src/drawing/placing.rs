//! Where the dimensions of a figure stand: each takes the cheapest of its places at which it meets no other,
//! the short ones first, so that the shortest lies nearest the outline.

use super::area::Area;
use super::dimension::{Beside, Dimension, Drawn, FIRST, NEXT, Runs};
use super::scene::At;

const UM: i64 = 1000;
/// A figure keeps so far off lines and other figures.
const CLEAR: i64 = 500 * UM;
/// Two figures keep so far off each other: letters are higher than their capitals.
const FIGURES_APART: i64 = 1000 * UM;
/// Two lines beside each other are at least so far apart.
const APART: i64 = 5500 * UM;
/// How far out a line may lie, in halves of the usual distance.
const LEVELS: i64 = 12;
/// How often one that found no place is put before the others.
const ROUNDS: usize = 12;
/// How many places one round tries.
const STEPS: usize = 3000;
/// What a place within the outline costs more than the nearest one beside it.
const WITHIN: i64 = 14;

/// A straight line on the page.
pub type Line = (At, At);

/// A dimension that wants a place: every place that would do, with what it costs.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Wanted {
    /// The places.
    pub places: Vec<(Dimension, i64)>,
}

/// What is on the figure already.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Around {
    /// Labels, rings and the like: neither a line nor a figure enters them.
    pub labels: Vec<Area>,
    /// Lines that may run on under a dimension line, but not through its figure.
    pub lines: Vec<Line>,
    /// How far left and right a figure and its lines may reach.
    pub room: Option<(i64, i64)>,
}

impl Wanted {
    /// Beside a figure: off the outline at `outline`, `away` from it (1 or -1), further out where it must be.
    #[must_use]
    pub fn beside(mut self, runs: Runs, ends: (i64, i64), text: &str, outline: i64, away: i64) -> Self {
        for level in 0..LEVELS {
            let line = outline + away * (FIRST + level * NEXT / 2);
            self.push(of(runs, ends, (outline, outline), line, text), level * level);
        }
        self
    }

    /// Within it: on a line that both of what it measures lie on, `spans` being where each of the two lies
    /// across; where no line meets both, an extension line leads to the one that is missed.
    #[must_use]
    pub fn within(mut self, runs: Runs, ends: (i64, i64), text: &str, spans: [(i64, i64); 2]) -> Self {
        let [one, other] = spans;
        let common = (one.0.max(other.0), one.1.min(other.1));
        let (low, high) = if common.0 < common.1 { common } else { other };
        for (n, share) in (0_i64..).zip([8, 4, 12, 2, 14, 6, 10, 1, 15, 3, 13, 5, 11, 7, 9]) {
            let line = low + (high - low) * share / 16;
            let outline = |(from, to): (i64, i64)| line.clamp(from, to);
            self.push(of(runs, ends, (outline(one), outline(other)), line, text), WITHIN + n);
        }
        self
    }

    /// At a place of its own; the figure of a narrow one wherever it may stand.
    pub fn push(&mut self, own: Dimension, cost: i64) {
        let others = match (own.is_narrow(), own.runs) {
            (false, _) => &[][..],
            (true, Runs::Level) => &[Beside::High, Beside::Low],
            (true, Runs::Upright) => &[Beside::Right, Beside::Left, Beside::Low, Beside::High],
        };
        for beside in others.iter().filter(|beside| **beside != own.beside) {
            self.places.push((Dimension { beside: *beside, ..own.clone() }, cost + 1));
        }
        self.places.push((own, cost));
    }

    fn length(&self) -> i64 {
        self.places.first().map_or(0, |(own, _)| own.ends.1 - own.ends.0)
    }
}

fn of(runs: Runs, ends: (i64, i64), outlines: (i64, i64), line: i64, text: &str) -> Dimension {
    match runs {
        Runs::Level => Dimension::level(ends, outlines, line, text),
        Runs::Upright => Dimension::upright(ends, outlines, line, text),
    }
}

/// Gives each dimension its place, in the order given; none where it finds none.
#[must_use]
pub fn place(wanted: &[Wanted], around: &Around) -> Vec<Option<Dimension>> {
    // Only what meets nothing that is there already.
    let free: Vec<Vec<(Placed, i64)>> = wanted
        .iter()
        .map(|own| {
            let each = own.places.iter().map(|(own, cost)| (Placed::new(own.clone()), *cost));
            let mut free: Vec<(Placed, i64)> = each.filter(|(own, _)| own.is_clear(around)).collect();
            free.sort_by_key(|(_, cost)| *cost);
            free
        })
        .collect();
    let mut order: Vec<usize> = (0..wanted.len()).collect();
    order.sort_by_key(|n| wanted[*n].length());
    let mut best: Option<(usize, Vec<Option<usize>>)> = None;
    for _ in 0..ROUNDS {
        let (nothing, none) = (vec![None; wanted.len()], order.len() + 1);
        let mut search = Search { free: &free, order: &order, steps: STEPS, best: nothing, missed: none };
        search.go(0, &mut vec![None; wanted.len()], 0);
        let (chosen, count) = (search.best, search.missed);
        let missed: Vec<usize> = order.iter().copied().filter(|n| chosen[*n].is_none()).collect();
        if best.as_ref().is_none_or(|(least, _)| count < *least) {
            best = Some((count, chosen));
        }
        // Those without any place stay so.
        let Some(first) = missed.into_iter().find(|n| !free[*n].is_empty()) else { break };
        order.retain(|n| *n != first);
        order.insert(0, first);
    }
    let chosen = best.map_or_else(Vec::new, |(_, chosen)| chosen);
    chosen.iter().zip(free).map(|(at, own)| Some(own[(*at)?].0.own.clone())).collect()
}

/// A search through the places in one order, the cheapest first, that goes back where one finds none.
struct Search<'a> {
    free: &'a [Vec<(Placed, i64)>],
    order: &'a [usize],
    /// How many places it may still try.
    steps: usize,
    best: Vec<Option<usize>>,
    /// How many of the best found no place.
    missed: usize,
}

impl Search<'_> {
    /// Returns whether the search is over: nothing missed, or nothing left to try.
    fn go(&mut self, depth: usize, chosen: &mut Vec<Option<usize>>, missed: usize) -> bool {
        if missed >= self.missed {
            return false;
        }
        let Some(n) = self.order.get(depth).copied() else {
            (self.best, self.missed) = (chosen.clone(), missed);
            return missed == 0;
        };
        for (at, (own, _)) in self.free[n].iter().enumerate() {
            if self.steps == 0 {
                break;
            }
            self.steps -= 1;
            let meets = chosen.iter().zip(self.free).any(|(at, other)| at.is_some_and(|at| own.meets(&other[at].0)));
            if meets {
                continue;
            }
            chosen[n] = Some(at);
            if self.go(depth + 1, chosen, missed) {
                return true;
            }
            chosen[n] = None;
        }
        self.go(depth + 1, chosen, missed + 1)
    }
}

/// Dimensions on one side of a figure, off its outline at `outline`, `away` from it (1 or -1): the shortest nearest
/// to it. One that would cross another wherever it lay is left out.
#[must_use]
pub fn stack(dimensions: Vec<Dimension>, outline: i64, away: i64) -> Vec<Drawn> {
    let wanted: Vec<Wanted> = dimensions
        .into_iter()
        .map(|own| Wanted::default().beside(own.runs, own.ends, &own.text, outline, away))
        .collect();
    place(&wanted, &Around::default()).iter().flatten().map(Dimension::draw).collect()
}

/// A dimension at one of its places.
struct Placed {
    own: Dimension,
    drawn: Drawn,
    line: Line,
    extensions: Vec<Line>,
}

impl Placed {
    fn new(own: Dimension) -> Self {
        let (drawn, line, extensions) = (own.draw(), own.line_drawn(), own.extensions());
        Self { own, drawn, line, extensions }
    }

    fn all_lines(&self) -> impl Iterator<Item = &Line> {
        self.extensions.iter().chain([&self.line])
    }

    fn is_clear(&self, around: &Around) -> bool {
        let figure = self.drawn.figure.grown(CLEAR);
        let is_free = |label: &Area| {
            !label.overlaps(figure) && !self.all_lines().any(|(from, to)| label.grown(CLEAR / 2).is_crossed(*from, *to))
        };
        let fits = |(low, high): (i64, i64)| low <= self.drawn.area.left && self.drawn.area.right <= high;
        around.room.is_none_or(fits)
            && around.labels.iter().all(is_free)
            && !around.lines.iter().any(|(from, to)| figure.is_crossed(*from, *to))
    }

    fn meets(&self, other: &Self) -> bool {
        let runs_through = |one: &Self, other: &Self| {
            let figure = one.drawn.figure.grown(CLEAR);
            other.all_lines().any(|(from, to)| figure.is_crossed(*from, *to))
        };
        self.drawn.figure.grown(FIGURES_APART).overlaps(other.drawn.figure)
            || runs_through(self, other)
            || runs_through(other, self)
            || self.crosses(other)
            || other.crosses(self)
            || self.lies_beyond(other)
            || other.lies_beyond(self)
    }

    /// Whether its line crosses the other's, runs close beside it, or crosses an extension line of it that is none
    /// of its own too.
    fn crosses(&self, other: &Self) -> bool {
        let alike = self.own.runs == other.own.runs;
        let is_own = |(from, _): &Line| {
            let at = if self.own.runs == Runs::Level { from.x } else { from.y };
            alike && [self.own.ends.0, self.own.ends.1].iter().any(|end| (end - at).abs() < UM)
        };
        if alike {
            let stretch = |own: &Self| {
                if own.own.runs == Runs::Level {
                    (own.line.0.x.min(own.line.1.x), own.line.0.x.max(own.line.1.x))
                } else {
                    (own.line.0.y.min(own.line.1.y), own.line.0.y.max(own.line.1.y))
                }
            };
            let ((low, high), (l, h)) = (stretch(self), stretch(other));
            if low < h && l < high && (self.own.line - other.own.line).abs() < APART {
                return true;
            }
        } else if meet(self.line, other.line) {
            return true;
        }
        other.extensions.iter().any(|line| !is_own(line) && meet(self.line, *line))
    }

    /// Whether it lies further out than a longer one that it shares a stretch and an outline with.
    fn lies_beyond(&self, other: &Self) -> bool {
        let (one, long) = (&self.own, &other.own);
        let (own, others) = (one.line - one.outlines.0, long.line - long.outlines.0);
        one.runs == long.runs
            && one.outlines == long.outlines
            && own.signum() == others.signum()
            && one.ends.1 - one.ends.0 < long.ends.1 - long.ends.0
            && one.ends.0 < long.ends.1
            && long.ends.0 < one.ends.1
            && own.abs() > others.abs()
    }
}

/// Whether two lines, each level or upright, cross or touch within both; lines that run alike do not.
fn meet(one: Line, other: Line) -> bool {
    let (one, other) = (Area::between(one.0, one.1), Area::between(other.0, other.1));
    let is_level = |area: Area| area.width() >= area.height();
    let crossed = |level: Area, upright: Area| {
        level.left < upright.left && upright.left < level.right && upright.top < level.top && level.top < upright.bottom
    };
    match (is_level(one), is_level(other)) {
        (true, false) => crossed(one, other),
        (false, true) => crossed(other, one),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const MM: i64 = 1_000_000;

    fn upright(ends: (i64, i64)) -> Dimension {
        Dimension::upright((ends.0 * MM, ends.1 * MM), (0, 0), 0, "5 1/2")
    }

    #[test]
    fn the_shortest_lies_nearest_and_nothing_crosses() {
        let drawn = stack(vec![upright((0, 70)), upright((0, 20))], 0, -1);
        assert_eq!(drawn.len(), 2);
        assert!(drawn[1].area.left > drawn[0].area.left, "the second is shorter, and nearer");
        let crossing = stack(vec![upright((0, 20)), upright((10, 60))], 0, -1);
        assert_eq!(crossing.len(), 1, "an extension line would cross");
    }

    #[test]
    fn two_that_do_not_meet_share_a_line() {
        let drawn = stack(vec![upright((0, 20)), upright((20, 60))], 0, -1);
        let at = |n: usize| drawn[n].figure.right;
        assert_eq!(at(0), at(1));
    }

    #[test]
    fn what_finds_no_place_beside_stands_within() {
        let wanted: Vec<Wanted> = [(0, 20), (10, 60)]
            .into_iter()
            .map(|(low, high)| {
                let own = upright((low, high));
                let span = (5 * MM, 45 * MM);
                Wanted::default().beside(own.runs, own.ends, "20", 0, -1).within(own.runs, own.ends, "20", [span, span])
            })
            .collect();
        let placed = place(&wanted, &Around::default());
        let lines: Vec<i64> = placed.iter().map(|own| own.as_ref().unwrap().line).collect();
        assert!(lines[0] < 0 && lines[1] > 0, "{lines:?}");
        // A label on every place within: no room.
        let around = Around { labels: vec![Area::at(0, 0, 60 * MM, 60 * MM)], lines: Vec::new(), room: None };
        assert_eq!(place(&wanted, &around).iter().flatten().count(), 1);
    }
}
