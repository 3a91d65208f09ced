//! What cannot be placed is said where it is written, and nothing else with it.

use super::inches;
use crate::support::run;
use trimwright::diagnostic::Severity;
use trimwright::source::Source;

const PIECES: &str = "  mat:\n    size: 4 x 5 in\n    from: plain\n  tab:\n    size: 1 x 1/2 in\n    from: plain\n";

/// The codes of all errors of these layers.
fn codes(front: &str) -> Vec<&'static str> {
    let outcome = run(&inches(PIECES, front));
    outcome.findings.iter().filter(|f| f.severity == Severity::Error).map(|finding| finding.code).collect()
}

/// The only error of these layers: its code and the text it points at.
fn refused(front: &str) -> (String, String) {
    let text = inches(PIECES, front);
    let source = Source::new("design.yaml", text.as_str());
    let outcome = trimwright::pipeline::run(&source, "design");
    let errors: Vec<_> = outcome
        .findings
        .iter()
        .filter(|finding| finding.severity == Severity::Error)
        .map(|finding| (finding.code.to_owned(), text[finding.primary.span.start..finding.primary.span.end].to_owned()))
        .collect();
    assert_eq!(errors.len(), 1, "{front}: {errors:?}");
    errors.into_iter().next().expect("one")
}

fn is(front: &str, code: &str, at: &str) {
    let found = refused(front);
    assert_eq!((found.0.as_str(), found.1.as_str()), (code, at), "{front}");
}

/// A tab with these keys on a mat.
fn tab(keys: &str) -> String {
    format!("  - {{place: mat, centre: both ways, glue: tape}}\n  - {{place: tab, {keys}, glue: tape}}\n")
}

#[test]
fn each_direction_is_placed_once() {
    is(&tab("left: 1 in, left with: mat, bottom: 1 in"), "placed-twice", "left with");
    is(&tab("centre: both ways, midway up: top edge and bottom edge"), "placed-twice", "midway up");
    is(&tab("centred across: mat"), "not-placed", "place: tab");
    is(&tab("row: {count: 2, gap: even}, left: 1 in, bottom: 1 in"), "placed-twice", "left");
    is(&tab("centre: both ways, row: {count: 2, gap: 1/8 in}, pinwheel: clockwise"), "placed-twice", "pinwheel");
    is(&tab("centre: both ways, shifted: 1/8 in left and 1/4 in right"), "placed-twice", "1/4 in right");
}

#[test]
fn turns_are_more_than_nothing_and_less_than_all_round() {
    for turn in ["0 degrees left", "360 degrees left", "12.345 degrees left", "12.5 left", "-5 degrees right"] {
        assert_eq!(refused(&tab(&format!("centre: both ways, turned: {turn}"))).0, "bad-turn", "{turn}");
    }
    is(&tab("centre: both ways, turned: 12.5 degrees up"), "bad-turn", "12.5 degrees up");
    is(&tab("centre: both ways, turned: 12.5 degrees left about nose"), "bad-word", "nose");
    is(&tab("centre: both ways, fan: {count: 3, step: none}"), "bad-turn", "none");
}

#[test]
fn even_gaps_need_room_on_one_thing() {
    is(&tab("row: {count: 5, gap: even}, bottom: 1 in"), "no-room-for-gaps", "row: {count: 5, gap: even");
    let on_copies = "  - {place: tab, as: tabs, centre: both ways, row: {count: 2, gap: 1/8 in}, glue: tape}\n  \
                     - {place: tab, onto: tabs, row: {count: 2, gap: even}, bottom: 0 in, glue: tape}\n";
    is(on_copies, "no-room-for-gaps", "row: {count: 2, gap: even");
    is(&tab("centre: both ways, triangle: {rows: 2, gap: even, pointing: up}"), "bad-word", "even");
}

#[test]
fn nothing_is_measured_across_a_turn() {
    let turned = |first: &str, second: &str| {
        format!(
            "  - {{place: mat, centre: both ways, {first}, glue: tape}}\n  - {{place: tab, {second}, glue: tape}}\n"
        )
    };
    // What is past the edge besides is of no account here.
    let code = |first: &str, second: &str| {
        codes(&turned(first, second)).into_iter().find(|code| *code != "past-the-edge").unwrap_or("nothing")
    };
    let tilt = "turned: 10 degrees left";
    assert_eq!(code(tilt, "left with: mat, bottom: 0 in"), "measured-across-a-turn");
    assert_eq!(code(tilt, "above: mat, left: 0 in"), "measured-across-a-turn");
    assert_eq!(code(tilt, "midway up: bottom edge and mat, left: 0 in"), "measured-across-a-turn");
    assert_eq!(code("turned: 10 degrees left about top", "centred up: mat, left: 0 in"), "measured-across-a-turn");
    assert_eq!(code("fan: {count: 2, step: 5 degrees}", "onto: mat, centre: both ways"), "measured-across-a-turn");
    assert_eq!(
        code("row: {count: 2, gap: 0 in}, turned: 5 degrees left", "onto: mat, centre: both ways"),
        "measured-across-a-turn"
    );
    // A middle stays where it is, and on the turned layer everything is straight.
    let is_read = |front: &str| assert_eq!(run(&inches(PIECES, front)).editions.len(), 1, "{front}");
    is_read(&turned(tilt, "centred across: mat, centred up: mat"));
    is_read(&turned(tilt, "onto: mat, left: 1 in, top: 1 in"));
}

#[test]
fn a_unit_lies_on_what_it_is_put_together_with() {
    let front = "  - place: mat\n    centre: both ways\n    glue: tape\n    first:\n      \
                 - {place: tab, onto: card, centre: both ways, glue: tape}\n";
    is(front, "unit-on-the-card", "card");
}

#[test]
fn a_ring_has_strips_that_are_known() {
    let ring = |middle: &str, strips: &str, start: &str, way: &str| {
        format!(
            "  - {{place: mat, centre: both ways, glue: tape}}\n  \
             - {{ring round: {middle}, strips: {strips}, starting: {start}, going: {way}, glue: tape}}\n"
        )
    };
    is(&ring("mat", "[tab]", "left", "clockwise"), "bad-count", "strips");
    is(&ring("mat", "[tab, tub]", "left", "clockwise"), "unknown-piece", "tub");
    is(&ring("mot", "[tab, tab]", "left", "clockwise"), "unknown-layer", "mot");
    is(&ring("mat", "[tab, tab]", "middle", "clockwise"), "bad-word", "middle");
    is(&ring("mat", "[tab, tab]", "left", "round"), "bad-word", "round");
    is(
        "  - {place: mat, centre: both ways, glue: tape}\n  - {ring round: mat, strips: [tab, tab], starting: left, glue: tape}\n",
        "missing-key",
        "ring round: mat, strips: [tab, tab], starting: left, glue: tape",
    );
}
