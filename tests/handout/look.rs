//! Pages in a designer's own look: logo, accents, terms, photos. Outside oracles as for every handout.

use super::{faults, ink, written};
use crate::support::{pictured, png, tool};
use std::path::Path;
use trimwright::design::model::VersionId;
use trimwright::design::variants::{Form, Wanted};
use trimwright::edition::bundle;
use trimwright::handout::{self, Told};
use trimwright::pipeline;
use trimwright::project::Project;
use trimwright::source::Source;

use super::oracles::{self, Sheet};

const LOGO: &str = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 60 20\"><path d=\"M0 20 L30 0 L60 20 Z\" \
                    fill=\"#2C5E4A\"/></svg>";

const HOUSE: &str = "name: Marram Street\nlogo: LOGO\naccents: {notes: \"#3B2C8A\", cuts: \"#8A2C5E\"}\nterms: 'For cards that \
                     are given away, *never* #sold.'\nweb: marram-street.example/kits\n";

fn editions(more: &str, logo: &str, versions: &str) -> Vec<Project> {
    let text = format!(
        "title: Two Kites
month: 2026-04
imprint: house.yaml
{more}
cards: 4
units: inch and metric
card: {{size: 4 1/4 x 5 1/2 in | 105 x 148 mm, fold: side, from: white}}
papers:
  white: {{sheets: 3 of letter}}
  moss: {{sheets: 1 of letter, pattern: one-way}}
pieces:
  mat: {{size: card less 1/4 in | 6 mm all round, from: moss}}
  tag: {{size: 2 x 1 in | 51 x 24 mm, from: white}}
{versions}
front:
  - {{place: mat, centre: both ways, glue: tape}}
  - {{place: tag, onto: mat, centre: both ways, glue: foam}}
"
    );
    let source = Source::new("kites.yaml", text)
        .with_beside("house.yaml", Ok(HOUSE.replace("LOGO", logo).into_bytes()))
        .with_beside("logo.svg", Ok(LOGO.as_bytes().to_vec()))
        .with_beside("logo.png", Ok(png(300, 300)))
        .with_beside("card.jpg", Ok(pictured(900, 1200, image::ImageFormat::Jpeg)))
        .with_beside("wide.png", Ok(png(1600, 900)));
    let outcome = pipeline::run(&source, "kites");
    assert!(!outcome.has_errors(), "{:#?}", outcome.findings);
    outcome.editions
}

fn set(project: &Project) -> Vec<u8> {
    handout::typeset(project, Wanted::HANDOUT, &Told::default()).expect("it is set")
}

/// The file with its streams unpacked, as text.
fn unpacked(path: &str) -> String {
    let out = Path::new(path).with_extension("plain.pdf");
    let out = out.to_string_lossy();
    let _ = tool("qpdf", &["--qdf", "--object-streams=disable", path, &out]);
    String::from_utf8_lossy(&std::fs::read(&*out).expect("it is unpacked")).into_owned()
}

/// Rows that `pdfimages` lists on the first two pages, which the front may fill: kind, width and height in pixels.
fn images(path: &str) -> Vec<(String, u32, u32)> {
    let list = tool("pdfimages", &["-list", "-f", "1", "-l", "2", path]);
    let row = |line: &str| {
        let cells: Vec<&str> = line.split_whitespace().collect();
        (cells[2].to_owned(), cells[3].parse().expect("a width"), cells[4].parse().expect("a height"))
    };
    list.lines().skip(2).map(row).collect()
}

