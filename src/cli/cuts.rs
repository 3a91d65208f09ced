//! `cuts FILE`

use super::args::{Cuts, Format, UnitsWord};
use super::what_if::{self, Changed};
use super::{Ended, Failure, open, say, show};
use crate::assembly::tell;
use crate::cutting::alternatives::{Alternative, alternatives};
use crate::cutting::json;
use crate::cutting::plan::{Aim, CutPlan};
use crate::cutting::search;
use crate::design::model::Design;
use crate::length::Units;
use crate::pipeline;
use crate::project::Project;
use crate::source::Source;
use crate::words::{Line, Words, cutting, english};
use serde_json::Map;
use std::fmt::Write as _;
use std::io::Write;

pub(super) fn run(arguments: &Cuts, out: &mut dyn Write) -> Result<Ended, Failure> {
    let opened = open::open(&arguments.file)?;
    let changed = if arguments.most || !arguments.paper.is_empty() {
        match what_if::run(arguments, &opened)? {
            Ok(changed) => changed,
            Err(ended) => return Ok(ended),
        }
    } else {
        match as_it_is(arguments, &opened)? {
            Ok(changed) => changed,
            Err(ended) => return Ok(ended),
        }
    };
    let Changed { project, lead, json: more, ended } = changed;
    if ended == Ended::Fine
        && let Err(faults) = pipeline::referee(std::slice::from_ref(&project))
    {
        return Err(Failure::new(super::publish::refused(&opened.source, &faults)));
    }
    let asked = arguments.alternatives.unwrap_or(0) as usize;
    let others = if asked > 0 { other_plans(&project, asked) } else { Vec::new() };
    match arguments.format {
        Format::Json => {
            let mut value = json::to_json(&project.design, &project.plan);
            if let Some(plan) = value.as_object_mut() {
                plan.extend(more);
            }
            if !project.others.is_empty() {
                value["also"] = project.others.iter().map(what_if::other_json).collect();
            }
            if asked > 0 {
                value["alternatives"] =
                    others.iter().map(|other| json::to_json(&project.design, &other.plan)).collect();
            }
            let text = serde_json::to_string_pretty(&value).map_err(|error| Failure::new(error.to_string()))?;
            say(out, &format!("{text}\n"))?;
        }
        Format::Text => {
            if !lead.is_empty() {
                say(out, &format!("{}\n\n", lead.join("\n")))?;
            }
            let also = what_if::other_sheets(&project, |text, design, plan, index| {
                sheet_text(text, design, plan, index, None)
            });
            say(out, &(readable(&project) + &other_ways_text(&project, &others, asked) + &also))?;
        }
    }
    Ok(ended)
}

/// The design as the file says it.
fn as_it_is(arguments: &Cuts, opened: &open::Opened) -> Result<Result<Changed, Ended>, Failure> {
    let wanted = arguments.units.map(UnitsWord::units);
    let outcome = pipeline::run_also(&opened.source, &opened.stem, wanted);
    show::report(&opened.source, &outcome.findings);
    let ended = if outcome.has_errors() { Ended::Errors } else { Ended::Fine };
    let project = outcome.editions.into_iter().find(|project| wanted.is_none_or(|units| project.units() == units));
    match project {
        Some(project) => Ok(Ok(Changed { project, lead: Vec::new(), json: Map::new(), ended })),
        None if ended == Ended::Errors => Ok(Err(ended)),
        None => Err(no_edition(&opened.source, wanted)),
    }
}

/// Said where the design has no edition in the units asked for.
pub(super) fn no_edition(source: &Source, units: Option<Units>) -> Failure {
    let units = units.map_or("", Units::word);
    Failure::new(format!("`{}` has no {units} edition; its `units` says which it has", source.name()))
}

/// The plan as text that stands without a picture.
fn readable(project: &Project) -> String {
    let (design, plan) = (&project.design, &project.plan);
    let mut text = format!(
        "{}\n",
        cutting::plan_title(Words::english(), &design.title.value, design.cards.value, project.units().sign())
    );
    for index in 0..plan.sheets.len() {
        sheet_text(&mut text, design, plan, index, None);
    }
    let sheets = u32::try_from(plan.sheets_used()).unwrap_or(u32::MAX);
    let diagrams = u32::try_from(plan.diagrams()).unwrap_or(u32::MAX);
    let _ = write!(text, "\n{}\n", cutting::totals(Words::english(), plan.cuts(), sheets, diagrams));
    for missing in &plan.missing {
        let name = &design.piece(missing.piece).name;
        let line = cutting::missing(Words::english(), missing.count, name, &design.paper(missing.paper).name);
        let _ = writeln!(text, "{line}");
    }
    let aims = &plan.aims;
    for (aim, word) in [
        (aims.cards, cutting::Aimed::Cards),
        (aims.sheets, cutting::Aimed::Sheets),
        (aims.diagrams, cutting::Aimed::Diagrams),
        (aims.cuts, cutting::Aimed::Cuts),
        (aims.changes, cutting::Aimed::Changes),
    ] {
        let Aim { found, bound, proven } = aim;
        let _ = writeln!(text, "  {}", cutting::aim(Words::english(), word, found, bound, proven));
    }
    let Aim { bound, proven, .. } = aims.leftover;
    let largest = plan.largest_leftover().map(|left| left.size);
    let largest = largest.map(|size| format!("{} {}", size.numbers(design.units), design.units.sign()));
    // Rounded up, so that the limit still holds.
    let bound = match design.units {
        Units::Inch => format!("{} sq in", bound.div_ceil(UM2_PER_SQUARE_INCH)),
        Units::Metric => format!("{} cm\u{b2}", bound.div_ceil(UM2_PER_SQUARE_CM)),
    };
    let _ = writeln!(text, "  {}", cutting::largest_leftover(Words::english(), largest.as_deref(), &bound, proven));
    text
}

