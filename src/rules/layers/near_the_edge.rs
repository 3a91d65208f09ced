//! A decoration lies too near an edge of the card, or its fold.

use crate::design::model::{Face, LayerId, PieceKind};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Edge, TOLERANCE};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::face::{edge_is_fold, folds};
use crate::rules::hand;
use crate::rules::outlines::{about, inward, up_to_ruler};
use crate::rules::tell::{length, the_layer};
use crate::words::english::listed_words;

/// The rule.
pub static RULE: Rule = Rule {
    code: "near-the-edge",
    severity: Severity::Warning,
    group: "layers",
    summary: "a decoration lies too near an edge of the card, or its fold",
    page: include_str!("near_the_edge.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.layer_ids().filter_map(|id| near(project, id)).collect()
}

/// One place that a decoration comes too near.
struct Near {
    place: String,
    by: i64,
    least: i64,
    back: &'static str,
}

fn near(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let PieceKind::Decoration { roll, thick } = design.piece(layer.piece).kind else { return None };
    if layer.trim_flush.is_some() || matches!(layer.face, Face::EnvelopeFront | Face::EnvelopeFlap) {
        return None;
    }
    let least = hand::least(project.units()).nm();
    let at_a_fold = least + thick.map_or(0, |thick| thick.nm());
    let face = project.layout.face(layer.face);
    let bounds = project.layout.placed(id).bounds();
    let mut found: Vec<Near> = Vec::new();
    for edge in Edge::ALL {
        let is_fold = edge_is_fold(design, layer.face, edge);
        let (by, least) = (face.border(bounds, edge), if is_fold { at_a_fold } else { least });
        // Past the edge is another rule's; what comes from a roll is led round an edge that it reaches.
        if by < -TOLERANCE || roll.is_some() && by <= TOLERANCE || by >= least - TOLERANCE {
            continue;
        }
        let place =
            if is_fold { format!("the fold at the {}", edge.word()) } else { format!("the {} edge", edge.word()) };
        found.push(Near { place, by, least, back: inward(edge) });
    }
    // On the whole inside the folds run across it. Each copy lies to one side of one.
    for fold in folds(design, layer.face) {
        let rects = project.layout.placed(id).laid.iter().map(|laid| laid.outline.bounds());
        let sides = rects.filter_map(|rect| {
            let (low, high) = if fold.upright { (rect.left, rect.right) } else { (rect.bottom, rect.top) };
            match (low - fold.at, fold.at - high) {
                (after, _) if after >= -TOLERANCE => Some((after, if fold.upright { "to the right" } else { "up" })),
                (_, before) if before >= -TOLERANCE => {
                    Some((before, if fold.upright { "to the left" } else { "down" }))
                }
                _ => None,
            }
        });
        if let Some((by, back)) = sides.min_by_key(|side| side.0).filter(|(by, _)| *by < at_a_fold - TOLERANCE) {
            found.push(Near { place: "a fold".to_owned(), by, least: at_a_fold, back });
        }
    }
    (!found.is_empty()).then(|| tell(project, id, &found))
}

fn tell(project: &Project, id: LayerId, found: &[Near]) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let the_layer = the_layer(design, id);
    let facts: Vec<String> =
        found.iter().map(|near| format!("{} from {}", about(project, near.by.max(0)), near.place)).collect();
    let facts = listed_words(&facts);
    let moves: Vec<String> = found
        .iter()
        .map(|near| format!("{} further {}", up_to_ruler(project, near.least - near.by), near.back))
        .collect();
    let least = found.iter().map(|near| near.least).max().unwrap_or(0);
    Finding::warning(RULE.code, layer.span, format!("{the_layer} comes too near the edge or the fold"), facts.clone())
        .plainly(format!("{the_layer} is {facts}, where {} is wanted", length(project, least)))
        .help(format!("lay it {}", listed_words(&moves)))
}
