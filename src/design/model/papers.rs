//! Papers as settled: their sheets, sides and edge strips, what is kept of them, and what the designer
//! fixed of their cutting.

use super::{PaperId, PieceId};
use crate::geometry::Edge;
use crate::length::{Length, Size};
use crate::source::{Span, Spanned};
use crate::weight::Weight;

/// How a paper's pattern may lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Pattern {
    /// Any way up.
    Any,
    /// Upright or turned half round.
    TwoWay,
    /// Upright only.
    OneWay,
}

/// One kind of sheet of a paper.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sheets {
    /// How many.
    pub count: u32,
    /// Width and height as the sheet lies with its "up" upward, without an edge strip beside.
    pub size: Size,
    /// The trade name used for it, where one was: `letter`, `A4`.
    pub named: Option<String>,
    /// Where it is written.
    pub span: Span,
}

impl Sheets {
    /// How many, and of what: the trade name where one was used, else the size.
    #[must_use]
    pub fn count_and_name(&self) -> (u32, String) {
        (self.count, self.named.clone().unwrap_or_else(|| self.size.to_string()))
    }
}

/// A printed strip along an edge of the sheet, cut off first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct EdgeStrip {
    /// How wide.
    pub width: Length,
    /// Along which edge.
    pub edge: Edge,
    /// Beside the stated size (the sheet is larger by it), or within it.
    pub beside: bool,
    /// Where it is written.
    pub span: Span,
}

/// Which way the fibres of a sheet run.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Grain {
    /// Along its longer side.
    Long,
    /// Along its shorter side.
    Short,
}

/// A paper or cardstock.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Paper {
    /// Its name, as written.
    pub name: String,
    /// Where the name is written.
    pub span: Span,
    /// The sheets at hand, at least one kind.
    pub sheets: Vec<Sheets>,
    /// How its pattern may lie.
    pub pattern: Pattern,
    /// Where the pattern is written, if it is.
    pub pattern_span: Option<Span>,
    /// The edge strip, the same on every sheet.
    pub edge_strip: Option<EdgeStrip>,
    /// Its weight, such as `80 lb cover` or `216 gsm`.
    pub weight: Option<Spanned<Weight>>,
    /// How thick it is, where it is said.
    pub thickness: Option<Length>,
    /// Which way its fibres run, where it is said.
    pub grain: Option<Spanned<Grain>>,
    /// The other side of a double-sided sheet; `pattern` is then that of the front.
    pub back: Option<Back>,
    /// Where it says that its sheets are different from one another, as in a pad; then all of them
    /// that are used are cut alike.
    pub different: Option<Span>,
    /// For a leftover that another paper keeps: that paper. Such a paper is never bought.
    pub kept_from: Option<PaperId>,
    /// What the designer has fixed of its cutting.
    pub fixed: Fixed,
    /// Other sheets that somebody may hold instead, each planned too.
    pub also: Vec<Also>,
    /// How many ways to cut it are printed: 1, or 2 with another of equal worth.
    pub ways: u32,
    /// The cells that are printed on its sheets.
    pub cells: Option<Cells>,
}

/// Cells printed edge to edge on a sheet, to be cut apart there.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cells {
    /// The paper that they are when pieces are cut from them.
    pub called: String,
    /// The size of one.
    pub size: Size,
    /// How many side by side.
    pub columns: u32,
    /// How many one above another.
    pub rows: u32,
    /// From the left edge of the usable sheet to the first column.
    pub left: Length,
    /// From the top edge of the usable sheet to the first row.
    pub top: Length,
    /// Where they are written.
    pub span: Span,
}

/// The back of a double-sided sheet. All pieces are cut with the front side up.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Back {
    /// How the pattern of the back may lie.
    pub pattern: Pattern,
    /// How the sheet is turned over so that the back's "up" is upward.
    pub turned_over: TurnedOver,
    /// Where `sides` is written.
    pub span: Span,
}

/// How a sheet is turned over.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum TurnedOver {
    /// Like the page of a book: the back's "up" is the front's.
    LeftToRight,
    /// Like the sheet of a wall calendar: the back's "up" is the front's "down".
    TopToBottom,
}

/// A side of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Side {
    /// The front, the only one of most paper.
    Front,
    /// The back of a double-sided sheet.
    Back,
}

/// What a designer fixes of the cutting of every sheet of a paper; the planner completes it.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Fixed {
    /// Rows that come first, in order, from the sheet when its edge strip is off.
    pub rows: Vec<FixedRow>,
    /// Pieces that come from the first row along an edge.
    pub edges: Vec<AlongEdge>,
}

impl Fixed {
    /// Whether nothing is fixed.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.rows.is_empty() && self.edges.is_empty()
    }
}

/// A row of cuts that the designer fixes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FixedRow {
    /// The measure.
    pub measure: Length,
    /// The edge it is measured from.
    pub from: Edge,
    /// How many times.
    pub times: u32,
    /// Where it is written.
    pub span: Span,
}

/// A piece that is cut from the first row along an edge, so that what is printed there lands on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AlongEdge {
    /// Which piece: all that are wanted from the paper.
    pub piece: PieceId,
    /// Which edge.
    pub edge: Edge,
    /// Where it is written.
    pub span: Span,
}

/// Other sheets of a paper that somebody may hold.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Also {
    /// The sheets, at least one kind.
    pub sheets: Vec<Sheets>,
    /// Where they are written.
    pub span: Span,
}
