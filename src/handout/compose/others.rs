//! The pages for readers who hold other sheets: the same panels as the cutting pages, one paper's
//! sheets at a time.

use super::cutting;
use crate::assembly::sequence::sequence;
use crate::design::model::Sheets;
use crate::design::variants::Wanted;
use crate::handout::data::{CutPanel, CuttingPages, Said, said};
use crate::project::{Other, Project};
use crate::words::Line;
use crate::words::{pages as words, stock};

/// None where the design names no other sheets, or none of them is of any use.
pub(super) fn pages(project: &Project, wanted: Wanted) -> Option<CuttingPages> {
    let say = project.words();
    let panels: Vec<CutPanel> = project.others.iter().flat_map(|other| panels(project, other, wanted)).collect();
    (!panels.is_empty()).then(|| CuttingPages {
        title: stock::other_sheets(say),
        lead: said(&stock::other_sheets_lead(say)),
        caution: said(&words::cutting_caution(say)),
        notes: vec![said(&words::measured_part(say))],
        panels,
        closing: Said::new(),
    })
}

/// The panels of one paper's other sheets; what they do not give is said before the first row.
fn panels(project: &Project, other: &Other, wanted: Wanted) -> Vec<CutPanel> {
    let say = project.words();
    let plan = other.own_plan();
    let short = plan.most.filter(|_| !plan.missing.is_empty());
    let steps = sequence(&other.design, &plan);
    let design = other.design.clone();
    let own = Project { design, plan, steps, others: Vec::new(), ..project.clone() };
    let sheets: Vec<_> = other.design.paper(other.paper).sheets.iter().map(Sheets::count_and_name).collect();
    let from = stock::sheets(say, &sheets);
    let mut panels = cutting::panels(&own, wanted);
    for panel in &mut panels {
        panel.name = words::from_other_sheets(say, &panel.name, &from);
        panel.again = words::continued(say, &panel.name);
    }
    if let (Some(most), Some(first)) = (short, panels.first_mut()) {
        first.before.insert(0, said(&Line::plain(stock::other_gives(say, most, project.design.cards.value))));
    }
    panels
}
