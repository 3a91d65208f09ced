//! Designs written by throws of dice: mostly sound, with every kind of key.

mod faces;

use std::fmt::Write;
use trimwright::length::{Length, Units};

/// Throws of dice, one after another; when they run out, every throw is the lowest.
struct Dice {
    tape: Vec<u16>,
    at: usize,
}

impl Dice {
    fn of(&mut self, sides: usize) -> usize {
        let thrown = self.tape.get(self.at).copied().unwrap_or(0);
        self.at += 1;
        usize::from(thrown) % sides
    }

    fn one<'a>(&mut self, of: &[&'a str]) -> &'a str {
        of[self.of(of.len())]
    }

    /// Once in so many throws.
    fn chance(&mut self, sides: usize) -> bool {
        self.of(sides) == sides - 1
    }
}

/// A design as it is being written.
struct Writer {
    dice: Dice,
    units: usize,
    text: String,
    layers: usize,
    /// Sizes of the pieces, in eighths of an inch or 3 mm.
    pieces: Vec<[usize; 2]>,
    with_windows: Vec<usize>,
    /// Those that each version says the paper of.
    varying: Vec<usize>,
    versions: bool,
}

const UNITS: [&str; 3] = ["inch", "metric", "inch and metric"];

impl Writer {
    /// So many eighths of an inch, or as many times 3 mm.
    fn length(&self, eighths: usize) -> String {
        let inch = Length::inch(eighths as i64, 8).to_string();
        let metric = Length::mm(3 * eighths as i64).to_string();
        self.either(&inch, &metric)
    }

    fn either(&self, inch: &str, metric: &str) -> String {
        match self.units {
            0 => inch.to_owned(),
            1 => metric.to_owned(),
            _ => format!("{inch} | {metric}"),
        }
    }

    fn size(&self, [width, height]: [usize; 2]) -> String {
        let inch = |side: usize| Length::inch(side as i64, 8).number(Units::Inch);
        let metric = format!("{} x {} mm", 3 * width, 3 * height);
        self.either(&format!("{} x {} in", inch(width), inch(height)), &metric)
    }

    fn short(&mut self, most: usize) -> String {
        let eighths = 1 + self.dice.of(most);
        self.length(eighths)
    }

    fn line(&mut self, depth: usize, line: &str) {
        let _ = writeln!(self.text, "{:1$}{line}", "", depth * 2);
    }

    fn design(mut self) -> String {
        self.units = self.dice.of(3);
        self.versions = self.dice.chance(2);
        let cards = if self.versions { 2 } else { 1 + self.dice.of(2) };
        self.line(0, "title: Any\nmonth: 2027-01");
        self.line(0, &format!("cards: {cards}\nunits: {}", UNITS[self.units]));
        if self.dice.chance(4) {
            let ruler = self.either("1/8 in", "2 mm");
            self.line(0, &format!("workshop: {{ruler: {ruler}}}"));
        }
        let size = [20 + self.dice.of(10), 20 + self.dice.of(14)];
        let fold = self.dice.one(&["side", "top", "none", "gate", "{accordion: 3}"]);
        self.line(0, &format!("card:\n  size: {}\n  fold: {fold}\n  from: white", self.size(size)));
        self.papers();
        self.all_pieces();
        self.decorations();
        if self.versions {
            let varying = self.varying.clone();
            for name in ["one", "other"] {
                let papers: Vec<String> =
                    varying.iter().map(|n| format!("p{n}: {}", self.dice.one(&["dusk", "white"]))).collect();
                let head = if name == "one" { "versions:\n" } else { "" };
                let two_sided = self.text.contains("sides:") && !varying.is_empty();
                let side = if two_sided && self.dice.chance(4) { "\n    side: back" } else { "" };
                self.line(
                    0,
                    &format!("{head}  - name: {name}\n    cards: 1\n    papers: {{{}}}{side}", papers.join(", ")),
                );
            }
        }
        self.faces(fold);
        if self.dice.chance(2) {
            let on = self.dice.one(&["l0", "cutting", "stamping", "folding", "decorating", "posting"]);
            self.line(0, &format!("notes:\n  - on: {on}\n    say: Take care."));
            self.line(0, "leftovers:\n  - from: dusk\n    idea: A tag.\nsupplies: [ink]\ntools: [fine pen]");
        }
        self.text
    }

