//! Diagrams of plans that nobody drew: random trees of cuts, down to narrow slices.

use super::clear;
use super::fixture::{SHEET, Sheet, lantern_row};
use trimwright::cutting::plan::{PartId, SheetPlan};
use trimwright::geometry::Edge;

/// A small sequence of numbers from a seed (the multiplier is Knuth's for 64 bits).
struct Dice(u64);

impl Dice {
    fn roll(&mut self, sides: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % sides
    }

    fn between(&mut self, low: i64, high: i64) -> i64 {
        low + i64::try_from(self.roll(u64::try_from(high - low + 1).unwrap())).unwrap()
    }
}

/// A sheet cut at random as a hand would: a row at a time, some parts kept whole, slices down to a
/// quarter of an inch.
fn sheet_from(seed: u64) -> SheetPlan {
    let mut dice = Dice(seed);
    dice.roll(7);
    let (width, height) = [(96, 96), (68, 88), (96, 100), (48, 48)][usize::try_from(dice.roll(4)).unwrap()];
    let mut sheet = Sheet::new(usize::try_from(dice.roll(4)).unwrap(), width, height, 0);
    let mut loose = vec![(SHEET, width, height)];
    let mut pieces: Vec<PartId> = Vec::new();
    for _ in 0..dice.between(2, 7) {
        if loose.is_empty() {
            break;
        }
        let pick = usize::try_from(dice.roll(loose.len() as u64)).unwrap();
        let (part, width, height) = loose.swap_remove(pick);
        let from = [Edge::Left, Edge::Top, Edge::Right, Edge::Bottom][usize::try_from(dice.roll(4)).unwrap()];
        let long = if from.is_side() { width } else { height };
        // A hand cuts no small part into smaller ones where it can help it.
        if width.min(height) < 14 || long < 12 {
            pieces.push(part);
            continue;
        }
        let least = if dice.roll(4) == 0 { 2 } else { 6 };
        let measure = dice.between(least, (long / 2).max(least));
        let count = dice.between(1, ((long - 2) / measure).min(12));
        let cut = sheet.cut(&[part], from, measure, &[u32::try_from(count).unwrap()]);
        let (rest, slices) = cut[0].split_last().unwrap();
        let slice = if from.is_side() { (measure, height) } else { (width, measure) };
        if dice.roll(3) == 0 && slices.len() <= 3 {
            loose.extend(slices.iter().map(|id| (*id, slice.0, slice.1)));
        } else {
            pieces.extend(slices);
        }
        let left = long - measure * count;
        loose.push(if from.is_side() { (*rest, left, height) } else { (*rest, width, left) });
    }
    // Slices that were to be cut further and were not are left over.
    let ring = usize::try_from(dice.between(1, 4)).unwrap();
    for part in pieces {
        sheet.piece(&[part], ring, 0);
    }
    sheet.done()
}

#[test]
fn random_plans_are_drawn_without_a_collision() {
    for n in 0..250_u64 {
        // Spread over all seeds (2^64 over the golden ratio).
        let mut project = lantern_row();
        project.plan.sheets = vec![sheet_from(n.wrapping_mul(0x9E37_79B9_7F4A_7C15))];
        clear::diagram(&project, 0);
    }
}
