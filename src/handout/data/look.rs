//! The designer's own look: accents, imprint, photos.

use serde::Serialize;

use super::Said;

/// The two colours beside ink and slate, as `#0E5F70`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct AccentColours {
    /// Notes, dimensions, headings.
    pub notes: String,
    /// Cuts and cautions.
    pub cuts: String,
}

/// What an imprint puts on the pages.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ImprintData {
    /// The logo.
    pub logo: Option<StoredPicture>,
    /// Title over the terms, or over the address alone.
    pub title: String,
    /// Terms of use.
    pub terms: Option<Said>,
    /// Web address.
    pub web: Option<WebLink>,
}

/// A web address.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct WebLink {
    /// As it is printed.
    pub shown: String,
    /// Where it leads.
    pub target: String,
}

/// A picture beside the data, as large as its place allows.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct StoredPicture {
    /// Where it lies.
    pub path: String,
    /// For those who cannot see it.
    pub alt: String,
    /// Width on paper, nm.
    pub width: i64,
    /// Height on paper, nm.
    pub height: i64,
}

/// A photo with its caption.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct PhotoFigure {
    /// Above it.
    pub caption: Said,
    /// The photo.
    pub photo: StoredPicture,
}
