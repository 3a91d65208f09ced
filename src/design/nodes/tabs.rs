//! Tabs in front of lines, and the spaces that were meant.

use super::clean::Clean;
use super::raw::{self, Raw};
use crate::diagnostic::{Edit, applied};
use crate::source::Span;

/// How wide a tab may have been shown.
const WIDTHS: [usize; 3] = [2, 4, 8];
/// The most tabs that are put right at once.
const MOST: usize = 2_000;

/// Spaces in place of every tab in front of a line.
pub(super) struct Spaces {
    /// How many for each tab.
    pub(super) width: usize,
    /// The tabs and what comes in.
    pub(super) edits: Vec<Edit>,
    /// Whether every width with which the file can be read gives the same file.
    pub(super) certain: bool,
}

/// The narrowest spaces with which the file can be read; none where it cannot be read with any.
pub(super) fn in_spaces(clean: &Clean) -> Option<Spaces> {
    let text = clean.text();
    let mut places = Vec::new();
    let mut start = 0;
    for line in text.split_inclusive('\n') {
        let indent = line.len() - line.trim_start_matches([' ', '\t']).len();
        places.extend(line[..indent].match_indices('\t').map(|(at, _)| start + at));
        start += line.len();
    }
    if places.len() > MOST {
        return None;
    }
    let with = |width: usize| {
        let edits: Vec<Edit> = places.iter().map(|at| Edit::new(Span::new(*at, at + 1), " ".repeat(width))).collect();
        raw::parse(&applied(text, &edits).0).ok().map(|root| (width, root.value))
    };
    let read: Vec<(usize, Raw)> = WIDTHS.into_iter().filter_map(with).collect();
    let (width, first) = read.first()?;
    let certain = read.iter().all(|(_, root)| is_same(root, first));
    let original = |at: usize| Span::new(clean.original(at), clean.original(at + 1));
    let edits = places.iter().map(|at| Edit::new(original(*at), " ".repeat(*width))).collect();
    Some(Spaces { width: *width, edits, certain })
}

/// Whether two values hold the same, places and the spelling of numbers left out.
fn is_same(a: &Raw, b: &Raw) -> bool {
    match (a, b) {
        (Raw::Empty, Raw::Empty) | (Raw::Typed, Raw::Typed) => true,
        (Raw::Text(a), Raw::Text(b)) => a == b,
        (Raw::List(a), Raw::List(b)) => a.len() == b.len() && a.iter().zip(b).all(|(a, b)| is_same(&a.value, &b.value)),
        (Raw::Map(a), Raw::Map(b)) => {
            let same =
                |((ak, av), (bk, bv)): (&Entry, &Entry)| is_same(&ak.value, &bk.value) && is_same(&av.value, &bv.value);
            a.len() == b.len() && a.iter().zip(b).all(same)
        }
        _ => false,
    }
}

type Entry = (serde_yaml::Spanned<Raw>, serde_yaml::Spanned<Raw>);
