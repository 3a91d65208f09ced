//! What lies over each other makes the card so thick that it is no letter any more.
//!
//! A card is found too thick by thin foam, so that it is too thick with any.

use crate::design::model::LayerId;
use crate::diagnostic::{Finding, Severity};
use crate::length::Length;
use crate::paper::foam::{thick_foam, thin_foam};
use crate::paper::made::{Made, foams, thick};
use crate::paper::pile::Level;
use crate::paper::post_limits::thickest_letter;
use crate::paper::tell::thickness_past;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{length, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "foam-too-thick-to-post",
    severity: Severity::Warning,
    group: "gluing",
    summary: "foam and decorations make the card thicker than a letter may be",
    page: include_str!("foam_too_thick_to_post.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let Some(made) = &project.made else { return Vec::new() };
    let limit = thickest_letter(project.units());
    if made.posted_thickness() > limit.nm() {
        return vec![too_thick(project, made, limit)];
    }
    let twice = made.levels.iter().filter(|level| level.foams > 1).max_by_key(|level| level.height);
    twice.map(|level| foam_on_foam(project, level)).into_iter().collect()
}

/// Whether a layer lifts what lies on it by more than its paper.
fn lifts(project: &Project, id: LayerId) -> bool {
    foams(project.design.layer(id)) > 0 || thick(&project.design, id).is_some()
}

/// The layers of a pile that stand off, the last one apart.
fn standing(project: &Project, level: &Level) -> Option<(LayerId, Vec<LayerId>)> {
    let mut layers: Vec<LayerId> = level.layers.iter().copied().filter(|id| lifts(project, *id)).collect();
    let top = layers.pop()?;
    layers.dedup();
    Some((top, layers))
}

/// Each layer of a pile with what it adds.
fn with_the_others(finding: Finding, project: &Project, others: &[LayerId]) -> Finding {
    let design = &project.design;
    others.iter().fold(finding, |finding, id| {
        let foam = thin_foam(project.units());
        let own = match (foams(design.layer(*id)), thick(design, *id)) {
            (0, Some(thick)) => format!("{} thick", length(project, thick.nm())),
            (_, Some(thick)) => format!("{} thick, on foam of {foam}", length(project, thick.nm())),
            (_, None) => format!("on foam, {foam} at the least"),
        };
        finding.also(design.layer(*id).span, own)
    })
}

fn too_thick(project: &Project, made: &Made, limit: Length) -> Finding {
    let design = &project.design;
    let all = thickness_past(made.posted_thickness(), limit, project.units());
    let highest = made.levels.first();
    let Some((level, (top, others))) = highest.and_then(|level| Some((level, standing(project, level)?))) else {
        // Paper alone: the many panels of a base, most of it.
        let span = design.card.as_ref().map(|card| card.span).unwrap_or_default();
        return Finding::warning(
            RULE.code,
            span,
            "the card is too thick for a letter",
            format!("{all} of paper in its envelope"),
        )
        .plainly(format!("the card is {all} thick in its envelope, and a letter may be {limit} at most"))
        .help(format!("make it {limit} or less: take fewer panels or lighter paper, or ask your post office"));
    };
    let the_top = the_layer(design, top);
    let high = length(project, level.height);
    let finding = Finding::warning(
        RULE.code,
        design.layer(top).span,
        format!("the card is too thick for a letter where {the_top} lies"),
        format!("{all} in its envelope, {high} of it foam and decorations, with thin foam"),
    )
    .plainly(format!(
        "the card is {all} thick in its envelope where {the_top} lies, and a letter may be {limit} at most"
    ))
    .help(format!(
        "make it {limit} or less: say `glue: tape` for 1 layer there, or ask your post office, whose rules decide"
    ));
    with_the_others(finding, project, &others)
}

fn foam_on_foam(project: &Project, level: &Level) -> Finding {
    let design = &project.design;
    let (top, others) = standing(project, level).unwrap_or((LayerId(0), Vec::new()));
    let the_top = the_layer(design, top);
    let units = project.units();
    let (thin, solid) = (thin_foam(units), thick_foam(units));
    let with_thick = level.height + (solid.nm() - thin.nm()) * i64::from(level.foams);
    let (low, high) = (length(project, level.height), length(project, with_thick));
    let finding = Finding::note(
        RULE.code,
        design.layer(top).span,
        format!("foam lies over foam where {the_top} lies"),
        format!("{low} high with foam of {thin}, {high} with foam of {solid}"),
    )
    .plainly(format!("{the_top} lies where the card stands on foam twice, from {low} to {high} high"))
    .help(format!("take foam of {thin}, and ask your post office, whose rules decide, how such a card is posted"));
    with_the_others(finding, project, &others)
}
