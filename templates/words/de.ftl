# The reader's words in German: what en.ftl says, by the same names.
#
# The reader is spoken to in the infinitive, and names of the design stand without an article, since their
# gender is not known. `OWN-PLURAL($name)` is `yes` where the design gives a name's plural; else several are
# told as `4 × Laterne`. Inches are written out as Zoll: the sign in reads as the preposition.

## Numbers, names and lists

decimal-sign = ,
unit-in = Zoll
unit-mm = mm
unit-cm = cm
unit-m = m

own-several = { OWN-PLURAL($name) ->
    [yes] { $count }~{ PLURAL($name) }
   *[no] { $count }~×~{ $name }
}
counted = { $count ->
    [one] { $count }~{ $name }
   *[other] { own-several }
}
counted-ring = { counted }~{ $ring }
plural = { PLURAL($name) }
count-word = { $count ->
    [0] kein
    [1] eins
    [2] zwei
    [3] drei
    [4] vier
    [5] fünf
    [6] sechs
    [7] sieben
    [8] acht
    [9] neun
    [10] zehn
    [11] elf
    [12] zwölf
   *[other] { $count }
}
cards = { $count ->
    [one] { $count } Karte
   *[other] { $count } Karten
}
sheets = { $count ->
    [one] { $count } Bogen
   *[other] { $count } Bögen
}
leftovers = { $count ->
    [one] { $count } Rest
   *[other] { $count } Reste
}
list-and = { $before } und { $next }
list-or = { $before } oder { $next }
list-comma = { $before }, { $next }
list-semicolon = { $before }; { $next }
list-dot = { $before } · { $next }
list-then = { $before }, dann { $next }

## Every page

lang = de
month = { $month ->
    [1] Januar { $year }
    [2] Februar { $year }
    [3] März { $year }
    [4] April { $year }
    [5] Mai { $year }
    [6] Juni { $year }
    [7] Juli { $year }
    [8] August { $year }
    [9] September { $year }
    [10] Oktober { $year }
    [11] November { $year }
    [12] Dezember { $year }
   *[other] { $year }
}
units = { $units ->
    [inch] Zoll
   *[metric] Millimeter
}
page = Seite
page-of = von
draft = ENTWURF
findings = Noch nicht fertig
findings-lead = { $none ->
    [yes] Es wurde nichts gefunden, was zu berichtigen wäre.
   *[no] Das wurde gefunden. Bitte berichtigen, bevor diese Anleitung weitergegeben wird.
}
file-title = { $title }, { $month }
footer-rest = { $units-word }
footer-rest-dated = { $month } · { $units-word }

## The designer's own look

terms = Nutzungsbedingungen
on-the-web = Im Netz
logo = Logo
photo-caption = Die fertige Karte
photo-caption-version = <strong>{ CAPITAL($version) },</strong> die fertige Karte
photo-alt = Foto der fertigen Karte: { $title }{ $versions ->
    [yes] , { $version }
   *[no] {""}
}.

## The front page

sketch = Kartenskizze
sketch-for = Kartenskizze für { $month }
all-alike = alle gleich
version-count = { $count }~×~{ $name }
folds-at = { $edge ->
    [left] links
    [right] rechts
    [top] oben
   *[bottom] unten
} gefalzt, aus { $flat }
folds-gate = öffnet sich in der Mitte, aus { $flat }
folds-accordion = im Zickzack gefalzt, { $panels } Felder, aus { $flat }
folds-flat = flach, ohne Falz
sheets-of-papers = { sheets } aus { $papers ->
    [one] { $papers } Papier
   *[other] { $papers } Papieren
}
pieces-in-all = { $count ->
    [one] { $count } Stück zuzuschneiden, { $each } je Karte
   *[other] { $count } Stücke zuzuschneiden, { $each } je Karte
}
cut-list = Zuschnittliste
cut-list-note = { $count ->
    [one] für 1 Karte, Breite × Höhe in { units }
   *[other] Summen für alle { $count } Karten, Breite × Höhe in { units }
}
sheets-note = { sheets }, { $size }
one-way = eine Richtung
two-way = zwei Richtungen
piece-name = { $count ->
    [one] { $name }
   *[other] { PLURAL($name) }
}
folded-to = gefalzt auf { $size }
own-windows = { $windows ->
    [0] {""}
    [one] , mit einem Fenster
   *[other] , mit Fenstern
}
cut-out = { $tool ->
    [die] wird später mit der Stanzform ausgestanzt, { $size }{ own-windows }
   *[punch] wird später mit dem Handstanzer ausgestanzt, { $size }{ own-windows }
}
with-windows = { $windows ->
    [one] ein Fenster wird später ausgeschnitten
   *[other] Fenster werden später ausgeschnitten
}
cut-to-shape = wird später in Form geschnitten{ own-windows }
corner-to-corner-one = wird später von Ecke zu Ecke geschnitten: ergibt je 1
corner-to-corner-two = wird später von Ecke zu Ecke geschnitten: ergibt je 2
corner-to-corner-both = wird später von Ecke zu Ecke geschnitten: ergibt je 1~{ $own }~{ $own-ring } und
    1~{ $other }~{ $other-ring }
trimmed-to = wird später auf { $size } gekürzt
version-caption-alike = <strong>{ cards }</strong>{ $count ->
    [one] {""}
   *[other] , alle gleich
}
version-caption = <strong>{ CAPITAL($name) }, { cards }</strong>
version-caption-papers = <strong>{ CAPITAL($name) }, { cards }</strong>: { $papers }
piece-of-paper = { piece-name } aus { CAPITAL($paper) }
other-sides = Die anderen Seiten
other-sides-lead = Jede Seite, wie sie bei der fertigen Karte zu sehen ist.
side-caption = <strong>{ $title }</strong>
side-caption-version = <strong>{ $title }</strong>, { CAPITAL($version) }
envelope-front-title = Vorderseite des Umschlags
envelope-back-title = Rückseite des Umschlags
printed-first = <strong>Vor dem Zuschneiden drucken:</strong> „{ $words }“ steht auf { $piece }~{ $ring }.
left-by-a-window = <strong>{ CAPITAL($piece) }~{ $ring } ist, was ein Fenster übrig lässt.</strong>
    Aufheben, was aus { $frame }~{ $frame-ring } herauskommt.
not-as-usual = Diesmal anders
cut-too-long = <strong>{ CAPITAL($piece) }~{ $ring } wird mit Absicht zu lang zugeschnitten.</strong>
    Nach dem Aufkleben bündig mit { $onto } abschneiden.
