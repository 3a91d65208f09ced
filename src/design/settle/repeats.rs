//! Several copies of a piece as one layer: rows and columns, grids, steps, triangles, fans, pinwheels.

use super::desk::{Desk, Field, Fields};
use super::pieces::MOST_COPIES;
use crate::design::model::{Arrangement, Envelope, Face, Fold, Layer, Onto, Piece, PieceId, Pivot};
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::length::{Length, Size};
use crate::source::Span;

/// The keys that lay out copies.
pub(super) const ARRANGEMENTS: [&str; 7] = ["row", "column", "grid", "steps", "triangle", "fan", "pinwheel"];

/// Copies as written.
pub(super) struct Copies {
    arrangement: Arrangement,
    /// Whether their gaps are to be even, across and up; then the gap above is nothing yet.
    pub(super) even: [bool; 2],
    span: Span,
}

/// What even gaps are worked out from.
#[derive(Clone, Copy)]
pub(super) struct Room<'r> {
    /// All pieces, the base first, where they could be settled.
    pub(super) pieces: Option<&'r [Piece]>,
    /// The size of the folded front, and where it folds.
    pub(super) card: Option<(Size, Fold)>,
    /// The envelope, where it has one that could be read.
    pub(super) envelope: Option<&'r Envelope>,
}

/// What a layer lies on, while layers are settled.
#[derive(Clone, Copy)]
pub(super) struct Ground<'r> {
    pub(super) room: Room<'r>,
    pub(super) before: &'r [Option<Layer>],
    pub(super) face: Face,
    pub(super) onto: Onto,
}

impl Ground<'_> {
    /// Whether it is several copies, which have no one size.
    fn is_several(&self) -> bool {
        let Onto::Layer(layer) = self.onto else { return false };
        self.before.get(layer.0).is_some_and(|below| below.as_ref().is_some_and(|below| below.count() > 1))
    }

    /// Its size; none where it is several copies, or not known since it could not be read.
    fn size(&self) -> Option<Size> {
        match self.onto {
            Onto::Layer(layer) => {
                let layer = self.before.get(layer.0)?.as_ref()?;
                let piece = self.room.pieces?.get(layer.piece.0)?;
                (layer.count() == 1).then(|| piece.size.turned(layer.quarter_turns))
            }
            Onto::Card => {
                let (card, envelope) = (self.room.card, self.room.envelope);
                match self.face {
                    Face::Front | Face::Back => card.map(|(size, _)| size),
                    Face::Inside(None) => card.map(|(size, fold)| fold.flat(size)),
                    Face::Inside(Some(panel)) => {
                        let (size, fold) = card?;
                        let panels = fold.panels(size);
                        panels.get(panel as usize).map(|panel| panel.size(size.width.unit()))
                    }
                    Face::EnvelopeFront => envelope.map(|envelope| envelope.size),
                    Face::EnvelopeFlap => envelope.and_then(|own| Some(Size::new(own.size.width, own.flap?))),
                }
            }
        }
    }
}

impl<'a> Desk<'a> {
    /// Copies: one way of laying them out, or a single one.
    pub(super) fn arrangement(&mut self, fields: &Fields<'a>) -> Option<Copies> {
        let ways: Vec<Field<'a>> = ARRANGEMENTS.iter().filter_map(|key| fields.get(key)).collect();
        match ways.as_slice() {
            [] => Some(Copies { arrangement: Arrangement::Single, even: [false; 2], span: Span::default() }),
            [way] => {
                let span = way.key.to(way.node.span());
                let copies = |(arrangement, even): (Arrangement, [bool; 2])| Copies { arrangement, even, span };
                let plain = |arrangement: Arrangement| copies((arrangement, [false; 2]));
                match way.name {
                    "grid" => self.grid(*way).map(copies),
                    "steps" => self.steps(*way).map(plain),
                    "triangle" => self.triangle(*way).map(plain),
                    "fan" => self.fan(*way).map(plain),
                    "pinwheel" => {
                        let ways = [("clockwise", true), ("anticlockwise", false)];
                        self.word(*way, &ways).map(|way| plain(Arrangement::Pinwheel { clockwise: way.value }))
                    }
                    _ => self.line(*way).map(copies),
                }
            }
            [first, second, ..] => {
                self.note(
                    Finding::error(
                        "placed-twice",
                        second.key,
                        "the copies are laid out twice",
                        format!("`{}` again", second.name),
                    )
                    .also(first.key, format!("`{}` already", first.name))
                    .help(format!("keep 1 of `{}` and `{}`, or say `grid`", first.name, second.name))
                    .plainly("Two lines say how the copies lie, and only one can count."),
                );
                None
            }
        }
    }

    /// A gap between copies; none where it is `even`.
    fn gap_or_even(&mut self, field: Field<'a>) -> Option<Option<Length>> {
        let text = self.text(field)?;
        self.heard.offer("gap", ["even"]);
        if text.value.eq_ignore_ascii_case("even") {
            self.heard.take("gap", "even");
            return Some(None);
        }
        self.length_in(text, Role::Gap).map(Some)
    }

