//! A sheet as strokes and labels: the guides, and what stands at the foot of the page, the same in both PDFs.
//!
//! Coordinates as in a [`GuideSheet`]: nanometres from the lower left corner.

use crate::drawing::style::{self, Pen};
use crate::fonts::{self, metrics};
use crate::guides::model::{Guide, GuideSheet, Label, Line, Role, ScaleBar};
use crate::length::{NM_PER_INCH, NM_PER_MM};
use crate::words::{Words, true_size as words};

/// Nanometres in a tenth of a point, 1/720 in, times nine: a whole number.
const NM_PER_TENTH_TIMES_9: i64 = NM_PER_INCH / 80;

/// How a stroke is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Drawn {
    /// As a line of a guide.
    As(Role),
    /// As a bar to lay a ruler on.
    Bar,
}

impl Drawn {
    /// Every way.
    pub(super) const ALL: [Self; 6] = [
        Self::As(Role::Cut),
        Self::As(Role::Score),
        Self::As(Role::Fold),
        Self::As(Role::Draw),
        Self::As(Role::Note),
        Self::Bar,
    ];

    /// Its word.
    pub(super) const fn word(self) -> &'static str {
        match self {
            Self::As(role) => role.word(),
            Self::Bar => "bar",
        }
    }

    /// Its pen.
    pub(super) const fn pen(self) -> Pen {
        match self {
            Self::As(role) => style::guide_pen(role),
            Self::Bar => style::pen(crate::drawing::scene::Role::Bar),
        }
    }
}

/// Strokes and labels that are one thing to a reader.
pub(super) struct Picture {
    /// For those who cannot see it.
    pub(super) alt: String,
    /// Its strokes.
    pub(super) strokes: Vec<(Drawn, Line)>,
    /// Its words.
    pub(super) labels: Vec<Label>,
}

/// Points as nanometres, in tenths of a point.
pub(super) const fn tenths_of_point(tenths: i64) -> i64 {
    tenths * NM_PER_TENTH_TIMES_9 / 9
}

/// The width of words, nanometres.
pub(super) fn width(text: &str, size: i64, bold: bool) -> i64 {
    metrics::advance(fonts::TEXT, if bold { 700 } else { 400 }, text) * size / 1000
}

/// The height that a page has for its heading and sentences, from the margin down to the highest of its guides.
pub(super) fn head(sheet: &GuideSheet) -> i64 {
    let (_, height) = sheet.page.size_nm();
    let top = height - GuideSheet::MARGIN;
    let lines = sheet.guides.iter().flat_map(|guide| &guide.lines).flat_map(|line| &line.points);
    let labels = sheet.guides.iter().flat_map(|guide| &guide.labels);
    let reach = |label: &Label| {
        let up = if label.turned { width(&label.text, label.size, label.bold) / 2 } else { label.size * 3 / 4 };
        label.at.y + up
    };
    let highest = lines.map(|point| point.y).chain(labels.map(reach)).max();
    highest.map_or(GuideSheet::HEAD, |highest| top - highest).max(0)
}

/// What a page shows besides its head and its sentences, in reading order.
pub(super) fn pictures(sheet: &GuideSheet, say: &Words) -> Vec<Picture> {
    let mut pictures: Vec<Picture> = sheet.guides.iter().map(guide_picture).collect();
    pictures.push(bars(sheet, say));
    pictures.extend(legend(sheet, say));
    pictures
}

fn guide_picture(guide: &Guide) -> Picture {
    Picture {
        alt: guide.alt.clone(),
        strokes: guide.lines.iter().map(|line| (Drawn::As(line.role), line.clone())).collect(),
        labels: guide.labels.iter().map(|label| Label { text: with_signs(&label.text), ..label.clone() }).collect(),
    }
}

/// Words with a sign between the sides of a size: `4 1/4 × 5 1/2 in`.
pub(super) fn with_signs(text: &str) -> String {
    let mut signed = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(at) = rest.find(" x ") {
        let (before, behind) = (&rest[..at], &rest[at + 3..]);
        let is_size =
            before.ends_with(|c: char| c.is_ascii_digit()) && behind.starts_with(|c: char| c.is_ascii_digit());
        signed.push_str(before);
        signed.push_str(if is_size { " × " } else { " x " });
        rest = behind;
    }
    signed + rest
}

