//! A layer is trimmed along an edge that is already glued down on more paper.

use super::ends::{Trimmed, each_trimmed};
use crate::design::model::{LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Edge, Rect};
use crate::project::Project;
use crate::rules::Rule;
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
    each_trimmed(project)
        .filter_map(|(id, trimmed)| {
            let Onto::Layer(target) = trimmed.onto else { return None };
            (!loose(project, id, target)).then_some(())?;
            tell(project, id, target, &trimmed)
        })
        .collect()
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

fn tell(project: &Project, id: LayerId, target: LayerId, trimmed: &Trimmed) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let (under, ground): (Onto, Rect) = match layer.unit {
        Some(unit) => (Onto::Layer(unit), project.layout.rect(layer.face, Onto::Layer(unit))),
        None => (Onto::Card, project.layout.rect(layer.face, Onto::Card)),
    };
    // Level with the outermost paper under it, the cut meets nothing else.
    let cut: Vec<Edge> = Edge::ALL
        .into_iter()
        .filter(|edge| trimmed.over(*edge) > 0 && ground.border(trimmed.target, *edge) > 0)
        .collect();
    let first = *cut.first()?;
    let (the_layer, the_target, the_under) =
        (the_layer(design, id), the_ground(design, Onto::Layer(target)), the_ground(design, under));
    let border = length(project, ground.border(trimmed.target, first));
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
