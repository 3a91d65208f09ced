//! A piece with words lies over a fold of the inside, or over the opening of a gate card.

use super::room::{each_greeting, made};
use crate::design::model::{Card, Face, Fold, How, LayerId};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Rect, Region, TOLERANCE};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{length, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "greeting-over-the-fold",
    severity: Severity::Error,
    group: "greeting",
    summary: "a piece with words lies over a fold, or over the opening of a gate card",
    page: include_str!("greeting_over_the_fold.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let Some(card) = &project.design.card else { return Vec::new() };
    each_greeting(project).filter_map(|(id, greeting)| over(project, card, id, greeting.how)).collect()
}

/// The first copy that lies over a line.
fn over(project: &Project, card: &Card, id: LayerId, how: How) -> Option<Finding> {
    let parts = parts(card, project.design.layer(id).face)?;
    let is_side = card.fold != Fold::Top;
    let on = |shown: &Region| {
        let lies_on = |part: &&Rect| shown.intersection(&Region::from(**part)).holds_disc(TOLERANCE);
        parts.iter().filter(lies_on).copied().collect::<Vec<Rect>>()
    };
    let shown = project.layout.placed(id).laid.iter().map(|laid| &laid.shown);
    let (parts, shown) = shown.map(|shown| (on(shown), shown)).find(|(parts, _)| parts.len() > 1)?;
    let reach = |part: &Rect| {
        let common = shown.intersection(&Region::from(*part)).bounds().unwrap_or(*part);
        if is_side { common.width() } else { common.height() }
    };
    let (first, last) = (parts.first()?, parts.last()?);
    let names = if is_side { ["left", "right"] } else { ["above", "below"] };
    let of = |name: &str| if is_side { format!("to the {name} of it") } else { format!("{name} it") };
    let (one, other) = (length(project, reach(first)), length(project, reach(last)));
    let fact = if parts.len() == 2 {
        format!("{one} {} and {other} {}", of(names[0]), of(names[1]))
    } else {
        format!("over {} folds, {one} and {other} on the outer panels", parts.len() - 1)
    };
    Some(tell(project, card, id, how, &fact, length(project, reach(first).min(reach(last)))))
}

/// The parts of a face between its folds or flaps, from left to right or from top to bottom; none of a face
/// that is all one.
fn parts(card: &Card, face: Face) -> Option<Vec<Rect>> {
    match (face, card.fold) {
        (Face::Inside(None), fold) if fold != Fold::None => Some(fold.panels(card.size)),
        (Face::Front, Fold::Gate) => {
            let front = Rect::of(card.size);
            let flap = front.width() / 2;
            let right = Rect::at(flap, 0, front.width() - flap, front.height());
            Some(vec![Rect::at(0, 0, flap, front.height()), right])
        }
        _ => None,
    }
}

fn tell(project: &Project, card: &Card, id: LayerId, how: How, fact: &str, least: crate::length::Length) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let (the_layer, words) = (the_layer(design, id), made(how));
    let on_the_front = layer.face == Face::Front;
    if on_the_front {
        return Finding::warning(
            RULE.code,
            layer.span,
            format!("{the_layer}, with words {words}, lies over the opening of the card"),
            fact.to_owned(),
        )
        .also(card.span, "two flaps meet in the middle")
        .plainly(format!("{the_layer} has words on it and lies over the opening of the card, {fact}"))
        .help(format!(
            "lay it {least} further to one side, or glue it to 1 flap alone and say so in a note on {}",
            layer.name
        ));
    }
    let panel = match card.fold {
        Fold::Top => "lower",
        Fold::Gate => "middle",
        Fold::Accordion { .. } => "1",
        Fold::Side | Fold::None => "right",
    };
    Finding::error(
        RULE.code,
        layer.span,
        format!("{the_layer}, with words {words}, lies over a fold of the inside"),
        fact.to_owned(),
    )
    .also(card.span, "the card is folded here")
    .plainly(format!("{the_layer} has words on it and lies over the fold, {fact}"))
    .help(format!("lay it on 1 panel, such as `panel: {panel}`, or {least} further to one side"))
}
