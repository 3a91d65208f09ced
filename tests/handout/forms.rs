//! The handouts of every form: what they are called, what they hold, and that they are true to size.

use super::oracles::{pages, plain_text, text_of};
use super::{INCH, written};
use crate::support::{demo, editions_at};
use std::path::PathBuf;
use trimwright::design::variants::{Form, Page, Wanted};
use trimwright::drawing::figures;
use trimwright::drawing::scene::{Item, Role};
use trimwright::edition::bundle::{bundle, handout_name};
use trimwright::handout::{self, Told};
use trimwright::length::Units;

fn of(form: Form) -> Wanted {
    Wanted { form, ..Wanted::HANDOUT }
}

fn text(wanted: Wanted, told: &Told) -> (String, usize) {
    let folder = tempfile::tempdir().expect("a folder");
    let path = written(&handout::typeset(&INCH.0, wanted, told).expect("it is set"), folder.path());
    // A title may take two lines.
    let text = plain_text(&path).split_whitespace().collect::<Vec<_>>().join(" ");
    (text, pages(&path).len())
}

#[test]
fn file_names_say_what_they_are() {
    let large = Wanted { large: true, page: Some(Page::A4), ..Wanted::HANDOUT };
    for (wanted, units, draft, name) in [
        (Wanted::HANDOUT, Units::Inch, false, "handout-letter-inch.pdf"),
        (Wanted::HANDOUT, Units::Metric, true, "draft-a4-metric.pdf"),
        (large, Units::Inch, false, "handout-a4-inch-large-print.pdf"),
        (Wanted { fills: false, ..of(Form::Leaf) }, Units::Metric, false, "leaf-a4-metric-without-fills.pdf"),
        (of(Form::TryOut), Units::Inch, true, "draft-try-out-letter-inch.pdf"),
        (of(Form::DesignersCopy), Units::Inch, false, "designers-copy-letter-inch.pdf"),
    ] {
        assert_eq!(handout_name(wanted, units, draft), name);
    }
}

#[test]
fn an_edition_holds_what_is_asked_for_and_the_usual() {
    let name = "lantern-row";
    let editions = editions_at(&demo(name));
    let edition = bundle(&editions, name, &[Wanted { page: Some(Page::Letter), ..Wanted::HANDOUT }], &Told::default());
    let files: Vec<PathBuf> = edition.expect("a bundle").files.into_keys().collect();
    // Letter is the usual page of the inch edition: asked for by its name it is no second file.
    for file in [
        "handout-letter-inch.pdf",
        "handout-a4-metric.pdf",
        "handout-letter-metric.pdf",
        "leaf-letter-inch.pdf",
        "leaf-a4-metric.pdf",
        "try-out-letter-inch.pdf",
        "handout-a4-metric-without-fills.pdf",
        "true-size-letter-inch.pdf",
        "true-size-a4-metric.pdf",
        "cut-file-letter-inch.pdf",
        "cut-file-a4-metric.pdf",
    ] {
        assert!(files.contains(&PathBuf::from(file)), "{file} in {files:?}");
    }
    assert_eq!(files.iter().filter(|file| file.extension().is_some_and(|end| end == "pdf")).count(), 13);
}

#[test]
fn one_leaf_is_one_leaf_with_every_measure_and_border() {
    let (text, pages) = text(of(Form::Leaf), &Told::default());
    assert_eq!(pages, 2, "printed on both sides of one leaf");
    let own = &INCH.0;
    for piece in &own.design.pieces {
        let size = piece.size.numbers(own.units()).replace(" x ", " × ");
        assert!(text.contains(&size), "{}: {size}", piece.name);
    }
    for row in own.plan.sheets.iter().flat_map(|sheet| &sheet.cuts) {
        let measure = row.measure.number(own.units());
        assert!(text.contains(&measure), "cut at {measure}");
    }
    assert!(text.contains("A border of 1/8 shows all round."));
}

#[test]
fn large_print_leaves_nothing_out() {
    let large = Wanted { large: true, ..Wanted::HANDOUT };
    let folder = tempfile::tempdir().expect("a folder");
    let words = |wanted| {
        let bytes = handout::typeset(&INCH.0, wanted, &Told::default()).expect("it is set");
        let text = text_of(&written(&bytes, folder.path()));
        text.split_whitespace().map(str::to_owned).collect::<std::collections::BTreeSet<String>>()
    };
    let (usual, large) = (words(Wanted::HANDOUT), words(large));
    // A scale is another one; the name at the foot and the numbers of pages are not the same either.
    let is_scale = |word: &str| word.contains(':');
    let lost: Vec<&String> = usual.difference(&large).filter(|word| !is_scale(word)).collect();
    assert!(lost.len() <= 2, "{lost:?}");
}

#[test]
fn a_try_out_piece_is_half_the_true_one() {
    let own = &INCH.0;
    for piece in own.design.piece_ids() {
        let size = own.design.piece(piece).size;
        let scene = figures::try_out::piece(own, piece, own.design.per_card(piece), 184_000_000).expect("a piece");
        let outlines: Vec<(i64, i64)> = scene
            .items
            .iter()
            .filter_map(|item| match item {
                Item::Box { role: Role::Piece, width, height, .. } => Some((*width, *height)),
                _ => None,
            })
            .collect();
        assert_eq!(outlines.len(), usize::try_from(own.design.per_card(piece)).expect("a count"));
        for (width, height) in outlines {
            // Half of it to the nanometre, rounded up.
            assert_eq!((width, height), ((size.width.nm() + 1) / 2, (size.height.nm() + 1) / 2));
        }
    }
}

#[test]
fn the_designers_copy_says_what_was_found_and_allowed() {
    let told = Told {
        draft: false,
        findings: vec!["Line 3: the lamp hangs low.".to_owned()],
        allowed: vec!["Line 9: allowed, since it is meant.".to_owned()],
    };
    let (copy, many) = text(of(Form::DesignersCopy), &told);
    for words in ["the lamp hangs low", "allowed, since it is meant", "proven best", "For the designer alone"] {
        assert!(copy.contains(words), "{words}");
    }
    let (usual, fewer) = text(Wanted::HANDOUT, &told);
    assert!(many > fewer && !usual.contains("the lamp hangs low"), "readers do not get it");
}
