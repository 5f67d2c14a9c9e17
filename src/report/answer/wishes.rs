//! How another program says what a search shall look for: only what shall be otherwise than usual.

use crate::search::Options;
use crate::units::Length;
use serde_json::{Map, Value};

/// Why a wish cannot be.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum WishError {
    /// A field is unknown or of the wrong kind.
    Field {
        /// The path to it.
        path: String,
        /// What the reader of the field says.
        detail: String,
    },
    /// A number lies outside what is looked for.
    OutOfRange {
        /// The field.
        path: &'static str,
        /// The number.
        value: f64,
        /// The least.
        least: f64,
        /// The greatest.
        greatest: f64,
    },
}

impl WishError {
    /// The field at fault.
    pub fn path(&self) -> &str {
        match self {
            Self::Field { path, .. } => path,
            Self::OutOfRange { path, .. } => path,
        }
    }
}

/// The options with the fields of `wanted` in place of the usual ones. A search with them ends, in
/// memory that there is.
///
/// ```
/// use elbowroom::report::answer::wishes;
/// use serde_json::json;
/// let wanted = json!({"most_suggestions": 2});
/// let options = wishes(wanted.as_object().expect("it is one").clone()).expect("it can be");
/// assert_eq!(options.most_suggestions, 2);
/// ```
pub fn wishes(wanted: Map<String, Value>) -> Result<Options, WishError> {
    let field = |path: &str, detail: &str| WishError::Field {
        path: path.chars().take(100).collect(),
        detail: detail.chars().take(100).collect(),
    };
    let usual = serde_json::to_value(Options::default());
    let Ok(Value::Object(mut fields)) = usual else {
        return Err(field(".", "none"));
    };
    fields.extend(wanted);
    let options: Options = serde_path_to_error::deserialize(Value::Object(fields))
        .map_err(|error| field(&error.path().to_string(), &error.inner().to_string()))?;
    bounded(options)
}

/// A search is bounded by its labels, so they are. Of the computation.
const MOST_LABELS: f64 = 4e6;
const MOST_SUGGESTIONS: f64 = 100.0;
/// A wider clearance or a higher roof than these is a slip. Of the computation.
const WIDEST_CLEARANCE: f64 = 1.0;
const HIGHEST_ROOF: f64 = 30.0;
const MOST_SLACK: f64 = 10.0;

/// `options` as they are, where a search with them ends in memory that there is.
#[allow(clippy::cast_precision_loss, reason = "counts are far below 2^52")]
pub fn bounded(options: Options) -> Result<Options, WishError> {
    let suggestions = options.most_suggestions as f64;
    let roof = options.roof_height.map_or(0.0, Length::metres);
    for (path, value, least, greatest) in [
        (
            "clearance_m",
            options.clearance.metres(),
            0.0,
            WIDEST_CLEARANCE,
        ),
        ("most_suggestions", suggestions, 1.0, MOST_SUGGESTIONS),
        ("slack", options.slack, 1.0, MOST_SLACK),
        ("most_labels", options.most_labels as f64, 1.0, MOST_LABELS),
        ("roof_height_m", roof, 0.0, HIGHEST_ROOF),
    ] {
        if !(least..=greatest).contains(&value) {
            return Err(WishError::OutOfRange {
                path,
                value,
                least,
                greatest,
            });
        }
    }
    Ok(options)
}
