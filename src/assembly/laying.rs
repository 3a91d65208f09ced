//! A layer's place as a reader finds it with a ruler: by edges, neighbours and corners.
//!
//! Takes a design and its layout, gives the sentence of one gluing step. Must never leave a sum to the
//! reader, nor hold a word of any language itself.

use super::tell::{layer_named, named, onto_named};
use crate::design::model::{Along, Arrangement, Bound, Design, Glue, Layer, LayerId, Onto, Part, Pivot};
use crate::geometry::{Angle, Corner, Edge, Mirror, Point, Rect};
use crate::layout::model::{Layout, Placed};
use crate::layout::place::{ByHand, by_hand};
use crate::length::Length;
use crate::shape::Image;
use crate::words::laying::{self, Fixed, Laid, Measured, Move, Spot, Way, Where};
use crate::words::places;
use crate::words::{Line, Words};

/// The most copies of a fan whose corners are told one by one.
const MOST_CORNERS: usize = 9;

/// "Glue the tag (3) onto the mat (2), …": where a layer goes, and how its copies lie.
pub(super) fn glue(design: &Design, layout: &Layout, id: LayerId) -> Line {
    let say = design.words();
    let layer = design.layer(id);
    let placed = layout.placed(id);
    let copies = by_hand(design, layout, id);
    let teller = Teller { design, layer, placed, block: originals(layer, &copies) };
    let fixed = match layer.glue.map(|glue| glue.value) {
        None => Fixed::Unsaid,
        Some(Glue::Tape) => Fixed::Tape,
        Some(Glue::Liquid) => Fixed::Liquid,
        Some(Glue::Foam) => Fixed::Foam,
        Some(Glue::Dot) => Fixed::Dots,
    };
    let count = layer.count();
    let laid = if count == 1 {
        Laid { count, piece: layer_named(design, id), called: None }
    } else {
        let piece = named(design, layer.piece);
        Laid { count, called: (layer.name != piece.name.as_ref()).then_some(layer.name.as_str()), piece }
    };
    let at = teller.at(&copies);
    let mut line = laying::glue(say, &laid, &onto_named(design, layer.face, layer.onto), &at, fixed, &teller.gaps());
    line = line.sentence(teller.copies(&copies));
    if let Some(mirror) = layer.mirrored {
        let (from, to) = match mirror {
            Mirror::LeftToRight => (Edge::Left, Edge::Right),
            Mirror::TopToBottom => (Edge::Bottom, Edge::Top),
        };
        let shape = design.piece(layer.piece).shape.quarter_turned(layer.quarter_turns);
        let turned_over = shape.image(mirror) == Image::OtherHand;
        line = line.sentence(laying::mirrored(say, count, from.word(), to.word(), turned_over));
    }
    match layer.trim_flush {
        Some(target) => line.sentence(reach(design, layout, id, target.value)),
        None => line,
    }
}

/// The rectangle round the copies that are no mirror images.
fn originals(layer: &Layer, copies: &[ByHand]) -> Rect {
    let count = layer.arrangement.count() as usize;
    let rects = copies.iter().take(count).map(|copy| copy.rect);
    rects.reduce(Rect::hull).unwrap_or(Rect::at(0, 0, 0, 0))
}

struct Teller<'a> {
    design: &'a Design,
    layer: &'a Layer,
    placed: &'a Placed,
    /// Round all copies but mirror images.
    block: Rect,
}

