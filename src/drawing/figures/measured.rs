//! What a finished face measures: its size, the places of its layers, the gaps of rows and the steps of stairs;
//! each with every place on the page that would do for it.

use super::front::{number, shown};
use super::layers::Copy;
use super::view::Ground;
use crate::design::model::{Along, Arrangement, LayerId, Onto};
use crate::drawing::area::Area;
use crate::drawing::dimension::{Dimension, Runs};
use crate::drawing::outline::Outline;
use crate::drawing::placing::Wanted;
use crate::drawing::scale::Frame;
use crate::geometry::{Edge, Rect};
use crate::project::Project;
use crate::words::figures as words;

const UM: i64 = 1000;
/// A gap within the face is measured so far off its row.
const OFF_ROW: i64 = 5000 * UM;
/// What a place above or right of the face costs more than one under or left of it.
const OTHER_SIDE: i64 = 60;

/// What a face measures, and the same in words.
pub(super) struct Measured<'a> {
    project: &'a Project,
    frame: Frame,
    ground: &'a Ground,
    copies: &'a [Copy],
    outlines: Vec<Outline>,
    /// The face on the page.
    face: Area,
    /// Every dimension with its places.
    pub(super) wanted: Vec<Wanted>,
    pub(super) told: Vec<String>,
    /// Direction and ends of each, so that none is given twice.
    known: Vec<(Runs, (i64, i64))>,
}

impl<'a> Measured<'a> {
    pub(super) fn new(project: &'a Project, frame: Frame, ground: &'a Ground, copies: &'a [Copy]) -> Self {
        let face = frame.area(ground.rect);
        let outlines = copies.iter().map(|copy| copy.outline(frame)).chain(ground.parts_on(frame)).collect();
        let (wanted, told, known) = (Vec::new(), Vec::new(), Vec::new());
        Self { project, frame, ground, copies, outlines, face, wanted, told, known }
    }

    /// Width and height of all of it.
    pub(super) fn overall(&mut self) {
        let face = self.ground.rect;
        let (width, height) = (number(self.project, face.width()), number(self.project, face.height()));
        self.want(Runs::Upright, (self.face.top, self.face.bottom), &height, Wanted::default(), None);
        self.want(Runs::Level, (self.face.left, self.face.right), &width, Wanted::default(), None);
    }

    /// Adds one: the places given, then beside the face, then within it on what `spans` have in common. Returns
    /// whether it is a new one.
    fn want(
        &mut self,
        runs: Runs,
        ends: (i64, i64),
        text: &str,
        first: Wanted,
        spans: Option<[(i64, i64); 2]>,
    ) -> bool {
        if self.known.contains(&(runs, ends)) {
            return false;
        }
        self.known.push((runs, ends));
        let face = self.face;
        let ((near, away), other) = match runs {
            Runs::Upright => ((face.left, -1), None),
            Runs::Level => ((face.bottom, 1), Some(face.top)),
        };
        let mut wanted = first.beside(runs, ends, text, near, away);
        if let Some(spans) = spans {
            let within = Wanted::default().within(runs, ends, text, spans);
            // No edge runs through a figure.
            let is_clear = |own: &Dimension| {
                let figure = own.draw().figure.grown(600 * UM);
                face.contains(figure) && !self.outlines.iter().any(|outline| outline.divides(figure))
            };
            wanted.places.extend(within.places.into_iter().filter(|(own, _)| is_clear(own)));
        }
        if let Some(other) = other {
            let above = Wanted::default().beside(runs, ends, text, other, -away);
            wanted.places.extend(above.places.into_iter().map(|(own, cost)| (own, cost + OTHER_SIDE)));
        }
        self.wanted.push(wanted);
        true
    }

    /// The places of layers that are not centred.
    pub(super) fn places(&mut self) {
        for id in self.project.design.layer_ids() {
            let layer = self.project.design.layer(id);
            let is_straight = self.project.layout.placed(id).is_straight();
            let Some(rect) = shown(self.copies, id).filter(|_| is_straight) else { continue };
            // What lies on a panel or flap is measured from its edges.
            let face = self.ground.rect_of(layer.face, self.project.layout.face(layer.face));
            let frame = self.frame;
            if let Some(own) = self.place(layer.up, rect, face, Edge::Bottom, Edge::Top) {
                let ends = (frame.y(own.high), frame.y(own.low));
                let span = |rect: Rect| (frame.x(rect.left), frame.x(rect.right));
                self.tell(id, Runs::Upright, ends, &own, [span(own.from), span(rect)]);
            }
            if let Some(own) = self.place(layer.across, rect, face, Edge::Left, Edge::Right) {
                let ends = (frame.x(own.low), frame.x(own.high));
                let span = |rect: Rect| (frame.y(rect.top), frame.y(rect.bottom));
                self.tell(id, Runs::Level, ends, &own, [span(own.from), span(rect)]);
            }
        }
    }

    fn tell(&mut self, id: LayerId, runs: Runs, ends: (i64, i64), own: &Place, spans: [(i64, i64); 2]) {
        let say = self.project.words();
        let text = number(self.project, own.high - own.low);
        if self.want(runs, ends, &text, Wanted::default(), Some(spans)) {
            self.told.push(words::from_there(say, &text, &self.project.design.layer(id).name, &own.told));
        }
    }

