//! The typesetter's world: bundled faces, templates, one virtual data file, pictures beside it.
//!
//! Takes the data of one handout as JSON, gives laid-out pages and their PDF. Must never know a
//! design, read a file or ask the clock.

use std::sync::{Arc, LazyLock};

use serde_json::Value;
use typst::diag::{FileError, FileResult, Severity, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration, Smart};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Features, Library, LibraryExt, World, WorldExt};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};

use super::templates::Templates;
use crate::fonts::FACES;
use crate::picture::Picture;

/// The template of the handout.
pub(super) const HANDOUT: &str = "/handout.typ";

/// The templates, by virtual path.
pub(super) const TEMPLATES: [(&str, &str); 14] = [
    (HANDOUT, include_str!("../../templates/handout.typ")),
    ("/look.typ", include_str!("../../templates/look.typ")),
    ("/words.typ", include_str!("../../templates/words.typ")),
    ("/scene.typ", include_str!("../../templates/scene.typ")),
    ("/pack.typ", include_str!("../../templates/pack.typ")),
    ("/front.typ", include_str!("../../templates/front.typ")),
    ("/cutting.typ", include_str!("../../templates/cutting.typ")),
    ("/together.typ", include_str!("../../templates/together.typ")),
    ("/supplies.typ", include_str!("../../templates/supplies.typ")),
    ("/swatch.typ", include_str!("../../templates/swatch.typ")),
    ("/leaf.typ", include_str!("../../templates/leaf.typ")),
    ("/try-out.typ", include_str!("../../templates/try-out.typ")),
    ("/proof.typ", include_str!("../../templates/proof.typ")),
    ("/true-size.typ", include_str!("../../templates/true-size.typ")),
];

/// Where the templates find the data.
const DATA: &str = "/data.json";

/// Where they find what is drawn in each picture.
const DRAWN: &str = "/drawn.json";

static LIBRARY: LazyLock<LazyHash<Library>> = LazyLock::new(|| {
    let features: Features = std::iter::once(Feature::A11yExtras).collect();
    LazyHash::new(Library::builder().with_features(features).build())
});

static FONTS: LazyLock<(LazyHash<FontBook>, Vec<Font>)> = LazyLock::new(|| {
    let fonts: Vec<Font> = FACES.iter().flat_map(|(_, _, bytes)| Font::iter(Bytes::new(*bytes))).collect();
    (LazyHash::new(FontBook::from_fonts(&fonts)), fonts)
});

/// A world that holds nothing but what was put into it.
struct Press {
    main: FileId,
    sources: Vec<(FileId, Source)>,
    data: [(FileId, Bytes); 2],
    pictures: Vec<(FileId, Bytes)>,
}

/// A picture that the pages show: where the data says that it lies, and what it holds.
pub(super) type Stored = (String, Arc<Picture>);

fn file_id(path: &str) -> Result<FileId, String> {
    let path = VirtualPath::new(path).map_err(|error| format!("`{path}` is no template path: {error:?}"))?;
    Ok(RootedPath::new(VirtualRoot::Project, path).intern())
}

impl Press {
    fn new(templates: &Templates, main: &str, json: Vec<u8>, stored: &[Stored]) -> Result<Self, String> {
        let mut sources = Vec::new();
        for (path, text) in templates.sources() {
            let id = file_id(path)?;
            sources.push((id, Source::new(id, text.to_owned())));
        }
        let main = file_id(main)?;
        let mut pictures = Vec::with_capacity(stored.len());
        for (path, picture) in stored {
            pictures.push((file_id(path)?, Bytes::new(picture.bytes.clone())));
        }
        let [data, drawn] = parted(&json).map_err(|error| format!("the pages cannot be written: {error}"))?;
        let data = [(file_id(DATA)?, Bytes::new(data)), (file_id(DRAWN)?, Bytes::new(drawn))];
        Ok(Self { main, sources, data, pictures })
    }
}

/// The data without what is drawn in its pictures, and a list of that: each picture's `items` are its place in
/// the list. Pages pass pictures from hand to hand, and the typesetter weighs all that a function is given.
///
/// # Errors
/// Data that is no JSON.
pub fn parted(json: &[u8]) -> serde_json::Result<[Vec<u8>; 2]> {
    fn part(value: &mut Value, drawn: &mut Vec<Value>) {
        match value {
            Value::Object(fields) => {
                let is_picture = ["width", "height", "alt"].iter().all(|field| fields.contains_key(*field));
                if let Some(items @ Value::Array(_)) = fields.get_mut("items").filter(|_| is_picture) {
                    drawn.push(std::mem::replace(items, Value::from(drawn.len())));
                } else {
                    fields.values_mut().for_each(|field| part(field, drawn));
                }
            }
            Value::Array(values) => values.iter_mut().for_each(|value| part(value, drawn)),
            _ => {}
        }
    }
    let (mut data, mut drawn) = (serde_json::from_slice(json)?, Vec::new());
    part(&mut data, &mut drawn);
    Ok([serde_json::to_vec(&data)?, serde_json::to_vec(&drawn)?])
}

