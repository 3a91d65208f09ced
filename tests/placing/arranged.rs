//! Copies of one piece: even gaps, steps, triangles, pinwheels, mirrored: worked by hand in sixteenths of
//! an inch on a front of 68 x 88 of them.

use super::{copies_are, found, inch, inches, laid, outlines};
use trimwright::geometry::{Point, Polygon};

/// A tile of 16 x 12, a mat of 64 x 80, and a strip of 16 x 48.
const PIECES: &str = "  tile:\n    size: 1 x 3/4 in\n    from: plain\n  mat:\n    size: 4 x 5 in\n    from: plain\n  \
                      strip:\n    size: 1 x 3 in\n    from: plain\n";

fn one(keys: &str) -> String {
    inches(PIECES, &format!("  - {{place: tile, {keys}, glue: tape}}\n"))
}

#[test]
fn even_gaps_are_as_wide_between_copies_as_at_both_ends() {
    // (68 - 3 x 16) / 4 = 5; (88 - 12) / 2 = 38.
    let row = laid(&one("row: {count: 3, gap: even}, centre: up and down"));
    copies_are(&row, "tile", &[[5, 38, 16, 12], [26, 38, 16, 12], [47, 38, 16, 12]]);
    // (88 - 4 x 12) / 5 = 8, from the top.
    let column = laid(&one("column: {count: 4, gap: even}, left: 1/4 in"));
    copies_are(&column, "tile", &[[4, 68, 16, 12], [4, 48, 16, 12], [4, 28, 16, 12], [4, 8, 16, 12]]);
    // (68 - 2 x 16) / 3 = 12 across; (88 - 3 x 12) / 4 = 13 down.
    let grid = laid(&one("grid: {columns: 2, rows: 3, gap: even}"));
    let at = [[12, 63], [40, 63], [12, 38], [40, 38], [12, 13], [40, 13]];
    copies_are(&grid, "tile", &at.map(|[left, bottom]| [left, bottom, 16, 12]));
    // Even across only: the gap down is 2, so the columns are 3 x 12 + 2 x 2 = 40 high.
    let mixed = laid(&one("grid: {columns: 2, rows: 3, gap across: even, gap down: 1/8 in}, bottom: 1/4 in"));
    let at = [[12, 32], [40, 32], [12, 18], [40, 18], [12, 4], [40, 4]];
    copies_are(&mixed, "tile", &at.map(|[left, bottom]| [left, bottom, 16, 12]));
}

#[test]
fn even_gaps_divide_what_the_copies_lie_on_as_it_lies() {
    // Turned a quarter, the mat is 80 wide and the tile 12: (80 - 3 x 12) / 4 = 11. It begins 6 left of the
    // front, and its middle is at 44.
    let front = "  - place: mat\n    turned: quarter left\n    centre: both ways\n    glue: tape\n    first:\n      \
                 - {place: tile, turned: quarter right, row: {count: 3, gap: even}, centre: up and down, glue: tape}\n";
    let project = laid(&inches(PIECES, front));
    copies_are(&project, "tile", &[[5, 36, 12, 16], [28, 36, 12, 16], [51, 36, 12, 16]]);
}

#[test]
fn even_gaps_divide_the_faces_of_an_envelope() {
    // (92 - 3 x 16) / 4 = 11 on the front, 92 wide; on the flap, 92 x 32, (92 - 2 x 16) / 3 = 20 across and
    // (32 - 12) / 2 = 10 down.
    let front = "  - {place: mat, centre: both ways, glue: tape}\nenvelope:\n  size: 5 3/4 x 4 1/2 in\n  flap: 2 in\n  \
                 front:\n    - {place: tile, row: {count: 3, gap: even}, bottom: 1/4 in, glue: tape}\n  \
                 on the flap:\n    - {place: tile, as: flap tile, grid: {columns: 2, rows: 1, gap: even}, glue: tape}\n";
    let project = laid(&inches(PIECES, front));
    copies_are(&project, "tile", &[[11, 4, 16, 12], [38, 4, 16, 12], [65, 4, 16, 12]]);
    copies_are(&project, "flap tile", &[[20, 10, 16, 12], [56, 10, 16, 12]]);
    // Larger copies than the face has room for are refused as on the card.
    let crowded = front.replace("count: 3", "count: 6");
    assert_eq!(found(&inches(PIECES, &crowded)), ["no-room-for-gaps@28"]);
}

#[test]
fn an_even_gap_is_rounded_once_to_the_nanometre() {
    // Two tiles leave 2 of the mat's 4 in: 50 800 000 nm in three gaps are 16 933 333 1/3 each.
    let front = "  - place: mat\n    centre: both ways\n    glue: tape\n    first:\n      \
                 - {place: tile, row: {count: 2, gap: even}, centre: up and down, glue: tape}\n";
    let project = laid(&inches(PIECES, front));
    let copies = &project.layout.layers[1].copies;
    assert_eq!(copies[1].left - copies[0].right, 16_933_333);
    // What is left over, 33 866 667 nm, is halved: 16 933 333 1/2, rounded up on the left.
    assert_eq!(copies[0].left - inch(1, 8), 16_933_334);
}

