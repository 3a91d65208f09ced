//! The handout as its reader's machine sees it: poppler, qpdf and an independent PDF/UA-1 checker
//! are the outside oracles.

mod oracles;

use std::path::Path;

use crate::support::{demo, sound};
use oracles::{Page, Sheet, Word, faces, pages, text_of, true_faults};
use trimwright::handout;
use trimwright::pipeline;
use trimwright::project::Project;
use trimwright::source::Source;

/// A margin that every home printer keeps: 12.7 mm (facts: unprintable margins of printers).
const MARGIN: f64 = 36.0;

fn editions(name: &str) -> Vec<Project> {
    let text = std::fs::read_to_string(demo(name)).expect("the demo");
    pipeline::run(&Source::new(name, text), name).editions
}

fn set(project: &Project) -> Vec<u8> {
    handout::typeset(project, None).expect("it is set")
}

fn written(bytes: &[u8], folder: &Path) -> String {
    let path = folder.join("handout.pdf");
    std::fs::write(&path, bytes).expect("written");
    path.to_string_lossy().into_owned()
}

/// Everything that is asked of every handout, as a list of faults.
fn faults(bytes: &[u8], sheet: Sheet) -> Vec<String> {
    let folder = tempfile::tempdir().expect("a folder");
    let path = written(bytes, folder.path());
    let mut faults = true_faults(&path, sheet);
    faults.extend(oracles::standard_faults(bytes));
    for face in faces(&path) {
        if !face.embedded || !face.unicode {
            faults.push(format!("the face {} is not embedded with its letters", face.name));
        }
    }
    for (number, page) in pages(&path).iter().enumerate() {
        faults.extend(page_faults(page).into_iter().map(|fault| format!("page {}: {fault}", number + 1)));
    }
    faults
}

/// Words that overlap or stand in the margin, and pages that are nearly empty.
fn page_faults(page: &Page) -> Vec<String> {
    let mut faults = Vec::new();
    for word in &page.words {
        let outside = word.left < MARGIN - 0.1
            || word.right > page.width - MARGIN + 0.1
            || word.top < MARGIN - 0.1
            || word.bottom > page.height - MARGIN + 0.1;
        if outside {
            faults.push(format!("`{}` stands in the margin", word.text));
        }
    }
    for (index, one) in page.words.iter().enumerate() {
        for other in &page.words[index + 1..] {
            if overlap(one, other) {
                faults.push(format!("`{}` and `{}` overlap", one.text, other.text));
            }
        }
    }
    faults
}

/// Whether two words' boxes share room. A box is taller than its letters: 15 % are cut off above
/// and below, or an eleventh of a point is shared on a clean page.
fn overlap(one: &Word, other: &Word) -> bool {
    let (a, b) = (one.letters(), other.letters());
    let across = a.right.min(b.right) - a.left.max(b.left);
    let down = a.bottom.min(b.bottom) - a.top.max(b.top);
    across > 0.2 && down > 0.2
}

#[test]
fn demos_are_true_tagged_tidy_pages() {
    for name in ["lantern-row", "kitchen-garden"] {
        for project in editions(name) {
            let sheet = Sheet::of(project.units());
            let faults = faults(&set(&project), sheet);
            assert!(faults.is_empty(), "{name}, {:?}: {faults:#?}", project.units());
        }
    }
}

#[test]
fn the_same_project_gives_the_same_bytes() {
    let project = editions("lantern-row").remove(0);
    assert!(set(&project) == set(&project));
    assert!(set(&project) != handout::typeset(&project, Some(&[])).expect("a draft"), "a draft is another file");
}

#[test]
fn the_gate_is_seen_to_fail() {
    let inch = editions("lantern-row").into_iter().next().expect("an edition");
    let bytes = set(&inch);
    // The right file on the wrong sheet.
    assert!(faults(&bytes, Sheet::A4).iter().any(|fault| fault.contains("page size")));
    // A file without its mark of being tagged, of the same length.
    let mut untagged = bytes.clone();
    let at = untagged.windows(12).position(|part| part == b"/Marked true").expect("it is tagged");
    untagged[at..at + 12].copy_from_slice(b"/Marked null");
    assert!(!oracles::standard_faults(&untagged).is_empty());
    // A file that was cut off.
    let folder = tempfile::tempdir().expect("a folder");
    let path = written(&bytes[..bytes.len() / 2], folder.path());
    assert!(!true_faults(&path, Sheet::Letter).is_empty());
    // Words that overlap, words in the margin.
    let word = |left: f64, top: f64, text: &str| Word { left, top, right: left + 30.0, bottom: top + 14.0, text: text.into() };
    let page = |words| Page { width: 612.0, height: 792.0, words };
    assert_eq!(page_faults(&page(vec![word(100.0, 100.0, "one"), word(120.0, 105.0, "two")])).len(), 1);
    assert_eq!(page_faults(&page(vec![word(100.0, 100.0, "one"), word(100.0, 113.0, "two")])).len(), 0);
    assert_eq!(page_faults(&page(vec![word(20.0, 100.0, "out")])).len(), 1);
}

