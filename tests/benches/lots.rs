//! What the searches are measured on besides the published instances: lots of our own making, and
//! the demo designs.

use crate::read;
use std::path::Path;
use trimwright::cutting::demand::hand;
use trimwright::cutting::search::cover::{Lot, Stack};
use trimwright::cutting::search::problem::{Kind, Problem};
use trimwright::design::model::Design;
use trimwright::length::{NM_PER_INCH, Units};
use trimwright::pipeline;
use trimwright::source::Source;

/// cgcut1 of Christofides & Whitlock 1977, Operations Research 25:30-44.
pub(crate) fn cgcut1() -> (Problem, Vec<u64>) {
    let figures: [(i64, i64, u32, u64); 7] =
        [(8, 4, 2, 66), (3, 7, 1, 35), (8, 2, 3, 24), (3, 4, 5, 17), (3, 3, 2, 11), (3, 2, 2, 8), (2, 1, 1, 2)];
    let kinds = figures.iter().map(|&(width, height, wanted, _)| Kind { width, height, quarter: false, wanted });
    let problem = Problem { width: 15, height: 10, kinds: kinds.collect(), hand: None };
    (problem, figures.iter().map(|figure| figure.3).collect())
}

/// Every edition of the demo designs.
pub(crate) fn demos() -> Vec<(String, Design)> {
    ["lantern-row", "kitchen-garden"].into_iter().flat_map(designs).collect()
}

/// The editions of a demo design.
pub(crate) fn designs(name: &str) -> Vec<(String, Design)> {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("designs").join(format!("{name}.yaml"));
    let text = std::fs::read_to_string(file).expect("a demo design");
    let outcome = pipeline::run(&Source::new("design.yaml", &text), name);
    let editions = outcome.editions.into_iter();
    editions.map(|project| (format!("{name} {}", project.design.units.word()), project.design)).collect()
}

/// A lot that grows: in kinds of piece, in the size of its sheets, in their number.
pub(crate) fn growing() -> impl Iterator<Item = (String, Lot)> {
    let kinds = (1..=12).map(|kinds| (format!("{kinds} kinds"), lot(kinds, 12, 2)));
    let inches = [6, 9, 12, 18, 24].map(|inches| (format!("{inches} in sheets"), lot(4, inches, 2)));
    let sheets = [1, 2, 4, 8, 16, 24, 40].map(|sheets| (format!("{sheets} sheets"), lot(4, 12, sheets)));
    kinds.chain(inches).chain(sheets)
}

/// Pieces of this many kinds, three quarters of a sheet's worth for every sheet.
fn lot(kinds: usize, inches: i64, sheets: u32) -> Lot {
    let side = inches * NM_PER_INCH;
    let sixteenth = NM_PER_INCH / 16;
    // Sides between an eighth and a third of the sheet, no two kinds alike.
    let kind = |n: usize| {
        let n = i64::try_from(n).unwrap_or(0);
        let part = |of: i64| (side / of) / sixteenth * sixteenth;
        Kind { width: part(3 + n % 5), height: part(4 + n % 3) - (n / 3) * sixteenth, quarter: n % 2 == 1, wanted: 0 }
    };
    let mut kinds: Vec<Kind> = (0..kinds).map(kind).collect();
    let all = i128::from(side) * i128::from(side) * i128::from(sheets) * 3 / 4;
    let each: i128 = kinds.iter().map(Kind::area).sum();
    let count = u32::try_from(all / each).unwrap_or(1).max(1);
    kinds.iter_mut().for_each(|kind| kind.wanted = count);
    Lot { stacks: vec![Stack::plain(side, side, sheets)], kinds, hand: Some(hand(Units::Inch)), alike: false }
}

/// The published instances that one kind of search is for, turned and not, by name.
pub(crate) fn published(search: &str) -> Vec<(String, Problem, Vec<u64>)> {
    let Some(folder) = read::folder() else {
        eprintln!("skipped: TRIMWRIGHT_INSTANCES names no folder of instances");
        return Vec::new();
    };
    let all = read::instances(&folder);
    let optima = read::optima(&folder).into_iter().filter(|(_, of, ..)| of.starts_with(search));
    optima
        .filter_map(|(instance, _, turn, _)| {
            let (problem, values) = all.get(&instance)?;
            let problem = if turn { read::turned(problem) } else { problem.clone() };
            Some((format!("{instance}{}", if turn { " turned" } else { "" }), problem, values.clone()))
        })
        .collect()
}
