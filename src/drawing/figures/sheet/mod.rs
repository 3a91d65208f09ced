//! A cutting diagram: the sheet as it lies, pieces in place, cuts in flags in the order made.
//!
//! Every number comes from the plan's rows and parts.

mod cuts;
mod flags;
mod labels;
mod loose;

use crate::cutting::plan::{Part, SheetPlan, Use};
use crate::design::model::{Pattern, PieceId, PieceKind, TurnedOver, VersionId};
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, put_up, text_area};
use crate::drawing::hatch::hatch_of;
use crate::drawing::scale::{Frame, Print, Scale};
use crate::drawing::scene::{Anchor, At, Item, Lettering, Role, Scene};
use crate::geometry::Rect;
use crate::length::Length;
use crate::project::Project;
use crate::words::figures as words;
use crate::words::roman;
use flags::Ground;
use labels::{Apart, Label, Points, Said, Surroundings, Tag};
pub use loose::loose;

const UM: i64 = 1000;
/// The sheet's left edge in the figure: room for flags. More where a plan has wider flags, but the
/// same in all its diagrams.
pub const LEFT: i64 = 7000 * UM;
/// Right of the widest sheet: room for a flag.
const RIGHT: i64 = 6370 * UM;
/// A diagram is drawn at the first of these at which it is no larger than a 12 in sheet at 1:5.
const SCALES: [u32; 3] = [40, 50, 100];
/// In large print a 12 in sheet at 1:3 is as wide as one at 1:5 is otherwise.
const LARGE_SCALES: [u32; 5] = [25, 30, 40, 50, 100];
const WIDEST: i64 = 60_960 * UM;
/// The width of a page in large print, as it is drawn.
const LARGE_LIVE: i64 = 108_000 * UM;
const HIGHEST: i64 = 90_000 * UM;
/// Clear white round a label in a hatch.
const PLATE: i64 = 800 * UM;

/// The cutting diagram of the plan's sheet `index`; none where there is no such sheet.
#[must_use]
pub fn sheet(project: &Project, index: usize, print: Print) -> Option<Scene> {
    drawn(project, index, print, usual_scale)
}

/// The same at half the usual scale, where many diagrams share a page and sizes stand beside them.
#[must_use]
pub fn small_sheet(project: &Project, index: usize) -> Option<Scene> {
    let mut scene = drawn(project, index, Print::NORMAL, |_, _| 100)?;
    scene.name = format!("small-{}", scene.name);
    Some(scene)
}

fn drawn(project: &Project, index: usize, print: Print, scale_of: fn(Rect, Print) -> u32) -> Option<Scene> {
    let scene = drawn_at(project, index, print, scale_of)?;
    // Where the flags of a crowded sheet reach past the page, it is drawn smaller.
    if print == Print::LARGE && scene.width > LARGE_LIVE {
        let smaller = drawn_at(project, index, print, |whole, print| next_smaller(usual_scale(whole, print)))?;
        return Some(if smaller.width < scene.width { smaller } else { scene });
    }
    Some(scene)
}

fn next_smaller(tenths: u32) -> u32 {
    LARGE_SCALES.into_iter().find(|own| *own > tenths).unwrap_or(tenths)
}

fn drawn_at(project: &Project, index: usize, print: Print, scale_of: fn(Rect, Print) -> u32) -> Option<Scene> {
    let sheet = project.plan.sheets.get(index)?;
    let of = |n: usize, left: i64| Figure::new(project, n, left, print, scale_of);
    let reach = (0..project.plan.sheets.len()).map(|n| of(n, LEFT).flags_reach()).max();
    let left = reach.unwrap_or(0).max(LEFT);
    let mut figure = of(index, left);
    figure.draw();
    figure.caption();
    let alt = alt(project, sheet, index);
    let widest = if figure.tenths == 100 { figure.area.width() } else { WIDEST };
    let column = Area { left: 0, top: figure.area.top, right: left + widest + RIGHT, bottom: figure.area.bottom };
    let tenths = figure.tenths;
    Some(figure.canvas.finish(format!("cutting-{}", index + 1), Some(tenths), alt, column))
}

