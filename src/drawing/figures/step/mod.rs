//! One picture a step: the new layer strong, hatched and ringed, what is there already pale.

mod measures;

use super::front::{number, size_text};
use super::layers::{self, Copy, Pile};
use super::rings::{Named, assign, put_column};
use super::view::{Ground, View};
use crate::assembly::model::Action;
use crate::design::model::{Design, LayerId, Onto, PieceId, Score, VersionId};
use crate::drawing::angle::AngleMark;
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, centred, put_lens, ring_radius, text_area, towards};
use crate::drawing::dimension::{Dimension, Drawn, stack};
use crate::drawing::hatch::hatch_of;
use crate::drawing::outline::Outline;
use crate::drawing::scale::{Frame, Print, Scale};
use crate::drawing::scene::{Anchor, At, Lettering, Role, Scene};
use crate::drawing::text;
use crate::geometry::{Angle, Edge, Point, Polygon, Rect, Region, TOLERANCE};
use crate::layout::place::place;
use crate::project::Project;
use crate::words::figures as words;
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
/// An edge to trim shorter than this is part of a curve.
const SHORT_TRIM: i64 = 2000 * UM;
/// A ring stands in a piece of at least this size each way.
const RING_ROOM: i64 = 6800 * UM;

/// The picture of the step at `index` of the project's steps, not to scale; none for a step that
/// needs no picture (cutting has its diagrams, sorting its words).
#[must_use]
pub fn step(project: &Project, index: usize, print: Print) -> Option<Scene> {
    let step = project.steps.steps.get(index)?;
    if let Action::Finish { piece, .. } = &step.action {
        return super::finish::finish(project, *piece);
    }
    let (layer, loose) = match &step.action {
        Action::Glue { layer, loose } | Action::Trim { layer, loose } => (Some(*layer), *loose),
        _ => (None, false),
    };
    let straight = layer.filter(|_| loose).and_then(|layer| straightened(project, layer));
    let project = straight.as_ref().unwrap_or(project);
    let view = layer.map_or(View::Front, |layer| View::of(project.design.layer(layer).face));
    let mut picture = Picture::new(project, index, Ground::of(project, view)?, print);
    let alt = match &step.action {
        Action::Cut { .. } | Action::Print { .. } | Action::Finish { .. } | Action::Sort => return None,
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
    ground: Ground,
    print: Print,
}

/// The project with the unit of `layer` lying straight, as it does while it is put together; none where
/// it does so anyway.
fn straightened(project: &Project, layer: LayerId) -> Option<Project> {
    let design = &project.design;
    let mut under = vec![root(design, layer)];
    while let Some(Onto::Layer(below)) = under.last().map(|last| design.layer(*last).onto) {
        if under.contains(&below) {
            break;
        }
        under.push(below);
    }
    under.iter().any(|own| design.layer(*own).tilt.is_some()).then(|| {
        let mut straight = project.clone();
        for own in under {
            straight.design.layers[own.0].tilt = None;
        }
        straight.layout = place(&straight.design);
        straight
    })
}

/// The layer that a unit is built on: the one that is not itself put together first.
fn root(design: &Design, layer: LayerId) -> LayerId {
    let mut root = layer;
    for _ in 0..design.layers.len() {
        match design.layer(root).unit {
            Some(unit) => root = unit,
            None => break,
        }
    }
    root
}

impl<'a> Picture<'a> {
    fn new(project: &'a Project, index: usize, ground: Ground, print: Print) -> Self {
        Self { project, index, version: VersionId(0), canvas: Canvas::new(), ground, print }
    }

    /// The face and whatever reaches past it, at one scale and place in every picture.
    fn frame(&self) -> Frame {
        let own = self.project.layout.layers.iter().filter(|placed| self.ground.start_of(placed.face).is_some());
        let all = own.map(|placed| self.ground.rect_of(placed.face, placed.bounds()));
        let hull = all.fold(self.ground.rect, Rect::hull);
        // An end that reaches past the card is measured on the left, where its arrow needs room.
        let is_past = hull.left < 0;
        let (left, room) = if is_past { (LEFT + 4500 * UM, CARD_WIDTH - 3000 * UM) } else { (LEFT, CARD_WIDTH) };
        let scale = Scale::to_fit(hull.width(), hull.height(), room, CARD_HEIGHT);
        Frame::new(scale, hull, At::new(left, TOP))
    }

    fn root(&self, layer: LayerId) -> LayerId {
        root(&self.project.design, layer)
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
        let say = self.project.words();
        let (frame, face) = (self.frame(), self.ground.rect);
        let there = self.there(layer, loose);
        let mut all = there;
        all.push(layer);
        all.extend(self.members(layer));
        all.sort_unstable();
        all.dedup();
        let copies = layers::copies(self.project, &self.ground, &all, |layer| self.is_trimmed(layer));
        let is_new = |other: LayerId| other == layer;
        let on_card = !loose;

        let measures = Measures::read(self.project, &self.ground, frame, layer, &copies);
        let mut drawn: Vec<Drawn> = measures.dimensions.iter().map(Dimension::draw).collect();
        let mut plates: Vec<Area> = drawn.iter().map(|drawn| drawn.area.grown(800 * UM)).collect();
        let is_turned = measures.angle.is_some();
        if let Some(angle) = measures.angle {
            plates.extend(AngleMark::plates(&angle));
            drawn.push(angle);
        }
        let new_areas: Vec<Area> =
            copies.iter().filter(|copy| is_new(copy.layer)).map(|copy| frame.area(copy.rect)).collect();
        let ring = self.project.design.ring(self.project.design.layer(layer).piece);
        let figures: Vec<Area> = drawn.iter().map(|drawn| drawn.figure).collect();
        let spots = ring_spots(&copies, frame, layer, ring, &figures);
        plates.extend(
            spots
                .iter()
                .flatten()
                .map(|spot| Area::round(*spot, 2 * ring_radius(ring), 2 * ring_radius(ring)).grown(600 * UM)),
        );

        if on_card {
            self.ground.draw(&mut self.canvas, frame, Role::Ghost);
        }
        let role = |other: LayerId| if is_new(other) { Role::Piece } else { Role::Ghost };
        let pile = Pile { project: self.project, frame, copies: &copies, version: self.version };
        pile.draw(&mut self.canvas, role, is_new, &plates);
        let mut busy = (HEIGHT, 0);
        if is_turned {
            let heights = drawn.iter().map(|drawn| (drawn.figure.top, drawn.figure.bottom));
            busy =
                heights.fold(busy, |busy, (top, bottom)| (busy.0.min(top + 3000 * UM), busy.1.max(bottom - 3500 * UM)));
        }
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
        Some(words::glue_step(say, &self.told(layer), &onto, &measures.told))
    }

    fn told(&self, layer: LayerId) -> String {
        let say = self.project.words();
        let layer = self.project.design.layer(layer);
        words::counted(say, layer.count(), &layer.name, self.project.design.ring(layer.piece))
    }

    fn name_of(&self, onto: Onto) -> String {
        let say = self.project.words();
        match onto {
            Onto::Card => match self.ground.view {
                View::Front => words::card_front(say),
                View::Inside => words::the_inside(say),
                View::Back => words::the_back(say),
                View::EnvelopeFront => words::the_envelope(say),
                View::EnvelopeFlap => words::the_flap(say),
            },
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
        let say = self.project.words();
        let placed = self.project.layout.placed(layer);
        let onto = self.ground.rect_of(placed.face, placed.onto);
        let corner = frame.area(onto);
        let centre = At::new(right + 3000 * UM + LENS_RADIUS, TOP + LENS_RADIUS + 1000 * UM);
        let on_page = frame.scale.length(border);
        let spot = At::new(corner.right - on_page / 2, corner.top + on_page / 2);
        let inset = (border / 2 + 1000 * UM).min(4500 * UM);
        let seen_frame = Frame {
            scale: Scale::stated(10, self.print),
            at: centre.moved(inset, -inset),
            left: onto.right,
            top: onto.top,
        };
        let below: Vec<Copy> = copies.iter().filter(|copy| copy.layer <= layer).cloned().collect();
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
        let scale = words::bare_scale(say, 10);
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
        let outlines: Vec<Outline> = copies.iter().map(|copy| copy.outline(frame)).collect();
        let named = |ring: u32, wanted: &dyn Fn(LayerId) -> bool| {
            let own = copies.iter().enumerate().filter(|(_, copy)| wanted(copy.layer));
            Named { ring, copies: own.map(|(n, _)| (outlines[n].clone(), outlines[n + 1..].to_vec())).collect() }
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
                if let Some(card) = design.card.as_ref().filter(|_| on_card && self.ground.view.is_card()) {
                    let copies = vec![(frame.area(face).into(), outlines.clone())];
                    column.push(Named { ring: design.ring(card.base), copies });
                }
            }
        }
        let end = frame.area(face).bottom - 3000 * UM;
        let mut blocked = vec![(busy.0 - 4000 * UM, busy.1 + 4500 * UM)];
        // Beside a shape its neighbour may show at the far side only: no leader runs through a ring on the way.
        if copies.iter().any(|copy| copy.layer == layer && !copy.is_plain()) {
            let clear = ring_radius(ring) + 800 * UM;
            blocked.extend(spots.iter().flatten().map(|spot| (spot.y - clear, spot.y + clear)));
        }
        let rings = assign(&column, (TOP + 1000 * UM, end), &blocked);
        put_column(&mut self.canvas, &column, &rings, right + 6000 * UM);
    }

    fn trim(&mut self, layer: LayerId, loose: bool) -> Option<String> {
        let say = self.project.words();
        let (frame, face) = (self.frame(), self.ground.rect);
        let to = self.project.design.layer(layer).trim_flush.as_ref().map_or(Onto::Card, |flush| flush.value);
        let mut all = self.there(layer, loose);
        all.push(layer);
        all.sort_unstable();
        all.dedup();
        let before = layers::copies(self.project, &self.ground, &all, |other| self.is_trimmed(other));
        // A loose unit is trimmed from behind, along the edge of what it is trimmed to.
        let is_face_down = loose && matches!(to, Onto::Layer(_));
        let hull = before.iter().map(|copy| copy.rect).reduce(Rect::hull)?;
        let lying = |copy: &Copy| if is_face_down { copy.turned_over(hull) } else { copy.clone() };
        let own: Vec<Copy> = before.iter().filter(|copy| copy.layer == layer).map(lying).collect();
        let copies: Vec<Copy> = if is_face_down {
            before.iter().rev().filter(|copy| copy.layer != layer).map(lying).collect()
        } else {
            layers::copies(self.project, &self.ground, &all, |other| other == layer || self.is_trimmed(other))
        };
        if !loose {
            self.ground.draw(&mut self.canvas, frame, Role::Ghost);
        }
        let pile = Pile { project: self.project, frame, copies: &copies, version: self.version };
        if is_face_down {
            let role = |other: LayerId| if Onto::Layer(other) == to { Role::Layer } else { Role::Ghost };
            pile.draw(&mut self.canvas, role, |_| false, &[]);
        }
        for copy in &own {
            copy.outline(frame).stroke(&mut self.canvas, Role::Hidden);
        }
        if !is_face_down {
            let role = |other: LayerId| if other == layer { Role::Piece } else { Role::Ghost };
            pile.draw(&mut self.canvas, role, |other| other == layer, &[]);
        }
        let lines: Vec<(At, At)> =
            own.iter().flat_map(|copy| trim_lines(frame, copy)).fold(Vec::new(), |mut all, line| {
                if !all.contains(&line) {
                    all.push(line);
                }
                all
            });
        for (from, to) in &lines {
            self.canvas.line(Role::Trim, *from, *to);
        }
        let mut busy = (HEIGHT, 0);
        if let Some(at) = word_spot(frame, &own, &lines) {
            let word = self.canvas.text(Lettering::TrimWord, at, Anchor::Start, &words::trim(say));
            busy = (word.top, word.bottom);
        }
        let named = if is_face_down {
            self.put_back_word(frame, &copies, &own, to);
            let cut_off = own.iter().filter_map(|copy| {
                let off = copy.region.difference(copy.kept.as_ref()?);
                Some(Copy { rect: off.bounds()?, region: off, ..copy.clone() })
            });
            // The ends stick out from under the unit: nothing covers them.
            copies.iter().cloned().chain(cut_off).collect()
        } else {
            copies
        };
        let right = named.iter().map(|copy| frame.area(copy.rect).right).chain([frame.area(face).right]).max()?;
        let right = if is_face_down { right } else { frame.area(face).right };
        self.put_rings(frame, face, &named, layer, &[], right, busy, !loose);
        Some(words::trim_step(say, &self.told(layer), &self.name_of(to), is_face_down))
    }

    /// The word in a unit that lies face down, beside what is trimmed.
    fn put_back_word(&mut self, frame: Frame, copies: &[Copy], own: &[Copy], to: Onto) {
        let say = self.project.words();
        let Some(copy) = copies.iter().find(|copy| Onto::Layer(copy.layer) == to) else { return };
        let outline = copy.outline(frame);
        let strips: Vec<Outline> = own.iter().map(|copy| copy.outline(frame)).collect();
        let word = words::face_down(say);
        let area = outline.area();
        let spots = (2..=8).flat_map(|down| [4, 3, 5].map(|over| (over, down)));
        let mut spots: Vec<At> = spots
            .map(|(over, down)| At::new(area.left + area.width() * over / 8, area.top + area.height() * down / 10))
            .collect();
        let middle = area.middle();
        spots.sort_by_key(|at| (at.x - middle.x).abs() + (at.y - middle.y).abs());
        let spot = spots.into_iter().find(|spot| {
            let at = centred(Lettering::Small, *spot);
            let room = text_area(Lettering::Small, at, Anchor::Middle, false, &word).grown(800 * UM);
            outline.contains(room) && !strips.iter().any(|strip| strip.overlaps(room)) && self.canvas.is_free(room, 0)
        });
        // Else under it all.
        let foot = strips.iter().map(|strip| strip.area().bottom).fold(area.bottom, i64::max);
        let spot = spot.unwrap_or_else(|| At::new(middle.x, foot + 4000 * UM));
        self.canvas.centred_text(Lettering::Small, spot, &word);
    }

    fn finished(&mut self) -> Option<String> {
        let say = self.project.words();
        let frame = self.frame();
        self.ground.draw(&mut self.canvas, frame, Role::Ghost);
        let all: Vec<LayerId> = self.project.design.layer_ids().collect();
        let copies = layers::copies(self.project, &self.ground, &all, |_| true);
        let pile = Pile { project: self.project, frame, copies: &copies, version: self.version };
        pile.draw(&mut self.canvas, |_| Role::Ghost, |_| false, &[]);
        let card = size_text(self.project, self.project.layout.card?);
        Some(words::blank_front(say, &card))
    }

    fn stamp(&mut self, piece: PieceId) -> String {
        let say = self.project.words();
        let design = &self.project.design;
        let size = design.piece(piece).size;
        let (width, height) = (size.width.nm(), size.height.nm());
        let scale = Scale::to_fit(width, height, CARD_WIDTH, CARD_HEIGHT - 8000 * UM);
        let area = Area::at(LEFT, TOP, scale.length(width), scale.length(height));
        let frame = Frame::new(scale, Rect::of(size), At::new(LEFT, TOP));
        let made = design.piece(piece).shape.make().ok();
        let outline = made.and_then(|made| Outline::of(frame, &Region::from(&made.outline)));
        let outline = outline.unwrap_or_else(|| area.into());
        let least = (area.width().min(area.height()) / 5).min(5000 * UM);
        let most = area.width().min(area.height()) / 2 - 500 * UM;
        let insets = std::iter::successors(Some(least), |inset| Some(inset + 500 * UM));
        let mut insets = insets.take_while(|inset| *inset < most);
        let inset = insets.find(|inset| outline.contains(area.grown(-inset))).unwrap_or(least);
        let dashed = area.grown(-inset);
        outline.draw(&mut self.canvas, Role::Piece);
        if let Some(paper) = design.paper_of(piece, self.version) {
            let items = hatch_of(design, paper).fill_outline(&outline, Angle::NONE, &[dashed.into()]);
            self.canvas.items.extend(items);
        }
        self.canvas.area(Role::Hidden, dashed);
        let ring = design.ring(piece);
        let right = outline.stretches(area.middle().y).last().map_or(area.right, |(_, right)| *right);
        let dot = At::new(right - (inset / 2).min(900 * UM), area.middle().y);
        self.canvas.ring_with_leader(At::new(area.right + 6000 * UM + ring_radius(ring), dot.y), ring, dot);
        words::stamp_step(say, &words::counted(say, 1, &design.piece(piece).name, ring))
    }

    fn score(&mut self, piece: PieceId) -> Option<String> {
        let say = self.project.words();
        let design = &self.project.design;
        let card = self.project.layout.card?;
        let size = design.piece(piece).size;
        let (width, height) = (size.width.nm(), size.height.nm());
        let past = 4000 * UM;
        let (room_width, room_height) = (WIDTH - 14_000 * UM, HEIGHT - 18_000 * UM);
        let scale = Scale::to_fit(width, height, room_width, room_height);
        let top = past + 2500 * UM;
        let ring = design.ring(piece);
        let scores = design.card.as_ref()?.fold.scores(card);
        if scores.len() > 1 {
            return Some(self.several_scores(piece, &scores));
        }
        let edge = self.ground.fold_edge(self.project)?;
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
            self.canvas.text(Lettering::Word, word, Anchor::Start, &words::score(say));
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
            self.canvas.text(Lettering::Word, word, Anchor::Start, &words::score(say));
            let text = number(self.project, measure.nm());
            let drawn =
                Dimension::level((area.left, x), (area.bottom, area.bottom), area.bottom + 7500 * UM, text).draw();
            self.canvas.items.extend(drawn.items);
            self.canvas.ring(At::new((x + area.right) / 2, area.middle().y), ring);
        }
        let name = words::counted(say, 1, &design.piece(piece).name, ring);
        let told = number(self.project, measure.nm());
        Some(words::score_step(say, &name, &size_text(self.project, size), &told, from))
    }

    /// A base with more than one score, flat with its outside up: every line with its kind and its place
    /// from the left edge.
    fn several_scores(&mut self, piece: PieceId, scores: &[Score]) -> String {
        let say = self.project.words();
        let design = &self.project.design;
        let size = design.piece(piece).size;
        let (width, height) = (size.width.nm(), size.height.nm());
        let scale = Scale::to_fit(width, height, WIDTH - 4000 * UM, 26_000 * UM);
        let words_high = text::width(Lettering::Word, &words::fold_kind(say, true)) + 2400 * UM;
        // Words stand along the lines, above a base too low for them.
        let is_low = scale.length(height) < words_high + 8000 * UM;
        let past = if is_low { words_high } else { 2500 * UM };
        let area = Area::at(LEFT, past + 500 * UM, scale.length(width), scale.length(height));
        self.canvas.area(Role::Layer, area);
        let mut levels = Vec::new();
        let mut told = Vec::new();
        for score in scores {
            let x = area.left + scale.length(score.at);
            let role = if score.mountain { Role::Fold } else { Role::Valley };
            self.canvas.line(role, At::new(x, area.top - past), At::new(x, area.bottom));
            let word = words::fold_kind(say, score.mountain);
            let long = text::width(Lettering::Word, &word);
            let foot = if is_low { area.top - 1000 * UM } else { area.top + 1200 * UM + long };
            self.canvas.turned_text(Lettering::Word, At::new(x - 900 * UM, foot), Anchor::Start, &word);
            let text = number(self.project, score.at);
            told.push(words::score_told(say, score.mountain, &text));
            levels.push(Dimension::level((area.left, x), (area.bottom, area.bottom), 0, text));
        }
        for drawn in stack(levels, area.bottom, 1) {
            self.canvas.items.extend(drawn.items);
        }
        let ring = design.ring(piece);
        let last = scores.last().map_or(area.left, |score| area.left + scale.length(score.at));
        let spot = At::new((last + area.right) / 2, area.bottom - ring_radius(ring) - 1500 * UM);
        self.canvas.ring(spot, ring);
        words::scores_step(
            say,
            &words::counted(say, 1, &design.piece(piece).name, ring),
            &size_text(self.project, size),
            &told,
        )
    }
}

