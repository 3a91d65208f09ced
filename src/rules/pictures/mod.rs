//! Photos of the finished card.

pub mod coarse_photo;
