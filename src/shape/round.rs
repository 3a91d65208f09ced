//! Curves as lines short enough that nobody can tell: arcs, circles and ovals.

use crate::geometry::Point;
use core::f64::consts::FRAC_PI_2;

/// The most that a line may stay within the curve it stands for: 1 µm.
pub const CHORD_ERROR: i64 = 1_000;

/// The largest circle or oval, 48 in across: with it an outline has 1 744 corners, less than a ring may have.
pub const LARGEST_ROUND: i64 = 48 * crate::length::NM_PER_INCH;

/// How many equal steps a quarter of a circle needs. On an ellipse the same steps of the angle stay within
/// the bound of its longer half axis, since it is a circle squeezed in one direction.
pub(super) fn steps(radius: f64) -> u32 {
    // A line over an angle of 2a stays radius * (1 - cos a) within its arc, which is at most
    // radius * a^2 / 2; 2 nm are kept for rounding the corners.
    let half = libm::sqrt(2.0 * (CHORD_ERROR - 2) as f64 / radius.max(1.0));
    // Even, so that the middle of the quarter is a corner; at least 4.
    let steps = libm::ceil(FRAC_PI_2 / (2.0 * half)) as u32;
    steps.max(4).next_multiple_of(2)
}

/// Offsets from the corner of a frame to a quarter of an ellipse with the axes `width` and `height` whose
/// lower left quarter is nearest to that corner: from the left edge down to the bottom edge, ends included.
///
/// Widths are whole axes, so that an odd one needs no half nanometre; the last offset along an edge is half
/// of it, rounded to the nearest nanometre. On a circle offset `k` mirrors offset `n - k`.
pub(super) fn quarter(width: i64, height: i64) -> Vec<Point> {
    let steps = steps(width.max(height) as f64 / 2.0);
    (0..=steps)
        .map(|step| {
            let (cosine, sine) = unit(step, steps);
            let offset = |axis: i64, share: f64| libm::round(axis as f64 / 2.0 * (1.0 - share)) as i64;
            Point::new(offset(width, cosine), offset(height, sine))
        })
        .collect()
}

/// Cosine and sine of `step` in `steps` equal parts of a quarter turn, equal to each other's mirror image.
fn unit(step: u32, steps: u32) -> (f64, f64) {
    if step == 0 {
        return (1.0, 0.0);
    }
    if 2 * step > steps {
        let (sine, cosine) = unit(steps - step, steps);
        return (cosine, sine);
    }
    let angle = FRAC_PI_2 * f64::from(step) / f64::from(steps);
    if 2 * step == steps {
        return (libm::sqrt(0.5), libm::sqrt(0.5));
    }
    (libm::cos(angle), libm::sin(angle))
}
