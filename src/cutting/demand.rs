//! What is wanted from each paper: takes a settled design, gives pieces with their counts summed
//! over the versions, and the sheets at hand with their edge strips. Must never know how paper is
//! cut.

use crate::design::model::{Design, From, Paper, PaperId, Pattern, PieceId, PieceKind, Side, VersionId};
use crate::geometry::{Edge, Rect};
use crate::length::{Length, Size, Units};

use super::halves::halves;
use super::search::problem::Hand;

/// Everything wanted from one paper.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PaperDemand {
    /// The paper.
    pub paper: PaperId,
    /// Its pieces, in the order of the design; none where the paper is not used.
    pub wanted: Vec<Wanted>,
    /// Its sheets, in the order written.
    pub sheets: Vec<SheetsAtHand>,
    /// Whether every sheet that is used must be cut like the others: a pad of different sheets.
    pub alike: bool,
}

/// One piece wanted from a paper.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Wanted {
    /// The piece.
    pub piece: PieceId,
    /// Its size, unturned.
    pub size: Size,
    /// Which side of the paper it shows; it is cut with the front side up all the same.
    pub side: Side,
    /// Whether it may lie on its side. A half turn, which two-way paper allows, is the same
    /// rectangle and is never needed.
    pub quarter: bool,
    /// How many for each version; `None` for a piece that is the same in all.
    pub versions: Vec<(Option<VersionId>, u32)>,
}

/// The sheets of one size.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SheetsAtHand {
    /// Index into the paper's `sheets`.
    pub kind: usize,
    /// How many.
    pub count: u32,
    /// Number of the first of them, 1-based over all sheets of the paper.
    pub first: u32,
    /// The whole sheet, an edge strip beside included, in nanometres.
    pub whole: Rect,
    /// What is left when the edge strip is off.
    pub usable: Rect,
    /// The edge strip and how wide it is, in nanometres.
    pub strip: Option<(Edge, i64)>,
    /// Cuts that the designer fixed, made one after another when the edge strip is off.
    pub fixed: Vec<FixedCut>,
    /// What the fixed cuts part the usable sheet into, in the order that they come off, the rest
    /// last; the usable sheet itself where nothing is fixed; none where the fixed cuts cannot be made
    /// on this sheet.
    pub sections: Vec<Section>,
}

/// A row of cuts that is made first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FixedCut {
    /// The edge that is measured from.
    pub from: Edge,
    /// The measure, in nanometres.
    pub measure: i64,
    /// How many cuts.
    pub cuts: u32,
}

/// A part of a sheet between the fixed cuts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Section {
    /// Where it lies.
    pub rect: Rect,
    /// Pieces that may not come from it, since they come from a row along an edge.
    pub barred: Vec<PieceId>,
}

impl Wanted {
    /// How many in all.
    #[must_use]
    pub fn count(&self) -> u32 {
        self.versions.iter().fold(0, |sum, (_, count)| sum.saturating_add(*count))
    }
}

/// Everything wanted from each paper, in the order of the papers.
#[must_use]
pub fn demand(design: &Design) -> Vec<PaperDemand> {
    let cards: Vec<u32> = design.versions.iter().map(|version| version.cards).collect();
    demand_for(design, &cards)
}

/// The same for other numbers of cards of each version.
#[must_use]
pub fn demand_for(design: &Design, cards: &[u32]) -> Vec<PaperDemand> {
    design
        .paper_ids()
        .map(|paper| PaperDemand {
            paper,
            wanted: wanted_from(design, paper, cards),
            sheets: sheets_of(design, paper),
            alike: design.paper(paper).different.is_some(),
        })
        .collect()
}

