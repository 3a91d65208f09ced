//! Broken designs: what is changed in a sound one, and which faults must be found on which lines.

use super::sound::{GARDEN_GATE, LANTERN_ROW, REED_BED, TAGS, TIDE_LINE};

/// One broken design.
pub(crate) struct Broken {
    /// The sound design it is made from.
    pub(crate) from: &'static str,
    /// What is replaced (each stands there exactly once) and by what.
    pub(crate) swaps: &'static [(&'static str, &'static str)],
    /// The faults: a stretch of the line that each is on (each stands in the broken text exactly
    /// once), and its code. In the order of the file.
    pub(crate) faults: &'static [(&'static str, &'static str)],
}

const fn lantern(
    swaps: &'static [(&'static str, &'static str)],
    faults: &'static [(&'static str, &'static str)],
) -> Broken {
    Broken { from: LANTERN_ROW, swaps, faults }
}

const fn reed(
    swaps: &'static [(&'static str, &'static str)],
    faults: &'static [(&'static str, &'static str)],
) -> Broken {
    Broken { from: REED_BED, swaps, faults }
}

const fn tags(
    swaps: &'static [(&'static str, &'static str)],
    faults: &'static [(&'static str, &'static str)],
) -> Broken {
    Broken { from: TAGS, swaps, faults }
}

const fn tide(
    swaps: &'static [(&'static str, &'static str)],
    faults: &'static [(&'static str, &'static str)],
) -> Broken {
    Broken { from: TIDE_LINE, swaps, faults }
}

const fn gate(
    swaps: &'static [(&'static str, &'static str)],
    faults: &'static [(&'static str, &'static str)],
) -> Broken {
    Broken { from: GARDEN_GATE, swaps, faults }
}

