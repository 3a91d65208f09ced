//! Where flags stand: outside where the cut meets the sheet's edge, else in waste at an inner end,
//! else beside the cut in waste, else on a tie line from outside. No flag covers another, a label,
//! or a cut.

use super::cuts::{APART, Flagged, Line, THICK, TIP, edge_at};
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, centred};
use crate::drawing::scene::{Anchor, At, Item, Lettering, Role};
use crate::geometry::Edge;

const UM: i64 = 1000;
/// A bracket lies so far off the ends of its cuts.
const BRACKET: i64 = 1200 * UM;
/// A flag that had to give way stands so much further out, on a tie line.
const TIE: i64 = 2600 * UM;
/// A flag on a tie line reaches so far past the sheet's right edge where there is room elsewhere.
const MOST_RIGHT: i64 = 16_000 * UM;

/// A flag that has found its place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Standing {
    /// What it says.
    text: String,
    /// Where its tip points.
    tip: At,
    /// The way the tip points.
    points: Edge,
    /// Width of its body.
    width: i64,
    /// Rust lines that belong to it: a bracket with its ticks, a tie.
    strokes: Vec<Vec<At>>,
    /// All of it that nothing may cover: body and tip.
    pub(super) area: Area,
}

impl Standing {
    /// Whether its bracket or tie passes through an area.
    fn has_stroke_in(&self, area: Area) -> bool {
        self.strokes.iter().flat_map(|stroke| stroke.windows(2)).any(|pair| area.is_crossed(pair[0], pair[1]))
    }
}

/// What is on the sheet already when flags look for their places.
#[derive(Clone, Copy)]
pub(super) struct Ground<'a> {
    /// The sheet.
    pub(super) sheet: Area,
    /// Parts that are thrown away or left over.
    pub(super) waste: &'a [Area],
    /// How wide the label of each of them would like to be.
    pub(super) wishes: &'a [i64],
    /// Pieces.
    pub(super) pieces: &'a [Area],
    /// All cuts.
    pub(super) lines: &'a [Line],
    /// Labels that are down.
    pub(super) labels: &'a [Area],
    /// How far a flag may reach past the sheet's left and right edge.
    pub(super) beside: (i64, i64),
}

/// Body and tip of a flag that points `points` with its tip at `tip`.
fn area(tip: At, points: Edge, width: i64) -> Area {
    match points {
        Edge::Bottom => Area::at(tip.x - width / 2, tip.y - TIP - THICK, width, THICK + TIP),
        Edge::Top => Area::at(tip.x - width / 2, tip.y, width, THICK + TIP),
        Edge::Right => Area::at(tip.x - TIP - width, tip.y - THICK / 2, width + TIP, THICK),
        Edge::Left => Area::at(tip.x, tip.y - THICK / 2, width + TIP, THICK),
    }
}

fn standing(flag: &Flagged, tip: At, points: Edge, strokes: Vec<Vec<At>>) -> Standing {
    let width = flag.width();
    Standing { text: flag.text.clone(), tip, points, width, strokes, area: area(tip, points, width) }
}

/// The way a flag outside an edge points: inward.
const fn inward(edge: Edge) -> Edge {
    edge.opposite()
}

/// Moves `at` by `out` away from the sheet at `edge`.
const fn outward(at: At, edge: Edge, out: i64) -> At {
    match edge {
        Edge::Left => at.moved(-out, 0),
        Edge::Right => at.moved(out, 0),
        Edge::Top => at.moved(0, -out),
        Edge::Bottom => at.moved(0, out),
    }
}

/// A bracket beyond the ends of a run at `end` of each line, `out` away on the `edge` side.
fn bracket(ends: &[At], edge: Edge) -> Vec<Vec<At>> {
    let mut strokes: Vec<Vec<At>> = ends.iter().map(|end| vec![*end, outward(*end, edge, BRACKET)]).collect();
    if let (Some(first), Some(last)) = (ends.first(), ends.last()) {
        strokes.push(vec![outward(*first, edge, BRACKET), outward(*last, edge, BRACKET)]);
    }
    strokes
}

