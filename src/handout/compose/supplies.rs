//! Supplies and finishing: totals for the whole set.

use super::front::{kind_note, sheets_note};
use super::{needed, small, with_unit};
use crate::assembly::tell;
use crate::assembly::totals::totals;
use crate::cutting::demand::hand;
use crate::cutting::more::in_rows;
use crate::cutting::plan::{Left, SheetPlan};
use crate::design::model::{Design, Fold, Glue, PaperId, Pattern, PieceId, PieceKind};
use crate::design::variants::Wanted;
use crate::handout::data::{
    CallOut, LeftoverRow, LeftoverTable, PrintCheck, SupplyPages, TickItem, TickList, Told, all_said, said,
};
use crate::handout::pictures;
use crate::length::{Length, NM_PER_INCH, NM_PER_MM, Size, Units};
use crate::project::Project;
use crate::shape::{Finish, Making};
use crate::words::pages::{self as words, GoodFor};
use crate::words::{Line, roman};

/// A swatch in a list, tenths of a millimetre.
const SWATCH: (i64, i64) = (80, 40);

pub(super) fn pages(project: &Project, wanted: Wanted) -> SupplyPages {
    let say = project.words();
    let design = &project.design;
    SupplyPages {
        title: words::supplies(say),
        lead: said(&words::supplies_lead(say, design.cards.value)),
        lists: lists(project),
        leftovers: leftovers(project),
        told: told(project),
        print: PrintCheck {
            title: words::check_print_title(say),
            line: said(&words::check_print(say)),
            bars: pictures::print_bars(say, wanted),
        },
        cautions: vec![CallOut {
            title: words::take_care(say),
            caution: true,
            lines: all_said(&words::cautions(
                say,
                has_small_parts(design),
                made_with(design, |making| matches!(making, Making::Die { .. } | Making::Punch { .. })),
            )),
        }],
    }
}

/// Whether foam or decorations stand off the card.
fn has_small_parts(design: &Design) -> bool {
    design.layers.iter().any(|layer| {
        layer.glue.is_some_and(|glue| matches!(glue.value, Glue::Foam | Glue::Dot))
            || matches!(design.piece(layer.piece).kind, PieceKind::Decoration { .. })
    })
}

fn item(line: &Line) -> TickItem {
    TickItem { swatch: None, line: said(line) }
}

fn lists(project: &Project) -> Vec<TickList> {
    let say = project.words();
    let design = &project.design;
    let papers = design
        .paper_ids()
        .filter(|paper| project.plan.sheets.iter().any(|sheet| sheet.paper == *paper && !sheet.kept))
        .map(|paper| TickItem {
            swatch: Some(pictures::swatch(project, paper, SWATCH)),
            line: said(&words::paper_to_buy(
                say,
                &design.paper(paper).name,
                sheets_note(project, paper),
                kind_note(project, paper),
            )),
        })
        .collect();
    let own = |texts: &[crate::source::Spanned<String>]| -> Vec<TickItem> {
        texts.iter().map(|text| item(&Line::plain(text.value.clone()))).collect()
    };
    let mut tools = tools(project);
    tools.extend(own(&design.tools));
    let mut also = decorations(design);
    also.extend(own(&design.supplies));
    [
        (words::paper(say), papers),
        (words::glue(say), glue(design)),
        (words::also(say), also),
        (words::tools(say), tools),
    ]
    .into_iter()
    .filter(|(_, items)| !items.is_empty())
    .map(|(title, items)| TickList { title, items })
    .collect()
}

/// A length of a roll that is bought: whole feet or metres of tape, tenths of a metre of ribbon.
fn bought(nm: i64, units: Units) -> String {
    match units {
        Units::Inch => format!("{} ft", up(nm, 12 * NM_PER_INCH)),
        Units::Metric => format!("{} m", up(nm, 1000 * NM_PER_MM)),
    }
}

fn of_roll(nm: i64, units: Units) -> String {
    match units {
        Units::Inch => bought(nm, units),
        Units::Metric => {
            let tenths = up(nm, 100 * NM_PER_MM);
            if tenths % 10 == 0 { format!("{} m", tenths / 10) } else { format!("{}.{} m", tenths / 10, tenths % 10) }
        }
    }
}

const fn up(nm: i64, step: i64) -> i64 {
    nm / step + (nm % step != 0) as i64
}

fn glue(design: &Design) -> Vec<TickItem> {
    let say = design.words();
    let totals = totals(design);
    let few = |count: i64| u32::try_from(count).unwrap_or(u32::MAX);
    let mut items = Vec::new();
    if totals.tape > 0 {
        items.push(item(&words::tape(say, &bought(totals.tape, design.units))));
    }
    if totals.liquid > 0 {
        items.push(item(&words::liquid_glue(say, totals.liquid)));
    }
    if totals.foam > 0 {
        items.push(item(&words::foam(say, few(totals.foam))));
    }
    if totals.dots > 0 {
        items.push(item(&words::glue_dots(say, few(totals.dots))));
    }
    items
}