keep-up = { $pattern ->
    [two-way] <strong>Das Muster von { CAPITAL($paper) } hat zwei Richtungen.</strong>
        Nach Belieben um eine halbe Drehung drehen, nie um eine Vierteldrehung.
   *[one-way] <strong>Das Muster von { CAPITAL($paper) } hat eine Richtung.</strong>
        Auf die Rückseite jedes Teils einen Bleistiftpfeil zeichnen, bevor es abgeschnitten wird.
}
both-sides = <strong>{ CAPITAL($paper) } zeigt beide Seiten.</strong>
    Mit der Vorderseite nach oben zuschneiden. Stücke mit dem Vermerk „{ figure-back }“ { $over } wenden.{ $direction ->
        [yes] {" "}Das Muster hat eine Richtung: jedes Teil so ablegen, wie es abgeschnitten wurde.
       *[no] {""}
    }
different-sheets = <strong>Die Bögen von { CAPITAL($paper) } sind verschieden.</strong>
    Alle werden gleich zugeschnitten; wie sie zu verteilen sind, sagt der Schritt mit den Stapeln.
leftovers-note = { leftovers } von { CAPITAL($source) }, { $size }
not-cut-alike = <strong>Die { $count } Bögen von { CAPITAL($paper) } werden nicht alle gleich zugeschnitten.</strong>
    Auf die Nummern der Bögen achten.
paper-missing = Das Papier reicht nicht

## Cutting: titles and notes

cutting = Zuschneiden
cutting-lead = Eine Zahl im Fähnchen { $cut } ist ein Schnitt; in dieser Reihenfolge schneiden. Eine Zahl im Kreis
    { $ring } ist ein Stück. Alle Maße in { units }.
cutting-caution = Finger von der Schnittlinie fernhalten. Bei jeder Pause die Klinge schließen.
measured-part = Die genannte Kante an das Maß anlegen. Was zwischen dieser Kante und der Klinge liegt, ist das Teil,
    das abgeschnitten wird.
cut-head-cuts = Schnitt
cut-head-measure = Maß
cut-head-act = Was zu tun ist
panel-name = { $papers }
panel-name-sheets = { $papers }, { $sheets }
capital = { CAPITAL($name) }
cut-alike-each = je { sheets }, { $size }, gleich zugeschnitten
cut-alike-all = { sheets }, { $size }, gleich zugeschnitten
continued = { $name }, Fortsetzung
another-way-panel = Anders zuschneiden: { $panel }
from-other-sheets = { $panel }, aus { $sheets }
why-another-way = Für Papier, dessen Muster an den Rändern anders ist: Andere Stücke kommen von dort.
own-sheets-or-leftovers = { $what ->
    [leftovers] Resten
   *[sheets] Bögen
}
have = { $count ->
    [1] Ergebnis
    [2] Aus beiden { own-sheets-or-leftovers }
   *[other] Aus allen { $count } { own-sheets-or-leftovers }
}
pieces = { counted }~{ $ring }
of-them-spare = { $pieces }, davon { $spare } übrig
left = Reste: { $parts }
left-part = { $leftover } { $size }
left-part-several = { $leftover } { $size }, { $count }~Mal
left-also = { $left } · von { CAPITAL($paper) }: { $leftovers }
leftover-number = { $leftover }

## Putting together: titles and leads

putting-together = Zusammensetzen
first-put-together = Zuerst zusammensetzen
on-the-front = Vorderseite
on-the-inside = Innenseite
on-the-back = Rückseite
on-the-envelope = Umschlag
decorating = Verzieren
putting-lead = Was neu ist, ist kräftig gezeichnet; was schon da ist, blass.{ $count ->
    [one] {""}
   *[other] {" "}Jeden Schritt für alle { $count } Karten ausführen, dann den nächsten.
}
make-cards = { $count ->
    [one] { $count } Karte
   *[other] { $count } Karten
}
tick-each = Jede fertige Karte abhaken.
tick-row = { cards }
tick-row-version = { cards }, <strong>{ CAPITAL($name) }</strong>
not-to-scale = Bilder der Schritte sind nicht maßstäblich. Runde Ausschnitte sind 1:1.

## Supplies and finishing

supplies = Material und Abschluss
supplies-lead = { $count ->
    [one] Für eine Karte, in der Reihenfolge des Einkaufs. Abhaken, was da ist.
   *[other] Summen für alle { $count } Karten, in der Reihenfolge des Einkaufs. Abhaken, was da ist.
}
paper-head = Papier
glue-head = Kleber
also-head = Außerdem
tools-head = Werkzeug
paper-to-buy = <strong>{ CAPITAL($name) }</strong>, { $about }
tape = Doppelseitiges Klebeband, etwa { $length }
liquid-glue = { $count ->
    [one] Bastelkleber, der klar trocknet, für { $count } Stück
   *[other] Bastelkleber, der klar trocknet, für { $count } Stücke
}
foam = 3D-Klebepads aus Schaum, etwa { $count }
glue-dots = Klebepunkte, etwa { $count }
decoration = { counted }, { $size }
roll = { CAPITAL($name) }, { $wide } breit: { $count ->
    [one] { $count } Stück
   *[other] { $count } Stücke
} von { $each }, zusammen { $all }
knife-tool = Bastelmesser, Metalllineal und Schneidematte
corner-punch = Eckenrunder
dies = Stanzformen und die Maschine dazu
punches = Handstanzer
trimmer = Schneidemaschine bis { $longest }, Teilung { $step }
scoring-tool = Rillwerkzeug und Lineal
pencil = Bleistift und weicher Radiergummi
scissors = Scharfe Schere
leftovers-title = Reste
leftover-head-number = Nr.
leftover-head-from = Papier
leftover-head-size = { $units ->
    [inch] Zoll
   *[metric] Millimeter
}
leftover-head-use = Gut als
leftover-from = { $count ->
    [one] { CAPITAL($paper) }
   *[other] { CAPITAL($paper) }, { $count }
}
leftover-from-alike = { $count ->
    [one] { $count } Papier
   *[other] { $count } Papiere
}
good-for = { $use ->
    [front] Vorderseite
    [tag] Geschenkanhänger
    [bookmark] Lesezeichen
    [strip] Streifen innen
   *[small] kleine Formen
}
ideas = Ideen für die Reste
spoiled = Ein Stück verdorben?
gives-more = { $leftover } ergibt noch { own-piece-of-paper }~{ $ring }.
own-piece-of-paper = { counted } aus { CAPITAL($paper) }
no-spare = Kein Rest ergibt Ersatz für { $pieces }.
inside-title = Innenseite und Umschlag
inside-strip = Einen Streifen aus einem Rest, bis { $strip } breit, innen unten entlangkleben.
inside-envelope = Einen Umschlag wählen, der in beiden Richtungen mindestens { $room } größer ist als die Karte
    ({ $card }); vor dem Kauf eine fertige Karte messen.
