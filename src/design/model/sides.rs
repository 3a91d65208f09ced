//! What the sides of a card and its envelope are called.

use super::{Face, Fold};
use crate::words::places::Side;

impl Face {
    /// Its name, on a card that folds so.
    #[must_use]
    pub fn side(self, fold: Fold) -> Side {
        match self {
            Self::Front => Side::Front,
            Self::Back => Side::Back,
            Self::EnvelopeFront => Side::EnvelopeFront,
            Self::EnvelopeFlap => Side::EnvelopeFlap,
            Self::Inside(None) => Side::Inside,
            Self::Inside(Some(panel)) => {
                let of = |sides: &[Side]| sides.get(panel as usize).copied().unwrap_or(Side::Inside);
                match fold {
                    Fold::Side => of(&[Side::Left, Side::Right]),
                    Fold::Top => of(&[Side::Upper, Side::Lower]),
                    Fold::Gate => of(&[Side::Left, Side::Middle, Side::Right]),
                    Fold::Accordion { .. } => Side::Panel(panel.saturating_add(1)),
                    Fold::None => Side::Inside,
                }
            }
        }
    }
}
