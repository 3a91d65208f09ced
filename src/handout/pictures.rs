//! Which figure stands where on the pages, and how much room it has there.

use crate::design::model::{LayerId, PaperId, VersionId};
use crate::design::variants::{Form, Wanted};
use crate::drawing::canvas::extent;
use crate::drawing::figures::ruler;
use crate::drawing::figures::view::View;
use crate::drawing::figures::{self, Room};
use crate::drawing::scale::Print;
use crate::drawing::scene::{Role, Scene};
use crate::length::Length;
use crate::project::Project;
use crate::words::Words;

/// How large figures are printed on a handout.
pub(super) const fn print(wanted: Wanted) -> Print {
    if wanted.large { Print::LARGE } else { Print::NORMAL }
}

/// A figure as it is printed: without hatches where ink is spared.
fn inked(scene: Scene, wanted: Wanted) -> Scene {
    if wanted.fills { scene } else { scene.without_hatches() }
}

/// The whole width of a page, tenths of a millimetre.
const LIVE: i64 = 1840;

/// The whole width of a page in large print, as it is drawn, tenths of a millimetre.
const LARGE_WIDTH: i64 = 1080;

/// Papers that the cut list sets side by side.
const PAPERS_IN_A_ROW: usize = 4;

/// Room for bits of ruler under a diagram, and under the words of a step, nm.
const UNDER_A_MAP: i64 = 74_000_000;
const BESIDE_A_STEP: i64 = 50_000_000;

/// Kept under the lowest ink of a step's picture, nm.
const FOOT: i64 = 1_500_000;

/// Heights of the fronts to choose from, tenths of a millimetre, the largest first: what else stands on the page
/// decides. A cut list of two rows leaves less height.
pub(super) fn front_heights(project: &Project, wanted: Wanted) -> &'static [i64] {
    match wanted.form {
        _ if wanted.large => &[800],
        Form::Leaf => &[800, 700, 620, 560, 500, 450],
        _ if project.design.papers.len() > PAPERS_IN_A_ROW => &[800, 700, 620, 560],
        _ => &[960, 800, 700, 620, 560],
    }
}

/// The finished front of a version: the first one, which carries the dimensions, takes seven
/// columns, a second one five; of several, the others are small and stand beside the first. In large print each has
/// the whole width.
pub(super) fn front(project: &Project, version: VersionId, wanted: Wanted, height: i64) -> Option<Scene> {
    let width = match (version.0, project.design.versions.len()) {
        _ if wanted.large => LARGE_WIDTH,
        (0, _) => 1056,
        // Beside a photo, all but the first are small.
        (_, 2) if wanted.form == Form::Leaf || project.design.photos().next().is_none() => 743,
        _ => 380,
    };
    let room = Room::tenths_of_mm(width, height).printed(print(wanted));
    figures::front::front(project, version, room).map(|scene| inked(scene, wanted))
}

/// Another side of the card or its envelope, finished; the opened inside is wider than the others.
pub(super) fn side(project: &Project, version: VersionId, view: View, alone: bool, wanted: Wanted) -> Option<Scene> {
    let width = match view {
        _ if wanted.large => LARGE_WIDTH,
        View::Inside if alone => LIVE,
        View::Inside => 1056,
        _ => 800,
    };
    let room = Room::tenths_of_mm(width, 600).printed(print(wanted));
    figures::front::face(project, version, view, room).map(|scene| inked(scene, wanted))
}

/// A sheet's cutting diagram: an index into the plan's sheets.
pub(super) fn cutting(project: &Project, sheet: usize, wanted: Wanted) -> Option<Scene> {
    if wanted.form == Form::Leaf {
        return figures::sheet::small_sheet(project, sheet).map(|scene| inked(scene, wanted));
    }
    figures::sheet::sheet(project, sheet, print(wanted)).map(|scene| inked(scene, wanted))
}

/// A step's picture: an index into the steps.
pub(super) fn step(project: &Project, step: usize, wanted: Wanted) -> Option<Scene> {
    let mut scene = figures::step::step(project, step, print(wanted))?;
    // No blank foot: the words stand close under the picture.
    if let Some(area) = extent(&scene.items) {
        scene.height = scene.height.min(area.bottom + FOOT);
    }
    Some(inked(scene, wanted))
}

/// The parts of a sheet that come loose and are cut further.
pub(super) fn loose(project: &Project, sheet: usize, wanted: Wanted) -> Vec<Scene> {
    figures::sheet::loose(project, sheet, print(wanted)).into_iter().map(|scene| inked(scene, wanted)).collect()
}

/// Bits of ruler under a cutting diagram, for the odd sixteenths among its measures.
pub(super) fn ruler_of_sheet(project: &Project, sheet: usize, wanted: Wanted) -> Option<Scene> {
    let rows = project.plan.sheets[sheet].cuts.iter().map(|row| row.measure);
    ruler::rulers(
        project.words(),
        format!("ruler-cutting-{}", sheet + 1),
        &ruler::odd(project.units(), rows),
        UNDER_A_MAP,
        print(wanted),
    )
}

/// The same beside the words of a step.
pub(super) fn ruler_of_step(project: &Project, step: usize, measures: &[Length], wanted: Wanted) -> Option<Scene> {
    let measures = ruler::odd(project.units(), measures.iter().copied());
    ruler::rulers(project.words(), format!("ruler-step-{}", step + 1), &measures, BESIDE_A_STEP, print(wanted))
}

/// The placing frame of a step, in use.
pub(super) fn placing_frame(project: &Project, layer: LayerId, wanted: Wanted) -> Option<Scene> {
    figures::placing_frame::placing_frame(project, layer).map(|scene| inked(scene, wanted))
}

/// A paper's hatch in a frame, tenths of a millimetre.
pub(super) fn swatch(project: &Project, paper: PaperId, (width, height): (i64, i64)) -> Scene {
    figures::small::swatch(project, paper, Room::tenths_of_mm(width, height))
}

/// The card's outlines, to colour, at true size or at 1:2; at true size only where two small ones
/// have room beside it.
pub(super) fn outline(project: &Project, large: bool, wanted: Wanted) -> Option<Scene> {
    let card = project.layout.card?;
    if wanted.large {
        return figures::small::blank_card(project, 20, Print::LARGE);
    }
    let beside = card.width.nm() + card.width.nm() / 2 <= 170 * crate::length::NM_PER_MM;
    let low = card.height.nm() <= 160 * crate::length::NM_PER_MM;
    figures::small::blank_card(project, if large && beside && low { 10 } else { 20 }, Print::NORMAL)
}

/// The bars that show whether the print is true.
pub(super) fn print_bars(say: &Words, wanted: Wanted) -> Scene {
    figures::small::print_bars(say, print(wanted))
}

/// What a cut and a fold look like, where a picture has a fold; both kinds of fold where one has the second.
pub(super) fn legend<'s>(say: &Words, pictures: impl Iterator<Item = &'s Scene> + Clone) -> Option<Scene> {
    let has = |role: Role| pictures.clone().any(|scene| scene.has(role));
    let both_ways = has(Role::Valley);
    (both_ways || has(Role::Fold)).then(|| figures::small::legend(say, both_ways))
}
