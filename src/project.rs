//! Every stage's value for one design in one system of units, with the findings.

use crate::assembly::model::Steps;
use crate::cutting::plan::CutPlan;
use crate::design::model::{Design, PaperId};
use crate::layout::model::Layout;
use crate::length::Units;
use crate::paper::made::Made;
use crate::words::{Language, Words};
use std::borrow::Cow;

/// Every stage's value for one edition of one design.
#[derive(Debug, Clone)]
pub struct Project {
    /// The settled design.
    pub design: Design,
    /// Where every layer lies.
    pub layout: Layout,
    /// How thick the finished card is and what it weighs; none in a file for `cuts`.
    pub made: Option<Made>,
    /// How the sheets are cut.
    pub plan: CutPlan,
    /// What is done, in order.
    pub steps: Steps,
    /// The same design from other sheets that somebody may hold, papers and sheets in the order
    /// written.
    pub others: Vec<Other>,
    /// The design as readers of each language are told it, where that is not `design` itself.
    pub told: Vec<Design>,
    /// What the edition that the design is made in comes to, where this is another one.
    pub made_in: Option<Totals>,
}

/// What an edition comes to, to be compared with another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Totals {
    /// Its system.
    pub units: Units,
    /// The cards that its sheets give, up to those wanted.
    pub cards: u64,
    /// Sheets cut.
    pub sheets: u64,
    /// Cuts, counted on every sheet.
    pub cuts: u64,
}

impl Totals {
    /// Those of a plan.
    #[must_use]
    pub fn of(plan: &CutPlan) -> Self {
        let missing = !plan.missing.is_empty();
        let cards = plan.most.filter(|most| missing && *most < plan.cards).unwrap_or(plan.cards);
        Self { units: plan.units, cards: cards.into(), sheets: plan.sheets_used() as u64, cuts: plan.cuts() }
    }
}

/// A design planned from other sheets of one of its papers.
#[derive(Debug, Clone)]
pub struct Other {
    /// The paper.
    pub paper: PaperId,
    /// Which of its other sheets: an index into the paper's `also`.
    pub also: usize,
    /// The design with these sheets.
    pub design: Design,
    /// The whole plan, all other papers included.
    pub plan: CutPlan,
}

impl Other {
    /// The plan of this paper's sheets alone: papers do not depend on one another. Its aims are those
    /// of the whole plan.
    #[must_use]
    pub fn own_plan(&self) -> CutPlan {
        let mut plan = self.plan.clone();
        plan.sheets.retain(|sheet| sheet.paper == self.paper);
        plan.missing.retain(|missing| missing.paper == self.paper);
        let mut diagrams: Vec<usize> = Vec::new();
        for sheet in &mut plan.sheets {
            let place = diagrams.iter().position(|diagram| *diagram == sheet.diagram);
            sheet.diagram = place.unwrap_or_else(|| {
                diagrams.push(sheet.diagram);
                diagrams.len() - 1
            });
        }
        plan
    }
}

impl Project {
    /// The words of the language that its texts are in.
    #[must_use]
    pub const fn words(&self) -> &Words {
        self.design.words()
    }

    /// The same project as readers of a language are told it: names and texts change, nothing else.
    #[must_use]
    pub fn told_in(&self, language: Language) -> Cow<'_, Self> {
        let Some(design) = self.told.iter().find(|told| told.words.language() == language) else {
            return Cow::Borrowed(self);
        };
        let others = self.others.iter().map(|other| {
            let sheets = design.paper(other.paper).also[other.also].sheets.clone();
            Other { design: design.with_sheets(other.paper, sheets), ..other.clone() }
        });
        Cow::Owned(Self { design: design.clone(), others: others.collect(), told: Vec::new(), ..self.clone() })
    }

    /// The units of this edition.
    #[must_use]
    pub const fn units(&self) -> Units {
        self.design.units
    }
}
