//! Reading and writing files, behind one trait, so that only `cli` touches a disk.
//!
//! Gives bytes for a path and writes a whole folder or nothing. Must never know what the bytes mean.

use std::collections::{BTreeMap, BTreeSet};
use std::io;
use std::path::{Component, Path, PathBuf};

/// The largest design file that is read: a megabyte is a thousand times a real one.
pub const LARGEST_DESIGN: u64 = 1 << 20;

/// Where files come from and go to.
pub trait Files {
    /// The bytes of a file of at most `limit` bytes.
    ///
    /// # Errors
    /// The system's own error, or `FileTooLarge` past the limit.
    fn read(&self, path: &Path, limit: u64) -> io::Result<Vec<u8>>;

    /// The bytes of a file beside another one, or in a folder there.
    ///
    /// # Errors
    /// As [`Files::read`]; `InvalidInput` where the path leads out of the folder, whatever stands
    /// there.
    fn read_beside(&self, path: &Path, name: &Path, limit: u64) -> io::Result<Vec<u8>>;

    /// The names in a folder, sorted.
    ///
    /// # Errors
    /// The system's own error; where there is no such folder, or no folder.
    fn names(&self, folder: &Path) -> io::Result<Vec<String>>;

    /// Writes a new file; one that exists already is an error and stays as it is.
    ///
    /// # Errors
    /// The system's own error; `AlreadyExists` where a file stands.
    fn write_new(&mut self, path: &Path, bytes: &[u8]) -> io::Result<()>;

    /// The same for a file beside another one, or in a folder there, which is made where it lacks.
    ///
    /// # Errors
    /// As [`Files::write_new`]; `InvalidInput` where the name leads out of the folder.
    fn write_new_beside(&mut self, path: &Path, name: &Path, bytes: &[u8]) -> io::Result<()>;

    /// Puts other bytes in the place of a file's, whole: they are written beside it first and moved in one
    /// step. `old` is what was read; a file that has changed since stays as it is.
    ///
    /// # Errors
    /// The system's own error; that the file is read-only, or was changed meanwhile.
    fn replace(&mut self, path: &Path, old: &[u8], new: &[u8]) -> io::Result<()>;

    /// Puts a folder in place whole: the files (paths relative to it) are written beside it first
    /// and moved in one step; what stood there before is replaced, and stays whole on any failure.
    ///
    /// # Errors
    /// The system's own error. A failure leaves the old folder as it was.
    fn replace_folder(&mut self, folder: &Path, files: &BTreeMap<PathBuf, Vec<u8>>) -> io::Result<()>;
}

/// The disk.
#[derive(Debug, Default)]
pub struct Disk;

impl Files for Disk {
    fn read(&self, path: &Path, limit: u64) -> io::Result<Vec<u8>> {
        use std::io::Read;
        let file = std::fs::File::open(path)?;
        if file.metadata()?.is_dir() {
            return Err(io::Error::new(io::ErrorKind::IsADirectory, "it is a folder, not a file"));
        }
        let mut bytes = Vec::new();
        file.take(limit + 1).read_to_end(&mut bytes)?;
        if bytes.len() as u64 > limit {
            return Err(too_large(limit));
        }
        Ok(bytes)
    }

    fn read_beside(&self, path: &Path, name: &Path, limit: u64) -> io::Result<Vec<u8>> {
        stays_beside(name)?;
        let folder = parent_of(path);
        // A link may lead anywhere.
        let (home, found) = (folder.canonicalize()?, folder.join(name).canonicalize()?);
        if !found.starts_with(&home) {
            return Err(leads_out());
        }
        if !found.metadata()?.is_file() {
            return Err(io::Error::new(io::ErrorKind::InvalidInput, "it is no file"));
        }
        self.read(&found, limit)
    }

    fn names(&self, folder: &Path) -> io::Result<Vec<String>> {
        let mut names = Vec::new();
        for entry in std::fs::read_dir(folder)? {
            names.push(entry?.file_name().to_string_lossy().into_owned());
        }
        names.sort();
        Ok(names)
    }

    fn write_new(&mut self, path: &Path, bytes: &[u8]) -> io::Result<()> {
        let parent = parent_of(path);
        let mut file = tempfile::NamedTempFile::new_in(parent)?;
        io::Write::write_all(&mut file, bytes)?;
        readable(file.path(), 0o644)?;
        file.persist_noclobber(path).map_err(|error| error.error)?;
        Ok(())
    }

    fn write_new_beside(&mut self, path: &Path, name: &Path, bytes: &[u8]) -> io::Result<()> {
        stays_beside(name)?;
        let path = parent_of(path).join(name);
        std::fs::create_dir_all(parent_of(&path))?;
        self.write_new(&path, bytes)
    }

