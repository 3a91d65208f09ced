//! One sheet to cut: what the search works on. Knows nothing of designs, papers or versions, so a
//! caller of the library can put any instance to it, with the rules of the hand or without.

/// A kind of rectangle that is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Kind {
    /// Width as it is wanted, in the problem's own unit.
    pub width: i64,
    /// Height as it is wanted.
    pub height: i64,
    /// Whether it may also lie on its side (a half turn is the same rectangle).
    pub quarter: bool,
    /// How many are wanted.
    pub wanted: u32,
}

/// What a hand at a trimmer can do (common practice of the trade, no source).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Hand {
    /// No measure is under this: 1/8 in or 3 mm.
    pub least: i64,
    /// A slice under this is narrow: 1/2 in or 12 mm.
    pub narrow: i64,
    /// A cut that frees a narrow slice leaves at least this on its other side, to hold the paper
    /// by: 1 in or 25 mm.
    pub hold: i64,
}

impl Hand {
    /// Whether a cut may part a length into these two.
    #[must_use]
    pub const fn allows(self, one: i64, other: i64) -> bool {
        let (small, large) = if one < other { (one, other) } else { (other, one) };
        (small >= self.narrow || large >= self.hold) && large >= self.least
    }

    /// How many slices of one length come off a length one after another, what remains included
    /// where it is just another slice: 5 1/2 in gives 18 of 1/4 in, not 22.
    #[must_use]
    pub const fn slices(self, total: i64, slice: i64) -> i64 {
        let (mut count, mut left) = (0, total);
        while slice > 0 && left >= slice && (left == slice || self.allows(slice, left - slice)) {
            left -= slice;
            count += 1;
        }
        count
    }
}

/// One sheet, the kinds of rectangle wanted from it, and the rules.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Width of the sheet.
    pub width: i64,
    /// Height of the sheet.
    pub height: i64,
    /// What is wanted.
    pub kinds: Vec<Kind>,
    /// The rules of the hand; none for published instances, which know no such rule.
    pub hand: Option<Hand>,
}

impl Problem {
    /// The same problem in the largest unit in which every length is whole, and that unit. Small
    /// numbers keep areas far from overflow.
    #[must_use]
    pub fn in_largest_unit(&self) -> (Self, i64) {
        let mut unit = gcd(self.width, self.height);
        for kind in &self.kinds {
            unit = gcd(gcd(unit, kind.width), kind.height);
        }
        if let Some(hand) = self.hand {
            unit = gcd(gcd(gcd(unit, hand.least), hand.narrow), hand.hold);
        }
        let unit = unit.max(1);
        let kinds = self
            .kinds
            .iter()
            .map(|kind| Kind { width: kind.width / unit, height: kind.height / unit, ..*kind })
            .collect();
        let hand =
            self.hand.map(|hand| Hand { least: hand.least / unit, narrow: hand.narrow / unit, hold: hand.hold / unit });
        (Self { width: self.width / unit, height: self.height / unit, kinds, hand }, unit)
    }

    /// The area of the sheet.
    #[must_use]
    pub fn area(&self) -> i128 {
        i128::from(self.width) * i128::from(self.height)
    }

    /// The area of so many of each kind.
    #[must_use]
    pub fn area_of(&self, counts: &[u32]) -> i128 {
        self.kinds.iter().zip(counts).map(|(kind, &n)| kind.area() * i128::from(n)).sum()
    }

    /// Whether the rules of the hand can bind at all: every part of a cut holds a piece, so they
    /// cannot where every side of every piece is long enough to hold.
    #[must_use]
    pub fn hand_binds(&self) -> bool {
        self.hand.is_some_and(|hand| {
            let least = hand.hold.max(hand.least);
            self.kinds.iter().any(|kind| kind.wanted > 0 && kind.width.min(kind.height) < least)
        })
    }

    /// The same with the rules of the hand off.
    #[must_use]
    pub fn without_hand(&self) -> Self {
        Self { hand: None, ..self.clone() }
    }

    /// The same with other counts wanted.
    #[must_use]
    pub fn wanting(&self, counts: &[u32]) -> Self {
        let kinds = self.kinds.iter().zip(counts).map(|(kind, &wanted)| Kind { wanted, ..*kind }).collect();
        Self { kinds, ..self.clone() }
    }
}

impl Kind {
    /// Its area.
    #[must_use]
    pub fn area(&self) -> i128 {
        i128::from(self.width) * i128::from(self.height)
    }

    /// Width and height in each way it may lie: as wanted, then on its side.
    pub fn ways(&self) -> impl Iterator<Item = (i64, i64, bool)> + use<> {
        let lying = (self.quarter && self.width != self.height).then_some((self.height, self.width, true));
        std::iter::once((self.width, self.height, false)).chain(lying)
    }

    /// Whether it fits a sheet at all.
    #[must_use]
    pub fn fits(&self, width: i64, height: i64) -> bool {
        self.ways().any(|(w, h, _)| w <= width && h <= height)
    }
}

const fn gcd(mut a: i64, mut b: i64) -> i64 {
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a.abs()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hand_leaves_something_to_hold() {
        // In 1/16 in: 1/8 at least, under 1/2 is narrow, 1 in to hold.
        let hand = Hand { least: 2, narrow: 8, hold: 16 };
        assert_eq!(hand.slices(88, 4), 18, "5 1/2 in gives 18 slices of 1/4 in, not 22");
        assert_eq!(hand.slices(8, 4), 0, "1/2 in may not be split");
        assert_eq!(hand.slices(4, 4), 1, "what is a slice already needs no cut");
        assert_eq!(hand.slices(192, 16), 12, "12 in gives twelve of 1 in");
        assert_eq!(hand.slices(8, 16), 0);
        assert_eq!(hand.slices(8, 0), 0);
    }
}
