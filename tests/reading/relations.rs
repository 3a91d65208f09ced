//! Sizes by relation: settled against sums worked by hand, and refused on their lines.

use super::{design, found};
use trimwright::design::model::{Change, Design, Extent, Measure, Of, PieceId, Stated};
use trimwright::design::nodes::read;
use trimwright::design::resize::{named, resize};
use trimwright::design::settle::{first_units, settle};
use trimwright::diagnostic::Severity;
use trimwright::geometry::Edge;
use trimwright::length::{Length, Size, Units};
use trimwright::source::Source;

/// A file for `cuts` with these pieces, in both systems where pairs are used.
pub(super) fn cuts(units: &str, pieces: &[(&str, &str)]) -> String {
    let mut text = format!("cards: 1\nunits: {units}\npapers: {{kraft: {{sheets: 9 of letter}}}}\npieces:\n");
    for (name, size) in pieces {
        text.push_str(&format!("  {name}:\n    from: kraft\n    per card: 1\n    size: {size}\n"));
    }
    text
}

/// A side by side size, in block form so that commas stand.
pub(super) fn sides(width: &str, height: &str) -> String {
    format!("\n      width: {width}\n      height: {height}")
}

pub(super) fn size_of(design: &Design, name: &str) -> Size {
    design.pieces.iter().find(|piece| piece.name == name).unwrap().size
}

fn size(design: &Design, name: &str) -> String {
    size_of(design, name).to_string()
}

/// Every relation, in both systems, with the card and with pieces written before and after.
const GARDEN: &str = "\
title: Garden Gate
month: 2027-04
cards: 2
units: inch and metric
card: {size: quarter letter | A6, fold: side, from: white}
papers:
  white: {sheets: 2 of letter}
  moss: {sheets: 4 of letter}
pieces:
  panel: {size: mat less 1/8 in | 3 mm all round, from: moss}
  mat: {size: card less 1/8 in | 3 mm all round, from: moss}
  apron:
    size: mat less left 1/4 in | 6 mm, top 1/2 in | 13 mm and right 1/8 in | 3 mm
    from: moss
  sill:
    size:
      width: as wide as mat less 1/4 in | 6 mm
      height: half of panel
    from: moss
  post:
    size: {width: 1/2 in | 13 mm, height: as high as panel}
    from: moss
  square:
    size: {width: 1 1/2 in | 40 mm, height: as wide as square}
    from: moss
  long:
    size: {width: as high as mat, height: half of the width of mat plus 1/16 in | 1 mm}
    from: moss
  third:
    size: {width: a third of panel, height: a quarter of the height of panel}
    from: moss
  field:
    size:
      width: rest of panel after post, post with gap 1/8 in | 3 mm
      height: rest of panel after sill
    from: moss
  slat:
    size:
      width: share of panel, 5 evenly with gap 1/16 in | 2 mm
      height: share of panel, 4 evenly with gap 1/8 in | 4 mm less 1/16 in | 1 mm
    from: moss
front:
  - {place: mat, centre: both ways, glue: tape}
";

/// Common practice, no source, for the borders; the sums by hand. Quarter letter is 4 1/4 x 5 1/2 in.
#[test]
fn every_relation_in_inches() {
    let design = design(GARDEN, Units::Inch);
    for (name, wanted) in [
        ("mat", "4 x 5 1/4 in"),       // 4 1/4 - 2/8, 5 1/2 - 2/8
        ("panel", "3 3/4 x 5 in"),     // 4 - 2/8, 5 1/4 - 2/8
        ("apron", "3 5/8 x 4 3/4 in"), // 4 - 1/4 - 1/8, 5 1/4 - 1/2
        ("sill", "3 3/4 x 2 1/2 in"),  // 4 - 1/4, half of 5
        ("post", "1/2 x 5 in"),
        ("square", "1 1/2 x 1 1/2 in"),
        ("long", "5 1/4 x 2 1/16 in"), // half of 4 is 2, plus 1/16
        ("third", "1 1/4 x 1 1/4 in"), // 3 3/4 by 3, 5 by 4
        ("field", "2 1/2 x 2 1/2 in"), // 3 3/4 - 1/2 - 1/2 - 2/8, 5 - 2 1/2
        ("slat", "0.7 x 1 3/32 in"),   // (3 3/4 - 4/16) by 5, (5 - 3/8) by 4 is 1 5/32, less 1/16
    ] {
        assert_eq!(size(&design, name), wanted, "{name}");
    }
}