ask-the-post = Eine steife, dicke oder unebene Karte kann mehr Porto kosten. Es gelten die Vorschriften des
    Postdienstes.
check-print-title = Ausdruck prüfen
check-print = Ein Lineal an die Balken legen. Stimmt einer nicht, mit 100~% („Tatsächliche Größe“) neu drucken.
take-care = Vorsicht
caution-blades = Schneidemaschinen, Messer und Scheren schneiden auch in Finger. Finger von der Schnittlinie
    fernhalten, schmale Streifen mit einem Stück Karton halten, bei jeder Pause die Klinge schließen und sichern, und
    alles außer Reichweite von Kindern aufbewahren.
caution-dies = Stanzformen haben scharfe Kanten, Maschinen und Handstanzer quetschen. Finger, Haare und Ärmel
    fernhalten.
caution-makers = Wo der Hersteller eines Werkzeugs oder Klebers anderes sagt, gilt seine Anleitung; so auch bei heißem
    Werkzeug und Klebepistolen.
caution-small = Aufgeklebter Schaum und andere kleine Teile können sich lösen. Solche Karten nicht Kindern unter drei
    Jahren geben.

## The swatch page

swatch = Musterseite
swatch-lead = Die Umrisse ausmalen oder Stücke der eigenen Papiere aufkleben. Aufschreiben, was gewählt wird.
my-papers = Meine Papiere
for-paper = Für { CAPITAL($name) }
outline-caption = <strong>{ CAPITAL($name) }</strong>
outline-caption-alike = <strong>Die Karte</strong>
from-paper = <strong>{ CAPITAL($name) }: </strong>{ $idea }

## Cutting: rows of cuts

left-to-right = von links nach rechts
top-to-bottom = von oben nach unten
the-whole = { $what ->
    [leftovers] vom Rest
   *[sheets] vom Bogen
}
own-part = { $form ->
    [strip] Streifen
   *[part] Teil
}
own-parts = { $form ->
    [strip] Streifen
   *[part] Teile
}
own-parts-from = { $form ->
    [strip] Streifen
   *[part] Teilen
}
own-often = { $times ->
    [one] einmal
   *[other] { $times }~Mal
}
own-at = { $edge ->
    [left] links
    [right] rechts
    [top] oben
   *[bottom] unten
}
own-the-edge = { $edge ->
    [left] linke Kante
    [right] rechte Kante
    [top] obere Kante
   *[bottom] untere Kante
}
own-edge-start = { $edge ->
    [left] Linke Kante
    [right] Rechte Kante
    [top] Obere Kante
   *[bottom] Untere Kante
}
own-at-start = { $edge ->
    [left] Links
    [right] Rechts
    [top] Oben
   *[bottom] Unten
}
parts-alike = { $take ->
    [only] vom { own-part } { $size }
    [either] von einem der beiden { own-parts } { $size }
    [any] von einem der { $there-word } { own-parts } { $size }
    [some] von { $count-word } der { $there-word } { own-parts } { $size }
    [both] von beiden { own-parts-from } { $size }
   *[all] von allen { $count-word } { own-parts-from } { $size }
}
parts-some = { $count ->
    [one] von einem { own-part } { $size }
   *[other] von { $count-word } { own-parts-from } { $size }
}
lot-cut = { $count ->
    [one] { $parts } { own-often }
   *[other] { $parts } je { own-often }
}
counted-ring-back = { counted-ring } mit der Rückseite nach oben
given-parts = { $count ->
    [one] { $count } { own-part } { $size }
   *[other] { $count } { own-parts } { $size }
}
the-edge-strip = den Randstreifen
rest-scrap = { $count ->
    [one] Der Rest ist Abfall.
   *[other] Die Reste sind Abfall.
}
rest-left = { $count ->
    [one] { $leftover } bleibt übrig.
   *[other] { $leftover } bleibt { $count }~Mal übrig.
}
row-mixed = { own-at-start } abschneiden: { $lots }.
row-mixed-gives = { own-at-start } abschneiden: { $lots }. Ergibt { $pieces }.
row-cut = { CAPITAL($parts) } { own-at } { own-often } abschneiden.
row-gives = { CAPITAL($parts) } { own-at } abschneiden: { $pieces }.
row-put = { own-edge-start } { $parts } auf { $measure } anlegen und schneiden.{ $times ->
    [one] {""}
   *[other] {" "}Das { $times }~Mal.
}
row-put-each = Bei { $some ->
    [yes] { $count-word } der { $there-word }
   *[no] jedem der { $count-word }
} { own-parts } { $size } die { own-the-edge } auf { $measure } anlegen und schneiden.{ $times ->
    [one] {""}
   *[other] {" "}Das bei jedem { $times }~Mal, zusammen { $all }~Mal.
}
row-put-mixed = { own-edge-start } auf { $measure } anlegen und schneiden: { $lots }.
it-gives = Ergibt { $pieces }.
own-pattern = { $pattern ->
    [one-way] , eine Richtung
    [two-way] , zwei Richtungen
   *[any] {""}
}
own-alike = { $alike ->
    [yes] , gleich zugeschnitten
   *[no] {""}
}
sheet-note = { sheets }, { $size }{ own-pattern }{ own-alike }
sheet-note-kept = { leftovers } von { CAPITAL($source) }, { $size }{ own-pattern }{ own-alike }
sheet-number = Bogen { $number }
sheets-range = Bögen { $first } bis { $last }
sheets-listed = Bögen { $numbers }
you-have = { have }: { $pieces }.
to-spare = Übrig: { $pieces }.
works-down-to = Geht mit Bögen ab { $size }{ $strip ->
    [yes] , ohne den Randstreifen.
   *[no] .
}
full-size = { $count ->
    [one] Der Bogen muss die volle Größe haben.
   *[other] Die Bögen müssen die volle Größe haben.
}
another-way = Anders zuschneiden
another-way-of = Anders zuschneiden, { $number } von { $count }
differs = { CAPITAL($clauses) }.
measured-from = gemessen { $edges }
own-from-other = { $other ->
    [left] von links
    [right] von rechts
    [top] von oben
   *[bottom] von unten
}
own-from-first = { $first ->
    [left] von links
    [right] von rechts
    [top] von oben
   *[bottom] von unten
}
from-instead = { own-from-other } statt { own-from-first }
from-in-turn = abwechselnd { own-from-first } und { own-from-other }
first-cut-other-way = der erste Schnitt in der anderen Richtung
pieces-lying = { $count ->
    [0] kein Stück liegt quer
    [one] { $count } Stück liegt quer
   *[other] { $count } Stücke liegen quer
}
other-parts = andere Teile
as-before = wie zuvor zugeschnitten.
no-more-ways = { $count ->
    [0] Es wurde kein anderer gleichwertiger Weg gefunden.
    [one] Mehr als { $count } anderer gleichwertiger Weg wurde nicht gefunden.
   *[other] Mehr als { $count } andere gleichwertige Wege wurden nicht gefunden.
}
pencil-arrow = Vor dem Zuschneiden von { CAPITAL($paper) } auf die Rückseite jedes Teils einen Bleistiftpfeil zeichnen,
    der nach oben zeigt.
