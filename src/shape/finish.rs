//! The cuts of a hand after the trimmer has cut the rectangle, as data.

use super::{Form, Making, Shape};
use crate::geometry::{Corner, Edge, Point, Polygon, Rect};

/// A place on a trimmed rectangle, in the words of a ruler.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Spot {
    /// A corner.
    Corner(Corner),
    /// The middle of an edge (to the nearest nanometre).
    Middle(Edge),
    /// On an edge.
    OnEdge {
        /// The edge.
        edge: Edge,
        /// From the edge's left end, or its lower end.
        from_start: i64,
    },
    /// Within.
    Within {
        /// From the left edge.
        from_left: i64,
        /// From the bottom edge.
        from_bottom: i64,
    },
}

impl Spot {
    /// The place of a point on `rect`.
    #[must_use]
    pub fn on(rect: Rect, point: Point) -> Self {
        if let Some(corner) = Corner::ALL.into_iter().find(|corner| corner.of(rect) == point) {
            return Self::Corner(corner);
        }
        let (from_left, from_bottom) = (point.x - rect.left, point.y - rect.bottom);
        let edge =
            Edge::ALL.into_iter().find(|edge| rect.edge(*edge) == if edge.is_side() { point.x } else { point.y });
        match edge {
            Some(edge) => {
                let (from_start, middle) = if edge.is_side() {
                    (from_bottom, rect.middle().y - rect.bottom)
                } else {
                    (from_left, rect.middle().x - rect.left)
                };
                if from_start == middle { Self::Middle(edge) } else { Self::OnEdge { edge, from_start } }
            }
            None => Self::Within { from_left, from_bottom },
        }
    }
}

/// One finishing cut. Points stand in the frame of the finished size.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Finish {
    /// A straight cut.
    Cut {
        /// Where it begins.
        from: Point,
        /// Where it ends.
        to: Point,
        /// `from` in the words of a ruler.
        begin: Spot,
        /// `to` in the words of a ruler.
        end: Spot,
        /// Whether the blade may run on past both ends without hurting the shape, as a trimmer does; else
        /// the cut stops at an inner corner, and scissors or a knife make it.
        runs_through: bool,
    },
    /// The outline of a drawing, followed with scissors or a knife.
    Follow,
    /// A corner rounded with a punch.
    RoundCorner {
        /// The corner.
        corner: Corner,
        /// The radius.
        radius: i64,
    },
    /// The outline cut with a die or punched, all at once.
    Stamp {
        /// With which; its margin says how much paper surrounds the outline.
        making: Making,
    },
    /// A window cut out.
    CutOut {
        /// The window, counted from 0.
        window: usize,
        /// By hand it is drawn on the back and cut from there with a knife, from corner to corner; so the
        /// ring to draw is the mirror image of this one.
        making: Making,
        /// The window's ring as seen from the front.
        ring: Polygon,
    },
}

/// The finishing cuts in order: windows, then the outline.
pub(super) fn steps(shape: &Shape, full: &Polygon, windows: &[Polygon]) -> Vec<Finish> {
    let mut steps: Vec<Finish> = windows
        .iter()
        .zip(&shape.windows)
        .enumerate()
        .map(|(window, (ring, cut))| Finish::CutOut { window, making: cut.making, ring: ring.clone() })
        .collect();
    if shape.making != Making::ByHand {
        steps.push(Finish::Stamp { making: shape.making });
    } else if let Form::Drawn { .. } = &shape.form {
        steps.push(Finish::Follow);
    } else if let Form::Rounded { radius, corners } = &shape.form {
        steps.extend(corners.iter().map(|corner| Finish::RoundCorner { corner: *corner, radius: *radius }));
    } else {
        steps.extend(straight(full, shape.frame()));
    }
    steps
}

/// The edges of an outline that the trimmer has not cut yet, as straight cuts, counter-clockwise.
fn straight(full: &Polygon, frame: Rect) -> impl Iterator<Item = Finish> {
    let ring = full.outer();
    (0..ring.len()).filter_map(move |at| {
        let (from, to) = (ring[at], ring[(at + 1) % ring.len()]);
        let is_trimmed = Edge::ALL.into_iter().any(|edge| {
            let place = |point: Point| if edge.is_side() { point.x } else { point.y };
            place(from) == frame.edge(edge) && place(to) == frame.edge(edge)
        });
        if is_trimmed {
            return None;
        }
        // The whole shape lies to the left of the cut's line or on it.
        let runs_through = ring.iter().all(|corner| {
            let (along, aside) = (to.from(from), corner.from(from));
            i128::from(along.x) * i128::from(aside.y) >= i128::from(along.y) * i128::from(aside.x)
        });
        let (begin, end) = (Spot::on(frame, from), Spot::on(frame, to));
        Some(Finish::Cut { from, to, begin, end, runs_through })
    })
}