/// The stated scale of a sheet's diagram.
fn usual_scale(whole: Rect, print: Print) -> u32 {
    if print == Print::LARGE {
        return Scale::choose(&LARGE_SCALES, (whole.width(), whole.height()), (WIDEST, HIGHEST), print);
    }
    // At 1:4 only where that takes no more height than a 12 in sheet does at 1:5.
    let low = Scale::stated(40, print).length(whole.height()) <= 63_500 * UM;
    let choices = if low { &SCALES[..] } else { &SCALES[1..] };
    Scale::choose(choices, (whole.width(), whole.height()), (WIDEST, HIGHEST), print)
}

/// A piece and what stands in it.
struct Labelled {
    area: Area,
    label: Label,
    said: Said,
}

struct Figure<'a> {
    project: &'a Project,
    plan: &'a SheetPlan,
    frame: Frame,
    area: Area,
    index: usize,
    tenths: u32,
    canvas: Canvas,
}

impl<'a> Figure<'a> {
    fn new(project: &'a Project, index: usize, left: i64, print: Print, scale_of: fn(Rect, Print) -> u32) -> Self {
        let plan = &project.plan.sheets[index];
        let whole = Rect::at(0, 0, plan.width.nm(), plan.height.nm());
        let tenths = scale_of(whole, print);
        let frame = Frame::new(Scale::stated(tenths, print), whole, At::new(left, 0));
        Self { project, plan, index, tenths, frame, area: frame.area(whole), canvas: Canvas::new() }
    }

    /// How far left of the sheet its flags reach.
    fn flags_reach(&self) -> i64 {
        let (_, standing) = self.flags(&self.rooms(&self.labelled()).concat());
        standing.iter().map(|flag| self.area.left - flag.area.left).max().unwrap_or(0)
    }

