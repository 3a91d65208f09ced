//! One side of a size: `4 in`, `as wide as mat less 1/4 in`, `half of card`, `rest of mat after strip`,
//! `share of mat, 3 evenly with gap 1/8 in`.

use super::super::desk::Desk;
use super::super::names::{listed, tidy};
use super::super::pieces::MOST_COPIES;
use super::super::text::Text;
use super::Around;
use crate::design::model::{Change, Extent, Measure, PieceId, Relation};
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::length::Length;

/// The most pieces that a rest comes after.
const MOST_AFTER: usize = 50;

/// How a relation starts.
#[derive(Clone, Copy)]
enum Start {
    Same(Extent),
    Part(u32),
    Rest,
    Share,
}

const STARTS: [(&str, Start); 7] = [
    ("as wide as", Start::Same(Extent::Width)),
    ("as high as", Start::Same(Extent::Height)),
    ("half of", Start::Part(2)),
    ("a third of", Start::Part(3)),
    ("a quarter of", Start::Part(4)),
    ("rest of", Start::Rest),
    ("share of", Start::Share),
];

/// The words that may follow.
const FOLLOW: [&str; 3] = ["less", "plus", "with gap"];

/// How the relation starts, and what stands behind that.
fn start(text: Text<'_>) -> Option<(&'static str, Start, Text<'_>)> {
    let behind = |words: &'static str| text.after_words(&words.split(' ').collect::<Vec<_>>());
    STARTS.iter().find_map(|(words, start)| Some((*words, *start, behind(words)?)))
}

/// Whether a text starts like the relation of a side.
pub(super) fn starts(text: Text<'_>) -> bool {
    start(text).is_some()
}

fn has_number(text: Text<'_>) -> bool {
    text.value.chars().any(char::is_numeric)
}

/// What a change does, and its length as written.
type Changed<'t> = (fn(Length) -> Change, Text<'t>, &'static str);

/// The text before a final `less` or `plus`, and that change.
fn parted(text: Text<'_>) -> Option<(Text<'_>, Changed<'_>)> {
    let less = text.at_last("less").map(|(before, length)| (before, (Change::Less as fn(_) -> _, length, "less")));
    let plus = text.at_last("plus").map(|(before, length)| (before, (Change::Plus as fn(_) -> _, length, "plus")));
    // Of two the later one is the change.
    match (less, plus) {
        (Some(less), Some(plus)) => Some(if less.0.value.len() > plus.0.value.len() { less } else { plus }),
        (less, plus) => less.or(plus),
    }
}

/// A final `less` or `plus`, unless it is part of the name that the text ends in.
fn change_of<'t>(tail: Text<'t>, around: Around<'_>) -> Option<(Text<'t>, Changed<'t>)> {
    let (before, changed) = parted(tail)?;
    (has_number(changed.1) || !around.ends(tail)).then_some((before, changed))
}

