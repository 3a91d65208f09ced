//! A design with one piece larger or smaller.
//!
//! Takes a settled design, gives it with another size of one piece: every piece whose size leans on
//! that one follows with its border kept, and with the card follow its base and what leans on it.
//! What the piece itself leans on stays, so its own border there is what changes.

use super::model::{Design, PieceId, PieceKind, Stated};
use crate::length::{Length, Size};

/// What is made larger or smaller.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Resized {
    /// The card front, and its base with it.
    Card,
    /// A piece.
    Piece(PieceId),
}

/// What a name stands for: a piece, or `card` (which `base`, the card unfolded, goes with).
#[must_use]
pub fn named(design: &Design, name: &str) -> Option<Resized> {
    let piece = design.pieces.iter().position(|piece| piece.kind == PieceKind::Plain && piece.name == name);
    let card = design.card.as_ref().filter(|_| matches!(name, "card" | "base"));
    piece.map(|place| Resized::Piece(PieceId(place))).or_else(|| card.map(|_| Resized::Card))
}

/// The size that is changed: the card front's or the piece's.
#[must_use]
pub fn size_of(design: &Design, what: Resized) -> Option<Size> {
    match what {
        Resized::Card => design.card.as_ref().map(|card| card.size),
        Resized::Piece(piece) => Some(design.piece(piece).size),
    }
}

/// The design with a piece so much wider and higher, or narrower and lower. None where something
/// would become nothing, or where there is no such thing.
#[must_use]
pub fn resize(design: &Design, what: Resized, by_width: Length, by_height: Length) -> Option<Design> {
    let mut changed = design.clone();
    let front = size_of(design, what)?;
    let size = grown(front, by_width, by_height);
    let mut known: Vec<Option<Size>> = vec![None; design.pieces.len()];
    match what {
        Resized::Piece(piece) => known[piece.0] = Some(size),
        Resized::Card => {
            let card = changed.card.as_mut()?;
            card.size = size;
            known[card.base.0] = Some(card.fold.flat(size));
            for (piece, known) in design.pieces.iter().zip(&mut known) {
                if let Stated::CardLess(border) = piece.stated {
                    *known = Some(size.less_all_round(border));
                }
            }
        }
    }
    // A chain is no longer than there are pieces; a settled design has no circle.
    for _ in 0..design.pieces.len() {
        for (place, piece) in design.pieces.iter().enumerate() {
            if let (None, Stated::PieceLess(of, border)) = (known[place], piece.stated) {
                known[place] = known[of.0].map(|size| size.less_all_round(border));
            }
        }
    }
    for (piece, size) in changed.pieces.iter_mut().zip(known) {
        if let Some(size) = size {
            piece.size = size;
        }
    }
    let positive = |size: Size| size.width.nm() > 0 && size.height.nm() > 0;
    (positive(size) && changed.pieces.iter().all(|piece| positive(piece.size))).then_some(changed)
}

fn grown(size: Size, by_width: Length, by_height: Length) -> Size {
    Size::new(size.width + by_width, size.height + by_height)
}
