//! What is printed is what was checked: the words of the PDF (read back by poppler) against the
//! design, the layout and the plan.

use crate::support::{demos, editions_at, tool};
use std::collections::{BTreeMap, BTreeSet};
use trimwright::assembly::tell;
use trimwright::cutting::halves::of_piece;
use trimwright::cutting::plan::Use;
use trimwright::design::model::{Along, Arrangement, From, PaperId, PieceId, Stated, Work};
use trimwright::design::variants::Wanted;
use trimwright::geometry::Edge;
use trimwright::handout::{self, Told};
use trimwright::length::{Length, Size};
use trimwright::project::Project;
use trimwright::words::Words;
use trimwright::words::pages::piece_name;

/// Every edition of every demo with the text of its pages in the order of the file; set once for all tests.
fn printed() -> Vec<(String, Project, Vec<String>)> {
    static PRINTED: std::sync::OnceLock<Vec<(String, Project, Vec<String>)>> = std::sync::OnceLock::new();
    PRINTED.get_or_init(set).clone()
}

fn set() -> Vec<(String, Project, Vec<String>)> {
    let folder = tempfile::tempdir().expect("a folder");
    let mut all = Vec::new();
    for path in demos() {
        let stem = path.file_stem().expect("a stem").to_string_lossy().into_owned();
        for project in editions_at(&path) {
            let name = format!("{stem} {}", project.units().word());
            let pdf = folder.path().join(format!("{name}.pdf"));
            std::fs::write(&pdf, handout::typeset(&project, Wanted::HANDOUT, &Told::default()).expect("a PDF"))
                .expect("written");
            let words = tool("pdftotext", &["-raw", &pdf.to_string_lossy(), "-"]);
            let pages = words.split('\u{c}').map(str::to_owned).filter(|page| !page.trim().is_empty()).collect();
            all.push((name, project, pages));
        }
    }
    all
}

/// Without white space: lines break where they must, and rings stand close.
fn tight(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace()).collect::<String>().replace(" x ", "×")
}

/// A sentence as the page shows it: rings without brackets, `×` between the sides of a size.
fn as_printed(line: &trimwright::words::Line) -> String {
    use trimwright::words::Inline;
    let text: String = line
        .0
        .iter()
        .map(|part| match part {
            Inline::Measure(text) => text.replace(" x ", "×"),
            Inline::Ring(ring) => ring.to_string(),
            Inline::Leftover(number) => trimwright::words::roman(*number),
            Inline::Text(text) | Inline::Strong(text) | Inline::Cut(text) => text.clone(),
        })
        .collect();
    tight(&text)
}

/// Every `width × height` in a text, as two numbers without their inner spaces: the order of the
/// file keeps the halves of a size together, but not the thin space before a fraction.
///
/// A ring or a whole number may stand before a fraction, so that each size may be read in up to four ways.
fn sizes(text: &str) -> BTreeSet<Vec<(String, String)>> {
    let words: Vec<&str> = text.split_whitespace().map(|word| word.trim_matches([',', '.', '(', ')', ';'])).collect();
    let number = |word: &str| !word.is_empty() && word.chars().all(|c| c.is_ascii_digit() || c == '/' || c == '.');
    let whole = |word: &str| !word.is_empty() && word.chars().all(|c| c.is_ascii_digit());
    let mut found = BTreeSet::new();
    for at in words.iter().enumerate().filter(|(_, word)| **word == "×").map(|(at, _)| at) {
        // `width × height` in words is no size.
        if at == 0 || at + 1 >= words.len() || !number(words[at - 1]) || !number(words[at + 1]) {
            continue;
        }
        let (mut widths, mut heights) = (vec![words[at - 1].to_owned()], vec![words[at + 1].to_owned()]);
        if at > 1 && whole(words[at - 2]) && is_proper(words[at - 1]) {
            widths.push(format!("{}{}", words[at - 2], words[at - 1]));
        }
        if at + 2 < words.len() && whole(words[at + 1]) && is_proper(words[at + 2]) {
            heights.push(format!("{}{}", words[at + 1], words[at + 2]));
        }
        let ways = widths.iter().flat_map(|width| heights.iter().map(move |height| (width.clone(), height.clone())));
        found.insert(ways.collect());
    }
    found
}

/// Whether a fraction is less than one: `33/4` is three and three quarters.
fn is_proper(fraction: &str) -> bool {
    let parts = fraction.split_once('/').map(|(over, under)| (over.parse::<u32>(), under.parse::<u32>()));
    matches!(parts, Some((Ok(over), Ok(under))) if over < under)
}

fn pair(project: &Project, size: Size) -> (String, String) {
    (tight(&size.width.number(project.units())), tight(&size.height.number(project.units())))
}

