//! A reader with the printed words alone: the text of `cuts` is read back and carried out on blank
//! sheets, with nothing else at hand than the sizes of the pieces. No picture, no JSON, no plan.

use crate::support::{demos, editions_at, root, run, trimwright};
use std::collections::BTreeMap;
use std::panic::AssertUnwindSafe;
use std::path::Path;
use trimwright::cutting::halves::{Halves, halves};
use trimwright::design::model::{Design, From, Piece, PieceId, PieceKind};
use trimwright::drawing::figures::sheet::sheet;
use trimwright::drawing::scene::{Item, Lettering};
use trimwright::length::{Length, Units, parse_length, parse_size};

/// Width and height in nanometres.
type Rect = (i64, i64);

/// What lies on the reader's table.
#[derive(Debug, Default)]
struct Table {
    to_cut: Vec<Rect>,
    pieces: BTreeMap<String, u32>,
    /// How often each numeral was named.
    left: BTreeMap<String, usize>,
    over: Vec<Rect>,
}

struct Reader<'d> {
    design: &'d Design,
    sign: &'static str,
}

/// Parts of one size that a row cuts equally often.
struct Lot {
    count: usize,
    size: Rect,
    times: usize,
}

impl Reader<'_> {
    fn size(&self, text: &str) -> Rect {
        let size = parse_size(&format!("{text} {}", self.sign)).unwrap_or_else(|_| panic!("`{text}` is a size"));
        (size.width.nm(), size.height.nm())
    }

    /// A noun with its size: "12 x 5 strips" gives the size.
    fn sized(&self, text: &str) -> Rect {
        let cut = text.rfind(' ').expect("a noun");
        assert!(["part", "parts", "strip", "strips"].contains(&&text[cut + 1..]), "`{text}` names a part");
        self.size(&text[..cut])
    }

    /// "each of the two 12 x 5 strips": how many, of how many, which size.
    fn parts(&self, text: &str) -> (usize, usize, Rect) {
        if let Some(rest) = text.strip_prefix("each of the ") {
            let (count, rest) = number(rest);
            return (count, count, self.sized(rest));
        }
        if let Some(rest) = text.strip_prefix("each of ") {
            let (count, rest) = number(rest);
            let (there, rest) = number(rest.strip_prefix("of the ").expect("of how many"));
            return (count, there, self.sized(rest));
        }
        if let Some(rest) = text.strip_prefix("any of the ") {
            let (there, rest) = number(rest);
            return (1, there, self.sized(rest));
        }
        for (word, count, there) in [("the ", 1, 1), ("either ", 1, 2), ("both ", 2, 2)] {
            if let Some(rest) = text.strip_prefix(word) {
                return (count, there, self.sized(rest));
            }
        }
        if let Some(rest) = text.strip_prefix("all ") {
            let (count, rest) = number(rest);
            return (count, count, self.sized(rest));
        }
        // One lot of several of a size: how many there are in all is said by the other lots.
        let (count, rest) = number(text);
        (count, 0, self.sized(rest))
    }

    /// Carries out one row; gives the number of cuts made.
    fn row(&self, table: &mut Table, text: &str) -> usize {
        let text = text.strip_prefix("Put the ").unwrap_or_else(|| panic!("`{text}`"));
        let (edge, text) = text.split_once(" edge ").expect("an edge");
        let side = match edge {
            "left" | "right" => true,
            "top" | "bottom" => false,
            _ => panic!("`{edge}` is no edge"),
        };
        let unit = format!(" {} and cut", self.sign);
        let (before, after) = text.split_once(&unit).expect("a measure");
        let (what, measure) = match before.strip_prefix("on ") {
            Some(measure) => (None, measure),
            None => before
                .strip_prefix("of ")
                .and_then(|text| text.split_once(" on "))
                .map_or_else(|| panic!("`{before}`"), |(what, measure)| (Some(what), measure)),
        };
        let measure = parse_length(&format!("{measure} {}", self.sign)).expect("a length").nm();
        let (doing, giving) = after.split_once('.').expect("a full stop");
        let mut giving = giving.trim();
        let mut lots: Vec<Lot> = Vec::new();
        if let Some(what) = what {
            let mut times = 1;
            if let Some(rest) = giving.strip_prefix("Do it ") {
                let (said, rest) = rest.split_once('.').expect("how often");
                times = said.split(' ').next().expect("a number").parse().expect("a number");
                giving = rest.trim();
                if let Some((_, all)) = said.split_once(" times with each, ") {
                    let all: usize = all.strip_suffix(" times in all").expect("in all").parse().expect("a number");
                    let (count, ..) = self.parts(what);
                    assert_eq!(all, times * count, "`{said}`");
                }
            }
            if let "the sheet" | "the leftover" = what {
                let [whole] = table.to_cut.as_slice() else { panic!("{what} is whole no more") };
                lots.push(Lot { count: 1, size: *whole, times });
            } else {
                let (count, there, size) = self.parts(what);
                assert_eq!(waiting(table, size), there, "`{what}`: so many wait to be cut");
                lots.push(Lot { count, size, times });
            }
        } else {
            for one in doing.trim().split(", ") {
                let one = one.strip_suffix(" each").unwrap_or(one);
                let (what, times) = match one.strip_suffix(" once") {
                    Some(what) => (what, 1),
                    None => {
                        let (what, times) =
                            one.strip_suffix(" times").expect("how often").rsplit_once(' ').expect("times");
                        (what, times.parse().expect("a number"))
                    }
                };
                let (count, there, size) = self.parts(what);
                assert!(there == 0 || waiting(table, size) == there, "`{what}`: so many wait to be cut");
                lots.push(Lot { count, size, times });
            }
        }
        let mut made: Vec<Rect> = Vec::new();
        let mut cuts = 0;
        for lot in &lots {
            for _ in 0..lot.count {
                let place = table.to_cut.iter().position(|part| *part == lot.size).expect("a part of that size");
                let part = table.to_cut.remove(place);
                let (along, across) = if side { part } else { (part.1, part.0) };
                let laid = |along: i64| if side { (along, across) } else { (across, along) };
                let rest = along - measure * i64::try_from(lot.times).expect("few");
                assert!(rest > 0, "the last cut finds nothing to cut off");
                made.extend(std::iter::repeat_n(laid(measure), lot.times));
                made.push(laid(rest));
                cuts += lot.times;
            }
        }
        self.given(table, made, giving);
        cuts
    }

    /// Sorts what came off as the words say: pieces, parts to cut on, leftovers.
    fn given(&self, table: &mut Table, mut made: Vec<Rect>, text: &str) {
        let (mut given, mut rest) = ("", text);
        if let Some(said) = text.strip_prefix("It gives ") {
            (given, rest) = said.split_once('.').expect("a full stop");
        }
        let mut strip = false;
        // A comma stands before a part's size as well as between things given.
        let mut given = given.to_owned();
        for noun in ["part", "parts", "strip", "strips"] {
            given = given.replace(&format!(" {noun}, "), &format!(" {noun}@"));
        }
        for one in &things(&given) {
            let one = one.as_str();
            if one == "the edge strip" {
                strip = true;
                continue;
            }
            let (count, name) = one.split_once(' ').expect("how many");
            let count: usize = count.parse().expect("a number");
            if let Some((_, size)) = name.split_once('@') {
                let size = self.size(size);
                for _ in 0..count {
                    take(&mut made, &[size], one);
                    table.to_cut.push(size);
                }
                continue;
            }
            let name = name.strip_suffix(" showing the back").unwrap_or(name);
            let (_, ring) = name.rsplit_once(" (").expect("a ring");
            let ring: usize = ring.strip_suffix(')').expect("a ring").parse().expect("a number");
            let piece = &self.design.pieces[ring - 1];
            let size = (piece.blank().width.nm(), piece.blank().height.nm());
            for _ in 0..count {
                take(&mut made, &[size, (size.1, size.0)], one);
            }
            *table.pieces.entry(piece.name.clone()).or_default() += u32::try_from(count).expect("few");
        }
        if strip {
            // The edge strip is what is as wide as a strip; what remains is cut on.
            let whole = self.design.papers.iter().filter_map(|paper| paper.edge_strip);
            let widths: Vec<i64> = whole.map(|strip| strip.width.nm()).collect();
            let place = made.iter().position(|(w, h)| widths.contains(w) || widths.contains(h)).expect("the strip");
            made.remove(place);
            table.to_cut.append(&mut made);
        }
        let (mut numbered, mut scraps) = (0, None);
        for sentence in rest.split('.').map(str::trim).filter(|sentence| !sentence.is_empty()) {
            match sentence {
                "The rest is scrap" => scraps = Some(false),
                "The rests are scrap" => scraps = Some(true),
                _ => {
                    let (numeral, said) = sentence.split_once(" is left over").expect("a leftover");
                    let count = said
                        .strip_prefix(", ")
                        .map_or(1, |said| said.strip_suffix(" times").expect("how often").parse().expect("a number"));
                    numbered += count;
                    *table.left.entry(numeral.to_owned()).or_default() += count;
                }
            }
        }
        let rests = made.len() - numbered;
        assert!(
            match scraps {
                None => rests == 0,
                Some(false) => rests == 1,
                Some(true) => rests > 1,
            },
            "`{rest}` speaks of all that is left: {made:?}"
        );
        // Which of them is which is told by its size, which stands under the rows.
        table.over.append(&mut made);
    }
}

