//! Broken designs: what is changed in a sound one, and which faults must be found on which lines.

use super::sound::{LANTERN_ROW, REED_BED, TAGS};

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
    lantern(&[("top: 3/4 in | 20 mm", "top: 3/4 in")], &[("top: 3/4 in", "missing-twin")]),
    lantern(&[("4 1/2 x 1/4 in | 115 x 6 mm", "115 x 6 mm")], &[("size: 115 x 6 mm", "missing-twin")]),
    lantern(&[("sheets: 4 of letter", "sheets: 4 of 9 x 12 in")], &[("9 x 12 in", "missing-twin")]),
    lantern(&[("ruler: 1/16 in | 1 mm", "ruler: 1/16 in")], &[("workshop:", "missing-twin")]),
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
    reed(&[("turned: quarter right", "turned: 90")], &[("turned: 90", "bad-word")]),
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
];
