//! What a step says of each arrangement, and what `check` reads back: only what a ruler finds.

use super::{inches, laid};
use crate::support::{root, run};
use trimwright::assembly::tell::step;
use trimwright::diagnostic::Severity;
use trimwright::readback::read_back;

const PIECES: &str = "  mat:\n    size: 4 x 5 in\n    from: plain\n  tab:\n    size: 1 x 1/2 in\n    from: plain\n  \
                      strip:\n    size: 1/2 x 2 in\n    from: plain\n";

/// The last step's sentence and the last layer's line of a tab or strip with these keys on the mat.
fn said(layer: &str) -> (String, String) {
    let front =
        format!("  - {{place: mat, centre: both ways, glue: tape}}\n  - {{{layer}, onto: mat, glue: liquid}}\n");
    let project = laid(&inches(PIECES, &front));
    let last = project.steps.steps.last().expect("a step");
    let told = step(&project.design, &project.layout, last).line.to_plain().replace('\u{a0}', " ");
    let name = &project.design.layers[1].name;
    let read = read_back(&project).into_iter().rfind(|line| line.trim_start().starts_with(&format!("{name}: ")));
    (told, read.expect("the layer's line"))
}

#[test]
fn turned_layers_are_told_by_their_corners() {
    let (told, read) = said("place: strip, left: 1 in, top: 1 in, turned: 12.5 degrees left about top left");
    // By hand: the lower left corner is 2 in below the upper left; turned, 2 sin 12.5 = 0.4329 to the right of it and
    // 2 cos 12.5 = 1.9526 below; the lower right 0.5 cos 12.5 = 0.4881 and 0.5 sin 12.5 = 0.1082 from that.
    // On a mat of 4 x 5: 1.4329 from the left and 5 - 1 - 1.9526 = 2.0474 from the bottom; 1.9210 and 2.1556.
    assert_eq!(
        told,
        "Glue the strip (4) onto the mat (2), turned 12.5 degrees to the left about its top left corner, which lies 1 from \
         the top and 1 from the left. Its bottom right corner comes about 2 1/8 from the bottom and about 1 15/16 from the left, \
         its top right corner about 7/8 from the top and about 1 1/2 from the left."
    );
    assert!(
        read.starts_with(
            "strip: 1/2 x 2 in, turned 12.5 degrees to the left about its top left corner, on the mat; at least "
        ),
        "{read}"
    );
}

#[test]
fn copies_are_told_one_from_another() {
    let (told, read) = said("place: tab, left: 1/2 in, bottom: 1/2 in, steps: {count: 3, right: 1/4 in, up: 1/8 in}");
    assert_eq!(
        told,
        "Glue 3 tabs (3) onto the mat (2), the first 1/2 from the bottom, 1/2 from the left. Each next one lies 1/4 \
         further to the right and 1/8 higher."
    );
    assert!(read.contains("3 of 1 x 1/2 in in steps, each 1/4 in right and 1/8 in up of the one before"), "{read}");

    let (told, read) = said("place: tab, centre: across, top: 1/2 in, triangle: {rows: 2, gap: 1/8 in, pointing: up}");
    assert_eq!(
        told,
        "Glue 3 tabs (3) onto the mat (2), 1/2 from the top, in the middle from side to side. Leave 1/8 between them. They \
         make a triangle: rows of 1 and 2 from the top."
    );
    assert!(read.contains("3 of 1 x 1/2 in in a triangle pointing up"), "{read}");

    let (told, read) = said("place: strip, centre: both ways, pinwheel: anticlockwise");
    assert_eq!(
        told,
        "Glue 4 strips (4) to the middle of the mat (2). 3/4 shows at each side, 1 1/4 at top and bottom. They go \
         anticlockwise round a square middle: the first upright along the left, the next along the bottom, each edge to edge with \
         the one before. Together they make a square of 2 1/2."
    );
    assert!(read.contains("4 of 1/2 x 2 in anticlockwise round a square middle of 1 1/2 in"), "{read}");

    let (told, read) = said("place: tab, left: 1/4 in, top: 1/2 in, mirrored: left to right");
    assert_eq!(
        told,
        "Glue 2 tabs (3) onto the mat (2), 1/2 from the top, 1/4 from the left. One lies there, the other mirrored: as far \
         from the right as this one from the left."
    );
    assert!(read.contains("and as many again, mirrored from left to right"), "{read}");
}

