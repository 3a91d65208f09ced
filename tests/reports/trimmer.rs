//! What the trimmer and the hand make of a plan: sums worked by hand from figures that are common practice,
//! no source (1/8 in or 3 mm is the least to cut off, 1/32 in the error of a cut, 12 in a usual trimmer).

use crate::support::run;
use trimwright::diagnostic::{Finding, Severity};
use trimwright::source::Source;

/// A file for `cuts` with one paper and pieces as name and size, one of each a card.
fn cuts(cards: u32, head: &str, sheets: &str, pieces: &[(&str, &str)]) -> String {
    let mut text = format!("cards: {cards}\n{head}papers:\n  dusk: {{sheets: 1 of {sheets}}}\npieces:\n");
    for (name, size) in pieces {
        text.push_str(&format!("  {name}: {{size: {size}, from: dusk, per card: 1}}\n"));
    }
    text
}

fn told(text: &str, code: &str) -> Vec<Finding> {
    let findings = run(text).findings;
    assert!(findings.iter().all(|found| found.severity != Severity::Error), "{text}{findings:#?}");
    findings.into_iter().filter(|found| found.code == code).collect()
}

fn label_and_help(findings: &[Finding]) -> Vec<(&str, &str)> {
    findings.iter().map(|found| (found.primary.text.as_str(), found.help.as_deref().unwrap_or_default())).collect()
}

/// 6 in less 5 15/16 in is 1/16 in; 150 mm less 148 mm is 2 mm; 304 mm less three times 101 mm is 1 mm,
/// and a third of 301 mm is 100 mm on the ruler, which leaves 4 mm.
#[test]
fn a_shaving_is_told_with_sizes_that_leave_none_or_enough() {
    let text = cuts(1, "units: inch\n", "6 x 6 in", &[("panel", "2 x 5 15/16 in")]);
    assert_eq!(
        label_and_help(&told(&text, "shaving")),
        [(
            "5 15/16 in from 6 in leaves 1/16 in",
            "make the panel 6 in high, which leaves none, or 5 7/8 in, which leaves 1/8 in"
        )]
    );
    let text = cuts(1, "units: metric\n", "150 x 150 mm", &[("panel", "60 x 148 mm")]);
    assert_eq!(
        label_and_help(&told(&text, "shaving")),
        [(
            "148 mm from 150 mm leaves 2 mm",
            "make the panel 150 mm high, which leaves none, or 147 mm, which leaves 3 mm"
        )]
    );
    let text = cuts(3, "units: metric\n", "304 x 150 mm", &[("panel", "101 x 150 mm")]);
    let found = told(&text, "shaving");
    assert_eq!(
        label_and_help(&found),
        [("3 times 101 mm from 304 mm leaves 1 mm", "make the panel 100 mm wide, which leaves 4 mm")]
    );
    assert_eq!(found[0].severity, Severity::Note);
    let source = Source::new("cuts.yaml", text.clone());
    assert_eq!(source.slice(found[0].others[0].span), "101 x 150 mm");
}

/// 1/8 in and 3 mm may be cut off, and nothing left is no cut; 297 mm is twice 148 mm and 1 mm (ISO 216).
#[test]
fn what_can_be_cut_off_is_no_shaving() {
    for (units, sheets, size) in [
        ("inch", "6 x 6 in", "2 x 5 7/8 in"),
        ("inch", "6 x 6 in", "2 x 6 in"),
        ("metric", "150 x 150 mm", "60 x 147 mm"),
        ("metric", "A4", "210 x 148 mm"),
    ] {
        let cards = if sheets == "A4" { 2 } else { 1 };
        let text = cuts(cards, &format!("units: {units}\n"), sheets, &[("panel", size)]);
        assert_eq!(told(&text, "shaving"), [], "{size}");
    }
}

fn strips(border: &str, workshop: &str, strip: &str) -> String {
    format!(
        "title: Kite\nmonth: 2026-04\ncards: 4\nunits: inch\n{workshop}\
         card: {{size: {border} x 6 in, fold: none, from: white}}\n\
         papers:\n  white: {{sheets: 4 of letter}}\n  dusk: {{sheets: 1 of 12 x 6 in, pattern: one-way}}\n\
         pieces:\n  panel: {{size: {strip} x 5 1/2 in, from: dusk}}\n\
         front:\n  - {{place: panel, centre: both ways, glue: tape}}\n"
    )
}

/// Four strips of 3 in from 12 in take three cuts: 3/32 in in all. 1/16 in hides less than that, 1/8 in
/// more; three cuts of 1/64 in are 3/64 in, which 1/16 in hides. A quarter of 12 in less 1/8 in is 2 31/32
/// in, on the ruler 2 15/16 in.
#[test]
fn errors_add_up_where_the_last_one_must_fit() {
    let found = told(&strips("3 1/8", "", "3"), "errors-add-up");
    assert_eq!(
        label_and_help(&found),
        [(
            "3 cuts, each up to 1/32 in off, are up to 3/32 in",
            "make the panel 2 15/16 in wide, so that the last one is cut by its measure too"
        )]
    );
    assert_eq!((found[0].severity, &*found[0].others[0].text), (Severity::Note, "1/16 in shows beside it"));
    let wide = told(&strips("3 1/4", "", "3"), "errors-add-up");
    let finer = told(&strips("3 1/8", "workshop: {cutting error: 1/64 in}\n", "3"), "errors-add-up");
    for (found, error) in [(wide, "3/32"), (finer, "3/64")] {
        let fact = format!("4 strips of 3 in from 12 in: the last is what remains, up to {error} in off");
        assert_eq!(label_and_help(&found)[0].0, fact);
        assert_eq!((found.len(), found[0].severity), (1, Severity::Note));
    }
    assert_eq!(told(&strips("3 1/8", "", "2 15/16"), "errors-add-up"), []);
}

