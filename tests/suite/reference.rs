//! Reads the check sets of `tests/reference/data`.

use serde::de::DeserializeOwned;
use std::path::PathBuf;

/// Where `name` stands among the check sets.
pub fn path(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("tests/reference/data")
        .join(name)
}

/// The rows of the set called `name`, of which there must be at least `least`: each field in its
/// place, an empty one as `None`.
pub fn rows<T: DeserializeOwned>(name: &str, least: usize) -> Vec<T> {
    let mut reader = csv::Reader::from_path(path(name)).expect("the check set opens");
    let rows: Vec<T> = reader
        .deserialize()
        .map(|row| row.expect("a row of the check set reads"))
        .collect();
    assert!(
        rows.len() >= least,
        "{name}: {} rows, at least {least} are wanted",
        rows.len()
    );
    rows
}
