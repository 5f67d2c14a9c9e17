//! The example as a file, and ways to spoil it.

use elbowroom::plan::{self, Flow, Plan, write};
use elbowroom::units::Airflow;
use serde_json::Value;

pub fn example() -> Plan {
    plan::example(
        "The \"first\" job".to_owned(),
        "Two lines\nand \u{e9}\u{2032}\u{1f300} \\ <b>".to_owned(),
        "chimney breast".to_owned(),
    )
}

/// The example with something of everything: a stated airflow too.
pub fn with_stated_airflow() -> Plan {
    let mut plan = example();
    plan.flow = Flow::StatedAirflow {
        airflow: Airflow::from_cubic_metres_per_second(0.05),
    };
    plan
}

pub fn document() -> Value {
    serde_json::from_str(&write(&with_stated_airflow())).unwrap()
}

/// The example's document with `value` at `pointer` (RFC 6901), there or new.
pub fn with(pointer: &str, value: Value) -> Vec<u8> {
    let mut document = document();
    let (parent, name) = pointer.rsplit_once('/').unwrap();
    match document.pointer_mut(parent).unwrap() {
        Value::Object(fields) => {
            fields.insert(name.to_owned(), value);
        }
        Value::Array(items) => items[name.parse::<usize>().unwrap()] = value,
        other => panic!("{parent} is {other}"),
    }
    serde_json::to_vec(&document).unwrap()
}

/// The example's document without the field at `pointer`.
pub fn without(pointer: &str) -> Vec<u8> {
    let mut document = document();
    let (parent, name) = pointer.rsplit_once('/').unwrap();
    let fields = document
        .pointer_mut(parent)
        .unwrap()
        .as_object_mut()
        .unwrap();
    assert!(fields.remove(name).is_some(), "{pointer} is not there");
    serde_json::to_vec(&document).unwrap()
}

/// The example's text with its first `from` made `to`.
pub fn replaced(from: &str, to: &str) -> Vec<u8> {
    let text = write(&with_stated_airflow());
    assert!(text.contains(from), "{from} is not there");
    text.replacen(from, to, 1).into_bytes()
}
