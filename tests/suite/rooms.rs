//! The rooms of `src`: who may use whom, who may name the browser's libraries, how long a file may
//! be. Source: the project's architecture text.

use crate::rust_text::{Kind, Token, tokens};
use crate::tally::Tally;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// Each room and the rooms that it may use, after the arrows
/// `bin -> web -> editor -> report -> {search, diagnosis} -> scene -> rules -> system -> {duct, plan}
/// -> air -> {units, numeric, source}`. Rooms in one pair of braces know nothing of each other;
/// `plan` knows nothing of physics, so not of `air` either.
const ALLOWED: [(&str, &str); 15] = [
    ("units", ""),
    ("numeric", ""),
    ("source", ""),
    ("air", "units numeric source"),
    ("duct", "units numeric source air"),
    ("plan", "units numeric source"),
    ("system", "units numeric source air duct plan"),
    ("rules", "units numeric source air duct plan system"),
    ("scene", "units numeric source air duct plan system rules"),
    ("search", BELOW_SEARCH),
    ("diagnosis", BELOW_SEARCH),
    ("report", BELOW_REPORT),
    ("editor", BELOW_EDITOR),
    ("web", BELOW_WEB),
    ("bin", BELOW_BIN),
];
const BELOW_SEARCH: &str = "units numeric source air duct plan system rules scene";
const BELOW_REPORT: &str = "units numeric source air duct plan system rules scene search diagnosis";
const BELOW_EDITOR: &str =
    "units numeric source air duct plan system rules scene report search diagnosis";
const BELOW_WEB: &str =
    "units numeric source air duct plan system rules scene report search diagnosis editor";
const BELOW_BIN: &str =
    "units numeric source air duct plan system rules scene report search diagnosis editor web";

/// Libraries of the browser, as code spells them, and where they may be named.
const BROWSER_LIBRARIES: [&str; 8] = [
    "leptos",
    "web_sys",
    "js_sys",
    "wasm_bindgen",
    "serde_wasm_bindgen",
    "wasm_bindgen_futures",
    "gloo_timers",
    "idb",
];
const BROWSER_PLACES: [&str; 3] = ["web", "bin/api", PARTED];
/// Where the page's program is parted in two files, which no safe code can.
const PARTED: &str = "bin/app.rs";

/// Past this a file is split by noun.
const LONGEST_FILE: usize = 400;
/// Far fewer files than there are: the tests must not pass over an empty folder.
const LEAST_FILES: usize = 40;

/// A file of `src`, by its path from there.
pub struct SourceFile {
    path: PathBuf,
    pub text: String,
}

impl SourceFile {
    fn room(&self) -> &str {
        self.path
            .iter()
            .next()
            .and_then(|first| first.to_str())
            .unwrap()
    }

    pub fn is_in(&self, folder: &str) -> bool {
        self.path.starts_with(folder)
    }
}

fn sources() -> Vec<SourceFile> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut files = Vec::new();
    gather(&root, &root, &mut files);
    assert!(
        files.len() >= LEAST_FILES,
        "only {} files in src",
        files.len()
    );
    files.sort_by(|one, other| one.path.cmp(&other.path));
    files
}

fn gather(root: &Path, folder: &Path, files: &mut Vec<SourceFile>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            gather(root, &path, files);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            files.push(SourceFile {
                path: path.strip_prefix(root).unwrap().to_owned(),
                text: std::fs::read_to_string(&path).unwrap(),
            });
        }
    }
}

/// The rooms that `room` may use; none where it is no room.
fn allowed(room: &str) -> Option<Vec<&'static str>> {
    let row = ALLOWED.iter().find(|(name, _)| *name == room);
    row.map(|(_, allowed)| allowed.split_whitespace().collect())
}

/// The first names after the root of the crate in a path or a use tree that begins at `at`, just
/// after `crate::`: one name, or all that lead a branch between braces.
fn first_names(tokens: &[Token], at: usize) -> Vec<(String, usize)> {
    let named = |token: &Token| match &token.kind {
        Kind::Word(word) => Some((word.clone(), token.line)),
        Kind::Mark('*') => Some(("*".to_owned(), token.line)),
        _ => None,
    };
    let Some(first) = tokens.get(at) else {
        return Vec::new();
    };
    if !first.is_mark('{') {
        return named(first).into_iter().collect();
    }
    let mut names = Vec::new();
    let mut depth = 0_usize;
    let mut leads = false;
    for token in &tokens[at..] {
        match token.kind {
            Kind::Mark('{') => {
                depth += 1;
                leads = depth == 1;
            }
            Kind::Mark('}') => {
                depth -= 1;
                if depth == 0 {
                    break;
                }
            }
            Kind::Mark(',') if depth == 1 => leads = true,
            _ if leads => {
                names.extend(named(token));
                leads = false;
            }
            _ => {}
        }
    }
    names
}

