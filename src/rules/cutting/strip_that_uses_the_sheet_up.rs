//! Equal strips use a sheet up, so that the last one is whatever remains.

use crate::cutting::plan::{CutRow, PartId, SheetPlan, Use};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Rect;
use crate::length::Length;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::length;

/// The rule.
pub static RULE: Rule = Rule {
    code: "strip-that-uses-the-sheet-up",
    severity: Severity::Note,
    group: "cutting",
    summary: "equal strips use a sheet up, so that the last one is whatever remains",
    page: include_str!("strip_that_uses_the_sheet_up.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings: Vec<Finding> = Vec::new();
    // A kept leftover was cut to its size a moment ago.
    let bought = |sheet: &&SheetPlan| design.paper(sheet.paper).kept_from.is_none();
    for sheet in project.plan.sheets.iter().filter(bought) {
        for row in &sheet.cuts {
            let Some((strips, whole)) = used_up(sheet, row) else { continue };
            let paper = design.paper(sheet.paper);
            let span = paper.sheets.get(sheet.kind).map_or(paper.span, |sheets| sheets.span);
            let (measure, whole): (Length, Length) = (length(project, row.measure.nm()), length(project, whole));
            let finding = Finding::note(
                RULE.code,
                span,
                format!("strips of {} use its sheet up", paper.name),
                format!("{strips} strips of {measure} from {whole}: the last is what remains"),
            )
            .plainly(format!(
                "{strips} strips of {measure} use the {whole} of {} up, so the last one is what remains",
                paper.name
            ))
            .help(format!("measure your sheets: one that is less than {whole} makes the last strip narrow"));
            if !findings.contains(&finding) {
                findings.push(finding);
            }
        }
    }
    findings
}

/// How many equal strips a row makes of the whole sheet, and the side they use up. Two equal halves
/// are what a fold gives and need no word.
fn used_up(sheet: &SheetPlan, row: &CutRow) -> Option<(u32, i64)> {
    let part = *row.parts.first()?;
    let across = row.from.is_side();
    let along = |rect: Rect| if across { rect.width() } else { rect.height() };
    let each = row.cuts / u32::try_from(row.parts.len()).ok()?;
    let gives: Vec<PartId> =
        row.gives.iter().copied().filter(|given| sheet.part(*given).parent == Some(part)).collect();
    let last = sheet.part(*gives.last()?);
    let kept = |id: PartId| matches!(sheet.part(id).r#use, Use::Piece { .. } | Use::Divided);
    let side = along(sheet.part(part).rect);
    let whole = along(sheet.part(PartId(0)).rect) - strip(sheet, across);
    let equal = along(last.rect) == row.measure.nm();
    (each >= 2 && equal && side == whole && gives.iter().all(|id| kept(*id))).then_some((each + 1, side))
}

/// How much an edge strip takes of a side.
fn strip(sheet: &SheetPlan, across: bool) -> i64 {
    let whole = sheet.part(PartId(0)).rect;
    sheet
        .parts
        .iter()
        .filter(|part| part.r#use == Use::EdgeStrip)
        .filter(|part| if across { part.rect.height() == whole.height() } else { part.rect.width() == whole.width() })
        .map(|part| if across { part.rect.width() } else { part.rect.height() })
        .sum()
}
