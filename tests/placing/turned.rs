//! Turned layers against standard identities: a turn by t to the left takes (x, y) to
//! (x cos t - y sin t, x sin t + y cos t), as in the rotation of axes of any geometry handbook (from memory).

use super::{inch, inches, laid, outlines};
use trimwright::geometry::Point;
use trimwright::length::NM_PER_INCH;

const PIECES: &str = "  square:\n    size: 2 x 2 in\n    from: plain\n  strip:\n    size: 1/2 x 2 in\n    from: plain\n  \
                      long:\n    size: 5 x 1/4 in\n    from: plain\n  tab:\n    size: 1/2 x 1/4 in\n    from: plain\n";

fn corners(text: &str, name: &str) -> Vec<Vec<Point>> {
    outlines(&laid(text), name).iter().map(|outline| outline.outer().to_vec()).collect()
}

/// A corner lies within so many nanometres of a point in inches.
fn comes_to(corners: &[Point], (x, y): (f64, f64), within: f64) {
    let inch = NM_PER_INCH as f64;
    let off = |point: &Point| (point.x as f64 - x * inch).hypot(point.y as f64 - y * inch);
    let nearest = corners.iter().map(off).fold(f64::INFINITY, f64::min);
    assert!(nearest <= within, "no corner at {x}, {y}: {nearest} nm off {corners:?}");
}

#[test]
fn a_square_turned_half_a_quarter_stands_on_its_corner() {
    // Its corners are half a diagonal, the root of 2, from its middle at 2 1/8, 2 3/4.
    let text = inches(PIECES, "  - {place: square, centre: both ways, turned: 45 degrees left, glue: tape}\n");
    let square = &corners(&text, "square")[0];
    let diagonal = core::f64::consts::SQRT_2;
    for (x, y) in [(0.0, 1.0), (0.0, -1.0), (1.0, 0.0), (-1.0, 0.0)] {
        comes_to(square, (2.125 + x * diagonal, 2.75 + y * diagonal), 1.0);
    }
}

#[test]
fn a_strip_of_five_reaches_four_across_and_three_up() {
    // The triangle of 3, 4 and 5: its lesser angle is arctan 3/4 = 36.8699 degrees (any table of triangles, from
    // memory). 36.87 degrees are 0.0001 more, which at 5 in is 230 nm.
    let front = |side: &str, corner: &str| {
        format!(
            "  - {{place: long, left: 1/8 in, bottom: 1 in, turned: 36.87 degrees {side} about {corner}, glue: tape}}\n"
        )
    };
    let left = &corners(&inches(PIECES, &front("left", "bottom left")), "long")[0];
    comes_to(left, (0.125, 1.0), 0.0);
    comes_to(left, (4.125, 4.0), 240.0);
    // To the right about its top left corner: four across and three down.
    let right = &corners(&inches(PIECES, &front("right", "top left")), "long")[0];
    comes_to(right, (0.125, 1.25), 0.0);
    comes_to(right, (4.125, -1.75), 240.0);
}

#[test]
fn the_point_turned_about_stays() {
    // The strip lies from 1 to 1 1/2 and from 1 to 3.
    let points = [
        ("middle", (1.25, 2.0)),
        ("top left", (1.0, 3.0)),
        ("top", (1.25, 3.0)),
        ("top right", (1.5, 3.0)),
        ("left", (1.0, 2.0)),
        ("right", (1.5, 2.0)),
        ("bottom left", (1.0, 1.0)),
        ("bottom", (1.25, 1.0)),
        ("bottom right", (1.5, 1.0)),
        ("{left: 1/4 in, bottom: 3 in}", (1.25, 4.0)),
    ];
    let (sine, cosine) = (0.5, core::f64::consts::FRAC_PI_6.cos());
    for (about, (x, y)) in points {
        let text = inches(
            PIECES,
            &format!(
                "  - {{place: strip, left: 1 in, bottom: 1 in, turned: {{by: 30 degrees left, about: {about}}}, glue: tape}}\n"
            ),
        );
        let strip = &corners(&text, "strip")[0];
        for corner in [(1.0, 1.0), (1.5, 1.0), (1.5, 3.0), (1.0, 3.0)] {
            let (right, up) = (corner.0 - x, corner.1 - y);
            comes_to(strip, (x + right * cosine - up * sine, y + right * sine + up * cosine), 1.0);
        }
    }
}

#[test]
fn quarters_by_degrees_are_exact() {
    let straight = inches(PIECES, "  - {place: strip, centre: both ways, turned: quarter left, glue: tape}\n");
    let degrees = inches(PIECES, "  - {place: strip, centre: both ways, turned: 90 degrees left, glue: tape}\n");
    let sorted = |text: &str| {
        let mut corners = corners(text, "strip").remove(0);
        corners.sort();
        corners
    };
    assert_eq!(sorted(&straight), sorted(&degrees));
}

#[test]
fn what_lies_on_a_turned_layer_turns_along() {
    // The square lies from 18 to 50 and from 28 to 60 sixteenths; about its lower left corner a quarter to the left
    // it comes to -14 to 18. The tab is 2 in and 4 up on it, 8 x 4: turned, -8 to -4 and 2 to 10 from that corner.
    let front = "  - place: square\n    centre: both ways\n    turned: 90 degrees left about bottom left\n    glue: tape\n    first:\n      \
                 - {place: tab, left: 1/8 in, bottom: 1/4 in, glue: tape}\n";
    let project = laid(&inches(PIECES, front));
    let square = outlines(&project, "square")[0].bounds();
    assert_eq!(
        (square.left, square.right, square.bottom, square.top),
        (-inch(14, 16), inch(18, 16), inch(28, 16), inch(60, 16))
    );
    let tab = outlines(&project, "tab")[0].bounds();
    assert_eq!((tab.left, tab.right, tab.bottom, tab.top), (inch(10, 16), inch(14, 16), inch(30, 16), inch(38, 16)));
    // Straight on the square all the same: the reader measures from its edges.
    assert_eq!(project.layout.layers[1].copies[0].left - project.layout.layers[1].onto.left, inch(1, 8));
}

#[test]
fn a_fan_opens_evenly_about_one_point() {
    // Three strips, 30 degrees apart about the middle of the bottom edge, at 2 1/8, 1. The upper left corner is 1/4 to
    // the left and 2 up from it: sin 30 = 1/2, cos 30 = root 3 / 2.
    let text = inches(
        PIECES,
        "  - {place: strip, centre: across, bottom: 1 in, fan: {count: 3, step: 30 degrees, about: bottom}, glue: tape}\n",
    );
    let strips = corners(&text, "strip");
    assert_eq!(strips.len(), 3);
    let root = 3.0_f64.sqrt() / 2.0;
    comes_to(&strips[0], (2.125 - 0.25 * root - 1.0, 1.0 - 0.125 + 2.0 * root), 1.0);
    comes_to(&strips[1], (1.875, 3.0), 0.0);
    comes_to(&strips[2], (2.125 + 0.25 * root + 1.0, 1.0 - 0.125 + 2.0 * root), 1.0);
    // An even count stands half a step to each side.
    let text = inches(
        PIECES,
        "  - {place: strip, centre: across, bottom: 1 in, fan: {count: 2, step: 60 degrees, about: bottom}, glue: tape}\n",
    );
    let pair = corners(&text, "strip");
    assert_eq!((&pair[0], &pair[1]), (&strips[0], &strips[2]));
}
