//! The referee: takes a design and a plan, replays the printed rows on blank sheets and says what
//! is wrong. It shares no code with the search or the order: sheets, strips, demand, rules and
//! totals are worked out here once more, from the design alone.

mod rectangles;
mod slack;

use std::collections::{BTreeMap, BTreeSet};

use super::plan::{CutPlan, CutRow, PartId, SheetPlan, Use};
use crate::design::model::{Design, From, PaperId, Pattern, Piece, PieceId, PieceKind, Side, VersionId};
use crate::geometry::{Edge, Rect};
use crate::length::{Length, Units};
use crate::shape::Making;

/// Something wrong with a plan. No plan of the program has one; a plan with one is not printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// What is wrong, lower case, no full stop.
    pub message: String,
}

/// Replays a plan; an empty list means that it is sound.
#[must_use]
pub fn verify(design: &Design, plan: &CutPlan) -> Vec<Fault> {
    let mut referee = Referee { design, plan, faults: Vec::new() };
    if plan.units != design.units {
        referee.fault("the plan is in other units than the design".to_owned());
    }
    let mut used = BTreeSet::new();
    for sheet in &plan.sheets {
        referee.sheet(sheet, &mut used);
    }
    referee.diagrams();
    referee.pads();
    referee.counts();
    referee.totals();
    referee.faults
}

struct Referee<'a> {
    design: &'a Design,
    plan: &'a CutPlan,
    faults: Vec<Fault>,
}

/// One sheet while it is cut.
struct Replay<'s> {
    name: String,
    sheet: &'s SheetPlan,
    /// Where the loose parts lie.
    loose: BTreeMap<PartId, Rect>,
    made: BTreeSet<PartId>,
    next: u32,
}

/// Width and height of what the trimmer cuts for a piece: a die or punch needs paper all round.
const fn trimmed(piece: &Piece) -> (i64, i64) {
    let margin = match piece.shape.making {
        Making::ByHand => 0,
        Making::Die { margin } | Making::Punch { margin } => margin,
    };
    (piece.size.width.nm() + 2 * margin, piece.size.height.nm() + 2 * margin)
}