#[test]
fn every_size_on_the_pages_is_one_of_the_design_or_the_plan() {
    for (name, project, pages) in printed() {
        let design = &project.design;
        let mut known: BTreeSet<(String, String)> = BTreeSet::new();
        let mut add = |size: Size| {
            known.insert(pair(&project, size));
            known.insert(pair(&project, size.lying()));
        };
        for piece in &design.pieces {
            add(piece.size);
            add(piece.blank());
        }
        if let Some(envelope) = &design.envelope {
            add(envelope.size);
        }
        add(design.card.as_ref().expect("a card").size);
        for sheets in design.papers.iter().flat_map(|paper| &paper.sheets) {
            add(sheets.size);
        }
        for part in project.plan.sheets.iter().flat_map(|sheet| &sheet.parts) {
            add(part.rect.size(Length::zero(project.units()).unit()));
        }
        for sheet in &project.plan.sheets {
            add(tell::least_size(design, sheet));
        }
        for other in &project.others {
            for sheet in &other.plan.sheets {
                add(tell::least_size(&other.design, sheet));
                add(other.design.paper(sheet.paper).sheets[sheet.kind].size);
                for part in &sheet.parts {
                    add(part.rect.size(Length::zero(project.units()).unit()));
                }
            }
        }
        for rect in project.layout.layers.iter().flat_map(|placed| placed.trimmed.iter().flatten()) {
            add(rect.size(Length::zero(project.units()).unit()));
        }
        // The designer's own words may name sizes too.
        let own: Vec<&str> = design
            .supplies
            .iter()
            .chain(&design.tools)
            .map(|text| text.value.as_str())
            .chain(design.notes.iter().map(|note| note.text.value.as_str()))
            .chain(design.leftovers.iter().map(|idea| idea.text.value.as_str()))
            .collect();
        let own = own.join(" . ").replace(" x ", " × ");
        known.extend(sizes(&own.replace(" 1/", "1/").replace(" 3/", "3/")).into_iter().flatten());
        let mut count = 0;
        for page in &pages {
            for size in sizes(page) {
                count += 1;
                let is_known = size.iter().any(|way| known.contains(way));
                assert!(is_known, "{name}: {size:?} stands on a page and nowhere in the design\n{page}");
            }
        }
        assert!(count > 15, "{name}: only {count} sizes were read");
    }
}

#[test]
fn the_cut_list_gives_every_piece_of_every_paper_with_its_count() {
    for (name, project, pages) in printed() {
        let design = &project.design;
        let front = tight(&pages[0]);
        let mut wanted: BTreeMap<(usize, usize), u32> = BTreeMap::new();
        for version in design.version_ids() {
            for piece in design.piece_ids() {
                // What is bought, and what a window leaves, is not cut from a sheet.
                if !matches!(design.piece(piece).from, From::Paper(_) | From::Varies) {
                    continue;
                }
                let paper = design.paper_of(piece, version).expect("a paper");
                let count = design.per_card(piece) * design.version(version).cards;
                *wanted.entry((paper.0, piece.0)).or_insert(0) += count;
            }
        }
        let mut planned: BTreeMap<(usize, usize), u32> = BTreeMap::new();
        for sheet in &project.plan.sheets {
            let sheets = u32::try_from(sheet.numbers.len()).expect("few");
            for part in &sheet.parts {
                if let Use::Piece { piece, .. } = part.r#use {
                    *planned.entry((sheet.paper.0, piece.0)).or_insert(0) += sheets;
                }
            }
        }
        for ((paper, piece), count) in &wanted {
            let given = planned.get(&(*paper, *piece)).copied().unwrap_or(0);
            let one = &design.pieces[*piece];
            // Two triangles may share a rectangle, which is listed with the first of them.
            let shared = of_piece(design, PieceId(*piece), PaperId(*paper));
            let least = match shared {
                Some(shared) if shared.piece == PieceId(*piece) => shared.rectangles,
                Some(_) => continue,
                None => *count,
            };
            assert!(given >= least, "{name}: {given} of {least}");
            if given == 0 {
                continue;
            }
            // What the trimmer cuts, spares included.
            let (width, height) = pair(&project, one.blank());
            let row = tight(&format!(
                "{given} {} {} {width} × {height}",
                piece_name(Words::english(), given, &one.name),
                piece + 1
            ));
            assert!(front.contains(&row), "{name}: `{row}` is not in the cut list\n{}", pages[0]);
        }
    }
}

