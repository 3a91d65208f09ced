//! The published instances and their optima, read from the folder that `TRIMWRIGHT_INSTANCES` names.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use trimwright::cutting::search::problem::{Kind, Problem};

/// Each problem with what its kinds are worth.
pub(crate) fn instances(folder: &Path) -> BTreeMap<String, (Problem, Vec<u64>)> {
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

/// The folder, if one is named.
pub(crate) fn folder() -> Option<PathBuf> {
    std::env::var_os("TRIMWRIGHT_INSTANCES").map(PathBuf::from)
}

/// `(instance, problem, turned, value)` of the file of optima.
pub(crate) fn optima(folder: &Path) -> Vec<(String, String, bool, u64)> {
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

/// The same with every piece free to lie on its side.
pub(crate) fn turned(problem: &Problem) -> Problem {
    let kinds = problem.kinds.iter().map(|kind| Kind { quarter: true, ..*kind }).collect();
    Problem { kinds, ..problem.clone() }
}
