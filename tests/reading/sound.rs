//! Sound designs as texts.

/// A card in inches with every length stated in both units.
pub(crate) const LANTERN_ROW: &str = r##"title: Lantern Row
month: 2026-11
designer: Studio Marram
about: Three paper lanterns on a rail. Two papers swap places between the versions.
cards: 8
units: inch and metric
workshop: {ruler: 1/16 in | 1 mm, cutting error: 1/32 in | 1 mm, placing error: 1/16 in | 1.5 mm}
card:
  size: 4 1/4 x 5 1/2 in | 105 x 148 mm
  fold: side
  from: white
papers:
  dusk:
    sheets: 1 of 12 x 12 in
    pattern: one-way
    edge strip: 1/2 in | 13 mm at the bottom, beside
  ember:
    sheets: 1 of 12 x 12 in
  slate:
    sheets: 2 of letter | 2 of A4
    weight: 80 lb cover
  white:
    sheets: 4 of letter
    weight: 110 lb cover
pieces:
  mat:
    size: card less 1/8 in | 3 mm all round
    from: slate
  panel:
    size: mat less 1/8 in | 3 mm all round
    from: varies
  lantern:
    size: 1 x 1 3/4 in | 25 x 44 mm
    from: varies
    pattern: upright
  rail:
    size: 4 1/2 x 1/4 in | 115 x 6 mm
    from: slate
versions:
  - name: dusk
    cards: 4
    papers: {panel: dusk, lantern: ember}
  - name: ember
    cards: 4
    papers: {panel: ember, lantern: dusk}
front:
  - place: mat
    onto: card
    centre: both ways
    glue: tape
    first:
      - place: panel
        centre: both ways
        shows: 1/8 in | 3 mm all round
        glue: tape
      - place: rail
        centre: across
        top: 3/4 in | 20 mm
        trim flush: mat
        glue: liquid
      - place: lantern
        onto: panel
        centre: across
        below: rail
        row: {count: 3, gap: 1/4 in | 6 mm}
        glue: liquid
notes:
  - on: rail
    say: "Leave both ends long: they are trimmed when the glue is dry."
  - on: cutting
    say: Cut the rails off the full sheet first.
leftovers:
  - from: ember
    idea: A tag for the parcel.
  - A strip inside the card.
supplies:
  - "#10 envelopes"
tools:
  - bone folder
"##;

/// A card designed in millimetres only.
pub(crate) const REED_BED: &str = r##"title: Reed Bed
month: 2027-03
cards: 6
units: metric
card:
  size: A6
  fold: top
  from: chalk
papers:
  chalk:
    sheets: 3 of A4
    weight: 250 gsm
  marsh:
    sheets: 1 of 304 x 304 mm and 2 of 15 x 15 cm
    pattern: two-way
pieces:
  field:
    size: card less 4 mm all round
    from: marsh
  reed:
    size: 6 x 90 mm
    from: marsh
    pattern: upright
  tile:
    size: 12 × 12 mm
    from: chalk
    stamp: a small bird
front:
  - place: field
    centre: both ways
    glue: tape
    shows: 4 mm all round
  - place: reed
    as: left reeds
    onto: field
    left: 10 mm
    bottom: 0 mm
    row: {count: 4, gap: 3 mm}
    glue: liquid
  - place: reed
    as: fallen reed
    onto: field
    right of: left reeds
    gap: 2 mm
    bottom: 20 mm
    turned: quarter right
    glue: liquid
  - place: tile
    onto: field
    right: 8 mm
    top: 8 mm
    grid: {columns: 2, rows: 3, gap across: 2 mm, gap down: 3 mm}
    shows: 8 mm right, 8 mm top
    glue: foam
"##;

/// A file with nothing but what `cuts` needs.
pub(crate) const TAGS: &str = "\
cards: 12
papers:
  kraft:
    sheets: 1 of letter
pieces:
  tag:
    size: 2 x 3 in
    from: kraft
    per card: 1
  strip:
    size: 3 x 1/2 in
    from: kraft
    per card: 2
";

/// A card that says everything that can be said of paper, in both units.
pub(crate) const TIDE_LINE: &str = r##"title: Tide Line
month: 2027-06
cards: 6
units: inch and metric
card:
  size: 4 1/4 x 5 1/2 in | 105 x 148 mm
  fold: side
  from: white
