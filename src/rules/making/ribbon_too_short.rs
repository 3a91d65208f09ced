//! Less is taken from a roll than a ribbon or twine needs: for its own length as it is laid, or to go round
//! what it lies across.

use crate::design::model::{LayerId, Onto, PieceKind};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Rect;
use crate::length::Length;
use crate::project::Project;
use crate::rules::tell::{Axis, length, the_ground, the_layer};
use crate::rules::{Rule, hand};

/// The rule.
pub static RULE: Rule = Rule {
    code: "ribbon-too-short",
    severity: Severity::Warning,
    group: "making",
    summary: "less is taken from a roll than a ribbon needs",
    page: include_str!("ribbon_too_short.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.layer_ids().filter_map(|id| short(project, id)).collect()
}

fn short(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    let PieceKind::Decoration { roll: Some(roll), .. } = piece.kind else { return None };
    let drawn = piece.size.width.max(piece.size.height);
    if roll.nm() < drawn.nm() {
        let fact = format!("{} as it is laid, and {} from the roll", says(project, drawn), says(project, roll));
        return Some(tell(project, id, drawn, &fact));
    }
    // Just as long as it is laid, its ends stop at the edges; what is longer goes on round the back.
    if roll.nm() == drawn.nm() {
        return None;
    }
    let (round, extent) = goes_round(project, id)?;
    let overlap = hand::overlap(project.units());
    let wanted = Length::new(extent * 2, drawn.unit()) + overlap;
    (roll.nm() < wanted.nm()).then(|| {
        let fact = format!(
            "twice {} round {} and {overlap} to lie over is {}, and {} from the roll",
            length(project, extent),
            the_ground(design, round),
            says(project, wanted),
            says(project, roll)
        );
        tell(project, id, wanted, &fact)
    })
}

fn says(project: &Project, side: Length) -> Length {
    length(project, side.nm())
}

/// What a band goes round, and how far that is from edge to edge: the card, or what it lies on, where it
/// reaches both edges of it the long way.
fn goes_round(project: &Project, id: LayerId) -> Option<(Onto, i64)> {
    let layer = project.design.layer(id);
    let piece = project.design.piece(layer.piece);
    let placed = project.layout.placed(id);
    if !placed.is_straight() {
        return None;
    }
    let turned = piece.size.turned(layer.quarter_turns);
    let axis = if turned.width >= turned.height { Axis::Across } else { Axis::Up };
    let reaches =
        |own: Rect, ground: Rect| [axis.low(), axis.high()].into_iter().all(|edge| ground.border(own, edge) <= 0);
    let card = project.layout.rect(layer.face, Onto::Card);
    let own = placed.copies.first().copied()?;
    if reaches(own, card) {
        return Some((Onto::Card, axis.extent(card)));
    }
    let onto = match layer.onto {
        Onto::Layer(below) => project.layout.placed(below).copies.iter().copied().find(|ground| reaches(own, *ground)),
        Onto::Card => None,
    }?;
    Some((layer.onto, axis.extent(onto)))
}

fn tell(project: &Project, id: LayerId, wanted: Length, fact: &str) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    let the_layer = the_layer(design, id);
    Finding::warning(
        RULE.code,
        piece.span,
        format!("the length of {} from its roll is too short", piece.name),
        fact.to_owned(),
    )
    .also(layer.span, "it is laid here")
    .plainly(format!("{the_layer} is cut too short from its roll: {fact}"))
    .help(format!("say `length: {}` or more", says(project, wanted)))
}
