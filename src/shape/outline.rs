//! From a form and a size to the finished outline.

use super::round::{LARGEST_ROUND, quarter};
use super::{End, Form, Making, ShapeFault, Window};
use crate::geometry::{Corner, Edge, Mirror, Point, Polygon, Rect};
use crate::length::LARGEST_NM;

/// The outline in the frame of the finished size, windows not cut.
pub(super) fn of(form: &Form, width: i64, height: i64, making: Making) -> Result<Polygon, ShapeFault> {
    if width <= 0 || height <= 0 {
        return Err(ShapeFault::NotPositive { width, height });
    }
    let side = width.max(height).max(making.margin());
    if side > LARGEST_NM {
        return Err(ShapeFault::TooLarge { side });
    }
    let frame = Rect::at(0, 0, width, height);
    match form {
        Form::Rectangle => Ok(frame.into()),
        Form::Triangle { right_angle } => {
            let three = Corner::ALL.into_iter().filter(|corner| *corner != right_angle.opposite());
            simple(three.map(|corner| corner.of(frame)).collect())
        }
        Form::Diamond => {
            let middle = frame.middle();
            simple(vec![
                Point::new(0, middle.y),
                Point::new(middle.x, 0),
                Point::new(width, middle.y),
                Point::new(middle.x, height),
            ])
        }
        Form::Polygon { corners } => polygon(corners, frame),
        Form::Drawn { corners, .. } => inside(corners, frame),
        Form::Ended { edge, end, opposite } => ended(*edge, *end, *opposite, frame),
        Form::Rounded { radius, corners } => rounded(*radius, corners, frame),
        Form::Circle if width != height => Err(ShapeFault::NotRound { width, height }),
        Form::Circle | Form::Oval if making == Making::ByHand => Err(ShapeFault::RoundByHand),
        Form::Circle | Form::Oval if side > LARGEST_ROUND => Err(ShapeFault::TooLargeToRound { side }),
        Form::Circle | Form::Oval => Ok(rounded_by(width, height, &Corner::ALL, frame)),
    }
}

/// A window's outline where it lies on its shape; `None` where it lies absurdly far off.
pub(super) fn placed(whole: &Polygon, window: &Window) -> Option<Polygon> {
    let near = |at: i64| (-LARGEST_NM..=LARGEST_NM).contains(&at);
    (near(window.left) && near(window.bottom)).then(|| whole.moved(window.left, window.bottom))
}

fn simple(corners: Vec<Point>) -> Result<Polygon, ShapeFault> {
    Polygon::new(corners).map_err(ShapeFault::Corners)
}

fn polygon(corners: &[Point], frame: Rect) -> Result<Polygon, ShapeFault> {
    let made = inside(corners, frame)?;
    let short = |edge: &Edge| frame.border(made.bounds(), *edge);
    match Edge::ALL.into_iter().find(|edge| short(edge) > 0) {
        Some(edge) => Err(ShapeFault::ShortOfEdge { edge, short: short(&edge) }),
        None => Ok(made),
    }
}

/// A ring that lies within the frame.
fn inside(corners: &[Point], frame: Rect) -> Result<Polygon, ShapeFault> {
    let outside = |point: Point, edge: Edge| match edge {
        Edge::Left => frame.left.saturating_sub(point.x),
        Edge::Right => point.x.saturating_sub(frame.right),
        Edge::Top => point.y.saturating_sub(frame.top),
        Edge::Bottom => frame.bottom.saturating_sub(point.y),
    };
    for (corner, point) in corners.iter().enumerate() {
        if let Some(edge) = Edge::ALL.into_iter().find(|edge| outside(*point, *edge) > 0) {
            return Err(ShapeFault::CornerOutside { corner, edge, past: outside(*point, edge) });
        }
    }
    simple(corners.to_vec())
}

