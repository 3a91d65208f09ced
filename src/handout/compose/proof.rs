//! What only the designer sees: findings, allowed rules, the design read back, what the plan rests on.

use crate::cutting::plan::Aim;
use crate::handout::Told;
use crate::handout::data::{ProofPages, ProofPart, ProofTable, Said, said};
use crate::length::Units;
use crate::project::Project;
use crate::readback::read_back;
use crate::words::Line;
use crate::words::english::variants as words;

pub(super) fn pages(project: &Project, told: &Told) -> ProofPages {
    let lines = |texts: &[String]| texts.iter().map(|text| said(&Line::plain(text.trim().to_owned()))).collect();
    let part = |title: &str, lines: Vec<Said>| ProofPart { title: title.to_owned(), lines };
    let found = if told.findings.is_empty() { vec![said(&words::nothing_found())] } else { lines(&told.findings) };
    let mut parts = vec![part(words::FOUND, found)];
    if !told.allowed.is_empty() {
        parts.push(part(words::ALLOWED, lines(&told.allowed)));
    }
    parts.push(part(words::READ_BACK, lines(&read_back(project))));
    ProofPages {
        title: words::FOR_THE_DESIGNER.to_owned(),
        lead: said(&words::designers_lead()),
        parts,
        aims: aims(project),
    }
}

fn aims(project: &Project) -> ProofTable {
    let aims = project.plan.aims;
    let inches = project.units() == Units::Inch;
    let count = |value: u64| value.to_string();
    let area = |value: u64| words::area(value, inches);
    let row = |name: &str, aim: Aim, shown: &dyn Fn(u64) -> String| {
        [name.to_owned(), shown(aim.found), shown(aim.bound), words::proven(aim.proven).to_owned()]
    };
    let own = [aims.cards, aims.sheets, aims.diagrams, aims.cuts, aims.changes, aims.leftover];
    let rows = words::AIMS
        .iter()
        .zip(own)
        .enumerate()
        .map(|(at, (name, aim))| if at == 5 { row(name, aim, &area) } else { row(name, aim, &count) });
    ProofTable {
        title: words::PROOF.to_owned(),
        note: said(&words::proof_note()),
        heads: words::proof_heads(),
        rows: rows.collect(),
    }
}
