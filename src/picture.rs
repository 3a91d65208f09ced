//! Pictures beside a design: a photo, a logo.
//!
//! Takes bytes, gives a picture that is safe to print: decoded within limits, upright, no finer than paper
//! shows, and without anything that the file says about its maker or where it was made. Must never know where it
//! came from or where it is printed.

mod raster;
mod vector;

pub use vector::{SHAPES_AND_PAINT, SVG};

use std::fmt;

/// The largest picture file that is read.
pub const LARGEST_PICTURE: u64 = 32 << 20;

/// The most pixels of a picture, about those of a phone's finest photo.
pub const MOST_PIXELS: u64 = 50_400_000;

/// The longest side of what is printed, in pixels: 118 mm at 300 an inch. What is finer is brought down to it.
pub const FINEST: u32 = 1400;

/// How the bytes of a picture are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Format {
    /// As JPEG.
    Jpeg,
    /// As PNG.
    Png,
    /// As SVG: lines and areas, as sharp as the printer.
    Svg,
}

impl Format {
    /// The ending of a file's name.
    #[must_use]
    pub const fn ending(self) -> &'static str {
        match self {
            Self::Jpeg => "jpg",
            Self::Png => "png",
            Self::Svg => "svg",
        }
    }
}

/// A picture, ready to be printed.
#[derive(Clone, PartialEq, Eq)]
pub struct Picture {
    /// How the bytes are written.
    pub format: Format,
    /// Width as found, upright, in pixels; of an SVG only the proportion counts.
    pub width: u32,
    /// Height as found.
    pub height: u32,
    /// The picture as it is printed; nothing of what the file held besides.
    pub bytes: Vec<u8>,
}

impl fmt::Debug for Picture {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Picture({:?}, {} x {}, {} bytes)", self.format, self.width, self.height, self.bytes.len())
    }
}

/// Why bytes give no picture.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum PictureFault {
    /// No kind of picture that is read; the name of another kind, where it is known.
    Other {
        /// Such as `GIF`.
        kind: Option<&'static str>,
    },
    /// More pixels than are read.
    TooManyPixels {
        /// Width that the file claims.
        width: u32,
        /// Height that the file claims.
        height: u32,
    },
    /// No pixel at all, or a side so short that there is nothing to see.
    TooSmall {
        /// Width.
        width: u32,
        /// Height.
        height: u32,
    },
    /// So long and thin that it fits no place.
    TooThin,
    /// The file ends before the picture does.
    CutShort,
    /// What the decoder says.
    Broken {
        /// In its words.
        says: String,
    },
    /// An element of an SVG that may reach outside it or needs what is not there.
    Element {
        /// Its name.
        name: String,
        /// The line it stands in.
        line: u32,
    },
    /// A reference of an SVG to something that is not in it.
    PointsElsewhere {
        /// What to.
        to: String,
        /// The line it stands in.
        line: u32,
    },
    /// An SVG that draws nothing.
    Nothing,
}

impl Picture {
    /// Reads a JPEG, a PNG or an SVG, told apart by its bytes and not by its name.
    ///
    /// # Errors
    /// Why it is none, or none that is safe to print.
    pub fn read(bytes: &[u8]) -> Result<Self, PictureFault> {
        let picture = match raster::kind(bytes) {
            Some(format) => raster::read(bytes, format)?,
            None => match vector::text(bytes) {
                Some(text) => vector::read(text)?,
                None => return Err(PictureFault::Other { kind: raster::other_kind(bytes) }),
            },
        };
        let (short, long) = (picture.width.min(picture.height), picture.width.max(picture.height));
        if u64::from(long) > 20 * u64::from(short) { Err(PictureFault::TooThin) } else { Ok(picture) }
    }

    /// Width and height in a place, as large as its proportions allow there.
    #[must_use]
    pub fn within(&self, width: i64, height: i64) -> (i64, i64) {
        let (own_width, own_height) = (i128::from(self.width.max(1)), i128::from(self.height.max(1)));
        let (wide, high) = (i128::from(width), i128::from(height));
        let whole = |length: i128| i64::try_from(length).unwrap_or(i64::MAX);
        if own_width * high >= own_height * wide {
            (width, whole(own_height * wide / own_width))
        } else {
            (whole(own_width * high / own_height), height)
        }
    }
}