    /// The stretch that gives a layer's place in one direction: from the card's edge, or the gap to its
    /// neighbour; nothing where it is centred, level with an edge or laid edge to edge.
    fn place(&self, along: Along, rect: Rect, face: Rect, low: Edge, high: Edge) -> Option<Place> {
        let say = self.project.words();
        let neighbour = |layer: LayerId, edge: Edge| {
            let name = self.project.design.layer(layer).name.clone();
            shown(self.copies, layer).map(|other| (other.edge(edge), other, name))
        };
        let (from, to, other, told) = match along {
            Along::Centre | Along::With(..) | Along::Midway(..) => return None,
            Along::FromLow(_) => (face.edge(low), rect.edge(low), face, words::the_edge(say, low)),
            Along::FromHigh(_) => (rect.edge(high), face.edge(high), face, words::the_edge(say, high)),
            Along::After(layer, _) => {
                let (at, other, name) = neighbour(layer, high)?;
                (at, rect.edge(low), other, name)
            }
            Along::Before(layer, _) => {
                let (at, other, name) = neighbour(layer, low)?;
                (rect.edge(high), at, other, name)
            }
        };
        (from < to).then_some(Place { low: from, high: to, from: other, told })
    }

    /// The gaps of rows, columns and grids, and the steps of stairs, each once.
    pub(super) fn gaps(&mut self) {
        for id in self.project.design.layer_ids() {
            let layer = self.project.design.layer(id);
            if !self.project.layout.placed(id).is_straight() {
                continue;
            }
            match layer.arrangement {
                Arrangement::Single
                | Arrangement::Row { .. }
                | Arrangement::Column { .. }
                | Arrangement::Grid { .. }
                | Arrangement::Triangle { .. } => self.gaps_of(id),
                Arrangement::Steps { .. } => self.steps_of(id),
                _ => {}
            }
        }
    }

    fn rects(&self, id: LayerId) -> Vec<Rect> {
        self.copies.iter().filter(|copy| copy.layer == id).map(|copy| copy.rect).collect()
    }

    fn gaps_of(&mut self, id: LayerId) {
        let say = self.project.words();
        let (frame, rects) = (self.frame, self.rects(id));
        let (Some(first), Some(block)) = (rects.first().copied(), rects.iter().copied().reduce(Rect::hull)) else {
            return;
        };
        let block = frame.area(block);
        let name = self.project.design.layer(id).name.clone();
        // The first two side by side: the first row of a triangle may be a single one.
        let beside = rects.iter().find_map(|one| {
            let next = rects.iter().find(|next| next.top == one.top && next.left > one.right)?;
            Some((*one, *next))
        });
        if let Some((one, next)) = beside {
            let text = number(self.project, next.left - one.right);
            let ends = (frame.x(one.right), frame.x(next.left));
            let level = |edge, line| Dimension::level(ends, (edge, edge), line, text.clone());
            let near = [level(block.bottom, block.bottom + OFF_ROW), level(block.top, block.top - OFF_ROW)];
            let near = self.near_row(id, near);
            let span = (frame.y(one.top), frame.y(one.bottom));
            self.want(Runs::Level, ends, &text, near, Some([span, span]));
            self.told.push(words::gap(say, &text, &name));
        }
        if let Some(next) = rects.iter().find(|rect| rect.top < first.bottom) {
            let text = number(self.project, first.bottom - next.top);
            let ends = (frame.y(first.bottom), frame.y(next.top));
            let upright = |edge, line| Dimension::upright(ends, (edge, edge), line, text.clone());
            let near = [upright(block.right, block.right + OFF_ROW), upright(block.left, block.left - OFF_ROW)];
            let near = self.near_row(id, near);
            let spans = [(frame.x(first.left), frame.x(first.right)), (frame.x(next.left), frame.x(next.right))];
            self.want(Runs::Upright, ends, &text, near, Some(spans));
            self.told.push(words::gap(say, &text, &name));
        }
    }

    /// How far each copy of a stair lies from the one before.
    fn steps_of(&mut self, id: LayerId) {
        let (frame, rects) = (self.frame, self.rects(id));
        let [one, next, ..] = rects.as_slice() else { return };
        let (one, next) = (*one, *next);
        let span = |low: i64, high: i64| (low.min(high), low.max(high));
        if one.left != next.left {
            let text = number(self.project, (one.left - next.left).abs());
            let ends = span(frame.x(one.left), frame.x(next.left));
            let own = |rect: Rect| (frame.y(rect.top), frame.y(rect.bottom));
            self.want(Runs::Level, ends, &text, Wanted::default(), Some([own(one), own(next)]));
        }
        if one.top != next.top {
            let text = number(self.project, (one.top - next.top).abs());
            let ends = span(frame.y(one.top), frame.y(next.top));
            let own = |rect: Rect| (frame.x(rect.left), frame.x(rect.right));
            self.want(Runs::Upright, ends, &text, Wanted::default(), Some([own(one), own(next)]));
        }
    }

    /// Those places close to a row that have room on what it lies on.
    fn near_row(&self, id: LayerId, near: [Dimension; 2]) -> Wanted {
        let onto = match self.project.design.layer(id).onto {
            Onto::Card => self.face,
            Onto::Layer(onto) => shown(self.copies, onto).map_or(self.face, |rect| self.frame.area(rect)),
        };
        // Whatever does not lie under the whole row is in the way.
        let others = self.copies.iter().map(|copy| self.frame.area(copy.rect)).filter(|area| !area.contains(onto));
        let others: Vec<Area> = others.collect();
        let is_clear = |own: &Dimension| {
            let area = own.draw().area;
            onto.grown(-700 * UM).contains(area) && !others.iter().any(|other| other.overlaps(area))
        };
        let mut wanted = Wanted::default();
        for (own, cost) in near.into_iter().zip(0..) {
            if is_clear(&own) {
                wanted.places.push((own, cost));
            }
        }
        wanted
    }
}

/// The place of a layer in one direction.
struct Place {
    low: i64,
    high: i64,
    /// What it is measured from.
    from: Rect,
    told: String,
}
