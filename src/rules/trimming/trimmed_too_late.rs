//! A layer is trimmed along an edge that is already glued down on more paper.

use super::ends::{Trimmed, trimmed};
use super::slanted;
use crate::design::model::{LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Edge, Region, TOLERANCE};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::outlines::{about, bounds};
use crate::rules::tell::{length, the_ground, the_layer};
use crate::words::english::listed_words;

/// The rule.
pub static RULE: Rule = Rule {
    code: "trimmed-too-late",
    severity: Severity::Error,
    group: "trimming",
    summary: "a layer is trimmed along an edge that is already glued down on more paper",
    page: include_str!("trimmed_too_late.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project
        .design
        .layer_ids()
        .filter_map(|id| {
            let Onto::Layer(target) = project.design.layer(id).trim_flush.as_ref()?.value else { return None };
            (!loose(project, id, target)).then_some(())?;
            let (cut, border) = match trimmed(project, id) {
                Some(trimmed) => straight_cut(project, id, &trimmed)?,
                None => slanted_cut(project, id, target)?,
            };
            tell(project, id, target, &cut, &border)
        })
        .collect()
}

/// What lies under the layer and its target when it is trimmed.
fn under(project: &Project, id: LayerId) -> Onto {
    project.design.layer(id).unit.map_or(Onto::Card, Onto::Layer)
}

/// The edges at which the cut goes through more paper, and how much of that shows at the first.
fn straight_cut(project: &Project, id: LayerId, trimmed: &Trimmed) -> Option<(Vec<Edge>, String)> {
    trimmed.target.overlap(trimmed.block)?;
    let ground = project.layout.rect(project.design.layer(id).face, under(project, id));
    // Level with the outermost paper under it, the cut meets nothing else.
    let cut: Vec<Edge> = Edge::ALL
        .into_iter()
        .filter(|edge| trimmed.over(*edge) > 0 && ground.border(trimmed.target, *edge) > 0)
        .collect();
    let first = *cut.first()?;
    Some((cut, length(project, ground.border(trimmed.target, first)).to_string()))
}

/// The same for a layer at a slant: where some of what is trimmed off lies over the paper below.
fn slanted_cut(project: &Project, id: LayerId, target: LayerId) -> Option<(Vec<Edge>, String)> {
    let level_with = slanted::target(project, id, Onto::Layer(target));
    let ground = Region::covered_by(&slanted::target(project, id, under(project, id)));
    let round = bounds(&level_with)?;
    let level_with = Region::covered_by(&level_with);
    let laid = project.layout.placed(id).laid.iter().filter(|laid| !laid.shown.is_empty());
    let off = laid.map(|laid| Region::from(&laid.outline).difference(&level_with));
    let over = off.map(|off| off.intersection(&ground)).filter(|over| over.holds_disc(TOLERANCE));
    let over: Vec<Region> = over.collect();
    let past = |edge: Edge| {
        let past = over.iter().filter_map(Region::bounds).map(|bounds| -round.border(bounds, edge));
        past.max().filter(|past| *past > TOLERANCE)
    };
    let cut: Vec<Edge> = Edge::ALL.into_iter().filter(|edge| past(*edge).is_some()).collect();
    let first = *cut.first()?;
    let border = ground.bounds().map_or(0, |ground| ground.border(round, first));
    Some((cut, about(project, border)))
}

/// Whether the target is still loose when the layer is glued on: the layer stands in its `first`
/// list, or in a list inside that.
fn loose(project: &Project, id: LayerId, target: LayerId) -> bool {
    let mut unit = project.design.layer(id).unit;
    while let Some(inside) = unit {
        if inside == target {
            return true;
        }
        unit = project.design.layer(inside).unit;
    }
    false
}

fn tell(project: &Project, id: LayerId, target: LayerId, cut: &[Edge], border: &str) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let under = under(project, id);
    let (the_layer, the_target, the_under) =
        (the_layer(design, id), the_ground(design, Onto::Layer(target)), the_ground(design, under));
    let edges = listed_words(&cut.iter().map(|edge| edge.word().to_owned()).collect::<Vec<_>>());
    let fact = format!("{border} of {the_under} shows at the {edges}");
    let flush = layer.trim_flush.as_ref()?;
    Some(
        Finding::error(
            RULE.code,
            flush.span,
            format!("{the_layer} is trimmed along {the_target}, which is already glued to {the_under}"),
            fact.clone(),
        )
        .also(design.layer(target).span, format!("{the_target} is glued down first"))
        .plainly(format!("trimming {the_layer} along {the_target} cuts {the_under}, since {fact} by then"))
        .help(format!(
            "move {the_layer} into the `first` list of {the_target}, or say `trim flush: {}`",
            match under {
                Onto::Card => "card".to_owned(),
                Onto::Layer(unit) => design.layer(unit).name.clone(),
            }
        )),
    )
}
