# The reader's words in English.
#
# ~ is a space that no line breaks at; <strong> </strong> stand round words that carry weight. A measure, a
# ring, a cut and a leftover's numeral come as arguments, marked already. `PLURAL($name)` is the plural of a
# name that the design gives, `CAPITAL($name)` the name with a capital at its start. An argument that names a
# kind (an edge, a tool) holds a key, which other languages select by. A message may use others of this
# file, which then see the same arguments; whatever the program does not ask for by name is the file's own.

## Numbers, names and lists

decimal-sign = .
unit-in = in
unit-mm = mm
unit-cm = cm
unit-m = m

counted = { $count ->
    [one] { $count } { $name }
   *[other] { $count } { PLURAL($name) }
}
counted-ring = { $count ->
    [one] { $count }~{ $name }~{ $ring }
   *[other] { $count }~{ PLURAL($name) }~{ $ring }
}
plural = { PLURAL($name) }
count-word = { $count ->
    [0] no
    [1] one
    [2] two
    [3] three
    [4] four
    [5] five
    [6] six
    [7] seven
    [8] eight
    [9] nine
    [10] ten
    [11] eleven
    [12] twelve
   *[other] { $count }
}
cards = { $count ->
    [one] { $count } card
   *[other] { $count } cards
}
sheets = { $count ->
    [one] { $count } sheet
   *[other] { $count } sheets
}
leftovers = { $count ->
    [one] { $count } leftover
   *[other] { $count } leftovers
}
list-and = { $before } and { $next }
list-or = { $before } or { $next }
list-comma = { $before }, { $next }
list-semicolon = { $before }; { $next }
list-dot = { $before } · { $next }
list-then = { $before }, then { $next }

## Every page

lang = en
month = { $month ->
    [1] January { $year }
    [2] February { $year }
    [3] March { $year }
    [4] April { $year }
    [5] May { $year }
    [6] June { $year }
    [7] July { $year }
    [8] August { $year }
    [9] September { $year }
    [10] October { $year }
    [11] November { $year }
    [12] December { $year }
   *[other] { $year }
}
units = { $units ->
    [inch] inches
   *[metric] millimetres
}
page = Page
page-of = of
draft = DRAFT
findings = Not ready yet
findings-lead = { $none ->
    [yes] Nothing was found that must be mended.
   *[no] This is what was found. Mend it before you give this handout away.
}
file-title = { $title }, { $month }
footer-rest = { $units-word }
footer-rest-dated = { $month } · { $units-word }

## The designer's own look

terms = Terms of use
on-the-web = On the web
logo = Logo
photo-caption = The finished card
photo-caption-version = <strong>{ CAPITAL($version) },</strong> the finished card
photo-alt = Photo of the finished card: { $title }{ $versions ->
    [yes] , { $version }
   *[no] {""}
}.

## The front page

sketch = Sketch
sketch-for = Sketch for { $month }
all-alike = all alike
version-count = { $count } { $name }
folds-at = folded at the { $edge }, from { $flat }
folds-gate = opens in the middle, from { $flat }
folds-accordion = folded to and fro, { $panels } panels, from { $flat }
folds-flat = flat, without a fold
sheets-of-papers = { sheets } of { $papers ->
    [one] { $papers } paper
   *[other] { $papers } papers
}
pieces-in-all = { $count ->
    [one] { $count } piece to cut, { $each } for each card
   *[other] { $count } pieces to cut, { $each } for each card
}
cut-list = Cut list
cut-list-note = { $count ->
    [one] for 1 card, width × height in { units }
   *[other] totals for all { $count } cards, width × height in { units }
}
sheets-note = { sheets }, { $size }
one-way = one-way
two-way = two-way
piece-name = { $count ->
    [one] { $name }
   *[other] { PLURAL($name) }
}
folded-to = folded to { $size }
own-windows = { $windows ->
    [0] {""}
    [one] , with a window
   *[other] , with windows
}
cut-out = { $tool ->
    [die] cut out with the die later, { $size }{ own-windows }
   *[punch] punched out later, { $size }{ own-windows }
}
with-windows = { $windows ->
    [one] a window is cut later
   *[other] windows are cut later
}
cut-to-shape = cut to shape later{ own-windows }
corner-to-corner-one = cut corner to corner later: each gives 1
corner-to-corner-two = cut corner to corner later: each gives 2
corner-to-corner-both = cut corner to corner later: each gives 1 { $own } { $own-ring } and 1 { $other } { $other-ring }
trimmed-to = trimmed later to { $size }
version-caption-alike = <strong>{ cards }</strong>{ $count ->
    [one] {""}
   *[other] , all alike
}
version-caption = <strong>{ CAPITAL($name) }, { cards }</strong>
version-caption-papers = <strong>{ CAPITAL($name) }, { cards }</strong>: { $papers }
piece-of-paper = { CAPITAL($paper) } { piece-name }
other-sides = The other sides
other-sides-lead = Each side as it lies before you when the card is done.
side-caption = <strong>{ $title }</strong>
side-caption-version = <strong>{ $title }</strong>, { CAPITAL($version) }
envelope-front-title = The front of the envelope
envelope-back-title = The back of the envelope
printed-first = <strong>Print before you cut: </strong>“{ $words }” stands on each { $piece } { $ring }.
left-by-a-window = <strong>The { $piece } { $ring } is what a window leaves.</strong>
    Keep what comes out of the { $frame } { $frame-ring }.