/// All of them.
pub(crate) const BROKEN: &[Broken] = &[
    // Keys.
    lantern(&[("designer:", "desinger:")], &[("desinger:", "unknown-key")]),
    lantern(&[("edge strip:", "strip:")], &[("strip: 1/2 in", "unknown-key")]),
    lantern(&[("  fold: side\n", "")], &[("card:\n", "missing-key")]),
    lantern(&[("month: 2026-11\n", "")], &[("title: Lantern Row", "missing-key")]),
    lantern(
        &[("title: Lantern Row\n", ""), ("units: inch and metric\n", "units: feet\n")],
        &[("month: 2026-11", "missing-key"), ("units: feet", "bad-word")],
    ),
    lantern(&[("cards: 8\n", "cards: 8\ntitle: Lantern Row Again\n")], &[("Again", "repeated-key")]),
    lantern(
        &[("  slate:\n    sheets", "  dusk: {sheets: 1 of letter}\n  slate:\n    sheets")],
        &[("  dusk: {sheets", "repeated-key")],
    ),
    lantern(&[("    from: slate\n  panel", "    from:\n  panel")], &[("    from:\n", "missing-key")]),
    reed(
        &[("  - place: tile\n", "  - ½lace: tile\n")],
        &[("½lace: tile", "unknown-key"), ("½lace: tile", "missing-key")],
    ),
    // Lengths, sizes and their twins.
    lantern(&[("1 x 1 3/4 in | 25 x 44 mm", "1 x 1 3/4 | 25 x 44 mm")], &[("1 x 1 3/4 |", "missing-unit")]),
    lantern(
        &[("gap: 1/4 in | 6 mm", "gap: 1/3 in | 6 mm"), ("shows: 1/8 in | 3 mm", "shows: 1/0 in | 3 mm")],
        &[("shows: 1/0", "bad-length"), ("gap: 1/3", "bad-length")],
    ),
    lantern(&[("card less 1/8 in | 3 mm", "card less -1/8 in | 3 mm")], &[("less -1/8", "bad-length")]),
    lantern(&[("top: 3/4 in | 20 mm", "top: 3/4 in | 7/8 in")], &[("7/8 in", "bad-length")]),
    lantern(&[("top: 3/4 in | 20 mm", "top: 3/4 in | 20 mm | 2 cm")], &[("2 cm", "bad-length")]),
    lantern(&[("4 1/4 x 5 1/2 in | 105 x 148 mm", "4 1/4 in | 105 x 148 mm")], &[("4 1/4 in |", "bad-length")]),
    lantern(&[("1 x 1 3/4 in | 25 x 44 mm", "quarter leter")], &[("quarter leter", "bad-size")]),
    lantern(&[("card less 1/8 in | 3 mm all round", "card less 1/8 in | 3 mm")], &[("card less", "bad-size")]),
    reed(&[("size: 6 x 90 mm", "size: 6 x 0 mm")], &[("6 x 0 mm", "size-not-positive")]),
    reed(&[("card less 4 mm", "card less 6 cm")], &[("card less 6 cm", "size-not-positive")]),
    reed(&[("size: 6 x 90 mm", "size: 6 x 100000000000000000000 mm")], &[("size: 6 x 1000", "bad-length")]),
    reed(&[("left: 10 mm", "left: 10")], &[("left: 10\n", "missing-unit")]),
    reed(&[("left: 10 mm", "left: 10,5 mm")], &[("left: 10,5", "bad-length")]),
    reed(&[("left: 10 mm", "left: 10 px")], &[("left: 10 px", "bad-length")]),
    reed(&[("size: A6\n", "size: B6\n")], &[("size: B6", "bad-size")]),
    reed(&[("card less 4 mm all round", "feild less 4 mm all round")], &[("feild less", "unknown-piece")]),
    reed(
        &[
            ("size: card less 4 mm all round", "size: reed less 1 mm all round"),
            ("size: 6 x 90 mm", "size: tile less 1 mm all round"),
            ("size: 12 × 12 mm", "size: field less 1 mm all round"),
        ],
        &[("size: reed less", "circular-size")],
    ),
    reed(&[("card less 4 mm", "field less 4 mm")], &[("field less 4 mm", "circular-size")]),
    // Sizes by relation.
    lantern(
        &[("size: 1 x 1 3/4 in | 25 x 44 mm", "size: {width: 1 in | 25 mm, hight: 1 in | 25 mm}")],
        &[("hight", "missing-key"), ("hight", "unknown-key")],
    ),
    lantern(
        &[("size: 1 x 1 3/4 in | 25 x 44 mm", "size: {width: as wide as mat less 1/4 in, height: half of rial}")],
        &[("half of rial", "unknown-piece")],
    ),
    lantern(
        &[(
            "    size: 1 x 1 3/4 in | 25 x 44 mm\n",
            "    size:\n      width: share of panel, 3 evenly with gap 1/4 in\n      height: rest of panel\n",
        )],
        &[("rest of panel", "bad-size")],
    ),
    lantern(
        &[("size: card less 1/8 in | 3 mm all round", "size: card less left 1/8 in | 3 mm, lft 1/4 in | 6 mm")],
        &[("lft", "bad-word")],
    ),
    lantern(
        &[
            (
                "    size: 1 x 1 3/4 in | 25 x 44 mm\n",
                "    size:\n      width: as high as rail\n      height: half of mat\n",
            ),
            (
                "    size: 4 1/2 x 1/4 in | 115 x 6 mm\n",
                "    size:\n      width: 9 mm\n      height: as wide as lantern\n",
            ),
        ],
        &[("as high as rail", "circular-size")],
    ),
    reed(
        &[("size: 6 x 90 mm", "size: {width: 6 mm, height: as high as field less 140 mm}")],
        &[("less 140 mm", "size-not-positive")],
    ),
    reed(
        &[("size: 6 x 90 mm", "size: {width: share of field, 4 evenly with gap 3 mm, height: 90 mm}")],
        &[("4 evenly", "yaml-surprise")],
    ),
    reed(&[("card less 4 mm all round", "card less 4 mm al round")], &[("al round", "bad-size")]),
    // Counts, months, words.
    reed(&[("cards: 6", "cards: six")], &[("cards: six", "bad-count")]),
    reed(&[("cards: 6", "cards: 0")], &[("cards: 0", "bad-count")]),
    reed(&[("cards: 6", "cards: 10001")], &[("cards: 10001", "bad-count")]),
    reed(&[("count: 4", "count: 4.5")], &[("count: 4.5", "bad-count")]),
    reed(&[("columns: 2, rows: 3", "columns: 900, rows: 900")], &[("columns: 900", "bad-count")]),
    reed(&[("3 of A4", "no of A4")], &[("no of A4", "bad-count")]),
    reed(&[("3 of A4", "A4")], &[("sheets: A4", "bad-count")]),
    reed(&[("2027-03", "2027-13")], &[("2027-13", "bad-month")]),
    reed(&[("2027-03", "March 2027")], &[("March 2027", "bad-month")]),
    reed(&[("2027-03", "2027-3")], &[("2027-3", "bad-month")]),
    reed(
        &[("fold: top", "fold: left"), ("pattern: two-way", "pattern: twoway"), ("glue: foam", "glue: foma")],
        &[("fold: left", "bad-word"), ("pattern: twoway", "bad-word"), ("glue: foma", "bad-word")],
    ),
    reed(&[("turned: quarter right", "turned: 90")], &[("turned: 90", "bad-turn")]),
    reed(&[("shows: 8 mm right, 8 mm top", "shows: 8 mm right, 8 mm rop")], &[("8 mm rop", "bad-word")]),
    lantern(&[("at the bottom, beside", "at the bottom")], &[("at the bottom", "bad-word")]),
    lantern(
        &[("at the bottom, beside", "at the foot, besides")],
        &[("at the foot", "bad-word"), ("besides", "bad-word")],
    ),
    // Names.
    lantern(&[("from: white\npapers", "from: wite\npapers")], &[("from: wite", "unknown-paper")]),
    lantern(&[("{panel: dusk, lantern: ember}", "{panel: dust, lantern: ember}")], &[("panel: dust", "unknown-paper")]),
    lantern(
        &[("{panel: ember, lantern: dusk}", "{pannel: ember, lantern: dusk}")],
        &[("{pannel: ember", "unknown-piece")],
    ),
    lantern(
        &[("{panel: ember, lantern: dusk}", "{panel: ember, lantern: dusk, rail: dusk}")],
        &[("rail: dusk", "unknown-piece")],
    ),
    lantern(&[("place: lantern", "place: lanterns")], &[("place: lanterns", "unknown-piece")]),
    lantern(&[("onto: panel", "onto: pannel")], &[("onto: pannel", "unknown-layer")]),
    lantern(&[("below: rail", "below: lantern")], &[("below: lantern", "unknown-layer")]),
    lantern(&[("trim flush: mat", "trim flush: lantern")], &[("trim flush: lantern", "unknown-layer")]),
    lantern(&[("  - on: rail", "  - on: rial")], &[("on: rial", "unknown-layer")]),
    lantern(&[("from: ember\n    idea", "from: amber\n    idea")], &[("from: amber", "unknown-paper")]),
    reed(&[("    as: left reeds\n", "")], &[("of: left reeds", "unknown-layer")]),
    reed(
        &[
            ("    as: left reeds\n", ""),
            ("right of: left reeds", "right of: reed"),
            ("    as: fallen reed\n", "    as: reed\n"),
        ],
        &[("as: reed", "name-used-twice")],
    ),
    reed(&[("    as: fallen reed\n", "    as: field\n")], &[("as: field", "name-used-twice")]),
    reed(&[("  tile:\n", "  base:\n"), ("place: tile", "place: base")], &[("  base:\n", "name-used-twice")]),
    lantern(
        &[("  - name: ember\n    cards: 4", "  - name: dusk\n    cards: 04")],
        &[("name: dusk\n    cards: 04", "name-used-twice")],
    ),
    // Versions.
    lantern(&[("- name: ember\n    cards: 4", "- name: ember\n    cards: 3")], &[("versions:", "cards-do-not-add-up")]),
    lantern(&[("{panel: dusk, lantern: ember}", "{panel: dusk}")], &[("papers: {panel: dusk}", "missing-key")]),
    reed(&[("from: chalk\n    stamp", "from: varies\n    stamp")], &[("from: varies", "missing-key")]),
    // Places.
    reed(&[("    bottom: 0 mm\n", "")], &[("place: reed\n    as: left", "not-placed")]),
    reed(&[("    right: 8 mm\n    top: 8 mm\n", "")], &[("place: tile", "not-placed"), ("place: tile", "not-placed")]),
    reed(&[("    right: 8 mm\n", "    right: 8 mm\n    left: 1 mm\n")], &[("    right: 8 mm", "placed-twice")]),
    reed(
        &[("    centre: both ways\n", "    centre: both ways\n    top: 4 mm\n")],
        &[("    top: 4 mm", "placed-twice")],
    ),
    reed(&[("centre: both ways", "centre: middle")], &[("centre: middle", "bad-word")]),
    reed(&[("    bottom: 0 mm\n", "    bottom: 0 mm\n    gap: 1 mm\n")], &[("    gap: 1 mm\n", "unknown-key")]),
    reed(
        &[("    row: {count: 4, gap: 3 mm}\n", "    row: {count: 4, gap: 3 mm}\n    column: {count: 2, gap: 1 mm}\n")],
        &[("column:", "placed-twice")],
    ),
    reed(&[("gap across: 2 mm, gap down: 3 mm", "gap across: 2 mm")], &[("grid:", "missing-key")]),
    // Kinds of value, and what YAML makes of it.
    reed(&[("title: Reed Bed", "title: [Reed, Bed]")], &[("title:", "wrong-kind")]),
    reed(&[("  size: A6\n  fold: top\n  from: chalk\n", "  A6\n")], &[("  A6\n", "wrong-kind")]),
    lantern(&[("  - bone folder\n", "  bone folder\n")], &[("  bone folder\n", "wrong-kind")]),
    lantern(&[("  - \"#10 envelopes\"", "  - #10 envelopes")], &[("#10 envelopes", "yaml-surprise")]),
    lantern(&[("  - bone folder\n", "  - a stack of #10 envelopes\n")], &[("a stack of", "yaml-surprise")]),
    lantern(&[("title: Lantern Row", "title: #1 Lantern Row")], &[("title: #1", "yaml-surprise")]),
    lantern(&[("title: Lantern Row", "title: Lantern: October")], &[("title: Lantern:", "yaml-surprise")]),
    lantern(&[("  - A strip inside the card.", "  - Inside: a strip.")], &[("Inside: a strip", "yaml-surprise")]),
    lantern(&[("title: Lantern Row", "title: no")], &[("title: no\n", "yaml-surprise")]),
    reed(&[("stamp: a small bird", "stamp: yes")], &[("stamp: yes", "yaml-surprise")]),
    lantern(&[("designer: Studio Marram", "designer: Studio #marram")], &[("designer: Studio", "yaml-surprise")]),
    lantern(&[("designer: Studio Marram", "designer: &friends of Marram")], &[("&friends", "yaml-surprise")]),
    lantern(&[("designer: Studio Marram", "designer: ! Marram")], &[("designer: !", "yaml-surprise")]),
    lantern(&[("card less 1/8 in | 3 mm all round", "card less İ 1/8 inİİİİİİ")], &[("card less", "bad-size")]),
    reed(&[("    shows: 4 mm all round", "    shows: İİİİ all roundİ")], &[("İİİİ all", "bad-word")]),
    reed(&[("shows: 8 mm right, 8 mm top", "shows: {}")], &[("shows: {}", "missing-key")]),
    reed(&[("shows: 8 mm right, 8 mm top", "shows: 8 mm top, 9 mm top")], &[("shows: 8 mm top", "placed-twice")]),
    lantern(&[("    pattern: one-way", "\tpattern: one-way")], &[("\tpattern", "yaml-surprise")]),
    lantern(&[("title: Lantern Row", "title: “Lantern: Row”")], &[("title: “", "yaml-surprise")]),
    lantern(&[("title: Lantern Row", "title: \"Lantern\" Row")], &[("title: \"Lantern\"", "yaml-surprise")]),
    lantern(&[("title: Lantern Row", "title: @ Lantern Row")], &[("title: @", "yaml-surprise")]),
    lantern(&[("  - bone folder\n", "  - 'bone folder\n")], &[("  - 'bone folder", "not-yaml")]),
    lantern(
        &[("  fold: side\n  from: white\npapers", "   fold: side\n  from: white\npapers")],
        &[("   fold: side", "not-yaml")],
    ),
    // Both sides, and pads.
    tide(&[("    turned over: top to bottom\n", "")], &[("  foam:\n", "missing-key")]),
    tide(&[("turned over: top to bottom", "turned over: sideways")], &[("turned over: sideways", "bad-word")]),
    tide(&[("{front: one-way, back: two-way}", "{back: two-way}")], &[("sides: {back", "missing-key")]),
    tide(&[("{front: one-way, back: two-way}", "{front: oneway, back: two-way}")], &[("front: oneway", "bad-word")]),
    tide(
        &[("{front: one-way, back: two-way}", "{front: one-way, rear: two-way}")],
        &[("rear: two-way", "unknown-key"), ("rear: two-way", "missing-key")],
    ),
    tide(&[("{front: one-way, back: two-way}", "both")], &[("sides: both", "wrong-kind")]),
    tide(&[("    sheets are: different\n", "    pattern: any\n")], &[("    pattern: any\n", "unknown-key")]),
    tide(
        &[("    pattern: two-way\n", "    turned over: left to right\n")],
        &[("turned over: left to right", "unknown-key")],
    ),
    tide(&[("sheets are: different", "sheets are: diffrent")], &[("sheets are: diffrent", "bad-word")]),
    tide(&[("sheets are: equal", "sheets are: yes")], &[("sheets are: yes", "bad-word")]),
    tide(&[("from: tag paper\n    side: back", "from: tag paper\n    side: left")], &[("side: left", "bad-word")]),
    tide(&[("side: front", "side: bakc")], &[("side: bakc", "bad-word")]),
    tide(
        &[("    from: shore\n", "    from: shore\n    side: back\n")],
        &[("side: back\n  wave:", "back-of-one-sided-paper")],
    ),
    tide(
        &[("    papers: {wave: foam}\nfront", "    papers: {wave: white}\n    side: back\nfront")],
        &[("    side: back\nfront", "back-of-one-sided-paper")],
    ),
    tide(
        &[("    sides: {front: one-way, back: two-way}\n    turned over: top to bottom\n", "")],
        &[("side: back\n  shell", "back-of-one-sided-paper"), ("side: back\nversions", "back-of-one-sided-paper")],
    ),
    // Kept leftovers.
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "2 of 0 x 11 in | 25 x 280 mm")], &[("2 of 0 x 11", "size-not-positive")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "2 of -1 x 11 in | 25 x 280 mm")], &[("2 of -1 x 11", "bad-length")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "2 of 1 x 11 | 25 x 280 mm")], &[("2 of 1 x 11", "missing-unit")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "0 of 1 x 11 in | 25 x 280 mm")], &[("0 of 1 x 11", "bad-count")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "10001 of 1 x 11 in | 25 x 280 mm")], &[("10001 of", "bad-count")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "some of 1 x 11 in | 25 x 280 mm")], &[("some of", "bad-count")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "1 x 11 in | 2 of 25 x 280 mm")], &[("1 x 11 in | 2 of", "bad-count")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "2 of")], &[("strip paper: 2 of", "bad-size")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "1 x 11 in | 2 x 12 in")], &[("1 x 11 in | 2", "bad-size")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "1 x 11 in | 25 x 280 mm | 1 x 1 cm")], &[("1 x 1 cm", "bad-size")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "longish")], &[("strip paper: longish", "bad-size")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "")], &[("strip paper:", "missing-key")]),
    tide(&[("2 of 1 x 11 in | 25 x 280 mm", "[1 x 11 in]")], &[("strip paper:", "wrong-kind")]),
    tide(
        &[("{tag paper: 2 1/4 x 5 1/2 in | 57 x 140 mm}", "{}")],
        &[("keep: {}", "missing-key"), ("from: tag paper", "unknown-paper")],
    ),
    tide(
        &[("{tag paper: 2 1/4 x 5 1/2 in | 57 x 140 mm}", "a tag paper")],
        &[("keep: a tag paper", "wrong-kind"), ("from: tag paper", "unknown-paper")],
    ),
    tide(&[("from: tag paper", "from: tag papr")], &[("from: tag papr", "unknown-paper")]),
    tide(&[("      slip paper:", "      strip paper:")], &[("strip paper: 3", "repeated-key")]),
    tide(&[("      slip paper:", "      tag paper:")], &[("tag paper: 3", "name-used-twice")]),
    tide(&[("      slip paper:", "      white:")], &[("      white: 3", "name-used-twice")]),
    tide(&[("      slip paper:", "      wave:")], &[("      wave: 3", "name-used-twice")]),
    tide(&[("      slip paper:", "      base:")], &[("      base: 3", "name-used-twice")]),
    tide(&[("      slip paper:", "      card:")], &[("      card: 3", "name-used-twice")]),
    tide(&[("      slip paper:", "      varies:")], &[("      varies: 3", "name-used-twice")]),
    tide(&[("place: shell", "place: tag paper")], &[("place: tag paper", "unknown-piece")]),
    tide(&[("card less 1/8 in", "tag paper less 1/8 in")], &[("tag paper less", "unknown-piece")]),
    // Fixed cuts.
    tide(&[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm")], &[("- 3 3/4 in | 95 mm\n", "bad-word")]),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "from the top, 2 times")],
        &[("- from the top, 2 times\n", "bad-word")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from the foot, 2 times")],
        &[("- 3 3/4 in | 95 mm from the foot, 2 times\n", "bad-word")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from the, 2 times")],
        &[("- 3 3/4 in | 95 mm from the, 2 times\n", "bad-word")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from")],
        &[("- 3 3/4 in | 95 mm from\n", "bad-word")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from the top, twice")],
        &[("- 3 3/4 in | 95 mm from the top, twice\n", "bad-count")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from the top, times")],
        &[("- 3 3/4 in | 95 mm from the top, times\n", "bad-count")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from the top,")],
        &[("- 3 3/4 in | 95 mm from the top,\n", "bad-word")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from the top, 0 times")],
        &[("- 3 3/4 in | 95 mm from the top, 0 times\n", "bad-count")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from the top, 1001 times")],
        &[("- 3 3/4 in | 95 mm from the top, 1001 times\n", "bad-count")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from the top, 99999999999 times")],
        &[("- 3 3/4 in | 95 mm from the top, 99999999999 times\n", "bad-count")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from the top, 2.5 times")],
        &[("- 3 3/4 in | 95 mm from the top, 2.5 times\n", "bad-count")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 in | 95 mm from the top, 2, times")],
        &[("- 3 3/4 in | 95 mm from the top, 2, times\n", "bad-word")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/4 | 95 mm from the top, 2 times")],
        &[("- 3 3/4 | 95 mm from the top, 2 times\n", "missing-unit")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 3/x in | 95 mm from the top, 2 times")],
        &[("- 3 3/x in | 95 mm from the top, 2 times\n", "bad-length")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "-3 in | 95 mm from the top, 2 times")],
        &[("- -3 in | 95 mm from the top, 2 times\n", "bad-length")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "3 in | 4 in from the top, 2 times")],
        &[("- 3 in | 4 in from the top, 2 times\n", "bad-length")],
    ),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "0 in | 0 mm from the top, 2 times")],
        &[("- 0 in | 0 mm from the top, 2 times\n", "size-not-positive")],
    ),
    tide(&[("3 3/4 in | 95 mm from the top, 2 times", "2 times")], &[("- 2 times\n", "yaml-surprise")]),
    tide(
        &[("3 3/4 in | 95 mm from the top, 2 times", "{top: 3 in, times: 2}")],
        &[("- {top: 3 in, times: 2}\n", "wrong-kind")],
    ),
    tide(
        &[(
            "    cut first:\n      - 3 3/4 in | 95 mm from the top, 2 times\n      - 1 in | 25 mm from the left\n",
            "    cut first: 1 in | 25 mm from the left\n",
        )],
        &[("cut first: 1 in", "wrong-kind")],
    ),
    tide(
        &[(
            "    cut first:\n      - 3 3/4 in | 95 mm from the top, 2 times\n      - 1 in | 25 mm from the left\n",
            "    cut first: []\n",
        )],
        &[("cut first: []", "missing-key")],
    ),
    tide(
        &[(
            "    cut first:\n      - 3 3/4 in | 95 mm from the top, 2 times\n      - 1 in | 25 mm from the left\n",
            "    cut first: [3 in | 75 mm from the top, 2 times]\n",
        )],
        &[("cut first: [", "yaml-surprise")],
    ),
    tide(&[("{panel: bottom}", "{pannel: bottom}")], &[("{pannel", "unknown-piece")]),
    tide(&[("{panel: bottom}", "{panel: foot}")], &[("{panel: foot", "bad-word")]),
    tide(&[("{panel: bottom}", "{panel: bottom, panel: top}")], &[("panel: top}", "repeated-key")]),
    tide(&[("{panel: bottom}", "{}")], &[("along the edge: {}", "missing-key")]),
    tide(&[("{panel: bottom}", "panel")], &[("along the edge: panel", "wrong-kind")]),
    tide(&[("{panel: bottom}", "{panel: [bottom]}")], &[("{panel: [", "wrong-kind")]),
    tide(&[("ways to cut: 2", "ways to cut: 0")], &[("ways to cut: 0", "bad-count")]),
    tide(&[("ways to cut: 2", "ways to cut: 3")], &[("ways to cut: 3", "bad-count")]),
    tide(&[("ways to cut: 2", "ways to cut: two")], &[("ways to cut: two", "bad-count")]),
    // Other sheets.
    tide(&[("- 6 of 6 x 6 in | 6 of 150 x 150 mm", "- 0 of letter")], &[("- 0 of letter\n", "bad-count")]),
    tide(&[("- 6 of 6 x 6 in | 6 of 150 x 150 mm", "- 6")], &[("- 6\n", "bad-size")]),
    tide(&[("- 6 of 6 x 6 in | 6 of 150 x 150 mm", "- letter")], &[("- letter\n", "bad-count")]),
    tide(&[("- 6 of 6 x 6 in | 6 of 150 x 150 mm", "- 6 of 6 in")], &[("- 6 of 6 in\n", "bad-length")]),
    tide(&[("- 6 of 6 x 6 in | 6 of 150 x 150 mm", "- 6 of 0 x 6 in")], &[("- 6 of 0 x 6 in\n", "size-not-positive")]),
    tide(
        &[("- 6 of 6 x 6 in | 6 of 150 x 150 mm", "- 6 of 6 x 6 in | 6 of 8 x 8 in")],
        &[("- 6 of 6 x 6 in | 6 of 8 x 8 in\n", "bad-size")],
    ),
    tide(&[("- 6 of 6 x 6 in | 6 of 150 x 150 mm", "- 6 of 6 x 6")], &[("- 6 of 6 x 6\n", "missing-unit")]),
    tide(
        &[("- 6 of 6 x 6 in | 6 of 150 x 150 mm", "- {sheets: 6 of letter, kind: plain}")],
        &[("- {sheets: 6 of letter, kind: plain}\n", "wrong-kind")],
    ),
    tide(&[("also from: 3 of legal | 3 of A4", "also from: []")], &[("also from: []", "missing-key")]),
    // Files for `cuts`.
    tags(&[("    per card: 2\n", "")], &[("  strip:", "missing-key")]),
    tags(&[("per card: 2", "per card: none")], &[("per card: none", "bad-count")]),
    tags(&[("size: 2 x 3 in", "size: card less 1/8 in all round")], &[("card less", "missing-key")]),
    tags(&[("cards: 12\n", "")], &[("papers:", "missing-key")]),
    tags(&[("kraft:\n    sheets: 1 of letter\n", "kraft: {}\n")], &[("kraft: {}", "missing-key")]),
    reed(&[("size: 6 x 90 mm\n", "size: 6 x 90 mm\n    per card: 5\n")], &[("per card: 5", "unknown-key")]),
    // Several at once.
    reed(
        &[
            ("cards: 6", "cards: -6"),
            ("from: chalk\npapers", "from: chalck\npapers"),
            ("weight: 250 gsm", "wieght: 250 gsm"),
            ("size: 6 x 90 mm", "size: 6 x 90"),
            ("place: tile", "place: tiel"),
            ("glue: foam", "glue: staples"),
        ],
        &[
            ("cards: -6", "bad-count"),
            ("from: chalck", "unknown-paper"),
            ("wieght", "unknown-key"),
            ("6 x 90\n", "missing-unit"),
            ("place: tiel", "unknown-piece"),
            ("glue: staples", "bad-word"),
        ],
    ),
    // Where the card folds, and its sides.
    gate(&[("fold: gate", "fold: gait")], &[("fold: gait", "bad-word")]),
    gate(&[("fold: gate", "fold: none")], &[("inside:\n", "no-inside")]),
    gate(&[("fold: gate", "fold: side")], &[("panel: middle", "bad-word")]),
    gate(&[("fold: gate", "fold: top")], &[("panel: middle", "bad-word"), ("panel: left", "bad-word")]),
    gate(
        &[("fold: gate", "fold: {accordion: 4}"), ("panel: middle", "panel: 5"), ("panel: left", "panel: 4")],
        &[("panel: 5", "bad-count")],
    ),
    reed(&[("fold: top", "fold: {accordion: 2}")], &[("accordion: 2", "bad-count")]),
    reed(&[("fold: top", "fold: {accordion: 21}")], &[("accordion: 21", "bad-count")]),
    reed(&[("fold: top", "fold: {acordion: 4}")], &[("acordion", "unknown-key"), ("acordion", "missing-key")]),
    reed(&[("fold: top", "fold: [side, top]")], &[("[side, top]", "wrong-kind")]),
    gate(&[("panel: left", "panel: lower")], &[("panel: lower", "bad-word")]),
    gate(
        &[
            ("    as: left leaf\n", "    as: left leaf\n    panel: left\n"),
            ("    panel: left\n    centre", "    centre"),
        ],
        &[("    panel: left\n", "unknown-key")],
    ),
    gate(
        &[("  - place: shade\n    onto: field\n", "  - place: shade\n    onto: field\n    panel: right\n")],
        &[("panel: right", "unknown-key")],
    ),
    gate(&[("  - place: note\n", "  - place: note\n    panel: right\n")], &[("panel: right", "unknown-key")]),
    // One side of the card from another.
    gate(
        &[("onto: latch", "onto: card"), ("centred across: shade", "centred across: latch")],
        &[("centred across: latch", "on-another-side")],
    ),
    gate(
        &[("  - place: strip\n    panel: left\n", "  - place: strip\n    onto: right leaf\n")],
        &[("onto: right leaf", "on-another-side")],
    ),
    gate(&[("    right: 1/4 in | 6 mm\n", "    left with: strip\n")], &[("left with: strip", "on-another-side")]),
    gate(&[("    bottom: 1/2 in | 13 mm\n", "    below: left leaf\n")], &[("below: left leaf", "on-another-side")]),
    gate(
        &[("      left: 1/2 in | 13 mm\n", "      midway across: left edge and strip\n")],
        &[("left edge and strip", "on-another-side")],
    ),
    gate(
        &[("      top: 1/4 in | 6 mm\n", "      top: 1/4 in | 6 mm\n      trim flush: corner strip\n")],
        &[("trim flush", "on-another-side")],
    ),
    gate(
        &[
            ("\nback:\n", "\nback: note\n"),
            ("  - place: note\n    centre: across\n    bottom: 1/2 in | 13 mm\n    glue: tape\n", ""),
        ],
        &[("back: note", "wrong-kind")],
    ),
    // The envelope.
    gate(&[("  flap: 2 in | 50 mm\n", "")], &[("on the flap", "missing-key")]),
    gate(&[("flap: 2 in | 50 mm", "flap: 2 in | 2 fathoms")], &[("fathoms", "bad-length")]),
    gate(&[("  size: 5 1/2 x 5 1/4 in | 140 x 135 mm\n", "")], &[("envelope:", "missing-key")]),
    gate(&[("  on the flap:", "  on teh flap:")], &[("on teh flap", "unknown-key")]),
    // Words on pieces, and decorations.
    gate(&[("    stamp: come in\n", "    stamp: come in\n    printed: come out\n")], &[("come out", "placed-twice")]),
    gate(
        &[("    by: die\n    margin: 1/4 in | 6 mm\n    die-cut words", "    die-cut words")],
        &[("die-cut words", "missing-key")],
    ),
    gate(
        &[("  pearl:\n", "  latch:\n")],
        &[("  latch:\n    size: 3", "name-used-twice"), ("place: pearl", "unknown-piece")],
    ),
    gate(&[("  pearl:\n    size: 3/16 x 3/16 in | 4 x 4 mm\n", "  pearl:\n")], &[("  pearl:\n", "missing-key")]),
    gate(&[("form: round", "form: square")], &[("form: square", "bad-word")]),
    gate(
        &[("  pearl:\n    size", "  card:\n    size")],
        &[("  card:\n    size", "name-used-twice"), ("place: pearl", "unknown-piece")],
    ),
    gate(&[("    glue: foam\n", "    glue: dots\n")], &[("glue: dots", "bad-word")]),
    // What belongs to a card makes the file a card's, which needs more than one for `cuts`.
    tags(
        &[("cards: 12", "back: []\ncards: 12")],
        &[
            ("back: []", "missing-key"),
            ("back: []", "missing-key"),
            ("back: []", "missing-key"),
            ("back: []", "missing-key"),
            ("back: []", "missing-key"),
            ("per card: 1", "unknown-key"),
            ("per card: 2", "unknown-key"),
        ],
    ),
];