/// A6 is 105 x 148 mm (ISO 216).
#[test]
fn every_relation_in_millimetres() {
    let design = design(GARDEN, Units::Metric);
    for (name, wanted) in [
        ("mat", "99 x 142 mm"),   // 105 - 6, 148 - 6
        ("panel", "93 x 136 mm"), // 99 - 6, 142 - 6
        ("apron", "90 x 129 mm"), // 99 - 6 - 3, 142 - 13
        ("sill", "93 x 68 mm"),   // 99 - 6, half of 136
        ("post", "13 x 136 mm"),
        ("square", "40 x 40 mm"),
        ("long", "142 x 50.5 mm"), // half of 99 is 49.5, plus 1
        ("third", "31 x 34 mm"),   // 93 by 3, 136 by 4
        ("field", "61 x 68 mm"),   // 93 - 13 - 13 - 6, 136 - 68
        ("slat", "17 x 30 mm"),    // (93 - 8) by 5, (136 - 12) by 4 is 31, less 1
    ] {
        assert_eq!(size(&design, name), wanted, "{name}");
    }
}

#[test]
fn what_is_stated_is_kept() {
    let design = design(GARDEN, Units::Metric);
    let id = |name: &str| PieceId(design.pieces.iter().position(|piece| piece.name == name).unwrap());
    let stated = |name: &str| &design.piece(id(name)).stated;
    assert_eq!(*stated("mat"), Stated::AllRound { of: Of::Card, border: Length::mm(3) });
    assert_eq!(*stated("panel"), Stated::AllRound { of: Of::Piece(id("mat")), border: Length::mm(3) });
    let edges = vec![(Edge::Left, Length::mm(6)), (Edge::Top, Length::mm(13)), (Edge::Right, Length::mm(3))];
    assert_eq!(*stated("apron"), Stated::ByEdge { of: Of::Piece(id("mat")), edges });
    let Stated::BySide { width, height } = stated("field") else { panic!() };
    let after = vec![id("post"), id("post")];
    assert_eq!(width.measure, Measure::Rest { of: Of::Piece(id("panel")), after, gap: Length::mm(3) });
    assert_eq!(
        height.measure,
        Measure::Rest { of: Of::Piece(id("panel")), after: vec![id("sill")], gap: Length::mm(0) }
    );
    let Stated::BySide { height, .. } = stated("slat") else { panic!() };
    assert_eq!(height.measure, Measure::Share { of: Of::Piece(id("panel")), count: 4, gap: Length::mm(4) });
    assert_eq!(height.change, Some(Change::Less(Length::mm(1))));
    let Stated::BySide { height, .. } = stated("long") else { panic!() };
    assert_eq!(height.measure, Measure::Part { of: Of::Piece(id("mat")), side: Extent::Width, parts: 2 });
}

/// Every word of relations is counted where it is used; only the bottom edge loses nothing here.
#[test]
fn the_words_of_relations_are_heard() {
    let source = Source::new("words.yaml", GARDEN);
    let heard = settle(&read(&source).unwrap(), &source, "words", Units::Inch).heard;
    let sides = [
        "width",
        "height",
        "as wide as",
        "as high as",
        "half of",
        "a third of",
        "a quarter of",
        "rest of",
        "share of",
        "less",
        "plus",
        "with gap",
    ];
    let words = sides.map(|word| ("width", word)).into_iter();
    for (place, word) in words.chain(["all round", "left", "right", "top", "bottom"].map(|word| ("size", word))) {
        let heard_as = (place.to_owned(), word);
        assert!(heard.open.contains(&heard_as), "{word}");
        assert_eq!(heard.used.contains(&heard_as), word != "bottom", "{word}");
    }
}

