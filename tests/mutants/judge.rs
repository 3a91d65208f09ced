//! Each mutant judged twice: by what it changes, reckoned plainly, and by what the program says of it.

use super::reckon::{self, Facts, facts};
use super::write::{Mutant, Sound};
use crate::support::quick;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use trimwright::cutting::demand::{PaperDemand, demand};
use trimwright::cutting::plan::{Aim, Aims, CutPlan};
use trimwright::design::model::Design;
use trimwright::diagnostic::{Finding, Severity};
use trimwright::files::Disk;
use trimwright::layout::place::place;
use trimwright::pipeline;
use trimwright::project::Project;
use trimwright::readback::read_back;
use trimwright::rules::REGISTRY;
use trimwright::source::Source;

/// What a mutant changes. The first that fits, from top to bottom.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Class {
    /// The text no longer reads: what was broken shows it, or no design comes of it.
    Unreadable,
    /// It contradicts something stated: a claim, a sum, a twin.
    Contradicts,
    /// A layer reaches past what it lies on, or copies lie over each other.
    Fit,
    /// A layer lies over another that it is not put on, and did not before.
    Overlap,
    /// What is to be trimmed ends before the edge.
    Reach,
    /// Another number of cards, pieces or sheets.
    Count,
    /// Another design, in which nothing of this is wrong.
    Other,
    /// The same design.
    Same,
}

impl Class {
    pub(crate) const ALL: [Self; 8] = [
        Self::Unreadable,
        Self::Contradicts,
        Self::Fit,
        Self::Overlap,
        Self::Reach,
        Self::Count,
        Self::Other,
        Self::Same,
    ];

    pub(crate) const fn words(self) -> &'static str {
        match self {
            Self::Unreadable => "a: no longer reads",
            Self::Contradicts => "b: contradicts what is stated",
            Self::Fit => "c: no longer fits",
            Self::Overlap => "c: lies over another",
            Self::Reach => "c: no longer reaches",
            Self::Count => "c: counts change",
            Self::Other => "d: another sound design",
            Self::Same => "d: the same design",
        }
    }

    /// Whether so much must be said of it.
    pub(crate) fn is_caught(self, told: Told) -> bool {
        match self {
            Self::Unreadable | Self::Contradicts | Self::Fit | Self::Overlap | Self::Reach => told >= Told::Warning,
            Self::Count => told >= Told::ReadBack,
            Self::Other | Self::Same => true,
        }
    }
}

/// The most that is said of a mutant and not of the sound design.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Told {
    Nothing,
    ReadBack,
    Note,
    Warning,
    Error,
}

impl Told {
    pub(crate) const ALL: [Self; 5] = [Self::Error, Self::Warning, Self::Note, Self::ReadBack, Self::Nothing];
}

/// What came of a mutant.
#[derive(Debug, Clone)]
pub(crate) struct Verdict {
    pub(crate) class: Class,
    pub(crate) told: Told,
    /// The codes that were found.
    pub(crate) codes: BTreeSet<&'static str>,
    /// What was reckoned, for a list of survivors.
    pub(crate) reckoned: String,
}

/// One edition of a sound design, with all that is known of it.
struct Edition {
    design: Design,
    text: String,
    facts: Facts,
    demand: Vec<PaperDemand>,
    plan: CutPlan,
    notes: BTreeSet<(&'static str, String)>,
    read_back: Vec<String>,
    /// Codes that are found of it where no sheet is cut: their rules ask for a plan.
    blind: BTreeSet<&'static str>,
}

/// A sound demo.
pub(crate) struct Demo {
    pub(crate) name: String,
    path: PathBuf,
    pub(crate) sound: Sound,
    line_text: String,
    editions: Vec<Edition>,
    /// What the reader says of it, which the design allows.
    read: BTreeSet<(&'static str, String)>,
}

/// No sheet cut, for the rules that look at none.
fn no_plan(design: &Design) -> CutPlan {
    let aim = Aim { found: 0, bound: 0, proven: false };
    let aims = Aims { cards: aim, sheets: aim, diagrams: aim, cuts: aim, changes: aim, leftover: aim };
    let (units, cards) = (design.units, design.cards.value);
    CutPlan { units, cards, most: None, aims, sheets: Vec::new(), missing: Vec::new() }
}

/// The stages after a plan and what the rules find; other sheets that somebody may hold are left out, since
/// planning them takes longest.
fn finished(design: &Design, plan: CutPlan) -> (Project, Vec<Finding>) {
    let mut design = design.clone();
    design.papers.iter_mut().for_each(|paper| paper.also.clear());
    pipeline::finish(design, plan)
}

/// Whether a finding comes from a rule that looks at sheets.
fn is_of_sheets(finding: &Finding) -> bool {
    let rule = REGISTRY.iter().find(|rule| rule.code == finding.code);
    rule.is_some_and(|rule| matches!(rule.group, "cutting" | "counts" | "papers"))
}

fn noted(findings: &[Finding]) -> BTreeSet<(&'static str, String)> {
    findings.iter().map(|finding| (finding.code, finding.message.clone())).collect()
}

/// A finding of the reader, wherever its line stands.
fn told_at(finding: &Finding) -> (&'static str, String) {
    (finding.code, finding.primary.text.clone())
}

impl Demo {
    pub(crate) fn new(path: &Path) -> Self {
        let text = std::fs::read_to_string(path).expect("the design");
        let source = pipeline::with_drawings(Source::new("design.yaml", text.as_str()), &Disk, path);
        let settled = pipeline::settle(&source, "design", None);
        let read = settled.findings().iter().map(told_at).collect();
        let editions = settled.designs.into_iter().map(|design| {
            let (plan, demand) = (quick(&design), demand(&design));
            let (own, found) = finished(&design, plan.clone());
            let mut facts = facts(&design, &own.layout);
            facts.counts.extend(reckon::sheets(&design, &plan));
            let notes = noted(&found);
            let text = reckon::without_places(&design);
            let blind = finished(&design, no_plan(&design)).1.into_iter().map(|finding| finding.code).collect();
            let read_back = read_back(&own);
            Edition { text, facts, demand, plan, notes, read_back, blind, design }
        });
        let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
        let (sound, editions) = (Sound::new(&text), editions.collect());
        Self { name, path: path.to_owned(), sound, line_text: text, editions, read }
    }

