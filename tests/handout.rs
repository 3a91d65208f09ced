//! The handout as its reader's machine sees it: poppler, qpdf and an independent PDF/UA-1 checker
//! are the outside oracles.

mod bars;
mod contrast;
mod forms;
pub(crate) mod ink;
mod languages;
mod look;
pub(crate) mod oracles;
mod seen_to_fail;
pub(crate) mod shown;
pub(crate) mod structure;
mod templates;
mod variants;
pub(crate) mod walk;

use std::path::Path;
use std::sync::LazyLock;

use crate::support::{demo, editions_at, sound};
use oracles::{Sheet, pages, text_of, true_faults};
use trimwright::design::variants::Wanted;
use trimwright::drawing::scene::Role;
use trimwright::handout::{self, Told};
use trimwright::pipeline;
use trimwright::project::Project;
use trimwright::source::Source;

fn editions(name: &str) -> Vec<Project> {
    editions_at(&demo(name))
}

/// The sample edition in inches and its handout, set once for all tests.
static INCH: LazyLock<(Project, Vec<u8>)> = LazyLock::new(|| {
    let project = editions("lantern-row").remove(0);
    let bytes = set(&project);
    (project, bytes)
});

fn set(project: &Project) -> Vec<u8> {
    handout::typeset(project, Wanted::HANDOUT, &Told::default()).expect("it is set")
}

fn written(bytes: &[u8], folder: &Path) -> String {
    let path = folder.join("handout.pdf");
    std::fs::write(&path, bytes).expect("written");
    path.to_string_lossy().into_owned()
}

/// Everything that is asked of every handout, as a list of faults.
fn faults(bytes: &[u8], sheet: Sheet) -> Vec<String> {
    let set = walk::Set {
        name: "it".to_owned(),
        bytes: bytes.to_vec(),
        sheet,
        least: walk::USUAL,
        words: std::collections::BTreeSet::new(),
    };
    walk::walk(&set, tempfile::tempdir().expect("a folder").path()).faults
}

#[test]
fn the_same_project_gives_the_same_bytes() {
    let (project, bytes) = &*INCH;
    assert!(set(project) == *bytes);
}

const HOSTILE: &str = "#panic() $x$ *b* @ref <lbl> // /* `raw` _it_ = head ~ -- [a] {b} \\ end";

