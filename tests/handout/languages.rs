//! The handout in German: the outside oracles, beside the English pages of the same project.

use std::collections::{BTreeMap, BTreeSet};

use super::oracles::{self, Sheet};
use super::{editions, written};
use trimwright::design::variants::{Form, Wanted};
use trimwright::handout::{self, Told};
use trimwright::project::Project;
use trimwright::words::Language;

fn german() -> Language {
    Language::of_tag("de").expect("German")
}

fn garden() -> Project {
    editions("kitchen-garden").remove(0)
}

fn set(project: &Project, wanted: Wanted) -> Vec<u8> {
    handout::typeset(project, wanted, &Told::default()).expect("it is set without a warning")
}

fn text(bytes: &[u8]) -> String {
    let folder = tempfile::tempdir().expect("a folder");
    oracles::text_of(&written(bytes, folder.path()))
}

/// Words of four letters and more, in small letters.
fn long_words(text: &str) -> BTreeSet<String> {
    let words = text.split(|sign: char| !sign.is_alphabetic());
    let words = words.filter(|word| word.chars().count() > 3).map(str::to_lowercase);
    // Leftovers have Roman numerals.
    words.filter(|word| word.chars().any(|sign| !"ivxl".contains(sign))).collect()
}

/// What looks like a number of two digits or more (single ones stand in `3D` and in pages too), with how often it stands there.
fn numbers(text: &str) -> BTreeMap<String, u32> {
    let mut found = BTreeMap::new();
    for word in text.split(|sign: char| sign.is_whitespace() || "()–-".contains(sign)) {
        let word = word.trim_matches(|sign: char| !sign.is_ascii_digit());
        if word.len() > 1 && word.chars().all(|sign| sign.is_ascii_digit() || ".,".contains(sign)) {
            *found.entry(word.replace(',', ".")).or_default() += 1;
        }
    }
    found
}

/// Words that stand in both: the designer's name, and what both languages spell alike.
const SHARED: [&str; 7] = ["heron", "lane", "paper", "room", "also", "post", "rest"];

#[test]
fn german_pages_are_true_tagged_pages() {
    let project = garden();
    let told = project.told_in(german());
    for wanted in
        [Wanted::HANDOUT, Wanted { large: true, ..Wanted::HANDOUT }, Wanted { form: Form::Leaf, ..Wanted::HANDOUT }]
    {
        let bytes = set(&told, wanted);
        let folder = tempfile::tempdir().expect("a folder");
        let mut faults = oracles::true_faults(&written(&bytes, folder.path()), Sheet::A4);
        faults.extend(oracles::standard_faults(&bytes));
        assert!(faults.is_empty(), "{wanted:?}: {faults:#?}");
        let text = String::from_utf8_lossy(&bytes);
        let said = text.split("/Lang").nth(1).is_some_and(|rest| rest.trim_start().starts_with("(de)"));
        assert!(said, "the language is said");
    }
}

#[test]
fn german_pages_hold_no_english_word_and_the_same_numbers() {
    let project = garden();
    for wanted in [
        Wanted::HANDOUT,
        Wanted { form: Form::Leaf, ..Wanted::HANDOUT },
        Wanted { form: Form::TryOut, ..Wanted::HANDOUT },
    ] {
        let english = text(&set(&project, wanted));
        let german = text(&set(&project.told_in(german()), wanted));
        let both: Vec<String> = long_words(&english).intersection(&long_words(&german)).cloned().collect();
        let other: Vec<&String> = both.iter().filter(|word| !SHARED.contains(&word.as_str())).collect();
        assert!(long_words(&english).len() > 60, "the words were found");
        assert!(other.is_empty(), "{wanted:?}: {other:?}");
        let (english, german) = (numbers(&english), numbers(&german));
        let unlike: Vec<(&String, Option<&u32>, Option<&u32>)> = english
            .keys()
            .chain(german.keys())
            // The year stands at the foot of every page, and pages may be more.
            .filter(|number| number.as_str() != "2027" && english.get(*number) != german.get(*number))
            .map(|number| (number, english.get(number), german.get(number)))
            .collect();
        assert!(unlike.is_empty(), "{wanted:?}: {unlike:?}");
    }
}
