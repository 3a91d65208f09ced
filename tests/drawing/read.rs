//! A design's text through the stages before drawing.

use super::fixture;
use trimwright::assembly::sequence::sequence;
use trimwright::cutting::search;
use trimwright::design::{nodes, settle};
use trimwright::layout::place::place;
use trimwright::length::Units;
use trimwright::project::Project;
use trimwright::source::Source;

/// One edition of a design that has no fault.
pub(crate) fn project(text: &str, units: Units) -> Project {
    let source = Source::new("design.yaml", text);
    let root = nodes::read(&source).expect("readable");
    let settled = settle::settle(&root, &source, "design", units);
    let design = settled.design.unwrap_or_else(|| panic!("{:?}", settled.findings));
    let layout = place(&design);
    let plan = search::plan(&design);
    let steps = sequence(&design, &plan);
    fixture::whole(design, layout, plan, steps)
}
