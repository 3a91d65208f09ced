//! Published instances of guillotine cutting against their published optima: gcut (Beasley 1985,
//! Cintra et al. 2008), cgcut (Christofides & Whitlock 1977), ngcut (Beasley 1985), wang20 (Wang 1983).
//!
//! The instances are read only from the folder that `TRIMWRIGHT_INSTANCES` names. Where the file of
//! optima marks a value `computed here only`, nothing published stands behind it.

#![expect(clippy::print_stdout, clippy::print_stderr, reason = "the table, and that it was skipped, are for people")]

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::Instant;

use trimwright::cutting::search::problem::{Kind, Problem};
use trimwright::cutting::search::value::{ValueLimits, Valued, limited, unlimited};

/// Each problem with what its kinds are worth.
fn instances(folder: &Path) -> BTreeMap<String, (Problem, Vec<u64>)> {
    let mut all: BTreeMap<String, (Problem, Vec<u64>)> = BTreeMap::new();
    for file in ["gcut.csv", "cgcut.csv", "ngcut.csv", "wang.csv"] {
        let text = fs::read_to_string(folder.join(file)).unwrap();
        for line in text.lines().skip(1).filter(|line| !line.trim().is_empty()) {
            let fields: Vec<&str> = line.split(',').collect();
            let number = |place: usize| fields[place].trim().parse::<i64>().unwrap();
            let (problem, values) = all.entry(fields[0].to_owned()).or_insert_with(|| {
                (Problem { width: number(1), height: number(2), kinds: Vec::new(), hand: None }, Vec::new())
            });
            let wanted = fields[6].trim().parse().unwrap_or(1);
            values.push(fields[7].trim().parse().unwrap());
            problem.kinds.push(Kind { width: number(4), height: number(5), quarter: false, wanted });
        }
    }
    all
}

fn folder() -> Option<PathBuf> {
    std::env::var_os("TRIMWRIGHT_INSTANCES").map(PathBuf::from)
}

/// `(instance, problem, turned, value)` of the file of optima.
fn optima(folder: &Path) -> Vec<(String, String, bool, u64)> {
    let text = fs::read_to_string(folder.join("optima.csv")).unwrap();
    text.lines()
        .skip(1)
        .filter_map(|line| {
            let fields: Vec<&str> = line.splitn(8, ',').collect();
            let value = fields[4].parse().ok()?;
            (fields[6] == "optimal").then(|| (fields[1].to_owned(), fields[2].to_owned(), fields[3] == "1", value))
        })
        .collect()
}

fn turned(problem: &Problem) -> Problem {
    let kinds = problem.kinds.iter().map(|kind| Kind { quarter: true, ..*kind }).collect();
    Problem { kinds, ..problem.clone() }
}

/// Checks every optimum that `wanted` picks, and prints the table.
fn check(wanted: impl Fn(&str, &str) -> bool) {
    let Some(folder) = folder() else {
        eprintln!("skipped: TRIMWRIGHT_INSTANCES names no folder of instances");
        return;
    };
    let instances = instances(&folder);
    let mut wrong = Vec::new();
    println!(
        "{:<10} {:<38} {:>6} {:>9} {:>9} {:>8} {:>10} {:>12}",
        "instance", "search", "turned", "value", "gap", "ms", "states", "bytes"
    );
    for (name, search, turn, optimum) in optima(&folder) {
        let Some((problem, values)) = instances.get(&name).filter(|_| wanted(&name, &search)) else { continue };
        let problem = if turn { turned(problem) } else { problem.clone() };
        let start = Instant::now();
        let limits = ValueLimits::default();
        let found = if search.starts_with("unconstrained") {
            unlimited(&problem, values, &limits)
        } else {
            limited(&problem, values, &limits)
        };
        let Valued { value, bound, states, bytes } = found.unwrap();
        let ms = start.elapsed().as_millis();
        println!("{name:<10} {search:<38} {turn:>6} {value:>9} {:>9} {ms:>8} {states:>10} {bytes:>12}", bound - value);
        if value > optimum || bound < optimum || (bound == value && value != optimum) {
            wrong.push(format!("{name} {search} turned {turn}: {value} to {bound}, published {optimum}"));
        }
        if bound != value {
            wrong.push(format!("{name} {search} turned {turn}: {value} is not proven, the bound is {bound}"));
        }
    }
    assert_eq!(wrong, Vec::<String>::new());
}

#[test]
fn limited_copies_reach_the_published_optima() {
    check(|_, search| search == "constrained_guillotine" || search == "constrained_guillotine_one_copy_each");
}

#[test]
fn unlimited_copies_reach_the_published_optima() {
    check(|name, search| search == "unconstrained_guillotine" && name != "gcut13");
}

#[test]
#[ignore = "half a minute without optimisation"]
fn the_largest_unlimited_instance_reaches_its_published_optimum() {
    check(|name, search| search == "unconstrained_guillotine" && name == "gcut13");
}

/// cgcut1 of Christofides & Whitlock 1977, Operations Research 25:30-44: seven pieces in 15 x 10,
/// optimum 244 (from memory).
#[test]
fn the_small_example_of_christofides_and_whitlock() {
    let piece = |width, height, wanted| Kind { width, height, quarter: false, wanted };
    let kinds = vec![
        piece(8, 4, 2),
        piece(3, 7, 1),
        piece(8, 2, 3),
        piece(3, 4, 5),
        piece(3, 3, 2),
        piece(3, 2, 2),
        piece(2, 1, 1),
    ];
    let problem = Problem { width: 15, height: 10, kinds, hand: None };
    let found = limited(&problem, &[66, 35, 24, 17, 11, 8, 2], &ValueLimits::default()).unwrap();
    assert_eq!((found.value, found.bound), (244, 244));
}
