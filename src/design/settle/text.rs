//! A text taken apart without losing the places of its parts.
//!
//! Takes a text and its span, gives parts of it. Words part at any kind of space, so that a no-break
//! space reads like a plain one.

use crate::source::{Span, Spanned};

/// A text, or a part of one, with its place.
#[derive(Debug, Clone, Copy)]
pub(super) struct Text<'a> {
    pub(super) value: &'a str,
    pub(super) span: Span,
    /// Whether the text stands in the source byte for byte, so that parts have places too.
    exact: bool,
}

impl<'a> Text<'a> {
    /// A text without spaces round it.
    pub(super) fn new(value: &'a str, span: Span, exact: bool) -> Self {
        Self { value, span, exact }.part(0, value.len())
    }

    /// The part from one byte to another, without spaces round it.
    fn part(self, from: usize, to: usize) -> Self {
        let value = &self.value[from..to];
        let from = from + value.len() - value.trim_start().len();
        let value = value.trim();
        let span = if self.exact {
            Span::new(self.span.start + from, self.span.start + from + value.len())
        } else {
            self.span
        };
        Self { value, span, exact: self.exact }
    }

    /// First byte and end of each word.
    fn words(self) -> Vec<(usize, usize)> {
        let mut end = 0;
        let places = self.value.split_whitespace().map(|word| {
            let from = end + self.value[end..].find(word).unwrap_or(0);
            end = from + word.len();
            (from, end)
        });
        places.collect()
    }

    fn is_word(self, (from, to): (usize, usize), word: &str) -> bool {
        self.value[from..to].eq_ignore_ascii_case(word)
    }

    /// The parts between a sign.
    pub(super) fn split(self, sign: char) -> Vec<Self> {
        let mut parts = Vec::new();
        let mut from = 0;
        for (at, found) in self.value.match_indices(sign) {
            parts.push(self.part(from, at));
            from = at + found.len();
        }
        parts.push(self.part(from, self.value.len()));
        parts
    }

    /// The parts between commas and `and`.
    pub(super) fn items(self) -> Vec<Self> {
        let mut parts = Vec::new();
        for item in self.split(',') {
            let mut from = 0;
            for place in item.words().into_iter().filter(|place| item.is_word(*place, "and")) {
                parts.push(item.part(from, place.0));
                from = place.1;
            }
            parts.push(item.part(from, item.value.len()));
        }
        parts
    }

    /// Everything before the last comma, and everything behind it.
    pub(super) fn at_last_comma(self) -> Option<(Self, Self)> {
        let at = self.value.rfind(',')?;
        Some((self.part(0, at), self.part(at + 1, self.value.len())))
    }

    /// Everything before the first time that a word stands alone, and everything behind it.
    pub(super) fn at_word(self, word: &str) -> Option<(Self, Self)> {
        let (from, to) = self.words().into_iter().find(|place| self.is_word(*place, word))?;
        Some((self.part(0, from), self.part(to, self.value.len())))
    }

    /// Everything before the last time that a word stands alone, and everything behind it.
    pub(super) fn at_last(self, word: &str) -> Option<(Self, Self)> {
        let (from, to) = self.words().into_iter().rfind(|place| self.is_word(*place, word))?;
        Some((self.part(0, from), self.part(to, self.value.len())))
    }

    /// Everything before the last word, and that word; none where there is only one.
    pub(super) fn last_word(self) -> Option<(Self, Self)> {
        let (from, to) = self.words().pop().filter(|(from, _)| *from > 0)?;
        Some((self.part(0, from), self.part(from, to)))
    }

    /// The first word, and everything behind it.
    pub(super) fn first_word(self) -> (Self, Self) {
        let to = self.words().first().map_or(0, |(_, to)| *to);
        (self.part(0, to), self.part(to, self.value.len()))
    }

    /// The text without this last word; none where it ends otherwise.
    fn before_last(self, word: &str) -> Option<Self> {
        let place = self.words().pop().filter(|place| self.is_word(*place, word))?;
        Some(self.part(0, place.0))
    }

    /// The text before a final `all round`.
    pub(super) fn before_all_round(self) -> Option<Self> {
        self.before_last("round")?.before_last("all")
    }

    /// The text before these final words; none where it ends otherwise.
    pub(super) fn before_words(self, words: &[&str]) -> Option<Self> {
        words.iter().rev().try_fold(self, |text, word| text.before_last(word))
    }

