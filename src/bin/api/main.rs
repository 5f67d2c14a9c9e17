//! The JavaScript module's program: the same answers as the terminal tool's, as objects. What other
//! programs call stands in `elbowroom.js` beside this file.

use elbowroom::plan::{Plan, read, write};
use elbowroom::report::answer::{Question, Refused, View, view_units};
use elbowroom::report::the_example;
use js_sys::{Error, JSON, JsString, Reflect};
use serde::Serialize;
use serde_json::{Map, Value};
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::prelude::{JsCast, JsError, JsValue, wasm_bindgen};

/// Nothing is done before a question is put.
fn main() {}

/// The answer to the question called `name`, asked of `plan`, which is an object or the text of a file.
#[wasm_bindgen]
pub fn answer(name: &str, plan: &JsValue, options: &JsValue) -> Result<JsValue, JsValue> {
    let question = Question::put(name, object(options)?).map_err(|error| told((&error).into()))?;
    let plan = plan_of(plan)?;
    let answer = question.answer(&plan);
    handed_over(&answer.map_err(|error| told((&error).into()))?)
}

/// The file of the example that the page opens with.
#[wasm_bindgen]
pub fn example() -> String {
    write(&the_example())
}

/// Drawing and totals of `plan` in words.
#[wasm_bindgen]
pub fn view(plan: &JsValue, options: &JsValue) -> Result<JsValue, JsValue> {
    let units = view_units(object(options)?).map_err(|error| told((&error).into()))?;
    handed_over(&View::of(&plan_of(plan)?, units))
}

fn handed_over(answer: &impl Serialize) -> Result<JsValue, JsValue> {
    // Objects as from JSON's own reader, not maps, and null for what is not there.
    let value = answer.serialize(&Serializer::json_compatible());
    value.map_err(|error| JsError::from(error).into())
}

fn plan_of(plan: &JsValue) -> Result<Plan, JsValue> {
    let text = text(plan)?;
    read(text.as_bytes()).map_err(|error| told((&error).into()))
}

/// A text as it is, and anything else as JSON's own writer has it; it throws where it cannot, as where
/// an object holds itself.
fn text(value: &JsValue) -> Result<String, JsValue> {
    if let Some(text) = value.dyn_ref::<JsString>() {
        return Ok(text.into());
    }
    let written = JSON::stringify(value)?;
    // What JSON leaves out altogether, such as a function, is no text.
    let written: JsValue = written.into();
    Ok(written.as_string().unwrap_or_default())
}

/// The options; none where nothing was given. What is no object is refused by its reader as an option.
fn object(options: &JsValue) -> Result<Map<String, Value>, JsValue> {
    if options.is_undefined() || options.is_null() {
        return Ok(Map::new());
    }
    Ok(match serde_json::from_str(&text(options)?) {
        Ok(Value::Object(fields)) => fields,
        Ok(other) => Map::from_iter([(".".to_owned(), other)]),
        Err(_) => Map::from_iter([(".".to_owned(), Value::Null)]),
    })
}

/// An `Error` with the path to the field at fault.
fn told(why: Refused) -> JsValue {
    let error = Error::new(&why.message);
    let path = why.path.map_or(JsValue::UNDEFINED, JsValue::from);
    // An object that was just made takes any property.
    let _ = Reflect::set(&error, &"path".into(), &path);
    error.into()
}
