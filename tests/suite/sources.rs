//! Every source in the code is listed, and none is empty.

use elbowroom::source::{Source, Standing};
use elbowroom::system::{COEFFICIENTS, SOURCES};
use std::path::{Path, PathBuf};

fn rust_files(folder: &Path, files: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("a folder of the sources") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            rust_files(&path, files);
        } else if path.extension().is_some_and(|end| end == "rs") {
            files.push(path);
        }
    }
}

/// The titles of all `static NAME: Source` below `src`, but those of the code rules.
fn titles_in_code() -> Vec<String> {
    let mut files = Vec::new();
    rust_files(
        &Path::new(env!("CARGO_MANIFEST_DIR")).join("src"),
        &mut files,
    );
    let mut titles = Vec::new();
    for file in files {
        if file.components().any(|part| part.as_os_str() == "rules") {
            continue;
        }
        let text = std::fs::read_to_string(&file).expect("a source file");
        for made in text.split(": Source = Source {").skip(1) {
            let from = made.find("title: \"").expect("a title") + "title: \"".len();
            let to = from + made[from..].find("\",").expect("the title's end");
            titles.push(made[from..to].to_owned());
        }
    }
    titles
}

#[test]
fn every_source_of_the_physics_is_listed_once() {
    let mut code = titles_in_code();
    let mut listed: Vec<String> = SOURCES
        .iter()
        .map(|(_, source)| source.title.to_owned())
        .collect();
    assert!(code.len() > 20, "{code:?}");
    code.sort();
    listed.sort();
    assert_eq!(code, listed);
}

#[test]
fn no_source_is_without_title_edition_or_locator() {
    let is_whole = |source: &Source| {
        [source.title, source.edition, source.locator]
            .iter()
            .all(|text| !text.trim().is_empty())
    };
    for (subject, source) in SOURCES {
        assert!(is_whole(source), "{subject:?}: {source:?}");
    }
}

/// An uncertain input's own source is one of the listed ones: the page can show where it comes from.
#[test]
fn every_coefficient_names_a_listed_source() {
    for (place, coefficient) in COEFFICIENTS.iter().enumerate() {
        let listed = SOURCES
            .iter()
            .any(|(_, source)| core::ptr::eq(*source, coefficient.source));
        assert!(listed, "input {place}: {:?}", coefficient.source);
    }
}

/// The figures that no open source was found for say so.
#[test]
fn hood_elbow_and_blower_are_called_what_they_are() {
    use elbowroom::duct::tables::{blower, segmented_elbow, termination};
    for source in [
        &blower::SOURCE,
        &segmented_elbow::SOURCE,
        &termination::SOURCE,
    ] {
        assert_ne!(source.standing, Standing::Published, "{source:?}");
    }
}
