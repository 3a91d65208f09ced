//! The rules about how layers lie, held to sums worked by hand beside them: turned by the sine and cosine of
//! any table (sin 30 = 1/2, cos 30 = 0.866 025, tan 30 = 0.577 350; from memory), and by Pythagoras.

use trimwright::diagnostic::{Finding, Severity};
use trimwright::pipeline;
use trimwright::rules::REGISTRY;
use trimwright::source::Source;

/// A design in inches with plain papers, the given pieces, and the given lists of layers.
fn design(fold: &str, workshop: &str, pieces: &str, layers: &str) -> String {
    format!(
        "title: Heron\nmonth: 2026-11\ncards: 1\nunits: inch\n{workshop}card: {{size: 4 1/4 x 5 1/2 in, fold: {fold}, from: plain}}\n\
         papers:\n  plain: {{sheets: 40 of 12 x 12 in}}\n  dusk: {{sheets: 9 of 12 x 12 in, pattern: one-way}}\n  \
         ember: {{sheets: 9 of 12 x 12 in, pattern: two-way}}\n\
         pieces:\n{pieces}{layers}"
    )
}

fn on_the_front(pieces: &str, front: &str) -> String {
    design("side", "", pieces, &format!("front:\n{front}"))
}

fn findings(text: &str) -> Vec<Finding> {
    pipeline::run(&Source::new("heron.yaml", text), "heron").findings
}

/// Every error and warning about layers and trimming, or about what could not be read.
fn codes(text: &str) -> Vec<&'static str> {
    let idle = |code: &str| REGISTRY.iter().any(|rule| rule.code == code && matches!(rule.group, "counts" | "sizes"));
    let loud = findings(text).into_iter().filter(|finding| finding.severity != Severity::Note && !idle(finding.code));
    loud.map(|finding| finding.code).collect()
}

/// The label and help of the one finding of a code.
fn of(text: &str, code: &str) -> (String, String) {
    let all = findings(text);
    let of: Vec<&Finding> = all.iter().filter(|finding| finding.code == code).collect();
    assert_eq!(of.len(), 1, "{code}: {all:#?}");
    (of[0].primary.text.clone(), of[0].help.clone().expect("a help"))
}

const TAGS: &str = "  mat: {size: 4 x 5 in, from: plain}\n  tag: {size: 2 x 1 in, from: plain}\n  square: {size: 2 x 2 in, from: plain}\n  \
                    disc: {size: 3 x 3 in, from: plain, shape: circle, by: die, margin: 1/8 in}\n  \
                    kite: {size: 3 x 4 in, from: plain, shape: diamond}\n";

#[test]
fn a_turned_tag_is_measured_to_each_edge() {
    // Half of its width turned: 1 cos 30 + 1/2 sin 30 = 1.1160; of its height: 1 sin 30 + 1/2 cos 30 = 0.9330. Its
    // middle lies 1 1/8 from the left and 5/8 from the bottom: 0.0090 from the left edge, 0.3080 past the bottom,
    // which is 19.7 of 64. Up by 5 steps of 1/16. Turned by t it reaches sin t + cos t / 2 below its middle:
    // 7 degrees give 0.1219 + 0.4963 = 0.6182, 8 give 0.1392 + 0.4951 = 0.6343.
    let text =
        on_the_front(TAGS, "  - {place: tag, left: 1/8 in, bottom: 1/8 in, turned: 30 degrees left, glue: tape}\n");
    assert_eq!(codes(&text), ["past-the-edge"]);
    let (label, help) = of(&text, "past-the-edge");
    assert_eq!(label, "reaches about 5/16 in past the bottom edge of the card");
    assert_eq!(help, "lay it 5/16 in further up, or turn it no more than 7 degrees, or say `trim flush: card`");
    // 1/16 in more room at the bottom than it asks for.
    let text =
        on_the_front(TAGS, "  - {place: tag, left: 1/8 in, bottom: 1/2 in, turned: 30 degrees left, glue: tape}\n");
    assert_eq!(codes(&text), [] as [&str; 0]);
}

