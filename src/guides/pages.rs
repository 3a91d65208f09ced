//! Guides laid on pages, several on one where they fit.
//!
//! The project's own planner places them: each guide, with its title and a gap, is a piece, what a page leaves for
//! guides is the sheet, and pieces may lie on their side. Its cuts are nobody's work here; that they run edge to
//! edge costs little room. What it finds no place for has a page of its own.

use super::draft::{Draft, Known, SMALL, wrapped};
use super::model::{GuideSheet, ScaleBar};
use crate::cutting::plan::Use;
use crate::cutting::search;
use crate::design::model::{
    Design, Fixed, From, Paper, PaperId, Pattern, Piece, PieceId, PieceKind, Sheets, Side, Stated, Version,
};
use crate::design::variants::Page;
use crate::geometry::{Point, Rect};
use crate::length::{Length, Size};
use crate::shape::{Form, Shape};
use crate::source::{Span, Spanned};
use crate::words::{Words, guides};

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
    let mut pages: Vec<(Rect, Vec<(usize, Point, bool)>)> = Vec::new();
    for index in alone {
        let room = room(say, page, &drafts[index].known);
        pages.push((room, vec![(index, Point::new(0, 0), side(&drafts[index]).0 > room.width())]));
    }
    for placed in planned(design, &sizes, shared) {
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
        let lay = |&(index, at, turned): &(usize, Point, bool)| {
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

/// Rectangles in as few rooms as are found: each with its place from the upper left corner of the room, and
/// whether it lies on its side.
fn planned(design: &Design, sizes: &[(i64, i64)], room: Rect) -> Vec<Vec<(usize, Point, bool)>> {
    let mut left: Vec<usize> = (0..sizes.len()).collect();
    let mut pages = Vec::new();
    let area: i128 = sizes.iter().map(|(width, height)| i128::from(width + GAP) * i128::from(height + GAP)).sum();
    let sheet = room.hull(Rect::at(room.left, room.bottom, room.width() + GAP, room.height() + GAP));
    let mut count = usize::try_from(area / sheet.area() + 1).unwrap_or(sizes.len()).min(sizes.len());
    while !left.is_empty() && count <= sizes.len() {
        let plan = search::plan_enough(&as_cutting(design, sizes, sheet, count));
        if plan.missing.is_empty() {
            for sheet in &plan.sheets {
                let mut own = Vec::new();
                for part in &sheet.parts {
                    let Use::Piece { piece: PieceId(place), quarter_turns, .. } = part.r#use else { continue };
                    own.push((place, Point::new(part.rect.left, part.rect.bottom), quarter_turns % 2 == 1));
                    left.retain(|other| *other != place);
                }
                // Guides all differ, so no two sheets are cut alike.
                pages.push(own);
            }
            break;
        }
        count += 1;
    }
    pages.extend(left.into_iter().map(|place| vec![(place, Point::new(0, 0), sizes[place].0 > room.width())]));
    pages
}

/// The guides as pieces to be cut from so many sheets: the planner's own question.
fn as_cutting(design: &Design, sizes: &[(i64, i64)], sheet: Rect, count: usize) -> Design {
    let units = design.units;
    let of = |nm: i64| Length::of(nm, units);
    let span = Span::default();
    let sheets = Sheets {
        count: u32::try_from(count).unwrap_or(u32::MAX),
        size: Size::new(of(sheet.width()), of(sheet.height())),
        named: None,
        span,
    };
    let paper = Paper {
        name: String::new(),
        span,
        sheets: vec![sheets],
        pattern: Pattern::Any,
        pattern_span: None,
        edge_strip: None,
        weight: None,
        thickness: None,
        grain: None,
        back: None,
        different: None,
        kept_from: None,
        fixed: Fixed::default(),
        also: Vec::new(),
        ways: 1,
        cells: None,
    };
    let piece = |&(width, height): &(i64, i64)| Piece {
        name: String::new(),
        span,
        kind: PieceKind::Plain,
        size: Size::new(of(width + GAP), of(height + GAP)),
        shape: Shape::by_hand(Form::Rectangle, width + GAP, height + GAP),
        shape_span: span,
        size_span: span,
        stated: Stated::Outright,
        from: From::Paper(PaperId(0)),
        from_span: span,
        upright: None,
        per_card: Some(1),
        greeting: None,
        side: Side::Front,
    };
    let version = Version { name: String::new(), span, cards: 1, papers: Vec::new(), side: None, photo: None };
    let mut question = design.clone();
    question.cards = Spanned::new(1, span);
    question.card = None;
    question.papers = vec![paper];
    question.pieces = sizes.iter().map(piece).collect();
    question.versions = vec![version];
    question.layers = Vec::new();
    question.has_front = false;
    question
}
