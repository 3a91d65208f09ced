//! What `check` says of a size by relation: what it comes to, and from what.

use crate::design::model::{Change, Extent, Measure, Of, PieceId, Relation, Stated};
use crate::length::Length;
use crate::project::Project;
use crate::words::english::listed_words;

/// A line for every size by relation, in the order of the design: `panel: 4 x 5 1/4 in, the mat less
/// 1/8 in all round.`
pub(super) fn related(project: &Project) -> Vec<String> {
    let line = |id: PieceId| {
        let piece = project.design.piece(id);
        Some(format!("{}: {}, {}.", piece.name, piece.size.in_units(project.units()), come_from(project, id)?))
    };
    project.design.piece_ids().filter_map(line).collect()
}

/// What a size comes from; none where it is said outright.
pub(super) fn come_from(project: &Project, id: PieceId) -> Option<String> {
    let says = |length: Length| Length::of(length.nm(), project.units());
    match &project.design.piece(id).stated {
        Stated::Outright => None,
        Stated::AllRound { of, border } => Some(format!("{} less {} all round", the(project, *of), says(*border))),
        Stated::ByEdge { of, edges } => {
            let edges: Vec<String> =
                edges.iter().map(|(edge, length)| format!("{} at the {}", says(*length), edge.word())).collect();
            Some(format!("{} less {}", the(project, *of), listed_words(&edges)))
        }
        Stated::BySide { width, height } => {
            let own = |side: &Relation| matches!((&side.measure, side.change), (Measure::Own(_), None));
            if own(width) && own(height) {
                return None;
            }
            let side = |extent: Extent, relation| format!("the {} {}", extent.word(), side(project, extent, relation));
            Some(format!("{}; {}", side(Extent::Width, width), side(Extent::Height, height)))
        }
    }
}

fn side(project: &Project, own: Extent, relation: &Relation) -> String {
    let says = |length: Length| Length::of(length.nm(), project.units());
    let gap = |gap: &Length| {
        if gap.is_zero() { String::new() } else { format!(" with gap {}", says(*gap)) }
    };
    let measure = match &relation.measure {
        Measure::Own(length) => says(*length).to_string(),
        Measure::Same(of, side) => format!("as {} as {}", side.measure(), the(project, *of)),
        Measure::Part { of, side, parts } => {
            let part = match parts {
                2 => "half of",
                3 => "a third of",
                _ => "a quarter of",
            };
            let side = if *side == own { String::new() } else { format!("the {} of ", side.word()) };
            format!("{part} {side}{}", the(project, *of))
        }
        Measure::Drawn { .. } => "as its drawing, up to the ruler".to_owned(),
        Measure::Rest { of, after, gap: between } => {
            let after: Vec<String> = after.iter().map(|piece| the(project, Of::Piece(*piece))).collect();
            format!("the rest of {} after {}{}", the(project, *of), listed_words(&after), gap(between))
        }
        Measure::Share { of, count, gap: between } => {
            format!("a share of {}, {count} evenly{}", the(project, *of), gap(between))
        }
    };
    match relation.change {
        None => measure,
        Some(Change::Less(length)) => format!("{measure} less {}", says(length)),
        Some(Change::Plus(length)) => format!("{measure} plus {}", says(length)),
    }
}

fn the(project: &Project, of: Of) -> String {
    match of {
        Of::Card => "the card".to_owned(),
        Of::Piece(piece) => format!("the {}", project.design.piece(piece).name),
    }
}
