//! Any bytes end in a plan or an error, and what is a plan is written and reads back the same.
//! Source: that writing and reading undo each other is the format's promise.

use crate::example_file::{document, with, with_stated_airflow};
use crate::seeded;
use elbowroom::plan::{read, write};
use proptest::prelude::*;
use serde_json::{Value, json};

/// A plan that was read can be written and reads back the same.
fn reads_back(bytes: &[u8]) -> Result<(), TestCaseError> {
    if let Ok(plan) = read(bytes) {
        let text = write(&plan);
        let again = read(text.as_bytes());
        prop_assert_eq!(again.as_ref(), Ok(&plan), "written as {}", text);
        prop_assert_eq!(write(&plan), text);
    }
    Ok(())
}

#[test]
fn any_bytes_end_in_a_plan_or_an_error() {
    let bytes = prop::collection::vec(any::<u8>(), 0..600);
    seeded::check(2000, &bytes, |bytes| reads_back(&bytes));
}

/// One change of a text's bytes.
#[derive(Debug, Clone)]
enum Change {
    Put(u8),
    Insert(u8),
    Remove(usize),
    Repeat(usize),
    Cut,
    Number(&'static str),
}

fn change() -> impl Strategy<Value = Change> {
    let byte = || {
        let usual = prop::sample::select(b"0123456789.-+eE,:[]{}\"\\ntu \x00\xff".to_vec());
        prop_oneof![3 => usual, 1 => any::<u8>()]
    };
    let number = prop::sample::select(vec![
        "0",
        "-0.0",
        "-1",
        "1",
        "1.5",
        "0.05",
        "0.3333333333333333",
        "1e-9",
        "4e2",
        "1e308",
        "1e999",
        "null",
        "\"\"",
        "12345678901234567890",
        "[]",
    ]);
    prop_oneof![
        6 => byte().prop_map(Change::Put),
        4 => byte().prop_map(Change::Insert),
        3 => (1..40_usize).prop_map(Change::Remove),
        2 => (1..200_usize).prop_map(Change::Repeat),
        1 => Just(Change::Cut),
        12 => number.prop_map(Change::Number),
    ]
}

fn changed(bytes: &mut Vec<u8>, at: prop::sample::Index, change: &Change) {
    if bytes.is_empty() {
        return;
    }
    let at = at.index(bytes.len());
    let until = |length: usize| (at + length).min(bytes.len());
    match *change {
        Change::Put(byte) => bytes[at] = byte,
        Change::Insert(byte) => bytes.insert(at, byte),
        Change::Remove(length) => {
            bytes.drain(at..until(length));
        }
        Change::Repeat(length) => {
            let copy = bytes[at..until(length)].to_vec();
            bytes.splice(at..at, copy);
        }
        Change::Cut => bytes.truncate(at),
        Change::Number(text) => {
            // The first number from here on gives way to another value.
            let is_part = |byte: &u8| byte.is_ascii_digit() || *byte == b'.' || *byte == b'-';
            let Some(start) = bytes[at..].windows(2).position(|pair| pair == b": ") else {
                return;
            };
            let start = at + start + 2;
            let length = bytes[start..]
                .iter()
                .take_while(|byte| is_part(byte))
                .count();
            bytes.splice(start..start + length, text.bytes());
        }
    }
}

/// Some of these must still be plans, or the property would say nothing of them.
#[test]
fn any_change_of_a_file_ends_in_a_plan_or_an_error() {
    let changes = prop::collection::vec((any::<prop::sample::Index>(), change()), 1..=3);
    let text = write(&with_stated_airflow());
    let plans = core::cell::Cell::new(0_u32);
    seeded::check(4000, &changes, |changes| {
        let mut bytes = text.clone().into_bytes();
        for (at, change) in &changes {
            changed(&mut bytes, *at, change);
        }
        plans.set(plans.get() + u32::from(read(&bytes).is_ok()));
        reads_back(&bytes)
    });
    assert!(
        plans.get() > 200,
        "only {} of the changed files are plans",
        plans.get()
    );
}

/// A plan made elsewhere may have every digit that a double has, in every number.
#[test]
fn numbers_with_every_digit_read_back() {
    let shares = prop::collection::vec(0.0..1.0_f64, 40);
    seeded::check(500, &shares, |shares| {
        let mut document = document();
        let mut shares = shares.into_iter();
        spread(&mut document, &mut shares);
        let bytes = serde_json::to_vec(&document).unwrap();
        prop_assert!(read(&bytes).is_ok(), "{:?}", read(&bytes));
        reads_back(&bytes)
    });
}

/// Moves each number of `value` by less than a hundredth of itself.
fn spread(value: &mut Value, shares: &mut impl Iterator<Item = f64>) {
    match value {
        Value::Number(number) if number.is_f64() => {
            let moved = number.as_f64().unwrap() * (1.0 - 0.01 * shares.next().unwrap_or(0.5));
            *value = json!(moved);
        }
        Value::Array(items) => items.iter_mut().for_each(|item| spread(item, shares)),
        Value::Object(fields) => fields.values_mut().for_each(|field| spread(field, shares)),
        _ => {}
    }
}

/// The turn of the dryer, which is kept in radians and written in degrees, with every digit.
#[test]
fn turns_with_every_digit_read_back() {
    seeded::check(500, &(-360.0..360.0_f64), |turned_deg| {
        reads_back(&with("/dryer/turned_deg", json!(turned_deg)))
    });
}
