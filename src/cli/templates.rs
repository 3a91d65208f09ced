//! `templates DIR`, and the folder of `publish --templates DIR`

use super::args;
use super::{Ended, Failure, say};
use crate::files::{Disk, Files, cause};
use crate::handout::{LARGEST_TEMPLATE, Templates};
use std::collections::BTreeMap;
use std::io::Write;
use std::path::{Path, PathBuf};

/// Writes the built-in templates into a folder that is not there yet, or is empty.
pub(super) fn run(arguments: &args::Templates, out: &mut dyn Write) -> Result<Ended, Failure> {
    let folder = &arguments.folder;
    let failure = |why: &str| Failure::new(format!("cannot write the templates to `{}`: {why}", folder.display()));
    match Disk.names(folder) {
        Ok(names) if names.is_empty() => {}
        Ok(_) => return Err(failure("something stands there already, and nothing is written over")),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => {}
        Err(error) => return Err(failure(&cause(&error))),
    }
    let built_in = Templates::built_in();
    let files: BTreeMap<PathBuf, Vec<u8>> =
        built_in.files().map(|(name, bytes)| (PathBuf::from(name), bytes.to_vec())).collect();
    Disk.replace_folder(folder, &files).map_err(|error| failure(&cause(&error)))?;
    for name in files.keys() {
        say(out, &format!("{}\n", folder.join(name).display()))?;
    }
    Ok(Ended::Fine)
}

/// Reads a folder of templates whole.
pub(super) fn open(folder: &Path) -> Result<Templates, Failure> {
    let failure =
        |what: &str, why: &str| Failure::new(format!("cannot set pages by `{}`: {what}{why}", folder.display()));
    let names = Disk.names(folder).map_err(|error| match error.kind() {
        std::io::ErrorKind::NotFound => failure("", "there is no such folder"),
        _ => failure("", &cause(&error)),
    })?;
    let mut files = BTreeMap::new();
    for name in names {
        // What no page reads is refused by its name alone.
        let known = Templates::names().any(|known| known == name);
        let bytes = if known { Disk.read(&folder.join(&name), LARGEST_TEMPLATE) } else { Ok(Vec::new()) };
        let bytes = bytes.map_err(|error| failure(&format!("`{name}`: "), &cause(&error)))?;
        files.insert(name, bytes);
    }
    Templates::own(files).map_err(|why| failure("", &why))
}
