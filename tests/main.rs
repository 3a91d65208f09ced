//! All integration tests in one binary: linking the typesetter once is slow enough.

mod catalogue;
mod cutting;
mod drawing;
mod flow;
mod geometry;
mod guides;
mod handout;
mod house;
mod languages;
mod mends;
mod mutants;
mod other_ways;
mod paper;
mod placing;
mod printed;
mod random;
mod reading;
mod reports;
mod restated;
mod sample;
mod sound;
#[path = "sound/held.rs"]
mod sound_held;
mod support;
mod telling;
mod told;
mod truesize;
mod what_if;
mod whole;
mod words;
