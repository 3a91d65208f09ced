//! How a layer is turned: by quarters, or by any number of degrees about a stated point.

use super::desk::{Desk, Field};
use super::front::Drafts;
use super::text::Text;
use crate::design::model::{Along, Arrangement, Bound, Layer, LayerId, Onto, Part, Pivot, Tilt};
use crate::design::nodes::Node;
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::geometry::{Angle, Corner, Edge};
use crate::source::Spanned;

/// A turn as settled.
#[derive(Clone, Copy, Default)]
pub(super) struct Turn {
    /// Quarter turns to the left.
    pub(super) quarters: u8,
    /// A turn by degrees.
    pub(super) tilt: Option<Tilt>,
}

const QUARTERS: [(&str, u8); 3] = [("quarter left", 1), ("half", 2), ("quarter right", 3)];

/// The points of a piece that have a name.
const POINTS: [(&str, Pivot); 9] = [
    ("middle", Pivot::Middle),
    ("top left", Pivot::Corner(Corner::UpperLeft)),
    ("top", Pivot::Edge(Edge::Top)),
    ("top right", Pivot::Corner(Corner::UpperRight)),
    ("left", Pivot::Edge(Edge::Left)),
    ("right", Pivot::Edge(Edge::Right)),
    ("bottom left", Pivot::Corner(Corner::LowerLeft)),
    ("bottom", Pivot::Edge(Edge::Bottom)),
    ("bottom right", Pivot::Corner(Corner::LowerRight)),
];

impl<'a> Desk<'a> {
    /// `half`, `12.5 degrees left`, `12.5 degrees left about top left`, `{by: …, about: …}`.
    pub(super) fn turned(&mut self, field: Field<'a>) -> Option<Turn> {
        let span = field.node.span();
        if let Node::Map(_) = field.node {
            let fields = self.fields(field.node, "`turned`", field.key, &["by", "about"])?;
            let by = self.required(&fields, "by", "12.5 degrees left").and_then(|by| {
                let text = self.text(by)?;
                self.turn_to_a_side(text)
            });
            let about = fields.get("about").map_or(Some(Pivot::Middle), |about| self.pivot(about));
            return Some(Turn { quarters: 0, tilt: Some(Tilt { angle: by?, about: about?, span }) });
        }
        let text = self.text(field)?;
        if !text.value.contains(|sign: char| sign.is_ascii_digit()) {
            return self.word(field, &QUARTERS).map(|quarters| Turn { quarters: quarters.value, tilt: None });
        }
        let (by, about) = match text.at_word("about") {
            Some((by, about)) => (by, self.point(about.without_first("its"))),
            None => (text, Some(Pivot::Middle)),
        };
        let angle = self.turn_to_a_side(by);
        Some(Turn { quarters: 0, tilt: Some(Tilt { angle: angle?, about: about?, span }) })
    }

    /// `12.5 degrees left`.
    fn turn_to_a_side(&mut self, text: Text<'_>) -> Option<Angle> {
        let Some((degrees, side)) = text.last_word().filter(|(_, side)| matches!(side.value, "left" | "right")) else {
            self.bad_turn(text, "to neither side", "say where to: `12.5 degrees left` or `12.5 degrees right`");
            return None;
        };
        let angle = self.degrees(degrees.before_words(&["to", "the"]).unwrap_or(degrees))?;
        Some(if side.value == "left" { angle } else { angle.back() })
    }

    /// `12.5 degrees`, `12.5°`: more than nothing, less than a whole turn, in hundredths.
    pub(super) fn degrees(&mut self, text: Text<'_>) -> Option<Angle> {
        let sign = text.value.strip_suffix('°');
        let number = sign.or_else(|| text.value.strip_suffix("degrees")).or_else(|| text.value.strip_suffix("degree"));
        let Some(number) = number.map(str::trim) else {
            self.bad_turn(text, "not a number of degrees", "write degrees, such as `12.5 degrees`");
            return None;
        };
        let (whole, part) = number.split_once('.').unwrap_or((number, ""));
        let digits = |text: &str| text.bytes().all(|sign| sign.is_ascii_digit());
        if whole.is_empty() || whole.len() > 3 || part.len() > 2 || !digits(whole) || !digits(part) {
            self.bad_turn(text, "not a number of degrees", "write it with at most 2 decimals, such as `12.25 degrees`");
            return None;
        }
        let hundredths = format!("{whole}{part:0<2}").parse::<i64>().unwrap_or(0);
        if hundredths == 0 || hundredths >= 36_000 {
            self.bad_turn(
                text,
                if hundredths == 0 { "no turn at all" } else { "a whole turn or more" },
                "turn it by more than 0 and less than 360 degrees",
            );
            return None;
        }
        Some(Angle::left(hundredths))
    }

