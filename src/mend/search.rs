//! The nearest number that works.
//!
//! Tries first what the rule itself advises, then every step of the ruler both ways from what is written, the
//! nearest first, in the numbers that the finding points at.

use super::numbers::{Number, Numbers, Value};
use super::tell;
use super::trial::{Base, Purse, Trial};
use crate::diagnostic::{Edit, Finding};
use crate::length::{Length, Unit, lengths_in};
use crate::source::Span;

/// The most steps each way.
const MOST_STEPS: i64 = 64;
/// The most steps of a count, each way, and of sheets, which can only be more.
const MOST_COUNTS: u32 = 8;
/// The most numbers that are tried for a finding, the most runs and the most plans.
const MOST_NUMBERS: usize = 8;
const MOST_TRIES: usize = 150;
const MOST_PLANS: usize = 8;

/// What was found for a finding.
#[derive(Debug, Clone)]
pub(super) struct Found {
    pub(super) edits: Vec<Edit>,
    /// Whether the rule's own help advises it.
    pub(super) advised: bool,
    /// Whether it was found for another finding, and this one goes with it.
    pub(super) shared: bool,
    /// What to write, as a sentence part.
    pub(super) say: String,
    /// What else changes.
    pub(super) also: String,
}

impl Found {
    /// The same for a finding that goes with the one it was found for.
    pub(super) fn shared(&self) -> Self {
        Self { advised: false, shared: true, ..self.clone() }
    }
}

/// Where the search stands.
struct Search<'a, 'b> {
    base: &'a Base<'b>,
    numbers: &'a Numbers,
    finding: usize,
    purse: &'a mut Purse,
    tries: usize,
    plans: usize,
    tried: Vec<Vec<Edit>>,
}

/// The mend of a finding, and the design with it.
pub(super) fn search(base: &Base<'_>, numbers: &Numbers, finding: usize, purse: &mut Purse) -> Option<(Found, Trial)> {
    let told = &base.outcome.findings[finding];
    let candidates = candidates(numbers, told);
    let plans = MOST_PLANS;
    let mut search = Search { base, numbers, finding, purse, tries: MOST_TRIES, plans, tried: Vec::new() };
    let advice = advice(told);
    let (edits, number, advised, trial) = search
        .advised(&candidates, &advice)
        .or_else(|| candidates.iter().find_map(|number| search.nearest(*number)))?;
    let help = told.help.as_deref().unwrap_or_default();
    let advised = advised || is_in(help, &advice, numbers, &edits);
    let (say, also) = tell::say(base, numbers, number, &edits, &trial);
    Some((Found { edits, advised, shared: false, say, also }, trial))
}

type Hit = (Vec<Edit>, usize, bool, Trial);

impl Search<'_, '_> {
    /// A trial that mends the finding, planned anew where that is needed.
    fn attempt(&mut self, edits: &[Edit]) -> Option<Trial> {
        if edits.is_empty() || self.tried.iter().any(|tried| tried == edits) {
            return None;
        }
        self.tried.push(edits.to_vec());
        self.tries = self.tries.checked_sub(1)?;
        let trial = self.base.run(edits, self.purse)?;
        let from_plan = self.base.is_from_plan(self.finding);
        if !from_plan && !self.base.mends(self.finding, edits, &trial) {
            return None;
        }
        if trial.is_stale() {
            self.plans = self.plans.checked_sub(1)?;
        }
        let trial = self.base.planned(trial, edits, self.purse)?;
        self.base.mends(self.finding, edits, &trial).then_some(trial)
    }

