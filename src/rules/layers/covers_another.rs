//! A layer hides one below it wholly.

use crate::design::model::{LayerId, Onto};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Rect, Region, TOLERANCE};
use crate::layout::model::Placed;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::hand;
use crate::rules::layers::past_the_edge::reaches_past;
use crate::rules::outlines::{above, seen, shown};
use crate::rules::tell::{length, the_layer};
use crate::words::english::listed_words;

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
    let shown = shown(project);
    let seen = seen(project, &shown);
    let hidden = |below: &LayerId| !shown[below.0].is_empty() && !seen[below.0].holds_disc(TOLERANCE);
    project.design.layer_ids().filter(hidden).filter_map(|below| by_whom(project, &shown, below)).collect()
}

/// The report of a layer that nothing shows of: by the first that hides it alone, else by those that do so
/// together.
fn by_whom(project: &Project, shown: &[Region], below: LayerId) -> Option<Finding> {
    // A layer too large for what it lies on is said by past-the-edge.
    let too_large = |above: LayerId| {
        let layer = project.design.layer(above);
        layer.onto == Onto::Layer(below) && layer.trim_flush.is_none() && reaches_past(project, above)
    };
    let over: Vec<LayerId> = above(project, below).filter(|above| !too_large(*above)).collect();
    if let Some(alone) = over.iter().find(|above| hides(project, shown, **above, below)) {
        return Some(tell(project, *alone, below));
    }
    let mut left = shown[below.0].clone();
    let mut together: Vec<LayerId> = Vec::new();
    for above in over {
        let rest = left.difference(&shown[above.0]);
        if rest.area2() < left.area2() {
            together.push(above);
            left = rest;
        }
    }
    (!left.holds_disc(TOLERANCE)).then(|| tell_together(project, &together, below))?
}

/// Whether every copy of a layer lies under a later layer, as trimmed.
fn hides(project: &Project, shown: &[Region], above: LayerId, below: LayerId) -> bool {
    let (over, under) = (project.layout.placed(above), project.layout.placed(below));
    if !is_plain(project, over) || !is_plain(project, under) {
        return !shown[below.0].difference(&shown[above.0]).holds_disc(TOLERANCE);
    }
    let copies: Vec<Rect> = under.trimmed.iter().flatten().copied().collect();
    // Copies can be many; the blocks settle almost every pair.
    copies.iter().all(|copy| over.block.contains(*copy))
        && copies.iter().all(|copy| over.trimmed.iter().flatten().any(|over| over.contains(*copy)))
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
    let plain = [above, below].iter().all(|id| is_plain(project, project.layout.placed(*id)));
    if plain && smaller.width.nm() > 0 && smaller.height.nm() > 0 && layer.count() == 1 {
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

/// The report of a layer that several others hide between them.
fn tell_together(project: &Project, together: &[LayerId], below: LayerId) -> Option<Finding> {
    let design = &project.design;
    let (last, others) = together.split_last()?;
    let hidden = the_layer(design, below);
    let names: Vec<String> = together.iter().map(|above| the_layer(design, *above)).collect();
    let names = listed_words(&names);
    let border = hand::border(project.units());
    let mut finding = Finding::warning(
        RULE.code,
        design.layer(*last).span,
        if others.is_empty() {
            format!("{names} hides {hidden} wholly")
        } else {
            format!("{names} hide {hidden} wholly between them")
        },
        "covers the last of it",
    )
    .also(design.layer(below).span, "nothing of it shows")
    .plainly(format!("nothing of {hidden} shows, since {names} lie over all of it"))
    .help(format!("lay 1 of them so that {border} of {hidden} shows, or leave {hidden} out"));
    for other in others {
        finding = finding.also(design.layer(*other).span, "covers a part of it");
    }
    Some(finding)
}
