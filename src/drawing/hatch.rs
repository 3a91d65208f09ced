//! Hatching: a paper's sign, told apart in grey, drawn as real strokes inside a piece.
//!
//! A paper whose pattern has an "up" gets a sign with an up, turned with the piece, so that a piece
//! lying wrongly is seen at once. The sizes are a page study's of our own.

use super::area::Area;
use super::outline::{self, Outline};
use super::scene::{At, Item, Role};
use crate::design::model::{Design, Paper, PaperId, Pattern};
use crate::geometry::Angle;
use crate::weight::{Grade, Grammage};

/// The sign of a paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Hatch {
    /// White: the card base's paper.
    None,
    /// Chevrons that point up.
    Chevrons,
    /// Pins with their heads up.
    Pins,
    /// Dots.
    Dots,
    /// Diagonals: cardstock.
    Diagonals,
    /// A grid.
    Grid,
    /// Broken lines across the pattern.
    Broken,
    /// Rings.
    Rings,
}

const UM: i64 = 1000;
/// Lines and signs keep this far inside the outline, so that they do not thicken it.
const INSET: i64 = 200 * UM;
/// Signs keep this far from the outline and from what lies over them.
const CLEAR: i64 = 350 * UM;

/// Level lines at their heights, each with the dashes it consists of.
type Ruled = Vec<(i64, Vec<(i64, i64)>)>;

/// The signs that a paper would take, the best first.
type Wanted<'a> = dyn Fn(PaperId, &Paper) -> &'static [Hatch] + 'a;

/// The sign of a paper in a design: distinct for up to eight papers, the same on every page.
///
/// The base's paper stays white, papers with an "up" get chevrons and pins, the first plain
/// cardstock diagonals, the others the remaining signs in the order written.
#[must_use]
pub fn hatch_of(design: &Design, paper: PaperId) -> Hatch {
    let mut free = vec![
        Hatch::Chevrons,
        Hatch::Pins,
        Hatch::Diagonals,
        Hatch::Dots,
        Hatch::Grid,
        Hatch::Broken,
        Hatch::Rings,
        Hatch::None,
    ];
    let base = design.card.as_ref().map(|card| card.from);
    let mut given: Vec<Option<Hatch>> = vec![None; design.papers.len()];
    let rounds: [&Wanted<'_>; 4] = [
        &|id, paper| if Some(id) == base && paper.pattern == Pattern::Any { &[Hatch::None] } else { &[] },
        &|_, paper| match paper.pattern {
            Pattern::OneWay => &[Hatch::Chevrons, Hatch::Pins],
            Pattern::TwoWay => &[Hatch::Broken],
            Pattern::Any => &[],
        },
        &|_, paper| if is_plain_cardstock(paper) { &[Hatch::Diagonals] } else { &[] },
        &|_, _| {
            &[
                Hatch::Dots,
                Hatch::Grid,
                Hatch::Rings,
                Hatch::Broken,
                Hatch::Diagonals,
                Hatch::Pins,
                Hatch::Chevrons,
                Hatch::None,
            ]
        },
    ];
    for wanted in rounds {
        for id in design.paper_ids() {
            if given[id.0].is_some() {
                continue;
            }
            let sign = wanted(id, design.paper(id)).iter().find(|sign| free.contains(sign));
            if let Some(sign) = sign {
                free.retain(|other| other != sign);
                given[id.0] = Some(*sign);
            }
        }
    }
    // More papers than signs: names tell the rest apart.
    given.get(paper.0).copied().flatten().unwrap_or(Hatch::Dots)
}

/// Paper that is sold by grammage is cardstock from here on: common practice, no source.
const LIGHTEST_CARDSTOCK: Grammage = Grammage::grams(150);

/// Plain cardstock: sold by a cover or index weight or by a heavy grammage, and no pattern said.
fn is_plain_cardstock(paper: &Paper) -> bool {
    let Some(weight) = &paper.weight else { return false };
    let card = matches!(weight.value.grade, Some(Grade::Cover | Grade::Index | Grade::Bristol | Grade::Tag));
    let heavy = card || (weight.value.grade.is_none() && weight.value.grammage >= LIGHTEST_CARDSTOCK);
    heavy && paper.pattern_span.is_none() && paper.pattern == Pattern::Any
}

