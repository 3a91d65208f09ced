//! The placing frames that a design asks for.

use super::desk::{Desk, Field};
use super::names::{Names, tidy};
use super::text::Text;
use crate::design::model::{Framed, Frames, Layer, LayerId, Onto};
use crate::design::nodes::Node;
use crate::diagnostic::Finding;

impl<'a> Desk<'a> {
    /// `all that help`, or a list: `lantern on mat`, `upper beds, long bed and lower beds`. `layers` are none where
    /// the layers could not be settled.
    pub(super) fn frames(&mut self, field: Option<Field<'a>>, names: &Names, layers: Option<&[Layer]>) -> Frames {
        let Some(field) = field else { return Frames::No };
        if let Node::Scalar(_) = field.node {
            let all = self.word(field, &[("all that help", ())]);
            return all.map_or(Frames::No, |all| Frames::ThatHelp(all.span));
        }
        let mut these: Vec<Framed> = Vec::new();
        for item in self.items(field).unwrap_or_default() {
            let Some(text) = self.text(item) else { continue };
            if let Some(framed) = self.framed(text, names, layers, &these) {
                these.push(framed);
            }
        }
        Frames::These(these)
    }

    fn framed(&mut self, text: Text<'_>, names: &Names, layers: Option<&[Layer]>, before: &[Framed]) -> Option<Framed> {
        let known = |text: Text<'_>| names.position(&tidy(text.value)).is_some();
        let listed = |text: Text<'_>| listed(text, &known).is_some();
        let parted = if listed(text) { None } else { text.at_known("on", listed) };
        let (laid, on) = match parted {
            Some((laid, on)) => (laid, Some(on)),
            None => (text, None),
        };
        let items = self::listed(laid, &known).unwrap_or_else(|| laid.items());
        let mut framed = Framed { layers: Vec::new(), on: None, span: text.span };
        for item in items {
            let layer = LayerId(self.declared(item, names, &[])?);
            if framed.layers.contains(&layer) || before.iter().any(|other| other.layers.contains(&layer)) {
                self.framed_twice(item);
                return None;
            }
            framed.layers.push(layer);
        }
        if let Some(on) = on {
            framed.on = Some(if tidy(on.value) == "card" {
                Onto::Card
            } else {
                Onto::Layer(LayerId(self.declared(on, names, &["card"])?))
            });
            self.lies_below(&framed, on, names, layers?)?;
        }
        Some(framed)
    }

    fn framed_twice(&mut self, item: Text<'_>) {
        let name = tidy(item.value);
        self.note(
            Finding::error("framed-twice", item.span, format!("`{name}` is framed twice"), "it has a frame already")
                .help("take 1 of them out: 1 frame lays a layer")
                .plainly(format!("`{name}` stands twice among the frames.")),
        );
    }

    /// Whether what a frame is to lie on is below all its layers.
    fn lies_below(&mut self, framed: &Framed, on: Text<'_>, names: &Names, layers: &[Layer]) -> Option<()> {
        for &layer in &framed.layers {
            let mut grounds = vec![layers.get(layer.0)?.onto];
            while let Some(Onto::Layer(below)) = grounds.last() {
                grounds.push(layers.get(below.0)?.onto);
            }
            if framed.on.is_none_or(|on| grounds.contains(&on)) {
                continue;
            }
            let name = |onto: &Onto| match onto {
                Onto::Card => "card",
                Onto::Layer(below) => names.list[below.0].value.as_str(),
            };
            let own = &names.list[layer.0].value;
            let ground = tidy(on.value);
            let first = name(&grounds[0]).to_owned();
            self.note(
                Finding::error(
                    "not-below",
                    on.span,
                    format!("the {ground} does not lie below the {own}"),
                    format!("the {own} lies on the {first}"),
                )
                .also(layers[layer.0].span, format!("the {own} is placed here"))
                .help(format!(
                    "say `on {first}`, or leave `on {ground}` out: then the frame lies on the nearest 1 that fits"
                ))
                .plainly(format!("A frame for the {own} cannot lie on the {ground}, which is not below it.")),
            );
            return None;
        }
        Some(())
    }
}

/// The known names of a list: `a, b and c`. A name may hold the words that part it.
fn listed<'t>(text: Text<'t>, known: &impl Fn(Text<'t>) -> bool) -> Option<Vec<Text<'t>>> {
    if known(text) {
        return Some(vec![text]);
    }
    let mut names = Vec::new();
    for part in text.split(',') {
        let mut rest = part;
        while !known(rest) {
            let (head, tail) = rest.at_known("and", known)?;
            if head.value.trim().is_empty() {
                rest = tail;
                continue;
            }
            known(head).then_some(())?;
            names.push(head);
            rest = tail;
        }
        names.push(rest);
    }
    Some(names)
}
