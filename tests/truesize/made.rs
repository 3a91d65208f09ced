//! Sheets made by hand: straight and turned openings, shapes of many corners, every role, words upright and turned.

use trimwright::design::variants::Page;
use trimwright::geometry::Point;
use trimwright::guides::model::{Guide, GuideSheet, Label, Line, Role, ScaleBar};

fn mm(mm: f64) -> i64 {
    (mm * 1e6).round() as i64
}

fn line(role: Role, closed: bool, points: &[(f64, f64)]) -> Line {
    Line { role, points: points.iter().map(|(x, y)| Point::new(mm(*x), mm(*y))).collect(), closed }
}

fn rectangle(role: Role, (x, y): (f64, f64), (width, height): (f64, f64)) -> Line {
    line(role, true, &[(x, y), (x + width, y), (x + width, y + height), (x, y + height)])
}

/// A rectangle turned about its middle; corners fall between the nanometres of a design's grid.
fn turned(role: Role, (x, y): (f64, f64), (width, height): (f64, f64), degrees: f64) -> Line {
    let (sine, cosine) = degrees.to_radians().sin_cos();
    let corner = |(u, v): (f64, f64)| (x + u * cosine - v * sine, y + u * sine + v * cosine);
    let (u, v) = (width / 2.0, height / 2.0);
    line(role, true, &[(-u, -v), (u, -v), (u, v), (-u, v)].map(corner))
}

fn label(text: &str, (x, y): (f64, f64), turned: bool, bold: bool) -> Label {
    Label { text: text.to_owned(), at: Point::new(mm(x), mm(y)), size: 3_880_556, turned, bold }
}

fn guide(word: &str, title: &str, alt: &str, lines: Vec<Line>, labels: Vec<Label>) -> Guide {
    Guide { word: word.to_owned(), title: title.to_owned(), alt: alt.to_owned(), lines, labels }
}

fn bars() -> Vec<ScaleBar> {
    let label = |length| if length == 50_800_000 { "2 in" } else { "5 cm" }.to_owned();
    GuideSheet::BARS.iter().map(|(at, length)| ScaleBar { at: *at, length: *length, label: label(*length) }).collect()
}

/// A blossom with many corners, as a template has them.
fn blossom((x, y): (f64, f64)) -> Line {
    let corner = |n: usize| {
        let angle = n as f64 * std::f64::consts::TAU / 240.0;
        let reach = 22.0 + 6.0 * (5.0 * angle).cos();
        (x + reach * angle.cos(), y + reach * angle.sin())
    };
    line(Role::Cut, true, &(0..240).map(corner).collect::<Vec<_>>())
}

/// Two pages.
pub(crate) fn sheets(page: Page) -> Vec<GuideSheet> {
    let (_, high) = GuideSheet::room(page);
    let top = high.y as f64 / 1e6;
    let frame = guide(
        "frame-panel",
        "Placing frame for the panel",
        "A frame of 4 1/4 x 5 1/2 in with an opening of 3 3/4 x 5 in.",
        vec![
            rectangle(Role::Cut, (13.0, 50.123_456), (107.95, 139.7)),
            rectangle(Role::Cut, (19.35, 56.473_457), (95.25, 127.0)),
            line(Role::Note, false, &[(60.0, 185.0), (60.0, 188.5)]),
            line(Role::Note, false, &[(59.0, 187.5), (60.0, 188.5), (61.0, 187.5)]),
        ],
        vec![label("top", (66.0, 185.2), false, true), label("4 1/4 x 5 1/2 in", (118.9, 120.0), true, false)],
    );
    let bow = guide(
        "frame-bow",
        "Placing frame for the bow",
        "A frame of 70 x 90 mm with an opening of 40 x 25 mm, turned by 7.5 degrees.",
        vec![
            rectangle(Role::Cut, (124.0, 50.000_001), (70.0, 90.0)),
            turned(Role::Cut, (159.123_457, 95.987_654), (40.0, 25.0), 7.5),
            rectangle(Role::Draw, (139.0, 65.0), (40.0, 8.0)),
        ],
        vec![label("bow", (159.0, 130.0), false, true)],
    );
    let scores = guide(
        "scores",
        "Where the base is scored",
        "A strip of 60 x 30 mm with a score at 30 mm and a fold at 45 mm.",
        vec![
            rectangle(Role::Cut, (130.0, 150.0), (60.0, 30.0)),
            line(Role::Score, false, &[(160.0, 150.0), (160.0, 180.0)]),
            line(Role::Fold, false, &[(175.0, 150.0), (175.0, 180.0)]),
        ],
        vec![label("score", (150.0, 163.0), false, false)],
    );
    let blossom = guide(
        "template-blossom",
        "Template for the blossom & <more>",
        "A blossom with 5 petals, 56 mm across.",
        vec![blossom((60.0, 100.0)), rectangle(Role::Cut, (55.0, 96.0), (11.000_003, 7.0))],
        vec![label("blossom & co", (60.0, 86.0), false, false)],
    );
    let wide = guide(
        "frame-whole",
        "A frame of the whole width",
        "A frame as wide as the page leaves room, with an arm of 5 mm.",
        vec![
            rectangle(Role::Cut, (12.7, top - 60.0), (high.x as f64 / 1e6 - 12.7, 60.0)),
            rectangle(Role::Cut, (17.7, top - 55.0), (high.x as f64 / 1e6 - 22.7, 50.0)),
        ],
        Vec::new(),
    );
    let page = |number, guides| GuideSheet {
        page,
        number,
        of: 2,
        heading: "Placing frames and more".to_owned(),
        sentences: vec![
            "Lay a frame with its printed side up, all edges level with the piece below it.".to_owned(),
            "What says “mirrored” is cut from the back of the paper, 3 1/2 in at the most.".to_owned(),
        ],
        guides,
        bars: bars(),
    };
    vec![page(1, vec![frame, bow, scores]), page(2, vec![blossom, wide])]
}
