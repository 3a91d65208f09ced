//! What the sheets give at most, what other sheets would give, and how sizes change it.

mod most;
mod others;
mod paper;
mod sizes;
