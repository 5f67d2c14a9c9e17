//! Where plans come from: files and folders as they were named, lines as they are read.

use std::fs::File;
use std::io::{self, BufRead, BufReader, Read};
use std::path::{Path, PathBuf};
use std::vec::IntoIter;

/// Longer is no plan; what is longer is read no further and told to be so. A file of jobs may be as
/// long as this.
const LONGEST: u64 = (64 << 20) + 1;
/// Longest line that is kept: the reader of plans says that it is too large.
const LONGEST_LINE: u64 = (4 << 20) + 1;

/// What is in a file, as far as a plan or a file of jobs may reach.
///
/// # Errors
/// What the system says of a file that cannot be read.
pub fn read_bounded(path: &Path) -> io::Result<Vec<u8>> {
    let file = File::open(path)?;
    let length = file.metadata()?.len().min(LONGEST);
    // One byte of room more: the end is found without growing.
    let mut bytes = Vec::with_capacity(usize::try_from(length).map_or(0, |length| length + 1));
    file.take(LONGEST).read_to_end(&mut bytes)?;
    Ok(bytes)
}

/// One thing to be answered.
pub struct Item {
    /// What it is called in the answer.
    pub name: String,
    /// What it holds.
    pub content: Content,
}

/// What an item holds.
pub enum Content {
    /// A file that is yet to be read.
    File(PathBuf),
    /// The text of a plan.
    Text(Vec<u8>),
    /// Nothing: it could not be read.
    Unreadable(io::Error),
    /// Nothing: a folder without any plan.
    EmptyFolder,
}

/// Everything that was named, one item after the other.
pub struct Source {
    named: IntoIter<Named>,
    lines: Option<Lines>,
    /// How many items there are; none where lines are among them.
    pub count: Option<usize>,
    /// Whether it is one plan, named by itself.
    pub is_single: bool,
}

enum Named {
    File(PathBuf),
    Lines(PathBuf),
    StandardInput,
    Unreadable(PathBuf, io::Error),
    EmptyFolder(PathBuf),
}

impl Source {
    /// Of what was named; looks into folders, and at the beginning of standard input where that alone
    /// was named.
    pub fn of(paths: Vec<PathBuf>) -> Self {
        let is_one = paths.len() == 1;
        let mut named = Vec::new();
        let mut is_single = false;
        for path in paths {
            if path == Path::new("-") {
                named.push(Named::StandardInput);
            } else if path.is_dir() {
                folder(path, &mut named);
            } else {
                is_single = is_one && !holds_lines(&path);
                named.push(of_file(path));
            }
        }
        let has_lines = |it: &Named| matches!(it, Named::Lines(_) | Named::StandardInput);
        let mut source = Self {
            count: (!named.iter().any(has_lines)).then_some(named.len()),
            named: named.into_iter(),
            lines: None,
            is_single,
        };
        if is_one && matches!(source.named.as_slice(), [Named::StandardInput]) {
            source.named.next();
            let lines = Lines::of_standard_input();
            source.is_single = lines.is_whole;
            source.lines = Some(lines);
        }
        source
    }
}

impl Iterator for Source {
    type Item = Item;

    fn next(&mut self) -> Option<Item> {
        loop {
            if let Some(lines) = &mut self.lines {
                if let Some(item) = lines.next() {
                    return Some(item);
                }
                self.lines = None;
            }
            let item = |path: &Path, content| Item {
                name: path.display().to_string(),
                content,
            };
            match self.named.next()? {
                Named::StandardInput => self.lines = Some(Lines::of_standard_input()),
                Named::Lines(path) => match File::open(&path) {
                    Ok(file) => self.lines = Some(Lines::of(path.display().to_string(), file)),
                    Err(error) => return Some(item(&path, Content::Unreadable(error))),
                },
                Named::File(path) => {
                    return Some(Item {
                        name: path.display().to_string(),
                        content: Content::File(path),
                    });
                }
                Named::Unreadable(path, error) => {
                    return Some(item(&path, Content::Unreadable(error)));
                }
                Named::EmptyFolder(path) => return Some(item(&path, Content::EmptyFolder)),
            }
        }
    }
}

fn has_ending(path: &Path, ending: &str) -> bool {
    path.extension()
        .is_some_and(|own| own.eq_ignore_ascii_case(ending))
}

fn holds_lines(path: &Path) -> bool {
    has_ending(path, "jsonl")
}