impl Teller<'_> {
    fn number(&self, nm: i64) -> String {
        Length::of(nm, self.design.units).number(self.design.units)
    }

    /// A measure brought to the ruler's step, nothing where that is nothing.
    fn ruled(&self, nm: i64) -> Option<Measured> {
        let step = self.design.workshop.ruler.nm().max(1);
        let near = (2 * nm + step).div_euclid(2 * step) * step;
        (near != 0).then(|| Measured { number: self.number(near), about: near != nm })
    }

    /// Where the layer goes as a whole.
    fn at(&self, copies: &[ByHand]) -> Where {
        let say = self.design.words();
        let layer = self.layer;
        let first = copies.first();
        match (layer.arrangement, first) {
            (Arrangement::Fan { about, .. }, Some(first)) if layer.arrangement.count() > 1 => {
                // Every copy has this point in common; a turn of the whole fan moves it.
                let point = first
                    .turns
                    .iter()
                    .skip(1)
                    .fold(first.turns.first().map_or(first.rect.middle(), |turn| turn.about), |point, turn| {
                        point.turned(turn.angle, turn.about)
                    });
                let (across, up) = self.point(point);
                return Where::Fan { about: pivot(say, about, |by| self.number(by.nm())), across, up };
            }
            (Arrangement::Steps { right, up, .. }, Some(first)) if layer.arrangement.count() > 1 => {
                // From the edge that the layer is placed from, else from where the steps begin.
                let edge = |along: Along, by: Length, low: Edge| match along {
                    Along::FromLow(_) => low,
                    Along::FromHigh(_) => low.opposite(),
                    _ if by.nm() < 0 => low.opposite(),
                    _ => low,
                };
                let across = edge(layer.across, right, Edge::Left);
                let up = edge(layer.up, up, Edge::Bottom);
                return Where::First { across: self.from(first.rect, across), up: self.from(first.rect, up) };
            }
            (_, Some(first)) if layer.count() == 1 => {
                if let (Some(tilt), Some(turn)) = (layer.tilt, first.turns.last()) {
                    let (across, up) = self.point(turn.about);
                    return Where::Turned {
                        by: laying::turn(say, tilt.angle.hundredths()),
                        about: pivot(say, tilt.about, |by| self.number(by.nm())),
                        across,
                        up,
                    };
                }
            }
            _ => {}
        }
        let borders = Edge::ALL.map(|edge| self.placed.onto.border(self.block, edge));
        let [left, top, right, bottom] = borders;
        let centred = layer.across == Along::Centre
            && layer.up == Along::Centre
            && layer.shifted == (0, 0)
            && borders.iter().all(|border| *border >= 0);
        match (layer.across, layer.up) {
            _ if centred && left == right && top == bottom && left == top => Where::Bordered(self.number(left)),
            _ if centred && left == right && top == bottom => Where::Middle(self.number(left), self.number(top)),
            (Along::With(one, Part::Middle), Along::With(other, Part::Middle))
                if one == other && layer.shifted == (0, 0) =>
            {
                Where::Over(self.design.layer(one).name.clone())
            }
            _ => Where::Spots {
                across: self.spot(layer.across, layer.shifted.0, [Edge::Left, Edge::Right]),
                up: self.spot(layer.up, layer.shifted.1, [Edge::Bottom, Edge::Top]),
            },
        }
    }

    /// The gaps that are told: one, or across and down.
    fn gaps(&self) -> Vec<String> {
        let arrangement = self.layer.arrangement;
        if let Arrangement::Triangle { rows, across, down, .. } = arrangement {
            return match rows {
                0 | 1 => Vec::new(),
                _ if across == down => vec![self.number(across.nm())],
                _ => vec![self.number(across.nm()), self.number(down.nm())],
            };
        }
        let (columns, rows) = arrangement.columns_rows();
        let (across, down) = arrangement.gaps(self.design.units);
        match (columns > 1, rows > 1) {
            (true, true) if across != down => vec![self.number(across.nm()), self.number(down.nm())],
            (true, _) => vec![self.number(across.nm())],
            (false, true) => vec![self.number(down.nm())],
            (false, false) => Vec::new(),
        }
    }

    /// How the copies lie to each other, and where corners of turned ones come.
    fn copies(&self, copies: &[ByHand]) -> Line {
        let say = self.design.words();
        let layer = self.layer;
        let count = layer.arrangement.count();
        let mut line = match layer.arrangement {
            Arrangement::Steps { right, up, .. } if count > 1 => {
                let ways = [
                    (right, if right.nm() < 0 { Move::Left } else { Move::Right }),
                    (up, if up.nm() < 0 { Move::Down } else { Move::Up }),
                ];
                let moves: Vec<(String, Move)> = ways
                    .into_iter()
                    .filter(|(by, _)| !by.is_zero())
                    .map(|(by, way)| (self.number(by.nm().abs()), way))
                    .collect();
                if moves.is_empty() { Line::new() } else { laying::steps(say, &moves) }
            }
            Arrangement::Triangle { rows, points_up, .. } => {
                let mut rows: Vec<u32> = (1..=rows).collect();
                if !points_up {
                    rows.reverse();
                }
                laying::triangle(say, &rows)
            }
            Arrangement::Pinwheel { clockwise } => laying::pinwheel(say, clockwise, &self.number(self.block.width())),
            Arrangement::Fan { step, .. } if count > 1 => return self.fan(copies, count, step),
            _ => Line::new(),
        };
        let Some(tilt) = layer.tilt else { return line };
        let Some(first) = copies.first() else { return line };
        if layer.count() > 1 {
            let by = laying::turn(say, tilt.angle.hundredths());
            line = line.sentence(laying::turn_each(say, &by, &pivot(say, tilt.about, |by| self.number(by.nm()))));
        }
        let corners: Vec<(String, Spot, Spot)> = self
            .corners(first)
            .into_iter()
            .map(|(name, point)| {
                let (across, up) = self.point(point);
                (name, across, up)
            })
            .collect();
        line.sentence(laying::corners(say, layer.count() > 1, &corners))
    }

    /// The turn of each copy, and where the same corner of each comes.
    fn fan(&self, copies: &[ByHand], count: u32, step: Angle) -> Line {
        let say = self.design.words();
        let copies = &copies[..copies.len().min(count as usize)];
        let Some(first) = copies.first() else { return Line::new() };
        let angle = first.turns.iter().fold(Angle::NONE, |angle, turn| angle.then(turn.angle));
        let by = laying::turn(say, angle.hundredths());
        let line =
            laying::fan(say, (angle != Angle::NONE).then_some(by.as_str()), &laying::degrees(say, step.hundredths()));
        if copies.len() > MOST_CORNERS || !self.design.piece(self.layer.piece).is_plain() {
            return line;
        }
        // A corner away from the point that all have in common.
        let corner = match self.layer.arrangement {
            Arrangement::Fan { about: Pivot::Corner(corner), .. } => corner.opposite(),
            Arrangement::Fan { about: Pivot::Edge(Edge::Top | Edge::Left), .. } => Corner::LowerRight,
            _ => Corner::UpperLeft,
        };
        let points = copies.iter().map(|copy| turned(copy, corner.of(copy.rect)));
        let (across, up) = points
            .map(|point| {
                let (across, up) = (point.x - self.placed.onto.left, point.y - self.placed.onto.bottom);
                (self.near(across), self.near(up))
            })
            .unzip::<String, String, Vec<String>, Vec<String>>();
        let name = places::corner(say, corner);
        line.sentence(laying::corners_of_each(say, &name, (Edge::Left.word(), &across), (Edge::Bottom.word(), &up)))
    }

    fn near(&self, nm: i64) -> String {
        self.ruled(nm).map_or_else(|| self.number(0), |measured| measured.number)
    }

    /// Two points that a turned copy is laid by: corners at the ends of a long edge that are not the one it
    /// is turned about; of another shape, its highest point and the one furthest to the left.
    fn corners(&self, copy: &ByHand) -> Vec<(String, Point)> {
        let say = self.design.words();
        if self.design.piece(self.layer.piece).is_plain() {
            let pair = if copy.rect.width() >= copy.rect.height() {
                [Corner::UpperLeft, Corner::UpperRight]
            } else {
                [Corner::UpperLeft, Corner::LowerLeft]
            };
            let fixed = match self.layer.tilt.map(|tilt| tilt.about) {
                Some(Pivot::Corner(corner)) => Some(corner),
                _ => None,
            };
            let pair = if fixed.is_some_and(|fixed| pair.contains(&fixed)) { pair.map(Corner::opposite) } else { pair };
            return pair.map(|corner| (places::corner(say, corner), turned(copy, corner.of(copy.rect)))).to_vec();
        }
        let points = copy.outline.outer().iter().copied();
        let highest = points.clone().max_by_key(|point| (point.y, -point.x));
        let leftmost = points.min_by_key(|point| (point.x, point.y));
        let named = [(places::highest(say), highest), (places::leftmost(say), leftmost)];
        named.into_iter().filter_map(|(name, point)| Some((name, point?))).collect()
    }

    /// A point from the nearer edges of what the layer lies on, to the ruler's step.
    fn point(&self, point: Point) -> (Spot, Spot) {
        let onto = self.placed.onto;
        let from = |low: Edge, high: Edge, [before, after]: [i64; 2]| {
            let (edge, by) = if before <= after { (low, before) } else { (high, after) };
            match self.ruled(by.abs()) {
                None => Spot::At(edge.word()),
                Some(by_ruler) if by < 0 => Spot::Past(edge.word(), by_ruler),
                Some(by_ruler) => Spot::From(edge.word(), by_ruler),
            }
        };
        (
            from(Edge::Left, Edge::Right, [point.x - onto.left, onto.right - point.x]),
            from(Edge::Bottom, Edge::Top, [point.y - onto.bottom, onto.top - point.y]),
        )
    }

    /// A rectangle from an edge of what it lies on, to the ruler's step.
    fn from(&self, rect: Rect, edge: Edge) -> Spot {
        let border = self.placed.onto.border(rect, edge);
        match self.ruled(border.abs()) {
            None => Spot::At(edge.word()),
            Some(by) if border < 0 => Spot::Past(edge.word(), by),
            Some(by) => Spot::From(edge.word(), by),
        }
    }

    /// A stated distance from an edge, exactly as stated.
    fn stated(&self, edge: Edge) -> Spot {
        let border = self.placed.onto.border(self.block, edge);
        let by = Measured { number: self.number(border.abs()), about: false };
        if border < 0 { Spot::Past(edge.word(), by) } else { Spot::From(edge.word(), by) }
    }

    fn spot(&self, along: Along, shift: i64, [low, high]: [Edge; 2]) -> Spot {
        let say = self.design.words();
        let sideways = low == Edge::Left;
        let name = |layer: LayerId| self.design.layer(layer).name.clone();
        let beside = |other: LayerId, gap: i64, way: Way| match gap {
            gap if gap < 0 => self.from(self.block, low),
            0 => Spot::Beside(way, name(other), None),
            gap => Spot::Beside(way, name(other), Some(self.number(gap))),
        };
        let off = |part: String, of: String| {
            let way = match (sideways, shift < 0) {
                (true, true) => Way::LeftOf,
                (true, false) => Way::RightOf,
                (false, true) => Way::Below,
                (false, false) => Way::Above,
            };
            Spot::Off(part, self.number(shift.abs()), way, of)
        };
        match along {
            Along::Centre if shift == 0 => Spot::Middle,
            Along::Centre => {
                off(places::middle(say), onto_named(self.design, self.layer.face, self.layer.onto).name.into_owned())
            }
            Along::FromLow(_) => self.stated(low),
            Along::FromHigh(_) => self.stated(high),
            Along::After(other, gap) => {
                beside(other, gap.nm() + shift, if sideways { Way::RightOf } else { Way::Above })
            }
            Along::Before(other, gap) => {
                beside(other, gap.nm() - shift, if sideways { Way::LeftOf } else { Way::Below })
            }
            Along::With(other, part) => {
                let part = match part {
                    Part::Low => places::edge_name(say, low),
                    Part::Middle => places::middle(say),
                    Part::High => places::edge_name(say, high),
                };
                if shift == 0 { Spot::Level(part, name(other)) } else { off(part, name(other)) }
            }
            Along::Midway(..) if shift != 0 => self.from(self.block, low),
            Along::Midway(one, other) => {
                let bound = |bound: Bound| match bound {
                    Bound::Low => places::edge(say, low),
                    Bound::High => places::edge(say, high),
                    Bound::Layer(layer) => places::the(say, &name(layer)),
                };
                Spot::Midway(bound(one), bound(other), Box::new(self.from(self.block, low)))
            }
        }
    }
}

