//! Words are cut off by trimming, or hang past the edge of the card.

use super::room::{each_greeting, made, room};
use crate::design::model::{Greeting, How, LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Edge, Rect, Region, TOLERANCE};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{length, the_ground, the_layer};
use crate::words::english::listed_words;

/// The rule.
pub static RULE: Rule = Rule {
    code: "greeting-off-the-card",
    severity: Severity::Error,
    group: "greeting",
    summary: "words are cut off by trimming, or hang past the edge of the card",
    page: include_str!("greeting_off_the_card.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    each_greeting(project).filter_map(|(id, greeting)| cut(project, id, greeting)).collect()
}

/// The first copy whose words do not stay on the card whole.
fn cut(project: &Project, id: LayerId, greeting: &Greeting) -> Option<Finding> {
    let layer = project.design.layer(id);
    let face = project.layout.face(layer.face);
    let target = layer.trim_flush.as_ref().map(|flush| flush.value);
    project.layout.placed(id).laid.iter().find_map(|laid| {
        let room = room(project, id, greeting, laid);
        let kept = laid.shown.intersection(&Region::from(face));
        let lost = room.difference(&kept);
        if !lost.holds_disc(TOLERANCE) {
            return None;
        }
        let by = past(room.bounds()?, kept.bounds());
        Some(tell(project, id, greeting.how, target, &by))
    })
}

/// How much of a rectangle is lost at each edge; all of it where nothing is kept.
fn past(room: Rect, kept: Option<Rect>) -> Vec<(Edge, i64)> {
    let Some(kept) = kept else { return Vec::new() };
    Edge::ALL.into_iter().map(|edge| (edge, room.border(kept, edge))).filter(|(_, by)| *by > 0).collect()
}

fn tell(project: &Project, id: LayerId, how: How, target: Option<Onto>, by: &[(Edge, i64)]) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let (the_layer, words) = (the_layer(design, id), made(how));
    let the_ground = the_ground(design, target.unwrap_or(Onto::Card));
    let told: Vec<String> =
        by.iter().map(|(edge, by)| format!("{} at the {}", length(project, *by), edge.word())).collect();
    let what = if how == How::DieCut { "of the words" } else { "of the middle of the piece, where words stand," };
    let fact = match told.as_slice() {
        [] => format!("nothing {what} stays"),
        told => format!("{} {what} is lost", listed_words(told)),
    };
    let most = by.iter().map(|(_, by)| *by).max();
    let piece = &design.piece(layer.piece).name;
    let help = match most {
        Some(most) => format!("lay it {} further in, or make the {piece} shorter by twice that", length(project, most)),
        None => format!("lay the {piece} on the card, with 1/8 in (3 mm) to spare"),
    };
    let (message, plain) = match target {
        Some(_) => (
            format!("trimming {the_layer} level with {the_ground} cuts off words that are {words}"),
            format!("{the_layer} is trimmed level with {the_ground}, and {fact}"),
        ),
        None => (
            format!("{the_layer}, with words {words}, hangs past the edge of {the_ground}"),
            format!("{the_layer} hangs past the edge of {the_ground}, and {fact}"),
        ),
    };
    let mut finding = Finding::error(RULE.code, layer.span, message, fact).plainly(plain).help(help);
    if let Some(flush) = &layer.trim_flush {
        finding = finding.also(flush.span, "trimmed here");
    }
    finding
}
