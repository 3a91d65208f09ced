//! Mutants: a sound design with one thing in one line broken, as a slip of the hand breaks it.

use super::numbers::{self, Unit, numbers, put};
use crate::support::dice::Dice;
use std::collections::BTreeSet;
use std::ops::Range;

/// A design with one thing broken.
#[derive(Debug, Clone)]
pub(crate) struct Mutant {
    /// What was done, in words for a table.
    pub(crate) kind: &'static str,
    /// The whole text.
    pub(crate) text: String,
    /// Which line, from 1.
    pub(crate) line: usize,
    /// The line, or two, as they were.
    pub(crate) before: String,
    /// The same as they are now.
    pub(crate) after: String,
    /// Whether the text alone shows that it cannot be read any more, by what was broken in it.
    pub(crate) unreadable: bool,
}

/// Values of these keys are words to the reader.
const PROSE: [&str; 8] = ["title", "designer", "about", "say", "idea", "stamp", "printed", "die-cut words"];
/// Lists of words to the reader.
const PROSE_LISTS: [&str; 3] = ["supplies", "tools", "leftovers"];

/// Words that one writes for another: each stands for the others of its group.
const CHOICES: [&[&str]; 38] = [
    &["one-way", "two-way", "any"],
    &["upright", "any"],
    &["both ways", "across", "up and down"],
    &["tape", "liquid", "foam", "dot"],
    &["beside", "within"],
    &["clockwise", "anticlockwise"],
    &["half of", "a third of", "a quarter of"],
    &["as wide as", "as high as"],
    &["less", "plus"],
    &["all round", "left", "top"],
    &["hand", "die", "punch"],
    &["equal", "different"],
    &["left to right", "top to bottom"],
    &["bottom", "top", "left", "right", "middle"],
    &["inch and metric", "inch", "metric"],
    &["circle", "oval", "diamond"],
    &["degrees right", "degrees left"],
    &["letter", "A4", "legal"],
    &["round", "rectangle"],
    &["up", "down"],
    &["front", "back"],
    &["upper", "lower"],
    &["left:", "right:"],
    &["top:", "bottom:"],
    &["left:", "top:"],
    &["below:", "above:", "right of:"],
    &["left of:", "right of:"],
    &["left with:", "right with:"],
    &["top with:", "bottom with:"],
    &["centred across:", "centred up:"],
    &["midway across:", "midway up:"],
    &["row:", "column:"],
    &["width:", "height:"],
    &["columns:", "rows:"],
    &["gap across:", "gap down:"],
    &["pointed:", "fishtail:"],
    &["front:", "inside:", "back:"],
    &["side", "top", "none", "gate"],
];

/// A design text with what a mutant needs to know of it.
#[derive(Debug)]
pub(crate) struct Sound {
    lines: Vec<String>,
    /// Lines with something to break, by index.
    live: Vec<usize>,
    papers: Vec<String>,
    pieces: Vec<String>,
    /// Names given with `as`, and of versions.
    layers: Vec<String>,
    versions: Vec<String>,
}

fn indent(line: &str) -> usize {
    line.len() - line.trim_start().len()
}

/// The line without a comment behind it.
fn code(line: &str) -> &str {
    line.split_once(" #").map_or(line, |(code, _)| code)
}

/// The key of a line, `- ` left out, where it has one.
fn key(line: &str) -> Option<(Range<usize>, &str)> {
    let start = indent(line) + if line.trim_start().starts_with("- ") { 2 } else { 0 };
    let start = start + usize::from(line[start..].starts_with('{'));
    let end = start + line[start..].find(':')?;
    let known = line[start..end].chars().all(|c| c.is_alphabetic() || c == ' ' || c == '-');
    known.then(|| (start..end, &line[start..end]))
}

/// Where a word stands by itself.
fn places(line: &str, word: &str) -> Vec<Range<usize>> {
    let joins = |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || c == '-');
    let found = line.match_indices(word).map(|(at, _)| at..at + word.len());
    found.filter(|at| !joins(line[..at.start].chars().last()) && !joins(line[at.end..].chars().next())).collect()
}

