//! Writing an edition, all or nothing.

use super::bundle::Bundle;
use crate::files::Files;
use std::io;
use std::path::{Path, PathBuf};

/// Puts a bundle into its folder under `to`: written beside and moved in whole, so that an edition
/// published before stays as it was until the new one is complete. Gives the paths written.
///
/// # Errors
/// The system's own error; the folder is then as it was before.
pub fn publish(files: &mut dyn Files, to: &Path, bundle: &Bundle) -> io::Result<Vec<PathBuf>> {
    let folder = to.join(&bundle.folder);
    files.replace_folder(&folder, &bundle.files)?;
    Ok(bundle.files.keys().map(|path| folder.join(path)).collect())
}
