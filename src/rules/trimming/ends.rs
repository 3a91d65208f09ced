//! The ends of a layer that is trimmed flush.

use super::slanted;
use crate::design::model::{LayerId, Onto};
use crate::geometry::{Edge, Rect};
use crate::project::Project;
use crate::rules::hand;
use crate::rules::tell::Axis;

/// A layer with the rectangle it is trimmed level with.
pub(super) struct Trimmed {
    pub(super) onto: Onto,
    pub(super) target: Rect,
    pub(super) block: Rect,
}

/// The layer as it is trimmed, where it is, and lies straight to a rectangle.
pub(super) fn trimmed(project: &Project, id: LayerId) -> Option<Trimmed> {
    let layer = project.design.layer(id);
    let onto = layer.trim_flush.as_ref()?.value;
    if slanted::lies_aslant(project, id, onto) {
        return None;
    }
    Some(Trimmed { onto, target: project.layout.rect(layer.face, onto), block: project.layout.placed(id).block })
}

/// Every layer that is trimmed flush and lies on what it is trimmed to; one wholly beside it is another
/// mistake, with a rule of its own.
pub(super) fn each_trimmed(project: &Project) -> impl Iterator<Item = (LayerId, Trimmed)> + '_ {
    project.design.layer_ids().filter_map(|id| {
        let trimmed = trimmed(project, id)?;
        trimmed.target.overlap(trimmed.block)?;
        Some((id, trimmed))
    })
}

/// The least that an end to trim may be: what a hand needs, and no less than what a layer laid aside and cut
/// short may lack. `aslant` is how much of a step straight toward the edge it takes along the layer, as a
/// fraction of two lengths; one where the two meet squarely.
pub(super) fn least(project: &Project, aslant: (i64, i64)) -> i64 {
    let workshop = &project.design.workshop;
    let (along, square) = (i128::from(aslant.0), i128::from(aslant.1.max(1)));
    let aside = (i128::from(workshop.placing_error.nm()) * along + square - 1) / square;
    let aside = i64::try_from(aside).unwrap_or(i64::MAX / 2);
    hand::least(project.units()).nm().max(aside.saturating_add(workshop.cutting_error.nm()))
}

impl Trimmed {
    /// How much there is to trim at an edge; negative where the layer ends short of it.
    pub(super) const fn over(&self, edge: Edge) -> i64 {
        -self.target.border(self.block, edge)
    }

    /// The two ends of an axis along which something is trimmed.
    pub(super) fn axes(&self) -> impl Iterator<Item = Axis> + '_ {
        Axis::BOTH.into_iter().filter(|axis| self.over(axis.low()) > 0 || self.over(axis.high()) > 0)
    }
}
