//! What stands in the parts of a sheet: rings and sizes, bare numbers, leftover numerals; leaders
//! where a part is too small for any of them.

use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, centred, ring_radius};
use crate::drawing::scene::{Anchor, At, Lettering};
use crate::drawing::text;

const UM: i64 = 1000;
/// Between a ring and its size.
const GAP: i64 = 1700 * UM;
/// Between things beside each other.
const SIDE: i64 = 1500 * UM;
/// A label keeps so far off its part's edges.
const CLEAR: i64 = 900 * UM;
/// A leftover's numeral may come this near to its edges.
const EDGE: i64 = 500 * UM;

/// How a piece says what it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Label {
    /// Ring over size.
    Over,
    /// Ring beside size.
    Beside,
    /// The bare number.
    Bare,
    /// Outside, with a leader.
    Leader,
}

/// Width of ring and size beside each other.
fn beside_width(ring: u32, size: &str) -> i64 {
    2 * ring_radius(ring) + SIDE + text::width(Lettering::Figure, size)
}

/// The label that a piece has room for.
pub(super) fn label_for(area: Area, ring: u32, size: &str) -> Label {
    let diameter = 2 * ring_radius(ring);
    let over_height = diameter + GAP + text::cap_height(Lettering::Figure);
    let width = text::width(Lettering::Figure, size).max(diameter);
    let fits = |width: i64, height: i64| area.width() >= width + 2 * CLEAR && area.height() >= height + 2 * CLEAR;
    if fits(width, over_height) {
        Label::Over
    } else if fits(beside_width(ring, size), diameter) {
        Label::Beside
    } else if area.width() >= text::width(Lettering::Bare, &ring.to_string()) + 1300 * UM
        && area.height() >= text::cap_height(Lettering::Bare) + 1300 * UM
    {
        Label::Bare
    } else {
        Label::Leader
    }
}

/// The room that a label takes in its piece; with it hatching and flags keep clear.
pub(super) fn room(area: Area, label: Label, ring: u32, size: &str) -> Vec<Area> {
    let mut canvas = Canvas::new();
    put(&mut canvas, area, label, ring, size);
    canvas.taken
}

/// Puts a label in the middle of its piece.
pub(super) fn put(canvas: &mut Canvas, area: Area, label: Label, ring: u32, size: &str) {
    let middle = area.middle();
    let radius = ring_radius(ring);
    match label {
        Label::Over => {
            let cap = text::cap_height(Lettering::Figure);
            let top = middle.y - (2 * radius + GAP + cap) / 2;
            canvas.ring(At::new(middle.x, top + radius), ring);
            canvas.text(Lettering::Figure, At::new(middle.x, top + 2 * radius + GAP + cap), Anchor::Middle, size);
        }
        Label::Beside => {
            let left = middle.x - beside_width(ring, size) / 2;
            put_beside(canvas, At::new(left, middle.y), ring, size);
        }
        Label::Bare => {
            canvas.centred_text(Lettering::Bare, middle, &ring.to_string());
        }
        Label::Leader => {}
    }
}

fn put_beside(canvas: &mut Canvas, left: At, ring: u32, size: &str) {
    let radius = ring_radius(ring);
    canvas.ring(left.moved(radius, 0), ring);
    let at = centred(Lettering::Figure, left.moved(2 * radius + SIDE, 0));
    canvas.text(Lettering::Figure, at, Anchor::Start, size);
}

/// Width of a leftover's numeral and size beside each other.
pub(super) fn leftover_width(numeral: &str, size: &str) -> i64 {
    text::width(Lettering::Numeral, numeral) + 2 * SIDE + text::width(Lettering::Leftover, size)
}

