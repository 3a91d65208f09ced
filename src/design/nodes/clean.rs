//! The text as YAML gets it: what an editor slips in where it is safe to forgive.
//!
//! Takes the text as written, gives a copy without its byte order mark and with plain spaces where
//! spaces shape the file, and the way back to the places in the original.

/// A cleaned copy and the way back.
pub(super) struct Clean {
    text: String,
    /// Where a stretch starts in the copy and in the original, ascending.
    stretches: Vec<(usize, usize)>,
}

impl Clean {
    /// Drops a byte order mark; makes every wide or unbreakable space plain that stands in front
    /// of a line's text or right behind a sign that YAML reads (`:`, `-`, `,`).
    pub(super) fn new(original: &str) -> Self {
        let mut clean = Self { text: String::with_capacity(original.len()), stretches: vec![(0, 0)] };
        let mut structural = true;
        for (at, sign) in original.char_indices() {
            if sign == '\u{feff}' && at == 0 {
                clean.stretches.push((0, sign.len_utf8()));
                continue;
            }
            if structural && is_odd_space(sign) {
                clean.text.push(' ');
                clean.stretches.push((clean.text.len(), at + sign.len_utf8()));
                continue;
            }
            structural = matches!(sign, '\n' | '\r' | ':' | '-' | ',' | '{' | '[') || (structural && sign == ' ');
            clean.text.push(sign);
        }
        clean
    }

    pub(super) fn text(&self) -> &str {
        &self.text
    }

    /// The place in the original of a byte in the copy.
    pub(super) fn original(&self, offset: usize) -> usize {
        let next = self.stretches.partition_point(|(start, _)| *start <= offset);
        let (start, original) = self.stretches[next.saturating_sub(1)];
        original + (offset - start)
    }
}

/// A space that YAML takes for a letter: no-break, thin and the like.
pub(super) const fn is_odd_space(sign: char) -> bool {
    matches!(sign, '\u{a0}' | '\u{2000}'..='\u{200a}' | '\u{202f}' | '\u{205f}' | '\u{3000}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_lead_back() {
        let original = "\u{feff}a:\u{a0}1\n\u{a0}\u{2009}b: ½\u{a0}in\n";
        let clean = Clean::new(original);
        assert_eq!(clean.text(), "a: 1\n  b: ½\u{a0}in\n");
        for sign in ["1", "b", "½", "in"] {
            assert_eq!(clean.original(clean.text().find(sign).unwrap()), original.find(sign).unwrap(), "{sign}");
        }
        assert_eq!(clean.original(0), 3);
        assert_eq!(clean.original(clean.text().len()), original.len());
    }
}