impl Referee<'_> {
    fn fault(&mut self, message: String) {
        self.faults.push(Fault { message });
    }

    /// Narrow, hold and least measure in nanometres.
    fn rules(&self) -> (i64, i64, i64) {
        match self.design.units {
            Units::Inch => (Length::inch(1, 2).nm(), Length::inch(1, 1).nm(), Length::inch(1, 8).nm()),
            Units::Metric => (Length::mm(12).nm(), Length::mm(25).nm(), Length::mm(3).nm()),
        }
    }

    fn sheet(&mut self, sheet: &SheetPlan, used: &mut BTreeSet<(usize, u32)>) {
        let Some(paper) = self.design.papers.get(sheet.paper.0) else {
            return self.fault(format!("there is no paper number {}", sheet.paper.0));
        };
        let name = format!("a sheet of `{}`", paper.name);
        let Some(kind) = paper.sheets.get(sheet.kind) else {
            return self.fault(format!("{name} is of no kind that is at hand"));
        };
        if sheet.kept != paper.kept_from.is_some() {
            self.fault(format!("{name} is wrongly taken for a sheet or for a leftover"));
        }
        let before: u32 = paper.sheets[..sheet.kind].iter().map(|kind| kind.count).sum();
        if sheet.numbers.is_empty() {
            self.fault(format!("{name} is cut no times"));
        }
        for &number in &sheet.numbers {
            if number <= before || number > before + kind.count {
                self.fault(format!("{name} has number {number}, which is not at hand"));
            }
            if !used.insert((sheet.paper.0, number)) {
                self.fault(format!("{name}, number {number}, is used twice"));
            }
        }
        let (mut width, mut height) = (kind.size.width.nm(), kind.size.height.nm());
        let strip = paper.edge_strip.map(|strip| (strip.edge, strip.width.nm(), strip.beside));
        match strip {
            Some((Edge::Left | Edge::Right, strip, true)) => width += strip,
            Some((Edge::Top | Edge::Bottom, strip, true)) => height += strip,
            _ => {}
        }
        let blank = Rect::at(0, 0, width, height);
        if (sheet.width.nm(), sheet.height.nm()) != (width, height) {
            self.fault(format!("{name} has another size than the paper at hand"));
        }
        let whole = match sheet.parts.first() {
            Some(part) if part.parent.is_none() && part.rect == blank => part,
            _ => return self.fault(format!("part 0 of {name} is not the whole sheet")),
        };
        if sheet.cuts.is_empty() && whole.r#use == Use::Divided {
            self.fault(format!("{name} is divided by no cut"));
        }
        let mut replay = Replay {
            name,
            sheet,
            loose: BTreeMap::from([(PartId(0), blank)]),
            made: BTreeSet::from([PartId(0)]),
            next: 1,
        };
        for row in &sheet.cuts {
            self.row(&mut replay, row);
        }
        self.strip(&replay, blank, strip.map(|(edge, width, _)| (edge, width)));
        self.fixed(&replay, blank, strip.map(|(edge, width, _)| (edge, width)));
        self.ends(&replay);
        let (narrow, hold, _) = self.rules();
        // Rows that are wrong as they stand say nothing of other sheets.
        if self.faults.is_empty()
            && let Some(wrong) = slack::fault(sheet, narrow, hold)
        {
            self.fault(format!("what {} gives {wrong}", replay.name));
        }
    }

    fn row(&mut self, replay: &mut Replay<'_>, row: &CutRow) {
        let name = replay.name.clone();
        let n = row.n;
        if n != replay.next {
            self.fault(format!("row {n} of {name} should begin with cut {}", replay.next));
        }
        replay.next = n.saturating_add(row.cuts);
        let measure = row.measure.nm();
        let (_, _, least) = self.rules();
        if measure < least {
            self.fault(format!("row {n} of {name} has a measure of {}, too small to set", row.measure));
        }
        if row.parts.is_empty() {
            self.fault(format!("row {n} of {name} cuts nothing"));
        }
        let mut gives = row.gives.as_slice();
        let mut cuts = 0;
        for &part in &row.parts {
            let own =
                gives.iter().take_while(|id| replay.sheet.parts.get(id.0).is_some_and(|p| p.parent == Some(part)));
            let own = own.count();
            let (children, others) = gives.split_at(own);
            gives = others;
            let Some(rect) = replay.loose.remove(&part) else {
                self.fault(format!("row {n} of {name} cuts part {}, which is not loose", part.0));
                continue;
            };
            if replay.sheet.parts[part.0].r#use != Use::Divided {
                self.fault(format!("row {n} of {name} cuts part {}, which is finished", part.0));
            }
            if children.len() < 2 {
                self.fault(format!("row {n} of {name} does not divide part {}", part.0));
                continue;
            }
            cuts += children.len() - 1;
            self.divide(replay, row, rect, children);
        }
        if let Some(stray) = gives.first() {
            self.fault(format!("row {n} of {name} gives part {}, which none of its parts holds", stray.0));
        }
        if cuts != row.cuts as usize {
            self.fault(format!("row {n} of {name} says {} cuts and makes {cuts}", row.cuts));
        }
    }

    /// Cuts one part, slice after slice from the row's edge.
    fn divide(&mut self, replay: &mut Replay<'_>, row: &CutRow, rect: Rect, children: &[PartId]) {
        let (name, n, measure) = (replay.name.clone(), row.n, row.measure.nm());
        let (narrow, hold, _) = self.rules();
        let mut rest = rect;
        for (place, &child) in children.iter().enumerate() {
            let last = place + 1 == children.len();
            let mut slice = rest;
            if !last {
                match row.from {
                    Edge::Left => {
                        slice.right = slice.left + measure;
                        rest.left = slice.right;
                    }
                    Edge::Right => {
                        slice.left = slice.right - measure;
                        rest.right = slice.left;
                    }
                    Edge::Top => {
                        slice.bottom = slice.top - measure;
                        rest.top = slice.bottom;
                    }
                    Edge::Bottom => {
                        slice.top = slice.bottom + measure;
                        rest.bottom = slice.top;
                    }
                }
                let other = if row.from.is_side() { rest.width() } else { rest.height() };
                if other <= 0 {
                    return self.fault(format!("row {n} of {name} measures past the end of part {}", child.0));
                }
                if measure.min(other) < narrow && measure.max(other) < hold {
                    self.fault(format!("row {n} of {name} frees a slice that nothing holds, part {}", child.0));
                }
            }
            if replay.sheet.parts[child.0].rect != slice {
                self.fault(format!("row {n} of {name} gives part {} elsewhere than the plan says", child.0));
            }
            if !replay.made.insert(child) {
                self.fault(format!("row {n} of {name} gives part {} again", child.0));
            }
            replay.loose.insert(child, slice);
        }
    }

    /// The edge strip comes off with the first cut, and nothing else is called one.
    fn strip(&mut self, replay: &Replay<'_>, blank: Rect, strip: Option<(Edge, i64)>) {
        let called: Vec<usize> =
            (0..replay.sheet.parts.len()).filter(|&id| replay.sheet.parts[id].r#use == Use::EdgeStrip).collect();
        let Some((edge, width)) = strip else {
            if !called.is_empty() {
                self.fault(format!("{} has an edge strip that its paper has not", replay.name));
            }
            return;
        };
        let mut wanted = blank;
        match edge {
            Edge::Left => wanted.right = wanted.left + width,
            Edge::Right => wanted.left = wanted.right - width,
            Edge::Top => wanted.bottom = wanted.top - width,
            Edge::Bottom => wanted.top = wanted.bottom + width,
        }
        let first = replay.sheet.cuts.first();
        let off = matches!(called.as_slice(), [id] if replay.sheet.parts[*id].rect == wanted
            && first.is_some_and(|row| row.parts == [PartId(0)] && row.cuts == 1 && row.gives.contains(&PartId(*id))));
        if !off {
            self.fault(format!("the edge strip of {} does not come off first", replay.name));
        }
    }

    /// What the designer fixed comes first, and pieces that belong along an edge lie there.
    fn fixed(&mut self, replay: &Replay<'_>, blank: Rect, strip: Option<(Edge, i64)>) {
        let paper = &self.design.papers[replay.sheet.paper.0];
        let mut usable = blank;
        if let Some((edge, width)) = strip {
            cut_off(&mut usable, edge, width);
        }
        let mut faults = Vec::new();
        for along in &paper.fixed.edges {
            for part in &replay.sheet.parts {
                let there = match along.edge {
                    Edge::Left => part.rect.left == usable.left,
                    Edge::Right => part.rect.right == usable.right,
                    Edge::Top => part.rect.top == usable.top,
                    Edge::Bottom => part.rect.bottom == usable.bottom,
                };
                if matches!(part.r#use, Use::Piece { piece, .. } if piece == along.piece) && !there {
                    let name = &self.design.pieces[along.piece.0].name;
                    faults.push(format!("`{name}` is not cut along the edge of {}", replay.name));
                }
            }
        }
        // Printed cells are cut apart where they are printed.
        if let Some(cells) = &paper.cells {
            let (width, height) = (cells.size.width.nm(), cells.size.height.nm());
            for part in &replay.sheet.parts {
                let Use::Piece { piece, .. } = part.r#use else { continue };
                let is_cell = self.design.pieces.get(piece.0).is_some_and(|piece| piece.name == cells.called);
                let (across, down) =
                    (part.rect.left - usable.left - cells.left.nm(), usable.top - cells.top.nm() - part.rect.top);
                let printed = across >= 0
                    && down >= 0
                    && across % width == 0
                    && down % height == 0
                    && across / width < i64::from(cells.columns)
                    && down / height < i64::from(cells.rows);
                if is_cell && !printed {
                    faults.push(format!("a cell of {} is not cut where it is printed", replay.name));
                }
            }
        }
        let mut rows = replay.sheet.cuts.iter().skip(usize::from(strip.is_some()));
        let mut edges: Vec<Edge> = Vec::new();
        for along in &paper.fixed.edges {
            let (width, height) = trimmed(&self.design.pieces[along.piece.0]);
            let depth = if along.edge.is_side() { width } else { height };
            if !edges.contains(&along.edge) {
                edges.push(along.edge);
                self.next_row(&mut rows, &mut usable, (along.edge, depth, 1), &mut faults);
            }
        }
        for row in &paper.fixed.rows {
            self.next_row(&mut rows, &mut usable, (row.from, row.measure.nm(), row.times), &mut faults);
        }
        faults.into_iter().for_each(|message| self.fault(message));
    }

    /// The next row is as it is fixed; a last cut that would leave nothing is not made.
    fn next_row<'r>(
        &self,
        rows: &mut impl Iterator<Item = &'r CutRow>,
        left: &mut Rect,
        (edge, measure, times): (Edge, i64, u32),
        faults: &mut Vec<String>,
    ) {
        let extent = if edge.is_side() { left.width() } else { left.height() };
        let times = if measure * i64::from(times) == extent { times - 1 } else { times };
        if times == 0 {
            return;
        }
        let fine = rows.next().is_some_and(|row| row.from == edge && row.measure.nm() == measure && row.cuts == times);
        if !fine {
            let length = Length::of(measure, self.design.units);
            faults.push(format!("the row of {length} from the {} is fixed and does not come in its turn", edge.word()));
        }
        cut_off(left, edge, measure * i64::from(times));
    }

    /// Different sheets of a pad are all cut by one diagram.
    fn pads(&mut self) {
        for paper in self.design.paper_ids().filter(|paper| self.design.papers[paper.0].different.is_some()) {
            let own = self.plan.sheets.iter().filter(|sheet| sheet.paper == paper);
            if own.map(|sheet| sheet.diagram).collect::<BTreeSet<_>>().len() > 1 {
                let name = &self.design.papers[paper.0].name;
                self.fault(format!("the sheets of `{name}` differ and are not cut alike"));
            }
        }
    }

    /// Every part has come about, is loose, and is what it is called.
    fn ends(&mut self, replay: &Replay<'_>) {
        let name = &replay.name;
        for (id, part) in replay.sheet.parts.iter().enumerate() {
            let id = PartId(id);
            if !replay.made.contains(&id) {
                self.fault(format!("part {} of {name} is given by no row", id.0));
                continue;
            }
            let loose = replay.loose.contains_key(&id);
            if loose == (part.r#use == Use::Divided) {
                self.fault(format!("part {} of {name} is not what the rows make it", id.0));
            }
            if let Use::Piece { piece, version, quarter_turns } = part.r#use {
                self.piece(replay, id, part.rect, (piece, version, quarter_turns));
            }
        }
    }

    fn piece(
        &mut self,
        replay: &Replay<'_>,
        id: PartId,
        rect: Rect,
        (piece, version, turns): (PieceId, Option<VersionId>, u8),
    ) {
        let here = format!("part {} of {}", id.0, replay.name);
        let Some(wanted) = self.design.pieces.get(piece.0) else {
            return self.fault(format!("{here} is no piece of the design"));
        };
        let (mut width, mut height) = trimmed(wanted);
        if turns % 2 == 1 {
            std::mem::swap(&mut width, &mut height);
        }
        if (rect.width(), rect.height()) != (width, height) {
            self.fault(format!("{here} has not the size of `{}`", wanted.name));
        }
        let paper = &self.design.papers[replay.sheet.paper.0];
        let side = self.side(piece, version);
        let pattern = match (side, paper.back) {
            (Side::Back, Some(back)) => back.pattern,
            _ => paper.pattern,
        };
        let kept = matches!(wanted.kind, PieceKind::Kept { .. });
        let both = paper.back.filter(|_| kept).is_none_or(|back| back.pattern == Pattern::Any);
        let may = match (pattern, wanted.upright) {
            (Pattern::Any, _) if !both => turns % 2 == 0,
            (Pattern::OneWay, _) | (Pattern::Any, Some(true)) => turns == 0,
            (Pattern::TwoWay, _) => turns == 0 || turns == 2,
            (Pattern::Any, _) => turns < 4,
        };
        if !may {
            self.fault(format!("{here} lies so that the pattern of `{}` is not upright", paper.name));
        }
        let from =
            match (wanted.from, version) {
                (From::Paper(paper), None) => Some(paper),
                (From::Varies, Some(version)) => self.design.versions.get(version.0).and_then(|version| {
                    version.papers.iter().find(|(other, _)| *other == piece).map(|(_, paper)| *paper)
                }),
                // Triangles share rectangles whatever their version.
                (From::Varies, None) if rectangles::right_angle(self.design, piece).is_some() => {
                    let all = self.design.versions.iter().flat_map(|version| &version.papers);
                    all.filter(|(other, _)| *other == piece)
                        .map(|(_, paper)| *paper)
                        .find(|paper| *paper == replay.sheet.paper)
                }
                _ => None,
            };
        if from != Some(replay.sheet.paper) {
            self.fault(format!("{here} is cut from another paper than `{}` asks for", wanted.name));
        }
    }

    /// Which side of its paper a piece shows.
    fn side(&self, piece: PieceId, version: Option<VersionId>) -> Side {
        let stated = version.and_then(|version| self.design.versions.get(version.0)).and_then(|version| version.side);
        stated.unwrap_or(self.design.pieces[piece.0].side)
    }

    /// Sheets of one diagram are the same drawing.
    fn diagrams(&mut self) {
        let count = self.plan.sheets.iter().map(|sheet| sheet.diagram).collect::<BTreeSet<_>>();
        if count.iter().enumerate().any(|(place, diagram)| place != *diagram) {
            self.fault("the diagrams are not numbered from nothing up".to_owned());
        }
        let mut faults = Vec::new();
        for (place, sheet) in self.plan.sheets.iter().enumerate() {
            for other in &self.plan.sheets[..place] {
                if other.diagram == sheet.diagram && !self.same_drawing(sheet, other) {
                    faults.push(format!("diagram {} stands for two ways of cutting", sheet.diagram));
                }
            }
        }
        faults.into_iter().for_each(|message| self.fault(message));
    }

    /// What comes off the sheets is what the cards need.
    fn counts(&mut self) {
        let mut cut: BTreeMap<(PaperId, PieceId, Option<VersionId>), u64> = BTreeMap::new();
        for sheet in &self.plan.sheets {
            for part in &sheet.parts {
                if let Use::Piece { piece, version, .. } = part.r#use {
                    *cut.entry((sheet.paper, piece, version)).or_default() += sheet.numbers.len() as u64;
                }
            }
        }
        let mut missing: BTreeMap<(PaperId, PieceId), u64> = BTreeMap::new();
        for short in &self.plan.missing {
            *missing.entry((short.paper, short.piece)).or_default() += u64::from(short.count);
        }
        let mut wanted: BTreeMap<(PaperId, PieceId), Shares> = BTreeMap::new();
        for piece in self.design.piece_ids() {
            let each = u64::from(self.design.per_card(piece));
            if let (PieceKind::Kept { count, .. }, From::Paper(paper)) =
                (self.design.pieces[piece.0].kind, self.design.pieces[piece.0].from)
            {
                wanted.insert((paper, piece), vec![(None, u64::from(count))]);
                continue;
            }
            for version in self.design.version_ids() {
                let cards = u64::from(self.design.versions[version.0].cards);
                let (paper, version) = match self.design.pieces[piece.0].from {
                    From::Paper(paper) => (Some(paper), None),
                    From::Varies => (self.design.paper_of(piece, version), Some(version)),
                    From::Window(..) | From::Bought => continue,
                };
                let Some(paper) = paper else { continue };
                let entry = wanted.entry((paper, piece)).or_default();
                match entry.iter_mut().find(|(other, _)| *other == version) {
                    Some((_, count)) => *count += cards * each,
                    None => entry.push((version, cards * each)),
                }
            }
        }
        let pairs = rectangles::in_rectangles(self.design, &mut wanted, |paper, piece, shares| {
            let two_sided = self.design.papers[paper.0].back.is_some();
            let stated = self.design.pieces[piece.0].side;
            let alike = shares.iter().all(|(version, _)| self.side(piece, *version) == stated);
            (alike || !two_sided).then_some(if two_sided { stated } else { Side::Front })
        });
        for (&(paper, piece), versions) in &wanted {
            let short = missing.remove(&(paper, piece)).unwrap_or(0);
            let sheets: usize = self.plan.sheets.iter().filter(|s| s.paper == paper).map(|s| s.numbers.len()).sum();
            let name = self.design.pieces[piece.0].name.clone();
            let mut given = 0;
            for side in [Side::Front, Side::Back] {
                let mut spare = 0;
                for &(version, count) in versions {
                    if self.side(piece, version) != side {
                        continue;
                    }
                    let got = cut.remove(&(paper, piece, version)).unwrap_or(0);
                    given += got.min(count);
                    spare += got.saturating_sub(count);
                    if short == 0 && got < count {
                        self.fault(format!("{got} of `{name}` are cut where {count} are wanted"));
                    }
                }
                // Pieces to spare make sheets alike: fewer of them than sheets.
                if spare > 0 && (short > 0 || spare >= sheets as u64) {
                    self.fault(format!("{spare} of `{name}` are cut to spare, from {sheets} sheets"));
                }
            }
            if given + short != versions.iter().map(|(_, count)| count).sum::<u64>() {
                self.fault(format!(
                    "{given} of `{name}` are cut and {short} said to be missing, which is not what is wanted"
                ));
            }
        }
        for (_, piece, _) in cut.keys() {
            let name = self.design.pieces.get(piece.0).map_or("?", |piece| piece.name.as_str()).to_owned();
            self.faults.push(Fault { message: format!("`{name}` is cut and not wanted so") });
        }
        if !missing.is_empty() {
            self.fault("something is said to be missing that is not wanted".to_owned());
        }
        self.cards(&pairs);
    }

    /// The cards that the pieces make.
    fn cards(&mut self, pairs: &rectangles::Pairs) {
        let mut have: BTreeMap<(PieceId, Option<VersionId>), u64> = BTreeMap::new();
        for sheet in &self.plan.sheets {
            for part in &sheet.parts {
                if let Use::Piece { piece, version, .. } = part.r#use {
                    *have.entry((piece, version)).or_default() += sheet.numbers.len() as u64;
                }
            }
        }
        let mut shared = u64::MAX;
        let mut each = vec![u64::MAX; self.design.versions.len()];
        for piece in self.design.piece_ids() {
            let per = u64::from(self.design.per_card(piece));
            if per == 0 {
                continue;
            }
            let own = pairs.iter().find(|((_, first), other)| *first == piece || **other == Some(piece));
            if let Some((&(_, first), other)) = own {
                // What the rectangles give is counted above; of those that vary, each version's share is.
                if let From::Paper(_) = self.design.pieces[piece.0].from {
                    let got = have.get(&(first, None)).copied().unwrap_or(0);
                    let both = other.map_or(0, |other| u64::from(self.design.per_card(other)));
                    let each = u64::from(self.design.per_card(first)) + both;
                    shared = shared.min(2 * got / each.max(1));
                }
                continue;
            }
            match self.design.pieces[piece.0].from {
                From::Window(..) | From::Bought => {}
                From::Paper(_) => shared = shared.min(have.get(&(piece, None)).copied().unwrap_or(0) / per),
                From::Varies => {
                    for version in self.design.version_ids() {
                        let got = have.get(&(piece, Some(version))).copied().unwrap_or(0) / per;
                        each[version.0] = each[version.0].min(got);
                    }
                }
            }
        }
        let by_version: u64 =
            each.iter().zip(&self.design.versions).map(|(&got, version)| got.min(u64::from(version.cards))).sum();
        let makes = shared.min(by_version);
        if u64::from(self.plan.cards) > makes {
            self.fault(format!("the plan says {} cards and its pieces make {makes}", self.plan.cards));
        }
        if self.plan.missing.is_empty() && self.plan.cards != self.design.cards.value {
            self.fault(format!("{} cards are planned of {}", self.plan.cards, self.design.cards.value));
        }
    }

    /// The totals are those of the aims.
    fn totals(&mut self) {
        let bought = self.plan.sheets.iter().filter(|sheet| !sheet.kept);
        let sheets: u64 = bought.map(|sheet| sheet.numbers.len() as u64).sum();
        let mut cuts = 0;
        let mut drawn = BTreeSet::new();
        let mut changes = 0;
        let mut largest = 0;
        let (_, hold, _) = self.rules();
        for sheet in &self.plan.sheets {
            let own: u64 = sheet.cuts.iter().map(|row| u64::from(row.cuts)).sum();
            cuts += own * sheet.numbers.len() as u64;
            if drawn.insert(sheet.diagram) {
                let measures: Vec<i64> = sheet.cuts.iter().map(|row| row.measure.nm()).collect();
                let first = u64::from(!measures.is_empty());
                changes += first + measures.windows(2).filter(|pair| pair[0] != pair[1]).count() as u64;
            }
            for part in sheet.parts.iter().filter(|part| part.r#use == Use::Leftover) {
                if part.rect.width() >= hold && part.rect.height() >= hold {
                    largest = largest.max(part.rect.area() / 1_000_000);
                }
            }
        }
        let aims = self.plan.aims;
        let totals = [
            ("cards", aims.cards, u64::from(self.plan.cards), false),
            ("sheets", aims.sheets, sheets, true),
            ("diagrams", aims.diagrams, drawn.len() as u64, true),
            ("cuts", aims.cuts, cuts, true),
            ("changes of measure", aims.changes, changes, true),
            ("square micrometres left", aims.leftover, u64::try_from(largest).unwrap_or(u64::MAX), false),
        ];
        for (what, aim, counted, less) in totals {
            if aim.found != counted {
                self.fault(format!("the plan says {} {what} and the rows make {counted}", aim.found));
            }
            let past = if less { aim.found < aim.bound } else { aim.found > aim.bound };
            if past || (aim.proven && aim.found != aim.bound) {
                self.fault(format!("the bound of {what} is not one"));
            }
        }
    }
}

