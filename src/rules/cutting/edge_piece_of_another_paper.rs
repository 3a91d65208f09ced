//! A piece is to come from an edge of a paper that no card cuts it from.

use crate::design::model::{AlongEdge, Design, From, PaperId, PieceKind};
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "edge-piece-of-another-paper",
    severity: Severity::Error,
    group: "cutting",
    summary: "a piece is to come from an edge of a paper that no card cuts it from",
    page: include_str!("edge_piece_of_another_paper.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings = Vec::new();
    for id in design.paper_ids() {
        let elsewhere =
            |along: &&AlongEdge| design.version_ids().all(|version| design.paper_of(along.piece, version) != Some(id));
        findings.extend(design.paper(id).fixed.edges.iter().filter(elsewhere).map(|along| tell(design, id, along)));
    }
    findings
}

fn tell(design: &Design, id: PaperId, along: &AlongEdge) -> Finding {
    let (paper, piece) = (&design.paper(id).name, design.piece(along.piece));
    let (fact, mend) = match (piece.from, piece.kind) {
        (From::Varies, _) => {
            ("in no version from this paper".to_owned(), format!("or name {paper} for it in 1 version"))
        }
        (From::Paper(other), PieceKind::Kept { .. }) => {
            let other = &design.paper(other).name;
            (format!("kept from {other}"), format!("or move it to {other}"))
        }
        (From::Window(..) | From::Bought, _) => {
            ("cut from no paper of its own".to_owned(), format!("or say `from: {paper}` for it"))
        }
        (From::Paper(other), _) => {
            (format!("cut from {}", design.paper(other).name), format!("or say `from: {paper}` for it"))
        }
    };
    let finding = Finding::error(
        RULE.code,
        along.span,
        format!("the {} is not cut from {paper}", piece.name),
        "no card cuts it from here",
    );
    finding
        .also(piece.from_span, fact)
        .plainly(format!(
            "the {} is to come from the {} of {paper}, but no card cuts it from there",
            piece.name,
            along.edge.word()
        ))
        .help(format!("take it out of `along the edge`, {mend}"))
}