not-as-usual = Not as usual
cut-too-long = <strong>The { $piece } { $ring } is cut too long on purpose.</strong>
    Trim it level with the { $onto } when it is glued.
keep-up = { $pattern ->
    [two-way] <strong>{ CAPITAL($paper) } has two ways up.</strong>
        Turn it half round as you like, never a quarter.
   *[one-way] <strong>{ CAPITAL($paper) } has one way up.</strong>
        Draw a pencil arrow on the back of each part before you cut it off.
}
both-sides = <strong>{ CAPITAL($paper) } shows both its sides.</strong>
    Cut it with the front up. Turn the pieces marked “back” over from { $over }.{ $direction ->
        [yes] {" "}It has one way up: lay every part down the way it came off.
       *[no] {""}
    }
different-sheets = <strong>The sheets of { CAPITAL($paper) } differ.</strong>
    All of them are cut alike; the step where the piles are laid out says how to deal them.
leftovers-note = { leftovers } of { CAPITAL($source) }, { $size }
not-cut-alike = <strong>The { $count } sheets of { CAPITAL($paper) } are not all cut alike.</strong>
    Follow the sheet numbers.
paper-missing = Not enough paper

## Cutting: titles and notes

cutting = Cutting
cutting-lead = A number in a flag { $cut } is a cut, made in that order. A number in a ring { $ring } is a piece.
    All sizes in { units }.
cutting-caution = Keep your fingers off the line of cut. Close the blade whenever you stop.
measured-part = Lay the edge that is named on the measure. What lies between that edge and the blade is the part
    you cut off.
cut-head-cuts = Cuts
cut-head-measure = Cut at
cut-head-act = Do this
panel-name = { $papers }
panel-name-sheets = { $papers }, { $sheets }
capital = { CAPITAL($name) }
cut-alike-each = { sheets } of each, { $size }, cut alike
cut-alike-all = { sheets }, { $size }, cut alike
continued = { $name }, continued
another-way-panel = Another way to cut { $panel }
from-other-sheets = { $panel }, from { $sheets }
why-another-way = For paper whose pattern differs at its edges: other pieces come from there.
own-sheets-or-leftovers = { $what ->
    [leftovers] leftovers
   *[sheets] sheets
}
have = { $count ->
    [1] You have
    [2] From both { own-sheets-or-leftovers }
   *[other] From all { $count } { own-sheets-or-leftovers }
}
pieces = { counted } { $ring }
of-them-spare = { $pieces }, { $spare } to spare
left = Left over: { $parts }
left-part = { $leftover } { $size }
left-part-several = { $leftover } { $size }, { $count } of them
left-also = { $left } · from { CAPITAL($paper) }: { $leftovers }
leftover-number = { $leftover }

## Putting together: titles and leads

putting-together = Putting it together
first-put-together = Put together first
on-the-front = The front
on-the-inside = The inside
on-the-back = The back
on-the-envelope = The envelope
decorating = Decorating
putting-lead = The new piece is drawn strong, what is there already is pale.{ $count ->
    [one] {""}
   *[other] {" "}Do each step for all { $count } cards, then the next.
}
make-cards = Make { $count }
tick-each = Tick each card when it is done.
tick-row = { cards }
tick-row-version = { cards }, <strong>{ CAPITAL($name) }</strong>
not-to-scale = Step pictures are not to scale. Round details are 1:1.

## Supplies and finishing

supplies = Supplies and finishing
supplies-lead = { $count ->
    [one] For one card, in shopping order. Tick each line when you have it.
   *[other] Totals for all { $count } cards, in shopping order. Tick each line when you have it.
}
paper-head = Paper
glue-head = Glue
also-head = Also
tools-head = Tools
paper-to-buy = <strong>{ CAPITAL($name) }</strong>, { $about }
tape = Double-sided tape, about { $length }
liquid-glue = { $count ->
    [one] Paper glue that dries clear, for { $count } piece
   *[other] Paper glue that dries clear, for { $count } pieces
}
foam = Foam squares, about { $count }
glue-dots = Glue dots, about { $count }
decoration = { counted }, { $size }
roll = { CAPITAL($name) }, { $wide } wide: { $count ->
    [one] { $count } length
   *[other] { $count } lengths
} of { $each }, { $all } in all
knife-tool = Craft knife, metal ruler and cutting mat
corner-punch = Corner punch
dies = Cutting dies and the machine for them
punches = Hand punches
trimmer = Trimmer that measures up to { $longest }, marked every { $step }
scoring-tool = Scoring tool and ruler
pencil = Pencil and soft eraser
scissors = Sharp scissors
leftovers-title = Leftovers
leftover-head-number = No.
leftover-head-from = From
leftover-head-size = { $units ->
    [inch] Inches
   *[metric] Millimetres
}
leftover-head-use = Good for
leftover-from = { $count ->
    [one] { CAPITAL($paper) }
   *[other] { CAPITAL($paper) }, { $count }
}
leftover-from-alike = { $count ->
    [one] { $count } paper
   *[other] { $count } papers
}
good-for = { $use ->
    [front] another front
    [tag] a gift tag
    [bookmark] a bookmark
    [strip] a strip inside
   *[small] small shapes
}
ideas = Ideas for what is left
spoiled = Spoiled a piece?
gives-more = { $leftover } gives { $count } more { CAPITAL($paper) } { piece-name } { $ring }.
no-spare = No leftover gives another { $pieces }.
inside-title = Inside and envelope
inside-strip = Glue a strip of a leftover, up to { $strip } wide, along the foot of the inside.
inside-envelope = Look for an envelope at least { $room } larger than the card ({ $card }) each way, and measure
    one finished card before you buy.
