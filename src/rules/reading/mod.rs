//! Faults that are found while a design is read: each has a page here, and is raised there.

pub mod back_of_one_sided_paper;
pub mod bad_count;
pub mod bad_length;
pub mod bad_month;
pub mod bad_size;
pub mod bad_word;
pub mod cards_do_not_add_up;
pub mod circular_size;
pub mod missing_key;
pub mod missing_twin;
pub mod missing_unit;
pub mod name_used_twice;
pub mod not_a_design;
pub mod not_placed;
pub mod not_yaml;
pub mod placed_twice;
pub mod repeated_key;
pub mod size_not_positive;
pub mod too_much;
pub mod unknown_key;
pub mod unknown_layer;
pub mod unknown_paper;
pub mod unknown_piece;
pub mod wrong_kind;
pub mod yaml_surprise;
