//! What the rules find in double-sided paper, pads, kept leftovers and fixed cuts; every number is
//! worked out by hand beside it.

use trimwright::diagnostic::Finding;
use trimwright::length::Units;
use trimwright::pipeline;
use trimwright::source::Source;

/// What is found in a design whose paper `dusk` is said to be `dusk`, and its pieces `pieces`.
fn found(units: &str, dusk: &str, pieces: &str, front: &str) -> Vec<Finding> {
    let text = format!(
        "title: Kite\nmonth: 2026-04\ncards: 2\nunits: {units}\n\
         card: {{size: 4 1/4 x 5 1/2 in | 105 x 148 mm, fold: side, from: white}}\n\
         papers:\n  white: {{sheets: 1 of letter}}\n  dusk:\n{dusk}pieces:\n{pieces}front:\n{front}"
    );
    pipeline::run(&Source::new("design.yaml", text), "design").findings
}

const PANEL: &str = "  panel: {size: 4 x 5 1/4 in | 99 x 142 mm, from: dusk}\n";
const LAID: &str = "  - {place: panel, centre: both ways, glue: tape}\n";

/// The label and the help of every finding of one code.
fn told(findings: &[Finding], code: &str) -> Vec<(String, String)> {
    let of_code = findings.iter().filter(|finding| finding.code == code);
    of_code.map(|finding| (finding.primary.text.clone(), finding.help.clone().unwrap_or_default())).collect()
}

fn row(units: &str, sheets: &str, rows: &str) -> Vec<(String, String)> {
    let findings = found(units, &format!("    sheets: {sheets}\n    cut first:\n{rows}"), PANEL, LAID);
    told(&findings, "fixed-cut-without-room")
}

fn one(label: &str, help: &str) -> Vec<(String, String)> {
    vec![(label.to_owned(), help.to_owned())]
}

#[test]
fn a_fixed_row_is_measured_against_what_is_left() {
    let inch = |sheets: &str, rows: &str| row("inch", sheets, rows);
    // 12 in less 5 1/4 leaves 6 3/4: that is 4 in once and 2 3/4, or 3 5/16 in twice and 1/8.
    let two = "      - 5 1/4 in from the top\n      - 4 in from the bottom, 2 times\n";
    assert_eq!(
        inch("1 of 12 x 12 in", two),
        one("2 times 4 in is 8 in, where 6 3/4 in is left", "say `1 time`, or make it 3 5/16 in")
    );
    // The other way round of the same sheet: 8 1/2 in across letter, 11 in up.
    assert_eq!(inch("2 of letter", "      - 5 1/4 in from the top, 2 times\n"), []);
    assert_eq!(
        inch("2 of letter", "      - 5 1/4 in from the left, 2 times\n"),
        one("2 times 5 1/4 in is 10 1/2 in, where 8 1/2 in is left", "say `1 time`, or make it 4 3/16 in")
    );
    // 7 in leaves 1/2 in beside slices of 1/2 in, of which neither can be held; 3/8 leave 1 in.
    assert_eq!(inch("1 of 12 x 7 in", "      - 3 in from the top, 2 times\n      - 1/2 in from the top\n"), []);
    assert_eq!(
        inch("1 of 12 x 7 1/4 in", "      - 3 in from the top, 2 times\n      - 7/16 in from the top\n"),
        one(
            "cut 1 parts 1 1/4 in into 7/16 in and 13/16 in, neither 1 in to hold",
            "make it 1/4 in, or leave the row out"
        )
    );
    assert_eq!(
        inch("1 of 12 x 12 in", "      - 1/16 in from the top\n"),
        one("1/16 in is under the 1/8 in that a trimmer cuts", "make it 1/8 in or more, or leave the row out")
    );
    assert_eq!(
        inch("1 of 6 x 6 in", "      - 7 in from the top\n"),
        one("7 in from the top, where 6 in is left", "make it 5 15/16 in, or leave the row out")
    );
    // A strip within the sheet is off before the rows: 12 in less 1/2 in is 11 1/2 in.
    let strip = "1 of 12 x 12 in\n    edge strip: 1/2 in at the bottom, within";
    assert_eq!(inch(strip, "      - 5 3/4 in from the top, 2 times\n").len(), 1);
    assert_eq!(inch(strip, "      - 5 11/16 in from the top, 2 times\n"), []);
}

#[test]
fn each_edition_is_measured_by_its_own_figures() {
    // 3 x 3 3/4 in is 11 1/4 of 12 in; 3 x 102 mm is 306, past 304 mm; 101 mm leave 1.
    let both = "      - 3 3/4 in | 102 mm from the top, 3 times\n";
    let dusk = format!("    sheets: 1 of 12 x 12 in\n    cut first:\n{both}");
    let findings = found("inch and metric", &dusk, PANEL, LAID);
    let fault = findings.iter().find(|finding| finding.code == "fixed-cut-without-room").unwrap();
    assert_eq!(fault.edition, Some(Units::Metric));
    assert_eq!(
        told(&findings, "fixed-cut-without-room"),
        one("3 times 102 mm is 306 mm, where 304 mm is left", "say `2 times`, or make it 101 mm")
    );
}

