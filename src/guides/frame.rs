//! A placing frame: what a layer lies on, with a hole exactly where the layer goes.
//!
//! Takes a design and its layout, gives exact areas in the coordinates of what the frame lies on, where that is
//! straight. Nothing is added for play: the opening is the outline of what goes into it.

use crate::design::model::{Arrangement, Design, Face, LayerId, Onto};
use crate::geometry::{Edge, Polygon, Region, distance};
use crate::layout::model::Layout;
use crate::layout::place::{by_hand, pivot};
use crate::length::{Length, Units};

/// The thinnest arm, and the thinnest bar between two openings, that a hand cuts out without tearing it: 3/16 in
/// or 5 mm. Common practice, no source.
#[must_use]
pub const fn least(units: Units) -> Length {
    Length::either(units, Length::inch(3, 16), Length::mm(5))
}

/// A frame that lays one layer or several on what is below them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Frame {
    /// The layers that it lays, in the order that they are glued.
    pub layers: Vec<LayerId>,
    /// What it lies on: any layer below them, or the card.
    pub on: Onto,
    /// The side of the card that all of it lies on.
    pub face: Face,
    /// The outline of what it lies on, windows filled: the outer edge of the frame.
    pub outline: Polygon,
    /// What is cut out of it: the layers' outlines, filled; what touches is one opening.
    pub openings: Region,
    /// What is left: the frame itself.
    pub body: Region,
}

/// Why there is no frame.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unfit {
    /// The layer does not lie on what is named, directly or over others.
    NotBelow(LayerId),
    /// The layer is glued before something below it is, so that what the frame would lie on is not yet there.
    TooEarly {
        /// The layer.
        layer: LayerId,
        /// What is glued later.
        later: LayerId,
    },
    /// What the frame would lie on are several copies, with no one outline.
    Several(LayerId),
    /// What the frame would lie on is cut too long and trimmed, so that its edges are not yet there.
    Trimmed(LayerId),
    /// An arm would be thinner than [`least`].
    Arm {
        /// The layer whose opening comes too near the edge.
        layer: LayerId,
        /// How wide the arm is; nothing where the opening reaches the edge.
        wide: i64,
        /// The edge, where one stands out.
        edge: Option<Edge>,
    },
    /// A bar between two openings would be thinner than [`least`].
    Bar {
        /// The layer of one opening.
        layer: LayerId,
        /// The layer of the other.
        other: LayerId,
        /// How wide the bar is; nothing where the openings meet in a point.
        wide: i64,
    },
}

/// The outlines of a layer's copies, filled, in the coordinates of what `on` is; none where it does not lie there.
#[must_use]
pub fn outlines(design: &Design, layout: &Layout, layer: LayerId, on: Onto) -> Option<Vec<Polygon>> {
    let mut copies: Vec<Polygon> =
        by_hand(design, layout, layer).into_iter().map(|copy| copy.outline.filled()).collect();
    let mut below = design.layer(layer).onto;
    while below != on {
        let Onto::Layer(id) = below else { return None };
        let under = design.layer(id);
        if let Some(tilt) = under.tilt {
            let placed = layout.placed(id);
            let about = pivot(tilt.about, placed.copies.first().copied().unwrap_or(placed.block));
            copies = copies.iter().map(|copy| copy.turned(tilt.angle, about)).collect();
        }
        below = under.onto;
    }
    Some(copies)
}

/// Everything that a layer lies on, what it touches first, the card last.
#[must_use]
pub fn grounds(design: &Design, layer: LayerId) -> Vec<Onto> {
    let mut grounds = vec![design.layer(layer).onto];
    while let Some(Onto::Layer(below)) = grounds.last() {
        grounds.push(design.layer(*below).onto);
    }
    grounds
}

/// The frame that lays some layers on what is below them.
///
/// # Errors
/// The first thing that keeps it from being cut.
pub fn frame(design: &Design, layout: &Layout, layers: &[LayerId], on: Onto) -> Result<Frame, Unfit> {
    let frame = whole(design, layout, layers, on)?;
    thick_enough(design, layout, &frame)?;
    Ok(frame)
}