    fn line(&mut self, way: Field<'a>) -> Option<(Arrangement, [bool; 2])> {
        let fields = self.fields(way.node, format!("a {}", way.name), way.key, &["count", "gap"])?;
        let count = self.required(&fields, "count", "3").and_then(|field| self.count(field, MOST_COPIES));
        let gap = self.required(&fields, "gap", "1/4 in").and_then(|field| self.gap_or_even(field));
        let (count, gap) = (count?.value, gap?);
        let even = gap.is_none();
        let gap = gap.unwrap_or(Length::zero(self.units));
        Some(if way.name == "row" {
            (Arrangement::Row { count, gap }, [even, false])
        } else {
            (Arrangement::Column { count, gap }, [false, even])
        })
    }

    /// The gaps of a grid or triangle, across and down: one for both, or each.
    fn gaps(&mut self, fields: &Fields<'a>, what: &str) -> Option<(Option<Length>, Option<Length>)> {
        match (fields.get("gap"), fields.get("gap across"), fields.get("gap down")) {
            (Some(gap), None, None) => self.gap_or_even(gap).map(|gap| (gap, gap)),
            (Some(gap), Some(other), _) | (Some(gap), None, Some(other)) => {
                self.note(
                    Finding::error(
                        "placed-twice",
                        other.key,
                        format!("a gap of the {what} is said twice"),
                        format!("`{}` again", other.name),
                    )
                    .also(gap.key, "`gap` already")
                    .help("keep `gap` alone, or the 2 of `gap across` and `gap down`")
                    .plainly("One gap counts for both directions, so the other is too much."),
                );
                None
            }
            (None, None, None) => {
                let _ = self.required(fields, "gap", "1/4 in");
                None
            }
            (None, _, _) => {
                let across = self.required(fields, "gap across", "1/4 in").and_then(|field| self.gap_or_even(field));
                let down = self.required(fields, "gap down", "1/4 in").and_then(|field| self.gap_or_even(field));
                across.zip(down)
            }
        }
    }

    fn grid(&mut self, way: Field<'a>) -> Option<(Arrangement, [bool; 2])> {
        let known = ["columns", "rows", "gap", "gap across", "gap down"];
        let fields = self.fields(way.node, "a grid", way.key, &known)?;
        let columns = self.required(&fields, "columns", "3").and_then(|field| self.count(field, MOST_COPIES));
        let rows = self.required(&fields, "rows", "2").and_then(|field| self.count(field, MOST_COPIES));
        let gaps = self.gaps(&fields, "grid");
        let (columns, rows, (across, down)) = (columns?, rows?, gaps?);
        if columns.value.saturating_mul(rows.value) > MOST_COPIES {
            self.note(
                Finding::error(
                    "bad-count",
                    rows.span,
                    "the grid holds more than a card can",
                    format!("{} x {}", columns.value, rows.value),
                )
                .also(columns.span, "columns")
                .help(format!("keep it to {MOST_COPIES} copies"))
                .plainly("The grid has far too many copies."),
            );
            return None;
        }
        let nothing = Length::zero(self.units);
        let even = [across.is_none(), down.is_none()];
        let (across, down) = (across.unwrap_or(nothing), down.unwrap_or(nothing));
        Some((Arrangement::Grid { columns: columns.value, rows: rows.value, across, down }, even))
    }

    /// `{count: 3, right: 1/4 in, up: 1/8 in}`.
    fn steps(&mut self, way: Field<'a>) -> Option<Arrangement> {
        let fields = self.fields(way.node, "steps", way.key, &["count", "right", "left", "up", "down"])?;
        let count = self.required(&fields, "count", "3").and_then(|field| self.count(field, MOST_COPIES));
        let right = self.one_of_two(&fields, ["right", "left"]);
        let up = self.one_of_two(&fields, ["up", "down"]);
        let (right, up) = (right?, up?);
        if right.is_none() && up.is_none() {
            let _ = self.required(&fields, "right", "1/4 in");
            return None;
        }
        let nothing = Length::zero(self.units);
        Some(Arrangement::Steps { count: count?.value, right: right.unwrap_or(nothing), up: up.unwrap_or(nothing) })
    }

