//! One picture a step: the new layer strong, hatched and ringed, what is there already pale.

mod measures;

use super::front::{fold_edge, number, size_text};
use super::layers::{self, Copy, Pile};
use super::rings::{Named, assign, put_column};
use crate::assembly::model::Action;
use crate::design::model::{LayerId, Onto, PieceId, VersionId};
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, put_lens, ring_radius};
use crate::drawing::dimension::{Dimension, Drawn};
use crate::drawing::hatch::hatch_of;
use crate::drawing::scale::{Frame, Scale};
use crate::drawing::scene::{Anchor, At, Lettering, Role, Scene};
use crate::drawing::text;
use crate::geometry::{Edge, Rect};
use crate::project::Project;
use crate::words::english::figures as words;
use measures::Measures;

const UM: i64 = 1000;
/// Every step picture is this wide: a third of the live width less its gutters.
pub const WIDTH: i64 = 58_670 * UM;
/// Every step picture is this high.
pub const HEIGHT: i64 = 56_000 * UM;
/// The most that the card itself takes; beside it stand lens, dimension and rings.
const CARD_WIDTH: i64 = 37_000 * UM;
const CARD_HEIGHT: i64 = 45_000 * UM;
const LEFT: i64 = 1500 * UM;
const TOP: i64 = 6500 * UM;
const LENS_RADIUS: i64 = 7500 * UM;
/// A trim line is longer than the piece by this, each way.
const TRIM_PAST: i64 = 6000 * UM;
/// A ring stands in a piece of at least this size each way.
const RING_ROOM: i64 = 6800 * UM;

/// The picture of the step at `index` of the project's steps, not to scale; none for a step that
/// needs no picture (cutting has its diagrams, sorting its words).
#[must_use]
pub fn step(project: &Project, index: usize) -> Option<Scene> {
    let step = project.steps.steps.get(index)?;
    let mut picture = Picture::new(project, index);
    let alt = match &step.action {
        Action::Cut { .. } | Action::Sort => return None,
        Action::Glue { layer, loose } => picture.glue(*layer, *loose)?,
        Action::Trim { layer, loose } => picture.trim(*layer, *loose)?,
        Action::Stamp { piece } => picture.stamp(*piece),
        Action::ScoreAndFold { piece } => picture.score(*piece)?,
        Action::Decorate { .. } => picture.finished()?,
    };
    let name = step.number.map_or_else(|| format!("step-x{index}"), |number| format!("step-{number}"));
    let cell = Area::at(0, 0, WIDTH, HEIGHT);
    Some(picture.canvas.finish(name, None, alt, cell))
}

/// Where in the job a picture stands.
struct Picture<'a> {
    project: &'a Project,
    index: usize,
    version: VersionId,
    canvas: Canvas,
}

impl<'a> Picture<'a> {
    fn new(project: &'a Project, index: usize) -> Self {
        Self { project, index, version: VersionId(0), canvas: Canvas::new() }
    }

    fn face(&self) -> Option<Rect> {
        self.project.layout.card.map(Rect::of)
    }

    /// The card and whatever reaches past it, at one scale and place in every picture.
    fn frame(&self) -> Option<Frame> {
        let all = self.project.layout.layers.iter().map(|placed| placed.block);
        let hull = all.fold(self.face()?, Rect::hull);
        // An end that reaches past the card is measured on the left, where its arrow needs room.
        let is_past = hull.left < 0;
        let (left, room) = if is_past { (LEFT + 4500 * UM, CARD_WIDTH - 3000 * UM) } else { (LEFT, CARD_WIDTH) };
        let scale = Scale::to_fit(hull.width(), hull.height(), room, CARD_HEIGHT);
        Some(Frame::new(scale, hull, At::new(left, TOP)))
    }

    /// The layer that a unit is built on: the one that is not itself put together first.
    fn root(&self, layer: LayerId) -> LayerId {
        let mut root = layer;
        for _ in 0..self.project.design.layers.len() {
            match self.project.design.layer(root).unit {
                Some(unit) => root = unit,
                None => break,
            }
        }
        root
    }

    fn is_within(&self, layer: LayerId, unit: LayerId) -> bool {
        let mut at = Some(layer);
        for _ in 0..=self.project.design.layers.len() {
            match at {
                Some(layer) if layer == unit => return true,
                Some(layer) => at = self.project.design.layer(layer).unit,
                None => return false,
            }
        }
        false
    }

