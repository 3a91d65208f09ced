//! A piece after the trimmer: what is still to be cut, punched or die-cut from its rectangle.

use super::front::{number, size_text};
use super::step::{HEIGHT, WIDTH};
use crate::design::model::PieceId;
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, ring_radius, towards};
use crate::drawing::dimension::{Dimension, Drawn};
use crate::drawing::outline::Outline;
use crate::drawing::placing::stack;
use crate::drawing::scale::{Frame, Scale};
use crate::drawing::scene::{Anchor, At, Lettering, Role, Scene};
use crate::drawing::text;
use crate::geometry::{Edge, Point, Polygon, Rect, Region};
use crate::project::Project;
use crate::shape::{Finish, Made, Making, Shape};
use crate::words::figures as words;

const UM: i64 = 1000;
const LEFT: i64 = 14_000 * UM;
const TOP: i64 = 6500 * UM;
/// A cut that a blade may run on past is drawn so much longer.
const PAST: i64 = 3500 * UM;

/// What is made from a trimmed rectangle, as large as a step's picture and not to scale: the rectangle,
/// what stays of it strong, every cut with its ends measured from the rectangle's edges. None for a
/// piece that is done when it is trimmed.
#[must_use]
pub fn finish(project: &Project, piece: PieceId) -> Option<Scene> {
    let say = project.words();
    let own = project.design.piece(piece);
    let made = own.shape.make().ok().filter(|made| !made.finish.is_empty())?;
    let Made { blank, outline, finish, .. } = made;
    let (room_width, room_height) = (WIDTH - LEFT - 12_000 * UM, HEIGHT - TOP - 19_000 * UM);
    let scale = Scale::to_fit(blank.width(), blank.height(), room_width, room_height);
    let frame = Frame::new(scale, blank, At::new(LEFT, TOP));
    let area = frame.area(blank);
    let mut canvas = Canvas::new();
    // What falls off is pale, what stays strong.
    canvas.area(Role::Ghost, area);
    let kept = Outline::of(frame, &Region::from(&outline))?;
    kept.draw(&mut canvas, Role::Piece);
    if finish.contains(&Finish::Follow) {
        for (from, to) in still_to_cut(&outline, blank) {
            canvas.line(Role::Trim, frame.point(from), frame.point(to));
        }
    }
    for cut in &finish {
        if let Finish::Cut { from, to, runs_through, .. } = cut {
            let (from, to) = (frame.point(*from), frame.point(*to));
            let past = if *runs_through { -PAST } else { 0 };
            canvas.line(Role::Trim, towards(from, to, past), towards(to, from, past));
        }
    }
    let (mut uprights, mut levels) = (Vec::new(), Vec::new());
    // The rectangle itself, as the words name it.
    levels.push(Dimension::level(
        (area.left, area.right),
        (area.bottom, area.bottom),
        0,
        number(project, blank.width()),
    ));
    uprights.push(Dimension::upright(
        (area.top, area.bottom),
        (area.left, area.left),
        0,
        number(project, blank.height()),
    ));
    for (is_level, from, to) in measures(&own.shape, blank, &finish) {
        let text = number(project, to - from);
        if is_level {
            let ends = (frame.x(from), frame.x(to));
            levels.push(Dimension::level(ends, (area.bottom, area.bottom), 0, text));
        } else {
            let ends = (frame.y(to), frame.y(from));
            uprights.push(Dimension::upright(ends, (area.left, area.left), 0, text));
        }
    }
    for Drawn { items, figure, .. } in stack(uprights, area.left, -1).into_iter().chain(stack(levels, area.bottom, 1)) {
        canvas.items.extend(items);
        canvas.taken.push(figure);
    }
    if let Some(radius) = finish.iter().find_map(|cut| match cut {
        Finish::RoundCorner { radius, .. } => Some(*radius),
        _ => None,
    }) {
        let foot = canvas.extent().map_or(area.bottom, |ink| ink.bottom);
        let at = At::new(area.middle().x, foot + 2500 * UM + text::cap_height(Lettering::Figure));
        canvas.text(Lettering::Figure, at, Anchor::Middle, &words::radius(say, &number(project, radius)));
    }
    put_ring(&mut canvas, area, &kept, project.design.ring(piece));
    let name = words::counted(say, 1, &own.name, project.design.ring(piece));
    let told: Vec<String> = finish.iter().map(|cut| told(project, blank, cut)).collect();
    let alt = words::finish_step(say, &name, &size_text(project, blank.size(own.size.width.unit())), &told);
    Some(canvas.finish(format!("finish-{}", project.design.ring(piece)), None, alt, Area::at(0, 0, WIDTH, HEIGHT)))
}

