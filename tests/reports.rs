//! Reports: how findings are shown, and that every rule's page tells the truth.

// wired with the pipeline: pages
mod registry;
mod shown;
