//! True-size guides: what is cut, where it lies, what is asked for.

use std::path::Path;

use trimwright::design::model::Design;
use trimwright::layout::model::Layout;
use trimwright::layout::place::place;
use trimwright::pipeline;
use trimwright::source::Source;

use crate::support::{demos, source_at};

mod asked;
mod frames;
mod larger;
mod pages;
mod scores;

/// Designs of a text with their layouts, an edition each: nothing is planned.
fn laid(text: &str) -> Vec<(Design, Layout)> {
    of_source(&Source::new("design.yaml", text))
}

fn of_source(source: &Source) -> Vec<(Design, Layout)> {
    let settled = pipeline::settle(source, "design", None);
    assert!(!settled.designs.is_empty(), "{:#?}\n{}", settled.findings(), source.text());
    settled.designs.into_iter().map(|design| (design.clone(), place(&design))).collect()
}

/// Every demo, an edition each.
fn of_demos() -> Vec<(String, Design, Layout)> {
    let named = |path: &Path| path.file_stem().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let all = demos().into_iter().flat_map(|path| {
        let editions = of_source(&source_at(&path, "demo"));
        editions.into_iter().map(move |(design, layout)| (named(&path), design, layout))
    });
    all.collect()
}

/// A card with a mat on it, all sizes in millimetres, and layers on the mat.
fn card(size: &str, fold: &str, mat: &str, pieces: &str, layers: &str, frames: &str) -> String {
    format!(
        "title: Guides\nmonth: 2026-11\ncards: 1\nunits: metric\ncard: {{size: {size}, fold: {fold}, from: white}}\n\
         papers:\n  white: {{sheets: 9 of 600 x 600 mm}}\n  slate: {{sheets: 9 of 600 x 600 mm}}\npieces:\n  \
         mat: {{size: {mat}, from: slate}}\n{pieces}front:\n  - {{place: mat, centre: both ways, glue: tape}}\n{layers}{frames}"
    )
}
