//! `publish FILE… --to DIR`

use super::args::{Publish, UnitsWord};
use super::{Ended, Failure, open, report, say, show, templates};
use crate::cutting::verify::Fault;
use crate::design::variants::Wanted;
use crate::diagnostic::{Finding, Severity};
use crate::edition::{bundle, publish};
use crate::files::Disk;
use crate::handout::{Templates, Told};
use crate::length::Units;
use crate::pipeline;
use crate::source::Source;
use std::io::Write;
use std::path::Path;

pub(super) fn run(arguments: &Publish, out: &mut dyn Write) -> Result<Ended, Failure> {
    let templates = arguments.templates.as_deref().map_or_else(|| Ok(Templates::built_in()), templates::open)?;
    let mut ended = Ended::Fine;
    for path in &arguments.files {
        let one = one(path, arguments, &templates, out).or_else(|failure| match failure {
            Failure(what) if what == super::BROKEN_PIPE => Err(Failure(what)),
            // One design that cannot be run does not keep the others from their readers.
            Failure(what) => {
                show::talk(&format!("trimwright: {what}"));
                Ok(Ended::CouldNotRun)
            }
        })?;
        ended = ended.max(one);
    }
    Ok(ended)
}

fn one(path: &Path, arguments: &Publish, templates: &Templates, out: &mut dyn Write) -> Result<Ended, Failure> {
    let opened = open::open(path)?;
    let name = opened.source.name();
    let also = arguments.units.map(UnitsWord::units);
    let outcome = pipeline::run_told(&opened.source, &opened.stem, also, arguments.language);
    show::report(&opened.source, &outcome.findings);
    let broken = outcome.has_errors();
    if broken && !arguments.draft {
        show::talk(&format!(
            "trimwright: `{name}` is not published: {}{}; mend it, or see it as it is with --draft",
            show::tally(&outcome.findings).unwrap_or_default(),
            at_fault(&outcome.findings)
        ));
        return Ok(Ended::Errors);
    }
    if outcome.editions.is_empty() {
        show::talk(&format!("trimwright: `{name}` has too many faults to be drawn"));
        return Ok(Ended::Errors);
    }
    if outcome.editions.iter().any(|project| project.design.card.is_none()) {
        return Err(Failure::new(format!(
            "cannot publish `{name}`: it has no `card` and no `front`, so only `trimwright cuts` can use it"
        )));
    }
    if !broken && let Err(faults) = pipeline::referee(&outcome.editions) {
        return Err(Failure::new(refused(&opened.source, &faults)));
    }
    let lines = |findings: &[Finding]| -> Vec<String> {
        report::plain(&opened.source, findings).lines().map(str::to_owned).collect()
    };
    let (allowed, found): (Vec<Finding>, Vec<Finding>) =
        outcome.findings.iter().cloned().partition(|finding| finding.allowed.is_some());
    let told = Told {
        draft: arguments.draft,
        findings: if arguments.draft { lines(&outcome.findings) } else { lines(&found) },
        allowed: lines(&allowed),
    };
    let mut also = arguments.also.clone();
    if arguments.every {
        also.extend(Wanted::all());
    }
    let bundle = bundle::bundle_with(&outcome.editions, &opened.stem, &also, &told, templates)
        .map_err(|what| Failure::new(format!("cannot publish `{name}`: {what}")))?;
    let written = publish::publish(&mut Disk, &arguments.to, &bundle).map_err(|error| {
        Failure::new(format!(
            "cannot write `{}`: {}",
            arguments.to.join(&bundle.folder).display(),
            crate::files::cause(&error)
        ))
    })?;
    for path in written {
        say(out, &format!("{}\n", path.display()))?;
    }
    Ok(if broken { Ended::Errors } else { Ended::Fine })
}

/// Which edition holds the other back, where all errors are of one.
fn at_fault(findings: &[Finding]) -> String {
    let mut editions = findings.iter().filter(|one| one.severity == Severity::Error).map(|one| one.edition);
    let first = editions.next().flatten();
    match first.filter(|_| editions.all(|edition| edition == first)) {
        Some(units) => format!(", the errors all in the {} edition, which holds the other back", units.word()),
        None => String::new(),
    }
}

/// What is said when the referee does not end with the promised pieces: a fault of the program,
/// never of the design, and nothing is printed from it.
pub(super) fn refused(source: &Source, faults: &[(Units, Fault)]) -> String {
    let mut text = format!(
        "`{}` is held back: the cuts, replayed one by one, do not give what the plan promises. This is a fault of \
         trimwright, not of the design; please report it with the design file.",
        source.name()
    );
    for (units, fault) in faults {
        text.push_str(&format!("\n  {} edition: {}", units.word(), fault.message));
    }
    text
}
