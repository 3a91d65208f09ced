//! A piece is larger than every sheet of its paper.

use crate::design::model::{Design, Paper, PaperId, Pattern, PieceId, PieceKind, Sheets};
use crate::diagnostic::{Finding, Severity};
use crate::length::{Length, Size};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::shown;
use crate::source::Span;

/// The rule.
pub static RULE: Rule = Rule {
    code: "larger-than-its-sheet",
    severity: Severity::Error,
    group: "cutting",
    summary: "a piece is larger than every sheet of its paper",
    page: include_str!("larger_than_its_sheet.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings = Vec::new();
    for id in design.piece_ids() {
        for paper in papers_of(design, id) {
            if !fits(design, id, paper) {
                findings.extend(tell(project, id, paper));
            }
        }
    }
    findings
}

/// The papers that a piece is cut from, each once, in the order of the versions.
fn papers_of(design: &Design, piece: PieceId) -> Vec<PaperId> {
    let mut papers = Vec::new();
    for paper in design.version_ids().filter_map(|version| design.paper_of(piece, version)) {
        if !papers.contains(&paper) {
            papers.push(paper);
        }
    }
    papers
}

/// Whether any sheet of the paper holds the piece in a way that its pattern allows.
pub(super) fn fits(design: &Design, piece: PieceId, paper: PaperId) -> bool {
    let sheets = design.paper(paper);
    sheets.sheets.iter().any(|kind| {
        let room = usable(sheets, kind);
        holds(room, design.piece(piece).blank())
            || (may_lie(design, piece, paper) && holds(room, design.piece(piece).blank().lying()))
    })
}

fn holds(room: Size, size: Size) -> bool {
    size.width <= room.width && size.height <= room.height
}

/// Whether a piece may lie on its side on the sheet, whichever of the paper's sides it shows.
fn may_lie(design: &Design, piece: PieceId, paper: PaperId) -> bool {
    let (sheet, wanted) = (design.paper(paper), design.piece(piece));
    let free = |pattern: Pattern| pattern == Pattern::Any;
    let free = match wanted.kind {
        // Pieces of either side may be cut from a leftover.
        PieceKind::Kept { .. } => free(sheet.pattern) && sheet.back.is_none_or(|back| free(back.pattern)),
        PieceKind::Base | PieceKind::Plain | PieceKind::Decoration { .. } => design
            .version_ids()
            .filter_map(|version| shown(design, piece, version))
            .all(|(from, pattern)| from != paper || free(pattern)),
    };
    // What comes from a row along an edge lies as it is drawn.
    let along = sheet.fixed.edges.iter().any(|along| along.piece == piece);
    free && !along && wanted.upright != Some(true)
}

/// A sheet without a strip that lies within it.
pub(super) fn usable(paper: &Paper, sheets: &Sheets) -> Size {
    match paper.edge_strip {
        Some(strip) if !strip.beside && strip.edge.is_side() => {
            Size::new(sheets.size.width - strip.width, sheets.size.height)
        }
        Some(strip) if !strip.beside => Size::new(sheets.size.width, sheets.size.height - strip.width),
        _ => sheets.size,
    }
}

fn tell(project: &Project, id: PieceId, paper_id: PaperId) -> Option<Finding> {
    let design = &project.design;
    let units = project.units();
    let (piece, paper) = (design.piece(id), design.paper(paper_id));
    let size = piece.size.in_units(units);
    // The sheet that comes nearest to holding it, and how the piece lies best on it.
    let (room, lies, span) = nearest(design, id, paper_id)?;
    let (room, lies) = (room.in_units(units), lies.in_units(units));
    let over: Vec<String> = [(lies.width, room.width, "across"), (lies.height, room.height, "up")]
        .into_iter()
        .filter(|(side, room, _)| side > room)
        .map(|(side, room, way)| format!("{side} {way}, where the sheet gives {room}"))
        .collect();
    let turned_fits = !may_lie(design, id, paper_id) && holds(room, size.lying());
    let smaller = Size::new(lies.width.min(room.width), lies.height.min(room.height));
    let smaller = if lies == size { smaller } else { smaller.lying() };
    let fact = over.join(" and ");
    let help = match paper.kept_from {
        Some(_) => format!("make it {smaller} or smaller, or keep a larger {}", paper.name),
        None => format!("make it {smaller} or smaller, or take larger sheets of {}", paper.name),
    };
    let finding =
        Finding::error(RULE.code, piece.size_span, format!("the {} is larger than its sheet", piece.name), fact)
            .also(span, format!("{room} to cut from"))
            .plainly(format!("the {} is {size}, and a sheet of {} gives only {room}", piece.name, paper.name))
            .help(help);
    let finding = match paper.edge_strip.filter(|strip| !strip.beside) {
        Some(strip) => finding.also(strip.span, "this strip is cut off first"),
        None => finding,
    };
    Some(if turned_fits {
        finding.also(paper.pattern_span.unwrap_or(piece.span), "it may not lie on its side")
    } else {
        finding
    })
}

/// The sheet and position that the piece sticks out of least.
fn nearest(design: &Design, id: PieceId, paper: PaperId) -> Option<(Size, Size, Span)> {
    let size = design.piece(id).size;
    let ways: &[Size] = if may_lie(design, id, paper) { &[size, size.lying()] } else { &[size] };
    let paper = design.paper(paper);
    let out = |room: Length, side: Length| (side.nm() - room.nm()).max(0);
    paper
        .sheets
        .iter()
        .flat_map(|kind| ways.iter().map(move |lies| (usable(paper, kind), *lies, kind.span)))
        .min_by_key(|(room, lies, _)| out(room.width, lies.width) + out(room.height, lies.height))
}
