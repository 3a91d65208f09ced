//! A die or punch has too little paper round its outline.

use crate::design::model::{Design, From, PieceId, PieceKind};
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::tell::length;
use crate::rules::{Rule, hand};
use crate::shape::Making;

/// The rule.
pub static RULE: Rule = Rule {
    code: "small-die-margin",
    severity: Severity::Warning,
    group: "making",
    summary: "a die or punch has too little paper round its outline",
    page: include_str!("small_die_margin.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.piece_ids().filter_map(|id| small(project, id)).collect()
}

fn small(project: &Project, id: PieceId) -> Option<Finding> {
    let design = &project.design;
    let piece = design.piece(id);
    let tool = match piece.shape.making {
        Making::ByHand => return None,
        Making::Die { .. } => "die",
        Making::Punch { .. } => "punch",
    };
    if matches!(piece.kind, PieceKind::Decoration { .. }) || comes_out_whole(design, id) {
        return None;
    }
    let least = hand::around_a_shape(project.units());
    let margin = length(project, piece.shape.making.margin());
    if margin.nm() >= least.nm() {
        return None;
    }
    let blank = piece.blank().in_units(project.units());
    let enough = least * 2;
    let size = piece.size.in_units(project.units());
    let enough = crate::length::Size::new(size.width + enough, size.height + enough);
    Some(
        Finding::warning(
            RULE.code,
            piece.shape_span,
            format!("the {tool} for the {} has too little paper round it", piece.name),
            format!("{margin} on each side, where {least} is usual"),
        )
        .plainly(format!(
            "the {tool} for the {} has {margin} of paper round it, and is easily set beside its paper",
            piece.name
        ))
        .help(format!("say `margin: {least}`, which makes the rectangle to trim {enough} in place of {blank}")),
    )
}

/// Whether a piece is just what the die or punch of a window leaves: it needs no paper of its own.
fn comes_out_whole(design: &Design, id: PieceId) -> bool {
    let piece = design.piece(id);
    let From::Window(frame, window) = piece.from else { return false };
    design.piece(frame).shape.windows.get(window).is_some_and(|window| {
        window.form == piece.shape.form
            && (window.width, window.height) == (piece.shape.width, piece.shape.height)
            && piece.shape.making.margin() == 0
    })
}
