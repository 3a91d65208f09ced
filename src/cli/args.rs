//! The words of the command line.

use crate::design::variants::Wanted;
use crate::length::Units;
use crate::words::Language;
use clap::{Args, Parser, Subcommand, ValueEnum};
use std::path::PathBuf;

/// Checks, cuts, draws and publishes printable greeting-card sketches.
#[derive(Debug, Parser)]
#[command(name = "trimwright", version, about, max_term_width = 100)]
pub(super) struct Arguments {
    #[command(subcommand)]
    pub(super) command: Command,
}

#[derive(Debug, Subcommand)]
pub(super) enum Command {
    /// Write a new design that checks clean and draws at once
    New(New),
    /// Check designs and read them back
    Check(Check),
    /// Print how the paper is cut
    Cuts(Cuts),
    /// Show how many cards come out as one piece grows and shrinks
    Sizes(Sizes),
    /// Publish designs as printable handouts
    Publish(Publish),
    /// Write the templates of the pages into a folder, to be changed for `publish --templates`
    Templates(Templates),
    /// Explain a rule, or list them all
    Explain(Explain),
}

#[derive(Debug, Args)]
pub(super) struct New {
    /// Name of the new design, such as `kite-day`; the file is `kite-day.yaml`
    pub(super) name: PathBuf,
    /// Start from another design, such as last month's: its month and title are changed, the files that it names copied along
    #[arg(long, value_name = "FILE")]
    pub(super) like: Option<PathBuf>,
    /// The month of the handout; the next month unless said
    #[arg(long, value_name = "YYYY-MM")]
    pub(super) month: Option<String>,
}

#[derive(Debug, Args)]
pub(super) struct Check {
    /// Design files
    #[arg(required = true, value_name = "FILE")]
    pub(super) files: Vec<PathBuf>,
    /// Check this edition too, by rule where the design does not ask for it
    #[arg(long, value_enum)]
    pub(super) units: Option<UnitsWord>,
    /// Say each finding in two plain sentences
    #[arg(long, conflicts_with = "format")]
    pub(super) plain: bool,
    /// Write the edits that are certain into the files, show them, and report what is left
    #[arg(long)]
    pub(super) mend: bool,
    /// Show every finding, allowed ones too, in the order of the file, and not only the three worst
    #[arg(long)]
    pub(super) all: bool,
    /// Stop at the first plan within the sheets: for many designs at once. What depends on the cuts that are
    /// printed is left to a check without it, and nothing is read back
    #[arg(long, conflicts_with = "mend")]
    pub(super) quick: bool,
    /// How to print the findings
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub(super) format: Format,
}

#[derive(Debug, Args)]
pub(super) struct Cuts {
    /// Design file; one with only `cards`, `papers` and `pieces` will do
    #[arg(value_name = "FILE")]
    pub(super) file: PathBuf,
    /// Plan as many cards as the sheets at hand give, versions in the design's proportion
    #[arg(long)]
    pub(super) most: bool,
    /// Plan with other sheets of a paper than the file says, such as `--paper dusk="3 of 6 x 6 in"`;
    /// its edge strip stays, unless `without edge strip` follows; may be said for several papers
    #[arg(long, value_name = "PAPER=SHEETS")]
    pub(super) paper: Vec<String>,
    /// Which edition, by rule where the design does not ask for it; the one it is made in unless said
    #[arg(long, value_enum)]
    pub(super) units: Option<UnitsWord>,
    /// Print other ways of equal worth too, the most different first
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..=99))]
    pub(super) alternatives: Option<u32>,
    /// How to print the plan
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub(super) format: Format,
}

#[derive(Debug, Args)]
pub(super) struct Sizes {
    /// Design file; one with only `cards`, `papers` and `pieces` will do
    #[arg(value_name = "FILE")]
    pub(super) file: PathBuf,
    /// The piece, by its name in the design; or `card`, with its base and all that leans on it
    pub(super) piece: String,
    /// How many steps of the workshop's ruler to go each way
    #[arg(long, value_name = "N", default_value_t = 16, value_parser = clap::value_parser!(i32).range(1..=100))]
    pub(super) steps: i32,
    /// Change the width alone
    #[arg(long, conflicts_with = "height")]
    pub(super) width: bool,
    /// Change the height alone
    #[arg(long)]
    pub(super) height: bool,
    /// Which edition, by rule where the design does not ask for it; the one it is made in unless said
    #[arg(long, value_enum)]
    pub(super) units: Option<UnitsWord>,
    /// How to print the table
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub(super) format: Format,
}

#[derive(Debug, Args)]
pub(super) struct Publish {
    /// Design files
    #[arg(required = true, value_name = "FILE")]
    pub(super) files: Vec<PathBuf>,
    /// Folder for the editions
    #[arg(long, value_name = "DIR", default_value = "output")]
    pub(super) to: PathBuf,
    /// Publish this edition too, by rule where the design does not ask for it
    #[arg(long, value_enum)]
    pub(super) units: Option<UnitsWord>,
    /// Make the handouts in this language too, where the design does not ask for it: `en` or `de`
    #[arg(long, value_name = "LANGUAGE", value_parser = language)]
    pub(super) language: Option<Language>,
    /// Make this handout too, in the words of the design's `handouts`, such as `--also "handout in large print on A4"`;
    /// may be said for several
    #[arg(long, value_name = "HANDOUT", value_parser = wanted)]
    pub(super) also: Vec<Wanted>,
    /// Make every handout that there is, each on the usual page
    #[arg(long)]
    pub(super) every: bool,
    /// Draw a design with errors all the same, marked DRAFT on every page
    #[arg(long)]
    pub(super) draft: bool,
    /// Set the pages by the templates of this folder, which `templates` writes, in place of the built-in ones
    #[arg(long, value_name = "DIR")]
    pub(super) templates: Option<PathBuf>,
}

#[derive(Debug, Args)]
pub(super) struct Templates {
    /// The new folder
    #[arg(value_name = "DIR")]
    pub(super) folder: PathBuf,
}

#[derive(Debug, Args)]
pub(super) struct Explain {
    /// The rule's name, as a report prints it
    pub(super) rule: Option<String>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(super) enum Format {
    /// For people
    Text,
    /// For programs
    Json,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(super) enum UnitsWord {
    /// Inches, for Letter paper
    Inch,
    /// Millimetres, for A4 paper
    Metric,
}

impl UnitsWord {
    pub(super) const fn units(self) -> Units {
        match self {
            Self::Inch => Units::Inch,
            Self::Metric => Units::Metric,
        }
    }
}

/// A language by its tag.
fn language(tag: &str) -> Result<Language, String> {
    Language::of_tag(tag).ok_or_else(|| {
        let tags: Vec<&str> = Language::all().map(Language::tag).collect();
        format!("there are words for {}", tags.join(" and "))
    })
}

/// A handout by its words.
fn wanted(words: &str) -> Result<Wanted, String> {
    Wanted::read(words).map_err(|unknown| {
        format!(
            "{}; say `handout`, `one leaf`, `designer's copy` or `try-out page`, and behind it `in large print`, `without \
             fills`, `on letter` or `on A4`",
            unknown.label()
        )
    })
}
