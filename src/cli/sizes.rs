//! `sizes FILE PIECE`

use super::args::{Format, Sizes, UnitsWord};
use super::{Ended, Failure, open, say, show};
use crate::cutting::search::Known;
use crate::cutting::search::most::short_of;
use crate::cutting::search::sheet::Limits;
use crate::cutting::sizes::{Row, SizeTable, Ways, sizes};
use crate::design::model::{Design, PaperId, PieceId};
use crate::design::resize::Resized;
use crate::design::settle;
use crate::diagnostic::Severity;
use crate::length::{Length, Units};
use crate::pipeline;
use crate::source::Source;
use crate::words::english::sizes as words;
use crate::words::{Words, stock};
use serde_json::{Map, Value, json};
use std::io::Write;

/// Pieces named in the last column at most.
const MOST_NAMED: usize = 3;

pub(super) fn run(arguments: &Sizes, out: &mut dyn Write) -> Result<Ended, Failure> {
    let opened = open::open(&arguments.file)?;
    let wanted = arguments.units.map(UnitsWord::units);
    let settled = pipeline::settle(&opened.source, &opened.stem, wanted);
    let found = settled.findings();
    show::report(&opened.source, &found);
    let wrong = found.iter().any(|finding| finding.severity == Severity::Error);
    let design = settled.designs.iter().find(|design| wanted.is_none_or(|units| design.units == units));
    let Some(design) = design else {
        return if wrong { Ok(Ended::Errors) } else { Err(super::cuts::no_edition(&opened.source, wanted)) };
    };
    let said = Source::new("PIECE", arguments.piece.clone());
    let what = match settle::said_piece(&said, design) {
        Ok(what) => what,
        Err(findings) => {
            show::report(&said, &findings);
            return Ok(Ended::CouldNotRun);
        }
    };
    let ways = match (arguments.width, arguments.height) {
        (true, _) => Ways::Width,
        (_, true) => Ways::Height,
        _ => Ways::Both,
    };
    let limits = Limits::default();
    let table = sizes(design, what, ways, arguments.steps, &limits)
        .ok_or_else(|| Failure::new(format!("`{}` has no ruler to step by", opened.source.name())))?;
    match arguments.format {
        Format::Text => {
            let most = table.today().and_then(|row| u32::try_from(row.cards.found).ok()).unwrap_or(u32::MAX);
            let short = short_of(design, most.saturating_add(1), &limits, &mut Known::default());
            say(out, &text(design, &table, &short))?;
        }
        Format::Json => {
            let value = to_json(design, &table);
            let text = serde_json::to_string_pretty(&value).map_err(|error| Failure::new(error.to_string()))?;
            say(out, &format!("{text}\n"))?;
        }
    }
    Ok(if wrong { Ended::Errors } else { Ended::Fine })
}

fn name_of(design: &Design, what: Resized) -> &str {
    match what {
        Resized::Card => "card",
        Resized::Piece(piece) => &design.piece(piece).name,
    }
}

fn text(design: &Design, table: &SizeTable, short: &[PaperId]) -> String {
    let say = Words::english();
    let sides = match table.ways {
        Ways::Both => words::Sides::Both,
        Ways::Width => words::Sides::Width,
        Ways::Height => words::Sides::Height,
    };
    let step = with_unit(table.step, design.units);
    let name = name_of(design, table.what);
    let mut lines = vec![words::title(&design.title.value, name, &step, sides)];
    let follow: Vec<String> = table.follow.iter().map(|piece| design.piece(*piece).name.clone()).collect();
    lines.extend(Some(words::follow(&follow)).filter(|line| !line.is_empty()));
    lines.push(words::rows(&stock::units_word(say, design.units)));
    lines.push(String::new());
    let cells: Vec<[String; 7]> = std::iter::once(words::HEADS.map(str::to_owned))
        .chain(table.rows.iter().map(|row| cells(design, row)))
        .collect();
    let width = |column: usize| cells.iter().map(|row| row[column].chars().count()).max().unwrap_or(0);
    let widths: [usize; 7] = std::array::from_fn(width);
    let marks = std::iter::once(String::new()).chain(table.rows.iter().map(|row| mark(design, table, row)));
    for (cells, mark) in cells.iter().zip(marks) {
        let set = cells.iter().zip(widths).enumerate().map(|(column, (cell, width))| match column {
            // Numbers stand on their last figure.
            0 | 2..=4 => format!("{cell:>width$}"),
            _ => format!("{cell:<width$}"),
        });
        let line = format!("{}  {mark}", set.collect::<Vec<_>>().join("  "));
        lines.push(line.trim_end().to_owned());
    }
    lines.push(String::new());
    lines.extend(sentences(design, table, short));
    if table.rows.iter().any(|row| !row.cards.proven) {
        lines.push(words::NOT_PROVEN.to_owned());
    }
    format!("{}\n", lines.join("\n"))
}

fn cells(design: &Design, row: &Row) -> [String; 7] {
    let leftover = row.leftover.map_or_else(String::new, |(paper, size)| {
        words::leftover(&size.numbers(design.units), &design.paper(paper).name)
    });
    let more: Vec<(u32, String)> = more(design, row)
        .into_iter()
        .take(MOST_NAMED)
        .map(|(piece, count)| (count, design.piece(piece).name.clone()))
        .collect();
    [
        words::steps(row.steps),
        row.size.numbers(design.units),
        words::cards(row.cards.found, row.cards.bound),
        row.sheets.to_string(),
        row.cuts.to_string(),
        leftover,
        words::more(&more),
    ]
}

