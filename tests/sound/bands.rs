//! What lies on the faces of a sound design: mats in each other, and bands on the last of them from its top down.

use super::write::{BORDER, Both, END, Sheet, Size};
use std::fmt::Write;

/// How far the flap of an envelope reaches.
pub(super) const FLAP: Both = Both(32, 54);

/// All faces.
pub(super) fn faces(sheet: &mut Sheet, card: Size, fold: &str) {
    let mut main = String::new();
    let panel = if fold == "gate" { "panel: middle" } else { "" };
    mats(sheet, card, panel, &mut main);
    if fold == "gate" {
        sheet.inside = main;
        flaps(sheet, card);
    } else {
        sheet.front = main;
        if fold != "none" && sheet.dice.chance(3) {
            lining(sheet, card, fold);
        }
    }
    if sheet.dice.chance(5) {
        let side = Both::eighths(8);
        let size = sheet.size([side, side]);
        let mark = sheet.piece("mark", &size, [side, side], 1, &[]);
        let bottom = sheet.length(END);
        let _ = writeln!(sheet.back, "  - {{place: {mark}, centre: across, bottom: {bottom}, glue: tape}}");
        if card[0].0 % 2 != 0 || card[0].1 % 2 != 0 {
            sheet.back = format!("  - {{place: {mark}, left: {bottom}, bottom: {bottom}, glue: tape}}\n");
        }
    }
    if sheet.dice.chance(6) {
        let long = if card[0].within(card[1]) { card[1] } else { card[0] };
        let own = [long - END - END, FLAP - END - END];
        let own = own.map(|side| Both(side.0 / 4 * 4, side.1 / 2 * 2));
        let size = sheet.size(own);
        sheet.liner = Some(sheet.piece("liner", &size, own, 1, &[]));
    }
}

/// Mats, each a border smaller than the one before; the bands lie on the last.
fn mats(sheet: &mut Sheet, card: Size, panel: &str, text: &mut String) {
    let (mut ground, mut below) = (card, "card".to_owned());
    let count = 1 + sheet.dice.of(3);
    let mut depth = 1;
    for number in 0..count {
        let border = sheet.dice.one(&[BORDER, BORDER, END, Both(3, 4)]);
        let own = ground.map(|side| side - border - border);
        let (length, twice) = (sheet.length(border), sheet.length(border + border));
        let size = match sheet.dice.of(4) {
            0 => sheet.size(own),
            1 => format!("{below} less left {length}, right {length}, top {length}, bottom {length}"),
            2 => format!("{{width: as wide as {below} less {twice}, height: as high as {below} less {twice}}}"),
            _ => format!("{below} less {length} all round"),
        };
        let name = sheet.piece(["mat", "panel", "field"][number], &size, own, 1, &[]);
        let pad = "  ".repeat(depth);
        let _ = writeln!(text, "{pad}- place: {name}");
        if number == 0 && !panel.is_empty() {
            let _ = writeln!(text, "{pad}  {panel}");
        }
        let _ = writeln!(text, "{pad}  centre: both ways");
        if sheet.dice.chance(2) {
            let _ = writeln!(text, "{pad}  shows: {length} all round");
        }
        let glue = sheet.dice.one(&["tape", "tape", "liquid"]);
        let _ = writeln!(text, "{pad}  glue: {glue}\n{pad}  first:");
        (ground, below) = (own, name);
        depth += 2;
    }
    bands(sheet, ground, &below, depth, text);
}

/// Where the next band lies.
struct Place {
    indent: String,
    ground: Size,
    top: Both,
    /// The layer before, where one may lie below it.
    before: Option<String>,
}

impl Place {
    /// How it is written that a layer lies there.
    fn up(&self, sheet: &mut Sheet, gap: Both) -> String {
        match &self.before {
            Some(before) if sheet.dice.chance(2) => {
                format!("below: {before}\n{}  gap: {}", self.indent, sheet.length(gap))
            }
            _ => format!("top: {}", sheet.length(self.top)),
        }
    }
}