ask-the-post = A stiff, thick or uneven card may cost more to post. The rules of your post office decide.
check-print-title = Check your print
check-print = Lay a ruler on the bars. If one is wrong, print again at 100 %, “actual size”.
take-care = Take care
caution-blades = Trimmers, knives and scissors cut fingers too. Keep yours off the line of cut, hold narrow strips with
    a scrap of card, close and lock the blade when you stop, and keep it out of the reach of children.
caution-dies = Dies have sharp rims, and machines and punches pinch. Keep fingers, hair and sleeves out of them.
caution-makers = Where the maker of a tool or glue says otherwise, follow the maker; so too with hot tools and glue guns.
caution-small = Foam and other small things glued on can come off. Do not give such a card to a child under three.

## The swatch page

swatch = Swatch page
swatch-lead = Colour the outlines or glue on scraps of your own papers. Write down what you choose.
my-papers = My papers
for-paper = For { CAPITAL($name) }
outline-caption = <strong>{ CAPITAL($name) }</strong>
outline-caption-alike = <strong>The card</strong>
from-paper = <strong>{ CAPITAL($name) }: </strong>{ $idea }

## Cutting: rows of cuts

left-to-right = left to right
top-to-bottom = top to bottom
the-whole = { $what ->
    [leftovers] the leftover
   *[sheets] the sheet
}
own-part = { $form ->
    [strip] strip
   *[part] part
}
own-parts = { $form ->
    [strip] strips
   *[part] parts
}
own-often = { $times ->
    [one] once
   *[other] { $times } times
}
parts-alike = { $take ->
    [only] the { $size } { own-part }
    [either] either { $size } { own-part }
    [any] any of the { $there-word } { $size } { own-parts }
    [some] { $count-word } of the { $there-word } { $size } { own-parts }
    [both] both { $size } { own-parts }
   *[all] all { $count-word } { $size } { own-parts }
}
parts-some = { $count ->
    [one] { $count-word } { $size } { own-part }
   *[other] { $count-word } { $size } { own-parts }
}
lot-cut = { $count ->
    [one] { $parts } { own-often }
   *[other] { $parts } { own-often } each
}
counted-ring-back = { counted-ring } showing the back
given-parts = { $count ->
    [one] { $count } { own-part }, { $size }
   *[other] { $count } { own-parts }, { $size }
}
the-edge-strip = the edge strip
rest-scrap = { $count ->
    [one] The rest is scrap.
   *[other] The rests are scrap.
}
rest-left = { $count ->
    [one] { $leftover } is left over.
   *[other] { $leftover } is left over, { $count } times.
}
row-mixed = From the { $edge } cut { $lots }.
row-mixed-gives = From the { $edge } cut { $lots }: { $pieces }.
row-cut = From the { $edge } of { $parts } cut { own-often }.
row-gives = From the { $edge } of { $parts } cut { $pieces }.
row-put = Put the { $edge } edge of { $parts } on { $measure } and cut.{ $times ->
    [one] {""}
   *[other] {" "}Do it { $times } times.
}
row-put-each = Put the { $edge } edge of each of { $some ->
    [yes] { $count-word } of the { $there-word }
   *[no] the { $count-word }
} { $size } { own-parts } on { $measure } and cut.{ $times ->
    [one] {""}
   *[other] {" "}Do it { $times } times with each, { $all } times in all.
}
row-put-mixed = Put the { $edge } edge on { $measure } and cut { $lots }.
it-gives = It gives { $pieces }.
own-pattern = { $pattern ->
    [one-way] , one-way
    [two-way] , two-way
   *[any] {""}
}
own-alike = { $alike ->
    [yes] , cut alike
   *[no] {""}
}
sheet-note = { sheets }, { $size }{ own-pattern }{ own-alike }
sheet-note-kept = { leftovers } of { CAPITAL($source) }, { $size }{ own-pattern }{ own-alike }
sheet-number = sheet { $number }
sheets-range = sheets { $first } to { $last }
sheets-listed = sheets { $numbers }
you-have = { $count ->
    [1] You have { $pieces }.
    [2] From both { own-sheets-or-leftovers } you have { $pieces }.
   *[other] From all { $count } { own-sheets-or-leftovers } you have { $pieces }.
}
to-spare = { $pieces } to spare.
works-down-to = Works on sheets down to { $size }{ $strip ->
    [yes] , the edge strip not counted.
   *[no] .
}
full-size = { $count ->
    [one] The sheet must be full size.
   *[other] The sheets must be full size.
}
another-way = Another way to cut
another-way-of = Another way to cut, { $number } of { $count }
differs = { CAPITAL($clauses) }.
measured-from = measured { $edges }
from-instead = from the { $other } instead of the { $first }
from-in-turn = from the { $first } and the { $other } in turn
first-cut-other-way = the first cut the other way
pieces-lying = { $count ->
    [0] no piece on its side
    [one] { $count } piece on its side
   *[other] { $count } pieces on their side
}
other-parts = other parts
as-before = cut as before.
no-more-ways = { $count ->
    [0] No other way of equal worth was found.
    [one] No more than { $count } other way of equal worth was found.
   *[other] No more than { $count } other ways of equal worth were found.
}
pencil-arrow = Before you cut { CAPITAL($paper) }, draw a pencil arrow on the back of each part that points up.
leftover = { $leftover } { $size }
leftover-several = { $leftover } { $size } ({ $count } of them)
own-cuts = { $count ->
    [one] { $count } cut
   *[other] { $count } cuts
}
own-diagrams = { $count ->
    [one] { $count } cutting diagram
   *[other] { $count } cutting diagrams
}
totals = { $cuts } on { $sheets }, { $diagrams }.
plan-title = { $title }: cutting for { cards }. Sizes are width x height in { units }.
left-over = Left over: { $parts }.
missing = No place was found for { counted } from { CAPITAL($paper) }.
largest-leftover-size = Largest leftover { $size }
largest-leftover-none = No usable leftover
largest-proven = { $leftover }: proven largest.
largest-found = { $leftover }: the best found; no plan can leave more than { $bound } in one part.
count-of = { $aim ->
    [cards] { cards }
    [sheets] { sheets }
    [diagrams] { own-diagrams }
    [cuts] { own-cuts }
   *[changes] { $count ->
        [one] { $count } change of measure
       *[other] { $count } changes of measure
    }
}
aim-proven = { count-of }: proven { $aim ->
    [cards] most
   *[other] fewest
}.
aim-found = { count-of }: the best found; no plan can have { $aim ->
    [cards] more
   *[other] fewer
} than { $bound }.

