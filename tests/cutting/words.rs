//! A reader's replay: the printed text of `cuts` is all that she has. Every row is read, the parts it
//! names are looked for among those that lie loose, cut as it says, and what it says to have given is
//! compared with what came about. Nothing here looks at a plan's rows or parts.

use super::{Seeded, cuts};
use crate::support::{demos, run, trimwright};
use std::collections::BTreeMap;
use trimwright::design::model::Design;
use trimwright::length::Units;

/// Width and height as a part lies, in nanometres.
type Part = (i64, i64);

/// "1 3/4" or "105", in nanometres.
fn length(text: &str, units: Units) -> i64 {
    let unit = if units == Units::Inch { 25_400_000 } else { 1_000_000 };
    let mut sum = 0;
    for word in text.split(' ') {
        sum += match word.split_once('/') {
            Some((over, under)) => unit * over.parse::<i64>().unwrap() / under.parse::<i64>().unwrap(),
            None => unit * word.parse::<i64>().unwrap_or_else(|_| panic!("`{text}` is no length")),
        };
    }
    sum
}

/// "12 x 1 3/4".
fn size(text: &str, units: Units) -> Part {
    let (width, height) = text.split_once(" x ").unwrap_or_else(|| panic!("`{text}` is no size"));
    (length(width, units), length(height, units))
}

fn number(word: &str) -> usize {
    let words = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
    words.iter().position(|known| *known == word).map_or_else(|| word.parse().unwrap(), |place| place + 1)
}

/// Parts of one size that a row cuts, and how often each: "each of the two 7 1/2 x 5 parts".
fn parts(text: &str, units: Units) -> (usize, Part) {
    let (rest, noun) = text.rsplit_once(' ').unwrap();
    assert!(["part", "parts", "strip", "strips"].contains(&noun), "`{text}` names no part");
    let words: Vec<&str> = rest.split(' ').collect();
    let place = words.iter().position(|word| word.starts_with(|sign: char| sign.is_ascii_digit())).unwrap();
    let said = words[..place].join(" ");
    let found = size(&words[place..].join(" "), units);
    let said = said.strip_prefix("each of ").unwrap_or(&said);
    let count = match said {
        "the" | "either" => 1,
        "both" => 2,
        _ if said.starts_with("any of the ") => 1,
        _ => {
            // "the two", "all three", "two of the three", "two".
            let said = said.trim_start_matches("the ").trim_start_matches("all ");
            number(said.split(' ').next().unwrap())
        }
    };
    (count, found)
}

/// The reader's table while she cuts one sheet.
struct Table<'d> {
    design: &'d Design,
    loose: Vec<Part>,
    pieces: BTreeMap<u32, usize>,
}

impl Table<'_> {
    /// Cuts `count` parts of a size so often each; gives what comes about.
    fn cut(&mut self, edge: &str, (count, size): (usize, Part), measure: i64, times: usize) -> Vec<Part> {
        let mut made = Vec::new();
        for _ in 0..count {
            let place = self.loose.iter().position(|part| *part == size);
            let mut part = self.loose.remove(place.unwrap_or_else(|| panic!("no {size:?} lies loose")));
            for _ in 0..times {
                let (slice, rest) = match edge {
                    "left" | "right" => ((measure, part.1), (part.0 - measure, part.1)),
                    "top" | "bottom" => ((part.0, measure), (part.0, part.1 - measure)),
                    _ => panic!("`{edge}` is no edge"),
                };
                assert!(rest.0 > 0 && rest.1 > 0, "the measure is past the end of {part:?}");
                made.push(slice);
                part = rest;
            }
            made.push(part);
        }
        made
    }

    /// Takes what a row says to have given off what came about; what is left over or scrap is not
    /// named by its size, and must be as much as is said.
    fn take(&mut self, given: &str, left: usize, mut made: Vec<Part>) {
        let units = self.design.units;
        let take = |made: &mut Vec<Part>, fits: &dyn Fn(Part) -> bool| {
            let place = made.iter().position(|part| fits(*part));
            made.remove(place.unwrap_or_else(|| panic!("`{given}` is not among {made:?}")))
        };
        let items: Vec<&str> = given.split(" and ").flat_map(|item| item.split(", ")).collect();
        let mut items = items.into_iter().filter(|item| !item.is_empty());
        while let Some(item) = items.next() {
            let (count, name) = item.split_once(' ').unwrap();
            if let Some((_, ring)) = name.split_once('(') {
                let ring: u32 = ring.split_once(')').unwrap().0.parse().unwrap();
                let id = self.design.piece_ids().find(|id| self.design.ring(*id) == ring).unwrap();
                let size = self.design.piece(id).size;
                let size = (size.width.nm(), size.height.nm());
                for _ in 0..number(count) {
                    take(&mut made, &|part| part == size || part == (size.1, size.0));
                }
                *self.pieces.entry(ring).or_default() += number(count);
            } else {
                let size = size(items.next().unwrap(), units);
                for _ in 0..number(count) {
                    self.loose.push(take(&mut made, &|part| part == size));
                }
            }
        }
        assert_eq!(made.len(), left, "`{given}` leaves {made:?}");
    }
}