#[test]
fn what_is_turned_along_is_judged_in_its_own_frame() {
    // The tag lies 0 from the square's edges: within it however that is turned, while on the face its upright
    // bounds are far larger.
    let front = |tag: &str| {
        format!(
            "  - place: square\n    centre: both ways\n    turned: 25 degrees left\n    glue: tape\n    first:\n      \
             - {{place: tag, {tag}, glue: tape}}\n"
        )
    };
    assert_eq!(codes(&on_the_front(TAGS, &front("left: 0 in, top: 0 in"))), [] as [&str; 0]);
    let text = on_the_front(TAGS, &front("left: 1/16 in, top: 0 in"));
    let (label, help) = of(&text, "past-the-edge");
    assert_eq!(label, "reaches 1/16 in past the right edge of the square");
    assert_eq!(help, "say `left: 0 in` or less");
}

#[test]
fn a_layer_on_a_round_piece_is_measured_to_the_round() {
    // A square of 2 in has half diagonals of 1.4142 on a disc of 1.5: within. Moved 1/8 in to the left its left
    // corners lie at 1 1/8 and 1: the root of 2.2656 is 1.5052 from the middle, 0.0052 past, less than 1/64.
    let front = |place: &str| {
        format!(
            "  - {{place: disc, centre: both ways, glue: tape}}\n  - {{place: square, onto: disc, {place}, glue: tape}}\n"
        )
    };
    assert_eq!(codes(&on_the_front(TAGS, &front("centre: both ways"))), [] as [&str; 0]);
    let text = on_the_front(TAGS, &front("centre: both ways, shifted: 1/8 in left"));
    assert_eq!(codes(&text), ["past-the-edge"]);
    let (label, help) = of(&text, "past-the-edge");
    assert_eq!(label, "reaches less than 1/64 in past the edge of the disc at the bottom left and top left");
    assert_eq!(help, "lay it 1/16 in further to the right");
    // By its upright rectangle it would lie 3/8 in within the disc's.
}

#[test]
fn a_layer_too_large_for_a_diamond_is_told_the_size_that_fits() {
    // On a diamond of 3 x 4 a rectangle of w x h in its middle fits where w / 3 + h / 4 <= 1. The mat is 4 x 5:
    // less n sixteenths on every edge it is 4 - n/8 by 5 - n/8: 16 - n/2 + 15 - 3n/8 <= 12 from n = 21.7, so 22:
    // 1 1/4 x 2 1/4.
    let text = on_the_front(
        TAGS,
        "  - {place: kite, centre: both ways, glue: tape}\n  - {place: mat, onto: kite, centre: both ways, glue: tape}\n",
    );
    let (_, help) = of(&text, "past-the-edge");
    assert_eq!(help, "make it 1 1/4 x 2 1/4 in or smaller");
}

#[test]
fn a_window_is_no_edge() {
    let pieces = "  frame: {size: 4 x 5 in, from: plain, window: {size: 2 x 2 in, centre: both ways}}\n  \
                  bar: {size: 3 x 1/2 in, from: plain}\n  picture: {size: 3 x 3 in, from: plain}\n";
    let text = on_the_front(
        pieces,
        "  - {place: picture, centre: both ways, glue: tape}\n  - {place: frame, centre: both ways, glue: foam}\n  \
         - {place: bar, onto: frame, centre: both ways, glue: tape}\n",
    );
    assert_eq!(codes(&text), [] as [&str; 0]);
}

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
fn a_claim_on_a_turned_layer_is_its_least_distance() {
    // The square turned by 45 degrees reaches 1.4142 from its middle, 2 1/8 from the left: 0.7108 shows, 11.4
    // sixteenths.
    let text = |claim: &str| {
        on_the_front(
            TAGS,
            &format!(
                "  - {{place: square, centre: both ways, turned: 45 degrees left, shows: {claim} left, glue: tape}}\n"
            ),
        )
    };
    assert_eq!(codes(&text("11/16 in")), [] as [&str; 0]);
    let (label, _) = of(&text("3/4 in"), "border-unlike-claim");
    assert_eq!(label, "about 11/16 in shows at the left where it comes nearest");
}