papers:
  foam:
    sheets: 4 of 6 x 6 in | 4 of 150 x 150 mm
    sides: {front: one-way, back: two-way}
    turned over: top to bottom
    sheets are: different
    keep: {tag paper: 2 1/4 x 5 1/2 in | 57 x 140 mm}
  shore:
    sheets: 2 of 12 x 12 in
    also from:
      - 6 of 6 x 6 in | 6 of 150 x 150 mm
      - 1 of 12 x 12 in and 2 of letter
    pattern: two-way
    keep:
      strip paper: 2 of 1 x 11 in | 25 x 280 mm
      slip paper: 3 of 2 x 3 in | 2 of 50 x 75 mm
    cut first:
      - 3 3/4 in | 95 mm from the top, 2 times
      - 1 in | 25 mm from the left
    along the edge: {panel: bottom}
    ways to cut: 2
  white:
    sheets: 3 of letter
    sheets are: equal
    also from: 3 of legal | 3 of A4
pieces:
  panel:
    size: card less 1/8 in | 3 mm all round
    from: shore
  wave:
    size: 3 3/4 x 1 in | 95 x 25 mm
    from: varies
    side: back
  shell:
    size: 1 x 1 in | 25 x 25 mm
    from: tag paper
    side: back
versions:
  - name: ebb
    cards: 3
    papers: {wave: foam}
    side: front
  - name: flood
    cards: 3
    papers: {wave: foam}
front:
  - place: panel
    centre: both ways
    glue: tape
  - place: wave
    onto: panel
    centre: across
    bottom: 1/4 in | 6 mm
    glue: liquid
  - place: shell
    onto: panel
    centre: across
    above: wave
    gap: 1/4 in | 6 mm
    glue: foam
"##;

/// A card that opens in the middle, with layers on every side of it, an envelope, words made in three
/// ways, and decorations.
pub(crate) const GARDEN_GATE: &str = r##"title: Garden Gate
month: 2027-05
about: Two leaves of moss open on a word cut out twice.
cards: 4
units: inch and metric
card:
  size: 5 x 5 in | 130 x 130 mm
  fold: gate
  from: cream
papers:
  cream:
    sheets: 4 of 12 x 12 in
  moss:
    sheets: 3 of letter
  petal:
    sheets: 2 of letter
pieces:
  leaf:
    size: 2 1/4 x 4 3/4 in | 59 x 124 mm
    from: moss
  latch:
    size: 1 x 1 in | 25 x 25 mm
    from: petal
    stamp: come in
  field:
    size: 4 3/4 x 4 3/4 in | 124 x 124 mm
    from: petal
  word:
    size: 3 x 1 in | 75 x 25 mm
    from: cream
    by: die
    margin: 1/4 in | 6 mm
    die-cut words: thank you
  shade:
    size: 3 x 1 in | 75 x 25 mm
    from: moss
    by: die
    margin: 1/4 in | 6 mm
  note:
    size: 2 x 1 in | 50 x 25 mm
    from: cream
    printed: made by hand
  strip:
    size: 1/2 x 4 in | 13 x 100 mm
    from: moss
  liner:
    size: 5 x 1 in | 130 x 25 mm
    from: petal
decorations:
  pearl:
    size: 3/16 x 3/16 in | 4 x 4 mm
    form: round
    thick: 1/16 in | 2 mm
  cord:
    size: 1/8 x 5 in | 3 x 130 mm
    length: 18 in | 45 cm
front:
  - place: leaf
    as: left leaf
    left: 1/8 in | 3 mm
    centre: up and down
    glue: tape
    first:
      - place: latch
        centre: both ways
        glue: foam
  - place: leaf
    as: right leaf
    right: 1/8 in | 3 mm
    centre: up and down
    glue: tape
  - place: pearl
    onto: latch
    centre: both ways
    glue: dot
inside:
  - place: field
    panel: middle
    centre: both ways
    glue: tape
  - place: shade
    onto: field
    centre: both ways
    glue: liquid
  - place: word
    onto: field
    centred across: shade
    centred up: shade
    shifted: 1/16 in | 1.5 mm left and 1/16 in | 1.5 mm up
    glue: liquid
  - place: strip
    panel: left
    centre: both ways
    glue: tape
  - place: cord
    right: 1/4 in | 6 mm
    centre: up and down
    glue: dot
back:
  - place: note
    centre: across
    bottom: 1/2 in | 13 mm
    glue: tape
envelope:
  size: 5 1/2 x 5 1/4 in | 140 x 135 mm
  flap: 2 in | 50 mm
  front:
    - place: strip
      as: corner strip
      left: 1/2 in | 13 mm
      top: 1/2 in | 13 mm
      glue: liquid
  on the flap:
    - place: liner
      centre: across
      top: 1/4 in | 6 mm
      glue: liquid
notes:
  - on: pearl
    say: Lay the pearls at last.
  - on: posting
    say: Weigh it first.
"##;
