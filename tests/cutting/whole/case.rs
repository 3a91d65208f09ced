//! Seeded random small designs: drawn as figures, then written once as the program's text and once
//! as the brute force's numbers.

use super::brute::{Kind, Paper, Rules, Stack, gives};
use crate::cutting::Seeded;

/// Combinations of counts of all kinds of one paper: more take the brute force too long.
const MOST_COUNTS: usize = 1_000;
/// Sides of a sheet, in units.
const SHORTEST: usize = 4;
const LONGEST: usize = 12;

const PAPERS: [&str; 2] = ["dawn", "dusk"];
const PIECES: [&str; 4] = ["panel", "mat", "flag", "rail"];
const EDGES: [&str; 4] = ["left", "right", "bottom", "top"];
const PATTERNS: [&str; 4] = ["any", "any", "two-way", "one-way"];

/// One design.
pub(super) struct Case {
    /// Quarters of an inch in a unit.
    unit: usize,
    sheets: Vec<Sheets>,
    pieces: Vec<Piece>,
    /// Cards of each version; a version a paper.
    pub(super) cards: Vec<usize>,
}

/// The sheets of one paper.
#[derive(Clone)]
struct Sheets {
    /// Count, width and height as written.
    stacks: Vec<(usize, usize, usize)>,
    /// How wide, at which of `EDGES`, beside the sheet or within it.
    strip: Option<(usize, usize, bool)>,
    pattern: &'static str,
}

struct Piece {
    kind: Kind,
    upright: bool,
    each: usize,
    /// The paper it is cut from in each version.
    papers: Vec<usize>,
    varies: bool,
}

impl Case {
    /// The case of a seed.
    pub(super) fn new(seed: u64) -> Self {
        let mut random = Seeded(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ 0x7f4a_7c15);
        // The first numbers of neighbouring seeds are alike.
        (0..4).for_each(|_| _ = random.under(2));
        loop {
            let case = Self::draw(&mut random);
            if case.is_small() && case.is_likely(&mut random) {
                return case;
            }
        }
    }

    fn draw(random: &mut Seeded) -> Self {
        // In quarters of an inch a hand cannot split off every slice, in halves it can.
        let unit = if one_in(random, 4) { 2 } else { 1 };
        let two = one_in(random, 3);
        let size = (between(random, SHORTEST, LONGEST), between(random, SHORTEST, LONGEST));
        let mut sheets = vec![Sheets::draw(random, size, two)];
        if two {
            // Mostly the same sheets, as papers that swap parts have.
            let other = if one_in(random, 5) { Sheets::draw(random, size, two) } else { sheets[0].clone() };
            sheets.push(Sheets { pattern: pattern(random), ..other });
        }
        let mut cards: Vec<usize> = sheets.iter().map(|_| between(random, 1, if two { 3 } else { 4 })).collect();
        if two && !one_in(random, 3) {
            cards[1] = cards[0];
        }
        let pieces = (0..between(random, 1, 4)).map(|piece| Piece::draw(random, size, (two, piece == 0))).collect();
        Self { unit, sheets, pieces, cards }
    }

    fn is_small(&self) -> bool {
        self.papers().iter().all(|paper| {
            let sheets: usize = paper.stacks.iter().map(|stack| stack.count).sum();
            paper.wanted.iter().map(|&n| if n == 0 { 1 } else { n + sheets }).product::<usize>() <= MOST_COUNTS
        })
    }

    /// Seldom one that areas or single pieces all but decide: too full, sheets to spare, a piece
    /// that lies on no sheet.
    fn is_likely(&self, random: &mut Seeded) -> bool {
        let (mut possible, mut full, mut needed, mut fits) = (true, false, false, true);
        for paper in self.papers() {
            let have: usize = paper.stacks.iter().map(|stack| stack.count * stack.width * stack.height).sum();
            let mut want = 0;
            for (kind, Kind { width, height }) in self.kinds().into_iter().enumerate() {
                let lies = |w, h| paper.stacks.iter().any(|stack| w <= stack.width && h <= stack.height);
                let turned = paper.turns[kind] && lies(height, width);
                fits &= paper.wanted[kind] == 0 || turned || lies(width, height);
                want += paper.wanted[kind] * width * height;
            }
            possible &= want <= have;
            full |= want * 4 > have * 3;
            needed |= want * 5 > have * 2;
        }
        possible && ((fits && needed && !full) || one_in(random, 60))
    }

    /// As a designer writes it.
    pub(super) fn text(&self) -> String {
        let inch = |units: usize| inch(units * self.unit);
        let mut text = format!("cards: {}\npapers:\n", self.cards.iter().sum::<usize>());
        for (sheets, name) in self.sheets.iter().zip(PAPERS) {
            let stacks: Vec<String> = sheets
                .stacks
                .iter()
                .map(|&(count, width, height)| format!("{count} of {} x {}", inch(width), inch(height)))
                .collect();
            text += &format!("  {name}:\n    sheets: {}\n    pattern: {}\n", stacks.join(" and "), sheets.pattern);
            if let Some((wide, edge, beside)) = sheets.strip {
                let how = if beside { "beside" } else { "within" };
                text += &format!("    edge strip: {} at the {}, {how}\n", inch(wide), EDGES[edge]);
            }
        }
        text += "pieces:\n";
        for (piece, name) in self.pieces.iter().zip(PIECES) {
            let from = if piece.varies { "varies" } else { PAPERS[piece.papers[0]] };
            let size = format!("{} x {}", inch(piece.kind.width), inch(piece.kind.height));
            text += &format!("  {name}:\n    size: {size}\n    from: {from}\n    per card: {}\n", piece.each);
            text += if piece.upright { "    pattern: upright\n" } else { "" };
        }
        if self.cards.len() > 1 {
            text += "versions:\n";
            for (version, cards) in self.cards.iter().enumerate() {
                let varying = self.pieces.iter().zip(PIECES).filter(|(piece, _)| piece.varies);
                let papers: Vec<String> =
                    varying.map(|(piece, name)| format!("{name}: {}", PAPERS[piece.papers[version]])).collect();
                text += &format!("  - name: version {version}\n    cards: {cards}\n");
                text += &format!("    papers: {{{}}}\n", papers.join(", "));
            }
        }
        text
    }

