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

/// Copies lying on each other, lowest first, in one version and at one scale.
#[derive(Clone, Copy)]
pub(super) struct Pile<'a> {
    pub(super) project: &'a Project,
    pub(super) frame: Frame,
    pub(super) copies: &'a [Copy],
    pub(super) version: VersionId,
}

impl Pile<'_> {
    fn hatching(&self, n: usize, area: Area, plates: &[Area]) -> Vec<Item> {
        let design = &self.project.design;
        let copy = self.copies[n];
        let Some(paper) = paper_of(self.project, copy.layer, self.version) else { return Vec::new() };
        let above = self.copies[n + 1..].iter().map(|upper| self.frame.area(upper.rect));
        let holes: Vec<Area> = above.chain(plates.iter().copied()).collect();
        let turns = turns_of(self.project, paper, design.layer(copy.layer).quarter_turns);
        hatch_of(design, paper).fill(area, turns, &holes)
    }

    /// Draws the copies, each covering what is below. `hatched` says which are hatched; `plates` are
    /// labels that the hatching keeps clear of.
    pub(super) fn draw(
        &self,
        canvas: &mut Canvas,
        role: impl Fn(LayerId) -> Role,
        hatched: impl Fn(LayerId) -> bool,
        plates: &[Area],
    ) {
        for (n, copy) in self.copies.iter().enumerate() {
            let area = self.frame.area(copy.rect);
            canvas.area(role(copy.layer), area);
            if hatched(copy.layer) {
                canvas.items.extend(self.hatching(n, area, plates));
            }
        }
        // A pale neighbour's white must not eat half of a strong outline that it only touches.
        for (n, copy) in self.copies.iter().enumerate().filter(|(_, copy)| role(copy.layer) == Role::Piece) {
            if !self.copies[n + 1..].iter().any(|upper| upper.rect.overlap(copy.rect).is_some()) {
                let mut points = self.frame.area(copy.rect).corners().to_vec();
                points.extend_from_within(..2);
                canvas.items.push(Item::Path { role: Role::Piece, points, closed: false });
            }
        }
    }

    /// What a lens over `square` shows: the ground and the copies, the strong ones hatched.
    pub(super) fn seen_in(&self, square: Area, ground: (Rect, Role), is_strong: impl Fn(LayerId) -> bool) -> Vec<Item> {
        let mut canvas = Canvas::new();
        let square = square.grown(1_500_000);
        // Outlines end well outside the circle that clips them.
        let cut = |rect: Rect| self.frame.area(rect).common(square.grown(4_000_000));
        if let Some(area) = cut(ground.0) {
            canvas.area(ground.1, area);
        }
        for (n, copy) in self.copies.iter().enumerate() {
            let Some(area) = cut(copy.rect) else { continue };
            let strong = is_strong(copy.layer);
            canvas.area(if strong { Role::Layer } else { Role::Ghost }, area);
            if let Some(area) = area.common(square).filter(|_| strong) {
                canvas.items.extend(self.hatching(n, area, &[]));
            }
        }
        canvas.items
    }
}
