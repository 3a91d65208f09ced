//! Drawings for cutting machines, read by usvg and as XML.

use super::both;
use trimwright::guides::model::{Guide, Role};
use trimwright::truesize;
use usvg::roxmltree::{Document, Node};
use usvg::tiny_skia_path::{PathSegment, Point as Place};
use usvg::{Group, Options, Tree};

fn guides() -> impl Iterator<Item = &'static Guide> {
    both().into_iter().flat_map(|made| made.sheets.iter().flat_map(|sheet| &sheet.guides))
}

/// Millimetres as whole nanometres, none where there is more behind the point than nanometres.
fn nm(decimal: &str) -> Option<i64> {
    let (sign, digits) = decimal.strip_prefix('-').map_or((1, decimal), |digits| (-1, digits));
    let (whole, rest) = digits.split_once('.').unwrap_or((digits, ""));
    (rest.len() <= 6).then_some(())?;
    let rest = format!("{rest:0<6}").parse::<i64>().ok()?;
    Some(sign * (whole.parse::<i64>().ok()? * 1_000_000 + rest))
}

/// The corners of a path as they are written, nm, and whether it is closed.
fn corners(path: &str) -> (Vec<(i64, i64)>, bool) {
    let closed = path.ends_with(" Z");
    let points = path.trim_end_matches(" Z").split(' ').map(|part| {
        let (x, y) = part.trim_start_matches(['M', 'L']).split_once(',').expect("a point");
        (nm(x).expect("nanometres"), nm(y).expect("nanometres"))
    });
    (points.collect(), closed)
}

fn group<'a>(svg: &'a Document<'a>, role: Role) -> Option<Node<'a, 'a>> {
    svg.descendants().find(|node| node.has_tag_name("g") || node.tag_name().name() == "g").and_then(|_| {
        svg.descendants().find(|node| node.tag_name().name() == "g" && node.attribute("id") == Some(role.word()))
    })
}

#[test]
fn numbers_are_the_sheets_to_the_nanometre() {
    for guide in guides() {
        let text = truesize::svg(guide, "en");
        let svg = Document::parse(&text).expect("XML");
        let root = svg.root_element();
        let sides: Vec<&str> = root.attribute("viewBox").expect("a box").split(' ').collect();
        assert_eq!(sides[..2], ["0", "0"]);
        assert_eq!(root.attribute("width"), Some(format!("{}mm", sides[2]).as_str()));
        assert_eq!(root.attribute("height"), Some(format!("{}mm", sides[3]).as_str()));
        // What a point is moved by is the same for all: told by the first corner, and its height is turned over.
        let mut moved = None;
        for role in Role::ALL {
            let lines: Vec<_> = guide.lines.iter().filter(|line| line.role == role).collect();
            let paths: Vec<_> = group(&svg, role)
                .into_iter()
                .flat_map(|group| group.children().filter(|node| node.tag_name().name() == "path"))
                .map(|path| corners(path.attribute("d").expect("a path")))
                .collect();
            assert_eq!(lines.len(), paths.len(), "{role:?}");
            for (line, (points, closed)) in lines.iter().zip(paths) {
                assert_eq!(line.closed, closed);
                assert_eq!(line.points.len(), points.len());
                for (said, (x, y)) in line.points.iter().zip(points) {
                    let by = *moved.get_or_insert((said.x - x, said.y + y));
                    assert_eq!((said.x, said.y), (x + by.0, by.1 - y));
                    assert!(x > 0 && y > 0 && x < nm(sides[2]).unwrap() && y < nm(sides[3]).unwrap());
                }
            }
        }
    }
}

/// Paths of a tree with all that moves them, in the order drawn.
fn paths(group: &Group, found: &mut Vec<Vec<Place>>) {
    for node in group.children() {
        match node {
            usvg::Node::Group(group) => paths(group, found),
            usvg::Node::Path(path) => {
                let moved = path.data().clone().transform(path.abs_transform()).expect("a path");
                let corner = |segment| match segment {
                    PathSegment::MoveTo(point) | PathSegment::LineTo(point) => Some(point),
                    PathSegment::Close => None,
                    other => panic!("{other:?} is no straight line"),
                };
                found.push(moved.segments().filter_map(corner).collect());
            }
            usvg::Node::Image(_) | usvg::Node::Text(_) => {}
        }
    }
}

