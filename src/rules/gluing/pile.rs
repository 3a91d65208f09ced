//! How high things stand over each other: areas of the closed card, each with what is piled up there.

use crate::design::model::LayerId;
use crate::geometry::Region;

/// One thing that stands off.
pub(super) struct Raised {
    pub(super) layer: LayerId,
    /// Of foam, as often as it stands on foam itself: once or not at all.
    pub(super) foams: u32,
    /// Of foam and of its own, nanometres.
    pub(super) height: i64,
    pub(super) region: Region,
}

/// A part of the card where everything stands equally high; no two parts share any of it.
pub(super) struct Level {
    pub(super) height: i64,
    pub(super) foams: u32,
    /// What is piled up in some part of it, the first laid first.
    pub(super) layers: Vec<LayerId>,
    pub(super) region: Region,
}

/// The most levels that are told apart, and the most corners that are looked at: a card of paper comes near
/// neither.
const MOST_LEVELS: usize = 256;
const MOST_CORNERS: usize = 4_000_000;

/// Piles things up.
pub(super) fn piled(all: &[Raised]) -> Vec<Level> {
    let mut levels: Vec<Level> = Vec::new();
    let mut seen = 0_usize;
    for raised in all {
        let mut alone = raised.region.clone();
        let mut higher: Vec<Level> = Vec::new();
        for level in &mut levels {
            if !meet(&level.region, &raised.region) {
                continue;
            }
            seen = seen.saturating_add(corners(&level.region)).saturating_add(corners(&raised.region));
            let common = level.region.intersection(&raised.region);
            if common.is_empty() {
                continue;
            }
            alone = alone.difference(&level.region);
            level.region = level.region.difference(&raised.region);
            let layers = level.layers.iter().copied().chain([raised.layer]).collect();
            let (height, foams) = (level.height + raised.height, level.foams + raised.foams);
            higher.push(Level { height, foams, layers, region: common });
        }
        higher.push(Level { height: raised.height, foams: raised.foams, layers: vec![raised.layer], region: alone });
        for new in higher {
            match levels.iter_mut().find(|level| (level.height, level.foams) == (new.height, new.foams)) {
                Some(level) => level.region = level.region.union(&new.region),
                None => levels.push(new),
            }
        }
        levels.retain(|level| !level.region.is_empty());
        if levels.len() > MOST_LEVELS || seen > MOST_CORNERS {
            break;
        }
    }
    levels
}

fn meet(one: &Region, other: &Region) -> bool {
    one.bounds().zip(other.bounds()).is_some_and(|(one, other)| one.overlap(other).is_some())
}

fn corners(region: &Region) -> usize {
    region.parts().iter().flat_map(|part| part.rings()).map(<[_]>::len).sum()
}