/// The ends of a flag's lines on one side: the upper or left ones, or the others.
fn ends(flag: &Flagged, first: bool) -> Vec<At> {
    flag.lines.iter().map(|(from, to)| if first { *from } else { *to }).collect()
}

fn middle(points: &[At]) -> At {
    let hull = points.iter().map(|at| Area::between(*at, *at)).reduce(Area::hull);
    hull.map_or(At::new(0, 0), Area::middle)
}

/// The sides of the sheet that a flag may stand on from outside: where all its lines end.
fn open_edges(flag: &Flagged, ground: &Ground<'_>) -> Vec<(Edge, bool)> {
    let mut found = Vec::new();
    for first in [true, false] {
        let edges: Vec<Option<Edge>> =
            ends(flag, first).iter().map(|end| edge_at(ground.sheet, *end, flag.upright)).collect();
        if let Some(Some(edge)) = edges.first()
            && edges.iter().all(|other| other == &Some(*edge))
        {
            found.push((*edge, first));
        }
    }
    // A wide flag goes where there is room for it.
    let room = |edge: Edge| match edge {
        Edge::Left => ground.beside.0,
        Edge::Right => ground.beside.1,
        _ => i64::MAX,
    };
    let depth = flag.width() + TIP + if flag.lines.len() > 1 { BRACKET } else { 0 };
    found.sort_by_key(|(edge, first)| (room(*edge) < depth, !*first));
    found
}

/// A flag that stands outside, before neighbours are spread.
struct Outside {
    edge: Edge,
    /// Wanted place along the edge.
    want: i64,
    /// What it takes along the edge.
    takes: i64,
    flag: usize,
    first: bool,
    at: i64,
}

/// Finds a place for every flag.
pub(super) fn place(flags: &[Flagged], ground: &Ground<'_>) -> Vec<Standing> {
    let mut outside: Vec<Outside> = Vec::new();
    let mut inside: Vec<usize> = Vec::new();
    for (n, flag) in flags.iter().enumerate() {
        let open = open_edges(flag, ground);
        let wants: Vec<Outside> = open
            .iter()
            .map(|(edge, first)| {
                let ends = ends(flag, *first);
                let middle = middle(&ends);
                let want = if flag.upright { middle.x } else { middle.y };
                let takes = if flag.upright { flag.width() } else { THICK };
                Outside { edge: *edge, want, takes, flag: n, first: *first, at: want }
            })
            .collect();
        let is_clear = |new: &Outside| {
            outside
                .iter()
                .all(|old| old.edge != new.edge || (old.want - new.want).abs() >= (old.takes + new.takes) / 2 + APART)
        };
        let chosen = wants.iter().position(is_clear).or(if wants.is_empty() { None } else { Some(0) });
        match chosen {
            Some(chosen) => outside.extend(wants.into_iter().nth(chosen)),
            None => inside.push(n),
        }
    }
    for edge in Edge::ALL {
        spread(&mut outside, edge);
    }
    let mut found: Vec<(usize, Standing)> =
        outside.iter().map(|place| (place.flag, stand_outside(&flags[place.flag], place))).collect();
    // Those with the fewest choices first.
    let mut waiting: Vec<(usize, usize)> = inside
        .iter()
        .map(|n| (candidates(&flags[*n], ground).iter().filter(|c| is_free(c, ground, &found)).count(), *n))
        .collect();
    waiting.sort_unstable();
    for (_, n) in waiting {
        let mut choices = candidates(&flags[n], ground);
        choices.sort_by_key(|choice| choice.cost);
        let choice = choices.into_iter().find(|choice| is_free(choice, ground, &found));
        let standing = choice.map(|choice| choice.standing).or_else(|| tie(&flags[n], ground, &found));
        if let Some(standing) = standing {
            found.push((n, standing));
        }
    }
    found.sort_by_key(|(n, _)| *n);
    found.into_iter().map(|(_, standing)| standing).collect()
}

