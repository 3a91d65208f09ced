//! Every stage's value for one design in one system of units, with the findings.

use crate::assembly::model::Steps;
use crate::cutting::plan::CutPlan;
use crate::design::model::Design;
use crate::layout::model::Layout;
use crate::length::Units;

/// Every stage's value for one edition of one design.
#[derive(Debug, Clone)]
pub struct Project {
    /// The settled design.
    pub design: Design,
    /// Where every layer lies.
    pub layout: Layout,
    /// How the sheets are cut.
    pub plan: CutPlan,
    /// What is done, in order.
    pub steps: Steps,
}

impl Project {
    /// The units of this edition.
    #[must_use]
    pub const fn units(&self) -> Units {
        self.design.units
    }
}
