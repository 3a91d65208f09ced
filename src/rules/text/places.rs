//! Where each text of a design stands on the pages, and how much room is there.

use crate::design::model::Design;
use crate::diagnostic::Finding;
use crate::fonts::{DISPLAY, TEXT};
use crate::project::Project;
use crate::source::Span;

/// The room that a kind of text has on the pages.
#[derive(Debug, Clone, Copy)]
pub(super) struct Place {
    /// What it is called, with its article.
    pub(super) what: &'static str,
    /// Face and weight.
    pub(super) face: (&'static str, u16),
    /// Size of the letters, tenths of a point.
    pub(super) size: i64,
    /// Width of a line, mm.
    pub(super) width: i64,
    /// How many lines look well there.
    pub(super) lines: i64,
}

/// The narrowest place of each kind of text, taken from the templates: columns of the live 184 mm, letters of the
/// size that the template sets. A title may shrink to 20 pt before it takes two lines.
const TITLE: Place = place("the title", (DISPLAY, 600), 200, 105, 2);
const DESIGNER: Place = place("the designer's name", (TEXT, 400), 90, 56, 1);
const TERMS: Place = place("the terms", (TEXT, 400), 110, 88, 6);
const WEB: Place = place("the web address", (TEXT, 400), 110, 88, 1);
const ABOUT: Place = place("`about`", (TEXT, 400), 110, 90, 6);
const PAPER: Place = place("a paper's name", (TEXT, 700), 110, 42, 1);
const PIECE: Place = place("a piece's name", (TEXT, 400), 110, 42, 1);
const LAYER: Place = place("a layer's name", (TEXT, 400), 110, 56, 1);
const VERSION: Place = place("a version's name", (TEXT, 700), 110, 42, 1);
const NOTE: Place = place("a note", (TEXT, 400), 110, 88, 8);
const IDEA: Place = place("an idea", (TEXT, 400), 110, 88, 4);
const SUPPLY: Place = place("a supply", (TEXT, 400), 110, 56, 3);
const TOOL: Place = place("a tool", (TEXT, 400), 110, 56, 3);
const WORDS: Place = place("the words on a piece", (TEXT, 400), 110, 88, 2);

const fn place(what: &'static str, face: (&'static str, u16), size: i64, width: i64, lines: i64) -> Place {
    Place { what, face, size, width, lines }
}

/// A text that comes on paper.
#[derive(Debug, Clone, Copy)]
pub(super) struct Printed<'a> {
    pub(super) text: &'a str,
    pub(super) span: Span,
    pub(super) place: Place,
    /// The file that it stands in, where that is not the design.
    pub(super) file: Option<&'a str>,
}

impl Printed<'_> {
    /// A finding about it, in the file that it stands in.
    pub(super) fn told(&self, finding: Finding) -> Finding {
        match self.file {
            Some(file) => finding.in_file(file),
            None => finding,
        }
    }
}

/// Every text that comes on paper, in the order of the model, then what each language has besides.
pub(super) fn printed(project: &Project) -> Vec<Printed<'_>> {
    let mut all = printed_of(&project.design);
    for told in &project.told {
        for text in printed_of(told) {
            if !all.iter().any(|known| known.span == text.span && known.text == text.text) {
                all.push(text);
            }
        }
    }
    all
}

fn printed_of(design: &Design) -> Vec<Printed<'_>> {
    let mut all = Vec::new();
    let mut add = |text, span, place| all.push(Printed { text, span, place, file: None });
    add(design.title.value.as_str(), design.title.span, TITLE);
    for (text, place) in [(&design.designer, DESIGNER), (&design.about, ABOUT)] {
        if let Some(text) = text {
            add(&text.value, text.span, place);
        }
    }
    for paper in &design.papers {
        add(&paper.name, paper.span, PAPER);
    }
    for piece in &design.pieces {
        add(&piece.name, piece.span, PIECE);
        if let Some(greeting) = &piece.greeting {
            add(&greeting.words.value, greeting.words.span, WORDS);
        }
    }
    for layer in &design.layers {
        if design.piece(layer.piece).name != layer.name {
            add(&layer.name, layer.span, LAYER);
        }
    }
    for version in design.versions.iter().filter(|version| !version.name.is_empty()) {
        add(&version.name, version.span, VERSION);
    }
    for note in &design.notes {
        add(&note.text.value, note.text.span, NOTE);
    }
    for idea in &design.leftovers {
        add(&idea.text.value, idea.text.span, IDEA);
    }
    for (texts, place) in [(&design.supplies, SUPPLY), (&design.tools, TOOL)] {
        for text in texts {
            add(&text.value, text.span, place);
        }
    }
    if let Some(imprint) = &design.imprint {
        let name = imprint.name.as_ref().filter(|_| design.designer.is_none());
        let web = imprint.web.as_ref().map(|web| &web.shown);
        for (text, place) in [(name, DESIGNER), (imprint.terms.as_ref(), TERMS), (web, WEB)] {
            let printed =
                text.map(|text| Printed { text: &text.value, span: text.span, place, file: Some(&imprint.file) });
            all.extend(printed);
        }
    }
    all
}
