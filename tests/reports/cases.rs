//! Broken designs with several mistakes in one: each gives its code at its line, and the numbers of
//! the mend are worked out by hand beside it.

use trimwright::diagnostic::{Finding, Severity};
use trimwright::pipeline;
use trimwright::source::Source;

/// A sound design in which every line can be broken. Lines are counted from 1.
const SOUND: &str = "\
title: Wren
month: 2026-05
cards: 4
units: inch
card:
  size: 4 1/4 x 5 1/2 in
  fold: side
  from: white
papers:
  white: {sheets: 2 of letter}
  slate: {sheets: 1 of letter}
  dusk: {sheets: 1 of 12 x 12 in, pattern: one-way}
pieces:
  mat: {size: card less 1/8 in all round, from: slate}
  panel: {size: 3 3/4 x 5 in, from: dusk}
  tag: {size: 1 x 2 in, from: dusk}
  rail: {size: 4 1/2 x 1/4 in, from: dusk}
front:
  - place: mat
    centre: both ways
    glue: tape
    first:
      - place: panel
        centre: both ways
        shows: 1/8 in all round
        glue: tape
      - place: rail
        centre: across
        top: 1 in
        trim flush: mat
        glue: liquid
      - place: tag
        onto: panel
        centre: across
        below: rail
        gap: 1/4 in
        row: {count: 2, gap: 1/2 in}
        glue: foam
";

fn found(changes: &[(&str, &str)]) -> (Source, Vec<Finding>) {
    let mut text = SOUND.to_owned();
    for (from, to) in changes {
        assert_eq!(text.matches(from).count(), 1, "`{from}` stands there once");
        text = text.replace(from, to);
    }
    let source = Source::new("wren.yaml", text);
    let findings = pipeline::run(&source, "wren").findings;
    (source, findings)
}

/// Code and line of each error and warning, in order: notes hang on how the planner cuts.
fn codes(changes: &[(&str, &str)]) -> Vec<(&'static str, usize)> {
    let (source, findings) = found(changes);
    let loud = findings.iter().filter(|finding| finding.severity != Severity::Note);
    loud.map(|f| (f.code, source.position(f.primary.span.start).line)).collect()
}

/// The help of the one finding of a code.
fn help(changes: &[(&str, &str)], code: &str) -> String {
    let (_, findings) = found(changes);
    let of: Vec<&Finding> = findings.iter().filter(|finding| finding.code == code).collect();
    assert_eq!(of.len(), 1, "{findings:#?}");
    of[0].help.clone().unwrap()
}

#[test]
fn the_sound_design_is_sound() {
    assert_eq!(codes(&[]), []);
}

#[test]
fn a_panel_too_large_both_ways() {
    // The mat is 4 x 5 1/4: a step of 1/16 at each edge leaves 3 7/8 x 5 1/8.
    let change = [("3 3/4 x 5 in", "4 1/4 x 5 1/2 in"), ("        shows: 1/8 in all round\n", "")];
    assert_eq!(codes(&change), [("past-the-edge", 15)]);
    assert_eq!(help(&change, "past-the-edge"), "make it 3 7/8 x 5 1/8 in or smaller, or say `trim flush: mat`");
    let (_, findings) = found(&change);
    let past = findings.iter().find(|finding| finding.code == "past-the-edge").unwrap();
    assert_eq!(past.primary.text, "1/4 in wider and 1/4 in higher than the mat");
}

#[test]
fn a_row_too_wide_for_its_panel() {
    // Three tags of 1 in and two gaps of 1/2 in are 4 in on a panel of 3 3/4: (3 3/4 - 3) / 2 = 3/8.
    let change = [("count: 2", "count: 3")];
    assert_eq!(codes(&change), [("past-the-edge", 32)]);
    assert_eq!(help(&change, "past-the-edge"), "make the gap 3/8 in or less");
    // Four without any gap are 4 in: each may be 3 3/4 / 4 less the gaps: (3 3/4 - 3 x 1/2) / 4 = 9/16.
    let change = [("count: 2", "count: 4")];
    assert_eq!(help(&change, "past-the-edge"), "make each 9/16 in wide or less");
}

#[test]
fn a_tag_that_hangs_too_low() {
    // The rail ends 1 1/4 in below the mat's top, 1 1/8 in below the panel's. A tag 2 in high and
    // 2 1/2 in lower still ends 5 5/8 in below it: 5/8 in too low on a panel of 5 in.
    let change = [("gap: 1/4 in\n", "gap: 2 1/2 in\n")];
    assert_eq!(codes(&change), [("past-the-edge", 32)]);
    assert_eq!(help(&change, "past-the-edge"), "lay it 5/8 in further up");
}

#[test]
fn a_tag_beside_and_below_at_once() {
    let change = [(
        "        centre: across\n        below: rail\n        gap: 1/4 in\n",
        "        left: 2 in\n        bottom: 4 in\n",
    )];
    let (_, findings) = found(&change);
    assert_eq!(findings.len(), 1);
    // 2 + 2 1/2 = 4 1/2 of 3 3/4; 4 + 2 = 6 of 5.
    assert_eq!(findings[0].primary.text, "reaches 3/4 in past the right edge and 1 in past the top edge of the panel");
    assert_eq!(findings[0].help.as_deref(), Some("say `left: 1 1/4 in` or less and say `bottom: 3 in` or less"));
}

