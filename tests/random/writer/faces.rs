//! The layers of a design at random, face by face.

use super::Writer;

impl Writer {
    pub(super) fn faces(&mut self, fold: &str) {
        self.list(0, "front", &[]);
        if fold != "none" && self.dice.chance(2) {
            let panels: &[&str] = match fold {
                "side" => &["left", "right"],
                "top" => &["upper", "lower"],
                "gate" => &["left", "middle", "right"],
                _ => &["1", "3"],
            };
            self.list(0, "inside", panels);
        }
        if self.dice.chance(3) {
            self.list(0, "back", &[]);
        }
        if self.dice.chance(3) {
            let (size, flap) = (self.size([36, 40]), self.length(12));
            self.line(0, &format!("envelope:\n  size: {size}\n  flap: {flap}"));
            self.list(1, "front", &[]);
            self.list(1, "on the flap", &[]);
        }
    }

    fn list(&mut self, depth: usize, name: &str, panels: &[&str]) {
        self.line(depth, &format!("{name}:"));
        let first = self.layers;
        // Layers of two panels cannot be laid by each other; now and then one tries.
        let whole = panels.is_empty() || self.dice.chance(2);
        let panels = if whole { &[] } else { &panels[self.dice.of(panels.len())..][..1] };
        for _ in 0..1 + self.dice.of(3) {
            self.layer(depth + 1, first, None, panels, 2);
        }
    }

    fn layer(&mut self, depth: usize, first: usize, unit: Option<usize>, panels: &[&str], deep: usize) {
        let number = self.layers;
        self.layers += 1;
        let bought = self.dice.chance(7);
        let piece = if bought {
            self.dice.one(&["bead", "band"]).to_owned()
        } else {
            format!("p{}", self.dice.of(self.pieces.len()))
        };
        self.line(depth, &format!("- place: {piece}\n{:1$}as: l{number}", "", depth * 2 + 2));
        let depth = depth + 1;
        let before = number - first;
        let mut onto = false;
        if before > 0 && self.dice.chance(2) {
            let other = unit.unwrap_or(first + self.dice.of(before));
            self.line(depth, &format!("onto: l{other}"));
            onto = true;
        }
        if !onto && unit.is_none() && !panels.is_empty() && !self.dice.chance(20) {
            let panel = self.dice.one(panels);
            self.line(depth, &format!("panel: {panel}"));
        }
        let mut even = false;
        for (axis, low, high) in [("across", "left", "right"), ("up and down", "bottom", "top")] {
            let by = self.short(8);
            let other = first + if before > 0 { self.dice.of(before) } else { 0 };
            let across = axis == "across";
            match self.dice.of(9) {
                0..=2 => {
                    if self.text.ends_with("centre: across\n") {
                        self.text.truncate(self.text.len() - "across\n".len());
                        self.text.push_str("both ways\n");
                    } else {
                        self.line(depth, &format!("centre: {axis}"));
                    }
                }
                3 if before > 0 => {
                    self.line(depth, &format!("{}: l{other}", if across { "right of" } else { "below" }))
                }
                4 if before > 0 => self.line(depth, &format!("{low} with: l{other}")),
                5 if before > 0 => {
                    self.line(depth, &format!("centred {}: l{other}", if across { "across" } else { "up" }));
                }
                6 => {
                    let way = if across { "across" } else { "up" };
                    self.line(depth, &format!("midway {way}: {low} edge and {high} edge"));
                }
                7 if across && !even => even = true,
                8 => self.line(depth, &format!("{high}: {by}")),
                _ => self.line(depth, &format!("{low}: {by}")),
            }
        }
        let (gap, step) = (self.short(2), self.short(4));
        match self.dice.of(if even { 1 } else { 14 }) {
            0 if even => self.line(depth, "row: {count: 2, gap: even}"),
            0 => self.line(depth, &format!("row: {{count: 2, gap: {gap}}}")),
            1 => self.line(depth, &format!("column: {{count: 2, gap: {gap}}}")),
            2 => self.line(depth, &format!("grid: {{columns: 2, rows: 1, gap: {gap}}}")),
            3 => self.line(depth, &format!("steps: {{count: 2, right: {step}, down: {gap}}}")),
            4 => self.line(depth, &format!("triangle: {{rows: 2, gap: {gap}, pointing: up}}")),
            5 => self.line(depth, "fan: {count: 3, step: 17 degrees, about: bottom}"),
            6 => self.line(depth, "pinwheel: clockwise"),
            _ => {}
        }
        if self.dice.chance(6) {
            let way = self.dice.one(&["left to right", "top to bottom"]);
            self.line(depth, &format!("mirrored: {way}"));
        }
        match self.dice.of(20) {
            0 => self.line(depth, "turned: quarter left"),
            1 => self.line(depth, "turned: half"),
            2 => self.line(depth, "turned: 12.5 degrees right about top left"),
            3 => {
                let by = self.short(2);
                self.line(depth, &format!("shifted: {by} left"));
            }
            _ => {}
        }
        match self.dice.of(8) {
            0 => self.line(depth, "trim flush: card"),
            1 if before > 0 => {
                let other = unit.unwrap_or(first + self.dice.of(before));
                self.line(depth, &format!("trim flush: l{other}"));
            }
            2 => {
                let shows = self.short(2);
                self.line(depth, &format!("shows: {shows} left"));
            }
            _ => {}
        }
        if !self.dice.chance(8) {
            let glue = self.dice.one(&["tape", "liquid", "foam", "foam", "dot"]);
            self.line(depth, &format!("glue: {glue}"));
        }
        if deep > 0 && !bought && self.dice.chance(3) {
            self.line(depth, "first:");
            for _ in 0..1 + self.dice.of(2) {
                self.layer(depth + 1, first, Some(number), panels, deep - 1);
            }
        }
    }
}
