//! Layers as they show on a card front: outlines, hatching, what covers what.

use crate::design::model::{LayerId, PaperId, Pattern, VersionId};
use crate::drawing::area::Area;
use crate::drawing::canvas::Canvas;
use crate::drawing::hatch::hatch_of;
use crate::drawing::scale::Frame;
use crate::drawing::scene::{Item, Role};
use crate::geometry::Rect;
use crate::project::Project;

/// One copy of a layer as it shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Copy {
    /// Its layer.
    pub(super) layer: LayerId,
    /// Where, as it is.
    pub(super) rect: Rect,
}

/// The copies of some layers, lowest first; trimmed, or as glued down.
pub(super) fn copies(project: &Project, layers: &[LayerId], is_trimmed: impl Fn(LayerId) -> bool) -> Vec<Copy> {
    layers
        .iter()
        .flat_map(|layer| {
            let placed = project.layout.placed(*layer);
            let rects: Vec<Rect> = if is_trimmed(*layer) {
                placed.trimmed.iter().flatten().copied().collect()
            } else {
                placed.copies.clone()
            };
            rects.into_iter().map(|rect| Copy { layer: *layer, rect })
        })
        .collect()
}

/// The paper of a layer in a version.
pub(super) fn paper_of(project: &Project, layer: LayerId, version: VersionId) -> Option<PaperId> {
    project.design.paper_of(project.design.layer(layer).piece, version)
}

/// How far a layer's sign is turned: papers that may be turned keep theirs as it is.
pub(super) fn turns_of(project: &Project, paper: PaperId, quarter_turns: u8) -> u8 {
    if project.design.paper(paper).pattern == Pattern::Any { 0 } else { quarter_turns }
}

/// Draws copies, lowest first, each covering what is below. `hatched` says which are hatched;
/// `plates` are labels that the hatching keeps clear of.
pub(super) fn draw(
    canvas: &mut Canvas,
    project: &Project,
    frame: Frame,
    copies: &[Copy],
    version: VersionId,
    role: impl Fn(LayerId) -> Role,
    hatched: impl Fn(LayerId) -> bool,
    plates: &[Area],
) {
    for (n, copy) in copies.iter().enumerate() {
        let area = frame.area(copy.rect);
        canvas.area(role(copy.layer), area);
        let Some(paper) = paper_of(project, copy.layer, version) else { continue };
        if hatched(copy.layer) {
            let above = copies[n + 1..].iter().map(|upper| frame.area(upper.rect));
            let holes: Vec<Area> = above.chain(plates.iter().copied()).collect();
            let turns = turns_of(project, paper, project.design.layer(copy.layer).quarter_turns);
            canvas.items.extend(hatch_of(&project.design, paper).fill(area, turns, &holes));
        }
    }
    // A pale neighbour's white must not eat half of a strong outline that it only touches.
    for (n, copy) in copies.iter().enumerate().filter(|(_, copy)| role(copy.layer) == Role::Piece) {
        if !copies[n + 1..].iter().any(|upper| upper.rect.overlap(copy.rect).is_some()) {
            let mut points = frame.area(copy.rect).corners().to_vec();
            points.extend_from_within(..2);
            canvas.items.push(Item::Path { role: Role::Piece, points, closed: false });
        }
    }
}