/// What a leftover says in itself, as much as there is room for: numeral and size, the numeral, or
/// nothing; in a tall narrow one turned to be read from the right. Keeps clear of flags.
pub(super) fn put_leftover(canvas: &mut Canvas, area: Area, numeral: &str, size: &str) -> bool {
    let cap = text::cap_height(Lettering::Numeral);
    let numeral_width = text::width(Lettering::Numeral, numeral);
    let both = leftover_width(numeral, size);
    let is_tall = area.height() > area.width() * 3 / 2;
    let choices =
        [(both, true, false), (both, true, true), (numeral_width, false, false), (numeral_width, false, true)];
    for (long, with_size, turned) in choices {
        if turned && !is_tall {
            continue;
        }
        let (width, height) = if turned { (cap, long) } else { (long, cap) };
        let Some(at) = free_spot(canvas, area, width, height) else { continue };
        let from =
            if turned { At::new(at.x + cap / 2, at.y + long / 2) } else { At::new(at.x - long / 2, at.y + cap / 2) };
        let along = numeral_width + 2 * SIDE;
        let to = if turned { from.moved(0, -along) } else { from.moved(along, 0) };
        let mut put = |role, at, words: &str| {
            if turned {
                canvas.turned_text(role, at, Anchor::Start, words)
            } else {
                canvas.text(role, at, Anchor::Start, words)
            }
        };
        put(Lettering::Numeral, from, numeral);
        if with_size {
            put(Lettering::Leftover, to, size);
        }
        return true;
    }
    false
}

/// The free middle nearest to the part's own middle for a text of a width and height.
fn free_spot(canvas: &Canvas, area: Area, width: i64, height: i64) -> Option<At> {
    let inner = Area {
        left: area.left + EDGE + width / 2,
        right: area.right - EDGE - width / 2,
        top: area.top + EDGE + height / 2,
        bottom: area.bottom - EDGE - height / 2,
    };
    if inner.left > inner.right || inner.top > inner.bottom {
        return None;
    }
    let middle = area.middle();
    let mut best: Option<(i64, At)> = None;
    for across in 0..=24 {
        for down in 0..=24 {
            let at = At::new(inner.left + inner.width() * across / 24, inner.top + inner.height() * down / 24);
            let off = (at.x - middle.x).abs() + 2 * (at.y - middle.y).abs();
            if best.is_none_or(|(old, _)| off < old) && canvas.is_free(Area::round(at, width, height), 900 * UM) {
                best = Some((off, at));
            }
        }
    }
    best.map(|(_, at)| at)
}

/// A label that stands apart from what it names.
pub(super) enum Apart {
    /// A piece: ring and size.
    Piece(u32, String),
    /// A leftover: numeral and size, or the numeral alone.
    Leftover(String, Option<String>),
}

impl Apart {
    fn width(&self) -> i64 {
        match self {
            Self::Piece(ring, size) => beside_width(*ring, size),
            Self::Leftover(numeral, None) => text::width(Lettering::Numeral, numeral),
            Self::Leftover(numeral, Some(size)) => {
                text::width(Lettering::Numeral, numeral) + SIDE + text::width(Lettering::Leftover, size)
            }
        }
    }

    fn height(&self) -> i64 {
        match self {
            Self::Piece(ring, _) => 2 * ring_radius(*ring),
            Self::Leftover(..) => text::cap_height(Lettering::Numeral),
        }
    }

    fn put(&self, canvas: &mut Canvas, left: At) {
        match self {
            Self::Piece(ring, size) => put_beside(canvas, left, *ring, size),
            Self::Leftover(numeral, size) => {
                let at = centred(Lettering::Numeral, left);
                canvas.text(Lettering::Numeral, at, Anchor::Start, numeral);
                if let Some(size) = size {
                    let right = text::width(Lettering::Numeral, numeral) + SIDE;
                    canvas.text(Lettering::Leftover, at.moved(right, 0), Anchor::Start, size);
                }
            }
        }
    }
}