    fn actions_before(&self) -> impl Iterator<Item = &'a Action> + use<'a> {
        self.project.steps.steps[..self.index].iter().map(|step| &step.action)
    }

    fn is_trimmed(&self, layer: LayerId) -> bool {
        self.actions_before().any(|action| matches!(action, Action::Trim { layer: trimmed, .. } if *trimmed == layer))
    }

    /// Layers joined with what the step works on, in the order they lie, and whether the card is
    /// among them.
    fn there(&self, layer: LayerId, loose: bool) -> Vec<LayerId> {
        let root = self.root(layer);
        let glued: Vec<(LayerId, bool)> = self
            .actions_before()
            .filter_map(|action| match action {
                Action::Glue { layer, loose } => Some((*layer, *loose)),
                _ => None,
            })
            .collect();
        let on_card: Vec<LayerId> = glued.iter().filter(|(_, loose)| !loose).map(|(layer, _)| *layer).collect();
        let mut there: Vec<LayerId> = if loose {
            let unit = glued.iter().map(|(layer, _)| *layer).filter(|other| self.root(*other) == root);
            unit.chain(std::iter::once(root)).filter(|other| *other != layer).collect()
        } else {
            let with_units = glued.iter().map(|(layer, _)| *layer).filter(|other| {
                on_card.iter().any(|card| self.is_within(*other, *card)) && !self.is_within(*other, layer)
            });
            with_units.collect()
        };
        // What it lies on is there, even where no step put it down.
        let mut at = self.project.design.layer(layer).onto;
        while let Onto::Layer(below) = at {
            if there.contains(&below) {
                break;
            }
            there.push(below);
            at = self.project.design.layer(below).onto;
        }
        there.retain(|other| *other != layer);
        there.sort_unstable();
        there.dedup();
        there
    }

    /// The members of a unit that were glued onto `layer` before.
    fn members(&self, layer: LayerId) -> Vec<LayerId> {
        let glued = self.actions_before().filter_map(|action| match action {
            Action::Glue { layer, .. } => Some(*layer),
            _ => None,
        });
        let mut members: Vec<LayerId> =
            glued.filter(|other| *other != layer && self.is_within(*other, layer)).collect();
        members.sort_unstable();
        members
    }

    fn glue(&mut self, layer: LayerId, loose: bool) -> Option<String> {
        let (frame, face) = (self.frame()?, self.face()?);
        let there = self.there(layer, loose);
        let mut all = there;
        all.push(layer);
        all.extend(self.members(layer));
        all.sort_unstable();
        all.dedup();
        let copies = layers::copies(self.project, &all, |layer| self.is_trimmed(layer));
        let is_new = |other: LayerId| other == layer;
        let on_card = !loose;

        let measures = Measures::read(self.project, frame, layer, &copies, face);
        let drawn: Vec<Drawn> = measures.dimensions.iter().map(Dimension::draw).collect();
        let mut plates: Vec<Area> = drawn.iter().map(|drawn| drawn.area.grown(800 * UM)).collect();
        let new_areas: Vec<Area> =
            copies.iter().filter(|copy| is_new(copy.layer)).map(|copy| frame.area(copy.rect)).collect();
        let ring = self.project.design.ring(self.project.design.layer(layer).piece);
        let spots = ring_spots(&copies, frame, layer, ring);
        plates.extend(
            spots
                .iter()
                .flatten()
                .map(|spot| Area::round(*spot, 2 * ring_radius(ring), 2 * ring_radius(ring)).grown(600 * UM)),
        );

        if on_card {
            self.canvas.area(Role::Ghost, frame.area(face));
        }
        let role = |other: LayerId| if is_new(other) { Role::Piece } else { Role::Ghost };
        let pile = Pile { project: self.project, frame, copies: &copies, version: self.version };
        pile.draw(&mut self.canvas, role, is_new, &plates);
        let mut busy = (HEIGHT, 0);
        for Drawn { items, area, figure } in drawn {
            self.canvas.items.extend(items);
            self.canvas.taken.push(figure);
            if area.right > frame.area(face).right {
                busy = (busy.0.min(area.top), busy.1.max(area.bottom));
            }
        }
        let right = new_areas.iter().map(|area| area.right).chain([frame.area(face).right]).max().unwrap_or(0);
        if let Some(border) = measures.border {
            busy = (0, self.lens(frame, face, &copies, layer, border, on_card, right));
        }
        self.put_rings(frame, face, &copies, layer, &spots, right, busy, on_card);

        let onto = self.name_of(self.project.design.layer(layer).onto);
        Some(words::glue_step(&self.told(layer), &onto, &measures.told))
    }

