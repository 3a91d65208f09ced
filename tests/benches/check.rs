//! How long `check` takes: `cargo bench --bench check`. A word behind `--` picks the groups or rows with it in
//! their name.
//!
//! One design as a whole process, with its best plan and quickly, its stages by themselves, and how the time grows with pieces, layers and papers.
//! `-- thousand` instead checks a thousand sound designs at random in one process, once, and prints how long a
//! design takes.

#![expect(clippy::print_stdout, reason = "the time of a thousand designs is for people")]

#[path = "../support/dice.rs"]
mod dice;
#[path = "../sound/mod.rs"]
mod sound;

/// Where the designs at random look for their dice.
mod support {
    pub(crate) use super::dice;
}

use criterion::{BenchmarkId, Criterion, criterion_group, criterion_main};
use std::fmt::Write;
use std::hint::black_box;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};
use trimwright::cutting::search::plan;
use trimwright::layout::place::place;
use trimwright::length::Length;
use trimwright::pipeline;
use trimwright::source::Source;

/// Designs in one call.
const THOUSAND: u64 = 1_000;

fn demos() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("designs");
    let entries = std::fs::read_dir(folder).expect("designs/").map(|entry| entry.expect("an entry").path());
    let mut demos: Vec<PathBuf> = entries.filter(|path| path.extension().is_some_and(|end| end == "yaml")).collect();
    demos.sort();
    demos
}

/// The program from its start to its end.
fn check(flags: &[&str], files: &[PathBuf]) {
    let program = env!("CARGO_BIN_EXE_trimwright");
    let status =
        Command::new(program).arg("check").args(flags).args(files).stdout(Stdio::null()).stderr(Stdio::null()).status();
    assert!(status.expect("the program starts").success(), "a sound design has no error");
}

/// A folder of sound designs at random.
fn folder(designs: u64) -> (tempfile::TempDir, Vec<PathBuf>) {
    let folder = tempfile::tempdir().expect("a folder");
    let write = |seed: u64| {
        let path = folder.path().join(format!("design-{seed}.yaml"));
        std::fs::write(&path, sound::design(seed)).expect("written");
        path
    };
    let files = (0..designs).map(write).collect();
    (folder, files)
}

fn a_thousand(_: &mut Criterion) {
    if !std::env::args().any(|word| word == "thousand") {
        return;
    }
    let (_folder, files) = folder(THOUSAND);
    let start = Instant::now();
    check(&["--quick"], &files);
    let taken = start.elapsed();
    println!("{THOUSAND} designs in one call: {taken:.1?}, {:.2?} a design", taken / 1_000);
}

fn one_design(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("check as a process");
    group.sample_size(10).measurement_time(Duration::from_secs(3));
    for path in demos() {
        let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
        for (how, flags) in [("", &[][..]), (" --quick", &["--quick"])] {
            let row = format!("{name}{how}");
            group.bench_function(row, |bencher| bencher.iter(|| check(flags, std::slice::from_ref(&path))));
        }
    }
    group.finish();
}

fn stages(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("stages");
    group.sample_size(10).measurement_time(Duration::from_secs(2));
    let text = growing(8, 24, 4);
    let source = Source::new("design.yaml", text);
    let design = pipeline::settle(&source, "design", None).designs.remove(0);
    let planned = plan(&design);
    group.bench_function("reading", |bencher| bencher.iter(|| pipeline::settle(black_box(&source), "design", None)));
    group.bench_function("placing", |bencher| bencher.iter(|| place(black_box(&design))));
    group.bench_function("planning", |bencher| bencher.iter(|| plan(black_box(&design))));
    group.bench_function("steps and rules", |bencher| {
        bencher.iter(|| pipeline::finish(black_box(design.clone()), planned.clone()));
    });
    group.finish();
}

fn growth(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("growth");
    group.sample_size(10).measurement_time(Duration::from_secs(2));
    let pieces = [2, 4, 8, 14].map(|pieces| (format!("{pieces} pieces"), growing(pieces, 28, 4)));
    let layers = [6, 12, 24, 48].map(|layers| (format!("{layers} layers"), growing(6, layers, 4)));
    let papers = [1, 2, 4, 8].map(|papers| (format!("{papers} papers"), growing(8, 24, papers)));
    for (name, text) in pieces.into_iter().chain(layers).chain(papers) {
        let source = Source::new("design.yaml", text);
        group.bench_function(BenchmarkId::from_parameter(name), |bencher| {
            bencher.iter(|| pipeline::run(black_box(&source), "design"));
        });
    }
    group.finish();
}

/// A design of so many pieces and layers, side by side on a card of 5 x 7 in, from so many papers.
fn growing(pieces: usize, layers: usize, papers: usize) -> String {
    let mut text = "title: Growing\nmonth: 2027-02\ncards: 4\nunits: inch\n".to_owned();
    text.push_str("card: {size: 5 x 7 in, fold: side, from: white}\npapers:\n  white: {sheets: 4 of 12 x 12 in}\n");
    for paper in 0..papers {
        let _ = writeln!(text, "  paper {paper}: {{sheets: 4 of 12 x 12 in}}");
    }
    text.push_str("pieces:\n");
    for piece in 0..pieces {
        // Between a half and 5/8 in wide, a little higher each.
        let (width, height) = (sixteenths(8 + piece % 3), sixteenths(4 + piece % 7));
        let paper = piece % papers;
        let _ = writeln!(text, "  piece {piece}: {{size: {{width: {width}, height: {height}}}, from: paper {paper}}}");
    }
    text.push_str("front:\n");
    for layer in 0..layers {
        let (left, top) = (sixteenths(4 + 12 * (layer % 6)), sixteenths(4 + 12 * (layer / 6)));
        let _ = writeln!(
            text,
            "  - {{place: piece {}, as: layer {layer}, left: {left}, top: {top}, glue: liquid}}",
            layer % pieces
        );
    }
    text
}

fn sixteenths(number: usize) -> Length {
    Length::inch(i64::try_from(number).unwrap_or(0), 16)
}

criterion_group!(checking, a_thousand, one_design, stages, growth);
criterion_main!(checking);
