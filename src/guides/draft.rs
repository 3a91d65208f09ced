//! A guide by itself, before it has a place on a page.
//!
//! Takes lines in coordinates of its own, gives a [`Guide`] moved, or turned a quarter and moved. Both are exact.

use super::model::{Guide, Label, Line, Role};
use crate::fonts::TEXT;
use crate::fonts::metrics::advance;
use crate::geometry::{Point, Polygon, Rect};

/// A title, 9 pt, nanometres.
const TITLE: i64 = 3_175_000;
/// What stands under it or on the paper, 9 pt too: no letter of a page is smaller.
pub(super) const SMALL: i64 = 3_175_000;
/// From one line of letters to the next, beyond their size.
const LEADING: i64 = 900_000;
/// Between a guide and its title.
const BELOW: i64 = 1_500_000;
/// A title may be so wide, whatever its guide is.
const WIDEST: i64 = 48_000_000;

/// What must be known of a guide, said once on its page.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Known {
    Frame,
    Half,
    Part,
    Template,
    Mirrored,
    Scores,
    Greeting,
}

/// A guide in coordinates of its own.
#[derive(Debug, Clone)]
pub(super) struct Draft {
    pub(super) word: String,
    pub(super) title: String,
    /// Under the title, a line each.
    pub(super) notes: Vec<String>,
    pub(super) alt: String,
    pub(super) known: Vec<Known>,
    pub(super) lines: Vec<Line>,
    pub(super) labels: Vec<Label>,
}

impl Draft {
    /// The rectangle round its lines.
    pub(super) fn drawn(&self) -> Rect {
        let points = self.lines.iter().flat_map(|line| line.points.iter());
        let rects = points.map(|point| Rect::between(*point, *point));
        rects.reduce(Rect::hull).unwrap_or(Rect::at(0, 0, 0, 0))
    }

    /// With its title, and what stands under that, below its lines.
    pub(super) fn titled(mut self) -> Self {
        let drawn = self.drawn();
        let widest = drawn.width().max(WIDEST);
        let mut baseline = drawn.bottom - BELOW;
        let title = wrapped(&self.title, TITLE, true, widest).into_iter().map(|text| (text, TITLE, true));
        let notes = self.notes.iter().flat_map(|note| wrapped(note, SMALL, false, widest));
        for (text, size, bold) in title.chain(notes.map(|text| (text, SMALL, false))) {
            baseline -= size;
            let half = (width(&text, size, bold) + 1) / 2;
            self.labels.push(Label { text, at: Point::new(drawn.left + half, baseline), size, turned: false, bold });
            baseline -= LEADING;
        }
        self
    }

    /// The rectangle round all of it, letters included.
    pub(super) fn bounds(&self) -> Rect {
        self.labels.iter().map(lettered).fold(self.drawn(), Rect::hull)
    }

    /// On a page, with the lower left corner of its bounds there; turned a quarter to the left first where asked.
    pub(super) fn laid(&self, at: Point, turned: bool) -> Guide {
        let bounds = self.bounds();
        let turns = u8::from(turned);
        let (x, y) = (at.x - bounds.left, at.y - bounds.bottom);
        let place = |point: &Point| point.quarter_turned_in(turns, bounds).moved(x, y);
        let line = |line: &Line| Line { points: line.points.iter().map(place).collect(), ..line.clone() };
        let label = |label: &Label| Label { at: place(&label.at), turned: label.turned != turned, ..label.clone() };
        Guide {
            word: self.word.clone(),
            title: self.title.clone(),
            alt: self.alt.clone(),
            lines: self.lines.iter().map(line).collect(),
            labels: self.labels.iter().map(label).collect(),
        }
    }
}

/// The rectangle that the letters of a label take up, from the foot of their descenders to the top of their
/// ascenders: 1/4 of the size below the baseline, 3/4 above it.
pub(super) fn lettered(label: &Label) -> Rect {
    let half = (width(&label.text, label.size, label.bold) + 1) / 2;
    let Point { x, y } = label.at;
    let (low, high) = (label.size / 4, label.size - label.size / 4);
    if label.turned {
        Rect { left: x - high, right: x + low, bottom: y - half, top: y + half }
    } else {
        Rect { left: x - half, right: x + half, bottom: y - low, top: y + high }
    }
}

/// How wide a text is at a size, nanometres.
pub(super) fn width(text: &str, size: i64, bold: bool) -> i64 {
    advance(TEXT, if bold { 700 } else { 400 }, text) * size / 1000
}

/// A text broken at spaces, so that no line but one long word is wider.
pub(super) fn wrapped(text: &str, size: i64, bold: bool, widest: i64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        match lines.last_mut() {
            Some(line) if width(&format!("{line} {word}"), size, bold) <= widest => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

/// The closed lines of a polygon, outer edge first.
pub(super) fn cut_along(polygon: &Polygon) -> Vec<Line> {
    polygon.rings().map(|ring| Line { role: Role::Cut, points: ring.to_vec(), closed: true }).collect()
}

/// An open line.
pub(super) fn open(role: Role, points: Vec<Point>) -> Line {
    Line { role, points, closed: false }
}
