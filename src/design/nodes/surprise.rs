//! What went wrong where YAML gave up, in words that a designer can act on.
//!
//! Takes the library's error and the cleaned text, gives one finding.

use super::clean::Clean;
use super::raw::{DEEPEST, MOST_VALUES, bytes};
use super::tabs;
use crate::diagnostic::{Certainty, Edit, Finding};
use crate::source::Span;
use serde_yaml::{Error, Location};

/// The finding for an error of the YAML library.
pub(super) fn explain(error: &Error, clean: &Clean) -> Finding {
    let error = error.without_snippet();
    let text = clean.text();
    let at = floor(text, error.location().map_or(text.len(), |location| offset(text, &location)).min(text.len()));
    if let Some(finding) = too_much(error, here(text, at, clean)) {
        return finding;
    }
    // YAML may notice a slip one line late, or stop one line before a tab.
    let line = line_at(text, at);
    let before = (line.0 > 0).then(|| line_at(text, line.0 - 1));
    let after = text[line.1..].find('\n').map(|found| line_at(text, line.1 + found + 1));
    let on = |(start, end): (usize, usize)| (&text[start..end], start);
    let slips = [Some(line), before, after].into_iter().flatten().map(on);
    let found = surprise(on(line).0, line.0, clean)
        .or_else(|| no_space(clean, [Some(line), before, after]))
        .or_else(|| slips.into_iter().find_map(|(line, start)| tab(line, start, clean)))
        .or_else(|| before.map(on).and_then(|(line, start)| surprise(line, start, clean)));
    if let Some(finding) = found {
        return finding;
    }
    let says = said(error);
    if says.contains("unclosed quote") {
        return Finding::error(
            "not-yaml",
            here(text, at, clean),
            "a text in quotes has no end",
            "the quotes open here",
        )
        .help("close the text with 1 more quote of the same kind, or delete this one")
        .plainly("A quote is opened here and never closed.");
    }
    let spaces = |(start, end): (usize, usize)| end - start - text[start..end].trim_start_matches(' ').len();
    let help = match before.filter(|before| spaces(*before) != spaces(line)) {
        Some(before) => format!(
            "line up each key with its neighbours: this line starts with {}, the line before it with {}",
            counted(spaces(line)),
            counted(spaces(before))
        ),
        None => "look at this line and the 1 before it: check the colon after each key and the quotes".to_owned(),
    };
    Finding::error("not-yaml", here(text, at, clean), "the file cannot be read as YAML", says.clone())
        .help(help)
        .plainly(format!("The file cannot be read from here on: {says}."))
}

/// A key with its value right behind the colon, `cards:8`, on one of these lines, where a space is all that
/// the file lacks there.
fn no_space(clean: &Clean, lines: [Option<(usize, usize)>; 3]) -> Option<Finding> {
    let text = clean.text();
    lines.into_iter().flatten().find_map(|(start, end)| {
        let line = &text[start..end];
        let indent = line.len() - line.trim_start_matches([' ', '-']).len();
        let key = line[indent..].find(|sign: char| !(sign.is_alphanumeric() || matches!(sign, ' ' | '-')))?;
        let colon = indent + key;
        let value = line[colon..].strip_prefix(':').filter(|value| value.starts_with(char::is_alphanumeric))?;
        let with_space = format!("{} {}", &text[..=start + colon], &text[start + colon + 1..]);
        let later = |error: &Error| error.location().is_some_and(|location| offset(&with_space, &location) > end + 1);
        let mends = super::raw::parse(&with_space).map_or_else(|error| later(error.without_snippet()), |_| true);
        let at = clean.original(start + colon);
        let (key, span) = (line[indent..colon].trim(), Span::new(clean.original(start + indent), at + 1));
        (key.len() > 1 && mends).then(|| {
            Finding::error("yaml-surprise", span, format!("no space stands behind `{key}:`"), "not taken for a key")
                .help(format!("put 1 space behind the colon: `{key}: {}`", value.chars().take(60).collect::<String>()))
                .plainly(format!("A space is missing behind {key} and its colon."))
                .edits([Edit::put_in(at + 1, " ")], Certainty::Certain)
        })
    })
}