/// Moves the flags of one edge apart, each as little as possible (isotonic regression by pooling).
fn spread(outside: &mut [Outside], edge: Edge) {
    let mut order: Vec<usize> = (0..outside.len()).filter(|n| outside[*n].edge == edge).collect();
    order.sort_by_key(|n| (outside[*n].want, *n));
    // Offsets that a chain of touching flags has from its first; pools of (sum of wishes, members).
    let mut offset = 0;
    let mut offsets = Vec::new();
    for (k, n) in order.iter().enumerate() {
        if k > 0 {
            offset += (outside[order[k - 1]].takes + outside[*n].takes) / 2 + APART;
        }
        offsets.push(offset);
    }
    let mut pools: Vec<(i64, i64)> = Vec::new();
    for (k, n) in order.iter().enumerate() {
        pools.push((outside[*n].want - offsets[k], 1));
        while let [.., before, last] = pools[..] {
            if before.0 * last.1 <= last.0 * before.1 {
                break;
            }
            pools.pop();
            pools.pop();
            pools.push((before.0 + last.0, before.1 + last.1));
        }
    }
    let mut k = 0;
    for (sum, members) in pools {
        for _ in 0..members {
            outside[order[k]].at = sum.div_euclid(members) + offsets[k];
            k += 1;
        }
    }
}

fn stand_outside(flag: &Flagged, place: &Outside) -> Standing {
    let ends = ends(flag, place.first);
    let end = middle(&ends);
    let at = if flag.upright { At::new(place.at, end.y) } else { At::new(end.x, place.at) };
    let is_run = ends.len() > 1;
    let mut strokes = if is_run { bracket(&ends, place.edge) } else { Vec::new() };
    let from = if is_run { BRACKET } else { 0 };
    let half = middle_span(&ends, flag.upright);
    let moved = (place.at - place.want).abs();
    // On its bracket a flag may slide; a single cut's flag moves out on a tie line.
    if moved <= 300 * UM && !is_run {
        return standing(flag, end, inward(place.edge), strokes);
    }
    if is_run && moved <= (half - 800 * UM).max(300 * UM) {
        return standing(flag, outward(at, place.edge, from), inward(place.edge), strokes);
    }
    let tip = outward(at, place.edge, from + TIE);
    strokes.push(vec![outward(end, place.edge, from), tip]);
    standing(flag, tip, inward(place.edge), strokes)
}

/// Half the stretch that a run's ends take along the edge.
fn middle_span(ends: &[At], upright: bool) -> i64 {
    let hull = ends.iter().map(|at| Area::between(*at, *at)).reduce(Area::hull);
    hull.map_or(0, |hull| if upright { hull.width() / 2 } else { hull.height() / 2 })
}

struct Candidate {
    standing: Standing,
    /// Everything it covers: the flag, and a bracket.
    areas: Vec<Area>,
    cost: i64,
}

fn is_free(candidate: &Candidate, ground: &Ground<'_>, found: &[(usize, Standing)]) -> bool {
    candidate.areas.iter().all(|area| {
        let inner = area.grown(-50 * UM);
        ground.sheet.contains(inner)
            && !ground.labels.iter().any(|label| label.overlaps(area.grown(APART)))
            && !found.iter().any(|(_, flag)| flag.area.overlaps(area.grown(APART)) || flag.has_stroke_in(*area))
            && !ground.lines.iter().any(|line| inner.is_crossed(line.from, line.to))
            && (ground.waste.iter().any(|waste| waste.contains(inner))
                || ground.pieces.iter().any(|piece| piece.contains(inner)))
    })
}

