//! A finished face, to a stated scale, with its dimensions.

use super::layers::{self, Copy, Pile};
use super::rings::{Named, assign, put_column};
use super::view::{Ground, View};
use super::{Room, id, turns};
use crate::design::model::{Along, Arrangement, LayerId, Onto, PieceId, VersionId};
use crate::drawing::angle::AngleMark;
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, put_lens, ring_radius, text_area};
use crate::drawing::dimension::{Dimension, Drawn, stack};
use crate::drawing::outline::Outline;
use crate::drawing::scale::{Frame, Print, STATED, Scale};
use crate::drawing::scene::{Anchor, At, Lettering, Role, Scene};
use crate::drawing::text;
use crate::geometry::{Edge, Rect};
use crate::length::{Length, Size};
use crate::project::Project;
use crate::words::figures as words;

const UM: i64 = 1000;
/// The fold mark reaches so far past the card.
const FOLD_MARK: i64 = 8500 * UM;
/// Room beside the card for its dimensions, and for rings and a lens.
const DIMENSIONS: i64 = 18_500 * UM;
const LENS: i64 = 31_500 * UM;
/// A border under this on the page is shown in a lens.
const UNDER: i64 = 3000 * UM;
const LENS_RADIUS: i64 = 11_000 * UM;

/// How much of the work a version's figure does: each measure is given once.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Part {
    dimensions: bool,
    gaps: bool,
}

/// The finished front of a version, as large as `room` allows at a stated scale. The first version
/// carries the dimensions, rings and lens, the second the gaps; none where there is no card.
#[must_use]
pub fn front(project: &Project, version: VersionId, room: Room) -> Option<Scene> {
    face(project, version, View::Front, room)
}

/// As [`front`] for any face of the card or its envelope; none where there is no such face.
#[must_use]
pub fn face(project: &Project, version: VersionId, view: View, room: Room) -> Option<Scene> {
    let say = project.words();
    let ground = Ground::of(project, view)?;
    let several = project.design.versions.len() > 1;
    let part = Part { dimensions: version.0 == 0, gaps: if several { version.0 == 1 } else { true } };
    let face = ground.rect;
    let all: Vec<LayerId> = project.design.layer_ids().collect();
    let copies = layers::copies(project, &ground, &all, |_| true);
    let borders = borders(project, face, &copies);
    let fold_edge = ground.fold_edge(project);

    let beside = if part.dimensions { DIMENSIONS + LENS } else { 1000 * UM };
    let above = if fold_edge.is_some_and(Edge::is_side) { FOLD_MARK } else { 7500 * UM };
    let below = if part.dimensions { 8300 * UM } else { 1000 * UM };
    let (width, height) = (face.width(), face.height());
    let within = (room.width - beside, room.height - above - below);
    let tenths = Scale::choose(&STATED, (width, height), within, room.print);
    let frame = Frame::new(Scale::stated(tenths, room.print), face, At::new(0, 0));
    let outline = frame.area(face);

    let mut canvas = Canvas::new();
    let turns: Vec<Drawn> = if part.dimensions { angle_marks(project, frame, &ground, &copies) } else { Vec::new() };
    let gaps = if part.gaps { gaps(project, frame, &ground, &copies) } else { Gaps::default() };
    let mut plates: Vec<Area> = gaps.inside.iter().map(|gap| gap.area.grown(800 * UM)).collect();
    plates.extend(turns.iter().flat_map(AngleMark::plates));
    let mut measures = gaps.told;
    if part.dimensions {
        let on_view = project.design.layer_ids().filter(|id| shown(&copies, *id).is_some());
        measures.extend(on_view.flat_map(|id| turns::told(project, id)));
    }
    // What stands on the right is settled first: a piece that finds no ring there has it inside.
    let lens = borders.filter(|borders| part.dimensions && frame.scale.length(borders.least) < UNDER);
    let lens_stretch = lens.iter().map(|borders| lens_stretch(outline, borders));
    // No level leader runs through the degrees of a turn.
    let degrees = turns.iter().map(|mark| {
        let clear = if mark.figure.right > outline.right { 3400 * UM } else { 900 * UM };
        (mark.figure.top - clear, mark.figure.bottom + clear)
    });
    let blocked: Vec<(i64, i64)> = lens_stretch.chain(degrees).collect();
    let named = if part.dimensions { named(project, frame, &ground, &copies) } else { Vec::new() };
    // Under the word at a top fold.
    let start = outline.top + if fold_edge == Some(Edge::Top) { 3600 * UM } else { 1000 * UM };
    let column = assign(&named, (start, outline.bottom - 2400 * UM), &blocked);
    let in_column = |n: usize| column.iter().any(|own| own.who == n);
    let inside: Vec<(At, u32)> = (0..named.len())
        .filter(|n| !in_column(*n))
        .filter_map(|n| Some((named[n].spot_inside(&plates)?, named[n].ring)))
        .collect();
    plates.extend(inside.iter().map(|(spot, ring)| {
        let across = 2 * ring_radius(*ring);
        Area::round(*spot, across, across).grown(600 * UM)
    }));

    ground.draw(&mut canvas, frame, Role::Layer);
    let pile = Pile { project, frame, copies: &copies, version };
    pile.draw(&mut canvas, |_| Role::Layer, |_| true, &plates);
    for mark in turns.into_iter().chain(gaps.inside) {
        canvas.items.extend(mark.items);
    }
    let (mut uprights, mut levels) = (gaps.uprights, gaps.levels);
    if part.dimensions {
        measures.splice(0..0, dimensions(project, frame, &ground, &copies, &mut uprights, &mut levels));
    }
    for drawn in stack(uprights, outline.left, -1).into_iter().chain(stack(levels, outline.bottom, 1)) {
        canvas.items.extend(drawn.items);
        canvas.taken.push(drawn.area);
    }
    if let Some(borders) = &lens {
        put_border_lens(&mut canvas, project, (frame, room.print), version, (face, &copies), borders);
        measures.push(words::borders_told(say, &numbers(project, &borders.widths)));
    }
    for (spot, ring) in inside {
        canvas.ring(spot, ring);
    }
    put_column(&mut canvas, &named, &column, outline.right + 6600 * UM);
    let fold = part.dimensions.then(|| words::fold(say));
    put_fold(&mut canvas, fold_edge, outline, fold.as_deref());
    put_scale(&mut canvas, outline, &words::scale(say, tenths), part.dimensions);

    let name = &project.design.version(version).name;
    let scene_name = if name.is_empty() { view.key().to_owned() } else { format!("{}-{}", view.key(), id(name)) };
    let size = size_text(project, face.size(Length::zero(project.units()).unit()));
    let what = match view {
        View::Front => words::front_of_card(say, &size),
        View::Inside => words::inside(say, &size),
        View::Back => words::back_of_card(say, &size),
        View::EnvelopeFront => words::envelope_front(say, &size),
        View::EnvelopeFlap => words::envelope_flap(say, &size),
    };
    let alt = words::face(say, &what, fold_edge.map(Edge::word), name, &told(project, view, version), &measures);
    Some(canvas.finish(scene_name, Some(tenths), alt, outline))
}

