//! The slack: takes one sheet's rows, gives the smallest sheet that the same rows at the same
//! measures still give the same pieces from. Must never know how the plan was found.
//!
//! On a sheet whose width and height are not known, every extent of a part is either fixed (it was
//! measured) or what the sheet has less something fixed (it is what remained). A slice is as long
//! as its measure and as wide as the part it comes from; the rest keeps the part's width and loses
//! the slices' length. So no extent across ever depends on the sheet's height, nor one upward on
//! its width, and no condition below reads both: how much may be taken off the width and how much
//! off the height are independent, and the least of each makes the smallest sheet.
//!
//! The conditions, each of the form "at least so much remains", so that a sheet between the
//! smallest and the full one serves as well as either:
//! - a piece keeps its exact size and the edge strip its width, so where one of these is what
//!   remains, nothing may be taken off;
//! - what remains of a part and is cut further or kept stays longer than nothing;
//! - the hold rule stays kept for every cut. A leftover at the end of a part may shrink to nothing
//!   only if its slice can be held by itself at every length of leftover on the way: then the part's
//!   last cut is no cut when nothing is left to cut off, and the slice already has its measure.
//!   Where the rule asks for something to hold, the leftover stays as long as that, though a sheet
//!   on which it is exactly nothing would do: a reader has the sheets between as well;
//! - parts that a row names by one size stay of one size, so that the reader finds them.

use super::plan::{CutRow, PartId, SheetPlan, Use};
use super::search::problem::Hand;
use crate::length::{Length, Size};

/// Extent of a part in one direction.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Extent {
    /// On the plan's sheet, in nanometres.
    now: i64,
    /// Whether it shrinks as the sheet does.
    remains: bool,
}

/// The smallest sheet, an edge strip included, that a sheet's rows still give the same from.
#[must_use]
pub fn slack(sheet: &SheetPlan, hand: Hand) -> Size {
    let mut taking = Taking {
        sheet,
        hand,
        extents: vec![[Extent { now: 0, remains: false }; 2]; sheet.parts.len()],
        most: [sheet.width.nm(), sheet.height.nm()],
    };
    if let Some(whole) = taking.extents.first_mut() {
        *whole = taking.most.map(|now| Extent { now, remains: true });
    }
    taking.piece(PartId(0));
    for row in &sheet.cuts {
        taking.row(row);
    }
    let [across, up] = taking.most;
    let less = |length: Length, off: i64| Length::new(length.nm() - off, length.unit());
    Size::new(less(sheet.width, across), less(sheet.height, up))
}

/// How much may be taken off the sheet.
struct Taking<'s> {
    sheet: &'s SheetPlan,
    hand: Hand,
    extents: Vec<[Extent; 2]>,
    /// The most that may be taken off its width and off its height.
    most: [i64; 2],
}

impl Taking<'_> {
    /// What remains may not get shorter than `least`.
    fn keep(&mut self, axis: usize, extent: Extent, least: i64) {
        if extent.remains {
            self.most[axis] = self.most[axis].min((extent.now - least).max(0));
        }
    }

    fn piece(&mut self, part: PartId) {
        if matches!(self.sheet.part(part).r#use, Use::Piece { .. }) {
            for axis in 0..2 {
                let extent = self.extents[part.0][axis];
                self.keep(axis, extent, extent.now);
            }
        }
    }

    fn row(&mut self, row: &CutRow) {
        self.alike(row);
        let axis = usize::from(!row.from.is_side());
        let mut gives = row.gives.as_slice();
        for &part in &row.parts {
            let own = gives.iter().take_while(|id| self.sheet.part(**id).parent == Some(part)).count();
            let (children, others) = gives.split_at(own);
            gives = others;
            let mut rest = self.extents[part.0];
            for (place, &child) in children.iter().enumerate() {
                let mut extent = rest;
                if place + 1 < children.len() {
                    extent[axis] = Extent { now: row.measure.nm(), remains: false };
                    rest[axis].now -= row.measure.nm();
                    let leftover =
                        place + 2 == children.len() && self.sheet.part(children[place + 1]).r#use == Use::Leftover;
                    let least = self.held(row.measure.nm()).max(i64::from(!leftover));
                    self.keep(axis, rest[axis], least);
                }
                self.extents[child.0] = extent;
                if self.sheet.part(child).r#use == Use::EdgeStrip {
                    self.keep(axis, extent[axis], extent[axis].now);
                }
                self.piece(child);
            }
        }
    }

    /// How much must remain beside a slice, where anything does.
    const fn held(&self, slice: i64) -> i64 {
        if slice >= self.hand.hold {
            0
        } else if slice >= self.hand.narrow {
            self.hand.narrow
        } else {
            self.hand.hold
        }
    }

    /// Parts of one size, of which some shrink and some do not, would be told apart.
    fn alike(&mut self, row: &CutRow) {
        let extents: Vec<[Extent; 2]> = row.parts.iter().map(|part| self.extents[part.0]).collect();
        let Some(first) = extents.first().copied() else { return };
        if extents.iter().any(|other| [0, 1].map(|axis| other[axis].now) != [0, 1].map(|axis| first[axis].now)) {
            return;
        }
        for axis in 0..2 {
            if extents.iter().any(|other| other[axis].remains != first[axis].remains) {
                self.most[axis] = 0;
            }
        }
    }
}
