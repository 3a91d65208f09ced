//! True-size sheets as the readers of their files see them: poppler, qpdf, a second reader of PDF, usvg and an
//! independent PDF/UA-1 checker are the outside oracles.

mod layers;
mod look;
mod made;
mod measured;
mod paths;
mod svg;
mod tagged;
mod within;

use std::path::Path;
use std::sync::LazyLock;

use crate::support::{demo, editions_at};
use made::sheets;
use trimwright::design::variants::Page;
use trimwright::guides::model::GuideSheet;
use trimwright::handout::Templates;
use trimwright::project::Project;
use trimwright::truesize;

/// Sheets and both their PDFs.
struct Written {
    sheets: Vec<GuideSheet>,
    print: Vec<u8>,
    layered: Vec<u8>,
}

fn write(project: &Project, sheets: Vec<GuideSheet>) -> Written {
    let print = truesize::print(project, &sheets, false, &Templates::built_in()).expect("it is set");
    let layered = truesize::layered(project, &sheets, false).expect("it is written");
    Written { sheets, print, layered }
}

/// A demo, in inches and in millimetres, for what the files say of themselves.
static DEMO: LazyLock<Vec<Project>> = LazyLock::new(|| editions_at(&demo("lantern-row")));

fn project(page: Page) -> &'static Project {
    &DEMO[usize::from(page == Page::A4)]
}

/// Sheets made by hand, on Letter and on A4, written once for all tests.
static LETTER: LazyLock<Written> = LazyLock::new(|| write(project(Page::Letter), sheets(Page::Letter)));
static A4: LazyLock<Written> = LazyLock::new(|| write(project(Page::A4), sheets(Page::A4)));

fn both() -> [&'static Written; 2] {
    [&LETTER, &A4]
}

fn written(bytes: &[u8], folder: &Path) -> String {
    let path = folder.join("sheets.pdf");
    std::fs::write(&path, bytes).expect("written");
    path.to_string_lossy().into_owned()
}

#[test]
fn the_same_sheets_give_the_same_bytes() {
    for made in both() {
        let again = write(project(made.sheets[0].page), made.sheets.clone());
        assert!(again.print == made.print && again.layered == made.layered);
        let moved = write(project(made.sheets[0].page), vec![made.sheets[1].clone()]);
        assert!(moved.print != made.print && moved.layered != made.layered);
    }
}

#[test]
fn files_are_sound_and_ask_for_true_size() {
    let folder = tempfile::tempdir().expect("a folder");
    for made in both() {
        for bytes in [&made.print, &made.layered] {
            let path = written(bytes, folder.path());
            let checked = std::process::Command::new("qpdf").args(["--check", &path]).output().expect("qpdf");
            assert!(checked.status.success(), "{}", String::from_utf8_lossy(&checked.stderr));
            let json = crate::support::tool("qpdf", &["--json=2", "--json-key=qpdf", &path]);
            assert!(json.contains("\"/PrintScaling\": \"/None\""));
            // Nothing tells when or where it was made but the edition's own month.
            let info = crate::support::tool("pdfinfo", &["-rawdates", &path]);
            let month = project(made.sheets[0].page).design.month.expect("a month").value;
            let date = format!("D:{:04}{:02}01000000", month.year, month.month);
            assert!(info.contains(&format!("CreationDate:    {date}")) && info.contains("trimwright"), "{info}");
        }
    }
}

#[test]
fn a_letter_that_no_face_has_is_told() {
    let mut sheets = sheets(Page::A4);
    sheets[0].guides[0].labels[0].text = "snow \u{2744}".to_owned();
    let project = project(Page::A4);
    let told = truesize::layered(project, &sheets, false).expect_err("the face has no snow");
    assert!(told.contains('\u{2744}') && told.contains("snow"), "{told}");
    assert!(truesize::print(project, &sheets, false, &Templates::built_in()).is_err());
    sheets[0].guides[0].labels[0].text.clear();
    sheets[1].sentences = vec!["Words and more words until the page has no room for them. ".repeat(40)];
    let told = truesize::print(project, &sheets, false, &Templates::built_in()).expect_err("too many words");
    assert!(told.contains("do not fit on their page"), "{told}");
    assert!(truesize::print(project, &[], false, &Templates::built_in()).is_err());
}
