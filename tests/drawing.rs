//! Pictures: what is drawn is what was planned, every word has ink and room, and nothing from a
//! design can leave its place.

mod clear;
mod fixture;
mod generated;
mod grey;
mod outlines;
mod placing;
mod read;
mod reference;
mod settled;

use fixture::{FIRST, SECOND, lantern_row};
use std::sync::LazyLock;
use trimwright::drawing::canvas::text_area;
use trimwright::drawing::figures::Room;
use trimwright::drawing::figures::front::front;
use trimwright::drawing::figures::sheet::sheet;
use trimwright::drawing::figures::small;
use trimwright::drawing::figures::step::step;
use trimwright::drawing::scale::Print;
use trimwright::drawing::scene::{Anchor, At, Item, Lettering, Scene};
use trimwright::drawing::svg::svg;
use trimwright::length::Units;
use trimwright::preview;
use trimwright::project::Project;
use trimwright::words::Words;

/// Every figure of a project, as the pages take them.
pub(crate) fn figures(project: &Project) -> Vec<Scene> {
    let mut scenes = Vec::new();
    for version in project.design.version_ids() {
        let width = if version.0 == 0 { 1056 } else { 743 };
        scenes.extend(front(project, version, Room::tenths_of_mm(width, 960)));
    }
    scenes.extend((0..project.plan.sheets.len()).filter_map(|n| sheet(project, n, Print::NORMAL)));
    scenes.extend((0..project.steps.steps.len()).filter_map(|n| step(project, n, Print::NORMAL)));
    for paper in project.design.paper_ids() {
        scenes.push(small::swatch(project, paper, Room::tenths_of_mm(430, 60)));
        scenes.extend(small::blank_sheet(project, paper));
    }
    scenes.extend(small::blank_card(project, 20, Print::NORMAL));
    scenes.push(small::print_bars(Words::english(), Print::NORMAL));
    scenes.extend([false, true].map(|both| small::legend(Words::english(), both)));
    scenes
}

/// Every text of a scene: lettering, where, text.
pub(crate) fn texts(scene: &Scene) -> Vec<(Lettering, At, Anchor, bool, String)> {
    let each = scene.items.iter().filter_map(|item| match item {
        Item::Text { role, at, anchor, turned, text } => Some((*role, *at, *anchor, *turned, text.clone())),
        _ => None,
    });
    each.collect()
}

/// The demo designs, each in every edition that it asks for; planned once, since that is slow.
static DEMOS: LazyLock<Vec<Project>> = LazyLock::new(|| {
    let text = |name: &str| {
        std::fs::read_to_string(format!("{}/designs/{name}.yaml", env!("CARGO_MANIFEST_DIR"))).expect("a demo design")
    };
    let (lanterns, garden) = (text("lantern-row"), text("kitchen-garden"));
    vec![
        read::project(&lanterns, Units::Inch),
        read::project(&lanterns, Units::Metric),
        read::project(&garden, Units::Metric),
    ]
});

#[test]
fn what_is_drawn_keeps_clear_in_the_demo_designs() {
    for project in DEMOS.iter() {
        clear::check(project);
    }
}

#[test]
fn what_is_drawn_keeps_clear_in_the_hand_made_project() {
    clear::check(&lantern_row());
}

#[test]
fn each_measure_of_the_front_is_given_once() {
    let project = lantern_row();
    let numbers = |version| {
        let scene = front(&project, version, Room::tenths_of_mm(1056, 960)).unwrap();
        let figures = texts(&scene).into_iter().filter(|(role, ..)| *role == Lettering::Figure);
        let mut figures: Vec<String> = figures.map(|(.., text)| text).collect();
        figures.sort();
        figures
    };
    // Card 4 1/4 x 5 1/2; the rail lies 1/8 + 3/4 below the card's top; borders once, in the lens.
    assert_eq!(numbers(FIRST), ["4 1/4", "5 1/2", "7/8", "borders 1/8"]);
    // The second version carries what the first left: the gap between the lanterns.
    assert_eq!(numbers(SECOND), ["1/4"]);
}

#[test]
fn sizes_on_a_diagram_are_as_the_pieces_lie() {
    let project = lantern_row();
    // Plan's third sheet: three panels upright, one lying.
    let scene = sheet(&project, 2, Print::NORMAL).unwrap();
    let count = |size: &str| texts(&scene).iter().filter(|(.., text)| text == size).count();
    assert_eq!((count("3 3/4 × 5"), count("5 × 3 3/4")), (3, 1));
    assert_eq!(count("7 × 5 1/4"), 1, "a leftover's size");
    assert!(scene.alt.contains("cuts 4 to 6 at 3 3/4 from the left edge"), "{}", scene.alt);
    assert!(
        scene.alt.contains("3 of panel (3), 3 3/4 × 5, panel (3), 5 × 3 3/4 and 12 of lantern (4)"),
        "{}",
        scene.alt
    );
}

#[test]
fn a_step_shows_the_numbers_that_its_words_name() {
    let project = lantern_row();
    let numbers = |n: usize| {
        let scene = step(&project, n, Print::NORMAL).unwrap();
        texts(&scene)
            .into_iter()
            .filter(|(role, ..)| *role == Lettering::Figure)
            .map(|(.., text)| text)
            .collect::<Vec<_>>()
    };
    assert_eq!(numbers(0), ["4 1/4"], "the score");
    assert!(step(&project, 1, Print::NORMAL).is_none(), "sorting has no picture");
    assert_eq!(numbers(2), ["1/8"], "the panel's border");
    assert_eq!(numbers(3), ["3/4", "1/4"], "the rail's place, and how far it reaches past");
    assert_eq!(numbers(4), ["1/4"], "the gap of the lanterns");
    let trim = step(&project, 5, Print::NORMAL).unwrap();
    assert!(texts(&trim).iter().any(|(.., text)| text == "trim"));
}

