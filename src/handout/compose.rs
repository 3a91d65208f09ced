//! From a project to the data of its pages.
//!
//! Takes the values of the stages, gives [`HandoutData`]. Every number comes from the value that
//! was checked; every word from the catalogue. Must never know a measure of the page.

mod cutting;
mod front;
mod imprint;
mod leaf;
mod making;
mod others;
mod proof;
mod supplies;
mod try_out;

use super::Told;
use super::data::{Draft, Figure, Footer, HandoutData, Scrap, SwatchPage, said};
use super::pictures;
use crate::design::model::{Design, Pattern, PieceId};
use crate::design::variants::{Form, Page, Wanted};
use crate::drawing::style;
use crate::length::{Length, Units};
use crate::project::Project;
use crate::words::{Words, pages as words, variants};

pub(super) use imprint::stored;

/// Everything on the pages of a project's handout.
pub(super) fn compose(project: &Project, wanted: Wanted, told: &Told) -> HandoutData {
    let say = project.words();
    let design = &project.design;
    let month = month_of(design);
    let title = design.title.value.clone();
    let designer = design.giver().map(str::to_owned);
    // The designer's copy is a handout and more.
    let is_whole = matches!(wanted.form, Form::Handout | Form::DesignersCopy);
    let mut data = HandoutData {
        paper: wanted.page.unwrap_or(Page::usual(design.units)).word(),
        zoom: pictures::print(wanted).tenths(),
        fills: wanted.fills,
        lang: words::lang(say),
        file_title: titled(say, words::file_title(say, &title, month.as_deref()), wanted.form),
        author: designer.iter().cloned().collect(),
        style: style::table(wanted.fills, design.accents()),
        accents: imprint::accents(design),
        imprint: imprint::imprint(design),
        footer: Footer {
            left: designer.unwrap_or_default(),
            title,
            rest: words::footer_rest(say, month.as_deref(), design.units),
            page: words::page(say),
            of: words::of(say),
        },
        draft: told.draft.then(|| Draft {
            mark: words::draft(say),
            heading: words::findings(say),
            lead: said(&words::findings_lead(say, told.findings.is_empty())),
            lines: told.findings.clone(),
        }),
        front: None,
        sides: None,
        leaf: None,
        cutting: None,
        others: None,
        together: None,
        supplies: None,
        swatch: None,
        try_out: None,
        proof: None,
    };
    if wanted.form != Form::TryOut {
        data.front = Some(front::page(project, wanted));
    }
    if is_whole {
        data.sides = front::sides(project, wanted);
        data.cutting = Some(cutting::pages(project, wanted));
        data.others = others::pages(project, wanted);
        data.together = making::pages(project, wanted);
        data.supplies = Some(supplies::pages(project, wanted));
        data.swatch = Some(swatch(project, wanted));
    }
    match wanted.form {
        Form::Handout => {}
        Form::Leaf => data.leaf = Some(leaf::page(project, wanted)),
        Form::DesignersCopy => data.proof = Some(proof::pages(project, told)),
        Form::TryOut => data.try_out = Some(try_out::pages(project)),
    }
    data
}

/// The file's title with what it is for.
fn titled(say: &Words, title: String, form: Form) -> String {
    match form {
        Form::Handout => title,
        Form::Leaf => variants::leaf_title(say, &title),
        Form::TryOut => variants::try_out_title(say, &title),
        Form::DesignersCopy => variants::copy_title(say, &title),
    }
}

fn swatch(project: &Project, wanted: Wanted) -> SwatchPage {
    let say = project.words();
    let design = &project.design;
    let outline = |version, large| {
        let scene = pictures::outline(project, large, wanted)?;
        Some(Figure { caption: said(&words::outline_caption(say, &design.version(version).name)), scene })
    };
    // Up to two versions: one large outline to work on, two small ones to try. More: one each.
    let ids: Vec<_> = design.version_ids().collect();
    let outlines: Vec<_> = match ids.as_slice() {
        [only] if wanted.large => vec![(*only, false)],
        [only] => vec![(*only, true), (*only, false), (*only, false)],
        [one, two] if !wanted.large => vec![(*one, true), (*one, false), (*two, false)],
        several => several.iter().map(|id| (*id, false)).collect(),
    };
    let bought = design.papers.iter().filter(|paper| paper.kept_from.is_none());
    SwatchPage {
        across: if wanted.large { 2 } else { front::across(design) },
        title: words::swatch(say),
        lead: said(&words::swatch_lead(say)),
        cards: outlines.into_iter().filter_map(|(version, large)| outline(version, large)).collect(),
        papers_title: words::my_papers(say),
        papers: bought.map(|paper| Scrap { label: said(&words::for_paper(say, &paper.name)) }).collect(),
    }
}

/// "November 2026".
fn month_of(design: &Design) -> Option<String> {
    let say = design.words();
    design.month.map(|month| words::month(say, month.value.year, month.value.month))
}

/// A length with its unit, in the project's system.
fn with_unit(length: Length, units: Units) -> String {
    format!("{} {}", length.number(units), units.sign())
}

/// The catalogue's words for a pattern's direction.
fn pattern_words(say: &Words, pattern: Pattern) -> Option<String> {
    match pattern {
        Pattern::Any => None,
        Pattern::TwoWay => Some(words::two_way(say)),
        Pattern::OneWay => Some(words::one_way(say)),
    }
}

/// How many of a piece all cards need.
fn needed(design: &Design, piece: PieceId) -> u32 {
    design.per_card(piece).saturating_mul(design.cards.value)
}

/// A count that is never too large to print.
fn small(count: usize) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}
