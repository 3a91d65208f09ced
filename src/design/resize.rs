//! A design with one piece larger or smaller.
//!
//! Takes a settled design, gives it with another size of one piece: every piece whose size leans on
//! that one follows by its own relation, and with the card follow its base and what leans on it.
//! What the piece itself leans on stays, so its own border there is what changes.

use super::model::{Design, Extent, Of, Piece, PieceId, PieceKind};
use crate::geometry::Point;
use crate::length::{Length, Size};
use crate::shape::{Form, Shape};

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
/// would become nothing or its shape could no longer be made, or where there is no such thing.
#[must_use]
pub fn resize(design: &Design, what: Resized, by_width: Length, by_height: Length) -> Option<Design> {
    let mut changed = design.clone();
    let front = size_of(design, what)?;
    let size = grown(front, by_width, by_height);
    let mut own: Vec<Option<Size>> = vec![None; design.pieces.len()];
    match what {
        Resized::Piece(piece) => own[piece.0] = Some(size),
        Resized::Card => {
            let card = changed.card.as_mut()?;
            card.size = size;
            own[card.base.0] = Some(card.fold.flat(size));
        }
    }
    let front = changed.card.as_ref().map(|card| card.size);
    let sizes = follow(&changed, &own, front);
    for (piece, size) in changed.pieces.iter_mut().zip(sizes) {
        piece.size = size?;
        piece.shape = reshaped(&piece.shape, piece.size);
    }
    let positive = |size: Size| size.width.nm() > 0 && size.height.nm() > 0;
    let all = positive(size) && changed.pieces.iter().all(|piece| positive(piece.size));
    // A circle that is only made wider is none any more.
    let shaped = |piece: &Piece| piece.is_plain() || piece.shape.make().is_ok();
    let mut both = changed.pieces.iter().zip(&design.pieces);
    (all && both.all(|(new, old)| new.size == old.size || shaped(new))).then_some(changed)
}

/// The size of every piece, where some have one of their own and those that lean on them follow.
fn follow(design: &Design, own: &[Option<Size>], front: Option<Size>) -> Vec<Option<Size>> {
    let sides = || (0..design.pieces.len()).flat_map(|place| Extent::BOTH.map(|extent| (place, extent)));
    let changes = |of: Of, extent: Extent, changed: &[[bool; 2]]| match of {
        Of::Card => design.card.as_ref().is_some_and(|card| own[card.base.0].is_some()),
        Of::Piece(piece) => own[piece.0].is_some() || changed[piece.0][extent as usize],
    };
    let mut changed = vec![[false; 2]; design.pieces.len()];
    let mut known: Vec<[Option<Length>; 2]> = (design.pieces.iter().zip(own))
        .map(|(piece, own)| Extent::BOTH.map(|extent| Some(extent.of(own.unwrap_or(piece.size)))))
        .collect();
    repeated(|| {
        let more = sides().filter(|(place, extent)| {
            let leans_on = design.pieces[*place].stated.leans_on(*extent);
            own[*place].is_none()
                && !changed[*place][*extent as usize]
                && leans_on.into_iter().any(|(of, extent)| changes(of, extent, &changed))
        });
        let more: Vec<(usize, Extent)> = more.collect();
        for (place, extent) in &more {
            changed[*place][*extent as usize] = true;
            known[*place][*extent as usize] = None;
        }
        !more.is_empty()
    });
    // A settled design has no circle: each pass knows more, until all is known.
    repeated(|| {
        let mut more = false;
        for (place, extent) in sides() {
            if known[place][extent as usize].is_none() {
                let side = design.pieces[place].stated.result(extent, |of, extent| match of {
                    Of::Card => front.map(|front| extent.of(front)),
                    Of::Piece(piece) => known[piece.0][extent as usize],
                });
                more |= side.is_some();
                known[place][extent as usize] = side;
            }
        }
        more
    });
    known.into_iter().map(|[width, height]| Some(Size::new(width?, height?))).collect()
}

/// As long as a pass finds more.
fn repeated(mut pass: impl FnMut() -> bool) {
    while pass() {}
}

/// A shape in another size; corners keep their place in proportion.
fn reshaped(shape: &Shape, size: Size) -> Shape {
    let (width, height) = (size.width.nm(), size.height.nm());
    let scaled = |at: i64, from: i64, to: i64| {
        let exact = (i128::from(at) * i128::from(to)).div_euclid(i128::from(from.max(1)));
        i64::try_from(exact).unwrap_or(to)
    };
    let form = match &shape.form {
        Form::Polygon { corners } => {
            let corner = |at: &Point| Point::new(scaled(at.x, shape.width, width), scaled(at.y, shape.height, height));
            Form::Polygon { corners: corners.iter().map(corner).collect() }
        }
        // A drawing keeps its proportion.
        Form::Drawn { name, corners } => {
            let corner = |at: &Point| Point::new(scaled(at.x, shape.width, width), scaled(at.y, shape.width, width));
            Form::Drawn { name: name.clone(), corners: corners.iter().map(corner).collect() }
        }
        form => form.clone(),
    };
    Shape { form, width, height, ..shape.clone() }
}

fn grown(size: Size, by_width: Length, by_height: Length) -> Size {
    Size::new(size.width + by_width, size.height + by_height)
}