impl Desk<'_> {
    /// One side of a size.
    pub(super) fn side_of(&mut self, text: Text<'_>, own: Extent, around: Around<'_>) -> Option<Relation> {
        self.said_once(text, around)?;
        self.heard.offer("width", STARTS.iter().map(|(words, _)| *words).chain(FOLLOW));
        let begun = start(text);
        if let Some((words, ..)) = begun {
            self.heard.take("width", words);
        }
        let tail = begun.map_or(text, |(.., tail)| tail);
        let whole = begun.is_some() && around.knows(tail);
        let changed = if whole { None } else { change_of(tail, around) };
        let (tail, changed) = changed.map_or((tail, None), |(tail, changed)| (tail, Some(changed)));
        if let Some((_, length, _)) = changed
            && !around.knows(tail)
            && parted(tail).is_some_and(|(_, (_, first, _))| has_number(first))
        {
            self.changed_twice(length);
            return None;
        }
        let measure = match begun.map(|(_, start, _)| start) {
            Some(Start::Same(side)) => self.leaned_on(tail, around).map(|of| Measure::Same(of, side)),
            Some(Start::Part(parts)) => self.part_of(tail, parts, own, around),
            Some(Start::Rest) => self.rest_of(text, tail, around),
            Some(Start::Share) => self.share_of(text, tail, around),
            None => self.own_length(text, tail, own, around).map(Measure::Own),
        };
        let change = match changed {
            None => None,
            Some((_, length, word)) if length.value.is_empty() => {
                self.half_written(text, word, &format!("{word} 1/4 in"));
                return None;
            }
            Some((change, length, word)) => {
                self.heard.take("width", word);
                Some(change(self.length_in(length, Role::Border)?))
            }
        };
        Some(Relation { measure: measure?, change, span: text.span })
    }

    fn changed_twice(&mut self, second: Text<'_>) {
        self.note(
            Finding::error("bad-size", second.span, "a side is changed twice", "the second length")
                .help("add the 2 lengths up, and say them once")
                .plainly("A side is made smaller or larger once; two changes are one."),
        );
    }

    /// A length of its own.
    fn own_length(&mut self, text: Text<'_>, tail: Text<'_>, own: Extent, around: Around<'_>) -> Option<Length> {
        let numbered = tail.value.starts_with(|sign: char| sign.is_numeric() || matches!(sign, '.' | '-' | '\u{2212}'));
        if !numbered {
            self.no_side(text, tail, own, around);
            return None;
        }
        let length = self.length_in(tail, Role::Outright)?;
        if length.nm() > 0 {
            return Some(length);
        }
        self.note(
            Finding::error(
                "size-not-positive",
                tail.span,
                format!("a {} is nothing at all", own.word()),
                format!("{length}"),
            )
            .help("make it more than 0")
            .plainly("A size needs a width and a height above nothing."),
        );
        None
    }

    /// Notes a text that is no side, with what was most likely meant.
    fn no_side(&mut self, text: Text<'_>, tail: Text<'_>, own: Extent, around: Around<'_>) {
        let typed = tidy(text.value);
        let known = STARTS.map(|(words, _)| words);
        let near = known.into_iter().find(|words| {
            let typed: Vec<&str> = typed.split(' ').take(words.split(' ').count()).collect();
            self.nearest(&typed.join(" "), &known) == Some(words)
        });
        let help = if around.knows(tail) {
            format!("say `as {} as {typed}`, or 1 length such as `4 in`", own.measure())
        } else if let Some(near) = near {
            format!("write `{near}`, the nearest of {} relations", known.len())
        } else {
            format!("say 1 length such as `4 in`, or 1 of {}", listed(&known))
        };
        let label = if around.knows(tail) { "no length, but a name" } else { "neither a length nor a relation" };
        self.note(
            Finding::error("bad-size", text.span, format!("`{}` is not a {}", text.value, own.word()), label)
                .help(help)
                .plainly(format!("\"{}\" does not say how {} the piece is.", text.value, own.measure())),
        );
    }

    /// `mat`, `the height of mat`.
    fn part_of(&mut self, tail: Text<'_>, parts: u32, own: Extent, around: Around<'_>) -> Option<Measure> {
        let named = |side: Extent| tail.without_first("the").after_words(&[side.word(), "of"]).map(|name| (name, side));
        let (name, side) = match Extent::BOTH.into_iter().find_map(named) {
            Some(named) if !around.knows(tail) => named,
            _ => (tail, own),
        };
        self.leaned_on(name, around).map(|of| Measure::Part { of, side, parts })
    }

    /// `mat after strip, bar with gap 1/8 in | 3 mm`, behind `rest of`.
    fn rest_of(&mut self, text: Text<'_>, tail: Text<'_>, around: Around<'_>) -> Option<Measure> {
        let (tail, gap) = self.with_gap(tail, around)?;
        let Some((name, list)) = tail.at_known("after", |before| around.knows(before)) else {
            let name = tidy(tail.value);
            self.half_relation(text, "nothing says what it comes after", &format!("rest of {name} after strip"));
            return None;
        };
        let of = self.leaned_on(name, around);
        let after = self.pieces_before(text, list, around);
        Some(Measure::Rest { of: of?, after: after?, gap })
    }

    /// The pieces of a rest.
    fn pieces_before(&mut self, text: Text<'_>, list: Text<'_>, around: Around<'_>) -> Option<Vec<PieceId>> {
        let mut items: Vec<Text<'_>> = Vec::new();
        for part in list.split(',') {
            // A piece may have `and` in its name.
            let mut rest = part;
            while let Some((item, behind)) =
                rest.at_known("and", |before| around.knows(before)).filter(|_| !around.knows(rest))
            {
                let (item, behind) =
                    if around.knows(item) { (item, behind) } else { rest.at_word("and").unwrap_or((item, behind)) };
                items.push(item);
                rest = behind;
            }
            items.push(rest);
        }
        if items.iter().any(|item| item.value.is_empty()) {
            self.half_relation(text, "a piece is not named", "rest of card after strip, bar");
            return None;
        }
        if items.len() > MOST_AFTER {
            self.note(
                Finding::error(
                    "bad-count",
                    list.span,
                    "a rest comes after too many pieces",
                    format!("{} pieces", items.len()),
                )
                .help(format!("keep at most {MOST_AFTER}"))
                .plainly("The list of pieces is far too long."),
            );
            return None;
        }
        let found: Vec<Option<usize>> = items.into_iter().map(|item| self.declared(item, around.pieces, &[])).collect();
        found.into_iter().map(|piece| piece.map(PieceId)).collect()
    }

    /// `mat, 3 evenly with gap 1/8 in | 3 mm`, behind `share of`.
    fn share_of(&mut self, text: Text<'_>, tail: Text<'_>, around: Around<'_>) -> Option<Measure> {
        let (tail, gap) = self.with_gap(tail, around)?;
        let counted = tail.before_words(&["evenly"]).and_then(Text::at_last_comma);
        let Some((name, count)) = counted else {
            let name = tidy(tail.at_last_comma().map_or(tail, |(name, _)| name).value);
            let name = if around.pieces.position(&name).is_some() { name } else { "card".to_owned() };
            self.half_relation(text, "nothing says how many share it", &format!("share of {name}, 3 evenly"));
            return None;
        };
        let of = self.leaned_on(name, around);
        let count = self.count_in("share", count, MOST_COPIES);
        Some(Measure::Share { of: of?, count: count?, gap })
    }

    /// The text before a final `with gap`, and that gap; nothing where none is said.
    fn with_gap<'t>(&mut self, text: Text<'t>, around: Around<'_>) -> Option<(Text<'t>, Length)> {
        if let Some((before, gap)) = text.at_last("gap")
            && let Some(before) = before.before_words(&["with"])
        {
            if gap.value.is_empty() {
                self.half_written(text, "with gap", "with gap 1/8 in");
                return None;
            }
            self.heard.take("width", "with gap");
            return Some((before, self.length_in(gap, Role::Gap)?));
        }
        let none = Length::zero(self.units);
        for word in ["gap", "with"] {
            if let Some((_, gap)) = text.at_last(word)
                && gap.value.starts_with(char::is_numeric)
                && !around.ends(text)
            {
                self.half_relation(
                    gap,
                    "no `with gap` in front of this length",
                    &format!("with gap {}", tidy(gap.value)),
                );
                return None;
            }
        }
        Some((text, none))
    }

    /// Notes a relation that lacks a part.
    fn half_relation(&mut self, text: Text<'_>, label: &str, such_as: &str) {
        self.note(
            Finding::error("bad-size", text.span, format!("`{}` is half a relation", text.value), label)
                .help(format!("say the 1 part that is missing, such as `{such_as}`"))
                .plainly(format!("A part is missing: {label}.")),
        );
    }
}
