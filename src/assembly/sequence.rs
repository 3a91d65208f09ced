//! Design, layout and plan to steps, in batch order.
//!
//! Common practice of the trade, no source: print what is printed; cut everything; make shapes and
//! windows; stamp greetings; score and fold all; sort into a pile for each card; then the front, the
//! inside and the back, on each the small units put together first, then layered, then decorated; the
//! envelope last.

use super::model::{Action, Step, Steps};
use crate::cutting::halves::{Halves, of_piece};
use crate::cutting::plan::CutPlan;
use crate::design::model::{Design, Face, Fold, From, How, LayerId, NoteOn, Onto, PieceId, Work};

/// The steps of the whole job. Must never know a word of any language.
#[must_use]
pub fn sequence(design: &Design, plan: &CutPlan) -> Steps {
    let mut order = Sequence { design, steps: Vec::new() };
    order.printing();
    order.cutting(plan);
    order.finishing();
    order.stamping();
    order.folding();
    order.sorting();
    let is_envelope = |face: Face| matches!(face, Face::EnvelopeFront | Face::EnvelopeFlap);
    let mut faces: Vec<Vec<LayerId>> = Vec::new();
    for kind in [is_front, is_inside, is_back, is_envelope] {
        faces.push(design.layer_ids().filter(|id| kind(design.layer(*id).face)).collect());
    }
    let envelope = faces.pop().unwrap_or_default();
    for face in &faces {
        order.side(face);
    }
    order.decorating();
    order.side(&envelope);
    order.finish()
}

const fn is_front(face: Face) -> bool {
    matches!(face, Face::Front)
}

const fn is_inside(face: Face) -> bool {
    matches!(face, Face::Inside(_))
}

const fn is_back(face: Face) -> bool {
    matches!(face, Face::Back)
}

struct Sequence<'a> {
    design: &'a Design,
    steps: Vec<Step>,
}

