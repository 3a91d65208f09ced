//! A layer reaches past the card, or past the layer it lies on.

mod shaped;
mod turned;

use crate::design::model::{Along, LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Comparison, Edge, Rect, Region, TOLERANCE};
use crate::length::{Length, Size};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::outlines::{Ground, bounds, ground, in_frame, inward, is_turned, lies_within};
use crate::rules::tell::{Axis, ground_span, key, length, the_ground, the_layer};
use crate::words::english::listed_words;

/// The rule.
pub static RULE: Rule = Rule {
    code: "past-the-edge",
    severity: Severity::Error,
    group: "layers",
    summary: "a layer reaches past the card, or past the layer it lies on",
    page: include_str!("past_the_edge.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.layer_ids().filter_map(|id| past(project, id)).collect()
}

/// What a layer reaches past, if anything. A layer that is trimmed flush is meant to.
fn past(project: &Project, id: LayerId) -> Option<Finding> {
    let layer = project.design.layer(id);
    if layer.trim_flush.is_some() {
        return None;
    }
    if let Some(ground) = past_ground(project, id) {
        return Some(match ground {
            Ground::Rect(rect) if is_turned(layer) => turned::tell(project, id, layer.onto, rect),
            Ground::Rect(rect) => tell(project, id, layer.onto, rect),
            Ground::Shape(outline) => shaped::tell(project, id, &outline),
        });
    }
    let Onto::Layer(below) = layer.onto else { return None };
    // Where the layer below reaches past the card itself, that is the mistake, and said there.
    let said_below = project.design.layer(below).trim_flush.is_none() && !on_the_card(project, below);
    if on_the_card(project, id) || said_below {
        return None;
    }
    let card = project.layout.rect(layer.face, Onto::Card);
    Some(if lies_straight(project, id) {
        tell(project, id, Onto::Card, card)
    } else {
        turned::tell(project, id, Onto::Card, card)
    })
}

/// What a layer lies on, where it reaches past that: judged in the frame that both share, its windows
/// filled, so that what stands over a window or behind it is not past an edge.
fn past_ground(project: &Project, id: LayerId) -> Option<Ground> {
    let layer = project.design.layer(id);
    let ground = ground(project, layer.face, layer.onto);
    let inside = match &ground {
        Ground::Rect(rect) if is_turned(layer) => {
            bounds(&in_frame(project, id)).is_none_or(|bounds| rect.grown(TOLERANCE).contains(bounds))
        }
        Ground::Rect(rect) => rect.contains(project.layout.placed(id).block),
        Ground::Shape(outline) => {
            let by = if is_turned(layer) { Comparison::Turned } else { Comparison::Exact };
            let outer = Region::from(outline);
            in_frame(project, id).iter().all(|copy| lies_within(&Region::from(copy), &outer, by))
        }
    };
    (!inside).then_some(ground)
}

/// Whether a layer reaches past what it lies on, trimmed or not.
pub(super) fn reaches_past(project: &Project, id: LayerId) -> bool {
    past_ground(project, id).is_some()
}

/// Whether rectangles of the frame are what is seen on the face.
fn lies_straight(project: &Project, id: LayerId) -> bool {
    project.layout.placed(id).frame.is_empty() && !is_turned(project.design.layer(id))
}

fn on_the_card(project: &Project, id: LayerId) -> bool {
    let placed = project.layout.placed(id);
    let card = project.layout.rect(placed.face, Onto::Card);
    if lies_straight(project, id) {
        card.contains(placed.block)
    } else {
        card.grown(TOLERANCE).contains(placed.bounds())
    }
}

/// One direction in which a layer reaches past.
struct Fault {
    /// By how much it is larger than what it lies on, where it is.
    larger: String,
    /// By how much it reaches past which edge.
    past: String,
    help: String,
    too_large: bool,
}

fn tell(project: &Project, id: LayerId, onto: Onto, ground: Rect) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    let (the_layer, the_ground) = (the_layer(design, id), the_ground(design, onto));
    let faults: Vec<Fault> = Axis::BOTH.iter().filter_map(|axis| fault(project, id, onto, ground, *axis)).collect();
    let facts = facts(&faults, &the_ground);
    let single = layer.count() == 1;
    let all_large = faults.iter().all(|fault| fault.too_large);
    let help = if all_large && single && faults.len() == 2 && layer.quarter_turns.is_multiple_of(2) {
        let ruler = design.workshop.ruler;
        let room = ground.size(ruler.unit()).in_units(project.units());
        let size = Size::new(inside(room.width, ruler), inside(room.height, ruler));
        format!("make it {size} or smaller, or say `trim flush: {}`", ground_name(project, onto))
    } else {
        let mut help = listed_words(&faults.iter().map(|fault| fault.help.clone()).collect::<Vec<_>>());
        if all_large && single {
            help = format!("{help}, or say `trim flush: {}`", ground_name(project, onto));
        }
        help
    };
    let verb = if all_large { "is " } else { "" };
    let span = if all_large && single { piece.size_span } else { layer.span };
    let mut finding = Finding::error(RULE.code, span, format!("{the_layer} reaches past {the_ground}"), facts.clone())
        .plainly(format!("{the_layer} {verb}{facts}"))
        .help(help);
    if let Some(ground_span) = ground_span(design, onto).filter(|at| *at != span) {
        let wide: Vec<String> = Axis::BOTH
            .iter()
            .filter(|axis| past_by(ground, project.layout.placed(id).block, **axis).is_some())
            .map(|axis| format!("{} {}", length(project, axis.extent(ground)), axis.measure()))
            .collect();
        finding = finding.also(ground_span, format!("{the_ground} is {}", listed_words(&wide)));
    }
    finding
}

