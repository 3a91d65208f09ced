//! Outlines from drawings: the files that a design names, and what they hold.
//!
//! Which files are read is decided outside: here is what the source brought along.

use super::beside::is_beside;
use super::desk::{Desk, Field};
use crate::design::nodes::Node;
use crate::diagnostic::Finding;
use crate::geometry::RingFault;
use crate::shape::{Drawn, DrawnFault, Form, drawn};
use crate::source::Span;

/// The most drawings that a design may name.
const MOST_DRAWINGS: usize = 50;

/// The files that a design names for outlines, each once, as written; those that lie in its own folder or
/// further in. Others are refused when the design is settled.
#[must_use]
pub fn drawings_named(root: &Node) -> Vec<String> {
    let mut named = Vec::new();
    let mut waiting = vec![root];
    while let Some(node) = waiting.pop() {
        match node {
            Node::Scalar(_) => {}
            Node::List(list) => waiting.extend(&list.items),
            Node::Map(map) => {
                for (key, value) in &map.entries {
                    if let (true, Node::Scalar(name)) = (key.value.trim() == "outline", value) {
                        let name = name.text.trim();
                        let is_new = !named.iter().any(|known| known == name);
                        if is_new && is_beside(name) && named.len() < MOST_DRAWINGS {
                            named.push(name.to_owned());
                        }
                    }
                    waiting.push(value);
                }
            }
        }
    }
    named
}

impl<'a> Desk<'a> {
    /// `leaf.svg` behind `outline`: its form, with corners still in steps of the drawing.
    pub(super) fn outline(&mut self, field: Field<'a>) -> Option<Form> {
        let text = self.text(field)?;
        let (name, span) = (text.value.trim(), text.span);
        if !is_beside(name) {
            self.note(
                Finding::error(
                    "unreadable-drawing",
                    span,
                    format!("`{name}` lies outside the design's folder"),
                    "not a file beside the design",
                )
                .help("put the drawing beside the design and write its 1 name, such as `leaf.svg`")
                .plainly("A drawing is read only from the folder of the design."),
            );
            return None;
        }
        let source = self.source;
        let read = match source.beside(name) {
            Some(Ok(bytes)) => drawn(bytes).map_err(|fault| told(name, span, &fault)),
            Some(Err(cause)) => Err(unread(name, span, cause)),
            None => Err(unread(name, span, "there is no such file")),
        };
        match read {
            Ok(Drawn { corners, .. }) => Some(Form::Drawn { name: name.to_owned(), corners }),
            Err(finding) => {
                self.note(finding);
                None
            }
        }
    }
}

fn unread(name: &str, span: Span, cause: &str) -> Finding {
    Finding::error("unreadable-drawing", span, format!("the drawing `{name}` cannot be read"), cause.to_owned())
        .help("put 1 SVG file of this name beside the design, and let everybody read it")
        .plainly(format!("The drawing {name} cannot be read: {cause}."))
}

/// What is wrong with a drawing, and how to mend it.
fn told(name: &str, span: Span, fault: &DrawnFault) -> Finding {
    let unreadable = |fact: String, help: &str| ("unreadable-drawing", fact, help.to_owned());
    let one = |fact: String, help: &str| ("not-one-outline", fact, help.to_owned());
    let (code, fact, help) = match fault {
        DrawnFault::Packed => unreadable("it is packed".to_owned(), "save it as 1 plain SVG file, not as SVGZ"),
        DrawnFault::NotText => unreadable("it is no text".to_owned(), "save it as 1 plain SVG file in UTF-8"),
        DrawnFault::NotXml { says } => {
            unreadable(format!("it is no sound XML: {says}"), "save it once more as 1 plain SVG file")
        }
        DrawnFault::NotSvg => unreadable("it is no SVG".to_owned(), "save it as 1 plain SVG file"),
        DrawnFault::Refused { says } => {
            unreadable(format!("it is no sound SVG: {says}"), "save it once more as 1 plain SVG file")
        }
        DrawnFault::Element { name, line } => unreadable(
            format!("line {line} holds `{name}`, which is no outline"),
            "keep 1 path and nothing else: turn text and copies into paths, and delete pictures",
        ),
        DrawnFault::Paths { count: 0 } => one("nothing is drawn in it".to_owned(), "draw 1 closed path"),
        DrawnFault::Paths { count } => {
            one(format!("{count} paths are drawn in it"), "join them to 1 path, or delete all others")
        }
        DrawnFault::Parts { count } => one(
            format!("its path has {count} rings"),
            "keep 1 ring: a hole is a `window` of the piece, and another part is another piece",
        ),
        DrawnFault::Flat => one("its path encloses nothing".to_owned(), "draw 1 closed path with some room in it"),
        DrawnFault::TooFine => {
            one("its path has too many curves and corners".to_owned(), "simplify the path to 1000 curves or fewer")
        }
        DrawnFault::Ring(fault) => one(ring_told(fault), "let the 1 line go round without meeting itself"),
    };
    let message = match code {
        "not-one-outline" => format!("the drawing `{name}` is not one outline"),
        _ => format!("the drawing `{name}` cannot be read"),
    };
    Finding::error(code, span, message, fact.clone()).help(help).plainly(format!("The drawing {name}: {fact}."))
}

fn ring_told(fault: &RingFault) -> String {
    match fault {
        RingFault::TooFewCorners { .. } => "its path encloses nothing",
        RingFault::TooManyCorners { .. } | RingFault::TooFar { .. } => "its path has too many curves and corners",
        RingFault::Repeated { .. } | RingFault::FoldsBack { .. } => "its line turns straight back",
        RingFault::Crosses { .. } => "its line crosses itself",
        RingFault::Touches { .. } => "its line touches itself",
    }
    .to_owned()
}
