//! Which of the design file's fixed words a design uses, and which it could have used there.

use std::collections::BTreeSet;

/// Keys, each with the map that it belongs to, and words of values.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Heard {
    /// Every word that stands open where the design says something: the first key that its map may have, or
    /// what kind of value it answers, then the word.
    pub open: BTreeSet<(String, &'static str)>,
    /// Those that it uses.
    pub used: BTreeSet<(String, &'static str)>,
}

impl Heard {
    /// A place was reached where any of `words` may stand.
    pub(super) fn offer(&mut self, place: &str, words: impl IntoIterator<Item = &'static str>) {
        self.open.extend(words.into_iter().map(|word| (place.to_owned(), word)));
    }

    /// One of them does.
    pub(super) fn take(&mut self, place: &str, word: &'static str) {
        self.used.insert((place.to_owned(), word));
    }

    /// Both together.
    pub fn join(&mut self, other: Self) {
        self.open.extend(other.open);
        self.used.extend(other.used);
    }
}
