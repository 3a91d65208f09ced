//! Reports: how findings are shown, and that every rule's page tells the truth.

mod allowed;
mod cases;
mod gluing;
mod greeting;
mod hands;
mod kite;
mod laws;
mod making;
mod outlines;
pub(crate) mod pages;
mod papers;
mod readback;
mod registry;
mod shown;
mod texts;
mod trimmer;
