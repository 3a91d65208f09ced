//! Reports: how findings are shown, and that every rule's page tells the truth.

mod cases;
mod laws;
mod outlines;
mod pages;
mod papers;
mod readback;
mod registry;
mod shown;