#[test]
fn steps_move_each_copy_on_from_the_one_before() {
    let right_up = laid(&one("left: 1/2 in, bottom: 1/2 in, steps: {count: 3, right: 1/4 in, up: 1/8 in}"));
    copies_are(&right_up, "tile", &[[8, 8, 16, 12], [12, 10, 16, 12], [16, 12, 16, 12]]);
    // The block keeps its place: the first copy is the one on the upper right.
    let left_down = laid(&one("left: 1/2 in, bottom: 1/2 in, steps: {count: 3, left: 1/4 in, down: 1/8 in}"));
    copies_are(&left_down, "tile", &[[16, 12, 16, 12], [12, 10, 16, 12], [8, 8, 16, 12]]);
    // In the middle: 16 + 2 x 4 = 24 wide, (68 - 24) / 2 = 22.
    let middle = laid(&one("centre: both ways, steps: {count: 3, right: 1/4 in}"));
    copies_are(&middle, "tile", &[[22, 38, 16, 12], [26, 38, 16, 12], [30, 38, 16, 12]]);
}

#[test]
fn a_triangle_centres_its_rows_over_each_other() {
    // Two rows with gaps of 2: 2 x 16 + 2 = 34 wide, 2 x 12 + 2 = 26 high; the single one (34 - 16) / 2 in.
    let up = laid(&one("left: 1/2 in, bottom: 1/2 in, triangle: {rows: 2, gap: 1/8 in, pointing: up}"));
    copies_are(&up, "tile", &[[17, 22, 16, 12], [8, 8, 16, 12], [26, 8, 16, 12]]);
    let down = laid(&one("left: 1/2 in, bottom: 1/2 in, triangle: {rows: 2, gap: 1/8 in, pointing: down}"));
    copies_are(&down, "tile", &[[8, 22, 16, 12], [26, 22, 16, 12], [17, 8, 16, 12]]);
    // Three rows, 4 across and 2 down: 56 wide, 40 high, each row 10 further in.
    let three = laid(&one(
        "left: 1/4 in, bottom: 0 in, triangle: {rows: 3, gap across: 1/4 in, gap down: 1/8 in, pointing: up}",
    ));
    let at = [[24, 28], [14, 14], [34, 14], [4, 0], [24, 0], [44, 0]];
    copies_are(&three, "tile", &at.map(|[left, bottom]| [left, bottom, 16, 12]));
}

#[test]
fn four_strips_of_a_pinwheel_leave_a_square_middle() {
    // Strips of 16 x 48 make a square of 64 round one of 32; it begins 2 in and 12 up.
    let front = |way: &str| format!("  - {{place: strip, centre: both ways, pinwheel: {way}, glue: tape}}\n");
    let clockwise = laid(&inches(PIECES, &front("clockwise")));
    let at = [[2, 12, 16, 48], [2, 60, 48, 16], [50, 28, 16, 48], [18, 12, 48, 16]];
    copies_are(&clockwise, "strip", &at);
    let quarters: Vec<_> = clockwise.layout.layers[0].laid.iter().map(|laid| laid.angle.whole_quarters()).collect();
    assert_eq!(quarters, [Some(0), Some(3), Some(2), Some(1)], "each a quarter to the right of the one before");
    let anticlockwise = laid(&inches(PIECES, &front("anticlockwise")));
    let at = [[2, 28, 16, 48], [2, 12, 48, 16], [50, 12, 16, 48], [18, 60, 48, 16]];
    copies_are(&anticlockwise, "strip", &at);
    for project in [&clockwise, &anticlockwise] {
        let strips: i128 = outlines(project, "strip").iter().map(Polygon::area2).sum();
        let middle = i128::from(inch(2, 1)).pow(2) * 2;
        assert_eq!(strips + middle, i128::from(inch(4, 1)).pow(2) * 2, "strips and middle fill the square");
    }
}

#[test]
fn mirrored_copies_lie_as_far_from_the_other_edge() {
    let across = laid(&one("left: 1/4 in, top: 1/2 in, mirrored: left to right"));
    copies_are(&across, "tile", &[[4, 68, 16, 12], [48, 68, 16, 12]]);
    let down = laid(&one("left: 1/4 in, top: 1/2 in, row: {count: 2, gap: 1/8 in}, mirrored: top to bottom"));
    copies_are(&down, "tile", &[[4, 68, 16, 12], [22, 68, 16, 12], [4, 8, 16, 12], [22, 8, 16, 12]]);
    let images: Vec<bool> = down.layout.layers[0].laid.iter().map(|laid| laid.mirrored).collect();
    assert_eq!(images, [false, false, true, true]);
    assert_eq!(down.design.layers[0].count(), 4);
}

#[test]
fn a_mirrored_turn_goes_the_other_way() {
    let project = laid(&one("left: 1/2 in, bottom: 2 in, turned: 30 degrees left, mirrored: left to right"));
    let tiles = outlines(&project, "tile");
    // The middle of the front is at 34/16 in: what is so far left of it comes as far right of it.
    let image = |point: &Point| Point::new(inch(17, 4) - point.x, point.y);
    let mut expected: Vec<Point> = tiles[0].outer().iter().map(image).collect();
    let mut seen = tiles[1].outer().to_vec();
    expected.sort();
    seen.sort();
    assert_eq!(seen, expected);
}