impl Sound {
    pub(crate) fn new(text: &str) -> Self {
        let lines: Vec<String> = text.lines().map(str::to_owned).collect();
        let (mut top, mut live) = (String::new(), Vec::new());
        let (mut papers, mut pieces, mut layers, mut versions) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
        for (n, line) in lines.iter().enumerate() {
            if line.trim().is_empty() || line.trim_start().starts_with('#') {
                continue;
            }
            let own = key(line).map(|(_, key)| key.to_owned());
            if indent(line) == 0 {
                top = own.clone().unwrap_or_default();
            } else if PROSE_LISTS.contains(&top.as_str()) {
                continue;
            }
            live.push(n);
            let value = line.split_once(": ").map_or("", |(_, value)| code(value).trim());
            match (indent(line), top.as_str(), own.as_deref()) {
                (2, "papers", Some(name)) => papers.push(name.to_owned()),
                (2, "pieces" | "decorations", Some(name)) => pieces.push(name.to_owned()),
                (_, "versions", Some("name")) => versions.push(value.to_owned()),
                (_, _, Some("as")) => layers.push(value.to_owned()),
                _ => {}
            }
        }
        Self { lines, live, papers, pieces, layers, versions }
    }

    fn is_prose(&self, n: usize) -> bool {
        key(&self.lines[n]).is_some_and(|(_, key)| PROSE.contains(&key))
    }

    /// The mutant of a seed.
    pub(crate) fn mutant(&self, seed: u64) -> Mutant {
        let mut dice = Dice::new(seed.wrapping_mul(0x2545_f491_4f6c_dd1d).wrapping_add(7));
        loop {
            let n = self.live[dice.of(self.live.len())];
            let made = match dice.of(20) {
                0..=9 => self.number(n, &mut dice),
                10..=12 => self.name(n, &mut dice),
                13..=16 => self.choice(n, &mut dice),
                17 => self.misspelt(n, &mut dice),
                _ => self.whole_lines(n, &mut dice),
            };
            if let Some(mutant) = made.filter(|mutant| mutant.before != mutant.after) {
                return mutant;
            }
        }
    }

    /// The text with one line written otherwise.
    fn with(&self, n: usize, kind: &'static str, line: String, unreadable: bool) -> Mutant {
        let mut lines = self.lines.clone();
        lines[n].clone_from(&line);
        let text = lines.join("\n") + "\n";
        Mutant { kind, text, line: n + 1, before: self.lines[n].clone(), after: line, unreadable }
    }

    fn number(&self, n: usize, dice: &mut Dice) -> Option<Mutant> {
        let line = &self.lines[n];
        if self.is_prose(n) || line.starts_with("month") {
            return None;
        }
        let all = numbers(code(line));
        let number = all.get(dice.of(all.len()))?;
        let way = dice.one(&numbers::WAYS);
        let now = numbers::broken(line, number, way, dice)?;
        let kind = match (way, number.unit) {
            ("one step up" | "one step down", Unit::None) => "count one up or down",
            ("one step up" | "one step down", _) => "one step of the ruler up or down",
            _ => way,
        };
        // Both lengths of a pair in one system.
        let paired = way == "other unit" && code(line).contains('|');
        Some(self.with(n, kind, now, paired))
    }

    /// The names that stand in what a line says of its key, or as its key, the longest first.
    fn names_in(&self, n: usize) -> Vec<(Range<usize>, &str, &[String])> {
        let line = code(&self.lines[n]);
        let from = line.find(": ").map_or(line.len(), |at| at + 2);
        let mut found: Vec<(Range<usize>, &str, &[String])> = Vec::new();
        for group in [&self.papers, &self.pieces, &self.layers, &self.versions] {
            for name in group {
                for at in places(&line[from..], name) {
                    found.push((at.start + from..at.end + from, name, group));
                }
            }
        }
        if let Some((at, key)) = key(line).filter(|_| indent(line) == 2) {
            let groups = [&self.papers, &self.pieces];
            found.extend(groups.into_iter().filter(|g| g.iter().any(|name| name == key)).map(|g| {
                let name = g.iter().find(|name| *name == key).map_or("", String::as_str);
                (at.clone(), name, g.as_slice())
            }));
        }
        let longest = |at: &Range<usize>| {
            !found.iter().any(|(other, ..)| other != at && other.start <= at.start && other.end >= at.end)
        };
        found.iter().filter(|(at, ..)| longest(at)).cloned().collect()
    }