/// Bands from the top down, until there is no more room or the dice say so; one at the least.
fn bands(sheet: &mut Sheet, ground: Size, name: &str, depth: usize, text: &mut String) {
    let margin = sheet.dice.one(&[BORDER, END]);
    let mut place = Place { indent: "  ".repeat(depth), ground, top: margin, before: None };
    let most = 1 + sheet.dice.of(5);
    for _ in 0..most {
        let room = ground[1] - place.top - margin;
        let gap = margin;
        let height = match sheet.dice.of(9) {
            0 | 1 => row(sheet, &mut place, room, margin, gap, text),
            2 => strip(sheet, &mut place, room, name, gap, text),
            3 => label(sheet, &mut place, room, gap, text),
            4 => ring(sheet, &mut place, room, name, text),
            5 => corner_pieces(sheet, &mut place, room, margin, text),
            6 => frame(sheet, &mut place, room, gap, text),
            7 => moon(sheet, &mut place, room, gap, text),
            _ => stairs(sheet, &mut place, room, margin, text),
        };
        if let Some(height) = height {
            place.top = place.top + height + gap;
        }
    }
    if text.trim_end().ends_with("first:") {
        let own = [ground[0] - END - END, Both::eighths(6)];
        place.top = margin;
        let size = sheet.size(own);
        let name = sheet.piece("bar", &size, own, 1, &[]);
        let up = place.up(sheet, margin);
        put(&place, &name, "", "centre: across", &up, "", "liquid", text);
    }
}

#[expect(clippy::too_many_arguments, reason = "the lines of a layer, in order")]
fn put(place: &Place, piece: &str, name: &str, across: &str, up: &str, more: &str, glue: &str, text: &mut String) {
    let pad = &place.indent;
    let _ = writeln!(text, "{pad}- place: {piece}");
    for line in [name, across, up, more].iter().filter(|line| !line.is_empty()) {
        let _ = writeln!(text, "{pad}  {line}");
    }
    let _ = writeln!(text, "{pad}  glue: {glue}");
}

/// So many equal pieces with gaps in a room, with what is left over even, so that they can be centred by the ruler.
fn fill(room: Both, whole: Both, count: i64, gap: Both) -> Both {
    let mut own = (room - gap * (count - 1)).share(count);
    if (whole.0 - own.0 * count - gap.0 * (count - 1)) % 2 != 0 {
        own.0 -= 1;
    }
    if (whole.1 - own.1 * count - gap.1 * (count - 1)) % 2 != 0 {
        own.1 -= 1;
    }
    own
}

fn row(sheet: &mut Sheet, place: &mut Place, room: Both, margin: Both, gap: Both, text: &mut String) -> Option<Both> {
    let count = [2, 3, 3, 4][sheet.dice.of(4)];
    // An even number of pieces leaves what their gaps leave.
    let whole = place.ground[0];
    let mut between = sheet.dice.one(&[BORDER, END]);
    if count % 2 == 0 {
        between = between + Both((whole.0 - between.0) % 2, (whole.1 - between.1) % 2);
    }
    let width = fill(whole - margin - margin, whole, count, between);
    let height = Both::eighths(5 + i64::try_from(sheet.dice.of(10)).unwrap_or(0));
    let rows = if sheet.dice.chance(4) { 2 } else { 1 };
    let all = height * rows + between * (rows - 1);
    if !all.within(room) || !Both::eighths(3).within(width) {
        return None;
    }
    let (size, own) = (sheet.size([width, height]), [width, height]);
    let called = sheet.dice.one(&["tile", "lantern", "bed"]);
    let name = sheet.piece(called, &size, own, count * rows, &[]);
    let (gap_between, up) = (sheet.length(between), place.up(sheet, gap));
    let more = if rows == 2 {
        format!("grid: {{columns: {count}, rows: 2, gap: {gap_between}}}")
    } else {
        format!("row: {{count: {count}, gap: {gap_between}}}")
    };
    put(place, &name, "", "centre: across", &up, &more, "liquid", text);
    place.before = Some(name);
    Some(all)
}

/// A strip cut too long and trimmed level with what it lies on.
fn strip(sheet: &mut Sheet, place: &mut Place, room: Both, ground: &str, gap: Both, text: &mut String) -> Option<Both> {
    let own = [place.ground[0] + END + END, Both::eighths(2 + i64::try_from(sheet.dice.of(5)).unwrap_or(0))];
    if !own[1].within(room) {
        return None;
    }
    let size = match sheet.dice.of(2) {
        0 => sheet.size(own),
        _ => {
            format!("{{width: as wide as {ground} plus {}, height: {}}}", sheet.length(END + END), sheet.length(own[1]))
        }
    };
    let name = sheet.piece("rail", &size, own, 1, &[]);
    let up = place.up(sheet, gap);
    put(place, &name, "", "centre: across", &up, &format!("trim flush: {ground}"), "liquid", text);
    place.before = Some(name);
    Some(own[1])
}