/// How many leftovers a row speaks of.
fn left_over(row: &str, parts: usize) -> usize {
    if row.contains("The rests are scrap") || row.contains("is left over, ") {
        parts
    } else {
        row.matches("is left over.").count() + row.matches("The rest is scrap.").count()
    }
}

/// Reads one row and does what it says.
fn follow(table: &mut Table<'_>, row: &str) {
    let units = table.design.units;
    let rest = row.strip_prefix("Put the ").unwrap_or_else(|| panic!("`{row}` does not say what to put"));
    let (edge, rest) = rest.split_once(" edge ").unwrap();
    let sign = if units == Units::Inch { " in and cut" } else { " mm and cut" };
    let (before, after) = rest.split_once(sign).unwrap();
    let (lots, measure, after): (Vec<(usize, Part, usize)>, i64, &str) =
        if let Some(measure) = before.strip_prefix("on ") {
            // Unlike parts: "the 9 x 5 part once, both 12 x 5 parts 2 times each".
            let (lots, after) = after.split_once('.').unwrap();
            let lots = lots.trim().split(", ").map(|lot| {
                let lot = lot.trim_end_matches(" each");
                let (lot, times) = lot.strip_suffix(" once").map_or_else(
                    || {
                        let (lot, times) = lot.trim_end_matches(" times").rsplit_once(' ').unwrap();
                        (lot, times.parse().unwrap())
                    },
                    |lot| (lot, 1),
                );
                let (count, size) = parts(lot, units);
                (count, size, times)
            });
            (lots.collect(), length(measure, units), after)
        } else {
            let (of, measure) = before.strip_prefix("of ").unwrap().rsplit_once(" on ").unwrap();
            let times = after.split_once("Do it ").map_or(1, |(_, said)| number(said.split(' ').next().unwrap()));
            let (count, size) = if of == "the sheet" { (1, table.loose[0]) } else { parts(of, units) };
            (vec![(count, size, times)], length(measure, units), after)
        };
    let mut made = Vec::new();
    for (count, size, times) in &lots {
        made.extend(table.cut(edge, (*count, *size), measure, *times));
    }
    let given = after.split_once("It gives ").map_or("", |(_, given)| given.split_once('.').unwrap().0);
    let cut: usize = lots.iter().map(|(count, ..)| count).sum();
    if given == "the edge strip" {
        // Nobody names what is left: it is the sheet from here on.
        let strip = if edge == "left" || edge == "right" { (measure, made[0].1) } else { (made[0].0, measure) };
        let place = made.iter().position(|part| *part == strip).unwrap();
        made.remove(place);
        table.loose.extend(made);
        return;
    }
    table.take(given, left_over(row, cut), made);
}

/// The rows of a sheet, unwrapped: `(heading, rows, "you have")`.
fn sheets(text: &str) -> Vec<(String, Vec<String>, String)> {
    let mut all: Vec<(String, Vec<String>, String)> = Vec::new();
    for line in text.lines() {
        let numbered = line.get(10..).is_some_and(|row| row.starts_with("Put the "));
        let plain = line.strip_prefix("          ");
        if !line.starts_with(' ') && line.contains(" sheet") && line.contains(": ") && line.contains(" x ") {
            all.push((line.to_owned(), Vec::new(), String::new()));
        } else if let Some((_, rows, have)) = all.last_mut() {
            match plain {
                _ if numbered => rows.push(line[10..].to_owned()),
                Some(more) if !have.is_empty() => *have = format!("{have} {more}"),
                Some(more) if more.starts_with("You have") || more.starts_with("From ") => *have = more.to_owned(),
                Some(more) => {
                    let row = rows.last_mut().unwrap();
                    *row = format!("{row} {more}");
                }
                None => {}
            }
        }
    }
    all
}

