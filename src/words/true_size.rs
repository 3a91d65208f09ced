//! What is said round the guides of a true-size sheet: titles, what its lines mean, what can hurt.

use super::{Words, counts};

fixed_words! {
    /// What to do with the bars, in one line.
    print_true = "true-size-print";
    /// Before a blade is taken up.
    caution = "true-size-caution";
}

/// "Lantern Row, November 2026, true-size guides": the file's title.
#[must_use]
pub fn sheets_title(say: &Words, title: &str) -> String {
    say.tell("true-size-title").name("title", title).string()
}

/// "Lantern Row, November 2026, cut file": the file's title.
#[must_use]
pub fn cut_file_title(say: &Words, title: &str) -> String {
    say.tell("cut-file-title").name("title", title).string()
}

/// Beside a line of the legend: "cut". `role` is a role's word in files.
#[must_use]
pub fn line_word(say: &Words, role: &'static str) -> String {
    say.tell("true-size-line").kind("role", role).string()
}

/// For those who cannot see the legend: "A wide continuous line is cut."
#[must_use]
pub fn line_told(say: &Words, role: &'static str) -> String {
    say.tell("told-true-size-line").kind("role", role).string()
}

/// For those who cannot see the bars: "Bars to check the print with a ruler: 2 in and 5 cm long."
#[must_use]
pub fn bars_told(say: &Words, bars: &[String]) -> String {
    say.tell("told-true-size-bars").name("bars", &counts::listed_words(say, bars)).string()
}
