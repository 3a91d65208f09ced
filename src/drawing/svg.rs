//! A scene as SVG: millimetres, bundled families only, every number a whole one or a short decimal.

use super::scene::{Anchor, At, Item, Lettering, Role, Scene};
use super::style::{self, Pen};
use super::text::{self, Run};
use crate::design::model::Accents;
use crate::fonts::metrics::advance;
use std::fmt::Write as _;

/// The SVG of a scene; the same scene gives the same bytes.
#[must_use]
pub fn svg(scene: &Scene) -> String {
    svg_in(scene, Accents::default())
}

/// The same in a designer's accents.
#[must_use]
pub fn svg_in(scene: &Scene, accents: Accents) -> String {
    let (width, height) = (mm(scene.width), mm(scene.height));
    let mut writer = Writer { out: String::new(), lenses: 0, name: id(&scene.name), accents };
    let _ = write!(
        writer.out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" \
         viewBox=\"0 0 {width} {height}\" role=\"img\">\n<title>{}</title>\n",
        escape(&scene.alt)
    );
    writer.items(&scene.items);
    writer.out.push_str("</svg>\n");
    writer.out
}

/// Nanometres as millimetres with at most four places, rounded half up.
fn mm(nm: i64) -> String {
    let tenth_um = (nm + 50).div_euclid(100);
    let (sign, rest) = if tenth_um < 0 { ("-", -tenth_um) } else { ("", tenth_um) };
    let text = format!("{sign}{}.{:04}", rest / 10_000, rest % 10_000);
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// Text made safe for XML: nothing in it can open a tag, an entity or an attribute, and
/// characters that XML 1.0 does not allow are left out.
fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            '\t' | '\n' | '\r' => out.push(' '),
            c if c < ' ' || matches!(c, '\u{FFFE}' | '\u{FFFF}') => {}
            c => out.push(c),
        }
    }
    out
}

/// A scene's name as an XML id.
fn id(name: &str) -> String {
    name.chars().map(|c| if c.is_ascii_alphanumeric() { c } else { '-' }).collect()
}

struct Writer {
    out: String,
    lenses: usize,
    name: String,
    accents: Accents,
}

impl Writer {
    fn items(&mut self, items: &[Item]) {
        for item in items {
            self.item(item);
        }
    }

    fn item(&mut self, item: &Item) {
        match item {
            Item::Path { role, points, closed } => {
                self.path(*role, std::slice::from_ref(points), *closed);
            }
            Item::Shape { role, rings } => self.path(*role, rings, true),
            Item::Strokes { role, runs } => self.path(*role, runs, false),
            Item::Circles { role, radius, centres } => {
                let _ = writeln!(self.out, "<g{}>", pen(*role, true, self.accents));
                for at in centres {
                    let _ =
                        writeln!(self.out, "<circle cx=\"{}\" cy=\"{}\" r=\"{}\"/>", mm(at.x), mm(at.y), mm(*radius));
                }
                self.out.push_str("</g>\n");
            }
            Item::Box { role, at, width, height, radius } => {
                let _ = write!(
                    self.out,
                    "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"",
                    mm(at.x),
                    mm(at.y),
                    mm(*width),
                    mm(*height)
                );
                if *radius > 0 {
                    let _ = write!(self.out, " rx=\"{}\"", mm(*radius));
                }
                let _ = writeln!(self.out, "{}/>", pen(*role, true, self.accents));
            }
            Item::Text { role, at, anchor, turned, text } => self.text(*role, *at, *anchor, *turned, text),
            Item::Lens { centre, radius, items } => self.lens(*centre, *radius, items),
        }
    }

    fn path(&mut self, role: Role, runs: &[Vec<At>], closed: bool) {
        self.out.push_str("<path d=\"");
        for run in runs {
            for (n, at) in run.iter().enumerate() {
                let _ = write!(self.out, "{}{} {}", if n == 0 { "M" } else { "L" }, mm(at.x), mm(at.y));
            }
            if closed {
                self.out.push('Z');
            }
        }
        // Several closed rings: one within another is a hole.
        let rule = if closed && runs.len() > 1 { " fill-rule=\"evenodd\"" } else { "" };
        let _ = writeln!(self.out, "\"{rule}{}/>", pen(role, closed, self.accents));
    }

