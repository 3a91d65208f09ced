//! The outline in a drawing: the one path of an SVG text, its curves as short lines.
//!
//! Only the form counts: where the drawing lies, how large it is and how it is painted are left unread, for
//! the design states the width. Nothing in a drawing can reach outside it: what could is refused.

use crate::geometry::{Point, Polygon, RingFault};
use crate::picture::{SHAPES_AND_PAINT, SVG};
use usvg::roxmltree;
use usvg::tiny_skia_path::{Path, PathSegment};

/// The largest drawing that is read.
pub const LARGEST_DRAWING: u64 = 1 << 20;

/// The width of every outline, in steps of its own; its height is in the same steps.
pub const DRAWN_WIDTH: i64 = 10_000_000;

/// The most elements of a drawing.
const MOST_NODES: u32 = 20_000;
/// The most elements within each other.
const MOST_DEEP: usize = 64;
/// The most lines and curves of the outline.
const MOST_SEGMENTS: usize = 2_000;
/// The most that a line may stay from the curve that it stands for, as a share of the width: 1/400 mm on
/// a piece of 50 mm.
const CHORD: f64 = 1.0 / 20_000.0;
/// The most corners that the outline may have.
const MOST_CORNERS: usize = 1_500;

/// An outline as drawn, in steps of which [`DRAWN_WIDTH`] are its width; origin at the lower left of the
/// rectangle round it, x to the right, y upward.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Drawn {
    /// Its corners, counter-clockwise.
    pub corners: Vec<Point>,
    /// How high it is.
    pub height: i64,
}

/// Why a drawing gives no outline.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum DrawnFault {
    /// The bytes are packed (gzip).
    Packed,
    /// The bytes are no UTF-8 text.
    NotText,
    /// The text is no XML, or too much of it.
    NotXml {
        /// What the reader says.
        says: String,
    },
    /// The XML is no SVG.
    NotSvg,
    /// An element that a drawing for an outline may not hold.
    Element {
        /// Its name.
        name: String,
        /// The line it stands in.
        line: u32,
    },
    /// The SVG reader refuses it.
    Refused {
        /// What it says.
        says: String,
    },
    /// Not one outline: how many paths are drawn.
    Paths {
        /// How many.
        count: usize,
    },
    /// One path of several outlines: it has a hole, or parts.
    Parts {
        /// How many.
        count: usize,
    },
    /// A path that encloses nothing.
    Flat,
    /// Too many lines and curves.
    TooFine,
    /// Its lines meet or cross.
    Ring(RingFault),
}

/// The outline in a drawing.
///
/// # Errors
/// The first thing that keeps the drawing from being one.
pub fn drawn(bytes: &[u8]) -> Result<Drawn, DrawnFault> {
    if bytes.starts_with(&[0x1f, 0x8b]) {
        return Err(DrawnFault::Packed);
    }
    let text = std::str::from_utf8(bytes).map_err(|_| DrawnFault::NotText)?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    is_harmless(text)?;
    // No folder, no fonts, no pictures: there is nothing that the drawing could point at.
    let options = usvg::Options { resources_dir: None, ..usvg::Options::default() };
    let tree = usvg::Tree::from_str(text, &options).map_err(|error| DrawnFault::Refused { says: error.to_string() })?;
    let mut paths = Vec::new();
    collect(tree.root(), &mut paths);
    match paths.as_slice() {
        [path] => outline(path),
        _ => Err(DrawnFault::Paths { count: paths.len() }),
    }
}

/// Whether the text holds only what an outline needs, counted before anything in it is followed.
fn is_harmless(text: &str) -> Result<(), DrawnFault> {
    let options =
        roxmltree::ParsingOptions { allow_dtd: true, nodes_limit: MOST_NODES, ..roxmltree::ParsingOptions::default() };
    let document = roxmltree::Document::parse_with_options(text, options)
        .map_err(|error| DrawnFault::NotXml { says: error.to_string() })?;
    if !document.root_element().has_tag_name((SVG, "svg")) {
        return Err(DrawnFault::NotSvg);
    }
    for node in document.descendants().filter(roxmltree::Node::is_element) {
        let name = node.tag_name();
        if node.ancestors().take(MOST_DEEP + 1).count() > MOST_DEEP {
            return Err(DrawnFault::NotXml { says: "groups lie too deep in groups".to_owned() });
        }
        // What editors add in names of their own is not drawn.
        if name.namespace() == Some(SVG) && !SHAPES_AND_PAINT.contains(&name.name()) {
            let line = document.text_pos_at(node.range().start).row;
            return Err(DrawnFault::Element { name: name.name().to_owned(), line });
        }
    }
    Ok(())
}

/// The paths of a group, where they lie on the drawing.
fn collect(group: &usvg::Group, paths: &mut Vec<Path>) {
    for node in group.children() {
        match node {
            usvg::Node::Group(group) => collect(group, paths),
            usvg::Node::Path(path) if path.is_visible() => {
                paths.extend(path.data().clone().transform(path.abs_transform()));
            }
            usvg::Node::Path(_) | usvg::Node::Image(_) | usvg::Node::Text(_) => {}
        }
    }
}