#[test]
fn pages_with_logo_photo_and_terms_are_true_tagged_tidy_pages() {
    let versions = "versions:\n  - {name: dusk, cards: 2}\n  - {name: dawn, cards: 2, photo: {file: wide.png, alt: Two kites at dawn.}}";
    for (more, logo, versions) in [("photo: card.jpg", "logo.svg", ""), ("photo: card.jpg", "logo.png", versions)] {
        for project in editions(more, logo, versions) {
            let bytes = set(&project);
            assert!(set(&project) == bytes, "the same pictures give the same bytes");
            let found = faults(&bytes, Sheet::of(project.units()));
            assert!(found.is_empty(), "{logo}: {found:#?}");
            let folder = tempfile::tempdir().expect("a folder");
            let path = written(&bytes, folder.path());
            let text = oracles::text_of(&path);
            let pages: Vec<&str> = text.split('\u{c}').collect();
            for wanted in ["Cut list", "mats", "tags", "The finished card"] {
                assert!(pages[0].contains(wanted), "`{wanted}` on the front page: {}", pages[0]);
            }
            let flat = text.split_whitespace().collect::<Vec<_>>().join(" ");
            // Terms and address stand with the supplies, and on the front where it has room for them.
            let on_the_front = pages[0].contains("marram-street.example/kits");
            assert!(on_the_front || !versions.is_empty(), "one photo leaves room: {}", pages[0]);
            for wanted in ["For cards that are given away, *never* #sold.", "marram-street.example/kits"] {
                assert_eq!(flat.matches(wanted).count(), 1 + usize::from(on_the_front), "{wanted}");
            }
            // Each picture once, as it was taken or brought down; the smooth mask of a PNG would be one more.
            let photos: Vec<(u32, u32)> =
                images(&path).into_iter().filter(|(kind, ..)| kind == "image").map(|(_, w, h)| (w, h)).collect();
            let wanted: &[(u32, u32)] =
                if versions.is_empty() { &[(900, 1200)] } else { &[(300, 300), (900, 1200), (1400, 787)] };
            assert_eq!(photos, wanted);
            let plain = unpacked(&path);
            for alt in ["Marram Street", "Photo of the finished card: Two Kites."] {
                assert!(plain.contains(&format!("/Alt ({alt})")), "{alt}");
            }
            assert_eq!(plain.contains("/Alt (Two kites at dawn.)"), !versions.is_empty());
            assert!(plain.contains("/URI (https://marram-street.example/kits)"));
            assert!(plain.contains("/Author (Marram Street)"));
        }
    }
}

#[test]
fn a_draft_and_every_form_carry_the_look() {
    let project = editions("photo: card.jpg", "logo.svg", "").remove(0);
    let folder = tempfile::tempdir().expect("a folder");
    let findings = ["a finding".to_owned()];
    let draft = handout::typeset(&project, Wanted::HANDOUT, &Told::draft(&findings)).expect("a draft");
    assert_eq!(images(&written(&draft, folder.path())).len(), 1);
    for wanted in Wanted::all() {
        let bytes =
            handout::typeset(&project, wanted, &Told::default()).unwrap_or_else(|what| panic!("{wanted:?}: {what}"));
        let found = oracles::standard_faults(&bytes);
        assert!(found.is_empty(), "{wanted:?}: {found:#?}");
        let path = written(&bytes, folder.path());
        assert!(!ink::pictures(&path, folder.path()).iter().any(ink::in_the_margin), "{wanted:?}");
        let photos = images(&path).len();
        assert_eq!(photos, usize::from(!matches!(wanted.form, Form::Leaf | Form::TryOut)), "{wanted:?}");
    }
}

#[test]
fn the_accents_are_those_of_every_figure() {
    let own = editions("", "logo.svg", "").remove(0);
    let data = handout::compose(&own, Wanted::HANDOUT, &Told::default());
    assert_eq!((data.accents.notes.as_str(), data.accents.cuts.as_str()), ("#3B2C8A", "#8A2C5E"));
    let style = data.style.to_string();
    assert!(style.contains("#3B2C8A") && style.contains("#8A2C5E"));
    assert!(!style.contains("#0E5F70") && !style.contains("#A63C12"), "no usual accent is left: {style}");
    // The picture of the front too: its dimension lines have the colour of notes.
    let front =
        image::load_from_memory(&bundle::front_png(&own, VersionId(0)).expect("a picture")).expect("a PNG").to_rgb8();
    let count = |colour: [u8; 3]| front.pixels().filter(|pixel| pixel.0 == colour).count();
    assert!(count([0x3b, 0x2c, 0x8a]) > 100);
    assert_eq!(count([0x0e, 0x5f, 0x70]), 0);
}