    /// The kinds of piece.
    pub(super) fn kinds(&self) -> Vec<Kind> {
        self.pieces.iter().map(|piece| piece.kind).collect()
    }

    /// Under 1/2 in is narrow, and 1 in holds it.
    pub(super) const fn rules(&self) -> Rules {
        Rules { narrow: 2 / self.unit, hold: 4 / self.unit }
    }

    /// What is wanted from which sheets.
    pub(super) fn papers(&self) -> Vec<Paper> {
        self.papers_for(&self.cards)
    }

    fn papers_for(&self, cards: &[usize]) -> Vec<Paper> {
        let from = |paper: usize, piece: &Piece| {
            let versions = piece.papers.iter().zip(cards).filter(|(from, _)| **from == paper);
            versions.map(|(_, cards)| cards * piece.each).sum()
        };
        let paper = |(paper, sheets): (usize, &Sheets)| Paper {
            stacks: sheets.usable(),
            wanted: self.pieces.iter().map(|piece| from(paper, piece)).collect(),
            turns: self.pieces.iter().map(|piece| sheets.pattern == "any" && !piece.upright).collect(),
        };
        self.sheets.iter().enumerate().map(paper).collect()
    }

    /// The most whole cards, by trying all shares of them over the versions.
    pub(super) fn most_cards(&self) -> usize {
        let mut shares = vec![Vec::new()];
        for &cards in &self.cards {
            let longer = |share: Vec<usize>| (0..=cards).map(move |n| share.iter().copied().chain([n]).collect());
            shares = shares.into_iter().flat_map(longer).collect();
        }
        let fits =
            |share: &[usize]| self.papers_for(share).iter().all(|paper| gives(&self.kinds(), self.rules(), paper));
        let fitting = shares.iter().filter(|share| fits(share));
        fitting.map(|share| share.iter().sum()).max().unwrap_or(0)
    }
}

impl Sheets {
    fn draw(random: &mut Seeded, (width, height): (usize, usize), two: bool) -> Self {
        let count = if two { between(random, 1, 2) } else { between(random, 1, 3).max(between(random, 1, 3)) };
        let mut stacks = vec![(count, width, height)];
        if count > 1 && one_in(random, 5) {
            stacks[0].0 -= 1;
            stacks.push((1, between(random, SHORTEST, LONGEST), between(random, SHORTEST, LONGEST)));
        }
        let strip = (between(random, 1, 2), between(random, 0, 3), one_in(random, 2));
        let strip = one_in(random, 5)
            .then_some(strip)
            .filter(|(.., beside)| *beside || stacks.iter().all(|(_, width, height)| *width > 2 && *height > 2));
        Self { stacks, strip, pattern: pattern(random) }
    }

    /// The sheets when the strip is off.
    fn usable(&self) -> Vec<Stack> {
        let stack = |&(count, mut width, mut height): &(usize, usize, usize)| {
            let strip = self.strip.map(|(wide, edge, beside)| {
                let side = if edge < 2 { &mut width } else { &mut height };
                *side -= if beside { 0 } else { wide };
                (wide, edge)
            });
            Stack { width, height, count, strip }
        };
        self.stacks.iter().map(stack).collect()
    }
}

impl Piece {
    fn draw(random: &mut Seeded, (width, height): (usize, usize), (two, first): (bool, bool)) -> Self {
        // Mostly small ones: several must go on a sheet.
        let large = one_in(random, 4);
        let mut side = |length: usize| {
            let most = if large { length } else { (length * 2).div_ceil(3) };
            between(random, 1, most).min(between(random, 1, most + 2))
        };
        let kind = Kind { width: side(width), height: side(height) };
        let varies = two && (first || !one_in(random, 3));
        let paper = if two { between(random, 0, 1) } else { 0 };
        let papers = match (two, varies) {
            (false, _) => vec![0],
            (true, false) => vec![paper, paper],
            // In the one version from one paper, in the other from the other.
            (true, true) => vec![paper, 1 - paper],
        };
        Self {
            kind,
            upright: one_in(random, 4),
            each: between(random, 1, 3).min(between(random, 1, 4)),
            papers,
            varies,
        }
    }
}

fn between(random: &mut Seeded, from: usize, to: usize) -> usize {
    from + random.under((to - from + 1) as u64) as usize
}

fn one_in(random: &mut Seeded, many: u64) -> bool {
    random.under(many) == 0
}

fn pattern(random: &mut Seeded) -> &'static str {
    PATTERNS[between(random, 0, 3)]
}

/// Quarters of an inch as a designer writes them.
fn inch(quarters: usize) -> String {
    let fraction = ["", "1/4", "1/2", "3/4"][quarters % 4];
    match (quarters / 4, fraction) {
        (0, fraction) => format!("{fraction} in"),
        (whole, "") => format!("{whole} in"),
        (whole, fraction) => format!("{whole} {fraction} in"),
    }
}
