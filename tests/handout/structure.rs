//! A file's structure: what a reader who hears the pages is told, in order.
//!
//! The checker of PDF/UA-1 lets content pass whose mark no element refers to, so marks and
//! elements are held against each other one to one, and the words that poppler finds in the
//! structure against the words that it finds on the pages.

use super::oracles;
use super::shown::{self, Run, Shown, Tied};
use crate::support::tool;
use lopdf::{Dictionary, Document, Object, ObjectId};
use std::collections::{BTreeMap, BTreeSet};

/// An element of the structure, in reading order.
#[derive(Debug, Clone)]
struct Element {
    kind: String,
    alt: Option<String>,
    /// How many elements lie round it.
    depth: usize,
    /// Page and number of the content that is its own.
    marks: Vec<(usize, i64)>,
    has_scope: bool,
}

struct Tree<'a> {
    file: &'a Document,
    pages: BTreeMap<ObjectId, usize>,
    elements: Vec<Element>,
    faults: Vec<String>,
}

impl Tree<'_> {
    fn dictionary<'o>(&'o self, object: &'o Object) -> Option<&'o Dictionary> {
        self.file.dereference(object).ok().and_then(|(_, object)| object.as_dict().ok())
    }

    fn text(&self, of: &Dictionary, key: &[u8]) -> Option<String> {
        let text = of.get_deref(key, self.file).ok()?;
        lopdf::decode_text_string(text).ok()
    }

    fn walk(&mut self, object: &Object, page: Option<usize>, depth: usize) {
        let Some(element) = self.dictionary(object).cloned() else {
            self.faults.push(format!("the structure refers to what is not there: {object:?}"));
            return;
        };
        let page = self.page_of(&element).or(page);
        if let Ok(kind) = element.get(b"S").and_then(Object::as_name) {
            let scope = element.get_deref(b"A", self.file).ok().is_some_and(|of| format!("{of:?}").contains("Scope"));
            self.elements.push(Element {
                kind: String::from_utf8_lossy(kind).into_owned(),
                alt: self.text(&element, b"Alt"),
                depth,
                marks: Vec::new(),
                has_scope: scope,
            });
        }
        let own = self.elements.len().checked_sub(1);
        let Ok(kids) = element.get_deref(b"K", self.file).cloned() else { return };
        let kids = if let Object::Array(kids) = kids { kids } else { vec![kids] };
        for kid in &kids {
            let mark = match kid {
                Object::Integer(number) => Some((page, *number)),
                other => self
                    .dictionary(other)
                    .filter(|kid| kid.has(b"MCID"))
                    .map(|kid| (self.page_of(kid).or(page), kid.get(b"MCID").and_then(Object::as_i64).unwrap_or(-1))),
            };
            match (mark, own) {
                (Some((Some(page), number)), Some(own)) => self.elements[own].marks.push((page, number)),
                (Some(_), _) => self.faults.push(format!("content without its page or element: {kid:?}")),
                (None, _) => self.walk(kid, page, depth + 1),
            }
        }
    }

    fn page_of(&self, element: &Dictionary) -> Option<usize> {
        element.get(b"Pg").and_then(Object::as_reference).ok().and_then(|id| self.pages.get(&id).copied())
    }
}

/// All that is wrong with the structure of a file.
pub(crate) fn faults(bytes: &[u8], path: &str) -> Vec<String> {
    let file = Document::load_mem(bytes).expect("a PDF");
    let pages = shown::pages(&file);
    let numbers = file.page_iter().enumerate().map(|(number, id)| (id, number)).collect();
    let mut tree = Tree { file: &file, pages: numbers, elements: Vec::new(), faults: Vec::new() };
    let Ok(root) = file.catalog().and_then(|catalog| catalog.get_deref(b"StructTreeRoot", &file)) else {
        return vec!["there is no structure".to_owned()];
    };
    tree.walk(root, None, 0);
    let (elements, mut faults) = (tree.elements, tree.faults);
    faults.extend(marks_one_to_one(&elements, &pages));
    faults.extend(figures(&elements, &pages));
    faults.extend(headings(&elements));
    faults.extend(tables(&elements));
    faults.extend(columns(&elements, &pages));
    faults.extend(words_outside(&pages, path));
    faults
}

