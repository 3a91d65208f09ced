//! Which figure stands where on the pages, and how much room it has there.

use crate::design::model::{PaperId, VersionId};
use crate::drawing::figures::{self, Room};
use crate::drawing::scene::{At, Item, Role, Scene};
use crate::project::Project;

fn blank(name: String, width: i64, height: i64, scale: Option<u32>) -> Scene {
    let (w, h) = (width, height);
    let at = |x, y| At { x, y };
    Scene {
        alt: name.clone(),
        name,
        width,
        height,
        scale,
        items: vec![Item::Path { role: Role::Sheet, points: vec![at(0, 0), at(w, 0), at(w, h), at(0, h)], closed: true }],
    }
}

const MM: i64 = 1_000_000;

/// The finished front of a version: the first one, which carries the dimensions, takes seven
/// columns, the second one five, each of more a third.
pub(super) fn front(project: &Project, version: VersionId) -> Option<Scene> {
    let width = match (version.0, project.design.versions.len()) {
        (0, _) => 1056,
        (_, 2) => 743,
        _ => 586,
    };
    figures::front::front(project, version, Room::tenths_of_mm(width, 960))
}

/// A sheet's cutting diagram: an index into the plan's sheets.
pub(super) fn cutting(project: &Project, sheet: usize) -> Option<Scene> {
    figures::sheet::sheet(project, sheet)
}

/// A step's picture: an index into the steps.
pub(super) fn step(_: &Project, step: usize) -> Option<Scene> {
    Some(blank(format!("step-{step}"), 56 * MM, 56 * MM, None))
}

/// A paper's hatch in a frame.
pub(super) fn swatch(_: &Project, paper: PaperId, width: i64, height: i64) -> Scene {
    blank(format!("swatch-{}", paper.0), width, height, None)
}

/// A version's outlines, to colour; the first one large.
pub(super) fn outline(_: &Project, version: VersionId, large: bool) -> Option<Scene> {
    let (w, h, s) = if large { (108, 140, 10) } else { (54, 70, 20) };
    Some(blank(format!("outline-{}", version.0), w * MM, h * MM, Some(s)))
}
