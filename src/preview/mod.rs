//! A scene or an SVG as a picture in pixels.
//!
//! Uses the bundled typefaces only and opens nothing: a reference to an image is refused.

use crate::design::model::Accents;
use crate::drawing::scene::Scene;
use crate::drawing::svg::{svg, svg_in};
use crate::fonts;
use resvg::tiny_skia::{Color, Pixmap, Transform};
use std::sync::Arc;
use usvg::fontdb::Database;

/// The largest picture drawn, in pixels either way.
pub const MOST_PIXELS: u32 = 8000;

/// A scene as PNG, `pixels` wide, on white.
///
/// # Errors
/// Says why: a width of nothing or past [`MOST_PIXELS`], or a scene that draws as no valid SVG.
pub fn png(scene: &Scene, pixels: u32) -> Result<Vec<u8>, String> {
    svg_png(&svg(scene), pixels)
}

/// The same in a designer's accents.
///
/// # Errors
/// As [`png`].
pub fn png_in(scene: &Scene, pixels: u32, accents: Accents) -> Result<Vec<u8>, String> {
    svg_png(&svg_in(scene, accents), pixels)
}

/// An SVG text as PNG, `pixels` wide, on white. The same text gives the same bytes.
///
/// # Errors
/// Says why: not an SVG, or a size of nothing or past [`MOST_PIXELS`].
pub fn svg_png(text: &str, pixels: u32) -> Result<Vec<u8>, String> {
    let tree = tree(text)?;
    let pixmap = render(&tree, pixels)?;
    pixmap.encode_png().map_err(|error| format!("the picture could not be written as PNG: {error}"))
}

/// Reads an SVG with the bundled faces and no way out to files.
///
/// # Errors
/// Says why it is no SVG.
pub fn tree(text: &str) -> Result<usvg::Tree, String> {
    let mut faces = Database::new();
    for (_, _, bytes) in fonts::FACES {
        faces.load_font_data(bytes.to_vec());
    }
    let options = usvg::Options {
        font_family: fonts::TEXT.to_owned(),
        fontdb: Arc::new(faces),
        image_href_resolver: usvg::ImageHrefResolver {
            resolve_data: Box::new(|_, _, _| None),
            resolve_string: Box::new(|_, _| None),
        },
        ..usvg::Options::default()
    };
    usvg::Tree::from_str(text, &options).map_err(|error| format!("not a readable SVG: {error}"))
}

/// Draws a tree on white, `pixels` wide.
///
/// # Errors
/// Says when the size is nothing or past [`MOST_PIXELS`].
pub fn render(tree: &usvg::Tree, pixels: u32) -> Result<Pixmap, String> {
    let size = tree.size();
    let wide = f64::from(pixels);
    let high = (wide * f64::from(size.height()) / f64::from(size.width())).round().max(1.0);
    if pixels == 0 || pixels > MOST_PIXELS || high > f64::from(MOST_PIXELS) {
        return Err(format!("a picture of {pixels} x {high} pixels cannot be drawn (1 to {MOST_PIXELS} each way)"));
    }
    // `high` is a whole number in 1..=MOST_PIXELS here.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let mut pixmap =
        Pixmap::new(pixels, high as u32).ok_or_else(|| format!("no memory for {pixels} x {high} pixels"))?;
    pixmap.fill(Color::WHITE);
    #[allow(clippy::cast_possible_truncation)]
    let across = (wide / f64::from(size.width())) as f32;
    resvg::render(tree, Transform::from_scale(across, across), &mut pixmap.as_mut());
    Ok(pixmap)
}