pub(super) fn size_text(project: &Project, size: Size) -> String {
    let say = project.words();
    let units = project.units();
    words::size(say, &format!("{} {}", size.numbers(units), units.sign()))
}

pub(super) fn number(project: &Project, nm: i64) -> String {
    let units = project.units();
    Length::of(nm, units).number(units)
}

fn numbers(project: &Project, nm: &[i64]) -> Vec<String> {
    nm.iter().map(|nm| number(project, *nm)).collect()
}

/// Every layer in words, with the size that shows; of a turned one its size unturned.
fn told(project: &Project, view: View, version: VersionId) -> Vec<words::Told> {
    let say = project.words();
    let design = &project.design;
    design
        .layer_ids()
        .filter(|id| View::of(design.layer(*id).face) == view)
        .map(|id| {
            let layer = design.layer(id);
            let placed = project.layout.placed(id);
            let lying = placed.trimmed.iter().flatten().next().filter(|_| placed.is_straight());
            let shown = lying.or(placed.copies.first());
            let size = shown.map_or_else(String::new, |rect| {
                words::size(say, &rect.size(design.pieces[layer.piece.0].size.width.unit()).numbers(project.units()))
            });
            words::Told {
                ring: design.ring(layer.piece),
                name: layer.name.clone(),
                count: layer.count(),
                size: size + &turns::form_told(project.words(), &design.pieces[layer.piece.0].shape),
                paper: layers::paper_of(project, id, version)
                    .map_or_else(String::new, |p| design.paper(p).name.clone()),
            }
        })
        .collect()
}