leftover = { $leftover } { $size }
leftover-several = { $leftover } { $size } ({ $count }~Mal)
own-cuts = { $count ->
    [one] { $count } Schnitt
   *[other] { $count } Schnitte
}
own-diagrams = { $count ->
    [one] { $count } Schnittplan
   *[other] { $count } Schnittpläne
}
totals = { $cuts } auf { $sheets }, { $diagrams }.
plan-title = { $title }: Zuschnitt für { cards }. Maße sind Breite x Höhe in { units }.
left-over = Reste: { $parts }.
missing = Kein Platz für { counted } aus { CAPITAL($paper) }.
largest-leftover-size = Größter Rest { $size }
largest-leftover-none = Kein brauchbarer Rest
largest-proven = { $leftover }: bewiesen der größte.
largest-found = { $leftover }: der größte gefundene; kein Plan lässt mehr als { $bound } in einem Teil übrig.
count-of = { $aim ->
    [cards] { cards }
    [sheets] { sheets }
    [diagrams] { own-diagrams }
    [cuts] { own-cuts }
   *[changes] { $count ->
        [one] { $count } Wechsel des Maßes
       *[other] { $count } Wechsel des Maßes
    }
}
aim-proven = { count-of }: bewiesen { $aim ->
    [cards] am meisten
   *[other] am wenigsten
}.
aim-found = { count-of }: das Beste, was gefunden wurde; kein Plan hat { $aim ->
    [cards] mehr
   *[other] weniger
} als { $bound }.

## Making: steps

named = { $name }~{ $ring }
trim = { $loose ->
    [yes] Umdrehen, Rückseite nach oben. Die Enden von { $piece } bündig mit { $onto } abschneiden.
   *[no] Die Enden von { $piece } bündig mit { $onto } abschneiden.
}
by-frame = <strong>Mit Auflegerahmen: </strong>Den Rahmen bündig auf { $onto } legen, „oben“ oben, { $several ->
    [yes] die Stücke in ihre Öffnungen
   *[no] das Stück in seine Öffnung
} legen und den Rahmen abheben. Ohne Rahmen gelten die Maße.
caution-fingers = <strong>Finger von der Schnittlinie fernhalten.</strong>
stamp = { CAPITAL($piece) } jeweils stempeln: <strong>{ $words }</strong>. Die Farbe trocknen lassen.
score = { CAPITAL($piece) } jeweils { $measure } von { $from ->
    [left] links
    [right] rechts
    [top] oben
   *[bottom] unten
} rillen. So falzen, dass der Wulst der Rille innen liegt. Der Falz ist die { $fold ->
    [left] linke
    [right] rechte
    [top] obere
   *[bottom] untere
} Kante.
score-gate = { CAPITAL($piece) } jeweils { $left } von links und { $right } von rechts rillen. Beide Flügel nach innen
    falzen, sodass der Wulst der Rillen innen liegt: Sie treffen sich in der Mitte der Vorderseite.
fold-points = { $fold ->
    [mountain] nach vorn (Bergfalz)
   *[valley] nach hinten (Talfalz)
}
score-accordion = { CAPITAL($piece) } jeweils mit der Außenseite nach oben { $measures } von links rillen. Im Zickzack
    falzen. Von links zeigen die Falze { $folds }. Das Feld ganz rechts ist die Vorderseite.
print = Bevor das Papier zugeschnitten wird, für { $piece } jeweils drucken: <strong>{ $words }</strong>. So auf
    dem Bogen anordnen, wie das Stück zugeschnitten wird, zuerst auf Normalpapier probieren und die Farbe trocknen lassen.
from-roll = { $count ->
    [one] Von der Rolle für jede Karte ein Stück von { $length } abschneiden.
   *[other] Von der Rolle für jede Karte { $count } Stücke von { $length } abschneiden.
}
sort = { $piles } Stapel auslegen, einen für jede Karte. In jeden: { $pieces }.
pile = <strong>{ CAPITAL($version) }: </strong>{ cards }, { $papers }.
pile-paper = { PLURAL($name) } aus { CAPITAL($paper) }
number-the-sheets = <strong>Die Bögen von { CAPITAL($pad) } sind verschieden. </strong>Von 1 bis { $count } nummerieren
    und beim Zuschneiden die Nummer des Bogens mit Bleistift auf die Rückseite jedes Stücks schreiben.
deal-by-number = <strong>Die Stücke aus { CAPITAL($pad) } </strong>tragen auf der Rückseite die Nummern ihrer Bögen.
    Danach auf die Stapel verteilen.
from-sheet = { $name } von Bogen~{ $sheets }
from-sheets = { PLURAL($name) } von den Bögen~{ $sheets }
dealt-onward = <strong>Stapel 1: </strong>{ $pieces }. Jeder weitere Stapel nimmt jedes Stück von einem Bogen weiter;
    auf Bogen~{ $count } folgt Bogen~1.
dealt = <strong>Stapel { $pile }: </strong>{ $pieces }.
times = { $count ->
    [one] Einmal
   *[other] { $count }~Mal
}
now-put-together = { $count ->
    [one] Jetzt ist { counted }~{ $ring } zusammengesetzt.
   *[other] Jetzt sind { counted }~{ $ring } zusammengesetzt.
}
now-have = Jetzt liegen bereit: { $pieces }.

## Points, edges and parts

