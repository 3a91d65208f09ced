//! A layer lies over words.

use super::room::{each_greeting, is_label, made, room};
use crate::design::model::{Greeting, How, LayerId};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Region, TOLERANCE};
use crate::layout::model::Laid;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{length, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "greeting-covered",
    severity: Severity::Warning,
    group: "greeting",
    summary: "a layer lies over words",
    page: include_str!("greeting_covered.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    each_greeting(project).filter_map(|(id, greeting)| covered(project, id, greeting)).collect()
}

/// The first copy whose words a later layer hides, in part or wholly.
fn covered(project: &Project, id: LayerId, greeting: &Greeting) -> Option<Finding> {
    let design = &project.design;
    let face = design.layer(id).face;
    // The same words over them, a little aside, are what they are the shadow of.
    let is_shadowed = |over: LayerId| {
        let other = design.piece(design.layer(over).piece).greeting.as_ref();
        greeting.how == How::DieCut
            && other.is_some_and(|other| (other.how, &other.words.value) == (greeting.how, &greeting.words.value))
    };
    let later = (id.0 + 1..design.layers.len()).map(LayerId).filter(|over| design.layer(*over).face == face);
    let above: Vec<(LayerId, Region)> =
        later.filter(|over| !is_shadowed(*over)).map(|over| (over, project.layout.placed(over).shown())).collect();
    project.layout.placed(id).laid.iter().find_map(|laid| hidden(project, id, greeting, laid, &above))
}

fn hidden(
    project: &Project,
    id: LayerId,
    greeting: &Greeting,
    laid: &Laid,
    above: &[(LayerId, Region)],
) -> Option<Finding> {
    let bounds = laid.shown.bounds()?;
    let near = |region: &Region| region.bounds().is_some_and(|other| other.overlap(bounds).is_some());
    let above: Vec<&(LayerId, Region)> = above.iter().filter(|(_, region)| near(region)).collect();
    let all = above.iter().fold(Region::empty(), |all, (_, region)| all.union(region));
    let is_label = is_label(project, id, greeting);
    let room = if is_label { room(project, id, greeting, laid) } else { laid.shown.clone() };
    let room = room.intersection(&laid.shown);
    let hidden = room.intersection(&all);
    if !hidden.holds_disc(TOLERANCE) {
        return None;
    }
    // On a piece with room to spare words find a place as long as half of it is free.
    if !is_label && hidden.area2() * 2 <= room.area2() {
        return None;
    }
    let (over, _) = above.iter().find(|(_, region)| room.intersection(region).holds_disc(TOLERANCE))?;
    Some(tell(project, id, *over, greeting, &room, &hidden))
}

fn tell(project: &Project, id: LayerId, over: LayerId, greeting: &Greeting, room: &Region, hidden: &Region) -> Finding {
    let design = &project.design;
    let (layer, other) = (design.layer(id), design.layer(over));
    let (the_layer, the_other) = (the_layer(design, id), the_layer(design, over));
    let unit = length(project, 0).unit();
    let size = |region: &Region| region.bounds().map_or_else(String::new, |bounds| bounds.size(unit).to_string());
    // Whole parts of a hundred, never rounded up to all of it.
    let part = hidden.area2().saturating_mul(100) / room.area2().max(1);
    let fact = if room.difference(hidden).holds_disc(TOLERANCE) {
        let part = if part == 0 { "under 1 %".to_owned() } else { format!("{part} %") };
        format!("{part} of the room for the words is hidden, {} at most", size(hidden))
    } else {
        format!("all of the room for the words is hidden, {}", size(hidden))
    };
    let deep = hidden.bounds().map_or(0, |bounds| bounds.width().min(bounds.height()));
    Finding::warning(
        RULE.code,
        layer.span,
        format!("{the_other} lies over words that are {} on {the_layer}", made(greeting.how)),
        fact.clone(),
    )
    .also(other.span, "it is laid later")
    .plainly(format!("{the_other} hides words on {the_layer}: {fact}"))
    .help(format!("lay {the_other} {} further off, or write it before {the_layer} in the list", length(project, deep)))
}
