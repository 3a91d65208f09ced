//! Counts of pieces packed side by side in one word: one lane a kind, its top bit kept free as a
//! guard, so that two vectors are added, clipped and compared without taking them apart.

/// How the lanes lie.
#[derive(Debug, Clone)]
pub struct Lanes {
    kinds: usize,
    bits: u32,
    guards: u128,
    caps: u128,
    whole: bool,
}

/// A packed vector of counts.
pub type Counts = u128;

impl Lanes {
    /// Lanes that count each kind up to what is wanted of it; none for more than 64 kinds.
    ///
    /// Where the word is too short for that, counts are capped lower and [`Self::whole`] says so:
    /// plans are still sound, but nothing is proven by finding none.
    #[must_use]
    pub fn new(wanted: &[u32]) -> Option<Self> {
        let kinds = wanted.len();
        if kinds == 0 || kinds > 64 {
            return None;
        }
        let most = wanted.iter().copied().max().unwrap_or(0);
        let needed = (u32::BITS - most.leading_zeros() + 1).max(2);
        let room = 128 / u32::try_from(kinds).unwrap_or(u32::MAX);
        let bits = needed.min(room);
        let cap = ((1_u64 << (bits - 1)) - 1).min(u64::from(u32::MAX));
        let mut lanes = Self { kinds, bits, guards: 0, caps: 0, whole: needed <= room };
        for (kind, &count) in wanted.iter().enumerate() {
            let shift = lanes.shift(kind);
            lanes.guards |= 1_u128 << (shift + bits - 1);
            lanes.caps |= u128::from(u64::from(count).min(cap)) << shift;
        }
        Some(lanes)
    }

    /// Whether every count can be held.
    #[must_use]
    pub const fn whole(&self) -> bool {
        self.whole
    }

    /// All that is wanted.
    #[must_use]
    pub const fn caps(&self) -> Counts {
        self.caps
    }

    const fn shift(&self, kind: usize) -> u32 {
        // There are at most 64 kinds.
        self.bits * kind as u32
    }

    /// One of a kind, or nothing where none is wanted.
    #[must_use]
    pub fn one(&self, kind: usize) -> Counts {
        if self.count(self.caps, kind) == 0 { 0 } else { 1_u128 << self.shift(kind) }
    }

    /// How many of a kind.
    #[must_use]
    #[inline]
    pub const fn count(&self, counts: Counts, kind: usize) -> u32 {
        // A lane is no wider than a count: the mask leaves nothing to be lost.
        ((counts >> self.shift(kind)) & ((1_u128 << (self.bits - 1)) - 1)) as u32
    }

    /// Packs counts, each capped at what is wanted.
    #[must_use]
    pub fn pack(&self, counts: &[u32]) -> Counts {
        let mut packed = 0;
        for (kind, &count) in counts.iter().enumerate().take(self.kinds) {
            packed |= u128::from(count.min(self.count(self.caps, kind))) << self.shift(kind);
        }
        packed
    }

    /// Takes counts apart.
    #[must_use]
    pub fn unpack(&self, counts: Counts) -> Vec<u32> {
        (0..self.kinds).map(|kind| self.count(counts, kind)).collect()
    }

    /// How many in all.
    #[must_use]
    pub fn total(&self, counts: Counts) -> u32 {
        (0..self.kinds).map(|kind| self.count(counts, kind)).sum()
    }

    /// Whether `large` holds at least as many of every kind as `small`.
    #[must_use]
    #[inline]
    pub const fn covers(&self, large: Counts, small: Counts) -> bool {
        ((large | self.guards) - small) & self.guards == self.guards
    }

    /// The lesser count of every kind.
    #[must_use]
    #[inline]
    pub const fn lesser(&self, one: Counts, other: Counts) -> Counts {
        // Guards stay up in the lanes where `one` is not under `other`.
        let up = ((one | self.guards) - other) & self.guards;
        let fill = up - (up >> (self.bits - 1));
        (other & fill) | (one & !fill & !self.guards)
    }

    /// The greater count of every kind.
    #[must_use]
    #[inline]
    pub const fn greater(&self, one: Counts, other: Counts) -> Counts {
        // A lane's sum less its lesser; no lane borrows, since the lesser is in the sum.
        one + (other - self.lesser(one, other))
    }

    /// What `one` has of every kind more than `other`; nothing where it has fewer.
    #[must_use]
    #[inline]
    pub const fn beyond(&self, one: Counts, other: Counts) -> Counts {
        one - self.lesser(one, other)
    }

    /// Of every kind the share of one of so many, rounded up.
    #[must_use]
    pub fn share(&self, counts: Counts, of: u32) -> Counts {
        let mut share = 0;
        for kind in 0..self.kinds {
            share |= u128::from(self.count(counts, kind).div_ceil(of)) << self.shift(kind);
        }
        share
    }

    /// The sum, clipped at what is wanted.
    #[must_use]
    #[inline]
    pub const fn sum(&self, one: Counts, other: Counts) -> Counts {
        one + self.lesser(other, self.caps - one)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lanes_count_as_lists_do() {
        let wanted = [3, 12, 1, 0, 7];
        let lanes = Lanes::new(&wanted).unwrap();
        assert!(lanes.whole());
        let (a, b) = ([1, 11, 0, 0, 7], [2, 5, 1, 0, 0]);
        let (pa, pb) = (lanes.pack(&a), lanes.pack(&b));
        assert_eq!(lanes.unpack(pa), a);
        assert_eq!(lanes.unpack(lanes.sum(pa, pb)), [3, 12, 1, 0, 7]);
        assert_eq!(lanes.unpack(lanes.lesser(pa, pb)), [1, 5, 0, 0, 0]);
        assert!(!lanes.covers(pa, pb) && !lanes.covers(pb, pa));
        assert!(lanes.covers(lanes.sum(pa, pb), pa) && lanes.covers(lanes.sum(pa, pb), pb));
        assert_eq!(lanes.unpack(lanes.greater(pa, pb)), [2, 11, 1, 0, 7]);
        assert_eq!(lanes.unpack(lanes.beyond(pa, pb)), [0, 6, 0, 0, 7]);
        assert_eq!(lanes.total(pa), 19);
        assert_eq!(lanes.one(3), 0);
        assert_eq!(lanes.unpack(lanes.share(pa, 2)), [1, 6, 0, 0, 4]);
    }

    #[test]
    fn a_full_word_still_counts() {
        let wanted = [3; 32];
        let lanes = Lanes::new(&wanted).unwrap();
        assert!(lanes.whole());
        let all = lanes.pack(&wanted);
        assert_eq!(lanes.unpack(lanes.sum(all, all)), wanted);
        assert!(!Lanes::new(&[9; 60]).unwrap().whole());
        assert!(Lanes::new(&[1; 65]).is_none());
    }
}
