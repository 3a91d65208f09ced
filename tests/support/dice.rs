//! Throws of dice that are the same on every machine: the generator splitmix64 (Steele, Lea and Flood 2014, its
//! constants from memory).

/// A source of throws.
#[derive(Debug, Clone)]
pub(crate) struct Dice(u64);

impl Dice {
    /// The throws of a seed.
    pub(crate) const fn new(seed: u64) -> Self {
        Self(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A number below `sides`; nothing else than 0 where there are none.
    pub(crate) fn of(&mut self, sides: usize) -> usize {
        let thrown = self.next() >> 33;
        usize::try_from(thrown).unwrap_or(0) % sides.max(1)
    }

    /// One of several.
    pub(crate) fn one<T: Copy>(&mut self, of: &[T]) -> T {
        of[self.of(of.len())]
    }

    /// Once in so many throws.
    pub(crate) fn chance(&mut self, sides: usize) -> bool {
        self.of(sides) == 0
    }
}
