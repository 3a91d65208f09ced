//! The reader's sentences: a catalogue a language, English first.
//!
//! Takes plain values (names, counts, lengths), gives [`Line`]s. Must never know a design, a plan
//! or a page: whoever needs a sentence calls a function here with the values it has, and with the
//! [`Words`] of the language that is wanted. The sentences themselves stand in `templates/words`, one file a
//! language; the functions here say what each of them is given.

/// Words that need nothing but their language: what they are, the function, the message.
macro_rules! fixed_words {
    ($($(#[$doc:meta])* $name:ident = $id:literal;)*) => {$(
        $(#[$doc])*
        #[must_use]
        pub fn $name(say: &$crate::words::Words) -> String {
            say.tell($id).string()
        }
    )*};
}

/// Sentences that need nothing but their language: what they are, the function, the message.
macro_rules! fixed_lines {
    ($($(#[$doc:meta])* $name:ident = $id:literal;)*) => {$(
        $(#[$doc])*
        #[must_use]
        pub fn $name(say: &$crate::words::Words) -> $crate::words::Line {
            say.tell($id).line()
        }
    )*};
}

mod catalogue;
mod counts;
pub mod cutting;
pub mod english;
pub mod figures;
pub mod finishing;
pub mod guides;
pub mod laying;
pub mod making;
mod marks;
pub mod pages;
pub mod places;
pub mod stock;
pub mod true_size;
pub mod variants;

pub use catalogue::{Language, Plurals, Tell, Words};
pub use counts::{
    cards, counted, counted_ring, counted_rings, counted_word, leftovers, listed, listed_words, plural, sheets,
};

/// A space that no line breaks at.
pub const KEPT: &str = "\u{a0}";

/// A piece of a sentence. Numbers, rings and flags are marked so that each writer can set them in
/// its own way (a drawn ring on paper, `(4)` on a terminal).
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Inline {
    /// Plain words.
    Text(String),
    /// Words that carry weight.
    Strong(String),
    /// A measure or size, never broken over lines: `3 3/4`, `4 1/4 x 5 1/2 in`.
    Measure(String),
    /// A piece's ring number.
    Ring(u32),
    /// A leftover's lower-case roman numeral.
    Leftover(u32),
    /// A cut number or a run of them, `2` or `4-7`.
    Cut(String),
}

/// One sentence or paragraph.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Default)]
pub struct Line(pub Vec<Inline>);

impl Line {
    /// An empty line.
    #[must_use]
    pub const fn new() -> Self {
        Self(Vec::new())
    }

    /// Plain words only.
    pub fn plain(text: impl Into<String>) -> Self {
        Self::new().text(text)
    }

    /// With plain words.
    #[must_use]
    pub fn text(mut self, text: impl Into<String>) -> Self {
        self.0.push(Inline::Text(text.into()));
        self
    }

    /// With words that carry weight.
    #[must_use]
    pub fn strong(mut self, text: impl Into<String>) -> Self {
        self.0.push(Inline::Strong(text.into()));
        self
    }

    /// With a measure.
    #[must_use]
    pub fn measure(mut self, text: impl Into<String>) -> Self {
        self.0.push(Inline::Measure(text.into()));
        self
    }

    /// With a ring number.
    #[must_use]
    pub fn ring(mut self, ring: u32) -> Self {
        self.0.push(Inline::Ring(ring));
        self
    }

    /// With a leftover's numeral.
    #[must_use]
    pub fn leftover(mut self, number: u32) -> Self {
        self.0.push(Inline::Leftover(number));
        self
    }

    /// With a cut number.
    #[must_use]
    pub fn cut(mut self, cut: impl Into<String>) -> Self {
        self.0.push(Inline::Cut(cut.into()));
        self
    }

    /// With another line behind it.
    #[must_use]
    pub fn then(mut self, other: Self) -> Self {
        self.0.extend(other.0);
        self
    }

    /// With another sentence behind it.
    #[must_use]
    pub fn sentence(self, other: Self) -> Self {
        if self.is_empty() || other.is_empty() { self.then(other) } else { self.text(" ").then(other) }
    }

    /// Whether there is nothing in it.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// As a terminal shows it: rings as `(4)`, leftovers as `ii`.
    #[must_use]
    pub fn to_plain(&self) -> String {
        self.to_text().replace(KEPT, " ")
    }

    /// The same with the spaces that no line breaks at.
    #[must_use]
    pub fn to_text(&self) -> String {
        self.0
            .iter()
            .map(|part| match part {
                Inline::Text(text) | Inline::Strong(text) | Inline::Measure(text) | Inline::Cut(text) => text.clone(),
                Inline::Ring(ring) => format!("({ring})"),
                Inline::Leftover(number) => roman(*number),
            })
            .collect()
    }
}

/// A lower-case roman numeral.
#[must_use]
pub fn roman(mut number: u32) -> String {
    const SIGNS: [(u32, &str); 13] = [
        (1000, "m"),
        (900, "cm"),
        (500, "d"),
        (400, "cd"),
        (100, "c"),
        (90, "xc"),
        (50, "l"),
        (40, "xl"),
        (10, "x"),
        (9, "ix"),
        (5, "v"),
        (4, "iv"),
        (1, "i"),
    ];
    let mut text = String::new();
    for (value, sign) in SIGNS {
        while number >= value {
            text.push_str(sign);
            number -= value;
        }
    }
    text
}
