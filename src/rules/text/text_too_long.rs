//! A text is longer than its place on the page.

use super::places::{Place, Printed, printed};
use crate::diagnostic::{Finding, Severity};
use crate::fonts::metrics::advance;
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "text-too-long",
    severity: Severity::Error,
    group: "text",
    summary: "a text is longer than its place on the page",
    page: include_str!("text_too_long.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    printed(project).into_iter().filter_map(|text| one(&text).map(|finding| text.told(finding))).collect()
}

fn one(text: &Printed<'_>) -> Option<Finding> {
    let place = text.place;
    let widest = text.text.split_whitespace().max_by_key(|word| set(word, place)).unwrap_or("");
    if set(widest, place) > room(place) {
        let short: String = widest.chars().take(24).collect();
        let fits = fitting(widest, place);
        return Some(
            Finding::error(
                RULE.code,
                text.span,
                format!("a word of {} is wider than its place", place.what),
                format!("`{short}…` takes {} mm, and {} mm are there", mm(set(widest, place)), place.width),
            )
            .plainly(format!(
                "a word of {} is too wide for the page and would run into what stands beside it",
                place.what
            ))
            .help(format!("part the word, or shorten it to about {fits} letters")),
        );
    }
    let lines = lines(text.text, place);
    if lines <= place.lines {
        return None;
    }
    let letters = text.text.chars().count();
    let fewer = (letters * usize::try_from(place.lines).unwrap_or(1) / usize::try_from(lines).unwrap_or(1)).max(1);
    let room = if place.lines == 1 { "1 is there".to_owned() } else { format!("{} are there", place.lines) };
    Some(
        Finding::warning(
            RULE.code,
            text.span,
            format!("{} is longer than its place", place.what),
            format!("takes {lines} lines of {} mm, and {room}", place.width),
        )
        .plainly(format!(
            "{} takes {lines} lines where {room}, so it may be cut off or push other things away",
            place.what
        ))
        .help(format!("shorten it to about {fewer} letters; it has {letters}")),
    )
}

/// Lines when broken at blanks, each as full as it goes.
fn lines(text: &str, place: Place) -> i64 {
    let blank = set(" ", place);
    let (mut lines, mut used) = (1, 0);
    for word in text.split_whitespace().map(|word| set(word, place)) {
        if used > 0 && used + blank + word > room(place) {
            lines += 1;
            used = word;
        } else {
            used += if used > 0 { blank + word } else { word };
        }
    }
    lines
}

/// How many letters of a word fit.
fn fitting(word: &str, place: Place) -> usize {
    let ends = word.char_indices().map(|(at, sign)| at + sign.len_utf8());
    ends.take_while(|end| set(&word[..*end], place) <= room(place)).count()
}

/// Width of words, thousandths of an em times tenths of a point.
fn set(text: &str, place: Place) -> i64 {
    advance(place.face.0, place.face.1, text) * place.size
}

/// Width of a line in the same unit: a point is 127/360 mm.
const fn room(place: Place) -> i64 {
    place.width * 1000 * 10 * 360 / 127
}

fn mm(width: i64) -> i64 {
    let unit = 360 * 1000 * 10;
    (width * 127 + unit - 1) / unit
}
