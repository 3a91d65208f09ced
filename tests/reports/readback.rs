//! What `check` reads back of a sound design, against figures worked out by hand.

use crate::support::source_at;
use std::path::Path;
use trimwright::pipeline;
use trimwright::readback::read_back;
use trimwright::source::Source;

fn demo(name: &str) -> Source {
    let path = format!("{}/designs/{name}.yaml", env!("CARGO_MANIFEST_DIR"));
    source_at(Path::new(&path), &format!("designs/{name}.yaml"))
}

/// A card of 100 x 140 mm: a mat 6 mm smaller all round is 88 x 128 and shows 6; three tags of 20
/// with gaps of 8 are 76 wide, so 6 stay at either side of the mat; 128 - 10 - 30 = 88 below them.
const WORKED: &str = "\
title: Kite
month: 2026-04
cards: 3
units: metric
card: {size: 100 x 140 mm, fold: top, from: white}
papers:
  white: {sheets: 3 of A4}
  slate: {sheets: 2 of A4}
pieces:
  mat: {size: card less 6 mm all round, from: slate}
  tag: {size: 20 x 30 mm, from: slate}
  rail: {size: 110 x 8 mm, from: slate}
front:
  - place: mat
    centre: both ways
    glue: tape
    first:
      - place: tag
        centre: across
        top: 10 mm
        row: {count: 3, gap: 8 mm}
        glue: foam
      - place: rail
        centre: across
        below: tag
        gap: 5 mm
        trim flush: mat
        glue: liquid
";

#[test]
fn every_border_and_gap_is_read_back() {
    let source = Source::new("design.yaml", WORKED);
    let outcome = pipeline::run(&source, "design");
    let lines = read_back(&outcome.editions[0]);
    let expected = [
        "Kite, metric edition: 3 cards of 100 x 140 mm, folded at the top.",
        "Each base is cut 100 x 280 mm from white.",
        "The base is taken for 300 g/m2 and about 0.33 mm thick: score it.",
        "mat: 88 x 128 mm, the card less 6 mm all round.",
        "mat: 88 x 128 mm, on the card; 6 mm shows all round; tape.",
        "  tag: 3 of 20 x 30 mm in a row, on the mat; 6 mm shows at the left and right, 10 mm at the top, \
         88 mm at the bottom; 8 mm between them; foam.",
        "  rail: 110 x 8 mm, on the mat, 5 mm below the tag; 45 mm shows at the top, 75 mm at the bottom; \
         11 mm over at the left and right, trimmed flush with the mat; liquid glue.",
    ];
    assert_eq!(lines[..expected.len()], expected);
    // Two bases of 100 x 280 mm come side by side from a sheet of A4. Two sheets are cut alike, which
    // is one diagram and gives a base to spare.
    // Tape 3 mm inside the edge: twice 122 and 82 mm round a mat, 3 mats. A square at each corner of 9 tags.
    assert_eq!(lines[7], "Glue in all: 1224 mm of tape, liquid glue for 3 pieces and 36 foam squares.");
    // The envelope and the post have their own test.
    assert!(lines[8].starts_with("Envelope: C6 envelope, 162 x 114 mm"), "{}", lines[8]);
    assert!(lines[15].contains("Ask your post office"), "{}", lines[15]);
    assert_eq!(lines[16], "white: 2 of 3 sheets (210 x 297 mm) give 4 bases, 1 base of them spare; 1 sheet to spare.");
    assert_eq!(lines[17], "slate: 1 of 2 sheets (210 x 297 mm) gives 3 mats, 9 tags and 3 rails; 1 sheet to spare.");
    assert!(lines[18].contains("3 sheets"), "{}", lines[18]);
    assert_eq!(lines.len(), 19);
}

#[test]
fn the_demos_are_read_back_without_a_word_of_complaint() {
    for (name, editions) in [("lantern-row", 2), ("kitchen-garden", 1)] {
        let source = demo(name);
        let outcome = pipeline::run(&source, name);
        let loud: Vec<_> =
            outcome.findings.iter().filter(|f| f.severity != trimwright::diagnostic::Severity::Note).collect();
        assert!(loud.is_empty(), "{name}: {loud:#?}");
        assert_eq!(outcome.editions.len(), editions);
        for project in &outcome.editions {
            let lines = read_back(project);
            // Each layer, version and paper has its line; every sheet of both demos is needed.
            for layer in &project.design.layers {
                assert!(lines.iter().any(|line| line.trim_start().starts_with(layer.name.as_str())), "{}", layer.name);
            }
            for version in &project.design.versions {
                assert!(lines.iter().any(|line| line.starts_with(&format!("Version {}, ", version.name))));
            }
            for paper in &project.design.papers {
                assert!(lines.iter().any(|line| line.starts_with(&format!("{}: ", paper.name))), "{}", paper.name);
            }
        }
    }
}

/// Sums by hand: the mat is 4 x 5 1/4 in; 4 in less two gaps of 1/8 in are 3 3/4 in, a third of which is
/// 1 1/4 in; less 1/2 in and 1/8 in they are 3 3/8 in.
const RELATED: &str = "\
title: Gate
month: 2026-04
cards: 1
units: inch
card: {size: 4 1/4 x 5 1/2 in, fold: side, from: white}
papers:
  white: {sheets: 1 of letter}
  slate: {sheets: 3 of letter}
