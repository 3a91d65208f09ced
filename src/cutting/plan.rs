//! The plan: trees of edge-to-edge cuts, one diagram for each sheet that is cut in its own way.
//!
//! Sheet coordinates: origin at the lower left of the sheet as it lies with its "up" upward, x to
//! the right, y upward, nanometres. An edge strip beside the sheet is part of it.

use super::halves;
use crate::design::model::{Design, From, PaperId, PieceId, PieceKind, VersionId};
use crate::geometry::{Edge, Rect};
use crate::length::{Length, Size, Units};

/// All cutting of one design in one system of units.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CutPlan {
    /// The units of every length in it.
    pub units: Units,
    /// How many cards the plan gives.
    pub cards: u32,
    /// The most cards that the sheets at hand give, where it was asked for or is needed.
    pub most: Option<u32>,
    /// What was aimed at, in order.
    pub aims: Aims,
    /// The sheets, papers in the order written; equal sheets of one paper cut alike are one entry.
    pub sheets: Vec<SheetPlan>,
    /// Pieces that the sheets could not give, with how many are missing; empty in a whole plan.
    pub missing: Vec<Missing>,
}

/// Pieces of one paper that found no place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Missing {
    /// The paper.
    pub paper: PaperId,
    /// The piece.
    pub piece: PieceId,
    /// How many found no place in the best plan found.
    pub count: u32,
}

/// Pieces of one paper past what is wanted, since its sheets are cut alike.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Spare {
    /// The paper.
    pub paper: PaperId,
    /// The piece.
    pub piece: PieceId,
    /// How many are to spare.
    pub count: u32,
}

/// One aim: what the plan reaches and what is known to be the limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Aim {
    /// What the plan reaches.
    pub found: u64,
    /// What no plan can do better than, as far as is known.
    pub bound: u64,
    /// Whether `found` was proven best, given the aims before it.
    pub proven: bool,
}

/// The aims of design.md, in their order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Aims {
    /// Cards.
    pub cards: Aim,
    /// Sheets used.
    pub sheets: Aim,
    /// Different cutting diagrams.
    pub diagrams: Aim,
    /// Cuts, counted on every sheet.
    pub cuts: Aim,
    /// Changes of measure, once a diagram.
    pub changes: Aim,
    /// Area of the largest usable leftover, square micrometres, rounded down.
    pub leftover: Aim,
}

/// Index of a part in [`SheetPlan::parts`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct PartId(pub usize);

/// How one or several equal sheets of a paper are cut.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SheetPlan {
    /// The paper.
    pub paper: PaperId,
    /// Which kind of sheet of the paper: an index into its `sheets`.
    pub kind: usize,
    /// Whether it is a leftover that another sheet keeps: it is cut, and is no sheet of paper.
    pub kept: bool,
    /// Numbers of the paper's sheets cut so, 1-based over all kinds of the paper.
    pub numbers: Vec<u32>,
    /// The cutting diagram: equal numbers are cut alike, also across papers; 0-based.
    pub diagram: usize,
    /// Width, an edge strip included.
    pub width: Length,
    /// Height, an edge strip included.
    pub height: Length,
    /// The smallest sheet, an edge strip included, that the same rows, at the same measures, still
    /// give the same pieces from.
    pub slack: Size,
    /// The tree of parts; the whole sheet is part 0, parents stand before children.
    pub parts: Vec<Part>,
    /// The printed rows, in the order made.
    pub cuts: Vec<CutRow>,
}

/// What becomes of a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Use {
    /// Cut further.
    Divided,
    /// A wanted piece.
    Piece {
        /// Which piece.
        piece: PieceId,
        /// The version it was cut for; any of them where a piece is the same in all.
        version: Option<VersionId>,
        /// Quarter turns anticlockwise between the unturned piece and how it lies on the sheet.
        quarter_turns: u8,
    },
    /// Left over; numbered over the whole plan, 1-based, parts under the scrap limit included.
    Leftover,
    /// The printed edge strip.
    EdgeStrip,
}

