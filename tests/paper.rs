//! The card as a thing of paper, against published tables and sums by hand.

mod envelopes;
mod grain;
mod post;
mod thick;
mod weights;
