//! Where the flat base is scored: a strip as long as the base is across its folds.
//!
//! Common practice, no source: a card that folds in the middle is scored in the middle, and one that folds to and
//! fro at equal panels, for both sides of such a fold bend alike. The flaps of a gate card meet edge to edge, and in
//! thick paper each fold takes up about a thickness: so each flap is scored nearer to its own edge by one thickness
//! of the paper, where that is [`THICK`] or more, rounded up to 1/64 in or half a millimetre.

use super::draft::{Draft, Known, SMALL, cut_along, open, width};
use super::model::{Label, Role};
use super::names::{size, slug};
use crate::design::model::{Card, Design, Fold};
use crate::geometry::{Edge, Point, Polygon, Rect, Region};
use crate::length::{Length, Unit};
use crate::paper::stock::stock;
use crate::words::guides;

/// Paper from 0.25 mm (0.010 in) on is thick. Common practice, no source.
pub const THICK: i64 = 250_000;
/// How high the strip is.
const HIGH: i64 = 25_000_000;

/// Where a base is scored, from the edge that is named, with the allowance in it; and the allowance.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Scores {
    /// The edge of the flat base, its outside up, that it is measured from.
    pub from: Edge,
    /// How long the base is across its folds.
    pub length: i64,
    /// The places, nanometres from the edge.
    pub at: Vec<i64>,
    /// What each flap is scored nearer to its edge; nothing where no allowance is made.
    pub allowance: i64,
}

/// The score positions of a card; none of a flat one.
#[must_use]
pub fn scores(design: &Design) -> Option<Scores> {
    let card: &Card = design.card.as_ref()?;
    let flat = card.fold.flat(card.size);
    let (from, length) =
        if card.fold == Fold::Top { (Edge::Top, flat.height.nm()) } else { (Edge::Left, flat.width.nm()) };
    let thickness = stock(design, card.from).thickness;
    let step = Length::either(design.units, Length::inch(1, 64), Length::new(500_000, Unit::Millimetre)).nm();
    let allowance =
        if card.fold == Fold::Gate && thickness >= THICK { (thickness + step - 1) / step * step } else { 0 };
    let nearer = |at: i64| if 2 * at < length { at - allowance } else { at + allowance };
    let at: Vec<i64> = card.fold.scores(card.size).iter().map(|score| nearer(score.at)).collect();
    (!at.is_empty()).then_some(Scores { from, length, at, allowance })
}

/// The strip, with its paper.
pub(super) fn draft(design: &Design) -> Option<(Draft, Region)> {
    let say = design.words();
    let scores = scores(design)?;
    let base = &design.piece(design.card.as_ref()?.base).name;
    let strip = Rect::at(0, 0, scores.length, HIGH);
    let title = guides::scores(say, base);
    let number = |nm: i64| Length::of(nm, design.units).number(design.units);
    let measures: Vec<String> = scores.at.iter().map(|at| number(*at)).collect();
    let size = size(design, strip);
    let mut notes = vec![guides::size(say, &size)];
    if scores.allowance > 0 {
        notes.push(guides::allowance(say, &Length::of(scores.allowance, design.units).to_string()));
    }
    let mut draft = Draft {
        word: slug("scores", std::slice::from_ref(base)),
        alt: guides::scores_alt(say, &title, &size, &measures, scores.from),
        title,
        notes,
        known: vec![Known::Scores],
        lines: cut_along(&Polygon::from(strip)),
        labels: Vec::new(),
    };
    let label = |text: String, left: i64, baseline: i64, bold: bool| Label {
        at: Point::new(left + width(&text, SMALL, bold) / 2, baseline),
        text,
        size: SMALL,
        turned: false,
        bold,
    };
    // Measures stand right of their lines, one above the other in turn, so that near ones do not meet.
    for ((at, measure), turn) in scores.at.iter().zip(&measures).zip(0..) {
        draft.lines.push(open(Role::Score, vec![Point::new(*at, 0), Point::new(*at, HIGH)]));
        draft.labels.push(label(say.measured(measure), at + 1_000_000, 4_000_000 + 4_000_000 * (turn % 2), false));
    }
    draft.labels.push(label(guides::edge_at(say, scores.from), 1_500_000, HIGH - 6_000_000, true));
    Some((draft, Region::from(strip)))
}
