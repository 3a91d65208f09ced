//! Finishing cuts to sentences: what a hand makes of a trimmed rectangle.
//!
//! Takes a design and a piece, gives the sentence of one finishing step and its caution. Must never leave a
//! sum to the reader, nor hold a word of any language itself.

use super::sequence::shared_rectangles;
use super::tell::named;
use crate::design::model::{Design, From, How, PieceId};
use crate::design::model::{Pattern, Piece};
use crate::geometry::{Corner, Edge, Rect};
use crate::length::{Length, Size};
use crate::shape::{Finish, Form, Making, Spot, Window};
use crate::words::Line;
use crate::words::finishing::{self, Place, WindowAt};
use crate::words::making;

/// What a finishing step says; of rectangles that triangles share, `count` are parted.
pub(super) fn finish(design: &Design, id: PieceId, shared: bool, count: u32) -> (Line, Line) {
    let say = design.words();
    let piece = design.piece(id);
    if shared {
        return (part(design, id, count), making::fingers(say));
    }
    let Ok(made) = piece.shape.make() else { return (Line::new(), making::fingers(say)) };
    let blank = piece.blank().in_units(design.units).numbers(design.units);
    let mut line = match piece.from {
        From::Window(frame, window) if is_smaller(design, piece, frame, window) => {
            finishing::from_window(say, &named(design, id), &named(design, frame), &blank)
        }
        _ => finishing::make(say, &named(design, id), &blank),
    };
    let papers: Vec<_> = design.version_ids().filter_map(|version| design.paper_of(id, version)).collect();
    let two_sided = papers.iter().any(|paper| design.paper(*paper).back.is_some());
    let one_way = papers.iter().any(|paper| design.paper(*paper).pattern == Pattern::OneWay);
    line = line.sentence(finishing::lies(say, two_sided, one_way || piece.upright == Some(true)));
    let frame = piece.shape.frame();
    let mut cuts = Vec::new();
    let mut rounded: Option<(Vec<Corner>, i64)> = None;
    let mut through = true;
    let mut caution = None;
    for cut in &made.finish {
        match cut {
            Finish::CutOut { window, making, ring } => {
                let Some(own) = piece.shape.windows.get(*window) else { continue };
                line = line.sentence(window_cut(design, own, *making, frame, ring.outer()));
                caution.get_or_insert_with(|| match making {
                    Making::ByHand => finishing::knife(say),
                    Making::Die { .. } | Making::Punch { .. } => finishing::machine(say),
                });
                let waste = From::Window(id, *window);
                let used = design.piece_ids().find(|other| design.piece(*other).from == waste);
                line = used.map_or(line.clone(), |used| line.sentence(finishing::keep(say, &named(design, used))));
            }
            Finish::Stamp { making } => {
                let die = matches!(making, Making::Die { .. });
                line = line.sentence(finishing::stamp_out(say, die, &number(design, making.margin())));
                caution.get_or_insert_with(|| finishing::machine(say));
            }
            Finish::Follow => {
                line = line.sentence(finishing::follow(say));
                caution.get_or_insert_with(|| finishing::knife(say));
            }
            Finish::RoundCorner { corner, radius } => {
                rounded.get_or_insert_with(|| (Vec::new(), *radius)).0.push(*corner);
            }
            Finish::Cut { begin, end, runs_through, .. } => {
                through &= *runs_through;
                // Scissors come in from an edge.
                let inward = !matches!(begin, Spot::Within { .. }) || matches!(end, Spot::Within { .. });
                let (begin, end) = if inward { (*begin, *end) } else { (*end, *begin) };
                cuts.push((place(design, begin, frame), place(design, end, frame)));
            }
        }
    }
    if !cuts.is_empty() {
        line = line.sentence(finishing::cuts(say, &cuts, through));
    }
    if let Some((corners, radius)) = rounded {
        line = line.sentence(finishing::round(say, &corners, &number(design, radius)));
    }
    if let Some(greeting) = piece.greeting.as_ref().filter(|greeting| greeting.how == How::DieCut) {
        line = line.sentence(finishing::words_of_die(say, &greeting.words.value));
    }
    (line, caution.unwrap_or_else(|| making::fingers(say)))
}

fn number(design: &Design, nm: i64) -> String {
    Length::of(nm, design.units).number(design.units)
}