/// Puts a label beside the sheet or in waste, with a leader to a dot in each of `targets` (parts
/// alike that lie in one row). Returns whether there was room.
pub(super) fn put_apart(
    canvas: &mut Canvas,
    apart: &Apart,
    targets: &[Area],
    sheet: Area,
    waste: &[Area],
    right: i64,
) -> bool {
    let (width, height) = (apart.width(), apart.height());
    let mut best: Option<(i64, At, At, Vec<At>)> = None;
    let mut consider = |left: At, home: Option<Area>, cost: i64| {
        let room = Area::at(left.x, left.y - height / 2, width, height);
        let is_in = home.is_none_or(|home| home.grown(-700 * UM).contains(room));
        if !is_in || !canvas.is_free(room, 700 * UM) {
            return;
        }
        for from in [At::new(room.left - 900 * UM, left.y), At::new(room.right + 900 * UM, left.y)] {
            let Some(dots) = dots(from, targets) else { continue };
            let end = *dots.last().unwrap_or(&from);
            let crosses_label = canvas.taken.iter().any(|taken| taken.grown(300 * UM).is_crossed(from, end));
            let crosses_self = room.is_crossed(from, end);
            let level = (from.y - end.y).abs();
            let nearly_level = level != 0 && level * 11 < (from.x - end.x).abs();
            if crosses_label || crosses_self || nearly_level {
                continue;
            }
            let length = (from.x - end.x).abs() + (from.y - end.y).abs();
            let total = cost + length;
            if best.as_ref().is_none_or(|(old, ..)| total < *old) {
                best = Some((total, left, from, dots));
            }
        }
    };
    // Beside the sheet on the right, level with the parts where that is free, else up or down.
    if let Some(first) = targets.first() {
        let middle = first.middle().y;
        for step in -60..=60_i64 {
            let y = middle + step * 500 * UM;
            if y > sheet.top - 500 * UM && y < sheet.bottom + 3500 * UM {
                for out in [4000 * UM, 8500 * UM] {
                    let left = At::new(sheet.right + out, y);
                    if left.x + width <= right {
                        consider(left, None, step.abs() * 300 * UM);
                    }
                }
            }
        }
    }
    for home in waste {
        for across in 0..=10 {
            for down in 0..=10 {
                let x = home.left + 800 * UM + (home.width() - width - 1600 * UM) * across / 10;
                let y = home.top + home.height() * down / 10;
                consider(At::new(x, y), Some(*home), 6000 * UM);
            }
        }
    }
    let Some((_, left, from, dots)) = best else { return false };
    canvas.leader(from, &dots);
    let end = *dots.last().unwrap_or(&from);
    // Later labels keep off this leader too.
    canvas.taken.push(Area::between(from, end).grown(200 * UM));
    apart.put(canvas, left);
    true
}

/// A dot in each target, on one straight line that ends in the last; where one line cannot reach
/// them all, the nearest alone.
fn dots(from: At, targets: &[Area]) -> Option<Vec<At>> {
    let last = targets.iter().max_by_key(|area| {
        let middle = area.middle();
        (middle.x - from.x).abs() + (middle.y - from.y).abs()
    })?;
    let is_alone = targets.len() == 1;
    let inside = |area: &Area| {
        let middle = area.middle();
        // Level where the part is high enough for it; a long part is met near its end.
        let is_level = area.top + 500 * UM <= from.y && from.y <= area.bottom - 500 * UM;
        let (left, right) = (area.left + 2000 * UM, area.right - 2000 * UM);
        let x = if is_alone && left < right { from.x.clamp(left, right) } else { middle.x };
        At::new(x, if is_level { from.y } else { middle.y })
    };
    let end = inside(last);
    if from.y == end.y {
        let mut each: Vec<At> = targets.iter().map(inside).collect();
        if each.iter().all(|dot| dot.y == from.y) {
            each.sort_by_key(|dot| (dot.x - from.x).abs());
            return Some(each);
        }
    }
    // A slanted line: through every target where its course allows.
    let mut each: Vec<At> = Vec::new();
    for area in targets {
        let dot = if area == last { Some(end) } else { on_line(from, end, area) };
        each.extend(dot);
    }
    each.sort_by_key(|dot| (dot.x - from.x).abs() + (dot.y - from.y).abs());
    Some(each)
}

/// The point of a straight line at the height or breadth of a part's middle, if it lies inside.
fn on_line(from: At, to: At, area: &Area) -> Option<At> {
    let middle = area.middle();
    let (dx, dy) = (i128::from(to.x - from.x), i128::from(to.y - from.y));
    let at_x = (dx != 0).then(|| {
        let y = i128::from(from.y) + dy * i128::from(middle.x - from.x) / dx;
        At::new(middle.x, i64::try_from(y).unwrap_or(from.y))
    });
    let at_y = (dy != 0).then(|| {
        let x = i128::from(from.x) + dx * i128::from(middle.y - from.y) / dy;
        At::new(i64::try_from(x).unwrap_or(from.x), middle.y)
    });
    [at_x, at_y].into_iter().flatten().find(|at| area.grown(-200 * UM).holds(*at))
}
