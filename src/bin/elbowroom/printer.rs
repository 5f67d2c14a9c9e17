//! From an item to the text that answers it.

use super::arguments::Format;
use super::json;
use super::source::{Content, Item, read_bounded};
use super::times::Times;
use elbowroom::plan::{FileError, Plan, read_directly, read_jobs};
use elbowroom::report::answer::{Answer, Cell, Question, Refused, Unanswered, columns, rows};
use serde::Serialize;
use std::io::Write;
use std::time::Instant;

/// Why there is no answer; the exit code of several is the least.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fault {
    /// A file could not be read.
    Unreadable = 1,
    /// A file is not a plan.
    NotAPlan = 3,
    /// A plan has not what was asked about.
    Unanswered = 4,
}

/// What was written of some items.
#[derive(Default)]
pub struct Printed {
    /// For standard output.
    pub out: Vec<u8>,
    /// For standard error.
    pub errors: Vec<u8>,
    /// How many items it is of.
    pub items: usize,
    /// How many plans were answered or refused.
    pub plans: usize,
    /// How many have no answer.
    pub refused: usize,
    /// The fault that the exit code tells.
    pub fault: Option<Fault>,
    /// How long the parts took.
    pub times: Times,
}

/// Writes the answers to one question in one format.
pub struct Printer {
    /// What is asked.
    pub question: Question,
    /// How it is printed.
    pub format: Format,
}

impl Printer {
    /// What stands before the first answer.
    pub fn head(&self) -> Vec<u8> {
        let mut line = Vec::new();
        if self.format == Format::Csv {
            let names = ["source", "title", "error"].into_iter();
            let names = names.chain(columns(&self.question));
            write_row(names.map(|name| Cell::Text(name.to_owned())), &mut line);
        }
        line
    }

    /// Writes the answers for `item`.
    pub fn print(&self, item: Item, printed: &mut Printed) {
        printed.items += 1;
        let start = Instant::now();
        let read = match item.content {
            Content::File(path) => read_bounded(&path),
            Content::Text(text) => Ok(text),
            Content::Unreadable(error) => Err(error),
            Content::EmptyFolder => {
                let why = Refused::from(&Unanswered::NoPlanInside);
                return self.refuse(&item.name, &why, Fault::Unreadable, printed);
            }
        };
        printed.times.reading += start.elapsed();
        match read {
            Ok(bytes) => self.print_text(&item.name, &bytes, printed),
            Err(error) => {
                let why = Refused {
                    message: error.to_string(),
                    path: None,
                };
                self.refuse(&item.name, &why, Fault::Unreadable, printed);
            }
        }
    }

    fn print_text(&self, name: &str, bytes: &[u8], printed: &mut Printed) {
        let start = Instant::now();
        let plan = read_directly(bytes);
        printed.times.parsing += start.elapsed();
        let error = match plan {
            Ok(plan) => return self.print_plan(name, &plan, printed),
            Err(error) => error,
        };
        // It may be a file of many jobs: then its reader has more to say.
        let jobs = match error {
            FileError::NotAPlan | FileError::TooLarge { .. } => read_jobs(bytes).ok(),
            _ => None,
        };
        let Some(jobs) = jobs else {
            return self.refuse(name, &Refused::from(&error), Fault::NotAPlan, printed);
        };
        for (index, job) in jobs.into_iter().enumerate() {
            let name = format!("{name}#{}", index + 1);
            match job {
                Ok(plan) => self.print_plan(&name, &plan, printed),
                Err(error) => {
                    self.refuse(&name, &Refused::from(&error), Fault::NotAPlan, printed);
                }
            }
        }
    }

    fn print_plan(&self, name: &str, plan: &Plan, printed: &mut Printed) {
        let start = Instant::now();
        let answer = self.question.answer(plan);
        let worked = Instant::now();
        printed.times.working += worked - start;
        match answer {
            Ok(answer) => {
                printed.plans += 1;
                self.write(name, plan, &answer, &mut printed.out);
                printed.times.printing += worked.elapsed();
            }
            Err(error) => self.refuse(name, &Refused::from(&error), Fault::Unanswered, printed),
        }
    }

    fn write(&self, name: &str, plan: &Plan, answer: &Answer, out: &mut Vec<u8>) {
        match (self.format, answer) {
            (Format::Plain, Answer::Sheet(text)) => out.extend_from_slice(text.as_bytes()),
            (Format::Plain, answer) => {
                write_json(out, |out| serde_json::to_writer_pretty(out, answer));
            }
            (Format::Lines, answer) => {
                let line = Line {
                    source: name,
                    title: Some(&plan.title),
                    answer: Some(answer),
                    error: None,
                };
                write_json(out, |out| json::write(out, &line));
            }
            (Format::Csv, answer) => {
                for cells in rows(answer) {
                    let head = [
                        name.to_owned().into(),
                        plan.title.clone().into(),
                        Cell::Empty,
                    ];
                    write_row(head.into_iter().chain(cells), out);
                }
                return;
            }
        }
        out.push(b'\n');
    }

    fn refuse(&self, name: &str, why: &Refused, fault: Fault, printed: &mut Printed) {
        printed.plans += 1;
        printed.refused += 1;
        printed.fault = Some(printed.fault.map_or(fault, |before| before.min(fault)));
        match self.format {
            Format::Plain => {
                // Writing into memory cannot fail.
                let _ = writeln!(printed.errors, "{name}: {}", why.message);
            }
            Format::Lines => {
                let line = Line {
                    source: name,
                    title: None,
                    answer: None,
                    error: Some(why),
                };
                write_json(&mut printed.out, |out| json::write(out, &line));
                printed.out.push(b'\n');
            }
            Format::Csv => {
                let head = [
                    name.to_owned().into(),
                    Cell::Empty,
                    why.message.clone().into(),
                ];
                let rest = columns(&self.question).into_iter().map(|_| Cell::Empty);
                write_row(head.into_iter().chain(rest), &mut printed.out);
            }
        }
    }
}

/// A line of JSON lines.
#[derive(Serialize)]
struct Line<'a> {
    source: &'a str,
    #[serde(skip_serializing_if = "Option::is_none")]
    title: Option<&'a str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    answer: Option<&'a Answer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    error: Option<&'a Refused>,
}

/// Nothing that is answered has what JSON cannot hold; half a line would be worse than none.
fn write_json(out: &mut Vec<u8>, write: impl FnOnce(&mut Vec<u8>) -> serde_json::Result<()>) {
    let before = out.len();
    if write(out).is_err() {
        out.truncate(before);
    }
}

fn write_row(cells: impl Iterator<Item = Cell>, out: &mut Vec<u8>) {
    for (index, cell) in cells.enumerate() {
        if index > 0 {
            out.push(b',');
        }
        cell.write(out);
    }
    out.extend_from_slice(b"\r\n");
}