#[test]
fn a_pattern_may_lean_by_thirty_degrees() {
    let text = |paper: &str, by: &str, pattern: &str| {
        on_the_front(
            &format!("  tag: {{size: 1 x 1 in, from: {paper}{pattern}}}\n"),
            &format!("  - {{place: tag, centre: both ways, turned: {by}, glue: tape}}\n"),
        )
    };
    assert_eq!(codes(&text("dusk", "30 degrees left", "")), [] as [&str; 0]);
    assert_eq!(codes(&text("dusk", "30.01 degrees right", "")), ["laid-sideways"]);
    assert_eq!(codes(&text("dusk", "45 degrees right", ", pattern: any")), [] as [&str; 0]);
    assert_eq!(codes(&text("plain", "45 degrees right", "")), [] as [&str; 0]);
    // Two-way paper is as good half round: 170 degrees lean by 10.
    assert_eq!(codes(&text("ember", "170 degrees left", "")), [] as [&str; 0]);
    assert_eq!(codes(&text("dusk", "170 degrees left", "")), ["laid-sideways"]);
    assert_eq!(of(&text("dusk", "170 degrees left", ""), "laid-sideways").0, "turned 170 degrees to the left");
    // A pinwheel lays its strips on their sides.
    let wheel = on_the_front(
        "  strip: {size: 1/2 x 2 in, from: dusk}\n",
        "  - {place: strip, centre: both ways, pinwheel: clockwise, glue: tape}\n",
    );
    assert_eq!(codes(&wheel), ["laid-sideways"]);
}

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
fn neighbours_that_are_shifted_or_turned_are_measured() {
    let pieces = "  rail: {size: 4 x 1/2 in, from: plain}\n  tag: {size: 1 x 1 in, from: plain}\n";
    let text = |tag: &str| {
        on_the_front(
            pieces,
            &format!(
                "  - {{place: rail, centre: across, top: 1/2 in, glue: tape}}\n  - {{place: tag, centre: across, below: rail{tag}, glue: tape}}\n"
            ),
        )
    };
    assert_eq!(codes(&text("")), [] as [&str; 0]);
    let (label, help) = of(&text(", shifted: 1/8 in down"), "apart-where-they-meet");
    assert_eq!(label, "a gap of 1/8 in between them");
    assert_eq!(help, "take `shifted` out, or say `gap: 1/8 in` in its place");
    let (label, help) = of(&text(", shifted: 1/8 in up"), "apart-where-they-meet");
    assert_eq!(label, "they overlap by 1/8 in");
    assert_eq!(help, "take `shifted` out, or lay it 1/8 in further down at the least");
    // Turned by 45 degrees about its middle the tag reaches half a diagonal up, 0.7071, where it reached 1/2.
    let (label, help) = of(&text(", turned: 45 degrees left"), "apart-where-they-meet");
    assert_eq!(label, "they overlap by about 13/64 in");
    assert_eq!(help, "say `gap: 1/4 in` or more, or take `turned` out");
    // A shift to the side leaves them edge to edge, and so does a gap that is said.
    assert_eq!(codes(&text(", shifted: 1/8 in left")), [] as [&str; 0]);
    assert_eq!(codes(&text(", gap: 1/4 in, turned: 45 degrees left")), [] as [&str; 0]);
}

