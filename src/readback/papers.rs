//! Papers as `check` reads them back: what their sheets give, and all that the design says of them.

use crate::assembly::finishing::cut_name;
use crate::cutting::halves::of_piece;
use crate::design::model::{Design, Paper, PaperId, Pattern, PieceId, PieceKind, Sheets, Side, TurnedOver};
use crate::length::{Length, Size};
use crate::project::Project;
use crate::words::english::{check, counted, listed_words};

/// The sheets of a paper and what is cut from them.
pub(super) fn sheets(project: &Project, id: PaperId) -> String {
    let design = &project.design;
    let paper = design.paper(id);
    let plans: Vec<_> = project.plan.sheets.iter().filter(|sheet| sheet.paper == id).collect();
    let count = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
    let used = plans.iter().fold(0_u32, |used, sheet| used.saturating_add(count(sheet.numbers.len())));
    let mut pieces: Vec<(u32, String)> = Vec::new();
    let mut spare: Vec<(u32, String)> = Vec::new();
    for piece in design.piece_ids() {
        let cut: u32 = plans
            .iter()
            .flat_map(|sheet| {
                sheet.pieces().into_iter().map(|(cut, n)| (cut, n.saturating_mul(count(sheet.numbers.len()))))
            })
            .filter(|(cut, _)| *cut == piece)
            .fold(0, |all, (_, n)| all.saturating_add(n));
        if cut == 0 {
            continue;
        }
        let wanted = wanted(design, piece, id);
        let name = cut_name(design, piece);
        if cut > wanted {
            spare.push((cut - wanted, name.clone()));
        }
        pieces.push((cut, name));
    }
    let stated = stated(project, &paper.sheets);
    match paper.kept_from {
        Some(source) => check::leftovers(&paper.name, &design.paper(source).name, used, &stated, &pieces, &spare),
        None => check::sheets(&paper.name, used, &stated, &pieces, &spare),
    }
}

/// How many of a piece are wanted from a paper.
fn wanted(design: &Design, piece: PieceId, paper: PaperId) -> u32 {
    if let PieceKind::Kept { count, .. } = design.piece(piece).kind {
        return count;
    }
    if let Some(halves) = of_piece(design, piece, paper) {
        return if halves.piece == piece { halves.rectangles } else { 0 };
    }
    let versions = design.version_ids().filter(|version| design.paper_of(piece, *version) == Some(paper));
    versions.fold(0, |all, version| {
        all.saturating_add(design.version(version).cards.saturating_mul(design.per_card(piece)))
    })
}

fn stated(project: &Project, sheets: &[Sheets]) -> Vec<(u32, Size)> {
    sheets.iter().map(|kind| (kind.count, kind.size.in_units(project.units()))).collect()
}

/// What the design says of a paper beyond its sheets, a fact a line.
pub(super) fn said_of(project: &Project, id: PaperId) -> Vec<String> {
    let design = &project.design;
    let paper = design.paper(id);
    let mut lines = Vec::new();
    lines.extend(sides(design, id, paper));
    if paper.kept_from.is_none() {
        lines.extend(paper.different.map(|_| check::cut_alike().to_owned()));
        lines.extend(kept(project, id));
    }
    lines.extend(fixed(project, paper));
    if !paper.also.is_empty() {
        let also: Vec<Vec<(u32, Size)>> = paper.also.iter().map(|also| stated(project, &also.sheets)).collect();
        lines.push(check::also_from(&also));
    }
    if paper.ways > 1 {
        lines.push(check::ways(paper.ways));
    }
    lines
}

/// Both sides, and which pieces show the back.
fn sides(design: &Design, id: PaperId, paper: &Paper) -> Vec<String> {
    let Some(back) = paper.back else { return Vec::new() };
    let mut lines = Vec::new();
    // A leftover lies as its source did.
    if paper.kept_from.is_none() {
        let over = match back.turned_over {
            TurnedOver::LeftToRight => "left to right",
            TurnedOver::TopToBottom => "top to bottom",
        };
        lines.push(check::both_sides(word(paper.pattern), word(back.pattern), over));
    }
    let mut shown = Vec::new();
    for piece in design.piece_ids() {
        let name = &design.piece(piece).name;
        let from: Vec<_> =
            design.version_ids().filter(|version| design.paper_of(piece, *version) == Some(id)).collect();
        let backs: Vec<_> = from.iter().filter(|version| design.side_of(piece, **version) == Side::Back).collect();
        if backs.is_empty() {
            continue;
        }
        let of: Vec<String> = backs.iter().map(|version| design.version(**version).name.clone()).collect();
        shown.push(if backs.len() == from.len() { name.clone() } else { format!("{name} of {}", listed_words(&of)) });
    }
    if !shown.is_empty() {
        lines.push(check::backs(&shown));
    }
    lines
}

const fn word(pattern: Pattern) -> &'static str {
    match pattern {
        Pattern::Any => "any way up",
        Pattern::TwoWay => "two-way",
        Pattern::OneWay => "one-way",
    }
}

/// The leftovers that a paper keeps.
fn kept(project: &Project, id: PaperId) -> Option<String> {
    let design = &project.design;
    let kept = design.piece_ids().map(|piece| design.piece(piece));
    let kept: Vec<String> = kept
        .filter(|piece| piece.from == crate::design::model::From::Paper(id))
        .filter_map(|piece| match piece.kind {
            PieceKind::Kept { count, .. } => {
                Some(format!("{} of {}", counted(count, &piece.name), piece.size.in_units(project.units())))
            }
            PieceKind::Base | PieceKind::Plain | PieceKind::Decoration { .. } => None,
        })
        .collect();
    (!kept.is_empty()).then(|| check::kept(&kept))
}

/// Bands and rows that the designer fixes.
fn fixed(project: &Project, paper: &Paper) -> Vec<String> {
    let bands = paper.fixed.edges.iter();
    let mut lines: Vec<String> =
        bands.map(|band| check::band(&project.design.piece(band.piece).name, band.edge)).collect();
    if !paper.fixed.rows.is_empty() {
        let rows = paper.fixed.rows.iter();
        let rows: Vec<_> =
            rows.map(|row| (Length::of(row.measure.nm(), project.units()), row.from, row.times)).collect();
        lines.push(check::cut_first(&rows));
    }
    lines
}