    fn name(&self, n: usize, dice: &mut Dice) -> Option<Mutant> {
        let line = &self.lines[n];
        // Words of the language that are names in some design too.
        let own = key(line).map(|(_, key)| key);
        if self.is_prose(n)
            || matches!(own, Some("panel" | "turned" | "fan" | "sheets" | "on" | "starting" | "side" | "fold"))
        {
            return None;
        }
        let found = self.names_in(n);
        let (at, name, group) = found.get(dice.of(found.len()))?.clone();
        if dice.chance(2) {
            let other = dice.one(&group.iter().map(String::as_str).collect::<Vec<_>>());
            return Some(self.with(n, "another name", put(line, &at, other), false));
        }
        let wrong = misspelt(name, dice)?;
        let all = [&self.papers, &self.pieces, &self.layers, &self.versions];
        if all.iter().any(|names| names.contains(&wrong)) {
            return None;
        }
        let defines = at.end == code(line).find(':').unwrap_or(0) || matches!(own, Some("as" | "name"));
        // A name that nothing has, or one that its own place has lost while something still asks for it.
        let asked = || {
            (0..self.lines.len()).filter(|other| *other != n).any(|other| {
                let own = key(&self.lines[other]).map(|(_, key)| key);
                let named = self.names_in(other).into_iter().any(|(_, other, _)| other == name);
                named && !matches!(own, Some("as" | "name" | "panel")) && !self.is_prose(other)
            })
        };
        // Nothing asks for a version.
        let lost = if defines { own != Some("name") && asked() } else { true };
        Some(self.with(n, "name misspelt", put(line, &at, &wrong), lost))
    }

    fn choice(&self, n: usize, dice: &mut Dice) -> Option<Mutant> {
        let line = &self.lines[n];
        if self.is_prose(n) {
            return None;
        }
        let named: Vec<Range<usize>> = self.names_in(n).into_iter().map(|(at, ..)| at).collect();
        let free = |at: &Range<usize>| named.iter().all(|name| name.end <= at.start || at.end <= name.start);
        let mut found: Vec<(Range<usize>, &str, &[&str])> = Vec::new();
        for group in CHOICES.iter().filter(|group| group[0] != "side" || line.contains("fold: ")) {
            for word in *group {
                found.extend(places(code(line), word).into_iter().filter(free).map(|at| (at, *word, *group)));
            }
        }
        let (at, word, group) = found.get(dice.of(found.len()))?.clone();
        let others: Vec<&str> = group.iter().copied().filter(|other| *other != word).collect();
        Some(self.with(n, "another choice", put(line, &at, dice.one(&others)), false))
    }

    /// A key or a choice misspelt.
    fn misspelt(&self, n: usize, dice: &mut Dice) -> Option<Mutant> {
        let line = &self.lines[n];
        let (at, word) = key(code(line)).filter(|(at, word)| {
            indent(line) != 2 || !self.papers.iter().chain(&self.pieces).any(|name| name == word) || at.is_empty()
        })?;
        let keys: BTreeSet<&str> = self.lines.iter().filter_map(|line| key(line)).map(|(_, key)| key).collect();
        let wrong = misspelt(word, dice).filter(|wrong| !keys.contains(wrong.as_str()))?;
        Some(self.with(n, "key misspelt", put(line, &at, &wrong), true))
    }

    fn whole_lines(&self, n: usize, dice: &mut Dice) -> Option<Mutant> {
        let line = self.lines[n].clone();
        let mut lines = self.lines.clone();
        let (kind, before, after, unreadable) = match dice.of(5) {
            0 | 1 => {
                lines.remove(n);
                ("line left out", line, String::new(), false)
            }
            2 => {
                lines.insert(n, line.clone());
                // A key twice in one place; an item of a list may stand twice.
                let twice = key(&line).is_some() && !line.trim_start().starts_with('-');
                ("line twice", line.clone(), format!("{line}\n{line}"), twice)
            }
            3 => {
                let next = *self.live.iter().find(|next| **next > n)?;
                lines.swap(n, next);
                let (one, two) = (&self.lines[n], &self.lines[next]);
                ("two lines swapped", format!("{one}\n{two}"), format!("{two}\n{one}"), false)
            }
            _ => {
                let by = dice.one(&[-2_i8, -1, 1, 2]);
                let now = if by > 0 {
                    format!("{}{line}", " ".repeat(usize::from(by.unsigned_abs())))
                } else {
                    line.strip_prefix(&" ".repeat(usize::from(by.unsigned_abs())))?.to_owned()
                };
                lines[n].clone_from(&now);
                ("indentation", line, now, false)
            }
        };
        Some(Mutant { kind, text: lines.join("\n") + "\n", line: n + 1, before, after, unreadable })
    }
}

/// A word with a letter left out or two changed places.
fn misspelt(word: &str, dice: &mut Dice) -> Option<String> {
    let mut letters: Vec<char> = word.chars().collect();
    let place = 1 + dice.of(letters.len().checked_sub(1)?);
    let place = place.min(letters.len() - 1);
    if dice.chance(2) {
        letters.remove(place);
    } else {
        letters.swap(place - 1, place);
    }
    let wrong: String = letters.into_iter().collect();
    (wrong != word && !wrong.trim().is_empty() && wrong.trim() == wrong && !wrong.contains("  ")).then_some(wrong)
}
