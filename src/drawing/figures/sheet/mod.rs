//! A cutting diagram: the sheet as it lies, pieces in place, cuts in flags in the order made.
//!
//! Every number comes from the plan's rows and parts.

mod cuts;
mod flags;
mod labels;

use crate::cutting::plan::{Part, SheetPlan, Use};
use crate::design::model::{Pattern, PieceId};
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, put_up, text_area};
use crate::drawing::hatch::hatch_of;
use crate::drawing::scale::{Frame, Scale};
use crate::drawing::scene::{Anchor, At, Item, Lettering, Role, Scene};
use crate::geometry::Rect;
use crate::length::Length;
use crate::project::Project;
use crate::words::english::figures as words;
use crate::words::roman;
use flags::Ground;
use labels::{Apart, Label};

const UM: i64 = 1000;
/// The sheet's left edge in the figure: room for flags.
pub const LEFT: i64 = 7000 * UM;
/// The column's width: five of twelve.
pub const COLUMN: i64 = 74_330 * UM;
/// A diagram is drawn at the first of these at which it is no larger than a 12 in sheet at 1:5.
const SCALES: [u32; 3] = [40, 50, 100];
const WIDEST: i64 = 60_960 * UM;
const HIGHEST: i64 = 90_000 * UM;
/// Clear white round a label in a hatch.
const PLATE: i64 = 800 * UM;

/// The cutting diagram of the plan's sheet `index`; none where there is no such sheet.
#[must_use]
pub fn sheet(project: &Project, index: usize) -> Option<Scene> {
    let sheet = project.plan.sheets.get(index)?;
    let whole = Rect::at(0, 0, sheet.width.nm(), sheet.height.nm());
    // At 1:4 only where that takes no more height than a 12 in sheet does at 1:5.
    let tenths = if Scale::stated(40).length(whole.height()) <= 63_500 * UM {
        Scale::choose(&SCALES, whole.width(), whole.height(), WIDEST, HIGHEST)
    } else {
        Scale::choose(&SCALES[1..], whole.width(), whole.height(), WIDEST, HIGHEST)
    };
    let frame = Frame::new(Scale::stated(tenths), whole, At::new(LEFT, 0));
    let mut figure = Figure::new(project, sheet, index, frame);
    figure.draw();
    figure.caption(tenths);
    let alt = alt(project, sheet, index);
    let area = frame.area(whole);
    let column = Area { left: 0, top: area.top, right: COLUMN, bottom: area.bottom };
    Some(figure.canvas.finish(format!("cutting-{}", index + 1), Some(tenths), alt, column))
}

struct Figure<'a> {
    project: &'a Project,
    plan: &'a SheetPlan,
    frame: Frame,
    area: Area,
    /// Number of the first leftover of this sheet.
    first_leftover: u32,
    canvas: Canvas,
}

impl<'a> Figure<'a> {
    fn new(project: &'a Project, plan: &'a SheetPlan, index: usize, frame: Frame) -> Self {
        let whole = Rect::at(0, 0, plan.width.nm(), plan.height.nm());
        let first_leftover = first_leftover(project, index);
        Self { project, plan, frame, area: frame.area(whole), first_leftover, canvas: Canvas::new() }
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
        let pieces = self.parts(|part| matches!(part, Use::Piece { .. }));
        let leftovers = self.parts(|part| *part == Use::Leftover);
        let strips = self.parts(|part| *part == Use::EdgeStrip);
        let waste: Vec<Area> = leftovers.iter().map(|(_, area)| *area).collect();
        let numbered = (self.first_leftover..).zip(&leftovers);
        let wishes: Vec<i64> =
            numbered.map(|(number, (part, _))| labels::leftover_width(&roman(number), &self.size(part))).collect();

        let labelled: Vec<(&Part, Area, Label, u32, String)> = pieces
            .iter()
            .filter_map(|(part, area)| match part.r#use {
                Use::Piece { piece, .. } => {
                    let ring = self.ring(piece);
                    let size = self.size(part);
                    Some((*part, *area, labels::label_for(*area, ring, &size), ring, size))
                }
                _ => None,
            })
            .collect();
        let rooms: Vec<Vec<Area>> =
            labelled.iter().map(|(_, area, label, ring, size)| labels::room(*area, *label, *ring, size)).collect();
        // No leader passes between a ring and its size.
        let whole_labels: Vec<Area> =
            rooms.iter().filter_map(|rooms| rooms.iter().copied().reduce(Area::hull)).collect();
        let rooms = rooms.concat();

