//! The designer's own look, shared by designs, and photos of the finished card.

use super::Design;
use crate::colour::Colour;
use crate::length::NM_PER_MM;
use crate::picture::Picture;
use crate::source::Spanned;
use std::sync::Arc;

/// Who gives handouts away, and how theirs look. Its texts stand in the imprint's own file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Imprint {
    /// The imprint's file, as the design names it.
    pub file: String,
    /// Who gives it away, where the design does not say.
    pub name: Option<Spanned<String>>,
    /// The logo.
    pub logo: Option<Arc<Picture>>,
    /// The two accents; the usual ones where none are stated.
    pub accents: Accents,
    /// Terms of use.
    pub terms: Option<Spanned<String>>,
    /// Web address.
    pub web: Option<Web>,
}

/// A web address.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Web {
    /// As written and printed.
    pub shown: Spanned<String>,
    /// Where a link leads.
    pub target: String,
}

/// The two colours beside ink and slate. Both fall on almost one grey, and may: no colour has a meaning alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Accents {
    /// Dimensions, folds, notes, headings.
    pub notes: Colour,
    /// Cuts and cautions.
    pub cuts: Colour,
}

impl Default for Accents {
    fn default() -> Self {
        Self { notes: Colour([0x0e, 0x5f, 0x70]), cuts: Colour([0xa6, 0x3c, 0x12]) }
    }
}

/// A photo of the finished card.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Photo {
    /// Its file, as written.
    pub file: Spanned<String>,
    /// What it shows, for those who cannot see it, where the design says more than that it is the card.
    pub alt: Option<Spanned<String>>,
    /// The photo.
    pub picture: Arc<Picture>,
}

/// Width of a photo on the front page, tenths of a millimetre: beside the only drawing, and among several.
const BESIDE_ONE: i64 = 743;
const AMONG_SEVERAL: i64 = 380;
/// Its height there, and where a cut list of two rows leaves less.
const HIGH: i64 = 900;
const LOW: i64 = 740;
/// Papers that the cut list sets side by side.
const PAPERS_IN_A_ROW: usize = 4;

impl Design {
    /// Who gives it away: the design says, else its imprint.
    #[must_use]
    pub fn giver(&self) -> Option<&str> {
        let own = self.designer.as_ref();
        let name = own.or_else(|| self.imprint.as_ref()?.name.as_ref());
        name.map(|name| name.value.as_str())
    }

    /// The accents of every page and figure.
    #[must_use]
    pub fn accents(&self) -> Accents {
        self.imprint.as_ref().map(|imprint| imprint.accents).unwrap_or_default()
    }

    /// Every photo: of the set, then of each version that has one, with the version's name.
    pub fn photos(&self) -> impl Iterator<Item = (&Photo, Option<&str>)> {
        let of_versions =
            self.versions.iter().filter_map(|version| Some((version.photo.as_ref()?, Some(version.name.as_str()))));
        self.photo.iter().map(|photo| (photo, None)).chain(of_versions)
    }

    /// Width and height of a photo as it is printed, nm: as large as its place on the front page allows.
    #[must_use]
    pub fn printed(&self, photo: &Photo) -> (i64, i64) {
        let alone = self.versions.len() == 1 && self.photos().count() == 1;
        let width = if alone { BESIDE_ONE } else { AMONG_SEVERAL };
        let height = if self.papers.len() > PAPERS_IN_A_ROW { LOW } else { HIGH };
        photo.picture.within(width * NM_PER_MM / 10, height * NM_PER_MM / 10)
    }
}
