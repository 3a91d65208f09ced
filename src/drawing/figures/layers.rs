//! Layers as they show on a face: outlines, hatching, what covers what.

use super::view::Ground;
use crate::design::model::{LayerId, PaperId, Pattern, VersionId};
use crate::drawing::area::Area;
use crate::drawing::canvas::Canvas;
use crate::drawing::hatch::hatch_of;
use crate::drawing::outline::{Outline, plain};
use crate::drawing::scale::Frame;
use crate::drawing::scene::{Item, Role};
use crate::geometry::{Angle, Mirror, Rect, Region};
use crate::project::Project;

/// One copy of a layer as it shows.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Copy {
    /// Its layer.
    pub(super) layer: LayerId,
    /// The upright rectangle round it, as it is.
    pub(super) rect: Rect,
    /// All of it, never empty.
    pub(super) region: Region,
    /// How far it is turned.
    pub(super) angle: Angle,
    /// What is left of it where it is still to be trimmed.
    pub(super) kept: Option<Region>,
}

impl Copy {
    fn new(layer: LayerId, region: Region, angle: Angle, kept: Option<Region>) -> Option<Self> {
        let rect = region.bounds()?;
        Some(Self { layer, rect, region, angle, kept })
    }

    /// Whether it is an upright rectangle.
    pub(super) fn is_plain(&self) -> bool {
        plain(&self.region).is_some()
    }

    /// Where it lies on the page.
    pub(super) fn outline(&self, frame: Frame) -> Outline {
        Outline::of(frame, &self.region).unwrap_or_else(|| frame.area(self.rect).into())
    }

    /// Whether the two share an area.
    pub(super) fn overlaps(&self, other: &Self) -> bool {
        self.rect.overlap(other.rect).is_some()
            && (self.is_plain() && other.is_plain() || !self.region.intersection(&other.region).is_empty())
    }

    /// Mirrored left to right within `frame`, as when it is turned over.
    pub(super) fn turned_over(&self, frame: Rect) -> Self {
        let over = |region: &Region| region.mirrored(Mirror::LeftToRight, frame);
        Self {
            rect: self.rect.mirrored(Mirror::LeftToRight, frame),
            region: over(&self.region),
            angle: self.angle.back(),
            kept: self.kept.as_ref().map(over),
            layer: self.layer,
        }
    }
}

/// The copies of those of some layers that lie on a ground, lowest first; trimmed, or as glued down.
pub(super) fn copies(
    project: &Project,
    ground: &Ground,
    layers: &[LayerId],
    is_trimmed: impl Fn(LayerId) -> bool,
) -> Vec<Copy> {
    let mut found = Vec::new();
    for layer in layers {
        let placed = project.layout.placed(*layer);
        let Some((x, y)) = ground.start_of(placed.face) else { continue };
        let trimmed = is_trimmed(*layer);
        let is_trimmed_later = !trimmed && project.design.layer(*layer).trim_flush.is_some();
        for laid in &placed.laid {
            let region = if trimmed { laid.shown.clone() } else { Region::from(&laid.outline) };
            let kept = is_trimmed_later.then(|| laid.shown.moved(x, y));
            found.extend(Copy::new(*layer, region.moved(x, y), laid.angle, kept));
        }
    }
    found
}

/// The paper of a layer in a version.
pub(super) fn paper_of(project: &Project, layer: LayerId, version: VersionId) -> Option<PaperId> {
    project.design.paper_of(project.design.layer(layer).piece, version)
}

/// How far a sign is turned: papers that may be turned keep theirs as it is.
fn turn_of(project: &Project, paper: PaperId, angle: Angle) -> Angle {
    if project.design.paper(paper).pattern == Pattern::Any { Angle::NONE } else { angle }
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
    /// Where each copy lies on the page.
    pub(super) fn outlines(&self) -> Vec<Outline> {
        self.copies.iter().map(|copy| copy.outline(self.frame)).collect()
    }

    fn hatching(&self, n: usize, outline: &Outline, above: &[Outline], plates: &[Area]) -> Vec<Item> {
        let copy = &self.copies[n];
        let Some(paper) = paper_of(self.project, copy.layer, self.version) else { return Vec::new() };
        let holes: Vec<Outline> = above.iter().cloned().chain(plates.iter().copied().map(Outline::from)).collect();
        let angle = turn_of(self.project, paper, copy.angle);
        hatch_of(&self.project.design, paper).fill_outline(outline, angle, &holes)
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
        let outlines = self.outlines();
        for (n, (copy, outline)) in self.copies.iter().zip(&outlines).enumerate() {
            let role = role(copy.layer);
            // What is trimmed off later is dashed, what stays is as strong as any.
            let kept = copy.kept.as_ref().filter(|_| role == Role::Piece);
            outline.draw(canvas, if kept.is_some() { Role::Cover } else { role });
            if hatched(copy.layer) {
                canvas.items.extend(self.hatching(n, outline, &outlines[n + 1..], plates));
            }
            if let Some(kept) = kept {
                outline.stroke(canvas, Role::Hidden);
                if let Some(kept) = Outline::of(self.frame, kept) {
                    kept.stroke(canvas, role);
                }
            }
        }
        // A pale neighbour's white must not eat half of a strong outline that it only touches.
        let strong = |copy: &Copy| role(copy.layer) == Role::Piece && copy.kept.is_none();
        for (n, (copy, outline)) in self.copies.iter().zip(&outlines).enumerate().filter(|(_, (copy, _))| strong(copy))
        {
            if !self.copies[n + 1..].iter().any(|upper| upper.overlaps(copy)) {
                outline.stroke(canvas, Role::Piece);
            }
        }
    }

    /// What a lens 1:1 over `square` shows: the ground and the copies, the strong ones hatched.
    pub(super) fn seen_in(&self, square: Area, ground: (Rect, Role), is_strong: impl Fn(LayerId) -> bool) -> Vec<Item> {
        let mut canvas = Canvas::new();
        let square = square.grown(1_500_000);
        // Outlines end well outside the circle that clips them.
        let far = square.grown(4_000_000);
        if let Some(area) = self.frame.area(ground.0).common(far) {
            canvas.area(ground.1, area);
        }
        let cut = |copy: &Copy, to: Area| {
            let region = copy.region.intersection(&self.frame.at_full_size(to).into());
            Outline::of(self.frame, &region)
        };
        let outlines = self.outlines();
        for (n, copy) in self.copies.iter().enumerate() {
            let Some(outline) = cut(copy, far) else { continue };
            let strong = is_strong(copy.layer);
            outline.draw(&mut canvas, if strong { Role::Layer } else { Role::Ghost });
            if let Some(outline) = cut(copy, square).filter(|_| strong) {
                canvas.items.extend(self.hatching(n, &outline, &outlines[n + 1..], &[]));
            }
        }
        canvas.items
    }
}