#[test]
fn a_shape_that_slants_away_leaves_a_gap() {
    // The right triangle has its upright side at the right, so that beside the tag to its left, level with its top,
    // its slanting side faces it: from (0, 0) up to (2, 2). The tag's right edge ends at the tag's bottom, 1 in up:
    // the point (0, 1) lies 1 / root 2 = 0.7071 from the slanting side.
    let text = on_the_front(
        "  tag: {size: 1 x 1 in, from: plain}\n  wing: {size: 2 x 2 in, from: plain, shape: 'triangle, right angle at bottom right'}\n",
        "  - {place: tag, left: 1/2 in, top: 1/2 in, glue: tape}\n  - {place: wing, right of: tag, top with: tag, glue: tape}\n",
    );
    assert_eq!(codes(&text), ["apart-where-they-meet"]);
    assert_eq!(of(&text, "apart-where-they-meet").0, "a gap of about 45/64 in between them");
}

#[test]
fn copies_without_a_gap_are_measured() {
    let row = |more: &str, shape: &str| {
        on_the_front(
            &format!("  tag: {{size: 1 x 1 in, from: plain{shape}}}\n"),
            &format!("  - {{place: tag, centre: both ways, row: {{count: 3, gap: 0 in}}{more}, glue: tape}}\n"),
        )
    };
    assert_eq!(codes(&row("", "")), [] as [&str; 0]);
    // Diamonds and discs touch in a point.
    assert_eq!(codes(&row("", ", shape: diamond")), [] as [&str; 0]);
    assert_eq!(codes(&row("", ", shape: circle, by: punch, margin: 1/4 in")), [] as [&str; 0]);
    // Turned by 45 degrees each is 1.4142 wide, and they are 1 apart: 0.4142 over, 26.5 of 64; 7 sixteenths.
    let (label, help) = of(&row(", turned: 45 degrees left", ""), "apart-where-they-meet");
    assert_eq!(label, "they overlap by about 27/64 in");
    assert_eq!(help, "say `gap: 7/16 in` or more");
}

#[test]
fn a_strip_of_a_ring_goes_along_its_whole_side() {
    let text = |first: &str, second: &str| {
        on_the_front(
            &format!(
                "  heart: {{size: 1 x 1 in, from: plain}}\n  one: {{size: 1/2 x {first} in, from: plain}}\n  two: {{size: {second} x 1/2 in, from: plain}}\n"
            ),
            "  - {place: heart, centre: both ways, glue: tape}\n  - ring round: heart\n    strips: [one, two]\n    starting: left\n    \
             going: clockwise\n    glue: tape\n",
        )
    };
    assert_eq!(codes(&text("1", "1 1/2")), [] as [&str; 0]);
    let (label, help) = of(&text("7/8", "1 1/2"), "apart-where-they-meet");
    assert_eq!((label.as_str(), help.as_str()), ("a gap of 1/8 in at its end", "make it 1 in high"));
    let (label, help) = of(&text("1", "1 3/4"), "apart-where-they-meet");
    assert_eq!((label.as_str(), help.as_str()), ("1/4 in stands over at its end", "make it 1 1/2 in wide"));
}

#[test]
fn the_middle_of_a_pinwheel_is_filled_or_left() {
    // Strips of 1/2 x 2 in leave 1 1/2 in open.
    let text = |side: &str| {
        on_the_front(
            &format!(
                "  strip: {{size: 1/2 x 2 in, from: plain}}\n  heart: {{size: {side} x {side} in, from: plain}}\n"
            ),
            "  - {place: strip, centre: both ways, pinwheel: clockwise, glue: tape}\n  - {place: heart, centre: both ways, glue: tape}\n",
        )
    };
    assert_eq!(codes(&text("1 1/2")), [] as [&str; 0]);
    assert_eq!(codes(&text("1")), [] as [&str; 0]);
    let (label, help) = of(&text("1 3/8"), "apart-where-they-meet");
    assert_eq!((label.as_str(), help.as_str()), ("a gap of 1/16 in at each side of it", "make it 1 1/2 x 1 1/2 in"));
}

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
