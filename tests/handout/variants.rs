//! All demos and many designs at random, walked page by page.

use super::oracles::Sheet;
use super::walk::{Found, Set, USUAL, walk_all, whole_words};
use crate::sound::design;
use crate::support::{demos, editions_at};
use serde_json::Value;
use std::collections::BTreeSet;
use trimwright::design::variants::Wanted;
use trimwright::handout::{self, Told};
use trimwright::pipeline;
use trimwright::project::Project;
use trimwright::source::Source;

/// Pages of the demos that may stay emptier than the rest: a page and why.
const STATED: [(&str, &str); 0] = [];

/// Designs at random in every run, and when all are asked for.
const SOME: u64 = 20;
const ALL: u64 = 200;

/// A project's handouts, each as a set to walk. A warning of the typesetter is an error here.
fn sets(name: &str, project: &Project) -> Vec<Set> {
    let units = project.units();
    let composed = serde_json::to_value(handout::compose(project, Wanted::HANDOUT, &Told::default())).expect("data");
    let mut words = BTreeSet::new();
    gather(&composed, &mut words);
    let bytes =
        handout::typeset(project, Wanted::HANDOUT, &Told::default()).unwrap_or_else(|error| panic!("{name}: {error}"));
    vec![Set { name: format!("{name} {}", units.sign()), bytes, sheet: Sheet::of(units), least: USUAL, words }]
}

/// The words of all runs of sentences in what was composed.
fn gather(value: &Value, words: &mut BTreeSet<String>) {
    match value {
        Value::Object(fields) => {
            let is_run = fields.len() == 2 && fields.contains_key("kind");
            match fields.get("text").and_then(Value::as_str) {
                Some(text) if is_run => words.extend(whole_words(text)),
                _ => fields.values().for_each(|field| gather(field, words)),
            }
        }
        Value::Array(values) => values.iter().for_each(|value| gather(value, words)),
        _ => {}
    }
}

fn demo_sets(number: usize) -> Vec<Set> {
    let path = &demos()[number];
    let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
    editions_at(path, &name).iter().flat_map(|project| sets(&name, project)).collect()
}

#[test]
fn every_page_of_every_demo() {
    let Found { faults, empty, pages } = walk_all(demos().len(), demo_sets);
    assert!(faults.is_empty(), "{faults:#?}");
    assert!(pages >= 70, "{pages} pages");
    let not_stated: Vec<&String> =
        empty.iter().filter(|page| !STATED.iter().any(|(stated, _)| page.starts_with(stated))).collect();
    assert!(not_stated.is_empty(), "of {pages} pages: {not_stated:#?}");
    for (stated, why) in STATED {
        assert!(empty.iter().any(|page| page.starts_with(stated)), "{stated} is filled by now: {why}");
    }
}

/// Designs at random: nothing may be wrong on any page, and few pages may be left emptier.
fn at_random(count: u64) {
    let one = |number: usize| {
        let outcome = planned_quickly(number as u64);
        outcome.iter().flat_map(|project| sets(&format!("seed {number}"), project)).collect()
    };
    let Found { faults, empty, pages } = walk_all(usize::try_from(count).expect("few"), one);
    assert!(faults.is_empty(), "{} faults: {faults:#?}", faults.len());
    assert!(empty.len() * 10 <= pages, "{} of {pages} pages: {empty:#?}", empty.len());
}

fn planned_quickly(seed: u64) -> Vec<Project> {
    let source = Source::new("design.yaml", design(seed).as_str());
    let outcome = pipeline::run_quickly(&source, "design", None);
    assert!(!outcome.editions.is_empty(), "seed {seed}");
    outcome.editions
}

#[test]
fn pages_of_designs_at_random() {
    at_random(SOME);
}

#[test]
#[ignore = "minutes: run by name"]
fn pages_of_designs_at_random_all() {
    at_random(ALL);
}

#[test]
fn a_word_that_is_broken_is_seen() {
    let mut words = BTreeSet::new();
    gather(&serde_json::json!({"line": [{"kind": "text", "text": "Put the edge on 3 in."}], "more": 1}), &mut words);
    assert_eq!(words.iter().map(String::as_str).collect::<Vec<_>>(), ["Put", "edge", "the"]);
}
