//! The gates themselves: a file in which one thing is broken is seen to fail.

use super::oracles::{self, Sheet, Word, true_faults};
use super::walk::{USUAL, letters, overlapping};
use super::{INCH, ink, shown, structure, written};
use lopdf::{Dictionary, Document, Object};

/// The sample file with one thing changed.
fn changed(change: impl FnOnce(&mut Document)) -> Vec<u8> {
    let mut file = Document::load_mem(&INCH.1).expect("a PDF");
    change(&mut file);
    let mut bytes = Vec::new();
    file.save_to(&mut bytes).expect("written");
    bytes
}

/// What the checker of the standards says of it, and what the walk of its structure says.
fn said(bytes: &[u8]) -> (Vec<String>, Vec<String>) {
    let folder = tempfile::tempdir().expect("a folder");
    let path = written(bytes, folder.path());
    (oracles::standard_faults(bytes), structure::faults(bytes, &path))
}

fn elements<'f>(file: &'f mut Document, kind: &'static [u8]) -> impl Iterator<Item = &'f mut Dictionary> {
    file.objects
        .values_mut()
        .filter_map(|object| object.as_dict_mut().ok())
        .filter(move |element| element.get(b"S").and_then(Object::as_name).is_ok_and(|name| name == kind))
}

#[test]
fn the_sample_passes_when_only_written_again() {
    let (standard, structure) = said(&changed(|_| {}));
    assert!(standard.is_empty() && structure.is_empty(), "{standard:#?}{structure:#?}");
    let folder = tempfile::tempdir().expect("a folder");
    let told = structure::told_and_printed(&INCH.1, &written(&INCH.1, folder.path()));
    assert!(told.is_empty(), "{told:#?}");
}

#[test]
fn a_figure_without_words_is_seen() {
    let bytes = changed(|file| elements(file, b"Figure").for_each(|figure| drop(figure.remove(b"Alt"))));
    let (standard, structure) = said(&bytes);
    assert!(!standard.is_empty());
    assert!(structure.iter().any(|fault| fault.contains("has no words")), "{structure:#?}");
    let bytes = changed(|file| {
        elements(file, b"Figure").for_each(|figure| figure.set("Alt", lopdf::text_string("The finished card.")));
    });
    assert!(said(&bytes).1.iter().any(|fault| fault.contains("its words do not say")));
}

#[test]
fn a_file_without_language_title_or_mark_is_seen() {
    let without = |key: &'static [u8]| changed(|file| drop(file.catalog_mut().expect("a catalogue").remove(key)));
    for key in [b"Lang".as_slice(), b"Metadata", b"ViewerPreferences", b"MarkInfo", b"StructTreeRoot"] {
        let faults = oracles::standard_faults(&without(key));
        assert!(!faults.is_empty(), "{}", String::from_utf8_lossy(key));
    }
    assert!(!said(&without(b"StructTreeRoot")).1.is_empty());
}

#[test]
fn ink_that_nothing_ties_is_seen() {
    let stroke = |file: &mut Document| {
        let page = file.page_iter().next().expect("a page");
        file.add_page_contents(page, b"0 0 m 100 100 l S".to_vec()).expect("added");
    };
    assert!(!oracles::standard_faults(&changed(stroke)).is_empty());
}

#[test]
fn content_that_no_element_holds_is_seen() {
    // The checker lets this pass: what is marked, but told to nobody.
    let bytes = changed(|file| {
        let heading = elements(file, b"H2").next().expect("a heading");
        heading.set("K", Object::Array(Vec::new()));
    });
    let (standard, structure) = said(&bytes);
    assert!(standard.is_empty(), "the checker sees it by now: {standard:#?}");
    assert!(structure.iter().any(|fault| fault.contains("is in no element")), "{structure:#?}");
    let folder = tempfile::tempdir().expect("a folder");
    assert!(!structure::told_and_printed(&bytes, &written(&bytes, folder.path())).is_empty());
}