#[test]
fn several_mistakes_are_told_in_the_order_of_the_text() {
    let change = [
        ("rail: {size: 4 1/2", "rail: {size: 3 7/8"),
        ("  - place: mat\n    centre: both ways\n    glue: tape\n", "  - place: mat\n    centre: both ways\n"),
        ("shows: 1/8 in all round", "shows: 1/4 in all round"),
        ("gap: 1/2 in}", "gap: 17/32 in}"),
    ];
    assert_eq!(
        codes(&change),
        [("short-of-its-edge", 17), ("no-glue", 19), ("border-unlike-claim", 24), ("border-off-the-ruler", 31),]
    );
}

#[test]
fn a_rail_trimmed_to_the_panel_is_trimmed_too_late() {
    // The panel lies on the mat by then, and 1/8 in of the mat shows at each side.
    let change = [("trim flush: mat", "trim flush: panel")];
    assert_eq!(codes(&change), [("trimmed-too-late", 30)]);
    let (_, findings) = found(&change);
    assert_eq!(findings[0].primary.text, "1/8 in of the mat shows at the left and right");
    // Level with the card it may be trimmed at any time: at 4 1/2 in, 1/8 in is left at each end.
    assert_eq!(codes(&[("trim flush: mat", "trim flush: card")]), []);
}

#[test]
fn one_way_paper_turned() {
    let change = [
        ("  tag: {size: 1 x 2 in", "  tag: {size: 2 x 1 in"),
        ("        glue: foam", "        turned: quarter right\n        glue: foam"),
    ];
    assert_eq!(codes(&change), [("laid-sideways", 32)]);
    assert_eq!(
        help(&change, "laid-sideways"),
        "take `turned: quarter right` out, and make a piece of 1 x 2 in for this place"
    );
    // Any other paper may be turned, and half a turn does not hurt two-way paper.
    assert_eq!(codes(&[change[0], change[1], (", pattern: one-way", "")]), []);
    let half = ("        glue: foam", "        turned: half\n        glue: foam");
    assert_eq!(codes(&[half]), [("laid-sideways", 32)]);
    assert_eq!(codes(&[half, ("one-way", "two-way")]), []);
}

#[test]
fn sheets_are_counted_by_paper() {
    // Four bases need two sheets, four mats one, and five of each do not fit.
    let change = [("cards: 4", "cards: 5")];
    let (source, findings) = found(&change);
    let told: Vec<(&str, &str)> = findings.iter().map(|f| (f.code, source.slice(f.primary.span))).collect();
    let proposed = ("hard-by-eye", "place: tag");
    assert_eq!(told, [("too-few-sheets", "2 of letter"), ("too-few-sheets", "1 of letter"), proposed]);
    assert_eq!(findings[0].primary.text, "2 sheets give all but 1 base");
    assert_eq!(findings[0].others[0].text, "the sheets give 4 cards at most");
    assert_eq!(findings[1].help.as_deref(), Some("take more than 1 sheet of slate, or make 4 cards"));
}

#[test]
fn a_sheet_too_small_is_not_also_too_few() {
    let change = [("1 of 12 x 12 in, pattern: one-way", "9 of 5 x 4 in, pattern: one-way")];
    assert_eq!(codes(&change), [("larger-than-its-sheet", 15)]);
    // On its side the panel would fit into 5 x 4 in, and its pattern forbids it.
    assert_eq!(
        help(&change, "larger-than-its-sheet"),
        "make it 3 3/4 x 4 in or smaller, or take larger sheets of dusk"
    );
}

#[test]
fn an_edition_is_named_where_only_one_fails() {
    let text = SOUND
        .replace("units: inch", "units: inch and metric")
        .replace("size: 4 1/4 x 5 1/2 in", "size: 4 1/4 x 5 1/2 in | 105 x 148 mm")
        .replace("1/8 in all round", "1/8 in | 3 mm all round")
        .replace("3 3/4 x 5 in", "3 3/4 x 5 in | 94 x 136 mm")
        .replace("1 x 2 in", "1 x 2 in | 25 x 50 mm")
        .replace("4 1/2 x 1/4 in", "4 1/2 x 1/4 in | 114 x 6 mm")
        .replace("top: 1 in", "top: 1 in | 25 mm")
        .replace("gap: 1/4 in", "gap: 1/4 in | 6 mm")
        .replace("gap: 1/2 in}", "gap: 1/2 in | 12 mm}");
    let source = Source::new("wren.yaml", text);
    let findings = pipeline::run(&source, "wren").findings;
    let told = trimwright::cli::report::text(&source, &findings, false);
    // 94 mm on a mat of 99 mm leaves 2 1/2 mm at each side, and a tag row of 62 mm on 94 mm is even.
    assert_eq!(
        told,
        "\
error[border-unlike-claim]: in the metric edition the border of the mat round the panel is not what `shows` says
  --> wren.yaml:25:16
14 |   mat: {size: card less 1/8 in | 3 mm all round, from: slate}
   |               --------------------------------- the mat is 99 x 142 mm
15 |   panel: {size: 3 3/4 x 5 in | 94 x 136 mm, from: dusk}
   |                 -------------------------- the panel is 94 x 136 mm
25 |         shows: 1/8 in | 3 mm all round
   |                ^^^^^^^^^^^^^^^^^^^^^^^ 2.5 mm shows at the left and right
   = help: make the panel 93 x 136 mm, or say `shows: 2.5 mm left, 3 mm top, 2.5 mm right, 3 mm bottom`

note[hard-by-eye]: the tag is hard to lay by eye
  --> wren.yaml:32:9
32 |       - place: tag
   |         ^^^^^^^^^^ its gaps must be equal
   = help: say `frames: all that help` for 1 placing frame, or `frames: [tag on panel]` for this 1
"
    );
}
