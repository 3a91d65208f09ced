//! What stands in the parts of a sheet: rings and sizes, bare numbers, leftover numerals; leaders
//! where a part is too small for any of them.

use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, centred, ring_radius};
use crate::drawing::scene::{Anchor, At, Item, Lettering, Role};
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

/// A leader through another piece costs as much as one that is so much longer.
const THROUGH: i64 = 14_000 * UM;

/// What is said of a piece.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Said {
    /// Its ring number.
    pub(super) ring: u32,
    /// Its size as it lies.
    pub(super) size: String,
    /// What else.
    pub(super) tag: Option<Tag>,
}

/// What is said of a piece besides ring and size.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Tag {
    /// The name of a leftover that is kept, line by line.
    Name(Vec<String>),
    /// That it shows the back of the paper, and where the back's "up" points to on the sheet.
    Back(String, Option<Points>),
}

/// Where an arrow points to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Points {
    /// To the top of the sheet.
    Up,
    /// To its bottom.
    Down,
}

/// Height and width of the small arrow of a back's "up", and the gap before it.
const ARROW: (i64, i64, i64) = (3600 * UM, 1600 * UM, 900 * UM);

impl Tag {
    const fn lettering(&self) -> Lettering {
        match self {
            Self::Name(_) => Lettering::Small,
            Self::Back(..) => Lettering::UpWord,
        }
    }

    /// Its lines.
    fn lines(&self) -> &[String] {
        match self {
            Self::Name(lines) => lines,
            Self::Back(word, _) => std::slice::from_ref(word),
        }
    }

    fn width(&self) -> i64 {
        let arrow = if matches!(self, Self::Back(_, Some(_))) { ARROW.1 + ARROW.2 } else { 0 };
        self.lines().iter().map(|line| text::width(self.lettering(), line)).max().unwrap_or(0) + arrow
    }

    fn height(&self) -> i64 {
        let arrow = if matches!(self, Self::Back(_, Some(_))) { ARROW.0 } else { 0 };
        let lines = i64::try_from(self.lines().len()).unwrap_or(1);
        (lines * text::cap_height(self.lettering()) + (lines - 1) * GAP).max(arrow)
    }

    /// A name with each word on its own line.
    fn in_words(&self) -> Option<Self> {
        let Self::Name(lines) = self else { return None };
        let words: Vec<String> = lines.iter().flat_map(|line| line.split(' ')).map(str::to_owned).collect();
        (words.len() > lines.len()).then_some(Self::Name(words))
    }

    /// Puts it down in a room of its own width and height.
    fn put(&self, canvas: &mut Canvas, left: At) {
        let cap = text::cap_height(self.lettering());
        let lines = self.lines();
        let mut baseline = left.y - self.height() / 2 + cap;
        if let [line] = lines {
            canvas.text(self.lettering(), centred(self.lettering(), left), Anchor::Start, line);
        } else {
            for line in lines {
                let middle = At::new(left.x + self.width() / 2, baseline);
                canvas.text(self.lettering(), middle, Anchor::Middle, line);
                baseline += cap + GAP;
            }
        }
        let Self::Back(word, Some(points)) = self else { return };
        let x = left.x + text::width(self.lettering(), word) + ARROW.2 + ARROW.1 / 2;
        let half = ARROW.0 / 2;
        let up = match points {
            Points::Up => -1,
            Points::Down => 1,
        };
        let (tip, foot) = (At::new(x, left.y + up * half), At::new(x, left.y - up * half));
        let neck = tip.moved(0, -up * 1600 * UM);
        canvas.line(Role::Up, neck, foot);
        let points = vec![tip, neck.moved(ARROW.1 / 2, 0), neck.moved(-ARROW.1 / 2, 0)];
        canvas.items.push(Item::Path { role: Role::UpHead, points, closed: true });
        canvas.taken.push(Area::round(At::new(x, left.y), ARROW.1, ARROW.0));
    }
}

/// How a piece says what it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Label {
    /// Ring over size over what else there is.
    Over,
    /// All of it beside each other.
    Beside,
    /// The ring alone.
    Ring,
    /// The bare number, over what else there is.
    Bare,
    /// Outside, with a leader.
    Leader,
}

/// Width of ring, size and tag beside each other.
fn beside_width(said: &Said) -> i64 {
    let tag = said.tag.as_ref().map_or(0, |tag| SIDE + tag.width());
    let size = if said.size.is_empty() { 0 } else { SIDE + text::width(Lettering::Figure, &said.size) };
    2 * ring_radius(said.ring) + size + tag
}

