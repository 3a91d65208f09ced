//! Outlines from drawings: their form, their size, and drawings that are none.

use crate::support::{root, trimwright};
use core::f64::consts::PI;
use proptest::prelude::*;
use trimwright::design::model::Design;
use trimwright::geometry::{Point, Polygon};
use trimwright::length::Length;
use trimwright::pipeline;
use trimwright::shape::{DRAWN_WIDTH, Drawn, DrawnFault, Form, drawn};
use trimwright::source::Source;

fn svg(inside: &str) -> String {
    format!("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 100\">{inside}</svg>")
}

fn read(inside: &str) -> Result<Drawn, DrawnFault> {
    drawn(svg(inside).as_bytes())
}

/// The area of an outline as a share of the rectangle round it.
fn share(outline: &Drawn) -> f64 {
    let area = Polygon::new(outline.corners.clone()).expect("a simple ring").area2() as f64 / 2.0;
    area / (DRAWN_WIDTH as f64 * outline.height as f64)
}

const LEAF: &str = "<path d=\"M20 0 C36 14 40 36 20 60 C0 36 4 14 20 0 Z\"/>";

#[test]
fn straight_outlines_are_exact() {
    // 40 x 20 and a corner cut off at half of it: hand-worked.
    let cut = read("<polygon points=\"10,30 50,30 50,40 40,50 10,50\"/>").unwrap();
    assert_eq!(cut.height, DRAWN_WIDTH / 2);
    let at = |x, y| Point::new(x * DRAWN_WIDTH / 4, y * DRAWN_WIDTH / 4);
    // Upside down: a drawing counts downward, a card upward.
    let ring = vec![at(0, 0), at(3, 0), at(4, 1), at(4, 2), at(0, 2)];
    assert_eq!(cut.corners, Polygon::new(ring).unwrap().outer());
}

#[test]
fn round_outlines_have_the_area_of_the_handbook() {
    // Geometry handbooks: a circle fills π/4 of its square, an ellipse of its rectangle, a semicircle π/8
    // of the square on its diameter.
    let circle = read("<circle cx=\"50\" cy=\"50\" r=\"30\"/>").unwrap();
    assert!((circle.height - DRAWN_WIDTH).abs() <= 2, "{}", circle.height);
    assert!((share(&circle) - PI / 4.0).abs() < 5e-4, "{}", share(&circle));
    let oval = read("<ellipse cx=\"50\" cy=\"50\" rx=\"40\" ry=\"10\"/>").unwrap();
    assert!((oval.height - DRAWN_WIDTH / 4).abs() <= 2, "{}", oval.height);
    assert!((share(&oval) - PI / 4.0).abs() < 5e-4, "{}", share(&oval));
    let half = read("<path d=\"M10 50 A40 40 0 0 1 90 50 Z\"/>").unwrap();
    assert!((half.height - DRAWN_WIDTH / 2).abs() <= 20, "{}", half.height);
    assert!((share(&half) - PI / 4.0).abs() < 5e-4, "{}", share(&half));
    // Under a parabola lie two thirds of the rectangle round it: Archimedes, Quadrature of the Parabola.
    let arch = read("<path d=\"M0 80 Q50 0 100 80 Z\"/>").unwrap();
    assert!((arch.height - DRAWN_WIDTH * 2 / 5).abs() <= 2, "{}", arch.height);
    assert!((share(&arch) - 2.0 / 3.0).abs() < 1e-4, "{}", share(&arch));
}

/// The share of the rectangle round it that a general renderer paints.
fn painted(text: &str) -> f64 {
    let tree = usvg::Tree::from_str(text, &usvg::Options::default()).expect("a drawing");
    let size = 1000_u32;
    let mut pixels = resvg::tiny_skia::Pixmap::new(size, size).expect("pixels");
    resvg::render(&tree, resvg::tiny_skia::Transform::from_scale(10.0, 10.0), &mut pixels.as_mut());
    let (mut sum, mut left, mut right, mut top, mut bottom) = (0.0, size, 0, size, 0);
    for (at, pixel) in pixels.pixels().iter().enumerate() {
        let at = u32::try_from(at).unwrap();
        let (x, y) = (at % size, at / size);
        if pixel.alpha() > 127 {
            (left, right, top, bottom) = (left.min(x), right.max(x), top.min(y), bottom.max(y));
        }
        sum += f64::from(pixel.alpha()) / 255.0;
    }
    sum / (f64::from(right - left + 1) * f64::from(bottom - top + 1))
}

