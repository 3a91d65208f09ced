//! Sheets that are printed with cells, to be cut apart at stated places.
//!
//! The cells are kept leftovers of their sheet, which gives them in rows that come first; so the plan, the
//! printed cuts and the referee treat them as they treat anything that the designer fixes.

use super::desk::{Desk, Field};
use super::kept::KeptDraft;
use crate::design::model::{Cells, Design, FixedRow, From, PaperId, PieceId, PieceKind, Sheets};
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::geometry::Edge;
use crate::length::{Length, Size};
use crate::source::Span;

/// The most cells in a row or column of a sheet.
const MOST_CELLS: u32 = 50;

/// Cells as written, and what they fix.
pub(super) struct CellsDraft {
    pub(super) cells: Cells,
    pub(super) rows: Vec<FixedRow>,
    pub(super) kept: KeptDraft,
}

impl<'a> Desk<'a> {
    /// `{called: scene, size: 3 x 4 in, columns: 3, rows: 2, left: 1/2 in, top: 1/2 in}`, on `sheets` whose
    /// usable size `usable` tells.
    pub(super) fn cells(
        &mut self,
        field: Field<'a>,
        source: usize,
        sheets: &[Sheets],
        usable: impl Fn(&Sheets) -> Size,
    ) -> Option<CellsDraft> {
        let known = ["called", "size", "columns", "rows", "left", "top"];
        let fields = self.fields(field.node, "the cells", field.key, &known)?;
        let called = self.required(&fields, "called", "scene").and_then(|field| self.own_name(field));
        let size = self.required(&fields, "size", "3 x 4 in").and_then(|field| {
            let text = self.text(field)?;
            self.size_in(text, Role::Outright).map(|size| (size, text.span))
        });
        let columns = self.required(&fields, "columns", "3").and_then(|field| self.count(field, MOST_CELLS));
        let rows = self.required(&fields, "rows", "2").and_then(|field| self.count(field, MOST_CELLS));
        let nothing = Length::zero(self.units);
        let left = fields.get("left").map_or(Some(nothing), |field| self.length(field, Role::Border));
        let top = fields.get("top").map_or(Some(nothing), |field| self.length(field, Role::Border));
        let (called, (size, span), columns, rows) = (called?, size?, columns?.value, rows?.value);
        let (left, top) = (left?, top?);
        let (width, height) = (size.width * i64::from(columns), size.height * i64::from(rows));
        for kind in sheets {
            let room = usable(kind);
            let over = [(left + width, room.width, "wide"), (top + height, room.height, "high")]
                .into_iter()
                .find(|(cells, room, _)| cells > room);
            if let Some((cells, room, word)) = over {
                self.off_the_sheet(field.key, span, kind.span, (cells, room, word));
                return None;
            }
        }
        let mut fixed = Vec::new();
        let mut fix = |measure: Length, from: Edge, times: u32| {
            if measure.nm() > 0 && times > 0 {
                fixed.push(FixedRow { measure, from, times, span: field.key });
            }
        };
        fix(left, Edge::Left, 1);
        // Sheets of several sizes leave unlike margins at the right: then the rows are as wide as the sheet.
        let right: Vec<Length> = sheets.iter().map(|kind| usable(kind).width - left - width).collect();
        if right.windows(2).all(|two| two[0] == two[1]) {
            fix(right.first().copied().unwrap_or(nothing), Edge::Right, 1);
        }
        fix(top, Edge::Top, 1);
        // Rows down to the very edge: the last one is what remains.
        let is_full = sheets.iter().all(|kind| usable(kind).height == top + height);
        fix(size.height, Edge::Top, if is_full { rows - 1 } else { rows });
        let count =
            sheets.iter().fold(0_u32, |sum, kind| sum.saturating_add(kind.count)).saturating_mul(columns * rows);
        let kept = Sheets { count, size, named: None, span };
        let cells = Cells { called: called.value.clone(), size, columns, rows, left, top, span: field.key };
        Some(CellsDraft { cells, rows: fixed, kept: KeptDraft::of_cells(called, source, kept) })
    }

    fn off_the_sheet(&mut self, key: Span, size: Span, sheet: Span, (cells, room, word): (Length, Length, &str)) {
        let mut finding = Finding::error(
            "cells-off-the-sheet",
            key,
            "the printed cells do not fit on their sheet",
            format!("{cells} {word} with the margin, on {room}"),
        )
        .also(size, "the size of a cell")
        .also(sheet, "the sheet")
        .help(format!("make them {room} or less in all, margin included"))
        .plainly("The cells that are said to be printed on the sheet reach past it.");
        finding.edition = self.both().then_some(self.units);
        self.note(finding);
    }
}

/// Keeps as many cells as the cards need, one for each piece, and no more.
pub(super) fn settle_cells(design: &mut Design) {
    for source in 0..design.papers.len() {
        let Some(cells) = &design.papers[source].cells else { continue };
        let called = cells.called.clone();
        let Some(paper) = design.papers.iter().position(|paper| paper.name == called) else { continue };
        let needed = design.piece_ids().map(|piece| needed(design, piece, PaperId(paper))).fold(0, u32::saturating_add);
        let all = design.papers[paper].sheets.first().map_or(0, |sheets| sheets.count);
        let count = needed.min(all);
        for piece in &mut design.pieces {
            if let PieceKind::Kept { paper: own, count: kept } = &mut piece.kind
                && own.0 == paper
            {
                *kept = count;
            }
        }
        if let Some(sheets) = design.papers[paper].sheets.first_mut() {
            sheets.count = count.max(1);
        }
    }
}

/// How many of a piece come from a paper, over all cards.
fn needed(design: &Design, piece: PieceId, paper: PaperId) -> u32 {
    let each = design.per_card(piece);
    match design.piece(piece).from {
        From::Paper(from) if from == paper => each.saturating_mul(design.cards.value),
        From::Varies => {
            let versions = design.version_ids().filter(|version| design.paper_of(piece, *version) == Some(paper));
            versions.fold(0, |sum, version| sum.saturating_add(each.saturating_mul(design.version(version).cards)))
        }
        _ => 0,
    }
}
