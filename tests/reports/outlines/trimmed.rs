//! Strips that are trimmed at a slant, measured along themselves.

use super::{TAGS, codes, design, of, on_the_front};

/// A strip across a mat of 4 x 5 in at 30 degrees, as long as it says.
fn slanting(length: &str, workshop: &str) -> String {
    design(
        "side",
        workshop,
        &format!("  mat: {{size: 4 x 5 in, from: plain}}\n  rail: {{size: {length} x 1/2 in, from: plain}}\n"),
        "front:\n  - place: mat\n    centre: both ways\n    glue: tape\n    first:\n      \
         - {place: rail, centre: both ways, turned: 30 degrees left, trim flush: mat, glue: liquid}\n",
    )
}

#[test]
fn a_slanted_strip_is_measured_along_its_longer_edge() {
    // Its middle line crosses a mat of 4 in along 4 / cos 30 = 4.6188; each long edge, 1/4 to the side, is 1/4 tan 30 =
    // 0.1443 further at one end: 4.6188 / 2 + 0.1443 = 2.4537, both ways 4.9075. With 1/4 at each end 5.4075, which is
    // up to the ruler 5 7/16.
    for (length, code) in
        [("4 7/8 in", Some("short-of-its-edge")), ("5 in", Some("little-to-trim")), ("5 1/4 in", None)]
    {
        let length = length.trim_end_matches(" in");
        let text = slanting(length, "");
        assert_eq!(codes(&text), code.into_iter().collect::<Vec<_>>(), "{length}");
    }
    // 4.9075 less 4 7/8 is 0.0325, half of it 0.0162: 1.04 of 64.
    let (label, help) = of(&slanting("4 7/8", ""), "short-of-its-edge");
    assert_eq!(label, "about 1/64 in short at the bottom left and top right");
    assert_eq!(help, "make it 5 7/16 in long, which leaves 1/4 in to trim at each end");
    // 5 less 4.9075 is 0.0925, half of it 0.0463: 2.96 of 64.
    let (label, help) = of(&slanting("5", ""), "little-to-trim");
    assert_eq!(label, "about 3/64 in over at the bottom left and top right");
    assert_eq!(help, "make it 5 7/16 in long, which leaves 1/4 in at each end");
}

#[test]
fn a_hand_that_is_further_off_needs_more_to_trim() {
    // 5 1/4 leaves (5.25 - 4.9075) / 2 = 0.1713. A layer laid 1/8 aside may come 1/8 / cos 30 = 0.1443 nearer along
    // itself, and be cut 1/32 short: 0.1756 is wanted.
    let workshop = "workshop: {placing error: 1/8 in}\n";
    assert_eq!(codes(&slanting("5 1/4", workshop)), ["little-to-trim"]);
    // 5 5/16 leaves 0.2025.
    assert_eq!(codes(&slanting("5 5/16", workshop)), [] as [&str; 0]);
}

#[test]
fn a_strip_of_five_reaches_across_four_by_three() {
    // The triangle of 3, 4 and 5 (any table of triangles, from memory): a strip along the diagonal of a mat of 4 x 3 in
    // has its middle line 5 in long. Of a strip 1/2 in wide the long edges cross the mat inside its corners, and the
    // corner lies under it: 5 in are what it covers, and 5 1/2 leave 1/4 at each end. 36.87 degrees are arctan 3/4.
    let text = |length: &str| {
        on_the_front(
            &format!("  mat: {{size: 4 x 3 in, from: plain}}\n  rail: {{size: {length} x 1/2 in, from: plain}}\n"),
            "  - place: mat\n    centre: both ways\n    glue: tape\n    first:\n      \
             - {place: rail, centre: both ways, turned: 36.87 degrees left, trim flush: mat, glue: liquid}\n",
        )
    };
    assert_eq!(codes(&text("5 1/2")), [] as [&str; 0]);
    // The corners of a strip of 4 7/8 lie beyond the edges of the mat, and the mat's corner shows past its end.
    let (label, help) = of(&text("4 7/8"), "short-of-its-edge");
    assert_eq!(label, "1/16 in short at the bottom left and top right");
    assert_eq!(help, "make it 5 1/2 in long, which leaves 1/4 in to trim at each end");
}

#[test]
fn a_strip_across_a_disc_is_measured_to_the_round() {
    // Across the middle of a disc of 3 in, 1/2 in wide: the middle line is 3 in, the edges 2 root (1.5^2 - 0.25^2) =
    // 2.958. The round between them asks for 3.
    let text = |length: &str| {
        on_the_front(
            &format!("{TAGS}  rail: {{size: {length} x 1/2 in, from: plain}}\n"),
            "  - place: disc\n    centre: both ways\n    glue: tape\n    first:\n      \
             - {place: rail, centre: both ways, trim flush: disc, glue: liquid}\n",
        )
    };
    assert_eq!(codes(&text("3 1/4")), [] as [&str; 0]);
    assert_eq!(of(&text("3 1/8"), "little-to-trim").0, "1/16 in over at the left and right");
    assert_eq!(of(&text("2 15/16"), "short-of-its-edge").0, "1/32 in short at the left and right");
}

#[test]
fn a_slanted_strip_is_trimmed_before_its_mat_is_glued() {
    let loose = slanting("5 1/4", "");
    let late = loose.replace("    first:\n      - {place: rail,", "  - {place: rail, onto: mat,");
    assert_ne!(late, loose);
    assert_eq!(codes(&late), ["trimmed-too-late"]);
    assert_eq!(of(&late, "trimmed-too-late").0, "1/8 in of the card shows at the left and right");
}

#[test]
fn what_a_slanted_tag_lies_beside_trims_it_away() {
    // A strip of 1 x 1/4 turned by 60 degrees is 1/2 + 1/4 cos 30 = 0.7165 wide; its middle 5/8 from the left, it ends
    // at 0.9833, and the mat begins at 1 1/8.
    let text = on_the_front(
        "  mat: {size: 3 x 5 in, from: plain}\n  rail: {size: 1 x 1/4 in, from: plain}\n",
        "  - {place: mat, left: 1 1/8 in, centre: up and down, glue: tape}\n  \
         - {place: rail, left: 1/8 in, top: 1 in, turned: 60 degrees left, trim flush: mat, glue: liquid}\n",
    );
    assert_eq!(codes(&text), ["trimmed-away"]);
    // From 1 1/8 back to 0.2667 are 0.8583: 13.7 sixteenths.
    assert_eq!(of(&text, "trimmed-away").1, "lay it 7/8 in further in, or take `trim flush` out");
}

#[test]
fn what_hangs_over_by_its_side_has_no_end_there() {
    let mat = "  mat: {size: 4 x 5 in, from: plain}\n";
    let text = |piece: &str, place: &str| {
        on_the_front(
            &format!("{mat}  tag: {{size: {piece}, from: plain}}\n"),
            &format!(
                "  - place: mat\n    centre: both ways\n    glue: tape\n    first:\n      - {{place: tag, {place}, trim flush: mat, glue: liquid}}\n"
            ),
        )
    };
    // A square stands on its corner, and one corner hangs over.
    assert_eq!(
        codes(&text("2 x 2 in", "left: 2 1/2 in, centre: up and down, turned: 45 degrees left")),
        [] as [&str; 0]
    );
    // A strip almost along the right edge is cut along its side: it meets that edge 80 degrees off the square.
    assert_eq!(codes(&text("3 x 1 in", "left: 2 1/2 in, top: 2 in, turned: 80 degrees left")), [] as [&str; 0]);
}
