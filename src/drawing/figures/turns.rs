//! What a figure says of a turned layer: its angle mark, and the same in words.

use super::view::Ground;
use crate::design::model::{Arrangement, LayerId, Pivot};
use crate::drawing::angle::{AngleMark, Degrees};
use crate::drawing::outline::Outline;
use crate::drawing::scale::Frame;
use crate::geometry::{Angle, Edge, Mirror, Point, Rect};
use crate::layout::place::{on_face, pivot};
use crate::project::Project;
use crate::shape::{End, Form, Shape};
use crate::words::{Words, figures as words};

const UM: i64 = 1000;
/// The least and the most radius of an arc.
const RADIUS: (i64, i64) = (6500 * UM, 15_000 * UM);
/// An arc outside its piece stands so far off it.
const BEYOND: i64 = 2500 * UM;

/// The direction from a pivot along a piece, of the four along its edges.
fn axis(rect: Rect, about: Point) -> Angle {
    let away = rect.middle().from(about);
    // About the middle: along the piece.
    if away.x.abs() <= 1 && away.y.abs() <= 1 {
        return Angle::quarters(u8::from(rect.width() < rect.height()));
    }
    let quarters = match (away.x.abs() >= away.y.abs(), away.x > 0, away.y > 0) {
        (true, true, _) => 0,
        (true, false, _) => 2,
        (false, _, true) => 1,
        (false, _, false) => 3,
    };
    Angle::quarters(quarters)
}

/// The mark of a layer's turn, or of the step of a fan; none for a straight layer.
pub(super) fn mark(
    project: &Project,
    ground: &Ground,
    frame: Frame,
    id: LayerId,
    outlines: &[Outline],
) -> Option<AngleMark> {
    let say = project.words();
    let layer = project.design.layer(id);
    let placed = project.layout.placed(id);
    let (x, y) = ground.start_of(placed.face)?;
    let rect = *placed.copies.first()?;
    let (about, before, turn) = match (layer.arrangement, layer.tilt) {
        (Arrangement::Fan { count, step, about }, _) if count > 1 => {
            // From the second copy to the first, the leftmost.
            let leftmost = (i64::from(step.hundredths()) * (i64::from(count) - 1)).div_euclid(2);
            (about, Angle::left(leftmost).then(step.back()), step)
        }
        (_, Some(tilt)) => (tilt.about, Angle::NONE, tilt.angle),
        _ => return None,
    };
    let is_fan = layer.tilt.is_none();
    let about = pivot(about, rect);
    let along = axis(rect, about);
    let across = along.hundredths() % 18_000 == 9_000;
    let full = if across { rect.height() } else { rect.width() };
    // About its middle a piece reaches half of its length either way.
    let is_middle = about.distance(rect.middle()) <= 2;
    let reach = frame.scale.length(if is_middle { full / 2 } else { full });
    let frame_turn = placed.frame.iter().fold(Angle::NONE, |all, turn| all.then(turn.angle));
    let pivot = frame.point(on_face(&placed.frame, about).moved(x, y));
    let beyond = reach + BEYOND;
    let within = (reach * 3 / 5).clamp(RADIUS.0, RADIUS.1);
    let radii = if is_fan { vec![beyond] } else { vec![within, beyond, reach * 4 / 5, RADIUS.0, RADIUS.1] };
    let directions = if is_middle { vec![along, along.then(Angle::quarters(2))] } else { vec![along] };
    let text = words::degrees(say, turned_by(turn).0);
    let mut marks = Vec::new();
    for (direction, radius) in directions.iter().flat_map(|direction| radii.iter().map(move |own| (direction, own))) {
        marks.extend(Degrees::ALL.map(|degrees| AngleMark {
            pivot,
            from: direction.then(before).then(frame_turn),
            turn,
            radius: *radius,
            start: if is_fan { radius - BEYOND } else { 0 },
            text: text.clone(),
            degrees,
        }));
    }
    // The degrees stand where they cross the fewest edges, and on the face rather than beside it.
    let face = frame.area(ground.rect);
    marks.into_iter().min_by_key(|mark| {
        let figure = mark.draw().figure.grown(700 * UM);
        let crossed = outlines.iter().filter(|outline| outline.divides(figure)).count();
        crossed + usize::from(!face.contains(figure))
    })
}

