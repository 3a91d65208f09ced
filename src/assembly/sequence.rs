//! Design, layout and plan to steps.
