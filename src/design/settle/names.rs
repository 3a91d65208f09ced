//! Names and words that authors type: tidied, listed, and the nearest one found.

use super::desk::Desk;
use super::text::Text;
use crate::diagnostic::{Certainty, Edit, Finding};
use crate::source::{Span, Spanned};

/// With single plain spaces.
pub(super) fn tidy(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The longest name that is compared, the most names, and the most findings that offer one:
/// comparing grows with the product of all three.
const LONGEST_COMPARED: usize = 40;
const MOST_COMPARED: usize = 500;
const MOST_OFFERED: usize = 100;

/// The known word that was most likely meant.
fn nearest<'k>(typed: &str, known: &[&'k str]) -> Option<&'k str> {
    if typed.chars().count() > LONGEST_COMPARED {
        return None;
    }
    let known = known.iter().take(MOST_COMPARED).filter(|word| word.chars().count() <= LONGEST_COMPARED);
    known
        .clone()
        .map(|word| (strsim::osa_distance(&typed.to_lowercase(), &word.to_lowercase()), *word))
        .filter(|(distance, word)| *distance <= (word.chars().count().max(typed.chars().count()) / 3).max(1))
        .min_by_key(|(distance, _)| *distance)
        .map(|(_, word)| word)
        .or_else(|| known.copied().find(|word| typed.len() > 2 && word.split(' ').any(|part| part == typed)))
}

/// Whether a word is sure to be what was meant by a misspelt one: one slip in a word of the language that
/// is long enough (or two in a very long one), or one in a longer name of the author's own that starts alike,
/// and no other word nearly as near. Numbers are never slips: `panel 1` is not `panel 2`.
pub(super) fn is_sure(typed: &str, word: &str, known: &[&str], own: bool) -> bool {
    let (typed, word) = (typed.to_lowercase(), word.to_lowercase());
    let letters = typed.chars().count().min(word.chars().count());
    if typed.chars().count() > LONGEST_COMPARED || known.len() > MOST_COMPARED {
        return false;
    }
    let digits = |text: &str| text.chars().filter(|sign| sign.is_numeric()).collect::<String>();
    let slips = strsim::osa_distance(&typed, &word);
    let near = match (own, slips) {
        (_, 0) => true,
        (false, 1) => letters >= 4,
        (false, 2) => letters >= 8,
        (true, 1) => letters >= 5 && typed.chars().next() == word.chars().next(),
        _ => false,
    };
    let others = known.iter().map(|other| other.to_lowercase()).filter(|other| *other != word);
    near && digits(&typed) == digits(&word)
        && others.into_iter().all(|other| strsim::osa_distance(&typed, &other) > slips + 1)
}

/// `a`, `b` or `c`, at most twelve of them.
pub(super) fn listed(words: &[&str]) -> String {
    let quoted: Vec<String> = words.iter().take(12).map(|word| format!("`{word}`")).collect();
    if words.len() > quoted.len() {
        return format!("{} and {} more", quoted.join(", "), words.len() - quoted.len());
    }
    match quoted.split_last() {
        Some((last, rest)) if !rest.is_empty() => format!("{} or {last}", rest.join(", ")),
        _ => quoted.concat(),
    }
}

/// What was declared under one heading, in order.
pub(super) struct Names {
    /// The noun: `paper`, `piece`, `layer`.
    pub(super) noun: &'static str,
    /// The code for a name that is not among them.
    pub(super) unknown: &'static str,
    pub(super) list: Vec<Spanned<String>>,
}

impl Names {
    pub(super) fn position(&self, name: &str) -> Option<usize> {
        self.list.iter().position(|known| known.value == name)
    }

    pub(super) fn words(&self) -> Vec<&str> {
        self.list.iter().map(|known| known.value.as_str()).collect()
    }
}