    /// Judges one mutant.
    pub(crate) fn judge(&self, mutant: &Mutant) -> Verdict {
        let source = pipeline::with_drawings(Source::new("design.yaml", mutant.text.as_str()), &Disk, &self.path);
        let settled = pipeline::settle(&source, "design", None);
        let mut findings: Vec<Finding> = settled.findings();
        findings.retain(|finding| !self.read.contains(&told_at(finding)));
        let read = findings.clone();
        let worst = |findings: &[Finding]| findings.iter().map(|finding| finding.severity).min();
        let mut told = Told::Nothing;
        let raise = |told: &mut Told, by: Option<Severity>| {
            let by = match by {
                Some(Severity::Error) => Told::Error,
                Some(Severity::Warning) => Told::Warning,
                Some(Severity::Note) => Told::Note,
                None => Told::Nothing,
            };
            *told = by.max(*told);
        };
        raise(&mut told, worst(&findings));
        let mut classes: Vec<(Class, String)> = Vec::new();
        let mut same = settled.designs.len() == self.editions.len();
        for design in &settled.designs {
            // An edition in other units is held against the first.
            let own = self.editions.iter().find(|own| own.design.units == design.units);
            let Some(own) = own.or(self.editions.first()) else { continue };
            if reckon::without_places(design) == own.text {
                continue;
            }
            same = false;
            let layout = place(design);
            let mut facts = facts(design, &layout);
            let demand = demand(design);
            let planned = (demand == own.demand).then(|| own.plan.clone());
            if told < Told::Warning {
                let (_, mut found) = finished(design, no_plan(design));
                found.retain(|finding| !is_of_sheets(finding) && !own.blind.contains(finding.code));
                let new = self.new_of(own, found);
                raise(&mut told, worst(&new));
                findings.extend(new);
            }
            if told < Told::Warning {
                let plan = planned.unwrap_or_else(|| quick(design));
                facts.counts.extend(reckon::sheets(design, &plan));
                let (whole, found) = finished(design, plan);
                let new = self.new_of(own, found);
                raise(&mut told, worst(&new));
                findings.extend(new);
                if read_back(&whole) != own.read_back {
                    told = told.max(Told::ReadBack);
                }
            } else {
                // Sheets that were not counted are no change.
                let sheets = own
                    .facts
                    .counts
                    .iter()
                    .filter(|count| count.contains(" sheets of ") || count.ends_with(" missing"));
                facts.counts.extend(sheets.cloned());
            }
            classes.extend(compare(&own.facts, &facts));
        }
        let line = mutant.after.lines().any(reckon::twins_are_far) && !mutant.before.lines().any(reckon::twins_are_far);
        if line {
            classes.push((Class::Contradicts, "twins far apart".to_owned()));
        }
        if reckon::sum_is_off(&mutant.text) && !reckon::sum_is_off(&self.line_text) {
            classes.push((Class::Contradicts, "cards of the versions".to_owned()));
        }
        if mutant.unreadable {
            classes.push((Class::Unreadable, "by what was broken".to_owned()));
        }
        classes.sort();
        let (class, reckoned) =
            classes.into_iter().next().unwrap_or_else(|| match (same, settled.designs.is_empty()) {
                _ if told == Told::Error && worst(&read) == Some(Severity::Error) => {
                    (Class::Unreadable, "by the reader alone".to_owned())
                }
                (true, _) => (Class::Same, String::new()),
                (false, _) => (Class::Other, String::new()),
            });
        Verdict { class, told, codes: findings.iter().map(|finding| finding.code).collect(), reckoned }
    }

    /// What is found of a mutant and not of the sound design.
    fn new_of(&self, own: &Edition, findings: Vec<Finding>) -> Vec<Finding> {
        findings.into_iter().filter(|f| !own.notes.contains(&(f.code, f.message.clone()))).collect()
    }
}

/// What is wrong of one and not of the other.
fn compare(own: &Facts, now: &Facts) -> Vec<(Class, String)> {
    let new = |class: Class, own: &BTreeSet<String>, now: &BTreeSet<String>| {
        now.difference(own).next().map(|first| (class, first.clone()))
    };
    [
        new(Class::Contradicts, &own.claims, &now.claims),
        new(Class::Fit, &own.fits, &now.fits),
        new(Class::Overlap, &own.overlaps, &now.overlaps),
        new(Class::Reach, &own.short, &now.short),
        new(Class::Count, &own.counts, &now.counts),
    ]
    .into_iter()
    .flatten()
    .collect()
}