/// How many of a piece each version takes from a paper, and which side of it they show.
pub(super) fn shares(
    design: &Design,
    id: PieceId,
    paper: PaperId,
    cards: &[u32],
) -> Vec<(Side, Option<VersionId>, u32)> {
    let piece = design.piece(id);
    let per_card = design.per_card(id);
    match piece.from {
        From::Paper(from) if from == paper => {
            let all = cards.iter().fold(0_u32, |sum, &cards| sum.saturating_add(cards));
            let count = match piece.kind {
                PieceKind::Kept { count, .. } => count,
                PieceKind::Base | PieceKind::Plain | PieceKind::Decoration { .. } => all.saturating_mul(per_card),
            };
            let side = design.version_ids().next().map_or(Side::Front, |version| design.side_of(id, version));
            vec![(side, None, count)]
        }
        From::Paper(_) | From::Window(..) | From::Bought => Vec::new(),
        From::Varies => design
            .version_ids()
            .zip(cards)
            .filter(|(version, _)| design.paper_of(id, *version) == Some(paper))
            .map(|(version, &cards)| (design.side_of(id, version), Some(version), cards.saturating_mul(per_card)))
            .collect(),
    }
}

fn wanted_from(design: &Design, paper: PaperId, cards: &[u32]) -> Vec<Wanted> {
    let mut wanted = Vec::new();
    let shared = halves(design, paper, cards);
    for id in design.piece_ids() {
        let piece = design.piece(id);
        let shares = match shared.iter().find(|halves| halves.piece == id) {
            Some(halves) => vec![(halves.side, None, halves.rectangles)],
            // The other halves come from rectangles of the first.
            None if shared.iter().any(|halves| halves.other.is_some_and(|(other, _)| other == id)) => continue,
            None => shares(design, id, paper, cards),
        };
        for side in [Side::Front, Side::Back] {
            let of_side = shares.iter().filter(|(other, _, count)| *other == side && *count > 0);
            let versions: Vec<_> = of_side.map(|(_, version, count)| (*version, *count)).collect();
            if versions.is_empty() {
                continue;
            }
            // What comes from a row along an edge lies as it is drawn, so that it reaches the edge.
            let along = design.paper(paper).fixed.edges.iter().any(|along| along.piece == id);
            let upright = piece.upright == Some(true) || along;
            // A kept leftover is paper with both its sides: neither pattern may come to lie on its side.
            let sides: &[Side] = match piece.kind {
                PieceKind::Kept { .. } => &[Side::Front, Side::Back],
                PieceKind::Base | PieceKind::Plain | PieceKind::Decoration { .. } => &[side],
            };
            let free = sides.iter().all(|&side| pattern_of(design.paper(paper), side) == Pattern::Any);
            let quarter = free && !upright;
            wanted.push(Wanted { piece: id, size: piece.blank(), side, quarter, versions });
        }
    }
    wanted
}

/// The pattern of a side of a paper.
pub(super) fn pattern_of(paper: &Paper, side: Side) -> Pattern {
    match (side, paper.back) {
        (Side::Back, Some(back)) => back.pattern,
        _ => paper.pattern,
    }
}

fn sheets_of(design: &Design, id: PaperId) -> Vec<SheetsAtHand> {
    let paper = design.paper(id);
    let mut first = 1_u32;
    let mut all = Vec::new();
    for (kind, sheets) in paper.sheets.iter().enumerate() {
        let (mut width, mut height) = (sheets.size.width.nm(), sheets.size.height.nm());
        let strip = paper.edge_strip.filter(|strip| strip.width.nm() > 0);
        if let Some(strip) = strip.filter(|strip| strip.beside) {
            if strip.edge.is_side() {
                width += strip.width.nm();
            } else {
                height += strip.width.nm();
            }
        }
        let whole = Rect::at(0, 0, width, height);
        let usable = strip.map_or(whole, |strip| whole.parted(strip.edge, strip.width.nm()).1);
        let strip = strip.map(|strip| (strip.edge, strip.width.nm()));
        let fixed = fixed_cuts(design, paper);
        let fixed = fixed.and_then(|fixed| sections(usable, &fixed, hand(design.units)));
        let (fixed, mut sections) = fixed.unwrap_or_default();
        bar_from_margins(design, paper, usable, &mut sections);
        all.push(SheetsAtHand { kind, count: sheets.count, first, whole, usable, strip, fixed, sections });
        first = first.saturating_add(sheets.count);
    }
    all
}