#[test]
fn a_piece_along_an_edge_lies_as_it_is_drawn() {
    let tag = format!("{PANEL}  tag: {{size: 1 x 2 in, from: dusk}}\n");
    let laid = format!("{LAID}  - {{place: tag, onto: panel, centre: both ways, glue: foam}}\n");
    let band = |more: &str, said: &str| {
        let dusk = format!("    sheets: 2 of 6 x 6 in\n{more}    along the edge: {{{said}}}\n");
        told(&found("inch", &dusk, &tag, &laid), "fixed-cut-without-room")
    };
    // Lying, the panel would take 4 in and leave 2 in; as it is drawn it takes 5 1/4 in.
    assert_eq!(
        band("", "panel: top, tag: bottom"),
        one("2 in high, where 3/4 in is left", "make it 3/4 in high, or take it out of `along the edge`")
    );
    // From the left the upright panel leaves 2 in, of which the tag takes 1.
    assert_eq!(band("    pattern: one-way\n", "panel: left, tag: right"), []);
    // Both from one edge: one band after the other.
    assert_eq!(band("    pattern: one-way\n", "tag: left, panel: left"), []);
    assert_eq!(
        band("    pattern: one-way\n", "tag: top, panel: top"),
        one("5 1/4 in high, where 4 in is left", "make it 3 15/16 in high, or take it out of `along the edge`")
    );
}

#[test]
fn the_side_that_shows_decides_how_a_piece_may_lie() {
    // The back has no direction, so a panel that shows it may lie on its side: 5 1/4 x 4 in.
    let dusk = "    sheets: 2 of 6 x 5 in\n    sides: {front: one-way, back: any}\n    turned over: left to right\n";
    let back = PANEL.replace("from: dusk", "from: dusk, side: back");
    assert_eq!(told(&found("inch", dusk, &back, LAID), "larger-than-its-sheet"), []);
    assert_eq!(told(&found("inch", dusk, PANEL, LAID), "larger-than-its-sheet").len(), 1);
    // And it may be laid sideways on the card.
    let sheet = dusk.replace("6 x 5", "6 x 6");
    let small = |side: &str| format!("  panel: {{size: 3 x 4 in, from: dusk, side: {side}}}\n");
    let turned = LAID.replace("glue", "turned: quarter left, glue");
    assert_eq!(told(&found("inch", &sheet, &small("back"), &turned), "laid-sideways"), []);
    assert_eq!(told(&found("inch", &sheet, &small("front"), &turned), "laid-sideways").len(), 1);
}

#[test]
fn a_kept_leftover_is_no_fault_by_itself() {
    let dusk = "    sheets: 2 of 6 x 6 in\n    keep: {tag paper: 1 1/2 x 5 in}\n";
    assert_eq!(found("inch", dusk, PANEL, LAID), []);
    let odd = dusk.replace("1 1/2 x 5 in", "1.3 x 5 in");
    assert_eq!(
        told(&found("inch", &odd, PANEL, LAID), "size-off-the-ruler"),
        one("1.3 in wide, and the ruler's step is 1/16 in", "make it 1 5/16 x 5 in")
    );
    // Nothing can be cut from it that it does not hold.
    let tag = format!("{PANEL}  tag: {{size: 1 1/2 x 3 in, from: tag paper}}\n");
    let laid = format!("{LAID}  - {{place: tag, onto: panel, centre: both ways, glue: foam}}\n");
    assert_eq!(
        told(&found("inch", dusk, &tag, &laid), "too-few-sheets"),
        one("1 sheet gives all but 1 tag", "keep more than 1 of tag paper, or a larger one")
    );
}

#[test]
fn versions_that_show_other_sides_are_not_alike() {
    let dusk = "    sheets: 2 of 6 x 6 in\n    sides: {front: any, back: any}\n    turned over: left to right\n";
    let panel = PANEL.replace("from: dusk", "from: varies");
    let versions = |side: &str| {
        format!(
            "{panel}versions:\n  - {{name: early, cards: 1, papers: {{panel: dusk}}}}\n  \
             - {{name: late, cards: 1, papers: {{panel: dusk}}, side: {side}}}\n"
        )
    };
    assert_eq!(found("inch", dusk, &versions("back"), LAID), []);
    assert_eq!(told(&found("inch", dusk, &versions("front"), LAID), "versions-alike").len(), 1);
}
