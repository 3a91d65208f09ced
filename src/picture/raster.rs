//! JPEG and PNG, by the crate `image`, within limits that are checked before anything is decoded.

use super::{FINEST, Format, MOST_PIXELS, Picture, PictureFault};
use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::{CompressionType, FilterType, PngEncoder};
use image::{DynamicImage, ImageDecoder, ImageError, ImageFormat, ImageReader, Limits, imageops};
use std::io::{Cursor, ErrorKind};

const PNG: &[u8] = b"\x89PNG\r\n\x1a\n";
const JPEG: &[u8] = b"\xff\xd8\xff";

/// The shortest side in pixels that can be seen for what it is.
const LEAST: u32 = 16;

/// Memory for one decoded picture: 50 million pixels of four bytes.
const MOST_MEMORY: u64 = 4 * MOST_PIXELS + (1 << 20);

/// Of 100: finer than a printed photo shows.
const JPEG_QUALITY: u8 = 90;

/// Which kind the first bytes tell, of those that are read.
pub(super) fn kind(bytes: &[u8]) -> Option<Format> {
    if bytes.starts_with(PNG) {
        Some(Format::Png)
    } else if bytes.starts_with(JPEG) {
        Some(Format::Jpeg)
    } else {
        None
    }
}

/// A kind of picture that is not read, so that the help can name it.
pub(super) fn other_kind(bytes: &[u8]) -> Option<&'static str> {
    let is = |at: usize, sign: &[u8]| bytes.get(at..at + sign.len()) == Some(sign);
    let kinds: [(usize, &[u8], &str); 8] = [
        (0, b"GIF8", "GIF"),
        (8, b"WEBP", "WebP"),
        (4, b"ftypavif", "AVIF"),
        (4, b"ftyp", "HEIC"),
        (0, b"II*\0", "TIFF"),
        (0, b"MM\0*", "TIFF"),
        (0, b"BM", "BMP"),
        (0, b"%PDF", "PDF"),
    ];
    kinds.into_iter().find(|(at, sign, _)| is(*at, sign)).map(|(_, _, kind)| kind)
}

/// Decodes, turns upright, brings down to what paper shows and writes anew.
pub(super) fn read(bytes: &[u8], format: Format) -> Result<Picture, PictureFault> {
    let (width, height) = match format {
        Format::Png => png_size(bytes).ok_or(PictureFault::CutShort)?,
        Format::Jpeg | Format::Svg => jpeg_size(bytes).ok_or(PictureFault::CutShort)?,
    };
    if u64::from(width) * u64::from(height) > MOST_PIXELS {
        return Err(PictureFault::TooManyPixels { width, height });
    }
    if width.min(height) < LEAST {
        return Err(PictureFault::TooSmall { width, height });
    }
    let told = |error: ImageError| fault(&error, width, height);
    let kind = if format == Format::Png { ImageFormat::Png } else { ImageFormat::Jpeg };
    let mut reader = ImageReader::with_format(Cursor::new(bytes), kind);
    let mut limits = Limits::default();
    limits.max_alloc = Some(MOST_MEMORY);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().map_err(told)?;
    // Where the note about it cannot be read, the picture stands as it is.
    let turned = decoder.orientation().unwrap_or(image::metadata::Orientation::NoTransforms);
    let decoded = DynamicImage::from_decoder(decoder).map_err(told)?;
    let mut small = brought_down(decoded);
    small.apply_orientation(turned);
    let quarter = small.width() > small.height() && width < height || small.width() < small.height() && width > height;
    let (width, height) = if quarter { (height, width) } else { (width, height) };
    let mut out = Vec::new();
    let written = match format {
        Format::Png => small.write_with_encoder(PngEncoder::new_with_quality(
            &mut out,
            CompressionType::Default,
            FilterType::Adaptive,
        )),
        Format::Jpeg | Format::Svg => small.write_with_encoder(JpegEncoder::new_with_quality(&mut out, JPEG_QUALITY)),
    };
    written.map_err(|error| PictureFault::Broken { says: error.to_string() })?;
    Ok(Picture { format, width, height, bytes: out })
}

/// Eight bits a channel, and no side longer than [`FINEST`]: each pixel the mean of those that it stands for.
fn brought_down(decoded: DynamicImage) -> DynamicImage {
    let (width, height) = (decoded.width(), decoded.height());
    let long = width.max(height);
    let side = |side: u32| {
        let side = u64::from(side) * u64::from(FINEST) / u64::from(long.max(1));
        u32::try_from(side).unwrap_or(FINEST).max(1)
    };
    let (wide, high) = if long > FINEST { (side(width), side(height)) } else { (width, height) };
    if decoded.color().has_alpha() {
        let pixels = decoded.into_rgba8();
        if long > FINEST { imageops::thumbnail(&pixels, wide, high) } else { pixels }.into()
    } else {
        let pixels = decoded.into_rgb8();
        if long > FINEST { imageops::thumbnail(&pixels, wide, high) } else { pixels }.into()
    }
}

fn fault(error: &ImageError, width: u32, height: u32) -> PictureFault {
    match error {
        ImageError::Limits(_) => PictureFault::TooManyPixels { width, height },
        ImageError::IoError(error) if error.kind() == ErrorKind::UnexpectedEof => PictureFault::CutShort,
        error => PictureFault::Broken { says: error.to_string() },
    }
}

/// Width and height in the first chunk (PNG specification, 11.2.1 IHDR).
fn png_size(bytes: &[u8]) -> Option<(u32, u32)> {
    let number = |at: usize| Some(u32::from_be_bytes(bytes.get(at..at + 4)?.try_into().ok()?));
    (bytes.get(12..16)? == b"IHDR").then_some((number(16)?, number(20)?))
}

/// Width and height in the frame header of a JPEG that goes on to its end-of-image marker (ITU-T T.81, B.1.1.3
/// and B.2.2); none where the bytes end before. A decoder fills up with grey what is not there, which must not
/// be printed.
fn jpeg_size(bytes: &[u8]) -> Option<(u32, u32)> {
    let mut at = 2;
    let mut size = None;
    loop {
        // Any number of fill bytes may stand before a marker.
        while bytes.get(at..at + 2)? == [0xff, 0xff] {
            at += 1;
        }
        let marker = *bytes.get(at + 1).filter(|_| bytes[at] == 0xff)?;
        match marker {
            0xd9 => return size,
            0xd0..=0xd8 | 0x01 => at += 2,
            _ => {
                let length = usize::from(u16::from_be_bytes(bytes.get(at + 2..at + 4)?.try_into().ok()?));
                // A frame header: all but the tables of Huffman and arithmetic codes, and what is reserved.
                if matches!(marker, 0xc0..=0xcf) && !matches!(marker, 0xc4 | 0xc8 | 0xcc) {
                    let side = |at: usize| Some(u32::from(u16::from_be_bytes(bytes.get(at..at + 2)?.try_into().ok()?)));
                    size = Some((side(at + 7)?, side(at + 5)?));
                }
                at += 2 + length;
                if marker == 0xda {
                    // Coded data: up to the next marker that is no stuffing and no restart.
                    while !matches!(bytes.get(at..at + 2)?, [0xff, next] if !matches!(next, 0 | 0xd0..=0xd7 | 0xff)) {
                        at += 1;
                    }
                }
            }
        }
    }
}