#[test]
fn a_stated_scale_stands_in_its_figure() {
    for scene in figures(&lantern_row()) {
        // Print bars are no drawing of something else.
        let Some(tenths) = scene.scale.filter(|_| scene.name != "print-bars") else { continue };
        let scale = format!("1:{}", tenths / 10);
        assert!(texts(&scene).iter().any(|(.., text)| text.ends_with(&scale)), "{}: {scale}", scene.name);
    }
}

#[test]
fn every_figure_has_a_name_of_its_own_and_tells_what_it_shows() {
    for project in DEMOS.iter() {
        let scenes = figures(project);
        let mut names: Vec<&str> = scenes.iter().map(|scene| scene.name.as_str()).collect();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), scenes.len());
        for scene in &scenes {
            assert!(scene.alt.ends_with('.') && scene.alt.len() > 10, "{}: {}", scene.name, scene.alt);
        }
    }
}

#[test]
fn pictures_repeat_to_the_byte() {
    let (one, other) = (figures(&lantern_row()), figures(&lantern_row()));
    assert_eq!(one, other);
    let front = &one[0];
    assert_eq!(svg(front), svg(&other[0]));
    assert_eq!(preview::png(front, 600).unwrap(), preview::png(&other[0], 600).unwrap());
}

#[test]
fn a_preview_draws_no_image_and_no_absurd_size() {
    let with =
        |inside: &str| format!("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"20\" height=\"20\">{inside}</svg>");
    let blank = preview::svg_png(&with(""), 20).unwrap();
    // A one-pixel PNG inside, and a file outside: neither is opened.
    let inside = "data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";
    for href in [inside, "Cargo.toml", "https://example.com/a.png"] {
        let image = format!("<image width=\"20\" height=\"20\" href=\"{href}\"/>");
        assert_eq!(preview::svg_png(&with(&image), 20).unwrap(), blank, "{href}");
    }
    assert!(preview::svg_png(&with(""), 0).is_err());
    assert!(preview::svg_png(&with(""), 9000).is_err());
    assert!(preview::svg_png("no svg", 20).unwrap_err().contains("not a readable SVG"));
}

#[test]
fn a_designs_words_stay_text() {
    let mut project = lantern_row();
    "</title><script>x</script>&\"'".clone_into(&mut project.design.papers[1].name);
    "<b>".clone_into(&mut project.design.versions[0].name);
    for scene in figures(&project) {
        let text = svg(&scene);
        assert!(!text.contains("<script") && !text.contains("<b>"), "{}", scene.name);
        preview::tree(&text).unwrap();
        assert!(scene.name.chars().all(|c| c.is_ascii_alphanumeric() || c == '-'), "{}", scene.name);
    }
}

#[test]
fn a_fraction_is_composed_of_small_digits_and_can_be_read() {
    let scene = Scene {
        name: "size".to_owned(),
        width: 20_000_000,
        height: 5_000_000,
        scale: None,
        alt: "A size.".to_owned(),
        items: vec![Item::Text {
            role: Lettering::Figure,
            at: At::new(1_000_000, 4_000_000),
            anchor: Anchor::Start,
            turned: false,
            text: "3 3/4 × 5".to_owned(),
        }],
    };
    let text = svg(&scene);
    let golden = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"20mm\" height=\"5mm\" viewBox=\"0 0 20 5\" role=\"img\">\n\
        <title>A size.</title>\n\
        <text xml:space=\"preserve\" font-family=\"Nunito\" font-weight=\"400\" font-kerning=\"none\" font-size=\"3.8806\" \
        fill=\"#1E2A32\"><tspan x=\"1\" y=\"4\">3</tspan><tspan x=\"3.3283\" y=\"4\" font-size=\"1.1642\">\u{2009}</tspan>\
        <tspan x=\"3.5612\" y=\"2.9949\" font-size=\"2.4564\">3</tspan><tspan x=\"5.0358\" y=\"4\">\u{2044}</tspan>\
        <tspan x=\"5.7071\" y=\"4\" font-size=\"2.4564\">4</tspan><tspan x=\"6.879\" y=\"4\"> × </tspan>\
        <tspan x=\"10.9071\" y=\"4\">5</tspan></text>\n</svg>\n";
    assert_eq!(text, golden);
    let area = text_area(Lettering::Figure, At::new(0, 0), Anchor::Start, false, "3 3/4 × 5");
    // 0.6 + 0.06 + 2 x 0.38 + 0.173, then 0.36 + 0.6, then 0.6 em at 11 pt: 3.153 x 11/72 in.
    assert_eq!(area.width(), (3153 * 11 * 25_400_000 + 36_000) / 72_000);
}

#[test]
#[ignore = "writes pictures to a temporary folder, to look at"]
fn look() {
    let by_hand = lantern_row();
    for (n, project) in DEMOS.iter().chain([&by_hand]).enumerate() {
        let folder = std::env::temp_dir().join("look").join(n.to_string());
        std::fs::create_dir_all(&folder).unwrap();
        for scene in figures(project) {
            let pixels = u32::try_from(scene.width / 84_667).unwrap();
            std::fs::write(folder.join(format!("{}.png", scene.name)), preview::png(&scene, pixels).unwrap()).unwrap();
        }
    }
}
