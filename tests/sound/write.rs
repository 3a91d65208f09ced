//! The text of a design in which everything fits by construction, in inches, millimetres or both.

use super::bands;
use crate::support::dice::Dice;
use std::fmt::Write;
use std::ops::{Add, Mul, Sub};

/// A length in both systems: sixteenths of an inch, millimetres. Everything is reckoned in both at once, so that
/// what fits fits in either edition.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Both(pub(super) i64, pub(super) i64);

impl Add for Both {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0, self.1 + other.1)
    }
}

impl Sub for Both {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0, self.1 - other.1)
    }
}

impl Mul<i64> for Both {
    type Output = Self;
    fn mul(self, times: i64) -> Self {
        Self(self.0 * times, self.1 * times)
    }
}

impl Both {
    /// So many eighths of an inch and as many times 3 mm.
    pub(super) const fn eighths(eighths: i64) -> Self {
        Self(2 * eighths, 3 * eighths)
    }
    /// Whether it is no longer than another in either system.
    pub(super) const fn within(self, other: Self) -> bool {
        self.0 <= other.0 && self.1 <= other.1
    }
    /// A whole part of it, rounded down to the ruler in each system.
    pub(super) const fn share(self, parts: i64) -> Self {
        Self(self.0.div_euclid(parts), self.1.div_euclid(parts))
    }
}

/// The usual border.
pub(super) const BORDER: Both = Both::eighths(1);
/// A comfortable end to trim.
pub(super) const END: Both = Both::eighths(2);

/// Width and height.
pub(super) type Size = [Both; 2];

/// A piece as it stands in the list.
#[derive(Debug, Clone)]
struct Piece {
    name: String,
    /// Lines below its name.
    lines: Vec<String>,
    blank: Size,
    per_card: i64,
    from: Paper,
}

/// Where a piece comes from: a paper, or one for each version.
#[derive(Debug, Clone)]
enum Paper {
    Of(usize),
    Varies(Vec<usize>),
    None,
}

/// Papers besides that of the bases, which is the first.
const PAPERS: [&str; 8] = ["white", "dusk", "ember", "slate", "moss", "fennel", "borage", "radish"];

/// Kinds of piece from one paper, up to which another paper is not looked for.
const MOST_KINDS: usize = 3;

/// A design as it is being written.
pub(super) struct Sheet {
    pub(super) dice: Dice,
    /// 0 inches, 1 millimetres, 2 both.
    units: usize,
    pub(super) cards: i64,
    /// Cards of each version; one where there are none.
    versions: Vec<i64>,
    papers: usize,
    /// Papers that nothing is cut from.
    unused: Vec<usize>,
    pieces: Vec<Piece>,
    pub(super) decorations: Vec<String>,
    /// What lines the flap of the envelope.
    pub(super) liner: Option<String>,
    /// Layers, face by face.
    pub(super) front: String,
    pub(super) inside: String,
    pub(super) back: String,
}

/// Fronts of cards, with how they fold: quarter letter and A6, 5 x 7 in and their like.
const CARDS: [([i64; 4], &[&str]); 6] = [
    ([68, 88, 104, 148], &["side", "none", "gate", "top"]),
    ([88, 68, 148, 104], &["top", "side", "none"]),
    ([64, 64, 100, 100], &["side", "{accordion: 3}", "top", "none"]),
    ([80, 112, 126, 178], &["side", "gate", "none"]),
    ([64, 96, 100, 150], &["{accordion: 3}", "side", "gate"]),
    ([80, 80, 130, 130], &["side", "top", "none"]),
];

impl Sheet {
    pub(super) fn new(seed: u64) -> Self {
        let mut dice = Dice::new(seed);
        let units = dice.of(3);
        let cards = 1 + i64::try_from(dice.of(if dice.clone().chance(2) { 24 } else { 8 })).unwrap_or(0);
        let several = cards > 1 && dice.chance(3);
        let versions = if several { vec![cards - cards / 2, cards / 2] } else { vec![cards] };
        let papers = (if several { 3 } else { 1 + usize::from(dice.chance(2)) }) + dice.of(5);
        Self {
            dice,
            units,
            cards,
            versions,
            papers: papers.min(PAPERS.len()),
            unused: Vec::new(),
            pieces: Vec::new(),
            decorations: Vec::new(),
            liner: None,
            front: String::new(),
            inside: String::new(),
            back: String::new(),
        }
    }

