//! What independent tools say about a PDF.

use crate::support::tool;
use page_validation::{ValidationOptions, ValidationProfile, validate_pdf_bytes};
use std::process::Command;
use trimwright::length::Units;

/// A sheet of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Sheet {
    /// ANSI/ASME Y14.1 size A: 8 1/2 x 11 in.
    Letter,
    /// ISO 216: 210 x 297 mm.
    A4,
}

impl Sheet {
    pub(crate) const fn of(units: Units) -> Self {
        match units {
            Units::Inch => Self::Letter,
            Units::Metric => Self::A4,
        }
    }

    /// Width and height, points.
    pub(crate) const fn points(self) -> (f64, f64) {
        match self {
            Self::Letter => (612.0, 792.0),
            Self::A4 => (595.276, 841.89),
        }
    }

    /// What the body of a page leaves free above and below it, mm: below, the foot stands.
    pub(crate) const fn body(self) -> (f64, f64) {
        match self {
            Self::Letter => (13.0, 22.3),
            Self::A4 => (15.0, 25.0),
        }
    }

    /// As pdfinfo prints it, in points (1/72 in).
    const fn printed(self) -> &'static str {
        match self {
            Self::Letter => "612 x 792 pts (letter)",
            Self::A4 => "595.276 x 841.89 pts (A4)",
        }
    }
}

/// A word and its box, points from the upper left.
#[derive(Debug, Clone)]
pub(crate) struct Word {
    pub(crate) left: f64,
    pub(crate) top: f64,
    pub(crate) right: f64,
    pub(crate) bottom: f64,
    pub(crate) text: String,
}

impl Word {
    /// The box without 15 % at every edge: a box is higher than its letters, and whether a short
    /// word is turned cannot be told from its box.
    pub(crate) fn letters(&self) -> Self {
        let (across, down) = (0.15 * (self.right - self.left), 0.15 * (self.bottom - self.top));
        Self {
            left: self.left + across,
            top: self.top + down,
            right: self.right - across,
            bottom: self.bottom - down,
            text: self.text.clone(),
        }
    }
}

/// A page and its words.
#[derive(Debug, Clone)]
pub(crate) struct Page {
    pub(crate) words: Vec<Word>,
}

/// A face in a file.
#[derive(Debug, Clone)]
pub(crate) struct Face {
    pub(crate) name: String,
    pub(crate) embedded: bool,
    pub(crate) unicode: bool,
}

/// poppler's and qpdf's complaints: size of every page, title, soundness.
pub(crate) fn true_faults(path: &str, sheet: Sheet) -> Vec<String> {
    let mut faults = Vec::new();
    let check = Command::new("qpdf").args(["--check", path]).output().expect("qpdf");
    if !check.status.success() {
        faults.push(format!("qpdf: {}", String::from_utf8_lossy(&check.stderr)));
        return faults;
    }
    let info = tool("pdfinfo", &["-f", "1", "-l", "999", path]);
    for line in info.lines().filter(|line| line.starts_with("Page") && line.contains("size:")) {
        if !line.ends_with(sheet.printed()) {
            faults.push(format!("the page size is not {}: {line}", sheet.printed()));
        }
    }
    for wanted in ["Tagged:          yes", "Creator:         trimwright", "Title:"] {
        if !info.contains(wanted) {
            faults.push(format!("pdfinfo does not say `{wanted}`: {info}"));
        }
    }
    faults
}

/// Whether every stream's `/Length` leads exactly to the end-of-line before its `endstream`
/// (ISO 32000-1, 7.3.8.1). The checker takes a data byte 13 before that end-of-line for a part of
/// it, which compressed data ends in once in 256 times, so its complaint is looked into here.
fn stream_lengths_are_true(bytes: &[u8]) -> bool {
    let find =
        |from: usize, what: &[u8]| bytes[from..].windows(what.len()).position(|part| part == what).map(|at| from + at);
    let (mut at, mut streams) = (0, 0);
    while let Some(length) = find(at, b"/Length ") {
        let digits: String =
            bytes[length + 8..].iter().take_while(|byte| byte.is_ascii_digit()).map(|byte| char::from(*byte)).collect();
        let Some(start) = find(length, b"stream\n").map(|start| start + 7) else { return false };
        let Ok(count) = digits.parse::<usize>() else { return false };
        if bytes.get(start + count..start + count + 10) != Some(b"\nendstream".as_slice()) {
            return false;
        }
        at = start + count;
        streams += 1;
    }
    streams > 0
}

/// What the checker of PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2) finds.
pub(crate) fn standard_faults(bytes: &[u8]) -> Vec<String> {
    [ValidationProfile::PdfUa1, ValidationProfile::PdfA2a]
        .into_iter()
        .flat_map(|profile| {
            let options = ValidationOptions::default().profile(profile);
            match validate_pdf_bytes(bytes, &options) {
                Ok(report) => report
                    .failures
                    .iter()
                    .filter(|failure| !(failure.rule_id.ends_with(":6.1.7.1:1") && stream_lengths_are_true(bytes)))
                    .map(|failure| format!("{failure:?}"))
                    .collect(),
                Err(error) => vec![error.to_string()],
            }
        })
        .collect()
}

/// The faces that pdffonts lists.
pub(crate) fn faces(path: &str) -> Vec<Face> {
    let list = tool("pdffonts", &[path]);
    let faces: Vec<Face> = list
        .lines()
        .skip(2)
        .map(|line| {
            let cells: Vec<&str> = line.split_whitespace().collect();
            // From the right: object, generation, uni, sub, emb.
            let cell = |from_end: usize| cells[cells.len() - from_end];
            Face { name: cells[0].to_owned(), embedded: cell(5) == "yes", unicode: cell(3) == "yes" }
        })
        .collect();
    assert!(!faces.is_empty(), "{list}");
    faces
}

/// All text, pages parted by form feeds, in the order of the content.
pub(crate) fn text_of(path: &str) -> String {
    tool("pdftotext", &["-raw", path, "-"])
}

/// All text as pdftotext gives it to anybody who asks for nothing special.
pub(crate) fn plain_text(path: &str) -> String {
    tool("pdftotext", &[path, "-"])
}

fn number(tag: &str, name: &str) -> f64 {
    let from = tag.find(&format!("{name}=\"")).expect(name) + name.len() + 2;
    tag[from..].split('"').next().expect("a value").parse().expect("a number")
}

/// Every page with its words' boxes.
pub(crate) fn pages(path: &str) -> Vec<Page> {
    let boxes = tool("pdftotext", &["-bbox", path, "-"]);
    let mut pages: Vec<Page> = Vec::new();
    for line in boxes.lines().map(str::trim) {
        if line.starts_with("<page ") {
            pages.push(Page { words: Vec::new() });
        } else if line.starts_with("<word ") {
            let text = line.split('>').nth(1).and_then(|rest| rest.split('<').next()).unwrap_or("").to_owned();
            let [left, top, right, bottom] = ["xMin", "yMin", "xMax", "yMax"].map(|name| number(line, name));
            pages.last_mut().expect("a page").words.push(Word { left, top, right, bottom, text });
        }
    }
    pages
}
