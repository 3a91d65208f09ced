//! Level with, midway, shifted: worked by hand in sixteenths of an inch on a front of 68 x 88 of them.

use super::{copies_are, inches, laid};

const PIECES: &str = "  mat:\n    size: 4 x 5 in\n    from: plain\n  tab:\n    size: 1 x 1/2 in\n    from: plain\n  \
                      dot:\n    size: 1/2 x 1/4 in\n    from: plain\n  rail:\n    size: 4 x 1/4 in\n    from: plain\n";
const MAT: &str = "  - {place: mat, left: 1/8 in, bottom: 1/4 in, glue: tape}\n";

#[test]
fn edges_and_middles_are_level_with_those_of_an_earlier_layer() {
    // The mat lies from 2 to 66 and from 4 to 84; a tab is 16 x 8, a dot 8 x 4.
    let text = inches(
        PIECES,
        &format!(
            "{MAT}  - {{place: tab, right with: mat, top with: mat, glue: tape}}\n  \
             - {{place: tab, as: low tab, left with: mat, bottom with: mat, glue: tape}}\n  \
             - {{place: dot, centred across: tab, centred up: low tab, glue: tape}}\n  \
             - {{place: dot, as: low dot, right with: low tab, top with: low tab, glue: tape}}\n"
        ),
    );
    let project = laid(&text);
    copies_are(&project, "tab", &[[50, 76, 16, 8]]);
    copies_are(&project, "low tab", &[[2, 4, 16, 8]]);
    // 50 + (16 - 8) / 2 across, 4 + (8 - 4) / 2 up.
    copies_are(&project, "dot", &[[54, 6, 8, 4]]);
    copies_are(&project, "low dot", &[[10, 8, 8, 4]]);
}

#[test]
fn midway_is_halfway_between_the_facing_edges() {
    let text = inches(
        PIECES,
        "  - {place: rail, as: low rail, centre: across, bottom: 1 in, glue: tape}\n  \
         - {place: rail, as: high rail, centre: across, top: 1 in, glue: tape}\n  \
         - {place: tab, midway across: left edge and right edge, midway up: high rail and low rail, glue: tape}\n  \
         - {place: dot, midway across: left edge and tab, midway up: bottom edge and low rail, glue: tape}\n",
    );
    let project = laid(&text);
    copies_are(&project, "low rail", &[[2, 16, 64, 4]]);
    copies_are(&project, "high rail", &[[2, 68, 64, 4]]);
    // Between the rails are 20 to 68: (48 - 8) / 2 = 20 on either side of the tab.
    copies_are(&project, "tab", &[[26, 40, 16, 8]]);
    // From 0 to 26: 9 on either side of the dot; from 0 to 16: 6 below and above it.
    copies_are(&project, "dot", &[[9, 6, 8, 4]]);
}

#[test]
fn a_shift_comes_last() {
    let text = inches(
        PIECES,
        "  - {place: tab, centre: both ways, glue: tape}\n  \
         - {place: tab, as: word, centred across: tab, centred up: tab, shifted: 1/16 in left and 1/8 in up, glue: foam}\n  \
         - {place: dot, right: 1/4 in, below: tab, shifted: 1/16 in down, glue: tape}\n",
    );
    let project = laid(&text);
    copies_are(&project, "tab", &[[26, 40, 16, 8]]);
    copies_are(&project, "word", &[[25, 42, 16, 8]]);
    // Its right edge at 68 - 4; its top at 40 less 1.
    copies_are(&project, "dot", &[[56, 35, 8, 4]]);
}
