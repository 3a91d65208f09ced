//! From a project to the data of its pages.
//!
//! Takes the values of the stages, gives [`HandoutData`]. Every number comes from the value that
//! was checked; every word from the catalogue. Must never know a measure of the page.

mod cutting;
mod front;
mod imprint;
mod making;
mod others;
mod supplies;

use super::data::{Draft, Figure, Footer, HandoutData, Scrap, SwatchPage, said};
use super::pictures;
use crate::design::model::{Design, Pattern, PieceId};
use crate::drawing::style;
use crate::length::{Length, Units};
use crate::project::Project;
use crate::words::english::pages as words;

pub(super) use imprint::stored;

/// Everything on the pages of a project's handout.
pub(super) fn compose(project: &Project, draft: Option<&[String]>) -> HandoutData {
    let design = &project.design;
    let month = month_of(design);
    let title = design.title.value.clone();
    let designer = design.giver().map(str::to_owned);
    HandoutData {
        paper: match design.units {
            Units::Inch => "letter",
            Units::Metric => "a4",
        },
        lang: words::LANG,
        file_title: words::file_title(&title, month.as_deref()),
        author: designer.iter().cloned().collect(),
        style: style::table(design.accents()),
        accents: imprint::accents(design),
        imprint: imprint::imprint(design),
        footer: Footer {
            left: designer.unwrap_or_default(),
            title,
            rest: words::footer_rest(month.as_deref(), design.units),
            page: words::PAGE,
            of: words::OF,
        },
        draft: draft.map(|lines| Draft {
            mark: words::DRAFT,
            heading: words::FINDINGS,
            lead: said(&words::findings_lead(lines.is_empty())),
            lines: lines.to_vec(),
        }),
        front: front::page(project),
        sides: front::sides(project),
        cutting: cutting::pages(project),
        others: others::pages(project),
        together: making::pages(project),
        supplies: supplies::pages(project),
        swatch: swatch(project),
    }
}

fn swatch(project: &Project) -> SwatchPage {
    let design = &project.design;
    let outline = |version, large| {
        let scene = pictures::outline(project, large)?;
        Some(Figure { caption: said(&words::outline_caption(&design.version(version).name)), scene })
    };
    // Up to two versions: one large outline to work on, two small ones to try. More: one each.
    let ids: Vec<_> = design.version_ids().collect();
    let wanted: Vec<_> = match ids.as_slice() {
        [only] => vec![(*only, true), (*only, false), (*only, false)],
        [one, two] => vec![(*one, true), (*one, false), (*two, false)],
        several => several.iter().map(|id| (*id, false)).collect(),
    };
    let bought = design.papers.iter().filter(|paper| paper.kept_from.is_none());
    SwatchPage {
        across: front::across(design),
        title: words::SWATCH,
        lead: said(&words::swatch_lead()),
        cards: wanted.into_iter().filter_map(|(version, large)| outline(version, large)).collect(),
        papers_title: words::MY_PAPERS,
        papers: bought.map(|paper| Scrap { label: said(&words::for_paper(&paper.name)) }).collect(),
    }
}

/// "November 2026".
fn month_of(design: &Design) -> Option<String> {
    design.month.map(|month| words::month(month.value.year, month.value.month))
}

/// A length with its unit, in the project's system.
fn with_unit(length: Length, units: Units) -> String {
    format!("{} {}", length.number(units), units.sign())
}

/// The catalogue's words for a pattern's direction.
const fn pattern_words(pattern: Pattern) -> Option<&'static str> {
    match pattern {
        Pattern::Any => None,
        Pattern::TwoWay => Some(words::TWO_WAY),
        Pattern::OneWay => Some(words::ONE_WAY),
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
