//! A cell of a table of comma-separated values (RFC 4180).

use crate::report::csv::inert;
use serde::Serialize;

/// What stands in a cell.
#[derive(Debug, Clone, PartialEq)]
pub enum Cell {
    /// Nothing.
    Empty,
    /// A number at full precision; nothing where it is none.
    Number(f64),
    /// A text or a key.
    Text(String),
}

impl Cell {
    /// The name that a value has in JSON.
    pub fn key(value: &impl Serialize) -> Self {
        match serde_json::to_value(value) {
            Ok(serde_json::Value::String(name)) => Self::Text(name),
            Ok(serde_json::Value::Null) | Err(_) => Self::Empty,
            Ok(other) => Self::Text(other.to_string()),
        }
    }

    /// So many.
    #[allow(clippy::cast_precision_loss, reason = "counts are far below 2^52")]
    pub fn count(count: usize) -> Self {
        Self::Number(count as f64)
    }

    /// Writes it to the end of `line`.
    ///
    /// A text that begins like a formula is kept a text, as in the page's own tables.
    ///
    /// ```
    /// use elbowroom::report::answer::Cell;
    /// let mut line = Vec::new();
    /// Cell::Text("=1+1, \"two\"".into()).write(&mut line);
    /// assert_eq!(line, b"\"'=1+1, \"\"two\"\"\"");
    /// ```
    pub fn write(&self, line: &mut Vec<u8>) {
        match self {
            Self::Empty => {}
            Self::Number(number) if !number.is_finite() => {}
            // Counts without the point that JSON's numbers have: a table's reader tells no kinds apart.
            Self::Number(number) => line.extend_from_slice(number.to_string().as_bytes()),
            Self::Text(text) => write_text(text, line),
        }
    }
}

fn write_text(text: &str, line: &mut Vec<u8>) {
    let text = inert(text);
    let is_quoted = text.contains([',', '"', '\n', '\r']);
    if is_quoted {
        line.push(b'"');
    }
    for byte in text.bytes() {
        if byte == b'"' {
            line.push(b'"');
        }
        line.push(byte);
    }
    if is_quoted {
        line.push(b'"');
    }
}

impl From<f64> for Cell {
    fn from(number: f64) -> Self {
        Self::Number(number)
    }
}

impl<T: Into<Self>> From<Option<T>> for Cell {
    fn from(value: Option<T>) -> Self {
        value.map_or(Self::Empty, Into::into)
    }
}

impl From<String> for Cell {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}
