//! `check FILE…`

use super::args::{Check, Format, UnitsWord};
use super::open::{self, Opened};
use super::{Ended, Failure, report, say, show};
use crate::diagnostic::{Certainty, Finding};
use crate::files::{Disk, Files, cause};
use crate::mend::{self, Change};
use crate::pipeline;
use crate::readback;
use crate::source::Source;
use crate::words::english::counted;
use std::io::Write;
use std::path::Path;

pub(super) fn run(arguments: &Check, out: &mut dyn Write) -> Result<Ended, Failure> {
    let mut ended = Ended::Fine;
    let mut all: Vec<(Source, Vec<Finding>)> = Vec::new();
    let mut mended: Vec<(String, Vec<Change>)> = Vec::new();
    for path in &arguments.files {
        let opened = match open::open(path) {
            Ok(opened) => opened,
            Err(Failure(what)) => {
                show::talk(&format!("trimwright: {what}"));
                ended = Ended::CouldNotRun;
                continue;
            }
        };
        let opened = if arguments.mend {
            match mend_file(path, opened, arguments, out, &mut mended) {
                Ok(opened) => opened,
                Err(Failure(what)) if what == super::BROKEN_PIPE => return Err(Failure(what)),
                Err(Failure(what)) => {
                    show::talk(&format!("trimwright: {what}"));
                    ended = Ended::CouldNotRun;
                    continue;
                }
            }
        } else {
            opened
        };
        let also = arguments.units.map(UnitsWord::units);
        let outcome = if arguments.quick {
            pipeline::run_quickly(&opened.source, &opened.stem, also)
        } else {
            let outcome = pipeline::run_also(&opened.source, &opened.stem, also);
            mend::suggest(&opened.source, &opened.stem, outcome)
        };
        if outcome.has_errors() {
            ended = ended.max(Ended::Errors);
        } else if let Err(faults) = pipeline::referee(&outcome.editions) {
            show::talk(&super::publish::refused(&opened.source, &faults));
            ended = Ended::CouldNotRun;
            continue;
        }
        if arguments.format == Format::Text {
            let name = opened.source.name();
            let (shown, more) = report::worst(&outcome.findings, arguments.all);
            if !shown.is_empty() {
                let text = if arguments.plain {
                    report::plain(&opened.source, &shown)
                } else {
                    report::text(&opened.source, &shown, true)
                };
                let more = report::not_shown(more, name);
                say(out, &format!("{}\n", format!("{text}{more}").trim_end()))?;
            }
            if let Some(tally) = show::tally(&outcome.findings) {
                say(out, &format!("\n{name}: {tally}\n"))?;
            }
            let certain = outcome.findings.iter().filter(|finding| finding.certainty == Certainty::Certain).count();
            if certain > 0 {
                let mends = counted(u32::try_from(certain).unwrap_or(u32::MAX), "finding");
                say(out, &format!("{name}: `check --mend` writes the edits of {mends}, which are certain\n"))?;
            }
            if arguments.quick {
                let sheets = if outcome.has_errors() { "" } else { ", and the sheets suffice" };
                say(
                    out,
                    &format!("{name}: checked quickly{sheets}; its cuts are judged by `check` without --quick\n"),
                )?;
            } else if !outcome.has_errors() {
                for project in &outcome.editions {
                    let lines = readback::read_back(project);
                    say(out, &format!("\n{}\n", lines.join("\n")))?;
                }
            }
        }
        all.push((opened.source, outcome.findings));
    }
    if arguments.format == Format::Json {
        let mut value = report::json(&all);
        if arguments.mend {
            value["mended"] = report::mended(&mended);
        }
        say(out, &format!("{}\n", serde_json::to_string_pretty(&value).map_err(|e| Failure::new(e.to_string()))?))?;
    }
    Ok(ended)
}

/// Writes the certain edits into a file and shows them; gives the file as it then stands.
fn mend_file(
    path: &Path,
    opened: Opened,
    arguments: &Check,
    out: &mut dyn Write,
    all: &mut Vec<(String, Vec<Change>)>,
) -> Result<Opened, Failure> {
    let mended = mend::certain(&opened.source, &opened.stem);
    if mended.changes.is_empty() {
        return Ok(opened);
    }
    let name = opened.source.name().to_owned();
    let (old, new) = (opened.source.text().as_bytes(), mended.source.text().as_bytes());
    Disk.replace(path, old, new).map_err(|error| Failure::new(format!("cannot write `{name}`: {}", cause(&error))))?;
    if arguments.format == Format::Text {
        say(out, &format!("{}\n", report::changes(&name, &mended.changes, arguments.plain)))?;
    }
    all.push((name, mended.changes));
    // The mended text may name other drawings.
    open::open(path)
}
