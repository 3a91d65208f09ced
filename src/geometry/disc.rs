//! Whether an area is anywhere thick enough to count.

use super::Region;
use super::overlay::Contours;
use i_overlay::i_float::int::angle::Angle;
use i_overlay::mesh::int::arc::ArcOptions;
use i_overlay::mesh::int::outline::offset::IntOutlineOffset;
use i_overlay::mesh::int::style::{IntLineJoin, IntOutlineStyle};

/// The engine shrinks by whole units; it works in 64ths of a nanometre here, so that the answer turns at
/// the stated diameter to well under a nanometre. Coordinates stay below 2^45.
const FINER: i64 = 64;

impl Region {
    /// Whether a disc of `diameter` nanometres (more than nothing) fits into some part of it.
    ///
    /// What is thinner is a sliver that rounding, or a knife, leaves.
    #[must_use]
    pub fn holds_disc(&self, diameter: i64) -> bool {
        self.parts().iter().any(|part| {
            let bounds = part.bounds();
            if bounds.width().min(bounds.height()) < diameter {
                return false;
            }
            // No point of an area lies farther than r from its edge only if area <= r * length of the edge.
            let length: i128 = part
                .rings()
                .flat_map(super::ring::edges)
                .map(|(a, b)| i128::from((b.x - a.x).abs()) + i128::from((b.y - a.y).abs()))
                .sum();
            part.area2() > i128::from(diameter) * length || shrunk_is_left(&Self::from(part), diameter)
        })
    }
}

/// Whether anything is left of an area when half of `diameter` is taken off all round.
fn shrunk_is_left(region: &Region, diameter: i64) -> bool {
    let mut contours: Contours = region.contours();
    for point in contours.iter_mut().flatten() {
        point.x *= FINER;
        point.y *= FINER;
    }
    let round = ArcOptions { max_step: Angle::from_bits(u32::MAX / 64), rotation_precision: 32 };
    let style = IntOutlineStyle::new(-diameter * FINER / 2).line_join(IntLineJoin::Round(round));
    contours.outline(&style).is_ok_and(|left| !left.is_empty())
}
