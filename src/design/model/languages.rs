//! The languages that a handout is told in.

use super::Design;
use crate::source::Span;
use crate::words::{Language, Words};

/// A text or name that is not said in every language asked for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Untold {
    /// Where it is said.
    pub span: Span,
    /// The languages that it lacks, at least one.
    pub languages: Vec<Language>,
    /// The file that it stands in, where it is not the design itself.
    pub file: Option<String>,
}

impl Design {
    /// The words of the language that its texts are in.
    #[must_use]
    pub const fn words(&self) -> &Words {
        &self.words
    }

    /// The languages whose readers are told something else than stands here.
    #[must_use]
    pub fn told_otherwise(&self) -> &[Language] {
        let is_plain = self.languages.as_slice() == [Language::ENGLISH] && !self.has_readers_names;
        if is_plain { &[] } else { &self.languages }
    }
}
