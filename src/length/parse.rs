//! How a length is read from what a designer types.

use super::{Length, Size};

/// Why a text is no length.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LengthError {
    /// What is wrong, lower case, no full stop.
    pub fault: String,
    /// How to mend it, an imperative sentence with a number in it.
    pub help: String,
}

/// Reads one length with its unit.
///
/// # Errors
/// A [`LengthError`] that says what is wrong and how to write it.
pub fn parse_length(text: &str) -> Result<Length, LengthError> {
    let _ = text;
    todo!()
}

/// Reads `width x height` with the unit once at the end, or at each.
///
/// # Errors
/// A [`LengthError`] that says what is wrong and how to write it.
pub fn parse_size(text: &str) -> Result<Size, LengthError> {
    let _ = text;
    todo!()
}