fn ended(edge: Edge, end: End, opposite: Option<End>, frame: Rect) -> Result<Polygon, ShapeFault> {
    // Drawn with the end at the top, then turned to where it belongs.
    let turns = match edge {
        Edge::Top => 0,
        Edge::Left => 1,
        Edge::Bottom => 2,
        Edge::Right => 3,
    };
    let upright = frame.quarter_turned_in_place(turns);
    let length = upright.height();
    for (edge, end) in [(edge, Some(end)), (edge.opposite(), opposite)] {
        if let Some(End::Fishtail { depth } | End::Pointed { depth }) = end
            && depth <= 0
        {
            return Err(ShapeFault::NoDepth { edge, depth });
        }
    }
    let notch = |end: Option<End>| if let Some(End::Fishtail { depth }) = end { depth } else { 0 };
    let point = |end: Option<End>| if let Some(End::Pointed { depth }) = end { depth } else { 0 };
    let notches = notch(Some(end)).saturating_add(notch(opposite));
    let points = point(Some(end)).saturating_add(point(opposite));
    if notches >= length || points > length {
        return Err(ShapeFault::TooDeep { depth: notches.max(points), length });
    }
    let (middle, width) = (upright.middle().x, upright.width());
    // Each end from right to left, at `place` measured up from the end across.
    let drawn = |end: Option<End>| match end {
        None => vec![Point::new(width, length), Point::new(0, length)],
        Some(End::Fishtail { depth }) => {
            vec![Point::new(width, length), Point::new(middle, length - depth), Point::new(0, length)]
        }
        Some(End::Pointed { depth }) => {
            vec![Point::new(width, length - depth), Point::new(middle, length), Point::new(0, length - depth)]
        }
    };
    let mut corners = drawn(Some(end));
    // The same from left to right, at the bottom.
    corners.extend(drawn(opposite).into_iter().rev().map(|corner| corner.mirrored(Mirror::TopToBottom, upright)));
    // Points that meet leave one corner in the place of two.
    corners.dedup();
    if corners.first() == corners.last() {
        corners.pop();
    }
    Ok(simple(corners)?.quarter_turned_in(turns, upright))
}

fn rounded(radius: i64, corners: &[Corner], frame: Rect) -> Result<Polygon, ShapeFault> {
    if radius <= 0 {
        return Err(ShapeFault::NoRadius { radius });
    }
    let twice =
        corners.iter().enumerate().find(|(at, corner)| corners[..*at].contains(corner)).map(|(_, corner)| *corner);
    if corners.is_empty() || twice.is_some() {
        return Err(ShapeFault::CornerList { twice });
    }
    // An edge with both its corners rounded has to hold both.
    let has = |corner: Corner| corners.contains(&corner);
    let both = |mirror: Mirror| corners.iter().any(|corner| has(corner.mirrored(mirror)));
    let most_across = if both(Mirror::LeftToRight) { frame.width() / 2 } else { frame.width() };
    let most_up = if both(Mirror::TopToBottom) { frame.height() / 2 } else { frame.height() };
    let most = most_across.min(most_up);
    if radius > most {
        return Err(ShapeFault::RadiusTooLarge { radius, most });
    }
    if 2 * radius > LARGEST_ROUND {
        return Err(ShapeFault::TooLargeToRound { side: 2 * radius });
    }
    Ok(rounded_by(2 * radius, 2 * radius, corners, frame))
}

/// The frame with some corners rounded by quarters of an ellipse with these axes.
fn rounded_by(width: i64, height: i64, corners: &[Corner], frame: Rect) -> Polygon {
    let lower_left = quarter(width, height);
    let mut ring: Vec<Point> = Vec::with_capacity(4 * lower_left.len());
    for corner in Corner::ALL {
        if !corners.contains(&corner) {
            ring.push(corner.of(frame));
            continue;
        }
        // Counter-clockwise: a mirrored quarter runs the other way.
        let placed: Vec<Point> = match corner {
            Corner::LowerLeft => lower_left.clone(),
            Corner::LowerRight => lower_left.iter().rev().map(|at| at.mirrored(Mirror::LeftToRight, frame)).collect(),
            Corner::UpperRight => lower_left
                .iter()
                .map(|at| at.mirrored(Mirror::LeftToRight, frame).mirrored(Mirror::TopToBottom, frame))
                .collect(),
            Corner::UpperLeft => lower_left.iter().rev().map(|at| at.mirrored(Mirror::TopToBottom, frame)).collect(),
        };
        ring.extend(placed);
    }
    ring.dedup();
    if ring.first() == ring.last() {
        ring.pop();
    }
    Polygon::trusted(ring, Vec::new())
}
