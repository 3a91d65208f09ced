//! Whether the folds of the bases run with the fibres of their paper, as the plan cuts them.

use crate::cutting::plan::{CutPlan, Use};
use crate::design::model::{Design, Fold, Grain, Paper};
use crate::length::{Length, Size};

/// A direction of a sheet as it lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Way {
    Across,
    Up,
}

impl Way {
    const fn turned(self, quarter_turns: u8) -> Self {
        match (self, quarter_turns % 2) {
            (way, 0) => way,
            (Self::Across, _) => Self::Up,
            (Self::Up, _) => Self::Across,
        }
    }
}

/// How many bases fold with the grain of their paper, and how many across it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Folds {
    /// Their folds run with the fibres.
    pub with: u32,
    /// Their folds run across the fibres.
    pub across: u32,
    /// Whether the design says how the fibres run; else it is what is usual.
    pub is_stated: bool,
}

/// How all bases of a plan fold; none where a base does not fold or nothing is known of the grain.
#[must_use]
pub fn folds(design: &Design, plan: &CutPlan) -> Option<Folds> {
    let card = design.card.as_ref()?;
    let fold = match card.fold {
        Fold::Side | Fold::Gate | Fold::Accordion { .. } => Way::Up,
        Fold::Top => Way::Across,
        Fold::None => return None,
    };
    let paper = design.paper(card.from);
    let mut folds = Folds { is_stated: paper.grain.is_some(), ..Folds::default() };
    for sheet in plan.sheets.iter().filter(|sheet| sheet.paper == card.from) {
        let Some(fibres) = fibres(paper, paper.sheets[sheet.kind].size) else { continue };
        let alike = u32::try_from(sheet.numbers.len()).unwrap_or(u32::MAX);
        for part in &sheet.parts {
            let Use::Piece { piece, quarter_turns, .. } = part.r#use else { continue };
            if piece != card.base {
                continue;
            }
            let count = if fold.turned(quarter_turns) == fibres { &mut folds.with } else { &mut folds.across };
            *count = count.saturating_add(alike);
        }
    }
    (folds.with > 0 || folds.across > 0).then_some(folds)
}

/// How the fibres of a sheet run as it lies. Letter cardstock is usually grain long: common practice, no
/// source. A square sheet has no longer side.
fn fibres(paper: &Paper, size: Size) -> Option<Way> {
    let long = match size.width.cmp(&size.height) {
        std::cmp::Ordering::Less => Way::Up,
        std::cmp::Ordering::Greater => Way::Across,
        std::cmp::Ordering::Equal => return None,
    };
    let letter = Size::new(Length::inch(17, 2), Length::inch(11, 1));
    let is_letter = [letter, letter.lying()].contains(&size);
    match paper.grain.map(|grain| grain.value) {
        Some(Grain::Long) => Some(long),
        Some(Grain::Short) => Some(long.turned(1)),
        None => is_letter.then_some(long),
    }
}
