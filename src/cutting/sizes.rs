//! The table of sizes: how many cards come out as one piece grows and shrinks by steps of the ruler.
//!
//! Takes a settled design, gives rows as data. Rows are planned from the smallest to the largest and
//! share what is known: a paper that asks for the same is not searched again, and what larger
//! pieces cannot give is known where smaller ones do not.

use super::demand::demand;
use super::more::{More, more};
use super::plan::Aim;
use super::search::Known;
use super::search::most::plan_most;
use super::search::sheet::Limits;
use crate::design::model::{Design, PaperId, PieceId};
use crate::design::resize::{Resized, resize, size_of};
use crate::length::{Length, Size};

/// Which sides grow and shrink.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ways {
    /// Width and height together, by the same step.
    Both,
    /// The width alone.
    Width,
    /// The height alone.
    Height,
}

/// How cards depend on the size of one piece.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SizeTable {
    /// What grows and shrinks.
    pub what: Resized,
    /// Which sides of it.
    pub ways: Ways,
    /// The workshop's ruler.
    pub step: Length,
    /// Pieces that follow as their sizes say, in the order of the design.
    pub follow: Vec<PieceId>,
    /// The rows, smallest first, one of them of no steps; sizes at which something would be nothing
    /// have none.
    pub rows: Vec<Row>,
}

/// What comes out at one size.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    /// Steps from the size of today; fewer than none where it is smaller.
    pub steps: i32,
    /// The size.
    pub size: Size,
    /// The most cards.
    pub cards: Aim,
    /// Sheets that these cards take.
    pub sheets: usize,
    /// Cuts on all of them.
    pub cuts: u64,
    /// The largest usable leftover and its paper.
    pub leftover: Option<(PaperId, Size)>,
    /// What the leftovers would still give, each for itself.
    pub more: Vec<More>,
    /// Pieces that no sheet of their paper holds.
    pub too_large: Vec<(PieceId, PaperId)>,
}

/// Makes the table from so many steps smaller to so many larger. None where the design has no such
/// piece, or its ruler has no step.
#[must_use]
pub fn sizes(design: &Design, what: Resized, ways: Ways, steps: i32, limits: &Limits) -> Option<SizeTable> {
    // How many cards is searched as far as ever; with how few cuts is not, for it is the longest
    // search of all and a row is only compared with its neighbours.
    let limits = &Limits { ways: 0, ..*limits };
    let step = design.workshop.ruler;
    size_of(design, what)?;
    if step.nm() <= 0 {
        return None;
    }
    let changed = |steps: i32| {
        let (by, none) = (step * i64::from(steps), Length::new(0, step.unit()));
        match ways {
            Ways::Both => resize(design, what, by, by),
            Ways::Width => resize(design, what, by, none),
            Ways::Height => resize(design, what, none, by),
        }
    };
    let mut known = Known::default();
    let rows = (-steps..=steps).filter_map(|steps| Some(row(&changed(steps)?, what, steps, limits, &mut known)));
    let rows = rows.collect::<Option<Vec<Row>>>()?;
    let larger = changed(1)?;
    let own = |piece: PieceId| match what {
        Resized::Piece(own) => own == piece,
        Resized::Card => design.card.as_ref().is_some_and(|card| card.base == piece),
    };
    let follow = design.piece_ids().filter(|id| !own(*id) && larger.piece(*id).size != design.piece(*id).size);
    Some(SizeTable { what, ways, step, follow: follow.collect(), rows })
}

fn row(design: &Design, what: Resized, steps: i32, limits: &Limits, known: &mut Known) -> Option<Row> {
    let (_, plan, _) = plan_most(design, limits, known);
    Some(Row {
        steps,
        size: size_of(design, what)?,
        cards: plan.aims.cards,
        sheets: plan.sheets_used(),
        cuts: plan.cuts(),
        leftover: plan.largest_leftover().map(|left| (plan.sheets[left.sheet].paper, left.size)),
        more: more(design, &plan),
        too_large: too_large(design),
    })
}

fn too_large(design: &Design) -> Vec<(PieceId, PaperId)> {
    let mut all = Vec::new();
    for demand in demand(design) {
        for wanted in &demand.wanted {
            let (width, height) = (wanted.size.width.nm(), wanted.size.height.nm());
            let fits = |w: i64, h: i64| {
                let mut parts =
                    demand.sheets.iter().filter(|sheets| sheets.count > 0).flat_map(|sheets| &sheets.sections);
                parts.any(|part| {
                    !part.barred.contains(&wanted.piece) && w <= part.rect.width() && h <= part.rect.height()
                })
            };
            let here = (wanted.piece, demand.paper);
            let fits_here = fits(width, height) || (wanted.quarter && fits(height, width));
            if !fits_here && !all.contains(&here) {
                all.push(here);
            }
        }
    }
    all
}

/// A change of the cards from one row to a larger one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Change<'t> {
    /// The row at which it is seen.
    pub row: &'t Row,
    /// Cards more or fewer than today.
    pub cards: i64,
}

impl SizeTable {
    /// The row of today.
    #[must_use]
    pub fn today(&self) -> Option<&Row> {
        self.rows.iter().find(|row| row.steps == 0)
    }

    /// The last row up to which nothing is lost as it grows step by step from today; the row of
    /// today where the first step loses a card already.
    #[must_use]
    pub fn free(&self) -> Option<&Row> {
        let today = self.today()?;
        self.larger().take_while(|row| row.cards.found >= today.cards.found).last().or(Some(today))
    }

    /// The first larger row with fewer cards than today.
    #[must_use]
    pub fn loses(&self) -> Option<Change<'_>> {
        let today = self.today()?;
        self.larger().find(|row| row.cards.found < today.cards.found).map(|row| self.change(row))
    }

    /// The first smaller row with more cards than today.
    #[must_use]
    pub fn gains(&self) -> Option<Change<'_>> {
        let today = self.today()?;
        let smaller = self.rows.iter().rev().filter(|row| row.steps < 0);
        smaller.into_iter().find(|row| row.cards.found > today.cards.found).map(|row| self.change(row))
    }

    /// The first row at which a piece is too large for every sheet of its paper.
    #[must_use]
    pub fn too_large(&self) -> Option<&Row> {
        self.rows.iter().find(|row| !row.too_large.is_empty())
    }

    /// Cards that a row has fewer than the row before it.
    #[must_use]
    pub fn lost_at(&self, row: &Row) -> u64 {
        let before = self.rows.iter().find(|other| other.steps + 1 == row.steps);
        before.map_or(0, |before| before.cards.found.saturating_sub(row.cards.found))
    }

    fn larger(&self) -> impl Iterator<Item = &Row> {
        self.rows.iter().filter(|row| row.steps > 0)
    }

    fn change<'t>(&self, row: &'t Row) -> Change<'t> {
        let count = |row: &Row| i64::try_from(row.cards.found).unwrap_or(i64::MAX);
        Change { row, cards: count(row) - self.today().map_or(0, count) }
    }
}
