//! The terminal tool.

use clap::{Parser, Subcommand};
use elbowroom::plan::{FileError, read};
use elbowroom::report::figures;
use elbowroom::report::words::{Language, Message, say};
use elbowroom::units::UnitSystem;
use std::io::Read;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

/// Figures of a clothes dryer's exhaust run.
#[derive(Parser)]
#[command(version)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Print every figure of every element at full precision, in SI, as JSON.
    ///
    /// Exit code 0: printed. 1: the file could not be read. 2: the arguments are wrong. 3: the file
    /// is not a plan.
    Figures {
        /// The plan file; - for standard input.
        plan: PathBuf,
    },
}

const UNREADABLE: u8 = 1;
const NOT_A_PLAN: u8 = 3;

fn main() -> ExitCode {
    let Command::Figures { plan: path } = Arguments::parse().command;
    match print_figures(&path) {
        Ok(()) => ExitCode::SUCCESS,
        Err((code, message)) => {
            eprintln!("{}: {message}", path.display());
            ExitCode::from(code)
        }
    }
}

fn print_figures(path: &Path) -> Result<(), (u8, String)> {
    let unreadable = |error: std::io::Error| (UNREADABLE, error.to_string());
    let bytes = if path == Path::new("-") {
        let mut bytes = Vec::new();
        std::io::stdin()
            .read_to_end(&mut bytes)
            .map_err(unreadable)?;
        bytes
    } else {
        std::fs::read(path).map_err(unreadable)?
    };
    let words = |error: FileError| {
        let message = say(Language::English, UnitSystem::Si, Message::File(&error));
        (NOT_A_PLAN, message)
    };
    let plan = read(&bytes).map_err(words)?;
    let (figures, _) = figures(&plan);
    let text =
        serde_json::to_string_pretty(&figures).map_err(|error| (UNREADABLE, error.to_string()))?;
    println!("{text}");
    Ok(())
}