    /// A length under one of two keys that point opposite ways, the second taken as negative.
    fn one_of_two(&mut self, fields: &Fields<'a>, keys: [&'static str; 2]) -> Option<Option<Length>> {
        match (fields.get(keys[0]), fields.get(keys[1])) {
            (None, None) => Some(None),
            (Some(field), None) => self.length(field, Role::Gap).map(Some),
            (None, Some(field)) => {
                self.length(field, Role::Gap).map(|length| Some(Length::new(-length.nm(), length.unit())))
            }
            (Some(first), Some(second)) => {
                self.note(
                    Finding::error(
                        "placed-twice",
                        second.key,
                        format!("a step goes both {} and {}", keys[0], keys[1]),
                        format!("`{}` again", second.name),
                    )
                    .also(first.key, format!("`{}` already", first.name))
                    .help(format!("keep 1 of `{}` and `{}`", keys[0], keys[1]))
                    .plainly("Two lines say opposite things, and only one can count."),
                );
                None
            }
        }
    }

    /// `{rows: 2, gap: 1/8 in, pointing: up}`.
    fn triangle(&mut self, way: Field<'a>) -> Option<Arrangement> {
        let known = ["rows", "gap", "gap across", "gap down", "pointing"];
        let fields = self.fields(way.node, "a triangle", way.key, &known)?;
        // 44 rows hold 990 copies.
        let rows = self.required(&fields, "rows", "2").and_then(|field| self.count(field, 44));
        let gaps = self.gaps(&fields, "triangle");
        let points = [("up", true), ("down", false)];
        let pointing = self.required(&fields, "pointing", "up").and_then(|field| self.word(field, &points));
        let (rows, gaps, pointing) = (rows?, gaps?, pointing?);
        let (Some(across), Some(down)) = gaps else {
            let span = fields.get("gap").map_or(way.key, |field| field.node.span());
            self.note(
                Finding::error(
                    "bad-word",
                    span,
                    "a triangle of copies has no even gaps",
                    "`even` is for rows, columns and grids",
                )
                .help("write 1 length, such as `gap: 1/8 in`")
                .plainly("The copies of a triangle keep a stated gap."),
            );
            return None;
        };
        Some(Arrangement::Triangle { rows: rows.value, across, down, points_up: pointing.value })
    }

    /// `{count: 5, step: 12 degrees, about: bottom}`.
    fn fan(&mut self, way: Field<'a>) -> Option<Arrangement> {
        let fields = self.fields(way.node, "a fan", way.key, &["count", "step", "about"])?;
        let count = self.required(&fields, "count", "5").and_then(|field| self.count(field, MOST_COPIES));
        let step = self.required(&fields, "step", "12 degrees").and_then(|field| {
            let text = self.text(field)?;
            self.degrees(text)
        });
        let about = fields.get("about").map_or(Some(Pivot::Middle), |field| self.pivot(field));
        Some(Arrangement::Fan { count: count?.value, step: step?, about: about? })
    }

    /// The arrangement with its even gaps worked out: as wide between copies as at both ends.
    pub(super) fn even_gaps(
        &mut self,
        copies: Copies,
        piece: PieceId,
        quarter_turns: u8,
        ground: Ground<'_>,
    ) -> Option<Arrangement> {
        let Copies { arrangement, even, span } = copies;
        if even == [false; 2] {
            return Some(arrangement);
        }
        let pieces = ground.room.pieces?;
        let Some(room) = ground.size() else {
            if ground.is_several() {
                self.note(
                    Finding::error(
                        "no-room-for-gaps",
                        span,
                        "even gaps need one thing to lie on",
                        "what these lie on is several copies",
                    )
                    .help("lay them on the card, its envelope or 1 single layer, or write the gap as a length")
                    .plainly("Even gaps divide the room on one thing; several copies of it have no one size."),
                );
            }
            return None;
        };
        let size = pieces.get(piece.0)?.size.turned(quarter_turns);
        let (columns, rows) = arrangement.columns_rows();
        let across = if even[0] { Some(self.even_gap(span, columns, size.width, room.width)?) } else { None };
        let down = if even[1] { Some(self.even_gap(span, rows, size.height, room.height)?) } else { None };
        Some(match arrangement {
            Arrangement::Row { count, gap } => Arrangement::Row { count, gap: across.unwrap_or(gap) },
            Arrangement::Column { count, gap } => Arrangement::Column { count, gap: down.unwrap_or(gap) },
            Arrangement::Grid { columns, rows, across: a, down: d } => {
                Arrangement::Grid { columns, rows, across: across.unwrap_or(a), down: down.unwrap_or(d) }
            }
            other => other,
        })
    }

    fn even_gap(&mut self, span: Span, count: u32, side: Length, room: Length) -> Option<Length> {
        let left = room.nm() - side.nm() * i64::from(count);
        let gaps = i64::from(count) + 1;
        if left >= 0 {
            // To the nearest nanometre, half up, as a middle is.
            return Some(Length::of((2 * left + gaps).div_euclid(2 * gaps), self.units));
        }
        let fits = room.nm() / side.nm().max(1);
        let mut finding = Finding::error(
            "no-room-for-gaps",
            span,
            "there is no room for even gaps",
            format!("{count} times {side} is more than {room}"),
        )
        .help(format!(
            "lay {fits} or fewer, or make each smaller than {}",
            Length::new(room.nm() / i64::from(count.max(1)), room.unit())
        ))
        .plainly("So many copies do not even fit edge to edge.");
        finding.edition = self.both().then_some(self.units);
        self.note(finding);
        None
    }
}
