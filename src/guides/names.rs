//! What guides call things.

use crate::design::model::{Design, Face, Fold, Onto};
use crate::geometry::Rect;
use crate::length::{Length, Size};
use crate::words::places;

/// What a frame lies on, by name.
pub(super) fn ground(design: &Design, face: Face, on: Onto) -> String {
    match on {
        Onto::Layer(layer) => design.layer(layer).name.clone(),
        Onto::Card if face == Face::Front => places::card(design.words()),
        Onto::Card => {
            let fold = design.card.as_ref().map_or(Fold::None, |card| card.fold);
            places::side(design.words(), face.side(fold))
        }
    }
}

/// `4 x 5 1/4 in`.
pub(super) fn size(design: &Design, rect: Rect) -> String {
    let of = |nm: i64| Length::of(nm, design.units);
    Size::new(of(rect.width()), of(rect.height())).to_string()
}

/// A word fit for a file name: `frame-upper-beds`.
pub(super) fn slug(kind: &str, names: &[String]) -> String {
    let mut word = kind.to_owned();
    for part in names.iter().flat_map(|name| name.split(|sign: char| !sign.is_ascii_alphanumeric())) {
        if !part.is_empty() {
            word.push('-');
            word.push_str(&part.to_ascii_lowercase());
        }
    }
    word
}