/// The point that something is turned about, in words; lengths are printed by `length`.
#[must_use]
pub fn pivot(say: &Words, about: Pivot, length: impl Fn(Length) -> String) -> String {
    match about {
        Pivot::Middle => places::its_middle(say),
        Pivot::Corner(corner) => places::its_corner(say, corner),
        Pivot::Edge(edge) => places::middle_of_its(say, edge),
        Pivot::Point(left, bottom) => places::its_point(say, &length(left), &length(bottom)),
    }
}

/// A point of a copy where it comes when the copy is turned.
fn turned(copy: &ByHand, point: Point) -> Point {
    copy.turns.iter().fold(point, |point, turn| point.turned(turn.angle, turn.about))
}

/// How far a layer that was cut too long reaches past what it is trimmed to; of a turned one only that it
/// does.
fn reach(design: &Design, layout: &Layout, id: LayerId, target: Onto) -> Line {
    let say = design.words();
    let placed = layout.placed(id);
    let named = onto_named(design, design.layer(id).face, target);
    let name = named.name.as_ref();
    let several = design.layer(id).count() > 1;
    if !placed.is_straight() {
        let reaches = placed.laid.iter().any(|laid| laid.shown.area2() < laid.outline.area2());
        return if reaches { laying::reaches_past(say, name, None, several) } else { Line::new() };
    }
    let past = Edge::ALL
        .iter()
        .map(|edge| -layout.rect(design.layer(id).face, target).border(placed.block, *edge))
        .filter(|past| *past > 0);
    let Some(least) = past.min() else { return Line::new() };
    let by = Length::of(least, design.units).number(design.units);
    laying::reaches_past(say, name, Some(&by), several)
}
