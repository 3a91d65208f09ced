//! The head of a design: month, workshop and the card.

use super::desk::{Desk, Field, Fields};
use super::names::Names;
use super::text::Text;
use crate::design::model::{Fold, Month, PaperId, Workshop};
use crate::design::nodes::Node;
use crate::design::restate::Role;
use crate::diagnostic::{Certainty, Finding};
use crate::length::{Length, Size};
use crate::source::{Span, Spanned};

/// The card as written: its base becomes a piece.
pub(super) struct CardDraft {
    pub(super) size: Option<(Size, Span)>,
    pub(super) fold: Option<Fold>,
    pub(super) from: Option<Spanned<PaperId>>,
    pub(super) span: Span,
}

impl<'a> Desk<'a> {
    /// A month as `2026-11`.
    pub(super) fn month(&mut self, field: Field<'a>) -> Option<Spanned<Month>> {
        let text = self.text(field)?;
        let parts = text.value.split_once('-').filter(|(year, month)| {
            year.len() == 4
                && month.len() == 2
                && [year, month].iter().all(|part| part.bytes().all(|b| b.is_ascii_digit()))
        });
        let numbers = parts.and_then(|(year, month)| Some((year.parse::<u16>().ok()?, month.parse::<u8>().ok()?)));
        let label = match numbers {
            Some((year, month)) if (1900..=9999).contains(&year) && (1..=12).contains(&month) => {
                return Some(Spanned::new(Month { year, month }, text.span));
            }
            Some((_, month)) if !(1..=12).contains(&month) => "a year has months 01 to 12",
            Some(_) => "years run from 1900 to 9999",
            None => "not a year and a month",
        };
        let meant = month_meant(text.value);
        let help = match &meant {
            Some(meant) => format!("write `{meant}`: the year, a hyphen and the month in 2 digits"),
            None => "write the year, a hyphen and the month in 2 digits, such as `2026-11`".to_owned(),
        };
        let edit = meant.and_then(|meant| self.in_place_of(text.value, text.span, &meant));
        self.note(
            Finding::error("bad-month", text.span, format!("`{}` is not a month", text.value), label)
                .help(help)
                .plainly(format!("\"{}\" is not a month such as 2026-11.", text.value))
                .edits(edit, Certainty::Certain),
        );
        None
    }

    /// What the reader's ruler and hand can do; common practice, no source, where it is not said.
    pub(super) fn workshop(&mut self, field: Option<Field<'a>>) -> Workshop {
        let usual = |inch, mm: i64| Length::either(self.units, inch, Length::new(mm, crate::length::Unit::Millimetre));
        let mut workshop = Workshop {
            ruler: usual(Length::inch(1, 16), 1_000_000),
            cutting_error: usual(Length::inch(1, 32), 1_000_000),
            placing_error: usual(Length::inch(1, 16), 1_500_000),
            trimmer: usual(Length::inch(12, 1), 305_000_000),
            trimmer_span: None,
        };
        let Some(field) = field else { return workshop };
        let known = ["ruler", "cutting error", "placing error", "trimmer"];
        let Some(fields) = self.fields(field.node, "the workshop", field.key, &known) else { return workshop };
        let mut said =
            |name, role| fields.get(name).and_then(|field| self.length(field, role).map(|length| (length, field)));
        let ruler = said("ruler", Role::Ruler);
        workshop.cutting_error =
            said("cutting error", Role::Error).map_or(workshop.cutting_error, |(length, _)| length);
        workshop.placing_error =
            said("placing error", Role::Error).map_or(workshop.placing_error, |(length, _)| length);
        if let Some((trimmer, field)) = said("trimmer", Role::Reach) {
            if trimmer.nm() > 0 {
                (workshop.trimmer, workshop.trimmer_span) = (trimmer, Some(field.node.span()));
            } else {
                self.note(
                    Finding::error(
                        "size-not-positive",
                        field.node.span(),
                        "the trimmer cuts nothing",
                        format!("{trimmer}"),
                    )
                    .help("say how long a cut it makes, such as `12 in`")
                    .plainly("A trimmer makes a cut of some length."),
                );
            }
        }
        match ruler {
            Some((ruler, field)) if ruler.nm() <= 0 => self.note(
                Finding::error("size-not-positive", field.node.span(), "the ruler has no step", format!("{ruler}"))
                    .help("say the distance between 2 marks, such as `1/16 in`")
                    .plainly("A ruler needs marks that lie apart."),
            ),
            Some((ruler, _)) => workshop.ruler = ruler,
            None => {}
        }
        workshop
    }