/// Words on a label, now and then on foam.
fn label(sheet: &mut Sheet, place: &mut Place, room: Both, gap: Both, text: &mut String) -> Option<Both> {
    let inset = sheet.dice.one(&[END, Both::eighths(4)]);
    let own = [place.ground[0] - inset - inset, Both::eighths(5 + i64::try_from(sheet.dice.of(4)).unwrap_or(0))];
    if !own[1].within(room) {
        return None;
    }
    let size = sheet.size(own);
    let words = sheet.dice.one(&["stamp: thinking of you", "printed: good morning"]);
    let name = sheet.piece("label", &size, own, 1, &[words.to_owned()]);
    let (up, glue) = (place.up(sheet, gap), sheet.dice.one(&["liquid", "foam", "tape"]));
    put(place, &name, "", "centre: across", &up, "", glue, text);
    place.before = Some(name);
    Some(own[1])
}

/// A middle with a ring of strips round it, each edge to edge with the one before.
fn ring(sheet: &mut Sheet, place: &mut Place, room: Both, ground: &str, text: &mut String) -> Option<Both> {
    let (wide, thick) = (Both::eighths(2 * (4 + i64::try_from(sheet.dice.of(4)).unwrap_or(0))), Both::eighths(4));
    let all = wide + thick * 2;
    if !all.within(room) || !(all + END).within(place.ground[0]) || text.contains("ring round") {
        return None;
    }
    // What is left over at the sides is shared by the ruler.
    let odd = Both((place.ground[0].0 - wide.0) % 2, (place.ground[0].1 - wide.1) % 2);
    let across = wide + odd;
    let size = sheet.size([across, wide]);
    let middle = sheet.piece("middle", &size, [across, wide], 1, &[]);
    let put_on = sheet.length(thick);
    let sides: [(&str, Size, String); 4] = [
        ("left strip", [thick, wide], format!("{{width: {put_on}, height: as high as {middle}}}")),
        (
            "top strip",
            [across + thick, thick],
            format!("{{width: as wide as {middle} plus {put_on}, height: {put_on}}}"),
        ),
        (
            "right strip",
            [thick, wide + thick],
            format!("{{width: {put_on}, height: as high as {middle} plus {put_on}}}"),
        ),
        (
            "bottom strip",
            [across + thick * 2, thick],
            format!("{{width: as wide as top strip plus {put_on}, height: {put_on}}}"),
        ),
    ];
    let names: Vec<String> = sides.into_iter().map(|(name, own, size)| sheet.piece(name, &size, own, 1, &[])).collect();
    let up = format!("top: {}", sheet.length(place.top + thick));
    put(place, &middle, "", "centre: across", &up, "", "liquid", text);
    let pad = &place.indent;
    let strips = names.join(", ");
    let _ = writeln!(text, "{pad}- ring round: {middle}\n{pad}  strips: [{strips}]\n{pad}  onto: {ground}");
    let _ = writeln!(text, "{pad}  starting: left\n{pad}  going: clockwise\n{pad}  glue: liquid");
    place.before = None;
    Some(all)
}

/// A triangle at the left and a diamond at the right.
fn corner_pieces(sheet: &mut Sheet, place: &mut Place, room: Both, margin: Both, text: &mut String) -> Option<Both> {
    let side = Both::eighths(6 + i64::try_from(sheet.dice.of(5)).unwrap_or(0));
    if !side.within(room) || !(side * 2 + END * 2).within(place.ground[0]) {
        return None;
    }
    let size = sheet.size([side, side]);
    let corner = sheet.dice.one(&["bottom left", "top left", "bottom right"]);
    let shapes = [
        ("sail", format!("shape: triangle, right angle at {corner}"), "left"),
        ("bow", "shape: diamond".to_owned(), "right"),
    ];
    for (name, shape, edge) in shapes {
        let name = sheet.piece(name, &size, [side, side], 1, &[shape]);
        let (across, up) = (format!("{edge}: {}", sheet.length(margin)), format!("top: {}", sheet.length(place.top)));
        put(place, &name, "", &across, &up, "", "liquid", text);
    }
    place.before = None;
    Some(side)
}