    /// A length as it is written.
    pub(super) fn length(&self, length: Both) -> String {
        let Both(sixteenths, mm) = length;
        self.either(&format!("{} in", inches(sixteenths)), &format!("{mm} mm"))
    }

    pub(super) fn size(&self, [width, height]: Size) -> String {
        let inch = format!("{} x {} in", inches(width.0), inches(height.0));
        self.either(&inch, &format!("{} x {} mm", width.1, height.1))
    }

    pub(super) fn either(&self, inch: &str, metric: &str) -> String {
        match self.units {
            0 => inch.to_owned(),
            1 => metric.to_owned(),
            _ => format!("{inch} | {metric}"),
        }
    }

    /// A name that no piece has yet.
    pub(super) fn named(&self, wanted: &str) -> String {
        let taken = |name: &str| self.pieces.iter().any(|piece| piece.name == name);
        let orders = ["", "second ", "third ", "fourth ", "fifth ", "sixth ", "seventh "];
        let names = orders.iter().map(|order| format!("{order}{wanted}"));
        names.into_iter().find(|name| !taken(name)).unwrap_or_else(|| format!("last {wanted}"))
    }

    /// Adds a piece that so many are needed of a card, from any paper; `size` is how its size is written.
    pub(super) fn piece(&mut self, wanted: &str, size: &str, own: Size, per_card: i64, more: &[String]) -> String {
        let name = self.named(wanted);
        let varies = self.versions.len() > 1 && self.papers > 2 && self.dice.chance(2);
        let of = self.paper_with_room();
        let from = if varies { Paper::Varies(vec![1, 2]) } else { Paper::Of(of) };
        let word = if varies { "varies" } else { PAPERS[of] };
        let mut lines = vec![format!("size: {size}"), format!("from: {word}")];
        lines.extend_from_slice(more);
        self.pieces.push(Piece { name: name.clone(), lines, blank: own, per_card, from });
        name
    }

    /// A paper from which few kinds of piece are cut so far, as most are; another one where there is none.
    fn paper_with_room(&mut self) -> usize {
        let kinds = |paper: usize| {
            let takes = |piece: &&Piece| match &piece.from {
                Paper::Of(own) => *own == paper,
                Paper::Varies(papers) => papers.contains(&paper),
                Paper::None => false,
            };
            self.pieces.iter().filter(takes).count() + usize::from(paper == 0)
        };
        let free: Vec<usize> = (0..self.papers).filter(|paper| kinds(*paper) < MOST_KINDS).collect();
        if free.is_empty() && self.papers < PAPERS.len() {
            self.papers += 1;
            return self.papers - 1;
        }
        let fewest = (0..self.papers).min_by_key(|paper| kinds(*paper)).unwrap_or(0);
        if free.is_empty() { fewest } else { self.dice.one(&free) }
    }

    /// Adds what is cut out of a window and used again.
    pub(super) fn pane(&mut self, frame: &str, own: Size) -> String {
        let name = self.named("pane");
        let lines = vec![format!("size: {}", self.size(own)), format!("from: window of {frame}")];
        self.pieces.push(Piece { name: name.clone(), lines, blank: own, per_card: 1, from: Paper::None });
        name
    }

