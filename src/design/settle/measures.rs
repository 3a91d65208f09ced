//! Lengths and sizes as a design states them: one or a pair, each with its twin.

use super::desk::{Desk, Field};
use super::names::{is_sure, listed, tidy};
use super::text::Text;
use crate::design::envelopes::named_envelope;
use crate::design::restate::{Chosen, Restate, Restated, Role, Stated, Towards, choose};
use crate::design::sizes::{NAMED, named};
use crate::diagnostic::{Certainty, Edit, Finding};
use crate::length::{Length, LengthError, LengthFault, Size, Unit, Units, lengths_in, parse_length, parse_size};
use crate::source::Span;

/// How a system is called in a sentence.
const fn system_words(units: Units) -> &'static str {
    match units {
        Units::Inch => "inches",
        Units::Metric => "millimetres",
    }
}

impl<'a> Desk<'a> {
    /// A length at a key.
    pub(super) fn length(&mut self, field: Field<'a>, role: Role) -> Option<Length> {
        let text = self.text(field)?;
        self.length_in(text, role)
    }

    /// A length, or a pair, from a text.
    pub(super) fn length_in(&mut self, text: Text<'_>, role: Role) -> Option<Length> {
        let stated = self.stated(text, "length", Self::one_length, |length| length.unit().system())?;
        if let (Some(inch), Some(metric)) = (stated.inch, stated.metric) {
            self.twins(text, &[(inch, metric)]);
        }
        self.chosen(text, &stated, role, Length::to_string)
    }

