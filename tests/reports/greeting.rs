//! What the rules find in pieces that carry words; every number is worked out by hand beside it.

use super::kite::{card, labels, of, told};

#[test]
fn words_over_a_fold_are_measured_on_both_sides() {
    let inside = |fold: &str, place: &str| {
        let text = card(
            "inch",
            fold,
            "  label: {size: 3 x 1 in, from: white, printed: hello}\n",
            &format!(
                "front:\n  - {{place: mat, centre: both ways, glue: tape}}\n\
                 inside:\n  - {{place: label, {place}, glue: tape}}\n"
            ),
        );
        of(&text, "greeting-over-the-fold")
            .into_iter()
            .map(|finding| (finding.primary.text, finding.help.unwrap_or_default()))
            .collect::<Vec<_>>()
    };
    // The fold is at 4 1/4: from 2 in to 5 in there are 2 1/4 before it and 3/4 behind.
    assert_eq!(
        inside("side", "left: 2 in, top: 1 in"),
        [(
            "2 1/4 in to the left of it and 3/4 in to the right of it".to_owned(),
            "lay it on 1 panel, such as `panel: right`, or 3/4 in further to one side".to_owned()
        )]
    );
    assert_eq!(inside("side", "left: 1 1/4 in, top: 1 in"), [], "its edge lies at the fold");
    // The fold is 5 1/2 below the top: from 5 to 6 in there are 1/2 and 1/2.
    assert_eq!(inside("top", "left: 1/2 in, top: 5 in")[0].0, "1/2 in above it and 1/2 in below it");
}

#[test]
fn trimming_may_take_the_blank_ends_of_a_label_only() {
    // A banner 4 1/2 in long keeps its middle half, 1 1/8 in at each end being blank: laid 2 in from the left of
    // a mat of 4 in it ends 2 1/2 past it, and 2 1/2 less 1 1/8 is 1 3/8 of the words.
    let banner = |left: &str| {
        let text = card(
            "inch",
            "side",
            "  banner: {size: 4 1/2 x 3/4 in, from: white, stamp: hello}\n",
            &format!(
                "front:\n  - place: mat\n    centre: both ways\n    glue: tape\n    first:\n\
                 \x20     - {{place: banner, left: {left}, top: 1 in, trim flush: mat, glue: tape}}\n"
            ),
        );
        told(&text, "greeting-off-the-card")
    };
    assert_eq!(
        banner("2 in"),
        [(
            "1 3/8 in at the right of the middle of the piece, where words stand, is lost".to_owned(),
            "lay it 1 3/8 in further in, or make the banner shorter by twice that".to_owned()
        )]
    );
    assert_eq!(banner("5/8 in"), [], "4 1/2 + 5/8 - 4 is just the blank end");
    assert_eq!(banner("11/16 in").len(), 1);
}

#[test]
fn words_that_are_cut_out_are_needed_whole() {
    let word = |words: &str, up: &str| {
        card(
            "inch",
            "side",
            &format!(
                "  word: {{size: 2 x 1 in, from: white, by: die, margin: 1/4 in, {words}}}\n\
                 \x20 tag: {{size: 1 x 1 in, from: white}}\n"
            ),
            &format!(
                "front:\n  - {{place: mat, centre: both ways, glue: tape}}\n\
                 \x20 - {{place: word, onto: mat, centre: both ways, glue: tape}}\n\
                 \x20 - {{place: tag, onto: mat, centre: across, bottom: {up}, glue: tape}}\n"
            ),
        )
    };
    // The word stands from 2 1/8 to 3 1/8 in up the mat; a tag from 3 to 4 in hides 1 x 1/8 in of 2 x 1 in: 6 1/4 %.
    assert_eq!(
        labels(&word("die-cut words: hush", "3 in"), "greeting-covered"),
        ["6 % of the room for the words is hidden, 1 x 1/8 in at most"]
    );
    // Stamped, only the middle half counts, from 2 3/8 to 2 7/8.
    assert_eq!(labels(&word("stamp: hush", "3 in"), "greeting-covered"), [""; 0]);
    assert_eq!(
        labels(&word("stamp: hush", "2 3/4 in"), "greeting-covered"),
        ["25 % of the room for the words is hidden, 1 x 1/8 in at most"]
    );
    assert_eq!(labels(&word("die-cut words: hush", "3 1/8 in"), "greeting-covered"), [""; 0]);
}

#[test]
fn a_large_piece_has_room_for_its_words_until_half_of_it_is_hidden() {
    // A panel of 3 x 4 in: a sheet 3 in wide hides half of it when it is 2 in high.
    let panel = |high: &str| {
        let text = card(
            "inch",
            "side",
            &format!(
                "  panel: {{size: 3 x 4 in, from: white, stamp: hello}}\n  sky: {{size: 3 x {high}, from: slate}}\n"
            ),
            "front:\n  - {place: mat, centre: both ways, glue: tape}\n\
             \x20 - {place: panel, onto: mat, centre: both ways, glue: tape}\n\
             \x20 - {place: sky, onto: panel, centre: across, top: 0 in, glue: tape}\n",
        );
        labels(&text, "greeting-covered")
    };
    assert_eq!(panel("2 in"), [""; 0]);
    assert_eq!(panel("3 in"), ["75 % of the room for the words is hidden, 3 x 3 in at most"]);
}
