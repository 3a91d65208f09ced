//! What the rules find in dies, windows and ribbon; every number is worked out by hand beside it.

use super::kite::{card, labels, told};

#[test]
fn a_die_wants_an_eighth_of_paper_all_round() {
    let heart = |units: &str, margin: &str| {
        let text = card(
            units,
            "side",
            &format!("  heart: {{size: 2 x 1 in | 50 x 25 mm, from: white, shape: oval, by: die, margin: {margin}}}\n"),
            "front:\n  - {place: mat, centre: both ways, glue: tape}\n\
             \x20 - {place: heart, onto: mat, centre: both ways, glue: tape}\n",
        );
        told(&text, "small-die-margin")
    };
    assert_eq!(heart("inch", "1/8 in"), []);
    assert_eq!(heart("metric", "3 mm"), []);
    assert_eq!(
        heart("inch", "1/16 in"),
        [(
            "1/16 in on each side, where 1/8 in is usual".to_owned(),
            "say `margin: 1/8 in`, which makes the rectangle to trim 2 1/4 x 1 1/4 in in place of 2 1/8 x 1 1/8 in"
                .to_owned()
        )]
    );
    assert_eq!(heart("metric", "2 mm").len(), 1);
}

#[test]
fn what_comes_out_of_a_die_cut_window_needs_no_margin_of_its_own() {
    let text = card(
        "inch",
        "side",
        "  frame: {size: 3 x 3 in, from: white, window: {size: 1 x 1 in, shape: circle, by: die, centre: both ways}}\n\
         \x20 moon: {size: 1 x 1 in, from: window of frame, shape: circle, by: die, margin: 0 in}\n",
        "front:\n  - {place: mat, centre: both ways, glue: tape}\n\
         \x20 - {place: frame, onto: mat, centre: both ways, glue: tape}\n\
         inside:\n  - {place: moon, panel: right, centre: both ways, glue: tape}\n",
    );
    assert_eq!(labels(&text, "small-die-margin"), [""; 0]);
}

#[test]
fn the_narrowest_paper_beside_a_window_is_told() {
    let frame = |windows: &str| {
        let text = card(
            "inch",
            "side",
            &format!("  frame:\n    size: 3 x 3 in\n    from: white\n    window:\n{windows}"),
            "front:\n  - {place: mat, centre: both ways, glue: tape}\n\
             \x20 - {place: frame, onto: mat, centre: both ways, glue: tape}\n",
        );
        labels(&text, "narrow-frame")
    };
    assert_eq!(frame("      - {size: 1 x 1 in, left: 1/8 in, top: 1/2 in}\n"), [""; 0]);
    assert_eq!(
        frame("      - {size: 1 x 1 in, left: 1/16 in, top: 1/2 in}\n"),
        ["1/16 in left at the left of the window"]
    );
    // 1/2 + 1 in reach to 1 1/2 in; the next window begins 1/16 in further.
    assert_eq!(
        frame(
            "      - {size: 1 x 1 in, left: 1/2 in, top: 1 in}\n      - {size: 1 x 1 in, left: 1 9/16 in, top: 1 in}\n"
        ),
        ["1/16 in left between window 1 and window 2"]
    );
}

#[test]
fn windows_are_counted_piece_by_piece() {
    let panes = |frames: u32, panes: u32| {
        let text = card(
            "inch",
            "side",
            "  frame:\n    size: 1 x 1 in\n    from: white\n    window: {size: 1/2 x 1/2 in, centre: both ways}\n\
             \x20 pane: {size: 1/2 x 1/2 in, from: window of frame}\n  dot: {size: 1/4 x 1/4 in, from: window of frame}\n",
            &format!(
                "front:\n  - {{place: mat, centre: both ways, glue: tape}}\n\
                 \x20 - {{place: frame, onto: mat, top: 1/2 in, row: {{count: {frames}, gap: even}}, glue: tape}}\n\
                 \x20 - {{place: pane, onto: mat, top: 3 in, row: {{count: {panes}, gap: even}}, glue: tape}}\n\
                 \x20 - {{place: dot, onto: mat, centre: across, bottom: 1/2 in, glue: tape}}\n"
            ),
        );
        told(&text, "too-few-windows")
    };
    assert_eq!(panes(3, 2), []);
    assert_eq!(
        panes(2, 2),
        [(
            "2 panes and 1 dot a card, where 2 frames give 2".to_owned(),
            "lay 1 fewer, or cut 1 from a paper, as a piece of its own".to_owned()
        )]
    );
}

#[test]
fn a_band_goes_round_twice_and_laps_over() {
    let ribbon = |units: &str, size: &str, length: &str| {
        let text = card(
            units,
            "side",
            "",
            &format!(
                "decorations:\n  ribbon: {{size: {size}, length: {length}}}\n\
                 front:\n  - {{place: mat, centre: both ways, glue: tape}}\n\
                 \x20 - {{place: ribbon, centre: across, bottom: 1 in | 25 mm, glue: tape}}\n"
            ),
        );
        told(&text, "ribbon-too-short")
    };
    let inch = |size: &str, length: &str| ribbon("inch", size, length);
    // As laid, to the edges, or round: 2 x 4 1/4 + 1/2 = 9 in; 2 x 105 + 12 = 222 mm.
    assert_eq!(inch("3 x 1/4 in", "3 in"), []);
    assert_eq!(inch("4 1/4 x 1/4 in", "4 1/4 in"), []);
    assert_eq!(inch("4 1/4 x 1/4 in", "9 in"), []);
    assert_eq!(ribbon("metric", "105 x 6 mm", "222 mm"), []);
    assert_eq!(ribbon("metric", "105 x 6 mm", "221 mm")[0].1, "say `length: 222 mm` or more");
    assert_eq!(
        inch("4 1/4 x 1/4 in", "8 in"),
        [(
            "twice 4 1/4 in round the card and 1/2 in to lie over is 9 in, and 8 in from the roll".to_owned(),
            "say `length: 9 in` or more".to_owned()
        )]
    );
    assert_eq!(
        inch("3 x 1/4 in", "2 1/2 in"),
        [("3 in as it is laid, and 2 1/2 in from the roll".to_owned(), "say `length: 3 in` or more".to_owned())]
    );
    // Round the mat of 4 in: 8 1/2.
    let on_the_mat = |length: &str| {
        let text = card(
            "inch",
            "side",
            "",
            &format!(
                "decorations:\n  ribbon: {{size: 4 x 1/4 in, length: {length}}}\n\
                 front:\n  - place: mat\n    centre: both ways\n    glue: tape\n    first:\n\
                 \x20     - {{place: ribbon, centre: across, bottom: 1 in, glue: tape}}\n"
            ),
        );
        labels(&text, "ribbon-too-short")
    };
    assert_eq!(on_the_mat("8 1/2 in"), [""; 0]);
    assert_eq!(
        on_the_mat("8 in"),
        ["twice 4 in round the mat and 1/2 in to lie over is 8 1/2 in, and 8 in from the roll"]
    );
}
