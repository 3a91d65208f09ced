//! Rules about the envelope and the post. Limits and their documents stand in `paper/post_limits.rs`.

pub mod envelope_too_small;
pub mod no_named_envelope;
pub mod not_a_machine_letter;
pub mod too_small_to_post;