/// The things of a list: "3 mats (2), 1 strip@12 x 5 and the edge strip". What two triangles share is named
/// after both: "4 rectangles for left sails and right sails (3)".
fn things(text: &str) -> Vec<String> {
    let mut things: Vec<String> = Vec::new();
    for part in text.split(" and ").flat_map(|some| some.split(", ")).filter(|one| !one.is_empty()) {
        match things.last_mut().filter(|last| last.contains(" for ") && !last.contains('(')) {
            Some(last) => last.push_str(&format!(" and {part}")),
            None => things.push(part.to_owned()),
        }
    }
    things
}

fn waiting(table: &Table, size: Rect) -> usize {
    table.to_cut.iter().filter(|part| **part == size).count()
}

fn take(made: &mut Vec<Rect>, sizes: &[Rect], what: &str) {
    let place = made.iter().position(|part| sizes.contains(part));
    made.remove(place.unwrap_or_else(|| panic!("`{what}` is not among {made:?}")));
}

/// A small number in letters or digits, and what follows it.
fn number(text: &str) -> (usize, &str) {
    const WORDS: [&str; 13] =
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
    let (word, rest) = text.split_once(' ').expect("a number");
    let count = WORDS.iter().position(|known| *known == word).unwrap_or_else(|| word.parse().expect("a number"));
    (count, rest)
}