#[test]
fn fans_are_told_by_their_point_and_corners() {
    let (told, read) =
        said("place: strip, centre: across, bottom: 1 in, fan: {count: 3, step: 30 degrees, about: bottom}");
    // By hand, from the point at 2, 1: upper left corners at -1.2165, +1.6071; -0.25, +2; +0.7835, +1.8571.
    assert_eq!(
        told,
        "Glue 3 strips (4) onto the mat (2) in a fan. Of each, the middle of its bottom edge lies on one point, 1 from the \
         bottom and 2 from the left. The first is turned 30 degrees to the left, each next one 30 degrees further to the right. \
         One after another, their top left corners come about 13/16, 1 3/4 and 2 13/16 from the left, and about 2 5/8, 3 and 2 7/8 \
         from the bottom."
    );
    assert!(read.contains("3 of 1/2 x 2 in in a fan, 30 degrees apart about the middle of its bottom edge"), "{read}");
}

#[test]
fn level_and_midway_are_told_by_what_is_seen() {
    let (told, read) = said("place: tab, right with: mat, midway up: top edge and bottom edge");
    assert_eq!(
        told,
        "Glue the tab (3) onto the mat (2), midway between the top edge and the bottom edge, 2 1/4 from the bottom, its right \
         edge level with the right edge of the mat."
    );
    assert!(
        read.contains("right edge level with that of the mat, midway up between the top edge and the bottom edge"),
        "{read}"
    );

    let (told, read) = said("place: tab, centred across: mat, centred up: mat, shifted: 1/16 in left and 1/8 in up");
    assert_eq!(
        told,
        "Glue the tab (3) onto the mat (2), its middle 1/8 above the middle of the mat, its middle 1/16 left of the middle of \
         the mat."
    );
    assert!(read.contains("shifted 1/16 in left and 1/8 in up"), "{read}");
}

/// The README's example of placing, with the rest of a design round it.
#[test]
fn the_example_in_the_readme_is_read() {
    let readme = std::fs::read_to_string(root().join("README.md")).expect("the README");
    let section = readme.split_once("**Placing**").expect("a section").1;
    let example = section.split_once("```yaml\n").expect("a block").1.split_once("```").expect("its end").0;
    let pieces = [
        ("mat", "4 x 5 1/4 in | 99 x 142 mm"),
        ("panel", "3 3/4 x 5 in | 93 x 136 mm"),
        ("tag", "3/4 x 1/2 in | 20 x 12 mm"),
        ("pearl", "1/8 x 1/8 in | 3 x 3 mm"),
        ("blade", "1/4 x 1 in | 6 x 25 mm"),
        ("heart", "1/2 x 1/2 in | 12 x 12 mm"),
        ("first strip", "1/8 x 1/2 in | 3 x 12 mm"),
        ("second strip", "5/8 x 1/8 in | 15 x 3 mm"),
        ("third strip", "1/8 x 5/8 in | 3 x 15 mm"),
        ("fourth strip", "3/4 x 1/8 in | 18 x 3 mm"),
    ];
    let pieces: String =
        pieces.iter().map(|(name, size)| format!("  {name}: {{size: {size}, from: white}}\n")).collect();
    let text = format!(
        "title: Gate\nmonth: 2027-06\ncards: 1\nunits: inch and metric\n\
         card: {{size: 4 1/4 x 5 1/2 in | 105 x 148 mm, fold: side, from: white}}\n\
         papers: {{white: {{sheets: 4 of letter}}}}\npieces:\n{pieces}{example}"
    );
    let outcome = run(&text);
    let broken: Vec<_> = outcome.findings.iter().filter(|f| f.severity == Severity::Error).collect();
    assert!(broken.is_empty(), "{broken:#?}");
    assert_eq!(outcome.editions.len(), 2);
    assert_eq!(outcome.editions[0].design.layers.len(), 14);
}
