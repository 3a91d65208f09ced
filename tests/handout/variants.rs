//! All demos and many designs at random, walked page by page.

use super::oracles::Sheet;
use super::walk::{Found, LARGE, Set, USUAL, walk_all, whole_words};
use crate::sound::design;
use crate::support::{demos, editions_at};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use trimwright::design::variants::{Page, Wanted};
use trimwright::handout::{self, Told};
use trimwright::length::Units;
use trimwright::pipeline;
use trimwright::project::Project;
use trimwright::source::Source;

/// Pages of one handout that may be filled less than the rest, where the next block is a high one, and how
/// much of a page must be filled all the same.
const FEW: usize = 2;
const LITTLE: f64 = 0.45;

/// Designs at random in every run, and when all are asked for.
const SOME: usize = 20;
const ALL: usize = 200;

/// One of a project's handouts as a set to walk. A warning of the typesetter is an error here.
fn set(name: &str, project: &Project, wanted: Wanted) -> Set {
    let told = Told::default();
    let mut composed = serde_json::to_value(handout::compose(project, wanted, &told)).expect("data");
    // Some forms print nothing of the designer's look.
    composed.as_object_mut().expect("pages").remove("imprint");
    let mut words = BTreeSet::new();
    gather(&composed, &mut words);
    let name = format!("{name} {} {wanted:?}", project.units().sign());
    let bytes = handout::typeset(project, wanted, &told).unwrap_or_else(|error| panic!("{name}: {error}"));
    let sheet = match wanted.page {
        None => Sheet::of(project.units()),
        Some(Page::Letter) => Sheet::Letter,
        Some(Page::A4) => Sheet::A4,
    };
    Set { name, bytes, sheet, least: if wanted.large { LARGE } else { USUAL }, words }
}

/// Every form on its usual page, and the handout on the other one.
fn wanted(units: Units) -> Vec<Wanted> {
    let other = match Page::usual(units) {
        Page::Letter => Page::A4,
        Page::A4 => Page::Letter,
    };
    let mut all = Wanted::all();
    all.push(Wanted { page: Some(other), ..Wanted::HANDOUT });
    all
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

/// The editions of a demo in the forms that `picked` picks by their number; the first is the handout.
fn demo_sets(number: usize, picked: impl Fn(usize) -> bool) -> Vec<Set> {
    let path = &demos()[number];
    let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
    let mut sets = Vec::new();
    for (edition, project) in editions_at(path).iter().enumerate() {
        let forms = wanted(project.units()).into_iter().enumerate();
        // Editions take turns: each form is walked in some of them.
        let forms = forms.filter(|(form, _)| *form == 0 || picked(form + number + 3 * edition));
        sets.extend(forms.map(|(_, wanted)| set(&name, project, wanted)));
    }
    sets
}

/// Files with more emptier pages than the few, or with one that is nearly empty, of handouts as most readers
/// print them.
fn too_empty(empty: &[(String, usize, f64)]) -> Vec<String> {
    let usual = format!("{:?}", Wanted::HANDOUT);
    let mut files: BTreeMap<&str, Vec<(usize, f64)>> = BTreeMap::new();
    for (name, page, fill) in empty.iter().filter(|(name, ..)| name.contains(&usual)) {
        files.entry(name).or_default().push((*page, *fill));
    }
    files.retain(|_, pages| pages.len() > FEW || pages.iter().any(|(_, fill)| *fill < LITTLE));
    files.iter().map(|(name, pages)| format!("{name}: {pages:.2?}")).collect()
}

/// Every demo as most readers print it, and a share of its other forms.
#[test]
fn every_page_of_every_demo() {
    let Found { faults, empty, pages } = walk_all(demos().len(), |number| demo_sets(number, |form| form % 8 == 1));
    assert!(faults.is_empty(), "{faults:#?}");
    assert!(pages >= 70, "{pages} pages");
    let over = too_empty(&empty);
    assert!(over.is_empty(), "of {pages} pages: {over:#?}");
}

#[test]
#[ignore = "minutes: run by name"]
fn every_page_of_every_demo_in_all_forms() {
    let Found { faults, empty, pages } = walk_all(demos().len(), |number| demo_sets(number, |_| true));
    assert!(faults.is_empty(), "{faults:#?}");
    assert!(too_empty(&empty).is_empty() && empty.len() * 5 <= pages, "of {pages} pages: {empty:#?}");
}

/// Designs at random: nothing may be wrong on any page, and few pages may be left emptier. Each is set
/// as the handout and in `others` other forms, by turns.
fn at_random(count: usize, others: usize) {
    let one = |number: usize| {
        let mut sets = Vec::new();
        for project in planned_quickly(number as u64).iter().take(1) {
            let forms = wanted(project.units());
            let turns = (0..others).map(|nth| forms[1 + (number * others + nth) % (forms.len() - 1)]);
            let name = format!("seed {number}");
            sets.extend(std::iter::once(Wanted::HANDOUT).chain(turns).map(|wanted| set(&name, project, wanted)));
        }
        sets
    };
    let Found { faults, empty, pages } = walk_all(count, one);
    assert!(faults.is_empty(), "{} faults: {faults:#?}", faults.len());
    assert!(empty.len() * 5 <= pages, "{} of {pages} pages: {empty:#?}", empty.len());
}

fn planned_quickly(seed: u64) -> Vec<Project> {
    let source = Source::new("design.yaml", design(seed).as_str());
    let outcome = pipeline::run_quickly(&source, "design", None);
    assert!(!outcome.editions.is_empty(), "seed {seed}");
    outcome.editions
}

#[test]
fn pages_of_designs_at_random() {
    at_random(SOME, 1);
}

#[test]
#[ignore = "minutes: run by name"]
fn pages_of_designs_at_random_all() {
    at_random(ALL, 2);
}

#[test]
fn a_word_that_is_broken_is_seen() {
    let mut words = BTreeSet::new();
    gather(&serde_json::json!({"line": [{"kind": "text", "text": "Put the edge on 3 in."}], "more": 1}), &mut words);
    assert_eq!(words.iter().map(String::as_str).collect::<Vec<_>>(), ["Put", "edge", "the"]);
}