    /// Notes a pair whose halves are not nearly alike: one of them is most likely a slip.
    fn twins(&mut self, text: Text<'_>, pairs: &[(Length, Length)]) {
        let Some((inch, metric)) = pairs.iter().find(|(inch, metric)| are_far_apart(*inch, *metric)) else { return };
        let step = Length::mm(1);
        let twin = |inch: &Length| (Length::of(inch.nm(), Units::Metric) + step.half()).floor_to(step).max(step);
        let nearest = twin(inch);
        // Which half is the slip is not known; the metric one is offered anew, what is alike in it kept.
        let near = |(inch, metric): &(Length, Length)| if are_far_apart(*inch, *metric) { twin(inch) } else { *metric };
        let whole = match pairs {
            [width, height] => Size::new(near(width), near(height)).to_string(),
            _ => nearest.to_string(),
        };
        let is_metric = |half: &Text<'_>| {
            let unit = parse_length(half.value).map(|length| length.unit());
            let unit = unit.or_else(|_| parse_size(half.value).map(|size| size.width.unit()));
            unit.is_ok_and(|unit| unit.system() == Units::Metric)
        };
        let edit = text.split('|').into_iter().find(is_metric).map(|half| Edit::new(half.span, whole));
        self.note(
            Finding::warning(
                "twins-far-apart",
                text.span,
                "the two halves of a pair are far apart",
                format!("{inch} is about {nearest}, and {metric} stands beside it"),
            )
            .help(format!("write the same length twice, such as `{inch} | {nearest}`"))
            .edits(edit, Certainty::Likely)
            .plainly(format!("{inch} is about {nearest}, so the {metric} beside it may be a slip.")),
        );
    }

    /// A length that no ruler of the reader measures: one system says it for both.
    pub(super) fn length_in_any(&mut self, text: Text<'_>) -> Option<Length> {
        let stated = self.stated(text, "length", Self::one_length, |length| length.unit().system())?;
        stated.of(self.units).or_else(|| stated.of(self.units.other())).copied()
    }

    /// The size of an envelope, or a pair: two lengths or a name, which stands for it as the address is
    /// written.
    pub(super) fn envelope_size(&mut self, text: Text<'_>) -> Option<Size> {
        let one = |desk: &mut Self, half: Text<'_>| {
            named_envelope(&tidy(half.value)).map_or_else(|| desk.one_size(half), |named| Some(named.size))
        };
        let stated = self.stated(text, "size", one, |size| size.width.unit().system())?;
        self.chosen(text, &stated, Role::Envelope, Size::to_string)
    }

    /// A length in one system only.
    fn one_length(&mut self, text: Text<'_>) -> Option<Length> {
        match parse_length(text.value) {
            Ok(length) => Some(length),
            Err(error) => {
                self.bad_measure(text, &error);
                None
            }
        }
    }

    /// A size, or a pair, from a text: two lengths or a name.
    pub(super) fn size_in(&mut self, text: Text<'_>, role: Role) -> Option<Size> {
        let stated = self.stated(text, "size", Self::one_size, |size| size.width.unit().system())?;
        if let (Some(inch), Some(metric)) = (stated.inch, stated.metric) {
            self.twins(text, &[(inch.width, metric.width), (inch.height, metric.height)]);
        }
        self.chosen(text, &stated, role, Size::to_string)
    }

    /// A size in one system only: `4 1/4 x 5 1/2 in`, `A6`.
    pub(super) fn one_size(&mut self, text: Text<'_>) -> Option<Size> {
        let name = tidy(text.value);
        let size = match named(&name) {
            Some(found) => found.size,
            None if !name.chars().any(|sign| sign.is_numeric()) || looks_like_a_name(&name) => {
                let known: Vec<&str> = NAMED.iter().map(|size| size.name).collect();
                let near = if name.len() > 3 { self.nearest(&name, &known) } else { None };
                let edit = near.and_then(|near| self.in_place_of(text.value, text.span, near));
                let sure = near.is_some_and(|near| is_sure(&name, near, &known, false));
                let help = match near {
                    Some(near) => format!("write `{near}`, the nearest of {} named sizes", known.len()),
                    None => format!("say 2 lengths, such as `4 1/4 x 5 1/2 in`, or 1 of {}", listed(&known)),
                };
                self.note(
                    Finding::error(
                        "bad-size",
                        text.span,
                        format!("`{}` is not a size", text.value),
                        "no size has this name",
                    )
                    .help(help)
                    .plainly(format!("\"{}\" is not a size.", text.value))
                    .edits(edit, Certainty::when(sure)),
                );
                return None;
            }
            None => match parse_size(text.value) {
                Ok(size) => size,
                Err(error) => {
                    self.bad_measure(text, &error);
                    return None;
                }
            },
        };
        if size.width.nm() > 0 && size.height.nm() > 0 {
            return Some(size);
        }
        self.note(
            Finding::error("size-not-positive", text.span, "a size is nothing at all", format!("{size}"))
                .help("make both lengths more than 0")
                .plainly("A size needs a width and a height above nothing."),
        );
        None
    }

    fn bad_measure(&mut self, text: Text<'_>, error: &LengthError) {
        // Parts have places only where the text stands in the file as it was read.
        let exact = self.source.slice(text.span) == text.value;
        let (mut help, mut edit, mut certain) = (error.help.clone(), None, false);
        match &error.instead {
            Some(instead) if text.value.matches(&instead.typed).count() == 1 => {
                let at = text.span.start + text.value.find(&instead.typed).unwrap_or(0);
                edit = Some(Edit::new(Span::new(at, at + instead.typed.len()), instead.with));
                certain = instead.certain;
            }
            _ if error.kind == LengthFault::MissingUnit => {
                if let Some((unit, why)) = self.only_unit() {
                    help = format!("say `{} {}`, {why}", short(text.value), unit.sign());
                    edit = Some(Edit::put_in(text.span.end, format!(" {}", unit.sign())));
                    certain = true;
                }
            }
            _ => {}
        }
        let label = if error.code() == "missing-unit" { "a number without a unit" } else { "not a length" };
        self.note(
            Finding::error(error.code(), text.span, error.fault.clone(), label)
                .help(help)
                .plainly(format!("{}.", error.fault.replace('`', "\"")))
                .edits(edit.filter(|_| exact), Certainty::when(certain)),
        );
    }

    /// The unit that a bare number can only have, and why: in a pair the other half leaves one system, and
    /// the lengths of that system stand in one unit; alone, where the design asks for one system and all its
    /// lengths stand in one unit of it.
    fn only_unit(&self) -> Option<(Unit, String)> {
        let of = |system: Units| {
            let mut written = self.written_in.iter().copied().filter(|unit| unit.system() == system);
            written.next().filter(|_| written.next().is_none())
        };
        if let Some(left_over) = self.left_over {
            let system = left_over?;
            let here = system_words(system.other());
            return of(system)
                .map(|unit| (unit, format!("since the half beside it is in {here}, and 1 pair has both")));
        }
        match (self.asked.as_slice(), self.written_in.as_slice()) {
            ([asked], [unit]) if unit.system() == *asked => {
                Some((*unit, format!("since `{}` is the 1 unit of this design", unit.sign())))
            }
            _ => None,
        }
    }

    /// One value, or two with a `|` between in two systems.
    pub(super) fn stated<T>(
        &mut self,
        text: Text<'_>,
        noun: &str,
        mut one: impl FnMut(&mut Self, Text<'_>) -> Option<T>,
        system: impl Fn(&T) -> Units,
    ) -> Option<Stated<T>> {
        let halves = text.split('|');
        match halves.as_slice() {
            [only] => one(self, *only).map(|value| {
                let units = system(&value);
                Stated::one(value, units)
            }),
            [first, second] => {
                self.left_over = Some(system_in(*second));
                let left = one(self, *first);
                self.left_over = Some(system_in(*first));
                let right = one(self, *second);
                self.left_over = None;
                let (left, right) = (left?, right?);
                if system(&left) == system(&right) {
                    let words = system_words(system(&left));
                    self.note(
                        Finding::error(
                            if noun == "size" { "bad-size" } else { "bad-length" },
                            second.span,
                            format!("both halves of a pair are in {words}"),
                            format!("in {words} again"),
                        )
                        .also(first.span, format!("in {words}"))
                        .help(format!("write 1 half in inches and 1 in {}", system_words(Units::Metric)))
                        .plainly(format!(
                            "A {noun} with a | says the same thing once in inches and once in millimetres."
                        )),
                    );
                    return None;
                }
                Some(match system(&left) {
                    Units::Inch => Stated { inch: Some(left), metric: Some(right) },
                    Units::Metric => Stated { inch: Some(right), metric: Some(left) },
                })
            }
            many => {
                self.note(
                    Finding::error(
                        if noun == "size" { "bad-size" } else { "bad-length" },
                        text.span,
                        format!("a {noun} is stated {} times", many.len()),
                        format!("{} values with `|` between", many.len()),
                    )
                    .help("keep at most 2, one in inches and one in millimetres")
                    .plainly(format!("A {noun} is said once, or once in each of two systems.")),
                );
                None
            }
        }
    }

    /// What this edition takes of a stated value; a twin made by rule is kept in mind, `show` writes it.
    pub(super) fn chosen<T: Restate>(
        &mut self,
        text: Text<'_>,
        stated: &Stated<T>,
        role: Role,
        show: impl Fn(&T) -> String,
    ) -> Option<T> {
        match choose(stated, role, self.towards(), self.both())? {
            Chosen::Stated(value) => Some(value),
            Chosen::Restated(value, off) => {
                let pair = format!("{} | {}", text.value, show(&value));
                self.restate(Restated { span: text.span, pair, off, role, is_stock: false });
                Some(value)
            }
        }
    }

    /// The edition that twins are made for.
    pub(super) const fn towards(&self) -> Towards {
        Towards { units: self.units, step: self.ruler, card: self.card }
    }

    /// Keeps a twin made by rule in mind, once for each text.
    pub(super) fn restate(&mut self, restated: Restated) {
        if self.restated.iter().all(|known| (known.span, &known.pair) != (restated.span, &restated.pair)) {
            self.restated.push(restated);
        }
    }
}

/// The system that this half of a pair leaves for the other one, where it has a length.
fn system_in(half: Text<'_>) -> Option<Units> {
    let lengths = lengths_in(half.value);
    lengths.first().map(|found| found.length.unit().system().other())
}

/// At most forty characters of what was typed.
fn short(text: &str) -> String {
    text.chars().take(40).collect()
}

/// `B5`, `A 4`, `2nd letter`: one letter-led word, not a width and a height.
fn looks_like_a_name(text: &str) -> bool {
    text.starts_with(|sign: char| sign.is_alphabetic()) && !text.contains(['x', 'X', '\u{d7}'])
}

/// Whether two lengths differ by more than 1 mm and by more than three tenths of the longer one. Twins are chosen
/// on two rulers and for two sizes of card, so they are alike and not equal.
pub(super) fn are_far_apart(inch: Length, metric: Length) -> bool {
    let apart = (inch.nm() - metric.nm()).abs();
    apart > Length::mm(1).nm() && apart * 10 > inch.nm().max(metric.nm()) * 3
}
