//! A border or gap is no whole step of the ruler.

use crate::design::model::{Along, LayerId};
use crate::diagnostic::{Finding, Severity};
use crate::length::Length;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::outlines::{is_bought, is_turned, on_a_rectangle};
use crate::rules::tell::{Axis, key, length, the_ground, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "border-off-the-ruler",
    severity: Severity::Warning,
    group: "layers",
    summary: "a border or gap is no whole step of the ruler",
    page: include_str!("border_off_the_ruler.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let mut findings = Vec::new();
    // What is bought is laid by eye.
    let by_ruler = |id: &LayerId| !is_bought(&project.design, project.design.layer(*id));
    for id in project.design.layer_ids().filter(by_ruler) {
        for axis in Axis::BOTH {
            findings.extend(placed(project, id, axis));
            findings.extend(gap(project, id, axis));
        }
    }
    findings
}

/// The border or gap that places a layer along an axis. What follows at the other side follows
/// from sizes, and those have a rule of their own.
fn placed(project: &Project, id: LayerId, axis: Axis) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let ruler = design.workshop.ruler;
    let along = axis.along(layer);
    match along {
        Along::Centre => centred(project, id, axis),
        // What it is level with or between has its own words.
        Along::With(..) | Along::Midway(..) => None,
        Along::FromLow(border) | Along::FromHigh(border) => {
            let border = length(project, border.nm());
            let word = key(axis, along);
            (!border.is_on(ruler)).then(|| {
                let fact = format!("{border} from the {word} edge of {}", the_ground(design, layer.onto));
                tell(project, id, &fact, &format!("say `{word}: {}`", neighbours(border, ruler)))
            })
        }
        Along::After(other, gap) | Along::Before(other, gap) => {
            let gap = length(project, gap.nm());
            (!gap.is_on(ruler)).then(|| {
                let fact = format!("{gap} {} {}", key(axis, along), the_layer(design, other));
                tell(project, id, &fact, &format!("say `gap: {}`", neighbours(gap, ruler)))
            })
        }
    }
}

fn centred(project: &Project, id: LayerId, axis: Axis) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    // Its borders are straight only where it and what it lies on are.
    if is_turned(layer) || !on_a_rectangle(project, layer) {
        return None;
    }
    let ruler = design.workshop.ruler;
    let placed = project.layout.placed(id);
    let say = |nm| length(project, nm);
    let (border, room, extent) =
        (say(placed.shows(axis.low())), say(axis.extent(placed.onto)), say(axis.extent(placed.block)));
    // A claim that does not hold says the same, and says what was meant.
    let claimed = layer.shows.as_ref().and_then(|shows| shows.edges.iter().find(|(edge, _)| *edge == axis.low()));
    if claimed.is_some_and(|(_, claimed)| *claimed != border) {
        return None;
    }
    // What reaches past an edge is an error of its own, at whichever end it is.
    if border.nm() < 0
        || placed.shows(axis.high()) < 0
        || border.is_on(ruler)
        || !room.is_on(ruler)
        || !extent.is_on(ruler)
    {
        return None;
    }
    // The nearest widths with a border on the ruler; nothing is made narrower than one mark.
    let less = border.floor_to(ruler);
    let (wider, narrower) = (room - less * 2, room - (less + ruler) * 2);
    let widths = match (narrower.nm() > 0, less.is_zero()) {
        (true, true) => narrower.to_string(),
        (true, false) => format!("{narrower} or {wider}"),
        (false, _) => wider.to_string(),
    };
    let fact = format!(
        "{border} shows at the {} and {} of {}",
        axis.low().word(),
        axis.high().word(),
        the_ground(design, layer.onto)
    );
    let single = layer.count() == 1;
    let what = if single { "it".to_owned() } else { the_layer(design, id) };
    Some(tell(project, id, &fact, &format!("make {what} {widths} {}", axis.measure())))
}

fn gap(project: &Project, id: LayerId, axis: Axis) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let ruler = design.workshop.ruler;
    let (copies, gap) = axis.copies(project, layer);
    let gap = length(project, gap.nm());
    if copies < 2 || gap.nm() < 0 || gap.is_on(ruler) {
        return None;
    }
    let fact = format!("{gap} between two of {}", the_layer(design, id));
    Some(tell(project, id, &fact, &format!("say `gap: {}`", neighbours(gap, ruler))))
}

fn tell(project: &Project, id: LayerId, fact: &str, help: &str) -> Finding {
    let design = &project.design;
    let ruler = length(project, design.workshop.ruler.nm());
    let layer = the_layer(design, id);
    Finding::warning(
        RULE.code,
        design.layer(id).span,
        format!("{layer} is laid by a measure that no mark of the ruler gives"),
        format!("{fact}, and the ruler's step is {ruler}"),
    )
    .plainly(format!("{layer} is laid with {fact}, which no mark of a ruler in steps of {ruler} gives"))
    .help(help)
}

/// The two marks next to a length; the first mark where it lies below that.
fn neighbours(length: Length, ruler: Length) -> String {
    let below = length.floor_to(ruler);
    if below.nm() <= 0 { (below + ruler).to_string() } else { format!("{below}` or `{}", below + ruler) }
}
