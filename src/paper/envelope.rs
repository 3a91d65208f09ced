//! Which envelope takes a card.
//!
//! Clearances are common practice, no source: 1/8 in in all is the least for a flat card, 1/4 in for one
//! that is over 1/8 in thick. Published charts of the announcement sizes leave 1/4 in both ways.

use crate::design::envelopes::{Family, NAMED_ENVELOPES, NamedEnvelope, envelope_of};
use crate::design::model::Design;
use crate::length::{Length, Size, Units};
use crate::source::Span;

/// How much larger an envelope is at the least than a flat card, each way: 1/8 in, 3 mm in all.
#[must_use]
pub const fn flat_clearance(units: Units) -> Length {
    Length::either(units, Length::inch(1, 8), Length::mm(3))
}

/// The same for a thick card: 1/4 in, 6 mm.
#[must_use]
pub const fn thick_clearance(units: Units) -> Length {
    Length::either(units, Length::inch(1, 4), Length::mm(6))
}

/// A card is thick when it is over 1/8 in or 3 mm.
#[must_use]
pub const fn is_thick(units: Units, thickness: i64) -> bool {
    thickness > Length::either(units, Length::inch(1, 8), Length::mm(3)).nm()
}

/// How much larger the envelope of a card so thick is, each way.
#[must_use]
pub const fn clearance(units: Units, thickness: i64) -> Length {
    if is_thick(units, thickness) { thick_clearance(units) } else { flat_clearance(units) }
}

/// A card slides about in an envelope that is larger by more than this: 1 1/2 in, 40 mm.
const fn loose(units: Units) -> Length {
    Length::either(units, Length::inch(3, 2), Length::mm(40))
}

/// The longer side and the shorter one, nanometres.
#[must_use]
pub const fn sides(size: Size) -> (i64, i64) {
    let (width, height) = (size.width.nm(), size.height.nm());
    if width > height { (width, height) } else { (height, width) }
}

/// Whether an envelope takes a card with a clearance; the card may lie either way.
#[must_use]
pub const fn takes(envelope: Size, card: Size, clearance: Length) -> bool {
    let ((long, short), (card_long, card_short)) = (sides(envelope), sides(card));
    long - card_long >= clearance.nm() && short - card_short >= clearance.nm()
}

fn family(units: Units) -> impl Iterator<Item = NamedEnvelope> {
    NAMED_ENVELOPES.into_iter().filter(move |named| named.family == Family::of(units))
}

/// The smallest named envelope of an edition's own family that takes a card so thick and in which it does
/// not slide about.
#[must_use]
pub fn smallest(card: Size, thickness: i64, units: Units) -> Option<NamedEnvelope> {
    let (card_long, card_short) = sides(card);
    let is_snug = |size: Size| {
        let (long, short) = sides(size);
        long - card_long <= loose(units).nm() && short - card_short <= loose(units).nm()
    };
    family(units)
        .filter(|named| takes(named.size, card, clearance(units, thickness)) && is_snug(named.size))
        .min_by_key(|named| i128::from(named.size.width.nm()) * i128::from(named.size.height.nm()))
}

/// The card size nearest to this one that a named envelope takes, and that envelope.
#[must_use]
pub fn nearest_card(card: Size, thickness: i64, units: Units) -> Option<(Size, NamedEnvelope)> {
    let (card_long, card_short) = sides(card);
    let (least, most) = (clearance(units, thickness).nm(), loose(units).nm());
    let fitted = family(units).map(|named| {
        let (long, short) = sides(named.size);
        let (new_long, new_short) =
            (card_long.clamp(long - most, long - least), card_short.clamp(short - most, short - least));
        let change = (new_long - card_long).abs() + (new_short - card_short).abs();
        let lies = card.width > card.height;
        let (width, height) = if lies { (new_long, new_short) } else { (new_short, new_long) };
        (change, Size::new(Length::of(width, units), Length::of(height, units)), named)
    });
    fitted.min_by_key(|(change, ..)| *change).map(|(_, size, named)| (size, named))
}

/// The envelope of a design.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Chosen {
    /// Its size, as the address is written.
    pub size: Size,
    /// Its name, if it has one.
    pub named: Option<NamedEnvelope>,
    /// Where the design states it; otherwise it is the smallest that takes the card.
    pub stated: Option<Span>,
}

/// The envelope that the design states, else the smallest named one that takes its card.
#[must_use]
pub fn chosen(design: &Design, thickness: i64) -> Option<Chosen> {
    let card = design.card.as_ref()?;
    if let Some(envelope) = &design.envelope {
        let named = envelope_of(envelope.size);
        return Some(Chosen { size: envelope.size, named, stated: Some(envelope.span) });
    }
    let named = smallest(card.size, thickness, design.units)?;
    Some(Chosen { size: named.size, named: Some(named), stated: None })
}