#[test]
fn a_general_reader_finds_the_shapes_at_true_size() {
    // CSS 2.1: a pixel is 1/96 in. A coordinate of a page has an error of 0.02 micrometres in 32 bits.
    const NM_PER_PIXEL: f64 = 25_400_000.0 / 96.0;
    for guide in guides() {
        let tree = Tree::from_str(&truesize::svg(guide, "en"), &Options::default()).expect("SVG");
        let mut found = Vec::new();
        paths(tree.root(), &mut found);
        let lines: Vec<_> =
            Role::ALL.into_iter().flat_map(|role| guide.lines.iter().filter(move |line| line.role == role)).collect();
        assert_eq!(lines.len(), found.len(), "{}", guide.word);
        let (first, said) = (found[0][0], lines[0].points[0]);
        for (line, places) in lines.iter().zip(&found) {
            assert_eq!(line.points.len(), places.len());
            for (point, place) in line.points.iter().zip(places) {
                let x = f64::from(place.x - first.x) * NM_PER_PIXEL - (point.x - said.x) as f64;
                let y = f64::from(first.y - place.y) * NM_PER_PIXEL - (point.y - said.y) as f64;
                assert!(x.abs() <= 1000.0 && y.abs() <= 1000.0, "{}: {x} {y}", guide.word);
            }
        }
        let wide = guide.lines.iter().flat_map(|line| &line.points).map(|point| point.x);
        let wide = wide.clone().max().unwrap() - wide.min().unwrap();
        let paper = f64::from(tree.size().width()) * NM_PER_PIXEL;
        assert!(paper > wide as f64 && paper < wide as f64 + 40e6, "{paper} for {wide}");
    }
}

#[test]
fn drawings_hold_nothing_that_a_plain_reader_lacks() {
    // Elements and attributes of SVG 1.1 (second edition, W3C 2011), appendices J and K; the few that are used.
    const ELEMENTS: [&str; 8] = ["svg", "title", "desc", "defs", "g", "path", "text", "textPath"];
    const ATTRIBUTES: [&str; 20] = [
        "version",
        "width",
        "height",
        "viewBox",
        "lang",
        "id",
        "d",
        "x",
        "y",
        "fill",
        "stroke",
        "stroke-width",
        "stroke-dasharray",
        "font-family",
        "font-size",
        "font-weight",
        "text-anchor",
        "href",
        "startOffset",
        "xlink",
    ];
    for guide in guides() {
        let text = truesize::svg(guide, "en");
        let svg = Document::parse(&text).expect("XML");
        assert_eq!(svg.root_element().attribute("version"), Some("1.1"));
        for node in svg.descendants().filter(Node::is_element) {
            let name = node.tag_name().name();
            assert!(ELEMENTS.contains(&name), "<{name}>");
            assert_eq!(node.tag_name().namespace(), Some("http://www.w3.org/2000/svg"));
            for attribute in node.attributes() {
                assert!(ATTRIBUTES.contains(&attribute.name()), "{}", attribute.name());
            }
            if name == "text" {
                let groups = node.ancestors().filter(|above| above.tag_name().name() == "g");
                let ids: Vec<_> = groups.filter_map(|group| group.attribute("id")).collect();
                assert_eq!(ids, ["notes"]);
            }
        }
        // Cut through is closed, in a group of its own.
        let cut = group(&svg, Role::Cut).expect("what is cut");
        assert!(
            cut.children().filter(Node::is_element).all(|path| path.attribute("d").is_some_and(|d| d.ends_with('Z')))
        );
        assert!(text.is_ascii() || text.contains('×'), "{text}");
        assert_eq!(truesize::svg(guide, "en"), text);
    }
}

#[test]
fn words_stand_in_the_notes_where_they_were_put() {
    let guide = &both()[0].sheets[0].guides[0];
    let mut options = Options::default();
    for (_, _, bytes) in trimwright::fonts::FACES {
        options.fontdb_mut().load_font_data(bytes.to_vec());
    }
    let tree = Tree::from_str(&truesize::svg(guide, "en"), &options).expect("SVG");
    fn texts(group: &Group, found: &mut Vec<(String, usvg::Rect)>) {
        for node in group.children() {
            match node {
                usvg::Node::Group(group) => texts(group, found),
                usvg::Node::Text(text) => {
                    let words = text.chunks().iter().map(|chunk| chunk.text().to_owned()).collect();
                    found.push((words, text.abs_bounding_box()));
                }
                _ => {}
            }
        }
    }
    let mut found = Vec::new();
    texts(tree.root(), &mut found);
    assert_eq!(found.len(), 2);
    let mut drawn = Vec::new();
    paths(tree.root(), &mut drawn);
    let (corner, said) = (drawn[0][0], guide.lines[0].points[0]);
    for (label, (words, area)) in guide.labels.iter().zip(&found) {
        assert_eq!(words.replace('×', "x"), label.text);
        assert_eq!(area.height() > area.width(), label.turned);
        let pixel = |nm: i64| nm as f32 * 96.0 / 25_400_000.0;
        let (x, y) = (corner.x + pixel(label.at.x - said.x), corner.y - pixel(label.at.y - said.y));
        // The middle along the words is the label's, to half a millimetre.
        let middle = (area.x() + area.width() / 2.0, area.y() + area.height() / 2.0);
        let off = if label.turned { middle.1 - y } else { middle.0 - x };
        assert!(off.abs() < 2.0, "{off}");
    }
}