#[test]
fn two_halves_add_nothing_up() {
    let text = cuts(2, "units: inch\n", "12 x 6 in", &[("panel", "6 x 6 in")]);
    assert_eq!(told(&text, "errors-add-up"), []);
}

/// A sheet of 13 x 19 in is cut 13 in long at the least. 12 in and 305 mm are taken for the trimmer where
/// the design is silent, and then it is only a note.
#[test]
fn a_cut_longer_than_the_trimmer_is_told() {
    let text = |head: &str| cuts(1, head, "13 x 19 in", &[("panel", "5 x 5 in")]);
    let found = told(&text("units: inch\nworkshop: {trimmer: 12 in}\n"), "longer-than-the-trimmer");
    assert_eq!((found.len(), found[0].severity), (1, Severity::Warning));
    assert_eq!(found[0].others[0].text, "the trimmer cuts 12 in");
    let found = told(&text("units: inch\n"), "longer-than-the-trimmer");
    assert_eq!((found.len(), found[0].severity), (1, Severity::Note));
    assert_eq!(told(&text("units: inch\nworkshop: {trimmer: 19 in}\n"), "longer-than-the-trimmer"), []);
    for (units, sheets) in [("inch", "12 x 14 in"), ("metric", "304 x 304 mm"), ("metric", "305 x 305 mm")] {
        let size = if units == "inch" { "12 x 5 in" } else { "100 x 100 mm" };
        let text = cuts(1, &format!("units: {units}\n"), sheets, &[("panel", size)]);
        assert_eq!(told(&text, "longer-than-the-trimmer"), [], "{sheets}");
    }
    // 305 mm is 12 in, so that both editions ask for the same trimmer.
    let both = text("units: inch and metric\nworkshop: {trimmer: 12 in}\n");
    let trimmers: Vec<String> =
        run(&both).editions.iter().map(|project| project.design.workshop.trimmer.to_string()).collect();
    assert_eq!(trimmers, ["12 in", "305 mm"]);
    let none = run(&text("units: inch\nworkshop: {trimmer: 0 in}\n")).findings;
    assert_eq!(none[0].code, "size-not-positive", "{none:#?}");
}

/// 3 13/16 in less 3 3/4 in is 1/16 in, one mark; 3 7/8 in is two marks away.
#[test]
fn measures_one_mark_apart_are_told() {
    let pair = |other: &str| cuts(1, "units: inch\n", "6 x 12 in", &[("panel", "3 3/4 x 5 in"), ("band", other)]);
    let found = told(&pair("3 13/16 x 2 in"), "close-measures");
    assert_eq!(
        label_and_help(&found),
        [("3 3/4 in and 3 13/16 in, 1/16 in apart", "make both 3 3/4 in if the card allows it")]
    );
    assert_eq!(told(&pair("3 7/8 x 2 in"), "close-measures"), []);
    assert_eq!(told(&pair("3 3/4 x 2 in"), "close-measures"), []);
}

/// 3 13/16 in lies between 3 3/4 and 3 7/8 in, 1/16 in before 1/8 in. Half millimetres go the same way.
#[test]
fn odd_sixteenths_are_told_once() {
    let pieces = [("panel", "3 13/16 x 5 in"), ("band", "3 13/16 x 1 1/16 in")];
    let found = told(&cuts(1, "units: inch\n", "letter", &pieces), "odd-sixteenth");
    assert_eq!(
        label_and_help(&found),
        [("3 13/16 in and 1 1/16 in", "make 3 13/16 in 3 3/4 or 3 7/8 in where the card allows it")]
    );
    assert_eq!(told(&cuts(1, "units: inch\n", "letter", &[("panel", "3 7/8 x 5 in")]), "odd-sixteenth"), []);
    let head = "units: metric\nworkshop: {ruler: 0.5 mm}\n";
    let found = told(&cuts(1, head, "A4", &[("panel", "90.5 x 100 mm")]), "odd-sixteenth");
    assert_eq!(label_and_help(&found), [("90.5 mm", "make 90.5 mm 90 or 91 mm where the card allows it")]);
}

/// A mat of 1/8 in is silent, one of 1/16 in a note (it is what a hand may be off), 1/32 in a warning where
/// the ruler has such marks; 1 and 2 mm beside an error of 1.5 mm likewise.
#[test]
fn a_fine_border_is_told_by_how_fine_it_is() {
    let text = |units: &str, ruler: &str, card: &str, border: &str, sheet: &str| {
        format!(
            "title: Kite\nmonth: 2026-04\ncards: 1\nunits: {units}\nworkshop: {{ruler: {ruler}}}\n\
             card: {{size: {card}, fold: side, from: white}}\npapers:\n  white: {{sheets: 2 of {sheet}}}\n\
             pieces:\n  mat: {{size: card less {border} all round, from: white}}\n\
             front:\n  - {{place: mat, centre: both ways, glue: tape}}\n"
        )
    };
    for (border, wanted) in [("1/8 in", None), ("1/16 in", Some(Severity::Note)), ("1/32 in", Some(Severity::Warning))]
    {
        let found = told(&text("inch", "1/32 in", "4 1/4 x 5 1/2 in", border, "letter"), "finer-than-the-hand");
        assert_eq!(found.first().map(|found| found.severity), wanted, "{border}");
    }
    for (border, wanted) in [("2 mm", None), ("1 mm", Some(Severity::Note)), ("0.5 mm", Some(Severity::Warning))] {
        let found = told(&text("metric", "0.5 mm", "A6", border, "A4"), "finer-than-the-hand");
        assert_eq!(found.first().map(|found| found.severity), wanted, "{border}");
    }
}
