//! A small picture of every part that comes loose and is cut further, as it is held: its own cuts, what they give,
//! and its "up".

use super::cuts;
use super::flags::{self, Ground};
use super::labels::{self, Label, Said, Surroundings};
use crate::cutting::plan::{CutRow, PartId, SheetPlan, Use};
use crate::design::model::Pattern;
use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, put_up};
use crate::drawing::scale::{Frame, Print, Scale};
use crate::drawing::scene::{Anchor, At, Lettering, Role, Scene};
use crate::drawing::text;
use crate::geometry::Rect;
use crate::project::Project;
use crate::words::figures as words;
use crate::words::roman;

const UM: i64 = 1000;
/// One scale for all of them, so that they are told apart by their size; larger in large print, whose labels take
/// more room.
const fn scale_of(print: Print) -> u32 {
    if print.tenths() > Print::NORMAL.tenths() { 50 } else { 100 }
}
/// Flags may reach so far past a part.
const BESIDE: i64 = 9000 * UM;

/// Parts alike: of one size, with the same cuts at the same places.
struct Alike {
    /// The first of them.
    part: PartId,
    count: usize,
    /// The cuts of the first one, as they are numbered on it; each with the numbers of all parts alike.
    cuts: Vec<(u32, Vec<u32>)>,
    /// The same part as a sheet of its own.
    own: SheetPlan,
}

/// The pictures of a sheet's loose parts in the order that they are cut; parts that are cut alike share one. The
/// sheet itself is none, nor what remains of it without its edge strip.
#[must_use]
pub fn loose(project: &Project, index: usize, print: Print) -> Vec<Scene> {
    let Some(sheet) = project.plan.sheets.get(index) else { return Vec::new() };
    let alike = alike(sheet);
    alike.iter().enumerate().map(|(n, own)| draw(project, index, n, own, print)).collect()
}

