//! The handout: everything the reader holds, as one tagged PDF.
//!
//! Takes a [`Project`], gives PDF bytes or page images that depend on it alone. The templates in
//! `templates/` decide where a thing stands; `compose` decides what is said and shown; `words`
//! says it.

mod compose;
mod data;
mod pictures;
mod templates;
mod true_size;
mod world;

use crate::design::model::Design;
use crate::design::variants::Wanted;
use crate::project::Project;
use serde_json::Value;

pub use data::HandoutData;
pub use templates::{LARGEST_TEMPLATE, TEMPLATE_VERSION, Templates};
pub use true_size::ask_for_true_size;
pub use world::parted;

/// What is told of a design beside its pages.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Told {
    /// Whether every page is marked as a draft, the findings on the last.
    pub draft: bool,
    /// All that was found, as plain lines: for drafts and for the designer's copy.
    pub findings: Vec<String>,
    /// What the design allows, each with its reason, as plain lines: for the designer's copy.
    pub allowed: Vec<String>,
}

impl Told {
    /// Of a draft.
    #[must_use]
    pub fn draft(findings: &[String]) -> Self {
        Self { draft: true, findings: findings.to_vec(), allowed: Vec::new() }
    }
}

/// Sets a handout of a project.
///
/// # Errors
/// What the typesetter refuses, its warnings included, such as a letter that the bundled faces
/// lack.
pub fn typeset(project: &Project, wanted: Wanted, told: &Told) -> Result<Vec<u8>, String> {
    typeset_with(project, wanted, told, &Templates::built_in())
}

/// The same with other templates.
///
/// # Errors
/// As [`typeset`]; a fault of a template comes with its file and line.
pub fn typeset_with(project: &Project, wanted: Wanted, told: &Told, templates: &Templates) -> Result<Vec<u8>, String> {
    let json = json(project, wanted, told)?;
    // The file's identity is its content; only a hash of it is written.
    let stored = compose::stored(project);
    let ident = identity(&json, &stored);
    true_size::unscaled(&world::set_pdf(templates, world::HANDOUT, json, &stored, ident, date_of(&project.design))?)
}

/// A file's date of making, year, month and day: it is as old as its edition.
#[must_use]
pub fn date_of(design: &Design) -> (i32, u8, u8) {
    design.month.map_or((2000, 1, 1), |month| (i32::from(month.value.year), month.value.month, 1))
}

/// Sets other pages than the handout's by the same press: a tagged PDF as [`typeset`] gives, which asks for true
/// size. `main` is the template that they begin with, `data` what it reads.
///
/// # Errors
/// As [`typeset`].
pub fn set_by(templates: &Templates, main: &str, data: &Value, date: (i32, u8, u8)) -> Result<Vec<u8>, String> {
    let json = data.to_string();
    true_size::unscaled(&world::set_pdf(templates, main, json.clone().into_bytes(), &[], json, date)?)
}

/// Each page of a project's handout as a PNG of `ppi` pixels an inch.
///
/// # Errors
/// As [`typeset`].
pub fn page_images(project: &Project, wanted: Wanted, ppi: f32) -> Result<Vec<Vec<u8>>, String> {
    let json = json(project, wanted, &Told::default())?;
    world::set_images(&Templates::built_in(), json, &compose::stored(project), ppi)
}

/// What tells one handout from another: all that stands on its pages.
fn identity(json: &[u8], stored: &[world::Stored]) -> String {
    let mut identity = String::from_utf8_lossy(json).into_owned();
    for (path, picture) in stored {
        identity.push_str(&format!("\n{path} {:032x}", typst::utils::hash128(&picture.bytes)));
    }
    identity
}

/// What the templates read for a project.
#[must_use]
pub fn compose(project: &Project, wanted: Wanted, told: &Told) -> HandoutData {
    compose::compose(project, wanted, told)
}

fn json(project: &Project, wanted: Wanted, told: &Told) -> Result<Vec<u8>, String> {
    serde_json::to_vec(&compose::compose(project, wanted, told))
        .map_err(|error| format!("the pages cannot be written: {error}"))
}