        let (lines, flagged) = cuts::read(self.plan, self.frame);
        let piece_areas: Vec<Area> = pieces.iter().map(|(_, area)| *area).collect();
        let standing = flags::place(
            &flagged,
            &Ground {
                sheet: self.area,
                waste: &waste,
                wishes: &wishes,
                pieces: &piece_areas,
                lines: &lines,
                labels: &rooms,
                beside: (LEFT, COLUMN - self.area.right),
            },
        );

        self.canvas.area(Role::Sheet, self.area);
        let holes: Vec<Area> = rooms
            .iter()
            .map(|room| room.grown(PLATE))
            .chain(standing.iter().map(|flag| flag.area.grown(400 * UM)))
            .collect();
        for (part, area) in &pieces {
            self.hatch(part, *area, &holes);
        }
        for (_, area) in &strips {
            self.canvas.items.push(crossed(*area));
        }
        for line in &lines {
            self.canvas.line(Role::Cut, line.from, line.to);
        }
        for (_, area, label, ring, size) in &labelled {
            labels::put(&mut self.canvas, *area, *label, *ring, size);
        }
        self.canvas.taken.extend(whole_labels);
        flags::draw(&mut self.canvas, &standing);
        self.put_up();
        self.label_leftovers(&leftovers, &waste);
        self.label_small(&labelled, &waste);
    }

    fn size(&self, part: &Part) -> String {
        let units = self.project.units();
        let size = part.rect.size(self.plan.width.unit());
        words::size(&size.numbers(units))
    }

    fn hatch(&mut self, part: &Part, area: Area, holes: &[Area]) {
        if let Use::Piece { .. } = part.r#use {
            // The sheet lies "up", and its sign with it, however a piece is turned on it.
            let items = hatch_of(&self.project.design, self.plan.paper).fill(area, 0, holes);
            self.canvas.items.extend(items);
        }
    }

    fn put_up(&mut self) {
        if self.project.design.paper(self.plan.paper).pattern != Pattern::OneWay {
            return;
        }
        let height = 14_000 * UM;
        let mut top = self.area.top + 4000 * UM;
        let x = LEFT / 2 - 300 * UM;
        while top + height <= self.area.bottom {
            let room = Area::at(x - 3000 * UM, top, 6000 * UM, height);
            if self.canvas.is_free(room, 600 * UM) {
                put_up(&mut self.canvas, At::new(x, top), words::up());
                return;
            }
            top += 500 * UM;
        }
        put_up(&mut self.canvas, At::new(-4000 * UM, self.area.top + 4000 * UM), words::up());
    }

    fn label_leftovers(&mut self, leftovers: &[(&Part, Area)], waste: &[Area]) {
        let mut apart: Vec<(Vec<String>, String, Vec<Area>)> = Vec::new();
        for (number, (part, area)) in (self.first_leftover..).zip(leftovers) {
            let (numeral, size) = (roman(number), self.size(part));
            if labels::put_leftover(&mut self.canvas, *area, &numeral, &size) {
                continue;
            }
            // Neighbours alike share one leader.
            match apart.iter_mut().find(|(_, other, areas)| *other == size && are_neighbours(areas, *area)) {
                Some((numerals, _, areas)) => {
                    numerals.push(numeral);
                    areas.push(*area);
                }
                None => apart.push((vec![numeral], size, vec![*area])),
            }
        }
        for (numerals, size, areas) in apart {
            let numerals = numerals.join(", ");
            let with_size = Apart::Leftover(numerals.clone(), Some(size));
            if !labels::put_apart(&mut self.canvas, &with_size, &areas, self.area, &[], COLUMN) {
                let alone = Apart::Leftover(numerals, None);
                let _ = labels::put_apart(&mut self.canvas, &alone, &areas, self.area, waste, COLUMN);
            }
        }
    }

    fn label_small(&mut self, labelled: &[(&Part, Area, Label, u32, String)], waste: &[Area]) {
        let mut groups: Vec<(u32, String, Vec<Area>)> = Vec::new();
        for (_, area, label, ring, size) in labelled {
            if *label != Label::Leader {
                continue;
            }
            let alike = groups
                .iter_mut()
                .find(|(other, other_size, areas)| other == ring && other_size == size && are_neighbours(areas, *area));
            match alike {
                Some((.., areas)) => areas.push(*area),
                None => groups.push((*ring, size.clone(), vec![*area])),
            }
        }
        for (ring, size, areas) in groups {
            let apart = Apart::Piece(ring, size);
            let _ = labels::put_apart(&mut self.canvas, &apart, &areas, self.area, waste, COLUMN);
        }
    }

    /// Under the sheet: what the crossed strip is, and the scale.
    fn caption(&mut self, tenths: u32) {
        let strip = self.parts(|part| *part == Use::EdgeStrip).first().map(|(part, _)| {
            let width = part.rect.width().min(part.rect.height());
            words::edge_strip(&Length::of(width, self.project.units()).number(self.project.units()))
        });
        let scale = words::scale(tenths);
        let mut baseline = self.area.bottom + 4700 * UM;
        let rooms = |baseline: i64| {
            let right = At::new(self.area.right, baseline);
            let left = At::new(self.area.left, baseline);
            let mut rooms = vec![text_area(Lettering::Small, right, Anchor::End, false, &scale)];
            rooms.extend(strip.as_ref().map(|words| text_area(Lettering::Leftover, left, Anchor::Start, false, words)));
            rooms
        };
        while rooms(baseline).iter().any(|room| !self.canvas.is_free(*room, 800 * UM)) {
            baseline += 500 * UM;
        }
        let fits_beside = rooms(baseline).iter().map(|room| room.width()).sum::<i64>() + 1500 * UM <= self.area.width();
        if let Some(words) = &strip {
            self.canvas.text(Lettering::Leftover, At::new(self.area.left, baseline), Anchor::Start, words);
        }
        if fits_beside {
            self.canvas.text(Lettering::Small, At::new(self.area.right, baseline), Anchor::End, &scale);
        } else {
            self.canvas.text(Lettering::Small, At::new(self.area.left, baseline + 5000 * UM), Anchor::Start, &scale);
        }
    }
}

