//! Photos and logos: what is taken, what is refused, and what of a file never gets onto a page.

use crate::support::{pictured, png};
use image::ImageFormat;
use proptest::prelude::*;
use trimwright::picture::{FINEST, Format, Picture, PictureFault};

fn svg(inside: &str) -> String {
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 40 \
         20\">{inside}</svg>"
    )
}

fn logo(inside: &str) -> Result<Picture, PictureFault> {
    Picture::read(svg(inside).as_bytes())
}

/// A PNG that claims a size and holds nothing of it: signature and header with its checksum (PNG specification,
/// 5.2, 5.3 and 11.2.1; annex D for the checksum).
fn claims(width: u32, height: u32) -> Vec<u8> {
    let mut chunk = b"IHDR".to_vec();
    chunk.extend(width.to_be_bytes());
    chunk.extend(height.to_be_bytes());
    chunk.extend([8, 2, 0, 0, 0]);
    let mut sum = u32::MAX;
    for byte in &chunk {
        sum ^= u32::from(*byte);
        for _ in 0..8 {
            sum = if sum & 1 == 1 { 0xedb8_8320 ^ (sum >> 1) } else { sum >> 1 };
        }
    }
    let mut bytes = b"\x89PNG\r\n\x1a\n\0\0\0\x0d".to_vec();
    bytes.extend(chunk);
    bytes.extend((!sum).to_be_bytes());
    bytes
}

const LEAF: &str = "<path d=\"M0 10 C10 0 30 0 40 10 C30 20 10 20 0 10 Z\" fill=\"#2C5E4A\"/>";

#[test]
fn pictures_are_told_by_their_bytes() {
    let photo = Picture::read(&pictured(60, 40, ImageFormat::Jpeg)).unwrap();
    assert_eq!((photo.format, photo.width, photo.height), (Format::Jpeg, 60, 40));
    assert!(photo.bytes.starts_with(b"\xff\xd8"));
    let drawn = Picture::read(&png(60, 40)).unwrap();
    assert_eq!((drawn.format, drawn.width, drawn.height), (Format::Png, 60, 40));
    let vector = logo(LEAF).unwrap();
    assert_eq!((vector.format, vector.width, vector.height), (Format::Svg, 10_000, 5_000));
}

#[test]
fn the_size_on_paper_keeps_the_proportions() {
    let wide = Picture::read(&png(60, 40)).unwrap();
    assert_eq!(wide.within(43_000_000, 20_000_000), (30_000_000, 20_000_000));
    assert_eq!(wide.within(30_000_000, 200_000_000), (30_000_000, 20_000_000));
}

#[test]
fn what_is_finer_than_paper_shows_is_brought_down() {
    let large = Picture::read(&pictured(FINEST * 2, FINEST, ImageFormat::Jpeg)).unwrap();
    assert_eq!((large.width, large.height), (FINEST * 2, FINEST), "what was found is still known");
    let printed = image::load_from_memory(&large.bytes).unwrap();
    assert_eq!((printed.width(), printed.height()), (FINEST, FINEST / 2));
    // The picture is dark at its upper left corner and light at the lower right one.
    let (dark, light) = (printed.to_rgb8()[(3, 3)][0], printed.to_rgb8()[(FINEST - 3, FINEST / 2 - 3)][0]);
    assert!(dark < 20 && light > 235, "{dark} {light}");
}

/// A JPEG with segments of other makers put in behind its first marker.
fn with_segment(marker: u8, payload: &[u8]) -> Vec<u8> {
    let plain = pictured(60, 40, ImageFormat::Jpeg);
    let length = u16::try_from(payload.len() + 2).unwrap().to_be_bytes();
    [&plain[..2], &[0xff, marker], &length, payload, &plain[2..]].concat()
}

/// The orientation of a camera held upright, as Exif 2.32 writes it: one entry, tag 0x0112, in a TIFF of its own.
fn turned(orientation: u8) -> Vec<u8> {
    let tiff = [b'M', b'M', 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0];
    with_segment(0xe1, &[b"Exif\0\0".as_slice(), &tiff].concat())
}