/// Square micrometres of a square inch, 25 400 by 25 400.
const UM2_PER_SQUARE_INCH: u64 = 645_160_000;
/// Square micrometres of a square centimetre.
const UM2_PER_SQUARE_CM: u64 = 100_000_000;

/// Ways of the search that other plans are sought among.
const WAYS: usize = 12;

fn other_plans(project: &Project, asked: usize) -> Vec<Alternative> {
    let ways = search::other_ways(&project.design, WAYS);
    alternatives(&project.design, &project.plan, &ways, asked)
}

/// Other ways to cut, each under a title, and whether there are fewer than were asked for.
fn other_ways_text(project: &Project, others: &[Alternative], asked: usize) -> String {
    let design = &project.design;
    let mut text = String::new();
    let all = u32::try_from(others.len()).unwrap_or(u32::MAX);
    for (number, other) in (1..).zip(others) {
        let _ = write!(text, "\n{}\n", cutting::another_way(Words::english(), number, all));
        for (index, differs) in other.differs.iter().enumerate() {
            match differs {
                Some(differs) => {
                    sheet_text(&mut text, design, &other.plan, index, Some(&tell::differs(Words::english(), differs)));
                }
                None => {
                    let _ = write!(
                        text,
                        "\n{}: {}\n",
                        sheet_title(design, &other.plan, index),
                        cutting::as_before(Words::english())
                    );
                }
            }
        }
    }
    if others.len() < asked {
        let _ = write!(text, "\n{}\n", cutting::no_more_ways(Words::english(), all));
    }
    text
}

/// A paper's name, with the numbers of its sheets where others of it are cut otherwise.
fn sheet_title(design: &Design, plan: &CutPlan, index: usize) -> String {
    let sheet = &plan.sheets[index];
    let alone = plan.sheets.iter().filter(|other| other.paper == sheet.paper).count() == 1;
    let numbers =
        if alone { String::new() } else { format!(" ({})", cutting::sheet_numbers(Words::english(), &sheet.numbers)) };
    format!("{}{numbers}", english::capital(&design.paper(sheet.paper).name))
}

/// One sheet: its rows, what it gives, what is left over.
fn sheet_text(text: &mut String, design: &Design, plan: &CutPlan, index: usize, differs: Option<&str>) {
    let sheet = &plan.sheets[index];
    let note = tell::sheet_note(design, sheet).to_plain();
    let _ = write!(text, "\n{}: {note}\n", sheet_title(design, plan, index));
    if let Some(differs) = differs {
        wrap(text, "", differs);
    }
    for row in &sheet.cuts {
        let told = tell::row(design, plan, sheet, row);
        wrap(text, &told.cuts, &told.whole.to_plain());
    }
    let sheets = u32::try_from(sheet.numbers.len()).unwrap_or(u32::MAX);
    let totals: Vec<_> = sheet.pieces().into_iter().map(|(piece, count)| (piece, count * sheets)).collect();
    let pieces = tell::cut_counts(design, &totals);
    let mut have = cutting::you_have(Words::english(), sheets, sheet.kept, &pieces);
    let spares = plan.spares_after(design, &[index]);
    if !spares.is_empty() {
        have = have.text(" ").then(cutting::to_spare(Words::english(), &tell::cut_counts(design, &spares)));
    }
    wrap(text, "", &have.to_plain());
    let left = plan.leftovers();
    let over: Vec<Line> = left
        .iter()
        .filter(|left| left.sheet == index && left.number > 0)
        .map(|left| {
            let count = u32::try_from(left.parts.len()).unwrap_or(u32::MAX);
            cutting::leftover(Words::english(), left.number, &left.size.numbers(design.units), count)
        })
        .collect();
    if !over.is_empty() {
        wrap(text, "", &cutting::left_over(Words::english(), over).to_plain());
    }
    let slack = tell::slack(design, sheet, sheets);
    if !slack.is_empty() {
        wrap(text, "", &slack.to_plain());
    }
}

/// Wraps a line to 96 columns behind a column for the cut numbers.
fn wrap(text: &mut String, head: &str, line: &str) {
    let mut column = 0;
    let mut first = true;
    for word in line.split(' ') {
        let width = word.chars().count();
        if first || column + 1 + width > 96 {
            let head = if first { head } else { "" };
            let break_before = if first { "" } else { "\n" };
            let _ = write!(text, "{break_before}  {head:<8}{word}");
            column = 10 + width;
            first = false;
        } else {
            let _ = write!(text, " {word}");
            column += 1 + width;
        }
    }
    text.push('\n');
}