impl Sequence<'_> {
    fn push(&mut self, work: Work, action: Action, times: u32) -> &mut Step {
        self.steps.push(Step { number: None, work, action, times, notes: Vec::new(), checkpoint: Vec::new() });
        let last = self.steps.len() - 1;
        &mut self.steps[last]
    }

    fn cards(&self) -> u32 {
        self.design.cards.value
    }

    fn cutting(&mut self, plan: &CutPlan) {
        for (sheet, cut) in plan.sheets.iter().enumerate() {
            let times = u32::try_from(cut.numbers.len()).unwrap_or(u32::MAX);
            let step = self.push(Work::Cutting, Action::Cut { sheet }, times);
            step.checkpoint = cut.pieces().into_iter().map(|(piece, count)| (piece, count * times)).collect();
        }
    }

    fn with_words(&self, how: How) -> Vec<PieceId> {
        let has = |piece: &PieceId| self.design.piece(*piece).greeting.as_ref().is_some_and(|words| words.how == how);
        self.design.piece_ids().filter(has).collect()
    }

    /// Words are printed while the paper is whole: a printer takes no small pieces.
    fn printing(&mut self) {
        for piece in self.with_words(How::Printed) {
            let times = self.wanted(piece);
            self.push(Work::Printing, Action::Print { piece }, times);
        }
    }

    fn wanted(&self, piece: PieceId) -> u32 {
        self.design.per_card(piece).saturating_mul(self.cards())
    }

    /// Windows first, while the paper is whole and easy to hold; what is cut from a window's waste last.
    fn finishing(&mut self) {
        let design = self.design;
        let rank = |id: &PieceId| {
            let piece = design.piece(*id);
            match piece.from {
                From::Window(..) => 2,
                _ if piece.shape.windows.is_empty() => 1,
                _ => 0,
            }
        };
        let mut pieces: Vec<PieceId> = design.piece_ids().filter(|id| is_finished_by_hand(design, *id)).collect();
        pieces.sort_by_key(rank);
        for piece in pieces {
            // The other halves come with the rectangles of the first.
            let rectangles = shared_rectangles(design, piece)
                .iter()
                .filter(|halves| halves.piece == piece)
                .fold(0, |all: u32, halves| all.saturating_add(halves.rectangles));
            for (shared, times) in [(true, rectangles), (false, by_themselves(design, piece))] {
                if times > 0 {
                    self.push(Work::Finishing, Action::Finish { piece, shared }, times);
                }
            }
        }
    }

    fn stamping(&mut self) {
        for piece in self.with_words(How::Stamped) {
            let times = self.wanted(piece);
            self.push(Work::Stamping, Action::Stamp { piece }, times);
        }
    }

    fn folding(&mut self) {
        if let Some(card) = &self.design.card
            && card.fold != Fold::None
        {
            let (piece, times) = (card.base, self.cards());
            self.push(Work::Folding, Action::ScoreAndFold { piece }, times);
        }
    }

    fn sorting(&mut self) {
        if self.design.has_front && self.cards() > 1 {
            let checkpoint: Vec<(PieceId, u32)> = self
                .design
                .piece_ids()
                .map(|piece| (piece, self.design.per_card(piece)))
                .filter(|(_, count)| *count > 0)
                .collect();
            let times = self.cards();
            self.push(Work::Sorting, Action::Sort, times).checkpoint = checkpoint;
        }
    }

    /// One side: its units, then its layers in the order written; decorations that no paper follows are
    /// decorating.
    fn side(&mut self, layers: &[LayerId]) {
        let top: Vec<LayerId> = layers.iter().copied().filter(|id| self.design.layer(*id).unit.is_none()).collect();
        for layer in &top {
            self.unit(*layer);
        }
        let is_bought = |id: &LayerId| self.design.piece(self.design.layer(*id).piece).from == From::Bought;
        let papers = top.iter().rposition(|id| !is_bought(id)).map_or(0, |last| last + 1);
        let on_the_card = self.trimmed_within(None);
        for (at, layer) in top.iter().enumerate() {
            let work = if at < papers { Work::Layering } else { Work::Decorating };
            self.glue(*layer, work, false);
            for trimmed in on_the_card.iter().filter(|trimmed| outermost(self.design, **trimmed) == *layer) {
                self.trim(*trimmed, work, false);
            }
        }
    }

    /// Everything that is put together on a layer before that layer is glued down.
    fn unit(&mut self, base: LayerId) {
        let members: Vec<LayerId> =
            self.design.layer_ids().filter(|id| self.design.layer(*id).unit == Some(base)).collect();
        if members.is_empty() {
            return;
        }
        for member in &members {
            self.unit(*member);
            self.glue(*member, Work::Units, true);
        }
        // All of a unit's trimming at once, face down, when everything on it is glued.
        for trimmed in self.trimmed_within(Some(base)) {
            self.trim(trimmed, Work::Units, true);
        }
        let (piece, cards) = (self.design.layer(base).piece, self.cards());
        let count = self.design.layer(base).count() * cards;
        if let Some(last) = self.steps.last_mut() {
            last.checkpoint = vec![(piece, count)];
        }
    }

    /// The layers that are trimmed when a unit is put together, or when all of it is on the card.
    fn trimmed_within(&self, unit: Option<LayerId>) -> Vec<LayerId> {
        let is_trimmed = |id: &LayerId| self.design.layer(*id).trim_flush.is_some();
        self.design.layer_ids().filter(|id| is_trimmed(id) && trimmed_with(self.design, *id) == unit).collect()
    }

    fn glue(&mut self, layer: LayerId, work: Work, loose: bool) {
        let times = self.cards();
        self.push(work, Action::Glue { layer, loose }, times);
    }

    fn trim(&mut self, layer: LayerId, work: Work, loose: bool) {
        let times = self.cards();
        self.push(work, Action::Trim { layer, loose }, times);
    }

    fn decorating(&mut self) {
        for (note, text) in self.design.notes.iter().enumerate() {
            if text.on == NoteOn::Work(Work::Decorating) {
                let times = self.cards();
                self.push(Work::Decorating, Action::Decorate { note }, times);
            }
        }
    }

    /// Numbers the steps and puts each note before the step it concerns.
    fn finish(mut self) -> Steps {
        let mut number = 0;
        for step in &mut self.steps {
            if step.work != Work::Cutting {
                number += 1;
                step.number = Some(number);
            }
        }
        for (index, note) in self.design.notes.iter().enumerate() {
            let at = match note.on {
                NoteOn::Layer(layer) => {
                    self.steps.iter().position(|s| matches!(s.action, Action::Glue { layer: l, .. } if l == layer))
                }
                NoteOn::Work(Work::Decorating) => None,
                NoteOn::Work(work) => self.steps.iter().position(|s| s.work == work),
            };
            if let Some(at) = at {
                self.steps[at].notes.push(index);
            }
        }
        Steps { steps: self.steps }
    }
}

