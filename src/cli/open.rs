//! Opening a design file.

use super::Failure;
use crate::files::{Disk, Files, LARGEST_DESIGN, cause};
use crate::pipeline::with_drawings;
use crate::source::Source;
use std::path::Path;

/// A design file, read.
pub(super) struct Opened {
    /// Its text.
    pub(super) source: Source,
    /// Its name without the ending.
    pub(super) stem: String,
}

/// Reads a design file, and the drawings beside it that it names.
pub(super) fn open(path: &Path) -> Result<Opened, Failure> {
    let name = path.display();
    let bytes = Disk
        .read(path, LARGEST_DESIGN)
        .map_err(|error| Failure::new(format!("cannot read `{name}`: {}", cause(&error))))?;
    let text = String::from_utf8(bytes).map_err(|error| {
        let line = error.as_bytes()[..error.utf8_error().valid_up_to()].iter().filter(|b| **b == b'\n').count() + 1;
        Failure::new(format!(
            "cannot read `{name}`: line {line} holds bytes that are no UTF-8 text; save it as UTF-8 and try again"
        ))
    })?;
    let stem = path.file_stem().map_or_else(|| "design".to_owned(), |stem| stem.to_string_lossy().into_owned());
    Ok(Opened { source: with_drawings(Source::new(name.to_string(), text), &Disk, path), stem })
}
