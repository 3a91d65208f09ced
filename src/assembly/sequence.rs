//! Design, layout and plan to steps, in batch order.
//!
//! Common practice of the trade, no source: cut everything; stamp greetings; score and fold all;
//! sort into a pile for each card; put the small units together; layer all; decorate; post.

use super::model::{Action, Step, Steps};
use crate::cutting::plan::CutPlan;
use crate::design::model::{Design, Fold, LayerId, NoteOn, PieceId, Work};

/// The steps of the whole job. Must never know a word of any language.
#[must_use]
pub fn sequence(design: &Design, plan: &CutPlan) -> Steps {
    let mut order = Sequence { design, steps: Vec::new() };
    order.cutting(plan);
    order.stamping();
    order.folding();
    order.sorting();
    let top: Vec<LayerId> = design.layer_ids().filter(|id| design.layer(*id).unit.is_none()).collect();
    for layer in &top {
        order.unit(*layer);
    }
    for layer in &top {
        order.glue(*layer, Work::Layering, false);
        order.trim(*layer, Work::Layering, false);
    }
    order.decorating();
    order.finish()
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

    fn stamping(&mut self) {
        for piece in self.design.piece_ids() {
            if self.design.piece(piece).stamp().is_some() {
                let times = self.design.per_card(piece) * self.cards();
                self.push(Work::Stamping, Action::Stamp { piece }, times);
            }
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
        for member in &members {
            self.trim(*member, Work::Units, true);
        }
        let (piece, cards) = (self.design.layer(base).piece, self.cards());
        let count = self.design.layer(base).count() * cards;
        if let Some(last) = self.steps.last_mut() {
            last.checkpoint = vec![(piece, count)];
        }
    }

    fn glue(&mut self, layer: LayerId, work: Work, loose: bool) {
        let times = self.cards();
        self.push(work, Action::Glue { layer, loose }, times);
    }

    fn trim(&mut self, layer: LayerId, work: Work, loose: bool) {
        if self.design.layer(layer).trim_flush.is_some() {
            let times = self.cards();
            self.push(work, Action::Trim { layer, loose }, times);
        }
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

/// The step before which a note stands, or none where it belongs to a kind of work that has no
/// step of its own (posting).
#[must_use]
pub fn step_of_note(steps: &Steps, note: usize) -> Option<usize> {
    steps.steps.iter().position(|step| step.notes.contains(&note))
}