    /// The whole text.
    pub(super) fn text(mut self) -> String {
        let ([w, h, wide, high], folds) = self.dice.one(&CARDS);
        let card = [Both(w, wide), Both(h, high)];
        let fold = self.dice.one(folds);
        bands::faces(&mut self, card, fold);
        let flat = match fold {
            "side" | "gate" => [card[0] * 2, card[1]],
            "top" => [card[0], card[1] * 2],
            "none" => card,
            _ => [card[0] * 3, card[1]],
        };
        let base = Piece { name: "base".into(), lines: Vec::new(), blank: flat, per_card: 1, from: Paper::Of(0) };
        self.pieces.insert(0, base);
        self.vary();
        let units = ["inch", "metric", "inch and metric"][self.units];
        let mut text = format!("title: Paper Garden\nmonth: 2027-05\ncards: {}\nunits: {units}\n", self.cards);
        let _ = writeln!(text, "card:\n  size: {}\n  fold: {fold}\n  from: white\npapers:", self.size(card));
        let used: Vec<usize> = (0..self.papers).filter(|paper| !self.unused.contains(paper)).collect();
        for paper in used {
            self.paper(paper, &mut text);
        }
        text.push_str("pieces:\n");
        for piece in self.pieces.iter().skip(1) {
            let _ = writeln!(text, "  {}:", piece.name);
            for line in &piece.lines {
                let _ = writeln!(text, "    {line}");
            }
        }
        if !self.decorations.is_empty() {
            let _ = writeln!(text, "decorations:\n{}", self.decorations.join("\n"));
        }
        self.write_versions(&mut text);
        for (face, layers) in [("front", &self.front), ("inside", &self.inside), ("back", &self.back)] {
            if !layers.is_empty() {
                let _ = write!(text, "{face}:\n{layers}");
            }
        }
        self.envelope(card, &mut text);
        text
    }

    pub(super) const fn paper_name(paper: usize) -> &'static str {
        PAPERS[paper]
    }

    /// The rectangles that are cut from a paper, with how many of each for all cards.
    pub(super) fn wanted_of(&self, paper: usize) -> Vec<(Size, i64)> {
        let count = |piece: &Piece| match &piece.from {
            Paper::Of(own) => {
                if *own == paper {
                    self.cards
                } else {
                    0
                }
            }
            Paper::Varies(papers) => {
                papers.iter().zip(&self.versions).filter(|(own, _)| **own == paper).map(|(_, cards)| cards).sum()
            }
            Paper::None => 0,
        };
        let all = self.pieces.iter().map(|piece| (piece.blank, count(piece) * piece.per_card));
        all.filter(|(_, count)| *count > 0).collect()
    }

    fn write_versions(&self, text: &mut String) {
        if self.versions.len() < 2 {
            return;
        }
        text.push_str("versions:\n");
        for (number, (name, cards)) in ["first", "second"].iter().zip(&self.versions).enumerate() {
            let papers = self.pieces.iter().filter_map(|piece| match &piece.from {
                Paper::Varies(papers) => Some(format!("{}: {}", piece.name, PAPERS[papers[number]])),
                Paper::Of(_) | Paper::None => None,
            });
            let papers: Vec<String> = papers.collect();
            let _ = writeln!(text, "  - name: {name}\n    cards: {cards}\n    papers: {{{}}}", papers.join(", "));
        }
    }

    /// Two versions with nothing that varies would be alike; one is made to.
    fn vary(&mut self) {
        let one = |piece: &Piece| matches!(piece.from, Paper::Varies(_));
        if self.versions.len() > 1
            && !self.pieces.iter().any(one)
            && let Some(piece) = self.pieces.iter_mut().skip(1).find(|piece| !matches!(piece.from, Paper::None))
        {
            piece.from = Paper::Varies(vec![1, 2]);
            piece.lines[1] = "from: varies".to_owned();
        }
        // Every other piece that varies takes the papers the other way round.
        let varying = self.pieces.iter_mut().filter_map(|piece| match &mut piece.from {
            Paper::Varies(papers) => Some(papers),
            Paper::Of(_) | Paper::None => None,
        });
        varying.enumerate().filter(|(n, _)| n % 2 == 1).for_each(|(_, papers)| papers.reverse());
        // What is never asked for is not bought.
        let used = |paper: usize| {
            self.pieces.iter().any(|piece| match &piece.from {
                Paper::Of(own) => *own == paper,
                Paper::Varies(papers) => papers.contains(&paper),
                Paper::None => false,
            })
        };
        self.unused = (0..self.papers).filter(|paper| !used(*paper)).collect();
    }
}

/// Sixteenths of an inch as a ruler is read.
fn inches(sixteenths: i64) -> String {
    let (whole, rest) = (sixteenths / 16, sixteenths % 16);
    let shared = [16, 8, 4, 2, 1].into_iter().find(|n| rest % n == 0).unwrap_or(1);
    match (whole, rest) {
        (whole, 0) => whole.to_string(),
        (0, rest) => format!("{}/{}", rest / shared, 16 / shared),
        (whole, rest) => format!("{whole} {}/{}", rest / shared, 16 / shared),
    }
}
