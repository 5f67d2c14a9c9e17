//! A cell of a table of comma-separated values (RFC 4180).

use crate::report::csv::text_cell;
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
    /// A text stands as in the page's own tables: quoted where it must be, and one that begins like a
    /// formula kept a text.
    ///
    /// ```
    /// use elbowroom::report::answer::Cell;
    /// let mut line = Vec::new();
    /// Cell::Text("=1+1, \"two\"".into()).write(&mut line);
    /// assert_eq!(line, b"\"'=1+1, \"\"two\"\"\"");
    /// line.clear();
    /// Cell::Text(" two".into()).write(&mut line);
    /// assert_eq!(line, b"\" two\"");
    /// ```
    pub fn write(&self, line: &mut Vec<u8>) {
        match self {
            Self::Empty => {}
            Self::Number(number) if !number.is_finite() => {}
            // Counts without the point that JSON's numbers have: a table's reader tells no kinds apart.
            Self::Number(number) => line.extend_from_slice(number.to_string().as_bytes()),
            Self::Text(text) => line.extend_from_slice(text_cell(text).as_bytes()),
        }
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
