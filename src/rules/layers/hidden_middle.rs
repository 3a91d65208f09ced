//! The middle of a layer is covered, and another piece of the design could be cut from it.

use crate::design::model::{LayerId, Pattern, Piece, PieceId, PieceKind};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Rect, Region};
use crate::length::Size;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::hand;
use crate::rules::outlines::{above, shown};
use crate::rules::tell::{length, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "hidden-middle",
    severity: Severity::Note,
    group: "layers",
    summary: "another piece could be cut from the covered middle of a layer",
    page: include_str!("hidden_middle.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let shown = shown(project);
    project.design.layer_ids().filter_map(|id| middle(project, &shown, id)).collect()
}

/// A single straight rectangle without windows, and no other.
fn is_whole(project: &Project, id: LayerId) -> bool {
    let layer = project.design.layer(id);
    let piece = project.design.piece(layer.piece);
    layer.count() == 1 && project.layout.placed(id).is_straight() && piece.is_plain() && piece.kind == PieceKind::Plain
}

fn middle(project: &Project, shown: &[Region], id: LayerId) -> Option<Finding> {
    let design = &project.design;
    if !is_whole(project, id) {
        return None;
    }
    let own = project.layout.placed(id).trimmed.first().copied().flatten()?;
    let round = hand::easy(project.units()).nm();
    let mut best: Option<(i128, PieceId, LayerId, Rect)> = None;
    for over in above(project, id).filter(|over| is_whole(project, *over)) {
        let covered = project.layout.placed(over).trimmed.first().copied().flatten().and_then(|it| own.overlap(it));
        let Some(covered) = covered.map(|covered| covered.grown(-round)) else { continue };
        // What is cut away may carry nothing that lies beside the upper layer.
        if covered.width() <= 0 || covered.height() <= 0 || !Region::from(covered).difference(&shown[over.0]).is_empty()
        {
            continue;
        }
        for piece in design.piece_ids().filter(|piece| serves(project, id, *piece, covered)) {
            let area = Rect::of(design.piece(piece).size).area();
            if best.is_none_or(|(most, ..)| area > most) {
                best = Some((area, piece, over, covered));
            }
        }
    }
    let (_, piece, over, covered) = best?;
    Some(tell(project, id, piece, over, covered))
}

/// Whether a piece of the design can be cut from a covered part of a layer, its pattern lying as it must.
fn serves(project: &Project, id: LayerId, other: PieceId, covered: Rect) -> bool {
    let design = &project.design;
    let layer = design.layer(id);
    let (own, piece): (&Piece, &Piece) = (design.piece(layer.piece), design.piece(other));
    let blank = piece.blank();
    if blank.width.min(blank.height) < hand::usable(project.units()) {
        return false;
    }
    // Each card has one such layer, and only what it needs itself is saved.
    if other == layer.piece || piece.kind != PieceKind::Plain || design.per_card(other) == 0 {
        return false;
    }
    let same_paper = |version| {
        let paper = design.paper_of(layer.piece, version);
        paper.is_some()
            && paper == design.paper_of(other, version)
            && design.side_of(layer.piece, version) == design.side_of(other, version)
    };
    let from_a_window = |piece: &Piece| matches!(piece.from, crate::design::model::From::Window(..));
    if from_a_window(own) || from_a_window(piece) || !design.version_ids().all(same_paper) {
        return false;
    }
    let pattern = |version| crate::rules::tell::shown(design, layer.piece, version).map(|(_, pattern)| pattern);
    let any_way = design.version_ids().all(|version| pattern(version) == Some(Pattern::Any));
    // The covered part as it lies on the piece, unturned.
    let room = covered.size(piece.size.width.unit()).turned(layer.quarter_turns);
    let fits = |size: Size| size.width <= room.width && size.height <= room.height;
    fits(blank) || any_way && fits(blank.lying())
}

fn tell(project: &Project, id: LayerId, other: PieceId, over: LayerId, covered: Rect) -> Finding {
    let design = &project.design;
    let (layer, piece) = (design.layer(id), design.piece(other));
    let (the_layer, the_over) = (the_layer(design, id), the_layer(design, over));
    let (room, round) = (covered.size(length(project, 0).unit()), hand::easy(project.units()));
    let size = piece.blank().in_units(project.units());
    Finding::note(
        RULE.code,
        layer.span,
        format!("the middle of {the_layer} is covered, and the {} would fit into it", piece.name),
        format!("{room} lies hidden, {round} inside the edges of {the_over}"),
    )
    .also(piece.size_span, format!("{size} of the same paper"))
    .plainly(format!("nobody sees the middle of {the_layer}, and the {} could be cut from it", piece.name))
    .help(format!(
        "cut a window of {size} into the {} where it is covered, if paper is short",
        design.piece(layer.piece).name
    ))
}
