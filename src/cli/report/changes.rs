//! The lines that `check --mend` has written.

use super::tame;
use crate::mend::Change;

/// Each changed line as it stood and as it stands, or in plain sentences.
#[must_use]
pub fn changes(name: &str, changes: &[Change], plain: bool) -> String {
    let told = changes.iter().map(|Change { line, before, after }| {
        let (before, after) = (tame(before), tame(after));
        if plain {
            format!("Line {line} is mended: `{}` is now `{}`.\n", before.trim(), after.trim())
        } else {
            format!("mended: {}:{line}\n  - {before}\n  + {after}\n", tame(name))
        }
    });
    told.collect()
}
