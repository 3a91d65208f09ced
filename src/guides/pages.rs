//! Guides laid on pages, several on one where they fit.
//!
//! On shelves, turned a quarter where that helps. The planner of the sheets is no help here: it looks for the fewest
//! cuts of many equal pieces, and a dozen rectangles that are all different and on no ruler take it minutes.

use super::draft::{Draft, Known, SMALL, wrapped};
use super::model::{GuideSheet, ScaleBar};
use crate::design::model::Design;
use crate::design::variants::Page;
use crate::geometry::{Point, Rect};
use crate::words::{Words, guides};

/// A guide by its number, where it lies in its room, and whether it lies on its side.
type Put = (usize, Point, bool);

/// Between guides.
const GAP: i64 = 4_000_000;
/// The sentences of a page are reckoned this wide, so that they have room however they are set.
const SENTENCES: i64 = 150_000_000;
/// Lines of sentences that [`GuideSheet::HEAD`] holds.
const LINES: usize = 4;

/// The sentences for what must be known.
fn sentences(say: &Words, known: &[Known]) -> Vec<String> {
    let mut known = known.to_vec();
    known.sort_unstable();
    known.dedup();
    let told = known.into_iter().map(|known| match known {
        Known::Frame => guides::frames(say),
        Known::Half => guides::halves(say),
        Known::Part => guides::parts(say),
        Known::Template => guides::templates(say),
        Known::Mirrored => guides::mirrored_ones(say),
        Known::Scores => guides::score_strips(say),
        Known::Greeting => guides::greetings(say),
    });
    told.collect()
}

/// What a page leaves for guides below sentences about these.
pub(super) fn room(say: &Words, page: Page, known: &[Known]) -> Rect {
    let (low, high) = GuideSheet::room(page);
    let lines: usize =
        sentences(say, known).iter().map(|sentence| wrapped(sentence, SMALL, false, SENTENCES).len()).sum();
    let more = i64::try_from(lines.saturating_sub(LINES)).unwrap_or(0) * GuideSheet::LINE;
    Rect { left: low.x, bottom: low.y, right: high.x, top: high.y - more }
}

/// Whether something so large has a place in a room, on its side or not.
pub(super) const fn fits((width, height): (i64, i64), room: Rect) -> bool {
    width <= room.width() && height <= room.height() || height <= room.width() && width <= room.height()
}

/// Lays guides on pages. Each fits a page by itself.
pub(super) fn lay(design: &Design, drafts: &[Draft], page: Page) -> Vec<GuideSheet> {
    let say = design.words();
    let all: Vec<Known> = drafts.iter().flat_map(|draft| draft.known.iter().copied()).collect();
    let shared = room(say, page, &all);
    let side = |draft: &Draft| (draft.bounds().width(), draft.bounds().height());
    let (together, alone): (Vec<usize>, Vec<usize>) =
        (0..drafts.len()).partition(|index| fits(side(&drafts[*index]), shared));
    let sizes: Vec<(i64, i64)> = together.iter().map(|index| side(&drafts[*index])).collect();
    // Pages of guides, each with its place in the room and whether it lies on its side.
    let mut pages: Vec<(Rect, Vec<Put>)> = Vec::new();
    for index in alone {
        let room = room(say, page, &drafts[index].known);
        pages.push((room, vec![(index, Point::new(0, 0), side(&drafts[index]).0 > room.width())]));
    }
    for placed in on_shelves(&sizes, shared) {
        let own = placed.into_iter().map(|(place, at, turned)| (together[place], at, turned)).collect();
        pages.push((shared, own));
    }
    pages.sort_by_key(|(_, placed)| placed.iter().map(|(index, ..)| *index).min());
    let of = u32::try_from(pages.len()).unwrap_or(u32::MAX);
    let heading = guides::heading(say, &design.title.value);
    let sheets = pages.into_iter().zip(1..).map(|((room, mut placed), number)| {
        placed.sort_unstable_by_key(|(index, ..)| *index);
        let known: Vec<Known> = placed.iter().flat_map(|(index, ..)| drafts[*index].known.iter().copied()).collect();
        // What is laid from the bottom up hangs from the top instead, where a page is read from.
        let lay = |&(index, at, turned): &Put| {
            let (width, height) = side(&drafts[index]);
            let high = if turned { width } else { height };
            drafts[index].laid(Point::new(room.left + at.x, room.top - at.y - high), turned)
        };
        GuideSheet {
            page,
            number,
            of,
            heading: heading.clone(),
            sentences: sentences(say, &known),
            guides: placed.iter().map(lay).collect(),
            bars: bars(say),
        }
    });
    sheets.collect()
}

/// The bars of every page.
fn bars(say: &Words) -> Vec<ScaleBar> {
    let labels = ["2 in", "5 cm"].map(|label| say.measured(label));
    GuideSheet::BARS
        .iter()
        .zip(labels)
        .map(|((at, length), label)| ScaleBar { at: *at, length: *length, label })
        .collect()
}

/// Rectangles laid in rooms: each with its place from the upper left corner of its room, and whether it lies on its
/// side. The highest come first; each goes onto the first shelf that has room for it, lying or standing, else onto a
/// new one below the lowest shelf of the first room that holds one, else into a new room.
fn on_shelves(sizes: &[(i64, i64)], room: Rect) -> Vec<Vec<Put>> {
    // Lying down where it can, so that shelves are low.
    let ways = |place: usize| {
        let (width, height) = sizes[place];
        let mut ways = vec![(width, height, false), (height, width, true)];
        ways.sort_by_key(|(_, height, turned)| (*height, *turned));
        ways.retain(|(width, height, _)| *width <= room.width() && *height <= room.height());
        ways
    };
    let mut order: Vec<usize> = (0..sizes.len()).collect();
    order.sort_by_key(|place| std::cmp::Reverse(ways(*place).first().map_or(0, |(_, height, _)| *height)));
    let mut rooms: Vec<Vec<Shelf>> = Vec::new();
    let mut laid: Vec<Vec<Put>> = Vec::new();
    for place in order {
        let ways = ways(place);
        let found = (0..=rooms.len()).find_map(|number| {
            let shelves = rooms.get(number).map_or(&[][..], Vec::as_slice);
            let on = shelves.iter().position(|shelf| ways.iter().any(|way| shelf.holds(*way, room)));
            let below = shelves.last().map_or(0, |shelf| shelf.top + shelf.height + GAP);
            let new = || ways.iter().any(|(_, height, _)| below + height <= room.height());
            match on {
                Some(shelf) => Some((number, shelf, 0)),
                None if new() || number == rooms.len() => Some((number, shelves.len(), below)),
                None => None,
            }
        });
        let Some((number, shelf, below)) = found else { continue };
        if number == rooms.len() {
            rooms.push(Vec::new());
            laid.push(Vec::new());
        }
        if shelf == rooms[number].len() {
            let way = ways.iter().find(|(_, height, _)| below + height <= room.height());
            rooms[number].push(Shelf { top: below, height: way.map_or(0, |(_, height, _)| *height), used: 0 });
        }
        let shelf = &mut rooms[number][shelf];
        if let Some(&(width, _, turned)) = ways.iter().find(|way| shelf.holds(**way, room)) {
            laid[number].push((place, Point::new(shelf.used, shelf.top), turned));
            shelf.used += width + GAP;
        }
    }
    laid
}

/// A strip across a room with guides side by side.
struct Shelf {
    top: i64,
    height: i64,
    used: i64,
}

impl Shelf {
    const fn holds(&self, (width, height, _): (i64, i64, bool), room: Rect) -> bool {
        self.used + width <= room.width() && height <= self.height
    }
}