/// Whether a piece from a window is trimmed from what came out.
fn is_smaller(design: &Design, piece: &Piece, frame: PieceId, window: usize) -> bool {
    let window = design.piece(frame).shape.windows.get(window);
    let blank = piece.blank();
    window.is_none_or(|window| {
        window.form != Form::Rectangle || (window.width, window.height) != (blank.width.nm(), blank.height.nm())
    })
}

/// What rectangles are called that triangles share, wherever the piece that stands for them is counted.
#[must_use]
pub fn cut_name(design: &Design, piece: PieceId) -> String {
    let say = design.words();
    let own = &design.piece(piece).name;
    let shared = shared_rectangles(design, piece);
    match shared.iter().find(|halves| halves.piece == piece) {
        None => own.clone(),
        Some(halves) => {
            let other = halves.other.map(|(other, _)| design.piece(other).name.as_str());
            finishing::rectangle_for(say, own, other)
        }
    }
}

/// "Cut 8 rectangles from corner to corner ...".
fn part(design: &Design, id: PieceId, count: u32) -> Line {
    let say = design.words();
    let Form::Triangle { right_angle } = design.piece(id).shape.form else { return Line::new() };
    // The cut joins the two corners beside the right angle.
    let mut ends = [right_angle.quarter_turned(1), right_angle.quarter_turned(3)];
    let is_top = |corner: &Corner| matches!(corner, Corner::UpperLeft | Corner::UpperRight);
    ends.sort_by_key(|corner| !is_top(corner));
    let shared = shared_rectangles(design, id);
    let other = shared.iter().filter(|halves| halves.piece == id).find_map(|halves| halves.other);
    let given = |count, piece: PieceId| (count, design.piece(piece).name.clone(), design.ring(piece));
    let gives = match other {
        Some((other, _)) => vec![given(1, id), given(1, other)],
        None => vec![given(2, id)],
    };
    let line = finishing::part(say, count, ends, &gives);
    let papers: Vec<_> = shared.iter().map(|halves| halves.paper).collect();
    let two_sided = papers.iter().any(|paper| design.paper(*paper).back.is_some());
    let one_way = papers.iter().any(|paper| design.paper(*paper).pattern == Pattern::OneWay);
    line.sentence(finishing::lies(say, two_sided, one_way || design.piece(id).upright == Some(true)))
}

/// A place in the words of a ruler, from the nearer edges.
fn place(design: &Design, spot: Spot, frame: Rect) -> Place {
    let near = |from_start: i64, whole: i64, [start, end]: [Edge; 2]| {
        if 2 * from_start <= whole {
            (number(design, from_start), start)
        } else {
            (number(design, whole - from_start), end)
        }
    };
    const ACROSS: [Edge; 2] = [Edge::Left, Edge::Right];
    const UP: [Edge; 2] = [Edge::Bottom, Edge::Top];
    match spot {
        Spot::Corner(corner) => Place::Corner(corner),
        Spot::Middle(edge) => Place::Middle(edge),
        Spot::OnEdge { edge, from_start } => {
            let (by, end) = if edge.is_side() {
                near(from_start, frame.height(), UP)
            } else {
                near(from_start, frame.width(), ACROSS)
            };
            Place::On(edge, by, end)
        }
        Spot::Within { from_left, from_bottom } => {
            let across = (2 * from_left != frame.width()).then(|| near(from_left, frame.width(), ACROSS));
            let up = (2 * from_bottom != frame.height()).then(|| near(from_bottom, frame.height(), UP));
            Place::Within(across, up)
        }
    }
}

fn window_cut(design: &Design, window: &Window, making: Making, frame: Rect, ring: &[crate::geometry::Point]) -> Line {
    let say = design.words();
    let size = Size::new(Length::of(window.width, design.units), Length::of(window.height, design.units));
    let at = WindowAt {
        size: size.numbers(design.units),
        left: (2 * window.left + window.width != frame.width()).then(|| number(design, window.left)),
        bottom: (2 * window.bottom + window.height != frame.height()).then(|| number(design, window.bottom)),
    };
    match making {
        Making::ByHand if window.form == Form::Rectangle => finishing::window_by_hand(say, &at, &[]),
        Making::ByHand if matches!(window.form, Form::Drawn { .. }) => finishing::window_followed(say, &at),
        Making::ByHand => {
            let corners: Vec<Place> =
                ring.iter().map(|corner| place(design, Spot::on(frame, *corner), frame)).collect();
            finishing::window_by_hand(say, &at, &corners)
        }
        Making::Die { .. } => finishing::window_stamped(say, true, &at),
        Making::Punch { .. } => finishing::window_stamped(say, false, &at),
    }
}
