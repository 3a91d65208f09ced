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
    } else if area.width() >= text::width(Lettering::Bare, &ring.to_string()) + 900 * UM
        && area.height() >= text::cap_height(Lettering::Bare) + 900 * UM
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

/// What a leftover says in itself, as much as there is room for: numeral and size, the numeral over
/// the size, the numeral, or nothing; in a tall narrow one turned to be read from the right. Keeps
/// clear of flags.
pub(super) fn put_leftover(canvas: &mut Canvas, area: Area, numeral: &str, size: &str) -> bool {
    let cap = text::cap_height(Lettering::Numeral);
    let numeral_width = text::width(Lettering::Numeral, numeral);
    let size_width = text::width(Lettering::Leftover, size);
    let beside = numeral_width + 2 * SIDE;
    // Room as read: width, height; where the size stands from the numeral's start, if it is said.
    let over = (numeral_width - size_width) / 2;
    let whole = ((leftover_width(numeral, size), cap), Some((beside, 0)));
    let stacked = ((size_width.max(numeral_width), 2 * cap + GAP), Some((over, cap + GAP)));
    let alone = ((numeral_width, cap), None);
    let is_tall = area.height() > area.width() * 3 / 2;
    let choices = [(whole, false), (stacked, false), (whole, true), (stacked, true), (alone, false), (alone, true)];
    for (((long, high), size_at), turned) in choices {
        if turned && !is_tall {
            continue;
        }
        let (width, height) = if turned { (high, long) } else { (long, high) };
        let Some(at) = free_spot(canvas, area, width, height) else { continue };
        // Along and down as read, from the label's upper left corner.
        let place = |along: i64, down: i64| {
            if turned {
                At::new(at.x - width / 2 + down, at.y + height / 2 - along)
            } else {
                At::new(at.x - width / 2 + along, at.y - height / 2 + down)
            }
        };
        let start = size_at.map_or(0, |(along, _)| (-along).max(0));
        let mut put = |role, at, words: &str| {
            if turned {
                canvas.turned_text(role, at, Anchor::Start, words)
            } else {
                canvas.text(role, at, Anchor::Start, words)
            }
        };
        let mut room = put(Lettering::Numeral, place(start, cap), numeral);
        if let Some((along, down)) = size_at {
            room = room.hull(put(Lettering::Leftover, place(start + along, cap + down), size));
        }
        // No leader passes between the two.
        canvas.taken.push(room);
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

/// Where labels may stand that are parted from what they name.
pub(super) struct Surroundings<'a> {
    /// The sheet.
    pub(super) sheet: Area,
    /// Parts with room for somebody else's label.
    pub(super) waste: &'a [Area],
    /// How far left and right a label may reach.
    pub(super) beside: (i64, i64),
}

/// Puts a label beside, over or under the sheet or in waste, with a leader to a dot in each of
/// `targets` (parts alike that lie in one row). Returns whether there was room.
pub(super) fn put_apart(canvas: &mut Canvas, apart: &Apart, targets: &[Area], around: &Surroundings<'_>) -> bool {
    let size = (apart.width(), apart.height());
    let places = places(size, targets, around);
    let free = places.iter().filter(|(left, home, _)| {
        let room = Area::at(left.x, left.y - size.1 / 2, size.0, size.1);
        home.is_none_or(|home| home.grown(-700 * UM).contains(room)) && canvas.is_free(room, 700 * UM)
    });
    // Leaders keep well off every label; just off it costs more.
    let leaders = free.flat_map(|(left, _, cost)| {
        let room = Area::at(left.x, left.y - size.1 / 2, size.0, size.1);
        [(900 * UM, 0), (250 * UM, 4000 * UM)].map(move |(clear, extra)| (room, *left, cost + extra, clear))
    });
    let found = leaders
        .filter_map(|(room, left, cost, clear)| {
            leader(canvas, room, targets, clear).map(|(length, from, dots)| (cost + length, left, from, dots))
        })
        .min_by_key(|(cost, ..)| *cost);
    let Some((_, left, from, dots)) = found else { return false };
    canvas.leader(from, &dots);
    // Later labels keep off this leader too.
    for (start, end) in std::iter::once(&from).chain(&dots).zip(&dots) {
        canvas.take_line(*start, *end);
    }
    apart.put(canvas, left);
    true
}

/// The shortest clear leader from a label's room: length, start, dots.
fn leader(canvas: &Canvas, room: Area, targets: &[Area], clear: i64) -> Option<(i64, At, Vec<At>)> {
    let (middle, off) = (room.middle(), 900 * UM);
    let starts = [
        At::new(room.left - off, middle.y),
        At::new(room.right + off, middle.y),
        At::new(middle.x, room.top - off),
        At::new(middle.x, room.bottom + off),
    ];
    let ways = starts.into_iter().flat_map(|from| rows(from, targets).into_iter().map(move |dots| (from, dots)));
    let clear_ones = ways.filter_map(|(from, dots)| {
        let (first, last) = (*dots.first()?, *dots.last()?);
        let is_crossed = |area: Area| area.is_crossed(from, first) || (first != last && area.is_crossed(first, last));
        let is_blocked = canvas.taken.iter().any(|taken| is_crossed(taken.grown(clear)));
        // Level, upright or well away from both: almost level looks like a slip.
        let (across, down) = ((from.x - first.x).abs(), (from.y - first.y).abs());
        let is_slip = (down != 0 && down * 11 < across) || (across != 0 && across * 4 < down);
        let is_bad = is_blocked || is_crossed(room) || is_slip;
        // A slanted leader costs more, and so does a bent one.
        let slant = if across == 0 || down == 0 { 0 } else { 5000 * UM + (across + down) };
        let is_bent = (across != 0 && first.y != last.y) || (down != 0 && first.x != last.x);
        let bend = if is_bent && first != last { 2000 * UM } else { 0 };
        let met = if canvas.ways.iter().any(|way| is_crossed(*way)) { 10_000 * UM } else { 0 };
        (!is_bad).then_some((across + down + slant + bend + met, from, dots))
    });
    clear_ones.min_by_key(|(length, ..)| *length)
}

/// Places for a label: its left end, the waste it must stay in if any, and what it costs.
fn places(size: (i64, i64), targets: &[Area], around: &Surroundings<'_>) -> Vec<(At, Option<Area>, i64)> {
    let Surroundings { sheet, waste, beside: (leftmost, right) } = around;
    let (width, height) = size;
    let Some(target) = targets.first().map(|area| area.middle()) else { return Vec::new() };
    let mut found = Vec::new();
    // On the right, level with the parts where that is free, else up or down.
    for step in -90..=90_i64 {
        let y = target.y + step * 500 * UM;
        if y > sheet.top - 500 * UM && y < sheet.bottom + 3500 * UM {
            for out in [4000 * UM, 8500 * UM] {
                found.push((At::new(sheet.right + out, y), None, step.abs() * 300 * UM));
            }
        }
        // Under and over the sheet.
        let x = (target.x + step * 500 * UM).max(*leftmost);
        for row in [0, 6500 * UM, 13_000 * UM] {
            let off = 2200 * UM + height / 2 + row;
            for y in [sheet.bottom + off, sheet.top - off] {
                found.push((At::new(x, y), None, step.abs() * 100 * UM + 3000 * UM + row));
            }
        }
    }
    found.retain(|(left, ..)| left.x + width <= *right);
    for home in *waste {
        for across in 0..=10 {
            for down in 0..=10 {
                let x = home.left + 800 * UM + (home.width() - width - 1600 * UM) * across / 10;
                let y = home.top + home.height() * down / 10;
                found.push((At::new(x, y), Some(*home), 6000 * UM));
            }
        }
    }
    found
}

/// Ways to put a dot into each target, all on one straight line along the row they form, from the end
/// nearer to the label on.
fn rows(from: At, targets: &[Area]) -> Vec<Vec<At>> {
    let (Some(first), Some(hull)) = (targets.first(), targets.iter().copied().reduce(Area::hull)) else {
        return Vec::new();
    };
    let margin = |long: i64| (long / 4).min(2000 * UM);
    let spots = |low: i64, high: i64, at: i64| {
        let (inner_low, inner_high) = (low + margin(high - low), high - margin(high - low));
        vec![at.clamp(inner_low, inner_high), (low + high) / 2, inner_low, inner_high]
    };
    let is_over = targets.len() > 1 && hull.height() > first.height();
    let mut found: Vec<Vec<At>> = Vec::new();
    if is_over {
        for x in spots(first.left, first.right, from.x) {
            found.push(targets.iter().map(|area| At::new(x, area.middle().y)).collect());
        }
    } else if targets.len() > 1 {
        for y in spots(first.top, first.bottom, from.y) {
            found.push(targets.iter().map(|area| At::new(area.middle().x, y)).collect());
        }
    } else {
        for y in spots(first.top, first.bottom, from.y) {
            for x in spots(first.left, first.right, from.x) {
                found.push(vec![At::new(x, y)]);
            }
        }
    }
    for dots in &mut found {
        dots.sort_by_key(|dot| (dot.x - from.x).abs() + (dot.y - from.y).abs());
    }
    found
}
