//! A cut takes off less paper than a blade cuts cleanly.

use super::rows::{Cut, sliced, written};
use crate::cutting::plan::{PartId, Use};
use crate::diagnostic::{Finding, Severity};
use crate::length::{NM_PER_MM, Units};
use crate::project::Project;
use crate::rules::tell::length;
use crate::rules::{Rule, hand};

/// The rule.
pub static RULE: Rule = Rule {
    code: "shaving",
    severity: Severity::Note,
    group: "cutting",
    summary: "a cut takes off less paper than a blade cuts cleanly",
    page: include_str!("shaving.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let least = hand::least(project.units());
    let mut findings: Vec<Finding> = Vec::new();
    for sheet in &project.plan.sheets {
        for cut in Cut::all(sheet) {
            let Some(rest) = cut.rest().filter(|rest| rest.r#use == Use::Leftover) else { continue };
            let left = cut.along(rest.rect);
            if left >= least.nm() || is_halved(project, &cut, left) {
                continue;
            }
            let finding = tell(project, &cut, left);
            if !findings.contains(&finding) {
                findings.push(finding);
            }
        }
    }
    findings
}

/// Each size of ISO 216 is half the one before, rounded down: the millimetre that is over where an A4 sheet
/// is halved belongs to the standard, and the second half is trimmed.
fn is_halved(project: &Project, cut: &Cut<'_>, left: i64) -> bool {
    project.units() == Units::Metric && cut.times() == 2 && is_of_the_sheet(cut) && left <= NM_PER_MM
}

/// Whether the part is as long, that way, as the sheet: as bought, not cut to its size a moment ago.
fn is_of_the_sheet(cut: &Cut<'_>) -> bool {
    cut.whole() == cut.along(cut.sheet.part(PartId(0)).rect)
}

fn tell(project: &Project, cut: &Cut<'_>, left: i64) -> Finding {
    let say = |nm: i64| length(project, nm);
    let (least, ruler) = (hand::least(project.units()), project.design.workshop.ruler);
    let (times, whole, measure) = (cut.times(), cut.whole(), cut.row.measure.nm());
    let paper = &project.design.paper(cut.sheet.paper).name;
    let piece = sliced(project, cut);
    let off = if times == 1 { String::new() } else { format!("{times} times ") };
    let fact = format!("{off}{} from {} leaves {}", say(measure), say(whole), say(left));
    // With one cut less, what remains is the last slice.
    let without = say(whole).share(times);
    let lower = say((whole - least.nm()) / times).floor_to(ruler);
    let help = match piece {
        Some((piece, side)) if without.is_on(ruler) => {
            let rest = say(whole - lower.nm() * times);
            format!("make the {} {without} {side}, which leaves none, or {lower}, which leaves {rest}", piece.name)
        }
        Some((piece, side)) => {
            format!("make the {} {lower} {side}, which leaves {}", piece.name, say(whole - lower.nm() * times))
        }
        None => format!("leave {least} or more of the {}, or nothing", say(whole)),
    };
    let finding =
        Finding::note(RULE.code, written(project, cut.sheet), format!("a cut shaves a sheet of {paper}"), fact.clone())
            .plainly(format!("on {paper}, {fact}, and a blade hardly cuts off less than {least}"))
            .help(help);
    match piece {
        Some((piece, side)) => finding.also(piece.size_span, format!("{} {side}", say(measure))),
        None => finding,
    }
}
