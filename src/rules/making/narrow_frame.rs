//! Little paper is left between a window and the edge, or between two windows.

use crate::design::model::PieceId;
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Edge, Polygon, Rect, Region, distance};
use crate::project::Project;
use crate::rules::tell::length;
use crate::rules::{Rule, hand};
use crate::shape::{Shape, Window};

/// The rule.
pub static RULE: Rule = Rule {
    code: "narrow-frame",
    severity: Severity::Warning,
    group: "making",
    summary: "little paper is left between a window and the edge, or between two windows",
    page: include_str!("narrow_frame.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.piece_ids().filter_map(|id| narrow(project, id)).collect()
}

/// What lies beside the narrowest paper.
enum Beside {
    Edge(Option<Edge>),
    Window(usize),
}

/// The narrowest paper beside a window of a piece.
fn narrow(project: &Project, id: PieceId) -> Option<Finding> {
    let piece = project.design.piece(id);
    if piece.shape.windows.is_empty() {
        return None;
    }
    let least = hand::around_a_shape(project.units());
    let whole = Shape { windows: Vec::new(), ..piece.shape.clone() }.make().ok()?.outline;
    let edge = Region::from(&whole);
    let holes: Vec<Region> =
        piece.shape.windows.iter().map(|window| hole(window).map(Region::from)).collect::<Option<_>>()?;
    let mut narrowest: Option<(i64, usize, Beside)> = None;
    let mut note = |wide: i64, window: usize, beside: Beside| {
        if wide < least.nm() && narrowest.as_ref().is_none_or(|(known, ..)| wide < *known) {
            narrowest = Some((wide, window, beside));
        }
    };
    for (number, own) in holes.iter().enumerate() {
        if let Some(wide) = distance(own, &edge) {
            note(wide, number, Beside::Edge(nearest(piece.shape.frame(), own, wide)));
        }
        for (earlier, other) in holes[..number].iter().enumerate() {
            if reach_each_other(own, other, least.nm())
                && let Some(wide) = distance(own, other)
            {
                note(wide, number, Beside::Window(earlier));
            }
        }
    }
    let (wide, window, beside) = narrowest?;
    Some(tell(project, id, wide, window, &beside))
}

/// The outline that a window cuts, in the frame of its piece.
fn hole(window: &Window) -> Option<Polygon> {
    let own = Shape {
        form: window.form.clone(),
        width: window.width,
        height: window.height,
        making: window.making,
        windows: Vec::new(),
    };
    Some(own.make().ok()?.outline.moved(window.left, window.bottom))
}

fn reach_each_other(one: &Region, other: &Region, least: i64) -> bool {
    one.bounds().zip(other.bounds()).is_some_and(|(one, other)| one.grown(least).overlap(other).is_some())
}

/// The edge of the frame at which so much is left, where it is a straight one.
fn nearest(frame: Rect, own: &Region, wide: i64) -> Option<Edge> {
    let bounds = own.bounds()?;
    Edge::ALL.into_iter().find(|edge| frame.border(bounds, *edge) == wide)
}

fn tell(project: &Project, id: PieceId, wide: i64, window: usize, beside: &Beside) -> Finding {
    let piece = project.design.piece(id);
    let several = piece.shape.windows.len() > 1;
    let least = hand::around_a_shape(project.units());
    let wide_enough = length(project, least.nm() - wide);
    let wide = length(project, wide);
    let the_window = if several { format!("window {}", window + 1) } else { "the window".to_owned() };
    let fact = match beside {
        Beside::Edge(Some(edge)) => format!("{wide} left at the {} of {the_window}", edge.word()),
        Beside::Edge(None) => format!("{wide} left beside {the_window}"),
        Beside::Window(other) => format!("{wide} left between window {} and {the_window}", other + 1),
    };
    Finding::warning(
        RULE.code,
        piece.shape_span,
        format!("the paper of the {} is narrow beside {the_window}", piece.name),
        fact.clone(),
    )
    .plainly(format!("the {} has {fact}, and so narrow a strip of paper tears or curls", piece.name))
    .help(format!(
        "leave {least} or more: move {the_window} {wide_enough} away, or make it {wide_enough} smaller on that side"
    ))
}
