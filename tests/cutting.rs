//! Cutting: published instances, worked arithmetic, brute force, the referee.

mod designs;
mod instances;

use trimwright::cutting::search::plan;
use trimwright::cutting::verify::verify;
use trimwright::length::Units;

fn sound(design: &trimwright::design::model::Design) -> trimwright::cutting::plan::CutPlan {
    let plan = plan(design);
    assert_eq!(verify(design, &plan), []);
    plan
}

#[test]
fn lantern_row_needs_all_eight_sheets_in_inches() {
    let plan = sound(&designs::lantern_row(Units::Inch));
    assert_eq!((plan.cards, plan.sheets_used()), (8, 8));
    assert!(plan.aims.cards.proven && plan.aims.sheets.proven);
}
