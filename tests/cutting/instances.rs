//! Published instances of guillotine cutting against their published optima: gcut (Beasley 1985,
//! Cintra et al. 2008), cgcut (Christofides & Whitlock 1977), ngcut (Beasley 1985), wang20 (Wang 1983).
//!
//! The instances are read only from the folder that `TRIMWRIGHT_INSTANCES` names. Where the file of
//! optima marks a value `computed here only`, nothing published stands behind it.

#![expect(clippy::print_stdout, clippy::print_stderr, reason = "the table, and that it was skipped, are for people")]

pub(crate) mod read;

use read::{folder, instances, optima, turned};
use std::time::Instant;

use trimwright::cutting::search::problem::{Kind, Problem};
use trimwright::cutting::search::value::{ValueLimits, Valued, limited, unlimited};

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
