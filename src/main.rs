//! Words in, reports out, exit code.
fn main() {}
