//! A size is no whole step of the ruler.

use crate::design::model::{FixedRow, Piece, PieceKind, Sheets, Stated};
use crate::diagnostic::{Finding, Severity};
use crate::length::{Length, Size};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{length, untwinned};
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
    if let Some(card) = design.card.as_ref().filter(|card| !untwinned(project, card.size.width)) {
        let size = card.size.in_units(project.units());
        let help = format!("make it {}", nearest(size, ruler));
        findings.extend(off(size, ruler).map(|_| warn("card", card.span, size, ruler).help(help)));
    }
    for piece in &design.pieces {
        let size = piece.size.in_units(project.units());
        if off(size, ruler).is_some() && !follows(project, piece, ruler) {
            let help = mend(project, piece, size, ruler);
            findings.push(warn(&piece.name, piece.size_span, size, ruler).help(help));
        }
    }
    // A kept leftover is among the pieces.
    for paper in design.papers.iter().filter(|paper| paper.kept_from.is_none()) {
        let sheets = paper.sheets.iter().chain(paper.also.iter().flat_map(|also| &also.sheets));
        findings.extend(sheets.filter_map(|sheets| sheet(project, &paper.name, sheets, ruler)));
        findings.extend(paper.fixed.rows.iter().filter_map(|fixed| row(project, &paper.name, fixed, ruler)));
    }
    findings
}

/// Whether a size is off the ruler only because what it comes from is at fault.
fn follows(project: &Project, piece: &Piece, ruler: Length) -> bool {
    let design = &project.design;
    let written = match piece.stated {
        Stated::CardLess(border) | Stated::PieceLess(_, border) => border,
        Stated::Outright => piece.size.width,
    };
    if untwinned(project, written) {
        return true;
    }
    let from = match piece.stated {
        Stated::CardLess(_) => design.card.as_ref().map(|card| card.size),
        Stated::PieceLess(other, _) => Some(design.piece(other).size),
        Stated::Outright if piece.kind == PieceKind::Base => design.card.as_ref().map(|card| card.size),
        Stated::Outright => None,
    };
    from.is_some_and(|size| off(size.in_units(project.units()), ruler).is_some())
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
    let less = |whole: &str, border: Length| {
        let border = near(length(project, border.nm()), ruler);
        format!("say `{whole} less {border} all round`")
    };
    match piece.stated {
        Stated::CardLess(border) => less("card", border),
        Stated::PieceLess(other, border) => less(&project.design.piece(other).name, border),
        Stated::Outright => format!("make it {}", nearest(size, ruler)),
    }
}

/// The nearest whole number of steps, at least one; the lower one where it lies in the middle.
fn near(length: Length, ruler: Length) -> Length {
    let below = length.floor_to(ruler);
    if (length - below) * 2 > ruler || below.is_zero() { below + ruler } else { below }
}

/// The nearest size on the ruler.
fn nearest(size: Size, ruler: Length) -> Size {
    Size::new(near(size.width, ruler), near(size.height, ruler))
}

fn warn(name: &str, span: Span, size: Size, ruler: Length) -> Finding {
    let fact = fact(size, ruler);
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
    if untwinned(project, row.measure) || measure.is_on(ruler) {
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
    if untwinned(project, sheets.size.width) {
        return None;
    }
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
