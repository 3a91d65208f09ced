//! A size is no whole step of the ruler.

use crate::design::model::{Change, Extent, FixedRow, From, Measure, Of, Piece, PieceKind, Relation, Sheets, Stated};
use crate::diagnostic::{Finding, Severity};
use crate::length::{Length, Size};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::length;
use crate::shape::Making;
use crate::source::Span;

/// The rule.
pub static RULE: Rule = Rule {
    code: "size-off-the-ruler",
    severity: Severity::Warning,
    group: "sizes",
    summary: "a size is no whole step of the ruler",
    page: include_str!("size_off_the_ruler.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let ruler = length(project, design.workshop.ruler.nm());
    let mut findings = Vec::new();
    if let Some(card) = &design.card {
        let size = card.size.in_units(project.units());
        let help = format!("make it {}", nearest(size, ruler));
        findings.extend(off(size, ruler).map(|_| warn("card", card.span, &fact(size, ruler), ruler).help(help)));
    }
    // What a die cuts, or what is bought, has the size that it has.
    let cut_by_ruler = |piece: &&Piece| piece.shape.making == Making::ByHand && piece.from != From::Bought;
    for piece in design.pieces.iter().filter(cut_by_ruler) {
        findings.extend(of_piece(project, piece, ruler));
    }
    // A kept leftover is among the pieces.
    for paper in design.papers.iter().filter(|paper| paper.kept_from.is_none()) {
        let sheets = paper.sheets.iter().chain(paper.also.iter().flat_map(|also| &also.sheets));
        findings.extend(sheets.filter_map(|sheets| sheet(project, &paper.name, sheets, ruler)));
        findings.extend(paper.fixed.rows.iter().filter_map(|fixed| row(project, &paper.name, fixed, ruler)));
    }
    findings
}

fn of_piece(project: &Project, piece: &Piece, ruler: Length) -> Vec<Finding> {
    let size = piece.size.in_units(project.units());
    let sides: Vec<Extent> = Extent::BOTH.into_iter().filter(|side| at_fault(project, piece, *side, ruler)).collect();
    if let Stated::BySide { .. } = piece.stated {
        let finding = |side: Extent| {
            let relation = piece.stated.side(side)?;
            let fact = format!("{} {}", side.of(size), side.measure());
            let help = mend_side(project, piece, relation, side, ruler);
            Some(warn(&piece.name, relation.span, &fact, ruler).help(help))
        };
        return sides.into_iter().filter_map(finding).collect();
    }
    if sides.is_empty() {
        return Vec::new();
    }
    let help = mend(project, piece, size, ruler);
    vec![warn(&piece.name, piece.size_span, &fact(size, ruler), ruler).help(help)]
}

/// Whether a side is off the ruler, and not only because what it comes from is at fault or has a rule of
/// its own.
fn at_fault(project: &Project, piece: &Piece, side: Extent, ruler: Length) -> bool {
    let design = &project.design;
    if side.of(piece.size).is_on(ruler) {
        return false;
    }
    if piece.stated == Stated::Outright {
        let card = design.card.as_ref().filter(|_| piece.kind == PieceKind::Base).map(|card| card.size);
        let follows = card.is_some_and(|card| off(card, ruler).is_some());
        return !follows;
    }
    let shared = piece.stated.side(side).is_some_and(|relation| {
        matches!(relation.measure, Measure::Part { .. } | Measure::Share { .. })
            && relation
                .measure
                .result(side, |of, side| known(project, of, side))
                .is_some_and(|share| !share.is_on(ruler))
    });
    !shared && !follows(project, &piece.stated, side, ruler)
}

/// Whether what a side leans on is off the ruler.
pub(super) fn follows(project: &Project, stated: &Stated, side: Extent, ruler: Length) -> bool {
    let known = |(of, side)| known(project, of, side);
    stated.leans_on(side).into_iter().filter_map(known).any(|length| !length.is_on(ruler))
}

/// A side of what is leaned on.
pub(super) fn known(project: &Project, of: Of, side: Extent) -> Option<Length> {
    match of {
        Of::Card => project.design.card.as_ref().map(|card| side.of(card.size)),
        Of::Piece(piece) => Some(side.of(project.design.piece(piece).size)),
    }
}

/// How what is leaned on is called in a design.
pub(super) fn called(project: &Project, of: Of) -> &str {
    match of {
        Of::Card => "card",
        Of::Piece(piece) => &project.design.piece(piece).name,
    }
}

/// The first side that is off the ruler.
fn off(size: Size, ruler: Length) -> Option<Length> {
    [size.width, size.height].into_iter().find(|side| !side.is_on(ruler))
}

fn fact(size: Size, ruler: Length) -> String {
    let told: Vec<String> = [(size.width, "wide"), (size.height, "high")]
        .into_iter()
        .filter(|(side, _)| !side.is_on(ruler))
        .map(|(side, word)| format!("{side} {word}"))
        .collect();
    told.join(" and ")
}

/// The nearest border of a size by relation, the nearest size of one given outright.
fn mend(project: &Project, piece: &Piece, size: Size, ruler: Length) -> String {
    let on = |length: Length| on_the_ruler(length, project, ruler);
    match &piece.stated {
        Stated::AllRound { of, border } => format!("say `{} less {} all round`", called(project, *of), on(*border)),
        Stated::ByEdge { of, edges } => {
            let edges: Vec<String> =
                edges.iter().map(|(edge, length)| format!("{} {}", edge.word(), on(*length))).collect();
            format!("say `{} less {}`", called(project, *of), edges.join(", "))
        }
        Stated::Outright | Stated::BySide { .. } => format!("make it {}", nearest(size, ruler)),
    }
}

/// The nearest length that brings one side onto the ruler.
fn mend_side(project: &Project, piece: &Piece, relation: &Relation, side: Extent, ruler: Length) -> String {
    let on = |length: Length| on_the_ruler(length, project, ruler);
    let measure = relation.measure.result(side, |of, side| known(project, of, side));
    match (&relation.measure, relation.change) {
        (_, Some(Change::Less(length) | Change::Plus(length)))
            if measure.is_some_and(|measure| measure.is_on(ruler)) =>
        {
            format!("say `{} {}`", relation.change.map_or("", Change::word), on(length))
        }
        (Measure::Rest { gap, .. }, None) => format!("say `with gap {}`", on(*gap)),
        _ => format!("make it {} {}", on(side.of(piece.size)), side.measure()),
    }
}

/// The length itself where it is on the ruler, else the nearest that is.
fn on_the_ruler(length: Length, project: &Project, ruler: Length) -> Length {
    let length = crate::rules::tell::length(project, length.nm());
    if length.is_on(ruler) { length } else { near(length, ruler) }
}

/// The nearest whole number of steps, at least one; the lower one where it lies in the middle.
pub(super) fn near(length: Length, ruler: Length) -> Length {
    let below = length.floor_to(ruler);
    if (length - below) * 2 > ruler || below.is_zero() { below + ruler } else { below }
}

/// The nearest size on the ruler.
fn nearest(size: Size, ruler: Length) -> Size {
    Size::new(near(size.width, ruler), near(size.height, ruler))
}

fn warn(name: &str, span: Span, fact: &str, ruler: Length) -> Finding {
    Finding::warning(
        RULE.code,
        span,
        format!("the size of the {name} is no whole step of the ruler"),
        format!("{fact}, and the ruler's step is {ruler}"),
    )
    .plainly(format!("the {name} is {fact}, which no mark of a ruler in steps of {ruler} gives"))
}

/// A row that the designer fixes is set by the ruler like any other.
fn row(project: &Project, paper: &str, row: &FixedRow, ruler: Length) -> Option<Finding> {
    let measure = length(project, row.measure.nm());
    if measure.is_on(ruler) {
        return None;
    }
    let finding = Finding::warning(
        RULE.code,
        row.span,
        format!("a fixed row of {paper} is no whole step of the ruler"),
        format!("{measure}, and the ruler's step is {ruler}"),
    );
    Some(
        finding
            .plainly(format!("a row of {paper} is {measure}, which no mark of a ruler in steps of {ruler} gives"))
            .help(format!("make it {}", near(measure, ruler))),
    )
}

/// Sheets are bought, not cut: their odd sizes only show in what is left over.
fn sheet(project: &Project, paper: &str, sheets: &Sheets, ruler: Length) -> Option<Finding> {
    let size = sheets.size.in_units(project.units());
    off(size, ruler)?;
    let usable = nearest(size, ruler);
    let usable = Size::new(usable.width.min(size.width), usable.height.min(size.height));
    Some(
        Finding::note(
            RULE.code,
            sheets.span,
            format!("the sheets of {paper} are no whole step of the ruler"),
            format!("{}, and the ruler's step is {ruler}", fact(size, ruler)),
        )
        .plainly(format!("the sheets of {paper} are {size}, so that what is left over has an odd size"))
        .help(format!("plan them as {usable} if odd leftovers are a bother")),
    )
}
