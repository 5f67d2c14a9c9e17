//! A question as another program puts it: its name, and an object of options.

use super::{Question, WishError, wishes};
use crate::report::Paper;
use crate::report::handover::{SheetReading, SheetWish};
use crate::report::words::Language;
use crate::units::UnitSystem;
use serde::Deserialize;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value};

impl Question {
    /// The question called `name` with `options`, of which each may be left out.
    ///
    /// # Errors
    ///
    /// A [`WishError`] with the path of the option that cannot be; `.` where there is no such question.
    ///
    /// ```
    /// use elbowroom::report::answer::Question;
    /// use serde_json::json;
    /// let options = json!({"bands": true}).as_object().cloned().expect("it is one");
    /// let question = Question::put("figures", options).expect("it can be");
    /// assert_eq!(question, Question::Figures { with_bands: true });
    /// ```
    pub fn put(name: &str, options: Map<String, Value>) -> Result<Self, WishError> {
        Ok(match name {
            "figures" => {
                let FigureOptions { bands } = read(options)?;
                Self::Figures { with_bands: bands }
            }
            "check" => {
                let NoOptions {} = read(options)?;
                Self::Check
            }
            "reroute" => Self::Reroute(wishes(options)?),
            "diagnose" => {
                let VisitOptions { visit } = read(options)?;
                Self::Diagnose { visit }
            }
            "sheet" => {
                let asked: SheetOptions = read(options)?;
                let language = Language::of_tag(&asked.language);
                let language = language.ok_or_else(|| WishError::Field {
                    path: "language".to_owned(),
                    detail: asked.language.chars().take(100).collect(),
                })?;
                let wish = SheetWish {
                    reading: asked.reading,
                    paper: asked.paper,
                    language,
                    units: asked.units.into(),
                };
                Self::Sheet {
                    visit: asked.visit,
                    wish,
                }
            }
            _ => {
                return Err(WishError::Field {
                    path: ".".to_owned(),
                    detail: name.chars().take(100).collect(),
                });
            }
        })
    }
}

/// The units that a view is asked for in.
///
/// # Errors
///
/// A [`WishError`] with the path of the option that cannot be.
pub fn view_units(options: Map<String, Value>) -> Result<UnitSystem, WishError> {
    let ViewOptions { units } = read(options)?;
    Ok(units.into())
}

fn read<T: DeserializeOwned>(options: Map<String, Value>) -> Result<T, WishError> {
    serde_path_to_error::deserialize(Value::Object(options)).map_err(|error| WishError::Field {
        path: error.path().to_string().chars().take(100).collect(),
        detail: error.inner().to_string().chars().take(100).collect(),
    })
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct FigureOptions {
    #[serde(default)]
    bands: bool,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct NoOptions {}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct VisitOptions {
    #[serde(default)]
    visit: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SheetOptions {
    #[serde(default)]
    visit: Option<String>,
    #[serde(default)]
    units: Units,
    #[serde(default)]
    reading: SheetReading,
    #[serde(default)]
    paper: Paper,
    #[serde(default = "english")]
    language: String,
}

fn english() -> String {
    Language::English.tag().to_owned()
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ViewOptions {
    #[serde(default)]
    units: Units,
}

#[derive(Default, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Units {
    #[default]
    Us,
    Si,
}

impl From<Units> for UnitSystem {
    fn from(units: Units) -> Self {
        match units {
            Units::Us => Self::UsCustomary,
            Units::Si => Self::Si,
        }
    }
}