    fn told(&self, layer: LayerId) -> String {
        let layer = self.project.design.layer(layer);
        words::counted(layer.count(), &layer.name, self.project.design.ring(layer.piece))
    }

    fn name_of(&self, onto: Onto) -> String {
        match onto {
            Onto::Card => words::card_front().to_owned(),
            Onto::Layer(layer) => self.told(layer),
        }
    }

    /// A lens 1:1 on the upper right corner of a layer with one border all round; gives the height
    /// down to which it and its words reach.
    #[allow(clippy::too_many_arguments)]
    fn lens(
        &mut self,
        frame: Frame,
        face: Rect,
        copies: &[Copy],
        layer: LayerId,
        border: i64,
        on_card: bool,
        right: i64,
    ) -> i64 {
        let placed = self.project.layout.placed(layer);
        let onto = placed.onto;
        let corner = frame.area(onto);
        let centre = At::new(right + 3000 * UM + LENS_RADIUS, TOP + LENS_RADIUS + 1000 * UM);
        let on_page = frame.scale.length(border);
        let spot = At::new(corner.right - on_page / 2, corner.top + on_page / 2);
        let inset = (border / 2 + 1000 * UM).min(4500 * UM);
        let seen_frame =
            Frame { scale: Scale::stated(10), at: centre.moved(inset, -inset), left: onto.right, top: onto.top };
        let below: Vec<Copy> = copies.iter().filter(|copy| copy.layer <= layer).copied().collect();
        let ground = if on_card { face } else { onto };
        let square = Area::round(centre, 2 * LENS_RADIUS, 2 * LENS_RADIUS);
        let seen = Pile { project: self.project, frame: seen_frame, copies: &below, version: self.version };
        let seen = seen.seen_in(square, (ground, Role::Ghost), |other| other == layer);
        put_lens(
            &mut self.canvas,
            spot,
            (on_page * 3 / 4 + 1200 * UM).clamp(2000 * UM, 3200 * UM),
            centre,
            LENS_RADIUS,
            seen,
        );
        let baseline = centre.y + LENS_RADIUS + 4600 * UM;
        let text = number(self.project, border);
        self.canvas.text(Lettering::Figure, At::new(centre.x, baseline), Anchor::Middle, &text);
        let scale = words::bare_scale(10);
        self.canvas.text(Lettering::Small, At::new(centre.x, baseline + 4600 * UM), Anchor::Middle, &scale);
        baseline + 4600 * UM
    }

    /// The new layer's ring, in its copies where there is room, and the ring of what it meets.
    #[allow(clippy::too_many_arguments)]
    fn put_rings(
        &mut self,
        frame: Frame,
        face: Rect,
        copies: &[Copy],
        layer: LayerId,
        spots: &[Option<At>],
        right: i64,
        busy: (i64, i64),
        on_card: bool,
    ) {
        let design = &self.project.design;
        let ring = design.ring(design.layer(layer).piece);
        for spot in spots.iter().flatten() {
            self.canvas.ring(*spot, ring);
        }
        let above = |n: usize| copies[n + 1..].iter().map(|upper| frame.area(upper.rect)).collect::<Vec<Area>>();
        let named = |ring: u32, wanted: &dyn Fn(LayerId) -> bool| {
            let own = copies.iter().enumerate().filter(|(_, copy)| wanted(copy.layer));
            Named { ring, copies: own.map(|(n, copy)| (frame.area(copy.rect), above(n))).collect() }
        };
        let mut column = Vec::new();
        if spots.iter().flatten().next().is_none() {
            column.push(named(ring, &|other| other == layer));
        }
        match design.layer(layer).onto {
            Onto::Layer(onto) => {
                let other = design.ring(design.layer(onto).piece);
                if other != ring {
                    column.push(named(other, &|layer| layer == onto));
                }
            }
            Onto::Card => {
                if let Some(card) = design.card.as_ref().filter(|_| on_card) {
                    let all = copies.iter().map(|copy| frame.area(copy.rect)).collect();
                    column.push(Named { ring: design.ring(card.base), copies: vec![(frame.area(face), all)] });
                }
            }
        }
        let end = frame.area(face).bottom - 3000 * UM;
        let blocked = [(busy.0 - 4000 * UM, busy.1 + 4500 * UM)];
        let rings = assign(&column, (TOP + 1000 * UM, end), &blocked);
        put_column(&mut self.canvas, &column, &rings, right + 6000 * UM);
    }

