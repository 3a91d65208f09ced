//! Layers of the front: flattened in the order they are handled, every name resolved.

use super::desk::{Desk, Field, Fields};
use super::faces::Lists;
use super::names::{Names, tidy};
use super::placing::{ACROSS_KEYS, UP_KEYS};
use super::repeats::{ARRANGEMENTS, Ground, Room};
use super::ring::{Ring, Strip, is_numbered, is_ring};
use super::text::Text;
use super::turned::Turn;
use crate::design::model::{Face, Fold, Glue, Layer, LayerId, LayerSpans, Onto, PieceId};
use crate::diagnostic::Finding;
use crate::geometry::Mirror;
use crate::source::{Span, Spanned};

/// The most layers, and the most copies over all of them.
const MOST_LAYERS: usize = 1_000;
const MOST_PLACED: u64 = 10_000;

const KEYS: [&str; 36] = [
    "place",
    "as",
    "onto",
    "panel",
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
    "left with",
    "right with",
    "top with",
    "bottom with",
    "centred across",
    "centred up",
    "midway across",
    "midway up",
    "shifted",
    "row",
    "column",
    "grid",
    "steps",
    "triangle",
    "fan",
    "pinwheel",
    "mirrored",
    "turned",
    "shows",
    "trim flush",
    "glue",
    "first",
];

/// What a ring of strips may say.
const RING_KEYS: [&str; 6] = ["ring round", "strips", "starting", "going", "glue", "onto"];

/// A layer as written, with the layer in whose `first` list it stands.
pub(super) struct Draft<'a> {
    pub(super) fields: Fields<'a>,
    pub(super) face: Face,
    /// Whether that side could be read; what is laid by such a layer is no second fault.
    on_known_face: bool,
    unit: Option<usize>,
    piece: Option<usize>,
    pub(super) span: Span,
    /// Its place where it is a strip of a ring.
    ring: Option<Strip>,
}