/// A paragraph under a sheet's name, with its cut numbers where it has some.
fn paragraphs(block: &str) -> Vec<(String, String)> {
    let mut found: Vec<(String, String)> = Vec::new();
    for line in block.lines() {
        let (head, words) = (line[2..10].trim(), line[10..].trim());
        let fresh =
            ["You have", "From ", "Left over:", "Works on", "The sheet"].iter().any(|start| words.starts_with(start));
        match found.last_mut() {
            Some((_, text)) if head.is_empty() && !(fresh && text.ends_with('.')) => {
                text.push(' ');
                text.push_str(words);
            }
            _ => found.push((head.to_owned(), words.to_owned())),
        }
    }
    found
}

/// Carries out a whole text; gives the pieces made.
fn carry_out(design: &Design, text: &str) -> BTreeMap<String, u32> {
    let sign = design.units.sign();
    let reader = Reader { design, sign };
    let mut all: BTreeMap<String, u32> = BTreeMap::new();
    for block in text.split("\n\n").skip(1) {
        let (title, rows) = block.split_once('\n').unwrap_or((block, ""));
        if title.ends_with(" instead") {
            // From here on it is about sheets that the reader may hold instead.
            break;
        }
        // "Dusk: 2 sheets, 12 x 12 in", "Tag paper: 1 leftover of Foam, 2 x 5 in".
        let Some((name, (count, rest))) = title.split_once(": ").and_then(|(name, note)| {
            Some((name, note.split_once(' ').filter(|(count, _)| count.parse::<u32>().is_ok())?))
        }) else {
            continue;
        };
        let count: u32 = count.parse().expect("a number");
        let (what, size) = rest.split_once(", ").expect("a size");
        let (size, note) = size.split_once(&format!(" {sign}")).expect("a unit");
        let name = name.split_once(" (").map_or(name, |(name, _)| name);
        let paper = design.papers.iter().find(|paper| paper.name.eq_ignore_ascii_case(name)).expect("a paper");
        let other_word = match what.strip_prefix("leftover").and_then(|what| what.split_once(" of ")) {
            Some((_, source)) => {
                let source = design.papers.iter().position(|paper| paper.name.eq_ignore_ascii_case(source));
                assert_eq!(paper.kept_from.map(|from| from.0), source, "{name}: kept from what it says");
                // Where what it is kept from is told too, the reader has cut so many.
                let cut = all.iter().find(|(piece, _)| **piece == paper.name).map_or(count, |(_, cut)| *cut);
                assert!(cut >= count, "{name}: {count} of {cut}");
                "the sheet "
            }
            None => {
                assert!(["sheet", "sheets"].contains(&what), "`{what}`");
                "the leftover "
            }
        };
        // The sheet in the hand, its edge strip on it.
        let mut whole = reader.size(size);
        if let Some(strip) = paper.edge_strip.filter(|strip| strip.beside) {
            let wide = strip.width.nm();
            if strip.edge.is_side() { whole.0 += wide } else { whole.1 += wide }
        }
        let mut table = Table { to_cut: vec![whole], ..Table::default() };
        let (mut next, mut said, mut left) = (1, String::new(), String::new());
        for (cuts, words) in paragraphs(rows) {
            if cuts.is_empty() {
                if words.starts_with("Left over: ") {
                    left = words;
                } else if words.contains(" have ") {
                    said = words;
                }
                continue;
            }
            assert!(!words.contains(other_word), "{name}: `{words}`");
            let (first, last) = cuts.split_once('-').unwrap_or((&cuts, &cuts));
            let (first, last): (usize, usize) = (first.parse().expect("a number"), last.parse().expect("a number"));
            assert_eq!(first, next, "{name}: the cuts are numbered on");
            assert_eq!(
                reader.row(&mut table, &words),
                last + 1 - first,
                "{name}: `{words}` makes as many cuts as it counts"
            );
            next = last + 1;
        }
        if next == 1 {
            // A sheet or leftover that is a piece as it is.
            assert!(!note.contains("cut"), "{name}: nothing is cut");
            for (piece, number) in said_to_have(design, &said) {
                let size = (piece.blank().width.nm(), piece.blank().height.nm());
                assert!(whole == size || whole == (size.1, size.0), "{name}: {size:?} of {whole:?}");
                assert_eq!(number, count, "{name}: one of each");
                *all.entry(piece.name.clone()).or_default() += number;
            }
            continue;
        }
        assert_eq!(table.to_cut, [], "{name}: everything is cut");
        leftovers(&reader, name, &mut table, &left);
        let told: BTreeMap<String, u32> =
            said_to_have(design, &said).into_iter().map(|(piece, number)| (piece.name.clone(), number)).collect();
        for made in table.pieces.values_mut() {
            *made *= count;
        }
        assert_eq!(table.pieces, told, "{name}: what the rows give is what the reader is said to have");
        for (piece, made) in table.pieces {
            *all.entry(piece).or_default() += made;
        }
    }
    all
}