/// The mark at the folded edge: past the card, where it cannot vanish in the outline.
fn put_fold(canvas: &mut Canvas, edge: Option<Edge>, outline: Area, word: Option<&str>) {
    let Some(edge) = edge else { return };
    let gap = 600 * UM;
    match edge {
        Edge::Top => {
            let y = outline.top;
            canvas.line(Role::Fold, At::new(outline.right + gap, y), At::new(outline.right + FOLD_MARK, y));
            if let Some(word) = word {
                canvas.text(Lettering::Word, At::new(outline.right + 1500 * UM, y - 1200 * UM), Anchor::Start, word);
            }
        }
        _ => {
            let x = outline.edge(edge);
            canvas.line(Role::Fold, At::new(x, outline.top - FOLD_MARK), At::new(x, outline.top - gap));
            if let Some(word) = word {
                canvas.text(Lettering::Word, At::new(x + 1500 * UM, outline.top - 2400 * UM), Anchor::Start, word);
            }
        }
    }
}

fn put_scale(canvas: &mut Canvas, outline: Area, scale: &str, is_first: bool) {
    let ink = canvas.extent().map_or(outline.left, |ink| ink.left);
    let width = text::width(Lettering::Small, scale);
    // Beside the first figure its dimensions start further left: align with them, clear of the fold.
    let x = if is_first && ink + width < outline.left { ink } else { outline.left + 2500 * UM };
    let mut at = At::new(x, outline.top - 4000 * UM);
    while !canvas.is_free(text_area(Lettering::Small, at, Anchor::Start, false, scale), 900 * UM) {
        at.y -= 500 * UM;
    }
    canvas.text(Lettering::Small, at, Anchor::Start, scale);
}

/// The hull of a layer as it shows.
fn shown(copies: &[Copy], layer: LayerId) -> Option<Rect> {
    copies.iter().filter(|copy| copy.layer == layer).map(|copy| copy.rect).reduce(Rect::hull)
}

/// Adds overall size and the places of layers that are not centred; returns them in words.
fn dimensions(
    project: &Project,
    frame: Frame,
    ground: &Ground,
    copies: &[Copy],
    uprights: &mut Vec<Dimension>,
    levels: &mut Vec<Dimension>,
) -> Vec<String> {
    let say = project.words();
    let face = ground.rect;
    let outline = frame.area(face);
    let height = number(project, face.height());
    let width = number(project, face.width());
    uprights.push(Dimension::upright((outline.top, outline.bottom), (outline.left, outline.left), 0, height));
    levels.push(Dimension::level((outline.left, outline.right), (outline.bottom, outline.bottom), 0, width));
    let mut told = Vec::new();
    for id in project.design.layer_ids() {
        let layer = project.design.layer(id);
        let Some(rect) = shown(copies, id).filter(|_| project.layout.placed(id).is_straight()) else { continue };
        // What lies on a panel or flap is measured from its edges.
        let face = ground.rect_of(layer.face, project.layout.face(layer.face));
        if let Some((low, high, text)) = place(project, copies, layer.up, rect, face, Edge::Bottom, Edge::Top) {
            let ends = (frame.y(high), frame.y(low));
            let dimension = Dimension::upright(ends, (outline.left, outline.left), 0, number(project, high - low));
            if !uprights.iter().any(|other| other.ends == dimension.ends) {
                told.push(words::from_there(say, &dimension.text, &layer.name, &text));
                uprights.push(dimension);
            }
        }
        if let Some((low, high, text)) = place(project, copies, layer.across, rect, face, Edge::Left, Edge::Right) {
            let ends = (frame.x(low), frame.x(high));
            let dimension = Dimension::level(ends, (outline.bottom, outline.bottom), 0, number(project, high - low));
            if !levels.iter().any(|other| other.ends == dimension.ends) {
                told.push(words::from_there(say, &dimension.text, &layer.name, &text));
                levels.push(dimension);
            }
        }
    }
    told
}

/// The stretch that gives a layer's place in one direction: from the card's edge, or the gap to its
/// neighbour; nothing where it is centred, level with an edge or laid edge to edge.
fn place(
    project: &Project,
    copies: &[Copy],
    along: Along,
    rect: Rect,
    face: Rect,
    low: Edge,
    high: Edge,
) -> Option<(i64, i64, String)> {
    let say = project.words();
    let neighbour = |layer: LayerId, edge: Edge| {
        let name = project.design.layer(layer).name.clone();
        shown(copies, layer).map(|other| (other.edge(edge), name))
    };
    let stretch = match along {
        Along::Centre | Along::With(..) | Along::Midway(..) => return None,
        Along::FromLow(_) => (face.edge(low), rect.edge(low), words::the_edge(say, low)),
        Along::FromHigh(_) => (rect.edge(high), face.edge(high), words::the_edge(say, high)),
        Along::After(layer, _) => {
            let (at, name) = neighbour(layer, high)?;
            (at, rect.edge(low), name)
        }
        Along::Before(layer, _) => {
            let (at, name) = neighbour(layer, low)?;
            (rect.edge(high), at, name)
        }
    };
    (stretch.0 < stretch.1).then_some(stretch)
}

