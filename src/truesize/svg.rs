//! One guide as a drawing for cutting machines: SVG 1.1 in millimetres.
//!
//! Takes a [`Guide`], gives text. One drawing a guide, not a page: a machine is given one shape at a time, and no
//! program has to take a page apart. Lengths are millimetres in `width`, `height` and `viewBox` alike, since every
//! nanometre is a finite decimal of a millimetre and hardly any of an inch. Numbers go from integers to text; no
//! float, no transform, no class, no entity.

use crate::drawing::style;
use crate::fonts;
use crate::geometry::Point;
use crate::guides::model::{Guide, Label, Line, Role};
use crate::length::NM_PER_MM;
use std::fmt::Write as _;

/// Kept free round the guide, so that no line is cut off by the drawing's edge.
const ROUND: i64 = 2 * NM_PER_MM;

/// The guide as SVG 1.1 in the language `lang`: a group a role that has lines, a path a line, closed where the line is;
/// its words in the group of the notes alone.
#[must_use]
pub fn svg(guide: &Guide, lang: &str) -> String {
    let frame = Frame::of(guide);
    let mut out = String::new();
    let (width, height) = (decimal(frame.right - frame.left), decimal(frame.top - frame.bottom));
    let _ = writeln!(out, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
    let _ = writeln!(
        out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" version=\"1.1\" \
         width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\" xml:lang=\"{}\">",
        escaped(lang)
    );
    let _ = writeln!(out, "<title>{}</title>\n<desc>{}</desc>", escaped(&guide.title), escaped(&guide.alt));
    let turned: Vec<&Label> = guide.labels.iter().filter(|label| label.turned).collect();
    if !turned.is_empty() {
        let _ = writeln!(out, "<defs>");
        for (number, label) in turned.iter().enumerate() {
            let _ = writeln!(out, "<path id=\"{}\" d=\"{}\"/>", way_id(guide, number), frame.way(label));
        }
        let _ = writeln!(out, "</defs>");
    }
    for role in Role::ALL {
        let lines: Vec<&Line> =
            guide.lines.iter().filter(|line| line.role == role && !line.points.is_empty()).collect();
        let has_words = role == Role::Note && !guide.labels.is_empty();
        if lines.is_empty() && !has_words {
            continue;
        }
        let _ = writeln!(out, "<g id=\"{}\"{}>", role.word(), strokes(role));
        for line in lines {
            let _ = writeln!(out, "<path d=\"{}\"/>", frame.path(line));
        }
        if has_words {
            words(&mut out, guide, &frame);
        }
        let _ = writeln!(out, "</g>");
    }
    out.push_str("</svg>\n");
    out
}

/// What of the page the drawing shows.
struct Frame {
    left: i64,
    right: i64,
    bottom: i64,
    top: i64,
}

impl Frame {
    fn of(guide: &Guide) -> Self {
        let lines = guide.lines.iter().flat_map(|line| line.points.iter().copied());
        let ends = guide.labels.iter().flat_map(ends);
        let mut frame = Self { left: i64::MAX, right: i64::MIN, bottom: i64::MAX, top: i64::MIN };
        for point in lines.chain(ends) {
            frame.left = frame.left.min(point.x - ROUND);
            frame.right = frame.right.max(point.x + ROUND);
            frame.bottom = frame.bottom.min(point.y - ROUND);
            frame.top = frame.top.max(point.y + ROUND);
        }
        if frame.left > frame.right { Self { left: 0, right: ROUND, bottom: 0, top: ROUND } } else { frame }
    }

    /// A point from the upper left corner of the drawing.
    fn at(&self, point: Point) -> String {
        format!("{},{}", decimal(point.x - self.left), decimal(self.top - point.y))
    }

    fn path(&self, line: &Line) -> String {
        let mut path = String::new();
        for (number, point) in line.points.iter().enumerate() {
            let _ = write!(path, "{}{}", if number == 0 { "M" } else { " L" }, self.at(*point));
        }
        if line.closed {
            path.push_str(" Z");
        }
        path
    }

    /// The way upward that turned words run along: as long as the words, and more where a reader's face is wider.
    fn way(&self, label: &Label) -> String {
        let half = super::scene::width(&label.text, label.size, label.bold);
        format!("M{} L{}", self.at(label.at.moved(0, -half)), self.at(label.at.moved(0, half)))
    }
}

/// What a label reaches to: the ends of its letters, their heights and depths.
fn ends(label: &Label) -> [Point; 2] {
    let half = super::scene::width(&label.text, label.size, label.bold) / 2;
    let (up, down) = (label.size * 3 / 4, label.size / 4);
    if label.turned {
        [label.at.moved(-up, -half), label.at.moved(down, half)]
    } else {
        [label.at.moved(-half, -down), label.at.moved(half, up)]
    }
}

fn way_id(guide: &Guide, number: usize) -> String {
    format!("way-{}-{}", escaped(&guide.word), number + 1)
}

/// The attributes of a group of lines.
fn strokes(role: Role) -> String {
    let pen = style::guide_pen(role);
    let dash = pen.dash.map_or_else(String::new, |dash| {
        let dash: Vec<String> = dash.iter().map(|length| decimal(*length)).collect();
        format!(" stroke-dasharray=\"{}\"", dash.join(","))
    });
    format!(
        " fill=\"none\" stroke=\"{}\" stroke-width=\"{}\"{dash}",
        pen.stroke.unwrap_or(style::INK),
        decimal(pen.width_nm)
    )
}

fn words(out: &mut String, guide: &Guide, frame: &Frame) {
    let mut turned = 0;
    for label in &guide.labels {
        let weight = if label.bold { "bold" } else { "normal" };
        let text = escaped(&super::scene::with_signs(&label.text));
        let letters = format!(
            "font-family=\"{}, sans-serif\" font-size=\"{}\" font-weight=\"{weight}\" text-anchor=\"middle\" \
             fill=\"{}\" stroke=\"none\"",
            fonts::TEXT,
            decimal(label.size),
            style::INK
        );
        if label.turned {
            let way = way_id(guide, turned);
            turned += 1;
            let _ = writeln!(
                out,
                "<text {letters}><textPath xlink:href=\"#{way}\" startOffset=\"50%\">{text}</textPath></text>"
            );
        } else {
            let at = label.at;
            let (x, y) = (decimal(at.x - frame.left), decimal(frame.top - at.y));
            let _ = writeln!(out, "<text x=\"{x}\" y=\"{y}\" {letters}>{text}</text>");
        }
    }
}

/// Nanometres as millimetres, exactly.
fn decimal(nm: i64) -> String {
    let sign = if nm < 0 { "-" } else { "" };
    let (whole, rest) = (nm.unsigned_abs() / NM_PER_MM.unsigned_abs(), nm.unsigned_abs() % NM_PER_MM.unsigned_abs());
    if rest == 0 {
        return format!("{sign}{whole}");
    }
    format!("{sign}{whole}.{}", format!("{rest:06}").trim_end_matches('0'))
}

/// Text that is no markup; signs that XML 1.0 knows no way to write are left out.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\t' | '\n' | '\r' => out.push(' '),
            '\u{0}'..='\u{1f}' | '\u{fffe}' | '\u{ffff}' => {}
            other => out.push(other),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nanometres_are_exact_millimetres() {
        assert_eq!(
            [0, 1, -1, 25_400_000, 396_875, -12_700_500, 100].map(decimal),
            ["0", "0.000001", "-0.000001", "25.4", "0.396875", "-12.7005", "0.0001"]
        );
    }

    #[test]
    fn words_are_no_markup() {
        assert_eq!(escaped("a<b> & \"c\"\n\u{7}d"), "a&lt;b&gt; &amp; &quot;c&quot; d");
    }
}
