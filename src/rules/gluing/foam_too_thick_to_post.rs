//! Foam and decorations stand so high over each other that the card is no letter any more.
//!
//! Foam squares are from 1/16 in (1.5 mm) to 1/8 in (3 mm) thick (common practice, no source). A card is found
//! too thick by the thin ones, so that it is too thick with any; paper itself is not counted.

use super::closed::closed;
use super::pile::{Level, Raised, piled};
use crate::design::model::{Design, Glue, Layer, LayerId, PieceKind};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Region, TOLERANCE};
use crate::length::{Length, Units};
use crate::project::Project;
use crate::rules::tell::{length, the_layer};
use crate::rules::{Rule, hand};

/// The rule.
pub static RULE: Rule = Rule {
    code: "foam-too-thick-to-post",
    severity: Severity::Warning,
    group: "gluing",
    summary: "foam and decorations make the card thicker than a letter may be",
    page: include_str!("foam_too_thick_to_post.md"),
    check: Some(check),
};

/// The thickest letter: 1/4 in by the rules of the post in the United States, 5 mm by those of the United
/// Kingdom, Canada, Germany and Australia. Rules of the post change; the finding says whom to ask.
const fn thickest_letter(units: Units) -> Length {
    Length::either(units, Length::inch(1, 4), Length::mm(5))
}

/// Copies of one layer are looked at one by one where they are no more than this.
const FEW: u32 = 60;

fn check(project: &Project) -> Vec<Finding> {
    let levels = piled(&raised(project));
    let mut thick: Vec<&Level> = levels.iter().filter(|level| level.region.holds_disc(TOLERANCE)).collect();
    thick.sort_by_key(|level| std::cmp::Reverse(level.height));
    let limit = thickest_letter(project.units());
    if let Some(highest) = thick.first().filter(|level| level.height > limit.nm()) {
        return vec![too_thick(project, highest, limit)];
    }
    thick.iter().find(|level| level.foams > 1).map(|level| twice(project, level)).into_iter().collect()
}

/// Everything that stands off the card, inside and out, where it lies on the closed card.
fn raised(project: &Project) -> Vec<Raised> {
    let design = &project.design;
    let Some(card) = &design.card else { return Vec::new() };
    let mut all = Vec::new();
    for id in design.layer_ids() {
        let layer = design.layer(id);
        let (foams, height) = (foams(layer), own_height(project, id));
        if height == 0 {
            continue;
        }
        let placed = project.layout.placed(id);
        let whole = placed.shown();
        let apart: i128 = placed.laid.iter().map(|laid| laid.shown.area2()).sum();
        // Copies that lie over each other, as in a fan, stand on each other.
        let regions: Vec<Region> = if layer.count() <= FEW && apart > whole.area2() {
            placed.laid.iter().map(|laid| laid.shown.clone()).collect()
        } else {
            vec![whole]
        };
        for region in regions {
            let region = closed(card, layer.face, &region);
            if !region.is_empty() {
                all.push(Raised { layer: id, foams, height, region });
            }
        }
    }
    all
}

fn foams(layer: &Layer) -> u32 {
    u32::from(layer.glue.is_some_and(|glue| glue.value == Glue::Foam))
}

fn thick(design: &Design, id: LayerId) -> Option<Length> {
    match design.piece(design.layer(id).piece).kind {
        PieceKind::Decoration { thick, .. } => thick,
        PieceKind::Base | PieceKind::Plain | PieceKind::Kept { .. } => None,
    }
}

/// How far a layer lifts what lies on it, by thin foam.
fn own_height(project: &Project, id: LayerId) -> i64 {
    let foam = hand::thin_foam(project.units()).nm() * i64::from(foams(project.design.layer(id)));
    foam + thick(&project.design, id).map_or(0, Length::nm)
}

/// Each layer of a pile with what it adds, the last one left out.
fn with_the_others(mut finding: Finding, project: &Project, level: &Level) -> Finding {
    let design = &project.design;
    let mut others: Vec<LayerId> = level.layers.clone();
    others.pop();
    others.dedup();
    for id in others {
        let foam = hand::thin_foam(project.units());
        let own = match (foams(design.layer(id)), thick(design, id)) {
            (0, Some(thick)) => format!("{} thick", length(project, thick.nm())),
            (_, Some(thick)) => format!("{} thick, on foam of {foam}", length(project, thick.nm())),
            (_, None) => format!("on foam, {foam} at the least"),
        };
        finding = finding.also(design.layer(id).span, own);
    }
    finding
}

fn too_thick(project: &Project, level: &Level, limit: Length) -> Finding {
    let design = &project.design;
    let top = level.layers.last().copied().unwrap_or(LayerId(0));
    let the_top = the_layer(design, top);
    let high = length(project, level.height);
    let finding = Finding::warning(
        RULE.code,
        design.layer(top).span,
        format!("the card is too thick for a letter where {the_top} lies"),
        format!("{high} of foam and decorations, with thin foam and without the paper"),
    )
    .plainly(format!("foam and decorations are {high} thick where {the_top} lies, and a letter may be {limit} at most"))
    .help(format!(
        "make it {limit} or less: say `glue: tape` for 1 layer there, or ask your post office, whose rules decide"
    ));
    with_the_others(finding, project, level)
}

fn twice(project: &Project, level: &Level) -> Finding {
    let design = &project.design;
    let top = level.layers.last().copied().unwrap_or(LayerId(0));
    let the_top = the_layer(design, top);
    let units = project.units();
    let (thin, solid) = (hand::thin_foam(units), hand::thick_foam(units));
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
    with_the_others(finding, project, level)
}
