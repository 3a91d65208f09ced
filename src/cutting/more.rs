//! What the leftovers of a plan would still give: takes a design and its plan, gives pieces that
//! could be cut again. Must never know a page or a word.

use super::demand::{demand, hand};
use super::plan::CutPlan;
use super::search::problem::Hand;
use crate::design::model::{Design, PaperId, PieceId, PieceKind};
use crate::length::Size;

/// Pieces of one kind that the leftovers of one paper would give.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct More {
    /// The paper.
    pub paper: PaperId,
    /// The piece.
    pub piece: PieceId,
    /// How many, cut in straight rows from every leftover, and no other kind of piece besides.
    pub count: u32,
}

/// How many of a piece a part gives in straight rows, the rules of the hand kept: upright, or all
/// lying where it may lie (`quarter`) and that gives more.
#[must_use]
pub fn in_rows(part: Size, piece: Size, quarter: bool, hand: Hand) -> u32 {
    let rows = |piece: Size| {
        let across = hand.slices(part.width.nm(), piece.width.nm());
        let up = hand.slices(part.height.nm(), piece.height.nm());
        u32::try_from(across * up).unwrap_or(u32::MAX)
    };
    if quarter { rows(piece).max(rows(piece.lying())) } else { rows(piece) }
}

/// Every piece of the cards that the leftovers of its papers would give again, papers and pieces in
/// the order of the design. `design` says which pieces come from which paper, for so many cards as
/// it asks.
#[must_use]
pub fn more(design: &Design, plan: &CutPlan) -> Vec<More> {
    let hand = hand(design.units);
    let leftovers = plan.leftovers();
    let mut all: Vec<More> = Vec::new();
    for demand in demand(design) {
        for wanted in demand.wanted.iter().filter(|wanted| kept_not(design, wanted.piece)) {
            let here = leftovers.iter().filter(|left| plan.sheets[left.sheet].paper == demand.paper);
            let count = here
                .map(|left| {
                    let parts = left.parts.len() * plan.sheets[left.sheet].numbers.len();
                    let each = in_rows(left.size, wanted.size, wanted.quarter, hand);
                    each.saturating_mul(u32::try_from(parts).unwrap_or(u32::MAX))
                })
                .fold(0, u32::saturating_add);
            match all.iter_mut().find(|more| (more.paper, more.piece) == (demand.paper, wanted.piece)) {
                // Both sides of a paper give the piece: the better of them.
                Some(more) => more.count = more.count.max(count),
                None if count > 0 => all.push(More { paper: demand.paper, piece: wanted.piece, count }),
                None => {}
            }
        }
    }
    all
}

fn kept_not(design: &Design, piece: PieceId) -> bool {
    !matches!(design.piece(piece).kind, PieceKind::Kept { .. })
}
