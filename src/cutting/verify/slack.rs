//! The referee's word on the slack: the rows are replayed on blank sheets of other sizes. The
//! smallest sheet must give the same, so must some between it and the full one, and a sheet one
//! nanometre smaller in either direction must not.

use std::collections::BTreeMap;

use crate::cutting::plan::{PartId, SheetPlan, Use};

/// What is wrong with the slack that a sheet's plan states, if anything. `narrow` and `hold` are the
/// rule of the hand in nanometres.
pub(super) fn fault(sheet: &SheetPlan, narrow: i64, hold: i64) -> Option<&'static str> {
    let (width, height) = (sheet.width.nm(), sheet.height.nm());
    let (least_width, least_height) = (sheet.slack.width.nm(), sheet.slack.height.nm());
    let gives = |width: i64, height: i64| Blank { sheet, narrow, hold }.gives_the_same(width, height);
    if least_width > width || least_height > height {
        return Some("is said to need a larger sheet than there is");
    }
    let between = |least: i64, full: i64| [0, 1, 2, 3].map(|quarter| least + (full - least) * quarter / 4);
    let serves = between(least_width, width).into_iter().zip(between(least_height, height)).all(|(w, h)| gives(w, h))
        && gives(least_width, height)
        && gives(width, least_height);
    if !serves {
        return Some("does not come from the smallest sheet that is named, or from one between it and the full one");
    }
    if gives(least_width - 1, height) {
        return Some("would come from a narrower sheet than the smallest named");
    }
    if gives(width, least_height - 1) {
        return Some("would come from a lower sheet than the smallest named");
    }
    None
}

/// A sheet of some size while the printed rows are carried out on it.
#[derive(Clone, Copy)]
struct Blank<'s> {
    sheet: &'s SheetPlan,
    narrow: i64,
    hold: i64,
}

impl Blank<'_> {
    fn gives_the_same(self, width: i64, height: i64) -> bool {
        let mut loose: BTreeMap<PartId, (i64, i64)> = BTreeMap::from([(PartId(0), (width, height))]);
        for row in &self.sheet.cuts {
            let side = row.from.is_side();
            let planned = |part: &PartId| self.planned(*part);
            let taken: Option<Vec<(i64, i64)>> = row.parts.iter().map(|part| loose.remove(part)).collect();
            let Some(taken) = taken else { return false };
            let named_alike = row.parts.windows(2).all(|pair| planned(&pair[0]) == planned(&pair[1]));
            if named_alike && taken.windows(2).any(|pair| pair[0] != pair[1]) {
                return false;
            }
            for (&part, size) in row.parts.iter().zip(taken) {
                let children: Vec<PartId> =
                    row.gives.iter().copied().filter(|id| self.sheet.parts[id.0].parent == Some(part)).collect();
                let (along, across) = if side { size } else { (size.1, size.0) };
                let Some((&last, slices)) = children.split_last() else { return false };
                let measure = row.measure.nm();
                for (cut, &slice) in (1_i64..).zip(slices) {
                    let rest = along - cut * measure;
                    let is_last_cut = slice == slices[slices.len() - 1];
                    if rest < 0 || (rest == 0 && !(is_last_cut && self.sheet.parts[last.0].r#use == Use::Leftover)) {
                        return false;
                    }
                    // With nothing to cut off there is no cut.
                    let held = measure.min(rest) >= self.narrow || measure.max(rest) >= self.hold;
                    if rest > 0 && !held {
                        return false;
                    }
                    loose.insert(slice, if side { (measure, across) } else { (across, measure) });
                }
                let rest = along - measure * i64::try_from(slices.len()).unwrap_or(i64::MAX);
                loose.insert(last, if side { (rest, across) } else { (across, rest) });
                for child in &children {
                    if self.sheet.parts[child.0].r#use == Use::EdgeStrip {
                        let (now, then) = (loose[child], self.planned(*child));
                        if (side && now.0 != then.0) || (!side && now.1 != then.1) {
                            return false;
                        }
                    }
                }
            }
        }
        self.sheet
            .parts
            .iter()
            .enumerate()
            .filter(|(_, part)| matches!(part.r#use, Use::Piece { .. }))
            .all(|(id, _)| loose.get(&PartId(id)) == Some(&self.planned(PartId(id))))
    }

    fn planned(self, part: PartId) -> (i64, i64) {
        let rect = self.sheet.parts[part.0].rect;
        (rect.width(), rect.height())
    }
}
