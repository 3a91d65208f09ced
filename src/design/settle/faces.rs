//! The sides of card and envelope that layers lie on, and which one an outermost layer lies on.

use super::desk::{Desk, Field};
use super::front::Drafts;
use super::names::tidy;
use crate::design::model::{Envelope, Face, Fold};
use crate::design::nodes::Node;
use crate::design::restate::Role;
use crate::diagnostic::Finding;

/// The lists of layers of a design, each with its side.
pub(super) struct Lists<'a> {
    pub(super) lists: Vec<(Field<'a>, Face)>,
    /// Where the card folds, where it says so.
    pub(super) fold: Option<Fold>,
}

/// The envelope as read, with its lists of layers.
pub(super) struct EnvelopeDraft<'a> {
    /// None where it could not be read.
    pub(super) envelope: Option<Envelope>,
    pub(super) lists: Vec<(Field<'a>, Face)>,
}

impl<'a> Desk<'a> {
    /// `{size: 5 3/4 x 4 3/8 in, flap: 2 in, front: […], on the flap: […]}`; the size may be a name.
    pub(super) fn envelope(&mut self, field: Field<'a>) -> EnvelopeDraft<'a> {
        let mut draft = EnvelopeDraft { envelope: None, lists: Vec::new() };
        let known = ["size", "flap", "front", "on the flap"];
        let Some(fields) = self.fields(field.node, "the envelope", field.key, &known) else { return draft };
        let size = self.required(&fields, "size", "5 3/4 x 4 3/8 in").and_then(|field| {
            let text = self.text(field)?;
            self.envelope_size(text).map(|size| (size, text.span))
        });
        let flap = fields.get("flap").map(|field| (self.length(field, Role::Outright), field));
        draft.lists.extend(fields.get("front").map(|field| (field, Face::EnvelopeFront)));
        if let Some(on_flap) = fields.get("on the flap") {
            if flap.is_some() {
                draft.lists.push((on_flap, Face::EnvelopeFlap));
            } else {
                self.note(
                    Finding::error(
                        "missing-key",
                        on_flap.key,
                        "`on the flap` has no flap to lie on",
                        "how deep is the flap?",
                    )
                    .help("add 1 line to the envelope: `flap: 2 in`, how far the closed flap reaches down")
                    .plainly("Something is laid on the envelope's flap, and nothing says how large the flap is."),
                );
            }
        }
        let depth = match flap {
            None => Some(None),
            Some((None, _)) => None,
            Some((Some(depth), field)) => {
                let high = size.map(|(size, _)| size.height);
                if depth.nm() > 0 && high.is_none_or(|high| depth <= high) {
                    Some(Some(depth))
                } else {
                    self.note(
                        Finding::error(
                            "size-not-positive",
                            field.node.span(),
                            "the flap cannot be so deep",
                            format!("{depth}"),
                        )
                        .help(match high {
                            Some(high) => {
                                format!("make it more than 0 and no more than {high}, as high as the envelope")
                            }
                            None => "make it more than 0".to_owned(),
                        })
                        .plainly("The flap of an envelope is no deeper than the envelope."),
                    );
                    None
                }
            }
        };
        draft.envelope = size.zip(depth).map(|((size, span), flap)| Envelope { size, span, flap });
        draft
    }

    /// The side that a layer lies on: its unit's, that of the layer it lies on, else its list's, on the panel
    /// that it names.
    pub(super) fn face_of(
        &mut self,
        fields: &super::desk::Fields<'a>,
        (list, fold): (Face, Option<Fold>),
        unit: Option<usize>,
        drafts: &Drafts<'a>,
    ) -> Option<Face> {
        let onto = fields.get("onto").and_then(|field| match field.node {
            Node::Scalar(scalar) => drafts.names.position(&tidy(&scalar.text)),
            _ => None,
        });
        let same_side = |face: &Face| std::mem::discriminant(face) == std::mem::discriminant(&list);
        let below = unit.or(onto).and_then(|layer| drafts.list.get(layer)).map(|draft| draft.face).filter(same_side);
        let Some(panel) = fields.get("panel") else { return Some(below.unwrap_or(list)) };
        let inside = matches!(list, Face::Inside(_));
        if below.is_some() || !inside {
            let (message, label) = if inside {
                ("`panel` is said by what the layer lies on", "it lies on another layer")
            } else {
                ("`panel` is for the inside", "this side is one panel")
            };
            self.note(
                Finding::error("unknown-key", panel.key, message, label)
                    .help("delete this 1 line")
                    .plainly("Only a layer that lies on the inside of the card itself says on which panel."),
            );
            return None;
        }
        let fold = fold?;
        let number = self.panel(panel, fold)?;
        Some(Face::Inside(Some(number)))
    }

    /// `left`, `right`, `upper`, `lower`, `middle`, or a number from 1 on.
    fn panel(&mut self, field: Field<'a>, fold: Fold) -> Option<u32> {
        const TWO: [(&str, u32); 2] = [("left", 0), ("right", 1)];
        const OVER: [(&str, u32); 2] = [("upper", 0), ("lower", 1)];
        const THREE: [(&str, u32); 3] = [("left", 0), ("middle", 1), ("right", 2)];
        match fold {
            Fold::Side => self.word(field, &TWO).map(|panel| panel.value),
            Fold::Top => self.word(field, &OVER).map(|panel| panel.value),
            Fold::Gate => self.word(field, &THREE).map(|panel| panel.value),
            Fold::Accordion { panels } => self.count(field, panels).map(|panel| panel.value - 1),
            Fold::None => {
                self.note(
                    Finding::error("no-inside", field.key, "a flat card has no inside", "no panel to lie on")
                        .help("say `fold: side` or `fold: top`, or move these layers to `back:`, the 1 other side")
                        .plainly("A card that does not fold has a front and a back, and nothing inside."),
                );
                None
            }
        }
    }

    /// Notes an inside that a flat card has not.
    pub(super) fn inside_of(&mut self, field: Field<'a>, fold: Option<Fold>) -> bool {
        if fold != Some(Fold::None) {
            return true;
        }
        self.note(
            Finding::error("no-inside", field.key, "a flat card has no inside", "the card says `fold: none`")
                .help("say `fold: side` or `fold: top`, or move these layers to `back:`, the 1 other side")
                .plainly("A card that does not fold has a front and a back, and nothing inside."),
        );
        false
    }
}
