//! A piece is never placed, or a paper never cut.

use crate::design::model::{PaperId, PieceId, PieceKind};
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "never-used",
    severity: Severity::Warning,
    group: "counts",
    summary: "a piece is never placed, or a paper never cut",
    page: include_str!("never_used.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let pieces = design.piece_ids().filter(|id| idle_piece(project, *id)).map(|id| {
        let piece = design.piece(id);
        Finding::warning(RULE.code, piece.span, format!("the {} is never used", piece.name), "placed 0 times")
            .plainly(format!("the {} is listed, but no layer places it", piece.name))
            .help(format!("say `place: {}` in `front`, or take it out", piece.name))
    });
    let papers = design.paper_ids().filter(|id| idle_paper(project, *id)).map(|id| {
        let paper = design.paper(id);
        Finding::warning(RULE.code, paper.span, format!("no piece is cut from {}", paper.name), "0 pieces")
            .plainly(format!("{} is listed, but no piece is cut from it", paper.name))
            .help(format!("say `from: {}` at a piece, or take it out", paper.name))
    });
    pieces.chain(papers).collect()
}

fn idle_piece(project: &Project, id: PieceId) -> bool {
    project.design.piece(id).kind == PieceKind::Plain && project.design.per_card(id) == 0
}

/// A paper is idle only if no piece names it, used or not: else the piece is the mistake. A leftover
/// may be kept for later.
fn idle_paper(project: &Project, id: PaperId) -> bool {
    let design = &project.design;
    design.paper(id).kept_from.is_none()
        && design
            .piece_ids()
            .all(|piece| design.version_ids().all(|version| design.paper_of(piece, version) != Some(id)))
}