    fn trim(&mut self, layer: LayerId, loose: bool) -> Option<String> {
        let (frame, face) = (self.frame()?, self.face()?);
        let mut all = self.there(layer, loose);
        all.push(layer);
        all.sort_unstable();
        all.dedup();
        let is_trimmed = |other: LayerId| other == layer || self.is_trimmed(other);
        let copies = layers::copies(self.project, &all, is_trimmed);
        let placed = self.project.layout.placed(layer);
        if !loose {
            self.canvas.area(Role::Ghost, frame.area(face));
        }
        for copy in &placed.copies {
            self.canvas.area(Role::Hidden, frame.area(*copy));
        }
        let role = |other: LayerId| if other == layer { Role::Piece } else { Role::Ghost };
        let pile = Pile { project: self.project, frame, copies: &copies, version: self.version };
        pile.draw(&mut self.canvas, role, |other| other == layer, &[]);
        let mut word_at: Option<At> = None;
        let mut lines: Vec<(At, At)> = Vec::new();
        for (whole, left) in placed.copies.iter().zip(&placed.trimmed) {
            let Some(left) = left else { continue };
            let (whole_area, area) = (frame.area(*whole), frame.area(*left));
            for edge in Edge::ALL.into_iter().filter(|edge| whole.edge(*edge) != left.edge(*edge)) {
                let line = match edge {
                    Edge::Left => {
                        (At::new(area.left, area.top - TRIM_PAST), At::new(area.left, area.bottom + TRIM_PAST))
                    }
                    Edge::Right => {
                        (At::new(area.right, area.top - TRIM_PAST), At::new(area.right, area.bottom + TRIM_PAST))
                    }
                    Edge::Top => (At::new(area.left - TRIM_PAST, area.top), At::new(area.right + TRIM_PAST, area.top)),
                    Edge::Bottom => {
                        (At::new(area.left - TRIM_PAST, area.bottom), At::new(area.right + TRIM_PAST, area.bottom))
                    }
                };
                if !lines.contains(&line) {
                    lines.push(line);
                }
                let cap = text::cap_height(Lettering::TrimWord);
                let spot = match edge {
                    Edge::Left | Edge::Right => At::new(whole_area.right + 2000 * UM, area.middle().y + cap / 2),
                    Edge::Top | Edge::Bottom => At::new(area.right + TRIM_PAST + 1500 * UM, line.0.y + cap / 2),
                };
                word_at = Some(word_at.map_or(spot, |old: At| if spot.x > old.x { spot } else { old }));
            }
        }
        for (from, to) in lines {
            self.canvas.line(Role::Trim, from, to);
        }
        let mut busy = (HEIGHT, 0);
        if let Some(at) = word_at {
            let word = self.canvas.text(Lettering::TrimWord, at, Anchor::Start, words::trim());
            busy = (word.top, word.bottom);
        }
        self.put_rings(frame, face, &copies, layer, &[], frame.area(face).right, busy, !loose);
        let to = self.project.design.layer(layer).trim_flush.as_ref().map_or(Onto::Card, |flush| flush.value);
        Some(words::trim_step(&self.told(layer), &self.name_of(to)))
    }

    fn finished(&mut self) -> Option<String> {
        let (frame, face) = (self.frame()?, self.face()?);
        self.canvas.area(Role::Ghost, frame.area(face));
        let all: Vec<LayerId> = self.project.design.layer_ids().collect();
        let copies = layers::copies(self.project, &all, |_| true);
        let pile = Pile { project: self.project, frame, copies: &copies, version: self.version };
        pile.draw(&mut self.canvas, |_| Role::Ghost, |_| false, &[]);
        let card = size_text(self.project, self.project.layout.card?);
        Some(words::blank_front(&card))
    }

