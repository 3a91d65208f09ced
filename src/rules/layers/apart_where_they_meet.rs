//! What is said to lie edge to edge leaves a gap on the card, or overlaps.

mod copies;
mod ring;

use crate::design::model::{Along, LayerId};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Polygon, Rect, Region, TOLERANCE, distance};
use crate::length::Length;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::outlines::{about, bounds, in_frame, is_turned, up_to_ruler};
use crate::rules::tell::{Axis, key, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "apart-where-they-meet",
    severity: Severity::Warning,
    group: "layers",
    summary: "what is said to lie edge to edge leaves a gap, or overlaps",
    page: include_str!("apart_where_they_meet.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let mut findings = Vec::new();
    for id in project.design.layer_ids() {
        if project.design.layer(id).ring.is_empty() {
            findings.extend(Axis::BOTH.iter().filter_map(|axis| beside(project, id, *axis)));
        } else {
            findings.extend(ring::strip(project, id));
        }
        findings.extend(copies::among(project, id));
        findings.extend(copies::round_a_middle(project, id));
    }
    findings
}

/// How two things fail to lie edge to edge.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Miss {
    /// The narrowest gap between them.
    Gap(i64),
    /// How deep they overlap along the direction in which they lie beside each other.
    Overlap(i64),
}

impl Miss {
    fn fact(self, project: &Project) -> String {
        match self {
            Self::Gap(by) => format!("a gap of {} between them", about(project, by)),
            Self::Overlap(by) => format!("they overlap by {}", about(project, by)),
        }
    }

    fn by_ruler(self, project: &Project) -> Length {
        match self {
            Self::Gap(by) | Self::Overlap(by) => up_to_ruler(project, by),
        }
    }
}

/// A layer said to lie beside another without a gap.
fn beside(project: &Project, id: LayerId, axis: Axis) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let along = axis.along(layer);
    let (other, high) = match along {
        Along::After(other, gap) if gap.is_zero() => (other, false),
        Along::Before(other, gap) if gap.is_zero() => (other, true),
        _ => return None,
    };
    // Of mirrored copies the originals lie there.
    let mut own = in_frame(project, id);
    own.truncate(layer.arrangement.count() as usize);
    let miss = miss(&own, &in_frame(project, other), Some(axis))?;
    let (the_layer, the_other) = (the_layer(design, id), the_layer(design, other));
    let shift = match axis {
        Axis::Across => layer.shifted.0,
        Axis::Up => layer.shifted.1,
    };
    let by = miss.by_ruler(project);
    let edge = if high { axis.low() } else { axis.high() };
    let help = match (miss, shift) {
        (Miss::Gap(_), shift) if shift != 0 => format!("take `shifted` out, or say `gap: {by}` in its place"),
        (Miss::Overlap(_), shift) if shift != 0 => {
            format!("take `shifted` out, or lay it {by} further to the {} at the least", edge.word())
        }
        (Miss::Gap(_), _) => {
            format!("lay it {by} nearer, or say a `gap`, such as `gap: {by}`, if they are to lie apart")
        }
        (Miss::Overlap(_), _) => format!("say `gap: {by}` or more"),
    };
    let help = help.replace("to the top at", "up at").replace("to the bottom at", "down at");
    let help = if is_turned(layer) && shift == 0 { format!("{help}, or take `turned` out") } else { help };
    let fact = miss.fact(project);
    let span = match axis {
        Axis::Across => layer.spans.across,
        Axis::Up => layer.spans.up,
    };
    let word = key(axis, along);
    let finding =
        Finding::warning(RULE.code, span, format!("{the_layer} does not lie edge to edge with {the_other}"), &fact);
    Some(
        finding
            .plainly(format!("{the_layer} is laid `{word}` {the_other} without a gap, but {fact}"))
            .help(help)
            .also(design.layer(other).span, format!("{the_other} lies here")),
    )
}

/// How two things miss each other; none where they touch, or do not face each other along the axis.
fn miss(one: &[Polygon], other: &[Polygon], axis: Option<Axis>) -> Option<Miss> {
    if let Some(axis) = axis {
        let (one, other) = (bounds(one)?, bounds(other)?);
        let reach = |rect: Rect| match axis {
            Axis::Across => (rect.bottom, rect.top),
            Axis::Up => (rect.left, rect.right),
        };
        let ((low, high), (from, to)) = (reach(one), reach(other));
        if low.max(from) + TOLERANCE >= high.min(to) {
            return None;
        }
    }
    let both = Region::covered_by(one).intersection(&Region::covered_by(other));
    if both.holds_disc(TOLERANCE) {
        let deep = |part: &Polygon| {
            let bounds = part.bounds();
            axis.map_or_else(|| bounds.width().min(bounds.height()), |axis| axis.extent(bounds))
        };
        return both.parts().iter().map(deep).max().map(Miss::Overlap);
    }
    least(one, other).filter(|gap| *gap > TOLERANCE).map(Miss::Gap)
}

/// The most pairs of outlines that are measured point by point, the nearest first.
const MOST_PAIRS: usize = 24;

/// The least distance between two sets of outlines.
fn least(one: &[Polygon], other: &[Polygon]) -> Option<i64> {
    let apart = |a: Rect, b: Rect| {
        let far = |low: i64, high: i64, from: i64, to: i64| (from - high).max(low - to).max(0);
        let (x, y) = (far(a.left, a.right, b.left, b.right), far(a.bottom, a.top, b.bottom, b.top));
        i128::from(x) * i128::from(x) + i128::from(y) * i128::from(y)
    };
    let mut pairs: Vec<(i128, usize, usize)> = Vec::new();
    for (n, a) in one.iter().enumerate() {
        let from = a.bounds();
        pairs.extend(other.iter().enumerate().map(|(m, b)| (apart(from, b.bounds()), n, m)));
    }
    pairs.sort_unstable();
    let mut least: Option<i64> = None;
    for (square, n, m) in pairs.into_iter().take(MOST_PAIRS) {
        if least.is_some_and(|least| least <= TOLERANCE || i128::from(least) * i128::from(least) <= square) {
            break;
        }
        let away = distance(&Region::from(&one[n]), &Region::from(&other[m]));
        least = least.into_iter().chain(away).min();
    }
    least
}
