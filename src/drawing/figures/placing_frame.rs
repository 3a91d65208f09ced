//! A placing frame in use: level on what it lies on, with a piece in its opening.

use super::front::number;
use crate::design::model::{LayerId, Onto};
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, centred};
use crate::drawing::outline::Outline;
use crate::drawing::scale::{Frame, Scale};
use crate::drawing::scene::{Anchor, At, Lettering, Role, Scene};
use crate::drawing::text;
use crate::geometry::Region;
use crate::guides::asked::frame_of;
use crate::guides::frame::outlines;
use crate::project::Project;
use crate::words::{figures as words, guides, places};

const UM: i64 = 1000;
/// The most that a frame takes on the page.
const WIDTH: i64 = 34_000 * UM;
const HEIGHT: i64 = 27_000 * UM;
/// How far a small edge of what lies under the frame looks out, so that both are seen.
const LOOKS_OUT: i64 = 700 * UM;

/// The frame that lays a layer, in use and not to scale: the frame strong, what it lies on a little past it on
/// all sides so that it is seen, the layer's pieces in their openings. None for a layer without a frame.
#[must_use]
pub fn placing_frame(project: &Project, layer: LayerId) -> Option<Scene> {
    let say = project.words();
    let (design, layout) = (&project.design, &project.layout);
    let own = frame_of(design, layout, layer)?;
    let bounds = own.outline.bounds();
    let scale = Scale::to_fit(bounds.width(), bounds.height(), WIDTH, HEIGHT);
    let cap = text::cap_height(Lettering::Small);
    let top = guides::top(say);
    let frame = Frame::new(scale, bounds, At::new(LOOKS_OUT, cap + 2400 * UM + LOOKS_OUT));
    let mut canvas = Canvas::new();
    let area = frame.area(bounds);
    canvas.area(Role::Ghost, area.grown(LOOKS_OUT));
    Outline::of(frame, &own.body)?.draw(&mut canvas, Role::Piece);
    let ring = design.ring(design.layer(layer).piece);
    for copy in outlines(design, layout, layer, own.on)? {
        let laid = Outline::of(frame, &Region::from(&copy))?;
        laid.draw(&mut canvas, Role::Ghost);
        let middle = laid.area().middle();
        let text = ring.to_string();
        // A number where it has room in the piece.
        let room = Area::round(middle, text::width(Lettering::Small, &text) + 800 * UM, cap + 800 * UM);
        if laid.contains(room) {
            canvas.text(Lettering::Small, centred(Lettering::Small, middle), Anchor::Middle, &text);
        }
    }
    let at = At::new(area.middle().x, area.top - LOOKS_OUT - 1200 * UM);
    canvas.text(Lettering::Small, at, Anchor::Middle, &top);
    let ground = match own.on {
        Onto::Layer(below) => design.layer(below).name.clone(),
        Onto::Card => places::side(say, own.face.side(design.card.as_ref()?.fold)),
    };
    let size = bounds.size(design.workshop.ruler.unit());
    let size = format!("{} x {}", number(project, size.width.nm()), number(project, size.height.nm()));
    let alt = words::placing_frame(say, &design.layer(layer).name, &ground, &size, own.openings.parts().len());
    let room = Area::at(0, 0, WIDTH + 2 * LOOKS_OUT, area.bottom + LOOKS_OUT);
    Some(canvas.finish(format!("frame-{}", layer.0 + 1), None, alt, room))
}