impl Hatch {
    /// Whether the sign turns with the piece.
    #[must_use]
    pub const fn has_up(self) -> bool {
        matches!(self, Self::Chevrons | Self::Pins | Self::Broken)
    }

    /// The strokes inside `area`, kept out of `holes` (labels with their plates, layers above).
    ///
    /// `quarter_turns` anticlockwise is how the piece lies. Lines are cut cleanly at the holes, signs
    /// that an edge or a hole would cut are left out whole.
    #[must_use]
    pub fn fill(self, area: Area, quarter_turns: u8, holes: &[Area]) -> Vec<Item> {
        let holes: Vec<Area> = holes.iter().copied().filter(|hole| hole.overlaps(area)).collect();
        let turns = if self.has_up() { quarter_turns % 4 } else { 0 };
        let is_clear = |sign: Area| area.contains(sign.grown(-1)) && !holes.iter().any(|hole| hole.overlaps(sign));
        let field = Field { area, turns, is_clear: &is_clear };
        let items = match self {
            Self::None => Vec::new(),
            Self::Chevrons => chevrons(&field),
            Self::Pins => pins(&field),
            Self::Dots => dots(&field),
            Self::Rings => rings(&field),
            Self::Diagonals => vec![lines(diagonals(area.grown(-INSET), &holes))],
            Self::Grid => vec![lines(grid(area.grown(-INSET), &holes))],
            Self::Broken => vec![lines(broken(area.grown(-INSET), turns, &holes))],
        };
        items.into_iter().filter(|item| !is_empty(item)).collect()
    }

    /// As [`Hatch::fill`] for a piece of any outline, turned by any angle. Lines and signs that have an
    /// up are drawn on the piece as it lay unturned and turned with it.
    #[must_use]
    pub fn fill_outline(self, outline: &Outline, angle: Angle, holes: &[Outline]) -> Vec<Item> {
        let angle = if self.has_up() { angle } else { Angle::NONE };
        let plain: Option<Vec<Area>> = holes.iter().map(Outline::plain).collect();
        if let (Some(area), Some(turns), Some(holes)) = (outline.plain(), angle.whole_quarters(), plain) {
            return self.fill(area, turns, &holes);
        }
        let about = outline.area().middle();
        let holes = holes.iter().filter(|hole| hole.area().overlaps(outline.area()));
        // Everything as it lies when the hatch's lines are level.
        let lying = |by: Angle| {
            let holes: Vec<Outline> = holes.clone().map(|hole| hole.turned(by.back(), about)).collect();
            (outline.turned(by.back(), about), holes)
        };
        let back = |items: Vec<Item>, by: Angle| items.into_iter().map(|item| item_turned(item, by, about)).collect();
        let ruled = |by: Angle, rule: &dyn Fn(Area) -> Ruled| {
            let (own, holes) = lying(by);
            back(vec![lines(clipped(&own, &holes, rule(own.area().grown(-INSET))))], by)
        };
        let signs = |draw: &dyn Fn(&Field<'_>) -> Vec<Item>| {
            let (own, holes) = lying(angle);
            let is_clear = |sign: Area| own.contains(sign.grown(-1)) && !holes.iter().any(|hole| hole.overlaps(sign));
            back(draw(&Field { area: own.area(), turns: 0, is_clear: &is_clear }), angle)
        };
        let whole = |area: Area, step: i64| {
            let levels = std::iter::successors(Some(area.top + step / 2), move |y| Some(y + step));
            levels.take_while(|y| *y < area.bottom).map(|y| (y, vec![(area.left, area.right)])).collect()
        };
        let items: Vec<Item> = match self {
            Self::None => Vec::new(),
            Self::Chevrons => signs(&chevrons),
            Self::Pins => signs(&pins),
            Self::Dots => signs(&dots),
            Self::Rings => signs(&rings),
            Self::Diagonals => ruled(Angle::left(4500), &|area| whole(area, 1500 * UM)),
            Self::Grid => [Angle::NONE, Angle::quarters(1)]
                .into_iter()
                .flat_map(|by| ruled(by, &|area| whole(area, GRID_STEP)))
                .collect(),
            Self::Broken => ruled(angle, &dashes),
        };
        items.into_iter().filter(|item| !is_empty(item)).collect()
    }
}

