//! The faces as they are drawn: what lies under the layers, and where each face begins on it.

use crate::design::model::{Card, Face, Fold};
use crate::drawing::canvas::Canvas;
use crate::drawing::outline::Outline;
use crate::drawing::scale::Frame;
use crate::drawing::scene::{At, Role};
use crate::geometry::{Edge, Point, Rect};
use crate::project::Project;

/// What one figure looks at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum View {
    /// The folded front.
    Front,
    /// The whole inside, opened flat.
    Inside,
    /// The back of the folded card.
    Back,
    /// The side of the envelope that the address is written on.
    EnvelopeFront,
    /// The back of the envelope, its flap closed.
    EnvelopeFlap,
}

impl View {
    /// Every view, the front first.
    pub const ALL: [Self; 5] = [Self::Front, Self::Inside, Self::Back, Self::EnvelopeFront, Self::EnvelopeFlap];

    /// The view that shows a face.
    #[must_use]
    pub const fn of(face: Face) -> Self {
        match face {
            Face::Front => Self::Front,
            Face::Inside(_) => Self::Inside,
            Face::Back => Self::Back,
            Face::EnvelopeFront => Self::EnvelopeFront,
            Face::EnvelopeFlap => Self::EnvelopeFlap,
        }
    }

    /// The start of the names of its scenes.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Front => "front",
            Self::Inside => "inside",
            Self::Back => "back",
            Self::EnvelopeFront => "envelope-front",
            Self::EnvelopeFlap => "envelope-flap",
        }
    }

    /// Whether it is a side of the card, not of its envelope.
    #[must_use]
    pub const fn is_card(self) -> bool {
        matches!(self, Self::Front | Self::Inside | Self::Back)
    }
}

/// The views of a project that have something on them: the front of a card always, others where a layer
/// lies on them.
#[must_use]
pub fn views(project: &Project) -> Vec<View> {
    let has = |view: &View| match view {
        View::Front => project.layout.card.is_some(),
        view => project.design.layers.iter().any(|layer| View::of(layer.face) == *view),
    };
    View::ALL.into_iter().filter(has).collect()
}

/// What the layers of a view lie on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Ground {
    pub(super) view: View,
    /// All of it, as it is; its lower left corner is the origin.
    pub(super) rect: Rect,
    /// Folds, and edges within it.
    lines: Vec<(Role, Point, Point)>,
    /// The panels of an inside; the flap of an envelope's back.
    parts: Vec<Rect>,
}

impl Ground {
    /// None where the project has no such face.
    pub(super) fn of(project: &Project, view: View) -> Option<Self> {
        let design = &project.design;
        let bare = |rect| Self { view, rect, lines: Vec::new(), parts: Vec::new() };
        if let View::EnvelopeFront | View::EnvelopeFlap = view {
            let rect = Rect::of(design.envelope.as_ref()?.size);
            let mut ground = bare(rect);
            if view == View::EnvelopeFlap {
                let flap = project.layout.face(Face::EnvelopeFlap);
                let flap = flap.moved(0, rect.top - flap.top);
                ground.lines =
                    vec![(Role::Layer, Point::new(flap.left, flap.bottom), Point::new(flap.right, flap.bottom))];
                ground.parts = vec![flap];
            }
            return Some(ground);
        }
        let front = Rect::of(project.layout.card?);
        let Some(Card { size, fold, .. }) = design.card.as_ref() else { return Some(bare(front)) };
        match view {
            View::Inside => {
                let mut ground = bare(Rect::of(fold.flat(*size)));
                ground.parts = fold.panels(*size);
                ground.lines = folds_inside(
                    *fold,
                    &ground.parts,
                    &fold.scores(*size).iter().map(|s| s.mountain).collect::<Vec<_>>(),
                );
                Some(ground)
            }
            View::Front if *fold == Fold::Gate => {
                let middle = front.middle().x;
                let opening = (Role::Layer, Point::new(middle, front.bottom), Point::new(middle, front.top));
                Some(Self { lines: vec![opening], ..bare(front) })
            }
            _ => Some(bare(front)),
        }
    }

    /// Where the origin of a face lies; none where it belongs to another view.
    pub(super) fn start_of(&self, face: Face) -> Option<(i64, i64)> {
        if View::of(face) != self.view {
            return None;
        }
        let part = match face {
            Face::Inside(Some(panel)) => self.parts.get(usize::try_from(panel).ok()?)?,
            Face::EnvelopeFlap => self.parts.first()?,
            _ => return Some((0, 0)),
        };
        Some((part.left, part.bottom))
    }

    /// A rectangle of a face, where it lies on this ground.
    pub(super) fn rect_of(&self, face: Face, rect: Rect) -> Rect {
        let (x, y) = self.start_of(face).unwrap_or((0, 0));
        rect.moved(x, y)
    }

    /// Its folds, and the edges within it.
    pub(super) fn lines_on(&self, frame: Frame) -> Vec<(At, At)> {
        self.lines.iter().map(|(_, from, to)| (frame.point(*from), frame.point(*to))).collect()
    }

    /// The panels or the flap that its folds and edges bound.
    pub(super) fn parts_on(&self, frame: Frame) -> Vec<Outline> {
        self.parts.iter().map(|part| frame.area(*part).into()).collect()
    }

    /// The edge that is folded, where it is one of its outer edges.
    pub(super) fn fold_edge(&self, project: &Project) -> Option<Edge> {
        let fold = project.design.card.as_ref()?.fold;
        let edge = match fold {
            Fold::Side | Fold::Accordion { .. } => Edge::Left,
            Fold::Top => Edge::Top,
            Fold::None | Fold::Gate => return None,
        };
        match self.view {
            View::Front => Some(edge),
            // Turned over like a page.
            View::Back if fold == Fold::Side => Some(Edge::Right),
            View::Back if fold == Fold::Top => Some(Edge::Top),
            _ => None,
        }
    }

    /// Draws it.
    pub(super) fn draw(&self, canvas: &mut Canvas, frame: Frame, role: Role) {
        canvas.area(role, frame.area(self.rect));
        for (own, from, to) in &self.lines {
            let role = if *own == Role::Layer { role } else { *own };
            canvas.line(role, frame.point(*from), frame.point(*to));
        }
    }
}

/// The folds between panels as somebody sees them who looks at the inside.
fn folds_inside(fold: Fold, panels: &[Rect], mountains: &[bool]) -> Vec<(Role, Point, Point)> {
    let several = mountains.len() > 1;
    // Panels are told from the other side, so left and right have changed places.
    let of = |n: usize| if fold == Fold::Top { n } else { mountains.len() - 1 - n };
    let role = |n: usize| if several && mountains[of(n)] { Role::Valley } else { Role::Fold };
    let between = panels.iter().take(mountains.len()).enumerate();
    between
        .map(|(n, panel)| {
            if fold == Fold::Top {
                (role(n), Point::new(panel.left, panel.bottom), Point::new(panel.right, panel.bottom))
            } else {
                (role(n), Point::new(panel.right, panel.top), Point::new(panel.right, panel.bottom))
            }
        })
        .collect()
}
