//! Whole plans of seeded random small designs against a brute force over all edge-to-edge patterns
//! that keep the rules of the hand: cards, sheets, different diagrams and cuts.

mod brute;
mod case;

use crate::support::run;
use case::Case;
use trimwright::cutting::plan::{Aim, CutPlan};
use trimwright::cutting::verify::verify;

/// Cases in all. Every tenth is always run, all of them where they are asked for.
const CASES: u64 = 2_000;

/// What some cases showed.
#[derive(Debug, Default)]
struct Seen {
    whole: u32,
    short: u32,
    /// Whole on more than one sheet of a paper.
    several: u32,
    /// With a diagram for more than one paper.
    shared: u32,
    /// With a spare piece.
    spare: u32,
    /// With sheets, diagrams and cuts proven.
    proven: u32,
    differ: Vec<String>,
}

impl Seen {
    fn look(&mut self, seed: u64) {
        let case = Case::new(seed);
        let text = case.text();
        let outcome = run(&text);
        let project = outcome.editions.first().unwrap_or_else(|| panic!("case {seed}\n{text}\n{:?}", outcome.findings));
        let plan = &project.plan;
        let mut faults: Vec<String> =
            verify(&project.design, plan).into_iter().map(|fault| format!("the referee: {}", fault.message)).collect();
        let papers = case.papers();
        let aims = plan.aims;
        match brute::best(&case.kinds(), case.rules(), &papers) {
            Some(best) => {
                self.whole += 1;
                self.several += u32::from(best.sheets > papers.len() as u64);
                self.shared += u32::from(is_shared(plan));
                let wanted: usize = papers.iter().flat_map(|paper| &paper.wanted).sum();
                self.spare += u32::from(pieces(plan) > wanted as u64);
                self.proven += u32::from(aims.sheets.proven && aims.diagrams.proven && aims.cuts.proven);
                faults.extend(differs("cards", aims.cards, case.cards.iter().sum::<usize>() as u64, false));
                faults.extend(differs("sheets", aims.sheets, best.sheets, true));
                faults.extend(differs("diagrams", aims.diagrams, best.diagrams, true));
                // The fewest cuts are so given the aims before them.
                if (aims.sheets.found, aims.diagrams.found) == (best.sheets, best.diagrams) {
                    faults.extend(differs("cuts", aims.cuts, best.cuts, true));
                }
            }
            None => {
                self.short += 1;
                faults.extend(differs("cards", aims.cards, case.most_cards() as u64, false));
                if plan.missing.is_empty() {
                    faults.push("nothing is missing where the sheets do not suffice".to_owned());
                }
            }
        }
        if !faults.is_empty() {
            self.differ.push(format!("case {seed}: {}\n{text}", faults.join("; ")));
        }
    }

    fn judge(&self) {
        let Self { whole, short, several, shared, spare, proven, differ } = self;
        let sorts = format!(
            "{whole} whole, {short} short; {several} on several sheets, {shared} with a shared diagram, {spare} with \
             a spare piece, {proven} proven"
        );
        assert!(differ.is_empty(), "{sorts}, {} differ:\n{}", differ.len(), differ.join("\n"));
        // Each sort of case must have come up, or nothing was shown about it.
        let all = whole + short;
        assert!(whole * 2 > all && short * 20 > all && several * 4 > all && proven * 2 > all, "{sorts}");
        assert!(shared * 50 > all && spare * 50 > all, "{sorts}");
    }
}

/// Whether a diagram stands for more than one paper.
fn is_shared(plan: &CutPlan) -> bool {
    plan.sheets
        .iter()
        .any(|one| plan.sheets.iter().any(|other| one.diagram == other.diagram && one.paper != other.paper))
}

/// All pieces that are cut.
fn pieces(plan: &CutPlan) -> u64 {
    let of_one = |pieces: Vec<(_, u32)>| pieces.iter().map(|(_, count)| u64::from(*count)).sum::<u64>();
    plan.sheets.iter().map(|sheet| sheet.numbers.len() as u64 * of_one(sheet.pieces())).sum()
}

/// How an aim is not what the brute force says, where it is not.
fn differs(what: &str, aim: Aim, best: u64, less: bool) -> Option<String> {
    let (better, past) = if less { (aim.found < best, aim.bound > best) } else { (aim.found > best, aim.bound < best) };
    let fault = match () {
        () if better => "better than can be",
        () if past || (aim.proven && aim.found != best) => "wrongly proven",
        () if aim.found != best => "not the best",
        () => return None,
    };
    Some(format!("{what} {} with the bound {}, by brute force {best}: {fault}", aim.found, aim.bound))
}

#[test]
fn a_tenth_of_the_whole_plans_agree_with_a_brute_force() {
    let mut seen = Seen::default();
    (0..CASES).step_by(10).for_each(|seed| seen.look(seed));
    seen.judge();
}

#[test]
#[ignore = "ten times as long"]
fn all_whole_plans_agree_with_a_brute_force() {
    let mut seen = Seen::default();
    (0..CASES).for_each(|seed| seen.look(seed));
    seen.judge();
}