/// What the reader is said to have: "From both sheets you have 8 mats (2) and 8 rails (5). 1 mat (2) to
/// spare."
fn said_to_have<'d>(design: &'d Design, said: &str) -> Vec<(&'d Piece, u32)> {
    let (_, counts) = said.split_once(" have ").expect("what there is");
    let (counts, _) = counts.split_once('.').expect("a full stop");
    let counts = things(counts).into_iter().map(|one| {
        let (number, name) = one.split_once(' ').expect("how many");
        let ring = name.rsplit_once('(').and_then(|(_, ring)| ring.strip_suffix(')')).expect("a ring");
        let piece = &design.pieces[ring.parse::<usize>().expect("a ring") - 1];
        (piece, number.parse::<u32>().expect("a number"))
    });
    counts.collect()
}

/// The leftovers that the rows number are those listed under them; all else is scrap, which is under
/// 1/2 in or 12 mm at its short side.
fn leftovers(reader: &Reader<'_>, name: &str, table: &mut Table, text: &str) {
    let listed = text.strip_prefix("Left over: ").map_or("", |text| text.trim_end_matches('.'));
    let mut numbered = std::mem::take(&mut table.left);
    for one in listed.split(", ").filter(|one| !one.is_empty()) {
        let (numeral, size) = one.split_once(' ').expect("a numeral");
        let size = size.split_once(" (").map_or(size, |(size, _)| size);
        let named = numbered.remove(numeral).unwrap_or_else(|| panic!("{name}: no row leaves {numeral} over"));
        for _ in 0..named {
            take(&mut table.over, &[reader.size(size)], one);
        }
    }
    assert!(numbered.is_empty(), "{name}: {numbered:?} are not listed");
    let scrap = if reader.sign == "in" { Length::inch(1, 2) } else { Length::mm(12) };
    for (width, height) in &table.over {
        assert!(*width.min(height) < scrap.nm(), "{name}: {width} x {height} is no scrap");
    }
}