## Making: steps

named = { $name }~{ $ring }
trim = { $loose ->
    [yes] Turn it face down. Trim the ends of the { $piece } level with the { $onto }.
   *[no] Trim the ends of the { $piece } level with the { $onto }.
}
by-frame = <strong>With its placing frame: </strong>lay the frame level on the { $onto }, “top” at the top, put { $several ->
    [yes] the pieces into their openings
   *[no] the piece into its opening
}, and lift it off. Without the frame, go by the measures.
caution-fingers = <strong>Keep your fingers off the line of cut.</strong>
stamp = Stamp each { $piece }: <strong>{ $words }</strong>. Let the ink dry.
score = Score each { $piece } { $measure } from the { $from } edge. Fold it with the ridge of the score inside.
    The fold is the { $fold } edge.
score-gate = Score each { $piece } { $left } from the left edge and { $right } from the right edge. Fold both flaps in
    with the ridges of the scores inside: they meet in the middle of the front.
fold-points = { $fold ->
    [mountain] toward you (a mountain)
   *[valley] away from you (a valley)
}
score-accordion = Score each { $piece }, its outside up, { $measures } from the left edge. Fold it to and fro. From the
    left, the folds point { $folds }. The panel furthest to the right is the front.
print = Before its paper is cut, print for each { $piece }: <strong>{ $words }</strong>. Place it on the sheet where
    that piece is cut, try it on plain paper first, and let the ink dry.
from-roll = { $count ->
    [one] From the roll, cut one length of { $length } for each card.
   *[other] From the roll, cut { $count } lengths of { $length } for each card.
}
sort = Lay out { $piles } piles, one for each card. In each: { $pieces }.
pile = <strong>{ CAPITAL($version) }: </strong>{ cards }, { $papers }.
pile-paper = { PLURAL($name) } from { CAPITAL($paper) }
number-the-sheets = <strong>The sheets of { CAPITAL($pad) } differ. </strong>Number them 1 to { $count }, and write a
    sheet's number in pencil on the back of each piece as you cut it.
deal-by-number = <strong>The pieces of { CAPITAL($pad) } </strong>bear the numbers of their sheets on the back. Deal
    them round the piles by these.
from-sheet = the { $name } from sheet~{ $sheets }
from-sheets = the { PLURAL($name) } from sheets~{ $sheets }
dealt-onward = <strong>Pile 1: </strong>{ $pieces }. Each next pile takes every piece from one sheet further on; after
    sheet~{ $count } comes sheet~1.
dealt = <strong>Pile { $pile }: </strong>{ $pieces }.
times = { $count ->
    [one] Once
   *[other] { $count } times
}
now-put-together = { $count ->
    [one] You now have { counted } { $ring } put together.
   *[other] You now have { counted } { $ring }, all put together.
}
now-have = You now have { $pieces }.

## Points, edges and parts