/// The edges of an outline that the trimmer has not cut yet: those off the rectangle's own edges.
fn still_to_cut(outline: &Polygon, blank: Rect) -> Vec<(Point, Point)> {
    let is_cut = |from: &Point, to: &Point| {
        Edge::ALL.into_iter().any(|edge| {
            let at = |point: &Point| if edge.is_side() { point.x } else { point.y };
            at(from) == blank.edge(edge) && at(to) == blank.edge(edge)
        })
    };
    let edges = outline.rings().flat_map(|ring| {
        let next = ring.iter().copied().cycle().skip(1);
        ring.iter().copied().zip(next).collect::<Vec<_>>()
    });
    edges.filter(|(from, to)| !is_cut(from, to)).collect()
}

/// The ring inside the piece where there is room, else beside it.
fn put_ring(canvas: &mut Canvas, area: Area, kept: &Outline, ring: u32) {
    let room = 2 * ring_radius(ring) + 1600 * UM;
    let spots = (1..10).flat_map(|down| (1..10).map(move |over| (over, down)));
    let spots =
        spots.map(|(over, down)| At::new(area.left + area.width() * over / 10, area.top + area.height() * down / 10));
    let is_free = |spot: &At| kept.contains(Area::round(*spot, room, room));
    let middle = area.middle();
    match spots.filter(is_free).min_by_key(|at| (at.x - middle.x).abs() + (at.y - middle.y).abs()) {
        Some(spot) => {
            canvas.ring(spot, ring);
        }
        None => {
            let at_height = (1..20).filter_map(|down| {
                let y = area.top + area.height() * down / 20;
                let (low, high) = *kept.stretches(y).last()?;
                Some((high - low, At::new((low + high) / 2, y)))
            });
            if let Some((_, dot)) = at_height.max_by_key(|(long, _)| *long) {
                canvas.ring_with_leader(At::new(area.right + 7000 * UM + ring_radius(ring), dot.y), ring, dot);
            }
        }
    }
}

/// The stretches that somebody measures before cutting, as they are, level or upright: ends of cuts that are no corner
/// of the rectangle, the margin of a die, where a window stands and how large it is; each once.
fn measures(shape: &Shape, blank: Rect, finish: &[Finish]) -> Vec<(bool, i64, i64)> {
    let mut found = Vec::new();
    let mut add = |is_level: bool, from: i64, to: i64| {
        let whole = if is_level { blank.width() } else { blank.height() };
        if from < to && to - from < whole && !found.contains(&(is_level, from, to)) {
            found.push((is_level, from, to));
        }
    };
    for cut in finish {
        match cut {
            Finish::Cut { from, to, .. } => {
                for Point { x, y } in [*from, *to] {
                    add(true, blank.left, x);
                    add(false, y, blank.top);
                }
            }
            Finish::RoundCorner { .. } | Finish::Follow => {}
            Finish::Stamp { making } => {
                add(true, blank.left, blank.left + making.margin());
                add(false, blank.top - making.margin(), blank.top);
            }
            Finish::CutOut { window, .. } => {
                let Some(own) = shape.windows.get(*window) else { continue };
                add(true, blank.left, own.left);
                add(true, own.left, own.left + own.width);
                add(false, blank.bottom, own.bottom);
                add(false, own.bottom, own.bottom + own.height);
            }
        }
    }
    found
}

fn told(project: &Project, blank: Rect, cut: &Finish) -> String {
    let say = project.words();
    let spot = |point: &Point| {
        words::from_left_and_top(say, &number(project, point.x - blank.left), &number(project, blank.top - point.y))
    };
    match cut {
        Finish::Cut { from, to, .. } => words::cut_told(say, &spot(from), &spot(to)),
        Finish::Follow => words::follow_told(say),
        Finish::RoundCorner { corner, radius } => words::round_told(say, *corner, &number(project, *radius)),
        Finish::Stamp { making } => {
            words::stamped_out_told(say, matches!(making, Making::Die { .. }), &number(project, making.margin()))
        }
        Finish::CutOut { ring, .. } => {
            let round = ring.bounds();
            let size = round.size(crate::length::Length::zero(project.units()).unit());
            words::window_told(
                say,
                &words::size(say, &size.numbers(project.units())),
                &number(project, round.left - blank.left),
                &number(project, round.bottom - blank.bottom),
            )
        }
    }
}
