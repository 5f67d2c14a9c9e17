//! The terminal tool.

mod arguments;
mod in_order;
mod json;
mod printer;
mod progress;
mod source;
mod times;

use arguments::{Arguments, Format};
use clap::Parser;
use elbowroom::report::answer::Refused;
use in_order::print_all;
use printer::{Fault, Printer};
use source::Source;
use std::io::ErrorKind;
use std::process::ExitCode;
use std::thread::available_parallelism;
use std::time::Instant;

/// As `clap` ends for arguments that it refuses.
const WRONG_ARGUMENTS: u8 = 2;

fn main() -> ExitCode {
    let start = Instant::now();
    let (question, plans) = match Arguments::parse().command.parts() {
        Ok(parts) => parts,
        Err(error) => {
            eprintln!("{}", Refused::from(&error).message);
            return ExitCode::from(WRONG_ARGUMENTS);
        }
    };
    let source = Source::of(plans.paths);
    let is_single = source.is_single;
    let usual = if is_single {
        Format::Plain
    } else {
        Format::Lines
    };
    let printer = Printer {
        question,
        format: plans.format.unwrap_or(usual),
    };
    let threads = plans.threads.or_else(|| available_parallelism().ok());
    let threads = if is_single {
        1
    } else {
        threads.map_or(1, Into::into)
    };
    match print_all(&printer, source, threads) {
        Ok(all) => {
            if all.refused > 0 && printer.format != Format::Plain {
                eprintln!("{}", progress::told(all.plans, None, all.refused));
            }
            if plans.times {
                eprintln!("{}", all.times.told(all.plans, threads, start.elapsed()));
            }
            all.fault
                .map_or(ExitCode::SUCCESS, |fault| ExitCode::from(fault as u8))
        }
        // Whoever read has seen enough.
        Err(error) if error.kind() == ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error}");
            ExitCode::from(Fault::Unreadable as u8)
        }
    }
}