    fn stamp(&mut self, piece: PieceId) -> String {
        let design = &self.project.design;
        let size = design.piece(piece).size;
        let (width, height) = (size.width.nm(), size.height.nm());
        let scale = Scale::to_fit(width, height, CARD_WIDTH, CARD_HEIGHT - 8000 * UM);
        let area = Area::at(LEFT, TOP, scale.length(width), scale.length(height));
        let inset = (area.width().min(area.height()) / 5).min(5000 * UM);
        let dashed = area.grown(-inset);
        self.canvas.area(Role::Piece, area);
        if let Some(paper) = design.paper_of(piece, self.version) {
            let items = hatch_of(design, paper).fill(area, 0, &[dashed]);
            self.canvas.items.extend(items);
        }
        self.canvas.area(Role::Hidden, dashed);
        let ring = design.ring(piece);
        let dot = At::new(area.right - (inset / 2).min(900 * UM), area.middle().y);
        self.canvas.ring_with_leader(At::new(area.right + 6000 * UM + ring_radius(ring), dot.y), ring, dot);
        words::stamp_step(&words::counted(1, &design.piece(piece).name, ring))
    }

    fn score(&mut self, piece: PieceId) -> Option<String> {
        let design = &self.project.design;
        let card = self.project.layout.card?;
        let size = design.piece(piece).size;
        let (width, height) = (size.width.nm(), size.height.nm());
        let past = 4000 * UM;
        let (room_width, room_height) = (WIDTH - 14_000 * UM, HEIGHT - 18_000 * UM);
        let scale = Scale::to_fit(width, height, room_width, room_height);
        let top = past + 2500 * UM;
        let ring = design.ring(piece);
        let edge = fold_edge(self.project)?;
        let half_cap = text::cap_height(Lettering::Word) / 2;
        let (measure, from);
        if edge == Edge::Top {
            let area = Area::at(13_000 * UM, top, scale.length(width), scale.length(height));
            self.canvas.area(Role::Layer, area);
            measure = card.height;
            from = Edge::Top;
            let y = area.top + scale.length(measure.nm());
            self.canvas.line(Role::Fold, At::new(area.left, y), At::new(area.right + past, y));
            let word = At::new(area.right + past + 1000 * UM, y + half_cap);
            self.canvas.text(Lettering::Word, word, Anchor::Start, words::score());
            let text = number(self.project, measure.nm());
            let drawn = Dimension::upright((area.top, y), (area.left, area.left), area.left - 7500 * UM, text).draw();
            self.canvas.items.extend(drawn.items);
            self.canvas.ring(At::new(area.middle().x, (y + area.bottom) / 2), ring);
        } else {
            let area = Area::at(LEFT, top, scale.length(width), scale.length(height));
            self.canvas.area(Role::Layer, area);
            measure = card.width;
            from = Edge::Left;
            let x = area.left + scale.length(measure.nm());
            self.canvas.line(Role::Fold, At::new(x, area.top - past), At::new(x, area.bottom));
            let word = At::new(x + 1500 * UM, area.top - 1800 * UM);
            self.canvas.text(Lettering::Word, word, Anchor::Start, words::score());
            let text = number(self.project, measure.nm());
            let drawn =
                Dimension::level((area.left, x), (area.bottom, area.bottom), area.bottom + 7500 * UM, text).draw();
            self.canvas.items.extend(drawn.items);
            self.canvas.ring(At::new((x + area.right) / 2, area.middle().y), ring);
        }
        let name = words::counted(1, &design.piece(piece).name, ring);
        let told = number(self.project, measure.nm());
        Some(words::score_step(&name, &size_text(self.project, size), &told, from.word()))
    }
}

/// Where rings stand inside the copies of a layer; none in a copy too small or covered there.
fn ring_spots(copies: &[Copy], frame: Frame, layer: LayerId, ring: u32) -> Vec<Option<At>> {
    let radius = ring_radius(ring);
    copies
        .iter()
        .enumerate()
        .filter(|(_, copy)| copy.layer == layer)
        .map(|(n, copy)| {
            let area = frame.area(copy.rect);
            if area.width() < RING_ROOM.max(2 * radius + 1600 * UM) || area.height() < RING_ROOM {
                return None;
            }
            let clear = |spot: At| {
                let room = Area::round(spot, 2 * radius, 2 * radius).grown(500 * UM);
                !copies[n + 1..].iter().any(|upper| frame.area(upper.rect).overlaps(room))
            };
            let middle = area.middle();
            let down = (1..4).map(|part| At::new(middle.x, area.top + area.height() * (part + 4) / 8));
            std::iter::once(middle).chain(down).find(|spot| clear(*spot))
        })
        .collect()
}