/// Where a copy is trimmed: the edges of what stays that were no edges of it before, each drawn on past
/// its ends where it is long enough to be a ruler's line.
fn trim_lines(frame: Frame, copy: &Copy) -> Vec<(At, At)> {
    let Some(kept) = &copy.kept else { return Vec::new() };
    let edges = |region: &Region| -> Vec<(Point, Point)> {
        let rings = region.parts().iter().flat_map(Polygon::rings);
        rings.flat_map(|ring| ring.iter().copied().zip(ring.iter().copied().cycle().skip(1))).collect()
    };
    let before = edges(&copy.region);
    let is_old = |(from, to): &(Point, Point)| {
        let middle = Point::new((from.x + to.x) / 2, (from.y + to.y) / 2);
        before.iter().any(|edge| lies_near(*edge, middle))
    };
    let cut = edges(kept).into_iter().filter(|edge| !is_old(edge));
    cut.map(|(from, to)| {
        let (from, to) = (frame.point(from), frame.point(to));
        // The same line whichever way round its ring runs.
        let (from, to) = if (from.x, from.y) <= (to.x, to.y) { (from, to) } else { (to, from) };
        let long = (to.x - from.x).abs().max((to.y - from.y).abs());
        if long < SHORT_TRIM { (from, to) } else { (towards(from, to, -TRIM_PAST), towards(to, from, -TRIM_PAST)) }
    })
    .collect()
}

