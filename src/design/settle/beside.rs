//! The files that a design names besides drawings: its imprint, the imprint's logo, photos.
//!
//! Which files are read is decided outside: here is what a text names, and a way to each that stays in the
//! design's folder.

use crate::design::nodes::Node;
use std::path::{Component, Path};

/// The most photos that are read for a design.
const MOST_PHOTOS: usize = 12;

/// Whether a name stays in the folder that it is looked up in, on every system.
pub(super) fn is_beside(name: &str) -> bool {
    let mut parts = Path::new(name).components();
    !name.is_empty()
        && !name.contains(['\\', ':', '\0'])
        && !name.starts_with('/')
        && parts.all(|part| matches!(part, Component::Normal(_) | Component::CurDir))
}

fn scalar<'a>(node: &'a Node, key: &str) -> Option<&'a str> {
    match node.get(key)? {
        Node::Scalar(scalar) => Some(scalar.text.trim()).filter(|name| is_beside(name)),
        _ => None,
    }
}

/// The imprint that a design names; none that lies outside its folder.
#[must_use]
pub fn imprint_named(root: &Node) -> Option<String> {
    scalar(root, "imprint").map(str::to_owned)
}

/// The logo that an imprint names, as the design would name it.
#[must_use]
pub fn logo_named(imprint: &Node, file: &str) -> Option<String> {
    scalar(imprint, "logo").map(|logo| beside(file, logo))
}

/// A file beside another one, as a design names it that names the other.
pub(super) fn beside(file: &str, name: &str) -> String {
    match Path::new(file).parent() {
        // Written with `/` on every system: a name, no path of the system.
        Some(home) if !home.as_os_str().is_empty() => format!("{}/{name}", home.to_string_lossy()),
        _ => name.to_owned(),
    }
}

/// The photos that a design names, each once, as written.
#[must_use]
pub fn photos_named(root: &Node) -> Vec<String> {
    let versions = match root.get("versions") {
        Some(Node::List(list)) => list.items.as_slice(),
        _ => &[],
    };
    let mut named: Vec<String> = Vec::new();
    for holder in std::iter::once(root).chain(versions) {
        let name = scalar(holder, "photo").or_else(|| scalar(holder.get("photo")?, "file"));
        if let Some(name) = name.filter(|name| named.len() < MOST_PHOTOS && named.iter().all(|known| known != name)) {
            named.push(name.to_owned());
        }
    }
    named
}
