//! What a paper is said to weigh, and how thick it is said to be.

use super::desk::{Desk, Field};
use super::names::listed;
use crate::diagnostic::Finding;
use crate::length::{Length, Units};
use crate::source::Spanned;
use crate::weight::{Grade, Grammage, Weight, WeightFault, parse_weight};

/// No paper that a card is made of is lighter or heavier: common practice, no source.
const LIGHTEST: Grammage = Grammage::grams(30);
const HEAVIEST: Grammage = Grammage::grams(1000);

/// The thinnest paper: 0.001 in, 0.03 mm; common practice, no source.
const fn thinnest(units: Units) -> Length {
    Length::either(units, Length::inch(1, 1000), Length::of(30_000, Units::Metric))
}

/// The thickest: 1/8 in, 3 mm; common practice, no source.
const fn thickest(units: Units) -> Length {
    Length::either(units, Length::inch(1, 8), Length::mm(3))
}

impl<'a> Desk<'a> {
    /// `80 lb cover`, `216 gsm`.
    pub(super) fn weight(&mut self, field: Field<'a>) -> Option<Spanned<Weight>> {
        let text = self.text(field)?;
        let finding = match parse_weight(text.value) {
            Ok(weight) if (LIGHTEST..=HEAVIEST).contains(&weight.grammage) => {
                return Some(Spanned::new(weight, text.span));
            }
            Ok(weight) => {
                let grams = weight.grammage.tenths();
                let grams = grams.trim_end_matches(".0");
                let is_light = weight.grammage < LIGHTEST;
                let (fault, limit) =
                    if is_light { ("lighter", LIGHTEST.whole()) } else { ("heavier", HEAVIEST.whole()) };
                Finding::error(
                    "unlikely-paper",
                    text.span,
                    format!("the paper is {fault} than paper is"),
                    format!("{grams} g/m2, where {limit} g/m2 is the {}", if is_light { "least" } else { "most" }),
                )
                .help("write what the packet says, such as `80 lb cover` or `216 gsm`")
                .plainly(format!("No paper weighs {grams} grams a square metre."))
            }
            Err(WeightFault::NoGrade(pounds)) => {
                let [first, second] = could_be(pounds);
                let of = |grade| Grammage::pounds(pounds, grade);
                let number = thousandths(pounds);
                let apart = Grammage::milligrams((of(first).mg() - of(second).mg()).abs());
                Finding::error(
                    "weight-without-grade",
                    text.span,
                    format!("`{}` does not say of which grade", text.value),
                    format!(
                        "{} g/m2 as {}, {} as {}: {} apart",
                        of(first).tenths(),
                        first.word(),
                        of(second).tenths(),
                        second.word(),
                        apart.tenths()
                    ),
                )
                .help(format!(
                    "say `{number} lb {}` or `{number} lb {}`, as the packet does",
                    first.word(),
                    second.word()
                ))
                .plainly(format!("Pounds of {} are not pounds of {}.", first.word(), second.word()))
            }
            Err(WeightFault::UnknownGrade(word)) => {
                let known: Vec<&str> = Grade::ALL.into_iter().map(Grade::word).collect();
                let help = match self.nearest(&word, &known) {
                    Some(near) => format!("write `{near}`, the nearest of {} grades", known.len()),
                    None => format!("say 1 of {}", listed(&known)),
                };
                Finding::error(
                    "bad-weight",
                    text.span,
                    format!("`{word}` is no grade of paper"),
                    format!("not 1 of {} grades", known.len()),
                )
                .help(help)
                .plainly(format!("\"{word}\" is no grade that paper is sold by."))
            }
            Err(WeightFault::Unreadable) => Finding::error(
                "bad-weight",
                text.span,
                format!("`{}` is not a weight", text.value),
                "neither pounds of a grade nor grams a square metre",
            )
            .help("say it as `80 lb cover` or `216 gsm`")
            .plainly(format!("\"{}\" is not the weight of a paper.", text.value)),
        };
        self.note(finding);
        None
    }

    /// `0.3 mm`, `0.012 in`.
    pub(super) fn thickness(&mut self, field: Field<'a>) -> Option<Length> {
        let text = self.text(field)?;
        let length = self.length_in_any(text)?;
        let units = length.unit().system();
        let (least, most) = (thinnest(units), thickest(units));
        if (least..=most).contains(&length) {
            return Some(length);
        }
        let (fault, limit) = if length < least { ("thinner", least) } else { ("thicker", most) };
        self.note(
            Finding::error(
                "unlikely-paper",
                text.span,
                format!("the paper is {fault} than paper is"),
                format!("{length}, where {limit} is the {}", if length < least { "least" } else { "most" }),
            )
            .help("write what the packet or a calliper says, such as `0.012 in` or `0.3 mm`")
            .plainly(format!("No paper is {length} thick.")),
        );
        None
    }
}

/// The two grades that so many thousandths of a pound are most often sold by: common practice, no source.
const fn could_be(pounds: i64) -> [Grade; 2] {
    match pounds {
        ..=39_999 => [Grade::Bond, Grade::Text],
        40_000..=104_999 => [Grade::Cover, Grade::Text],
        _ => [Grade::Cover, Grade::Index],
    }
}

fn thousandths(number: i64) -> String {
    let text = format!("{}.{:03}", number / 1000, number % 1000);
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}