/// Decorations, ribbon and twine.
fn decorations(design: &Design) -> Vec<TickItem> {
    let say = design.words();
    let totals = totals(design);
    let counted = totals.counted.iter().map(|(piece, count)| {
        let own = design.piece(*piece);
        words::decoration(say, *count, &own.name, &sized(own.size, design.units))
    });
    let rolls = totals.rolls.iter().map(|roll| {
        let own = design.piece(roll.piece);
        let wide = own.size.width.min(own.size.height);
        let units = design.units;
        let (wide, each) = (with_unit(wide, units), with_unit(roll.each, units));
        words::roll(say, &own.name, &wide, roll.count, &each, &of_roll(roll.all, units))
    });
    counted.chain(rolls).map(|line| item(&line)).collect()
}

fn sized(size: Size, units: Units) -> String {
    format!("{} {}", size.numbers(units), units.sign())
}

/// Whether something is made with a die or a punch: of pieces or windows.
fn made_with(design: &Design, is: impl Fn(Making) -> bool) -> bool {
    design.pieces.iter().any(|piece| is(piece.shape.making) || piece.shape.windows.iter().any(|own| is(own.making)))
}

fn tools(project: &Project) -> Vec<TickItem> {
    let say = project.words();
    let design = &project.design;
    let longest =
        project.plan.sheets.iter().flat_map(|sheet: &SheetPlan| sheet.cuts.iter().map(|row| row.measure)).max();
    let mut tools = Vec::new();
    if let Some(longest) = longest {
        let step = with_unit(design.workshop.ruler, design.units);
        tools.push(item(&words::trimmer(say, &with_unit(longest, design.units), &step)));
    }
    if design.card.as_ref().is_some_and(|card| card.fold != Fold::None) {
        tools.push(item(&words::scoring_tool(say)));
    }
    let finishes: Vec<Finish> =
        design.pieces.iter().filter_map(|piece| piece.shape.make().ok()).flat_map(|made| made.finish).collect();
    let is_cut = finishes.iter().any(|finish| matches!(finish, Finish::Cut { .. }));
    if is_cut || design.layers.iter().any(|layer| layer.trim_flush.is_some()) {
        tools.push(item(&words::scissors(say)));
    }
    if finishes.iter().any(|finish| matches!(finish, Finish::CutOut { making: Making::ByHand, .. })) {
        tools.push(item(&words::knife(say)));
    }
    if finishes.iter().any(|finish| matches!(finish, Finish::RoundCorner { .. })) {
        tools.push(item(&words::corner_punch(say)));
    }
    if made_with(design, |making| matches!(making, Making::Die { .. })) {
        tools.push(item(&words::dies(say)));
    }
    if made_with(design, |making| matches!(making, Making::Punch { .. })) {
        tools.push(item(&words::punches(say)));
    }
    tools.push(item(&words::pencil(say)));
    tools
}

/// One row a leftover; those of papers cut alike share one.
fn leftovers(project: &Project) -> Option<LeftoverTable> {
    let say = project.words();
    let (design, plan) = (&project.design, &project.plan);
    let all = plan.leftovers();
    let diagram = |left: &Left| plan.sheets[left.sheet].diagram;
    let mut groups: Vec<Vec<&Left>> = Vec::new();
    for left in all.iter().filter(|left| left.number > 0) {
        match groups.iter_mut().find(|group| diagram(group[0]) == diagram(left) && group[0].size == left.size) {
            Some(group) => group.push(left),
            None => groups.push(vec![left]),
        }
    }
    let rows: Vec<LeftoverRow> = groups
        .iter()
        .map(|group| {
            let sheet = &plan.sheets[group[0].sheet];
            let count = small(group[0].parts.len() * sheet.numbers.len());
            LeftoverRow {
                number: group.iter().map(|left| roman(left.number)).collect::<Vec<_>>().join(", "),
                from: match group.len() {
                    1 => words::leftover_from(say, &design.paper(sheet.paper).name, count),
                    papers => words::leftover_from_alike(say, small(papers)),
                },
                size: said(&Line::new().measure(say.measured(&group[0].size.numbers(design.units)))),
                idea: said(&words::good_for(say, good_for(project, group[0]))),
            }
        })
        .collect();
    (!rows.is_empty()).then(|| LeftoverTable {
        title: words::leftovers(say),
        heads: words::leftover_heads(say, design.units),
        rows,
    })
}