/// Whether a part lies side by side with one of `areas`, so that one leader can meet both.
fn are_neighbours(areas: &[Area], area: Area) -> bool {
    areas.iter().any(|near| {
        let beside = near.top == area.top && near.bottom == area.bottom;
        let over = near.left == area.left && near.right == area.right && area.height() < 4000 * UM;
        (beside && (near.right == area.left || area.right == near.left))
            || (over && (near.bottom == area.top || area.bottom == near.top))
    })
}

/// The number of a sheet's first leftover: one series for the whole plan.
fn first_leftover(project: &Project, index: usize) -> u32 {
    let before = project.plan.sheets[..index].iter().flat_map(|sheet| &sheet.parts);
    1 + u32::try_from(before.filter(|part| part.r#use == Use::Leftover).count()).unwrap_or(0)
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
    let (units, design) = (project.units(), &project.design);
    let cuts: Vec<String> = sheet
        .cuts
        .iter()
        .map(|row| words::cuts_told(row.n, row.cuts, row.from.word(), &row.measure.number(units)))
        .collect();
    let unit = sheet.width.unit();
    let mut pieces: Vec<(PieceId, String, u32)> = Vec::new();
    let mut leftovers = Vec::new();
    let mut number = first_leftover(project, index);
    for part in &sheet.parts {
        let size = words::size(&part.rect.size(unit).numbers(units));
        match part.r#use {
            Use::Piece { piece, .. } => {
                match pieces.iter_mut().find(|(other, other_size, _)| *other == piece && *other_size == size) {
                    Some((.., count)) => *count += 1,
                    None => pieces.push((piece, size, 1)),
                }
            }
            Use::Leftover => {
                leftovers.push((number, size));
                number += 1;
            }
            Use::Divided | Use::EdgeStrip => {}
        }
    }
    pieces.sort_by_key(|(piece, ..)| *piece);
    let pieces: Vec<String> = pieces
        .into_iter()
        .map(|(piece, size, count)| words::pieces_told(count, &design.piece(piece).name, design.ring(piece), &size))
        .collect();
    let whole = format!("{} x {} {}", sheet.width.number(units), sheet.height.number(units), units.sign());
    words::sheet(&design.paper(sheet.paper).name, &words::size(&whole), &cuts, &pieces, &leftovers)
}