/// `1/4 in wider and 1/2 in higher than the card`, `reaches 1/8 in past the right edge of the card`:
/// what two directions share is said once.
fn facts(faults: &[Fault], the_ground: &str) -> String {
    let told = |fact: fn(&Fault) -> &str| listed_words(&faults.iter().map(|f| fact(f).to_owned()).collect::<Vec<_>>());
    if faults.iter().all(|fault| fault.too_large) {
        format!("{} than {the_ground}", told(|fault| &fault.larger))
    } else {
        format!("reaches {} of {the_ground}", told(|fault| &fault.past))
    }
}

fn ground_name(project: &Project, onto: Onto) -> String {
    match onto {
        Onto::Card => "card".to_owned(),
        Onto::Layer(id) => project.design.layer(id).name.clone(),
    }
}

/// The edges past which a block reaches along an axis, and how far.
fn past_by(ground: Rect, block: Rect, axis: Axis) -> Option<(Edge, i64)> {
    [axis.low(), axis.high()]
        .into_iter()
        .map(|edge| (edge, -ground.border(block, edge)))
        .filter(|(_, past)| *past > 0)
        .max_by_key(|(_, past)| *past)
}

fn fault(project: &Project, id: LayerId, onto: Onto, ground: Rect, axis: Axis) -> Option<Fault> {
    let layer = project.design.layer(id);
    let block = project.layout.placed(id).block;
    let (edge, past) = past_by(ground, block, axis)?;
    let (extent, room) = (axis.extent(block), axis.extent(ground));
    let say = |nm| length(project, nm);
    let larger = format!("{} {}", say(extent - room), axis.more());
    let reach = format!("{} past the {} edge", say(past), edge.word());
    if extent > room {
        return Some(Fault { larger, past: reach, help: smaller(project, id, axis, room), too_large: true });
    }
    let along = axis.along(layer);
    let spare = say(room - extent);
    let help = match along {
        Along::FromLow(_) if onto == layer.onto && edge == axis.high() => {
            format!("say `{}: {spare}` or less", key(axis, along))
        }
        Along::FromHigh(_) if onto == layer.onto && edge == axis.low() => {
            format!("say `{}: {spare}` or less", key(axis, along))
        }
        _ => format!("lay it {} further {}", say(past), inward(edge)),
    };
    Some(Fault { larger, past: reach, help, too_large: false })
}

/// How to make a layer fit into `room`: the piece smaller, the gap smaller, or fewer of them.
fn smaller(project: &Project, id: LayerId, axis: Axis, room: i64) -> String {
    let layer = project.design.layer(id);
    let size = project.design.piece(layer.piece).size.turned(layer.quarter_turns);
    let side = match axis {
        Axis::Across => size.width.nm(),
        Axis::Up => size.height.nm(),
    };
    let (copies, gap) = axis.copies(project, layer);
    let ruler = project.design.workshop.ruler;
    let say = |nm| length(project, nm);
    let copies = i64::from(copies);
    if copies == 1 {
        let fits = inside(say(room), ruler);
        return if layer.quarter_turns.is_multiple_of(2) {
            format!("make it {fits} or {}", axis.less())
        } else {
            let side = if axis == Axis::Across { "height" } else { "width" };
            format!("make the {side} of the piece {fits} or less, since it is laid turned")
        };
    }
    let gap_that_fits = say((room - copies * side).div_euclid(copies - 1)).floor_to(ruler);
    if gap_that_fits.nm() >= 0 {
        return format!("make the gap {gap_that_fits} or less");
    }
    let side_that_fits = say((room - (copies - 1) * gap.nm()).div_euclid(copies)).floor_to(ruler);
    if side_that_fits.nm() > 0 {
        return format!("make each {side_that_fits} {} or less", axis.measure());
    }
    let fewer = (room + gap.nm()) / (side + gap.nm()).max(1);
    format!("lay {} or fewer", fewer.max(0))
}

/// The largest side that leaves a step of the ruler at both ends, or all of a very small room.
fn inside(room: Length, ruler: Length) -> Length {
    let fits = (room - ruler * 2).floor_to(ruler);
    if fits.nm() > 0 { fits } else { room }
}
