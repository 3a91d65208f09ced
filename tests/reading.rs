//! Reading: text to nodes to the settled design, sound, broken and hostile.

mod broken;
mod drawings;
mod faults;
mod hostile;
mod imprint;
mod papers;
mod pictures;
mod relation_laws;
mod relations;
mod settled;
pub(crate) mod sound;

use trimwright::design::model::Design;
use trimwright::design::nodes::read;
use trimwright::design::settle::settle;
use trimwright::diagnostic::Finding;
use trimwright::length::Units;
use trimwright::source::Source;

/// Settles a text that has nothing wrong with it.
pub(crate) fn design(text: &str, units: Units) -> Design {
    let source = Source::new("sound.yaml", text);
    let root = read(&source).unwrap_or_else(|finding| panic!("{finding:#?}"));
    let settled = settle(&root, &source, "sound", units);
    assert_eq!(settled.findings, vec![], "{units:?}");
    settled.design.expect("a sound design settles")
}

/// Everything found in a text, in one edition, and whether a design came out.
pub(crate) fn found(source: &Source, units: Units) -> (Vec<Finding>, bool) {
    match read(source) {
        Ok(root) => {
            let settled = settle(&root, source, "broken", units);
            (settled.findings, settled.design.is_some())
        }
        Err(finding) => (vec![finding], false),
    }
}
