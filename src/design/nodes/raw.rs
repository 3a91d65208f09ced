//! What the YAML library delivers: values with byte spans, nothing interpreted.
//!
//! Takes YAML text, gives [`Raw`] values. Must never know a key of the design language.

use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use serde_yaml::{Location, Spanned};
use std::fmt;

/// Values (texts, lists and maps) that a design may hold; the largest real one has some hundreds.
pub(super) const MOST_VALUES: usize = 20_000;
/// How deep lists and maps may be nested.
pub(super) const DEEPEST: usize = 48;
const MOST_ALIASES: usize = 100;

/// A value as YAML sees it, before its spelling is taken from the source.
pub(super) enum Raw {
    /// Nothing written, `~` or `null`.
    Empty,
    /// A plain scalar that YAML takes for a number or a truth value.
    Typed,
    /// Any other scalar, with quotes, folds and escapes resolved.
    Text(String),
    List(Vec<Spanned<Raw>>),
    Map(Vec<(Spanned<Raw>, Spanned<Raw>)>),
}

struct RawVisitor;

impl<'de> Visitor<'de> for RawVisitor {
    type Value = Raw;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a text, a list or a map")
    }

    fn visit_bool<E>(self, _: bool) -> Result<Raw, E> {
        Ok(Raw::Typed)
    }

    fn visit_i64<E>(self, _: i64) -> Result<Raw, E> {
        Ok(Raw::Typed)
    }

    fn visit_u64<E>(self, _: u64) -> Result<Raw, E> {
        Ok(Raw::Typed)
    }

    fn visit_f64<E>(self, _: f64) -> Result<Raw, E> {
        Ok(Raw::Typed)
    }

    fn visit_unit<E>(self) -> Result<Raw, E> {
        Ok(Raw::Empty)
    }

    fn visit_none<E>(self) -> Result<Raw, E> {
        Ok(Raw::Empty)
    }

    fn visit_str<E>(self, text: &str) -> Result<Raw, E> {
        Ok(Raw::Text(text.to_owned()))
    }

    fn visit_string<E>(self, text: String) -> Result<Raw, E> {
        Ok(Raw::Text(text))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Raw, A::Error> {
        let mut items = Vec::new();
        while let Some(item) = list.next_element()? {
            items.push(item);
        }
        Ok(Raw::List(items))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Raw, A::Error> {
        let mut entries = Vec::new();
        while let Some(entry) = map.next_entry()? {
            entries.push(entry);
        }
        Ok(Raw::Map(entries))
    }
}

impl<'de> Deserialize<'de> for Raw {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(RawVisitor)
    }
}

/// Parses the text under a tight budget; repeated keys are delivered, not refused.
pub(super) fn parse(text: &str) -> Result<Spanned<Raw>, Box<serde_yaml::Error>> {
    let options = serde_yaml::options! {
        budget: serde_yaml::budget! {
            max_nodes: MOST_VALUES,
            max_events: 4 * MOST_VALUES,
            max_depth: DEEPEST,
            flow_nesting_limit: DEEPEST,
            max_aliases: MOST_ALIASES,
            max_anchors: MOST_ALIASES,
            max_recorded_anchor_events: MOST_VALUES,
            max_recorded_anchor_bytes: super::MOST_BYTES,
            max_total_scalar_bytes: 2 * super::MOST_BYTES,
            max_documents: 1,
        },
        alias_limits: serde_yaml::alias_limits! {
            max_total_replayed_events: MOST_VALUES,
            max_replay_stack_depth: 8,
        },
        duplicate_keys: serde_yaml::DuplicateKeyPolicy::PassThrough,
        merge_keys: serde_yaml::MergeKeyPolicy::AsOrdinary,
        non_finite_float_policy: serde_yaml::NonFiniteFloatPolicy::PassThrough,
        strict_booleans: true,
        leading_zero_numbers_as_strings: true,
        underscored_numbers_as_strings: true,
        reject_unsupported_tags: true,
        with_snippet: false,
    };
    serde_yaml::from_str_with_options(text, options).map_err(Box::new)
}

/// First byte and one past the last, where the library knows them.
pub(super) fn bytes(location: &Location) -> Option<(usize, usize)> {
    let span = location.span();
    let start = usize::try_from(span.byte_offset()?).ok()?;
    let len = usize::try_from(span.byte_len().unwrap_or(0)).ok()?;
    Some((start, start.checked_add(len)?))
}