/// What the leftovers of all papers together would still give, the largest piece first.
fn more(design: &Design, row: &Row) -> Vec<(PieceId, u32)> {
    let mut pieces: Vec<(PieceId, u32)> = Vec::new();
    for more in &row.more {
        match pieces.iter_mut().find(|(piece, _)| *piece == more.piece) {
            Some((_, count)) => *count = count.saturating_add(more.count),
            None => pieces.push((more.piece, more.count)),
        }
    }
    let area = |piece: PieceId| {
        let size = design.piece(piece).size;
        i128::from(size.width.nm()) * i128::from(size.height.nm())
    };
    pieces.sort_by_key(|(piece, _)| (std::cmp::Reverse(area(*piece)), *piece));
    pieces
}

/// What stands behind a row.
fn mark(design: &Design, table: &SizeTable, row: &Row) -> String {
    let mut marks = Vec::new();
    let lost = table.lost_at(row);
    if lost > 0 {
        marks.push(words::fewer(lost));
    }
    if table.free().is_some_and(|free| free.steps == row.steps && free.steps > 0) {
        marks.push(words::UP_TO_HERE.to_owned());
    }
    if table.too_large().is_some_and(|first| first.steps == row.steps)
        && let Some((piece, paper)) = row.too_large.first()
    {
        marks.push(words::too_large(&design.piece(*piece).name, &design.paper(*paper).name));
    }
    marks.join(", ")
}

/// What the table comes to.
fn sentences(design: &Design, table: &SizeTable, short: &[PaperId]) -> Vec<String> {
    let size = |row: &Row| format!("{} {}", row.size.numbers(design.units), design.units.sign());
    let cards = |cards: i64| u32::try_from(cards.unsigned_abs()).unwrap_or(u32::MAX);
    let free = table.free().map_or(0, |row| row.steps);
    let last = table.rows.last().map_or(0, |row| row.steps);
    let by = (free > 0).then(|| with_unit(table.step * i64::from(free), design.units));
    let mut first = vec![words::grows(by.as_deref(), free > 0 && free == last).to_plain()];
    if let Some(change) = table.loses() {
        first.push(words::lost(&size(change.row), cards(change.cards)).to_plain());
    }
    let gained = match table.gains() {
        Some(change) => words::gained(&size(change.row), cards(change.cards)).to_plain(),
        None => words::NO_GAIN.to_owned(),
    };
    let mut all = vec![first.join(" "), gained];
    if let Some(row) = table.too_large() {
        let named = row.too_large.iter();
        let pieces = named.map(|(piece, paper)| (design.piece(*piece).name.clone(), design.paper(*paper).name.clone()));
        all.push(words::goes_no_more(&size(row), &pieces.collect::<Vec<_>>()).to_plain());
    }
    let papers: Vec<String> = short.iter().map(|paper| design.paper(*paper).name.clone()).collect();
    all.extend(Some(words::run_out_today(&papers)).filter(|line| !line.is_empty()));
    all
}

fn with_unit(length: Length, units: Units) -> String {
    format!("{} {}", length.number(units), units.sign())
}

/// The table for programs: lengths in nanometres, rows from the smallest size to the largest.
fn to_json(design: &Design, table: &SizeTable) -> Value {
    let steps = |row: Option<&Row>| row.map_or(Value::Null, |row| row.steps.into());
    json!({
        "version": crate::cutting::json::VERSION,
        "units": design.units.word(),
        "piece": name_of(design, table.what),
        "step_nm": table.step.nm(),
        "follow": table.follow.iter().map(|piece| design.piece(*piece).name.as_str()).collect::<Vec<_>>(),
        "free_to": steps(table.free()),
        "loses_at": steps(table.loses().map(|change| change.row)),
        "gains_at": steps(table.gains().map(|change| change.row)),
        "too_large_from": steps(table.too_large()),
        "rows": table.rows.iter().map(|row| row_json(design, row)).collect::<Vec<_>>(),
    })
}

fn row_json(design: &Design, row: &Row) -> Value {
    let named = |piece: PieceId, paper: PaperId| {
        Map::from_iter([
            ("piece".to_owned(), Value::from(design.piece(piece).name.as_str())),
            ("paper".to_owned(), Value::from(design.paper(paper).name.as_str())),
        ])
    };
    let leftover = row.leftover.map_or(Value::Null, |(paper, size)| {
        let (width, height) = (size.width.nm(), size.height.nm());
        json!({"paper": design.paper(paper).name, "width_nm": width, "height_nm": height})
    });
    let more = row.more.iter().map(|more| {
        let mut value = named(more.piece, more.paper);
        value.insert("count".into(), more.count.into());
        Value::Object(value)
    });
    json!({
        "steps": row.steps,
        "width_nm": row.size.width.nm(),
        "height_nm": row.size.height.nm(),
        "cards": {"found": row.cards.found, "bound": row.cards.bound, "proven": row.cards.proven},
        "sheets": row.sheets,
        "cuts": row.cuts,
        "leftover": leftover,
        "more": more.collect::<Vec<_>>(),
        "too_large": row.too_large.iter().map(|(piece, paper)| Value::Object(named(*piece, *paper))).collect::<Vec<_>>(),
    })
}
