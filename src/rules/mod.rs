//! What can be wrong with a design: one rule, one `.rs` and one `.md`, one ordered registry.
//!
//! Takes a [`Project`], gives findings in registry order. The `.md` beside a rule is what `explain`
//! prints, a page of the handbook and a test in one. Must never know a file or a terminal.

pub mod allowing;
pub mod counts;
pub mod cutting;
mod face;
pub mod folding;
pub mod gluing;
pub mod greeting;
pub mod guides;
mod hand;
pub mod layers;
pub mod making;
mod outlines;
pub mod papers;
pub mod pictures;
pub mod posting;
pub mod reading;
pub mod sizes;
mod tell;
pub mod text;
pub mod trimming;

use crate::diagnostic::{Finding, Severity};
use crate::project::Project;

/// One thing that can be wrong.
#[derive(Debug)]
pub struct Rule {
    /// Its name: states the fault, and reads after "allow".
    pub code: &'static str,
    /// The worst that it gives.
    pub severity: Severity,
    /// What it is about; the folder that it lies in.
    pub group: &'static str,
    /// The fault in a few words.
    pub summary: &'static str,
    /// Its page: why, how to mend it, designs that fail with the reports they give, sound ones.
    pub page: &'static str,
    /// What finds it in a project; nothing where it is found while the design is read, or in
    /// what the other rules found.
    pub check: Option<fn(&Project) -> Vec<Finding>>,
}

/// Every rule, in the order in which findings and pages stand.
pub static REGISTRY: &[&Rule] = &[
    &reading::not_yaml::RULE,
    &reading::yaml_surprise::RULE,
    &reading::too_much::RULE,
    &reading::not_a_design::RULE,
    &reading::unknown_key::RULE,
    &reading::missing_key::RULE,
    &reading::repeated_key::RULE,
    &reading::wrong_kind::RULE,
    &reading::bad_word::RULE,
    &reading::bad_length::RULE,
    &reading::missing_unit::RULE,
    &reading::bad_size::RULE,
    &reading::twins_far_apart::RULE,
    &reading::size_not_positive::RULE,
    &reading::circular_size::RULE,
    &reading::bad_weight::RULE,
    &reading::weight_without_grade::RULE,
    &reading::unlikely_paper::RULE,
    &reading::bad_count::RULE,
    &reading::bad_month::RULE,
    &reading::cards_do_not_add_up::RULE,
    &reading::name_used_twice::RULE,
    &reading::unknown_paper::RULE,
    &reading::unknown_piece::RULE,
    &reading::unknown_layer::RULE,
    &reading::back_of_one_sided_paper::RULE,
    &reading::not_placed::RULE,
    &reading::placed_twice::RULE,
    &reading::bad_turn::RULE,
    &reading::no_room_for_gaps::RULE,
    &reading::measured_across_a_turn::RULE,
    &reading::unit_on_the_card::RULE,
    &reading::cells_off_the_sheet::RULE,
    &reading::no_inside::RULE,
    &reading::on_another_side::RULE,
    &reading::framed_twice::RULE,
    &reading::not_below::RULE,
    &reading::unreadable_drawing::RULE,
    &reading::not_one_outline::RULE,
    &reading::unreadable_imprint::RULE,
    &reading::unreadable_picture::RULE,
    &reading::bad_colour::RULE,
    &reading::weak_accent::RULE,
    &reading::bad_address::RULE,
    &reading::impossible_shape::RULE,
    &reading::impossible_window::RULE,
    &reading::no_such_window::RULE,
    &reading::larger_than_its_window::RULE,
    &sizes::restated::RULE,
    &sizes::size_off_the_ruler::RULE,
    &sizes::share_off_the_ruler::RULE,
    &sizes::nothing_to_hold::RULE,
    &sizes::odd_sixteenth::RULE,
    &layers::past_the_edge::RULE,
    &layers::border_unlike_claim::RULE,
    &layers::border_off_the_ruler::RULE,
    &layers::unlike_borders::RULE,
    &layers::finer_than_the_hand::RULE,
    &layers::laid_sideways::RULE,
    &layers::no_glue::RULE,
    &layers::covers_another::RULE,
    &layers::hidden_layer::RULE,
    &layers::hidden_middle::RULE,
    &layers::window_covered::RULE,
    &layers::apart_where_they_meet::RULE,
    &layers::near_the_edge::RULE,
    &layers::across_the_opening::RULE,
    &layers::over_the_fold::RULE,
    &trimming::short_of_its_edge::RULE,
    &trimming::little_to_trim::RULE,
    &trimming::trimmed_away::RULE,
    &trimming::trimmed_too_late::RULE,
    &gluing::glue_before_trim::RULE,
    &gluing::foam_too_thick_to_post::RULE,
    &greeting::greeting_over_the_fold::RULE,
    &greeting::greeting_off_the_card::RULE,
    &greeting::greeting_covered::RULE,
    &making::small_die_margin::RULE,
    &making::narrow_frame::RULE,
    &making::too_few_windows::RULE,
    &making::hands_missing::RULE,
    &making::ribbon_too_short::RULE,
    &guides::frame_too_thin::RULE,
    &guides::frame_without_an_edge::RULE,
    &guides::hard_by_eye::RULE,
    &papers::pad_of_several_sizes::RULE,
    &folding::base_too_light::RULE,
    &folding::fold_across_the_grain::RULE,
    &posting::envelope_too_small::RULE,
    &posting::no_named_envelope::RULE,
    &posting::too_small_to_post::RULE,
    &posting::not_a_machine_letter::RULE,
    &cutting::larger_than_its_sheet::RULE,
    &cutting::edge_piece_of_another_paper::RULE,
    &cutting::fixed_cut_without_room::RULE,
    &cutting::too_few_sheets::RULE,
    &cutting::too_few_other_sheets::RULE,
    &cutting::errors_add_up::RULE,
    &cutting::shaving::RULE,
    &cutting::longer_than_the_trimmer::RULE,
    &cutting::close_measures::RULE,
    &counts::never_used::RULE,
    &counts::sheets_left_over::RULE,
    &counts::versions_alike::RULE,
    &pictures::coarse_photo::RULE,
    &text::missing_glyph::RULE,
    &text::not_in_every_language::RULE,
    &text::text_too_long::RULE,
    &text::note_without_its_work::RULE,
    &text::idea_without_leftover::RULE,
    &allowing::unknown_rule::RULE,
    &allowing::allowed_error::RULE,
    &allowing::allowed_for_nothing::RULE,
];

/// Rules that judge the very cuts that are printed: another plan within the sheets has other ones.
pub const OF_THE_BEST_PLAN: [&str; 9] = [
    "allowed-for-nothing",
    "close-measures",
    "errors-add-up",
    "fold-across-the-grain",
    "idea-without-leftover",
    "longer-than-the-trimmer",
    "restated",
    "shaving",
    "sheets-left-over",
];

/// Everything that the rules find in one edition of a design, in registry order.
#[must_use]
pub fn check(project: &Project) -> Vec<Finding> {
    REGISTRY.iter().filter_map(|rule| rule.check).flat_map(|check| check(project)).collect()
}
