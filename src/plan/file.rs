//! The plan's file: versioned JSON, read with bounds and written in a steady order.

use super::{Plan, ValueError, validate};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use serde_json::Value;

pub(super) const FORMAT: &str = "elbowroom-plan";
pub(super) const VERSION: u64 = 1;
/// Far above any drawn plan with a picture, bytes.
pub(super) const LARGEST_FILE: usize = 4 << 20;

/// Why a file could not be read. The open plan stays as it is.
#[derive(Debug, Clone, PartialEq, thiserror::Error, Serialize, Deserialize)]
#[error("{self:?}")]
pub enum FileError {
    /// More bytes than a plan can have.
    TooLarge {
        /// What it has.
        bytes: usize,
        /// The most that is read.
        limit: usize,
    },
    /// Not text in UTF-8.
    NotText,
    /// Not JSON.
    NotJson {
        /// Line of the fault, from 1.
        line: usize,
        /// Column of the fault, from 1.
        column: usize,
    },
    /// JSON, but it does not say that it is a plan.
    NotAPlan,
    /// A version that this program does not know.
    UnknownVersion {
        /// The version found, as written.
        found: String,
        /// The version that is read.
        known: u64,
    },
    /// A field is missing, unknown or of the wrong kind.
    Field {
        /// The path to it, such as `run.points[2].x_m`.
        path: String,
        /// What the reader of the field says.
        detail: String,
    },
    /// A value lies outside what a plan can hold.
    Value(ValueError),
}

impl FileError {
    /// What `value` holds, or which field of it holds something else.
    pub(super) fn in_field<T: DeserializeOwned>(value: Value) -> Result<T, Self> {
        serde_path_to_error::deserialize(value).map_err(|error| Self::Field {
            path: error.path().to_string(),
            detail: short(&error.inner().to_string()),
        })
    }

    /// The path to the field at fault, such as `run.points[2].x_m`, where it is one.
    pub fn path(&self) -> Option<&str> {
        match self {
            Self::Field { path, .. } => Some(path),
            Self::Value(error) => Some(error.path()),
            Self::UnknownVersion { .. } => Some("version"),
            _ => None,
        }
    }

    /// `found` where `known` is read.
    pub(super) fn unknown_version(found: Option<&Value>, known: u64) -> Self {
        Self::UnknownVersion {
            found: found.map_or_else(String::new, |found| short(&found.to_string())),
            known,
        }
    }
}

/// Reads a plan from the bytes of its file. Any bytes end in a plan or a [`FileError`].
pub fn read(bytes: &[u8]) -> Result<Plan, FileError> {
    from_value(parsed(bytes, LARGEST_FILE)?)
}

/// The JSON in `bytes`, of which there may be so many.
pub(super) fn parsed(bytes: &[u8], limit: usize) -> Result<Value, FileError> {
    if bytes.len() > limit {
        return Err(FileError::TooLarge {
            bytes: bytes.len(),
            limit,
        });
    }
    let text = core::str::from_utf8(bytes).map_err(|_| FileError::NotText)?;
    // Some editors put a mark before the text.
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    serde_json::from_str(text).map_err(|error| FileError::NotJson {
        line: error.line(),
        column: error.column(),
    })
}

/// The plan that a file's JSON holds.
pub(super) fn from_value(mut value: Value) -> Result<Plan, FileError> {
    let head = value.as_object_mut().ok_or(FileError::NotAPlan)?;
    if head.remove("format").as_ref().and_then(Value::as_str) != Some(FORMAT) {
        return Err(FileError::NotAPlan);
    }
    match head.remove("version") {
        Some(version) if version.as_u64() == Some(VERSION) => {}
        found => return Err(FileError::unknown_version(found.as_ref(), VERSION)),
    }
    let plan: Plan = FileError::in_field(value)?;
    validate(&plan).map_err(FileError::Value)?;
    Ok(plan)
}

/// The plan as the text of its file.
pub fn write(plan: &Plan) -> String {
    // A plan holds nothing that JSON cannot: no map with odd keys, and `validate` lets no
    // not-a-number in. An empty text would be refused on reading, so nothing is lost in silence.
    let mut text = serde_json::to_string_pretty(&File::of(plan)).unwrap_or_default();
    text.push('\n');
    text
}

/// The same in one line without blanks.
pub(super) fn compact(plan: &Plan) -> String {
    serde_json::to_string(&File::of(plan)).unwrap_or_default()
}

/// A plan's file.
#[derive(Serialize)]
pub(super) struct File<'a> {
    format: &'static str,
    version: u64,
    #[serde(flatten)]
    plan: &'a Plan,
}

impl<'a> File<'a> {
    pub const fn of(plan: &'a Plan) -> Self {
        Self {
            format: FORMAT,
            version: VERSION,
            plan,
        }
    }
}

/// At most the first hundred letters: a hostile file must not fill the page.
fn short(text: &str) -> String {
    text.chars().take(100).collect()
}