fn counted(spaces: usize) -> String {
    if spaces == 1 { "1 space".to_owned() } else { format!("{spaces} spaces") }
}

/// A tab in front of a line's text; `start` is the line's first byte in the cleaned text.
fn tab(line: &str, start: usize, clean: &Clean) -> Option<Finding> {
    let indent = line.len() - line.trim_start_matches([' ', '\t']).len();
    let tab = line[..indent].find('\t')?;
    let span = Span::new(clean.original(start + tab), clean.original(start + tab + 1));
    let spaces = tabs::in_spaces(clean);
    let width = spaces.as_ref().map_or(2, |spaces| spaces.width);
    let certainty = Certainty::when(spaces.as_ref().is_some_and(|spaces| spaces.certain));
    Some(
        Finding::error("yaml-surprise", span, "a tab stands in front of the text", "a tab")
            .help(format!("put {width} spaces in place of each tab"))
            .plainly("YAML does not take a tab in front of a line; only spaces count.")
            .edits(spaces.map(|spaces| spaces.edits).unwrap_or_default(), certainty),
    )
}

/// The library's sentence without its place, which the finding has already.
fn said(error: &Error) -> String {
    let full = error.to_string();
    let first = full.lines().next().unwrap_or("").trim();
    let cut = first.find(" at line ").or_else(|| first.find(" at byte ")).unwrap_or(first.len());
    let words = first[..cut].trim_end_matches('.');
    // The commonest of them in plainer words.
    match words {
        _ if words.contains("mapping values are not allowed") => "a key stands where none can",
        _ if words.contains("did not find expected key") => "something other than a key stands here",
        _ if words.contains("block sequence entries are not allowed") => "a list item stands where none can",
        _ => words,
    }
    .to_owned()
}

fn too_much(error: &Error, span: Span) -> Option<Finding> {
    let inner = match error {
        Error::AliasError { error, .. } => error,
        other => other,
    };
    let found = match inner {
        Error::Budget { .. } => "the limit is reached here",
        Error::AliasReplayLimitExceeded { .. }
        | Error::AliasExpansionLimitExceeded { .. }
        | Error::AliasReplayStackDepthExceeded { .. }
        | Error::AliasReplayCounterOverflow { .. } => "a repeated part grows past the limit here",
        Error::RecursiveReferencesRequireWeakTypes { .. } => "a repeated part holds itself here",
        _ if inner.to_string().contains("nesting") || inner.to_string().contains("recursion") => {
            "lists and maps are nested too deep here"
        }
        _ => return None,
    };
    Some(
        Finding::error("too-much", span, "the file holds more than a design can", found)
            .help(format!("keep it to {MOST_VALUES} values, at most {DEEPEST} deep, in 1 document"))
            .plainly("The file holds far more than a design needs."),
    )
}

/// A well-known slip on one line; `start` is the line's first byte in the cleaned text.
fn surprise(line: &str, start: usize, clean: &Clean) -> Option<Finding> {
    let place = |from: usize, to: usize| Span::new(clean.original(start + from), clean.original(start + to));
    let (from, value, keyed) = value_of(line)?;
    let shown = |text: &str| text.chars().take(60).collect::<String>();
    let span = place(from, from + value.len());
    let first = value.chars().next()?;
    if matches!(first, '"' | '\'') {
        let end = closing(value, first)?;
        let rest = value[end..].trim_start();
        if rest.is_empty() || rest.starts_with('#') || rest.starts_with([',', '}', ']', ':']) {
            return None;
        }
        return Some(
            Finding::error("yaml-surprise", span, "text goes on behind the closing quote", "the quotes end too early")
                .help(format!("put 1 pair of single quotes round it all: `'{}'`", shown(value)))
                .plainly("A text in quotes ends at the second quote, and more stands behind it.")
                .edits(round(value, span, "'"), Certainty::Likely),
        );
    }
    if matches!(first, '{' | '[' | '|' | '>') {
        return None;
    }
    if value.contains(": ") || (keyed && value.ends_with(':')) {
        let curly = matches!(first, '\u{201c}' | '\u{201e}' | '\u{2018}');
        let text = value.trim_matches(['\u{201c}', '\u{201d}', '\u{201e}', '\u{2018}', '\u{2019}']);
        let finding =
            Finding::error("yaml-surprise", span, "a second colon stands in the text", "taken for a key and its value");
        let edits = if curly && !text.contains(['"', '\\']) {
            vec![Edit::new(span, format!("\"{text}\""))]
        } else {
            Edit::quotes(value, span)
        };
        return Some(
            finding
                .help(if curly {
                    format!("put 1 pair of straight quotes round it, curly ones do not count: `\"{}\"`", shown(text))
                } else {
                    format!("put 1 pair of quotes round it: `\"{}\"`", shown(text))
                })
                .plainly("A colon with a space behind it starts a new value, so a text that holds one needs quotes.")
                .edits(edits, Certainty::Certain),
        );
    }
    if matches!(first, '*' | '&' | '!' | '%' | '@' | '`') {
        return Some(
            Finding::error(
                "yaml-surprise",
                span,
                format!("`{first}` at the start of a text means something else to YAML"),
                "not taken for text",
            )
            .help(format!("put 1 pair of quotes round it: `\"{}\"`", shown(value)))
            .plainly(format!("A text that starts with {first} needs quotes."))
            .edits(Edit::quotes(value, span), Certainty::when(matches!(first, '@' | '%' | '`'))),
        );
    }
    None
}