/// Where signs are put: an upright rectangle, how the piece lies in it, and whether a sign with its
/// clear room may stand at a place.
struct Field<'a> {
    area: Area,
    turns: u8,
    is_clear: &'a dyn Fn(Area) -> bool,
}

/// Level lines cut to an outline and at holes.
fn clipped(own: &Outline, holes: &[Outline], rule: Ruled) -> Vec<Vec<At>> {
    let mut runs = Vec::new();
    for (y, dashes) in rule {
        let holes: Vec<(i64, i64)> = holes.iter().flat_map(|hole| hole.stretches(y)).collect();
        for (left, right) in own.inner_stretches(y, INSET) {
            for (from, to) in &dashes {
                for (low, high) in without(left.max(*from), right.min(*to), holes.iter().copied(), SHORTEST) {
                    runs.push(vec![At::new(low, y), At::new(high, y)]);
                }
            }
        }
    }
    runs
}

fn item_turned(item: Item, by: Angle, about: At) -> Item {
    let each = |points: Vec<At>| points.into_iter().map(|at| outline::turned(at, by, about)).collect::<Vec<At>>();
    match item {
        Item::Strokes { role, runs } => Item::Strokes { role, runs: runs.into_iter().map(each).collect() },
        Item::Circles { role, radius, centres } => Item::Circles { role, radius, centres: each(centres) },
        other => other,
    }
}

const fn lines(runs: Vec<Vec<At>>) -> Item {
    Item::Strokes { role: Role::Hatch, runs }
}

fn is_empty(item: &Item) -> bool {
    match item {
        Item::Strokes { runs, .. } => runs.is_empty(),
        Item::Circles { centres, .. } => centres.is_empty(),
        _ => false,
    }
}

/// The middles of signs in a staggered lattice over an unturned piece, turned into its area, where a
/// sign of `width` x `height` stands clear of edges and holes.
fn lattice(field: &Field<'_>, sign: (i64, i64), pitch: (i64, i64)) -> Vec<At> {
    let Field { area, turns, is_clear } = *field;
    let (width, height) = if turns % 2 == 1 { (area.height(), area.width()) } else { (area.width(), area.height()) };
    let (sign_width, sign_height) = sign;
    let lying = if turns % 2 == 1 { (sign_height, sign_width) } else { sign };
    // The first sign stands the clear distance off the corner; a narrow piece gets its one column
    // or row in the middle.
    let start = |room: i64, sign: i64, pitch: i64| {
        let first = CLEAR + sign / 2;
        if room < 2 * CLEAR + sign + pitch / 2 { room / 2 } else { first }
    };
    let (first_x, first_y) = (start(width, sign_width, pitch.0), start(height, sign_height, pitch.1 * 2));
    let mut middles = Vec::new();
    let (mut row, mut v) = (0, first_y);
    while v + sign_height / 2 + CLEAR <= height + 1 {
        let mut u = first_x + if row % 2 == 1 { pitch.0 / 2 } else { 0 };
        while u + sign_width / 2 + CLEAR <= width + 1 {
            let at = turned(At::new(u, v), turns, width, height).moved(area.left, area.top);
            if is_clear(Area::round(at, lying.0, lying.1).grown(CLEAR - 1)) {
                middles.push(at);
            }
            u += pitch.0;
        }
        v += pitch.1;
        row += 1;
    }
    middles
}

/// A point of an unturned piece of `width` x `height` (y downward) after quarter turns
/// anticlockwise, from the upper left corner of the turned piece.
const fn turned(point: At, turns: u8, width: i64, height: i64) -> At {
    match turns % 4 {
        0 => point,
        1 => At::new(point.y, width - point.x),
        2 => At::new(width - point.x, height - point.y),
        _ => At::new(height - point.y, point.x),
    }
}

fn direction(x: i64, y: i64, turns: u8) -> At {
    turned(At::new(x, y), turns, 0, 0)
}

