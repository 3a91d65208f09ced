//! A table of what each search takes once: time, states and bytes as the search counts them, and how
//! far from a proof it ends.

use crate::lots::{cgcut1, demos, growing, published};
use std::cell::Cell;
use std::time::Instant;
use trimwright::cutting::search::cover::{Cover, cover};
use trimwright::cutting::search::problem::Problem;
use trimwright::cutting::search::sheet::{Limits, Spent};
use trimwright::cutting::search::value::{ValueLimits, Valued, limited, unlimited};
use trimwright::cutting::search::{self};

/// Prints the table.
pub(crate) fn print() {
    println!("{:<44} {:>22} {:>12} {:>9} {:>10} {:>11}", "search", "found", "gap", "ms", "states", "bytes");
    one_sheet("unlimited", "unconstrained_guillotine", unlimited);
    one_sheet("limited", "constrained_guillotine", limited);
    for (name, lot) in growing() {
        let meter = Cell::new(Spent::default());
        let start = Instant::now();
        let found = cover(&lot, &Limits::default().noting(&meter));
        let (found, gap) = match found {
            Cover::Yes(covered) => {
                let sheets: u32 = covered.sheets.iter().map(|alike| alike.times).sum();
                let (diagrams, parts) = (covered.sheets.len(), covered.parts());
                let gaps = [
                    u64::from(sheets - covered.least_sheets),
                    diagrams as u64 - u64::from(covered.least_diagrams),
                    parts.saturating_sub(covered.least_parts),
                ];
                (
                    format!("{sheets} / {diagrams} / {}", parts - u64::from(sheets)),
                    gaps.map(|gap| gap.to_string()).join(" / "),
                )
            }
            Cover::No => ("does not fit".to_owned(), "0".to_owned()),
            Cover::Unknown => ("none".to_owned(), "?".to_owned()),
        };
        row(&format!("many sheets, {name}"), &found, &gap, start, meter.get());
    }
    for (name, design) in demos() {
        let meter = Cell::new(Spent::default());
        let start = Instant::now();
        let aims = search::plan_within(&design, &Limits::default().noting(&meter)).aims;
        let aims = [aims.sheets, aims.diagrams, aims.cuts];
        let found = aims.map(|aim| aim.found.to_string()).join(" / ");
        let gap = aims.map(|aim| (aim.found - aim.bound).to_string()).join(" / ");
        row(&format!("demo, {name}"), &found, &gap, start, meter.get());
    }
    println!("found and gap: the value; over many sheets, sheets / diagrams / cuts, each given those before it");
}

fn one_sheet(name: &str, called: &str, search: fn(&Problem, &[u64], &ValueLimits) -> Option<Valued>) {
    let (problem, values) = cgcut1();
    let small = std::iter::once(("cgcut1 from the paper".to_owned(), problem, values));
    for (instance, problem, values) in small.chain(published(called)) {
        let start = Instant::now();
        if let Some(Valued { value, bound, states, bytes }) = search(&problem, &values, &ValueLimits::default()) {
            let spent = Spent { states: states as u64, bytes: bytes as u64 };
            row(&format!("{name}, {instance}"), &value.to_string(), &(bound - value).to_string(), start, spent);
        }
    }
}

fn row(name: &str, found: &str, gap: &str, start: Instant, Spent { states, bytes }: Spent) {
    let ms = start.elapsed().as_secs_f64() * 1_000.0;
    println!("{name:<44} {found:>22} {gap:>12} {ms:>9.1} {states:>10} {bytes:>11}");
}
