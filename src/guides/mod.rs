//! True-size guides: placing frames, templates and score positions, worked out from the layout and laid on pages.
//!
//! Takes the design and its layout, gives [`model::GuideSheet`]s. Must never know a file format or a pen.

mod draft;
pub mod frame;
mod frames;
pub mod model;
mod names;
mod pages;

use crate::design::model::{Design, LayerId, Onto};
use crate::design::variants::Page;
use crate::layout::model::Layout;
use draft::Draft;
use model::GuideSheet;

/// Every page of guides of a design, for one paper; none where no guide is asked for.
#[must_use]
pub fn sheets(design: &Design, layout: &Layout, page: Page) -> Vec<GuideSheet> {
    let frames: Vec<Draft> = asked(design, layout)
        .iter()
        .filter_map(|(layers, on)| frame::frame(design, layout, layers, *on).ok())
        .map(|frame| frames::draft(design, &frame).titled())
        .collect();
    pages::lay(design, &frames, page)
}

/// The frames that are asked for.
fn asked(design: &Design, layout: &Layout) -> Vec<(Vec<LayerId>, Onto)> {
    design
        .layer_ids()
        .filter_map(|layer| {
            let grounds = frame::grounds(design, layer);
            let on = grounds.into_iter().find(|on| frame::frame(design, layout, &[layer], *on).is_ok())?;
            Some((vec![layer], on))
        })
        .collect()
}
