//! Pieces settled from a design's text: sizes by relation, and the outline of a drawing.

use crate::support::root;
use trimwright::design::model::PieceId;
use trimwright::drawing::figures::finish::finish;
use trimwright::drawing::scene::Scene;
use trimwright::files::Disk;
use trimwright::pipeline;
use trimwright::project::Project;
use trimwright::source::Source;

/// A card of 2 1/2 x 2 1/2 in with these pieces and this front; drawings stand with the demo designs.
fn settled(pieces: &str, front: &str) -> Project {
    let text = format!(
        "title: Paper Sizes\nmonth: 2026-11\ncards: 1\nunits: inch\ncard: {{size: 2 1/2 x 2 1/2 in, fold: side, from: white}}\n\
         papers:\n  white: {{sheets: 1 of letter}}\n  dusk: {{sheets: 2 of letter, pattern: one-way}}\n  \
         ember: {{sheets: 2 of letter}}\n  slate: {{sheets: 2 of letter}}\npieces:\n{pieces}front:\n{front}"
    );
    let path = root().join("designs").join("design.yaml");
    let outcome = pipeline::run(&pipeline::with_drawings(Source::new("design.yaml", &text), &Disk, &path), "design");
    assert!(!outcome.has_errors(), "{:#?}", outcome.findings);
    outcome.editions.into_iter().next().expect("an edition")
}

/// Something in the middle of the card, and layers on it.
fn on_panel(pieces: &str, layers: &[&str]) -> Project {
    let mut front = "  - {place: panel, centre: both ways, glue: tape}\n".to_owned();
    for layer in layers {
        front.push_str(&format!("  - {{onto: panel, {layer}, glue: tape}}\n"));
    }
    settled(pieces, &front)
}

fn fir() -> Project {
    on_panel(
        "  panel: {size: 2 1/4 x 2 1/8 in, from: ember}\n  fir: {size: {width: 1 1/4 in}, from: dusk, shape: {outline: fir.svg}}\n",
        &["place: fir, centre: both ways"],
    )
}

/// Name and project of every picture of a front.
pub(crate) fn fronts() -> Vec<(&'static str, Project)> {
    vec![
        ("shape-drawn", fir()),
        (
            "size-all-round",
            on_panel(
                "  panel: {size: card less 1/4 in all round, from: slate}\n  mat: {size: panel less 1/8 in all round, from: dusk}\n",
                &["place: mat, centre: both ways"],
            ),
        ),
        (
            "size-by-edge",
            settled(
                "  panel:\n    size: card less left 1/4 in, top 1/2 in, right 1/8 in and bottom 1/4 in\n    from: dusk\n",
                "  - {place: panel, left: 1/4 in, top: 1/2 in, glue: tape}\n",
            ),
        ),
        (
            "size-rest",
            on_panel(
                "  panel: {size: 2 x 2 in, from: slate}\n  post: {size: {width: 1/2 in, height: as high as panel}, from: ember}\n  \
                 field:\n    size:\n      width: rest of panel after post with gap 1/8 in\n      height: as high as panel\n    \
                 from: dusk\n",
                &["place: post, left: 0 in, bottom: 0 in", "place: field, right: 0 in, bottom: 0 in"],
            ),
        ),
        (
            "size-share",
            on_panel(
                "  panel: {size: 2 3/8 x 2 in, from: slate}\n  slat:\n    size:\n      \
                 width: share of panel, 4 evenly with gap 1/8 in\n      height: 1 1/2 in\n    from: dusk\n",
                &["place: slat, left: 0 in, centre: up and down, row: {count: 4, gap: 1/8 in}"],
            ),
        ),
        (
            "size-as-wide-as",
            on_panel(
                "  panel: {size: 2 1/4 x 2 1/8 in, from: slate}\n  band: {size: 1 1/2 x 1/2 in, from: ember}\n  \
                 tag: {size: {width: as wide as band, height: as wide as band less 1/2 in}, from: dusk}\n",
                &["place: tag, centre: across, bottom: 1/4 in", "place: band, centre: across, above: tag, gap: 1/8 in"],
            ),
        ),
        (
            "size-half-of",
            on_panel(
                "  panel: {size: 2 1/4 x 2 in, from: slate}\n  corner: {size: {width: half of panel, height: half of panel}, from: dusk}\n",
                &["place: corner, left: 0 in, bottom: 0 in"],
            ),
        ),
    ]
}

/// What a hand cuts along the outline of a drawing.
pub(crate) fn followed() -> Scene {
    finish(&fir(), PieceId(2)).expect("something to finish")
}
