//! Findings about a design, as plain data.
//!
//! Takes nothing, gives [`Finding`]. Must never know a terminal: `cli` renders them.

mod edit;

pub use edit::{Certainty, Edit, applied, moved};

use crate::length::Units;
use crate::source::Span;

/// How bad a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Severity {
    /// The handout would be wrong: not published.
    Error,
    /// Probably not meant: published, said.
    Warning,
    /// Good to know.
    Note,
}

impl Severity {
    /// The word printed before the code.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Error => "error",
            Self::Warning => "warning",
            Self::Note => "note",
        }
    }
}

/// A place and the measured fact at it.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Label {
    /// Where.
    pub span: Span,
    /// What is there, lower case, no full stop.
    pub text: String,
}

/// One finding: what is wrong, where, and how to mend it.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Finding {
    /// The rule's name, a fault that reads after "allow".
    pub code: &'static str,
    /// How bad it is.
    pub severity: Severity,
    /// The fault: lower case, no full stop, no advice.
    pub message: String,
    /// The file beside the design that its places stand in; none: they stand in the design itself.
    pub file: Option<String>,
    /// The place it is about. Required: a finding without a place is a bug.
    pub primary: Label,
    /// Other places that matter.
    pub others: Vec<Label>,
    /// How to mend it: imperatives, with a number in them.
    pub help: Option<String>,
    /// The fault as one sentence for people who are new to it, without a line number:
    /// "The mat is 1/4 in wider than the card."
    pub plain: Option<String>,
    /// The edition it is about, where a design has two and only one is concerned.
    pub edition: Option<Units>,
    /// What mends it in the text, all of it together.
    pub edits: Vec<Edit>,
    /// How sure it is that the edits are what was meant.
    pub certainty: Certainty,
    /// Why the designer allows it, where the design says so; never an error.
    pub allowed: Option<String>,
}

impl Finding {
    /// A finding at a place. `label` states the measured fact there (may be empty).
    pub fn new(
        severity: Severity,
        code: &'static str,
        span: Span,
        message: impl Into<String>,
        label: impl Into<String>,
    ) -> Self {
        Self {
            code,
            severity,
            message: message.into(),
            file: None,
            primary: Label { span, text: label.into() },
            others: Vec::new(),
            help: None,
            plain: None,
            edition: None,
            edits: Vec::new(),
            certainty: Certainty::Likely,
            allowed: None,
        }
    }

    /// An error at a place.
    pub fn error(code: &'static str, span: Span, message: impl Into<String>, label: impl Into<String>) -> Self {
        Self::new(Severity::Error, code, span, message, label)
    }

    /// A warning at a place.
    pub fn warning(code: &'static str, span: Span, message: impl Into<String>, label: impl Into<String>) -> Self {
        Self::new(Severity::Warning, code, span, message, label)
    }

    /// A note at a place.
    pub fn note(code: &'static str, span: Span, message: impl Into<String>, label: impl Into<String>) -> Self {
        Self::new(Severity::Note, code, span, message, label)
    }

    /// With another place that matters.
    #[must_use]
    pub fn also(mut self, span: Span, text: impl Into<String>) -> Self {
        self.others.push(Label { span, text: text.into() });
        self
    }

    /// With a mend.
    #[must_use]
    pub fn help(mut self, help: impl Into<String>) -> Self {
        self.help = Some(help.into());
        self
    }

    /// With a sentence for people who are new to it.
    #[must_use]
    pub fn plainly(mut self, plain: impl Into<String>) -> Self {
        self.plain = Some(plain.into());
        self
    }

    /// In a file beside the design. Only the design itself is ever mended, so that edits go.
    #[must_use]
    pub fn in_file(self, name: impl Into<String>) -> Self {
        Self { file: Some(name.into()), edits: Vec::new(), certainty: Certainty::Likely, ..self }
    }

    /// With edits that mend it; without any, nothing changes.
    #[must_use]
    pub fn edits(mut self, edits: impl IntoIterator<Item = Edit>, certainty: Certainty) -> Self {
        self.edits = edits.into_iter().collect();
        self.certainty = if self.edits.is_empty() { Certainty::Likely } else { certainty };
        self
    }
}