    fn lens(&mut self, centre: At, radius: i64, items: &[Item]) {
        self.lenses += 1;
        let clip = format!("{}-lens-{}", self.name, self.lenses);
        let _ = writeln!(
            self.out,
            "<clipPath id=\"{clip}\"><circle cx=\"{}\" cy=\"{}\" r=\"{}\"/></clipPath>\n<g clip-path=\"url(#{clip})\">",
            mm(centre.x),
            mm(centre.y),
            mm(radius)
        );
        self.items(items);
        self.out.push_str("</g>\n");
    }

    fn text(&mut self, role: Lettering, at: At, anchor: Anchor, turned: bool, text: &str) {
        let letters = style::letters(role);
        let size = letters.tenths_of_point;
        let start = at.x
            - match anchor {
                Anchor::Start => 0,
                Anchor::Middle => text::width(role, text) / 2,
                Anchor::End => text::width(role, text),
            };
        let _ = write!(
            self.out,
            "<text xml:space=\"preserve\" font-family=\"{}\" font-weight=\"{}\" font-kerning=\"none\" \
             font-size=\"{}\" fill=\"{}\"",
            letters.family,
            letters.weight,
            mm(text::em(1000, size)),
            style::with_accents(letters.colour, self.accents)
        );
        if turned {
            let _ = write!(self.out, " transform=\"rotate(-90 {} {})\"", mm(at.x), mm(at.y));
        }
        self.out.push('>');
        let plain = |characters: &str| text::em(advance(letters.family, letters.weight, characters), size);
        for (from, run) in text::placed(role, text) {
            let x = start + from;
            match run {
                Run::Plain { text } => self.span(x, at.y, None, &text),
                Run::Thin => self.span(x, at.y, Some(text::em(text::THIN_SIZE, size)), "\u{2009}"),
                // The spaces are there to be read and copied; only the sign's place counts.
                Run::Times => self.span(x + text::em(text::TIMES_ROOM, size) - plain(" "), at.y, None, " × "),
                Run::Fraction { numerator, denominator } => {
                    let small = Some(text::em(text::FRACTION_SIZE, size));
                    let digit = |n: usize| text::em(text::FRACTION_DIGIT * i64::try_from(n).unwrap_or(0), size);
                    let slash = x + digit(numerator.len());
                    let below = slash + plain("\u{2044}");
                    self.span(x, at.y - text::em(text::NUMERATOR_RISE, size), small, &numerator);
                    self.span(slash, at.y, None, "\u{2044}");
                    self.span(below, at.y, small, &denominator);
                }
            }
        }
        self.out.push_str("</text>\n");
    }

    fn span(&mut self, x: i64, y: i64, size: Option<i64>, text: &str) {
        let _ = write!(self.out, "<tspan x=\"{}\" y=\"{}\"", mm(x), mm(y));
        if let Some(size) = size {
            let _ = write!(self.out, " font-size=\"{}\"", mm(size));
        }
        let _ = write!(self.out, ">{}</tspan>", escape(text));
    }
}

/// The attributes of a role's pen, with a leading space.
fn pen(role: Role, fills: bool, accents: Accents) -> String {
    let Pen { stroke, width_nm, dash, fill } = style::pen(role);
    let own = |colour: &str| style::with_accents(colour, accents);
    let mut out = format!(" fill=\"{}\"", fill.filter(|_| fills).map_or_else(|| "none".to_owned(), own));
    if let Some(stroke) = stroke.map(own) {
        let _ = write!(out, " stroke=\"{stroke}\" stroke-width=\"{}\"", mm(width_nm));
    }
    if let Some(dash) = dash {
        let dash: Vec<String> = dash.iter().map(|nm| mm(*nm)).collect();
        let _ = write!(out, " stroke-dasharray=\"{}\"", dash.join(" "));
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_exact_short_decimals() {
        assert_eq!(mm(0), "0");
        assert_eq!(mm(12_700_000), "12.7");
        assert_eq!(mm(396_875), "0.3969");
        assert_eq!(mm(-1_250_049), "-1.25");
        assert_eq!(mm(-49), "0");
    }

    #[test]
    fn text_cannot_leave_its_element() {
        assert_eq!(escape("<a href='x'>&\"\u{1}"), "&lt;a href=&#39;x&#39;&gt;&amp;&quot;");
    }
}
