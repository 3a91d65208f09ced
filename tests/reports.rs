//! Reports: how findings are shown, and that every rule's page tells the truth.

mod cases;
mod pages;
mod papers;
mod readback;
mod registry;
mod shown;