fn hostile() -> Project {
    sound(&format!(
        r##"
title: "{text}"
month: 2027-01
designer: "{text}"
about: "{text}"
cards: 2
units: metric
card: {{size: A6, fold: side, from: "#snow *x*"}}
papers:
  "#snow *x*": {{sheets: 1 of A4, weight: "200  g/m2"}}
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
"##,
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
    for part in [
        "#Snow *x*",
        "#snow *x*",
        "$rose$",
        "<tag>",
        "*hi* #there",
        "#note() // *x*",
        "@ref // x",
        "/* none */",
        "#eat() $y$",
    ] {
        assert!(flat.to_lowercase().contains(&part.to_lowercase()), "`{part}` in {flat}");
    }
    let faults = faults(&bytes, Sheet::A4);
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn fractions_come_out_as_they_are_read() {
    let folder = tempfile::tempdir().expect("a folder");
    let text = oracles::plain_text(&written(&INCH.1, folder.path()));
    for size in ["3 3/4 × 5", "4 × 5 1/4", "1 × 1 3/4", "4 1/2 × 1/4", "8 1/2 × 5 1/2"] {
        assert!(text.contains(size), "`{size}`");
    }
}

#[test]
fn a_draft_says_so_on_every_page_and_why_on_the_last() {
    let folder = tempfile::tempdir().expect("a folder");
    let findings: Vec<String> =
        (1..=70).map(|n| format!("error[past-the-edge]: finding number {n} reaches past *the* card")).collect();
    let path =
        written(&handout::typeset(&INCH.0, Wanted::HANDOUT, &Told::draft(&findings)).expect("a draft"), folder.path());
    let pages: Vec<String> =
        text_of(&path).split('\u{c}').map(str::to_owned).filter(|page| !page.trim().is_empty()).collect();
    assert!(pages.iter().all(|page| page.contains("DRAFT")));
    let all = pages.join(" ");
    for finding in &findings {
        assert!(all.contains(finding.as_str()), "{finding}");
    }
    let clean = text_of(&written(&INCH.1, folder.path()));
    assert!(!clean.contains("DRAFT"));
}

#[test]
fn page_pictures_are_as_many_as_pages() {
    let folder = tempfile::tempdir().expect("a folder");
    let images = handout::page_images(&INCH.0, Wanted::HANDOUT, 40.0).expect("pictures");
    assert_eq!(images.len(), pages(&written(&INCH.1, folder.path())).len());
    // A PNG's width and height stand in bytes 16 to 24 (PNG specification, IHDR).
    for image in images {
        let side = |at: usize| u32::from_be_bytes(image[at..at + 4].try_into().expect("four bytes"));
        assert_eq!((side(16), side(20)), (340, 440), "8 1/2 x 11 in at 40 px an inch");
    }
}

/// A design with as many papers, pieces, versions and cards as a month ever has, made by rule.
fn crowded() -> Project {
    use std::fmt::Write as _;
    const PAPERS: [(&str, &str); 7] = [
        ("midnight", "one-way"),
        ("harvest moon", "any"),
        ("barley", "two-way"),
        ("cobalt", "any"),
        ("sage and smoke", "one-way"),
        ("brick", "any"),
        ("pebble", "any"),
    ];
    const PIECES: [(&str, &str); 11] = [
        ("upper long rail", "3 1/2 x 1/2"),
        ("lower rail", "3 1/4 x 3/8"),
        ("lantern", "1 x 1 3/4"),
        ("window", "1 x 1"),
        ("pane", "3/4 x 3/4"),
        ("star", "1/2 x 1/2"),
        ("greeting strip", "3 x 1"),
        ("thin ribbon strip", "2 1/2 x 1/4"),
        ("moon", "1 1/2 x 1 1/2"),
        ("cloud", "2 x 3/4"),
        ("little bench", "1 1/4 x 1/2"),
    ];
    let mut text = "title: The Long Winter Evening With Lanterns
month: 2027-12
designer: Heron Lane Paper Room and Friends of the Printing Shed
about: A crowd of papers and pieces, so that every page has to go over its edge.
cards: 24
units: inch
card: {size: 4 1/4 x 5 1/2 in, fold: side, from: white}
papers:
  white: {sheets: 12 of letter, weight: 110 lb cover}
"
    .to_owned();
    for (name, pattern) in PAPERS {
        let _ = writeln!(text, "  {name}: {{sheets: 8 of 12 x 12 in, pattern: {pattern}}}");
    }
    text.push_str("pieces:\n  mat: {size: card less 1/8 in all round, from: pebble}\n");
    text.push_str("  panel: {size: mat less 1/8 in all round, from: varies}\n");
    for (index, (name, size)) in PIECES.iter().enumerate() {
        let _ = writeln!(text, "  {name}: {{size: {size} in, from: {}}}", PAPERS[index % 7].0);
    }
    text.push_str("versions:\n");
    for (name, _) in &PAPERS[..6] {
        let _ = writeln!(text, "  - {{name: {name}, cards: 4, papers: {{panel: {name}}}}}");
    }
    text.push_str("front:\n  - place: mat\n    onto: card\n    centre: both ways\n    glue: tape\n    first:\n");
    text.push_str("      - {place: panel, centre: both ways, glue: tape}\n");
    for (index, (name, _)) in PIECES.iter().enumerate() {
        let glue = ["liquid", "foam", "tape"][index % 3];
        let _ = writeln!(
            text,
            "      - {{place: {name}, onto: panel, left: 1/8 in, top: 1/{} in, glue: {glue}}}",
            [8, 4, 2][index % 3]
        );
    }
    let outcome = pipeline::run(&Source::new("crowded.yaml", text), "crowded");
    outcome.editions.into_iter().next().unwrap_or_else(|| panic!("{:?}", outcome.findings))
}

#[test]
fn a_crowd_of_papers_and_pieces_flows_onto_more_pages() {
    let folder = tempfile::tempdir().expect("a folder");
    let project = crowded();
    let bytes = set(&project);
    let path = written(&bytes, folder.path());
    let mut faults = true_faults(&path, Sheet::Letter);
    faults.extend(oracles::standard_faults(&bytes));
    faults.extend(
        ink::pictures(&path, folder.path())
            .iter()
            .filter(|page| ink::in_the_margin(page))
            .map(|_| "ink in the margin".into()),
    );
    assert!(faults.is_empty(), "{faults:#?}");
    let pages = pages(&path);
    assert!((8..=20).contains(&pages.len()), "{} pages", pages.len());
    for (number, page) in pages.iter().enumerate() {
        const LETTER: f64 = 792.0;
        // The lowest word above the foot stands below the upper third of the page.
        let low = page.words.iter().map(|word| word.bottom).filter(|low| *low < LETTER - 60.0).fold(0.0, f64::max);
        assert!(low > LETTER / 3.0, "page {} is nearly empty", number + 1);
    }
    let text = oracles::plain_text(&path);
    for piece in &project.design.pieces {
        let size = piece.size.numbers(project.units()).replace(" x ", " × ");
        assert!(text.contains(&size), "{}: {size}", piece.name);
    }
}

#[test]
fn the_legend_names_every_line_of_the_steps() {
    let legend = |fold: &str, inside: &str| {
        let project = sound(&format!(
            "title: Any\nmonth: 2027-01\ncards: 1\nunits: inch\ncard: {{size: 2 x 5 in, fold: {fold}, from: white}}\n\
             papers: {{white: {{sheets: 2 of letter}}}}\npieces: {{tag: {{size: 1 x 1 in, from: white}}}}\n\
             front: [{{place: tag, centre: both ways, glue: tape}}]\n{inside}"
        ));
        let pages = handout::compose(&project, Wanted::HANDOUT, &Told::default()).together.expect("steps");
        let steps = pages.preparing.iter().chain(pages.parts.iter().flat_map(|part| &part.steps));
        let drawn: Vec<_> = steps.filter_map(|step| step.scene.clone()).collect();
        let legend = pages.legend.expect("a legend");
        for role in [Role::Fold, Role::Valley] {
            let is_drawn = drawn.iter().any(|scene| scene.has(role));
            assert_eq!(legend.has(role), is_drawn, "{fold} {inside}: {role:?}");
        }
        legend
    };
    let inside = "inside: [{place: tag, as: inner tag, panel: middle, centre: both ways, glue: tape}]\n";
    let plain = legend("side", "");
    assert!(!plain.has(Role::Valley) && plain.alt.ends_with("a score and fold."), "{}", plain.alt);
    assert!(!legend("gate", "").has(Role::Valley));
    // From the inside the folds of a gate go away from the one who looks at it.
    assert!(legend("gate", inside).has(Role::Valley));
    let both = legend("{accordion: 3}", "");
    assert!(both.has(Role::Valley) && both.alt.ends_with("a line of dashes a score and valley fold."), "{}", both.alt);
}
