//! Sheets on which the designer fixed the first cuts: every sheet is parted into the same sections,
//! and the search fills the sections. Found is the fewest sheets of one kind; with more than one
//! sheet, all alike where that goes.

use super::cover::{Alike, Found, Lot, Stack, cover_by_sums};
use super::diagrams;
use super::sheet::{CutSheet, Limits};
use super::tree::{Body, Node};

/// Covers with so many sheets of one kind; and whether not finding a way is a proof.
pub(super) fn cover_with(lot: &Lot, sheets: u32, limits: &Limits) -> (Option<Found>, bool) {
    let kinds = (0..lot.stacks.len()).filter(|&stack| lot.stacks[stack].count > 0);
    // Sheets of different kinds together are not searched, so then nothing is proven.
    let mut refused = sheets == 1 || lot.alike || kinds.clone().count() < 2;
    let pieces: u64 = lot.wanted().iter().map(|&n| u64::from(n)).sum();
    let found = |sheets| Found { sheets, least_diagrams: 1, least_parts: pieces };
    for stack in kinds.filter(|&stack| lot.stacks[stack].count >= sheets) {
        let share: Vec<u32> = lot.wanted().iter().map(|n| n.div_ceil(sheets)).collect();
        let (sections, complete) = fill(lot, stack, 1, &share, limits);
        if let Some(sections) = sections {
            return (Some(found(together(lot, stack, sections, 1, sheets))), false);
        }
        refused &= complete;
        if sheets > 1 && !lot.alike {
            let (sections, complete) = fill(lot, stack, sheets, &lot.wanted(), limits);
            if let Some(sections) = sections {
                return (Some(found(together(lot, stack, sections, sheets, 1))), false);
            }
            refused &= complete;
        }
    }
    (None, refused)
}

/// Fills the sections of so many sheets: each section is taken for a sheet of its own.
fn fill(lot: &Lot, stack: usize, sheets: u32, counts: &[u32], limits: &Limits) -> (Option<Vec<Alike>>, bool) {
    let sections = lot.stacks[stack].sections.iter();
    let stacks: Vec<Stack> = sections.map(|section| Stack { sections: vec![section.clone()], count: sheets }).collect();
    let kinds = lot.kinds.iter().zip(counts).map(|(kind, &wanted)| super::problem::Kind { wanted, ..*kind }).collect();
    let each = u32::try_from(stacks.len()).unwrap_or(u32::MAX);
    let parts = Lot { stacks, kinds, hand: lot.hand, alike: false };
    // One section may hold it all.
    match diagrams::one(&parts, 1, limits) {
        (Some(found), _) => (Some(found.sheets), false),
        (None, _) => cover_by_sums(&parts, each.saturating_mul(sheets), limits),
    }
}

/// Puts filled sections together to sheets, alike ones in one.
fn together(lot: &Lot, stack: usize, sections: Vec<Alike>, sheets: u32, times: u32) -> Vec<Alike> {
    let own = &lot.stacks[stack].sections;
    let mut filled: Vec<Vec<Alike>> = vec![Vec::new(); own.len()];
    for alike in sections {
        for _ in 0..alike.times {
            filled[alike.stack].push(Alike { times: 1, ..alike.clone() });
        }
    }
    let mut all: Vec<Alike> = Vec::new();
    for sheet in 0..sheets as usize {
        let mut counts = vec![0; lot.kinds.len()];
        let cuts: Vec<CutSheet> = own
            .iter()
            .zip(&filled)
            .map(|(section, filled)| match filled.get(sheet) {
                Some(alike) => {
                    counts.iter_mut().zip(&alike.counts).for_each(|(all, own)| *all += own);
                    alike.cuts[0].clone()
                }
                None => {
                    let empty = Node { width: section.width, height: section.height, body: Body::Waste };
                    CutSheet { ways: vec![empty], least_leftovers: 1 }
                }
            })
            .collect();
        match all.iter_mut().find(|alike| alike.cuts == cuts) {
            Some(same) => same.times += times,
            None => all.push(Alike { stack, times, cuts, counts }),
        }
    }
    all
}
