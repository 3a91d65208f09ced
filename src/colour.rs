//! Colours of the page and how they stand out on white paper.
//!
//! Takes `#0E5F70`, gives contrast by the formula of WCAG 2.2. Must never know where a colour is used.

use std::fmt;

/// A colour in sRGB: red, green, blue.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Colour(pub [u8; 3]);

/// The contrast that text needs (WCAG 2.2, 1.4.3), in hundredths.
pub const TEXT_CONTRAST: u32 = 450;

impl Colour {
    /// Reads `#` and six hexadecimal digits; none where it is anything else.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let digits = text.strip_prefix('#').filter(|digits| digits.len() == 6)?;
        let all = digits.bytes().all(|digit| digit.is_ascii_hexdigit());
        let channel = |from: usize| u8::from_str_radix(digits.get(from..from + 2)?, 16).ok();
        all.then_some(Self([channel(0)?, channel(2)?, channel(4)?]))
    }

    /// Relative luminance, 0 to 1.
    fn luminance(self) -> f64 {
        let [red, green, blue] = self.0.map(|channel| {
            let share = f64::from(channel) / 255.0;
            if share <= 0.04045 { share / 12.92 } else { libm::pow((share + 0.055) / 1.055, 2.4) }
        });
        0.2126 * red + 0.7152 * green + 0.0722 * blue
    }

    /// Contrast with white in hundredths, rounded down, so that what is said never flatters: 100 to 2100.
    #[must_use]
    pub fn contrast_with_white(self) -> u32 {
        let ratio = 1.05 / (self.luminance() + 0.05);
        // A ratio from 1 to 21.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let hundredths = (ratio * 100.0 + 1e-9) as u32;
        hundredths
    }

    /// The lightest colour of the same hue, this one or darker, that has a contrast with white.
    #[must_use]
    pub fn darkened_to(self, contrast: u32) -> Self {
        let shade =
            |share: u16| Self(self.0.map(|channel| u8::try_from(u16::from(channel) * share / 255).unwrap_or(u8::MAX)));
        (0..=255).rev().map(shade).find(|shade| shade.contrast_with_white() >= contrast).unwrap_or(Self([0; 3]))
    }
}

impl fmt::Display for Colour {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let [red, green, blue] = self.0;
        write!(f, "#{red:02X}{green:02X}{blue:02X}")
    }
}

/// A contrast in hundredths as `4.52:1`.
#[must_use]
pub fn ratio(hundredths: u32) -> String {
    let text = format!("{}.{:02}", hundredths / 100, hundredths % 100);
    format!("{}:1", text.trim_end_matches('0').trim_end_matches('.'))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn colour(text: &str) -> Colour {
        Colour::parse(text).unwrap()
    }

    #[test]
    fn contrast_agrees_with_published_boundaries() {
        // The lightest greys that pass on white, as the W3C's understanding documents give them: #767676 has
        // 4.54:1 and #777777 has 4.48:1; #949494 passes 3:1 and #959595 does not. Black has 21:1, white 1:1.
        assert_eq!(colour("#767676").contrast_with_white(), 454);
        assert_eq!(colour("#777777").contrast_with_white(), 447, "rounded down, never up");
        assert!(colour("#949494").contrast_with_white() >= 300 && colour("#959595").contrast_with_white() < 300);
        assert_eq!((colour("#000000").contrast_with_white(), colour("#ffffff").contrast_with_white()), (2100, 100));
        // Pure red 3.998 (rounded to 4 in most tables), pure blue 8.59: relative luminance 0.2126 and 0.0722 by
        // the formula itself, worked by hand: 1.05 / 0.2626 and 1.05 / 0.1222.
        assert_eq!((colour("#FF0000").contrast_with_white(), colour("#0000FF").contrast_with_white()), (399, 859));
    }

    #[test]
    fn the_nearest_darker_colour_passes_and_the_next_lighter_does_not() {
        for text in ["#7FB0C0", "#FFFFFF", "#FF0000", "#00FF00", "#FFD700", "#777777"] {
            let dark = colour(text).darkened_to(TEXT_CONTRAST);
            assert!(dark.contrast_with_white() >= TEXT_CONTRAST, "{text}: {dark}");
            let lighter = Colour(dark.0.map(|channel| channel.saturating_add(2)));
            assert!(lighter.contrast_with_white() < TEXT_CONTRAST + 12, "{text}: {dark} is darker than needed");
        }
        let teal = colour("#0E5F70");
        assert_eq!(teal.darkened_to(TEXT_CONTRAST), teal, "what passes stays");
    }

    #[test]
    fn only_six_digits_are_a_colour() {
        assert_eq!(colour("#0e5F70").to_string(), "#0E5F70");
        for wrong in ["0E5F70", "#0E5F7", "#0E5F700", "#GG0000", "#+12345", "teal", "", "#", "#ééé"] {
            assert_eq!(Colour::parse(wrong), None, "{wrong}");
        }
        assert_eq!((ratio(450), ratio(2100), ratio(447)), ("4.5:1".into(), "21:1".into(), "4.47:1".into()));
    }
}
