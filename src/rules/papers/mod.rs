//! Rules about papers as they are bought.

pub mod weight_without_grade;