/// A part of a sheet: the sheet, what a cut gives, a piece.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Part {
    /// The part it was cut from; none for the sheet.
    pub parent: Option<PartId>,
    /// Where it lies on the sheet. Children tile their parent exactly.
    pub rect: Rect,
    /// What becomes of it.
    pub r#use: Use,
}

/// One printed row: the same measure, from the same edge, once or several times, on one part or on
/// several parts that are cut alike.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CutRow {
    /// Number of the first cut of the row; the row holds `n` to `n + cuts - 1`.
    pub n: u32,
    /// The parts that it cuts; every one is loose when the row begins.
    pub parts: Vec<PartId>,
    /// The edge that is measured from, as the sheet lies.
    pub from: Edge,
    /// The measure.
    pub measure: Length,
    /// How many cuts, over all its parts.
    pub cuts: u32,
    /// What it gives: for each of `parts` in order, its slices in the order cut, then the rest.
    pub gives: Vec<PartId>,
}

impl CutPlan {
    /// Sheets used; kept leftovers are none.
    #[must_use]
    pub fn sheets_used(&self) -> usize {
        self.sheets.iter().filter(|sheet| !sheet.kept).map(|sheet| sheet.numbers.len()).sum()
    }
    /// Cuts, counted on every sheet.
    #[must_use]
    pub fn cuts(&self) -> u64 {
        self.sheets.iter().map(|s| s.numbers.len() as u64 * u64::from(s.cut_count())).sum()
    }
    /// Different cutting diagrams.
    #[must_use]
    pub fn diagrams(&self) -> usize {
        self.sheets.iter().map(|s| s.diagram + 1).max().unwrap_or(0)
    }
    /// Changes of measure: rows whose measure differs from the row before, once a diagram.
    #[must_use]
    pub fn changes(&self) -> u64 {
        let mut seen = Vec::new();
        let mut changes = 0;
        for sheet in &self.sheets {
            if !seen.contains(&sheet.diagram) {
                seen.push(sheet.diagram);
                changes += sheet.changes();
            }
        }
        changes
    }
}

impl SheetPlan {
    /// Cuts on one sheet.
    #[must_use]
    pub fn cut_count(&self) -> u32 {
        self.cuts.iter().map(|row| row.cuts).sum()
    }
    /// Rows whose measure differs from the row before, the first row included.
    #[must_use]
    pub fn changes(&self) -> u64 {
        let mut last = None;
        let mut changes = 0;
        for row in &self.cuts {
            if last != Some(row.measure) {
                changes += 1;
            }
            last = Some(row.measure);
        }
        changes
    }
    /// A part.
    #[must_use]
    pub fn part(&self, id: PartId) -> &Part {
        &self.parts[id.0]
    }
    /// Children of a part.
    pub fn children(&self, id: PartId) -> impl Iterator<Item = PartId> + '_ {
        self.parts.iter().enumerate().filter(move |(_, p)| p.parent == Some(id)).map(|(n, _)| PartId(n))
    }
    /// Pieces on one sheet: `(piece, how many)` in order of the piece.
    #[must_use]
    pub fn pieces(&self) -> Vec<(PieceId, u32)> {
        let mut counts = std::collections::BTreeMap::new();
        for part in &self.parts {
            if let Use::Piece { piece, .. } = part.r#use {
                *counts.entry(piece).or_insert(0) += 1;
            }
        }
        counts.into_iter().collect()
    }
}

/// A leftover of a plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Left {
    /// Its number in the one series of the whole plan; 0 for scrap.
    pub number: u32,
    /// The plan's sheet.
    pub sheet: usize,
    /// Its size as it lies.
    pub size: crate::length::Size,
    /// The parts of the sheet that it is.
    pub parts: Vec<PartId>,
    /// Whether its short side is at least 1 in or 25 mm.
    pub usable: bool,
}

impl CutPlan {
    /// The largest usable leftover by area, the first of equals.
    #[must_use]
    pub fn largest_leftover(&self) -> Option<Left> {
        let area = |size: Size| i128::from(size.width.nm()) * i128::from(size.height.nm());
        let usable = self.leftovers().into_iter().filter(|left| left.usable);
        usable.max_by_key(|left| (area(left.size), std::cmp::Reverse(left.sheet)))
    }

