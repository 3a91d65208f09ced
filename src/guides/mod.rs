//! True-size guides: placing frames, templates and score positions, worked out from the layout and laid on pages.
//!
//! Takes the design and its layout, gives [`model::GuideSheet`]s. Must never know a file format or a pen.

pub mod asked;
mod draft;
pub mod frame;
mod frames;
pub mod half;
pub mod model;
mod names;
mod pages;
pub mod scores;
mod split;
mod templates;

use crate::design::model::{Design, Frames};
use crate::design::variants::Page;
use crate::geometry::Region;
use crate::layout::model::Layout;
use draft::{Draft, Known};
use model::GuideSheet;

/// What a title and what stands under it take at most below a guide that is cut small for the page.
const TITLE: i64 = 18_000_000;

/// Every page of guides of a design, for one paper; none where the design has no `frames`.
#[must_use]
pub fn sheets(design: &Design, layout: &Layout, page: Page) -> Vec<GuideSheet> {
    if design.frames == Frames::No {
        return Vec::new();
    }
    let mut drafts: Vec<Draft> = Vec::new();
    for frame in asked::frames(design, layout) {
        let whole = frames::draft(design, &frame);
        if let Some(titled) = as_it_is(design, page, &whole) {
            drafts.push(titled);
            continue;
        }
        let known = [Known::Frame, Known::Half, Known::Part];
        let limits = half::limits(pages::room(design.words(), page, &known), TITLE);
        let halved = half::half(design, &frame, &limits).map(|half| frames::half_draft(design, &frame, &half));
        match halved.and_then(|half| as_it_is(design, page, &half)) {
            Some(half) => drafts.push(half),
            None => drafts.extend(fitted(design, page, &whole, &frame.body)),
        }
    }
    let others = scores::draft(design).into_iter().chain(templates::templates(design));
    for (draft, body) in others.chain(templates::greetings(design, layout)) {
        drafts.extend(fitted(design, page, &draft, &body));
    }
    pages::lay(design, &named_once(drafts), page)
}

/// A guide with its title, where it fits a page by itself.
fn as_it_is(design: &Design, page: Page, draft: &Draft) -> Option<Draft> {
    let titled = draft.clone().titled();
    let bounds = titled.bounds();
    let room = pages::room(design.words(), page, &titled.known);
    pages::fits((bounds.width(), bounds.height()), room).then_some(titled)
}

/// A guide with its title, in parts where it does not fit a page.
fn fitted(design: &Design, page: Page, draft: &Draft, body: &Region) -> Vec<Draft> {
    if let Some(titled) = as_it_is(design, page, draft) {
        return vec![titled];
    }
    let mut known = draft.known.clone();
    known.push(Known::Part);
    let limits = half::limits(pages::room(design.words(), page, &known), TITLE);
    split::split(design.words(), draft, body, &limits).into_iter().map(Draft::titled).collect()
}

/// The guides with a number behind a word that stands there before.
fn named_once(mut drafts: Vec<Draft>) -> Vec<Draft> {
    for at in 1..drafts.len() {
        let (before, rest) = drafts.split_at_mut(at);
        let word = rest[0].word.clone();
        let mut number = 2;
        while before.iter().any(|other| other.word == rest[0].word) {
            rest[0].word = format!("{word}-{number}");
            number += 1;
        }
    }
    drafts
}
