//! A page of true-size guides as data: what every writer writes and every reader must find again.
//!
//! Coordinates: origin at the lower left corner of the page, x to the right, y upward, nanometres. Nothing is
//! scaled, turned or moved any more: a point stands where the paper is cut.

use crate::design::variants::Page;
use crate::geometry::Point;

/// One page.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GuideSheet {
    /// Its paper.
    pub page: Page,
    /// Its number among the pages of the file, from 1.
    pub number: u32,
    /// How many pages the file has.
    pub of: u32,
    /// Its heading, in the reader's language.
    pub heading: String,
    /// What must be known before anything is cut from this page, a sentence each: which way up, mirrored or not.
    pub sentences: Vec<String>,
    /// The guides on it.
    pub guides: Vec<Guide>,
    /// The bars to check the print with, in the order drawn.
    pub bars: Vec<ScaleBar>,
}

impl GuideSheet {
    /// Blank on every side: what a home printer may lose, half an inch.
    pub const MARGIN: i64 = 12_700_000;
    /// Taken below the margin at the top by the heading and the sentences: four lines of them, of some hundred
    /// letters each. Where there are more, guides begin so much lower: [`GuideSheet::LINE`] for each.
    pub const HEAD: i64 = 27_000_000;
    /// What one more line of sentences takes.
    pub const LINE: i64 = 5_000_000;
    /// Taken above the margin at the bottom by the bars, what the lines mean, the caution and the foot of the page.
    pub const FOOT: i64 = 34_000_000;
    /// The left ends of the bars and their lengths, 2 in and 5 cm. The label stands right of its bar.
    pub const BARS: [(Point, i64); 2] = [
        (Point::new(Self::MARGIN, 42_000_000), 50_800_000),
        (Point::new(Self::MARGIN + 68_000_000, 42_000_000), 50_000_000),
    ];

    /// What a page leaves for guides with their labels: lower left and upper right corner.
    #[must_use]
    pub const fn room(page: Page) -> (Point, Point) {
        let (width, height) = page.size_nm();
        (
            Point::new(Self::MARGIN, Self::MARGIN + Self::FOOT),
            Point::new(width - Self::MARGIN, height - Self::MARGIN - Self::HEAD),
        )
    }
}

/// One thing to cut out or to measure by, where it lies on the page.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Guide {
    /// A name that is unique in the file and fit for a file name: `frame-panel`, `template-bow-2`.
    pub word: String,
    /// Its title for readers: "Placing frame for the panel".
    pub title: String,
    /// What it is, numbers included, for readers who cannot see it.
    pub alt: String,
    /// Its lines, in the order drawn.
    pub lines: Vec<Line>,
    /// The words on it.
    pub labels: Vec<Label>,
}

/// One line of a guide.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Line {
    /// What is done along it.
    pub role: Role,
    /// Its corners.
    pub points: Vec<Point>,
    /// Whether the last corner joins the first. What is cut out is closed.
    pub closed: bool,
}

/// What is done along a line; the line's style tells it, never a colour alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Role {
    /// Cut through.
    Cut,
    /// Score.
    Score,
    /// Fold, without a score.
    Fold,
    /// Draw on the paper: a place to meet, an outline to write in, a joining mark.
    Draw,
    /// For the reader alone: leaders, arrows that say which way is up.
    Note,
}

impl Role {
    /// Every role, in the order of the layers of a file.
    pub const ALL: [Self; 5] = [Self::Cut, Self::Score, Self::Fold, Self::Draw, Self::Note];

    /// Its word in files: the layer's name, the group's name.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Cut => "cut",
            Self::Score => "score",
            Self::Fold => "fold",
            Self::Draw => "draw",
            Self::Note => "notes",
        }
    }
}

/// Words on a guide.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Label {
    /// The text, in the reader's language.
    pub text: String,
    /// The middle of its baseline.
    pub at: Point,
    /// The height of its letters from baseline to baseline of single spacing (the size of the face), nanometres.
    pub size: i64,
    /// Turned a quarter to the left, to be read from the right.
    pub turned: bool,
    /// Whether it is bold.
    pub bold: bool,
}

/// A bar whose printed length tells whether the page came out at true size.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ScaleBar {
    /// Its left end.
    pub at: Point,
    /// Its length, nanometres.
    pub length: i64,
    /// Its label: "2 in".
    pub label: String,
}
