//! Shapes made from a trimmed rectangle: the form, how it is made, what is cut out of it.
//!
//! What the words say is read with the piece; whether it can be made is known when its size is.

use super::desk::{Desk, Field, Fields, capital};
use super::text::Text;
use crate::design::model::drawn_height;
use crate::design::nodes::Node;
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::geometry::{Corner, Edge, Point, RingFault};
use crate::length::{Length, Size};
use crate::shape::{DRAWN_WIDTH, End, Form, Making, Shape, ShapeFault, Window};
use crate::source::{Span, Spanned};

/// The most corners of a polygon, and the most windows of a piece.
const MOST_CORNERS: usize = 200;
const MOST_WINDOWS: usize = 50;

pub(super) const CORNERS: [(&str, Corner); 4] = [
    ("bottom left", Corner::LowerLeft),
    ("bottom right", Corner::LowerRight),
    ("top right", Corner::UpperRight),
    ("top left", Corner::UpperLeft),
];
const EDGES: [(&str, Edge); 4] =
    [("left", Edge::Left), ("right", Edge::Right), ("top", Edge::Top), ("bottom", Edge::Bottom)];
/// The shapes that one or two words say.
const WORDS: [(&str, Form); 4] =
    [("rectangle", Form::Rectangle), ("diamond", Form::Diamond), ("circle", Form::Circle), ("oval", Form::Oval)];
/// What else a window is placed by.
const CENTRES: [(&str, [bool; 2]); 3] =
    [("across", [true, false]), ("up and down", [false, true]), ("both ways", [true, true])];

/// A shape as written.
pub(super) struct ShapeDraft {
    form: Form,
    making: Making,
    windows: Vec<WindowDraft>,
    /// Where the shape is written, if it is.
    span: Option<Span>,
}

/// How a window lies in one direction.
#[derive(Clone, Copy)]
enum Lies {
    Middle,
    FromLow(Length),
    FromHigh(Length),
}

struct WindowDraft {
    form: Form,
    size: Size,
    making: Making,
    across: Lies,
    up: Lies,
    span: Span,
}

impl ShapeDraft {
    /// How high a drawing's outline is, in its steps.
    pub(super) fn drawn_height(&self) -> Option<i64> {
        high(&self.form)
    }

    /// Something bought, a rectangle or round.
    pub(super) fn of_decoration(round: bool, size: Size) -> Self {
        let form = match round {
            false => Form::Rectangle,
            true if size.width == size.height => Form::Circle,
            true => Form::Oval,
        };
        let making = if round { Making::Punch { margin: 0 } } else { Making::ByHand };
        Self { form, making, windows: Vec::new(), span: None }
    }
}

/// How high a drawing's outline is, in its steps.
fn high(form: &Form) -> Option<i64> {
    match form {
        Form::Drawn { corners, .. } => corners.iter().map(|corner| corner.y).max(),
        _ => None,
    }
}

/// The form in its size: a drawing's steps become lengths.
fn sized(form: Form, width: i64, height: i64) -> Form {
    let Form::Drawn { name, corners } = form else { return form };
    let scaled = |step: i64| {
        let twice = 2 * i128::from(step) * i128::from(width) + i128::from(DRAWN_WIDTH);
        i64::try_from(twice.div_euclid(2 * i128::from(DRAWN_WIDTH))).unwrap_or(width)
    };
    let mut corners: Vec<Point> =
        corners.iter().map(|corner| Point::new(scaled(corner.x), scaled(corner.y).min(height))).collect();
    corners.dedup();
    Form::Drawn { name, corners }
}

impl<'a> Desk<'a> {
    /// `shape`, `by`, `margin` and `window` of a piece; none where one of them could not be read.
    pub(super) fn shape(&mut self, fields: &Fields<'a>) -> Option<ShapeDraft> {
        let written = fields.get("shape");
        let form = written.map_or(Some(Form::Rectangle), |field| self.form(field));
        let making = self.making(fields);
        let windows = fields.get("window").map_or(Some(Vec::new()), |field| self.windows(field));
        Some(ShapeDraft {
            form: form?,
            making: making?,
            windows: windows?,
            span: written.or(fields.get("window")).or(fields.get("by")).map(|field| field.node.span()),
        })
    }