/// Common practice, no source: what is as large as the front makes another front; 2 x 3 in a tag;
/// 1 1/2 x 6 in a bookmark; 1/2 in over the card's width a strip inside.
fn good_for(project: &Project, left: &Left) -> GoodFor {
    let units = project.design.units;
    let size = left.size;
    let (short, long) = (size.width.min(size.height), size.width.max(size.height));
    let at_least = |inch: [(i64, i64); 2], mm: [i64; 2]| {
        let [a, b] = [0, 1].map(|n| Length::either(units, Length::inch(inch[n].0, inch[n].1), Length::mm(mm[n])));
        short >= a && long >= b
    };
    let card = project.design.card.as_ref().map(|card| card.size);
    if card.is_some_and(|card| short >= card.width.min(card.height) && long >= card.width.max(card.height)) {
        GoodFor::Front
    } else if at_least([(3, 2), (6, 1)], [38, 150]) && short < Length::either(units, Length::inch(5, 2), Length::mm(64))
    {
        GoodFor::Bookmark
    } else if at_least([(2, 1), (3, 1)], [50, 75]) {
        GoodFor::Tag
    } else if card.is_some_and(|card| long >= card.width) {
        GoodFor::Strip
    } else {
        GoodFor::Small
    }
}

fn told(project: &Project) -> Vec<Told> {
    let say = project.words();
    let design = &project.design;
    let mut told = Vec::new();
    if let Some(line) = spoiled(project) {
        told.push(Told { title: words::spoiled(say), scene: None, lines: vec![said(&line)] });
    }
    let ideas: Vec<_> = design
        .leftovers
        .iter()
        .map(|idea| {
            let text = Line::plain(idea.text.value.clone());
            said(&match idea.paper {
                Some(paper) => words::from_paper(say, &design.paper(paper).name, &text),
                None => text,
            })
        })
        .collect();
    if !ideas.is_empty() {
        told.push(Told { title: words::ideas(say), scene: None, lines: ideas });
    }
    if let Some(card) = &design.card {
        let strip = Length::either(design.units, Length::inch(1, 1), Length::mm(25));
        let thick = has_small_parts(design);
        let room = if thick {
            Length::either(design.units, Length::inch(1, 4), Length::mm(6))
        } else {
            Length::either(design.units, Length::inch(1, 8), Length::mm(3))
        };
        let size = format!("{} {}", card.size.numbers(design.units), design.units.sign());
        let mut lines =
            words::inside(say, &with_unit(strip, design.units), &size, &with_unit(room, design.units)).to_vec();
        lines.extend(tell::loose_notes(design, &project.steps));
        lines.push(words::ask_the_post(say));
        told.push(Told { title: words::inside_title(say), scene: None, lines: all_said(&lines) });
    }
    told
}

/// Which leftover gives most of a piece again, paper by paper, and which pieces no leftover gives.
fn spoiled(project: &Project) -> Option<Line> {
    let say = project.words();
    let (design, plan) = (&project.design, &project.plan);
    let all = plan.leftovers();
    let mut line = Line::new();
    let mut none = Vec::new();
    for piece in design.piece_ids().filter(|piece| needed(design, *piece) > 0) {
        let mut papers: Vec<PaperId> = design.version_ids().filter_map(|id| design.paper_of(piece, id)).collect();
        papers.sort_unstable();
        papers.dedup();
        let mut found = false;
        for paper in papers {
            let best = all
                .iter()
                .filter(|left| left.number > 0 && plan.sheets[left.sheet].paper == paper)
                .map(|left| (fits(design, piece, paper, left.size), left))
                .max_by_key(|(count, left)| (*count, std::cmp::Reverse(left.number)));
            if let Some((count, left)) = best
                && count > 0
            {
                found = true;
                let (piece_name, paper_name) = (&design.piece(piece).name, &design.paper(paper).name);
                line = line.sentence(words::gives_more(
                    say,
                    left.number,
                    count,
                    paper_name,
                    piece_name,
                    design.ring(piece),
                ));
            }
        }
        if !found {
            none.push(design.piece(piece).name.clone());
        }
    }
    if line.is_empty() {
        return None;
    }
    Some(if none.is_empty() { line } else { line.sentence(words::no_spare(say, &none)) })
}

/// How many of a piece a leftover gives by straight rows, the pattern's way and the rules of the hand
/// kept.
fn fits(design: &Design, piece: PieceId, paper: PaperId, left: Size) -> u32 {
    let upright = design.piece(piece).upright == Some(true);
    let quarter = design.paper(paper).pattern == Pattern::Any && !upright;
    in_rows(left, design.piece(piece).size, quarter, hand(design.units))
}