#[test]
fn a_photo_stands_as_the_camera_was_held() {
    // Exif 2.32, table of tag 0x0112: 1 as it is; 3 upside down; 6 the first row is the right side, 8 the left one.
    // The darkest corner is the upper left one of what was stored.
    for (orientation, size, dark) in
        [(1, (60, 40), (0, 0)), (3, (60, 40), (1, 1)), (6, (40, 60), (1, 0)), (8, (40, 60), (0, 1))]
    {
        let picture = Picture::read(&turned(orientation)).unwrap();
        assert_eq!((picture.width, picture.height), size, "{orientation}");
        let printed = image::load_from_memory(&picture.bytes).unwrap().to_rgb8();
        let corner = |(x, y): (u32, u32)| {
            let pixel = printed[(x * (size.0 - 1), y * (size.1 - 1))];
            u32::from(pixel[0]) + u32::from(pixel[1]) + u32::from(pixel[2])
        };
        let darkest = [(0, 0), (0, 1), (1, 0), (1, 1)].into_iter().min_by_key(|at| corner(*at));
        assert_eq!(darkest, Some(dark), "{orientation}");
    }
}

#[test]
fn nothing_else_that_a_file_says_is_kept() {
    let said = b"taken at 52.0 N 13.0 E by the designer herself";
    for marker in [0xfe, 0xe1, 0xed] {
        let picture = Picture::read(&with_segment(marker, said)).unwrap();
        assert!(!picture.bytes.windows(8).any(|part| part == &said[..8]), "{marker:x}");
    }
    let talks = logo(&format!("<title>secret</title><metadata>secret</metadata><!-- secret -->{LEAF}")).unwrap();
    assert!(!String::from_utf8(talks.bytes).unwrap().contains("secret"));
    // What a camera puts behind the picture goes too.
    let mut trailed = pictured(60, 40, ImageFormat::Jpeg);
    trailed.extend(said);
    assert!(!Picture::read(&trailed).unwrap().bytes.ends_with(said));
}

#[test]
fn what_is_no_picture_is_named() {
    let kind = |bytes: &[u8]| match Picture::read(bytes) {
        Err(PictureFault::Other { kind }) => kind,
        other => panic!("{other:?}"),
    };
    assert_eq!(kind(b"GIF89a and more"), Some("GIF"));
    assert_eq!(kind(b"RIFF\0\0\0\0WEBPVP8 "), Some("WebP"));
    assert_eq!(kind(b"\0\0\0\x18ftypheic\0\0\0\0"), Some("HEIC"));
    assert_eq!(kind(b"%PDF-1.7"), Some("PDF"));
    assert_eq!(kind(b"This is a text that somebody called card.png"), None);
    assert_eq!(kind(b""), None);
    assert!(matches!(Picture::read(b"<html><body/></html>"), Err(PictureFault::Broken { .. })));
}

#[test]
fn a_file_that_claims_too_much_is_refused_before_it_is_decoded() {
    for (width, height) in [(100_000, 100_000), (u32::MAX, u32::MAX), (50_400_001, 1), (10_000, 5_041)] {
        assert_eq!(Picture::read(&claims(width, height)), Err(PictureFault::TooManyPixels { width, height }));
    }
    assert!(matches!(Picture::read(&claims(0, 400)), Err(PictureFault::TooSmall { .. })));
    assert!(matches!(Picture::read(&claims(15, 400)), Err(PictureFault::TooSmall { .. })));
    assert!(matches!(Picture::read(&claims(4000, 3000)), Err(PictureFault::CutShort | PictureFault::Broken { .. })));
    // 65535 each way is what a JPEG can claim at most: its frame header is changed, behind the marker FF C0.
    let mut jpeg = pictured(60, 40, ImageFormat::Jpeg);
    let at = jpeg.windows(2).position(|pair| pair == [0xff, 0xc0]).unwrap() + 5;
    jpeg[at..at + 4].fill(0xff);
    assert_eq!(Picture::read(&jpeg), Err(PictureFault::TooManyPixels { width: 65_535, height: 65_535 }));
    assert_eq!(Picture::read(&png(1000, 20)), Err(PictureFault::TooThin));
}

#[test]
fn a_file_that_ends_too_soon_is_never_printed_half_grey() {
    let jpeg = pictured(300, 200, ImageFormat::Jpeg);
    for part in [3, 100, jpeg.len() / 2, jpeg.len() - 2] {
        assert_eq!(Picture::read(&jpeg[..part]), Err(PictureFault::CutShort), "{part} of {}", jpeg.len());
    }
    let whole = png(300, 200);
    for part in [9, 30, 60, whole.len() / 2] {
        let read = Picture::read(&whole[..part]);
        assert!(matches!(read, Err(PictureFault::CutShort | PictureFault::Broken { .. })), "{part}: {read:?}");
    }
}

