//! What a paper is taken to weigh and how thick it is taken to be.

use super::thickness::guide;
use crate::design::model::{Design, PaperId};
use crate::weight::{Grade, Grammage};

/// A sheet of some paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stock {
    /// Of a square metre.
    pub grammage: Grammage,
    /// Nanometres.
    pub thickness: i64,
    /// Whether the design says neither weight nor thickness.
    pub assumed: bool,
}

/// A base whose weight is not said: cardstock of 220 to 300 g/m2 is usual, the heavier is taken. Common
/// practice, no source.
const BASE: Grammage = Grammage::grams(300);
/// Any other paper whose weight is not said: patterned paper of 120 to 200 g/m2 is usual, the heavier is
/// taken. Common practice, no source.
const OTHER: Grammage = Grammage::grams(200);
/// The paper of an envelope: common practice, no source.
const ENVELOPE: Grammage = Grammage::grams(90);

/// What a paper of a design is taken for.
#[must_use]
pub fn stock(design: &Design, id: PaperId) -> Stock {
    let paper = design.paper(id);
    let weight = paper.weight.as_ref().map(|weight| &weight.value);
    let is_base = design.card.as_ref().is_some_and(|card| card.from == id);
    let usual = if is_base { BASE } else { OTHER };
    let grammage = weight.map_or(usual, |weight| weight.grammage);
    let thickness =
        paper.thickness.map_or_else(|| guide(grammage, weight.and_then(|weight| weight.grade)), |said| said.nm());
    Stock { grammage, thickness, assumed: weight.is_none() && paper.thickness.is_none() }
}

/// What the paper of an envelope is taken for.
#[must_use]
pub fn envelope_paper() -> Stock {
    Stock { grammage: ENVELOPE, thickness: guide(ENVELOPE, Some(Grade::Text)), assumed: true }
}