#[test]
fn an_outline_covers_what_a_renderer_paints() {
    let fir = std::fs::read_to_string(root().join("designs/fir.svg")).unwrap();
    let fir = fir.replace("viewBox=\"0 0 40 44\"", "viewBox=\"0 0 44 44\" width=\"100\" height=\"100\"");
    let leaf = "<g transform=\"translate(20 10) rotate(20) scale(1.2)\">".to_owned() + LEAF + "</g>";
    for text in [fir, svg(&leaf), svg("<path d=\"M50 90 C-20 40 30 0 50 30 C70 0 120 40 50 90 Z\"/>")] {
        let (ours, theirs) = (share(&drawn(text.as_bytes()).unwrap()), painted(&text));
        assert!((ours - theirs).abs() < 6e-3, "{ours} {theirs}: {text}");
    }
}

#[test]
fn place_size_and_paint_do_not_count() {
    let leaf = read(LEAF).unwrap();
    let near = |other: Drawn| {
        assert!((other.height - leaf.height).abs() <= 20, "{} {}", other.height, leaf.height);
        assert!((share(&other) - share(&leaf)).abs() < 1e-5);
    };
    near(read(&format!("<g transform=\"translate(31 7) scale(0.5)\">{LEAF}</g>")).unwrap());
    near(read(&LEAF.replace("<path ", "<path fill=\"none\" stroke=\"red\" stroke-width=\"3\" ")).unwrap());
    near(read(&format!("<title>x</title><defs/><g><g/>{LEAF}</g><path display=\"none\" d=\"M0 0H9V9Z\"/>")).unwrap());
    let outside = svg(LEAF).replace("0 0 100 100", "500 500 1 1");
    near(drawn(outside.as_bytes()).unwrap());
}

#[test]
fn drawings_that_are_no_outline_are_told_apart() {
    let fault = |inside: &str| read(inside).unwrap_err();
    assert_eq!(fault(""), DrawnFault::Paths { count: 0 });
    assert_eq!(fault(&format!("{LEAF}<rect width=\"9\" height=\"9\"/>")), DrawnFault::Paths { count: 2 });
    assert_eq!(fault("<path d=\"M0 0H9V9H0Z M20 0H29V9H20Z\"/>"), DrawnFault::Parts { count: 2 });
    assert!(matches!(fault("<polygon points=\"0,0 40,60 40,0 0,60\"/>"), DrawnFault::Ring(_)));
    assert!(matches!(fault("<path d=\"M0 0 H40\"/>"), DrawnFault::Flat | DrawnFault::Paths { count: 0 }));
    for (name, inside) in [
        ("use", "<use href=\"#a\"/>"),
        ("image", "<image href=\"leaf.png\"/>"),
        ("text", "<text>leaf</text>"),
        ("script", "<script>1</script>"),
        ("foreignObject", "<foreignObject/>"),
    ] {
        assert_eq!(fault(inside), DrawnFault::Element { name: name.to_owned(), line: 1 });
    }
    assert_eq!(drawn(&[0x1f, 0x8b, 8, 0]), Err(DrawnFault::Packed));
    assert_eq!(drawn(&[0xff, 0xfe, 0]), Err(DrawnFault::NotText));
    assert_eq!(drawn(b"<html/>"), Err(DrawnFault::NotSvg));
    assert!(matches!(drawn(b"\x89PNG not at all"), Err(DrawnFault::NotText | DrawnFault::NotXml { .. })));
    assert!(matches!(drawn(b""), Err(DrawnFault::NotXml { .. })));
}

#[test]
fn bombs_end_at_once() {
    // Entities in entities, and far too many elements, corners and digits.
    let mut laughs = "<!DOCTYPE svg [<!ENTITY a0 \"ha\">".to_owned();
    for n in 1..40 {
        laughs += &format!("<!ENTITY a{n} \"{}\">", format!("&a{};", n - 1).repeat(10));
    }
    laughs += "]><svg xmlns=\"http://www.w3.org/2000/svg\"><title>&a39;</title></svg>";
    assert!(matches!(drawn(laughs.as_bytes()), Err(DrawnFault::NotXml { .. })));
    let outside = "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><svg \
                   xmlns=\"http://www.w3.org/2000/svg\"><title>&a;</title></svg>";
    assert!(drawn(outside.as_bytes()).is_err());
    let many = svg(&"<g/>".repeat(100_000));
    assert!(matches!(drawn(many.as_bytes()), Err(DrawnFault::NotXml { .. })));
    let deep = svg(&format!("{}{LEAF}{}", "<g>".repeat(9_000), "</g>".repeat(9_000)));
    let _ = drawn(deep.as_bytes());
    let teeth: String = (0..50_000).map(|n| format!("{},{} ", n, n % 2)).collect();
    assert_eq!(read(&format!("<polygon points=\"{teeth}\"/>")), Err(DrawnFault::TooFine));
    for odd in ["1e38", "NaN", "-1e39", "0.0000001"] {
        let _ = read(&format!("<path d=\"M0 0 L{odd} 0 L{odd} {odd} Z\"/>"));
        let _ = read(&format!("<g transform=\"scale({odd})\">{LEAF}</g>"));
    }
}