/// Whether a point lies on a stretch, within the tolerance of turned shapes.
fn lies_near((from, to): (Point, Point), point: Point) -> bool {
    let (along, aside) = (to.from(from), point.from(from));
    let wide = |one: i64, other: i64| i128::from(one) * i128::from(other);
    let length = from.distance(to);
    let (cross, dot) =
        (wide(along.x, aside.y) - wide(along.y, aside.x), wide(along.x, aside.x) + wide(along.y, aside.y));
    let reach = wide(TOLERANCE, length);
    cross.abs() <= reach && dot >= -reach && dot <= wide(length, length) + reach
}

/// Where the word at the trim lines stands: beside the layer for upright ones, at the end of others.
fn word_spot(frame: Frame, own: &[Copy], lines: &[(At, At)]) -> Option<At> {
    let cap = text::cap_height(Lettering::TrimWord);
    let right = own.iter().map(|copy| frame.area(copy.rect).right).max()?;
    let spots = lines.iter().map(|(from, to)| {
        if (from.x - to.x).abs() <= 1000 * UM {
            At::new(right + 2000 * UM, (from.y + to.y) / 2 + cap / 2)
        } else {
            let end = if from.x > to.x { *from } else { *to };
            At::new(end.x + 1500 * UM, end.y + cap / 2)
        }
    });
    spots.reduce(|old, spot| if spot.x > old.x { spot } else { old })
}