/// Names may hold words of the language; a known name is always taken for the name.
#[test]
fn names_may_hold_the_words() {
    let text = cuts(
        "metric",
        &[
            ("more or less", "40 x 60 mm"),
            ("black and white", "10 x 10 mm"),
            ("day after day", "50 x 70 mm"),
            ("plus one", "7 x 9 mm"),
            ("frame", "more or less less 1 mm all round"),
            ("twin", &sides("as wide as more or less", "as high as plus one less 2 mm")),
            (
                "left over",
                &sides("rest of day after day after black and white and plus one", "as high as day after day"),
            ),
            ("Strip", &sides("AS WIDE AS frame", "Half Of frame")),
        ],
    );
    let design = design(&text, Units::Metric);
    for (name, wanted) in
        [("frame", "38 x 58 mm"), ("twin", "40 x 7 mm"), ("left over", "33 x 70 mm"), ("Strip", "38 x 29 mm")]
    {
        assert_eq!(size(&design, name), wanted, "{name}");
    }
}

/// A width may lean on a height that leans on another width: only sides go in circles.
#[test]
fn sides_may_lean_both_ways_between_two_pieces() {
    let text = cuts(
        "inch",
        &[
            ("kite", &sides("3 in", "as high as tail plus 1 in")),
            ("tail", &sides("as wide as kite less 1/2 in", "2 in")),
        ],
    );
    let design = design(&text, Units::Inch);
    assert_eq!((size(&design, "kite"), size(&design, "tail")), ("3 x 3 in".into(), "2 1/2 x 2 in".into()));
}