corner-name = { $corner ->
    [top-left] top left
    [top-right] top right
    [bottom-left] bottom left
   *[bottom-right] bottom right
}
corner = { corner-name } corner
middle = middle
highest = highest point
leftmost = leftmost point
edge = the { $edge } edge
edge-name = { $edge } edge
the = the { $name }
its-middle = its middle
its-corner = its { corner-name } corner
middle-of-its-edge = the middle of its { $edge } edge
its-point = the point { $left }~from its left edge and { $bottom }~from its bottom edge
base = base
bases = bases
card = card
side = { $side ->
    [front] front of the card
    [back] back of the card
    [envelope-front] front of the envelope
    [envelope-flap] flap of the envelope
    [inside-left] left panel of the inside
    [inside-middle] middle panel of the inside
    [inside-right] right panel of the inside
    [inside-upper] upper panel of the inside
    [inside-lower] lower panel of the inside
   *[inside] opened inside
}
inside-panel = { $panel ->
    [1] first panel of the inside
    [2] second panel of the inside
    [3] third panel of the inside
    [4] fourth panel of the inside
    [5] fifth panel of the inside
    [6] sixth panel of the inside
    [7] seventh panel of the inside
    [8] eighth panel of the inside
    [9] ninth panel of the inside
    [10] tenth panel of the inside
    [11] eleventh panel of the inside
    [12] twelfth panel of the inside
    [13] thirteenth panel of the inside
    [14] fourteenth panel of the inside
    [15] fifteenth panel of the inside
    [16] sixteenth panel of the inside
    [17] seventeenth panel of the inside
    [18] eighteenth panel of the inside
    [19] nineteenth panel of the inside
    [20] twentieth panel of the inside
   *[other] opened inside
}

## Laying: where a layer goes

own-its = { $several ->
    [yes] their
   *[no] its
}
own-way = { $way ->
    [left-of] left of
    [right-of] right of
    [above] above
   *[below] below
}
laid-one = the { $piece }
laid-several = { counted-ring }
laid-several-bare = { counted }
laid-called = { $pieces } (the { $called })
own-laid = { $fixed ->
    [tape] Tape { $what }
    [foam] Lay { $what } on foam
    [dots] Lay { $what } on glue dots
   *[liquid] Glue { $what }
}
glue-bordered = { own-laid } to the middle of the { $onto }. A border of~{ $border } shows all round.
glue-middle = { own-laid } to the middle of the { $onto }. { $sides } shows at each side, { $ends } at top and bottom.
glue-spots = { own-laid } onto the { $onto }, { $up }, { $across }.
glue-first = { own-laid } onto the { $onto }, the first { $up }, { $across }.
glue-over = { own-laid } onto the { $onto }, { own-its } middle on the middle of the { $name }.
glue-turned = { own-laid } onto the { $onto }, turned { $by } about { $about }, which lies { $up } and { $across }.
glue-fan = { own-laid } onto the { $onto } in a fan. Of each, { $about } lies on one point, { $up } and { $across }.
leave-between = Leave~{ $gap } between them.
leave-between-both = Leave~{ $across } between them side by side and { $down } one above another.
about = about~{ $measure }
spot-middle = { $direction ->
    [up] in the middle of its height
   *[across] in the middle from side to side
}
spot-from = { $by }~from the { $edge }
spot-past = { $by }~past the { $edge }
spot-at = at the { $edge }
spot-beside = edge to edge { own-way } the { $name }
spot-beside-gap = { $gap }~{ own-way } the { $name }
spot-level = { own-its } { $part } level with the { $part } of the { $name }
spot-off = { own-its } { $part }~{ $by }~{ own-way } the { $part } of the { $name }
spot-midway = midway between { $one } and { $other }, { $from }
turn-each = Turn each { $by } about { $about }.
corner-comes = { $first ->
    [yes] Of the first, the { $corner } comes { $up } and { $across }
   *[no] Its { $corner } comes { $up } and { $across }
}
corner-next = { $first ->
    [yes] the { $corner } { $up } and { $across }
   *[no] its { $corner } { $up } and { $across }
}
corners = { $corners }.
step-move = { $by }~{ $way ->
    [further-left] further to the left
    [further-right] further to the right
    [lower] lower
   *[higher] higher
}
steps = Each next one lies { $moves }.
triangle = They make a triangle: { $count ->
    [one] a row
   *[other] rows
} of { $rows } from the top.
fan-upright = The first stands upright, each next one { $step } further to the right.
fan-turned = The first is turned { $first }, each next one { $step } further to the right.
corners-of-each = One after another, their { PLURAL($corner) } come about~{ $across } from the { $across-edge }, and
    about~{ $up } from the { $up-edge }.
pinwheel = { $way ->
    [clockwise] They go clockwise round a square middle: the first upright along the left, the next along the top,
        each edge to edge with the one before. Together they make a square of~{ $side }.
   *[anticlockwise] They go anticlockwise round a square middle: the first upright along the left, the next along the
        bottom, each edge to edge with the one before. Together they make a square of~{ $side }.
}
own-mirrored = { $over ->
    [yes] turned over and mirrored
   *[no] mirrored
}
mirrored = { $count ->
    [2] One lies there, the other { own-mirrored }: as far from the { $to } as this one from the { $from }.
   *[other] Half of them lie there, the other half { own-mirrored }: as far from the { $to } as these from the { $from }.
}
own-ends-reach = { $several ->
    [yes] The ends reach
   *[no] Its ends reach
}
reaches-past = { own-ends-reach } past the { $onto }. They are trimmed later.
reaches-past-by = { own-ends-reach } past the { $onto } by~{ $by }. They are trimmed later.
turn = { $degrees } to the { $side }
degrees = { $count ->
    [one] { $number } degree
   *[other] { $number } degrees
}

