//! The printed sheets for those who cannot see them, and within what a home printer reaches.

use super::{both, write, written};
use crate::handout::oracles::{self, Sheet};
use crate::handout::{ink, shown, structure, walk};
use crate::support::{demo, editions_at};
use trimwright::design::variants::Page;
use trimwright::words::Language;

const fn paper(page: Page) -> Sheet {
    match page {
        Page::Letter => Sheet::Letter,
        Page::A4 => Sheet::A4,
    }
}

/// What the checkers of standards and structure, and a walk over words and ink, find in a printed file.
pub(super) fn faults(bytes: &[u8], page: Page) -> Vec<String> {
    let folder = tempfile::tempdir().expect("a folder");
    let path = written(bytes, folder.path());
    let mut faults = oracles::true_faults(&path, paper(page));
    faults.extend(oracles::standard_faults(bytes));
    faults.extend(structure::faults(bytes, &path));
    let faces = oracles::faces(&path).into_iter().filter(|face| !face.embedded || !face.unicode);
    faults.extend(faces.map(|face| format!("{face:?} is not embedded with its letters")));
    let (width, height) = paper(page).points();
    for page in oracles::pages(&path) {
        faults.extend(walk::overlapping(&page.words));
        let outside = page.words.iter().filter(|word| walk::outside(word, width, height));
        faults.extend(outside.map(|word| format!("{word:?} is in the margin")));
    }
    let margins = ink::pictures(&path, folder.path()).iter().filter(|page| ink::in_the_margin(page)).count();
    if margins > 0 {
        faults.push(format!("ink in the margin of {margins} pages"));
    }
    let file = lopdf::Document::load_mem(bytes).expect("a PDF");
    // Fractions on a guide are set in digits of full size.
    let least = walk::Least { fraction: walk::USUAL.letters, ..walk::USUAL };
    faults.extend(shown::pages(&file).iter().flat_map(|page| walk::letters(&page.runs, least)));
    faults
}

#[test]
fn the_printed_sheets_meet_the_standards() {
    for made in both() {
        let faults = faults(&made.print, made.sheets[0].page);
        assert!(faults.is_empty(), "{faults:#?}");
    }
}

#[test]
fn the_printed_sheets_meet_them_in_every_language_and_as_drafts() {
    let project = editions_at(&demo("kitchen-garden")).remove(0);
    for language in Language::all() {
        let project = project.told_in(language);
        let sheets = super::sheets(Page::A4);
        let print = trimwright::truesize::print(&project, &sheets, true, &trimwright::handout::Templates::built_in())
            .expect("set");
        // The watermark goes over the words of the page on purpose.
        let faults: Vec<String> =
            faults(&print, Page::A4).into_iter().filter(|fault| !fault.contains("overlap")).collect();
        assert!(faults.is_empty(), "{}: {faults:#?}", language.tag());
        let made = write(&project, sheets);
        let folder = tempfile::tempdir().expect("a folder");
        let text = oracles::plain_text(&written(&made.layered, folder.path()));
        // What a line means, from the catalogue of the language.
        assert!(text.contains(if language == Language::ENGLISH { "only to read" } else { "nur zum Lesen" }), "{text}");
    }
}

#[test]
fn words_come_out_of_both_files_as_they_were_put_in() {
    let folder = tempfile::tempdir().expect("a folder");
    let flat = |text: String| text.split_whitespace().collect::<Vec<_>>().join(" ").replace(" × ", " x ");
    for made in both() {
        for bytes in [&made.print, &made.layered] {
            let text = flat(oracles::plain_text(&written(bytes, folder.path())));
            for sheet in &made.sheets {
                let labels = sheet.guides.iter().flat_map(|guide| &guide.labels).filter(|label| !label.turned);
                let bars = sheet.bars.iter().map(|bar| &bar.label);
                let all = labels.map(|label| &label.text).chain(bars).chain(&sheet.sentences).chain([&sheet.heading]);
                for words in all {
                    let words = words.replace("1/4 x 5", "1/4 × 5").replace(" × ", " x ");
                    assert!(text.contains(words.as_str()), "`{words}` in {text}");
                }
            }
            for words in ["Blades cut fingers", "Print at 100 %", "Page 2 of 2", "score", "only to read"] {
                assert!(text.contains(words), "`{words}` in {text}");
            }
        }
        let page = made.sheets[0].page;
        let (width, height) = paper(page).points();
        let path = written(&made.layered, folder.path());
        for page in oracles::pages(&path) {
            let overlapping = walk::overlapping(&page.words);
            assert!(overlapping.is_empty(), "{overlapping:#?}");
            let outside: Vec<_> = page.words.iter().filter(|word| walk::outside(word, width, height)).collect();
            assert!(outside.is_empty(), "{outside:#?}");
        }
        assert!(ink::pictures(&path, folder.path()).iter().all(|page| !ink::in_the_margin(page)));
    }
}

#[test]
fn a_figure_is_told_for_every_guide() {
    let folder = tempfile::tempdir().expect("a folder");
    for made in both() {
        let path = written(&made.print, folder.path());
        let told = crate::support::tool("pdfinfo", &["-struct-text", &path]);
        let file = lopdf::Document::load_mem(&made.print).expect("a PDF");
        let alts: Vec<String> = file
            .objects
            .values()
            .filter_map(|object| object.as_dict().ok())
            .filter_map(|element| lopdf::decode_text_string(element.get(b"Alt").ok()?).ok())
            .collect();
        for guide in made.sheets.iter().flat_map(|sheet| &sheet.guides) {
            assert!(alts.contains(&guide.alt), "{alts:?}");
        }
        assert!(alts.iter().any(|alt| alt.contains("2 in and 5 cm")), "{alts:?}");
        assert!(alts.iter().any(|alt| alt.contains("A wide continuous line is cut.")), "{alts:?}");
        assert_eq!(told.matches("Figure").count(), 5 + 2 * 2, "{told}");
    }
}
