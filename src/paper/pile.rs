//! How high things stand over each other: areas of the closed card, each with what is piled up there.

use crate::design::model::LayerId;
use crate::geometry::Region;

/// One thing that is laid.
pub(super) struct Raised {
    pub(super) layer: LayerId,
    /// Of foam, as often as it stands on foam itself: once or not at all.
    pub(super) foams: u32,
    /// Of foam and of a decoration, nanometres.
    pub(super) height: i64,
    /// Of paper, nanometres.
    pub(super) paper: i64,
    pub(super) region: Region,
}

/// A part of the card where everything stands equally high; no two parts share any of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Level {
    /// Of foam and decorations, nanometres.
    pub height: i64,
    /// Of paper, nanometres.
    pub paper: i64,
    /// How often there is foam.
    pub foams: u32,
    /// What is piled up in some part of it, the first laid first.
    pub layers: Vec<LayerId>,
    /// Where.
    pub region: Region,
}

impl Level {
    /// How high all of it stands, nanometres.
    #[must_use]
    pub const fn thick(&self) -> i64 {
        self.height.saturating_add(self.paper)
    }

    fn same(&self, other: &Self) -> bool {
        (self.height, self.paper, self.foams) == (other.height, other.paper, other.foams)
    }
}

/// The most levels that are told apart, and the most corners that are looked at: a card of paper comes near
/// neither.
const MOST_LEVELS: usize = 256;
const MOST_CORNERS: usize = 2_000_000;

/// Piles things up; and whether all of them were.
pub(super) fn piled(all: &[Raised]) -> (Vec<Level>, bool) {
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
            higher.push(Level {
                height: level.height.saturating_add(raised.height),
                paper: level.paper.saturating_add(raised.paper),
                foams: level.foams + raised.foams,
                layers: level.layers.iter().copied().chain([raised.layer]).collect(),
                region: common,
            });
        }
        let Raised { layer, foams, height, paper, .. } = *raised;
        higher.push(Level { height, paper, foams, layers: vec![layer], region: alone });
        for new in higher {
            match levels.iter_mut().find(|level| level.same(&new)) {
                Some(level) => level.region = level.region.union(&new.region),
                None => levels.push(new),
            }
        }
        levels.retain(|level| !level.region.is_empty());
        if levels.len() > MOST_LEVELS || seen > MOST_CORNERS {
            return (levels, false);
        }
    }
    (levels, true)
}

fn meet(one: &Region, other: &Region) -> bool {
    one.bounds().zip(other.bounds()).is_some_and(|(one, other)| one.overlap(other).is_some())
}

fn corners(region: &Region) -> usize {
    region.parts().iter().flat_map(|part| part.rings()).map(<[_]>::len).sum()
}
