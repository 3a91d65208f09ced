//! Where the words of a piece stand, as far as a layout can tell.
//!
//! A design does not say where on a piece its words are stamped or printed. Common practice, no source: on a
//! label they run along its middle, so that the middle half of it each way must be free; on anything larger
//! they find a free place; a piece that is itself the words is needed whole.

use crate::design::model::{Greeting, How, LayerId};
use crate::geometry::{Rect, Region};
use crate::layout::model::Laid;
use crate::project::Project;
use crate::rules::hand;

/// Every layer of a piece with words.
pub(super) fn each_greeting(project: &Project) -> impl Iterator<Item = (LayerId, &Greeting)> {
    let design = &project.design;
    design.layer_ids().filter_map(|id| Some((id, design.piece(design.layer(id).piece).greeting.as_ref()?)))
}

/// Whether the words of a layer run along its middle, or are the piece itself.
pub(super) fn is_label(project: &Project, id: LayerId, greeting: &Greeting) -> bool {
    let size = project.design.piece(project.design.layer(id).piece).size;
    greeting.how == How::DieCut || size.width.min(size.height).nm() <= hand::widest_label(project.units()).nm()
}

/// The part of one copy that its words need, before anything is trimmed: all of words that are cut out, else
/// the middle half.
pub(super) fn room(project: &Project, id: LayerId, greeting: &Greeting, laid: &Laid) -> Region {
    if greeting.how == How::DieCut {
        return Region::from(&laid.outline);
    }
    let size = project.design.piece(project.design.layer(id).piece).size;
    let (width, height) = (size.width.nm(), size.height.nm());
    let middle = Rect::at(width / 4, height / 4, width - 2 * (width / 4), height - 2 * (height / 4));
    // The middle of a rectangle is that of the upright rectangle round it, however it is turned; near enough for
    // the other forms.
    let about = Rect::at(0, 0, width, height).middle();
    let lies = laid.outline.bounds().middle();
    let turned = Region::from(middle).turned(laid.angle, about);
    let turned = turned.moved(lies.x - about.x, lies.y - about.y);
    turned.intersection(&Region::from(&laid.outline))
}

/// `stamped`, `printed`, `cut out`.
pub(super) const fn made(how: How) -> &'static str {
    match how {
        How::Stamped => "stamped",
        How::Printed => "printed",
        How::DieCut => "cut out",
    }
}