/// Height of a tag under something else.
fn under(said: &Said) -> i64 {
    said.tag.as_ref().map_or(0, |tag| GAP + tag.height())
}

/// The label that a piece has room for, its name broken into lines where that makes it fit.
pub(super) fn label_for(area: Area, said: &mut Said) -> Label {
    let label = label_with(area, said);
    if let (Label::Bare | Label::Leader, Some(tag)) = (label, said.tag.as_ref().and_then(Tag::in_words)) {
        let broken = Said { tag: Some(tag), ..said.clone() };
        let other = label_with(area, &broken);
        if other == Label::Over {
            *said = broken;
            return other;
        }
    }
    label
}

/// The label of a piece that is told by its number alone: a ring, or the bare number where that has no room.
pub(super) fn number_for(area: Area, said: &mut Said) -> Label {
    let across = 2 * ring_radius(said.ring) + 2 * CLEAR;
    if area.width() >= across && area.height() >= across {
        return Label::Ring;
    }
    match label_with(area, said) {
        Label::Bare => Label::Bare,
        _ => Label::Leader,
    }
}

fn label_with(area: Area, said: &Said) -> Label {
    let diameter = 2 * ring_radius(said.ring);
    let over_height = diameter + GAP + text::cap_height(Lettering::Figure) + under(said);
    let tag = said.tag.as_ref().map_or(0, Tag::width);
    let width = text::width(Lettering::Figure, &said.size).max(diameter).max(tag);
    let fits = |width: i64, height: i64| area.width() >= width + 2 * CLEAR && area.height() >= height + 2 * CLEAR;
    if fits(width, over_height) {
        Label::Over
    } else if fits(beside_width(said), diameter) {
        Label::Beside
    } else if area.width() >= text::width(Lettering::Bare, &said.ring.to_string()).max(tag) + 900 * UM
        && area.height() >= text::cap_height(Lettering::Bare) + under(said) + 900 * UM
    {
        Label::Bare
    } else {
        Label::Leader
    }
}

/// The room that a label takes in its piece; with it hatching and flags keep clear.
pub(super) fn room(area: Area, label: Label, said: &Said) -> Vec<Area> {
    let mut canvas = Canvas::new();
    put(&mut canvas, area, label, said);
    canvas.taken
}

/// Puts a label in the middle of its piece.
pub(super) fn put(canvas: &mut Canvas, area: Area, label: Label, said: &Said) {
    let middle = area.middle();
    let radius = ring_radius(said.ring);
    // A tag under what reaches down to `bottom`.
    let put_under = |canvas: &mut Canvas, bottom: i64| {
        if let Some(tag) = &said.tag {
            tag.put(canvas, At::new(middle.x - tag.width() / 2, bottom + GAP + tag.height() / 2));
        }
    };
    match label {
        Label::Over => {
            let cap = text::cap_height(Lettering::Figure);
            let top = middle.y - (2 * radius + GAP + cap + under(said)) / 2;
            let baseline = top + 2 * radius + GAP + cap;
            canvas.ring(At::new(middle.x, top + radius), said.ring);
            canvas.text(Lettering::Figure, At::new(middle.x, baseline), Anchor::Middle, &said.size);
            put_under(canvas, baseline);
        }
        Label::Beside => put_beside(canvas, At::new(middle.x - beside_width(said) / 2, middle.y), said),
        Label::Ring => {
            canvas.ring(middle, said.ring);
        }
        Label::Bare => {
            let cap = text::cap_height(Lettering::Bare);
            let at = middle.moved(0, -under(said) / 2);
            canvas.centred_text(Lettering::Bare, at, &said.ring.to_string());
            put_under(canvas, at.y + cap / 2);
        }
        Label::Leader => {}
    }
}

fn put_beside(canvas: &mut Canvas, left: At, said: &Said) {
    let radius = ring_radius(said.ring);
    canvas.ring(left.moved(radius, 0), said.ring);
    let start = left.moved(2 * radius + SIDE, 0);
    if !said.size.is_empty() {
        canvas.text(Lettering::Figure, centred(Lettering::Figure, start), Anchor::Start, &said.size);
    }
    if let Some(tag) = &said.tag {
        tag.put(canvas, start.moved(text::width(Lettering::Figure, &said.size) + SIDE, 0));
    }
}