#[test]
fn the_figures_of_lantern_row_are_the_ones_in_its_file() {
    // Typed from the design file by hand, not computed.
    let expected = [
        (
            "lantern-row inch",
            ["8mats24×51/4", "4panels333/4×5", "12lanterns41×13/4", "8rails541/2×1/4", "8bases181/2×51/2"],
            ["3/4fromthetop", "Leave1/4betweenthem", "Aborderof1/8showsallround", "pastthematby1/4"],
        ),
        (
            "lantern-row metric",
            ["8mats299×142", "4panels393×136", "12lanterns425×44", "8rails5115×6", "8bases1210×148"],
            ["20fromthetop", "Leave6betweenthem", "Aborderof3showsallround", "pastthematby8"],
        ),
    ];
    let all = printed();
    for (name, list, steps) in expected {
        let (_, _, pages) = all.iter().find(|(known, ..)| known == name).expect("the edition");
        for row in list {
            assert!(tight(&pages[0]).contains(row), "{name}: {row}");
        }
        let rest = tight(&pages[1..].concat());
        for words in steps {
            assert!(rest.contains(words), "{name}: {words}");
        }
    }
}

#[test]
fn every_cut_and_every_step_is_on_the_pages_in_its_words() {
    for (name, project, pages) in printed() {
        let text = tight(&pages.concat());
        let (design, plan) = (&project.design, &project.plan);
        for sheet in &plan.sheets {
            // Papers cut alike share one drawing and one table.
            let shown = plan.sheets.iter().find(|other| other.diagram == sheet.diagram).expect("itself");
            if !std::ptr::eq(shown, sheet) {
                continue;
            }
            for row in &sheet.cuts {
                let told = tell::row(design, plan, sheet, row);
                let words = as_printed(&told.line);
                let words = words.split("isleftover").next().unwrap_or_default();
                let head = &words[..words.char_indices().nth(30).map_or(words.len(), |(at, _)| at)];
                assert!(text.contains(head), "{name}: `{head}` is not printed");
                assert!(text.contains(&tight(&told.measure)), "{name}: {}", told.measure);
            }
        }
        for step in project.steps.steps.iter().filter(|step| step.work != Work::Cutting) {
            let told = tell::step(design, &project.layout, step);
            let words = as_printed(&told.line);
            assert!(text.contains(&words), "{name}: `{words}` is not printed\n{}", pages.concat());
            assert!(text.contains(&tight(&told.times)), "{name}: {}", told.times);
        }
    }
}

#[test]
fn the_words_of_a_step_are_the_layout_and_the_design() {
    // The sentence is rebuilt here from the layout alone, by another way than the teller's.
    for (name, project, _) in printed() {
        let design = &project.design;
        for id in design.layer_ids() {
            let layer = design.layer(id);
            let step = project
                .steps
                .steps
                .iter()
                .find(|s| matches!(s.action, trimwright::assembly::model::Action::Glue { layer, .. } if layer == id))
                .expect("a step");
            let words = tell::step(design, &project.layout, step).line.to_plain();
            let placed = project.layout.placed(id);
            // Turned layers are told by their corners: tests/placing/said.rs.
            if layer.tilt.is_some() || matches!(layer.arrangement, Arrangement::Fan { .. }) {
                continue;
            }
            for (along, edge) in [(layer.across, [Edge::Left, Edge::Right]), (layer.up, [Edge::Bottom, Edge::Top])] {
                let (edge, stated) = match along {
                    Along::FromLow(length) => (edge[0], length),
                    Along::FromHigh(length) => (edge[1], length),
                    _ => continue,
                };
                assert_eq!(placed.shows(edge), stated.nm(), "{name}: {}", layer.name);
                // Of copies in steps the first is told, from the same edge.
                let first = placed.onto.border(placed.copies[0], edge);
                let is_steps = matches!(layer.arrangement, Arrangement::Steps { .. });
                let told = if is_steps { Length::of(first, project.units()) } else { stated };
                assert!(words.contains(&told.number(project.units())), "{name}: `{words}` lacks {told}");
            }
            if let Stated::AllRound { border, .. } = design.piece(layer.piece).stated {
                assert!(words.contains(&border.number(project.units())), "{name}: `{words}` lacks {border}");
            }
        }
    }
}

#[test]
fn no_leftover_is_said_to_give_what_a_hand_cannot_cut_from_it() {
    // Common practice, no source: what is left beside the mats is 1/2 in or 13 mm wide, too narrow to
    // be split into rails of 1/4 in or 6 mm.
    for (name, _, pages) in printed().iter().filter(|(name, ..)| name.starts_with("lantern-row")) {
        let text = tight(&pages.concat());
        assert!(text.contains("Spoiledapiece?"), "{name}");
        assert!(!text.contains("moreSlaterail"), "{name}: a rail from a strip that cannot be held");
        assert!(text.contains("moreDuskpanel") || text.contains("moreDusklantern"), "{name}");
    }
}
