//! A layer hides one below it wholly.

use crate::design::model::{LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Rect;
use crate::layout::model::Placed;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::hand;
use crate::rules::tell::{length, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "covers-another",
    severity: Severity::Warning,
    group: "layers",
    summary: "a layer hides one below it wholly",
    page: include_str!("covers_another.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings = Vec::new();
    for below in design.layer_ids() {
        let above = (below.0 + 1..design.layers.len()).map(LayerId).find(|above| hides(project, *above, below));
        findings.extend(above.map(|above| tell(project, above, below)));
    }
    findings
}

/// Whether every copy of a layer lies under one copy of a later layer, as trimmed.
fn hides(project: &Project, above: LayerId, below: LayerId) -> bool {
    // A layer too large for what it lies on is said by past-the-edge.
    let lies_on_it = project.design.layer(above).onto == Onto::Layer(below);
    let (above, below) = (project.layout.placed(above), project.layout.placed(below));
    if above.face != below.face {
        return false;
    }
    if lies_on_it && !below.block.contains(above.block) {
        return false;
    }
    if !is_plain(project, above) || !is_plain(project, below) {
        let (below, above) = (below.shown(), above.shown());
        return !below.is_empty() && below.difference(&above).is_empty();
    }
    let shown: Vec<Rect> = below.trimmed.iter().flatten().copied().collect();
    !shown.is_empty()
        // Copies can be many; the blocks settle almost every pair.
        && shown.iter().all(|copy| above.block.contains(*copy))
        && shown.iter().all(|copy| above.trimmed.iter().flatten().any(|over| over.contains(*copy)))
}

/// Whether a layer shows as upright rectangles.
fn is_plain(project: &Project, placed: &Placed) -> bool {
    placed.is_straight() && project.design.piece(project.design.layer(placed.layer).piece).is_plain()
}

fn tell(project: &Project, above: LayerId, below: LayerId) -> Finding {
    let design = &project.design;
    let (layer, hidden) = (design.layer(above), design.layer(below));
    let (the_layer, the_hidden) = (the_layer(design, above), the_layer(design, below));
    let block = project.layout.placed(below).block;
    let unit = length(project, 0).unit();
    let border = hand::border(project.units());
    let smaller = block.size(unit).less_all_round(border);
    let mut finding = Finding::warning(
        RULE.code,
        layer.span,
        format!("{the_layer} hides {the_hidden} wholly"),
        format!("{} over {}", project.layout.placed(above).block.size(unit), block.size(unit)),
    )
    .also(hidden.span, "nothing of it shows")
    .plainly(format!("nothing of {the_hidden} shows, since {the_layer} lies over all of it"));
    if smaller.width.nm() > 0 && smaller.height.nm() > 0 && layer.count() == 1 {
        let smaller = smaller.turned(layer.quarter_turns);
        finding = finding.help(format!(
            "make the {} {smaller} to show {border} all round, or leave {the_hidden} out",
            design.piece(layer.piece).name
        ));
    } else {
        finding = finding.help(format!("lay {the_layer} elsewhere, or leave {the_hidden} out"));
    }
    finding
}