impl Draft<'_> {
    fn on_another_side(&self, other: &Self) -> bool {
        self.on_known_face && other.on_known_face && self.face != other.face
    }
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
    pub(super) fn layers(&mut self, lists: &Lists<'a>, pieces: &Names) -> Drafts<'a> {
        let names = Names { noun: "layer", unknown: "unknown-layer", list: Vec::new() };
        let mut drafts = Drafts { list: Vec::new(), names, whole: true };
        for (field, face) in &lists.lists {
            self.flatten(*field, (*face, lists.fold), None, pieces, &mut drafts);
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

    fn flatten(
        &mut self,
        field: Field<'a>,
        list: (Face, Option<Fold>),
        unit: Option<usize>,
        pieces: &Names,
        drafts: &mut Drafts<'a>,
    ) {
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
            if is_ring(item.node) {
                drafts.whole &= self.flatten_ring(item, list.0, unit, pieces, drafts).is_some();
                continue;
            }
            let Some(fields) = self.fields(item.node, "a layer", item.key, &KEYS) else {
                drafts.whole = false;
                continue;
            };
            let place = self.required(&fields, "place", pieces.list.first().map_or("mat", |name| &name.value));
            let place_text = place.and_then(|field| self.text(field));
            let piece = place_text.and_then(|text| self.declared(text, pieces, &[]));
            let own = fields.get("as").and_then(|field| self.own_name(field));
            let name = own.or_else(|| place_text.map(|text| text.owned())).map_or_else(
                || Spanned::new(String::new(), item.key),
                |name| Spanned::new(tidy(&name.value), name.span),
            );
            let span = place.map_or(item.key, |field| field.key.to(field.node.span()));
            drafts.whole &= piece.is_some();
            let face = self.face_of(&fields, list, unit, drafts);
            let on_known_face = face.is_some();
            drafts.whole &= on_known_face;
            let face = face.unwrap_or(list.0);
            let number = drafts.list.len();
            drafts.names.list.push(name);
            let first = fields.get("first");
            drafts.list.push(Draft { fields, face, on_known_face, unit, piece, span, ring: None });
            if let Some(first) = first {
                self.flatten(first, list, Some(number), pieces, drafts);
            }
        }
    }

    /// A ring of strips becomes one layer for each strip.
    fn flatten_ring(
        &mut self,
        item: Field<'a>,
        face: Face,
        unit: Option<usize>,
        pieces: &Names,
        drafts: &mut Drafts<'a>,
    ) -> Option<()> {
        let fields = self.fields(item.node, "a ring", item.key, &RING_KEYS)?;
        let ring = self.ring(&fields, drafts, pieces);
        let Ring { strips, places } = ring?;
        // On the side of its middle.
        let middle = places.first().and_then(|strip| strip.before.first());
        let face = middle.and_then(|middle| drafts.list.get(middle.0)).map_or(face, |middle| middle.face);
        for ((piece, name), strip) in strips.into_iter().zip(places) {
            let number = drafts.names.list.iter().filter(|known| is_numbered(&known.value, &name.value)).count() + 1;
            let own = if number == 1 { name.value.clone() } else { format!("{} {number}", name.value) };
            drafts.names.list.push(Spanned::new(own, name.span));
            drafts.list.push(Draft {
                fields: fields.clone(),
                face,
                on_known_face: true,
                unit,
                piece: Some(piece),
                span: name.span,
                ring: Some(strip),
            });
        }
        Some(())
    }

    /// The layers, settled; `first` is the number of the first written piece.
    pub(super) fn front(&mut self, drafts: &Drafts<'a>, first: usize, room: Room<'_>) -> Option<Vec<Layer>> {
        let mut read: Vec<Option<Layer>> = Vec::new();
        for number in 0..drafts.list.len() {
            let layer = self.layer(drafts, number, first, room, &read);
            read.push(layer);
        }
        self.across_turns(drafts, &read);
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

    fn layer(
        &mut self,
        drafts: &Drafts<'a>,
        number: usize,
        first: usize,
        room: Room<'_>,
        before: &[Option<Layer>],
    ) -> Option<Layer> {
        let draft = &drafts.list[number];
        let fields = &draft.fields;
        let onto = match fields.get("onto") {
            Some(field) => self.ground(field, drafts, number),
            None => Some(match (&draft.ring, draft.unit) {
                (Some(strip), _) => self.ground_of_ring(strip, before)?,
                (None, unit) => unit.map_or(Onto::Card, |unit| Onto::Layer(LayerId(unit))),
            }),
        };
        let copies = self.arrangement(fields);
        let even = copies.as_ref().map_or([false; 2], |copies| copies.even);
        let across = match &draft.ring {
            Some(strip) => Some(strip.across),
            None => self.across(drafts, number, even[0]),
        };
        let up = match &draft.ring {
            Some(strip) => Some(strip.up),
            None => self.up(drafts, number, even[1]),
        };
        self.lonely_gap(draft);
        let shifted = fields.get("shifted").map_or(Some((0, 0)), |field| self.shifted(field));
        let turn = fields.get("turned").map_or(Some(Turn::default()), |field| self.turned(field));
        let mirrors = [("left to right", Mirror::LeftToRight), ("top to bottom", Mirror::TopToBottom)];
        let mirrored = fields.get("mirrored").map(|field| self.word(field, &mirrors));
        let shows = fields.get("shows").and_then(|field| self.shows(field));
        let trim_flush = fields.get("trim flush").map(|field| {
            let onto = self.onto(field, drafts, number)?;
            Some(Spanned::new(onto, field.node.span()))
        });
        let glues = [("tape", Glue::Tape), ("liquid", Glue::Liquid), ("foam", Glue::Foam), ("dot", Glue::Dot)];
        let glue = fields.get("glue").and_then(|field| self.word(field, &glues));
        let placed = |keys: &[&str]| {
            keys.iter().find_map(|key| fields.get(key)).map_or(draft.span, |field| field.key.to(field.node.span()))
        };
        let spans = LayerSpans {
            across: placed(&ACROSS_KEYS),
            up: placed(&UP_KEYS),
            arrangement: placed(&ARRANGEMENTS),
            onto: placed(&["onto"]),
        };
        let (piece, onto, turn) = (draft.piece?, onto?, turn?);
        let ground = Ground { room, before, face: draft.face, onto };
        let arrangement = self.even_gaps(copies?, PieceId(piece + first), turn.quarters, ground)?;
        Some(Layer {
            name: drafts.names.list[number].value.clone(),
            piece: PieceId(piece + first),
            face: draft.face,
            onto,
            unit: draft.unit.map(LayerId),
            across: across?,
            up: up?,
            shifted: shifted?,
            arrangement,
            mirrored: match mirrored {
                Some(mirrored) => Some(mirrored?.value),
                None => None,
            },
            quarter_turns: turn.quarters,
            tilt: turn.tilt,
            ring: draft.ring.as_ref().map(|strip| strip.before.clone()).unwrap_or_default(),
            shows,
            trim_flush: match trim_flush {
                Some(onto) => Some(onto?),
                None => None,
            },
            glue,
            span: draft.span,
            spans,
        })
    }

    /// What a layer lies on; what is put together first does not lie on the card.
    fn ground(&mut self, field: Field<'a>, drafts: &Drafts<'a>, number: usize) -> Option<Onto> {
        let onto = self.onto(field, drafts, number)?;
        if let (Onto::Card, Some(unit)) = (onto, drafts.list[number].unit) {
            let name = drafts.names.list[unit].value.clone();
            self.note(
                Finding::error(
                    "unit-on-the-card",
                    field.node.span(),
                    format!("what is put together first cannot lie on the card: it stands in the list of `{name}`"),
                    "not on the card yet",
                )
                .also(drafts.list[unit].span, format!("`{name}` is glued to the card later"))
                .help(format!("delete this 1 line, so that it lies on `{name}`, or move the layer out of `first:`"))
                .plainly(format!(
                    "This layer is glued to {name} before {name} is on the card, so it cannot lie on the card."
                )),
            );
            return None;
        }
        Some(onto)
    }

    /// Two sides of a card have no distance between them.
    fn on_another_side(&mut self, text: Text<'_>, other: Span) {
        self.note(
            Finding::error(
                "on-another-side",
                text.span,
                format!("`{}` lies on another side or panel of the card", text.value),
                "not on this side",
            )
            .also(other, "it lies there")
            .help("name 1 layer of the same side and panel")
            .plainly("A layer can only be laid by one that lies on the same side of the card."),
        );
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
        self.earlier_in(text, drafts, number, or_card)
    }

    /// The same, from a text.
    pub(super) fn earlier_in(
        &mut self,
        text: Text<'_>,
        drafts: &Drafts<'a>,
        number: usize,
        or_card: bool,
    ) -> Option<LayerId> {
        let name = tidy(text.value);
        let label = match drafts.names.position(&name) {
            Some(found) if found < number => {
                if drafts.list.get(number).is_some_and(|own| own.on_another_side(&drafts.list[found])) {
                    self.on_another_side(text, drafts.names.list[found].span);
                    return None;
                }
                return Some(LayerId(found));
            }
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
