//! A piece at half size, to cut out of plain paper.

use super::front::size_text;
use crate::design::model::{PieceId, PieceKind};
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, ring_radius, text_area};
use crate::drawing::outline::Outline;
use crate::drawing::scale::{Frame, Print, Scale};
use crate::drawing::scene::{Anchor, At, Lettering, Role, Scene};
use crate::geometry::{Rect, Region};
use crate::project::Project;
use crate::words::{figures as words, variants};

const UM: i64 = 1000;
/// Between two outlines of a piece.
const GAP: i64 = 3000 * UM;

/// A piece's finished outline at 1:2, `count` times side by side in rows no wider than `room`, with its ring and
/// true size where they fit, and folds in the base. None for what is bought and not cut.
#[must_use]
pub fn piece(project: &Project, piece: PieceId, count: u32, room: i64) -> Option<Scene> {
    let say = project.words();
    let design = &project.design;
    let own = design.piece(piece);
    if matches!(own.kind, PieceKind::Decoration { .. }) {
        return None;
    }
    let region = match own.shape.make() {
        Ok(made) => Region::from(&made.outline),
        Err(_) => Region::from(Rect::of(own.size)),
    };
    let scale = Scale::stated(20, Print::NORMAL);
    let whole = Rect::of(own.size);
    let (width, height) = (scale.length(whole.width()), scale.length(whole.height()));
    let across = ((room + GAP) / (width + GAP)).max(1);
    let mut canvas = Canvas::new();
    let size = words::size(say, &own.size.numbers(project.units()));
    let mut hull = Area::at(0, 0, width, height);
    let folds = folds(project, piece);
    for n in 0..i64::from(count) {
        let corner = At::new(n % across * (width + GAP), n / across * (height + GAP));
        let frame = Frame::new(scale, whole, corner);
        let area = frame.area(whole);
        let outline = Outline::of(frame, &region)?;
        outline.draw(&mut canvas, Role::Piece);
        for (at, upright, mountain) in &folds {
            let role = if *mountain { Role::Fold } else { Role::Valley };
            if *upright {
                let x = area.left + scale.length(*at);
                canvas.line(role, At::new(x, area.top), At::new(x, area.bottom));
            } else {
                let y = area.top + scale.length(*at);
                canvas.line(role, At::new(area.left, y), At::new(area.right, y));
            }
        }
        label(&mut canvas, &outline, label_area(area, &folds, scale), design.ring(piece), &size);
        hull = hull.hull(area);
    }
    let told = size_text(project, own.size);
    let alt = variants::try_piece_told(say, &own.name, &told, folds.len());
    Some(canvas.finish(format!("try-out-{}", design.ring(piece)), Some(20), alt, hull))
}

/// Places of the folds of the base: from the left where they run upright, else from the top.
fn folds(project: &Project, piece: PieceId) -> Vec<(i64, bool, bool)> {
    let Some(card) = project.design.card.as_ref().filter(|card| card.base == piece) else { return Vec::new() };
    let upright = card.fold != crate::design::model::Fold::Top;
    card.fold.scores(card.size).into_iter().map(|score| (score.at, upright, score.mountain)).collect()
}

/// Where the label stands: in the middle, or in the part behind the last fold.
fn label_area(area: Area, folds: &[(i64, bool, bool)], scale: Scale) -> Area {
    match folds.last() {
        Some((at, true, _)) => Area { left: area.left + scale.length(*at), ..area },
        Some((at, false, _)) => Area { top: area.top + scale.length(*at), ..area },
        None => area,
    }
}

/// The ring and under it the true size, as much of it as has room within the outline.
fn label(canvas: &mut Canvas, outline: &Outline, area: Area, ring: u32, size: &str) {
    let middle = area.middle();
    let radius = ring_radius(ring);
    let gap = 1300 * UM;
    let words = text_area(Lettering::Figure, At::new(0, 0), Anchor::Middle, false, size);
    let high = 2 * radius + gap + words.height();
    let block = Area::round(middle, words.width().max(2 * radius), high);
    if outline.contains(block.grown(600 * UM)) {
        canvas.ring(At::new(middle.x, block.top + radius), ring);
        canvas.text(Lettering::Figure, At::new(middle.x, block.bottom), Anchor::Middle, size);
    } else if outline.contains(Area::round(middle, 2 * radius, 2 * radius).grown(400 * UM)) {
        canvas.ring(middle, ring);
    }
}