fn chevrons(field: &Field<'_>) -> Vec<Item> {
    let (half_width, half_height) = (600 * UM, 400 * UM);
    let middles = lattice(field, (2 * half_width, 2 * half_height), (3000 * UM, 1900 * UM));
    let corner = |at: At, x: i64, y: i64| {
        let by = direction(x, y, field.turns);
        at.moved(by.x, by.y)
    };
    let runs = middles
        .into_iter()
        .map(|at| {
            vec![corner(at, -half_width, half_height), corner(at, 0, -half_height), corner(at, half_width, half_height)]
        })
        .collect();
    vec![Item::Strokes { role: Role::HatchSign, runs }]
}

fn pins(field: &Field<'_>) -> Vec<Item> {
    let (head, half) = (260 * UM, 850 * UM);
    let middles = lattice(field, (2 * head, 2 * half), (2600 * UM, 2000 * UM));
    let moved = |at: At, y: i64| {
        let by = direction(0, y, field.turns);
        at.moved(by.x, by.y)
    };
    let runs = middles.iter().map(|at| vec![moved(*at, half), moved(*at, -half + head)]).collect();
    let centres = middles.iter().map(|at| moved(*at, -half + head)).collect();
    vec![Item::Strokes { role: Role::HatchSign, runs }, Item::Circles { role: Role::HatchHead, radius: head, centres }]
}

fn dots(field: &Field<'_>) -> Vec<Item> {
    let radius = 240 * UM;
    let centres = lattice(field, (2 * radius, 2 * radius), (2828 * UM, 1414 * UM));
    vec![Item::Circles { role: Role::HatchDot, radius, centres }]
}

fn rings(field: &Field<'_>) -> Vec<Item> {
    let radius = 600 * UM;
    let centres = lattice(field, (2 * radius, 2 * radius), (3400 * UM, 2000 * UM));
    vec![Item::Circles { role: Role::HatchRing, radius, centres }]
}

/// Takes the stretches `holes` out of `from..to`; what is shorter than `least` is dropped.
fn without(from: i64, to: i64, holes: impl Iterator<Item = (i64, i64)>, least: i64) -> Vec<(i64, i64)> {
    let mut holes: Vec<(i64, i64)> = holes.filter(|(low, high)| low < high).collect();
    holes.sort_unstable();
    let (mut kept, mut at) = (Vec::new(), from);
    for (low, high) in holes {
        if low > at {
            kept.push((at, low.min(to)));
        }
        at = at.max(high);
    }
    if at < to {
        kept.push((at, to));
    }
    kept.retain(|(low, high)| high - low >= least);
    kept
}

const SHORTEST: i64 = 300 * UM;
const GRID_STEP: i64 = 2200 * UM;

/// Lines rising to the right at 45 degrees, 1.5 mm apart: `x + y` is the same all along each.
fn diagonals(area: Area, holes: &[Area]) -> Vec<Vec<At>> {
    let step = 2121 * UM;
    let mut runs = Vec::new();
    let mut sum = area.left + area.top + step / 2;
    while sum < area.right + area.bottom {
        let (from, to) = (area.left.max(sum - area.bottom), area.right.min(sum - area.top));
        let holes = holes.iter().map(|hole| (hole.left.max(sum - hole.bottom), hole.right.min(sum - hole.top)));
        for (low, high) in without(from, to, holes, SHORTEST) {
            runs.push(vec![At::new(low, sum - low), At::new(high, sum - high)]);
        }
        sum += step;
    }
    runs
}

fn level(area: Area, y: i64, dashes: &[(i64, i64)], holes: &[Area], runs: &mut Vec<Vec<At>>) {
    for (from, to) in dashes {
        let holes = holes.iter().filter(|hole| hole.top < y && y < hole.bottom).map(|hole| (hole.left, hole.right));
        for (low, high) in without((*from).max(area.left), (*to).min(area.right), holes, SHORTEST) {
            runs.push(vec![At::new(low, y), At::new(high, y)]);
        }
    }
}

const fn swapped(area: Area) -> Area {
    Area { left: area.top, top: area.left, right: area.bottom, bottom: area.right }
}

fn swap_all(runs: Vec<Vec<At>>) -> Vec<Vec<At>> {
    runs.into_iter().map(|run| run.into_iter().map(|at| At::new(at.y, at.x)).collect()).collect()
}