/// Content that no element holds, or two; elements whose content is not there.
fn marks_one_to_one(elements: &[Element], pages: &[Shown]) -> Vec<String> {
    let mut held: BTreeMap<(usize, i64), usize> = BTreeMap::new();
    for mark in elements.iter().flat_map(|element| &element.marks) {
        *held.entry(*mark).or_insert(0) += 1;
    }
    let there: BTreeSet<(usize, i64)> = pages
        .iter()
        .enumerate()
        .flat_map(|(page, shown)| shown.marks.iter().map(move |number| (page, *number)))
        .collect();
    let mut faults = Vec::new();
    for mark in &there {
        match held.get(mark) {
            None => faults.push(format!("content {mark:?} is in no element")),
            Some(1) => {}
            Some(times) => faults.push(format!("content {mark:?} is in {times} elements")),
        }
    }
    faults.extend(held.keys().filter(|mark| !there.contains(mark)).map(|mark| format!("{mark:?} is not on its page")));
    let untied = |run: &&Run| run.tied == Tied::Not && !run.text.trim().is_empty();
    faults
        .extend(pages.iter().flat_map(|page| page.runs.iter().filter(untied)).map(|run| format!("{run:?} is untied")));
    faults
}

/// The runs of an element and of all that lie in it.
fn runs_in<'p>(elements: &[Element], at: usize, pages: &'p [Shown]) -> Vec<&'p Run> {
    let inner = elements[at + 1..].iter().take_while(|inner| inner.depth > elements[at].depth);
    let marks: BTreeSet<(usize, i64)> =
        std::iter::once(&elements[at]).chain(inner).flat_map(|element| element.marks.iter().copied()).collect();
    let of_page = |(number, page): (usize, &'p Shown)| {
        let marks = marks.clone();
        let held = move |run: &&Run| matches!(run.tied, Tied::To(mark) if marks.contains(&(number, mark)));
        page.runs.iter().filter(held).collect::<Vec<_>>()
    };
    pages.iter().enumerate().flat_map(of_page).collect()
}

/// Figures whose words for those who cannot see them are missing, or say less numbers than the
/// figure shows.
fn figures(elements: &[Element], pages: &[Shown]) -> Vec<String> {
    let mut faults = Vec::new();
    for (at, figure) in elements.iter().enumerate().filter(|(_, element)| element.kind == "Figure") {
        let alt = figure.alt.as_deref().unwrap_or_default();
        if alt.trim().len() < 8 {
            faults.push(format!("a figure has no words: {figure:?}"));
        }
        let shows = |run: &&Run| run.text.chars().any(|letter| letter.is_ascii_digit());
        let lettered = runs_in(elements, at, pages).iter().any(shows);
        if lettered && !alt.chars().any(|letter| letter.is_ascii_digit()) {
            faults.push(format!("a figure shows numbers that its words do not say: {alt}"));
        }
    }
    faults
}

/// The first heading is the only one of the first level, and no level is skipped.
fn headings(elements: &[Element]) -> Vec<String> {
    let level = |element: &Element| element.kind.strip_prefix('H').and_then(|level| level.parse::<usize>().ok());
    let levels: Vec<usize> = elements.iter().filter_map(level).collect();
    let mut faults = Vec::new();
    if levels.first() != Some(&1) || levels.iter().filter(|level| **level == 1).count() != 1 {
        faults.push(format!("the first heading is not the only title: {levels:?}"));
    }
    if levels.windows(2).any(|pair| pair[1] > pair[0] + 1) {
        faults.push(format!("a level of heading is skipped: {levels:?}"));
    }
    faults
}

/// Tables without a row of heads that say what they head, or with rows of unlike length.
fn tables(elements: &[Element]) -> Vec<String> {
    let mut faults = Vec::new();
    for (at, table) in elements.iter().enumerate().filter(|(_, element)| element.kind == "Table") {
        let inner: Vec<&Element> = elements[at + 1..].iter().take_while(|inner| inner.depth > table.depth).collect();
        let mut rows: Vec<(usize, usize)> = Vec::new();
        for element in inner {
            match (element.kind.as_str(), rows.last_mut()) {
                ("TR", _) => rows.push((0, 0)),
                ("TH", Some(row)) if element.has_scope => row.0 += 1,
                ("TH", _) => faults.push("a head does not say what it heads".to_owned()),
                ("TD", Some(row)) => row.1 += 1,
                _ => {}
            }
        }
        let columns = rows.first().map_or(0, |row| row.0);
        if columns == 0 || rows.first().is_some_and(|row| row.1 > 0) {
            faults.push(format!("a table has no row of heads: {rows:?}"));
        }
        if rows.len() < 2 || rows.iter().any(|row| row.0 + row.1 != columns) {
            faults.push(format!("the rows of a table are unlike: {rows:?}"));
        }
    }
    faults
}

