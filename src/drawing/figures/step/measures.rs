//! What a glue step measures.

use crate::design::model::{Along, Arrangement, LayerId};
use crate::drawing::area::Area;
use crate::drawing::dimension::{Dimension, Drawn};
use crate::drawing::figures::front::number;
use crate::drawing::figures::layers::Copy;
use crate::drawing::figures::turns;
use crate::drawing::figures::view::Ground;
use crate::drawing::outline::Outline;
use crate::drawing::scale::Frame;
use crate::geometry::{Edge, Polygon, Rect};
use crate::project::Project;
use crate::words::figures as words;

const UM: i64 = 1000;

/// A lens of a step shows a border up to this, with paper on both sides of it.
const MOST_IN_LENS: i64 = 8000 * UM;

/// Whether a layer's outer edges are those of an upright rectangle, so that a corner shows its border.
fn is_rectangle(project: &Project, id: LayerId) -> bool {
    let placed = project.layout.placed(id);
    placed.laid.iter().all(|laid| laid.outline.filled() == Polygon::from(laid.outline.bounds()))
}

/// What a glue step measures: the stated places, and nothing else.
pub(super) struct Measures {
    pub(super) dimensions: Vec<Dimension>,
    /// One border all round, to be shown in a lens.
    pub(super) border: Option<i64>,
    pub(super) told: Vec<String>,
    /// The mark of a turn.
    pub(super) angle: Option<Drawn>,
}

impl Measures {
    pub(super) fn read(project: &Project, ground: &Ground, frame: Frame, id: LayerId, copies: &[Copy]) -> Self {
        let say = project.words();
        let layer = project.design.layer(id);
        let placed = project.layout.placed(id);
        let face = ground.rect;
        let (onto, block) = (ground.rect_of(layer.face, placed.onto), ground.rect_of(layer.face, placed.block));
        let mut found = Self { dimensions: Vec::new(), border: None, told: turns::told(project, id), angle: None };
        let outlines: Vec<Outline> =
            copies.iter().map(|copy| copy.outline(frame)).chain([frame.area(face).into()]).collect();
        found.angle = turns::mark(project, ground, frame, id, &outlines).map(|mark| mark.draw());
        // A ruler laid along the card measures nothing of what lies at an angle to it.
        if !placed.is_straight() {
            return found;
        }
        let borders = Edge::ALL.map(|edge| onto.border(block, edge));
        let is_centred = layer.across == Along::Centre && layer.up == Along::Centre;
        if is_centred
            && layer.arrangement == Arrangement::Single
            && borders[0] > 0
            && borders.iter().all(|b| *b == borders[0])
            && borders[0] <= MOST_IN_LENS
            && is_rectangle(project, id)
        {
            found.border = Some(borders[0]);
            found.told.push(words::borders_told(say, &[number(project, borders[0])]));
            return found;
        }
        let is_middle = is_centred && borders.iter().all(|b| *b >= 0);
        let hull = copies.iter().filter(|c| c.layer == id).map(|c| c.rect).fold(onto, Rect::hull).hull(face);
        let around = frame.area(hull);
        if let Some((low, high, told)) = stretch(project, layer.up, block, onto, copies, (Edge::Bottom, Edge::Top)) {
            let text = number(project, high - low);
            let (onto_right, block_right) = (frame.area(onto).right, frame.area(block).right);
            let line = around.right + 7500 * UM;
            let outline = onto_right.max(block_right);
            found.told.push(words::from_there(say, &text, &layer.name, &told));
            found.dimensions.push(Dimension::upright((frame.y(high), frame.y(low)), (outline, outline), line, text));
        }
        if let Some((low, high, told)) = stretch(project, layer.across, block, onto, copies, (Edge::Left, Edge::Right))
        {
            let text = number(project, high - low);
            let outline = frame.area(onto).bottom;
            found.told.push(words::from_there(say, &text, &layer.name, &told));
            found.dimensions.push(Dimension::level(
                (frame.x(low), frame.x(high)),
                (outline, outline),
                around.bottom + 5000 * UM,
                text,
            ));
        }
        if is_middle && layer.arrangement == Arrangement::Single {
            found.uneven_borders(project, frame, id, (onto, block), around);
        }
        if let Some(flush) = &layer.trim_flush {
            let target = ground.rect_of(layer.face, project.layout.rect(layer.face, flush.value));
            found.overhang(project, frame, id, (block, target), around);
        }
        found.gaps(project, frame, id, ground.start_of(layer.face).unwrap_or((0, 0)));
        found
    }

