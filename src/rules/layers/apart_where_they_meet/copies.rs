//! Copies of one layer that are to lie edge to edge: without a gap, or round the middle of a pinwheel.

use super::{Miss, RULE, miss};
use crate::design::model::{Arrangement, LayerId};
use crate::diagnostic::Finding;
use crate::geometry::Polygon;
use crate::length::Size;
use crate::project::Project;
use crate::rules::hand;
use crate::rules::outlines::{about, in_frame, is_turned};
use crate::rules::tell::{Axis, length, the_layer};

/// Neighbours that are to touch: their numbers among the copies, and the direction from one to the other,
/// where there is one. All other neighbours lie to each other as these do.
fn neighbours(arrangement: Arrangement) -> Vec<(usize, usize, Option<Axis>)> {
    let (across, up) = (Some(Axis::Across), Some(Axis::Up));
    let mut pairs = Vec::new();
    match arrangement {
        Arrangement::Row { count, gap } if count > 1 && gap.is_zero() => pairs.push((0, 1, across)),
        Arrangement::Column { count, gap } if count > 1 && gap.is_zero() => pairs.push((0, 1, up)),
        Arrangement::Grid { columns, rows, across: beside, down } => {
            if columns > 1 && beside.is_zero() {
                pairs.push((0, 1, across));
            }
            if rows > 1 && down.is_zero() {
                pairs.push((0, columns as usize, up));
            }
        }
        Arrangement::Triangle { rows, across: beside, down, points_up } if rows > 1 => {
            // The first row of two or more.
            let first = usize::from(points_up);
            if beside.is_zero() {
                pairs.push((first, first + 1, across));
            }
            if down.is_zero() {
                // One copy lies between two of the longer row, and leans to each otherwise when it is turned.
                let rows = rows as usize;
                pairs.extend(if points_up { [(0, 1, up), (0, 2, up)] } else { [(0, rows, up), (1, rows, up)] });
            }
        }
        Arrangement::Pinwheel { .. } => pairs.extend((0..4).map(|strip| (strip, (strip + 1) % 4, None))),
        _ => {}
    }
    pairs
}

/// Copies of a layer that miss each other.
pub(super) fn among(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let pairs = neighbours(layer.arrangement);
    if pairs.is_empty() {
        return None;
    }
    let outlines = in_frame(project, id);
    let of = |number: usize| outlines.get(number).map(|outline: &Polygon| std::slice::from_ref(outline));
    let found = pairs.into_iter().find_map(|(one, other, axis)| miss(of(one)?, of(other)?, axis))?;
    let the_layer = the_layer(design, id);
    let fact = found.fact(project);
    let by = found.by_ruler(project);
    let help = match (layer.arrangement, found) {
        (Arrangement::Pinwheel { .. }, _) if is_turned(layer) => {
            format!("take `turned` out, which parts the strips by {by}")
        }
        (Arrangement::Pinwheel { .. }, _) => format!("make each a plain rectangle, which closes the {by}"),
        (_, Miss::Overlap(_)) => format!("say `gap: {by}` or more"),
        (_, Miss::Gap(_)) => format!("say `gap: {}` or more, so that it looks meant", hand::border(project.units())),
    };
    Some(
        Finding::warning(
            RULE.code,
            layer.spans.arrangement,
            format!("two neighbours of {the_layer} do not lie edge to edge"),
            fact.clone(),
        )
        .plainly(format!("two neighbours of {the_layer} are to lie edge to edge, but {fact}"))
        .help(help),
    )
}

/// A middle that almost fills the square that a pinwheel leaves open.
pub(super) fn round_a_middle(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let wheel = design.layer(id);
    let size = design.piece(wheel.piece).size;
    let Arrangement::Pinwheel { .. } = wheel.arrangement else { return None };
    if is_turned(wheel) || wheel.mirrored.is_some() {
        return None;
    }
    let square = (size.width.nm() - size.height.nm()).abs();
    let placed = project.layout.placed(id);
    let border = hand::border(project.units()).nm();
    let middle = design.layer_ids().find(|other| {
        let layer = design.layer(*other);
        let block = project.layout.placed(*other).block;
        let lacks = [block.width(), block.height()].map(|side| square - side);
        layer.face == wheel.face
            && layer.onto == wheel.onto
            && layer.count() == 1
            && !is_turned(layer)
            && block.middle() == placed.block.middle()
            && lacks.iter().all(|lack| (0..=border).contains(lack))
            && lacks.iter().any(|lack| *lack > 0)
    })?;
    let block = project.layout.placed(middle).block;
    let lack = (square - block.width()).max(square - block.height());
    let (the_wheel, the_middle) = (the_layer(design, id), the_layer(design, middle));
    let fact = format!("a gap of {} at each side of it", about(project, lack / 2));
    let side = length(project, square);
    let open = Size::new(side, side);
    Some(
        Finding::warning(
            RULE.code,
            design.layer(middle).span,
            format!("{the_middle} does not fill the middle of {the_wheel}"),
            fact.clone(),
        )
        .also(wheel.spans.arrangement, format!("the middle is {open}"))
        .plainly(format!("{the_middle} lies in the middle of {the_wheel} with {fact}"))
        .help(format!("make it {open}")),
    )
}
