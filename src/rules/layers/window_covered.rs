//! A layer covers a window of a layer below it.

use crate::design::model::LayerId;
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Polygon, Region, TOLERANCE};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::hand;
use crate::rules::outlines::{about_size, above, shown, windows};
use crate::rules::tell::the_layer;

/// The rule.
pub static RULE: Rule = Rule {
    code: "window-covered",
    severity: Severity::Warning,
    group: "layers",
    summary: "a layer covers a window of a layer below it",
    page: include_str!("window_covered.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let shown = shown(project);
    let mut findings = Vec::new();
    for frame in project.design.layer_ids() {
        let mut said: Vec<LayerId> = Vec::new();
        for window in windows(project.layout.placed(frame)) {
            let over = above(project, frame).find(|over| covers(&shown[over.0], &window));
            if let Some(over) = over.filter(|over| !said.contains(over)) {
                said.push(over);
                findings.push(tell(project, frame, over, &window));
            }
        }
    }
    findings
}

/// Whether an area covers all of a window, and more: what is just as large is set into it.
fn covers(over: &Region, window: &Polygon) -> bool {
    let hole = Region::from(window);
    let near = over.parts().iter().filter(|part| !Region::from(*part).intersection(&hole).is_empty());
    let larger = near.map(Region::from).any(|part| part.difference(&hole).holds_disc(TOLERANCE));
    larger && !hole.difference(over).holds_disc(TOLERANCE)
}

fn tell(project: &Project, frame: LayerId, over: LayerId, window: &Polygon) -> Finding {
    let design = &project.design;
    let (the_frame, the_layer) = (the_layer(design, frame), the_layer(design, over));
    let size = about_size(project, window.bounds());
    let border = hand::border(project.units());
    Finding::warning(
        RULE.code,
        design.layer(over).span,
        format!("{the_layer} covers a window of {the_frame}"),
        format!("nothing is seen through the window of {size}"),
    )
    .also(design.layer(frame).span, "the window is in this layer")
    .plainly(format!("{the_layer} lies over the whole window of {the_frame}, so that nothing is seen through it"))
    .help(format!(
        "lay it so that {border} or more of the window stays open, before {the_frame} if it belongs behind it, or leave the window out"
    ))
}