/// What the cards need, kept leftovers included.
fn needed(design: &Design) -> BTreeMap<String, u32> {
    // Decorations and what windows leave over come from no sheet; a kept leftover is counted by itself.
    let cut = |piece: &PieceId| !matches!(design.piece(*piece).from, From::Bought | From::Window(..));
    let mut all: BTreeMap<String, u32> = design
        .piece_ids()
        .filter(cut)
        .map(|piece| {
            let count = match design.piece(piece).kind {
                PieceKind::Kept { count, .. } => count,
                _ => design.per_card(piece) * design.cards.value,
            };
            (design.piece(piece).name.clone(), count)
        })
        .filter(|(_, count)| *count > 0)
        .collect();
    // Triangles are cut as rectangles of the first of two.
    let cards: Vec<u32> = design.versions.iter().map(|version| version.cards).collect();
    let shared: Vec<Halves> = design.paper_ids().flat_map(|paper| halves(design, paper, &cards)).collect();
    for half in &shared {
        for piece in [Some(half.piece), half.other.map(|(other, _)| other)].into_iter().flatten() {
            all.remove(&design.piece(piece).name);
        }
    }
    for half in &shared {
        *all.entry(design.piece(half.piece).name.clone()).or_insert(0) += half.rectangles;
    }
    all
}

fn printed(folder: &Path, name: &str, extra: &[&str]) -> String {
    let mut arguments = vec!["cuts", name];
    arguments.extend(extra);
    let output = trimwright(folder, &arguments);
    String::from_utf8(output.stdout).expect("text")
}

#[test]
fn a_reader_of_the_words_alone_cuts_the_demos_right() {
    for path in demos() {
        for project in editions_at(&path) {
            let units = ["--units", project.units().word()];
            let told = printed(&root(), &path.to_string_lossy(), &units);
            let (made, wanted) = (carry_out(&project.design, &told), needed(&project.design));
            assert!(made.keys().eq(wanted.keys()), "{}: {made:?}", path.display());
            for (piece, count) in &wanted {
                // Sheets cut alike may give some to spare.
                let spare: u32 = project
                    .plan
                    .spares(&project.design)
                    .iter()
                    .filter(|spare| project.design.piece(spare.piece).name == **piece)
                    .map(|spare| spare.count)
                    .sum();
                assert_eq!(made[piece], count + spare, "{}: {piece}", path.display());
            }
            // What other sheets give is told as plainly; each of these stands for its paper alone.
            for instead in told.split(" instead\n").skip(1) {
                let given = carry_out(&project.design, &format!("\n{instead}"));
                assert!(!given.is_empty(), "{}: {instead}", path.display());
                for (piece, count) in given {
                    assert!(count >= 1 && count <= made[&piece], "{}: {count} {piece}", path.display());
                }
            }
            // Other ways are told as plainly, each whole unless a paper is cut as before.
            let others = printed(&root(), &path.to_string_lossy(), &["--alternatives", "4", units[0], units[1]]);
            let (_, others) = others.split_once("Another way to cut").expect("another way");
            let others: Vec<&str> = others.split("Another way to cut").collect();
            assert!(others.len() <= 4, "{}: {}", path.display(), others.len());
            for other in others {
                // The sentence on how it differs is not a row.
                let other: Vec<&str> =
                    other.lines().filter(|line| !line.trim_start().starts_with("Measured from")).collect();
                let made = carry_out(&project.design, &other.join("\n"));
                for (piece, count) in made {
                    let cards = needed(&project.design)[&piece];
                    // Sheets cut alike may give fewer to spare than there are sheets.
                    let sheets: usize = project.plan.sheets.iter().map(|sheet| sheet.numbers.len()).sum();
                    assert!((count as usize) < cards as usize + sheets, "{piece}: {count} of {cards}");
                }
            }
        }
    }
}

/// A small generator with a fixed seed (the multiplier of Knuth's MMIX, from memory).
struct Seeded(u64);

impl Seeded {
    fn under(&mut self, limit: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % limit
    }
}

