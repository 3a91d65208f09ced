//! Templates of every shape that is not a rectangle, and areas for words.

use super::draft::{Draft, Known, SMALL, cut_along, lettered};
use super::model::{Label, Line, Role};
use super::names::{size, slug};
use crate::design::model::{Design, How, Piece, PieceId, PieceKind};
use crate::geometry::{Angle, Mirror, Place, Polygon, Rect, Region};
use crate::layout::model::Layout;
use crate::length::{Length, Units};
use crate::shape::{End, Form, Making};
use crate::words::guides;

/// What words keep away from every edge: 1/8 in or 3 mm. Common practice, no source.
const fn clear(units: Units) -> Length {
    Length::either(units, Length::inch(1, 8), Length::mm(3))
}

/// The templates of all pieces, each with its paper.
pub(super) fn templates(design: &Design) -> Vec<(Draft, Region)> {
    let made = |id: PieceId| {
        let piece = design.piece(id);
        let outline = piece.shape.make().ok()?.outline;
        (piece.kind == PieceKind::Plain).then_some((piece, outline))
    };
    let mut drafts = Vec::new();
    for (piece, outline) in design.piece_ids().filter_map(made) {
        let from_back = is_cut_from_back(piece);
        if piece.shape.form != Form::Rectangle || (!piece.shape.windows.is_empty() && !from_back) {
            drafts.push((template(design, piece, &outline, false), Region::from(&outline)));
        }
        if from_back {
            let mirrored = outline.mirrored(Mirror::LeftToRight, piece.shape.frame());
            drafts.push((template(design, piece, &mirrored, true), Region::from(&mirrored)));
        }
    }
    drafts
}

/// Whether a window is drawn on the back, as the finishing step of one that is cut by hand says.
fn is_cut_from_back(piece: &Piece) -> bool {
    let by_hand = |making: Making, form: &Form| making == Making::ByHand && !matches!(form, Form::Drawn { .. });
    piece.shape.windows.iter().any(|window| by_hand(window.making, &window.form))
}

fn template(design: &Design, piece: &Piece, outline: &Polygon, mirrored: bool) -> Draft {
    let say = design.words();
    let title = guides::template(say, &piece.name);
    let title = if mirrored { guides::mirrored(say, &title) } else { title };
    let mut names = vec![piece.name.clone()];
    names.extend(mirrored.then(|| "mirrored".to_owned()));
    let size = size(design, outline.bounds());
    let mut draft = Draft {
        word: slug("template", &names),
        notes: vec![guides::size(say, &size)],
        alt: guides::alt(say, &title, &size),
        title,
        known: if mirrored { vec![Known::Template, Known::Mirrored] } else { vec![Known::Template] },
        lines: cut_along(outline),
        labels: Vec::new(),
    };
    let middle = outline.bounds().middle();
    let label = Label {
        text: guides::print_up(say),
        at: middle.moved(0, -SMALL * 7 / 20),
        size: SMALL,
        turned: false,
        bold: false,
    };
    // Only where it has room on the paper itself.
    if lettered(&label).grown(SMALL / 3).corners().iter().all(|corner| outline.place_of(*corner) == Place::Inside)
        && outline.place_of(middle) == Place::Inside
    {
        draft.labels.push(label);
    }
    draft
}

/// The areas for words on pieces that are stamped or printed.
pub(super) fn greetings(design: &Design, layout: &Layout) -> Vec<(Draft, Region)> {
    let own = design.piece_ids().filter_map(|id| {
        let piece = design.piece(id);
        piece.greeting.as_ref().filter(|greeting| greeting.how != How::DieCut)?;
        let outline = piece.shape.make().ok()?.outline;
        let area = room_for_words(design, layout, id)?;
        Some((greeting(design, piece, &outline, &area), Region::from(&outline)))
    });
    own.collect()
}

/// Where words have room on a piece, in the coordinates of its shape: the rectangle between cut ends, less what
/// layers on it cover where it lies straight, and clear of every edge.
fn room_for_words(design: &Design, layout: &Layout, id: PieceId) -> Option<Region> {
    let piece = design.piece(id);
    let clear = clear(design.units).nm();
    let frame = piece.shape.frame();
    let whole = match &piece.shape.form {
        Form::Rectangle | Form::Rounded { .. } => frame,
        Form::Ended { edge, end, opposite } => {
            let depth = |end: End| match end {
                End::Fishtail { depth } | End::Pointed { depth } => depth,
            };
            let (_, rest) = frame.parted(*edge, depth(*end));
            opposite.map_or(rest, |other| rest.parted(edge.opposite(), depth(other)).1)
        }
        // Half of it each way lies within any form that bulges.
        _ => Rect::at(frame.width() / 4, frame.height() / 4, frame.width() / 2, frame.height() / 2),
    };
    let inner = whole.grown(-clear);
    if inner.width() <= 0 || inner.height() <= 0 {
        return None;
    }
    let mut room = Region::from(inner);
    let windows = piece.shape.windows.iter();
    let holes = windows.map(|window| Rect::at(window.left, window.bottom, window.width, window.height).grown(clear));
    room = holes.fold(room, |room, hole| room.difference(&Region::from(hole)));
    if let Some(layer) = design.layer_ids().find(|layer| design.layer(*layer).piece == id) {
        let placed = layout.placed(layer);
        if let Some(laid) = placed.laid.first().filter(|laid| laid.angle == Angle::NONE && !laid.mirrored) {
            let (x, y) = (laid.outline.bounds().left, laid.outline.bounds().bottom);
            let above = layout.layers[layer.0 + 1..].iter().filter(|other| other.face == placed.face);
            for cover in above.flat_map(|other| other.shown().parts().to_vec()) {
                room = room.difference(&Region::from(cover.bounds().moved(-x, -y).grown(clear)));
            }
        }
    }
    (!room.is_empty()).then_some(room)
}

fn greeting(design: &Design, piece: &Piece, outline: &Polygon, area: &Region) -> Draft {
    let say = design.words();
    let title = guides::greeting(say, &piece.name);
    let own = size(design, outline.bounds());
    let largest = area.parts().iter().max_by_key(|part| part.area2()).map(Polygon::bounds);
    let room = size(design, largest.unwrap_or(outline.bounds()));
    let mut lines = cut_along(outline);
    let rings = area.parts().iter().flat_map(Polygon::rings);
    lines.extend(rings.map(|ring| Line { role: Role::Draw, points: ring.to_vec(), closed: true }));
    Draft {
        word: slug("greeting", std::slice::from_ref(&piece.name)),
        notes: vec![guides::size(say, &own)],
        alt: guides::greeting_alt(say, &title, &own, &room),
        title,
        known: vec![Known::Greeting],
        lines,
        labels: Vec::new(),
    }
}
