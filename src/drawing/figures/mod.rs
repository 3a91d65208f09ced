//! One figure a file.

mod layers;
mod measured;
mod rings;
mod turns;

pub mod finish;
pub mod front;
pub mod placing_frame;
pub mod ruler;
pub mod sheet;
pub mod small;
pub mod step;
pub mod try_out;
pub mod view;

use super::scale::Print;

/// The room that a figure may take on the page, nm.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Room {
    /// Width.
    pub width: i64,
    /// Height.
    pub height: i64,
    /// How large it is printed.
    pub print: Print,
}

impl Room {
    /// From tenths of a millimetre.
    #[must_use]
    pub const fn tenths_of_mm(width: i64, height: i64) -> Self {
        Self { width: width * 100_000, height: height * 100_000, print: Print::NORMAL }
    }

    /// The same room in other print.
    #[must_use]
    pub const fn printed(self, print: Print) -> Self {
        Self { print, ..self }
    }
}

/// Part of an id: lower case letters, digits and single hyphens.
fn id(name: &str) -> String {
    let plain: String = name.to_lowercase().chars().map(|c| if c.is_ascii_alphanumeric() { c } else { '-' }).collect();
    let words: Vec<&str> = plain.split('-').filter(|word| !word.is_empty()).collect();
    words.join("-")
}
