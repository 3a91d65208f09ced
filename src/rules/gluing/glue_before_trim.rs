//! A layer is trimmed when something that is glued already stands in the way: foam, or another layer over the
//! end that comes off.
//!
//! The order itself can do no harm: a layer is trimmed when it and what it is trimmed level with are joined,
//! never before ([`trimmed_with`]), and words are stamped before anything is glued. Paper that the cut would go
//! through under the layer is said by `trimmed-too-late`.

use crate::assembly::model::Action;
use crate::assembly::sequence::trimmed_with;
use crate::design::model::{Design, Glue, LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Polygon, Region, TOLERANCE};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{length, the_ground, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "glue-before-trim",
    severity: Severity::Error,
    group: "gluing",
    summary: "something that is glued already stands in the way when a layer is trimmed",
    page: include_str!("glue_before_trim.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings = Vec::new();
    for id in design.layer_ids() {
        let Some(flush) = &design.layer(id).trim_flush else { continue };
        let cut_off = cut_off(project, id);
        if !cut_off.holds_disc(TOLERANCE) {
            continue;
        }
        findings.extend(raised(design, id, flush.value).map(|foam| on_foam(project, id, foam)));
        findings.extend(over(project, id, &cut_off).map(|(over, by)| covered(project, id, over, by)));
    }
    findings
}

/// What of a layer comes off when it is trimmed.
fn cut_off(project: &Project, id: LayerId) -> Region {
    let placed = project.layout.placed(id);
    let outlines: Vec<Polygon> = placed.laid.iter().map(|laid| laid.outline.clone()).collect();
    Region::covered_by(&outlines).difference(&placed.shown())
}

/// The foam that a layer or what it is trimmed level with stands on when it is trimmed, the highest first. A
/// unit that is still loose lies flat whatever it is glued with later.
fn raised(design: &Design, id: LayerId, target: Onto) -> Option<LayerId> {
    let unit = trimmed_with(design, id);
    let down = |from: Onto| {
        let below = |on: &Onto| match on {
            Onto::Layer(layer) => Some(design.layer(*layer).onto),
            Onto::Card => None,
        };
        std::iter::successors(Some(from), below).map_while(move |on| match on {
            Onto::Layer(layer) if Some(layer) != unit => Some(layer),
            _ => None,
        })
    };
    let is_foam = |layer: &LayerId| design.layer(*layer).glue.is_some_and(|glue| glue.value == Glue::Foam);
    down(Onto::Layer(id)).chain(down(target)).find(is_foam)
}

fn on_foam(project: &Project, id: LayerId, foam: LayerId) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let target = layer.trim_flush.as_ref().map_or(Onto::Card, |flush| flush.value);
    let (the_layer, the_target, the_foam) =
        (the_layer(design, id), the_ground(design, target), the_layer(design, foam));
    let glue = design.layer(foam).glue.map_or(layer.span, |glue| glue.span);
    Finding::warning(
        RULE.code,
        layer.trim_flush.as_ref().map_or(layer.span, |flush| flush.span),
        format!("{the_layer} is trimmed level with {the_target} when it stands on foam"),
        format!("foam under {the_foam} by then"),
    )
    .also(glue, "foam keeps the paper off the trimmer's bed")
    .plainly(format!(
        "{the_layer} is trimmed when {} on foam already, and paper on foam gives way under a blade",
        if foam == id { "it stands".to_owned() } else { format!("{the_foam} stands") }
    ))
    .help(format!("say `glue: tape` for {the_foam}, or cut 1 {} to its finished size first", {
        &design.piece(layer.piece).name
    }))
}

/// A layer that is glued over the end of another before that is trimmed and keeps a part there, with the
/// rectangle round that part.
fn over(project: &Project, id: LayerId, cut_off: &Region) -> Option<(LayerId, Region)> {
    let steps = &project.steps.steps;
    let trimmed = steps.iter().position(|step| matches!(step.action, Action::Trim { layer, .. } if layer == id))?;
    let before = steps[..trimmed].iter().filter_map(|step| match step.action {
        Action::Glue { layer, .. } if layer > id => Some(layer),
        _ => None,
    });
    let face = project.design.layer(id).face;
    // What reaches past that which it lies on has that fault, and is told so.
    let lies_well = |other: &LayerId| {
        let (layer, placed) = (project.design.layer(*other), project.layout.placed(*other));
        layer.face == face && (layer.trim_flush.is_some() || placed.onto.contains(placed.block))
    };
    let mut found = before.filter(lies_well).filter_map(|other| {
        let common = project.layout.placed(other).shown().intersection(cut_off);
        common.holds_disc(TOLERANCE).then_some((other, common))
    });
    found.next()
}

fn covered(project: &Project, id: LayerId, over: LayerId, common: Region) -> Finding {
    let design = &project.design;
    let (layer, other) = (design.layer(id), design.layer(over));
    let target = layer.trim_flush.as_ref().map_or(Onto::Card, |flush| flush.value);
    let (the_layer, the_other, the_target) =
        (the_layer(design, id), the_layer(design, over), the_ground(design, target));
    let unit = length(project, 0).unit();
    let size = common.bounds().map_or_else(String::new, |bounds| bounds.size(unit).to_string());
    let deep = common.bounds().map_or(0, |bounds| bounds.width().min(bounds.height()));
    Finding::error(
        RULE.code,
        other.span,
        format!("{the_other} lies over the end of {the_layer} that is still to be trimmed"),
        format!("{size} of it lies past the edge of {the_target}"),
    )
    .also(
        layer.trim_flush.as_ref().map_or(layer.span, |flush| flush.span),
        format!("{the_layer} is trimmed level with {the_target} afterwards"),
    )
    .plainly(format!("trimming {the_layer} level with {the_target} cuts {the_other} too, which is glued over its end"))
    .help(format!(
        "lay {the_other} {} further in, or say `trim flush: {}` for it too",
        length(project, deep),
        match target {
            Onto::Card => "card".to_owned(),
            Onto::Layer(layer) => design.layer(layer).name.clone(),
        }
    ))
}