impl World for Press {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &FONTS.0
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        self.sources
            .iter()
            .find(|(source, _)| *source == id)
            .map(|(_, source)| source.clone())
            .ok_or_else(|| FileError::NotFound(id.vpath().get_without_slash().into()))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        if let Some((_, bytes)) = self.data.iter().find(|(data, _)| *data == id) {
            return Ok(bytes.clone());
        }
        if let Some((_, bytes)) = self.pictures.iter().find(|(picture, _)| *picture == id) {
            return Ok(bytes.clone());
        }
        self.source(id).map(|source| Bytes::from_string(source.text().to_owned()))
    }

    fn font(&self, index: usize) -> Option<Font> {
        FONTS.1.get(index).cloned()
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}

/// What the typesetter says, one message a line, with the template and line it points at.
fn told(press: &Press, diagnostics: &[SourceDiagnostic]) -> String {
    let line = |diagnostic: &SourceDiagnostic| {
        let kind = match diagnostic.severity {
            Severity::Error => "error",
            Severity::Warning => "warning",
        };
        let place = diagnostic.span.id().and_then(|id| {
            let source = press.source(id).ok()?;
            let at = press.range(diagnostic.span)?.start;
            Some(format!(" ({}:{})", id.vpath().get_without_slash(), source.lines().byte_to_line(at)? + 1))
        });
        let hints: String = diagnostic.hints.iter().map(|hint| format!("; {}", hint.v)).collect();
        format!("{kind}: {}{}{hints}", diagnostic.message, place.unwrap_or_default())
    };
    diagnostics.iter().map(line).collect::<Vec<_>>().join("\n")
}

/// How many handouts ago something was last of use when it is forgotten: several may be set side by side, and what
/// one of them works with must outlast the end of the others.
const KEPT: usize = 2;

/// Gives the memory of earlier handouts back, also when typesetting fails.
struct Forget;

impl Drop for Forget {
    fn drop(&mut self) {
        typst::comemo::evict(KEPT);
    }
}

fn lay_out(press: &Press) -> Result<PagedDocument, String> {
    let result = typst::compile::<PagedDocument>(press);
    let document = result.output.map_err(|errors| told(press, &errors))?;
    // A warning is a missing face or a layout that did not settle: the page would not be the one
    // that was checked.
    if result.warnings.is_empty() { Ok(document) } else { Err(told(press, &result.warnings)) }
}

/// Sets pages as a PDF/UA-1 and PDF/A-2a file whose bytes depend on the arguments alone.
///
/// `main` is the template that the pages begin with; `date` the file's date of making: year, month, day.
///
/// # Errors
/// What the typesetter refuses, its warnings included; always a fault of a template or of the data
/// it was given, with the place in the template.
pub(super) fn set_pdf(
    templates: &Templates,
    main: &str,
    json: Vec<u8>,
    stored: &[Stored],
    ident: String,
    date: (i32, u8, u8),
) -> Result<Vec<u8>, String> {
    let _forget = Forget;
    let press = Press::new(templates, main, json, stored)?;
    let document = lay_out(&press)?;
    let made = Datetime::from_ymd_hms(date.0, date.1, date.2, 0, 0, 0);
    let options = PdfOptions {
        ident: Smart::Custom(ident),
        creator: Smart::Custom(Some("trimwright".to_owned())),
        timestamp: made.map(Timestamp::new_utc),
        standards: PdfStandards::new(&[PdfStandard::Ua_1, PdfStandard::A_2a])
            .map_err(|error| error.message().to_string())?,
        ..PdfOptions::default()
    };
    typst_pdf::pdf(&document, &options).map_err(|errors| told(&press, &errors))
}

/// Draws each page as a PNG of `ppi` pixels an inch.
///
/// # Errors
/// As [`set_pdf`].
pub(super) fn set_images(
    templates: &Templates,
    json: Vec<u8>,
    stored: &[Stored],
    ppi: f32,
) -> Result<Vec<Vec<u8>>, String> {
    let _forget = Forget;
    let press = Press::new(templates, HANDOUT, json, stored)?;
    let document = lay_out(&press)?;
    let options = typst_render::RenderOptions { pixel_per_pt: (f64::from(ppi) / 72.0).into(), ..Default::default() };
    document
        .pages()
        .iter()
        .map(|page| typst_render::render(page, &options).encode_png().map_err(|error| error.to_string()))
        .collect()
}
