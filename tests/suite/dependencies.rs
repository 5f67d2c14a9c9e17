//! What the project is built from: where it comes from, under which licences, and that nothing is there
//! twice without being known.

use serde_json::Value;
use std::collections::BTreeMap;
use std::process::Command;

/// Licences that ask for no more than their notice; of a choice one of these is enough.
const LICENCES: [&str; 11] = [
    "MIT",
    "MIT-0",
    "Apache-2.0",
    "Apache-2.0 WITH LLVM-exception",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "BSL-1.0",
    "CC0-1.0",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];

/// Packages of which two versions are built, since two others ask for each.
const TWICE: [&str; 9] = [
    "convert_case",
    "cpufeatures",
    "getrandom",
    "hashbrown",
    "itertools",
    "r-efi",
    "syn",
    "thiserror",
    "thiserror-impl",
];

fn packages() -> Vec<Value> {
    let told = Command::new(env!("CARGO"))
        .args([
            "metadata",
            "--locked",
            "--offline",
            "--all-features",
            "--format-version",
            "1",
        ])
        .args([
            "--manifest-path",
            concat!(env!("CARGO_MANIFEST_DIR"), "/Cargo.toml"),
        ])
        .output()
        .expect("cargo runs");
    assert!(
        told.status.success(),
        "{}",
        String::from_utf8_lossy(&told.stderr)
    );
    let told: Value = serde_json::from_slice(&told.stdout).expect("cargo writes JSON");
    let packages = told["packages"].as_array().expect("a list").clone();
    assert!(packages.len() > 50, "{} packages", packages.len());
    packages
}

fn name(package: &Value) -> &str {
    package["name"].as_str().expect("each has a name")
}

#[test]
fn all_come_from_the_one_registry() {
    for package in packages() {
        let source = &package["source"];
        let is_own = source.is_null() && name(&package) == "elbowroom";
        let registry = "registry+https://github.com/rust-lang/crates.io-index";
        assert!(
            is_own || source == registry,
            "{} from {source}",
            name(&package)
        );
    }
}

#[test]
fn their_licences_ask_for_no_more_than_a_notice() {
    let is_free = |licence: &str| LICENCES.contains(&licence.trim_matches(['(', ')', ' ']));
    for package in packages() {
        let licence = package["license"].as_str().unwrap_or("none");
        // Older packages write a stroke for "or".
        let licence = licence.replace('/', " OR ");
        let free = licence
            .split(" AND ")
            .all(|needed| needed.split(" OR ").any(is_free));
        assert!(free, "{}: {licence}", name(&package));
    }
}

#[test]
fn none_is_there_twice_but_those_that_are_known() {
    let mut versions: BTreeMap<String, usize> = BTreeMap::new();
    for package in packages() {
        *versions.entry(name(&package).to_owned()).or_default() += 1;
    }
    let twice: Vec<String> = versions
        .into_iter()
        .filter(|(name, count)| *count > 1 && !TWICE.contains(&name.as_str()))
        .map(|(name, count)| format!("{name}: {count}"))
        .collect();
    assert!(twice.is_empty(), "{twice:?}");
}

/// The fuzzer's package has a lock file of its own, which nothing else builds by.
#[test]
fn the_fuzz_targets_are_locked_to_what_the_project_needs() {
    let locked = include_str!("../fuzz/Cargo.lock");
    let packages = packages();
    let own = packages.iter().find(|it| name(it) == "elbowroom").unwrap();
    let needed = own["dependencies"].as_array().expect("a list").iter();
    let needed = needed.filter(|it| it["kind"].is_null() && it["optional"] == false);
    let needed: Vec<&str> = needed.map(name).collect();
    assert!(needed.len() >= 4, "{needed:?}");
    for name in needed {
        let line = format!("name = \"{name}\"\n");
        assert!(locked.contains(&line), "tests/fuzz/Cargo.lock: {name}");
    }
}
