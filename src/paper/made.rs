//! The finished card: how thick it is and what it weighs.
//!
//! Foam is counted thin, so that a card that is too thick by it is too thick with any. Where versions take
//! different papers the thickest and the heaviest of them count. Weight is that of the paper alone: glue,
//! foam and decorations are not weighed.

use super::closed::closed;
use super::foam::thin_foam;
use super::mass::Mass;
use super::pile::{Level, Raised, piled};
use super::stock::{envelope_paper, stock};
use crate::design::model::{Card, Design, Face, Fold, Glue, Layer, LayerId, PieceKind, VersionId};
use crate::geometry::{Region, TOLERANCE};
use crate::layout::model::Layout;
use crate::length::{Length, Size};
use crate::weight::Grammage;

/// A finished card.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Made {
    /// The panels of the base over each other, nanometres.
    pub base: i64,
    /// What stands on and in the base, the thickest first; slivers are left out.
    pub levels: Vec<Level>,
    /// Whether everything was piled up; a card that is past all measure is at least so thick.
    pub whole: bool,
    /// What is glued on the envelope, where it is thickest on each side, nanometres.
    pub on_the_envelope: i64,
    /// The card without an envelope.
    pub card: Mass,
    /// What is glued on the envelope.
    pub laid_on_the_envelope: Mass,
    /// Whether foam or a decoration of some thickness makes it uneven.
    pub is_uneven: bool,
    /// Whether something is on it that is not weighed: foam or a decoration.
    pub has_unweighed: bool,
    /// Whether a paper of it has neither weight nor thickness and was taken for a usual one.
    pub is_assumed: bool,
}

impl Made {
    /// How thick the card is where it is thickest, nanometres.
    #[must_use]
    pub fn thickness(&self) -> i64 {
        self.base.saturating_add(self.levels.first().map_or(0, Level::thick))
    }

    /// How thick it is in its envelope, nanometres.
    #[must_use]
    pub fn posted_thickness(&self) -> i64 {
        self.around(self.thickness())
    }

    /// How thick a part of it is in its envelope, nanometres.
    #[must_use]
    pub fn thick_at(&self, level: &Level) -> i64 {
        self.around(self.base.saturating_add(level.thick()))
    }

    fn around(&self, card: i64) -> i64 {
        card.saturating_add(envelope_paper().thickness * 2).saturating_add(self.on_the_envelope)
    }

    /// What it weighs in an envelope of this size.
    #[must_use]
    pub fn posted(&self, envelope: Size) -> Mass {
        self.card.plus(self.laid_on_the_envelope).plus(envelope_mass(envelope))
    }
}

/// Of the front and back of an envelope, seams and flap add so many hundredths. An assumption: common
/// practice, no source.
const SEAMS: i128 = 15;

/// What an envelope of a size weighs.
fn envelope_mass(size: Size) -> Mass {
    let front = i128::from(size.width.nm()) * i128::from(size.height.nm());
    Mass::of(front * 4 * (100 + SEAMS) / 100, envelope_paper().grammage)
}

/// Copies of one layer are looked at one by one where they are no more than this.
const FEW: u32 = 60;

/// The finished card of a design; none in a file for `cuts`.
#[must_use]
pub fn made(design: &Design, layout: &Layout) -> Option<Made> {
    let card = design.card.as_ref()?;
    let base = stock(design, card.from);
    let mut parts = Parts { design, layout, assumed: base.assumed };
    let all: Vec<Raised> = design.layer_ids().flat_map(|id| parts.raised(id)).collect();
    let (on_envelope, on_card): (Vec<_>, Vec<_>) =
        all.into_iter().partition(|raised| is_of_envelope(design.layer(raised.layer).face));
    let on_card = on_card.into_iter().map(|raised| lying(design, card, raised)).collect::<Vec<_>>();
    let (mut levels, whole) = piled(&on_card);
    levels.retain(|level| level.region.holds_disc(TOLERANCE));
    levels.sort_by_key(|level| std::cmp::Reverse(level.thick()));
    let side = |face: Face| {
        let (here, _) = piled_of(design, &on_envelope, face);
        here.iter().map(Level::thick).max().unwrap_or(0)
    };
    let on_the_envelope = side(Face::EnvelopeFront).saturating_add(side(Face::EnvelopeFlap));
    let is_raised = |id: LayerId| foams(design.layer(id)) > 0 || thick(design, id).is_some();
    let is_unweighed = |id: LayerId| is_raised(id) || is_decoration(design, id);
    Some(Made {
        base: base.thickness.saturating_mul(panels(card.fold)),
        levels,
        whole,
        on_the_envelope,
        card: parts.mass(card, base.grammage),
        laid_on_the_envelope: parts.heaviest(true),
        is_uneven: design.layer_ids().any(is_raised),
        has_unweighed: design.layer_ids().any(is_unweighed),
        is_assumed: parts.assumed,
    })
}