    fn replace(&mut self, path: &Path, old: &[u8], new: &[u8]) -> io::Result<()> {
        // A link stays one: what it leads to is replaced.
        let path = path.canonicalize()?;
        let rights = path.metadata()?.permissions();
        if rights.readonly() {
            return Err(io::Error::other("it is read-only"));
        }
        let mut file = tempfile::NamedTempFile::new_in(parent_of(&path))?;
        io::Write::write_all(&mut file, new)?;
        file.as_file().set_permissions(rights)?;
        if self.read(&path, old.len() as u64).ok().as_deref() != Some(old) {
            return Err(changed());
        }
        file.persist(&path).map_err(|error| error.error)?;
        Ok(())
    }

    fn replace_folder(&mut self, folder: &Path, files: &BTreeMap<PathBuf, Vec<u8>>) -> io::Result<()> {
        let parent = parent_of(folder);
        std::fs::create_dir_all(parent)?;
        // Beside, on the same file system, so that the last step is a rename.
        let new = tempfile::Builder::new().prefix(".trimwright-new-").tempdir_in(parent)?;
        for (path, bytes) in files {
            let path = new.path().join(path);
            if let Some(parent) = path.parent() {
                std::fs::create_dir_all(parent)?;
            }
            std::fs::write(path, bytes)?;
        }
        readable(new.path(), 0o755)?;
        if folder.exists() {
            let old = tempfile::Builder::new().prefix(".trimwright-old-").tempdir_in(parent)?;
            let aside = old.path().join("edition");
            std::fs::rename(folder, &aside)?;
            if let Err(error) = std::fs::rename(new.path(), folder) {
                // Back to what was: the reader must never find half an edition.
                std::fs::rename(&aside, folder)?;
                return Err(error);
            }
        } else {
            std::fs::rename(new.path(), folder)?;
        }
        // The folder has moved: there is nothing left to remove under its first name.
        let _ = new.keep();
        Ok(())
    }
}

fn changed() -> io::Error {
    io::Error::other("it was changed meanwhile; try again")
}

/// Whether a name only leads on from where it starts.
fn stays_beside(name: &Path) -> io::Result<()> {
    let mut parts = name.components();
    if parts.all(|part| matches!(part, Component::Normal(_) | Component::CurDir)) { Ok(()) } else { Err(leads_out()) }
}

fn leads_out() -> io::Error {
    io::Error::new(io::ErrorKind::InvalidInput, "it leads out of the design's folder")
}

/// The folder that a path stands in.
fn parent_of(path: &Path) -> &Path {
    match path.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent,
        _ => Path::new("."),
    }
}

/// Temporary files are private to their owner; what is published is not.
#[cfg(unix)]
fn readable(path: &Path, mode: u32) -> io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    std::fs::set_permissions(path, std::fs::Permissions::from_mode(mode))
}

#[cfg(not(unix))]
fn readable(_path: &Path, _mode: u32) -> io::Result<()> {
    Ok(())
}

/// The system's word for an error, without its number.
#[must_use]
pub fn cause(error: &io::Error) -> String {
    match error.kind() {
        io::ErrorKind::NotFound => "there is no such file".to_owned(),
        io::ErrorKind::PermissionDenied => "you may not read or write there".to_owned(),
        _ => {
            let text = error.to_string();
            text.split(" (os error").next().unwrap_or_default().to_lowercase()
        }
    }
}

fn too_large(limit: u64) -> io::Error {
    io::Error::new(io::ErrorKind::FileTooLarge, format!("it is larger than {limit} bytes"))
}

/// Files in memory, for tests and for callers with no disk.
#[derive(Debug, Default, Clone)]
pub struct Memory {
    /// Every file.
    pub files: BTreeMap<PathBuf, Vec<u8>>,
}

impl Files for Memory {
    fn read(&self, path: &Path, limit: u64) -> io::Result<Vec<u8>> {
        let bytes = self.files.get(path).ok_or_else(|| io::Error::from(io::ErrorKind::NotFound))?;
        if bytes.len() as u64 > limit { Err(too_large(limit)) } else { Ok(bytes.clone()) }
    }

    fn read_beside(&self, path: &Path, name: &Path, limit: u64) -> io::Result<Vec<u8>> {
        stays_beside(name)?;
        self.read(&path.parent().unwrap_or_else(|| Path::new("")).join(name), limit)
    }

    fn names(&self, folder: &Path) -> io::Result<Vec<String>> {
        let below = self.files.keys().filter_map(|path| path.strip_prefix(folder).ok()?.components().next());
        let names: BTreeSet<String> = below.map(|part| part.as_os_str().to_string_lossy().into_owned()).collect();
        if names.is_empty() { Err(io::Error::from(io::ErrorKind::NotFound)) } else { Ok(names.into_iter().collect()) }
    }