fn design(size: &str, more: &str) -> String {
    format!(
        "title: Kite
month: 2026-04
cards: 2
units: inch and metric
card: {{size: 4 1/4 x 5 1/2 in | 105 x 148 mm, fold: side, from: white}}
papers:
  white: {{sheets: 2 of letter}}
  moss: {{sheets: 1 of letter}}
pieces:
  leaf:
    size: {size}
    from: moss
    shape: {{outline: leaf.svg}}
{more}front:
  - {{place: leaf, centre: both ways, glue: liquid}}
"
    )
}

fn settled(text: &str) -> (Vec<Design>, Vec<String>) {
    let source = Source::new("design.yaml", text).with_beside("leaf.svg", Ok(svg(LEAF).into_bytes()));
    let outcome = pipeline::settle(&source, "design", None);
    let codes = outcome.findings().iter().map(|found| found.code.to_owned()).collect();
    (outcome.designs, codes)
}

#[test]
fn the_height_comes_from_the_drawing_up_to_the_ruler() {
    // The leaf is 60 high; as wide as its curve bulges it is just under 40: 1.53 times as high as wide or
    // so. 2 in give 3.06 in, so 3 1/8 in; 50 mm give 76.6, so 77 mm.
    let ratio = read(LEAF).unwrap().height as f64 / DRAWN_WIDTH as f64;
    let (designs, codes) = settled(&design("{width: 2 in | 50 mm}", ""));
    assert!(codes.is_empty(), "{codes:?}");
    let sizes: Vec<_> = designs.iter().map(|design| design.pieces[1].size).collect();
    let up = |width: f64, step: f64| (width * ratio / step).ceil() * step;
    assert_eq!(sizes[0].width, Length::inch(2, 1));
    assert!((sizes[0].height.nm() as f64 / 25_400_000.0 - up(2.0, 1.0 / 16.0)).abs() < 1e-9);
    assert_eq!(sizes[1].width, Length::mm(50));
    assert!((sizes[1].height.nm() as f64 / 1e6 - up(50.0, 1.0)).abs() < 1e-9);
    for design in &designs {
        let made = design.pieces[1].shape.make().unwrap();
        let (bounds, frame) = (made.outline.bounds(), design.pieces[1].shape.frame());
        assert_eq!((bounds.left, bounds.bottom, bounds.right), (frame.left, frame.bottom, frame.right));
        assert!(frame.top - bounds.top >= 0 && frame.top - bounds.top < 1_600_000);
        assert!(matches!(&design.pieces[1].shape.form, Form::Drawn { name, .. } if name == "leaf.svg"));
    }
    // A drawing that comes out on a mark keeps it.
    let exact = svg("<rect width=\"60\" height=\"30\"/>");
    let source = Source::new("design.yaml", design("{width: 2 in | 50 mm}", ""));
    let outcome = pipeline::settle(&source.with_beside("leaf.svg", Ok(exact.into_bytes())), "design", None);
    let heights: Vec<_> = outcome.designs.iter().map(|design| design.pieces[1].size.height).collect();
    assert_eq!(heights, [Length::inch(1, 1), Length::mm(25)]);
}

#[test]
fn other_sizes_lean_on_it_and_it_on_them() {
    let more = "  tag:\n    size: leaf less 1/4 in | 6 mm all round\n    from: moss\n";
    let text = design("{width: half of card}", more)
        .replace("front:\n", "front:\n  - {place: tag, centre: both ways, glue: tape}\n");
    let (designs, codes) = settled(&text);
    assert!(codes.is_empty(), "{codes:?}");
    let [leaf, tag] = [&designs[0].pieces[1], &designs[0].pieces[2]];
    assert_eq!(leaf.size.width, Length::inch(17, 8));
    assert_eq!(tag.size.height, leaf.size.height - Length::inch(1, 2));
}