## Finishing: what is made of a rectangle

make-from = Make each { $piece } from its rectangle of~{ $blank }.
trim-from-window = For each { $piece }, trim what came out of the { $frame } to { $blank }.
lies = { $how ->
    [side] Lay it with the side up that will show.
    [upright] Lay it with its pattern upright.
   *[both] Lay it with the side up that will show, its pattern upright.
}
cut-from-to = from { $from } to { $to }
cut-there = there
cut-same-point = the same point
cut-with = { $tool ->
    [trimmer] With trimmer or scissors, cut { $cuts }.
   *[scissors] With scissors, cut { $cuts }.
}
place-corner = the { corner-name } corner
place-middle-of-edge = the middle of the { $edge } edge
place-on = the point on the { $edge } edge { $by }~from the { $end }
place-middle = the middle
place-halfway-across = the point halfway across, { $by }~from the { $edge } edge
place-halfway-up = the point halfway up, { $by }~from the { $edge } edge
place-within = the point { $across }~from the { $across-edge } edge and { $up }~from the { $up-edge } edge
round-all = Round all four corners with a corner punch, radius~{ $radius }.
round = Round the { $corners } { $count ->
    [one] corner
   *[other] corners
} with a corner punch, radius~{ $radius }.
stamp-out = { $tool ->
    [die] Lay the die in the middle of it, so that about { $margin } of paper shows all round, and cut it in the
        machine as its maker says.
   *[punch] Push it into the punch, so that about { $margin } of paper shows all round, and punch it as the maker says.
}
follow = Copy the outline onto it in pencil, as wide as the rectangle and standing on its bottom edge, and cut along it
    with scissors or a craft knife.
window-followed = Copy the window's outline onto it in pencil: { $size }, { $across } and { $up }. Cut along it with a
    craft knife on a cutting mat.
words-of-die = The die cuts the words: <strong>{ $words }</strong>.
window-left = { $by }~from the left edge
window-left-behind = { $by }~from its left edge, which is now at the right
window-middle-across = in the middle from side to side
window-bottom = { $by }~from the bottom edge
window-middle-up = in the middle of its height
window-by-hand = Turn it face down and draw the window on its back: { $size }, { $across }, and { $up }. Cut from corner
    to corner with a craft knife along a metal ruler, on a cutting mat.
window-by-hand-corners = Turn it face down and draw the window on its back: join { $corners } (the left edge is now at
    the right). Cut from corner to corner with a craft knife along a metal ruler, on a cutting mat.
window-stamped = { $tool ->
    [die] Cut the window with its die as the maker says: { $size }, its rim { $across } and { $up }.
   *[punch] Punch the window as the maker says: { $size }, its rim { $across } and { $up }.
}
keep = Keep what comes out: it is the { $piece }.
cut-halves = Cut { $count ->
    [one] { $count } rectangle
   *[other] { $count } rectangles
}~{ $ring } from corner to corner, from the { $from } to the { $to } corner: each gives { $pieces }{ $same ->
    [yes] , the second one when you turn it half round.
   *[no] .
}
rectangle-for = rectangle for { PLURAL($piece) }
rectangle-for-both = rectangle for { PLURAL($piece) } and { PLURAL($other) }
caution-knife = <strong>Cut away from your hand, in several light strokes, and put the cap on the knife after it.</strong>
caution-machine = <strong>Keep your fingers out of machine and punch, and do as the maker says.</strong>

## Figures: words in them, and what they say to a reader who cannot see them