#[test]
fn a_logo_points_at_nothing_outside_it() {
    let elsewhere = |inside: &str| match logo(&format!("{inside}{LEAF}")) {
        Err(PictureFault::PointsElsewhere { to, line }) => (to, line),
        other => panic!("{inside}: {other:?}"),
    };
    let gradient = |href: &str| format!("<linearGradient id=\"a\" xlink:href=\"{href}\"/>");
    for href in
        ["file:///etc/passwd", "http://a.example/x.svg#a", "data:image/png;base64,AAAA", "other.svg#a", "//a.example"]
    {
        assert_eq!(elsewhere(&gradient(href)), (href.to_owned(), 1));
        let style = format!("<style>path {{ fill: url({href}) }}</style>");
        assert_eq!(elsewhere(&style).0, href);
        assert_eq!(elsewhere(&format!("<rect width=\"9\" height=\"9\" fill=\"url('{href}')\"/>")).0, href);
    }
    assert!(elsewhere("<style>@import 'http://a.example/x.css';</style>").0.contains("a.example"));
    for name in
        ["image", "use", "text", "script", "foreignObject", "filter", "pattern", "mask", "animate", "a", "symbol"]
    {
        let found = logo(&format!("{LEAF}\n<{name} href=\"#x\"/>"));
        assert_eq!(found, Err(PictureFault::Element { name: name.to_owned(), line: 2 }));
    }
    // What stays inside is taken: a gradient of its own.
    let own = "<defs><linearGradient id=\"a\"><stop offset=\"0\" stop-color=\"#123456\"/></linearGradient>\
               <linearGradient id=\"b\" xlink:href=\"#a\"/></defs><rect width=\"40\" height=\"20\" fill=\"url(#b)\"/>";
    let own = String::from_utf8(logo(own).unwrap().bytes).unwrap();
    assert!(own.contains("#123456") && !own.contains("http://a"), "{own}");
}

#[test]
fn bombs_in_a_logo_end_at_once() {
    let mut laughs = "<!DOCTYPE svg [<!ENTITY a0 \"ha\">".to_owned();
    for n in 1..40 {
        laughs += &format!("<!ENTITY a{n} \"{}\">", format!("&a{};", n - 1).repeat(10));
    }
    laughs += "]><svg xmlns=\"http://www.w3.org/2000/svg\"><title>&a39;</title></svg>";
    assert!(matches!(Picture::read(laughs.as_bytes()), Err(PictureFault::Broken { .. })));
    let outside = "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><svg \
                   xmlns=\"http://www.w3.org/2000/svg\"><title>&a;</title></svg>";
    assert!(Picture::read(outside.as_bytes()).is_err());
    assert!(matches!(logo(&"<g/>".repeat(100_000)), Err(PictureFault::Broken { .. })));
    assert!(matches!(
        logo(&format!("{}{LEAF}{}", "<g>".repeat(9_000), "</g>".repeat(9_000))),
        Err(PictureFault::Broken { .. })
    ));
    assert_eq!(logo(""), Err(PictureFault::Nothing));
    assert!(matches!(Picture::read(svg(LEAF).replace("40 20", "4000 2").as_bytes()), Err(PictureFault::TooThin)));
    for odd in ["0 0 0 0", "0 0 1e38 1", "0 0 NaN 2", "-1e39 0 2 2"] {
        let _ = Picture::read(svg(LEAF).replace("0 0 40 20", odd).as_bytes());
    }
}

proptest! {
    #![proptest_config(crate::support::cases(128))]

    #[test]
    fn any_bytes_are_read_or_refused(bytes in proptest::collection::vec(any::<u8>(), 0..200)) {
        let _ = Picture::read(&bytes);
        let _ = Picture::read(&[b"\x89PNG\r\n\x1a\n".as_slice(), &bytes].concat());
        let _ = Picture::read(&[b"\xff\xd8\xff".as_slice(), &bytes].concat());
    }

    #[test]
    fn a_broken_picture_is_read_or_refused(at in 0.0..1.0f64, with in any::<u8>(), jpeg in any::<bool>()) {
        let mut bytes = pictured(48, 32, if jpeg { ImageFormat::Jpeg } else { ImageFormat::Png });
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let at = (at * bytes.len() as f64) as usize;
        bytes[at] = with;
        if let Ok(picture) = Picture::read(&bytes) {
            prop_assert!(picture.width >= 16 && picture.height >= 16 && !picture.bytes.is_empty());
        }
    }
}