/// How many of a piece are for which version.
type Shares = Vec<(Option<VersionId>, u64)>;

/// A part as a drawing shows it: parent, place, piece with side and turn, cut further, edge strip.
type Drawn = (Option<PartId>, Rect, Option<(PieceId, Side, u8)>, bool, bool);

impl Referee<'_> {
    /// Whether two sheets can share a drawing: all but versions, paper and numbers is the same.
    fn same_drawing(&self, one: &SheetPlan, other: &SheetPlan) -> bool {
        let shape = |sheet: &SheetPlan| -> Vec<Drawn> {
            sheet
                .parts
                .iter()
                .map(|part| {
                    let piece = match part.r#use {
                        Use::Piece { piece, quarter_turns, version } => {
                            Some((piece, self.side(piece, version), quarter_turns))
                        }
                        _ => None,
                    };
                    (part.parent, part.rect, piece, part.r#use == Use::Divided, part.r#use == Use::EdgeStrip)
                })
                .collect()
        };
        one.width == other.width && one.height == other.height && one.cuts == other.cuts && shape(one) == shape(other)
    }
}

/// Takes so much off a rectangle along an edge.
const fn cut_off(rect: &mut Rect, edge: Edge, much: i64) {
    match edge {
        Edge::Left => rect.left += much,
        Edge::Right => rect.right -= much,
        Edge::Top => rect.top -= much,
        Edge::Bottom => rect.bottom += much,
    }
}
