//! How long the cutting search takes: `cargo bench --bench cutting`, with `TRIMWRIGHT_INSTANCES=FOLDER`
//! for the published instances too. A word behind `--` picks the groups or rows with it in their name.
//!
//! The unlimited search, the limited one and that over many sheets are groups of their own; then the
//! demo designs, how the time grows with kinds of piece, sheets and their size, and a size table of 33
//! steps.

#![expect(clippy::print_stderr, reason = "that the instances were skipped is said to people")]

#[path = "../cutting/instances/read.rs"]
mod read;

use criterion::{BenchmarkId, Criterion, criterion_group, criterion_main};
use std::hint::black_box;
use std::path::Path;
use std::time::Duration;
use trimwright::cutting::demand::hand;
use trimwright::cutting::search::cover::{Lot, Stack, cover};
use trimwright::cutting::search::problem::{Kind, Problem};
use trimwright::cutting::search::sheet::Limits;
use trimwright::cutting::search::value::{ValueLimits, limited, unlimited};
use trimwright::cutting::{search, sizes};
use trimwright::design::model::Design;
use trimwright::design::resize::Resized;
use trimwright::length::{NM_PER_INCH, Units};
use trimwright::pipeline;
use trimwright::source::Source;

/// The published instances that one kind of search is for, by name.
fn published(name: &str) -> Vec<(String, Problem, Vec<u64>)> {
    let Some(folder) = read::folder() else {
        eprintln!("skipped: TRIMWRIGHT_INSTANCES names no folder of instances");
        return Vec::new();
    };
    let all = read::instances(&folder);
    let optima = read::optima(&folder).into_iter().filter(|(_, search, ..)| search.starts_with(name));
    optima
        .filter_map(|(instance, _, turn, _)| {
            let (problem, values) = all.get(&instance)?;
            let problem = if turn { read::turned(problem) } else { problem.clone() };
            Some((format!("{instance}{}", if turn { " turned" } else { "" }), problem, values.clone()))
        })
        .collect()
}

/// cgcut1 of Christofides & Whitlock 1977, Operations Research 25:30-44.
fn cgcut1() -> (Problem, Vec<u64>) {
    let figures: [(i64, i64, u32, u64); 7] =
        [(8, 4, 2, 66), (3, 7, 1, 35), (8, 2, 3, 24), (3, 4, 5, 17), (3, 3, 2, 11), (3, 2, 2, 8), (2, 1, 1, 2)];
    let kinds = figures.iter().map(|&(width, height, wanted, _)| Kind { width, height, quarter: false, wanted });
    let problem = Problem { width: 15, height: 10, kinds: kinds.collect(), hand: None };
    (problem, figures.iter().map(|figure| figure.3).collect())
}

fn one_sheet(criterion: &mut Criterion) {
    type Search = fn(&Problem, &[u64], &ValueLimits) -> Option<trimwright::cutting::search::value::Valued>;
    let searches: [(&str, &str, Search); 2] =
        [("unlimited", "unconstrained_guillotine", unlimited), ("limited", "constrained_guillotine", limited)];
    for (name, published_as, search) in searches {
        let mut group = criterion.benchmark_group(name);
        group.sample_size(10).measurement_time(Duration::from_secs(1)).warm_up_time(Duration::from_millis(100));
        let (problem, values) = cgcut1();
        let small = std::iter::once(("cgcut1 from the paper".to_owned(), problem, values));
        for (instance, problem, values) in small.chain(published(published_as)) {
            // Half a minute once is enough to know.
            if instance.starts_with("gcut13") {
                continue;
            }
            group.bench_function(BenchmarkId::from_parameter(instance), |bencher| {
                bencher.iter(|| search(black_box(&problem), &values, &ValueLimits::default()));
            });
        }
        group.finish();
    }
}

fn designs(name: &str) -> Vec<(String, Design)> {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("designs").join(format!("{name}.yaml"));
    let text = std::fs::read_to_string(file).expect("a demo design");
    let outcome = pipeline::run(&Source::new("design.yaml", &text), name);
    let editions = outcome.editions.into_iter();
    editions.map(|project| (format!("{name} {}", project.units().word()), project.design)).collect()
}

fn demos(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("demos");
    group.sample_size(20).measurement_time(Duration::from_secs(2));
    for (name, design) in ["lantern-row", "kitchen-garden"].into_iter().flat_map(designs) {
        group.bench_function(name, |bencher| bencher.iter(|| search::plan(black_box(&design))));
    }
    group.finish();
}

/// A lot of our own making: pieces of this many kinds, a sheet's worth for every sheet.
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
    // As many of each as fill three quarters of the sheets.
    let all = i128::from(side) * i128::from(side) * i128::from(sheets) * 3 / 4;
    let each: i128 = kinds.iter().map(Kind::area).sum();
    let count = u32::try_from(all / each).unwrap_or(1).max(1);
    kinds.iter_mut().for_each(|kind| kind.wanted = count);
    Lot { stacks: vec![Stack::plain(side, side, sheets)], kinds, hand: Some(hand(Units::Inch)), alike: false }
}

fn many_sheets(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("many sheets");
    group.sample_size(10).measurement_time(Duration::from_secs(1)).warm_up_time(Duration::from_millis(100));
    let kinds = (1..=12).map(|kinds| (format!("{kinds} kinds"), lot(kinds, 12, 2)));
    let inches = [6, 9, 12, 18, 24].map(|inches| (format!("{inches} in sheets"), lot(4, inches, 2)));
    let sheets = [1, 2, 4, 8, 16, 24, 40].map(|sheets| (format!("{sheets} sheets"), lot(4, 12, sheets)));
    for (name, lot) in kinds.chain(inches).chain(sheets) {
        group.bench_function(name, |bencher| bencher.iter(|| cover(black_box(&lot), &Limits::default())));
    }
    group.finish();
}

fn size_table(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("size table of 33 steps");
    group.sample_size(10).measurement_time(Duration::from_secs(4));
    let pieces = [("lantern-row", "panel"), ("lantern-row", "lantern"), ("kitchen-garden", "bed")];
    for (name, wanted) in pieces {
        let (edition, design) = designs(name).remove(0);
        let piece = design.piece_ids().find(|id| design.piece(*id).name == wanted).expect("a piece");
        group.bench_function(format!("{edition} {wanted}"), |bencher| {
            bencher.iter(|| {
                let resized = Resized::Piece(piece);
                sizes::sizes(black_box(&design), resized, sizes::Ways::Both, 16, &Limits::default())
            });
        });
    }
    group.finish();
}

criterion_group!(cutting, one_sheet, demos, many_sheets, size_table);
criterion_main!(cutting);