/// Hundredths of a degree, and whether to the left.
fn turned_by(turn: Angle) -> (u32, bool) {
    let hundredths = turn.hundredths();
    if hundredths <= 18_000 { (hundredths, true) } else { (36_000 - hundredths, false) }
}

/// A layer's own turn in words, the step of a fan and the like; none for what lies straight.
pub(super) fn told(project: &Project, id: LayerId) -> Vec<String> {
    let say = project.words();
    let layer = project.design.layer(id);
    let units = project.units();
    let number = |nm: i64| crate::length::Length::of(nm.abs(), units).number(units);
    let mut told = Vec::new();
    match layer.arrangement {
        Arrangement::Fan { step, about, .. } => {
            told.push(words::fanned(
                say,
                &words::degrees(say, step.hundredths()),
                &layer.name,
                &about_words(say, about),
            ));
        }
        Arrangement::Steps { right, up, .. } => {
            let each = [(right.nm(), "right", "left"), (up.nm(), "up", "down")];
            let each: Vec<String> = each
                .into_iter()
                .filter(|(by, ..)| *by != 0)
                .map(|(by, on, back)| words::moved(say, &number(by), if by > 0 { on } else { back }))
                .collect();
            told.push(words::stepped(say, &layer.name, &each));
        }
        _ => {}
    }
    if layer.shifted != (0, 0) {
        let (right, up) = layer.shifted;
        let each = [(right, "right", "left"), (up, "up", "down")].into_iter().filter(|(by, ..)| *by != 0);
        let each: Vec<String> =
            each.map(|(by, on, back)| words::moved(say, &number(by), if by > 0 { on } else { back })).collect();
        told.push(words::shifted(say, &layer.name, &each));
    }
    if let Some(mirror) = layer.mirrored {
        told.push(words::mirrored(say, &layer.name, mirror == Mirror::LeftToRight));
    }
    if let Some(tilt) = layer.tilt {
        let (hundredths, left) = turned_by(tilt.angle);
        told.push(words::turned(
            say,
            &words::degrees(say, hundredths),
            left,
            &layer.name,
            &about_words(say, tilt.about),
        ));
    }
    told
}

/// The form of a piece in words, and its windows; nothing for a plain rectangle.
pub(super) fn form_told(say: &Words, shape: &Shape) -> String {
    let form = match &shape.form {
        Form::Rectangle => String::new(),
        Form::Triangle { .. } => words::right_triangle(say),
        Form::Diamond => words::diamond(say),
        Form::Polygon { corners } => words::many_corners(say, corners.len()),
        Form::Drawn { .. } => words::drawn(say),
        Form::Ended { edge, end, opposite } => {
            let told = |end: &End, edge: Edge| words::ended(say, matches!(end, End::Fishtail { .. }), edge);
            let ends = std::iter::once(told(end, *edge)).chain(opposite.iter().map(|end| told(end, edge.opposite())));
            ends.collect()
        }
        Form::Rounded { corners, .. } => words::rounded(say, corners.len()),
        Form::Circle => words::circle(say),
        Form::Oval => words::oval(say),
    };
    form + &words::windows(say, shape.windows.len())
}

fn about_words(say: &Words, about: Pivot) -> String {
    match about {
        Pivot::Middle => words::its_middle(say),
        Pivot::Corner(corner) => words::its_corner(say, corner),
        Pivot::Edge(edge) => words::middle_of_edge(say, edge),
        Pivot::Point(..) => words::a_point(say),
    }
}
