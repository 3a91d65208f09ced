//! What the rules share about true outlines: what a layer lies on, what is seen of it, and measures that
//! a turn has taken off every mark of a ruler.
//!
//! Layers are compared in the frame that they share where there is one, so that what was put together
//! straight and then turned is judged straight.

use crate::design::model::{Arrangement, Design, Face, Layer, LayerId, Onto, PieceKind};
use crate::geometry::{Comparison, Edge, Point, Polygon, Rect, Region, Relation, TOLERANCE, relation};
use crate::layout::model::Placed;
use crate::layout::place::by_hand;
use crate::length::{Length, Size, Units};
use crate::project::Project;
use crate::rules::face::Line;
use crate::rules::tell::length;
use crate::shape::Form;

/// What a layer lies on, in the frame that both share, windows filled.
pub(crate) enum Ground {
    /// The card, a rectangle, or the rectangle round several copies.
    Rect(Rect),
    /// A piece of another form.
    Shape(Polygon),
}

/// What lies under layers of a face that lie on it.
pub(crate) fn ground(project: &Project, face: Face, onto: Onto) -> Ground {
    let rect = project.layout.rect(face, onto);
    let Onto::Layer(below) = onto else { return Ground::Rect(rect) };
    let layer = project.design.layer(below);
    if layer.count() > 1 || project.design.piece(layer.piece).shape.form == Form::Rectangle {
        return Ground::Rect(rect);
    }
    let copies = by_hand(&project.design, &project.layout, below);
    copies.first().map_or(Ground::Rect(rect), |copy| Ground::Shape(copy.straight.filled()))
}

/// Whether the copies of a layer are turned on what they lie on by more than the word `quarter` or `half`.
pub(crate) const fn is_turned(layer: &Layer) -> bool {
    layer.tilt.is_some() || matches!(layer.arrangement, Arrangement::Fan { .. })
}

/// Whether the borders round a layer are straight ones of a rectangle.
pub(crate) fn on_a_rectangle(project: &Project, layer: &Layer) -> bool {
    matches!(ground(project, layer.face, layer.onto), Ground::Rect(_))
}

/// Whether a layer is a decoration, which no ruler cuts.
pub(crate) fn is_bought(design: &Design, layer: &Layer) -> bool {
    matches!(design.piece(layer.piece).kind, PieceKind::Decoration { .. })
}

/// The outer outlines of a layer's copies in the frame of what it lies on, its own turns done.
pub(crate) fn in_frame(project: &Project, id: LayerId) -> Vec<Polygon> {
    let copies = by_hand(&project.design, &project.layout, id);
    copies.into_iter().map(|copy| copy.outline.filled()).collect()
}

/// An area of the face in the frame of a layer on it.
pub(crate) fn back_in_frame(placed: &Placed, area: &Region) -> Region {
    placed.frame.iter().rev().fold(area.clone(), |area, turn| area.turned(turn.angle.back(), turn.about))
}

/// Whether an area lies within another, edges touching or not.
pub(crate) fn lies_within(inner: &Region, outer: &Region, by: Comparison) -> bool {
    matches!(relation(inner, outer, by), Relation::Inside | Relation::Same)
}

/// The upright rectangle round outlines.
pub(crate) fn bounds(outlines: &[Polygon]) -> Option<Rect> {
    outlines.iter().map(Polygon::bounds).reduce(Rect::hull)
}

/// The areas of all layers as trimmed, by layer.
pub(crate) fn shown(project: &Project) -> Vec<Region> {
    project.layout.layers.iter().map(Placed::shown).collect()
}

/// What is seen of each layer under all that is laid later on its face: windows are seen through.
pub(crate) fn seen(project: &Project, shown: &[Region]) -> Vec<Region> {
    let mut above: Vec<(Face, Region)> = Vec::new();
    let mut seen: Vec<Region> = Vec::with_capacity(shown.len());
    for (placed, own) in project.layout.layers.iter().zip(shown).rev() {
        match above.iter_mut().find(|(face, _)| *face == placed.face) {
            Some((_, above)) => {
                seen.push(own.difference(above));
                *above = above.union(own);
            }
            None => {
                seen.push(own.clone());
                above.push((placed.face, own.clone()));
            }
        }
    }
    seen.reverse();
    seen
}

