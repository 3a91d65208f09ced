//! More pieces are taken from windows than windows are cut.

use crate::design::model::{Design, From, PieceId};
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;
use crate::words::english::{counted, listed_words};

/// The rule.
pub static RULE: Rule = Rule {
    code: "too-few-windows",
    severity: Severity::Error,
    group: "making",
    summary: "more pieces are taken from windows than windows are cut",
    page: include_str!("too_few_windows.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings = Vec::new();
    for frame in design.piece_ids() {
        for window in 0..design.piece(frame).shape.windows.len() {
            findings.extend(short(design, frame, window));
        }
    }
    findings
}

/// The pieces of a card that one window of a piece gives, where it gives too few. Every version is the same in
/// this: versions differ in paper only.
fn short(design: &Design, frame: PieceId, window: usize) -> Option<Finding> {
    let from = From::Window(frame, window);
    let taken: Vec<(PieceId, u32)> = design
        .piece_ids()
        .filter(|id| design.piece(*id).from == from)
        .map(|id| (id, design.per_card(id)))
        .filter(|(_, count)| *count > 0)
        .collect();
    let there = design.per_card(frame);
    let wanted = taken.iter().fold(0, |all: u32, (_, count)| all.saturating_add(*count));
    if wanted <= there {
        return None;
    }
    let own = design.piece(frame);
    let several = own.shape.windows.len() > 1;
    let the_window = if several {
        format!("window {} of the {}", window + 1, own.name)
    } else {
        format!("the window of the {}", own.name)
    };
    let told: Vec<String> = taken.iter().map(|(id, count)| counted(*count, &design.piece(*id).name)).collect();
    let told = listed_words(&told);
    let (last, _) = *taken.last()?;
    let missing = wanted - there;
    let others = own.shape.windows.iter().enumerate().find(|(number, other)| {
        let spare = From::Window(frame, *number);
        *number != window
            && (other.width, other.height, &other.form)
                == (own.shape.windows[window].width, own.shape.windows[window].height, &own.shape.windows[window].form)
            && !design.piece_ids().any(|id| design.piece(id).from == spare && design.per_card(id) > 0)
    });
    let help = match others {
        Some((number, _)) => {
            format!("take {missing} from `window {} of {}`, as a piece of its own, or lay fewer", number + 1, own.name)
        }
        None if there == 0 => format!(
            "lay {} on the card, or take the {} from a paper",
            counted(wanted, &own.name),
            design.piece(last).name
        ),
        None => format!("lay {missing} fewer, or cut {missing} from a paper, as a piece of its own"),
    };
    let verb = if there == 1 { "gives" } else { "give" };
    let mut finding = Finding::error(
        RULE.code,
        design.piece(last).from_span,
        format!("{the_window} does not give as many pieces as are taken from it"),
        format!("{told} a card, where {} {verb} {there}", counted(there, &own.name)),
    )
    .also(own.span, format!("{} a card", counted(there, &own.name)))
    .plainly(format!("each card takes {told} from {the_window}, and {} {verb} {there}", counted(there, &own.name)))
    .help(help);
    for (id, count) in taken.iter().take(taken.len() - 1) {
        finding = finding.also(design.piece(*id).from_span, format!("{count} a card from it too"));
    }
    Some(finding)
}
