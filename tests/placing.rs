//! Placing layers exactly.

mod arranged;
pub(crate) mod laws;
mod level;
mod refused;
mod ring;
mod said;
mod turned;

use crate::support::{found, run, sound};
use trimwright::geometry::{Edge, Polygon, Rect};
use trimwright::length::{Length, NM_PER_INCH, NM_PER_MM};
use trimwright::project::Project;

/// A design in inches with one paper, the given pieces and the given front.
fn inches(pieces: &str, front: &str) -> String {
    format!(
        "title: Test\nmonth: 2026-11\ncards: 1\nunits: inch\ncard:\n  size: 4 1/4 x 5 1/2 in\n  fold: side\n  from: plain\n\
         papers:\n  plain:\n    sheets: 40 of 12 x 12 in\npieces:\n{pieces}front:\n{front}"
    )
}

/// The outlines of a layer that is asked for by its name.
fn outlines(project: &Project, name: &str) -> Vec<Polygon> {
    let id = project.design.layer_ids().find(|id| project.design.layer(*id).name == name).expect("the layer");
    project.layout.placed(id).laid.iter().map(|laid| laid.outline.clone()).collect()
}

/// The settled layout of a design whose look is of no account here: nothing may be refused when it is read.
fn laid(text: &str) -> Project {
    let outcome = run(text);
    assert!(outcome.editions.len() == 1, "{:#?}", outcome.findings);
    outcome.editions.into_iter().next().expect("an edition")
}

/// Rectangles in sixteenths of an inch: left, bottom, width, height.
fn sixteenths([left, bottom, width, height]: [i64; 4]) -> Rect {
    let step = NM_PER_INCH / 16;
    Rect::at(left * step, bottom * step, width * step, height * step)
}

/// Where the copies of a layer are glued, in sixteenths.
fn copies_are(project: &Project, name: &str, expected: &[[i64; 4]]) {
    let id = project.design.layer_ids().find(|id| project.design.layer(*id).name == name).expect("the layer");
    let expected: Vec<Rect> = expected.iter().copied().map(sixteenths).collect();
    assert_eq!(project.layout.placed(id).copies, expected, "{name}");
    // Where nothing is turned, what is seen is what is glued.
    let outlines: Vec<Rect> = outlines(project, name).iter().map(Polygon::bounds).collect();
    assert_eq!(outlines, expected, "{name}");
}

fn block(project: &Project, name: &str) -> Rect {
    let id = project.design.layer_ids().find(|id| project.design.layer(*id).name == name).expect("the layer");
    project.layout.placed(id).block
}

fn inch(numerator: i64, denominator: i64) -> i64 {
    Length::inch(numerator, denominator).nm()
}

#[test]
fn a_layer_a_quarter_smaller_shows_an_eighth_on_every_edge() {
    // Common practice, no source: a 4 x 5 1/4 in layer centred on a 4 1/4 x 5 1/2 in front.
    let project = sound(&inches(
        "  mat:\n    size: 4 x 5 1/4 in\n    from: plain\n",
        "  - place: mat\n    centre: both ways\n    shows: 1/8 in all round\n    glue: tape\n",
    ));
    let placed = &project.layout.layers[0];
    for edge in Edge::ALL {
        assert_eq!(placed.shows(edge), 3_175_000, "{edge:?}: 1/8 in is 3.175 mm");
    }
}

#[test]
fn distances_are_from_the_same_edge_of_what_it_lies_on() {
    let project = sound(&inches(
        "  mat:\n    size: 4 x 5 in\n    from: plain\n  tab:\n    size: 1 x 1/2 in\n    from: plain\n",
        "  - place: mat\n    left: 1/8 in\n    bottom: 1/4 in\n    glue: tape\n    first:\n\
         \x20     - place: tab\n        as: low tab\n        right: 1/2 in\n        bottom: 3/8 in\n        glue: tape\n\
         \x20     - place: tab\n        as: high tab\n        left: 3/4 in\n        top: 1 in\n        glue: tape\n\
         \x20     - place: tab\n        as: third tab\n        right of: high tab\n        gap: 1/4 in\n        above: low tab\n        gap: 1/4 in\n        glue: tape\n"
            .replace("        above: low tab\n        gap: 1/4 in\n", "        centre: up and down\n")
            .as_str(),
    ));
    assert_eq!(block(&project, "mat"), Rect::at(inch(1, 8), inch(1, 4), 4 * NM_PER_INCH, 5 * NM_PER_INCH));
    let low = block(&project, "low tab");
    assert_eq!(low.right, inch(1, 8) + inch(7, 2), "1/2 in from the mat's right edge");
    assert_eq!(low.bottom, inch(1, 4) + inch(3, 8));
    let high = block(&project, "high tab");
    assert_eq!((high.left, high.top), (inch(7, 8), inch(21, 4) - NM_PER_INCH));
    let third = block(&project, "third tab");
    assert_eq!(third.left, high.right + inch(1, 4));
    assert_eq!(third.bottom + third.top, 2 * inch(1, 4) + 5 * NM_PER_INCH, "in the middle of the mat");
}