/// The layers laid later on the same face.
pub(crate) fn above(project: &Project, below: LayerId) -> impl Iterator<Item = LayerId> + '_ {
    let face = project.layout.placed(below).face;
    (below.0 + 1..project.design.layers.len()).map(LayerId).filter(move |id| project.layout.placed(*id).face == face)
}

/// The windows of a layer on its face.
pub(crate) fn windows(placed: &Placed) -> impl Iterator<Item = Polygon> + '_ {
    let rings = placed.laid.iter().flat_map(|laid| laid.outline.holes());
    rings.filter_map(|ring| Polygon::new(ring.clone()).ok())
}

/// A measured length as a person reads it: itself where it is whole 64ths of an inch or tenths of a
/// millimetre, else about the nearest of these.
pub(crate) fn about(project: &Project, nm: i64) -> String {
    let fine = fine(project.units()).nm();
    let near = (2 * nm + fine).div_euclid(2 * fine) * fine;
    match near {
        0 if nm != 0 => format!("less than {}", length(project, fine)),
        near if (near - nm).abs() <= TOLERANCE => length(project, near).to_string(),
        near => format!("about {}", length(project, near)),
    }
}

/// The size of a rectangle as a person reads it.
pub(crate) fn about_size(project: &Project, rect: Rect) -> String {
    let fine = fine(project.units()).nm();
    let near = |nm: i64| (2 * nm + fine).div_euclid(2 * fine) * fine;
    let (width, height) = (near(rect.width()), near(rect.height()));
    let exact = (width - rect.width()).abs().max((height - rect.height()).abs()) <= TOLERANCE;
    let size = Size::new(length(project, width), length(project, height));
    if exact { size.to_string() } else { format!("about {size}") }
}

/// The finest step that a measured length is told in.
const fn fine(units: Units) -> Length {
    Length::either(units, Length::inch(1, 64), Length::new(100_000, crate::length::Unit::Millimetre))
}

/// A length up to the next step of the ruler; what is past a step by no more than the tolerance of turned
/// shapes counts as on it.
pub(crate) fn up_to_ruler(project: &Project, nm: i64) -> Length {
    let step = project.design.workshop.ruler.nm().max(1);
    let steps = (nm - TOLERANCE + step - 1).div_euclid(step);
    length(project, steps * step)
}

/// A length to the nearest step of the ruler.
pub(crate) fn near_ruler(project: &Project, nm: i64) -> Length {
    let step = project.design.workshop.ruler.nm().max(1);
    length(project, (2 * nm + step).div_euclid(2 * step) * step)
}

/// The edges of a rectangle that another reaches past by more than the tolerance, and how far.
pub(crate) fn past_edges(ground: Rect, inner: Rect) -> Vec<(Edge, i64)> {
    let past = Edge::ALL.into_iter().map(|edge| (edge, -ground.border(inner, edge)));
    past.filter(|(_, past)| *past > TOLERANCE).collect()
}

/// The way back from an edge.
pub(crate) const fn inward(edge: Edge) -> &'static str {
    match edge {
        Edge::Left => "to the right",
        Edge::Right => "to the left",
        Edge::Top => "down",
        Edge::Bottom => "up",
    }
}

/// On which side of a rectangle's middle a point lies: `top left`, `right`.
pub(crate) fn side_of_middle(rect: Rect, point: Point) -> String {
    let step = point.from(rect.middle());
    let (across, up) = (step.x.abs(), step.y.abs());
    let mut words = Vec::new();
    if 2 * up >= across && step.y != 0 {
        words.push(if step.y > 0 { "top" } else { "bottom" });
    }
    if 2 * across >= up && step.x != 0 {
        words.push(if step.x > 0 { "right" } else { "left" });
    }
    words.join(" ")
}

/// How far copies of a layer that lie over a line reach to both sides of it, the farthest of them.
pub(crate) fn across(placed: &Placed, line: Line) -> Option<(i64, i64)> {
    let copies = placed.laid.iter().filter_map(|laid| crosses(&laid.shown, line));
    copies.reduce(|one, other| (one.0.max(other.0), one.1.max(other.1)))
}

/// How far an area reaches to both sides of a line, before it and after it, where it lies on both.
fn crosses(area: &Region, line: Line) -> Option<(i64, i64)> {
    let bounds = area.bounds()?;
    let (low, high) = if line.upright { (bounds.left, bounds.right) } else { (bounds.bottom, bounds.top) };
    let (before, after) = (line.at - low, high - line.at);
    (before > TOLERANCE && after > TOLERANCE).then_some((before, after))
}