    fn papers(&mut self) {
        let sheets = self.either("4 of 12 x 12 in", "4 of 300 x 300 mm");
        self.line(0, &format!("papers:\n  white:\n    sheets: {sheets}"));
        let sheets = self.either("3 of 6 x 6 in", "3 of 150 x 150 mm");
        self.line(1, &format!("dusk:\n    sheets: {sheets}"));
        match self.dice.of(5) {
            0 => self.line(2, "pattern: one-way"),
            1 => self.line(2, "pattern: two-way"),
            2 => self.line(2, "sides: {front: one-way, back: any}\n    turned over: top to bottom"),
            _ => {}
        }
        let width = self.short(4);
        match self.dice.of(6) {
            0 => self.line(2, &format!("edge strip: {width} at the bottom, beside")),
            1 => self.line(2, &format!("edge strip: {width} at the left, within")),
            2 => self.line(2, "sheets are: different"),
            3 => self.line(2, "ways to cut: 2"),
            _ => {}
        }
        match self.dice.of(6) {
            0 => {
                let size = self.size([8, 8]);
                self.line(2, &format!("keep: {{slip: {size}}}"));
            }
            1 => {
                let from = self.length(12);
                self.line(2, &format!("cut first:\n      - {from} from the top"));
            }
            2 => self.line(2, "along the edge: {p0: left}"),
            3 => {
                let also = self.either("1 of 12 x 12 in", "1 of 300 x 300 mm");
                self.line(2, &format!("also from:\n      - {also}"));
            }
            _ => {}
        }
        let (sheets, size) = (self.either("1 of 6 x 6 in", "1 of 150 x 150 mm"), self.size([12, 12]));
        let left = self.length(4);
        self.line(
            1,
            &format!(
                "pictures:\n    sheets: {sheets}\n    cells: {{called: scene, size: {size}, columns: 2, rows: 2, left: {left}, top: {left}}}"
            ),
        );
        if !self.text.contains("slip:") {
            let sheets = self.either("1 of 6 x 6 in", "1 of 150 x 150 mm");
            self.line(1, &format!("slip:\n    sheets: {sheets}\n    weight: 80 lb cover"));
        }
    }

    fn all_pieces(&mut self) {
        self.line(0, "pieces:");
        for number in 0..3 + self.dice.of(3) {
            self.piece(number);
        }
    }

    fn piece(&mut self, number: usize) {
        let mut own = [4 + self.dice.of(16), 4 + self.dice.of(16)];
        self.line(1, &format!("p{number}:"));
        if !self.with_windows.is_empty() && self.dice.chance(2) {
            let frame = self.with_windows[self.dice.of(self.with_windows.len())];
            // As small as the smallest window; now and then larger than any.
            own = if self.dice.chance(8) { own } else { [2, 2] };
            let size = self.size(own);
            self.line(2, &format!("size: {size}\n    from: window of p{frame}"));
            self.pieces.push(own);
            return;
        }
        let square = self.dice.chance(4);
        if square {
            own[1] = own[0];
        }
        let border = self.short(2);
        // A size by relation is known only when it is followed: its form must suit any.
        let mut related = !square;
        match self.dice.of(12) {
            0 if !square => self.line(2, &format!("size: card less {border} all round")),
            1 if number > 0 && !square => self.line(2, &format!("size: p{} less {border} all round", number - 1)),
            2 if !square => self.line(2, "size: {width: half of card, height: a third of card}"),
            _ => {
                related = false;
                let size = self.size(own);
                self.line(2, &format!("size: {size}"));
            }
        }
        let from = match self.dice.of(12) {
            0 => "scene".to_owned(),
            1 => "slip".to_owned(),
            4..=6 => "white".to_owned(),
            7 | 8 if self.versions => {
                self.varying.push(number);
                "varies".to_owned()
            }
            _ => "dusk".to_owned(),
        };
        self.line(2, &format!("from: {from}"));
        let plain = self.text.len();
        let round = self.form(own, square, related);
        let is_rectangle = self.text.len() == plain;
        let margin = if self.dice.chance(3) { self.either("1/16 in", "1 mm") } else { self.short(3) };
        let mut by = "";
        if round || self.dice.chance(6) {
            by = self.dice.one(&["die", "punch"]);
            self.line(2, &format!("by: {by}\n    margin: {margin}"));
        }
        // Now and then a window that cannot be cut, to be refused.
        let has_room = is_rectangle && !related && own.iter().all(|side| *side > 8);
        let is_cut = (has_room || self.dice.chance(40)) && self.dice.chance(2);
        if is_cut && self.window(&margin) {
            self.with_windows.push(number);
        }
        match self.dice.of(8) {
            0 => self.line(2, "stamp: hello"),
            1 => self.line(2, "printed: hello"),
            2..=4 if by == "die" => self.line(2, "die-cut words: hello"),
            5 => self.line(2, "pattern: upright"),
            6 | 7 if from == "dusk" && self.text.contains("sides:") => self.line(2, "side: back"),
            _ => {}
        }
        self.pieces.push(own);
    }