#[test]
fn a_height_of_its_own_is_refused() {
    for size in
        ["2 x 3 in | 50 x 75 mm", "{width: 2 in | 50 mm, height: 3 in | 75 mm}", "card less 1/8 in | 3 mm all round"]
    {
        let (designs, codes) = settled(&design(size, ""));
        assert!(designs.is_empty() && codes.contains(&"bad-size".to_owned()), "{size}: {codes:?}");
    }
    let missing = design("{width: 2 in | 50 mm}", "").replace("leaf.svg", "fern.svg");
    let (_, codes) = settled(&missing);
    assert_eq!(codes, ["unreadable-drawing"], "one fault, one finding");
}

#[test]
fn a_window_may_have_the_outline_of_a_drawing() {
    let more = "  frame:\n    size: 4 x 5 in | 99 x 130 mm\n    from: moss\n    window: {size: {width: 1 in | 25 mm}, \
                shape: {outline: leaf.svg}, by: die, centre: both ways}\n";
    let text = design("{width: 1/2 in | 12 mm}", more)
        .replace("front:\n", "front:\n  - {place: frame, centre: both ways, glue: tape}\n");
    let (designs, codes) = settled(&text);
    assert!(codes.is_empty(), "{codes:?}");
    let window = &designs[0].pieces[2].shape.windows[0];
    assert_eq!(window.width, Length::inch(1, 1).nm());
    assert_eq!(window.height % Length::inch(1, 16).nm(), 0);
    assert_eq!(designs[0].pieces[2].shape.make().unwrap().outline.holes().len(), 1);
}

#[test]
fn drawings_are_read_from_the_designs_folder_only() {
    let home = tempfile::tempdir().unwrap();
    let folder = home.path().join("month");
    std::fs::create_dir(&folder).unwrap();
    std::fs::write(home.path().join("leaf.svg"), svg(LEAF)).unwrap();
    let check = |name: &str| {
        let text = design("{width: 2 in | 50 mm}", "").replace("leaf.svg", name);
        std::fs::write(folder.join("kite.yaml"), text).unwrap();
        let output = trimwright(&folder, &["check", "kite.yaml"]);
        (output.status.code(), String::from_utf8(output.stderr).unwrap() + &String::from_utf8(output.stdout).unwrap())
    };
    for name in ["../leaf.svg", "leaf.svg", "/etc/passwd", "'..\\leaf.svg'", "'c:leaf.svg'", "''", "."] {
        let (code, said) = check(name);
        assert_eq!(code, Some(1), "{name}: {said}");
        assert!(said.contains("unreadable-drawing") || said.contains("missing"), "{name}: {said}");
    }
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink("../leaf.svg", folder.join("linked.svg")).unwrap();
        let (code, said) = check("linked.svg");
        assert!(code == Some(1) && said.contains("leads out of the design's folder"), "{said}");
    }
    std::fs::create_dir(folder.join("drawings")).unwrap();
    std::fs::write(folder.join("drawings/leaf.svg"), svg(LEAF)).unwrap();
    let (code, said) = check("drawings/leaf.svg");
    assert_eq!(code, Some(0), "{said}");
    std::fs::write(folder.join("large.svg"), svg(&" ".repeat(2 << 20))).unwrap();
    let (code, said) = check("large.svg");
    assert!(code == Some(1) && said.contains("larger than"), "{said}");
    // A new month from another folder takes the drawing along.
    let like = trimwright(
        home.path(),
        &["new", "next", "--like", &root().join("designs/frost-window.yaml").to_string_lossy()],
    );
    assert_eq!(like.status.code(), Some(0));
    assert!(home.path().join("fir.svg").exists());
}

proptest! {
    #![proptest_config(crate::support::cases(256))]

    #[test]
    fn any_path_is_read_or_refused(path in "[MLHVCSQTAZmlhvcsqtaz0-9 .,-]{0,80}") {
        if let Ok(outline) = read(&format!("<path d=\"{path}\"/>")) {
            prop_assert!(outline.height > 0);
            let ring = Polygon::new(outline.corners.clone()).expect("a simple ring");
            prop_assert_eq!(ring.bounds().width(), DRAWN_WIDTH);
        }
    }

    #[test]
    fn any_bytes_are_read_or_refused(bytes in proptest::collection::vec(any::<u8>(), 0..200)) {
        let _ = drawn(&bytes);
    }
}