/// Whether a part is the sheet, or the sheet without its edge strip.
fn is_sheet(sheet: &SheetPlan, id: PartId) -> bool {
    let Some(parent) = sheet.part(id).parent else { return true };
    parent == PartId(0) && sheet.children(PartId(0)).any(|child| sheet.part(child).r#use == Use::EdgeStrip)
}

/// Every part that one row or more divide, with each of its cuts.
fn alike(sheet: &SheetPlan) -> Vec<Alike> {
    let mut found: Vec<Alike> = Vec::new();
    for row in &sheet.cuts {
        let mut number = row.n;
        for part in &row.parts {
            let gives: Vec<PartId> =
                row.gives.iter().copied().filter(|id| sheet.part(*id).parent == Some(*part)).collect();
            let count = u32::try_from(gives.len().saturating_sub(1)).unwrap_or(0);
            if !is_sheet(sheet, *part) && count > 0 {
                let numbers: Vec<u32> = (number..number + count).collect();
                let own = own_sheet(sheet, row, *part, number, count, &gives);
                match found.iter_mut().find(|other| is_alike(&other.own, &own)) {
                    Some(other) => {
                        other.count += 1;
                        for ((_, all), number) in other.cuts.iter_mut().zip(numbers) {
                            all.push(number);
                        }
                    }
                    None => {
                        let cuts = numbers.into_iter().map(|number| (number, vec![number])).collect();
                        found.push(Alike { part: *part, count: 1, cuts, own });
                    }
                }
            }
            number += count;
        }
    }
    found
}

fn is_alike(one: &SheetPlan, other: &SheetPlan) -> bool {
    let row = |sheet: &SheetPlan| sheet.cuts.first().map(|row| (row.from, row.measure));
    // Which leftover it is does not matter, nor which version a piece was cut for.
    let uses = |sheet: &SheetPlan| -> Vec<(Rect, Use)> {
        let plain = |own: Use| match own {
            Use::Piece { piece, quarter_turns, .. } => Use::Piece { piece, version: None, quarter_turns },
            other => other,
        };
        sheet.parts.iter().map(|part| (part.rect, plain(part.r#use))).collect()
    };
    (one.width, one.height, row(one)) == (other.width, other.height, row(other)) && uses(one) == uses(other)
}

/// A part with the cuts of one row as a sheet of its own.
fn own_sheet(sheet: &SheetPlan, row: &CutRow, id: PartId, n: u32, cuts: u32, gives: &[PartId]) -> SheetPlan {
    let whole = sheet.part(id).rect;
    let mut own = sheet.clone();
    let size = whole.size(sheet.width.unit());
    (own.width, own.height) = (size.width, size.height);
    let all = std::iter::once(&id).chain(gives);
    own.parts = all
        .map(|part| {
            let mut part = sheet.part(*part).clone();
            part.parent = part.parent.filter(|parent| *parent == id).map(|_| PartId(0));
            part.rect = part.rect.moved(-whole.left, -whole.bottom);
            part
        })
        .collect();
    own.cuts =
        vec![CutRow { n, parts: vec![PartId(0)], cuts, gives: (1..=gives.len()).map(PartId).collect(), ..row.clone() }];
    own
}

fn draw(project: &Project, index: usize, n: usize, alike: &Alike, print: Print) -> Scene {
    let say = project.words();
    let (plan, units) = (&alike.own, project.units());
    let whole = Rect::at(0, 0, plan.width.nm(), plan.height.nm());
    let tenths = scale_of(print);
    let frame = Frame::new(Scale::stated(tenths, print), whole, At::new(0, 0));
    let area = frame.area(whole);
    let (lines, mut flagged) = cuts::read(plan, frame);
    for flag in &mut flagged {
        let own = |number: &u32| alike.cuts.iter().find(|(own, _)| own == number).map(|(_, all)| all.clone());
        let mut numbers: Vec<u32> = flag.numbers.iter().filter_map(own).flatten().collect();
        numbers.sort_unstable();
        flag.text = cuts::told(&numbers);
    }
    let size = words::size(say, &whole.size(plan.width.unit()).numbers(units));
    let of = |wanted: fn(&Use) -> bool| -> Vec<Area> {
        plan.parts[1..].iter().filter(|part| wanted(&part.r#use)).map(|part| frame.area(part.rect)).collect()
    };
    let pieces = of(|own| matches!(own, Use::Piece { .. }));
    let waste = of(|own| !matches!(own, Use::Piece { .. }));
    let mut labelled: Vec<(Area, Label, Said)> = Vec::new();
    for part in &plan.parts[1..] {
        let Use::Piece { piece, .. } = part.r#use else { continue };
        let mut said = Said { ring: project.design.ring(piece), size: String::new(), tag: None };
        let area = frame.area(part.rect);
        let label = labels::number_for(area, &mut said);
        labelled.push((area, label, said));
    }
    let rooms: Vec<Area> = labelled.iter().flat_map(|(area, label, said)| labels::room(*area, *label, said)).collect();
    let wishes = vec![0; waste.len()];
    let ground = Ground {
        sheet: area,
        waste: &waste,
        wishes: &wishes,
        pieces: &pieces,
        lines: &lines,
        labels: &rooms,
        beside: (BESIDE, BESIDE),
    };
    let standing = flags::place(&flagged, &ground);
    let mut canvas = Canvas::new();
    canvas.area(Role::Sheet, area);
    for line in &lines {
        canvas.line(Role::Cut, line.from, line.to);
    }
    for (area, label, said) in &labelled {
        labels::put(&mut canvas, *area, *label, said);
    }
    flags::draw(&mut canvas, &standing);
    for left in project.plan.leftovers().into_iter().filter(|left| left.sheet == index && left.number > 0) {
        for part in left.parts.iter().filter(|id| project.plan.sheets[index].part(**id).parent == Some(alike.part)) {
            let rect = project.plan.sheets[index].part(*part).rect;
            let origin = project.plan.sheets[index].part(alike.part).rect;
            let area = frame.area(rect.moved(-origin.left, -origin.bottom));
            labels::put_leftover(&mut canvas, area, &roman(left.number), "");
        }
    }
    // What has no number inside: one leader is enough where all that remain are of one kind.
    let mut small: Vec<(Said, Vec<Area>)> = Vec::new();
    for (area, _, said) in labelled.iter().filter(|(_, label, _)| *label == Label::Leader) {
        match small.iter_mut().find(|(other, _)| other == said) {
            Some((_, areas)) => areas.push(*area),
            None => small.push((said.clone(), vec![*area])),
        }
    }
    for (said, areas) in small {
        let around = Surroundings { sheet: area, waste: &[], pieces: &pieces, beside: (-BESIDE, area.right + BESIDE) };
        let apart = labels::Apart::Piece(said.clone());
        if !labels::put_apart(&mut canvas, &apart, &areas[..1], &around) {
            labels::put_others(
                &mut canvas,
                &words::all_others(say, 1),
                &[said],
                (area.left, i64::MAX),
                area.bottom + 2200 * UM,
            );
        }
    }
    if project.design.paper(plan.paper).pattern == Pattern::OneWay {
        let mut tip = At::new(area.left - 4500 * UM, area.top);
        while !canvas.is_free(Area::at(tip.x - 3000 * UM, tip.y, 6000 * UM, 14_000 * UM), 400 * UM) {
            tip.x -= 1000 * UM;
        }
        put_up(&mut canvas, tip, &words::up(say));
    }
    let caption = words::loose_part(say, alike.count, &size);
    let room = |baseline: i64| {
        let long = text::width(Lettering::Leftover, &caption).max(12_000 * UM);
        Area::at(area.left, baseline - 3000 * UM, long, 7500 * UM)
    };
    let mut baseline = area.bottom + 4700 * UM;
    while !canvas.is_free(room(baseline), 500 * UM) {
        baseline += 500 * UM;
    }
    let written = canvas.text(Lettering::Leftover, At::new(area.left, baseline), Anchor::Start, &caption);
    let scale = words::bare_scale(say, tenths);
    canvas.text(Lettering::Small, At::new(written.right + 1800 * UM, baseline), Anchor::Start, &scale);
    let row = &plan.cuts[0];
    let numbers: Vec<u32> = alike.cuts.iter().flat_map(|(_, all)| all.iter().copied()).collect();
    let alt = words::loose_told(say, &caption, &cuts::told(&sorted(numbers)), row.from, &row.measure.number(units));
    canvas.finish(format!("loose-{}-{}", index + 1, n + 1), Some(tenths), alt, area)
}

fn sorted(mut numbers: Vec<u32>) -> Vec<u32> {
    numbers.sort_unstable();
    numbers
}
