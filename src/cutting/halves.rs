//! Triangles that share a trimmed rectangle: one cut from corner to corner gives two of them.
//!
//! Takes a settled design, gives for each paper how many rectangles its triangles need. Two come from one
//! rectangle where one of them may lie turned half round, or where the other half is wanted too.

use super::demand::{pattern_of, shares};
use crate::design::model::{Design, PaperId, Pattern, PieceId, PieceKind, Side};
use crate::shape::{Form, Making};

/// The rectangles of one triangle, or of two that share them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Halves {
    /// The paper.
    pub paper: PaperId,
    /// The side of the paper that shows.
    pub side: Side,
    /// The triangle that is written first: the rectangles count as its own.
    pub piece: PieceId,
    /// How many of it are wanted.
    pub wanted: u32,
    /// The triangle that the other halves are, and how many of it are wanted; none where they are the same
    /// triangle turned half round.
    pub other: Option<(PieceId, u32)>,
    /// How many rectangles.
    pub rectangles: u32,
}

/// The shared rectangles of one paper for so many cards of each version.
#[must_use]
pub fn halves(design: &Design, paper: PaperId, cards: &[u32]) -> Vec<Halves> {
    let mut all = Vec::new();
    for side in [Side::Front, Side::Back] {
        let mut taken: Vec<PieceId> = Vec::new();
        for piece in design.piece_ids().filter(|id| is_half(design, *id)) {
            let Some(wanted) = count(design, piece, paper, side, cards).filter(|_| !taken.contains(&piece)) else {
                continue;
            };
            let partner = design.piece_ids().skip(piece.0 + 1).find_map(|other| {
                let fits = is_half(design, other) && !taken.contains(&other) && is_other_half(design, piece, other);
                fits.then(|| count(design, other, paper, side, cards)).flatten().map(|wanted| (other, wanted))
            });
            let free = |piece: PieceId| turns_half(design, piece, paper, side);
            let rectangles = match partner {
                None if free(piece) => wanted.div_ceil(2),
                None => continue,
                Some((other, others)) => {
                    let fixed = if free(piece) { 0 } else { wanted };
                    let other_fixed = if free(other) { 0 } else { others };
                    wanted.saturating_add(others).div_ceil(2).max(fixed).max(other_fixed)
                }
            };
            taken.push(piece);
            taken.extend(partner.map(|(other, _)| other));
            all.push(Halves { paper, side, piece, wanted, other: partner, rectangles });
        }
    }
    all
}

/// The shared rectangles that a piece is cut from, its own or those of another, from one paper.
#[must_use]
pub fn of_piece(design: &Design, piece: PieceId, paper: PaperId) -> Option<Halves> {
    let cards: Vec<u32> = design.versions.iter().map(|version| version.cards).collect();
    let own = |halves: &Halves| halves.piece == piece || halves.other.is_some_and(|(other, _)| other == piece);
    halves(design, paper, &cards).into_iter().find(own)
}

/// A triangle that one cut parts from its rectangle.
fn is_half(design: &Design, piece: PieceId) -> bool {
    let piece = design.piece(piece);
    let shape = &piece.shape;
    matches!(shape.form, Form::Triangle { .. })
        && shape.making == Making::ByHand
        && shape.windows.is_empty()
        && piece.kind == PieceKind::Plain
}

fn is_other_half(design: &Design, piece: PieceId, other: PieceId) -> bool {
    let (piece, other) = (design.piece(piece), design.piece(other));
    piece.size.width.nm() == other.size.width.nm()
        && piece.size.height.nm() == other.size.height.nm()
        && piece.shape.form.other_half().as_ref() == Some(&other.shape.form)
}

/// Whether a piece may lie turned half round on its paper.
fn turns_half(design: &Design, piece: PieceId, paper: PaperId, side: Side) -> bool {
    match pattern_of(design.paper(paper), side) {
        Pattern::Any => design.piece(piece).upright != Some(true),
        Pattern::TwoWay => true,
        Pattern::OneWay => false,
    }
}

/// How many of a piece come from a paper and show this side of it, over all versions; none where it is
/// not cut from it at all, where a row along an edge gives it, or where a version turns it over by itself.
fn count(design: &Design, piece: PieceId, paper: PaperId, side: Side, cards: &[u32]) -> Option<u32> {
    if design.paper(paper).fixed.edges.iter().any(|along| along.piece == piece) {
        return None;
    }
    let shares = shares(design, piece, paper, cards);
    let stated = if design.paper(paper).back.is_some() { design.piece(piece).side } else { Side::Front };
    if shares.is_empty() || shares.iter().any(|(own, ..)| *own != side || *own != stated) {
        return None;
    }
    Some(shares.iter().fold(0, |sum, (_, _, count)| sum.saturating_add(*count)))
}
