//! Which frames a design gets.

use super::frame::{Frame, Unfit, frame, grounds};
use crate::design::model::{Arrangement, Design, Framed, Frames, LayerId, Onto};
use crate::geometry::Edge;
use crate::layout::model::Layout;
use crate::length::{Length, Units};

/// Why a layer is hard to lay by eye.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hard {
    /// It, or what it is laid in, is turned by another angle than quarters.
    Turned,
    /// Its copies have gaps that must be equal.
    Gaps,
    /// A border all round that is too wide to be seen as even: the narrowest side.
    Border(i64),
}

/// A border wider than this is not seen as even by eye: 1/2 in, 12 mm. Common practice, no source.
const fn widest(units: Units) -> Length {
    Length::either(units, Length::inch(1, 2), Length::mm(12))
}

/// Whether a layer is hard to lay by eye, whatever frame there may be.
#[must_use]
pub fn hard(design: &Design, layout: &Layout, layer: LayerId) -> Option<Hard> {
    let own = design.layer(layer);
    if own.trim_flush.is_some() || !own.ring.is_empty() {
        return None;
    }
    let placed = layout.placed(layer);
    let narrowest = Edge::ALL.map(|edge| placed.shows(edge)).into_iter().min().unwrap_or(0);
    match own.arrangement {
        _ if own.tilt.is_some() => Some(Hard::Turned),
        Arrangement::Fan { count, .. } if count > 1 => Some(Hard::Turned),
        Arrangement::Single | Arrangement::Fan { .. } | Arrangement::Pinwheel { .. } => {
            (own.mirrored.is_none() && narrowest > widest(design.units).nm()).then_some(Hard::Border(narrowest))
        }
        Arrangement::Steps { .. } | Arrangement::Triangle { .. } => (own.count() > 2).then_some(Hard::Gaps),
        arrangement => {
            let (across, down) = arrangement.gaps(design.units);
            (own.count() > 1 && (across.nm() > 0 || down.nm() > 0)).then_some(Hard::Gaps)
        }
    }
}

/// The frame that lays some layers on the nearest thing below all of them that it can lie on.
///
/// # Errors
/// Why it cannot lie on what the first of them touches, where it can lie on nothing.
pub fn nearest(design: &Design, layout: &Layout, layers: &[LayerId]) -> Result<Frame, Unfit> {
    let below = layers.first().map_or_else(Vec::new, |first| grounds(design, *first));
    let shared = below.into_iter().filter(|on| layers.iter().all(|layer| grounds(design, *layer).contains(on)));
    let mut first = None;
    for on in shared {
        match frame(design, layout, layers, on) {
            Ok(frame) => return Ok(frame),
            Err(unfit) => first = first.or(Some(unfit)),
        }
    }
    Err(first.unwrap_or(Unfit::NotBelow(layers.first().copied().unwrap_or(LayerId(0)))))
}

/// A frame as it is asked for.
///
/// # Errors
/// Why there is none.
pub fn framed(design: &Design, layout: &Layout, asked: &Framed) -> Result<Frame, Unfit> {
    match asked.on {
        Some(on) => frame(design, layout, &asked.layers, on),
        None => nearest(design, layout, &asked.layers),
    }
}

/// The layers that are hard to lay by eye and have a frame that helps.
#[must_use]
pub fn helpful(design: &Design, layout: &Layout) -> Vec<(Frame, Hard)> {
    let helped = design.layer_ids().filter_map(|layer| {
        let hard = hard(design, layout, layer)?;
        Some((nearest(design, layout, &[layer]).ok()?, hard))
    });
    helped.collect()
}

/// Every frame that a design gets; one that cannot be cut is left out, which the rules say.
#[must_use]
pub fn frames(design: &Design, layout: &Layout) -> Vec<Frame> {
    match &design.frames {
        Frames::No => Vec::new(),
        Frames::ThatHelp(_) => helpful(design, layout).into_iter().map(|(frame, _)| frame).collect(),
        Frames::These(these) => these.iter().filter_map(|asked| framed(design, layout, asked).ok()).collect(),
    }
}

/// The frame that lays a layer, where the design gets one.
#[must_use]
pub fn frame_of(design: &Design, layout: &Layout, layer: LayerId) -> Option<Frame> {
    match &design.frames {
        Frames::No => None,
        Frames::ThatHelp(_) => {
            hard(design, layout, layer)?;
            nearest(design, layout, &[layer]).ok()
        }
        Frames::These(these) => {
            let asked = these.iter().find(|asked| asked.layers.contains(&layer))?;
            framed(design, layout, asked).ok()
        }
    }
}

/// What a frame of some layers can lie on instead, nearest first.
#[must_use]
pub fn grounds_that_fit(design: &Design, layout: &Layout, layers: &[LayerId]) -> Vec<Onto> {
    let below = layers.first().map_or_else(Vec::new, |first| grounds(design, *first));
    below.into_iter().filter(|on| frame(design, layout, layers, *on).is_ok()).collect()
}