/// Replays what was printed; gives the number of rows.
fn replay(text: &str, design: &Design) -> usize {
    let mut count = 0;
    let mut have: BTreeMap<u32, usize> = BTreeMap::new();
    for (heading, rows, said) in sheets(text) {
        // The sheet as it is held: what is stated, with an edge strip beside it.
        let name = heading.split([':', ' ']).next().unwrap().to_lowercase();
        let paper = design.papers.iter().find(|paper| paper.name.split(' ').next() == Some(&name)).unwrap();
        let (number_of, size_said) = heading.split_once(": ").unwrap().1.split_once(", ").unwrap();
        let times: usize = number(number_of.split(' ').next().unwrap());
        let sign = if design.units == Units::Inch { " in" } else { " mm" };
        let mut whole = size(size_said.split_once(sign).unwrap().0, design.units);
        if let Some(strip) = paper.edge_strip.filter(|strip| strip.beside) {
            if strip.edge.is_side() { whole.0 += strip.width.nm() } else { whole.1 += strip.width.nm() }
        }
        let mut table = Table { design, loose: vec![whole], pieces: BTreeMap::new() };
        for row in &rows {
            follow(&mut table, row);
            count += 1;
        }
        if rows.is_empty() {
            table.loose.clear();
        }
        assert_eq!(table.loose, [], "{heading}: something is left uncut");
        for (ring, made) in table.pieces {
            *have.entry(ring).or_default() += made * times;
            assert!(said.contains(&format!("{} ", made * times)) && said.contains(&format!("({ring})")), "{said}");
        }
    }
    for id in design.piece_ids() {
        let wanted = design.per_card(id) * design.cards.value;
        let made = have.get(&design.ring(id)).copied().unwrap_or(0);
        assert!(made >= wanted as usize, "{} of {wanted} {}", made, design.piece(id).name);
    }
    count
}

fn printed(folder: &std::path::Path, arguments: &[&str]) -> String {
    let output = trimwright(folder, arguments);
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

#[test]
fn a_reader_cuts_the_demos_from_the_words_alone() {
    for demo in demos() {
        let text = std::fs::read_to_string(&demo).unwrap();
        for project in run(&text).editions {
            let units = project.units().word();
            let words = printed(demo.parent().unwrap(), &["cuts", demo.to_str().unwrap(), "--units", units]);
            assert!(replay(&words, &project.design) > 8, "{words}");
            // A wrong figure is noticed: that is what the replay is for.
            let wrong = words.replacen(if units == "inch" { " 5 1/4 in" } else { " 105 mm" }, " 3 ", 1);
            assert!(wrong == words || std::panic::catch_unwind(|| replay(&wrong, &project.design)).is_err());
        }
    }
}

#[test]
fn a_reader_cuts_random_sheets_from_the_words_alone() {
    let folder = tempfile::tempdir().unwrap();
    let mut rows = 0;
    for seed in 0..20 {
        let mut seeded = Seeded(seed * 7919 + 11);
        let names = ["panel", "mat", "flag", "rail"];
        let kinds = 1 + seeded.under(4) as usize;
        let sizes: Vec<String> = (0..kinds)
            .map(|_| {
                format!(
                    "{} {}/16 x {} {}/16 in",
                    1 + seeded.under(4),
                    1 + seeded.under(15),
                    1 + seeded.under(3),
                    1 + seeded.under(15)
                )
            })
            .collect();
        let pieces: Vec<(&str, &str, u32)> = names
            .iter()
            .zip(&sizes)
            .map(|(name, size)| (*name, size.as_str(), u32::try_from(1 + seeded.under(3)).unwrap()))
            .collect();
        let strip =
            ["", "    edge strip: 1/2 in at the bottom, beside\n", "    edge strip: 5/8 in at the left, within\n"];
        let cards = u32::try_from(1 + seeded.under(4)).unwrap();
        let yaml = cuts(cards, "6 of 12 x 12 in", strip[seeded.under(3) as usize], &pieces);
        let outcome = run(&yaml);
        if outcome.has_errors() {
            continue;
        }
        let file = folder.path().join(format!("random-{seed}.yaml"));
        std::fs::write(&file, &yaml).unwrap();
        let words = printed(folder.path(), &["cuts", file.to_str().unwrap()]);
        rows += replay(&words, &outcome.editions[0].design);
    }
    assert!(rows > 60, "only {rows} rows were read");
}