corner-name = { $corner ->
    [top-left] oben links
    [top-right] oben rechts
    [bottom-left] unten links
   *[bottom-right] unten rechts
}
corner = Ecke { corner-name }
middle = Mitte
highest = höchste Stelle
leftmost = Stelle ganz links
edge = der { $edge ->
    [left] linken
    [right] rechten
    [top] oberen
   *[bottom] unteren
} Kante
edge-name = { own-the-edge }
the = { $name }
its-middle = Mitte
its-corner = Ecke { corner-name }
middle-of-its-edge = Mitte { edge }
its-point = Punkt { $left }~von der linken und { $bottom }~von der unteren Kante
base = Kartenrohling
bases = Kartenrohlinge
card = Karte
side = { $side ->
    [front] Kartenvorderseite
    [back] Kartenrückseite
    [envelope-front] Vorderseite des Umschlags
    [envelope-flap] Klappe des Umschlags
    [inside-left] Innenseite links
    [inside-middle] Innenseite Mitte
    [inside-right] Innenseite rechts
    [inside-upper] Innenseite oben
    [inside-lower] Innenseite unten
   *[inside] geöffnete Innenseite
}
inside-panel = Innenseite, { $panel ->
   *[other] { $panel }. Feld von links
}

## Laying: where a layer goes

own-way = { $way ->
    [left-of] links von
    [right-of] rechts von
    [above] oberhalb von
   *[below] unterhalb von
}
own-toward = { $way ->
    [left-of] nach links
    [right-of] nach rechts
    [above] nach oben
   *[below] nach unten
}
laid-one = { $piece }
laid-several = { counted-ring }
laid-several-bare = { counted }
laid-called = { $pieces } ({ $called })
own-laid = { CAPITAL($what) }{ $fixed ->
    [tape] {" "}mit Klebeband
    [foam] {" "}mit 3D-Klebepads
    [dots] {" "}mit Klebepunkten
   *[liquid] {""}
}
glue-bordered = { own-laid } mittig auf { $onto } kleben. Rundum bleibt ein Rand von~{ $border } sichtbar.
glue-middle = { own-laid } mittig auf { $onto } kleben. { $sides } bleibt an jeder Seite sichtbar, { $ends } oben und
    unten.
glue-spots = { own-laid } auf { $onto } kleben: { $up }, { $across }.
glue-first = { own-laid } auf { $onto } kleben, das erste Stück { $up }, { $across }.
glue-over = { own-laid } auf { $onto } kleben: Mitte auf die Mitte von { $name }.
glue-turned = { own-laid } um { $by } gedreht auf { $onto } kleben. Drehpunkt: { $about }; er liegt { $up }, { $across }.
glue-fan = { own-laid } als Fächer auf { $onto } kleben. Von jedem Stück liegt derselbe Punkt ({ $about }) an einer
    Stelle: { $up }, { $across }.
leave-between = Dazwischen~{ $gap } frei lassen.
leave-between-both = Dazwischen~{ $across } nebeneinander und { $down } übereinander frei lassen.
about = etwa~{ $measure }
spot-middle = { $direction ->
    [up] in halber Höhe
   *[across] in halber Breite
}
spot-from = { $by }~von { $edge ->
    [left] links
    [right] rechts
    [top] oben
   *[bottom] unten
}
spot-past = { $by }~über die { own-the-edge } hinaus
spot-at = an { edge }
spot-beside = Kante an Kante { own-way } { $name }
spot-beside-gap = { $gap }~{ own-way } { $name }
spot-level = { $part } auf einer Linie mit der von { $name }
spot-off = { $part } gegenüber der von { $name } um~{ $by }~{ own-toward } versetzt
spot-midway = mitten zwischen { $one } und { $other }, { $from }
turn-each = Jedes Stück um { $by } drehen, Drehpunkt: { $about }.
corner-comes = { $first ->
    [yes] Beim ersten liegt { $corner } { $up } und { $across }
   *[no] Dann liegt { $corner } { $up } und { $across }
}
corner-next = { $corner } { $up } und { $across }
corners = { $corners }.
step-move = { $by }~{ $way ->
    [further-left] weiter links
    [further-right] weiter rechts
    [lower] tiefer
   *[higher] höher
}
steps = Jedes weitere Stück liegt { $moves }.
triangle = Zusammen bilden sie ein Dreieck: { $count ->
    [one] eine Reihe
   *[other] Reihen
} von { $rows } von oben nach unten.
fan-upright = Das erste Stück steht aufrecht, jedes weitere ist { $step } weiter nach rechts gedreht.
fan-turned = Das erste Stück ist { $first } gedreht, jedes weitere { $step } weiter nach rechts.
corners-of-each = Der Reihe nach liegt { $corner } etwa~{ $across } von { $across-edge ->
    [left] links
   *[right] rechts
} und etwa~{ $up } von { $up-edge ->
    [top] oben
   *[bottom] unten
}.
pinwheel = { $way ->
    [clockwise] Die Stücke liegen im Uhrzeigersinn um eine quadratische Mitte: das erste aufrecht links, das nächste
        oben, jedes Kante an Kante mit dem vorigen. Zusammen ergeben sie ein Quadrat von~{ $side }.
   *[anticlockwise] Die Stücke liegen gegen den Uhrzeigersinn um eine quadratische Mitte: das erste aufrecht links, das
        nächste unten, jedes Kante an Kante mit dem vorigen. Zusammen ergeben sie ein Quadrat von~{ $side }.
}
own-mirrored = { $over ->
    [yes] gewendet und gespiegelt
   *[no] gespiegelt
}
own-from = { $from ->
    [left] von links
    [right] von rechts
    [top] von oben
   *[bottom] von unten
}
own-from-to = { $to ->
    [left] von links
    [right] von rechts
    [top] von oben
   *[bottom] von unten
}
mirrored = { $count ->
    [2] Eins liegt dort, das andere { own-mirrored }: so weit { own-from-to } wie dieses { own-from }.
   *[other] Die Hälfte liegt dort, die andere Hälfte { own-mirrored }: so weit { own-from-to } wie diese { own-from }.
}
reaches-past = Die Enden ragen über { $onto } hinaus. Sie werden später abgeschnitten.
reaches-past-by = Die Enden ragen~{ $by } über { $onto } hinaus. Sie werden später abgeschnitten.
turn = { $degrees } nach { $side ->
    [left] links
   *[right] rechts
}
degrees = { $number } Grad

## Finishing: what is made of a rectangle