/// Printed cells come from the rows that are printed with them, and from nowhere else.
fn bar_from_margins(design: &Design, paper: &Paper, usable: Rect, sections: &mut [Section]) {
    let Some(cells) = &paper.cells else { return };
    let Some(cell) = design.piece_ids().find(|piece| design.piece(*piece).name == cells.called) else { return };
    let (left, top) = (usable.left + cells.left.nm(), usable.top - cells.top.nm());
    let right = left + cells.size.width.nm() * i64::from(cells.columns);
    let bottom = top - cells.size.height.nm() * i64::from(cells.rows);
    for section in sections {
        let Rect { left: l, right: r, top: t, bottom: b } = section.rect;
        let is_row = (l, r) == (left, right) && t <= top && b >= bottom && t - b == cells.size.height.nm();
        if !is_row {
            section.barred.push(cell);
        }
    }
}

/// The fixed cuts of a paper in order: the rows along edges first, each just as deep as its pieces;
/// with each the pieces that come from it alone. None where pieces along one edge differ in depth,
/// since only one of them would reach the edge for certain.
fn fixed_cuts(design: &Design, paper: &Paper) -> Option<Vec<(FixedCut, Vec<PieceId>)>> {
    let mut all: Vec<(FixedCut, Vec<PieceId>)> = Vec::new();
    for along in &paper.fixed.edges {
        let size = design.piece(along.piece).blank();
        let measure = if along.edge.is_side() { size.width.nm() } else { size.height.nm() };
        match all.iter_mut().find(|(cut, _)| cut.from == along.edge) {
            Some((cut, _)) if cut.measure != measure => return None,
            Some((_, pieces)) => pieces.push(along.piece),
            None => all.push((FixedCut { from: along.edge, measure, cuts: 1 }, vec![along.piece])),
        }
    }
    let rows = paper.fixed.rows.iter();
    all.extend(rows.map(|row| (FixedCut { from: row.from, measure: row.measure.nm(), cuts: row.times }, Vec::new())));
    Some(all)
}

/// Parts the usable sheet by the fixed cuts; none where that cannot be done. A last cut that would
/// leave nothing is not made: what is left is the slice.
fn sections(usable: Rect, fixed: &[(FixedCut, Vec<PieceId>)], hand: Hand) -> Option<(Vec<FixedCut>, Vec<Section>)> {
    let banded: Vec<PieceId> = fixed.iter().flat_map(|(_, pieces)| pieces.iter().copied()).collect();
    let barred = |own: &[PieceId]| banded.iter().copied().filter(|piece| !own.contains(piece)).collect::<Vec<_>>();
    let (mut cuts, mut all) = (Vec::new(), Vec::new());
    let mut rest = Some(usable);
    for (cut, own) in fixed {
        let mut made = 0;
        for _ in 0..cut.cuts {
            let here = rest?;
            let length = if cut.from.is_side() { here.width() } else { here.height() };
            if cut.measure <= 0 || cut.measure > length {
                return None;
            }
            if cut.measure == length {
                all.push(Section { rect: here, barred: barred(own) });
                rest = None;
                continue;
            }
            if cut.measure < hand.least || !hand.allows(cut.measure, length - cut.measure) {
                return None;
            }
            let (slice, left) = here.parted(cut.from, cut.measure);
            all.push(Section { rect: slice, barred: barred(own) });
            made += 1;
            rest = Some(left);
        }
        if made > 0 {
            cuts.push(FixedCut { cuts: made, ..*cut });
        }
    }
    all.extend(rest.map(|rect| Section { rect, barred: barred(&[]) }));
    Some((cuts, all))
}

/// The rules of the hand in a system of units.
#[must_use]
pub fn hand(units: Units) -> Hand {
    let nm = |inch: Length, metric: Length| Length::either(units, inch, metric).nm();
    Hand {
        least: nm(Length::inch(1, 8), Length::mm(3)),
        narrow: nm(Length::inch(1, 2), Length::mm(12)),
        hold: nm(Length::inch(1, 1), Length::mm(25)),
    }
}