/// A frame with a window, what lies below it seen through it; what comes out is used on the back.
fn frame(sheet: &mut Sheet, place: &mut Place, room: Both, gap: Both, text: &mut String) -> Option<Both> {
    let own = [place.ground[0] - END - END, Both::eighths(16)];
    let side = END + END;
    let window = [own[0] - side * 2, own[1] - side * 2];
    if !own[1].within(room) || !sheet.back.is_empty() || !Both::eighths(6).within(window[0]) {
        return None;
    }
    let (size, opening) = (sheet.size(own), sheet.size(window));
    let by = sheet.length(side);
    let lines = [format!("window: {{size: {opening}, left: {by}, top: {by}, by: hand}}")];
    let name = sheet.piece("frame", &size, own, 1, &lines);
    let (up, glue) = (place.up(sheet, gap), sheet.dice.one(&["liquid", "foam"]));
    put(place, &name, "", "centre: across", &up, "", glue, text);
    place.before = Some(name.clone());
    if sheet.dice.chance(2) {
        let pane = sheet.pane(&name, window);
        let by = sheet.length(END);
        let _ = writeln!(sheet.back, "  - {{place: {pane}, left: {by}, bottom: {by}, glue: tape}}");
    }
    Some(own[1])
}

/// A circle from a punch, or pearls.
fn moon(sheet: &mut Sheet, place: &mut Place, room: Both, gap: Both, text: &mut String) -> Option<Both> {
    if sheet.dice.chance(2) && sheet.decorations.is_empty() {
        let side = Both::eighths(1);
        let size = sheet.size([side, side]);
        let row = sheet.length(END);
        sheet.decorations.push(format!("  pearl: {{size: {size}, form: round}}"));
        if !side.within(room) {
            sheet.decorations.clear();
            return None;
        }
        let (left, up) = (format!("left: {row}"), format!("top: {}", sheet.length(place.top)));
        put(place, "pearl", "", &left, &up, &format!("row: {{count: 3, gap: {row}}}"), "dot", text);
        place.before = None;
        return Some(side);
    }
    let side = Both(Both::eighths(8).0 + place.ground[0].0 % 2, Both::eighths(8).1 + place.ground[0].1 % 2);
    if !side.within(room) {
        return None;
    }
    let (size, margin) = (sheet.size([side, side]), sheet.length(END));
    let blank = side + END + END;
    let lines = ["shape: circle".to_owned(), "by: punch".to_owned(), format!("margin: {margin}")];
    let name = sheet.piece("moon", &size, [blank, blank], 1, &lines);
    let up = place.up(sheet, gap);
    put(place, &name, "", "centre: across", &up, "", "liquid", text);
    place.before = None;
    Some(side)
}

/// Tags going down in steps.
fn stairs(sheet: &mut Sheet, place: &mut Place, room: Both, margin: Both, text: &mut String) -> Option<Both> {
    let own = [Both::eighths(6), Both::eighths(4)];
    let step = [own[0] + BORDER, Both::eighths(2)];
    let all = own[1] + step[1] * 2;
    if !all.within(room) || !(own[0] * 3 + BORDER * 2 + margin * 2).within(place.ground[0]) {
        return None;
    }
    let size = sheet.size(own);
    let name = sheet.piece("tag", &size, own, 3, &[]);
    let (left, up) = (format!("left: {}", sheet.length(margin)), format!("top: {}", sheet.length(place.top)));
    let more = format!("steps: {{count: 3, right: {}, down: {}}}", sheet.length(step[0]), sheet.length(step[1]));
    put(place, &name, "", &left, &up, &more, "liquid", text);
    place.before = None;
    Some(all)
}

/// A mat on each flap of a gate.
fn flaps(sheet: &mut Sheet, card: Size) {
    let own = [card[0].share(2) - END, card[1] - END];
    let less = sheet.length(END);
    let size = format!("{{width: half of card less {less}, height: as high as card less {less}}}");
    let name = sheet.piece("flap mat", &size, own, 2, &[]);
    let border = sheet.length(BORDER);
    for edge in ["left", "right"] {
        let _ = writeln!(
            sheet.front,
            "  - {{place: {name}, as: {edge} mat, {edge}: {border}, centre: up and down, glue: tape}}"
        );
    }
}

/// Paper to write on, inside.
fn lining(sheet: &mut Sheet, card: Size, fold: &str) {
    let border = sheet.dice.one(&[BORDER, END]);
    let own = card.map(|side| side - border - border);
    let size = format!("card less {} all round", sheet.length(border));
    let name = sheet.piece("lining", &size, own, 1, &[]);
    let panel = match fold {
        "side" => "right",
        "top" => "lower",
        _ => "2",
    };
    let _ = writeln!(sheet.inside, "  - {{place: {name}, panel: {panel}, centre: both ways, glue: tape}}");
}
