//! Which of the two stated lengths an edition takes.
