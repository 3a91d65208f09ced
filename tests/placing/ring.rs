//! A ring of strips round a middle, worked by hand in sixteenths of an inch on a front of 68 x 88 of them.

use super::{copies_are, inches, laid};
use crate::support::sound;
use trimwright::geometry::{Polygon, Region};

/// A heart of 16 x 20, which lies from 26 to 42 and from 34 to 54. Strips are 4 wide, each as long as the
/// side that it lies along once those before it lie there:
///
/// | strip  | along  | long by hand       |
/// |--------|--------|--------------------|
/// | first  | left   | 20                 |
/// | second | top    | 16 + 4 = 20        |
/// | third  | right  | 20 + 4 = 24        |
/// | fourth | bottom | 16 + 4 + 4 = 24    |
/// | fifth  | left   | 20 + 4 + 4 = 28    |
/// | sixth  | top    | 24 + 4 = 28        |
const PIECES: &str = "  heart:\n    size: 1 x 1 1/4 in\n    from: plain\n  first:\n    size: 1/4 x 1 1/4 in\n    from: plain\n  \
                      second:\n    size: 1 1/4 x 1/4 in\n    from: plain\n  third:\n    size: 1/4 x 1 1/2 in\n    from: plain\n  \
                      fourth:\n    size: 1 1/2 x 1/4 in\n    from: plain\n  fifth:\n    size: 1/4 x 1 3/4 in\n    from: plain\n  \
                      sixth:\n    size: 1 3/4 x 1/4 in\n    from: plain\n";
const HEART: &str = "  - {place: heart, centre: both ways, glue: tape}\n";

#[test]
fn strips_go_round_edge_to_edge_clockwise() {
    let ring = "  - ring round: heart\n    strips: [first, second, third, fourth, fifth, sixth]\n    starting: left\n    \
                going: clockwise\n    glue: liquid\n";
    let project = sound(&inches(PIECES, &format!("{HEART}{ring}")));
    copies_are(&project, "heart", &[[26, 34, 16, 20]]);
    copies_are(&project, "first", &[[22, 34, 4, 20]]);
    copies_are(&project, "second", &[[22, 54, 20, 4]]);
    copies_are(&project, "third", &[[42, 34, 4, 24]]);
    copies_are(&project, "fourth", &[[22, 30, 24, 4]]);
    copies_are(&project, "fifth", &[[18, 30, 4, 28]]);
    copies_are(&project, "sixth", &[[18, 58, 28, 4]]);
    // They fill 28 x 32 with nothing between and nothing twice: 320 + 2 x 80 + 2 x 96 + 2 x 112 = 896.
    let all: Vec<Polygon> =
        project.layout.layers.iter().flat_map(|layer| layer.laid.iter()).map(|laid| laid.outline.clone()).collect();
    let together = Region::covered_by(&all);
    let sum: i128 = all.iter().map(Polygon::area2).sum();
    let sixteenth = i128::from(super::inch(1, 16));
    assert_eq!(together.area2(), sum);
    assert_eq!(together.area2(), 896 * 2 * sixteenth * sixteenth);
}

#[test]
fn they_go_the_other_way_round_from_another_edge() {
    // From the top to the left: 16 long, then 20 + 4, 16 + 4, 24 + 4.
    let pieces = "  heart:\n    size: 1 x 1 1/4 in\n    from: plain\n  first:\n    size: 1 x 1/4 in\n    from: plain\n  \
                  second:\n    size: 1/4 x 1 1/2 in\n    from: plain\n  third:\n    size: 1 1/4 x 1/4 in\n    from: plain\n  \
                  fourth:\n    size: 1/4 x 1 3/4 in\n    from: plain\n";
    let ring = "  - ring round: heart\n    strips: [first, second, third, fourth]\n    starting: top\n    \
                going: anticlockwise\n    glue: liquid\n";
    let project = sound(&inches(pieces, &format!("{HEART}{ring}")));
    copies_are(&project, "first", &[[26, 54, 16, 4]]);
    copies_are(&project, "second", &[[22, 34, 4, 24]]);
    copies_are(&project, "third", &[[22, 30, 20, 4]]);
    copies_are(&project, "fourth", &[[42, 30, 4, 28]]);
}

#[test]
fn a_strip_named_again_gets_a_number_and_can_be_referred_to() {
    // Opposite strips alike leave corners open; the second `first` lies along the right.
    let ring = "  - ring round: heart\n    strips: [first, second, first, second]\n    starting: left\n    going: clockwise\n    \
                glue: liquid\n  - {place: sixth, left with: first 2, above: second, glue: tape}\n";
    let project = laid(&inches(PIECES, &format!("{HEART}{ring}")));
    copies_are(&project, "first", &[[22, 34, 4, 20]]);
    copies_are(&project, "second", &[[22, 54, 20, 4]]);
    // Its top is level with the top of the strip before, 58.
    copies_are(&project, "first 2", &[[42, 38, 4, 20]]);
    // Its right edge is level with the right of that, 46.
    copies_are(&project, "second 2", &[[26, 30, 20, 4]]);
    copies_are(&project, "sixth", &[[42, 58, 28, 4]]);
    let rings: Vec<usize> = project.design.layers.iter().map(|layer| layer.ring.len()).collect();
    assert_eq!(rings, [0, 1, 2, 3, 4, 0]);
}