make-from = { CAPITAL($piece) } jeweils aus dem Rechteck von~{ $blank } fertigen.
trim-from-window = Für jedes Stück von { $piece } zuschneiden, was aus { $frame } herauskam: auf { $blank }.
lies = { $how ->
    [side] Mit der Seite nach oben hinlegen, die zu sehen sein wird.
    [upright] Mit dem Muster aufrecht hinlegen.
   *[both] Mit der Seite nach oben hinlegen, die zu sehen sein wird, das Muster aufrecht.
}
cut-from-to = von { $from } bis { $to }
cut-there = dort
cut-same-point = zum selben Punkt
cut-with = { $tool ->
    [trimmer] Mit Schneidemaschine oder Schere schneiden: { $cuts }.
   *[scissors] Mit der Schere schneiden: { $cuts }.
}
place-corner = Ecke { corner-name }
place-middle-of-edge = Mitte { edge }
place-on = Punkt auf { edge }, { $by }~von { $end ->
    [left] links
    [right] rechts
    [top] oben
   *[bottom] unten
}
place-middle = Mitte
place-halfway-across = Punkt in halber Breite, { $by }~von { edge }
place-halfway-up = Punkt in halber Höhe, { $by }~von { edge }
place-within = Punkt { $across }~von { $across-edge ->
    [left] links
   *[right] rechts
} und { $up }~von { $up-edge ->
    [top] oben
   *[bottom] unten
}
round-all = Alle vier Ecken mit dem Eckenrunder abrunden, Radius~{ $radius }.
round = { $count ->
    [one] Die Ecke
   *[other] Die Ecken
} { $corners } mit dem Eckenrunder abrunden, Radius~{ $radius }.
stamp-out = { $tool ->
    [die] Die Stanzform mittig darauflegen, sodass rundum etwa { $margin } Papier zu sehen ist, und in der Maschine
        nach Anleitung des Herstellers stanzen.
   *[punch] In den Handstanzer schieben, sodass rundum etwa { $margin } Papier zu sehen ist, und nach Anleitung des
        Herstellers stanzen.
}
follow = Den Umriss mit Bleistift darauf übertragen, so breit wie das Rechteck und auf dessen unterer Kante stehend, und
    mit Schere oder Bastelmesser daran entlangschneiden.
window-followed = Den Umriss des Fensters mit Bleistift darauf übertragen: { $size }, { $across } und { $up }. Mit dem
    Bastelmesser auf einer Schneidematte daran entlangschneiden.
words-of-die = Die Stanzform schneidet die Worte: <strong>{ $words }</strong>.
window-left = { $by }~von der linken Kante
window-left-behind = { $by }~von der linken Kante, die jetzt rechts liegt
window-middle-across = in halber Breite
window-bottom = { $by }~von der unteren Kante
window-middle-up = in halber Höhe
window-by-hand = Umdrehen und das Fenster auf die Rückseite zeichnen: { $size }, { $across }, und { $up }. Mit dem
    Bastelmesser von Ecke zu Ecke an einem Metalllineal entlangschneiden, auf einer Schneidematte.
window-by-hand-corners = Umdrehen und das Fenster auf die Rückseite zeichnen. Diese Punkte verbinden: { $corners } (die
    linke Kante liegt jetzt rechts). Mit dem Bastelmesser von Ecke zu Ecke an einem Metalllineal entlangschneiden, auf
    einer Schneidematte.
window-stamped = { $tool ->
    [die] Das Fenster mit seiner Stanzform nach Anleitung des Herstellers stanzen: { $size }, der Rand { $across } und
        { $up }.
   *[punch] Das Fenster mit dem Handstanzer nach Anleitung des Herstellers stanzen: { $size }, der Rand { $across } und
        { $up }.
}
keep = Aufheben, was herauskommt: Es ist { $piece }.
cut-halves = { $count ->
    [one] { $count } Rechteck
   *[other] { $count } Rechtecke
}~{ $ring } von Ecke zu Ecke schneiden, von { $from } nach { $to }: ergibt je { $pieces }{ $same ->
    [yes] , das zweite nach einer halben Drehung.
   *[no] .
}
rectangle-for = Rechteck für { $piece }
rectangle-for-both = Rechteck für { $piece } und { $other }
caution-knife = <strong>Von der Hand weg schneiden, in mehreren leichten Zügen, und danach die Kappe auf das Messer
    setzen.</strong>
caution-machine = <strong>Finger aus Maschine und Handstanzer halten und nach Anleitung des Herstellers vorgehen.</strong>

## Figures: words in them, and what they say to a reader who cannot see them

