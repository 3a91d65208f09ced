//! Every page of a handout, walked: words inside the live area and apart from each other, letters
//! large enough, little ink, pages filled; the structure as `structure.rs` asks for it.

use super::oracles::{self, Sheet, Word};
use super::{ink, shown, structure};
use lopdf::Document;
use std::collections::BTreeSet;
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};

/// Sizes that letters have at the least, points.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Least {
    pub(crate) letters: f64,
    /// Where a fraction stands among them: its digits are under half the size.
    pub(crate) fraction: f64,
}

/// The usual print.
pub(crate) const USUAL: Least = Least { letters: 9.0, fraction: 11.0 };

/// Large print (UKAAF G003: 16 pt or more, 18 best).
pub(crate) const LARGE: Least = Least { letters: 16.0, fraction: 18.0 };

/// A handout to be walked.
pub(crate) struct Set {
    pub(crate) name: String,
    pub(crate) bytes: Vec<u8>,
    pub(crate) sheet: Sheet,
    pub(crate) least: Least,
    /// Words that the pages must hold whole, as they were composed.
    pub(crate) words: BTreeSet<String>,
}

/// A page of a home printer is inked to a fifth at most.
const MOST_INK: f64 = 0.2;

/// A page is filled from here on.
pub(crate) const LEAST_FILL: f64 = 0.6;

/// What a walk finds.
#[derive(Default)]
pub(crate) struct Found {
    pub(crate) faults: Vec<String>,
    /// Every page that is not filled: its file, its number and how far it is.
    pub(crate) empty: Vec<(String, usize, f64)>,
    pub(crate) pages: usize,
}

/// Walks one file; `folder` is its own.
pub(crate) fn walk(set: &Set, folder: &Path) -> Found {
    let path = folder.join("handout.pdf");
    std::fs::write(&path, &set.bytes).expect("written");
    let path = path.to_string_lossy().into_owned();
    let mut faults = oracles::true_faults(&path, set.sheet);
    faults.extend(oracles::standard_faults(&set.bytes));
    faults.extend(structure::faults(&set.bytes, &path));
    for face in oracles::faces(&path) {
        if !face.embedded || !face.unicode {
            faults.push(format!("the face {} is not embedded with its letters", face.name));
        }
    }
    let pages = oracles::pages(&path);
    let file = Document::load_mem(&set.bytes).expect("a PDF");
    let shown = shown::pages(&file);
    let pictures = ink::pictures(&path, folder);
    assert!(pages.len() == shown.len() && pages.len() == pictures.len() && !pages.is_empty());
    let mut empty = Vec::new();
    for (at, ((page, shown), picture)) in pages.iter().zip(&shown).zip(&pictures).enumerate() {
        let mut fault = |text: String| faults.push(format!("page {}: {text}", at + 1));
        let (width, height) = set.sheet.points();
        page.words
            .iter()
            .filter(|word| outside(word, width, height))
            .for_each(|word| fault(format!("{word:?} is in the margin")));
        overlapping(&page.words).into_iter().for_each(&mut fault);
        letters(&shown.runs, set.least).into_iter().for_each(&mut fault);
        if ink::in_the_margin(picture) {
            fault("ink in the margin".to_owned());
        }
        let share = ink::share(picture);
        if share > MOST_INK {
            fault(format!("{:.0} % of it is inked", share * 100.0));
        }
        let fill = ink::fill(picture, set.sheet);
        if fill < LEAST_FILL {
            empty.push((set.name.clone(), at + 1, fill));
        }
        if fill > 1.001 {
            fault(format!("it is filled to {:.1} %", fill * 100.0));
        }
    }
    let printed: BTreeSet<String> = whole_words(&oracles::plain_text(&path)).collect();
    let split: Vec<&String> = set.words.iter().filter(|word| !printed.contains(*word)).collect();
    if !split.is_empty() {
        faults.push(format!("words that are not printed whole: {split:?}"));
    }
    let faults = faults.into_iter().map(|fault| format!("{}: {fault}", set.name)).collect();
    Found { faults, empty, pages: pages.len() }
}

/// Walks what `make` gives for each number, two at a time on two cores.
pub(crate) fn walk_all(count: usize, make: impl Fn(usize) -> Vec<Set> + Sync) -> Found {
    let next = AtomicUsize::new(0);
    let all = Mutex::new(Vec::new());
    let threads = std::thread::available_parallelism().map_or(2, usize::from);
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                loop {
                    let number = next.fetch_add(1, Ordering::Relaxed);
                    if number >= count {
                        return;
                    }
                    for set in make(number) {
                        let folder = tempfile::tempdir().expect("a folder");
                        let found = walk(&set, folder.path());
                        all.lock().expect("no walk panicked").push((number, found));
                    }
                }
            });
        }
    });
    let mut all = all.into_inner().expect("no walk panicked");
    all.sort_by_key(|(number, _)| *number);
    let mut found = Found::default();
    for (_, one) in all {
        found.faults.extend(one.faults);
        found.empty.extend(one.empty);
        found.pages += one.pages;
    }
    found
}

/// Whether a word's letters lie nearer to an edge than half an inch. A box reaches as high as a face's highest
/// letters, a good fifth above its capitals; whether a short word is turned cannot be told from its box.
pub(crate) fn outside(word: &Word, width: f64, height: f64) -> bool {
    let (across, down) = (word.right - word.left, word.bottom - word.top);
    let slack = 0.25 * if word.text.chars().count() <= 3 { across.max(down) } else { across.min(down) };
    word.left + slack < 36.0
        || word.top + slack < 36.0
        || word.right - slack > width - 36.0
        || word.bottom - slack > height - 36.0
}

/// Words whose letters share room.
pub(crate) fn overlapping(words: &[Word]) -> Vec<String> {
    let mut faults = Vec::new();
    for (index, one) in words.iter().enumerate() {
        for other in &words[index + 1..] {
            let (a, b) = (one.letters(), other.letters());
            let across = a.right.min(b.right) - a.left.max(b.left);
            let down = a.bottom.min(b.bottom) - a.top.max(b.top);
            if across > 0.2 && down > 0.2 {
                faults.push(format!("{one:?} and {other:?} overlap"));
            }
        }
    }
    faults
}

/// Letters that are too small; a blank may be as narrow as it likes.
pub(crate) fn letters(runs: &[shown::Run], least: Least) -> Vec<String> {
    let small = |run: &&shown::Run| {
        let least = if shown::has_fraction(&run.text) { least.fraction } else { least.letters };
        !run.text.trim().is_empty() && run.size < least - 0.01
    };
    runs.iter().filter(small).map(|run| format!("`{}` is {:.2} pt", run.text, run.size)).collect()
}

/// Words of three letters or more, without the marks round them.
pub(crate) fn whole_words(text: &str) -> impl Iterator<Item = String> {
    text.split_whitespace()
        .map(|word| word.trim_matches(|letter: char| !letter.is_alphanumeric()))
        .filter(|word| word.chars().count() >= 3 && word.chars().all(char::is_alphabetic))
        .map(str::to_owned)
}
