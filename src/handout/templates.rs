//! The templates of the pages: the built-in ones, or a folder of the designer's own in their place.
//!
//! Takes names and bytes, gives sources that are complete and made for the data that the program
//! writes. Must never know a disk.

use super::world::TEMPLATES;
use std::collections::BTreeMap;

/// What the templates may count on in the data; counted up when data that they read goes or changes
/// its meaning. The built-in ones state it.
pub const TEMPLATE_VERSION: u32 = 2;

/// The largest template that is read: a hundred times a real one.
pub const LARGEST_TEMPLATE: u64 = 1 << 20;

/// The file that states the version, and how.
const STATED_IN: &str = "look.typ";
const STATEMENT: &str = "#let template-version =";

/// The sources of the pages, by virtual path; the first is the main one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Templates(Vec<(String, String)>);

impl Default for Templates {
    fn default() -> Self {
        Self::built_in()
    }
}

impl Templates {
    /// Those built into the program.
    #[must_use]
    pub fn built_in() -> Self {
        Self(TEMPLATES.iter().map(|(path, text)| ((*path).to_owned(), (*text).to_owned())).collect())
    }

    /// The names that a folder of templates must hold, the main one first.
    pub fn names() -> impl Iterator<Item = &'static str> {
        TEMPLATES.iter().map(|(path, _)| path.trim_start_matches('/'))
    }

    /// Templates of the designer's own, by file name. Names that start with a dot are none of ours
    /// and left alone.
    ///
    /// # Errors
    /// In one sentence: every file that is missing or unknown, one that is no text, or a version that
    /// is not the program's.
    pub fn own(mut files: BTreeMap<String, Vec<u8>>) -> Result<Self, String> {
        files.retain(|name, _| !name.starts_with('.'));
        let missing: Vec<&str> = Self::names().filter(|name| !files.contains_key(*name)).collect();
        let unknown: Vec<&str> =
            files.keys().map(String::as_str).filter(|name| Self::names().all(|known| known != *name)).collect();
        let mut faults = Vec::new();
        if !missing.is_empty() {
            faults.push(format!("it lacks {}", listed(&missing)));
        }
        if !unknown.is_empty() {
            faults.push(format!("it holds {}, which no page reads", listed(&unknown)));
        }
        if !faults.is_empty() {
            let help = "`trimwright templates DIR` writes a whole folder to start from";
            return Err(format!("{}; {help}", faults.join(", and ")));
        }
        let mut sources = Vec::with_capacity(files.len());
        for name in Self::names() {
            let bytes = files.remove(name).unwrap_or_default();
            let text = String::from_utf8(bytes).map_err(|error| {
                let line = error.as_bytes()[..error.utf8_error().valid_up_to()].iter().filter(|b| **b == b'\n').count();
                format!("line {} of `{name}` holds bytes that are no UTF-8 text; save it as UTF-8", line + 1)
            })?;
            sources.push((format!("/{name}"), text));
        }
        let own = Self(sources);
        own.has_this_version()?;
        Ok(own)
    }

    /// Path and text of each.
    pub(super) fn sources(&self) -> impl Iterator<Item = (&str, &str)> {
        self.0.iter().map(|(path, text)| (path.as_str(), text.as_str()))
    }

    /// The files of these templates, by file name.
    pub fn files(&self) -> impl Iterator<Item = (&str, &[u8])> {
        self.0.iter().map(|(path, text)| (path.trim_start_matches('/'), text.as_bytes()))
    }

    fn has_this_version(&self) -> Result<(), String> {
        let text =
            self.sources().find(|(path, _)| path.trim_start_matches('/') == STATED_IN).map_or("", |(_, text)| text);
        let stated = text.lines().find_map(|line| line.strip_prefix(STATEMENT));
        let stated = stated.map(|rest| rest.split("//").next().unwrap_or(rest).trim().trim_end_matches(';').trim_end());
        let this = TEMPLATE_VERSION;
        match stated.map(str::parse::<u32>) {
            Some(Ok(version)) if version == this => Ok(()),
            Some(Ok(version)) => Err(format!(
                "`{STATED_IN}` states version {version} of the templates, and this program writes for version {this}; \
                 `trimwright templates DIR` writes those of version {this}, to carry your changes over to"
            )),
            Some(Err(_)) | None => Err(format!(
                "`{STATED_IN}` states no version of the templates; a line of it must be `{STATEMENT} {this}`"
            )),
        }
    }
}

/// `a`, `b` and `c`, at most six of them.
fn listed(names: &[&str]) -> String {
    let shown: Vec<String> = names.iter().take(6).map(|name| format!("`{}`", name.escape_debug())).collect();
    match shown.split_last() {
        _ if names.len() > shown.len() => format!("{} and {} more", shown.join(", "), names.len() - shown.len()),
        Some((last, rest)) if !rest.is_empty() => format!("{} and {last}", rest.join(", ")),
        _ => shown.concat(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn files() -> BTreeMap<String, Vec<u8>> {
        Templates::built_in().files().map(|(name, bytes)| (name.to_owned(), bytes.to_vec())).collect()
    }

    fn refused(change: impl FnOnce(&mut BTreeMap<String, Vec<u8>>)) -> String {
        let mut files = files();
        change(&mut files);
        Templates::own(files).expect_err("refused")
    }

    #[test]
    fn a_copy_of_the_built_in_ones_is_the_same() {
        let mut copied = files();
        copied.insert(".DS_Store".to_owned(), vec![0, 255]);
        assert_eq!(Templates::own(copied), Ok(Templates::built_in()));
    }

    #[test]
    fn a_folder_must_be_whole_and_hold_nothing_else() {
        let said = refused(|files| {
            files.remove("pack.typ");
            files.remove("words.typ");
            files.insert("notes.txt".to_owned(), Vec::new());
        });
        assert!(said.starts_with("it lacks `words.typ` and `pack.typ`, and it holds `notes.txt`, which no page reads"));
        let more = format!("and {} more", TEMPLATES.len() - 6);
        assert!(refused(BTreeMap::clear).contains(&more), "six of them are named");
    }

    #[test]
    fn bytes_that_are_no_text_are_told_by_their_line() {
        let said = refused(|files| {
            files.insert("front.typ".to_owned(), b"// one\n\xff".to_vec());
        });
        assert!(said.starts_with("line 2 of `front.typ` holds bytes"), "{said}");
    }

    #[test]
    fn a_version_is_stated_and_held_against_the_programs() {
        let with = |line: &str| {
            let line = line.to_owned();
            move |files: &mut BTreeMap<String, Vec<u8>>| {
                let text = String::from_utf8(files["look.typ"].clone()).unwrap();
                let stated = text.lines().find(|line| line.starts_with(STATEMENT)).unwrap().to_owned();
                files.insert("look.typ".to_owned(), text.replace(&stated, &line).into_bytes());
            }
        };
        assert!(refused(with("")).contains("states no version"));
        assert!(refused(with("#let template-version = two")).contains("states no version"));
        assert!(refused(with("#let template-version = 999")).contains("states version 999 of the templates"));
        let mut same = files();
        with(&format!("{STATEMENT} {TEMPLATE_VERSION}; // mine"))(&mut same);
        assert!(Templates::own(same).is_ok());
    }
}
