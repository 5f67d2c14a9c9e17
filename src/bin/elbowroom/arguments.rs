//! What the terminal tool can be asked.

use clap::{Args, Parser, Subcommand, ValueEnum};
use elbowroom::report::Paper;
use elbowroom::report::answer::{Question, WishError, bounded};
use elbowroom::report::handover::{SheetReading, SheetWish};
use elbowroom::report::words::Language;
use elbowroom::search::Options;
use elbowroom::units::{Length, UnitSystem};
use std::num::NonZeroUsize;
use std::path::PathBuf;

/// Figures of clothes dryers' exhaust runs, of one plan or of thousands.
///
/// Each command takes plan files, files of jobs, files of plans one a line (.jsonl), folders of these
/// and - for standard input, which holds one plan or one a line. Many plans are worked out at once and
/// answered in the order in which they were named; one that cannot be read is answered by its error
/// and stops no other.
///
/// Exit code 0: every plan was answered, or whoever reads the output wants no more. 1: a file could
/// not be read, or the output not written. 2: the arguments are wrong. 3: a file is not a plan. 4: a
/// plan has not what was asked about, such as a visit. Of several the first in this list.
#[derive(Parser)]
#[command(version)]
pub struct Arguments {
    /// What is asked.
    #[command(subcommand)]
    pub command: Command,
}

/// What is asked of each plan.
#[derive(Subcommand)]
pub enum Command {
    /// Every figure of every element at full precision, in SI.
    Figures {
        /// The bands of the totals too, from 512 runs each.
        #[arg(long)]
        bands: bool,
        #[command(flatten)]
        plans: Plans,
    },
    /// What the plan's rule set says: every rule with measured value, limit and margin.
    Check {
        #[command(flatten)]
        plans: Plans,
    },
    /// Other routes and upgrades, each worked out in full.
    Reroute {
        #[command(flatten)]
        wishes: Wishes,
        #[command(flatten)]
        plans: Plans,
    },
    /// What the readings of a visit mean, and what to test next.
    Diagnose {
        /// The visit's id; the newest where none is named.
        #[arg(long)]
        visit: Option<String>,
        #[command(flatten)]
        plans: Plans,
    },
    /// The handover sheet as one HTML file to be printed, with what a visit came to where there is one.
    Sheet {
        /// The visit's id; the newest where none is named.
        #[arg(long)]
        visit: Option<String>,
        /// The units that it is written in.
        #[arg(long, value_enum, default_value_t = Units::Us)]
        units: Units,
        /// Whom it is for.
        #[arg(long, value_enum, default_value_t = Reading::Customer)]
        reading: Reading,
        /// The paper.
        #[arg(long, value_enum, default_value_t = Sheets::Letter)]
        paper: Sheets,
        /// The language.
        #[arg(long, value_enum, default_value_t = Tongue::En)]
        language: Tongue,
        #[command(flatten)]
        plans: Plans,
    },
}

/// Which plans, and how they are answered.
#[derive(Args)]
pub struct Plans {
    /// Plan files and folders; - for standard input.
    #[arg(required = true, value_name = "PLAN")]
    pub paths: Vec<PathBuf>,
    /// How to print: a single plan's answer as it is and others as lines, unless this says otherwise.
    #[arg(long, value_enum)]
    pub format: Option<Format>,
    /// How many plans are worked on at once; as many as there are processors unless this says
    /// otherwise.
    #[arg(long)]
    pub threads: Option<NonZeroUsize>,
    /// Tell at the end, on standard error as JSON, how long each part took over all threads.
    #[arg(long)]
    pub times: bool,
}

/// How answers are printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Format {
    /// JSON in many lines, errors on standard error; of a sheet HTML.
    Plain,
    /// JSON, a line a plan, with the name of its file; errors among them.
    Lines,
    /// Comma-separated values, a row a plan (of reroutes, a suggestion); errors among them.
    Csv,
}

/// The units of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Units {
    /// US customary.
    Us,
    /// SI.
    Si,
}

/// Whom a sheet is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Reading {
    /// Plain words, one page where little is to be said.
    Customer,
    /// Every figure.
    Trade,
}

/// Paper that a sheet is laid out for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Sheets {
    /// 8 1/2 by 11 in.
    Letter,
    /// 210 by 297 mm.
    A4,
}

/// A language of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Tongue {
    /// English.
    En,
    /// Spanish; awaits review by a native speaker.
    Es,
}

/// What a reroute shall look for.
#[derive(Args)]
pub struct Wishes {
    /// So many suggestions at most.
    #[arg(long, default_value_t = Options::default().most_suggestions, value_name = "COUNT")]
    most: usize,
    /// Kept free between the duct and everything that it passes, in metres.
    #[arg(long, default_value_t = Options::default().clearance.metres(), value_name = "METRES")]
    clearance: f64,
    /// The dryer's outlet stays on its side.
    #[arg(long)]
    same_side: bool,
    /// The dryer may turn or be moved.
    #[arg(long)]
    dryer_may_move: bool,
    /// Height of a cap on the roof above the floor, in metres; no run goes there without.
    #[arg(long, value_name = "METRES")]
    roof_height: Option<f64>,
    /// A zone that no new leg may pass, by its id; may stand several times.
    #[arg(long, value_name = "ZONE")]
    closed_zone: Vec<String>,
}

impl Wishes {
    fn options(&self) -> Result<Options, WishError> {
        bounded(Options {
            most_suggestions: self.most,
            clearance: Length::from_metres(self.clearance),
            other_outlet_sides: !self.same_side,
            dryer_may_move: self.dryer_may_move,
            roof_height: self.roof_height.map(Length::from_metres),
            closed_zones: self
                .closed_zone
                .iter()
                .map(|id| id.as_str().into())
                .collect(),
            ..Options::default()
        })
    }
}

impl Command {
    /// The question, and the plans that it is asked of.
    pub fn parts(self) -> Result<(Question, Plans), WishError> {
        Ok(match self {
            Self::Figures { bands, plans } => (Question::Figures { with_bands: bands }, plans),
            Self::Check { plans } => (Question::Check, plans),
            Self::Reroute { wishes, plans } => (Question::Reroute(wishes.options()?), plans),
            Self::Diagnose { visit, plans } => (Question::Diagnose { visit }, plans),
            Self::Sheet {
                visit,
                units,
                reading,
                paper,
                language,
                plans,
            } => {
                let wish = SheetWish {
                    reading: match reading {
                        Reading::Customer => SheetReading::Customer,
                        Reading::Trade => SheetReading::Trade,
                    },
                    paper: match paper {
                        Sheets::Letter => Paper::Letter,
                        Sheets::A4 => Paper::A4,
                    },
                    language: match language {
                        Tongue::En => Language::English,
                        Tongue::Es => Language::SPANISH,
                    },
                    units: match units {
                        Units::Us => UnitSystem::UsCustomary,
                        Units::Si => UnitSystem::Si,
                    },
                };
                (Question::Sheet { visit, wish }, plans)
            }
        })
    }
}
