//! What the README shows of these commands is what they print.

use crate::support::{root, trimwright};

#[test]
fn the_readme_shows_what_is_printed() {
    let readme = std::fs::read_to_string(root().join("README.md")).expect("the README");
    let mut shown = 0;
    for block in readme.split("```text\n$ trimwright ").skip(1) {
        let (command, rest) = block.split_once('\n').expect("a command");
        let wanted = rest.split("\n```").next().expect("its output");
        let arguments: Vec<String> = words(command);
        let output = trimwright(&root(), &arguments.iter().map(String::as_str).collect::<Vec<_>>());
        let printed = String::from_utf8_lossy(&output.stdout);
        assert!(printed.starts_with(wanted), "{command}\nshown:\n{wanted}\nprinted:\n{printed}");
        shown += 1;
    }
    assert!(shown >= 3, "the examples were found");
}

/// Words as a shell parts them, double quotes kept together.
fn words(command: &str) -> Vec<String> {
    let mut words = vec![String::new()];
    let mut quoted = false;
    for sign in command.chars() {
        match sign {
            '"' => quoted = !quoted,
            ' ' if !quoted => words.push(String::new()),
            _ => words.last_mut().expect("a word").push(sign),
        }
    }
    words
}
