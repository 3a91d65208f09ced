//! Nodes to the settled design.
//!
//! Takes a [`Node`] tree, gives a [`Design`] for one system of units and everything that is wrong
//! with it, each fault in its place. Must never know where a layer comes to lie or how paper is cut.

mod beside;
mod cells;
mod decorations;
mod desk;
mod drawing;
mod extras;
mod faces;
mod fixed;
mod frames;
mod front;
mod head;
mod heard;
mod imprint;
mod kept;
mod languages;
mod measures;
mod names;
mod papers;
mod photo;
mod pieces;
mod placing;
mod relations;
mod repeats;
mod ring;
mod said;
mod shape;
mod sheets;
mod sides;
mod text;
mod turned;
mod units;
mod values;
mod versions;
mod weight;
mod window;

use super::model::{Card, Design, Face, PieceId};
use super::nodes::Node;
use super::restate::Restated;
use crate::diagnostic::Finding;
use crate::length::Units;
use crate::source::{Source, Span, Spanned};
use crate::words::{Language, Words};
pub use beside::{imprint_named, logo_named, photos_named};
use cells::settle_cells;
use desk::Desk;
pub use drawing::drawings_named;
use faces::Lists;
pub use heard::Heard;
pub use languages::languages_asked;
use repeats::Room;
pub use said::{Said, said, said_piece};
pub use units::{WITHOUT_LENGTHS, first_units, units_asked};
use versions::{Declared, MOST_CARDS};

const KEYS: [&str; 26] = [
    "title",
    "month",
    "designer",
    "imprint",
    "photo",
    "about",
    "cards",
    "units",
    "language",
    "workshop",
    "card",
    "papers",
    "pieces",
    "versions",
    "front",
    "inside",
    "back",
    "envelope",
    "decorations",
    "notes",
    "leftovers",
    "supplies",
    "tools",
    "handouts",
    "frames",
    "allow",
];

/// What a design needs that is not only for `cuts`, and how each may be written.
const NEEDED: [(&str, &str); 5] = [
    ("title", "Lantern Row"),
    ("month", "2026-11"),
    ("units", "inch"),
    ("card", "{size: 4 1/4 x 5 1/2 in, fold: side, from: white}"),
    ("front", "[{place: mat, centre: both ways}]"),
];

/// What only a card has: a file without any of them is for `cuts`.
const OF_A_CARD: [&str; 6] = ["card", "front", "inside", "back", "envelope", "decorations"];

/// The most faults that are listed; past them the file is not a design with slips in it.
const MOST_FINDINGS: usize = 500;

/// What settling gives.
#[derive(Debug, Clone)]
pub struct Settled {
    /// The design, wherever everything a later stage needs could be made out.
    pub design: Option<Design>,
    /// What is wrong, in the order of the file.
    pub findings: Vec<Finding>,
    /// The fixed words that the design uses and could use.
    pub heard: Heard,
    /// What this edition has by rule, in the order of the file.
    pub restated: Vec<Restated>,
}

/// Settles a design for the edition in `units`, asked for by the design or not. `stem` is the file's
/// stem: the title of a file for `cuts` that has none. Texts are in the design's first language, names are those
/// that the design refers to.
#[must_use]
pub fn settle(root: &Node, source: &Source, stem: &str, units: Units) -> Settled {
    settle_in(root, source, stem, units, None, None)
}

