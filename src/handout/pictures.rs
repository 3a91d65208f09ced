//! Which figure stands where on the pages, and how much room it has there.

use crate::design::model::{PaperId, VersionId};
use crate::drawing::canvas::extent;
use crate::drawing::figures::view::View;
use crate::drawing::figures::{self, Room};
use crate::drawing::scene::{Role, Scene};
use crate::project::Project;

/// Papers that the cut list sets side by side.
const PAPERS_IN_A_ROW: usize = 4;

/// Kept under the lowest ink of a step's picture, nm.
const FOOT: i64 = 1_500_000;

/// The finished front of a version: the first one, which carries the dimensions, takes seven
/// columns, a second one five; of several, the others are small and stand beside the first. A cut
/// list of two rows leaves less height on the front page.
pub(super) fn front(project: &Project, version: VersionId) -> Option<Scene> {
    let width = match (version.0, project.design.versions.len()) {
        (0, _) => 1056,
        // Beside a photo or more, all but the first are small.
        (_, 2) if project.design.photos().next().is_none() => 743,
        _ => 380,
    };
    let height = if project.design.papers.len() > PAPERS_IN_A_ROW { 800 } else { 960 };
    figures::front::front(project, version, Room::tenths_of_mm(width, height))
}

/// Another side of the card or its envelope, finished; the opened inside is wider than the others.
pub(super) fn side(project: &Project, version: VersionId, view: View) -> Option<Scene> {
    let width = if view == View::Inside { 1056 } else { 800 };
    figures::front::face(project, version, view, Room::tenths_of_mm(width, 600))
}

/// A sheet's cutting diagram: an index into the plan's sheets.
pub(super) fn cutting(project: &Project, sheet: usize) -> Option<Scene> {
    figures::sheet::sheet(project, sheet)
}

/// A step's picture: an index into the steps.
pub(super) fn step(project: &Project, step: usize) -> Option<Scene> {
    let mut scene = figures::step::step(project, step)?;
    // No blank foot: the words stand close under the picture.
    if let Some(area) = extent(&scene.items) {
        scene.height = scene.height.min(area.bottom + FOOT);
    }
    Some(scene)
}

/// A paper's hatch in a frame, tenths of a millimetre.
pub(super) fn swatch(project: &Project, paper: PaperId, (width, height): (i64, i64)) -> Scene {
    figures::small::swatch(project, paper, Room::tenths_of_mm(width, height))
}

/// The card's outlines, to colour, at true size or at 1:2; at true size only where two small ones
/// have room beside it.
pub(super) fn outline(project: &Project, large: bool) -> Option<Scene> {
    let card = project.layout.card?;
    let beside = card.width.nm() + card.width.nm() / 2 <= 170 * crate::length::NM_PER_MM;
    let low = card.height.nm() <= 160 * crate::length::NM_PER_MM;
    figures::small::blank_card(project, if large && beside && low { 10 } else { 20 })
}

/// The bars that show whether the print is true.
pub(super) fn print_bars() -> Scene {
    figures::small::print_bars()
}

/// What a cut and a fold look like; both kinds of fold where one of the pictures has the second.
pub(super) fn legend<'s>(mut pictures: impl Iterator<Item = &'s Scene>) -> Scene {
    figures::small::legend(pictures.any(|scene| scene.has(Role::Valley)))
}
