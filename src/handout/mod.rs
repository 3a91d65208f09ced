//! The handout: everything the reader holds, as one tagged PDF.
//!
//! Takes a [`Project`], gives PDF bytes or page images that depend on it alone. The templates in
//! `templates/` decide where a thing stands; `compose` decides what is said and shown; `words`
//! says it.

mod compose;
mod data;
mod pictures;
mod true_size;
mod world;

use crate::project::Project;

pub use data::HandoutData;

/// Sets the handout of a project: US Letter for an edition in inches, A4 for a metric one.
///
/// `draft` gives the findings as plain lines: every page is then marked and they stand on the last.
///
/// # Errors
/// What the typesetter refuses, its warnings included, such as a letter that the bundled faces
/// lack.
pub fn typeset(project: &Project, draft: Option<&[String]>) -> Result<Vec<u8>, String> {
    let json = json(project, draft)?;
    // The file's identity is its content; only a hash of it is written.
    let ident = String::from_utf8_lossy(&json).into_owned();
    // The file is as old as its edition.
    let date = project.design.month.map_or((2000, 1, 1), |month| (i32::from(month.value.year), month.value.month, 1));
    true_size::unscaled(&world::set_pdf(&world::TEMPLATES, json, ident, date)?)
}

/// Each page of a project's handout as a PNG of `ppi` pixels an inch.
///
/// # Errors
/// As [`typeset`].
pub fn page_images(project: &Project, ppi: f32) -> Result<Vec<Vec<u8>>, String> {
    world::set_images(&world::TEMPLATES, json(project, None)?, ppi)
}

/// What the templates read for a project.
#[must_use]
pub fn compose(project: &Project, draft: Option<&[String]>) -> HandoutData {
    compose::compose(project, draft)
}

fn json(project: &Project, draft: Option<&[String]>) -> Result<Vec<u8>, String> {
    serde_json::to_vec(&compose::compose(project, draft))
        .map_err(|error| format!("the pages cannot be written: {error}"))
}