figure-fold = fold
figure-score = score
figure-trim = trim
figure-up = up
figure-back = back
figure-face-down = face down
figure-scale = Scale { $scale }
figure-borders = { $count ->
    [one] border { $numbers }
   *[other] borders { $numbers }
}
figure-edge-strip = { $number } edge strip: throw away
figure-radius = radius { $number }
figure-fold-kind = { $fold ->
    [mountain] mountain
   *[valley] valley
}
figure-centimetres = 5 cm
figure-inches = 2 in
figure-cut = cut
figure-score-and-fold = score and fold
figure-score-mountain = score and fold: mountain
figure-score-valley = score and fold: valley
told-piece = { $count ->
    [one] { $name } ({ $ring })
   *[other] { $count } of { $name } ({ $ring })
}
told-layer = { told-piece }, { $size }
told-layer-from = { told-piece }, { $size }, from { $paper }
told-face = { $what }{ $fold ->
    [none] {""}
   *[other] , folded at the { $fold }
}{ $versions ->
    [yes] , version { $version }
   *[no] {""}
}.
told-layers = Layers from the lowest: { $layers }.
told-measures = Measures: { $measures }.
told-from-there = { $name } { $number } from { $there }
told-turned = { $name } turned { $degrees } to the { $side } about { $about }
told-fanned = { $name } fanned out by { $degrees } about { $about }
told-move = { $by } { $way ->
    [left] left
    [right] right
    [up] up
   *[down] down
}
told-stepped = { $name } each { $moves } from the one before
told-shifted = { $name } moved { $moves }
told-mirrored = { $way ->
    [left-to-right] { $name } laid again, mirrored left to right
   *[top-to-bottom] { $name } laid again, mirrored top to bottom
}
form-right-triangle = , a right triangle
form-diamond = , a diamond
form-circle = , a circle
form-oval = , an oval
form-drawn = , with an outline of its own
form-corners = , an outline of { $count } corners
form-rounded = { $count ->
    [one] , { $count } corner rounded
   *[other] , { $count } corners rounded
}
form-ended = { $end ->
    [fishtail] , a fishtail at the { $edge }
   *[point] , a point at the { $edge }
}
form-windows = { $count ->
    [0] {""}
    [one] , with a window
   *[other] , with { $count } windows
}
told-point = the point with the dot
view-inside = The inside, opened flat, { $size }
view-back = The back of the folded card, { $size }
view-envelope-front = The front of the envelope, { $size }
view-envelope-flap = The back of the envelope with its flap closed, { $size }
view-front = The finished card, { $size }
told-gap = gap { $number } at { $name }
told-borders = { figure-borders } all round
told-cuts = { $count ->
    [one] cut { $first } at { $measure } from the { $edge } edge
   *[other] cuts { $first } to { $last } at { $measure } from the { $edge } edge
}
told-pieces = { $back ->
    [yes] { told-piece } from the back, { $size }
   *[no] { told-piece }, { $size }
}
told-sheet = Cutting diagram of { $paper }, { $size }.
told-sheet-cuts = { CAPITAL($cuts) }.
told-sheet-pieces = It gives { $pieces }.
told-sheet-left = Left over: { $leftovers }.
told-glue-step = { $piece } on { $onto }.
told-glue-step-measures = { $piece } on { $onto }: { $measures }.
told-placing-frame = A placing frame of { $size } for { $layer } lies level on { $ground }, with { $count ->
    [one] its opening
   *[other] its { $count } openings
} filled.
told-trim-step = { $face-down ->
    [yes] { $piece } trimmed level with { $onto }, all of it face down.
   *[no] { $piece } trimmed level with { $onto }.
}
told-finish-step = { $piece } from a rectangle of { $blank }: { $finish }.
told-place = { $left } from the left and { $top } from the top
told-cut = a cut from { $from } to { $to }
told-follow = cut along the outline
told-round = the { corner-name } corner rounded by { $radius }
told-stamp-out = { $tool ->
    [die] cut out with a die, { $margin } of paper round it
   *[punch] cut out with a punch, { $margin } of paper round it
}
told-window = a window, { $size }, { $left } from the left and { $bottom } from the bottom
told-score = { figure-fold-kind } fold { $number } from the { $edge } edge
told-scores-step = { $piece }, { $size }, flat with its outside up: { $scores }.
told-the-card = the card front
told-the-inside = the inside of the card
told-the-back = the back of the card
told-the-envelope = the front of the envelope
told-the-flap = the flap of the envelope
told-past-edge = { $name } { $number } past the { $edge } edge
told-blank-front = The finished front, { $size }, in outlines.
told-stamp-step = { $piece } with the place to stamp dashed.
told-score-step = { $piece }, { $size }, with the score { $measure } from the { $edge } edge.
told-swatch = The sign of { $paper }.
told-blank-card = Outlines of the card, { $size }, to colour.
told-blank-sheet = Outline of a sheet for { $paper }, { $size }.
told-mark = { $number } is the mark between { $below } and { $above }
told-rulers = A bit of ruler at true size: { $marks }.
told-print-bars = Two bars to check the print with a ruler: 5 cm and 2 in long.
told-legend = { $folds ->
    [both] A continuous line is a cut. A line of dashes and dots is a score and mountain fold, a line of dashes a score
        and valley fold.
   *[one] A continuous line is a cut. A line of dashes and dots is a score and fold.
}

## One leaf, the try-out page, the designer's copy

leaf-title = { $title }, one leaf
try-out-title = { $title }, try-out page
copy-title = { $title }, designer's copy
in-short = Cut and make
in-short-lead = Cut in the order of the flags, at the measure behind each. Measures are in { units }, from the left edge
    or the near edge of the sheet as it lies.
where-things-go = Where each layer goes, and the borders to show
then-you-have = You have { $pieces }.
try-out = Try it out small
try-out-lead = All pieces of one card at half size. Print them on plain paper, build the small card, and only then cut
    the good paper.
try-out-cut = Cut along the wide lines.
try-out-fold = Fold where the dashes and dots run.
try-out-sizes = The numbers on the pieces are the sizes of the true card; each measures half of that here.
try-out-caution = Scissors and blades cut fingers too: cut away from your body, and keep them from small children.
as-it-will-be = The finished card, at half size too
as-it-will-be-version = The finished card in { $version }, at half size too
try-piece = { counted } { $ring }
try-piece-from = { counted } { $ring } from { $paper }
try-piece-told = The { $name } at half size, to cut out; the true one is { $size }{ $folds ->
    [0] {""}
    [one] , with { $folds } fold
   *[other] , with { $folds } folds
}.
rings-paper = { $rings } { $paper }
for-the-designer = For the designer alone
designers-lead = What was found, what you allow, and what the cutting plan rests on. Readers get the same pages without
    these.