/// A file for `cuts` of one or two papers, in sixteenths of an inch or in millimetres.
fn random_design(random: &mut Seeded) -> String {
    let metric = random.under(2) == 0;
    let length = |random: &mut Seeded, least: u64, most: u64| {
        if metric {
            let mm = least * 25 + random.under((most - least) * 25);
            format!("{mm} mm")
        } else {
            let step = least * 16 + random.under((most - least) * 16);
            Length::inch(i64::try_from(step).expect("small"), 16).to_string()
        }
    };
    let bare = |text: &str| text.rsplit_once(' ').map(|(number, _)| number.to_owned()).expect("a unit");
    let mut papers = String::new();
    for name in ["moss", "dusk"] {
        let sheet = if metric { ["304 x 304 mm", "210 x 297 mm"] } else { ["12 x 12 in", "8 1/2 x 11 in"] };
        let sheet = sheet[random.under(2) as usize];
        papers.push_str(&format!("  {name}:\n    sheets: 6 of {sheet}\n"));
        papers.push_str(["", "    pattern: one-way\n", "    pattern: two-way\n"][random.under(3) as usize]);
        if random.under(3) == 0 {
            let edge = ["left", "right", "top", "bottom"][random.under(4) as usize];
            let beside = ["beside", "within"][random.under(2) as usize];
            let wide = if metric { "13 mm" } else { "1/2 in" };
            papers.push_str(&format!("    edge strip: {wide} at the {edge}, {beside}\n"));
        }
    }
    let mut pieces = String::new();
    for name in ["leaf", "stem", "pot", "label"].iter().take(2 + random.under(3) as usize) {
        let (width, height) = (length(random, 1, 5), length(random, 1, 4));
        let paper = ["moss", "dusk"][random.under(2) as usize];
        pieces.push_str(&format!("  {name}:\n    size: {} x {height}\n    from: {paper}\n", bare(&width)));
        pieces.push_str(&format!("    per card: {}\n", 1 + random.under(3)));
    }
    format!("cards: {}\npapers:\n{papers}pieces:\n{pieces}", 2 + random.under(6))
}

#[test]
fn a_reader_of_the_words_alone_cuts_random_designs_right() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut random = Seeded(14);
    let mut whole = 0;
    for case in 0..40 {
        let text = random_design(&mut random);
        let outcome = run(&text);
        let Some(project) = outcome.editions.first().filter(|project| project.plan.missing.is_empty()) else {
            continue;
        };
        let name = format!("case-{case}.yaml");
        std::fs::write(folder.path().join(&name), &text).expect("written");
        let told = printed(folder.path(), &name, &[]);
        let (made, mut needed) = (carry_out(&project.design, &told), needed(&project.design));
        let spares = project.plan.spares(&project.design);
        for spare in &spares {
            *needed.get_mut(&project.design.piece(spare.piece).name).expect("a piece") += spare.count;
        }
        let words = told.split_whitespace().collect::<Vec<_>>().join(" ");
        assert_eq!(spares.is_empty(), !words.contains("to spare"), "{told}");
        assert_eq!(made, needed, "{text}\n{told}");
        whole += 1;
    }
    assert!(whole >= 20, "{whole} designs were cut");
}

#[test]
fn a_wrong_word_is_noticed() {
    // The reader above must be able to fail: one measure, one count, one edge is changed.
    let path = demos().into_iter().find(|path| path.ends_with("lantern-row.yaml")).expect("the demo");
    let told = printed(&root(), &path.to_string_lossy(), &["--units", "inch"]);
    let design = editions_at(&path).remove(0).design;
    assert_eq!(design.units, Units::Inch);
    assert_eq!(carry_out(&design, &told), needed(&design));
    for (right, wrong) in
        [(" on 5 in", " on 4 in"), ("Do it 11 times", "Do it 10 times"), ("the top edge of", "the left edge of")]
    {
        assert!(told.contains(right), "`{right}` stands there");
        let changed = told.replacen(right, wrong, 1);
        let noticed = std::panic::catch_unwind(AssertUnwindSafe(|| carry_out(&design, &changed))).is_err();
        assert!(noticed, "`{wrong}` is noticed");
    }
}

#[test]
fn flags_carry_the_numbers_of_the_rows() {
    for path in demos() {
        for project in editions_at(&path) {
            for (index, plan) in project.plan.sheets.iter().enumerate() {
                let scene = sheet(&project, index, trimwright::drawing::scale::Print::NORMAL).expect("a diagram");
                let mut numbers: Vec<u32> = Vec::new();
                for item in &scene.items {
                    let Item::Text { role: Lettering::Flag, text, .. } = item else { continue };
                    for run in text.split(", ") {
                        let (first, last) = run.split_once('\u{2013}').unwrap_or((run, run));
                        numbers.extend(first.parse::<u32>().expect("a cut")..=last.parse().expect("a cut"));
                    }
                }
                numbers.sort_unstable();
                let rows: Vec<u32> = (1..=plan.cuts.iter().map(|row| row.cuts).sum()).collect();
                assert_eq!(numbers, rows, "{} sheet {index}", path.display());
            }
        }
    }
}
