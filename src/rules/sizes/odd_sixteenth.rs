//! Sizes end in odd sixteenths of an inch, or in half millimetres, which are easily misread.

use crate::design::model::{From, Piece, PieceKind};
use crate::diagnostic::{Finding, Severity};
use crate::length::{Length, Units};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::length;
use crate::shape::Making;
use crate::source::Span;
use crate::words::english::listed_words;

/// The rule.
pub static RULE: Rule = Rule {
    code: "odd-sixteenth",
    severity: Severity::Note,
    group: "sizes",
    summary: "sizes end in odd sixteenths of an inch, or in half millimetres",
    page: include_str!("odd_sixteenth.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    // What a die cuts, what is bought and what remains is not read off a ruler.
    let is_read = |piece: &&Piece| {
        piece.shape.making == Making::ByHand
            && piece.from != From::Bought
            && !matches!(piece.kind, PieceKind::Kept { .. } | PieceKind::Base)
    };
    let mut odd: Vec<(Length, Span)> = Vec::new();
    for piece in design.pieces.iter().filter(is_read) {
        let size = piece.size.in_units(project.units());
        for side in [size.width, size.height] {
            if side.is_odd(fine(side.unit().system()))
                && side.is_on(design.workshop.ruler)
                && odd.iter().all(|(known, _)| *known != side)
            {
                odd.push((side, piece.size_span));
            }
        }
    }
    let Some((first, span)) = odd.first().copied() else { return Vec::new() };
    let told: Vec<String> = odd.iter().map(|(side, _)| side.to_string()).collect();
    let what = match project.units() {
        Units::Inch => "odd sixteenths of an inch",
        Units::Metric => "half millimetres",
    };
    // An odd one lies in the middle between two that are even.
    let step = fine(project.units()).nm();
    let (below, above) = (length(project, first.nm() - step), length(project, first.nm() + step));
    let nearest =
        if below.is_zero() { above.to_string() } else { format!("{} or {above}", below.number(project.units())) };
    let finding = Finding::note(RULE.code, span, format!("sizes end in {what}"), listed_words(&told))
        .plainly(format!("{} end in {what}, which are easily misread", listed_words(&told)))
        .help(format!("make {first} {nearest} where the card allows it"));
    vec![finding]
}

/// The finest step that is meant: a sixteenth of an inch, half a millimetre.
const fn fine(units: Units) -> Length {
    Length::either(units, Length::inch(1, 16), Length::of(500_000, units))
}