impl Desk<'_> {
    /// The known word that was most likely meant; none in a file with very many faults.
    pub(super) fn nearest<'k>(&self, typed: &str, known: &[&'k str]) -> Option<&'k str> {
        if self.findings.len() < MOST_OFFERED { nearest(typed, known) } else { None }
    }

    /// What was typed at a place, with a word in its place; none where the place does not hold just that, or
    /// where the word would need quotes.
    pub(super) fn in_place_of(&self, typed: &str, span: Span, word: &str) -> Option<Edit> {
        let written = self.source.slice(span);
        let inner = |quote| written.strip_prefix(quote).and_then(|rest| rest.strip_suffix(quote));
        let (written, span, quoted) = match inner('"').or_else(|| inner('\'')) {
            Some(inner) => (inner, Span::new(span.start + 1, span.end - 1), true),
            None => (written, span, false),
        };
        let plain = word.starts_with(char::is_alphanumeric)
            && !word.contains(|sign: char| {
                matches!(sign, ',' | ':' | '#' | '[' | ']' | '{' | '}' | '|') || sign.is_control()
            });
        let fits = if quoted { !word.contains(['"', '\'', '\\']) } else { plain };
        (tidy(written) == tidy(typed) && fits).then(|| Edit::new(span, word))
    }

    /// The number of a declared name; an unknown one is noted with the nearest. `also` are words
    /// that may stand in its place.
    pub(super) fn declared(&mut self, text: Text<'_>, names: &Names, also: &[&str]) -> Option<usize> {
        let name = tidy(text.value);
        let found = names.position(&name);
        if found.is_none() {
            let mut known = names.words();
            known.extend(also);
            let _ = self.unknown_name(&name, text.span, names, &known);
        }
        found
    }

    /// Notes a name that is not among the `known` ones; gives the one that was most likely meant.
    pub(super) fn unknown_name<'k>(
        &mut self,
        name: &str,
        span: Span,
        names: &Names,
        known: &[&'k str],
    ) -> Option<&'k str> {
        let noun = names.noun;
        let near = self.nearest(name, known);
        let typed: String = name.chars().take(60).collect();
        let edit = near.and_then(|near| self.in_place_of(name, span, near));
        let sure = near.is_some_and(|near| is_sure(name, near, known, true));
        let help = match near {
            Some(near) => format!("write `{near}`, the nearest of {} names", known.len()),
            None if known.is_empty() => format!("name at least 1 {noun} first"),
            None => format!("name 1 of {}", listed(known)),
        };
        self.note(
            Finding::error(
                names.unknown,
                span,
                format!("there is no {noun} `{typed}`"),
                format!("no {noun} has this name"),
            )
            .help(help)
            .plainly(format!("No {noun} is called `{typed}`."))
            .edits(edit, Certainty::when(sure)),
        );
        near
    }
}

#[cfg(test)]
mod tests {
    use super::{is_sure, listed, nearest, tidy};

    #[test]
    fn a_sure_word_is_one_slip_away_and_alone() {
        assert!(is_sure("centr", "centre", &["centre", "card"], false));
        assert!(is_sure("anticlckwsie", "anticlockwise", &["clockwise", "anticlockwise"], false));
        assert!(!is_sure("tpo", "top", &["top", "left"], false), "too short");
        assert!(!is_sure("lift", "left", &["left", "lifts"], false), "two are near");
        assert!(is_sure("lantren", "lantern", &["lantern", "mat"], true));
        assert!(!is_sure("hanel", "panel", &["panel"], true), "another name starts otherwise");
        assert!(!is_sure("panel 2", "panel 1", &["panel 1"], true), "numbers are no slips");
        assert!(!is_sure("panels", "panel", &["panel", "panel a"], true), "two are near");
    }

    #[test]
    fn the_nearest_word() {
        assert_eq!(nearest("peices", &["papers", "pieces"]), Some("pieces"));
        assert_eq!(nearest("center", &["card", "centre"]), Some("centre"));
        assert_eq!(nearest("zzz", &["papers", "pieces"]), None);
        assert_eq!(nearest("a", &["i"]), Some("i"));
        assert_eq!(nearest("strip", &["sheets", "edge strip"]), Some("edge strip"));
        assert_eq!(nearest(&"strip".repeat(100), &["edge strip"]), None);
    }

    #[test]
    fn words_in_a_row() {
        assert_eq!(listed(&["a"]), "`a`");
        assert_eq!(listed(&["a", "b", "c"]), "`a`, `b` or `c`");
        assert_eq!(tidy(" edge\u{a0} strip "), "edge strip");
    }
}
