//! What an edition holds: names and bytes, made from the projects alone.
//!
//! Takes the checked projects of one design, gives a [`Bundle`]. Must never know a disk.

use crate::cutting::json;
use crate::design::model::{Design, VersionId};
use crate::design::variants::{Form, Page, Wanted};
use crate::drawing::figures::{self, Room};
use crate::guides;
use crate::handout::{self, Templates, Told};
use crate::length::Units;
use crate::preview;
use crate::project::Project;
use crate::side_by_side;
use crate::truesize;
use crate::words::Language;
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// Width of `front-<version>.png`, pixels.
pub const FRONT_PIXELS: u32 = 1200;

/// Room for the front in that picture, tenths of a millimetre: a card at half size with its dimensions.
const FRONT_ROOM: (i64, i64) = (1056, 1200);

/// One edition, ready to be written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Bundle {
    /// The folder's name: `2026-11-lantern-row`, with `-draft` behind it for a draft.
    pub folder: String,
    /// Its files.
    pub files: BTreeMap<PathBuf, Vec<u8>>,
}

/// `letter-inch` or `a4-metric`: the page and the units of an edition, in file names.
#[must_use]
pub const fn edition_name(units: Units) -> &'static str {
    match units {
        Units::Inch => "letter-inch",
        Units::Metric => "a4-metric",
    }
}

/// The file's name of a handout: what it is, its page and units, and what is unlike the usual.
#[must_use]
pub fn handout_name(wanted: Wanted, units: Units, draft: bool) -> String {
    let form = match (wanted.form, draft) {
        (Form::Handout, false) => "handout",
        (Form::Handout, true) => "draft",
        (Form::Leaf, false) => "leaf",
        (Form::Leaf, true) => "draft-leaf",
        (Form::DesignersCopy, false) => "designers-copy",
        (Form::DesignersCopy, true) => "draft-designers-copy",
        (Form::TryOut, false) => "try-out",
        (Form::TryOut, true) => "draft-try-out",
    };
    let page = wanted.page.unwrap_or(Page::usual(units)).word();
    let units = units.word();
    let large = if wanted.large { "-large-print" } else { "" };
    let fills = if wanted.fills { "" } else { "-without-fills" };
    format!("{form}-{page}-{units}{large}{fills}.pdf")
}

/// The file's name in a language that is not the design's first: `handout-a4-metric-de.pdf`.
#[must_use]
pub fn in_language(name: &str, language: Language) -> String {
    let (stem, end) = name.rsplit_once('.').unwrap_or((name, "pdf"));
    format!("{stem}-{}.{end}", language.tag())
}

/// The name, without its ending, of a file of true-size guides: `true-size-letter-inch`, `draft-cut-file-a4-metric`.
fn guides_name(what: &str, units: Units, draft: bool) -> String {
    format!("{}{what}-{}", if draft { "draft-" } else { "" }, edition_name(units))
}

/// The files of a project's true-size guides in its language, by name: sheets to print, the layered file, a drawing a
/// guide. None where the design asks for no guides.
fn true_size(project: &Project, draft: bool, templates: &Templates) -> Result<Vec<(String, Vec<u8>)>, String> {
    let units = project.units();
    let sheets = guides::sheets(&project.design, &project.layout, Page::usual(units));
    if sheets.is_empty() {
        return Ok(Vec::new());
    }
    let cut_file = guides_name("cut-file", units, draft);
    let mut files = vec![
        (
            format!("{}.pdf", guides_name("true-size", units, draft)),
            truesize::print(project, &sheets, draft, templates)?,
        ),
        (format!("{cut_file}.pdf"), truesize::layered(project, &sheets, draft)?),
    ];
    let lang = project.words().language().tag();
    for guide in sheets.iter().flat_map(|sheet| &sheet.guides) {
        files.push((format!("{cut_file}-{}.svg", file_word(&guide.word)), truesize::svg(guide, lang).into_bytes()));
    }
    Ok(files)
}

/// Makes everything that an edition holds: the usual handout of each project, those that the design asks for and
/// those `also` wanted, in each of its languages. A draft's folder is another one, so that it never replaces an edition.
///
/// # Errors
/// What could not be made and why, in one sentence.
pub fn bundle(projects: &[Project], stem: &str, also: &[Wanted], told: &Told) -> Result<Bundle, String> {
    bundle_with(projects, stem, also, told, &Templates::built_in())
}