    /// `{accordion: 4}`.
    fn accordion(&mut self, field: Field<'a>) -> Option<Fold> {
        let fields = self.fields(field.node, "the fold", field.key, &["accordion"])?;
        let field = self.required(&fields, "accordion", "4")?;
        let panels = self.count(field, 20)?;
        if panels.value >= 3 {
            return Some(Fold::Accordion { panels: panels.value });
        }
        self.note(
            Finding::error("bad-count", panels.span, "an accordion has more panels", format!("{} here", panels.value))
                .help("write 3 or more panels; a card of 2 folds at the side")
                .plainly("A card that folds to and fro has at least three panels."),
        );
        None
    }

    /// The size of the card; where a rule changes it, that is kept in mind for what is as long.
    fn card_size(&mut self, text: Text<'_>) -> Option<Size> {
        let size = self.size_in(text, Role::Card)?;
        if self.restated.iter().any(|restated| restated.span == text.span) {
            // The one half that stands there was read without a fault just now.
            let stated = self.one_size(text)?;
            self.card = Some((stated, size));
        }
        Some(size)
    }

    /// The card.
    pub(super) fn card(&mut self, field: Field<'a>, papers: &Names) -> Option<CardDraft> {
        let fields: Fields<'a> = self.fields(field.node, "the card", field.key, &["size", "fold", "from"])?;
        let size = self.required(&fields, "size", "4 1/4 x 5 1/2 in");
        let size = size.and_then(|field| {
            let text = self.text(field)?;
            self.card_size(text).map(|size| (size, text.span))
        });
        let fold = self.required(&fields, "fold", "side");
        let folds = [("side", Fold::Side), ("top", Fold::Top), ("none", Fold::None), ("gate", Fold::Gate)];
        let fold = fold.and_then(|field| {
            if let Node::Map(_) = field.node {
                return self.accordion(field);
            }
            self.word(field, &folds).map(|fold| fold.value)
        });
        let from = self.required(&fields, "from", papers.list.first().map_or("white", |name| &name.value));
        let from = from.and_then(|field| {
            let text = self.text(field)?;
            self.declared(text, papers, &[]).map(|paper| Spanned::new(PaperId(paper), text.span))
        });
        Some(CardDraft { size, fold, from, span: field.key })
    }
}

const MONTHS: [&str; 12] = [
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
];

/// The month that another form can only mean: `2026-5`, `2026/05`, `5.2026`, `May 2026`, `2026, Sept.`. A
/// year has four digits, so that nothing can be taken for it; a day is not left out.
fn month_meant(typed: &str) -> Option<String> {
    let parts: Vec<&str> = typed.split(|sign: char| !sign.is_alphanumeric()).filter(|part| !part.is_empty()).collect();
    let &[first, second] = parts.as_slice() else { return None };
    let year = |part: &str| part.parse::<u16>().ok().filter(|year| part.len() == 4 && (1900..=9999).contains(year));
    let (year, month) = match (year(first), year(second)) {
        (Some(year), None) => (year, second),
        (None, Some(year)) => (year, first),
        _ => return None,
    };
    let lower = month.to_lowercase();
    let named = || MONTHS.iter().position(|name| lower.len() >= 3 && name.starts_with(lower.trim_end_matches('.')));
    let spelt = if lower == "sept" { Some(8) } else { named() };
    let number = match month.parse::<usize>() {
        Ok(number) if month.len() <= 2 => number,
        Ok(_) => return None,
        Err(_) => spelt? + 1,
    };
    (1..=12).contains(&number).then(|| format!("{year}-{number:02}"))
}

#[cfg(test)]
mod tests {
    use super::month_meant;

    #[test]
    fn other_forms_of_a_month() {
        for typed in ["2026-5", "2026/05", "5.2026", "05-2026", "May 2026", "2026, may"] {
            assert_eq!(month_meant(typed).as_deref(), Some("2026-05"), "{typed}");
        }
        assert_eq!(month_meant("Sept. 2026").as_deref(), Some("2026-09"));
        for typed in ["2026-13", "2026-05-01", "05/26", "Ma 2026", "2026", "mai 2026", "2026 2025", "2026-0"] {
            assert_eq!(month_meant(typed), None, "{typed}");
        }
    }
}
