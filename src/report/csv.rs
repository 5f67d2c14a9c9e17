//! Tables as CSV (RFC 4180): comma, quotes doubled, lines ended by CR LF. A spreadsheet must not take a
//! typed text for a formula, so one that begins like one gets a mark before it.

/// A table.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CsvTable {
    /// The columns' names.
    pub head: Vec<String>,
    /// The rows, each as long as the head.
    pub rows: Vec<Vec<CsvCell>>,
}

/// A cell.
#[derive(Debug, Clone, PartialEq)]
pub enum CsvCell {
    /// A text, which may have been typed.
    Text(String),
    /// A figure as it is shown, without its unit.
    Figure(String),
}

impl CsvTable {
    /// The text of its file.
    pub fn text(&self) -> String {
        let mut text = String::new();
        line(&mut text, self.head.iter().map(|name| text_cell(name)));
        for row in &self.rows {
            let cells = row.iter().map(|cell| match cell {
                CsvCell::Text(text) => text_cell(text),
                CsvCell::Figure(figure) => quoted(number(figure)),
            });
            line(&mut text, cells);
        }
        text
    }
}

fn line(text: &mut String, cells: impl Iterator<Item = String>) {
    let cells: Vec<String> = cells.collect();
    text.push_str(&cells.join(","));
    text.push_str("\r\n");
}

/// A text as a cell holds it.
pub(super) fn text_cell(text: &str) -> String {
    quoted(inert(text))
}

/// A text that begins like a formula, with a quote before it, as spreadsheets mark plain text. Spaces
/// and marks that nobody sees do not hide its beginning. Control signs become spaces, but for ends of
/// lines, which a quoted cell can hold.
fn inert(text: &str) -> String {
    let is_unseen = |letter: char| {
        letter.is_whitespace()
            || matches!(
                letter,
                '\u{feff}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}'
            )
    };
    let begins = text.trim_start_matches(is_unseen).chars().next();
    let is_formula = begins.is_some_and(|letter| {
        matches!(
            letter,
            '=' | '+' | '-' | '@' | '\u{ff1d}' | '\u{ff0b}' | '\u{ff0d}' | '\u{ff20}'
        )
    });
    let starts_with_control = text.starts_with(['\t', '\r', '\n']);
    let mark = if is_formula || starts_with_control {
        "'"
    } else {
        ""
    };
    let held = |letter: char| match letter {
        '\n' => '\n',
        letter if letter.is_control() => ' ',
        letter => letter,
    };
    let plain: String = text.chars().map(held).collect();
    format!("{mark}{plain}")
}

/// A figure with the minus that a spreadsheet reads; what is no number is a text.
fn number(figure: &str) -> String {
    let plain = figure.replace('\u{2212}', "-");
    let digits = plain.strip_prefix('-').unwrap_or(&plain);
    let is_number = digits.starts_with(|letter: char| letter.is_ascii_digit())
        && digits
            .chars()
            .all(|letter| letter.is_ascii_digit() || matches!(letter, '.' | ','));
    if is_number { plain } else { inert(figure) }
}

/// In quotes where it holds what parts cells and lines, or a space at an end, which a reader may drop.
fn quoted(cell: String) -> String {
    if cell.contains(['"', ',', '\r', '\n']) || cell.starts_with(' ') || cell.ends_with(' ') {
        format!("\"{}\"", cell.replace('"', "\"\""))
    } else {
        cell
    }
}
