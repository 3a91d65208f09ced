//! Where the ink of a page lies, by poppler's rendering in grey.

use super::oracles::Sheet;
use crate::support::tool;
use std::path::Path;

/// Pixels an inch: a line of 0.18 mm still darkens the pixels that it goes through.
const PER_INCH: f64 = 50.0;

const MM: f64 = PER_INCH / 25.4;

/// A page in grey, from the upper left.
pub(crate) struct Grey {
    pub(crate) width: usize,
    pub(crate) height: usize,
    pub(crate) values: Vec<u8>,
}

impl Grey {
    /// A binary PGM.
    pub(crate) fn read(bytes: &[u8]) -> Self {
        let mut at = 0;
        let mut fields = Vec::new();
        while fields.len() < 4 {
            let end = at + bytes[at..].iter().position(u8::is_ascii_whitespace).expect("a header");
            fields.push(std::str::from_utf8(&bytes[at..end]).expect("a header"));
            at = end + 1;
        }
        assert_eq!((fields[0], fields[3]), ("P5", "255"));
        let [width, height] = [fields[1], fields[2]].map(|field| field.parse().expect("a number"));
        Self { width, height, values: bytes[at..].to_vec() }
    }

    pub(crate) fn row(&self, y: usize) -> &[u8] {
        &self.values[y * self.width..(y + 1) * self.width]
    }
}

/// Every page of a file.
pub(crate) fn pictures(path: &str, folder: &Path) -> Vec<Grey> {
    let prefix = folder.join("ink");
    let _ = tool("pdftoppm", &["-r", &PER_INCH.to_string(), "-gray", path, &prefix.to_string_lossy()]);
    let mut files: Vec<_> = std::fs::read_dir(folder)
        .expect("the folder")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "pgm"))
        .collect();
    files.sort();
    assert!(!files.is_empty());
    let read = |file: &std::path::PathBuf| {
        let grey = Grey::read(&std::fs::read(file).expect("a picture"));
        let _ = std::fs::remove_file(file);
        grey
    };
    files.iter().map(read).collect()
}

/// Whether ink lies nearer to an edge than 12.7 mm (half an inch): what a home printer may lose.
pub(crate) fn in_the_margin(page: &Grey) -> bool {
    let edge = (12.7 * MM) as usize - 1;
    let dark = |value: &u8| *value < 250;
    (0..page.height).any(|y| {
        let row = page.row(y);
        if y < edge || y >= page.height - edge {
            row.iter().any(dark)
        } else {
            row[..edge].iter().any(dark) || row[page.width - edge..].iter().any(dark)
        }
    })
}

/// How much of the page is inked: black counts whole, grey in part.
pub(crate) fn share(page: &Grey) -> f64 {
    let ink: u64 = page.values.iter().map(|value| u64::from(255 - *value)).sum();
    ink as f64 / 255.0 / page.values.len() as f64
}

/// How far down the body is filled: its lowest ink against its height.
pub(crate) fn fill(page: &Grey, sheet: Sheet) -> f64 {
    let (top, bottom) = sheet.body();
    let (top, end) = (top * MM, page.height as f64 - bottom * MM);
    let low = (0..end as usize).rev().find(|y| page.row(*y).iter().any(|value| *value < 250));
    low.map_or(0.0, |low| (low as f64 + 1.0 - top) / (end - top))
}

#[test]
fn ink_is_where_it_was_put() {
    // A Letter page at 50 px an inch, white but for a black row a third down the body.
    let mut page = Grey { width: 425, height: 550, values: vec![255; 425 * 550] };
    assert!(!in_the_margin(&page) && share(&page) == 0.0 && fill(&page, Sheet::Letter) == 0.0);
    page.values[200 * 425 + 100..200 * 425 + 300].fill(0);
    assert!(!in_the_margin(&page) && (share(&page) - 200.0 / 233_750.0).abs() < 1e-9);
    assert!((fill(&page, Sheet::Letter) - 0.364).abs() < 0.005, "{}", fill(&page, Sheet::Letter));
    page.values[300 * 425 + 10] = 0;
    assert!(in_the_margin(&page));
}
