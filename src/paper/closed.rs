//! Where things lie on the closed card, as seen from its front.

use crate::design::model::{Card, Face, Fold};
use crate::geometry::{Mirror, Rect, Region};

/// An area of a face where it lies when the card is closed, in the coordinates of the front; nothing for the
/// envelope.
pub(super) fn closed(card: &Card, face: Face, region: &Region) -> Region {
    let front = Rect::of(card.size);
    match face {
        Face::Front => region.clone(),
        // The card is turned over like a page.
        Face::Back => region.mirrored(Mirror::LeftToRight, front),
        Face::Inside(Some(panel)) => folded(card, panel, region),
        Face::Inside(None) => {
            card.fold.panels(card.size).into_iter().zip(0..).fold(Region::empty(), |all, (rect, panel)| {
                let own = region.intersection(&Region::from(rect)).moved(-rect.left, -rect.bottom);
                all.union(&folded(card, panel, &own))
            })
        }
        Face::EnvelopeFront | Face::EnvelopeFlap => Region::empty(),
    }
}

/// An area of a panel of the inside, in the coordinates of that panel.
fn folded(card: &Card, panel: u32, region: &Region) -> Region {
    let front = Rect::of(card.size);
    let width = card.fold.panels(card.size).get(panel as usize).map_or(front.width(), |panel| panel.width());
    let own = Rect::at(0, 0, width, front.height());
    let over = |mirror| region.mirrored(mirror, own);
    match card.fold {
        Fold::None => region.clone(),
        // The back of what lies over it; the panel behind it lies as it is seen.
        Fold::Side | Fold::Accordion { .. } if panel.is_multiple_of(2) => over(Mirror::LeftToRight),
        Fold::Top if panel == 0 => over(Mirror::TopToBottom),
        Fold::Gate if panel == 0 => over(Mirror::LeftToRight),
        Fold::Gate if panel == 2 => over(Mirror::LeftToRight).moved(front.right - width, 0),
        Fold::Side | Fold::Accordion { .. } | Fold::Top | Fold::Gate => region.clone(),
    }
}