/// What begins at one left edge is read from the top downward; letters in figures are left out.
fn columns(elements: &[Element], pages: &[Shown]) -> Vec<String> {
    let mut pictured: BTreeSet<(usize, i64)> = BTreeSet::new();
    let mut order: Vec<(usize, i64)> = Vec::new();
    for (at, element) in elements.iter().enumerate() {
        if element.kind == "Figure" {
            let inner = elements[at + 1..].iter().take_while(|inner| inner.depth > element.depth);
            pictured.extend(std::iter::once(element).chain(inner).flat_map(|element| element.marks.iter().copied()));
        }
        order.extend(&element.marks);
    }
    let mut faults = Vec::new();
    for (number, page) in pages.iter().enumerate() {
        let mut lowest: Vec<(f64, f64, String)> = Vec::new();
        for mark in order.iter().filter(|mark| mark.0 == number && !pictured.contains(mark)) {
            for run in page.runs.iter().filter(|run| run.tied == Tied::To(mark.1) && !run.text.trim().is_empty()) {
                match lowest.iter_mut().find(|(left, ..)| (*left - run.left).abs() < 0.5) {
                    Some((_, base, last)) => {
                        if run.base > *base + 2.0 {
                            faults.push(format!("page {}: `{}` is read after `{last}` below it", number + 1, run.text));
                        }
                        (*base, *last) = (run.base, run.text.clone());
                    }
                    None => lowest.push((run.left, run.base, run.text.clone())),
                }
            }
        }
    }
    faults
}

/// Letters and how often each stands there, blanks left out.
fn counted<'t>(texts: impl IntoIterator<Item = &'t str>) -> BTreeMap<char, i64> {
    let mut counted = BTreeMap::new();
    for letter in texts.into_iter().flat_map(str::chars).filter(|letter| !letter.is_whitespace()) {
        *counted.entry(letter).or_insert(0) += 1;
    }
    counted
}

/// Letters that poppler finds on the pages and the walk of the content does not, or the reverse:
/// together with the marks, words that are told to nobody.
fn words_outside(pages: &[Shown], path: &str) -> Vec<String> {
    let walked = counted(pages.iter().flat_map(|page| &page.runs).map(|run| run.text.as_str()));
    unlike(&walked, &counted([oracles::text_of(path).as_str()]))
}

fn unlike(one: &BTreeMap<char, i64>, other: &BTreeMap<char, i64>) -> Vec<String> {
    let letters: BTreeSet<char> = one.keys().chain(other.keys()).copied().collect();
    let count = |of: &BTreeMap<char, i64>, letter: char| of.get(&letter).copied().unwrap_or(0);
    let unlike = letters.into_iter().map(|letter| (letter, count(one, letter), count(other, letter)));
    let unlike: Vec<_> = unlike.filter(|(_, one, other)| one != other).collect();
    if unlike.is_empty() { vec![] } else { vec![format!("letters that only one of two readers finds: {unlike:?}")] }
}

/// The words that poppler finds in the structure against those that it finds on the pages, what is
/// marked as decoration left out. Slow: for few files.
pub(crate) fn told_and_printed(bytes: &[u8], path: &str) -> Vec<String> {
    let structure = tool("pdfinfo", &["-struct-text", path]);
    let told = counted(structure.lines().map(str::trim).filter_map(|line| line.strip_prefix('"')?.strip_suffix('"')));
    let mut printed = counted([oracles::text_of(path).as_str()]);
    let pages = shown::pages(&Document::load_mem(bytes).expect("a PDF"));
    let decoration = pages.iter().flat_map(|page| &page.runs).filter(|run| run.tied == Tied::Artifact);
    for (letter, count) in counted(decoration.map(|run| run.text.as_str())) {
        *printed.entry(letter).or_insert(0) -= count;
    }
    printed.retain(|_, count| *count != 0);
    unlike(&told, &printed)
}