/// Places inside the sheet, cheaper the better: 2 in waste at an end, 3 beside the cut in waste, then
/// the same on a piece.
fn candidates(flag: &Flagged, ground: &Ground<'_>) -> Vec<Candidate> {
    let mut found = Vec::new();
    let mut add = |standing: Standing, bracket: Option<Area>, cost: i64| {
        let home = ground.waste.iter().position(|waste| waste.contains(standing.area.grown(-50 * UM)));
        let in_waste = home.is_some();
        // Leave room for the leftover's own label where there is a choice.
        let is_greedy = home.is_some_and(|home| {
            let (waste, flag) = (ground.waste[home], standing.area);
            let beside = (flag.left - waste.left).max(waste.right - flag.right);
            let below = (flag.top - waste.top).max(waste.bottom - flag.bottom);
            beside < ground.wishes[home] + 2500 * UM && below < 4500 * UM
        });
        // On a piece it keeps away from the piece's label where it can.
        let room = standing.area.grown(2500 * UM);
        let is_near = !in_waste && ground.labels.iter().any(|label| label.overlaps(room));
        let cost = cost + if is_greedy { 50 } else { 0 } + if is_near { 60 } else { 0 };
        let areas = std::iter::once(standing.area).chain(bracket).collect();
        found.push(Candidate { standing, areas, cost: cost + if in_waste { 0 } else { 1000 } });
    };
    let (low_edge, high_edge) = if flag.upright { (Edge::Top, Edge::Bottom) } else { (Edge::Left, Edge::Right) };
    for (first, edge) in [(false, high_edge), (true, low_edge)] {
        let ends = ends(flag, first);
        if ends.len() == 1 {
            add(standing(flag, ends[0], inward(edge), Vec::new()), None, 10);
            continue;
        }
        let strokes = bracket(&ends, edge);
        let hull = strokes.iter().flatten().map(|at| Area::between(*at, *at)).reduce(Area::hull);
        let (from, to) = (outward(ends[0], edge, BRACKET), outward(*ends.last().unwrap_or(&ends[0]), edge, BRACKET));
        for part in 1..16 {
            let tip = At::new(from.x + (to.x - from.x) * part / 16, from.y + (to.y - from.y) * part / 16);
            let off = (part - 8).abs();
            add(standing(flag, tip, inward(edge), strokes.clone()), hull.map(|hull| hull.grown(-100 * UM)), 10 + off);
        }
    }
    // Beside the last line of a run, or any place along a single cut.
    let beside: Vec<(At, At)> = match flag.lines[..] {
        [one] => vec![one],
        [first, .., last] => vec![last, first],
        [] => Vec::new(),
    };
    for (from, to) in beside {
        for part in 1..16 {
            let tip = At::new(from.x + (to.x - from.x) * part / 16, from.y + (to.y - from.y) * part / 16);
            let off = (part - 8).abs();
            let sides = if flag.upright { [Edge::Left, Edge::Right] } else { [Edge::Top, Edge::Bottom] };
            for points in sides {
                add(standing(flag, tip, points, Vec::new()), None, 100 + off);
            }
        }
    }
    found
}

/// The last resort: outside the nearest edge where it is free, with a tie line to the cut, or to the
/// bracket of a run. Further out where the edge is full, and within the page's width where that can be.
fn tie(flag: &Flagged, ground: &Ground<'_>, found: &[(usize, Standing)]) -> Option<Standing> {
    let outs = [800 * UM, 7600 * UM, 14_400 * UM, 21_200 * UM];
    let most = Some(ground.sheet.right + ground.beside.1.max(MOST_RIGHT));
    let clear = outs.into_iter().find_map(|out| tie_at(flag, ground, found, out, most));
    let clear = clear.or_else(|| outs.into_iter().find_map(|out| tie_at(flag, ground, found, out, None)));
    // A flag through a label's edge is better than a cut without its number.
    clear.or_else(|| tie_at(flag, &Ground { labels: &[], ..*ground }, found, outs[1], None))
}

