//! True-size sheets written: a tagged PDF to print, a layered PDF and drawings for cutting machines.
//!
//! Takes [`GuideSheet`](crate::guides::model::GuideSheet)s, gives files in which every point stands where the sheet
//! says. Must never work out a place or a size of a guide.
//!
//! Lines tell their meaning by dashes and widths; no file follows a colour code.

mod layered;
mod layers;
mod print;
mod scene;
mod svg;

use crate::project::Project;
use crate::words::{pages, true_size as words};

pub use layered::layered;
pub use print::print;
pub use svg::svg;

/// "Lantern Row, November 2026".
fn title_of(project: &Project) -> String {
    let say = project.words();
    let month = project.design.month.map(|month| pages::month(say, month.value.year, month.value.month));
    pages::file_title(say, &project.design.title.value, month.as_deref())
}

/// Lines below the guides: how to print, and what can hurt.
fn below(project: &Project) -> [String; 2] {
    [words::print_true(project.words()), words::caution(project.words())]
}
