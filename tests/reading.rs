//! Reading: text to nodes to the settled design, sound and broken.

mod sound;

use trimwright::design::model::Design;
use trimwright::design::nodes::read;
use trimwright::design::settle::settle;
use trimwright::length::Units;
use trimwright::source::Source;

/// Settles a text that has nothing wrong with it.
fn design(text: &str, units: Units) -> Design {
    let source = Source::new("sound.yaml", text);
    let root = read(&source).unwrap_or_else(|finding| panic!("{finding:#?}"));
    let settled = settle(&root, &source, "sound", units);
    assert_eq!(settled.findings, vec![], "{units:?}");
    settled.design.expect("a sound design settles")
}

#[test]
fn smoke() {
    for units in [Units::Inch, Units::Metric] {
        println!("{:#?}", design(sound::LANTERN_ROW, units));
    }
    println!("{:#?}", design(sound::REED_BED, Units::Metric));
    println!("{:#?}", design(sound::TAGS, Units::Inch));
}
