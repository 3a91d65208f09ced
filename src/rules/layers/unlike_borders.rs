//! The borders of a layer differ by so little that they look meant to be alike.

use crate::design::model::{Along, LayerId};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Edge;
use crate::length::Length;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::hand;
use crate::rules::outlines::{is_bought, is_turned, on_a_rectangle};
use crate::rules::tell::{Axis, length, the_ground, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "unlike-borders",
    severity: Severity::Note,
    group: "layers",
    summary: "the borders of a layer differ by so little that they look meant to be alike",
    page: include_str!("unlike_borders.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.layer_ids().filter_map(|id| compare(project, id)).collect()
}

fn compare(project: &Project, id: LayerId) -> Option<Finding> {
    let layer = project.design.layer(id);
    // A claim says that the borders are meant as they are.
    if layer.trim_flush.is_some() || layer.shows.is_some() {
        return None;
    }
    // Turned, on a piece that is no rectangle, or bought, it has no borders to be alike.
    if is_turned(layer) || is_bought(&project.design, layer) || !on_a_rectangle(project, layer) {
        return None;
    }
    Axis::BOTH.iter().find_map(|axis| aside(project, id, *axis)).or_else(|| centred(project, id))
}

/// A layer placed from one edge that ends up almost in the middle.
fn aside(project: &Project, id: LayerId, axis: Axis) -> Option<Finding> {
    let layer = project.design.layer(id);
    if !matches!(axis.along(layer), Along::FromLow(_) | Along::FromHigh(_)) {
        return None;
    }
    let (one, other) = pair(project, id, axis.low(), axis.high())?;
    let meant = format!("`shows: {one} {}, {other} {}` if it is meant", axis.low().word(), axis.high().word());
    let even = (one + other).half();
    let alike = if even.is_on(project.design.workshop.ruler) {
        format!("say `centre: {}` to show {even} at both", axis.centre())
    } else {
        let both = even.floor_to(project.design.workshop.ruler);
        let side = length(project, axis.extent(project.layout.placed(id).onto)) - both * 2;
        format!("make it {side} {} to show {both} at both", axis.measure())
    };
    Some(tell(project, id, [(axis.low(), one), (axis.high(), other)]).help(format!("{alike}, or say {meant}")))
}

/// A single layer in the middle whose border at the sides is not that at top and bottom.
fn centred(project: &Project, id: LayerId) -> Option<Finding> {
    let layer = project.design.layer(id);
    if layer.across != Along::Centre || layer.up != Along::Centre || layer.count() > 1 {
        return None;
    }
    let (side, top) = pair(project, id, Edge::Left, Edge::Top)?;
    let border = side.min(top);
    let ground = project.layout.placed(id).onto.size(border.unit());
    let size = ground.less_all_round(border).turned(layer.quarter_turns);
    Some(tell(project, id, [(Edge::Left, side), (Edge::Top, top)]).help(format!(
        "make it {size} to show {border} all round, or say `shows: {side} left, {top} top` if it is meant"
    )))
}

/// The borders at two edges, where both are borders, unlike, and near each other.
fn pair(project: &Project, id: LayerId, one: Edge, other: Edge) -> Option<(Length, Length)> {
    let placed = project.layout.placed(id);
    let units = project.units();
    let (one, other) = (length(project, placed.shows(one)), length(project, placed.shows(other)));
    let ruler = project.design.workshop.ruler;
    let both = [one, other]
        .iter()
        .all(|border| border.nm() > 0 && *border <= hand::widest_border(units) && border.is_on(ruler));
    (both && one != other && (one - other).abs() <= hand::border(units)).then_some((one, other))
}

fn tell(project: &Project, id: LayerId, borders: [(Edge, Length); 2]) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let [(one_edge, one), (other_edge, other)] = borders;
    let fact = format!("{one} shows at the {}, {other} at the {}", one_edge.word(), other_edge.word());
    let (the_layer, the_ground) = (the_layer(design, id), the_ground(design, layer.onto));
    Finding::note(
        RULE.code,
        layer.span,
        format!("the borders of {the_ground} round {the_layer} are almost alike"),
        fact.clone(),
    )
    .plainly(format!("round {the_layer}, {fact}"))
}
