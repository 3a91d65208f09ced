//! SVG: shapes and colours alone. What could reach outside it, or needs a typeface, is refused by name, and the
//! picture is written anew from what a reader made of it, so that nothing else in the file gets onto a page.

use super::{Format, Picture, PictureFault};
use usvg::roxmltree;

/// The most bytes of text, elements, and elements within each other.
const MOST_BYTES: usize = 2 << 20;
const MOST_NODES: u32 = 20_000;
const MOST_DEEP: usize = 64;

/// The namespace of SVG.
pub const SVG: &str = "http://www.w3.org/2000/svg";

/// Elements that draw shapes, say how they are painted or say nothing: nothing of them reaches outside the file or
/// needs a typeface.
pub const SHAPES_AND_PAINT: [&str; 17] = [
    "svg",
    "g",
    "path",
    "rect",
    "circle",
    "ellipse",
    "polygon",
    "polyline",
    "line",
    "title",
    "desc",
    "metadata",
    "defs",
    "style",
    "linearGradient",
    "radialGradient",
    "stop",
];

/// A logo may also be clipped.
const CLIP: &str = "clipPath";

/// The text of bytes that look like XML.
pub(super) fn text(bytes: &[u8]) -> Option<&str> {
    let text = std::str::from_utf8(bytes).ok()?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    text.trim_start().starts_with('<').then_some(text)
}

pub(super) fn read(text: &str) -> Result<Picture, PictureFault> {
    if text.len() > MOST_BYTES {
        return Err(PictureFault::Broken { says: format!("more than {MOST_BYTES} bytes of text") });
    }
    is_harmless(text)?;
    let options = usvg::Options {
        resources_dir: None,
        image_href_resolver: usvg::ImageHrefResolver {
            resolve_data: Box::new(|_, _, _| None),
            resolve_string: Box::new(|_, _| None),
        },
        ..usvg::Options::default()
    };
    let broken = |error: usvg::Error| PictureFault::Broken { says: error.to_string() };
    let tree = usvg::Tree::from_str(text, &options).map_err(broken)?;
    let drawn = tree.root().abs_layer_bounding_box();
    if !tree.root().has_children() || drawn.width() <= 0.0 || drawn.height() <= 0.0 {
        return Err(PictureFault::Nothing);
    }
    let (width, height) = (f64::from(tree.size().width()), f64::from(tree.size().height()));
    // Ten thousand along the longer side: more than any printer shows.
    let long = width.max(height);
    // A share of 1, never negative.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let side = |side: f64| ((side / long * 10_000.0).round() as u32).max(1);
    let bytes = tree.to_string(&usvg::WriteOptions::default()).into_bytes();
    Ok(Picture { format: Format::Svg, width: side(width), height: side(height), bytes })
}

fn is_harmless(text: &str) -> Result<(), PictureFault> {
    let options =
        roxmltree::ParsingOptions { allow_dtd: true, nodes_limit: MOST_NODES, ..roxmltree::ParsingOptions::default() };
    let document = roxmltree::Document::parse_with_options(text, options)
        .map_err(|error| PictureFault::Broken { says: format!("no sound XML: {error}") })?;
    if !document.root_element().has_tag_name((SVG, "svg")) {
        return Err(PictureFault::Broken { says: "it is no SVG".to_owned() });
    }
    for node in document.descendants().filter(roxmltree::Node::is_element) {
        let name = node.tag_name();
        let line = document.text_pos_at(node.range().start).row;
        if node.ancestors().take(MOST_DEEP + 1).count() > MOST_DEEP {
            return Err(PictureFault::Broken { says: "groups lie too deep in groups".to_owned() });
        }
        // What editors add in names of their own is not drawn.
        if name.namespace() != Some(SVG) {
            continue;
        }
        if name.name() != CLIP && !SHAPES_AND_PAINT.contains(&name.name()) {
            return Err(PictureFault::Element { name: name.name().to_owned(), line });
        }
        let elsewhere = |to: &str| PictureFault::PointsElsewhere { to: to.chars().take(40).collect(), line };
        for attribute in node.attributes() {
            let value = attribute.value().trim();
            if matches!(attribute.name(), "href" | "src") && !value.starts_with('#') {
                return Err(elsewhere(value));
            }
            if let Some(to) = pointed_at(value) {
                return Err(elsewhere(to));
            }
        }
        if name.name() == "style" {
            let style: String = node.descendants().filter_map(|node| node.text()).collect();
            if let Some(to) = pointed_at(&style) {
                return Err(elsewhere(to));
            }
        }
    }
    Ok(())
}

/// What a style points at that is not a part of the same file: `url(https://…)`, `@import`.
fn pointed_at(style: &str) -> Option<&str> {
    let lower = style.to_ascii_lowercase();
    if let Some(at) = lower.find("@import") {
        return Some(style[at..].lines().next().unwrap_or(""));
    }
    lower.match_indices("url(").find_map(|(at, found)| {
        let to = style[at + found.len()..].trim_start().trim_start_matches(['"', '\'']);
        (!to.starts_with('#')).then(|| to.split(')').next().unwrap_or("").trim_end_matches(['"', '\'']))
    })
}