    fn bad_turn(&mut self, text: Text<'_>, label: &str, help: &str) {
        self.note(
            Finding::error("bad-turn", text.span, format!("`{}` is not a turn", text.value), label)
                .help(help)
                .plainly(format!("\"{}\" does not say how far something is turned.", text.value)),
        );
    }

    /// `top left`, or `{left: 1 in, bottom: 1/2 in}`.
    pub(super) fn pivot(&mut self, field: Field<'a>) -> Option<Pivot> {
        if let Node::Map(_) = field.node {
            let fields = self.fields(field.node, "a point", field.key, &["left", "bottom"])?;
            let left = self.required(&fields, "left", "1 in").and_then(|field| self.length(field, Role::Border));
            let bottom = self.required(&fields, "bottom", "1/2 in").and_then(|field| self.length(field, Role::Border));
            return Some(Pivot::Point(left?, bottom?));
        }
        let text = self.text(field)?;
        self.point(text.without_first("its"))
    }

    fn point(&mut self, text: Text<'_>) -> Option<Pivot> {
        self.word_in("about", text, &POINTS).map(|point| point.value)
    }

    /// Notes every layer that is measured from one which lies in another frame: turned, where this one is
    /// not, or turned otherwise. There is no straight distance between two such layers.
    pub(super) fn across_turns(&mut self, drafts: &Drafts<'a>, layers: &[Option<Layer>]) {
        for (number, layer) in layers.iter().enumerate() {
            let Some(layer) = layer else { continue };
            if let Onto::Layer(below) = layer.onto
                && let Some(Some(below)) = layers.get(below.0)
                && (is_fan(below) || below.count() > 1 && below.tilt.is_some())
            {
                self.on_turned_copies(below, Spanned::new(layer.name.as_str(), layer.span));
                continue;
            }
            let frame = frame_of(layers, number);
            for (other, part) in [layer.across, layer.up].into_iter().flat_map(measured_from) {
                let Some(Some(from)) = layers.get(other.0) else { continue };
                let about_middle = from.tilt.is_none_or(|tilt| tilt.about == Pivot::Middle);
                // A middle stays where it is when a layer turns about it.
                let is_turned = is_fan(from) || from.tilt.is_some() && !(part == Part::Middle && about_middle);
                if !is_turned && frame_of(layers, other.0) == frame {
                    continue;
                }
                let span = drafts.list[number].span;
                self.note(
                    Finding::error(
                        "measured-across-a-turn",
                        span,
                        format!("`{}` is measured from `{}`, which does not lie straight to it", layer.name, from.name),
                        "no straight distance between the two",
                    )
                    .also(from.tilt.map_or(from.span, |tilt| tilt.span), format!("`{}` is turned", from.name))
                    .help(format!("measure `{}` from what it lies on, such as `left: 1/4 in`", layer.name))
                    .plainly(format!(
                        "{} is turned, so the distance from {} is not the same everywhere.",
                        from.name, layer.name
                    )),
                );
                break;
            }
        }
    }

    fn on_turned_copies(&mut self, below: &Layer, layer: Spanned<&str>) {
        self.note(
            Finding::error(
                "measured-across-a-turn",
                layer.span,
                format!("`{}` cannot lie on the turned copies `{}`", layer.value, below.name),
                "these have no one direction",
            )
            .also(below.tilt.map_or(below.span, |tilt| tilt.span), "each copy is turned by itself")
            .help(format!("lay it on what `{}` lies on, and say where with 2 distances", below.name))
            .plainly(format!(
                "Each {} is turned by itself, so {} cannot be laid straight on them.",
                below.name, layer.value
            )),
        );
    }
}

const fn is_fan(layer: &Layer) -> bool {
    matches!(layer.arrangement, Arrangement::Fan { .. })
}

/// The layers that a direction is measured from, and the part of each.
fn measured_from(along: Along) -> Vec<(LayerId, Part)> {
    match along {
        Along::Centre | Along::FromLow(_) | Along::FromHigh(_) => Vec::new(),
        Along::After(other, _) => vec![(other, Part::High)],
        Along::Before(other, _) => vec![(other, Part::Low)],
        Along::With(other, part) => vec![(other, part)],
        Along::Midway(one, other) => [one, other]
            .into_iter()
            .filter_map(|bound| if let Bound::Layer(layer) = bound { Some((layer, Part::Low)) } else { None })
            .collect(),
    }
}

/// The nearest turned layer that a layer lies on, itself not counted.
fn frame_of(layers: &[Option<Layer>], number: usize) -> Option<usize> {
    let mut at = number;
    // A layer lies on an earlier one, so this ends.
    for _ in 0..layers.len() {
        let Some(Some(layer)) = layers.get(at) else { return None };
        let Onto::Layer(below) = layer.onto else { return None };
        let turned = layers.get(below.0).and_then(Option::as_ref).is_some_and(|below| below.tilt.is_some());
        if turned {
            return Some(below.0);
        }
        at = below.0;
    }
    None
}