const fn is_of_envelope(face: Face) -> bool {
    matches!(face, Face::EnvelopeFront | Face::EnvelopeFlap)
}

/// How many panels of the base lie over each other when it is folded.
fn panels(fold: Fold) -> i64 {
    match fold {
        Fold::None => 1,
        // The two flaps of a gate lie side by side.
        Fold::Side | Fold::Top | Fold::Gate => 2,
        Fold::Accordion { panels } => i64::from(panels),
    }
}

/// Where something lies on the closed card.
fn lying(design: &Design, card: &Card, raised: Raised) -> Raised {
    let region = closed(card, design.layer(raised.layer).face, &raised.region);
    Raised { region, ..raised }
}

/// What is piled up on one side of the envelope.
fn piled_of(design: &Design, all: &[Raised], face: Face) -> (Vec<Level>, bool) {
    let own = all.iter().filter(|raised| design.layer(raised.layer).face == face);
    let own = own.map(|raised| Raised { region: raised.region.clone(), ..*raised });
    piled(&own.collect::<Vec<_>>())
}

/// How often a layer stands on foam itself: once or not at all.
pub(crate) fn foams(layer: &Layer) -> u32 {
    u32::from(layer.glue.is_some_and(|glue| glue.value == Glue::Foam))
}

/// How far a decoration stands off, where it is said.
pub(crate) fn thick(design: &Design, id: LayerId) -> Option<Length> {
    match design.piece(design.layer(id).piece).kind {
        PieceKind::Decoration { thick, .. } => thick.filter(|thick| !thick.is_zero()),
        PieceKind::Base | PieceKind::Plain | PieceKind::Kept { .. } => None,
    }
}

fn is_decoration(design: &Design, id: LayerId) -> bool {
    matches!(design.piece(design.layer(id).piece).kind, PieceKind::Decoration { .. })
}

/// What is laid on the card and its envelope.
struct Parts<'a> {
    design: &'a Design,
    layout: &'a Layout,
    /// Whether some paper was taken for a usual one.
    assumed: bool,
}

impl Parts<'_> {
    /// A layer in the coordinates of its face; its copies one by one where they lie over each other.
    fn raised(&mut self, id: LayerId) -> Vec<Raised> {
        let layer = self.design.layer(id);
        let foam = thin_foam(self.design.units).nm() * i64::from(foams(layer));
        let height = foam + thick(self.design, id).map_or(0, Length::nm);
        let stocks: Vec<_> = self
            .design
            .version_ids()
            .filter_map(|version| self.design.paper_of(layer.piece, version))
            .map(|paper| stock(self.design, paper))
            .collect();
        let paper = stocks.iter().map(|stock| stock.thickness).max().unwrap_or(0);
        self.assumed |= stocks.iter().any(|stock| stock.assumed);
        if height == 0 && paper == 0 {
            return Vec::new();
        }
        let placed = self.layout.placed(id);
        let whole = placed.shown();
        let apart: i128 = placed.laid.iter().map(|laid| laid.shown.area2()).sum();
        // Copies that lie over each other, as in a fan, stand on each other.
        let regions: Vec<Region> = if layer.count() <= FEW && apart > whole.area2() {
            placed.laid.iter().map(|laid| laid.shown.clone()).collect()
        } else {
            vec![whole]
        };
        let regions = regions.into_iter().filter(|region| !region.is_empty());
        regions.map(|region| Raised { layer: id, foams: foams(layer), height, paper, region }).collect()
    }

    /// The heaviest version of the card.
    fn mass(&self, card: &Card, grammage: Grammage) -> Mass {
        let flat = card.fold.flat(card.size);
        let base = Mass::of(i128::from(flat.width.nm()) * i128::from(flat.height.nm()) * 2, grammage);
        base.plus(self.heaviest(false))
    }

    /// What all layers weigh that lie on the envelope, or on the card, in the heaviest version.
    fn heaviest(&self, envelope: bool) -> Mass {
        self.design.version_ids().map(|version| self.of_version(version, envelope)).max().unwrap_or_default()
    }

    fn of_version(&self, version: VersionId, envelope: bool) -> Mass {
        let ids = self.design.layer_ids().filter(|id| is_of_envelope(self.design.layer(*id).face) == envelope);
        ids.fold(Mass::default(), |all, id| {
            let Some(paper) = self.design.paper_of(self.design.layer(id).piece, version) else { return all };
            let laid = &self.layout.placed(id).laid;
            let area2 = laid.iter().fold(0_i128, |all, laid| all.saturating_add(laid.shown.area2()));
            all.plus(Mass::of(area2, stock(self.design, paper).grammage))
        })
    }
}