fn tie_at(
    flag: &Flagged,
    ground: &Ground<'_>,
    found: &[(usize, Standing)],
    out: i64,
    most: Option<i64>,
) -> Option<Standing> {
    let mut best: Option<(i64, Standing)> = None;
    for first in [true, false] {
        let ends = ends(flag, first);
        let own_edge = match (flag.upright, first) {
            (true, true) => Edge::Top,
            (true, false) => Edge::Bottom,
            (false, true) => Edge::Left,
            (false, false) => Edge::Right,
        };
        let is_run = ends.len() > 1;
        let strokes = if is_run { bracket(&ends, own_edge) } else { Vec::new() };
        let target = if is_run { outward(middle(&ends), own_edge, BRACKET) } else { middle(&ends) };
        for edge in Edge::ALL {
            let (low, high, level) = if edge.is_side() {
                (ground.sheet.top, ground.sheet.bottom, target.y)
            } else {
                (ground.sheet.left, ground.sheet.right, target.x)
            };
            // Straight across first, else a little along the edge.
            let places = std::iter::once(level)
                .chain(std::iter::successors(Some(low), |at| Some(at + 500 * UM)).take_while(|at| *at <= high));
            for along in places {
                let at = match edge {
                    Edge::Left => At::new(ground.sheet.left, along),
                    Edge::Right => At::new(ground.sheet.right, along),
                    Edge::Top => At::new(along, ground.sheet.top),
                    Edge::Bottom => At::new(along, ground.sheet.bottom),
                };
                let tip = outward(at, edge, out);
                let mut own = strokes.clone();
                own.push(vec![target, tip]);
                let new = standing(flag, tip, inward(edge), own);
                let blocked = most.is_some_and(|most| new.area.right > most)
                    || found.iter().any(|(_, other)| {
                        other.area.overlaps(new.area.grown(APART))
                            || other.has_stroke_in(new.area)
                            || other.area.grown(APART).is_crossed(target, tip)
                    })
                    || ground.labels.iter().any(|label| label.grown(APART).is_crossed(target, tip));
                if blocked {
                    continue;
                }
                let length = (target.x - tip.x).abs() + (target.y - tip.y).abs();
                let crossed = ground.lines.iter().filter(|line| cross((line.from, line.to), (target, tip))).count();
                // Off the straight way counts double.
                let slant = (along - level).abs();
                let cost = length + slant + i64::try_from(crossed).unwrap_or(0) * 12_000 * UM;
                if best.as_ref().is_none_or(|(old, _)| cost < *old) {
                    best = Some((cost, new));
                }
            }
        }
    }
    best.map(|(_, standing)| standing)
}

/// Whether two straight lines cross inside both.
fn cross(one: (At, At), other: (At, At)) -> bool {
    let side = |line: (At, At), at: At| {
        let (ax, ay) = (i128::from(line.1.x - line.0.x), i128::from(line.1.y - line.0.y));
        let (bx, by) = (i128::from(at.x - line.0.x), i128::from(at.y - line.0.y));
        (ax * by - ay * bx).signum()
    };
    side(one, other.0) * side(one, other.1) < 0 && side(other, one.0) * side(other, one.1) < 0
}

/// Draws flags: brackets and ties first, then the flags over them.
pub(super) fn draw(canvas: &mut Canvas, flags: &[Standing]) {
    let strokes: Vec<Vec<At>> = flags.iter().flat_map(|flag| flag.strokes.iter().cloned()).collect();
    if !strokes.is_empty() {
        canvas.items.push(Item::Strokes { role: Role::Bracket, runs: strokes });
    }
    for stroke in flags.iter().flat_map(|flag| &flag.strokes) {
        for pair in stroke.windows(2) {
            canvas.take_line(pair[0], pair[1]);
        }
    }
    for flag in flags {
        canvas.items.push(Item::Path { role: Role::Flag, points: outline(flag), closed: true });
        let body = body(flag);
        canvas.items.push(Item::Text {
            role: Lettering::Flag,
            at: centred(Lettering::Flag, body.middle()),
            anchor: Anchor::Middle,
            turned: false,
            text: flag.text.clone(),
        });
        canvas.taken.push(flag.area);
    }
}

fn body(flag: &Standing) -> Area {
    let mut body = flag.area;
    match flag.points {
        Edge::Bottom => body.bottom -= TIP,
        Edge::Top => body.top += TIP,
        Edge::Right => body.right -= TIP,
        Edge::Left => body.left += TIP,
    }
    body
}

fn outline(flag: &Standing) -> Vec<At> {
    let Area { left, top, right, bottom } = body(flag);
    let corner = At::new;
    match flag.points {
        Edge::Bottom => {
            vec![corner(left, top), corner(right, top), corner(right, bottom), flag.tip, corner(left, bottom)]
        }
        Edge::Top => vec![corner(left, bottom), corner(left, top), flag.tip, corner(right, top), corner(right, bottom)],
        Edge::Right => {
            vec![corner(left, top), corner(right, top), flag.tip, corner(right, bottom), corner(left, bottom)]
        }
        Edge::Left => {
            vec![corner(right, top), corner(left, top), flag.tip, corner(left, bottom), corner(right, bottom)]
        }
    }
}