fn of_file(path: PathBuf) -> Named {
    if holds_lines(&path) {
        Named::Lines(path)
    } else {
        Named::File(path)
    }
}

/// What could be plans in a folder and the folders in it, by name.
fn folder(path: PathBuf, named: &mut Vec<Named>) {
    let before = named.len();
    let mut waiting = vec![path.clone()];
    while let Some(path) = waiting.pop() {
        if path.is_dir() && !(path.is_symlink() && named.len() > before) {
            match inside(&path) {
                Ok(mut paths) => {
                    paths.sort_unstable_by(|one, other| other.cmp(one));
                    waiting.append(&mut paths);
                }
                Err(error) => named.push(Named::Unreadable(path, error)),
            }
        } else {
            named.push(of_file(path));
        }
    }
    if named.len() == before {
        named.push(Named::EmptyFolder(path));
    }
}

/// Folders and plans in a folder. A link to a folder may lead round in a circle, so none is followed.
fn inside(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut paths = Vec::new();
    for entry in std::fs::read_dir(folder)? {
        let entry = entry?;
        let path = entry.path();
        let is_plan = has_ending(&path, "json") || holds_lines(&path);
        let is_folder = entry.file_type()?.is_dir();
        if is_folder || (is_plan && !path.is_dir()) {
            paths.push(path);
        }
    }
    Ok(paths)
}

/// Plans one a line, or one in many lines.
struct Lines {
    name: String,
    number: usize,
    /// The first line, as far as it was read.
    first: Option<io::Result<Vec<u8>>>,
    /// Whether `first` is all that there is.
    is_whole: bool,
    rest: Box<dyn BufRead + Send>,
}

impl Lines {
    fn of(name: String, file: impl Read + Send + 'static) -> Self {
        Self {
            name,
            number: 0,
            first: None,
            is_whole: false,
            rest: Box::new(BufReader::new(file)),
        }
    }

    /// Of standard input: where its first line is the beginning of a longer text, or all, it is one
    /// plan.
    fn of_standard_input() -> Self {
        let mut lines = Self::of("-".to_owned(), io::stdin());
        let first = lines.read();
        let Some(Ok(mut text)) = first else {
            lines.first = first;
            return lines;
        };
        let is_begun = serde_json::from_slice::<serde::de::IgnoredAny>(&text)
            .is_err_and(|error| error.is_eof());
        let rest = if is_begun {
            let mut rest = Vec::new();
            let read = (&mut lines.rest).take(LONGEST).read_to_end(&mut rest);
            read.map(|_| text.append(&mut rest))
        } else {
            Ok(())
        };
        lines.is_whole = is_begun || lines.is_at_end();
        lines.first = Some(rest.map(|()| text));
        lines
    }

    /// Whether nothing but blanks is left.
    fn is_at_end(&mut self) -> bool {
        loop {
            let Ok(buffer) = self.rest.fill_buf() else {
                return false;
            };
            if buffer.is_empty() {
                return true;
            }
            let blanks = buffer.iter().take_while(|byte| byte.is_ascii_whitespace());
            let blanks = blanks.count();
            if blanks == 0 {
                return false;
            }
            self.rest.consume(blanks);
        }
    }

    /// The next line that is not blank.
    fn read(&mut self) -> Option<io::Result<Vec<u8>>> {
        loop {
            let mut line = Vec::new();
            let read = (&mut self.rest)
                .take(LONGEST_LINE)
                .read_until(b'\n', &mut line);
            match read {
                Err(error) => return Some(Err(error)),
                Ok(0) => return None,
                Ok(_) => self.number += 1,
            }
            if line.len() as u64 >= LONGEST_LINE
                && let Err(error) = self.rest.skip_until(b'\n')
            {
                return Some(Err(error));
            }
            if !line.trim_ascii().is_empty() {
                return Some(Ok(line));
            }
        }
    }
}

impl Iterator for Lines {
    type Item = Item;

    fn next(&mut self) -> Option<Item> {
        let line = self.first.take().or_else(|| self.read())?;
        let name = if self.is_whole {
            self.name.clone()
        } else {
            format!("{}:{}", self.name, self.number)
        };
        let content = line.map_or_else(
            |error| {
                // What cannot be read now will not be read next either.
                self.rest = Box::new(io::empty());
                Content::Unreadable(error)
            },
            Content::Text,
        );
        Some(Item { name, content })
    }
}