/// Where rings stand inside the copies of a layer; none in a copy too small or covered there.
fn ring_spots(copies: &[Copy], frame: Frame, layer: LayerId, ring: u32, figures: &[Area]) -> Vec<Option<At>> {
    let radius = ring_radius(ring);
    let outlines: Vec<Outline> = copies.iter().map(|copy| copy.outline(frame)).collect();
    copies
        .iter()
        .enumerate()
        .filter(|(_, copy)| copy.layer == layer)
        .map(|(n, copy)| {
            let own = &outlines[n];
            let area = own.area();
            if area.width() < RING_ROOM.max(2 * radius + 1600 * UM) || area.height() < RING_ROOM {
                return None;
            }
            let clear = |spot: At| {
                let room = Area::round(spot, 2 * radius, 2 * radius).grown(500 * UM);
                let is_within = copy.is_plain() || own.contains(room);
                let on_figure = !copy.is_plain() && figures.iter().any(|figure| figure.overlaps(room));
                is_within && !on_figure && !outlines[n + 1..].iter().any(|upper| upper.overlaps(room))
            };
            let middle = area.middle();
            let down = (1..4).map(|part| At::new(middle.x, area.top + area.height() * (part + 4) / 8));
            // In any other shape the middle may be no good at all.
            let anywhere = (1..8)
                .flat_map(|down| (1..8).map(move |over| (down, over)))
                .map(|(down, over)| At::new(area.left + area.width() * over / 8, area.top + area.height() * down / 8));
            let mut others: Vec<At> = if copy.is_plain() { Vec::new() } else { anywhere.collect() };
            others.sort_by_key(|at| (at.x - middle.x).abs() + (at.y - middle.y).abs());
            std::iter::once(middle).chain(down).chain(others).find(|spot| clear(*spot))
        })
        .collect()
}