/// What every piece is that has no label of its own, in the first free rows from `top` on down, from `left` to
/// `right`.
pub(super) fn put_others(canvas: &mut Canvas, head: &str, others: &[Said], (left, right): (i64, i64), top: i64) {
    // Rows no wider than the room, the first behind the head.
    let mut rows: Vec<Vec<(i64, &Said)>> = vec![Vec::new()];
    let mut x = left + text::width(Lettering::Small, head);
    let mut widest = x;
    for said in others {
        let wide = 2 * SIDE + beside_width(said);
        if x + wide > right && x > left {
            rows.push(Vec::new());
            x = left - 2 * SIDE;
        }
        if let Some(row) = rows.last_mut() {
            row.push((x + 2 * SIDE, said));
        }
        x += wide;
        widest = widest.max(x);
    }
    let height = others.iter().map(|said| 2 * ring_radius(said.ring)).max().unwrap_or(0);
    let pitch = height + 1500 * UM;
    let whole = height + pitch * (i64::try_from(rows.len()).unwrap_or(1) - 1);
    let mut middle = top + height / 2;
    while !canvas.is_free(Area::at(left, middle - height / 2, widest - left, whole), 700 * UM) {
        middle += 1000 * UM;
    }
    canvas.text(Lettering::Small, centred(Lettering::Small, At::new(left, middle)), Anchor::Start, head);
    for row in rows {
        for (x, said) in row {
            put_beside(canvas, At::new(x, middle), said);
        }
        middle += pitch;
    }
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
        if turned && !is_tall || size.is_empty() && size_at.is_some() {
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
    /// A piece.
    Piece(Said),
    /// A leftover: numeral and size, or the numeral alone.
    Leftover(String, Option<String>),
}

impl Apart {
    fn width(&self) -> i64 {
        match self {
            Self::Piece(said) => beside_width(said),
            Self::Leftover(numeral, None) => text::width(Lettering::Numeral, numeral),
            Self::Leftover(numeral, Some(size)) => {
                text::width(Lettering::Numeral, numeral) + SIDE + text::width(Lettering::Leftover, size)
            }
        }
    }

    fn height(&self) -> i64 {
        match self {
            Self::Piece(said) => 2 * ring_radius(said.ring),
            // Lines of letters under each other keep as far apart as lines of a text.
            Self::Leftover(..) => text::cap_height(Lettering::Numeral) + 400 * UM,
        }
    }

    fn put(&self, canvas: &mut Canvas, left: At) {
        match self {
            Self::Piece(said) => put_beside(canvas, left, said),
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
    /// Pieces, which a leader to another one passes through only where it must.
    pub(super) pieces: &'a [Area],
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
    let mut found: Option<(i64, At, At, Vec<At>)> = None;
    for (room, left, cost, clear) in leaders {
        // The place alone costs as much as the best so far.
        if found.as_ref().is_some_and(|(best, ..)| cost >= *best) {
            continue;
        }
        if let Some((length, from, dots)) = leader(canvas, room, targets, around.pieces, clear)
            && found.as_ref().is_none_or(|(best, ..)| cost + length < *best)
        {
            found = Some((cost + length, left, from, dots));
        }
    }
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
fn leader(canvas: &Canvas, room: Area, targets: &[Area], pieces: &[Area], clear: i64) -> Option<(i64, At, Vec<At>)> {
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
        // Level, upright or well away from both: almost level looks like a slip.
        let (across, down) = ((from.x - first.x).abs(), (from.y - first.y).abs());
        let is_slip = (down != 0 && down * 11 < across) || (across != 0 && across * 4 < down);
        if is_slip || is_crossed(room) || canvas.taken.iter().any(|taken| is_crossed(taken.grown(clear))) {
            return None;
        }
        // A slanted leader costs more, and so does a bent one.
        let slant = if across == 0 || down == 0 { 0 } else { 5000 * UM + (across + down) };
        let is_bent = (across != 0 && first.y != last.y) || (down != 0 && first.x != last.x);
        let bend = if is_bent && first != last { 2000 * UM } else { 0 };
        let met = if canvas.ways.iter().any(|way| is_crossed(*way)) { 10_000 * UM } else { 0 };
        let through =
            pieces.iter().filter(|piece| !targets.contains(piece) && is_crossed(piece.grown(-100 * UM))).count();
        let through = i64::try_from(through).unwrap_or(0) * THROUGH;
        Some((across + down + slant + bend + met + through, from, dots))
    });
    clear_ones.min_by_key(|(length, ..)| *length)
}

/// Places for a label: its left end, the waste it must stay in if any, and what it costs.
fn places(size: (i64, i64), targets: &[Area], around: &Surroundings<'_>) -> Vec<(At, Option<Area>, i64)> {
    let Surroundings { sheet, waste, beside: (leftmost, right), .. } = around;
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