/// The unit within which a layer is trimmed: the innermost that holds both it and what it is trimmed level
/// with, since neither can show the way before they are joined; none where they are joined by the card alone.
#[must_use]
pub fn trimmed_with(design: &Design, layer: LayerId) -> Option<LayerId> {
    let Onto::Layer(target) = design.layer(layer).trim_flush.as_ref()?.value else { return None };
    let holds_target = |unit: &LayerId| *unit == target || units(design, target).any(|other| other == *unit);
    units(design, layer).find(holds_target)
}

/// The layers in whose `first` lists a layer stands, the innermost first.
fn units(design: &Design, layer: LayerId) -> impl Iterator<Item = LayerId> + '_ {
    std::iter::successors(design.layer(layer).unit, |unit| design.layer(*unit).unit)
}

/// The layer that a layer comes to the card with: itself where it is in no unit.
fn outermost(design: &Design, layer: LayerId) -> LayerId {
    units(design, layer).last().unwrap_or(layer)
}

/// Whether something is left to do when the trimmer has cut a piece, or the window that it comes from.
fn is_finished_by_hand(design: &Design, id: PieceId) -> bool {
    let piece = design.piece(id);
    if design.per_card(id) == 0 {
        return false;
    }
    match piece.from {
        From::Bought => false,
        From::Window(frame, window) => design.piece(frame).shape.windows.get(window).is_none_or(|window| {
            window.form != piece.shape.form
                || window.width != piece.size.width.nm()
                || window.height != piece.size.height.nm()
                || !piece.shape.windows.is_empty()
        }),
        From::Paper(_) | From::Varies => piece.shape.make().is_ok_and(|made| !made.finish.is_empty()),
    }
}

/// The rectangles that a triangle shares, paper by paper; none where each triangle has its own.
#[must_use]
pub fn shared_rectangles(design: &Design, piece: PieceId) -> Vec<Halves> {
    design.paper_ids().filter_map(|paper| of_piece(design, piece, paper)).collect()
}

/// How many of a piece, over all cards, share their rectangle with no other.
#[must_use]
pub fn by_themselves(design: &Design, piece: PieceId) -> u32 {
    let shared = shared_rectangles(design, piece);
    let own = design.version_ids().filter(|version| {
        let paper = design.paper_of(piece, *version);
        !shared.iter().any(|halves| Some(halves.paper) == paper)
    });
    own.fold(0, |all: u32, version| {
        all.saturating_add(design.per_card(piece).saturating_mul(design.version(version).cards))
    })
}

/// The step before which a note stands, or none where it belongs to a kind of work that has no
/// step of its own (posting).
#[must_use]
pub fn step_of_note(steps: &Steps, note: usize) -> Option<usize> {
    steps.steps.iter().position(|step| step.notes.contains(&note))
}
