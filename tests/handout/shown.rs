//! What a page shows, read from its content stream by a general PDF library: every run of letters
//! with its size, its place and the mark that ties it to the structure.

use lopdf::content::{Content, Operation};
use lopdf::{Document, Encoding, Object, ObjectId};
use std::collections::BTreeMap;

/// How content is tied to the structure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Tied {
    /// By this number.
    To(i64),
    /// To nothing: decoration.
    Artifact,
    /// It is not marked at all.
    Not,
}

/// Letters that stand beside each other in one size.
#[derive(Debug, Clone)]
pub(crate) struct Run {
    pub(crate) text: String,
    /// Points.
    pub(crate) size: f64,
    /// Where the first letter begins, points from the lower left.
    pub(crate) left: f64,
    pub(crate) base: f64,
    pub(crate) tied: Tied,
    /// Red, green and blue of its paint.
    pub(crate) paint: [u8; 3],
}

/// A page's content.
#[derive(Debug, Clone, Default)]
pub(crate) struct Shown {
    pub(crate) runs: Vec<Run>,
    /// Every mark of the content in order.
    pub(crate) marks: Vec<i64>,
}

/// A matrix as PDF writes it.
type Matrix = [f64; 6];

const UNMOVED: Matrix = [1.0, 0.0, 0.0, 1.0, 0.0, 0.0];

/// `first`, then `second` (ISO 32000-1, 8.3.4).
fn then(first: Matrix, second: Matrix) -> Matrix {
    let [a, b, c, d, e, f] = first;
    let [k, l, m, n, o, p] = second;
    [a * k + b * m, a * l + b * n, c * k + d * m, c * l + d * n, e * k + f * m + o, e * l + f * n + p]
}

fn numbers(operation: &Operation) -> Vec<f64> {
    operation.operands.iter().filter_map(|operand| operand.as_float().ok()).map(f64::from).collect()
}

fn matrix(operation: &Operation) -> Matrix {
    numbers(operation).try_into().expect("six numbers")
}

/// What each page of a file shows.
pub(crate) fn pages(file: &Document) -> Vec<Shown> {
    file.page_iter().map(|page| shown(file, page)).collect()
}

fn shown(file: &Document, page: ObjectId) -> Shown {
    let fonts = file.get_page_fonts(page).expect("fonts");
    let letters: BTreeMap<Vec<u8>, Encoding<'_>> = fonts
        .iter()
        .map(|(name, font)| (name.clone(), font.get_font_encoding(file).expect("the font says its letters")))
        .collect();
    let content = Content::decode(&file.get_page_content(page)).expect("content");
    let mut page = Shown::default();
    let (mut moved, mut kept) = (UNMOVED, Vec::new());
    let (mut line, mut at) = (UNMOVED, UNMOVED);
    let (mut font, mut size, mut paint) = (Vec::new(), 0.0, [0; 3]);
    let mut marks: Vec<Tied> = Vec::new();
    for operation in &content.operations {
        match operation.operator.as_str() {
            "q" => kept.push((moved, font.clone(), size, paint)),
            "Q" => (moved, font, size, paint) = kept.pop().expect("what was kept"),
            "cm" => moved = then(matrix(operation), moved),
            "BT" => (line, at) = (UNMOVED, UNMOVED),
            "scn" | "rg" => paint = painted(&numbers(operation)),
            "Tf" => {
                font = operation.operands[0].as_name().expect("a name").to_vec();
                size = f64::from(operation.operands[1].as_float().expect("a size"));
            }
            "Tm" => (line, at) = (matrix(operation), matrix(operation)),
            "Td" | "TD" => {
                let by = numbers(operation);
                line = then([1.0, 0.0, 0.0, 1.0, by[0], by[1]], line);
                at = line;
            }
            "BDC" | "BMC" => marks.push(mark(operation)),
            "EMC" => drop(marks.pop()),
            "Tj" | "TJ" => {
                let text = text_of(operation, &letters[&font]);
                let all = then(at, moved);
                // Turned letters too: the length of what one upward becomes.
                let size = size * all[2].hypot(all[3]);
                let tied = marks.iter().rev().find(|tied| **tied != Tied::Not).copied().unwrap_or(Tied::Not);
                page.runs.push(Run { text, size, left: all[4], base: all[5], tied, paint });
            }
            "'" | "\"" | "T*" | "TL" | "Ts" | "Tz" => panic!("an operator of text that is not walked: {operation:?}"),
            _ => {}
        }
        if operation.operator == "BDC"
            && let Some(Tied::To(number)) = marks.last()
        {
            page.marks.push(*number);
        }
    }
    page
}

/// A paint of one or three shares as bytes.
fn painted(shares: &[f64]) -> [u8; 3] {
    let byte = |share: f64| (share * 255.0).round() as u8;
    match shares {
        [grey] => [byte(*grey); 3],
        [red, green, blue] => [byte(*red), byte(*green), byte(*blue)],
        _ => panic!("a paint that is not walked: {shares:?}"),
    }
}

fn mark(operation: &Operation) -> Tied {
    if operation.operands.first().and_then(|name| name.as_name().ok()) == Some(b"Artifact") {
        return Tied::Artifact;
    }
    let number = operation.operands.get(1).and_then(|of| of.as_dict().ok()).and_then(|of| of.get(b"MCID").ok());
    number.and_then(|number| number.as_i64().ok()).map_or(Tied::Not, Tied::To)
}

fn text_of(operation: &Operation, letters: &Encoding<'_>) -> String {
    let strings: Vec<&Object> = match &operation.operands[0] {
        Object::Array(parts) => parts.iter().filter(|part| matches!(part, Object::String(..))).collect(),
        only => vec![only],
    };
    let mut text = String::new();
    for string in strings {
        text.push_str(&Document::decode_text(letters, string.as_str().expect("a string")).expect("letters"));
    }
    text
}

/// Whether a text holds a fraction such as `3/4`.
pub(crate) fn has_fraction(text: &str) -> bool {
    let letters: Vec<char> = text.chars().collect();
    letters.windows(3).any(|part| part[0].is_ascii_digit() && matches!(part[1], '/' | '⁄') && part[2].is_ascii_digit())
}

#[test]
fn matrices_follow_each_other() {
    // Twice as large and then moved by 5 to the right: (1, 1) comes to (7, 2).
    let all = then([2.0, 0.0, 0.0, 2.0, 0.0, 0.0], [1.0, 0.0, 0.0, 1.0, 5.0, 0.0]);
    assert_eq!([all[0] + all[2] + all[4], all[1] + all[3] + all[5]], [7.0, 2.0]);
    assert!(has_fraction("5 3/4") && !has_fraction("3 / 4") && !has_fraction("and/or"));
}