    /// The leftovers, scrap included: one series over the whole plan; leftovers of one size on one
    /// sheet share a number. Scrap is what is under 1/2 in (12 mm) at its short side.
    #[must_use]
    pub fn leftovers(&self) -> Vec<Left> {
        let scrap = Length::either(self.units, Length::inch(1, 2), Length::mm(12));
        let usable = Length::either(self.units, Length::inch(1, 1), Length::mm(25));
        let mut all: Vec<Left> = Vec::new();
        let mut number = 0;
        for (index, sheet) in self.sheets.iter().enumerate() {
            for (id, part) in sheet.parts.iter().enumerate() {
                if part.r#use != Use::Leftover {
                    continue;
                }
                let size = part.rect.size(Length::zero(self.units).unit());
                if let Some(known) = all.iter_mut().find(|left| left.sheet == index && left.size == size) {
                    known.parts.push(PartId(id));
                    continue;
                }
                let short = size.width.min(size.height);
                if short >= scrap {
                    number += 1;
                }
                all.push(Left {
                    number: if short >= scrap { number } else { 0 },
                    sheet: index,
                    size,
                    parts: vec![PartId(id)],
                    usable: short >= usable,
                });
            }
        }
        all
    }
}

impl CutPlan {
    /// Pieces to spare: cut and not wanted by any card, nor kept; papers in order, then pieces.
    #[must_use]
    pub fn spares(&self, design: &Design) -> Vec<Spare> {
        let mut cut: std::collections::BTreeMap<(PaperId, PieceId), u32> = std::collections::BTreeMap::new();
        for sheet in &self.sheets {
            let sheets = u32::try_from(sheet.numbers.len()).unwrap_or(u32::MAX);
            for (piece, count) in sheet.pieces() {
                let all = cut.entry((sheet.paper, piece)).or_insert(0);
                *all = all.saturating_add(count.saturating_mul(sheets));
            }
        }
        cut.into_iter()
            .map(|((paper, piece), count)| Spare {
                paper,
                piece,
                count: count.saturating_sub(wanted(design, paper, piece)),
            })
            .filter(|spare| spare.count > 0)
            .collect()
    }

    /// The spare pieces that are all there once these of the plan's sheets are cut: each is said
    /// with the last sheet that it comes from.
    #[must_use]
    pub fn spares_after(&self, design: &Design, sheets: &[usize]) -> Vec<(PieceId, u32)> {
        let gives = |sheet: &SheetPlan, spare: &Spare| {
            sheet.paper == spare.paper && sheet.pieces().iter().any(|(piece, _)| *piece == spare.piece)
        };
        let mut after: Vec<(PieceId, u32)> = Vec::new();
        for spare in self.spares(design) {
            let last = self.sheets.iter().rposition(|sheet| gives(sheet, &spare));
            if last.is_some_and(|last| sheets.contains(&last)) {
                match after.iter_mut().find(|(piece, _)| *piece == spare.piece) {
                    Some((_, count)) => *count += spare.count,
                    None => after.push((spare.piece, spare.count)),
                }
            }
        }
        after
    }
}

/// How many of a piece the cards of a design need from one paper, or how many are kept.
fn wanted(design: &Design, paper: PaperId, piece: PieceId) -> u32 {
    let settled = design.piece(piece);
    if let PieceKind::Kept { count, .. } = settled.kind {
        return count;
    }
    let rectangles: Option<u32> =
        halves::of_piece(design, piece, paper).map(|halves| if halves.piece == piece { halves.rectangles } else { 0 });
    if let Some(rectangles) = rectangles {
        return rectangles;
    }
    let cards = match settled.from {
        From::Window(..) | From::Bought => 0,
        From::Paper(_) => design.cards.value,
        From::Varies => design
            .version_ids()
            .filter(|version| design.paper_of(piece, *version) == Some(paper))
            .map(|version| design.version(version).cards)
            .sum(),
    };
    design.per_card(piece).saturating_mul(cards)
}