    /// What the rule advises: a size, a length, or one so much more or less.
    fn advised(&mut self, candidates: &[usize], advice: &[Advice]) -> Option<Hit> {
        for advice in advice.iter().filter(|advice| !advice.by) {
            for number in keyed(candidates, self.numbers, advice) {
                let edits = match advice.lengths.as_slice() {
                    [width, height] => self.size(number, *width, *height, advice.at_most),
                    [length] => self.set(number, *length).into_iter().collect(),
                    _ => Vec::new(),
                };
                if let Some(trial) = self.attempt(&edits) {
                    return Some((edits, number, true, trial));
                }
            }
        }
        for advice in advice.iter().filter(|advice| advice.by) {
            let &[by] = advice.lengths.as_slice() else { continue };
            for number in candidates {
                let Value::Length(length) = self.numbers.all[*number].value else { continue };
                for to in [length - by, length + by] {
                    let edits: Vec<Edit> = self.set(*number, to).into_iter().collect();
                    if let Some(trial) = self.attempt(&edits) {
                        return Some((edits, *number, true, trial));
                    }
                }
            }
        }
        None
    }

    /// The nearest value of one number.
    fn nearest(&mut self, number: usize) -> Option<Hit> {
        for text in self.values(number) {
            let edits = vec![Edit::new(self.numbers.all[number].span, text)];
            if let Some(trial) = self.attempt(&edits) {
                return Some((edits, number, false, trial));
            }
            if self.tries == 0 || self.plans == 0 {
                return None;
            }
        }
        None
    }

    /// The values of a number, the nearest first, the lower of two first.
    fn values(&self, number: usize) -> Vec<String> {
        match self.numbers.all[number].value {
            Value::Length(length) => {
                // What is written in another system comes to no mark of the ruler.
                let asked = self.base.outcome.editions.iter().any(|project| project.units() == length.unit().system());
                if !asked && !self.base.outcome.editions.is_empty() {
                    return Vec::new();
                }
                let ruler = self.ruler(length.unit());
                let below = length.floor_to(ruler);
                let down = if below == length { length - ruler } else { below };
                let steps = (0..MOST_STEPS).flat_map(|step| [down - ruler * step, below + ruler * (step + 1)]);
                let mut values: Vec<Length> = steps.filter(|value| value.nm() > 0).collect();
                values.sort_by_key(|value| ((*value - length).abs(), *value));
                values.into_iter().map(|value| value.in_unit(length.unit()).own_number()).collect()
            }
            Value::Sheets(count) => (1..=MOST_COUNTS).map(|more| count.saturating_add(more).to_string()).collect(),
            Value::Count(count) => (1..=MOST_COUNTS)
                .flat_map(|step| [count.checked_sub(step).filter(|less| *less > 1), count.checked_add(step)])
                .flatten()
                .map(|count| count.to_string())
                .collect(),
        }
    }

    /// The ruler of the edition that is printed in a unit.
    fn ruler(&self, unit: Unit) -> Length {
        let edition = self.base.outcome.editions.iter().find(|project| project.units() == unit.system());
        let usual = Length::either(unit.system(), Length::inch(1, 16), Length::mm(1));
        edition.map_or(usual, |project| project.design.workshop.ruler)
    }

    /// Another size in the place of two numbers; a size that is the largest leaves a side that is smaller.
    fn size(&self, number: usize, width: Length, height: Length, at_most: bool) -> Vec<Edit> {
        let Some(other) = self.numbers.across(number, self.base.source).filter(|other| *other > number) else {
            return Vec::new();
        };
        let side = |number: usize, to: Length| match self.numbers.all[number].value {
            Value::Length(old) if at_most && old <= to => None,
            _ => self.set(number, to),
        };
        side(number, width).into_iter().chain(side(other, height)).collect()
    }

    /// Another length in the place of a number, in its unit.
    fn set(&self, number: usize, to: Length) -> Option<Edit> {
        let Number { value: Value::Length(length), span, .. } = &self.numbers.all[number] else { return None };
        let fits = length.unit().system() == to.unit().system() && to.nm() >= 0 && to != *length;
        fits.then(|| Edit::new(*span, to.in_unit(length.unit()).own_number()))
    }
}

