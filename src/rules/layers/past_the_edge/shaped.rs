//! A layer past the outline of a piece that is no rectangle.

use super::RULE;
use crate::design::model::LayerId;
use crate::diagnostic::Finding;
use crate::geometry::{Comparison, Polygon, Region, TOLERANCE, farthest};
use crate::layout::place::{ByHand, by_hand};
use crate::length::{Length, Size};
use crate::project::Project;
use crate::rules::outlines::{about, bounds, in_frame, is_turned, lies_within, side_of_middle, up_to_ruler};
use crate::rules::tell::{ground_span, length, the_ground, the_layer};
use crate::words::english::listed_words;

/// How many steps of the ruler are tried before a mend is given up.
const MOST_STEPS: i64 = 64;

/// The report of a layer that reaches past `ground`, the outline of what it lies on.
pub(super) fn tell(project: &Project, id: LayerId, ground: &Polygon) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let (the_layer, the_ground) = (the_layer(design, id), the_ground(design, layer.onto));
    let outlines = in_frame(project, id);
    let outside = Region::covered_by(&outlines).difference(&Region::from(ground));
    let mut sides: Vec<String> = Vec::new();
    let mut most = 0;
    for part in outside.parts() {
        let part = Region::from(part);
        if !part.holds_disc(TOLERANCE) {
            continue;
        }
        let Some((past, corner)) = farthest(&part, &Region::from(ground)) else { continue };
        most = most.max(past);
        let side = format!("at the {}", side_of_middle(ground.bounds(), corner));
        if !sides.contains(&side) {
            sides.push(side);
        }
    }
    sides.sort();
    let place =
        if sides.len() == 4 { "all round".to_owned() } else { listed_words(&sides).replace(" and at the", " and") };
    let facts = format!("reaches {} past the edge of {the_ground} {place}", about(project, most));
    let help = nearer(project, id, ground, &outlines)
        .or_else(|| {
            let (by, outer) = (comparison(project, id), Region::from(ground));
            let size = smaller(project, id, |outline| lies_within(&Region::from(outline), &outer, by))?;
            Some(format!("make it {size} or smaller"))
        })
        .unwrap_or_else(|| format!("lay it {} further in, or make it smaller", up_to_ruler(project, most)));
    let mut finding =
        Finding::error(RULE.code, layer.span, format!("{the_layer} reaches past {the_ground}"), facts.clone())
            .plainly(format!("{the_layer} {facts}"))
            .help(help);
    if let Some(span) = ground_span(design, layer.onto) {
        let size = ground.bounds().size(length(project, 0).unit());
        finding = finding.also(span, format!("{the_ground} is {size}"));
    }
    finding
}

fn comparison(project: &Project, id: LayerId) -> Comparison {
    if is_turned(project.design.layer(id)) { Comparison::Turned } else { Comparison::Exact }
}

/// The shortest way toward the middle of the ground, by steps of the ruler, after which all lies on it.
fn nearer(project: &Project, id: LayerId, ground: &Polygon, outlines: &[Polygon]) -> Option<String> {
    let by = comparison(project, id);
    let outer = Region::from(ground);
    let way = ground.bounds().middle().from(bounds(outlines)?.middle());
    let fits =
        |x: i64, y: i64| outlines.iter().all(|outline| lies_within(&Region::from(outline.moved(x, y)), &outer, by));
    let step = project.design.workshop.ruler.nm();
    let most = way.x.abs().max(way.y.abs()) / step.max(1) + 1;
    for steps in 1..=most.min(MOST_STEPS) {
        let (x, y) = (steps * step * way.x.signum(), steps * step * way.y.signum());
        for (x, y) in [(x, 0), (0, y), (x, y)] {
            if (x, y) != (0, 0) && fits(x, y) {
                let moves: Vec<String> =
                    [(x, if x < 0 { "to the left" } else { "to the right" }), (y, if y < 0 { "down" } else { "up" })]
                        .iter()
                        .filter(|(by, _)| *by != 0)
                        .map(|(by, way)| format!("{} further {way}", length(project, by.abs())))
                        .collect();
                return Some(format!("lay it {}", listed_words(&moves)));
            }
        }
    }
    None
}

/// The largest size, a step of the ruler less on every edge at a time, whose outline fits where the layer
/// lies.
pub(super) fn smaller(project: &Project, id: LayerId, fits: impl Fn(&Polygon) -> bool) -> Option<Size> {
    let layer = project.design.layer(id);
    if layer.count() > 1 {
        return None;
    }
    let piece = project.design.piece(layer.piece);
    let copies = by_hand(&project.design, &project.layout, id);
    let copy: &ByHand = copies.first()?;
    let ruler = project.design.workshop.ruler;
    for steps in 1..=MOST_STEPS {
        let less: Length = ruler * steps;
        let size = piece.size.in_units(project.units()).less_all_round(length(project, less.nm()));
        if size.width.nm() <= 0 || size.height.nm() <= 0 {
            return None;
        }
        let mut shape = piece.shape.clone();
        (shape.width, shape.height) = (size.width.nm(), size.height.nm());
        shape.windows.clear();
        let made = shape.make().ok()?;
        let outline = made.outline.quarter_turned_in(layer.quarter_turns, made.outline.bounds());
        let from = outline.bounds();
        let outline = outline.moved(copy.rect.left + less.nm() - from.left, copy.rect.bottom + less.nm() - from.bottom);
        let outline = copy.turns.iter().fold(outline, |outline, turn| outline.turned(turn.angle, turn.about));
        if fits(&outline) {
            return Some(size);
        }
    }
    None
}