/// The size of the letters beside bars and legend.
const SMALL: i64 = tenths_of_point(110);
/// From a line to the words beside it.
const BESIDE: i64 = 2_500_000;
/// Half the height of an end mark; those between reach half as far.
const MARK: i64 = 2_200_000;

fn stroke(drawn: Drawn, from: (i64, i64), to: (i64, i64)) -> (Drawn, Line) {
    let role = if let Drawn::As(role) = drawn { role } else { Role::Note };
    let points = [from, to].map(|(x, y)| crate::geometry::Point::new(x, y)).to_vec();
    (drawn, Line { role, points, closed: false })
}

/// Words that begin at a point, level with a line.
pub(super) fn beside(text: &str, x: i64, y: i64) -> Label {
    // Capitals are 0.705 em high: half of that below the line.
    let at = crate::geometry::Point::new(x + width(text, SMALL, false) / 2, y - SMALL * 705 / 2000);
    Label { text: text.to_owned(), at, size: SMALL, turned: false, bold: false }
}

/// Marks every quarter inch or centimetre, whichever parts the bar evenly.
fn step(bar: &ScaleBar) -> i64 {
    [NM_PER_INCH / 4, 10 * NM_PER_MM].into_iter().find(|step| bar.length % step == 0).unwrap_or(bar.length)
}

fn bars(sheet: &GuideSheet, say: &Words) -> Picture {
    let mut picture = Picture { alt: String::new(), strokes: Vec::new(), labels: Vec::new() };
    for bar in &sheet.bars {
        let (x, y) = (bar.at.x, bar.at.y);
        picture.strokes.push(stroke(Drawn::Bar, (x, y), (x + bar.length, y)));
        let step = step(bar);
        for n in 0..=bar.length / step {
            let half = if n == 0 || n * step == bar.length { MARK } else { MARK / 2 };
            picture.strokes.push(stroke(Drawn::Bar, (x + n * step, y - half), (x + n * step, y + half)));
        }
        picture.labels.push(beside(&bar.label, x + bar.length + BESIDE, y));
    }
    let labels: Vec<String> = sheet.bars.iter().map(|bar| bar.label.clone()).collect();
    picture.alt = words::bars_told(say, &labels);
    picture
}

/// Height of the legend's lines over the foot of the page.
const LEGEND: i64 = 36_500_000;
/// Length of a line in it, and the way to the next.
const SAMPLE: (i64, i64) = (13_000_000, 6_000_000);

/// What each line of the page means; none where there are no lines.
fn legend(sheet: &GuideSheet, say: &Words) -> Option<Picture> {
    let mut picture = Picture { alt: String::new(), strokes: Vec::new(), labels: Vec::new() };
    let mut x = GuideSheet::MARGIN;
    let mut told = Vec::new();
    for role in Role::ALL {
        if !sheet.guides.iter().flat_map(|guide| &guide.lines).any(|line| line.role == role) {
            continue;
        }
        let word = words::line_word(say, role.word());
        picture.strokes.push(stroke(Drawn::As(role), (x, LEGEND), (x + SAMPLE.0, LEGEND)));
        picture.labels.push(beside(&word, x + SAMPLE.0 + BESIDE, LEGEND));
        x += SAMPLE.0 + BESIDE + width(&word, SMALL, false) + SAMPLE.1;
        told.push(words::line_told(say, role.word()));
    }
    picture.alt = told.join(" ");
    (!told.is_empty()).then_some(picture)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_have_a_sign() {
        assert_eq!(with_signs("4 1/4 x 5 in, 3 x 4 x 5, box x 2 x"), "4 1/4 × 5 in, 3 × 4 × 5, box x 2 x");
        assert_eq!(with_signs(""), "");
    }

    #[test]
    fn points_are_exact_enough() {
        // 11 pt are 11/72 in.
        assert_eq!(tenths_of_point(110), 25_400_000 * 11 / 72);
    }
}
