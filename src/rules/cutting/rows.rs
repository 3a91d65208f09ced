//! What the rules about cuts ask of a printed row: each part that it cuts, taken by itself.

use crate::cutting::plan::{CutRow, Part, PartId, SheetPlan, Use};
use crate::design::model::{Piece, PieceId};
use crate::geometry::Rect;
use crate::project::Project;
use crate::source::Span;

/// One part, cut by a row.
pub(super) struct Cut<'p> {
    pub(super) sheet: &'p SheetPlan,
    pub(super) row: &'p CutRow,
    /// What is cut.
    pub(super) part: PartId,
    /// The slices in the order cut, then what remains.
    pub(super) gives: Vec<PartId>,
}

impl<'p> Cut<'p> {
    /// Every part that every row of a sheet cuts, in the order cut.
    pub(super) fn all(sheet: &'p SheetPlan) -> impl Iterator<Item = Self> {
        sheet.cuts.iter().flat_map(move |row| {
            row.parts.iter().map(move |part| {
                let of = |given: &PartId| sheet.part(*given).parent == Some(*part);
                Self { sheet, row, part: *part, gives: row.gives.iter().copied().filter(of).collect() }
            })
        })
    }

    /// How many times it is cut.
    pub(super) fn times(&self) -> i64 {
        i64::try_from(self.gives.len()).unwrap_or(i64::MAX) - 1
    }

    /// The part that remains when every slice is off.
    pub(super) fn rest(&self) -> Option<&'p Part> {
        self.gives.last().map(|rest| self.sheet.part(*rest))
    }

    /// How long a rectangle is the way that the row measures.
    pub(super) const fn along(&self, rect: Rect) -> i64 {
        if self.row.from.is_side() { rect.width() } else { rect.height() }
    }

    /// How long the part is the way that the row measures.
    pub(super) fn whole(&self) -> i64 {
        self.along(self.sheet.part(self.part).rect)
    }

    /// How long each cut is.
    pub(super) fn long(&self) -> i64 {
        let rect = self.sheet.part(self.part).rect;
        if self.row.from.is_side() { rect.height() } else { rect.width() }
    }

    /// The pieces of some parts and of what these are cut into that are just as long, that way, as the
    /// part, with the quarter turns they lie in.
    pub(super) fn pieces_as_long(&self, parts: &[PartId]) -> Vec<(PieceId, u8)> {
        let mut found = Vec::new();
        for id in parts {
            let long = self.along(self.sheet.part(*id).rect);
            let mut open = vec![*id];
            while let Some(next) = open.pop() {
                let part = self.sheet.part(next);
                match part.r#use {
                    Use::Piece { piece, quarter_turns, .. } if self.along(part.rect) == long => {
                        found.push((piece, quarter_turns));
                    }
                    Use::Divided => open.extend(self.sheet.children(next)),
                    _ => {}
                }
            }
        }
        found.sort_unstable();
        found.dedup();
        found
    }

    /// `wide` or `high`: the side of a piece, lying in so many quarter turns, that the row measures.
    pub(super) const fn side(&self, quarter_turns: u8) -> &'static str {
        if self.row.from.is_side() == quarter_turns.is_multiple_of(2) { "wide" } else { "high" }
    }
}

/// Where the sheets are written that a plan's sheet is one of.
pub(super) fn written(project: &Project, sheet: &SheetPlan) -> Span {
    let paper = project.design.paper(sheet.paper);
    paper.sheets.get(sheet.kind).map_or(paper.span, |sheets| sheets.span)
}

/// The first piece that the slices of a cut come to, and the word for its side.
pub(super) fn sliced<'d>(project: &'d Project, cut: &Cut<'_>) -> Option<(&'d Piece, &'static str)> {
    let slices = &cut.gives[..cut.gives.len().saturating_sub(1)];
    let (piece, turns) = *cut.pieces_as_long(slices).first()?;
    Some((project.design.piece(piece), cut.side(turns)))
}
