//! `cuts --most` and `cuts --paper`: a design planned with a change that the file does not say; and the
//! plans of other sheets that it does say.

use super::args::Cuts;
use super::{Ended, Failure, open, show};
use crate::cutting::json::to_json;
use crate::cutting::plan::CutPlan;
use crate::cutting::search;
use crate::cutting::search::most::{Most, plan_most, short_of};
use crate::cutting::search::sheet::Limits;
use crate::design::model::{Design, PaperId, Sheets};
use crate::design::settle;
use crate::diagnostic::{Finding, Label, Severity};
use crate::pipeline;
use crate::project::{Other, Project};
use crate::source::{Source, Span};
use crate::words::{Words, cutting, stock};
use serde_json::{Map, Value, json};
use std::fmt::Write as _;

/// A changed design, planned.
pub(super) struct Changed {
    pub(super) project: Project,
    /// What is said before the plan.
    pub(super) lead: Vec<String>,
    /// What the plan's JSON has besides.
    pub(super) json: Map<String, Value>,
    pub(super) ended: Ended,
}

/// Sheets said on the command line: their text, and where it would stand behind the file's text, so
/// that a finding tells by its place which text it is about.
struct Argument {
    source: Source,
    from: usize,
}

/// Plans the design as the arguments change it. None where the design or an argument cannot be
/// read, which has then been said.
pub(super) fn run(arguments: &Cuts, opened: &open::Opened) -> Result<Result<Changed, Ended>, Failure> {
    let wanted = arguments.units.map(super::args::UnitsWord::units);
    let settled = pipeline::settle(&opened.source, &opened.stem, wanted);
    let design = settled.designs.iter().find(|design| wanted.is_none_or(|units| design.units == units));
    let Some(design) = design else {
        let found = settled.findings();
        show::report(&opened.source, &found);
        if found.iter().any(|finding| finding.severity == Severity::Error) {
            return Ok(Err(Ended::Errors));
        }
        return Err(super::cuts::no_edition(&opened.source, wanted));
    };
    let Some((mut design, texts, mut lead)) = with_papers(&arguments.paper, design, opened.source.text().len() + 1)
    else {
        return Ok(Err(Ended::CouldNotRun));
    };
    for paper in &mut design.papers {
        paper.also.clear();
    }
    let mut json = Map::new();
    let plan = if arguments.most {
        let asked = design.cards.value;
        let (limits, mut known) = (Limits::default(), search::Known::default());
        let (planned, plan, most) = plan_most(&design, &limits, &mut known);
        let short = short_of(&design, most.found.saturating_add(1), &limits, &mut known);
        design = planned;
        tell(&design, (&most, &short), asked, &mut lead, &mut json);
        plan
    } else {
        search::plan(&design)
    };
    let (project, more) = pipeline::finish(design, plan);
    let findings = settled.findings_with(project.units(), more);
    report(&opened.source, &texts, &findings);
    let wrong = findings.iter().any(|finding| finding.severity == Severity::Error);
    Ok(Ok(Changed { project, lead, json, ended: if wrong { Ended::Errors } else { Ended::Fine } }))
}

/// The design with the sheets said, and a sentence for each; none where a text has a fault.
fn with_papers(said: &[String], design: &Design, behind: usize) -> Option<(Design, Vec<Argument>, Vec<String>)> {
    let say = Words::english();
    let mut changed = design.clone();
    let (mut texts, mut lead, mut from) = (Vec::new(), Vec::new(), behind);
    let mut sound = true;
    let mut taken: Vec<PaperId> = Vec::new();
    for text in said {
        let source = Source::new("--paper", text.clone());
        match settle::said(&source, design) {
            Err(findings) => {
                show::report(&source, &findings);
                sound = false;
            }
            Ok(said) if taken.contains(&said.paper) => {
                let name = &design.paper(said.paper).name;
                let end = text.find('=').unwrap_or(text.len());
                let twice = Finding::error(
                    "repeated-key",
                    Span::new(0, end),
                    format!("the sheets of `{name}` are said twice"),
                    "the second",
                )
                .help(format!("say them in 1 text, such as `{name}=3 of 6 x 6 in and 1 of letter`"));
                show::report(&source, &[twice]);
                sound = false;
            }
            Ok(said) => {
                taken.push(said.paper);
                let shift = |sheets: &Sheets| Sheets {
                    span: Span::new(sheets.span.start + from, sheets.span.end + from),
                    ..sheets.clone()
                };
                let paper = &design.papers[said.paper.0];
                lead.push(stock::instead(say, &paper.name, &sheets_words(&said.sheets), &sheets_words(&paper.sheets)));
                match paper.edge_strip {
                    Some(strip) if said.edge_strip => {
                        lead.push(stock::keeps_its_strip(say, &strip.width.to_string(), strip.edge));
                    }
                    _ => changed.papers[said.paper.0].edge_strip = None,
                }
                changed = changed.with_sheets(said.paper, said.sheets.iter().map(shift).collect());
                let length = text.len() + 1;
                texts.push(Argument { source, from });
                from += length;
            }
        }
    }
    sound.then_some((changed, texts, lead))
}