#[test]
fn rows_columns_and_grids_lie_edge_to_edge_with_their_gaps() {
    let pieces = "  tile:\n    size: 1 x 3/4 in\n    from: plain\n";
    let row = sound(&inches(
        pieces,
        "  - place: tile\n    centre: both ways\n    row: {count: 3, gap: 1/4 in}\n    glue: tape\n",
    ));
    let copies = &row.layout.layers[0].copies;
    assert_eq!(copies.len(), 3);
    assert_eq!(copies[1].left - copies[0].right, inch(1, 4));
    assert_eq!(row.layout.layers[0].shows(Edge::Left), row.layout.layers[0].shows(Edge::Right));
    assert_eq!(row.layout.layers[0].shows(Edge::Left), inch(3, 8), "4 1/4 less 3 1/2, halved");

    let column = sound(&inches(
        pieces,
        "  - place: tile\n    centre: both ways\n    column: {count: 4, gap: 1/8 in}\n    glue: tape\n",
    ));
    let copies = &column.layout.layers[0].copies;
    assert_eq!(copies[0].bottom - copies[1].top, inch(1, 8), "the first copy is the highest");

    let grid = sound(&inches(
        pieces,
        "  - place: tile\n    left: 1/4 in\n    bottom: 1/2 in\n    grid: {columns: 2, rows: 3, gap across: 1/2 in, gap down: 1/16 in}\n    glue: tape\n",
    ));
    let copies = &grid.layout.layers[0].copies;
    assert_eq!(copies.len(), 6);
    assert_eq!(copies[1].left - copies[0].right, inch(1, 2));
    assert_eq!(copies[0].bottom - copies[2].top, inch(1, 16));
    assert_eq!(copies[4].bottom, inch(1, 2));
}

#[test]
fn a_quarter_turn_swaps_the_sides() {
    let project = sound(&inches(
        "  strip:\n    size: 1/2 x 3 in\n    from: plain\n",
        "  - place: strip\n    turned: quarter left\n    centre: both ways\n    glue: tape\n",
    ));
    let placed = project.layout.layers[0].block;
    assert_eq!((placed.width(), placed.height()), (3 * NM_PER_INCH, inch(1, 2)));
}

#[test]
fn a_strip_cut_too_long_is_trimmed_level() {
    let project = sound(&inches(
        "  mat:\n    size: 4 x 5 1/4 in\n    from: plain\n  rail:\n    size: 4 1/2 x 1/4 in\n    from: plain\n",
        "  - place: mat\n    centre: both ways\n    glue: tape\n    first:\n      - place: rail\n        centre: across\n        top: 3/4 in\n        trim flush: mat\n        glue: liquid\n",
    ));
    let rail = &project.layout.layers[1];
    assert_eq!(rail.shows(Edge::Left), -inch(1, 4), "1/4 in reaches past each end");
    let trimmed = rail.trimmed[0].expect("something is left");
    assert_eq!((trimmed.left, trimmed.right), (inch(1, 8), inch(33, 8)));
    assert_eq!(trimmed.height(), inch(1, 4));
}

#[test]
fn a_centre_between_two_nanometres_is_rounded_half_up_once() {
    // 105 mm less 2.000 001 mm leaves an odd number of nanometres.
    let project = sound(
        "title: Test\nmonth: 2026-11\ncards: 1\nunits: metric\ncard:\n  size: A6\n  fold: none\n  from: plain\npapers:\n  plain:\n    \
         sheets: 4 of A4\npieces:\n  dot:\n    size: 30.000001 x 40 mm\n    from: plain\nfront:\n  - place: dot\n    centre: both ways\n    glue: tape\n",
    );
    let dot = project.layout.layers[0].block;
    assert_eq!(dot.left, (105 * NM_PER_MM - 30_000_001 + 1) / 2);
    assert_eq!(dot.bottom, 54 * NM_PER_MM);
}

#[test]
fn a_false_claim_is_found() {
    let text = inches(
        "  mat:\n    size: 4 x 5 1/4 in\n    from: plain\n",
        "  - place: mat\n    centre: both ways\n    shows: 3/16 in all round\n    glue: tape\n",
    );
    assert!(found(&text).iter().any(|f| f.starts_with("border-unlike-claim@")), "{:?}", found(&text));
}
