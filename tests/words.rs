//! The demo designs use every fixed word of the design file.

use std::collections::BTreeSet;

use trimwright::design::{nodes, settle};

use crate::support::{demos, source_at};

/// Words that no published demo can use, each with its reason.
const ELSEWHERE: [(&str, &str); 4] = [
    // An honest photo cannot be made by a program: of the set, and of a version.
    ("title", "photo"),
    ("name", "photo"),
    // Only a file without layers says how many of a piece a card needs.
    ("size", "per card"),
    // What is said in any case where nothing else is said.
    ("by", "hand"),
];

#[test]
fn the_demos_use_every_word() {
    let mut heard = settle::Heard::default();
    for file in demos() {
        let source = source_at(&file, "demo");
        let root = nodes::read(&source).unwrap();
        for units in settle::units_asked(&root) {
            heard.join(settle::settle(&root, &source, "demo", units).heard);
        }
    }
    let missing: BTreeSet<String> = heard
        .open
        .iter()
        .filter(|open| !heard.used.contains(*open))
        .filter(|(place, word)| !ELSEWHERE.contains(&(place.as_str(), word)))
        .map(|(place, word)| format!("{place}: {word}"))
        .collect();
    assert!(missing.is_empty(), "no demo uses {missing:#?}");
}