/// The same, however thin its arms are.
fn whole(design: &Design, layout: &Layout, layers: &[LayerId], on: Onto) -> Result<Frame, Unfit> {
    let face = layers.first().map_or(Face::Front, |first| design.layer(*first).face);
    let mut copies = Vec::new();
    for layer in layers {
        if design.layer(*layer).face != face {
            return Err(Unfit::NotBelow(*layer));
        }
        if let Some(later) = glued_later(design, *layer, on) {
            return Err(Unfit::TooEarly { layer: *layer, later });
        }
        copies.extend(outlines(design, layout, *layer, on).ok_or(Unfit::NotBelow(*layer))?);
    }
    let outline = match on {
        Onto::Card => Polygon::from(layout.face(face)),
        Onto::Layer(id) => {
            let below = design.layer(id);
            if below.trim_flush.is_some() {
                return Err(Unfit::Trimmed(id));
            }
            match by_hand(design, layout, id).as_slice() {
                // A fan of one is turned in its place; everything else is straight here.
                [one] if below.arrangement == Arrangement::Single => one.straight.filled(),
                _ => return Err(Unfit::Several(id)),
            }
        }
    };
    let cut = Region::covered_by(&copies);
    // What an opening encloses falls out with it.
    let filled: Vec<Polygon> = cut.parts().iter().map(Polygon::filled).collect();
    let openings = Region::covered_by(&filled);
    let body = Region::from(&outline).difference(&openings);
    Ok(Frame { layers: layers.to_vec(), on, face, outline, openings, body })
}

/// What lies between a layer and what a frame lies on, and is glued down only after the layer: the layer is put
/// together on it first.
fn glued_later(design: &Design, layer: LayerId, on: Onto) -> Option<LayerId> {
    let between = grounds(design, layer).into_iter().take_while(|below| *below != on);
    let units = std::iter::successors(design.layer(layer).unit, |unit| design.layer(*unit).unit);
    let units: Vec<LayerId> = units.take(design.layers.len()).collect();
    between
        .filter_map(|below| match below {
            Onto::Layer(below) => Some(below),
            Onto::Card => None,
        })
        .find(|below| units.contains(below))
}

fn thick_enough(design: &Design, layout: &Layout, frame: &Frame) -> Result<(), Unfit> {
    let least = least(design.units).nm();
    let owner = |part: &Polygon| {
        let region = Region::from(part);
        let reaches = |layer: &&LayerId| {
            outlines(design, layout, **layer, frame.on)
                .is_some_and(|copies| copies.iter().any(|copy| !region.intersection(&Region::from(copy)).is_empty()))
        };
        frame.layers.iter().find(reaches).or(frame.layers.first()).copied().unwrap_or(LayerId(0))
    };
    let edge_of_all = Region::from(&frame.outline);
    let bounds = frame.outline.bounds();
    let mut thinnest: Option<(i64, Unfit)> = None;
    let mut note = |wide: i64, unfit: &dyn Fn() -> Unfit| {
        if wide < least && thinnest.is_none_or(|(known, _)| wide < known) {
            thinnest = Some((wide, unfit()));
        }
    };
    for (number, part) in frame.openings.parts().iter().enumerate() {
        let own = Region::from(part);
        let is_within = own.difference(&edge_of_all).is_empty();
        let wide = if is_within { distance(&own, &edge_of_all).unwrap_or(0) } else { 0 };
        let edge = Edge::ALL.into_iter().find(|edge| bounds.border(part.bounds(), *edge).max(0) == wide);
        note(wide, &|| Unfit::Arm { layer: owner(part), wide, edge });
        for other in &frame.openings.parts()[..number] {
            if part.bounds().grown(least).overlap(other.bounds()).is_none() {
                continue;
            }
            let wide = distance(&own, &Region::from(other)).unwrap_or(0);
            note(wide, &|| Unfit::Bar { layer: owner(part), other: owner(other), wide });
        }
    }
    thinnest.map_or(Ok(()), |(_, unfit)| Err(unfit))
}
