//! What is hidden wholly or almost, by one layer or several.

use super::{codes, findings, of, on_the_front};

#[test]
fn two_halves_hide_what_neither_hides_alone() {
    let pieces = "  mat: {size: 4 x 5 in, from: plain}\n  half: {size: 4 x 2 1/2 in, from: plain}\n";
    let front = |gap: &str| {
        format!(
            "  - {{place: mat, centre: both ways, glue: tape}}\n  - {{place: half, as: high, centre: across, top: 1/4 in, glue: tape}}\n  \
             - {{place: half, as: low, centre: across, bottom: {gap}, glue: tape}}\n"
        )
    };
    let text = on_the_front(pieces, &front("1/4 in"));
    assert_eq!(codes(&text), ["covers-another"]);
    let found = findings(&text);
    let hidden = found.iter().find(|finding| finding.code == "covers-another").unwrap();
    assert_eq!(hidden.message, "the high and the low hide the mat wholly between them");
    // 1/16 in lower, 1/16 in of the mat shows between them.
    let text = on_the_front(pieces, &front("3/16 in"));
    assert_eq!(codes(&text), ["hidden-layer"]);
    assert_eq!(of(&text, "hidden-layer").0, "no more than 1/16 in of it shows anywhere");
}

#[test]
fn a_turned_layer_hides_what_its_outline_hides() {
    // A square of 2 in turned by 45 degrees reaches the root of 2, 1.4142, to the left, and holds a square of
    // 1.4142 upright. A tag of 1 3/8 hides under it, one of 1 7/16 shows its corners.
    let front = |side: &str| {
        on_the_front(
            &format!("  small: {{size: {side} x {side} in, from: plain}}\n  square: {{size: 2 x 2 in, from: plain}}\n"),
            "  - {place: small, centre: both ways, glue: tape}\n  - {place: square, centre: both ways, turned: 45 degrees left, glue: tape}\n",
        )
    };
    assert_eq!(codes(&front("1 3/8")), ["covers-another"]);
    // The border is off the ruler too: 2 1/8 less 23/32.
    let codes = codes(&front("1 7/16"));
    assert!(codes.contains(&"hidden-layer") && !codes.contains(&"covers-another"), "{codes:?}");
}

#[test]
fn the_paper_that_is_wasted_is_told() {
    // Moved by 1/16 both ways, an edge of 1/16 in shows along two sides: 2 x 3 in less 1 15/16 x 2 15/16 is
    // 0.3086 of 6, more than 3 in 100. It is widest in its corner, where a disc touches both outer sides and the
    // corner within: of radius r, root 2 (1/16 - r) = r, so 1/16 root 2 / (1 + root 2) = 0.0366, 0.0732 across,
    // which is more than 2 and less than 3 of 32.
    let pieces = "  tag: {size: 2 x 3 in, from: plain}\n";
    let text = on_the_front(
        pieces,
        "  - {place: tag, left: 1 in, bottom: 1 in, glue: tape}\n  - {place: tag, as: upper, left: 1 1/16 in, bottom: 1 1/16 in, glue: tape}\n",
    );
    let (label, help) = of(&text, "hidden-layer");
    assert_eq!(label, "no more than 3/32 in of it shows anywhere");
    assert_eq!(
        help,
        "lay it so that 1/8 in or more of it shows, or leave it out: a piece of 2 x 3 in is cut for it on every card"
    );
}

#[test]
fn a_corner_that_shows_is_almost_nothing() {
    // Of 4 x 5 in a corner of 1/2 x 1/2 shows: 1/4 of 20 is 1.25 in 100. One of 1 x 3/4 is 3.75.
    let text = |wide: &str, high: &str, lower: &str| {
        on_the_front(
            &format!(
                "  mat: {{size: 4 x 5 in, from: plain}}\n  upper: {{size: 4 x {high} in, from: plain}}\n  lower: {{size: {wide} x {lower} in, from: plain}}\n"
            ),
            "  - {place: mat, left: 1/8 in, bottom: 1/4 in, glue: tape}\n  - {place: upper, left: 1/8 in, top: 1/4 in, glue: tape}\n  \
             - {place: lower, left: 1/8 in, bottom: 1/4 in, glue: tape}\n",
        )
    };
    let (label, _) = of(&text("3 1/2", "4 1/2", "1/2"), "hidden-layer");
    assert_eq!(label, "2 in 100 of it shows");
    assert_eq!(codes(&text("3", "4 1/4", "3/4")), [] as [&str; 0]);
}

#[test]
fn a_narrow_mat_is_a_mat() {
    // 1/16 in all round is as narrow as the hand can lay it by default; 1/32 is not.
    let mat = |panel: &str| {
        on_the_front(
            &format!("  mat: {{size: 3 x 4 in, from: plain}}\n  panel: {{size: {panel}, from: plain}}\n"),
            "  - {place: mat, centre: both ways, glue: tape}\n  - {place: panel, onto: mat, centre: both ways, glue: tape}\n",
        )
    };
    assert_eq!(codes(&mat("2 7/8 x 3 7/8 in")), [] as [&str; 0]);
    assert!(codes(&mat("2 15/16 x 3 15/16 in")).contains(&"hidden-layer"));
}

#[test]
fn a_covered_middle_that_serves_is_noted() {
    // The panel covers 3 3/4 x 5 of the mat: less 1/4 all round 3 1/4 x 4 1/2. A tag of 4 1/2 x 3 1/4 fits turned,
    // and one of 4 9/16 does not.
    let text = |tag: &str, paper: &str| {
        on_the_front(
            &format!(
                "  mat: {{size: 4 x 5 1/4 in, from: {paper}}}\n  panel: {{size: 3 3/4 x 5 in, from: plain}}\n  tag: {{size: {tag}, from: {paper}}}\n"
            ),
            "  - {place: mat, centre: both ways, glue: tape}\n  - {place: panel, centre: both ways, glue: tape}\n  \
             - {place: tag, centre: both ways, turned: quarter left, glue: tape}\n",
        )
    };
    let (label, help) = of(&text("4 1/2 x 3 1/4 in", "plain"), "hidden-middle");
    assert_eq!(label, "3 1/4 x 4 1/2 in lies hidden, 1/4 in inside the edges of the panel");
    assert_eq!(help, "cut a window of 4 1/2 x 3 1/4 in into the mat where it is covered, if paper is short");
    let none = |text: &str| findings(text).iter().all(|finding| finding.code != "hidden-middle");
    assert!(none(&text("4 9/16 x 3 1/4 in", "plain")));
    // Turned, the pattern of one-way paper would lie on its side.
    assert!(none(&text("4 1/2 x 3 1/4 in", "dusk")));
}

#[test]
fn a_shadow_is_meant() {
    // 1/16 in of the lower one shows at two sides, as it is said: level with it both ways but for a shift.
    let text = |place: &str| {
        on_the_front(
            "  word: {size: 2 x 1 in, from: plain}\n",
            &format!(
                "  - {{place: word, as: shadow, centre: both ways, glue: tape}}\n  - {{place: word, {place}, shifted: 1/16 in left and 1/16 in up, glue: tape}}\n"
            ),
        )
    };
    assert_eq!(codes(&text("centred across: shadow, centred up: shadow")), [] as [&str; 0]);
    assert_eq!(codes(&text("centre: both ways")), ["hidden-layer"]);
}