    /// The text behind these first words; none where it starts otherwise.
    pub(super) fn after_words(self, words: &[&str]) -> Option<Self> {
        let places = self.words();
        let same =
            places.len() >= words.len() && places.iter().zip(words).all(|(place, word)| self.is_word(*place, word));
        let from = words.len().checked_sub(1).map_or(0, |last| places.get(last).map_or(0, |(_, to)| *to));
        same.then(|| self.part(from, self.value.len()))
    }

    /// Everything before a word that stands alone, and everything behind it: the first time that what
    /// stands before is known, else the last time.
    pub(super) fn at_known(self, word: &str, known: impl Fn(Self) -> bool) -> Option<(Self, Self)> {
        let places: Vec<_> = self.words().into_iter().filter(|place| self.is_word(*place, word)).collect();
        let first = places.iter().find(|(from, _)| known(self.part(0, *from)));
        let (from, to) = first.or(places.last()).copied()?;
        Some((self.part(0, from), self.part(to, self.value.len())))
    }

    /// The text without this first word, if it starts with it.
    pub(super) fn without_first(self, word: &str) -> Self {
        match self.words().into_iter().next().filter(|place| self.is_word(*place, word)) {
            Some((_, to)) => self.part(to, self.value.len()),
            None => self,
        }
    }

    /// As a value with its place.
    pub(super) fn owned(self) -> Spanned<String> {
        Spanned::new(self.value.to_owned(), self.span)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(value: &str) -> Text<'_> {
        Text::new(value, Span::new(100, 100 + value.len()), true)
    }

    fn pair<'a>(parts: Option<(Text<'a>, Text<'a>)>) -> Option<(&'a str, &'a str)> {
        parts.map(|(before, behind)| (before.value, behind.value))
    }

    #[test]
    fn parts_keep_their_places() {
        let whole = text(" ½ in\u{a0}| 13 mm ");
        let halves = whole.split('|');
        assert_eq!(halves.iter().map(|half| half.value).collect::<Vec<_>>(), ["½ in", "13 mm"]);
        assert_eq!((halves[0].span, halves[1].span), (Span::new(101, 106), Span::new(110, 115)));
        let resolved = Text::new("a | b", Span::new(5, 20), false);
        assert_eq!(resolved.split('|')[1].span, Span::new(5, 20));
    }

    #[test]
    fn words_part_at_any_space() {
        assert_eq!(pair(text("2\u{a0}of\u{a0}half letter").at_word("of")), Some(("2", "half letter")));
        assert_eq!(pair(text("less more less 1 in").at_last("less")), Some(("less more", "1 in")));
        assert_eq!(pair(text("roof").at_word("of")), None);
        assert_eq!(pair(text("bottom beside").last_word()), Some(("bottom", "beside")));
        assert_eq!(pair(text("bottom").last_word()), None);
        assert_eq!(pair(Some(text("top\u{a0}3 times").first_word())), Some(("top", "3 times")));
        assert_eq!(pair(Some(text("").first_word())), Some(("", "")));
        assert_eq!(text("1/8 in All\u{a0}Round").before_all_round().unwrap().value, "1/8 in");
        assert!(text("123456789").before_all_round().is_none());
        assert!(text("İİİİall round it").before_all_round().is_none());
        assert_eq!(text("the bottom").without_first("the").value, "bottom");
        assert_eq!(text("As  wide as the mat").after_words(&["as", "wide", "as"]).unwrap().value, "the mat");
        assert_eq!(text("as wide").after_words(&["as", "wide"]).unwrap().value, "");
        assert!(text("as high as mat").after_words(&["as", "wide", "as"]).is_none());
        assert!(text("as").after_words(&["as", "wide"]).is_none());
        let known = |before: Text<'_>| before.value == "more or less";
        assert_eq!(pair(text("more or less less 1 in").at_known("less", known)), Some(("more or less", "1 in")));
        assert_eq!(pair(text("mat less 1 in less 2 in").at_known("less", known)), Some(("mat less 1 in", "2 in")));
        let items: Vec<&str> = text("1 a, 2 b and 3 c").items().iter().map(|item| item.value).collect();
        assert_eq!(items, ["1 a", "2 b", "3 c"]);
    }
}
