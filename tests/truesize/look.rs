//! Writes what a reader gets into a folder, to look at it.

use super::{both, write};
use crate::support::{demos, editions_at, root};
use trimwright::design::variants::Page;
use trimwright::guides;
use trimwright::truesize;

/// `cargo test look_at_true_size -- --ignored` puts the files into `target/true-size`.
#[test]
#[ignore = "for the eye"]
fn look_at_true_size() {
    let folder = root().join("target/true-size");
    std::fs::create_dir_all(&folder).expect("a folder");
    let put = |name: String, bytes: &[u8]| std::fs::write(folder.join(name), bytes).expect("written");
    for made in both() {
        let page = made.sheets[0].page.word();
        put(format!("made-{page}.pdf"), &made.print);
        put(format!("made-{page}-layered.pdf"), &made.layered);
        for guide in made.sheets.iter().flat_map(|sheet| &sheet.guides) {
            put(format!("made-{page}-{}.svg", guide.word), truesize::svg(guide, "en").as_bytes());
        }
    }
    for path in demos() {
        let name = path.file_stem().expect("a stem").to_string_lossy().into_owned();
        for project in editions_at(&path) {
            let page = Page::usual(project.units());
            let sheets = guides::sheets(&project.design, &project.layout, page);
            if !sheets.is_empty() {
                let made = write(&project, sheets);
                put(format!("{name}-{}.pdf", page.word()), &made.print);
                put(format!("{name}-{}-layered.pdf", page.word()), &made.layered);
            }
        }
    }
}