#[test]
fn no_text_is_under_nine_points() {
    let folder = tempfile::tempdir().expect("a folder");
    for project in editions("lantern-row") {
        let path = written(&set(&project), folder.path());
        let sizes = oracles::letter_sizes(&path);
        let least = sizes.iter().copied().fold(f64::INFINITY, f64::min);
        assert!(least >= 8.95, "{least} pt of {sizes:?}");
    }
}

const HOSTILE: &str = "#panic() $x$ *b* @ref <lbl> // /* `raw` _it_ = head ~ -- [a] {b} \\ end";

fn hostile() -> Project {
    sound(&format!(
        r#"
title: "{text}"
month: 2027-01
designer: "{text}"
about: "{text}"
cards: 2
units: metric
card: {{size: A6, fold: side, from: "#snow *x*"}}
papers:
  "#snow *x*": {{sheets: 1 of A4, weight: "*200* gsm"}}
  "$rose$": {{sheets: 2 of A5}}
pieces:
  "<tag>": {{size: 80 x 100 mm, from: "$rose$", stamp: "*hi* #there"}}
front:
  - {{place: "<tag>", onto: card, centre: both ways, glue: tape}}
notes:
  - {{on: "<tag>", say: "#note() // *x*"}}
supplies: ["@ref // x"]
tools: ["/* none */"]
leftovers: ["#eat() $y$"]
"#,
        text = HOSTILE.replace('\\', "\\\\")
    ))
}

#[test]
fn a_designers_text_prints_literally() {
    let folder = tempfile::tempdir().expect("a folder");
    let bytes = set(&hostile());
    let path = written(&bytes, folder.path());
    let text = text_of(&path);
    let flat = text.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(flat.matches(HOSTILE).count() >= 2, "title and about: {flat}");
    for part in ["#Snow *x*", "#snow *x*", "$rose$", "<tag>", "*hi* #there", "#note() // *x*", "@ref // x", "/* none */", "#eat() $y$"] {
        assert!(flat.to_lowercase().contains(&part.to_lowercase()), "`{part}` in {flat}");
    }
    let faults = faults(&bytes, Sheet::A4);
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn fractions_come_out_as_they_are_read() {
    let folder = tempfile::tempdir().expect("a folder");
    let inch = editions("lantern-row").into_iter().next().expect("an edition");
    let text = text_of(&written(&set(&inch), folder.path()));
    for size in ["3 3/4 × 5", "4 × 5 1/4", "1 × 1 3/4", "4 1/2 × 1/4", "8 1/2 × 5 1/2"] {
        assert!(text.contains(size), "`{size}`");
    }
}

#[test]
fn a_draft_says_so_on_every_page_and_why_on_the_last() {
    let folder = tempfile::tempdir().expect("a folder");
    let inch = editions("lantern-row").into_iter().next().expect("an edition");
    let findings: Vec<String> =
        (1..=70).map(|n| format!("error[past-the-edge]: finding number {n} reaches past *the* card")).collect();
    let path = written(&handout::typeset(&inch, Some(&findings)).expect("a draft"), folder.path());
    let pages: Vec<String> = text_of(&path).split('\u{c}').map(str::to_owned).filter(|page| !page.trim().is_empty()).collect();
    assert!(pages.iter().all(|page| page.contains("DRAFT")));
    let all = pages.join(" ");
    for finding in &findings {
        assert!(all.contains(finding.as_str()), "{finding}");
    }
    let clean = text_of(&written(&set(&inch), folder.path()));
    assert!(!clean.contains("DRAFT"));
}

#[test]
fn page_pictures_are_as_many_as_pages() {
    let folder = tempfile::tempdir().expect("a folder");
    let inch = editions("lantern-row").into_iter().next().expect("an edition");
    let images = handout::page_images(&inch, 40.0).expect("pictures");
    assert_eq!(images.len(), pages(&written(&set(&inch), folder.path())).len());
    // A PNG's width and height stand in bytes 16 to 24 (PNG specification, IHDR).
    for image in images {
        let side = |at: usize| u32::from_be_bytes(image[at..at + 4].try_into().expect("four bytes"));
        assert_eq!((side(16), side(20)), (340, 440), "8 1/2 x 11 in at 40 px an inch");
    }
}
