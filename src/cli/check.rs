//! `check FILE…`

use super::args::{Check, Format, UnitsWord};
use super::{Ended, Failure, open, report, say, show};
use crate::diagnostic::Finding;
use crate::pipeline;
use crate::readback;
use crate::source::Source;
use std::io::Write;

pub(super) fn run(arguments: &Check, out: &mut dyn Write) -> Result<Ended, Failure> {
    let mut ended = Ended::Fine;
    let mut all: Vec<(Source, Vec<Finding>)> = Vec::new();
    for path in &arguments.files {
        let opened = match open::open(path) {
            Ok(opened) => opened,
            Err(Failure(what)) => {
                show::talk(&format!("trimwright: {what}"));
                ended = Ended::CouldNotRun;
                continue;
            }
        };
        let also = arguments.units.map(UnitsWord::units);
        let outcome = pipeline::run_also(&opened.source, &opened.stem, also);
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
            if !outcome.has_errors() {
                for project in &outcome.editions {
                    let lines = readback::read_back(project);
                    say(out, &format!("\n{}\n", lines.join("\n")))?;
                }
            }
        }
        all.push((opened.source, outcome.findings));
    }
    if arguments.format == Format::Json {
        let value = report::json(&all);
        say(out, &format!("{}\n", serde_json::to_string_pretty(&value).map_err(|e| Failure::new(e.to_string()))?))?;
    }
    Ok(ended)
}