/// The gaps of rows, columns and grids, each once.
#[derive(Default)]
struct Gaps {
    /// Those with room inside the card.
    inside: Vec<Drawn>,
    /// The others: beside the card and under it.
    uprights: Vec<Dimension>,
    levels: Vec<Dimension>,
    told: Vec<String>,
}

fn gaps(project: &Project, frame: Frame, ground: &Ground, copies: &[Copy]) -> Gaps {
    let say = project.words();
    let mut found = Gaps::default();
    let card = frame.area(ground.rect);
    for id in project.design.layer_ids() {
        let layer = project.design.layer(id);
        let is_spaced = matches!(
            layer.arrangement,
            Arrangement::Single
                | Arrangement::Row { .. }
                | Arrangement::Column { .. }
                | Arrangement::Grid { .. }
                | Arrangement::Triangle { .. }
        );
        if !is_spaced || !project.layout.placed(id).is_straight() {
            continue;
        }
        let rects: Vec<Rect> = copies.iter().filter(|copy| copy.layer == id).map(|copy| copy.rect).collect();
        let (Some(first), Some(block)) = (rects.first(), rects.iter().copied().reduce(Rect::hull)) else { continue };
        let block = frame.area(block);
        let onto = match layer.onto {
            Onto::Card => card,
            Onto::Layer(onto) => shown(copies, onto).map_or(card, |rect| frame.area(rect)),
        };
        // Whatever does not lie under the whole row is in the way.
        let others: Vec<Area> =
            copies.iter().map(|copy| frame.area(copy.rect)).filter(|area| !area.contains(onto)).collect();
        let is_clear = |drawn: &Drawn, found: &Gaps| {
            onto.grown(-700 * UM).contains(drawn.area)
                && !found.inside.iter().chain([drawn]).any(|other| other != drawn && other.area.overlaps(drawn.area))
                && !others.iter().any(|other| other.overlaps(drawn.area))
        };
        // The first two side by side: the first row of a triangle may be a single one.
        let beside = rects.iter().find_map(|one| {
            let next = rects.iter().find(|next| next.top == one.top && next.left > one.right)?;
            Some((one, next))
        });
        if let Some((first, next)) = beside {
            let ends = (frame.x(first.right), frame.x(next.left));
            let text = number(project, next.left - first.right);
            let level = |edge, line| Dimension::level(ends, (edge, edge), line, text.clone());
            let inside = [level(block.bottom, block.bottom + 5000 * UM), level(block.top, block.top - 5000 * UM)];
            match inside.iter().map(Dimension::draw).find(|drawn| is_clear(drawn, &found)) {
                Some(drawn) => found.inside.push(drawn),
                None if found.levels.iter().any(|other| other.ends == ends) => {}
                None => found.levels.push(level(card.bottom, 0)),
            }
            found.told.push(words::gap(say, &text, &layer.name));
        }
        if let Some(next) = rects.iter().find(|rect| rect.top < first.bottom) {
            let ends = (frame.y(first.bottom), frame.y(next.top));
            let text = number(project, first.bottom - next.top);
            let upright = |edge, line| Dimension::upright(ends, (edge, edge), line, text.clone());
            let inside = [upright(block.right, block.right + 5000 * UM), upright(block.left, block.left - 5000 * UM)];
            match inside.iter().map(Dimension::draw).find(|drawn| is_clear(drawn, &found)) {
                Some(drawn) => found.inside.push(drawn),
                None if found.uprights.iter().any(|other| other.ends == ends) => {}
                None => found.uprights.push(upright(card.left, 0)),
            }
            found.told.push(words::gap(say, &text, &layer.name));
        }
    }
    found
}

/// The chain of layers that are set in by one border all round, from the card inward.
struct Borders {
    /// Borders, outermost first.
    widths: Vec<i64>,
    /// The smallest.
    least: i64,
    /// Whether the detail is taken at the lower corner (else the upper).
    below: bool,
}

fn borders(project: &Project, face: Rect, copies: &[Copy]) -> Option<Borders> {
    let mut widths = Vec::new();
    let mut current = face;
    let mut chain = Vec::new();
    for copy in copies {
        let layer = project.design.layer(copy.layer);
        if layer.arrangement != Arrangement::Single {
            continue;
        }
        let each = Edge::ALL.map(|edge| current.border(copy.rect, edge));
        if copy.is_plain() && each[0] > 0 && each.iter().all(|border| *border == each[0]) && each[0] <= 13_000 * UM {
            widths.push(each[0]);
            chain.push(copy.layer);
            current = copy.rect;
        }
    }
    let least = *widths.iter().min()?;
    let reach = widths.iter().sum::<i64>() + 2000 * UM;
    let is_clear = |bottom: i64| {
        let corner = Rect::at(face.right - reach, bottom, reach, reach);
        !copies.iter().any(|copy| !chain.contains(&copy.layer) && copy.rect.overlap(corner).is_some())
    };
    let below = is_clear(face.bottom);
    (below || is_clear(face.top - reach)).then_some(Borders { widths, least, below })
}

