//! The command line: words in, reports out, exit code.
//!
//! The only place that makes a disk, reads the clock and prints. Exit codes: 0 fine (warnings and
//! notes included), 1 at least one error in a design, 2 could not run.

mod args;
mod check;
mod cuts;
pub mod explain;
mod new;
mod open;
mod publish;
pub mod report;
mod show;
mod sizes;
mod templates;
mod what_if;

use args::{Arguments, Command};
use clap::Parser;
use std::io::Write;
use std::process::ExitCode;

/// How a command ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Ended {
    /// All well.
    Fine,
    /// At least one error in a design.
    Errors,
    /// Something could not be run.
    CouldNotRun,
}

/// Something that could not be run: what and why.
#[derive(Debug)]
struct Failure(String);

impl Failure {
    fn new(what: impl Into<String>) -> Self {
        Self(what.into())
    }
}

impl From<std::io::Error> for Failure {
    fn from(error: std::io::Error) -> Self {
        Self(error.to_string())
    }
}

/// Runs the command line that the process was started with.
#[must_use]
pub fn main() -> ExitCode {
    let arguments = match Arguments::try_parse() {
        Ok(arguments) => arguments,
        Err(error) => {
            let code = if error.use_stderr() { 2 } else { 0 };
            // Help into a closed pipe is nobody's fault.
            let _ = error.print();
            return ExitCode::from(code);
        }
    };
    let mut out = anstream::AutoStream::auto(std::io::stdout()).lock();
    let ended = match run(&arguments.command, &mut out).and_then(|ended| {
        out.flush()?;
        Ok(ended)
    }) {
        Ok(ended) => ended,
        Err(Failure(what)) if what == BROKEN_PIPE => Ended::Fine,
        Err(Failure(what)) => {
            show::talk(&format!("trimwright: {what}"));
            Ended::CouldNotRun
        }
    };
    ExitCode::from(match ended {
        Ended::Fine => 0,
        Ended::Errors => 1,
        Ended::CouldNotRun => 2,
    })
}

/// What a write into a closed pipe says; a reader who has seen enough is no error.
const BROKEN_PIPE: &str = "broken pipe";

/// Writes what was asked for.
fn say(out: &mut dyn Write, text: &str) -> Result<(), Failure> {
    out.write_all(text.as_bytes()).map_err(|error| match error.kind() {
        std::io::ErrorKind::BrokenPipe => Failure::new(BROKEN_PIPE),
        _ => Failure::new(format!("cannot write the report: {error}")),
    })
}

fn run(command: &Command, out: &mut dyn Write) -> Result<Ended, Failure> {
    match command {
        Command::New(arguments) => new::run(arguments, out),
        Command::Check(arguments) => check::run(arguments, out),
        Command::Cuts(arguments) => cuts::run(arguments, out),
        Command::Sizes(arguments) => sizes::run(arguments, out),
        Command::Publish(arguments) => publish::run(arguments, out),
        Command::Templates(arguments) => templates::run(arguments, out),
        Command::Explain(arguments) => {
            let text = explain::explain(arguments.rule.as_deref()).map_err(Failure::new)?;
            say(out, &text)?;
            Ok(Ended::Fine)
        }
    }
}
