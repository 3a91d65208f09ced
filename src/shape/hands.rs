//! Whether a shape has a left and a right hand: whether its mirror image is the shape itself, turned or not.

use super::Shape;
use crate::geometry::{Mirror, Point, Polygon};

/// How a shape comes to lie as its own mirror image without being turned over.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Image {
    /// As it lies.
    Itself,
    /// Turned half round.
    HalfTurned,
    /// Turned by another angle.
    Turned,
    /// In no way: the image is the other hand.
    OtherHand,
}

/// A corner that lies this near to where it would have to lie is the same corner to a hand: 0.1 mm, a third
/// of the width of a pencil line (common practice, no source).
const NEAR: f64 = 100_000.0;
/// Rings with more corners are drawn round; only quarter turns of them are looked at.
const MOST_TRIED: usize = 256;

impl Shape {
    /// How this shape comes to lie as its image; a shape that cannot be made is taken for its own.
    #[must_use]
    pub fn image(&self, mirror: Mirror) -> Image {
        let Ok(made) = self.make() else { return Image::Itself };
        let (own, image) = (made.outline.clone(), made.outline.mirrored(mirror, self.frame()));
        if own == image {
            return Image::Itself;
        }
        turns_onto(&own, &image).min().unwrap_or(Image::OtherHand)
    }
}

/// Every turn that lays one outline on another.
fn turns_onto<'a>(own: &'a Polygon, image: &'a Polygon) -> impl Iterator<Item = Image> + 'a {
    let (ring, onto) = (own.outer(), image.outer());
    let count = if ring.len() == onto.len() { onto.len() } else { 0 };
    let direction = |ring: &[Point], at: usize| {
        let (from, to) = (ring[at % ring.len()], ring[(at + 1) % ring.len()]);
        libm::atan2((to.y - from.y) as f64, (to.x - from.x) as f64)
    };
    let first = (count > 0).then(|| direction(ring, 0));
    (0..count).filter_map(move |shift| {
        let angle = direction(onto, shift) - first?;
        let quarters = angle / std::f64::consts::FRAC_PI_2;
        if ring.len() > MOST_TRIED && (quarters - libm::round(quarters)).abs() > 1e-3 {
            return None;
        }
        let (cosine, sine) = (libm::cos(angle), libm::sin(angle));
        let (from, to) = (ring[0], onto[shift]);
        let lands = |corner: Point| {
            let (x, y) = ((corner.x - from.x) as f64, (corner.y - from.y) as f64);
            (to.x as f64 + x * cosine - y * sine, to.y as f64 + x * sine + y * cosine)
        };
        let is_near = |corner: Point, at: Point| {
            let (x, y) = lands(corner);
            (x - at.x as f64).abs() <= NEAR && (y - at.y as f64).abs() <= NEAR
        };
        let outer = (0..count).all(|n| is_near(ring[n], onto[(n + shift) % count]));
        let within = own.holes().len() == image.holes().len()
            && own.holes().iter().all(|hole| {
                image.holes().iter().any(|other| {
                    hole.len() == other.len() && hole.iter().all(|corner| other.iter().any(|at| is_near(*corner, *at)))
                })
            });
        (outer && within).then(|| named(angle))
    })
}

/// A turn by radians.
fn named(angle: f64) -> Image {
    let is_about = |whole: f64| {
        let off = libm::fabs(libm::remainder(angle - whole, std::f64::consts::TAU));
        off < 1e-3
    };
    if is_about(0.0) {
        Image::Itself
    } else if is_about(std::f64::consts::PI) {
        Image::HalfTurned
    } else {
        Image::Turned
    }
}
