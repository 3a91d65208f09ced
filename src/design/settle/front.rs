//! Layers of the front: flattened in the order they are handled, every name resolved.

use super::desk::{Desk, Field, Fields};
use super::names::{Names, tidy};
use crate::design::model::{Face, Glue, Layer, LayerId, LayerSpans, Onto, PieceId};
use crate::diagnostic::Finding;
use crate::source::{Span, Spanned};

/// The most layers, and the most copies over all of them.
const MOST_LAYERS: usize = 1_000;
const MOST_PLACED: u64 = 10_000;

const KEYS: [&str; 21] = [
    "place",
    "as",
    "onto",
    "centre",
    "left",
    "right",
    "top",
    "bottom",
    "below",
    "above",
    "left of",
    "right of",
    "gap",
    "row",
    "column",
    "grid",
    "turned",
    "shows",
    "trim flush",
    "glue",
    "first",
];

/// A layer as written, with the layer in whose `first` list it stands.
pub(super) struct Draft<'a> {
    pub(super) fields: Fields<'a>,
    unit: Option<usize>,
    piece: Option<usize>,
    pub(super) span: Span,
}

/// All layers in order, and their names.
pub(super) struct Drafts<'a> {
    pub(super) list: Vec<Draft<'a>>,
    /// One name a layer; a nameless one is empty.
    pub(super) names: Names,
    /// Whether every layer could be read at all.
    whole: bool,
}