/// The plans of other sheets, each under its own heading, with only that paper's sheets. `sheet` writes
/// one sheet of a plan.
pub(super) fn other_sheets(project: &Project, sheet: impl Fn(&mut String, &Design, &CutPlan, usize)) -> String {
    let say = Words::english();
    let mut text = String::new();
    for other in &project.others {
        let plan = other.own_plan();
        let paper = other.design.paper(other.paper);
        let _ = write!(text, "\n{}\n", stock::cut_from(say, &paper.name, &sheets_words(&paper.sheets)));
        for index in 0..plan.sheets.len() {
            sheet(&mut text, &other.design, &plan, index);
        }
        let _ = write!(
            text,
            "\n{}\n",
            cutting::totals(say, plan.cuts(), small(plan.sheets_used()), small(plan.diagrams()))
        );
        for missing in &plan.missing {
            let name = &other.design.piece(missing.piece).name;
            let _ = writeln!(text, "{}", cutting::missing(say, missing.count, name, &paper.name));
        }
        if let (false, Some(most)) = (plan.missing.is_empty(), plan.most) {
            let _ = writeln!(text, "{}", stock::other_gives(say, most, project.design.cards.value));
        }
    }
    text
}

/// The same for programs: the paper, its other sheets, and their plan without aims, which are of
/// whole plans.
pub(super) fn other_json(other: &Other) -> Value {
    let plan = other.own_plan();
    let mut value = to_json(&other.design, &plan);
    if let Some(value) = value.as_object_mut() {
        value.remove("aims");
        let paper = other.design.paper(other.paper);
        value.insert("paper".into(), paper.name.clone().into());
        value.insert("from".into(), sheets_words(&paper.sheets).into());
        let missing = plan
            .missing
            .iter()
            .map(|missing| json!({"piece": other.design.piece(missing.piece).name, "count": missing.count}));
        value.insert("missing".into(), missing.collect());
    }
    value
}

fn small(count: usize) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}

/// `1 of 12 x 12 in and 2 of letter`.
fn sheets_words(sheets: &[Sheets]) -> String {
    let say = Words::english();
    stock::sheets(say, &sheets.iter().map(Sheets::count_and_name).collect::<Vec<_>>())
}

/// What `--most` found, in words and for JSON.
fn tell(
    design: &Design,
    (most, short): (&Most, &[PaperId]),
    asked: u32,
    lead: &mut Vec<String>,
    json: &mut Map<String, Value>,
) {
    let say = Words::english();
    let named = design.versions.iter().filter(|version| !version.name.is_empty());
    let versions: Vec<(u32, String)> = named.map(|version| (version.cards, version.name.clone())).collect();
    let papers: Vec<String> = short.iter().map(|paper| design.paper(*paper).name.clone()).collect();
    lead.push(stock::most(say, most.found, most.bound, &versions, asked));
    let runs_out = stock::runs_out(say, &papers, most.proven());
    if !runs_out.is_empty() {
        lead.push(runs_out);
    }
    let shares = versions.iter().map(|(cards, name)| json!({"name": name, "cards": cards}));
    json.insert("versions".into(), shares.collect());
    json.insert("runs_out".into(), papers.into());
}

/// Findings, each in the text that it is about: the file or what was said. A place in another text
/// cannot be shown beside it and is left out.
fn report(file: &Source, texts: &[Argument], findings: &[Finding]) {
    let mut rest: Vec<&Finding> = findings.iter().collect();
    for text in texts {
        let within = |span: Span| span.start >= text.from && span.end <= text.from + text.source.text().len();
        let is_here = |finding: &Finding| finding.file.is_none() && within(finding.primary.span);
        let here: Vec<Finding> =
            rest.iter().filter(|finding| is_here(finding)).map(|f| moved(f, text, within)).collect();
        rest.retain(|finding| !is_here(finding));
        show::report(&text.source, &here);
    }
    let end = file.text().len();
    let here: Vec<Finding> = rest
        .into_iter()
        .map(|finding| {
            let others = finding.others.iter().filter(|label| label.span.end <= end).cloned().collect();
            Finding { others, ..finding.clone() }
        })
        .collect();
    show::report(file, &here);
}

fn moved(finding: &Finding, text: &Argument, within: impl Fn(Span) -> bool) -> Finding {
    let back = |label: &Label| Label {
        span: Span::new(label.span.start - text.from, label.span.end - text.from),
        text: label.text.clone(),
    };
    Finding {
        primary: back(&finding.primary),
        others: finding.others.iter().filter(|label| within(label.span)).map(back).collect(),
        ..finding.clone()
    }
}
