//! How much glue, ribbon and twine all cards take, and how many decorations.
//!
//! Takes a settled design, gives totals in nanometres and counts. Must never know a word of any language.

use crate::design::model::{Design, Glue, LayerId, PieceId, PieceKind};
use crate::length::{Length, NM_PER_INCH, NM_PER_MM, Size, Units};

/// Everything that holds and decorates all cards.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Totals {
    /// Tape, nanometres; whole feet or metres are bought.
    pub tape: i64,
    /// Pieces held by liquid glue.
    pub liquid: u32,
    /// Foam squares.
    pub foam: i64,
    /// Glue dots.
    pub dots: i64,
    /// Decorations that are counted.
    pub counted: Vec<(PieceId, u32)>,
    /// Ribbon and twine: how many lengths, one length, all of them.
    pub rolls: Vec<Roll>,
}

/// Ribbon or twine of one kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Roll {
    /// The decoration.
    pub piece: PieceId,
    /// How many lengths.
    pub count: u32,
    /// One length.
    pub each: Length,
    /// All of them, nanometres.
    pub all: i64,
}

/// The totals of all cards.
#[must_use]
pub fn totals(design: &Design) -> Totals {
    let mut totals = Totals::default();
    for id in design.layer_ids() {
        let layer = design.layer(id);
        let (size, count) = (design.piece(layer.piece).size, count(design, id));
        let times = i64::from(count);
        match layer.glue.map(|glue| glue.value) {
            Some(Glue::Tape) => {
                totals.tape = totals.tape.saturating_add(tape(size, design.units).saturating_mul(times));
            }
            Some(Glue::Liquid) => totals.liquid = totals.liquid.saturating_add(count),
            Some(Glue::Foam) => {
                totals.foam = totals.foam.saturating_add(foam_squares(size, design.units).saturating_mul(times));
            }
            Some(Glue::Dot) => {
                totals.dots = totals.dots.saturating_add(dots(size, design.units).saturating_mul(times));
            }
            None => {}
        }
    }
    for piece in design.piece_ids() {
        let count = design.per_card(piece).saturating_mul(design.cards.value);
        match design.piece(piece).kind {
            PieceKind::Decoration { .. } if count == 0 => {}
            PieceKind::Decoration { roll: Some(each), .. } => {
                totals.rolls.push(Roll { piece, count, each, all: each.nm().saturating_mul(i64::from(count)) });
            }
            PieceKind::Decoration { roll: None, .. } => totals.counted.push((piece, count)),
            PieceKind::Base | PieceKind::Plain | PieceKind::Kept { .. } => {}
        }
    }
    totals
}

fn count(design: &Design, layer: LayerId) -> u32 {
    design.layer(layer).count().saturating_mul(design.cards.value)
}

const fn either(units: Units, inch: i64, mm: i64) -> i64 {
    match units {
        Units::Inch => inch,
        Units::Metric => mm,
    }
}

/// Tape for one piece, nanometres: all round, 1/8 in or 3 mm inside the edge; one strip along the middle of
/// a piece that is no wider than twice as much (common practice, no source).
#[must_use]
pub fn tape(size: Size, units: Units) -> i64 {
    let inside = 2 * either(units, NM_PER_INCH / 8, 3 * NM_PER_MM);
    let (long, short) = sides(size);
    if short <= inside { long } else { 2 * (long - inside + short - inside) }
}

/// Foam squares for one piece: one at every corner, and between two of them as many as leave no more than
/// 2 in or 50 mm from one to the next; a single row under a piece no wider than 1/2 in or 12 mm (common
/// practice, no source).
#[must_use]
pub fn foam_squares(size: Size, units: Units) -> i64 {
    let every = either(units, 2 * NM_PER_INCH, 50 * NM_PER_MM);
    let (long, short) = sides(size);
    let between = |side: i64| ((side + every - 1) / every - 1).max(0);
    if short <= either(units, NM_PER_INCH / 2, 12 * NM_PER_MM) {
        return if long == short { 1 } else { 2 + between(long) };
    }
    4 + 2 * (between(long) + between(short))
}

/// Glue dots for one piece: one, and another for every full inch or 25 mm of its longer side (common
/// practice, no source).
#[must_use]
pub fn dots(size: Size, units: Units) -> i64 {
    1 + sides(size).0 / either(units, NM_PER_INCH, 25 * NM_PER_MM)
}

fn sides(size: Size) -> (i64, i64) {
    let (width, height) = (size.width.nm(), size.height.nm());
    (width.max(height), width.min(height))
}