/// The numbers that a finding points at, its own place first, each once.
fn candidates(numbers: &Numbers, finding: &Finding) -> Vec<usize> {
    let mut found: Vec<usize> = Vec::new();
    let spans: Vec<Span> = std::iter::once(&finding.primary).chain(&finding.others).map(|label| label.span).collect();
    for span in spans {
        for number in numbers.at(span) {
            let of_edition = finding.edition.is_none_or(|units| {
                numbers.all[number].system().is_none_or(|system| {
                    // What has no twin stands for both.
                    system == units || numbers.all[number].half == numbers.all[number].whole
                })
            });
            if of_edition && !found.contains(&number) {
                found.push(number);
            }
        }
    }
    // How many there are is changed last, where the place itself is not just that.
    let is_count = |number: &usize| matches!(numbers.all[*number].value, Value::Count(_));
    if !found.first().is_some_and(|first| is_count(first) && finding.primary.span.holds(numbers.all[*first].half)) {
        found.sort_by_key(is_count);
    }
    found.truncate(MOST_NUMBERS);
    found
}

/// A length or a size that a help names, and the key in front of it.
struct Advice {
    key: Option<String>,
    lengths: Vec<Length>,
    /// Whether it says by how much something is moved, or what is to be left, and not what is to be written.
    by: bool,
    /// Whether it is the largest that may be.
    at_most: bool,
}

/// Words that lay something, or leave so much of it.
const LAYING: [&str; 6] = ["lay", "move", "leave", "let", "cut", "turn"];
/// Words that a length to be written follows.
const WRITING: [&str; 6] = ["make", "say", "take", "write", "keep", "with"];

/// What a rule's help advises, in its order.
fn advice(finding: &Finding) -> Vec<Advice> {
    let help = finding.help.as_deref().unwrap_or_default();
    let mut all: Vec<Advice> = Vec::new();
    let mut last = 0;
    for found in lengths_in(help) {
        let between = help[last..found.number.start].trim();
        last = found.number.end;
        match all.last_mut() {
            Some(before) if between == "x" && before.lengths.len() == 1 => before.lengths.push(found.length),
            _ => {
                let before = help[..found.number.start].rsplit('`').next().unwrap_or_default();
                let key = before.split_once(':').map(|(key, _)| key.trim().to_owned());
                let words = help[..found.number.start].split_whitespace().rev();
                let verb = words.into_iter().find(|word| LAYING.contains(word) || WRITING.contains(word));
                let by = verb.is_some_and(|verb| LAYING.contains(&verb));
                let at_most = help[found.number.end..].contains("or smaller");
                all.push(Advice { key, lengths: vec![found.length], by, at_most });
            }
        }
    }
    all
}

/// The candidates of a key first.
fn keyed(candidates: &[usize], numbers: &Numbers, advice: &Advice) -> Vec<usize> {
    let (mut first, rest): (Vec<usize>, Vec<usize>) =
        candidates.iter().partition(|number| Some(&numbers.all[**number].key) == advice.key.as_ref());
    first.extend(rest);
    first
}

/// Whether a help names what the edits write, or by how much they change it.
fn is_in(help: &str, advice: &[Advice], numbers: &Numbers, edits: &[Edit]) -> bool {
    edits.iter().all(|edit| {
        let number = numbers.all.iter().find(|number| number.span == edit.span);
        match number.map(|number| number.value) {
            Some(Value::Length(old)) => {
                let new = lengths_in(&format!("{} {}", edit.with, old.unit().sign())).first().map(|found| found.length);
                let named =
                    |length: &Length| Some(*length) == new || new.is_some_and(|new| (new - old).abs() == *length);
                advice.iter().flat_map(|advice| &advice.lengths).any(named)
            }
            Some(Value::Sheets(old)) => {
                edit.with == old.saturating_add(1).to_string() && help.contains(&format!("more than {old} "))
            }
            Some(Value::Count(_)) => help.split(|sign: char| !sign.is_alphanumeric()).any(|word| word == edit.with),
            None => false,
        }
    })
}