figure-fold = Falz
figure-score = rillen
figure-trim = kürzen
figure-up = oben
figure-back = Rückseite
figure-face-down = umgedreht
figure-scale = Maßstab { $scale }
figure-borders = { $count ->
    [one] Rand { $numbers }
   *[other] Ränder { $numbers }
}
figure-edge-strip = { $number } Randstreifen: wegwerfen
figure-radius = Radius { $number }
figure-fold-kind = { $fold ->
    [mountain] Berg
   *[valley] Tal
}
figure-centimetres = 5 cm
figure-inches = 2 Zoll
figure-cut = schneiden
figure-score-and-fold = rillen und falzen
figure-score-mountain = rillen und falzen: Berg
figure-score-valley = rillen und falzen: Tal
told-piece = { $count ->
    [one] { $name } ({ $ring })
   *[other] { own-several } ({ $ring })
}
told-layer = { told-piece }, { $size }
told-layer-from = { told-piece }, { $size }, aus { $paper }
told-face = { $what }{ $fold ->
    [none] {""}
    [left] , links gefalzt
    [right] , rechts gefalzt
    [top] , oben gefalzt
   *[bottom] , unten gefalzt
}{ $versions ->
    [yes] , Variante { $version }
   *[no] {""}
}.
told-layers = Lagen von der untersten an: { $layers }.
told-measures = Maße: { $measures }.
told-from-there = { $name } { $number } von { $there }
told-turned = { $name } um { $degrees } nach { $side ->
    [left] links
   *[right] rechts
} gedreht, Drehpunkt: { $about }
told-fanned = { $name } um { $degrees } aufgefächert, Drehpunkt: { $about }
told-move = { $by } nach { $way ->
    [left] links
    [right] rechts
    [up] oben
   *[down] unten
}
told-stepped = { $name } jeweils { $moves } vom vorigen
told-shifted = { $name } verschoben um { $moves }
told-mirrored = { $way ->
    [left-to-right] { $name } noch einmal gelegt, von links nach rechts gespiegelt
   *[top-to-bottom] { $name } noch einmal gelegt, von oben nach unten gespiegelt
}
form-right-triangle = , ein rechtwinkliges Dreieck
form-diamond = , eine Raute
form-circle = , ein Kreis
form-oval = , ein Oval
form-drawn = , mit eigenem Umriss
form-corners = , ein Umriss mit { $count } Ecken
form-rounded = { $count ->
    [one] , { $count } Ecke abgerundet
   *[other] , { $count } Ecken abgerundet
}
form-ended = { $end ->
    [fishtail] , ein Schwalbenschwanz { own-at }
   *[point] , eine Spitze { own-at }
}
form-windows = { $count ->
    [0] {""}
    [one] , mit einem Fenster
   *[other] , mit { $count } Fenstern
}
told-point = Punkt
view-inside = Die Innenseite, flach geöffnet, { $size }
view-back = Die Rückseite der gefalzten Karte, { $size }
view-envelope-front = Die Vorderseite des Umschlags, { $size }
view-envelope-flap = Die Rückseite des Umschlags mit geschlossener Klappe, { $size }
view-front = Die fertige Karte, { $size }
told-gap = Abstand { $number } bei { $name }
told-borders = { figure-borders } rundum
told-cuts = { $count ->
    [one] Schnitt { $first } bei { $measure } von { edge }
   *[other] Schnitte { $first } bis { $last } bei { $measure } von { edge }
}
told-pieces = { $back ->
    [yes] { told-piece } aus der Rückseite, { $size }
   *[no] { told-piece }, { $size }
}
told-sheet = Schnittplan für { $paper }, { $size }.
told-sheet-cuts = { CAPITAL($cuts) }.
told-sheet-pieces = Ergibt { $pieces }.
told-sheet-left = Reste: { $leftovers }.
told-glue-step = { $piece } auf { $onto }.
told-glue-step-measures = { $piece } auf { $onto }: { $measures }.
told-placing-frame = Ein Auflegerahmen von { $size } für { $layer } liegt bündig auf { $ground }, { $count ->
    [one] seine Öffnung
   *[other] seine { $count } Öffnungen
} gefüllt.
told-trim-step = { $face-down ->
    [yes] { $piece } bündig mit { $onto } gekürzt, alles umgedreht.
   *[no] { $piece } bündig mit { $onto } gekürzt.
}
told-finish-step = { $piece } aus einem Rechteck von { $blank }: { $finish }.
told-place = { $left } von links und { $top } von oben
told-cut = ein Schnitt von { $from } bis { $to }
told-follow = am Umriss entlanggeschnitten
told-round = Ecke { corner-name } abgerundet mit { $radius }
told-stamp-out = { $tool ->
    [die] mit einer Stanzform ausgestanzt, { $margin } Papier ringsum
   *[punch] mit einem Handstanzer ausgestanzt, { $margin } Papier ringsum
}
told-window = ein Fenster, { $size }, { $left } von links und { $bottom } von unten
told-score = { figure-fold-kind }falz { $number } von der { own-edge-of } Kante
told-scores-step = { $piece }, { $size }, flach, die Außenseite oben: { $scores }.
told-the-card = der Kartenvorderseite
told-the-inside = der Innenseite der Karte
told-the-back = der Rückseite der Karte
told-the-envelope = der Vorderseite des Umschlags
told-the-flap = der Klappe des Umschlags
told-past-edge = { $name } { $number } über die { own-the-edge } hinaus
told-blank-front = Die fertige Vorderseite, { $size }, in Umrissen.
told-stamp-step = { $piece }, die Stelle zum Stempeln gestrichelt.
told-score-step = { $piece }, { $size }, mit der Rille { $measure } von { edge }.
told-swatch = Das Zeichen von { $paper }.
told-blank-card = Umrisse der Karte, { $size }, zum Ausmalen.
told-blank-sheet = Umriss eines Bogens für { $paper }, { $size }.
told-mark = { $number } ist die Marke zwischen { $below } und { $above }
told-rulers = Ein Stück Lineal in wahrer Größe: { $marks }.
told-print-bars = Zwei Balken, um den Ausdruck mit dem Lineal zu prüfen: 5 cm und 2 Zoll lang.
told-legend = { $folds ->
    [both] Eine durchgezogene Linie ist ein Schnitt. Eine Strichpunktlinie ist eine Rille mit Bergfalz, eine
        gestrichelte Linie eine Rille mit Talfalz.
   *[one] Eine durchgezogene Linie ist ein Schnitt. Eine Strichpunktlinie ist eine Rille mit Falz.
}

## One leaf, the try-out page, the designer's copy

leaf-title = { $title }, ein Blatt
try-out-title = { $title }, Probeseite
copy-title = { $title }, Exemplar für den Entwurf
in-short = Schneiden und kleben
in-short-lead = In der Reihenfolge der Fähnchen schneiden, beim Maß dahinter. Maße in { units }, von der linken oder der
    vorderen Kante des Bogens, wie er liegt.
where-things-go = Wohin jede Lage kommt, und welche Ränder bleiben
then-you-have = Ergebnis: { $pieces }.
try-out = Im Kleinen probieren
try-out-lead = Alle Stücke einer Karte in halber Größe. Auf Normalpapier drucken, die kleine Karte bauen und erst dann
    das gute Papier schneiden.
try-out-cut = An den breiten Linien schneiden.
try-out-fold = Falzen, wo Striche und Punkte verlaufen.
try-out-sizes = Die Zahlen auf den Stücken sind die Maße der wirklichen Karte; hier misst alles halb so viel.
try-out-caution = Scheren und Klingen schneiden auch in Finger: vom Körper weg schneiden und von kleinen Kindern
    fernhalten.
as-it-will-be = Die fertige Karte, auch in halber Größe
as-it-will-be-version = Die fertige Karte in { $version }, auch in halber Größe
try-piece = { counted }~{ $ring }
try-piece-from = { counted }~{ $ring } aus { $paper }
try-piece-told = { CAPITAL($name) } in halber Größe, zum Ausschneiden; in Wirklichkeit { $size }{ $folds ->
    [0] {""}
    [one] , mit { $folds } Falz
   *[other] , mit { $folds } Falzen
}.
rings-paper = { $rings } { $paper }
for-the-designer = Nur für den Entwurf
designers-lead = Was gefunden wurde, was erlaubt ist, und worauf der Schnittplan beruht. Für alle anderen gibt es
    dieselben Seiten ohne diese.
found-title = Was gefunden wurde
allowed-title = Was erlaubt ist
read-back-title = Der Entwurf, wie er gedruckt wird
proof-title = Was der Plan erreicht
nothing-found = Nichts, was nicht erlaubt wäre.
proof-note = Ziele in ihrer Reihenfolge: ein späteres kostet nie ein früheres. Jeder Schnitt wurde auf einem leeren Bogen
    nachvollzogen und ergab die zugesagten Stücke.