/// One piece of a design in inches with a mat of 4 x 5 in and a strip of 1 x 2 in, and the fault: its
/// code, the text it stands at, and a part of what helps.
const REFUSED: &[(&str, &str, &str, &str)] = &[
    // Whole sizes.
    ("mat less 1/8 in", "bad-size", "mat less 1/8 in", "say it as `mat less 1/8 in all round`"),
    ("mat less", "bad-size", "mat less", "say it as `mat less 1/8 in all round`"),
    ("mat less 1/8 in left", "bad-size", "mat less 1/8 in left", "say it as `mat less left 1/8 in`"),
    ("mat less lef 1/8 in", "bad-word", "lef", "write `left`"),
    ("mat less left 1/8 in, left 1/4 in", "placed-twice", "left", "keep 1"),
    ("mat less left, top 1/4 in", "bad-length", "left", "such as `left 1/8 in`"),
    ("mat less left 1/8", "missing-unit", "1/8", "say `1/8 in`"),
    ("matt less 1/8 in all round", "unknown-piece", "matt", "write `mat`"),
    ("half of mat", "bad-size", "half of mat", "`{width: half of mat, height: 1 in}`"),
    ("as wide as mat less 1/4 in", "bad-size", "as wide as mat less 1/4 in", "say the 2 sides"),
    ("mat", "bad-size", "mat", "`{width: as wide as mat, height: as high as mat}`"),
    (
        "mat less 1/8 in all round | mat less 3 mm all round",
        "bad-size",
        "mat less 3 mm all round",
        "pair only the 1 length",
    ),
    ("mat less left 5 in", "size-not-positive", "mat less left 5 in", "less than 4 in off the width of the mat"),
    ("mat less 2 in all round", "size-not-positive", "mat less 2 in all round", "under 2 in"),
    ("{width: 1 in}", "missing-key", "size", "such as `height: 1 in`"),
    ("[4 in, 5 in]", "wrong-kind", "4 in, 5 in", "1 text"),
    // Sides: what stands here is the width.
    ("W mat", "bad-size", "mat", "say `as wide as mat`"),
    ("W mat less 1/4 in", "bad-size", "mat less 1/4 in", "say `as wide as mat less 1/4 in`"),
    ("W as wid as mat", "bad-size", "as wid as mat", "write `as wide as`"),
    ("W halv of mat", "bad-size", "halv of mat", "write `half of`"),
    ("W remainder", "bad-size", "remainder", "`share of`"),
    ("W as wide as", "bad-size", "", "name 1 piece"),
    ("W as wide as matt", "unknown-piece", "matt", "write `mat`"),
    ("W as wide as mat less", "bad-length", "as wide as mat less", "such as `less 1/4 in`"),
    ("W as wide as mat less a bit", "bad-length", "a bit", "such as `4 1/4 in`"),
    ("W as wide as mat less 1/4", "missing-unit", "1/4", "`1/4 in`"),
    ("W as wide as mat less 1/4 in less 1/8 in", "bad-size", "1/8 in", "add the 2 lengths up"),
    ("W as wide as mat less 1/4 in plus 1/8 in", "bad-size", "1/8 in", "add the 2 lengths up"),
    ("W 4 in less 4 in", "size-not-positive", "4 in less 4 in", "take less than 4 in"),
    ("W 0 in", "size-not-positive", "0 in", "more than 0"),
    ("W -1 in", "bad-length", "-1 in", "0 or more"),
    ("W 4 x 5 in", "bad-length", "4 x 5 in", "4 1/4 in"),
    ("W half of mat less 2 in", "size-not-positive", "half of mat less 2 in", "less than 2 in, half of the width"),
    ("W half of the height of mad", "unknown-piece", "mad", "write `mat`"),
    ("W rest of mat", "bad-size", "rest of mat", "such as `rest of mat after strip`"),
    ("W rest of mat after", "bad-size", "rest of mat after", "such as `rest of card after strip, bar`"),
    ("W rest of mat after strip,", "bad-size", "rest of mat after strip,", "such as"),
    ("W rest of mat after stripe", "unknown-piece", "stripe", "write `strip`"),
    ("W rest of mat after strip with gap", "bad-length", "mat after strip with gap", "such as `with gap 1/8 in`"),
    ("W rest of mat after strip gap 1/8 in", "bad-size", "1/8 in", "such as `with gap 1/8 in`"),
    ("W rest of mat after strip with 1/8 in", "bad-size", "1/8 in", "such as `with gap 1/8 in`"),
    (
        "W rest of mat after strip with gap 3 in",
        "size-not-positive",
        "rest of mat after strip with gap 3 in",
        "under 4 in",
    ),
    ("W rest of mat after mat", "size-not-positive", "rest of mat after mat", "under 4 in together"),
    ("W share of mat", "bad-size", "share of mat", "such as `share of mat, 3 evenly`"),
    ("W share of mat, 3", "bad-size", "share of mat, 3", "such as `share of mat, 3 evenly`"),
    ("W share of mat 3 evenly", "bad-size", "share of mat 3 evenly", "3 evenly`"),
    ("W share of mat, three evenly", "bad-count", "three", "from 1 to 1000"),
    ("W share of mat, 0 evenly", "bad-count", "0", "from 1 to 1000"),
    (
        "W share of mat, 3 evenly with gap 2 in",
        "size-not-positive",
        "share of mat, 3 evenly with gap 2 in",
        "at most 1 15/16 in",
    ),
    ("W as wide as mat plus 100 m", "bad-length", "100 m", "`in`, `mm` or `cm`"),
    ("W as wide as mat plus 99999 mm", "bad-length", "as wide as mat plus 99999 mm", "at most 100 m"),
    ("W as wide as it", "circular-size", "as wide as it", "write 1 of these sides"),
    ("W as wide as mat | as wide as mat", "bad-size", "as wide as mat", "pair only the 1 length"),
];

