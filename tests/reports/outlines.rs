//! The rules about how layers lie, held to sums worked by hand beside them: turned by the sine and cosine of
//! any table (sin 30 = 1/2, cos 30 = 0.866 025, tan 30 = 0.577 350; from memory), and by Pythagoras.

mod folds;
mod hidden;
mod meeting;
mod trimmed;

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