    /// `diamond`, `triangle, right angle at bottom left`, `{fishtail: bottom, deep: 3/8 in}` and the like.
    fn form(&mut self, field: Field<'a>) -> Option<Form> {
        if let Node::Map(_) = field.node {
            return self.form_with_measures(field);
        }
        let text = self.text(field)?;
        let (first, rest) = text.first_word();
        if first.value.trim_end_matches(',').eq_ignore_ascii_case("triangle") {
            self.heard.offer("shape", ["triangle"]);
            self.heard.take("shape", "triangle");
            return self.triangle_form(text, rest);
        }
        let known: Vec<(&'static str, usize)> = WORDS.iter().enumerate().map(|(n, (word, _))| (*word, n)).collect();
        self.word(field, &known).map(|word| WORDS[word.value].1.clone())
    }

    fn triangle_form(&mut self, text: Text<'_>, rest: Text<'_>) -> Option<Form> {
        let corner = rest.without_first(",").without_first("with").without_first("its");
        let corner = corner.without_first("right").without_first("angle").without_first("at");
        if corner.value.is_empty() {
            self.note(
                Finding::error(
                    "bad-word",
                    text.span,
                    "the triangle does not say where its right angle is",
                    "no corner here",
                )
                .help("name 1 corner: `triangle, right angle at bottom left`")
                .plainly("A triangle cut from a rectangle keeps one of its four corners."),
            );
            return None;
        }
        let right_angle = self.word_in("right angle at", corner, &CORNERS)?.value;
        Some(Form::Triangle { right_angle })
    }

    fn form_with_measures(&mut self, field: Field<'a>) -> Option<Form> {
        let known = ["corners", "fishtail", "pointed", "deep", "and", "rounded", "outline"];
        let fields = self.fields(field.node, "a shape", field.key, &known)?;
        let others = ["corners", "fishtail", "pointed", "rounded"];
        if let Some(outline) = fields.get("outline").filter(|_| others.iter().all(|key| fields.get(key).is_none())) {
            return self.outline(outline);
        }
        match (fields.get("fishtail").or(fields.get("pointed")), fields.get("rounded"), fields.get("corners")) {
            (Some(_), None, None) => {
                let (edge, end) = self.end(&fields)?;
                let opposite = match fields.get("and") {
                    None => None,
                    Some(and) => {
                        let other =
                            self.fields(and.node, "the other end", and.key, &["fishtail", "pointed", "deep"])?;
                        let (at, end) = self.end(&other)?;
                        if at != edge.opposite() {
                            self.note(
                                Finding::error(
                                    "bad-word",
                                    and.node.span(),
                                    "the other end is not the one across",
                                    format!("the {} edge", at.word()),
                                )
                                .help(format!(
                                    "say `{}`, the 1 edge across from the {} one",
                                    edge.opposite().word(),
                                    edge.word()
                                ))
                                .plainly("A strip has two ends, across from each other."),
                            );
                            return None;
                        }
                        Some(end)
                    }
                };
                Some(Form::Ended { edge, end, opposite })
            }
            (None, Some(rounded), corners) => {
                let radius = self.length(rounded, Role::Outright);
                let corners = match corners {
                    None => Some(Corner::ALL.to_vec()),
                    Some(field) => {
                        let items = self.items(field)?;
                        let all: Vec<Option<Corner>> =
                            items.into_iter().map(|item| self.word(item, &CORNERS).map(|word| word.value)).collect();
                        all.into_iter().collect::<Option<Vec<Corner>>>()
                    }
                };
                Some(Form::Rounded { radius: radius?.nm(), corners: corners? })
            }
            (None, None, Some(corners)) => self.polygon(corners),
            (None, None, None) if fields.get("outline").is_none() => {
                self.note(
                    Finding::error("missing-key", field.key, "the shape says nothing", "no form here")
                        .help("write 1 form, such as `{rounded: 1/4 in}` or `{fishtail: bottom, deep: 3/8 in}`")
                        .plainly("The shape of a piece is missing."),
                );
                None
            }
            _ => {
                self.note(
                    Finding::error("placed-twice", field.key, "the shape is said twice", "several forms here")
                        .help("keep 1 of `fishtail` or `pointed`, `rounded`, `corners` and `outline`")
                        .plainly("A piece has one shape."),
                );
                None
            }
        }
    }

    /// `fishtail: bottom, deep: 3/8 in`.
    fn end(&mut self, fields: &Fields<'a>) -> Option<(Edge, End)> {
        let (field, fishtail) = match (fields.get("fishtail"), fields.get("pointed")) {
            (Some(field), None) => (field, true),
            (None, Some(field)) => (field, false),
            (Some(_), Some(field)) => {
                self.note(
                    Finding::error("placed-twice", field.key, "an end is cut twice", "`pointed` again")
                        .help("keep 1 of `fishtail` and `pointed`; the other end stands under `and:`")
                        .plainly("One end of a strip is cut one way."),
                );
                return None;
            }
            (None, None) => {
                let _ = self.required(fields, "fishtail", "bottom");
                return None;
            }
        };
        let edge = self.word(field, &EDGES);
        let deep = self.required(fields, "deep", "3/8 in").and_then(|field| self.length(field, Role::Outright));
        let (edge, depth) = (edge?.value, deep?.nm());
        Some((edge, if fishtail { End::Fishtail { depth } } else { End::Pointed { depth } }))
    }

    /// `[[0 in, 0 in], [2 in, 0 in], [1 in, 2 in]]`: across and up from the lower left of the size.
    fn polygon(&mut self, field: Field<'a>) -> Option<Form> {
        let items = self.items(field)?;
        if !(3..=MOST_CORNERS).contains(&items.len()) {
            self.note(
                Finding::error(
                    "bad-count",
                    field.key,
                    "a polygon cannot have so many corners",
                    format!("{} here", items.len()),
                )
                .help(format!("write from 3 to {MOST_CORNERS} corners"))
                .plainly("A shape needs at least three corners."),
            );
            return None;
        }
        let corners: Vec<Option<Point>> = items.into_iter().map(|item| self.corner(item)).collect();
        Some(Form::Polygon { corners: corners.into_iter().collect::<Option<_>>()? })
    }

    fn corner(&mut self, item: Field<'a>) -> Option<Point> {
        let place = |across: Length, up: Length| Point::new(across.nm(), up.nm());
        if let Node::List(list) = item.node
            && let [across, up] = list.items.as_slice()
        {
            let side = |node: &'a Node| Field { node, ..item };
            let (across, up) = (self.length(side(across), Role::Outright), self.length(side(up), Role::Outright));
            return Some(place(across?, up?));
        }
        let text = self.text(item)?;
        if let [across, up] = text.split(',').as_slice() {
            let (across, up) = (self.length_in(*across, Role::Outright), self.length_in(*up, Role::Outright));
            return Some(place(across?, up?));
        }
        self.note(
            Finding::error("bad-size", text.span, "a corner is two lengths", "not across and up")
                .help("write 2 lengths, across and up: `[1 in, 2 in]`")
                .plainly("A corner is said by how far right and how far up it lies."),
        );
        None
    }

    /// `by: die` with its margin.
    fn making(&mut self, fields: &Fields<'a>) -> Option<Making> {
        let ways = [("hand", 0_u8), ("die", 1), ("punch", 2)];
        let by = match fields.get("by") {
            Some(field) => self.word(field, &ways)?.value,
            None => 0,
        };
        if by == 0 {
            if let Some(margin) = fields.get("margin") {
                self.note(
                    Finding::error(
                        "unknown-key",
                        margin.key,
                        "`margin` stands without a die or punch",
                        "cut by hand, it needs none",
                    )
                    .help("add `by: die` or `by: punch`, or delete this 1 line")
                    .plainly("Paper round a shape is only needed where a die or punch cuts it."),
                );
            }
            return Some(Making::ByHand);
        }
        let margin = self.required(fields, "margin", "1/4 in").and_then(|field| self.length(field, Role::Border))?.nm();
        Some(if by == 1 { Making::Die { margin } } else { Making::Punch { margin } })
    }

    fn windows(&mut self, field: Field<'a>) -> Option<Vec<WindowDraft>> {
        if let Node::Map(_) = field.node {
            return self.window(field).map(|window| vec![window]);
        }
        let items = self.items(field)?;
        if items.len() > MOST_WINDOWS {
            self.not_too_many(field, items.len(), MOST_WINDOWS, "windows");
            return None;
        }
        let windows: Vec<Option<WindowDraft>> = items.into_iter().map(|item| self.window(item)).collect();
        windows.into_iter().collect()
    }

    fn window(&mut self, item: Field<'a>) -> Option<WindowDraft> {
        let known = ["size", "shape", "by", "centre", "left", "right", "bottom", "top"];
        let fields = self.fields(item.node, "a window", item.key, &known)?;
        let form = fields.get("shape").map_or(Some(Form::Rectangle), |field| self.form(field));
        let drawn = form.as_ref().and_then(high);
        let size = self.required(&fields, "size", if drawn.is_some() { "{width: 2 in}" } else { "2 x 1 in" });
        let size = size.and_then(|field| self.window_size(field, drawn));
        let ways =
            [("hand", Making::ByHand), ("die", Making::Die { margin: 0 }), ("punch", Making::Punch { margin: 0 })];
        let making = fields.get("by").map_or(Some(Making::ByHand), |field| self.word(field, &ways).map(|by| by.value));
        let centre = match fields.get("centre") {
            Some(field) => self.word(field, &CENTRES)?.value,
            None => [false; 2],
        };
        let across = self.window_lies(&fields, centre[0], ["left", "right"], item);
        let up = self.window_lies(&fields, centre[1], ["bottom", "top"], item);
        let span = item.node.span();
        let span = if item.item { span } else { item.key.to(span) };
        Some(WindowDraft {
            form: form?,
            size: size?,
            making: making?,
            across: across?,
            up: up?,
            span: self.first_line(span),
        })
    }

    /// The size of a window; of one with the outline of a drawing its width alone is said.
    fn window_size(&mut self, field: Field<'a>, drawn: Option<i64>) -> Option<Size> {
        let Some(height) = drawn else {
            let text = self.text(field)?;
            return self.size_in(text, Role::Opening);
        };
        if let Node::Map(_) = field.node {
            let fields = self.fields(field.node, "the size of the window", field.key, &["width", "height"])?;
            if let Some(height) = fields.get("height") {
                self.height_is_drawn(height.key);
                return None;
            }
            let width = self
                .required(&fields, "width", "2 in")
                .and_then(|field| self.more_than_nothing(field, Role::Opening))?;
            return Some(Size::new(width, drawn_height(width, height, self.ruler)));
        }
        self.height_is_drawn(field.node.span());
        None
    }

    fn window_lies(
        &mut self,
        fields: &Fields<'a>,
        centred: bool,
        keys: [&'static str; 2],
        item: Field<'a>,
    ) -> Option<Lies> {
        match (centred, fields.get(keys[0]), fields.get(keys[1])) {
            (true, None, None) => Some(Lies::Middle),
            (false, Some(low), None) => self.length(low, Role::Border).map(Lies::FromLow),
            (false, None, Some(high)) => self.length(high, Role::Border).map(Lies::FromHigh),
            (false, None, None) => {
                let way = if keys[0] == "left" { "across" } else { "up and down" };
                self.note(
                    Finding::error(
                        "not-placed",
                        item.key,
                        format!("the window has no place {way}"),
                        "nothing says where it is cut",
                    )
                    .help(format!("add 1 line, such as `centre: {way}` or `{}: 1/2 in`", keys[0]))
                    .plainly("Nothing says where the window is cut."),
                );
                None
            }
            (_, one, other) => {
                let span = one.or(other).map_or(item.key, |field| field.key);
                self.note(
                    Finding::error("placed-twice", span, "the window is placed twice in one direction", "again")
                        .help(format!("keep 1 of `centre`, `{}` and `{}`", keys[0], keys[1]))
                        .plainly("Two lines say where the window is, and only one can count."),
                );
                None
            }
        }
    }

    /// The shape in its size, if it can be made.
    pub(super) fn settle_shape(
        &mut self,
        draft: Option<ShapeDraft>,
        name: &str,
        size: Size,
        size_span: Span,
    ) -> Option<Spanned<Shape>> {
        let draft = draft?;
        let span = draft.span.map_or(size_span, |span| self.first_line(span));
        let (width, height) = (size.width.nm(), size.height.nm());
        let spans: Vec<Span> = draft.windows.iter().map(|window| window.span).collect();
        let windows = draft.windows.into_iter().map(|window| {
            let lies = |lies: Lies, room: i64, side: i64| match lies {
                Lies::Middle => (room - side + 1).div_euclid(2),
                Lies::FromLow(distance) => distance.nm(),
                Lies::FromHigh(distance) => room - distance.nm() - side,
            };
            let (own_width, own_height) = (window.size.width.nm(), window.size.height.nm());
            Window {
                form: sized(window.form, own_width, own_height),
                width: own_width,
                height: own_height,
                left: lies(window.across, width, own_width),
                bottom: lies(window.up, height, own_height),
                making: window.making,
            }
        });
        let windows = windows.collect();
        let form = sized(draft.form, width, height);
        let shape = Shape { form, width, height, making: draft.making, windows };
        match shape.make() {
            Ok(_) => Some(Spanned::new(shape, span)),
            Err(fault) => {
                self.impossible(&fault, name, size, span, &spans);
                None
            }
        }
    }

    fn impossible(&mut self, fault: &ShapeFault, name: &str, size: Size, span: Span, windows: &[Span]) {
        let unit = size.width.unit();
        let say = |nm: i64| Length::new(nm, unit).to_string();
        let (window, inner) = match fault {
            ShapeFault::Window { window, fault } => (Some(*window), fault.as_ref()),
            ShapeFault::WindowReachesOut { window, .. } => (Some(*window), fault),
            ShapeFault::WindowsMeet { second, .. } => (Some(*second), fault),
            _ => (None, fault),
        };
        let what = if window.is_some() { format!("the window of `{name}`") } else { format!("`{name}`") };
        let (fact, help) = told(inner, size, say);
        let span = window.and_then(|window| windows.get(window)).copied().unwrap_or(span);
        let code = if window.is_some() { "impossible-window" } else { "impossible-shape" };
        let mut finding = Finding::error(code, span, format!("{what} cannot be made so"), fact.clone())
            .help(help)
            .plainly(format!("{} cannot be cut like this: {fact}.", capital(&what)));
        if let ShapeFault::WindowsMeet { first, .. } = inner {
            finding = finding.also(windows.get(*first).copied().unwrap_or(span), "the other window");
        }
        finding.edition = self.both().then_some(self.units);
        self.note(finding);
    }
}

/// What keeps a shape from being made, and what to do about it.
fn told(fault: &ShapeFault, size: Size, say: impl Fn(i64) -> String) -> (String, String) {
    let smaller = size.width.min(size.height);
    match fault {
        ShapeFault::NotPositive { .. } => {
            ("a side is nothing at all".to_owned(), "make both sides more than 0".to_owned())
        }
        ShapeFault::TooLarge { side } | ShapeFault::TooLargeToRound { side } => {
            (format!("{} is too large", say(*side)), "make it 48 in (1219 mm) or smaller".to_owned())
        }
        ShapeFault::NotRound { width, height } => (
            format!("a circle is as wide as high, and this is {} x {}", say(*width), say(*height)),
            format!("make both sides {smaller}, or say `oval`"),
        ),
        ShapeFault::RoundByHand => (
            "a round outline needs a die or a punch".to_owned(),
            "add 1 line, `by: die` or `by: punch`, and its `margin`".to_owned(),
        ),
        ShapeFault::Corners(fault) => corners_told(fault, say),
        ShapeFault::CornerOutside { corner, edge, past } => (
            format!("corner {} lies {} past the {} edge of the size", corner + 1, say(*past), edge.word()),
            format!("move it {} inward, or make the size larger", say(*past)),
        ),
        ShapeFault::ShortOfEdge { edge, short } => (
            format!("no corner reaches the {} edge of the size: {} are left over", edge.word(), say(*short)),
            format!("make the size {} smaller there, or move a corner to the edge", say(*short)),
        ),
        ShapeFault::NoDepth { edge, .. } => {
            (format!("the end at the {} is not deep at all", edge.word()), "make `deep` more than 0".to_owned())
        }
        ShapeFault::TooDeep { depth, length } => (
            format!("{} deep in {} of paper", say(*depth), say(*length)),
            format!("make `deep` less than {}", say(*length)),
        ),
        ShapeFault::NoRadius { .. } => ("a corner of no radius".to_owned(), "make `rounded` more than 0".to_owned()),
        ShapeFault::RadiusTooLarge { radius, most } => {
            (format!("a radius of {} has no room", say(*radius)), format!("make it {} or less", say(*most)))
        }
        ShapeFault::CornerList { twice: Some(corner) } => (
            format!("the {} corner is named twice", corner.word()),
            "name each of the 4 corners at most once".to_owned(),
        ),
        ShapeFault::CornerList { twice: None } => {
            ("no corner is named".to_owned(), "name at least 1 corner, or leave `corners` out".to_owned())
        }
        ShapeFault::NegativeMargin { margin } => {
            (format!("a margin of {}", say(*margin)), "make `margin` 0 or more".to_owned())
        }
        ShapeFault::WindowReachesOut { past, .. } if *past > 0 => (
            format!("it reaches {} past the edge", say(*past)),
            format!("move it {} inward or more, or make it smaller", say(*past)),
        ),
        ShapeFault::WindowReachesOut { .. } => {
            ("it reaches the outline".to_owned(), "leave paper on all 4 sides of it".to_owned())
        }
        ShapeFault::WindowsMeet { .. } => {
            ("it meets another window".to_owned(), "leave paper between the 2".to_owned())
        }
        ShapeFault::Window { fault, .. } => told(fault, size, say),
    }
}

fn corners_told(fault: &RingFault, say: impl Fn(i64) -> String) -> (String, String) {
    match fault {
        RingFault::TooFewCorners { corners } => {
            (format!("{corners} corners enclose nothing"), "write at least 3 corners that are not in line".to_owned())
        }
        RingFault::TooManyCorners { corners } => {
            (format!("{corners} corners are too many"), format!("keep it to {MOST_CORNERS} corners"))
        }
        RingFault::TooFar { corner } => (
            format!("corner {} lies too far away", corner + 1),
            "move it into the size, or delete the 1 corner".to_owned(),
        ),
        RingFault::Repeated { corner } => {
            (format!("corner {} lies where the one before it does", corner + 1), "delete 1 of the 2".to_owned())
        }
        RingFault::FoldsBack { corner } => (
            format!("the outline turns straight back at corner {}", corner + 1),
            "move or delete this 1 corner".to_owned(),
        ),
        RingFault::Crosses { first, second, at } | RingFault::Touches { first, second, at } => (
            format!("lines {} and {} meet at {} across, {} up", first + 1, second + 1, say(at.x), say(at.y)),
            "go round the outline once, naming each corner 1 time".to_owned(),
        ),
    }
}
