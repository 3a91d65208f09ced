//! Designs at random that are sound by construction: no error and no warning may be said of one.
//!
//! They hold the usual things of the trade in usual sizes: mats in each other, rows and grids with gaps, strips cut
//! too long and trimmed, rings, windows, labels, shapes; cards that fold in every way, versions that swap papers,
//! both systems of units and pairs. Everything is reckoned in both systems at once, and each piece has sheets of
//! its own, so that what is found is a fault of a rule or of the generator.

mod bands;
mod stock;
mod write;

/// The text of the design of a seed.
pub(crate) fn design(seed: u64) -> String {
    write::Sheet::new(seed).text()
}