pieces:
  panel: {size: mat less left 1/8 in and top 1/4 in, from: slate}
  mat: {size: card less 1/8 in all round, from: slate}
  bar: {size: {width: 1/2 in, height: as high as mat less 1/4 in}, from: slate}
  slat:
    size:
      width: share of mat, 3 evenly with gap 1/8 in
      height: half of the width of mat
    from: slate
  field:
    size:
      width: rest of mat after bar with gap 1/8 in
      height: a quarter of mat plus 3/16 in
    from: slate
  tag: {size: {width: 1 in, height: 2 in}, from: slate}
front:
  - {place: mat, centre: both ways, glue: tape}
";

#[test]
fn each_related_size_is_read_back_with_what_it_comes_from() {
    let lines = |text: &str| read_back(&pipeline::run(&Source::new("design.yaml", text), "design").editions[0]);
    let related = [
        "panel: 3 7/8 x 5 in, the mat less 1/8 in at the left and 1/4 in at the top.",
        "mat: 4 x 5 1/4 in, the card less 1/8 in all round.",
        "bar: 1/2 x 5 in, the width 1/2 in; the height as high as the mat less 1/4 in.",
        "slat: 1 1/4 x 2 in, the width a share of the mat, 3 evenly with gap 1/8 in; \
         the height half of the width of the mat.",
        "field: 3 3/8 x 1 1/2 in, the width the rest of the mat after the bar with gap 1/8 in; \
         the height a quarter of the mat plus 3/16 in.",
    ];
    let read = lines(RELATED);
    assert_eq!(read[3..8], related);
    assert!(read[8].starts_with("mat: 4 x 5 1/4 in, on the card"), "{}", read[8]);
    // In a file for `cuts` it stands with the count; what is said outright has nothing to add.
    let cuts = "cards: 1\npapers: {fog: {sheets: 1 of letter}}\npieces:\n\
                \u{20} kite: {size: 2 7/8 x 3 3/4 in, from: fog, per card: 1}\n\
                \u{20} window: {size: kite less 1/4 in all round, from: fog, per card: 2}\n";
    let read = lines(cuts);
    assert_eq!(read[1], "kite: 2 7/8 x 3 3/4 in, 1 a card.");
    assert_eq!(read[2], "window: 2 3/8 x 3 1/4 in, the kite less 1/4 in all round; 2 a card.");
}

/// Sheets of 200 x 300 mm; what is said of them is read back as it was said, and a leftover that is
/// kept is a piece of its source and gives pieces of its own.
const SAID: &str = "\
title: Heron
month: 2026-04
cards: 4
units: metric
card: {size: 100 x 140 mm, fold: top, from: white}
papers:
  white: {sheets: 4 of A4}
  pond:
    sheets: 2 of 200 x 300 mm
    sides: {front: one-way, back: any}
    turned over: top to bottom
    sheets are: different
    keep: {tag paper: 40 x 150 mm, slip paper: 2 of 30 x 40 mm}
  reed:
    sheets: 1 of 300 x 300 mm
    also from:
      - 2 of A4
      - 1 of A4 and 4 of 150 x 150 mm
    cut first:
      - 90 mm from the top, 2 times
      - 40 mm from the left
    along the edge: {mat: bottom}
    ways to cut: 2
pieces:
  mat: {size: card less 10 mm all round, from: reed}
  wave: {size: 60 x 20 mm, from: varies}
  shell: {size: 20 x 20 mm, from: tag paper, side: back}
versions:
  - {name: ebb, cards: 2, papers: {wave: pond}, side: back}
  - {name: flood, cards: 2, papers: {wave: pond}}
front:
  - {place: mat, centre: both ways, glue: tape}
  - {place: wave, onto: mat, centre: across, top: 10 mm, glue: liquid}
  - {place: shell, onto: mat, centre: across, below: wave, gap: 10 mm, glue: foam}
";

#[test]
fn what_is_said_of_a_paper_is_read_back() {
    let outcome = pipeline::run(&Source::new("design.yaml", SAID), "design");
    let lines = read_back(&outcome.editions[0]);
    let from = |start: &str| lines.iter().position(|line| line.starts_with(start)).unwrap();
    assert_eq!(lines[from("Version ebb")], "Version ebb, 2 cards: wave from the back of pond.");
    assert_eq!(lines[from("Version flood")], "Version flood, 2 cards: wave from pond.");
    let pond = [
        "  The front is one-way, the back any way up; the sheet is turned over from top to bottom.",
        "  The back shows on: wave of ebb.",
        "  The sheets differ from one another, so all that are used are cut alike.",
        "  Kept whole: 1 tag paper of 40 x 150 mm and 2 slip papers of 30 x 40 mm.",
    ];
    assert_eq!(lines[from("pond: ") + 1..from("reed: ")], pond);
    let reed = [
        "  The first row along the bottom gives every mat.",
        "  Cut first: 90 mm from the top, 2 times, then 40 mm from the left.",
        "  Also planned from 2 of 210 x 297 mm, or from 1 of 210 x 297 mm and 4 of 150 x 150 mm.",
        "  2 ways to cut it are printed.",
    ];
    assert_eq!(lines[from("reed: ") + 1..from("tag paper: ")], reed);
    // Four shells of 20 mm from a leftover of 40 x 150 mm; nothing is cut from the other.
    assert_eq!(
        lines[from("tag paper: ")..from("slip paper: ")],
        ["tag paper: 1 of 1 leftover of pond (40 x 150 mm) gives 4 shells.", "  The back shows on: shell."]
    );
    assert_eq!(lines[from("slip paper: ")], "slip paper: 2 leftovers of pond (30 x 40 mm), kept for later.");
}