/// The same with other templates.
///
/// # Errors
/// As [`bundle`].
pub fn bundle_with(
    projects: &[Project],
    stem: &str,
    also: &[Wanted],
    told: &Told,
    templates: &Templates,
) -> Result<Bundle, String> {
    let first = projects.first().ok_or("there is nothing to publish")?;
    let month = first.design.month.map_or_else(|| "undated".to_owned(), |month| month.value.to_string());
    let folder_tail = if told.draft { "-draft" } else { "" };
    let mut files = BTreeMap::new();
    let told_in: Vec<(usize, Cow<'_, Project>)> = projects
        .iter()
        .flat_map(|project| project.design.languages.iter().enumerate().map(|(n, own)| (n, project.told_in(*own))))
        .collect();
    let mut jobs: Vec<(PathBuf, &Project, Wanted)> = Vec::new();
    for (number, project) in &told_in {
        for wanted in [Wanted::HANDOUT].iter().chain(&first.design.handouts).chain(also) {
            let name = handout_name(*wanted, project.units(), told.draft);
            let name = if *number == 0 { name } else { in_language(&name, project.words().language()) };
            // One page may be the usual one and asked for by its name.
            if !jobs.iter().any(|(other, ..)| *other == Path::new(&name)) {
                jobs.push((PathBuf::from(name), project, *wanted));
            }
        }
    }
    side_by_side::each(
        &jobs,
        |(_, project, wanted)| handout::typeset_with(project, *wanted, told, templates),
        |(name, ..), bytes| {
            files.insert(name.clone(), bytes?);
            Ok::<(), String>(())
        },
    )?;
    side_by_side::each(
        &told_in,
        |(_, project)| true_size(project, told.draft, templates),
        |(number, project), made| {
            for (name, bytes) in made? {
                let name = if *number == 0 { name } else { in_language(&name, project.words().language()) };
                files.insert(PathBuf::from(name), bytes);
            }
            Ok::<(), String>(())
        },
    )?;
    for project in projects {
        let plan = json::to_json(&project.design, &project.plan);
        files.insert(PathBuf::from(format!("plan-{}.json", edition_name(project.units()))), pretty(&plan)?);
    }
    let told = first.told_in(first.design.words().language());
    for (version, name) in first.design.version_ids().zip(front_names(&first.design)) {
        files.insert(PathBuf::from(name), front_png(&told, version)?);
    }
    Ok(Bundle { folder: format!("{month}-{stem}{folder_tail}"), files })
}

/// The front of a version as a picture.
///
/// # Errors
/// What the renderer says.
pub fn front_png(project: &Project, version: VersionId) -> Result<Vec<u8>, String> {
    let room = Room::tenths_of_mm(FRONT_ROOM.0, FRONT_ROOM.1);
    let scene = figures::front::front(project, version, room).ok_or("the design has no card to draw")?;
    preview::png_in(&scene, FRONT_PIXELS, project.design.accents())
}

fn pretty(value: &serde_json::Value) -> Result<Vec<u8>, String> {
    let mut bytes = serde_json::to_vec_pretty(value).map_err(|error| error.to_string())?;
    bytes.push(b'\n');
    Ok(bytes)
}

/// `front-dusk.png` for each version; `front.png` where the versions have no names. Two names that
/// come to the same file name are told apart by a number.
#[must_use]
pub fn front_names(design: &Design) -> Vec<String> {
    let mut names: Vec<String> = Vec::new();
    for version in &design.versions {
        let slug = file_word(&version.name);
        let base = if slug.is_empty() { "front".to_owned() } else { format!("front-{slug}") };
        let mut name = format!("{base}.png");
        let mut number = 2;
        while names.contains(&name) {
            name = format!("{base}-{number}.png");
            number += 1;
        }
        names.push(name);
    }
    names
}

/// A name as a part of a file name: lower case, letters, digits and single hyphens only, at most 60
/// characters, so that nothing a designer types can climb out of the folder.
#[must_use]
pub fn file_word(name: &str) -> String {
    let mut word = String::new();
    for letter in name.to_lowercase().chars().take(60) {
        if letter.is_alphanumeric() {
            word.push(letter);
        } else if !word.is_empty() && !word.ends_with('-') {
            word.push('-');
        }
    }
    word.trim_end_matches('-').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_cannot_climb() {
        assert_eq!(file_word("../../Dusk & Ember!"), "dusk-ember");
        assert_eq!(file_word("Frühling 2"), "frühling-2");
        assert_eq!(file_word("///"), "");
    }
}
