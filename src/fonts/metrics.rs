//! What the bundled faces can draw, and how wide they draw it.

use std::sync::LazyLock;
use ttf_parser::Face;

use super::FACES;

static PARSED: LazyLock<Vec<(&'static str, u16, Face<'static>)>> = LazyLock::new(|| {
    FACES
        .iter()
        .filter_map(|(family, weight, bytes)| Face::parse(bytes, 0).ok().map(|face| (*family, *weight, face)))
        .collect()
});

/// The bundled face of a family and weight.
#[must_use]
pub fn face(family: &str, weight: u16) -> Option<&'static Face<'static>> {
    PARSED.iter().find(|(f, w, _)| *f == family && *w == weight).map(|(.., face)| face)
}

/// Advance of plain characters, thousandths of an em; a character that the face lacks counts as
/// its missing-glyph box.
#[must_use]
pub fn advance(family: &str, weight: u16, text: &str) -> i64 {
    let Some(face) = face(family, weight) else { return 0 };
    let per_em = i64::from(face.units_per_em());
    let units: i64 = text
        .chars()
        .map(|c| i64::from(face.glyph_hor_advance(face.glyph_index(c).unwrap_or_default()).unwrap_or(0)))
        .sum();
    units * 1000 / per_em
}

/// Whether the bundled face of a family and weight can draw a character.
#[must_use]
pub fn draws(family: &str, weight: u16, character: char) -> bool {
    face(family, weight).is_some_and(|face| face.glyph_index(character).is_some())
}
