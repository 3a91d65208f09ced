//! Rules about papers as they are bought.

pub mod pad_of_several_sizes;
