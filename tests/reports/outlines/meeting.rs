//! What is to lie edge to edge.

use super::{codes, of, on_the_front};

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
