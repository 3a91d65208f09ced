//! What is wanted from each paper: takes a settled design, gives pieces with their counts summed
//! over the versions, and the sheets at hand with their edge strips. Must never know how paper is
//! cut.

use crate::design::model::{Design, From, PaperId, Pattern, PieceId, VersionId};
use crate::geometry::{Edge, Rect};
use crate::length::{Length, Size, Units};

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
}

/// One piece wanted from a paper.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Wanted {
    /// The piece.
    pub piece: PieceId,
    /// Its size, unturned.
    pub size: Size,
    /// Whether it may lie on its side. A half turn, which two-way paper allows, is the same
    /// rectangle and is never needed.
    pub quarter: bool,
    /// How many for each version; `None` for a piece that is the same in all.
    pub versions: Vec<(Option<VersionId>, u32)>,
}

/// The sheets of one size.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
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
        .map(|paper| PaperDemand { paper, wanted: wanted_from(design, paper, cards), sheets: sheets_of(design, paper) })
        .collect()
}

fn wanted_from(design: &Design, paper: PaperId, cards: &[u32]) -> Vec<Wanted> {
    let mut wanted = Vec::new();
    for id in design.piece_ids() {
        let piece = design.piece(id);
        let per_card = design.per_card(id);
        let mut versions: Vec<(Option<VersionId>, u32)> = Vec::new();
        match piece.from {
            From::Paper(from) if from == paper => {
                let all = cards.iter().fold(0_u32, |sum, &cards| sum.saturating_add(cards));
                versions.push((None, all.saturating_mul(per_card)));
            }
            From::Paper(_) => {}
            From::Varies => {
                for (version, &cards) in design.version_ids().zip(cards) {
                    if design.paper_of(id, version) == Some(paper) {
                        versions.push((Some(version), cards.saturating_mul(per_card)));
                    }
                }
            }
        }
        versions.retain(|(_, count)| *count > 0);
        if versions.is_empty() {
            continue;
        }
        let quarter = design.paper(paper).pattern == Pattern::Any && piece.upright != Some(true);
        wanted.push(Wanted { piece: id, size: piece.size, quarter, versions });
    }
    wanted
}

fn sheets_of(design: &Design, paper: PaperId) -> Vec<SheetsAtHand> {
    let paper = design.paper(paper);
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
        let mut usable = whole;
        if let Some(strip) = strip {
            match strip.edge {
                Edge::Left => usable.left += strip.width.nm(),
                Edge::Right => usable.right -= strip.width.nm(),
                Edge::Top => usable.top -= strip.width.nm(),
                Edge::Bottom => usable.bottom += strip.width.nm(),
            }
        }
        let strip = strip.map(|strip| (strip.edge, strip.width.nm()));
        all.push(SheetsAtHand { kind, count: sheets.count, first, whole, usable, strip });
        first = first.saturating_add(sheets.count);
    }
    all
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