impl<'a> Desk<'a> {
    /// Flattens the layers: a layer, then what is put together on it first.
    pub(super) fn layers(&mut self, field: Option<Field<'a>>, pieces: &Names) -> Drafts<'a> {
        let names = Names { noun: "layer", unknown: "unknown-layer", list: Vec::new() };
        let mut drafts = Drafts { list: Vec::new(), names, whole: true };
        if let Some(field) = field {
            self.flatten(field, None, pieces, &mut drafts);
        }
        let mut twice = Vec::new();
        for (number, name) in drafts.names.list.iter().enumerate().filter(|(_, name)| !name.value.is_empty()) {
            let first = drafts.names.position(&name.value).filter(|first| *first < number);
            if let Some(first) = first {
                twice.push((name.clone(), drafts.names.list[first].span));
            } else if name.value == "card" {
                twice.push((name.clone(), name.span));
            }
        }
        for (name, first) in twice {
            drafts.whole = false;
            if name.value == "card" && name.span == first {
                self.reserved(&name, "`card` is the card front");
            } else {
                self.used_twice("layer", &name, first);
            }
        }
        drafts
    }

    fn flatten(&mut self, field: Field<'a>, unit: Option<usize>, pieces: &Names, drafts: &mut Drafts<'a>) {
        let Some(items) = self.items(field) else {
            drafts.whole = false;
            return;
        };
        for item in items {
            if drafts.list.len() >= MOST_LAYERS {
                if drafts.list.len() == MOST_LAYERS && drafts.whole {
                    self.note(
                        Finding::error(
                            "too-much",
                            item.key,
                            "there are more layers than a card can hold",
                            format!("layer number {}", MOST_LAYERS + 1),
                        )
                        .help(format!("keep it to {MOST_LAYERS} layers"))
                        .plainly("The card has far too many layers."),
                    );
                }
                drafts.whole = false;
                return;
            }
            let known: Vec<&'static str> = KEYS.iter().copied().filter(|key| !key.is_empty()).collect();
            let Some(fields) = self.fields(item.node, "a layer", item.key, &known) else {
                drafts.whole = false;
                continue;
            };
            let place = self.required(&fields, "place", pieces.list.first().map_or("mat", |name| &name.value));
            let place_text = place.and_then(|field| self.text(field));
            let piece = place_text.and_then(|text| self.declared(text, pieces, &[]));
            let own = fields.get("as").and_then(|field| self.words(field));
            let name = own.or_else(|| place_text.map(|text| text.owned())).map_or_else(
                || Spanned::new(String::new(), item.key),
                |name| Spanned::new(tidy(&name.value), name.span),
            );
            let span = place.map_or(item.key, |field| field.key.to(field.node.span()));
            drafts.whole &= piece.is_some();
            let number = drafts.list.len();
            drafts.names.list.push(name);
            let first = fields.get("first");
            drafts.list.push(Draft { fields, unit, piece, span });
            if let Some(first) = first {
                self.flatten(first, Some(number), pieces, drafts);
            }
        }
    }

    /// The layers, settled; `first` is the number of the first written piece.
    pub(super) fn front(&mut self, drafts: &Drafts<'a>, first: usize) -> Option<Vec<Layer>> {
        let read: Vec<Option<Layer>> = (0..drafts.list.len()).map(|number| self.layer(drafts, number, first)).collect();
        let layers: Vec<Layer> = read.into_iter().collect::<Option<_>>()?;
        let placed: u64 = layers.iter().map(|layer| u64::from(layer.count())).sum();
        if placed > MOST_PLACED {
            let span = layers.last().map_or_else(Span::default, |layer| layer.span);
            self.note(
                Finding::error(
                    "too-much",
                    span,
                    "there are more pieces than a card can hold",
                    format!("{placed} in all"),
                )
                .help(format!("keep it to {MOST_PLACED} pieces on a card"))
                .plainly("The card has far too many pieces."),
            );
            return None;
        }
        drafts.whole.then_some(layers)
    }

    fn layer(&mut self, drafts: &Drafts<'a>, number: usize, first: usize) -> Option<Layer> {
        let draft = &drafts.list[number];
        let onto = match draft.fields.get("onto") {
            Some(field) => self.onto(field, drafts, number),
            None => Some(draft.unit.map_or(Onto::Card, |unit| Onto::Layer(LayerId(unit)))),
        };
        let across = self.across(drafts, number);
        let up = self.up(drafts, number);
        self.lonely_gap(draft);
        let arrangement = self.arrangement(&draft.fields);
        let turns = [("quarter left", 1), ("half", 2), ("quarter right", 3)];
        let turned = draft.fields.get("turned").map(|field| self.word(field, &turns));
        let shows = draft.fields.get("shows").and_then(|field| self.shows(field));
        let trim_flush = draft.fields.get("trim flush").map(|field| {
            let onto = self.onto(field, drafts, number)?;
            Some(Spanned::new(onto, field.node.span()))
        });
        let glues = [("tape", Glue::Tape), ("liquid", Glue::Liquid), ("foam", Glue::Foam)];
        let glue = draft.fields.get("glue").and_then(|field| self.word(field, &glues));
        Some(Layer {
            name: drafts.names.list[number].value.clone(),
            piece: PieceId(draft.piece? + first),
            face: Face::Front,
            onto: onto?,
            unit: draft.unit.map(LayerId),
            across: across?,
            up: up?,
            shifted: (0, 0),
            arrangement: arrangement?,
            mirrored: None,
            tilt: None,
            ring: Vec::new(),
            quarter_turns: match turned {
                Some(turned) => turned?.value,
                None => 0,
            },
            shows,
            trim_flush: match trim_flush {
                Some(onto) => Some(onto?),
                None => None,
            },
            glue,
            span: draft.span,
            spans: LayerSpans { across: draft.span, up: draft.span, arrangement: draft.span, onto: draft.span },
        })
    }

    /// The card or an earlier layer.
    fn onto(&mut self, field: Field<'a>, drafts: &Drafts<'a>, number: usize) -> Option<Onto> {
        let text = self.text(field)?;
        if tidy(text.value) == "card" {
            return Some(Onto::Card);
        }
        self.earlier(field, drafts, number, true).map(Onto::Layer)
    }

    /// A layer written before this one, or the one in whose `first` list it stands.
    pub(super) fn earlier(
        &mut self,
        field: Field<'a>,
        drafts: &Drafts<'a>,
        number: usize,
        or_card: bool,
    ) -> Option<LayerId> {
        let text = self.text(field)?;
        let name = tidy(text.value);
        let label = match drafts.names.position(&name) {
            Some(found) if found < number => return Some(LayerId(found)),
            Some(found) if found == number => "this is the layer itself".to_owned(),
            Some(_) => "written further down".to_owned(),
            None => {
                let mut known: Vec<&str> = drafts.names.list[..number]
                    .iter()
                    .map(|name| name.value.as_str())
                    .filter(|n| !n.is_empty())
                    .collect();
                if or_card {
                    known.push("card");
                }
                let _ = self.unknown_name(&name, text.span, &drafts.names, &known);
                return None;
            }
        };
        let later = drafts.names.position(&name).filter(|found| *found > number);
        let mut finding =
            Finding::error("unknown-layer", text.span, format!("the layer `{name}` cannot be used here"), label)
                .help(if later.is_some() {
                    format!("move `{name}` before this layer, so that it comes at least 1 step earlier")
                } else {
                    "name 1 layer that is written before this one".to_owned()
                })
                .plainly("A layer can only be measured from a layer that is written before it.");
        if let Some(later) = later {
            finding = finding.also(drafts.names.list[later].span, "it stands here");
        }
        self.note(finding);
        None
    }
}
