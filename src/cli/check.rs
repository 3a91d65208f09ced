//! `check FILE…`

use super::args::{Check, Format, UnitsWord};
use super::open::{self, Opened};
use super::{Ended, Failure, report, say, show};
use crate::diagnostic::{Certainty, Finding};
use crate::files::{Disk, Files, cause};
use crate::mend::{self, Change};
use crate::pipeline::{self, Outcome};
use crate::readback;
use crate::side_by_side;
use crate::source::Source;
use crate::words::english::counted;
use std::io::Write;
use std::path::Path;

/// What came of one file.
struct Looked {
    /// What is said of it, in order: to the reader of the report, or beside it.
    said: Vec<Said>,
    ended: Ended,
    /// Its text and findings; none where it could not be run.
    found: Option<(Source, Vec<Finding>)>,
    /// What was mended in it.
    mended: Option<(String, Vec<Change>)>,
}

enum Said {
    Report(String),
    Talk(String),
}

pub(super) fn run(arguments: &Check, out: &mut dyn Write) -> Result<Ended, Failure> {
    let mut ended = Ended::Fine;
    let mut all: Vec<(Source, Vec<Finding>)> = Vec::new();
    let mut mended: Vec<(String, Vec<Change>)> = Vec::new();
    side_by_side::each(
        &arguments.files,
        |path| look(path, arguments),
        |_, looked| {
            for said in looked.said {
                match said {
                    Said::Report(text) => say(out, &text)?,
                    Said::Talk(text) => {
                        // What is said beside it stands where it belongs.
                        out.flush()?;
                        show::talk(&text);
                    }
                }
            }
            ended = ended.max(looked.ended);
            mended.extend(looked.mended);
            all.extend(looked.found);
            Ok::<(), Failure>(())
        },
    )?;
    if arguments.format == Format::Json {
        let mut value = report::json(&all);
        if arguments.mend {
            value["mended"] = report::mended(&mended);
        }
        say(out, &format!("{}\n", serde_json::to_string_pretty(&value).map_err(|e| Failure::new(e.to_string()))?))?;
    }
    Ok(ended)
}

/// Looks at one file.
fn look(path: &Path, arguments: &Check) -> Looked {
    let mut looked = Looked { said: Vec::new(), ended: Ended::Fine, found: None, mended: None };
    if let Err(Failure(what)) = judge(path, arguments, &mut looked) {
        looked.said.push(Said::Talk(format!("trimwright: {what}")));
        looked.ended = Ended::CouldNotRun;
    }
    looked
}

fn judge(path: &Path, arguments: &Check, looked: &mut Looked) -> Result<(), Failure> {
    let mut opened = open::open(path)?;
    if arguments.mend {
        opened = mend_file(path, opened, arguments, looked)?;
    }
    let also = arguments.units.map(UnitsWord::units);
    let outcome = if arguments.quick {
        pipeline::run_quickly(&opened.source, &opened.stem, also)
    } else {
        let outcome = pipeline::run_also(&opened.source, &opened.stem, also);
        mend::suggest(&opened.source, &opened.stem, outcome)
    };
    if outcome.has_errors() {
        looked.ended = Ended::Errors;
    } else if let Err(faults) = pipeline::referee(&outcome.editions) {
        looked.said.push(Said::Talk(super::publish::refused(&opened.source, &faults)));
        looked.ended = Ended::CouldNotRun;
        return Ok(());
    }
    if arguments.format == Format::Text {
        looked.said.push(Said::Report(told(&opened.source, &outcome, arguments)));
    }
    looked.found = Some((opened.source, outcome.findings));
    Ok(())
}

/// The report of one file as text.
fn told(source: &Source, outcome: &Outcome, arguments: &Check) -> String {
    let name = source.name();
    let mut report = String::new();
    let (shown, more) = report::worst(&outcome.findings, arguments.all);
    if !shown.is_empty() {
        let text = if arguments.plain { report::plain(source, &shown) } else { report::text(source, &shown, true) };
        let more = report::not_shown(more, name);
        report.push_str(format!("{text}{more}").trim_end());
        report.push('\n');
    }
    if let Some(tally) = show::tally(&outcome.findings) {
        report.push_str(&format!("\n{name}: {tally}\n"));
    }
    let certain = outcome.findings.iter().filter(|finding| finding.certainty == Certainty::Certain).count();
    if certain > 0 {
        let mends = counted(u32::try_from(certain).unwrap_or(u32::MAX), "finding");
        report.push_str(&format!("{name}: `check --mend` writes the edits of {mends}, which are certain\n"));
    }
    if arguments.quick {
        let sheets = if outcome.has_errors() { "" } else { ", and the sheets suffice" };
        report.push_str(&format!("{name}: checked quickly{sheets}; its cuts are judged by `check` without --quick\n"));
    } else if !outcome.has_errors() {
        for project in &outcome.editions {
            report.push_str(&format!("\n{}\n", readback::read_back(project).join("\n")));
        }
    }
    report
}

/// Writes the certain edits into a file and shows them; gives the file as it then stands.
fn mend_file(path: &Path, opened: Opened, arguments: &Check, looked: &mut Looked) -> Result<Opened, Failure> {
    let mended = mend::certain(&opened.source, &opened.stem);
    if mended.changes.is_empty() {
        return Ok(opened);
    }
    let name = opened.source.name().to_owned();
    let (old, new) = (opened.source.text().as_bytes(), mended.source.text().as_bytes());
    Disk.replace(path, old, new).map_err(|error| Failure::new(format!("cannot write `{name}`: {}", cause(&error))))?;
    if arguments.format == Format::Text {
        looked.said.push(Said::Report(format!("{}\n", report::changes(&name, &mended.changes, arguments.plain))));
    }
    looked.mended = Some((name, mended.changes));
    // The mended text may name other drawings.
    open::open(path)
}