/// The same as readers of a language are told it: the texts, and what things are called. `also` is a language that
/// is asked for from outside.
#[must_use]
pub fn settle_in(
    root: &Node,
    source: &Source,
    stem: &str,
    units: Units,
    also: Option<Language>,
    told: Option<Language>,
) -> Settled {
    let mut asked = units_asked(root);
    if asked.is_empty() {
        asked.extend(first_units(root));
    }
    if !asked.contains(&units) {
        asked.push(units);
    }
    let mut desk = Desk::new(source, units, asked);
    desk.written_in = units::units_written(root);
    desk.languages = languages_asked(root);
    desk.languages.extend(also.filter(|also| !languages_asked(root).contains(also)));
    desk.language = told.unwrap_or(desk.first_language());
    let mut design = whole(&mut desk, root, stem, told);
    let (mut findings, heard, mut restated) = (desk.findings, desk.heard, desk.restated);
    restated.sort_by_key(|restated| restated.span);
    if let Some(design) = &mut design {
        design.restated.clone_from(&restated);
    }
    findings.sort_by(|a, b| a.file.cmp(&b.file).then_with(|| a.primary.span.cmp(&b.primary.span)));
    if let Some(next) = findings.get(MOST_FINDINGS) {
        let rest = findings.len() - MOST_FINDINGS;
        let more = Finding::error(
            "too-much",
            next.primary.span,
            "the rest is not listed",
            format!("{rest} faults from here on"),
        )
        .help(format!("mend the {MOST_FINDINGS} above first"))
        .plainly("There are more faults than can be listed.");
        findings.truncate(MOST_FINDINGS);
        findings.push(more);
    }
    Settled { design, findings, heard, restated }
}