/// Where the lens stands: beside the corner it shows.
fn lens_centre(outline: Area, borders: &Borders) -> At {
    let y = if borders.below { outline.bottom - 13_500 * UM } else { outline.top + 12_500 * UM };
    At::new(outline.right + 20_000 * UM, y)
}

/// The heights at which rings would meet the lens or its words.
fn lens_stretch(outline: Area, borders: &Borders) -> (i64, i64) {
    let centre = lens_centre(outline, borders);
    (centre.y - LENS_RADIUS - 3400 * UM, centre.y + LENS_RADIUS + 13_200 * UM)
}

/// A lens 1:1 on a corner of the card.
fn put_border_lens(
    canvas: &mut Canvas,
    project: &Project,
    (frame, print): (Frame, Print),
    version: VersionId,
    (face, copies): (Rect, &[Copy]),
    borders: &Borders,
) {
    let say = project.words();
    let outline = frame.area(face);
    let total: i64 = borders.widths.iter().sum();
    let down = if borders.below { 1 } else { -1 };
    let centre = lens_centre(outline, borders);
    let corner = At::new(outline.right, if borders.below { outline.bottom } else { outline.top });
    let on_page = frame.scale.length(total);
    let spot = corner.moved(-on_page / 2, -down * on_page / 2);
    let spot_radius = (on_page * 7 / 10 + 1000 * UM).clamp(2400 * UM, 3600 * UM);
    let seen_corner =
        centre.moved((total / 2 + 1000 * UM).min(5500 * UM), down * (total / 2 + 1000 * UM).min(5500 * UM));
    let top = if borders.below { face.bottom } else { face.top };
    let seen = Pile {
        project,
        frame: Frame { scale: Scale::stated(10, print), at: seen_corner, left: face.right, top },
        copies,
        version,
    };
    let square = Area::round(centre, 2 * LENS_RADIUS, 2 * LENS_RADIUS);
    let seen = seen.seen_in(square, (face, Role::Layer), |_| true);
    put_lens(canvas, spot, spot_radius, centre, LENS_RADIUS, seen);
    let text = words::borders(say, &numbers(project, &borders.widths));
    let figure = canvas.text(Lettering::Figure, centre.moved(0, LENS_RADIUS + 4800 * UM), Anchor::Middle, &text);
    canvas.text(Lettering::Small, At::new(centre.x, figure.bottom + 5000 * UM), Anchor::Middle, &words::scale(say, 10));
}

/// Every piece that shows, the base first.
fn named(project: &Project, frame: Frame, ground: &Ground, copies: &[Copy]) -> Vec<Named> {
    let mut named: Vec<Named> = Vec::new();
    let outlines: Vec<Outline> = copies.iter().map(|copy| copy.outline(frame)).collect();
    if let Some(card) = project.design.card.as_ref().filter(|_| ground.view.is_card()) {
        let face = frame.area(ground.rect).into();
        named.push(Named { ring: project.design.ring(card.base), copies: vec![(face, outlines.clone())] });
    }
    let pieces: std::collections::BTreeSet<PieceId> =
        copies.iter().map(|copy| project.design.layer(copy.layer).piece).collect();
    for piece in pieces {
        let own = copies.iter().enumerate().filter(|(_, copy)| project.design.layer(copy.layer).piece == piece);
        let with_above = own.map(|(n, _)| (outlines[n].clone(), outlines[n + 1..].to_vec()));
        named.push(Named { ring: project.design.ring(piece), copies: with_above.collect() });
    }
    named
}

/// The angle of every turned layer that is seen.
fn angle_marks(project: &Project, frame: Frame, ground: &Ground, copies: &[Copy]) -> Vec<Drawn> {
    let seen = project.design.layer_ids().filter(|id| shown(copies, *id).is_some());
    let outlines: Vec<Outline> =
        copies.iter().map(|copy| copy.outline(frame)).chain([frame.area(ground.rect).into()]).collect();
    seen.filter_map(|id| Some(turns::mark(project, ground, frame, id, &outlines)?.draw())).collect()
}