#[test]
fn refused_relations_say_what_is_missing() {
    let mut wrong: Vec<String> = Vec::new();
    for (size, code, at, help) in REFUSED {
        let size = size.strip_prefix("W ").map_or((*size).to_owned(), |width| sides(width, "1 in"));
        let text = cuts("inch", &[("mat", "4 x 5 in"), ("strip", "1 x 2 in"), ("it", &size)]);
        let source = Source::new("refused.yaml", text.clone());
        let (findings, settled) = found(&source, Units::Inch);
        let [finding] = findings.as_slice() else {
            wrong.push(format!("{size}: {findings:#?}"));
            continue;
        };
        // On the line of the fault, which is the last piece's.
        let line = source.position(finding.primary.span.start).line;
        let first = source.position(text.find("  it:").unwrap()).line;
        let place = source.slice(finding.primary.span);
        let helps = finding.help.as_ref().is_some_and(|said| said.contains(help));
        if (finding.code, settled, place, helps) != (*code, false, *at, true) || line < first + 3 {
            wrong.push(format!("{size}: `{place}` {finding:#?}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// A text in quotes has its places too: between braces a comma asks for them.
#[test]
fn places_within_quotes_are_places() {
    for quote in ['"', '\''] {
        let size = format!("{{width: {quote}share of mat, 3 evenly with gap 1/0 in{quote}, height: 1 in}}");
        let source = Source::new("quoted.yaml", cuts("inch", &[("mat", "4 x 5 in"), ("it", &size)]));
        let (findings, _) = found(&source, Units::Inch);
        let [finding] = findings.as_slice() else { panic!("{findings:#?}") };
        assert_eq!((finding.code, source.slice(finding.primary.span)), ("bad-length", "1/0 in"));
    }
}

/// Where a design asks for both systems, each length in a relation has a twin by rule in the other
/// edition, at its place. By hand: 1/4 in is 6.35 mm; 1/2 in is 12.7 mm, a size of its own and so rounded
/// down; 3 mm is 1.89 and 2 mm is 1.26 sixteenths of an inch.
#[test]
fn each_length_of_a_relation_has_a_twin_by_rule() {
    for (from, to, edition, pair) in [
        ("less 1/4 in | 6 mm\n", "less 1/4 in\n", Units::Metric, "1/4 in | 6 mm"),
        ("left 1/4 in | 6 mm", "left 1/4 in", Units::Metric, "1/4 in | 6 mm"),
        ("with gap 1/8 in | 3 mm", "with gap 3 mm", Units::Inch, "3 mm | 1/8 in"),
        ("with gap 1/16 in | 2 mm", "with gap 2 mm", Units::Inch, "2 mm | 1/16 in"),
        ("width: 1/2 in | 13 mm", "width: 1/2 in", Units::Metric, "1/2 in | 12 mm"),
    ] {
        let text = GARDEN.replace(from, to);
        assert_ne!(text, GARDEN, "{from}");
        let source = Source::new("twins.yaml", text);
        let root = trimwright::design::nodes::read(&source).unwrap();
        for units in [Units::Inch, Units::Metric] {
            let settled = settle(&root, &source, "twins", units);
            assert_eq!(settled.findings, vec![], "{from}");
            let pairs: Vec<&str> =
                settled.restated.iter().filter(|one| !one.is_stock).map(|one| one.pair.as_str()).collect();
            let wanted: &[&str] = if units == edition { &[pair] } else { &[] };
            assert_eq!(pairs, wanted, "{from} in {units:?}");
        }
    }
}

/// The way round is named in the order that sizes are asked for, and only the circle is noted.
#[test]
fn a_circle_names_the_way_round() {
    let text = cuts(
        "inch",
        &[
            ("mat", &sides("as wide as bar", "4 in")),
            ("bar", &sides("half of the height of post", "1 in")),
            ("post", &sides("1 in", "as wide as mat less 1 in")),
            ("tag", "mat less 1/8 in all round"),
        ],
    );
    let source = Source::new("round.yaml", text);
    let (findings, settled) = found(&source, Units::Inch);
    let [finding] = findings.as_slice() else { panic!("{findings:#?}") };
    assert_eq!((finding.code, settled), ("circular-size", false));
    assert_eq!(
        finding.message,
        "sides go round in a circle: the width of `mat` to the width of `bar` to the height of `post` to \
         the width of `mat`"
    );
    let places: Vec<&str> = finding.others.iter().map(|label| source.slice(label.span)).collect();
    assert_eq!(source.slice(finding.primary.span), "as wide as bar");
    assert_eq!(places, ["half of the height of post", "as wide as mat less 1 in"]);

    // A circle of whole sizes is one finding, though both sides go round.
    let text = cuts(
        "inch",
        &[
            ("mat", "panel less 1/8 in all round"),
            ("panel", "tag less left 1/8 in"),
            ("tag", "mat less 1/8 in all round"),
        ],
    );
    let (findings, _) = found(&Source::new("round.yaml", text), Units::Inch);
    let messages: Vec<&str> = findings.iter().map(|finding| finding.message.as_str()).collect();
    assert_eq!(messages, ["sizes lean on each other in a circle: `mat` to `panel` to `tag` to `mat`"]);
}

/// Resizing follows every relation; sums by hand from the sizes in inches above.
#[test]
fn resizing_follows_every_relation() {
    let design = design(GARDEN, Units::Inch);
    let quarter = Length::inch(1, 4);
    let none = Length::inch(0, 1);
    // The mat 4 1/4 x 5 1/4 in: the width alone grows.
    let wider = resize(&design, named(&design, "mat").unwrap(), quarter, none).unwrap();
    for (name, wanted) in [
        ("mat", "4 1/4 x 5 1/4 in"),
        ("panel", "4 x 5 in"),
        ("apron", "3 7/8 x 4 3/4 in"),
        ("sill", "4 x 2 1/2 in"),
        ("post", "1/2 x 5 in"),
        ("long", "5 1/4 x 2 3/16 in"), // half of 4 1/4 is 2 1/8
        ("field", "2 3/4 x 2 1/2 in"), // 4 - 1 - 1/4
        ("slat", "3/4 x 1 3/32 in"),   // (4 - 1/4) by 5
        ("square", "1 1/2 x 1 1/2 in"),
    ] {
        assert_eq!(size(&wider, name), wanted, "{name}");
    }
    // A post that is wider leaves less of the panel twice.
    let post = resize(&design, named(&design, "post").unwrap(), quarter, none).unwrap();
    assert_eq!(size(&post, "field"), "2 x 2 1/2 in");
    assert_eq!(size(&post, "panel"), size(&design, "panel"));
    // A size that was changed stays when another one is changed after it.
    let both = resize(&wider, named(&wider, "post").unwrap(), quarter, none).unwrap();
    assert_eq!((size(&both, "mat"), size(&both, "field")), ("4 1/4 x 5 1/4 in".into(), "2 1/4 x 2 1/2 in".into()));
    // Where something would be nothing there is no such design.
    assert!(resize(&design, named(&design, "post").unwrap(), Length::inch(3, 2), none).is_none());
    for piece in &wider.pieces {
        assert_eq!((piece.shape.width, piece.shape.height), (piece.size.width.nm(), piece.size.height.nm()));
    }
}

/// A shape follows its size; a circle that is only made wider is none, so there is no such design.
#[test]
fn a_shape_follows_its_size() {
    let text = cuts(
        "metric",
        &[
            ("disc", "30 x 30 mm\n    shape: circle\n    by: punch\n    margin: 6 mm"),
            ("flag", "40 x 20 mm\n    shape: {corners: ['0 mm, 0 mm', '40 mm, 0 mm', '20 mm, 20 mm']}"),
        ],
    );
    let design = design(&text, Units::Metric);
    let (more, none) = (Length::mm(2), Length::mm(0));
    let what = |name| named(&design, name).unwrap();
    assert!(resize(&design, what("disc"), more, none).is_none());
    let larger = resize(&design, what("disc"), more, more).unwrap();
    assert_eq!(size(&larger, "disc"), "32 x 32 mm");
    // The tip of the flag stays in the middle: 42 by 2 is 21.
    let wider = resize(&design, what("flag"), more, none).unwrap();
    let corners = wider.pieces[1].shape.make().unwrap().outline.outer().to_vec();
    assert!(corners.iter().any(|at| (at.x, at.y) == (21_000_000, 20_000_000)), "{corners:?}");
}

/// A file for `cuts` that says no units is planned in those of its first length, wherever that stands.
#[test]
fn the_first_length_may_stand_in_a_relation() {
    for (size, units) in [
        ("tag less 1/8 in all round", Units::Inch),
        ("tag less left 3 mm, top 6 mm", Units::Metric),
        ("{width: as wide as tag less 3 mm, height: 1 in}", Units::Metric),
        ("{width: as wide as tag, height: 1 in}", Units::Inch),
        ("{width: half of tag plus 1/8 in | 3 mm, height: 1 mm}", Units::Inch),
        ("{width: rest of tag after it with gap 2 mm, height: 1 in}", Units::Metric),
        ("{width: 'share of tag, 3 evenly with gap 2 mm', height: 1 in}", Units::Metric),
        ("{width: 1/2 in less 2 mm, height: 1 mm}", Units::Inch),
    ] {
        let text = format!("pieces:\n  strip: {{size: {size}}}\n  tag: {{size: A6}}\n");
        let root = read(&Source::new("first.yaml", text)).unwrap();
        assert_eq!(first_units(&root), Some(units), "{size}");
    }
}

/// Of two editions only the one is told whose own lengths do not divide, and what leans on that share says
/// nothing of its own. By hand: 4 in less 2/8 in are 3 3/4 in, three times 1 1/4 in; 100 mm less 6 mm are
/// 94 mm, three times 31 1/3 mm; with gaps of 5 mm 90 mm are three times 30 mm, with gaps of 2 mm 96 mm
/// are three times 32 mm, and 2 mm are nearer to 3 mm.
#[test]
fn a_share_is_told_in_the_edition_that_it_does_not_divide_in() {
    let text = "title: Gate\nmonth: 2027-06\ncards: 1\nunits: inch and metric\n\
                card: {size: 4 x 5 in | 100 x 125 mm, fold: side, from: white}\n\
                papers: {white: {sheets: 1 of letter}}\npieces:\n\
                \u{20} slat:\n    size:\n      width: share of card, 3 evenly with gap 1/8 in | 3 mm\n\
                \u{20}     height: 2 in | 50 mm\n    from: white\n\
                \u{20} core: {size: slat less 1/8 in | 3 mm all round, from: white}\n\
                front:\n  - {place: slat, left: 1/2 in | 13 mm, top: 1/2 in | 13 mm, glue: tape}\n\
                \u{20} - {place: core, onto: slat, left: 1/8 in | 3 mm, top: 1/8 in | 3 mm, glue: tape}\n";
    let outcome = trimwright::pipeline::run(&Source::new("design.yaml", text), "design");
    let loud: Vec<_> = outcome.findings.iter().filter(|finding| finding.severity != Severity::Note).collect();
    let [finding] = loud.as_slice() else { panic!("{loud:#?}") };
    assert_eq!((finding.code, finding.edition), ("share-off-the-ruler", Some(Units::Metric)));
    assert_eq!(finding.help.as_deref(), Some("say `with gap 2 mm`, and each is 32 mm"));
}

/// The README's example of sizes by relation, with the rest of a design round it.
#[test]
fn the_example_in_the_readme_is_sound() {
    let readme = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/README.md")).unwrap();
    let section = readme.split_once("**Sizes by relation**").unwrap().1;
    let example = section.split_once("```yaml\n").unwrap().1.split_once("```").unwrap().0;
    let head = "title: Gate\nmonth: 2027-06\ncards: 2\nunits: inch and metric\n\
                card: {size: 4 1/4 x 5 1/2 in | 105 x 148 mm, fold: side, from: white}\n\
                papers: {white: {sheets: 2 of letter}, slate: {sheets: 4 of letter}}\n";
    let names = ["mat", "bar", "apron", "field", "slat", "tag"];
    let layers: String =
        names.iter().map(|name| format!("  - {{place: {name}, left: 0 in, bottom: 0 in, glue: tape}}\n")).collect();
    let source = Source::new("design.yaml", format!("{head}{example}front:\n{layers}"));
    let outcome = trimwright::pipeline::run(&source, "design");
    // They lie on one another here; what is said of the sizes must be sound.
    let of_sizes = |code: &str| {
        ["share-off-the-ruler", "size-off-the-ruler", "never-used"].contains(&code) || code.starts_with("bad-")
    };
    let loud: Vec<_> = outcome.findings.iter().filter(|finding| of_sizes(finding.code)).collect();
    assert!(loud.is_empty(), "{loud:#?}");
    let broken: Vec<_> = outcome.findings.iter().filter(|finding| finding.severity == Severity::Error).collect();
    assert!(broken.is_empty(), "{broken:#?}");
    assert_eq!(outcome.editions.len(), 2);
    assert_eq!(outcome.editions[0].design.pieces.len(), names.len() + 1);
}
