//! What English does with names, and the words that only the designer reads, which are English alone.
//!
//! Takes names of a design, gives their plurals. Must never hold a sentence to a reader of the handout: these
//! stand in the catalogue.

pub mod check;
pub mod post;
pub mod sizes;

/// A count and a name: `1 panel`, `3 panels`.
#[must_use]
pub fn counted(count: u32, name: &str) -> String {
    format!("{count} {}", if count == 1 { name.to_owned() } else { plural(name) })
}

/// The plural of a piece's name, by the regular rules of English.
#[must_use]
pub fn plural(name: &str) -> String {
    const IRREGULAR: [(&str, &str); 6] = [
        ("leaf", "leaves"),
        ("half", "halves"),
        ("shelf", "shelves"),
        ("foot", "feet"),
        ("paper", "papers"),
        ("mouse", "mice"),
    ];
    // "mat for a photo": "mats for a photo".
    if let Some((head, rest)) = name.split_once(" for ") {
        return format!("{} for {rest}", plural(head));
    }
    let lower = name.to_lowercase();
    for (one, many) in IRREGULAR {
        if lower.ends_with(one) {
            return format!("{}{many}", &name[..name.len() - one.len()]);
        }
    }
    let ends = |tail: &[&str]| tail.iter().any(|t| lower.ends_with(t));
    if ends(&["s", "x", "z", "ch", "sh"]) {
        format!("{name}es")
    } else if lower.ends_with('y') && !ends(&["ay", "ey", "iy", "oy", "uy"]) {
        format!("{}ies", &name[..name.len() - 1])
    } else {
        format!("{name}s")
    }
}

/// A name with a capital at its start.
#[must_use]
pub fn capital(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// Joins strings as `a, b and c`.
#[must_use]
pub fn listed_words(parts: &[String]) -> String {
    match parts {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn plurals() {
        for (one, many) in [
            ("panel", "panels"),
            ("box", "boxes"),
            ("daisy", "daisies"),
            ("tray", "trays"),
            ("leaf", "leaves"),
            ("arch", "arches"),
        ] {
            assert_eq!(plural(one), many);
        }
        assert_eq!(counted(1, "mat"), "1 mat");
        assert_eq!(capital("ögd"), "Ögd");
    }
}