fn grid(area: Area, holes: &[Area]) -> Vec<Vec<At>> {
    let rule = |area: Area, holes: &[Area]| {
        let step = GRID_STEP;
        let mut runs = Vec::new();
        let mut y = area.top + step / 2;
        while y < area.bottom {
            level(area, y, &[(area.left, area.right)], holes, &mut runs);
            y += step;
        }
        runs
    };
    let mut runs = rule(area, holes);
    let holes: Vec<Area> = holes.iter().map(|hole| swapped(*hole)).collect();
    runs.extend(swap_all(rule(swapped(area), &holes)));
    runs
}

fn broken(area: Area, turns: u8, holes: &[Area]) -> Vec<Vec<At>> {
    if turns % 2 == 1 {
        let holes: Vec<Area> = holes.iter().map(|hole| swapped(*hole)).collect();
        return swap_all(broken(swapped(area), 0, &holes));
    }
    let mut runs = Vec::new();
    for (y, dashes) in dashes(area) {
        level(area, y, &dashes, holes, &mut runs);
    }
    runs
}

/// Broken level lines, each with its dashes.
fn dashes(area: Area) -> Ruled {
    let (dash, gap, step) = (2200 * UM, 900 * UM, 1400 * UM);
    let mut rows = Vec::new();
    let (mut row, mut y) = (0, area.top + step / 2);
    while y < area.bottom {
        let mut dashes = Vec::new();
        let mut x = area.left - if row % 2 == 1 { (dash + gap) / 2 } else { 0 };
        while x < area.right {
            dashes.push((x, x + dash));
            x += dash + gap;
        }
        rows.push((y, dashes));
        y += step;
        row += 1;
    }
    rows
}

#[cfg(test)]
mod tests {
    use super::*;

    const ALL: [Hatch; 7] =
        [Hatch::Chevrons, Hatch::Pins, Hatch::Dots, Hatch::Diagonals, Hatch::Grid, Hatch::Broken, Hatch::Rings];

    fn points(item: &Item) -> Vec<(At, i64)> {
        match item {
            Item::Strokes { runs, .. } => runs.iter().flatten().map(|at| (*at, 0)).collect(),
            Item::Circles { radius, centres, .. } => centres.iter().map(|at| (*at, *radius)).collect(),
            _ => Vec::new(),
        }
    }

    #[test]
    fn nothing_leaves_the_piece_or_enters_a_hole() {
        let area = Area::at(3_000_000, 5_000_000, 21_000_000, 17_000_000);
        let hole = Area::at(9_000_000, 9_000_000, 7_000_000, 4_000_000);
        for hatch in ALL {
            for turns in 0..4 {
                let items = hatch.fill(area, turns, &[hole]);
                assert!(!items.is_empty(), "{hatch:?}");
                for (at, radius) in items.iter().flat_map(points) {
                    let box_of = Area::round(at, 2 * radius, 2 * radius);
                    assert!(area.contains(box_of), "{hatch:?}");
                    assert!(!hole.grown(-1).overlaps(box_of.grown(1)), "{hatch:?} {at:?}");
                }
            }
        }
    }

    #[test]
    fn a_turned_piece_has_its_signs_turned() {
        let area = Area::at(0, 0, 10_000_000, 10_000_000);
        let tip = |turns| match &Hatch::Chevrons.fill(area, turns, &[])[0] {
            Item::Strokes { runs, .. } => (runs[0][1].x - runs[0][0].x, runs[0][1].y - runs[0][0].y),
            other => panic!("{other:?}"),
        };
        assert_eq!(tip(0), (600_000, -800_000), "points up");
        assert_eq!(tip(1), (-800_000, -600_000), "points left after a quarter turn anticlockwise");
        assert_eq!(tip(2), (-600_000, 800_000), "points down");
    }

    #[test]
    fn the_smallest_piece_still_shows_its_sign() {
        // A swatch of 8 x 4 mm and a piece of 5 x 9 mm on the page.
        for hatch in ALL {
            for (width, height) in [(8_000_000, 4_000_000), (5_000_000, 9_000_000)] {
                assert!(!hatch.fill(Area::at(0, 0, width, height), 0, &[]).is_empty(), "{hatch:?}");
            }
        }
    }
}