/// The rooms that `text`, a file of `room`, uses, each with its line.
fn rooms_used(room: &str, text: &str) -> Vec<(String, usize)> {
    let tokens = tokens(text);
    let colons = |at: usize| {
        let mark = |at: usize| tokens.get(at).is_some_and(|token| token.is_mark(':'));
        mark(at) && mark(at + 1)
    };
    let mut used = Vec::new();
    for (index, token) in tokens.iter().enumerate() {
        match token.word() {
            Some("crate" | "elbowroom") if colons(index + 1) => {
                used.extend(first_names(&tokens, index + 3));
            }
            // Out of the room and into another: `super::super::room`, where what follows is a room.
            Some("super") if colons(index + 1) => {
                let names = first_names(&tokens, index + 3);
                used.extend(
                    names
                        .into_iter()
                        .filter(|(name, _)| allowed(name).is_some()),
                );
            }
            _ => {}
        }
    }
    used.retain(|(name, _)| name != room);
    used
}

/// What in `text`, a file of `room`, goes against the arrows.
fn against_the_arrows(room: &str, text: &str) -> Vec<String> {
    let may_use = allowed(room).unwrap_or_default();
    rooms_used(room, text)
        .into_iter()
        .filter(|(name, _)| !may_use.contains(&name.as_str()))
        .map(|(name, line)| format!("line {line}: {room} uses {name}"))
        .collect()
}

/// Holds for every file of `src` that `faults_of` finds nothing in it.
pub fn report(subject: &'static str, faults_of: impl Fn(&SourceFile) -> Vec<String>) {
    let mut tally = Tally::new(subject);
    for file in sources() {
        let faults = faults_of(&file);
        tally.holds(
            format!("src/{}: {}", file.path.display(), faults.join("; ")),
            faults.is_empty(),
        );
    }
    tally.finish(LEAST_FILES);
}

#[test]
fn every_use_follows_the_arrows() {
    report("arrows", |file| {
        if file.is_in("lib.rs") {
            return Vec::new();
        }
        if allowed(file.room()).is_none() {
            return vec![format!("{} is no room", file.room())];
        }
        against_the_arrows(file.room(), &file.text)
    });
}

/// Each room in the table may use only rooms above it in the table, so no arrow can run in a circle.
#[test]
fn the_table_of_arrows_has_no_circle() {
    let mut above = BTreeSet::new();
    for (room, uses) in ALLOWED {
        for used in uses.split_whitespace() {
            assert!(above.contains(used), "{room} uses {used}");
        }
        assert!(above.insert(room), "{room} stands twice");
    }
}

#[test]
fn a_use_against_the_arrows_is_found() {
    for text in [
        "use crate::web::Page;",
        "use crate::{units::Length, web::{self, Page}};",
        "fn f() -> crate::web::Page { todo() }",
        "use super::super::web::Page;",
        "use crate::*;",
        "macro_rules! m { () => { $crate::web::page() } }",
    ] {
        assert_eq!(against_the_arrows("scene", text).len(), 1, "{text}");
    }
    for text in [
        "use crate::units::Length;",
        "use crate::{units::{Length, Angle}, plan::Plan};",
        "// use crate::web::Page;",
        "/// ```\n/// use elbowroom::web::Page;\n/// ```\nfn f() {}",
        "const S: &str = \"crate::web\";",
        "use super::{Mark, Role};",
        "use crate::scene::Mark;",
    ] {
        assert_eq!(
            against_the_arrows("scene", text),
            Vec::<String>::new(),
            "{text}"
        );
    }
}

/// `lib.rs` names rooms alone, and keeps the page out of a build without it.
#[test]
fn the_library_holds_rooms_alone() {
    let text = sources()
        .into_iter()
        .find(|file| file.is_in("lib.rs"))
        .unwrap()
        .text;
    let tokens = tokens(&text);
    let modules: Vec<&str> = tokens
        .windows(2)
        .filter(|pair| pair[0].word() == Some("mod"))
        .filter_map(|pair| pair[1].word())
        .collect();
    assert!(modules.len() >= 9, "{modules:?}");
    for module in &modules {
        assert!(allowed(module).is_some(), "{module} is no room");
    }
    if modules.contains(&"web") {
        let gate = "#[cfg(feature = \"web\")]\npub mod web;";
        assert!(text.contains(gate), "the room web stands without its gate");
    }
}

fn browser_names(text: &str) -> Vec<String> {
    tokens(text)
        .iter()
        .filter_map(|token| Some((token.word()?, token.line)))
        .filter(|(word, _)| BROWSER_LIBRARIES.contains(word))
        .map(|(word, line)| format!("line {line}: {word}"))
        .collect()
}

#[test]
fn only_the_page_names_the_browsers_libraries() {
    assert_eq!(browser_names("use web_sys::Element; // leptos").len(), 1);
    for library in BROWSER_LIBRARIES {
        let text = format!("use {library}::Thing;");
        assert_eq!(browser_names(&text).len(), 1, "{library}");
    }
    report("the browser's libraries", |file| {
        if BROWSER_PLACES.iter().any(|place| file.is_in(place)) {
            return Vec::new();
        }
        browser_names(&file.text)
    });
}

#[test]
fn only_the_parting_of_the_program_may_be_unsafe() {
    report("unsafe code", |file| {
        let allows = file.text.contains("unsafe_code");
        let fault = (allows != file.is_in(PARTED)).then(|| "allows it, or does not".to_owned());
        fault.into_iter().collect()
    });
}

#[test]
fn no_file_is_overlong() {
    report("length of files", |file| {
        let lines = file.text.lines().count();
        let fault = (lines > LONGEST_FILE).then(|| format!("{lines} lines"));
        fault.into_iter().collect()
    });
}
