//! `new NAME`

use super::args::New;
use super::{Ended, Failure, open, say};
use crate::design::model::Month;
use crate::design::nodes::{self, Node};
use crate::files::{Disk, Files};
use crate::source::{Source, Span};
use std::io::Write;
use std::path::PathBuf;

/// The commented starter, built into the program.
const STARTER: &str = include_str!("../../templates/starter.yaml");

pub(super) fn run(arguments: &New, out: &mut dyn Write) -> Result<Ended, Failure> {
    let path = yaml_path(&arguments.name)?;
    let stem = path.file_stem().map_or_else(String::new, |stem| stem.to_string_lossy().into_owned());
    let title = title_of(&stem);
    let asked = arguments.month.as_deref().map(parse_month).transpose()?;
    let mut named = Vec::new();
    let text = match &arguments.like {
        None => {
            let month = asked.unwrap_or_else(|| following(this_month()));
            STARTER.replace("{{title}}", &quoted(&title)).replace("{{month}}", &month.to_string())
        }
        Some(like) => {
            let opened = open::open(like)?;
            named.extend(opened.source.all_beside().map(|(name, bytes)| (name.to_owned(), bytes.to_vec())));
            changed(&opened.source, &title, asked)?
        }
    };
    Disk.write_new(&path, text.as_bytes()).map_err(|error| {
        let why = match error.kind() {
            std::io::ErrorKind::AlreadyExists => "it exists already, and nothing is written over".to_owned(),
            _ => crate::files::cause(&error),
        };
        Failure::new(format!("cannot write `{}`: {why}", path.display()))
    })?;
    say(out, &format!("{}\n", path.display()))?;
    for (name, bytes) in named {
        let beside = path.parent().unwrap_or_else(|| std::path::Path::new("")).join(&name);
        // In the same folder it lies there already; another file of that name is kept, and said.
        match Disk.write_new_beside(&path, std::path::Path::new(&name), &bytes) {
            Ok(()) => say(out, &format!("{}\n", beside.display()))?,
            Err(_) if Disk.read(&beside, bytes.len() as u64).is_ok_and(|there| there == bytes) => {}
            Err(error) => {
                return Err(Failure::new(format!(
                    "cannot write `{}`: {}; copy it there by hand",
                    beside.display(),
                    crate::files::cause(&error)
                )));
            }
        }
    }
    Ok(Ended::Fine)
}

/// The file that a name stands for.
fn yaml_path(name: &std::path::Path) -> Result<PathBuf, Failure> {
    let ending = name.extension().is_some_and(|ending| ending == "yaml" || ending == "yml");
    let path = if ending {
        name.to_owned()
    } else {
        let mut text = name.as_os_str().to_owned();
        text.push(".yaml");
        PathBuf::from(text)
    };
    match path.file_stem() {
        Some(stem) if !stem.is_empty() && stem != ".yaml" => Ok(path),
        _ => Err(Failure::new(format!("`{}` is no name for a design; give one such as `kite-day`", name.display()))),
    }
}

/// `kite-day` as a title: `Kite Day`.
fn title_of(stem: &str) -> String {
    let words: Vec<String> =
        stem.split(['-', '_', ' ', '.']).filter(|word| !word.is_empty()).map(crate::words::english::capital).collect();
    if words.is_empty() { "New Sketch".to_owned() } else { words.join(" ") }
}

/// A text as a YAML scalar that is read back as the same text, whatever is in it.
fn quoted(text: &str) -> String {
    let plain = text.chars().all(|c| c.is_alphanumeric() || c == ' ')
        && text.starts_with(|c: char| c.is_alphabetic())
        && !["yes", "no", "true", "false", "null", "on", "off", "y", "n"].contains(&text.to_lowercase().as_str());
    if plain { text.to_owned() } else { format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\"")) }
}

/// Another design's text with a new title and month, all else as it stands, comments included.
fn changed(source: &Source, title: &str, asked: Option<Month>) -> Result<String, Failure> {
    let name = source.name();
    let root = nodes::read(source).map_err(|finding| {
        let line = source.position(finding.primary.span.start).line;
        Failure::new(format!("cannot start from `{name}`: line {line}: {}", finding.message))
    })?;
    let mut edits: Vec<(Span, String)> = Vec::new();
    if let Some((span, _)) = scalar(&root, "title") {
        edits.push((span, quoted(title)));
    }
    if let Some((span, text)) = scalar(&root, "month") {
        let month = match (asked, parse_month(text)) {
            (Some(month), _) => month,
            (None, Ok(month)) => following(month),
            (None, Err(_)) => following(this_month()),
        };
        edits.push((span, month.to_string()));
    }
    edits.sort_by_key(|(span, _)| std::cmp::Reverse(span.start));
    let mut text = source.text().to_owned();
    for (span, new) in edits {
        text.replace_range(span.range(), &new);
    }
    Ok(text)
}

fn scalar<'a>(root: &'a Node, key: &str) -> Option<(Span, &'a str)> {
    match root.get(key) {
        Some(Node::Scalar(scalar)) => Some((scalar.span, scalar.text.as_str())),
        _ => None,
    }
}

fn parse_month(text: &str) -> Result<Month, Failure> {
    let wrong = || Failure::new(format!("`{text}` is no month; write it as `2026-11`"));
    let (year, month) = text.trim().split_once('-').ok_or_else(wrong)?;
    let digits = |text: &str, count: usize| text.len() == count && text.bytes().all(|byte| byte.is_ascii_digit());
    if !digits(year, 4) || !digits(month, 2) {
        return Err(wrong());
    }
    let (year, month): (u16, u8) = (year.parse().map_err(|_| wrong())?, month.parse().map_err(|_| wrong())?);
    if (1900..=9999).contains(&year) && (1..=12).contains(&month) { Ok(Month { year, month }) } else { Err(wrong()) }
}

/// The month after.
fn following(month: Month) -> Month {
    match month.month {
        12 => Month { year: (month.year + 1).min(9999), month: 1 },
        number => Month { month: number + 1, ..month },
    }
}

/// This month by the system's clock: only a new file's first month comes from it.
fn this_month() -> Month {
    let now = time::OffsetDateTime::now_utc();
    Month { year: u16::try_from(now.year()).unwrap_or(2026), month: u8::from(now.month()) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn months_follow() {
        let december = parse_month("2026-12").unwrap_or(Month { year: 0, month: 0 });
        assert_eq!(following(december).to_string(), "2027-01");
        for wrong in ["2026-13", "2026", "26-01", "2026-1", "+026-01", "2026-00", ""] {
            assert!(parse_month(wrong).is_err(), "{wrong}");
        }
    }

    #[test]
    fn titles_are_safe() {
        assert_eq!(title_of("kite-day_2"), "Kite Day 2");
        assert_eq!(quoted("Kite Day"), "Kite Day");
        assert_eq!(quoted("10 # \"x\""), "\"10 # \\\"x\\\"\"");
        assert_eq!(quoted("No"), "\"No\"");
    }
}
