//! True-size guides: placing frames, templates and score positions, worked out from the layout and laid on pages.
//!
//! Takes the design and its layout, gives [`model::GuideSheet`]s. Must never know a file format or a pen.

pub mod model;
