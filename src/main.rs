//! Words in, reports out, exit code.

use std::process::ExitCode;

fn main() -> ExitCode {
    trimwright::cli::main()
}