    /// Every piece with its label.
    fn labelled(&self) -> Vec<Labelled> {
        self.plan
            .parts
            .iter()
            .filter_map(|part| match part.r#use {
                Use::Piece { piece, version, .. } => {
                    let (ring, size, area) = (self.ring(piece), self.size(part), self.frame.area(part.rect));
                    let mut said = Said { ring, size, tag: self.tag(piece, version) };
                    Some(Labelled { area, label: labels::label_for(area, &mut said), said })
                }
                _ => None,
            })
            .collect()
    }

    fn rooms(&self, labelled: &[Labelled]) -> Vec<Vec<Area>> {
        labelled.iter().map(|own| labels::room(own.area, own.label, &own.said)).collect()
    }

    /// A kept leftover says its name, a piece that shows the back of the paper says so.
    fn tag(&self, piece: PieceId, version: Option<VersionId>) -> Option<Tag> {
        let say = self.project.words();
        let design = &self.project.design;
        let settled = design.piece(piece);
        if matches!(settled.kind, PieceKind::Kept { .. }) {
            return Some(Tag::Name(vec![settled.name.clone()]));
        }
        let back = design.paper(self.plan.paper).back?;
        // The sheet lies with its front up: turned over like a wall calendar, the back's "up" is
        // its foot.
        let points = match back.turned_over {
            TurnedOver::LeftToRight => Points::Up,
            TurnedOver::TopToBottom => Points::Down,
        };
        let directed = back.pattern != Pattern::Any;
        design
            .shows_back(self.plan.paper, piece, version)
            .then(|| Tag::Back(words::back(say), directed.then_some(points)))
    }

    /// All cuts, and the flags in their places.
    fn flags(&self, rooms: &[Area]) -> (Vec<cuts::Line>, Vec<flags::Standing>) {
        let leftovers = self.parts(|part| *part == Use::Leftover);
        let strips = self.parts(|part| *part == Use::EdgeStrip);
        let wishes: Vec<i64> =
            leftovers.iter().map(|(part, _)| self.leftover_wish(part)).chain(strips.iter().map(|_| 0)).collect();
        let waste: Vec<Area> = leftovers.iter().chain(&strips).map(|(_, area)| *area).collect();
        let pieces: Vec<Area> =
            self.parts(|part| matches!(part, Use::Piece { .. })).into_iter().map(|(_, area)| area).collect();
        let (lines, flagged) = cuts::read(self.plan, self.frame);
        let ground = Ground {
            sheet: self.area,
            waste: &waste,
            wishes: &wishes,
            pieces: &pieces,
            lines: &lines,
            labels: rooms,
            beside: (LEFT, LEFT + WIDEST + RIGHT - self.area.right),
        };
        let standing = flags::place(&flagged, &ground);
        (lines, standing)
    }

    fn parts(&self, wanted: impl Fn(&Use) -> bool) -> Vec<(&'a Part, Area)> {
        self.plan
            .parts
            .iter()
            .filter(|part| wanted(&part.r#use))
            .map(|part| (part, self.frame.area(part.rect)))
            .collect()
    }

    fn ring(&self, piece: PieceId) -> u32 {
        self.project.design.ring(piece)
    }

    fn draw(&mut self) {
        let labelled = self.labelled();
        let rooms = self.rooms(&labelled);
        // No leader passes between a ring and its size.
        let whole_labels: Vec<Area> =
            rooms.iter().filter_map(|rooms| rooms.iter().copied().reduce(Area::hull)).collect();
        let rooms = rooms.concat();
        let (lines, standing) = self.flags(&rooms);

        self.canvas.area(Role::Sheet, self.area);
        let plates = rooms.iter().map(|room| room.grown(PLATE));
        let holes: Vec<Area> = plates.chain(standing.iter().map(|flag| flag.area.grown(400 * UM))).collect();
        let hatch = hatch_of(&self.project.design, self.plan.paper);
        for own in &labelled {
            // The sheet lies "up", and its sign with it, however a piece is turned on it.
            self.canvas.items.extend(hatch.fill(own.area, 0, &holes));
        }
        for (_, area) in self.parts(|part| *part == Use::EdgeStrip) {
            self.canvas.items.push(crossed(area));
        }
        for line in &lines {
            self.canvas.line(Role::Cut, line.from, line.to);
        }
        for own in &labelled {
            labels::put(&mut self.canvas, own.area, own.label, &own.said);
        }
        self.canvas.taken.extend(whole_labels);
        flags::draw(&mut self.canvas, &standing);
        self.put_up();
        let waste: Vec<Area> = self.parts(|part| *part == Use::Leftover).into_iter().map(|(_, area)| area).collect();
        let pieces: Vec<Area> = labelled.iter().map(|own| own.area).collect();
        self.label_leftovers(&waste, &pieces);
        self.label_small(&labelled, &waste, &pieces);
    }

    /// How wide a leftover's label would like to be; nothing for scraps, which have none.
    fn leftover_wish(&self, part: &Part) -> i64 {
        let own = self.project.plan.leftovers().into_iter().find(|left| {
            left.sheet == self.index && left.parts.iter().any(|id| std::ptr::eq(self.plan.part(*id), part))
        });
        match own {
            Some(left) if left.number > 0 => labels::leftover_width(&roman(left.number), &self.size(part)),
            _ => 0,
        }
    }

    fn size(&self, part: &Part) -> String {
        let say = self.project.words();
        let units = self.project.units();
        let size = part.rect.size(self.plan.width.unit());
        words::size(say, &size.numbers(units))
    }

    fn put_up(&mut self) {
        let say = self.project.words();
        if self.project.design.paper(self.plan.paper).pattern != Pattern::OneWay {
            return;
        }
        let height = 14_000 * UM;
        // In the flags' column where that is free, else further left.
        let mut x = self.area.left - LEFT + 3200 * UM;
        let lowest = self.area.bottom + 6000 * UM - height;
        loop {
            // A low sheet is shorter than the arrow, which then reaches past its top.
            let mut top = lowest.min(self.area.top + 4000 * UM);
            while top <= lowest {
                let room = Area::at(x - 3000 * UM, top, 6000 * UM, height);
                if self.canvas.is_free(room, 600 * UM) {
                    put_up(&mut self.canvas, At::new(x, top), &words::up(say));
                    return;
                }
                top += 500 * UM;
            }
            x -= 2000 * UM;
        }
    }

    /// Leftovers with a number; scraps stay blank.
    fn label_leftovers(&mut self, waste: &[Area], pieces: &[Area]) {
        let say = self.project.words();
        for left in self.project.plan.leftovers() {
            if left.sheet != self.index || left.number == 0 {
                continue;
            }
            let units = self.project.units();
            let (numeral, size) = (roman(left.number), words::size(say, &left.size.numbers(units)));
            for part in left.parts {
                let area = self.frame.area(self.plan.part(part).rect);
                if labels::put_leftover(&mut self.canvas, area, &numeral, &size) {
                    continue;
                }
                let with_size = Apart::Leftover(numeral.clone(), Some(size.clone()));
                let sheet = self.area;
                let beside = Surroundings { sheet, waste: &[], pieces, beside: self.beside() };
                if !labels::put_apart(&mut self.canvas, &with_size, &[area], &beside) {
                    let anywhere = Surroundings { sheet, waste, pieces, beside: self.beside() };
                    let alone = Apart::Leftover(numeral.clone(), None);
                    let _ = labels::put_apart(&mut self.canvas, &alone, &[area], &anywhere);
                }
            }
        }
    }

    /// How far left and right a label may reach.
    const fn beside(&self) -> (i64, i64) {
        (self.area.left - LEFT + 500 * UM, self.frame.at.x + WIDEST + RIGHT)
    }

    fn label_small(&mut self, labelled: &[Labelled], waste: &[Area], pieces: &[Area]) {
        let mut groups: Vec<(&Said, Vec<Area>)> = Vec::new();
        for Labelled { area, label, said } in labelled {
            if *label != Label::Leader {
                continue;
            }
            let alike = groups.iter_mut().find(|(other, areas)| *other == said && carries_on(areas, *area));
            match alike {
                Some((_, areas)) => areas.push(*area),
                None => groups.push((said, vec![*area])),
            }
        }
        let mut untold: Vec<Said> = Vec::new();
        for (said, areas) in groups {
            let apart = Apart::Piece(said.clone());
            let around = Surroundings { sheet: self.area, waste, pieces, beside: self.beside() };
            if !labels::put_apart(&mut self.canvas, &apart, &areas, &around) && !untold.contains(said) {
                untold.push(said.clone());
            }
        }
        // No piece is left without a name.
        if !untold.is_empty() {
            labels::put_others(
                &mut self.canvas,
                &words::all_others(self.project.words(), untold.len()),
                &untold,
                (self.area.left, self.area.left + WIDEST + RIGHT),
                self.area.bottom + 2200 * UM,
            );
        }
    }

    /// Under the sheet: what the crossed strip is, and the scale.
    fn caption(&mut self) {
        let say = self.project.words();
        let strip = self.parts(|part| *part == Use::EdgeStrip).first().map(|(part, _)| {
            let width = part.rect.width().min(part.rect.height());
            words::edge_strip(say, &Length::of(width, self.project.units()).number(self.project.units()))
        });
        // Only a fraction needs the larger letters.
        let role = match &strip {
            Some(words) if words.contains('/') => Lettering::Leftover,
            _ => Lettering::Small,
        };
        let scale = words::scale(say, self.tenths);
        let mut baseline = self.area.bottom + 4700 * UM;
        let rooms = |baseline: i64| {
            let right = At::new(self.area.right, baseline);
            let left = At::new(self.area.left, baseline);
            let mut rooms = vec![text_area(Lettering::Small, right, Anchor::End, false, &scale)];
            rooms.extend(strip.as_ref().map(|words| text_area(role, left, Anchor::Start, false, words)));
            rooms
        };
        while rooms(baseline).iter().any(|room| !self.canvas.is_free(*room, 1600 * UM)) {
            baseline += 500 * UM;
        }
        let fits_beside = rooms(baseline).iter().map(|room| room.width()).sum::<i64>() + 1500 * UM <= self.area.width();
        if let Some(words) = &strip {
            self.canvas.text(role, At::new(self.area.left, baseline), Anchor::Start, words);
        }
        if fits_beside {
            self.canvas.text(Lettering::Small, At::new(self.area.right, baseline), Anchor::End, &scale);
        } else {
            self.canvas.text(Lettering::Small, At::new(self.area.left, baseline + 5000 * UM), Anchor::Start, &scale);
        }
    }
}

/// Whether a part carries on a row or a pile of parts alike, so that one leader can meet them all.
fn carries_on(areas: &[Area], area: Area) -> bool {
    // Across their narrow side: a leader along their length would look like a cut.
    let beside = |near: &Area| {
        area.width() <= area.height()
            && near.top == area.top
            && near.bottom == area.bottom
            && (near.right == area.left || area.right == near.left)
    };
    let over = |near: &Area| {
        area.height() <= area.width()
            && near.left == area.left
            && near.right == area.right
            && (near.bottom == area.top || area.bottom == near.top)
    };
    match areas {
        [one] => beside(one) || over(one),
        [first, second, ..] if first.top == second.top => areas.iter().any(beside),
        _ => areas.iter().any(over),
    }
}

/// The crossed edge strip: a row of X's that fills it exactly.
fn crossed(area: Area) -> Item {
    let (long, thick) = (area.width().max(area.height()), area.width().min(area.height()));
    let cells = (long / (2 * thick).max(1)).clamp(1, 60);
    let at = |along: i64, across: i64| {
        if area.width() >= area.height() {
            At::new(area.left + along, area.top + across)
        } else {
            At::new(area.left + across, area.top + along)
        }
    };
    let runs = (0..cells)
        .flat_map(|cell| {
            let (from, to) = (long * cell / cells, long * (cell + 1) / cells);
            [vec![at(from, 0), at(to, thick)], vec![at(from, thick), at(to, 0)]]
        })
        .collect();
    Item::Strokes { role: Role::EdgeStrip, runs }
}

fn alt(project: &Project, sheet: &SheetPlan, index: usize) -> String {
    let say = project.words();
    let (units, design) = (project.units(), &project.design);
    let cuts: Vec<String> = sheet
        .cuts
        .iter()
        .map(|row| words::cuts_told(say, row.n, row.cuts, row.from, &row.measure.number(units)))
        .collect();
    let unit = sheet.width.unit();
    let mut pieces: Vec<(PieceId, bool, String, u32)> = Vec::new();
    for part in &sheet.parts {
        let size = words::size(say, &part.rect.size(unit).numbers(units));
        match part.r#use {
            Use::Piece { piece, version, .. } => {
                let back = design.shows_back(sheet.paper, piece, version);
                let alike = pieces.iter_mut().find(|(other, other_back, other_size, _)| {
                    (*other, *other_back, other_size.as_str()) == (piece, back, size.as_str())
                });
                match alike {
                    Some((.., count)) => *count += 1,
                    None => pieces.push((piece, back, size, 1)),
                }
            }
            Use::Divided | Use::Leftover | Use::EdgeStrip => {}
        }
    }
    let numbered = project.plan.leftovers().into_iter().filter(|left| left.sheet == index && left.number > 0);
    let leftovers: Vec<(u32, String)> =
        numbered.map(|left| (left.number, words::size(say, &left.size.numbers(units)))).collect();
    pieces.sort_by_key(|(piece, back, ..)| (*piece, *back));
    let pieces: Vec<String> = pieces
        .into_iter()
        .map(|(piece, back, size, count)| {
            words::pieces_told(say, count, &design.piece(piece).name, design.ring(piece), &size, back)
        })
        .collect();
    let whole = format!("{} x {} {}", sheet.width.number(units), sheet.height.number(units), units.sign());
    words::sheet(say, &design.paper(sheet.paper).name, &words::size(say, &whole), &cuts, &pieces, &leftovers)
}