fn whole<'a>(desk: &mut Desk<'a>, root: &'a Node, stem: &str, told: Option<Language>) -> Option<Design> {
    if !matches!(root, Node::Map(_)) {
        let span = root.span();
        let label = if root.is_empty() { "the file is empty" } else { "no `key: value` here" };
        desk.note(
            Finding::error("not-a-design", Span::new(span.start, span.start), "the file is not a design", label)
                .help("start it with lines such as `title: Lantern Row` and `cards: 8`")
                .plainly("The file does not describe a card."),
        );
        return None;
    }
    let first = match root {
        Node::Map(map) => map.entries.first().map_or(map.span, |(key, _)| key.span),
        _ => root.span(),
    };
    let top = desk.fields(root, "the design", first, &KEYS)?;
    let for_cuts = OF_A_CARD.iter().all(|key| top.get(key).is_none());
    for (key, such_as) in NEEDED {
        if !for_cuts {
            let _ = desk.required(&top, key, such_as);
        }
    }
    let title = top.get("title").map(|field| desk.told(field));
    let month = top.get("month").map(|field| desk.month(field));
    let designer = top.get("designer").and_then(|field| desk.words(field));
    let imprint = top.get("imprint").and_then(|field| desk.imprint(field));
    let photo = top.get("photo").and_then(|field| desk.photo(field));
    let about = top.get("about").and_then(|field| desk.told(field));
    let cards = desk.required(&top, "cards", "8").and_then(|field| desk.count(field, MOST_CARDS));
    if let Some(field) = top.get("units") {
        desk.units(field);
    }
    if let Some(field) = top.get("language") {
        desk.language(field);
    }
    let workshop = desk.workshop(top.get("workshop"));
    desk.ruler = workshop.ruler;

    let card_field = top.get("card");
    let first = usize::from(card_field.is_some());
    let field = desk.required(&top, "papers", "{white: {sheets: 4 of letter}}");
    let (mut paper_names, paper_nodes) = desk.paper_names(field);
    let field = desk.required(&top, "pieces", "{tag: {size: 2 x 3 in, from: white}}");
    let (mut piece_names, piece_nodes) = desk.piece_names(field, card_field.is_some());
    let decorations = desk.decoration_names(top.get("decorations"), &mut piece_names);
    let (papers, kept) = desk.papers(&mut paper_names, paper_nodes, &piece_names, card_field.map(|field| field.key));
    let card = card_field.and_then(|field| desk.card(field, &paper_names));

    let mut drafts = Vec::new();
    for (name, node) in piece_names.list.iter().zip(piece_nodes) {
        drafts.push(desk.piece(name, node, &piece_names, &paper_names, !for_cuts, card_field.is_some() || !for_cuts));
    }
    for (name, node) in &decorations {
        drafts.push(desk.decoration(name, node));
    }
    let declared = Declared { pieces: &piece_names, drafts: &drafts, papers: &paper_names, first };
    let versions = desk.versions(top.get("versions"), cards, &declared);
    if let (Some(papers), Some(versions)) = (&papers, &versions) {
        desk.sides_without_a_back(&declared, versions, papers);
    }
    let pieces = desk.settle_pieces(drafts, &piece_names, card.as_ref());

    let fold = card.as_ref().and_then(|card| card.fold);
    let mut lists = Lists { lists: Vec::new(), fold };
    lists.lists.extend(top.get("front").map(|field| (field, Face::Front)));
    let inside = top.get("inside").filter(|field| desk.inside_of(*field, fold));
    lists.lists.extend(inside.map(|field| (field, Face::Inside(None))));
    lists.lists.extend(top.get("back").map(|field| (field, Face::Back)));
    let envelope = top.get("envelope").map(|field| desk.envelope(field));
    let envelope = envelope.map(|mut draft| {
        lists.lists.append(&mut draft.lists);
        draft.envelope
    });
    let layers = desk.layers(&lists, &piece_names);
    if let Some(field) =
        top.get("front").filter(|field| matches!(field.node, Node::List(list) if list.items.is_empty()))
    {
        desk.note(
            Finding::error("missing-key", field.key, "`front` is empty", "no layer at all")
                .help("write at least 1 layer, such as `- {place: mat, centre: both ways}`")
                .plainly("The card has no layer."),
        );
        return None;
    }
    let sized = card.as_ref().and_then(|card| Some((card.size?.0, card.fold?)));
    let front = desk.front(
        &layers,
        first,
        Room { pieces: pieces.as_deref(), card: sized, envelope: envelope.as_ref().and_then(Option::as_ref) },
    );
    let notes = desk.notes(top.get("notes"), &layers);
    let leftovers = desk.leftovers(top.get("leftovers"), &paper_names);
    let supplies = desk.texts(top.get("supplies"));
    let tools = desk.texts(top.get("tools"));
    let handouts = desk.handouts(top.get("handouts"));
    let frames = desk.frames(top.get("frames"), &layers.names, front.as_deref());
    let allow = desk.allowances(top.get("allow"));

    let card = match (card_field, card) {
        (Some(_), card) => {
            let card = card?;
            let (size, span) = card.size?;
            Some(Card { size, span, fold: card.fold?, from: card.from?.value, base: PieceId(0) })
        }
        (None, _) if for_cuts => None,
        (None, _) => return None,
    };
    let title = title.flatten().unwrap_or_else(|| Spanned::new(stem.to_owned(), Span::default()));
    let month = month.flatten();
    let (papers, mut pieces, front) = (papers?, pieces?, front?);
    let envelope = match envelope {
        Some(envelope) => Some(envelope?),
        None => None,
    };
    let has_front = top.get("front").is_some();
    if (has_front != card.is_some()) || papers.is_empty() || (has_front && month.is_none()) {
        return None;
    }
    let counted = has_front || pieces.iter().all(|piece| piece.per_card.is_some());
    counted.then_some(())?;
    pieces.extend(kept);
    let versions = versions?.into_iter().map(|(version, _)| version).collect();
    let mut design = Design {
        units: desk.units,
        asked: desk.asked.clone(),
        asked_span: top.get("units").map(|field| field.key),
        languages: desk.languages.clone(),
        words: Words::of(desk.language).clone(),
        has_readers_names: !desk.called.is_empty(),
        untold: std::mem::take(&mut desk.untold),
        restated: Vec::new(),
        title,
        month,
        designer,
        imprint,
        photo,
        about,
        cards: cards?,
        workshop,
        card,
        papers,
        pieces,
        versions,
        layers: front,
        envelope,
        notes,
        leftovers,
        allow,
        supplies,
        tools,
        handouts,
        frames,
        has_front,
    };
    settle_cells(&mut design);
    if let Some(language) = told {
        let places: Vec<Span> = layers.names.list.iter().map(|name| name.span).collect();
        desk.name_for_readers(&mut design, &places, language);
    }
    Some(design)
}
