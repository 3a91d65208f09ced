//! How long the cutting search takes: `cargo bench --bench cutting`, with `TRIMWRIGHT_INSTANCES=FOLDER`
//! for the published instances too. A word behind `--` picks the groups or rows with it in their name.
//!
//! The unlimited search, the limited one and that over many sheets are groups of their own; then the
//! demo designs, how the time grows with kinds of piece, sheets and their size, and a size table of 33
//! steps. `-- spent` prints a table instead: what each search takes once, in time, states and bytes.

#![expect(clippy::print_stdout, clippy::print_stderr, reason = "the table, and what was skipped, are for people")]

mod lots;
#[path = "../cutting/instances/read.rs"]
mod read;
mod spent;

use criterion::{BenchmarkId, Criterion, criterion_group, criterion_main};
use lots::{cgcut1, designs, growing, published};
use std::hint::black_box;
use std::time::Duration;
use trimwright::cutting::search::cover::cover;
use trimwright::cutting::search::problem::Problem;
use trimwright::cutting::search::sheet::Limits;
use trimwright::cutting::search::value::{ValueLimits, Valued, limited, unlimited};
use trimwright::cutting::{search, sizes};
use trimwright::design::resize::Resized;

/// The table, where it is asked for by its name.
fn table(_: &mut Criterion) {
    if std::env::args().any(|word| word == "spent") {
        spent::print();
    }
}

fn one_sheet(criterion: &mut Criterion) {
    type Search = fn(&Problem, &[u64], &ValueLimits) -> Option<Valued>;
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

fn demos(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("demos");
    group.sample_size(20).measurement_time(Duration::from_secs(2));
    for (name, design) in lots::demos() {
        group.bench_function(name, |bencher| bencher.iter(|| search::plan(black_box(&design))));
    }
    group.finish();
}

fn many_sheets(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("many sheets");
    group.sample_size(10).measurement_time(Duration::from_secs(1)).warm_up_time(Duration::from_millis(100));
    for (name, lot) in growing() {
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

criterion_group!(cutting, table, one_sheet, demos, many_sheets, size_table);
criterion_main!(cutting);
