//! Small figures: swatches, outlines to colour, sheets to paste on, print bars, the legend.

use super::front::size_text;
use super::layers;
use super::view::{Ground, View};
use super::{Room, id};
use crate::design::model::{LayerId, PaperId, Pattern};
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, put_up};
use crate::drawing::hatch::hatch_of;
use crate::drawing::scale::{Frame, Print, Scale};
use crate::drawing::scene::{Anchor, At, Lettering, Role, Scene};
use crate::drawing::text;
use crate::geometry::Rect;
use crate::project::Project;
use crate::words::{Words, figures as words};

const UM: i64 = 1000;

/// A hatched swatch of a paper, `room` in all.
#[must_use]
pub fn swatch(project: &Project, paper: PaperId, room: Room) -> Scene {
    let say = project.words();
    let mut canvas = Canvas::new();
    // The outline's outer edge is the room's.
    let area = Area::at(0, 0, room.width, room.height).grown(-125 * UM);
    canvas.area(Role::Sheet, area);
    canvas.items.extend(hatch_of(&project.design, paper).fill(area, 0, &[]));
    let name = &project.design.paper(paper).name;
    let items = canvas.items;
    Scene {
        name: format!("swatch-{}-{}x{}", id(name), room.width / 10_000, room.height / 10_000),
        width: room.width,
        height: room.height,
        scale: None,
        alt: words::swatch(say, name),
        items,
    }
}

/// The finished card in outlines only, to colour or paste on, at `1:tenths/10`; none where there is
/// no card.
#[must_use]
pub fn blank_card(project: &Project, tenths: u32, print: Print) -> Option<Scene> {
    let say = project.words();
    let card = project.layout.card?;
    let face = Rect::of(card);
    let frame = Frame::new(Scale::stated(tenths, print), face, At::new(0, 0));
    let mut canvas = Canvas::new();
    canvas.area(Role::Outline, frame.area(face));
    let all: Vec<LayerId> = project.design.layer_ids().collect();
    let ground = Ground::of(project, View::Front)?;
    for copy in layers::copies(project, &ground, &all, |_| true) {
        copy.outline(frame).draw(&mut canvas, Role::Outline);
    }
    let area = frame.area(face);
    let scale = words::scale(say, tenths);
    let baseline = area.bottom + 1800 * UM + text::cap_height(Lettering::Small);
    canvas.text(Lettering::Small, At::new(area.left, baseline), Anchor::Start, &scale);
    let alt = words::blank_card(say, &size_text(project, card));
    Some(canvas.finish(format!("blank-card-{tenths}"), Some(tenths), alt, area))
}

/// An outline of a paper's first sheet at 1:10 with its size, and "up" beside one-way paper.
#[must_use]
pub fn blank_sheet(project: &Project, paper: PaperId) -> Option<Scene> {
    let say = project.words();
    let design = &project.design;
    let own = design.paper(paper);
    let size = own.sheets.first()?.size;
    let frame = Frame::new(Scale::stated(100, Print::NORMAL), Rect::of(size), At::new(0, 0));
    let area = frame.area(Rect::of(size));
    let mut canvas = Canvas::new();
    canvas.area(Role::Outline, area);
    let numbers = words::size(say, &size.numbers(project.units()));
    let fits = text::width(Lettering::Leftover, &numbers) + 1500 * UM <= area.width();
    let baseline = area.middle().y + text::cap_height(Lettering::Leftover) / 2;
    if fits {
        canvas.text(Lettering::Leftover, At::new(area.middle().x, baseline), Anchor::Middle, &numbers);
    } else {
        let under = area.bottom + 1800 * UM + text::cap_height(Lettering::Leftover);
        canvas.text(Lettering::Leftover, At::new(area.left, under), Anchor::Start, &numbers);
    }
    if own.pattern == Pattern::OneWay {
        put_up(&mut canvas, At::new(area.right + 4000 * UM, area.top + 1000 * UM), &words::up(say));
    }
    let scale = words::bare_scale(say, 100);
    canvas.text(Lettering::Small, At::new(area.right + 1500 * UM, area.bottom), Anchor::Start, &scale);
    let alt = words::blank_sheet(say, &own.name, &size_text(project, size));
    Some(canvas.finish(format!("blank-sheet-{}", id(&own.name)), Some(100), alt, area))
}

/// A bar of 5 cm and one of 2 in at true size, to check a print with a ruler.
#[must_use]
pub fn print_bars(say: &Words, print: Print) -> Scene {
    let mut canvas = Canvas::new();
    let tall = 4400 * UM;
    let mut bar = |top: i64, step: i64, steps: i64, is_long: &dyn Fn(i64) -> bool, word: &str| {
        let middle = top + tall / 2;
        let long = step * steps;
        let long = print.drawn(long);
        canvas.line(Role::Bar, At::new(0, middle), At::new(long, middle));
        for n in 0..=steps {
            let half = if n == 0 || n == steps || is_long(n) { tall / 2 } else { tall / 4 };
            let x = print.drawn(step * n);
            canvas.line(Role::Bar, At::new(x, middle - half), At::new(x, middle + half));
        }
        let baseline = middle + text::cap_height(Lettering::Figure) / 2;
        canvas.text(Lettering::Figure, At::new(long + 3000 * UM, baseline), Anchor::Start, word);
    };
    bar(0, 10_000 * UM, 5, &|_| false, &words::centimetres(say));
    bar(9500 * UM, 6350 * UM, 8, &|n| n % 4 == 0, &words::inches(say));
    let frame = Area::at(0, 0, 50_800 * UM, 9500 * UM + tall);
    canvas.finish("print-bars".to_owned(), Some(10), words::print_bars(say), frame)
}

/// The legend of lines: what a cut and what a score and fold look like; where folds go both ways, a mountain
/// and a valley.
#[must_use]
pub fn legend(say: &Words, both_ways: bool) -> Scene {
    let mut canvas = Canvas::new();
    let (long, gap) = (12_000 * UM, 2500 * UM);
    let cap = text::cap_height(Lettering::Small);
    let folds = if both_ways {
        vec![(Role::Fold, words::score_and_fold_mountain(say)), (Role::Valley, words::score_and_fold_valley(say))]
    } else {
        vec![(Role::Fold, words::score_and_fold(say))]
    };
    let (mut x, mut y) = (0, 0);
    for (role, word) in [(Role::Cut, words::cut(say))].into_iter().chain(folds) {
        canvas.line(role, At::new(x, y), At::new(x + long, y));
        let area = canvas.text(Lettering::Small, At::new(x + long + gap, y + cap / 2), Anchor::Start, &word);
        // Three are too wide for a row of their column.
        if both_ways { y += 5500 * UM } else { x = area.right + 6000 * UM }
    }
    let name = if both_ways { "legend-both-ways" } else { "legend" };
    canvas.finish(name.to_owned(), None, words::legend(say, both_ways), Area::at(0, 0, 1, 1))
}