#[test]
fn a_skipped_level_a_table_without_heads_and_a_wrong_order_are_seen() {
    let renamed = |from: &'static [u8], to: &'static [u8]| {
        changed(|file| elements(file, from).for_each(|element| element.set("S", Object::Name(to.to_vec()))))
    };
    assert!(said(&renamed(b"H2", b"H4")).1.iter().any(|fault| fault.contains("level of heading")));
    assert!(said(&renamed(b"H1", b"P")).1.iter().any(|fault| fault.contains("only title")));
    assert!(said(&renamed(b"TH", b"TD")).1.iter().any(|fault| fault.contains("no row of heads")));
    let turned = changed(|file| {
        for element in elements(file, b"Document").chain(std::iter::empty()) {
            if let Ok(Object::Array(kids)) = element.get_mut(b"K") {
                kids.reverse();
            }
        }
    });
    assert!(said(&turned).1.iter().any(|fault| fault.contains("is read after")));
}

#[test]
fn a_broken_file_is_seen() {
    let bytes = &INCH.1;
    let folder = tempfile::tempdir().expect("a folder");
    // The right file on the wrong sheet.
    let path = written(bytes, folder.path());
    assert!(true_faults(&path, Sheet::A4).iter().any(|fault| fault.contains("page size")));
    // A file with a stream that says it is shorter than it is.
    let mut short = bytes.clone();
    let at = short.windows(8).position(|part| part == b"/Length ").expect("a stream") + 8;
    short[at] = if short[at] == b'1' { b'2' } else { short[at] - 1 };
    assert!(!oracles::standard_faults(&short).is_empty());
    // A file that was cut off.
    let path = written(&bytes[..bytes.len() / 2], folder.path());
    assert!(!true_faults(&path, Sheet::Letter).is_empty());
}

/// A Letter page with a black square of 20 pt in its lower left corner.
const INKED_CORNER: &[u8] = b"%PDF-1.4
1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj
2 0 obj <</Type/Pages/Kids[3 0 R]/Count 1>> endobj
3 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 612 792]/Contents 4 0 R>> endobj
4 0 obj <</Length 14>> stream
0 0 20 20 re f
endstream endobj
trailer <</Root 1 0 R>>
";

#[test]
fn ink_and_letters_out_of_place_are_seen() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = written(INKED_CORNER, folder.path());
    let pictures = ink::pictures(&path, folder.path());
    assert!(ink::in_the_margin(&pictures[0]));
    // 400 of 612 x 792 square points.
    assert!((ink::share(&pictures[0]) - 400.0 / 484_704.0).abs() < 1e-5);
    let word =
        |left: f64, top: f64, text: &str| Word { left, top, right: left + 30.0, bottom: top + 14.0, text: text.into() };
    assert_eq!(overlapping(&[word(100.0, 100.0, "one"), word(120.0, 105.0, "two")]).len(), 1);
    assert_eq!(overlapping(&[word(100.0, 100.0, "one"), word(100.0, 113.0, "two")]).len(), 0);
    let run = |size: f64, text: &str| shown::Run {
        text: text.into(),
        size,
        left: 0.0,
        base: 0.0,
        tied: shown::Tied::Not,
        paint: [0; 3],
    };
    assert_eq!(letters(&[run(8.9, "small"), run(9.0, "large"), run(3.3, "\u{2009}")], USUAL).len(), 1);
    assert_eq!(letters(&[run(10.0, "3/4"), run(11.0, "3/4"), run(10.0, "34")], USUAL).len(), 1);
}

#[test]
fn sizes_are_read_as_they_are_set() {
    // Half the size by the matrix of the letters, twice by that of the page, and turned.
    let mut file = Document::load_mem(&INCH.1).expect("a PDF");
    let page = file.page_iter().next().expect("a page");
    let before = shown::pages(&file)[0].runs.len();
    file.add_page_contents(page, b"q 0 2 -2 0 50 60 cm BT /f0 8 Tf .5 0 0 .5 3 4 Tm <0001> Tj ET Q".to_vec())
        .expect("added");
    let runs = &shown::pages(&file)[0].runs;
    let last = &runs[before];
    assert_eq!((runs.len(), last.size, last.left, last.base), (before + 1, 8.0, 42.0, 66.0));
    // Every letter of the sample is of a size that the pages or the figures name.
    let known = [9.0, 9.5, 10.0, 11.0, 15.0, 20.0, 24.0, 40.0];
    let all = shown::pages(&Document::load_mem(&INCH.1).expect("a PDF"));
    let runs: Vec<&shown::Run> =
        all.iter().flat_map(|page| &page.runs).filter(|run| !run.text.trim().is_empty()).collect();
    assert!(runs.len() > 300);
    for run in runs {
        assert!(known.iter().any(|size| (run.size - size).abs() < 0.01), "{run:?}");
    }
}