    /// A window; whether anything that is small enough can be cut from what it leaves.
    fn window(&mut self, near: &str) -> bool {
        let sides = [2 + self.dice.of(3), 2 + self.dice.of(3)];
        let (size, left) = (self.size(sides), self.short(3));
        let place = match self.dice.of(3) {
            0 => "centre: both ways".to_owned(),
            1 => format!("centre: across, top: {near}"),
            _ => format!("left: {left}, bottom: {near}"),
        };
        let form = self.dice.one(&["", ", shape: diamond", ", shape: oval, by: die", ", by: punch"]);
        self.line(2, &format!("window:\n      - {{size: {size}, {place}{form}}}"));
        !form.contains("shape")
    }

    /// A shape, or none; whether it is round, so that only a die or punch cuts it.
    fn form(&mut self, own: [usize; 2], square: bool, related: bool) -> bool {
        let deep = self.short(2);
        match self.dice.of(14) {
            0 => {
                let corner = self.dice.one(&["bottom left", "bottom right", "top left", "top right"]);
                self.line(2, &format!("shape: triangle, right angle at {corner}"));
            }
            1 => self.line(2, "shape: diamond"),
            2 => {
                let end = self.dice.one(&["fishtail: bottom", "pointed: top", "fishtail: left"]);
                self.line(2, &format!("shape: {{{end}, deep: {deep}}}"));
            }
            3 => {
                let deep = self.length(1);
                let ends = format!("fishtail: left, deep: {deep}, and: {{pointed: right, deep: {deep}}}");
                self.line(2, &format!("shape: {{{ends}}}"));
            }
            4 => self.line(2, &format!("shape: {{rounded: {deep}, corners: [top left, bottom right]}}")),
            5 if !related => {
                let [width, height] = own;
                let corners = [[0, 0], [width, 0], [width / 2, height]];
                let corners: Vec<String> = corners
                    .iter()
                    .map(|[across, up]| format!("[{}, {}]", self.length(*across), self.length(*up)))
                    .collect();
                self.line(2, &format!("shape:\n      corners: [{}]", corners.join(", ")));
            }
            6 => {
                self.line(2, if square { "shape: circle" } else { "shape: oval" });
                return true;
            }
            _ => {}
        }
        false
    }

    fn decorations(&mut self) {
        let (bead, band) = (self.size([1, 1]), self.size([24, 1]));
        let (thick, long) = (self.short(3), 20 + self.dice.of(50));
        let roll = self.length(long);
        self.line(0, "decorations:");
        self.line(1, &format!("bead: {{size: {bead}, form: round, thick: {thick}}}"));
        self.line(1, &format!("band: {{size: {band}, length: {roll}}}"));
    }
}

pub(super) fn written(tape: Vec<u16>) -> String {
    let dice = Dice { tape, at: 0 };
    let writer = Writer {
        dice,
        units: 0,
        text: String::new(),
        layers: 0,
        pieces: Vec::new(),
        with_windows: Vec::new(),
        varying: Vec::new(),
        versions: false,
    };
    writer.design()
}
