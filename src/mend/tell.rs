//! What a mend is called, and what else it changes.

use super::numbers::{Numbers, Value};
use super::search::Found;
use super::trial::{Base, Trial};
use crate::design::model::PieceKind;
use crate::diagnostic::{Edit, Severity, applied};
use crate::project::Project;
use crate::source::Span;
use crate::words::english::{counted, listed_words};

/// The most pieces that are named.
const MOST_PIECES: usize = 3;

/// The help of a finding with what was found: the rule's own where it advises the same, with what else changes;
/// else the nearest that works.
pub(super) fn help(own: Option<&str>, found: &Found) -> Option<String> {
    let also = if found.also.is_empty() { String::new() } else { format!("; {}", found.also) };
    Some(match own {
        Some(own) if found.advised => format!("{own}{also}"),
        _ if found.shared => format!("{}, which mends this too", found.say),
        _ => format!("{}, the nearest that works{also}", found.say),
    })
}

/// What to write, and what else changes then.
pub(super) fn say(
    base: &Base<'_>,
    numbers: &Numbers,
    number: usize,
    edits: &[Edit],
    trial: &Trial,
) -> (String, String) {
    let number = &numbers.all[number];
    let written = |span: Span| {
        let inside = edits.iter().filter(|edit| span.holds(edit.span)).map(|edit| {
            let at = Span::new(edit.span.start - span.start, edit.span.end - span.start);
            Edit::new(at, edit.with.clone())
        });
        applied(base.source.slice(span), &inside.collect::<Vec<_>>()).0
    };
    let size = written(number.half);
    let plain_size = number.key == "size" && size.starts_with(|sign: char| sign.is_ascii_digit());
    let say = if plain_size && !number.owner.is_empty() && matches!(number.value, Value::Length(_)) {
        format!("make the {} {size}", number.owner)
    } else {
        format!("say `{}: {}`", number.key, written(number.whole))
    };
    (say, also(base, &number.owner, trial))
}

fn also(base: &Base<'_>, owner: &str, trial: &Trial) -> String {
    let mut facts: Vec<String> = Vec::new();
    for now in &trial.outcome.editions {
        let Some(before) = base.outcome.editions.iter().find(|before| before.units() == now.units()) else { continue };
        facts.extend(pieces(before, now, owner));
        facts.extend(sheets(before, now));
    }
    let loud = |findings: &[crate::diagnostic::Finding]| {
        findings.iter().filter(|finding| finding.severity != Severity::Note).count()
    };
    let gone = loud(&base.outcome.findings).saturating_sub(loud(&trial.outcome.findings) + 1);
    if gone > 0 {
        let verb = if gone == 1 { "goes" } else { "go" };
        facts.push(format!("{} {verb} with it", counted(u32::try_from(gone).unwrap_or(u32::MAX), "other finding")));
    }
    listed_words(&facts)
}

/// The pieces whose size changes with it.
fn pieces(before: &Project, now: &Project, owner: &str) -> Vec<String> {
    let pairs = before.design.pieces.iter().zip(&now.design.pieces);
    let own = |name: &str, kind: PieceKind| name == owner || (owner == "card" && kind == PieceKind::Base);
    let changed = pairs.filter(|(old, new)| old.size != new.size && !own(&new.name, new.kind));
    let changed: Vec<_> = changed.map(|(_, new)| new).collect();
    let mut told: Vec<String> = changed
        .iter()
        .take(MOST_PIECES)
        .map(|piece| format!("the {} becomes {}", piece.name, piece.size.in_units(now.units())))
        .collect();
    if let Some(more @ 1..) = changed.len().checked_sub(MOST_PIECES) {
        let verb = if more == 1 { "changes" } else { "change" };
        told.push(format!("{} {verb}", counted(u32::try_from(more).unwrap_or(u32::MAX), "more piece")));
    }
    told
}

/// The papers of which more or fewer sheets are cut.
fn sheets(before: &Project, now: &Project) -> Vec<String> {
    let used = |project: &Project, paper| -> usize {
        let sheets = project.plan.sheets.iter().filter(|sheet| sheet.paper == paper && !sheet.kept);
        sheets.map(|sheet| sheet.numbers.len()).sum()
    };
    let whole = before.plan.missing.is_empty() && now.plan.missing.is_empty();
    let papers = now.design.paper_ids().filter(|_| whole);
    papers
        .filter_map(|paper| {
            let (old, new) = (used(before, paper), used(now, paper));
            let count = counted(u32::try_from(new).unwrap_or(u32::MAX), "sheet");
            (old != new).then(|| format!("{count} of {} in place of {old} are cut", now.design.paper(paper).name))
        })
        .collect()
}