    /// In the middle with another border at the sides than at top and bottom: both are named.
    fn uneven_borders(
        &mut self,
        project: &Project,
        frame: Frame,
        id: LayerId,
        (onto, block): (Rect, Rect),
        around: Area,
    ) {
        let say = project.words();
        let (side, end) = (onto.border(block, Edge::Right), onto.border(block, Edge::Top));
        let (onto_area, block_area) = (frame.area(onto), frame.area(block));
        if side > 0 {
            let text = number(project, side);
            self.told.push(words::from_there(
                say,
                &text,
                &project.design.layer(id).name,
                &words::the_edge(say, Edge::Right),
            ));
            let ends = (block_area.right, onto_area.right);
            let outlines = (onto_area.bottom, onto_area.bottom);
            self.dimensions.push(Dimension::level(ends, outlines, around.bottom + 4000 * UM, text));
        }
        if end > 0 {
            let text = number(project, end);
            self.told.push(words::from_there(
                say,
                &text,
                &project.design.layer(id).name,
                &words::the_edge(say, Edge::Top),
            ));
            let ends = (onto_area.top, block_area.top);
            let outlines = (onto_area.right, onto_area.right);
            self.dimensions.push(Dimension::upright(ends, outlines, around.right + 7500 * UM, text));
        }
    }

    /// How far a layer that is cut too long reaches past what it is trimmed to: the least of its
    /// ends, as the words say.
    fn overhang(&mut self, project: &Project, frame: Frame, id: LayerId, (block, target): (Rect, Rect), around: Area) {
        let say = project.words();
        let past = |edge: Edge| -target.border(block, edge);
        let Some(edge) = Edge::ALL.into_iter().filter(|edge| past(*edge) > 0).min_by_key(|edge| past(*edge)) else {
            return;
        };
        let text = number(project, past(edge));
        self.told.push(words::past_edge(say, &text, &project.design.layer(id).name, edge));
        let (to, from) = (frame.area(target), frame.area(block));
        // Under the layer where its end is, clear of the dimension above it.
        let (low, high) = (to.edge(edge).min(from.edge(edge)), to.edge(edge).max(from.edge(edge)));
        let dimension = if edge.is_side() {
            let line = from.bottom + 4500 * UM;
            Dimension::level((low, high), (from.bottom, from.bottom), line, text)
        } else {
            let line = around.right + 7500 * UM;
            Dimension::upright((low, high), (from.right, from.right), line, text)
        };
        self.dimensions.push(dimension);
    }

    /// Gaps between copies, under or beside the block.
    fn gaps(&mut self, project: &Project, frame: Frame, id: LayerId, (x, y): (i64, i64)) {
        let say = project.words();
        let layer = project.design.layer(id);
        let placed = project.layout.placed(id);
        let (across, down) = match layer.arrangement {
            Arrangement::Triangle { across, down, .. } => (across, down),
            other => other.gaps(project.units()),
        };
        let copies: Vec<Rect> = placed.copies.iter().map(|copy| copy.moved(x, y)).collect();
        let Some(first) = copies.first() else { return };
        let block = frame.area(placed.block.moved(x, y));
        let onto = frame.area(placed.onto.moved(x, y));
        let line =
            if onto.bottom - block.bottom > 6500 * UM { block.bottom + 4500 * UM } else { block.top - 4500 * UM };
        let outline = if line > block.bottom { block.bottom } else { block.top };
        if across.nm() > 0
            && let Some((first, next)) = copies
                .iter()
                .find_map(|one| Some((one, copies.iter().find(|copy| copy.top == one.top && copy.left >= one.right)?)))
        {
            let text = number(project, next.left - first.right);
            self.told.push(words::gap(say, &text, &layer.name));
            let ends = (frame.x(first.right), frame.x(next.left));
            self.dimensions.push(Dimension::level(ends, (outline, outline), line, text));
        }
        // Equal gaps both ways are named once.
        if down.nm() > 0
            && (across.is_zero() || across != down)
            && let Some(next) = copies.iter().find(|copy| copy.top <= first.bottom)
        {
            let text = number(project, first.bottom - next.top);
            self.told.push(words::gap(say, &text, &layer.name));
            let ends = (frame.y(first.bottom), frame.y(next.top));
            self.dimensions.push(Dimension::upright(ends, (block.right, block.right), block.right + 4500 * UM, text));
        }
    }
}

/// The stretch that a step's words name in one direction.
fn stretch(
    project: &Project,
    along: Along,
    block: Rect,
    onto: Rect,
    copies: &[Copy],
    (low, high): (Edge, Edge),
) -> Option<(i64, i64, String)> {
    let say = project.words();
    let neighbour = |layer: LayerId, edge: Edge| {
        let hull = copies.iter().filter(|copy| copy.layer == layer).map(|copy| copy.rect).reduce(Rect::hull);
        hull.map(|hull| (hull.edge(edge), project.design.layer(layer).name.clone()))
    };
    let found = match along {
        Along::Centre | Along::With(..) | Along::Midway(..) => return None,
        Along::FromLow(_) => (onto.edge(low), block.edge(low), words::the_edge(say, low)),
        Along::FromHigh(_) => (block.edge(high), onto.edge(high), words::the_edge(say, high)),
        Along::After(layer, _) => {
            let (at, name) = neighbour(layer, high)?;
            (at, block.edge(low), name)
        }
        Along::Before(layer, _) => {
            let (at, name) = neighbour(layer, low)?;
            (block.edge(high), at, name)
        }
    };
    // A layer that reaches past an edge is named by how far it does.
    let (one, other, told) = found;
    (one != other).then(|| (one.min(other), one.max(other), told))
}