proof-head-aim = Ziel
proof-head-reached = Erreicht
proof-head-bound = Kein Plan erreicht mehr als
proof-head-proof = Beweis
aim-cards = Karten
aim-sheets = Bögen
aim-diagrams = Verschiedene Schnittpläne
aim-cuts = Schnitte auf allen Bögen
aim-changes = Wechsel des Maßes
aim-leftover = Größter Rest
proven = { $proven ->
    [yes] bewiesen
   *[no] bester gefundener
}
area = { $units ->
    [inch] { $area } Quadratzoll
   *[metric] { $area } cm²
}

## Sheets at hand, and other sheets

sheets-of-size = { $count } von { $size }
instead = { CAPITAL($paper) }: { $new } statt { $old }.
keeps-its-strip = Bei jedem wird der Randstreifen von { $width } { $edge ->
    [left] links
    [right] rechts
    [top] oben
   *[bottom] unten
} angenommen; wenn nicht, `without edge strip` hinter die Bögen schreiben.
own-versions = { $shares ->
    [yes] : { $versions }
   *[no] {""}
}
most-proven = Die vorhandenen Bögen ergeben höchstens { cards }{ own-versions }. Verlangt sind { $asked }.
most-at-least = Die vorhandenen Bögen ergeben mindestens { cards }; mehr werden nicht gezählt{ own-versions }. Verlangt
    sind { $asked }.
most-so-far = Die vorhandenen Bögen ergeben { cards }, soweit gefunden, und kein Plan mehr als { $bound }{ own-versions }.
    Verlangt sind { $asked }.
runs-out = { $count ->
    [one] { $papers } geht aus: reicht für keine weitere{ own-so-far }.
   *[other] { $papers } gehen aus: reichen für keine weitere{ own-so-far }.
}
own-so-far = { $proven ->
    [yes] {""}
   *[no] , soweit gefunden
}
cut-from = { CAPITAL($paper) }, wenn { $sheets } vorhanden sind
other-gives = Diese Bögen ergeben { cards }, nicht { $asked }.
other-sheets = Aus anderen Bögen
other-sheets-lead = Nur für Papiere, die in anderen Bögen vorhanden sind. Jede Tafel wird statt der früheren Tafel dieses
    Papiers zugeschnitten; alle anderen Papiere bleiben, wie sie sind.

## Lose Teile

all-others = { $count ->
    [one] alle übrigen:
   *[other] alle übrigen, nach Größe:
}
loose-part = { $count ->
    [one] { $size }
   *[other] { $count } × { $size }
}
told-loose = { $several ->
    [yes] Ein loses Teil, { $part }: Schnitte { $cuts }, jeder { $measure } von der { own-edge-of } Kante.
   *[no] Ein loses Teil, { $part }: Schnitt { $cuts }, { $measure } von der { own-edge-of } Kante.
}
own-edge-of = { $edge ->
    [left] linken
    [right] rechten
    [top] oberen
   *[bottom] unteren
}

## Hilfen in wahrer Größe

guides-heading = { $title }: Hilfen in wahrer Größe
guides-frames = Jeden Rahmen mit seinen Öffnungen ausschneiden. Mit dem Druck und „oben“ nach oben an allen Kanten bündig auf das
    legen, wofür er bestimmt ist; die Stücke kommen in die Öffnungen.
guides-halves = Ein halber Rahmen liegt bündig in einer Ecke; das Stück in seine innere Ecke schieben.
guides-parts = Teile Kante an Kante mit Klebeband verbinden, Striche mit gleicher Nummer aufeinander.
guides-templates = Eine Schablone so auf das Papier legen, wie das Stück zu sehen sein wird, und umfahren, auch Fenster.
guides-mirrored = Was „gespiegelt“ heißt, liegt mit dem Druck nach oben auf der Rückseite des Papiers.
guides-scores = Einen Rillstreifen an die flache Karte legen, das genannte Ende bündig mit dieser Kante, und die Rillen anzeichnen.
guides-greetings = Gestrichelte Linien zeigen, wo auf dem Stück Platz für Worte ist.
guide-frame = Auflegerahmen: { $layers } auf { $ground }
guide-half = Halber Auflegerahmen: { $layers } auf { $ground }
guide-template = Schablone: { $piece }
guide-mirrored = { $title }, gespiegelt
guide-scores = Rillstellen: { $piece }
guide-greeting = Grußfeld: { $piece }
guide-part = { $title }, Teil { $part } von { $parts }
guide-top = oben
guide-print-up = diese Seite oben
guide-edge-at = { $edge ->
    [left] linke Kante
    [right] rechte Kante
    [top] obere Kante
   *[bottom] untere Kante
}
guide-size = { $size }
guide-corner = für die Ecke { $corner }
guide-allowance = mit { $by } für die Dicke des Papiers
guide-alt-frame = { $title }. Außen { $size }. { $count ->
    [one] Die Öffnung misst { $openings }.
   *[other] Die { $count } Öffnungen messen { $openings }.
}
guide-alt-opening = { $size }, { $left } von links und { $bottom } von unten
guide-alt = { $title }, { $size }.
guide-alt-scores = { $title }, { $size }: { $measures } von der { guide-edge-of } Kante.
guide-edge-of = { $edge ->
    [left] linken
    [right] rechten
    [top] oberen
   *[bottom] unteren
}
guide-alt-greeting = { $title }, { $size }; die Worte haben { $area }.

## Um die Hilfen in wahrer Größe

true-size-title = { $title }, Hilfen in wahrer Größe
cut-file-title = { $title }, Schneidedatei
true-size-print = Mit 100~% („Tatsächliche Größe“) drucken und vor dem Schneiden die Balken nachmessen.
true-size-caution = Klingen schneiden auch in Finger: auf einer Matte, am Metalllineal und vom Körper weg schneiden, Finger
    fern der Schnittlinie. Klinge stets schließen, von Kindern fernhalten. Maschinen: nach Anleitung des Herstellers.
true-size-line = { $role ->
    [cut] schneiden
    [score] rillen
    [fold] falten
    [draw] zeichnen
   *[notes] nur zum Lesen
}
told-true-size-line = { $role ->
    [cut] Eine breite durchgezogene Linie wird geschnitten.
    [score] Eine Linie aus Strichen und Punkten wird gerillt.
    [fold] Eine Linie aus langen Strichen wird gefaltet.
    [draw] Eine Linie aus kurzen Strichen wird gezeichnet.
   *[notes] Eine schmale durchgezogene Linie ist nur zum Lesen da.
}
told-true-size-bars = Zum Prüfen des Ausdrucks mit einem Lineal: Balken von { $bars }.
