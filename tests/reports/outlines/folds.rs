//! Decorations at edges and folds, what lies across an opening and over a fold.

use super::{codes, design, of};

/// A pearl of 1/8 in on a side of the card, 1/16 in thick where it says so.
fn pearl(fold: &str, thick: bool, list: &str, place: &str) -> String {
    let thick = if thick { ", thick: 1/16 in" } else { "" };
    let decoration = format!("decorations:\n  pearl: {{size: 1/8 x 1/8 in, form: round{thick}}}\n");
    let mat = "front:\n  - {place: mat, centre: across, top: 3/8 in, glue: tape}\n";
    let own = format!("  - {{place: pearl, {place}, glue: dot}}\n");
    let layers = if list == "front" { format!("{mat}{own}") } else { format!("{mat}{list}:\n{own}") };
    design(fold, "", "  mat: {size: 1 x 1 in, from: plain}\n", &format!("{decoration}{layers}"))
}

#[test]
fn decorations_keep_off_edges_and_folds() {
    let near = |text: &str| codes(text).contains(&"near-the-edge");
    assert!(!near(&pearl("side", false, "front", "right: 1/8 in, bottom: 1/8 in")));
    let text = pearl("side", false, "front", "right: 1/16 in, bottom: 1/8 in");
    let (label, help) = of(&text, "near-the-edge");
    assert_eq!((label.as_str(), help.as_str()), ("1/16 in from the right edge", "lay it 1/16 in further to the left"));
    // The card folds at the left: a thick one wants 1/8 and 1/16 there.
    assert!(!near(&pearl("side", false, "front", "left: 1/8 in, bottom: 1/8 in")));
    let (label, help) = of(&pearl("side", true, "front", "left: 1/8 in, bottom: 1/8 in"), "near-the-edge");
    assert_eq!(
        (label.as_str(), help.as_str()),
        ("1/8 in from the fold at the left", "lay it 1/16 in further to the right")
    );
    assert!(!near(&pearl("top", true, "front", "left: 1/8 in, bottom: 1/8 in")));
    assert!(near(&pearl("top", true, "front", "left: 1/8 in, top: 1/8 in")));
    // On the back the fold is at the other side.
    assert!(near(&pearl("side", true, "back", "right: 1/8 in, bottom: 1/8 in")));
    assert!(!near(&pearl("side", true, "back", "left: 1/8 in, bottom: 1/8 in")));
    // The whole inside is 8 1/2 in wide, its fold 4 1/4 from the left: a pearl to 4 3/16 lies 1/16 before it.
    let (label, help) = of(&pearl("side", false, "inside", "left: 4 1/16 in, bottom: 1 in"), "near-the-edge");
    assert_eq!((label.as_str(), help.as_str()), ("1/16 in from a fold", "lay it 1/16 in further to the left"));
    // Inside a panel the fold is the edge at its side.
    assert!(near(&pearl("side", true, "inside", "panel: left, right: 1/8 in, bottom: 1 in")));
    assert!(!near(&pearl("side", true, "inside", "panel: left, left: 1/8 in, bottom: 1 in")));
}

#[test]
fn a_bought_thing_is_laid_by_eye() {
    // 3/32 in is no step of 1/16.
    assert_eq!(codes(&pearl("none", false, "front", "left: 13/32 in, bottom: 13/32 in")), [] as [&str; 0]);
}

#[test]
fn a_gate_must_open() {
    let pieces = "  label: {size: 2 x 1 in, from: plain}\n  mat: {size: 2 x 5 in, from: plain}\n";
    let text = |layers: &str| design("gate", "", pieces, &format!("front:\n{layers}"));
    // From 1 to 3 in on a front that opens at 2 1/8.
    let across = text("  - {place: label, left: 1 in, top: 1 in, glue: tape}\n");
    assert_eq!(codes(&across), ["across-the-opening"]);
    assert_eq!(of(&across, "across-the-opening").0, "1 1/8 in of it lies on the left flap, 7/8 in on the right");
    assert_eq!(codes(&text("  - {place: label, left: 1/8 in, top: 1 in, glue: tape}\n")), [] as [&str; 0]);
    // Trimmed level with a mat that lies on one flap, it lies there alone.
    let trimmed = text(
        "  - place: mat\n    left: 1/16 in\n    top: 1/4 in\n    glue: tape\n    first:\n      \
         - {place: label, left: 1/4 in, top: 1 in, trim flush: mat, glue: tape}\n",
    );
    assert_eq!(codes(&trimmed), [] as [&str; 0]);
    // A band without glue slips off.
    let band = text("  - {place: label, centre: across, top: 1 in}\n");
    assert_eq!(codes(&band), ["no-glue"]);
}

#[test]
fn nothing_is_glued_over_a_fold() {
    let pieces = "  mat: {size: 1 x 1 in, from: plain}\n  label: {size: 3 x 1 in, from: plain}\n";
    let text = |fold: &str, place: &str| {
        let front = "front:\n  - {place: mat, left: 1/4 in, top: 1/4 in, glue: tape}\ninside:\n";
        design(fold, "", pieces, &format!("{front}  - {{place: label, {place}, glue: tape}}\n"))
    };
    // The whole inside is 8 1/2 in wide: from 2 3/4 to 5 3/4, over the fold at 4 1/4.
    let over = text("side", "centre: across, top: 1 in");
    assert_eq!(codes(&over), ["over-the-fold"]);
    assert_eq!(of(&over, "over-the-fold").0, "1 1/2 in of it lies to the left of the fold, 1 1/2 in to the right");
    assert_eq!(codes(&text("side", "left: 1 1/4 in, top: 1 in")), [] as [&str; 0], "it ends at the fold");
    assert_eq!(codes(&text("side", "panel: left, centre: across, top: 1 in")), [] as [&str; 0]);
    // Folded at the top, the inside is 11 in high and folds at 5 1/2: from 5 in up to 6.
    let over = text("top", "centre: across, bottom: 5 in");
    assert_eq!(codes(&over), ["over-the-fold"]);
    assert_eq!(of(&over, "over-the-fold").0, "1/2 in of it lies below the fold, 1/2 in above it");
    // A gate folds at 2 1/8 and 6 3/8 of 8 1/2.
    assert_eq!(codes(&text("gate", "left: 2 1/4 in, top: 1 in")), [] as [&str; 0]);
    assert_eq!(codes(&text("gate", "left: 2 in, top: 1 in")), ["over-the-fold"]);
    assert_eq!(codes(&text("gate", "left: 3 1/2 in, top: 1 in")), ["over-the-fold"]);
}