    fn write_new(&mut self, path: &Path, bytes: &[u8]) -> io::Result<()> {
        if self.files.contains_key(path) {
            return Err(io::Error::from(io::ErrorKind::AlreadyExists));
        }
        self.files.insert(path.to_owned(), bytes.to_vec());
        Ok(())
    }

    fn write_new_beside(&mut self, path: &Path, name: &Path, bytes: &[u8]) -> io::Result<()> {
        stays_beside(name)?;
        self.write_new(&path.parent().unwrap_or_else(|| Path::new("")).join(name), bytes)
    }

    fn replace(&mut self, path: &Path, old: &[u8], new: &[u8]) -> io::Result<()> {
        let bytes = self.files.get_mut(path).ok_or_else(|| io::Error::from(io::ErrorKind::NotFound))?;
        if bytes.as_slice() != old {
            return Err(changed());
        }
        *bytes = new.to_vec();
        Ok(())
    }

    fn replace_folder(&mut self, folder: &Path, files: &BTreeMap<PathBuf, Vec<u8>>) -> io::Result<()> {
        self.files.retain(|path, _| !path.starts_with(folder));
        for (path, bytes) in files {
            self.files.insert(folder.join(path), bytes.clone());
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn edition(text: &str) -> BTreeMap<PathBuf, Vec<u8>> {
        BTreeMap::from([(PathBuf::from("deep/a.txt"), text.as_bytes().to_vec())])
    }

    #[test]
    fn a_folder_is_replaced_whole() {
        let home = tempfile::tempdir().unwrap();
        let folder = home.path().join("out/2026-11-kite");
        let mut disk = Disk;
        disk.replace_folder(&folder, &edition("one")).unwrap();
        std::fs::write(folder.join("stale.txt"), "old").unwrap();
        disk.replace_folder(&folder, &edition("two")).unwrap();
        assert_eq!(std::fs::read_to_string(folder.join("deep/a.txt")).unwrap(), "two");
        assert!(!folder.join("stale.txt").exists());
        let beside: Vec<_> = std::fs::read_dir(home.path().join("out")).unwrap().collect();
        assert_eq!(beside.len(), 1, "nothing is left beside the edition");
    }

    #[test]
    fn a_failure_leaves_the_old_folder_whole() {
        let home = tempfile::tempdir().unwrap();
        let folder = home.path().join("2026-11-kite");
        let mut disk = Disk;
        disk.replace_folder(&folder, &edition("one")).unwrap();
        // A path that cannot be written: a file stands where a folder is needed.
        let broken = BTreeMap::from([(PathBuf::from("a"), vec![1]), (PathBuf::from("a/b"), vec![2])]);
        assert!(disk.replace_folder(&folder, &broken).is_err());
        assert_eq!(std::fs::read_to_string(folder.join("deep/a.txt")).unwrap(), "one");
        assert_eq!(std::fs::read_dir(home.path()).unwrap().count(), 1);
    }

    #[test]
    fn a_file_is_replaced_where_it_is_still_as_it_was_read() {
        let home = tempfile::tempdir().unwrap();
        let path = home.path().join("kite.yaml");
        std::fs::write(&path, "one").unwrap();
        let mut disk = Disk;
        disk.replace(&path, b"one", b"two").unwrap();
        assert!(disk.replace(&path, b"one", b"three").is_err(), "it has changed");
        assert_eq!(std::fs::read_to_string(&path).unwrap(), "two");
        let mut rights = path.metadata().unwrap().permissions();
        rights.set_readonly(true);
        std::fs::set_permissions(&path, rights).unwrap();
        assert_eq!(disk.replace(&path, b"two", b"three").unwrap_err().to_string(), "it is read-only");
        assert_eq!(std::fs::read_to_string(&path).unwrap(), "two");
        assert!(path.metadata().unwrap().permissions().readonly());
        assert_eq!(std::fs::read_dir(home.path()).unwrap().count(), 1, "nothing is left beside it");
    }

    #[test]
    fn nothing_is_written_over() {
        let home = tempfile::tempdir().unwrap();
        let path = home.path().join("kite.yaml");
        let mut disk = Disk;
        disk.write_new(&path, b"one").unwrap();
        assert_eq!(disk.write_new(&path, b"two").unwrap_err().kind(), io::ErrorKind::AlreadyExists);
        assert_eq!(disk.read(&path, 10).unwrap(), b"one");
        assert_eq!(disk.read(&path, 2).unwrap_err().kind(), io::ErrorKind::FileTooLarge);
    }
}
