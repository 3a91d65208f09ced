//! A sheet laid out from other edges: takes a sheet's plan, gives the same rows measured from the
//! opposite edges or from both in turn. Sizes, cuts and the order of measures stay; places change.

use super::plan::{CutRow, Part, PartId, SheetPlan, Use};
use crate::geometry::{Edge, Rect};

/// From which edges the rows of one direction are measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Measured {
    /// From the edges that the plan has.
    AsPlanned,
    /// From the edges opposite.
    Opposite,
    /// From the plan's edge and the opposite one in turn; a row of several cuts is halved.
    InTurn,
}

/// From which edges a sheet is laid out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Lay {
    /// Rows measured from the left or the right.
    pub across: Measured,
    /// Rows measured from the top or the bottom.
    pub up: Measured,
}

impl Lay {
    /// Every lay, the plan's own first.
    pub fn all() -> impl Iterator<Item = Self> {
        const ALL: [Measured; 3] = [Measured::AsPlanned, Measured::Opposite, Measured::InTurn];
        ALL.into_iter().flat_map(|up| ALL.map(|across| Self { across, up }))
    }
}

/// Lays a sheet out anew. The first `kept` rows stay as they are. The slack is that of the plan and
/// has to be found anew where the rows have changed.
#[must_use]
pub fn lay(sheet: &SheetPlan, kept: usize, lay: Lay) -> SheetPlan {
    let mut halved = Halved { others: false, up: false };
    // What each row becomes: its edge, and whether its second half is measured from the other.
    let edges: Vec<(Edge, bool)> = sheet
        .cuts
        .iter()
        .enumerate()
        .map(|(place, row)| {
            let laid = if row.from.is_side() { lay.across } else { lay.up };
            match laid {
                _ if place < kept => (row.from, false),
                Measured::AsPlanned => (row.from, false),
                Measured::Opposite => (row.from.opposite(), false),
                Measured::InTurn => halved.next(sheet, row),
            }
        })
        .collect();
    let mut made = Made::new(sheet, &edges);
    let mut next = 1;
    let mut cuts: Vec<CutRow> = Vec::new();
    for (row, &(from, halves)) in sheet.cuts.iter().zip(&edges) {
        let mut first = CutRow { from, parts: Vec::new(), gives: Vec::new(), cuts: 0, ..row.clone() };
        let mut second = CutRow { from: from.opposite(), ..first.clone() };
        for &part in &row.parts {
            let children: Vec<PartId> =
                row.gives.iter().copied().filter(|id| sheet.part(*id).parent == Some(part)).collect();
            let split = if halves { first_half(children.len() - 1) } else { children.len() - 1 };
            let (ones, others) = children.split_at(split);
            if others.len() == 1 {
                made.cut(&mut first, made.ids[part.0], ones, made.ids[others[0].0]);
                continue;
            }
            let rest = PartId(made.ids[others[0].0].0 - 1);
            made.cut(&mut first, made.ids[part.0], ones, rest);
            if let Some((&last, slices)) = others.split_last() {
                made.cut(&mut second, rest, slices, made.ids[last.0]);
            }
        }
        for mut row in [first, second] {
            if row.cuts > 0 {
                row.n = next;
                next += row.cuts;
                cuts.push(row);
            }
        }
    }
    SheetPlan { parts: made.parts, cuts, ..sheet.clone() }
}

/// Of so many cuts the ones from the first edge, the odd one among them.
const fn first_half(cuts: usize) -> usize {
    cuts.div_ceil(2)
}

/// Which edge single cuts come from next, where edges are taken in turn.
struct Halved {
    others: bool,
    up: bool,
}

impl Halved {
    fn next(&mut self, sheet: &SheetPlan, row: &CutRow) -> (Edge, bool) {
        let children = |part: &PartId| row.gives.iter().filter(|id| sheet.part(**id).parent == Some(*part)).count();
        if row.parts.iter().any(|part| children(part) > 2) {
            return (row.from, true);
        }
        let turn = if row.from.is_side() { &mut self.others } else { &mut self.up };
        let from = if *turn { row.from.opposite() } else { row.from };
        *turn = !*turn;
        (from, false)
    }
}

/// The parts of the new layout. They stand in the order of the plan's, so that leftovers keep their
/// numbers; what remains between the halves of a row stands before what is cut from it.
struct Made {
    parts: Vec<Part>,
    /// The new number of each part of the plan.
    ids: Vec<PartId>,
}

impl Made {
    fn new(sheet: &SheetPlan, edges: &[(Edge, bool)]) -> Self {
        let mut between = vec![false; sheet.parts.len()];
        for (row, &(_, halves)) in sheet.cuts.iter().zip(edges) {
            for &part in row.parts.iter().filter(|_| halves) {
                let children: Vec<PartId> =
                    row.gives.iter().copied().filter(|id| sheet.part(*id).parent == Some(part)).collect();
                if children.len() > 2 {
                    between[children[first_half(children.len() - 1)].0] = true;
                }
            }
        }
        let mut made = Self { parts: Vec::new(), ids: Vec::new() };
        for (part, between) in sheet.parts.iter().zip(between) {
            if between {
                made.parts.push(Part { r#use: Use::Divided, ..part.clone() });
            }
            made.ids.push(PartId(made.parts.len()));
            made.parts.push(part.clone());
        }
        made
    }

    /// Cuts slices off a part of the new layout.
    fn cut(&mut self, row: &mut CutRow, part: PartId, slices: &[PartId], rest: PartId) {
        let mut rect = self.parts[part.0].rect;
        row.parts.push(part);
        for slice in slices {
            let id = self.ids[slice.0];
            let (off, left) = rect.parted(row.from, row.measure.nm());
            self.place(id, part, off);
            row.gives.push(id);
            row.cuts += 1;
            rect = left;
        }
        self.place(rest, part, rect);
        row.gives.push(rest);
    }

    fn place(&mut self, id: PartId, parent: PartId, rect: Rect) {
        self.parts[id.0].parent = Some(parent);
        self.parts[id.0].rect = rect;
    }
}