/// One kind of quotes round a text that holds none of it.
fn round(text: &str, span: Span, quote: &str) -> Vec<Edit> {
    if text.contains(quote) {
        return Vec::new();
    }
    vec![Edit::put_in(span.start, quote), Edit::put_in(span.end, quote)]
}

/// Where the value behind `- ` and `key: ` starts on a line, the value without its comment, and
/// whether there is a key.
fn value_of(line: &str) -> Option<(usize, &str, bool)> {
    let mut from = line.len() - line.trim_start_matches([' ', '\t']).len();
    while let Some(rest) = line[from..].strip_prefix("- ") {
        from = line.len() - rest.trim_start_matches(' ').len();
    }
    let mut keyed = false;
    if !line[from..].starts_with(['"', '\''])
        && let Some(colon) = line[from..].find(": ")
    {
        keyed = true;
        let behind = from + colon + 2;
        from = line.len() - line[behind..].trim_start_matches(' ').len();
    }
    let value = &line[from..];
    let value = if value.starts_with(['"', '\'']) { value } else { value.split(" #").next().unwrap_or(value) };
    let value = value.trim_end();
    (!value.is_empty()).then_some((from, value, keyed))
}

/// One past the quote that closes a text opened by `quote`.
fn closing(value: &str, quote: char) -> Option<usize> {
    let mut escaped = false;
    for (at, sign) in value.char_indices().skip(1) {
        if escaped {
            escaped = false;
        } else if quote == '"' && sign == '\\' {
            escaped = true;
        } else if sign == quote {
            return Some(at + 1);
        }
    }
    None
}

/// The byte of an error's place; syntax errors come with line and column only.
fn offset(text: &str, location: &Location) -> usize {
    if let Some((start, _)) = bytes(location) {
        return start;
    }
    let line = usize::try_from(location.line()).unwrap_or(usize::MAX).saturating_sub(1);
    let column = usize::try_from(location.column()).unwrap_or(usize::MAX).saturating_sub(1);
    let Some(start) = std::iter::once(0).chain(text.match_indices('\n').map(|(at, _)| at + 1)).nth(line) else {
        return text.len();
    };
    let (_, end) = line_at(text, start);
    text[start..end].char_indices().nth(column).map_or(end, |(at, _)| start + at)
}

fn here(text: &str, at: usize, clean: &Clean) -> Span {
    let end = text[at..].chars().next().map_or(at, |sign| at + sign.len_utf8());
    Span::new(clean.original(at), clean.original(end))
}

fn floor(text: &str, mut at: usize) -> usize {
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    at
}

/// First byte and end of the line that holds a byte, without its line break.
fn line_at(text: &str, at: usize) -> (usize, usize) {
    let start = text[..at].rfind('\n').map_or(0, |found| found + 1);
    let end = text[at..].find('\n').map_or(text.len(), |found| at + found);
    (start, start + text[start..end].trim_end_matches('\r').len())
}
