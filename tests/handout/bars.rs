//! Scale honesty: the bars that a reader lays a ruler on, and the print dialog's setting.

use super::ink::Grey;
use super::{INCH, oracles, written};
use crate::support::tool;
use serde_json::Value;

/// Pixels an inch.
const FINE: f64 = 600.0;

/// From the middle of a bar's first mark to the middle of its last, pixels at 600 an inch; `words`
/// stand right of the bar, level with it.
fn length(words: [&str; 2]) -> f64 {
    let folder = tempfile::tempdir().expect("a folder");
    let path = written(&INCH.1, folder.path());
    let pages = oracles::pages(&path);
    let (page, left, middle) = pages
        .iter()
        .enumerate()
        .find_map(|(number, page)| {
            let pair = page
                .words
                .windows(2)
                .find(|pair| pair[0].text == words[0] && pair[1].text == words[1] && pair[0].left > 150.0)?;
            Some((number + 1, pair[0].left, f64::midpoint(pair[0].top, pair[0].bottom)))
        })
        .unwrap_or_else(|| panic!("no bar of {words:?}"));
    // A strip as high as the end marks, from the edge of the page to the words.
    let pixel = |points: f64| (points / 72.0 * FINE).round();
    let (number, prefix) = (page.to_string(), folder.path().join("bar"));
    let (x, y) = (pixel(left - 170.0), pixel(middle - 5.0));
    let (width, height) = (pixel(left - 3.0) - x, pixel(10.0));
    let [x, y, width, height] = [x, y, width, height].map(|side| format!("{side:.0}"));
    let _ = tool(
        "pdftoppm",
        &[
            "-r",
            "600",
            "-gray",
            "-singlefile",
            "-f",
            &number,
            "-l",
            &number,
            "-x",
            &x,
            "-y",
            &y,
            "-W",
            &width,
            "-H",
            &height,
            &path,
            &prefix.to_string_lossy(),
        ],
    );
    let strip = Grey::read(&std::fs::read(prefix.with_extension("pgm")).expect("a picture"));
    // Ink of each column; only the end marks are as high as this row above the bar's own line.
    let dark = |y: usize| -> Vec<usize> { (0..strip.width).filter(|x| strip.row(y)[*x] < 128).collect() };
    let bar = (0..strip.height).max_by_key(|y| dark(*y).len()).expect("rows");
    // 1.8 mm above the line: the end marks reach 2.2 mm, those between them 1.1 mm, but for the middle of the inches.
    let marks = dark(bar.checked_sub((1.8 / 25.4 * FINE) as usize).expect("the strip is high enough"));
    let mut spans: Vec<(usize, usize)> = Vec::new();
    for x in marks {
        match spans.last_mut() {
            Some((_, end)) if *end + 1 == x => *end = x,
            _ => spans.push((x, x)),
        }
    }
    assert!((2..=3).contains(&spans.len()), "{spans:?}");
    let middle = |span: &(usize, usize)| f64::midpoint(span.0 as f64, span.1 as f64);
    middle(spans.last().expect("an end")) - middle(&spans[0])
}

#[test]
fn bars_are_true_to_a_pixel() {
    // 5 cm and 2 in by definition of the inch as 25.4 mm (ISO 80000-3 and NIST SP 811 agree on it).
    let (centimetres, inches) = (length(["5", "cm"]), length(["2", "in"]));
    assert!((centimetres - 50.0 / 25.4 * FINE).abs() <= 1.0, "{centimetres}");
    assert!((inches - 2.0 * FINE).abs() <= 1.0, "{inches}");
}

#[test]
fn the_print_dialog_is_asked_not_to_shrink() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = written(&INCH.1, folder.path());
    let json: Value = serde_json::from_str(&tool("qpdf", &["--json=2", "--json-key=qpdf", &path])).expect("JSON");
    let objects = &json["qpdf"][1];
    let referred = |value: &Value| match value.as_str() {
        Some(id) => objects[format!("obj:{id}")]["value"].clone(),
        None => value.clone(),
    };
    let catalogue = referred(&objects["trailer"]["value"]["/Root"]);
    let preferences = referred(&catalogue["/ViewerPreferences"]);
    // ISO 32000-1, table 150.
    assert_eq!(preferences["/PrintScaling"], "/None");
    assert_eq!(preferences["/DisplayDocTitle"], true);
}