found-title = What was found
allowed-title = What you allow
read-back-title = The design as it is printed
proof-title = What the plan reaches
nothing-found = Nothing that is not allowed.
proof-note = Aims in their order: a later one never costs an earlier one. Every cut was replayed on a blank sheet, and
    gave the promised pieces.
proof-head-aim = Aim
proof-head-reached = Reached
proof-head-bound = No plan does better than
proof-head-proof = Proof
aim-cards = Cards
aim-sheets = Sheets
aim-diagrams = Different cutting diagrams
aim-cuts = Cuts on all sheets
aim-changes = Changes of measure
aim-leftover = Largest leftover
proven = { $proven ->
    [yes] proven best
   *[no] best found
}
area = { $units ->
    [inch] { $area } sq in
   *[metric] { $area } sq cm
}

## Sheets at hand, and other sheets

sheets-of-size = { $count } of { $size }
instead = { CAPITAL($paper) }: { $new } instead of { $old }.
keeps-its-strip = Each is taken to have the edge strip of { $width } at the { $edge }; say `without edge strip` behind
    the sheets if not.
own-versions = { $shares ->
    [yes] : { $versions }
   *[no] {""}
}
most-proven = The sheets at hand give { cards } at most{ own-versions }. The design asks for { $asked }.
most-at-least = The sheets at hand give at least { cards }; no more are counted{ own-versions }. The design asks for
    { $asked }.
most-so-far = The sheets at hand give { cards } so far as was found, and no plan more than { $bound }{ own-versions }.
    The design asks for { $asked }.
runs-out = { $count ->
    [one] { $papers } runs out: it does not give one more{ own-so-far }.
   *[other] { $papers } run out: they do not give one more{ own-so-far }.
}
own-so-far = { $proven ->
    [yes] {""}
   *[no] , so far as was found
}
cut-from = { CAPITAL($paper) }, if you have { $sheets } instead
other-gives = These sheets give { cards }, not { $asked }.
other-sheets = Cut from other sheets
other-sheets-lead = Only for papers that you hold in other sheets. Each panel is cut instead of that paper's panel
    before; all other papers stay as they are.

## Loose parts

all-others = { $count ->
    [one] all others:
   *[other] all others, by size:
}
loose-part = { $count ->
    [one] { $size }
   *[other] { $count } of { $size }
}
told-loose = { $several ->
    [yes] A loose part, { $part }: cuts { $cuts }, each { $measure } from the { $edge } edge.
   *[no] A loose part, { $part }: cut { $cuts }, { $measure } from the { $edge } edge.
}

## True-size guides

guides-heading = { $title }: true-size guides
guides-frames = Cut out each frame with its openings. Lay it, print up and “top” at the top, level at all edges on what it
    is named for; the pieces go into the openings.
guides-halves = Half a frame lies level in one corner; push the piece into its inner corner.
guides-parts = Join parts edge to edge with tape, lines with the same number meeting.
guides-templates = Hold a template on the paper as the piece will be seen and draw round it, windows too.
guides-mirrored = What says “mirrored” lies on the back of the paper, print up.
guides-scores = Lay a score strip along the flat base, its named end level with that edge, and mark the scores.
guides-greetings = Dashed lines show where words have room on the piece.
guide-frame = Placing frame: { $layers } on { $ground }
guide-half = Half a placing frame: { $layers } on { $ground }
guide-template = Template: { $piece }
guide-mirrored = { $title }, mirrored
guide-scores = Score positions: { $piece }
guide-greeting = Greeting area: { $piece }
guide-part = { $title }, part { $part } of { $parts }
guide-top = top
guide-print-up = this side up
guide-edge-at = { $edge ->
    [left] left edge
    [right] right edge
    [top] top edge
   *[bottom] bottom edge
}
guide-size = { $size }
guide-corner = for the { $corner } corner
guide-allowance = with { $by } for the thickness of the paper
guide-alt-frame = { $title }. Its outer edge is { $size }. { $count ->
    [one] Its opening is { $openings }.
   *[other] Its { $count } openings are { $openings }.
}
guide-alt-opening = { $size }, { $left } from the left and { $bottom } from the bottom
guide-alt = { $title }, { $size }.
guide-alt-scores = { $title }, { $size }: { $measures } from the { $edge } edge.
guide-alt-greeting = { $title }, { $size }; the words have { $area }.

## Round the guides of a true-size sheet

true-size-title = { $title }, true-size guides
cut-file-title = { $title }, cut file
true-size-print = Print at 100~% (“actual size”). Lay a ruler on the bars before you cut: if one is wrong, print again.
true-size-caution = Blades cut fingers too: cut on a mat, a knife along a metal ruler, away from your body, fingers off
    the line of cut. Close the blade when you stop, and keep it out of the reach of children. For a machine, follow its
    maker.
true-size-line = { $role ->
    [cut] cut
    [score] score
    [fold] fold
    [draw] draw
   *[notes] only to read
}
told-true-size-line = { $role ->
    [cut] A wide continuous line is cut.
    [score] A line of dashes and dots is scored.
    [fold] A line of long dashes is folded.
    [draw] A line of short dashes is drawn.
   *[notes] A narrow continuous line is only to read by.
}
told-true-size-bars = To check the print with a ruler, bars of { $bars }.