type At = (f64, f64);

/// A path as one ring of lines.
fn outline(path: &Path) -> Result<Drawn, DrawnFault> {
    if path.len() > 4 * MOST_SEGMENTS || path.segments().count() > MOST_SEGMENTS {
        return Err(DrawnFault::TooFine);
    }
    // Bounds of the curves themselves, not of their handles.
    let bounds = path.compute_tight_bounds().ok_or(DrawnFault::Flat)?;
    let (width, height) = (f64::from(bounds.width()), f64::from(bounds.height()));
    let is_flat = |side: f64, other: f64| side.is_nan() || side <= 0.0 || side < other / 10_000.0;
    if is_flat(width, height) || is_flat(height, width) {
        return Err(DrawnFault::Flat);
    }
    // Widths of one, from the lower left, y upward.
    let place = |x: f32, y: f32| {
        ((f64::from(x) - f64::from(bounds.left())) / width, (f64::from(bounds.bottom()) - f64::from(y)) / width)
    };
    let mut rings: Vec<Vec<At>> = Vec::new();
    for segment in path.segments() {
        if let PathSegment::MoveTo(at) = segment {
            rings.push(vec![place(at.x, at.y)]);
            continue;
        }
        let Some(ring) = rings.last_mut() else { continue };
        let from = ring.last().copied().unwrap_or_default();
        match segment {
            PathSegment::LineTo(at) => ring.push(place(at.x, at.y)),
            PathSegment::QuadTo(a, to) => curve(ring, [from, place(a.x, a.y), place(to.x, to.y)]),
            PathSegment::CubicTo(a, b, to) => {
                curve(ring, [from, place(a.x, a.y), place(b.x, b.y), place(to.x, to.y)]);
            }
            PathSegment::MoveTo(_) | PathSegment::Close => {}
        }
        if ring.len() > MOST_CORNERS {
            return Err(DrawnFault::TooFine);
        }
    }
    // A lone point, such as an editor leaves behind, draws nothing.
    rings.retain(|ring| ring.len() > 1);
    let [ring] = rings.as_slice() else { return Err(DrawnFault::Parts { count: rings.len() }) };
    // A line across the outermost part of a curve leaves a sliver off: the lines are what is stretched.
    let ends = |side: fn(&At) -> f64| {
        let (low, high) =
            (ring.iter().map(side).fold(f64::MAX, f64::min), ring.iter().map(side).fold(f64::MIN, f64::max));
        (low, high - low)
    };
    let ((left, width), (bottom, height)) = (ends(|at| at.0), ends(|at| at.1));
    if is_flat(width, height) || is_flat(height, width) {
        return Err(DrawnFault::Flat);
    }
    let scale = DRAWN_WIDTH as f64 / width;
    let height = whole(height * scale);
    let mut corners: Vec<Point> = ring
        .iter()
        .map(|(x, y)| {
            let (x, y) = (whole((x - left) * scale), whole((y - bottom) * scale));
            Point::new(x.clamp(0, DRAWN_WIDTH), y.clamp(0, height))
        })
        .collect();
    corners.dedup();
    while corners.len() > 1 && corners.first() == corners.last() {
        corners.pop();
    }
    let polygon = Polygon::new(corners).map_err(DrawnFault::Ring)?;
    Ok(Drawn { corners: polygon.outer().to_vec(), height })
}

fn whole(steps: f64) -> i64 {
    libm::round(steps) as i64
}

/// Adds the points of a Bézier curve of 3 or 4 control points behind its first one, so many that every
/// line stays within [`CHORD`] of it: over a step `t` a curve leaves its chord by at most an eighth of
/// `t`² times its largest second derivative.
fn curve<const N: usize>(ring: &mut Vec<At>, points: [At; N]) {
    let bend = points.windows(3).map(|three| {
        let [a, b, c] = [three[0], three[1], three[2]];
        libm::hypot(a.0 - 2.0 * b.0 + c.0, a.1 - 2.0 * b.1 + c.1)
    });
    let degree = (N - 1) as f64;
    let second = degree * (degree - 1.0) * bend.fold(0.0, f64::max);
    let steps = libm::ceil(libm::sqrt(second / (8.0 * CHORD))).clamp(1.0, MOST_CORNERS as f64) as usize;
    for step in 1..=steps {
        let share = step as f64 / steps as f64;
        let mut between = points;
        for last in (1..N).rev() {
            for at in 0..last {
                let ((x, y), (next_x, next_y)) = (between[at], between[at + 1]);
                between[at] = (x + (next_x - x) * share, y + (next_y - y) * share);
            }
        }
        ring.push(if step == steps { points[N - 1] } else { between[0] });
    }
}
