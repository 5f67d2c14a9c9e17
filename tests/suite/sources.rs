//! Every source in the code is listed, and none is empty.

use elbowroom::rules::{RULE_SETS, rule_sources};
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

/// Every file below `src` but the macro's own, with its text.
fn all_files() -> Vec<(PathBuf, String)> {
    let mut files = Vec::new();
    rust_files(
        &Path::new(env!("CARGO_MANIFEST_DIR")).join("src"),
        &mut files,
    );
    files.retain(|file| !file.ends_with("source/declare.rs"));
    let text = |file: PathBuf| {
        let text = std::fs::read_to_string(&file).expect("a source file");
        (file, text)
    };
    files.into_iter().map(text).collect()
}

fn is_of(file: &Path, room: &str) -> bool {
    file.components().any(|part| part.as_os_str() == room)
}

/// The titles of all that `source!` declares in the code: those of the physics, and those of the
/// code rules.
fn titles_in_code() -> [Vec<String>; 2] {
    let mut titles = [Vec::new(), Vec::new()];
    for (file, text) in all_files() {
        for made in text.split("source! {").skip(1) {
            let from = made.find("title: \"").expect("a title") + "title: \"".len();
            let to = from + made[from..].find("\",").expect("the title's end");
            titles[usize::from(is_of(&file, "rules"))].push(made[from..to].to_owned());
        }
    }
    titles
}

#[test]
fn every_source_of_the_physics_is_listed_once() {
    let [mut code, _] = titles_in_code();
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
fn every_source_of_the_code_rules_is_listed() {
    let [_, mut code] = titles_in_code();
    let mut listed: Vec<&str> = rule_sources().map(|source| source.title).collect();
    listed.sort_unstable();
    listed.dedup();
    code.sort();
    code.dedup();
    assert!(code.len() > 15, "{code:?}");
    assert_eq!(code, listed);
}

/// A source or an uncertain number is declared in the one way that writes its documentation from the
/// very text and figures that the page shows.
#[test]
fn sources_and_coefficients_are_declared_so_that_their_documentation_cannot_differ() {
    for (file, text) in all_files() {
        for other in [": Source = Source {", ": Coefficient = Coefficient {"] {
            assert!(!text.contains(other), "{}: {other}", file.display());
        }
    }
}

/// The rooms whose figures are of physics or of a code.
const ROOMS_OF_FIGURES: [&str; 7] = [
    "air",
    "duct",
    "plan",
    "system",
    "rules",
    "search",
    "diagnosis",
];

/// What a const's own documentation says that its figure rests on.
#[derive(Debug, PartialEq)]
enum Rests {
    /// A tolerance or a bound of the computation: no figure of nature and of no code.
    OnNothing,
    /// A source by its name.
    On(String),
    /// A clause of a rule set by its topic.
    OnClause(String),
}

fn rests(documentation: &str) -> Option<Rests> {
    if documentation.contains("Of the computation.") {
        return Some(Rests::OnNothing);
    }
    let link = |after: &str| {
        let (_, rest) = documentation.split_once(after)?;
        let (path, _) = rest.split_once("`]")?;
        Some(path.rsplit("::").next().unwrap_or(path).to_owned())
    };
    let clause = link("Source: clause [`").map(Rests::OnClause);
    clause.or_else(|| link("Source: [`").map(Rests::On))
}

/// Every const of numbers in a text, with its documentation; one without takes that of the const right
/// before it.
fn number_consts(text: &str) -> Vec<(String, String)> {
    let mut found = Vec::new();
    let (mut documentation, mut inherited) = (String::new(), String::new());
    for line in text.lines().map(str::trim) {
        if let Some(more) = line.strip_prefix("///") {
            documentation.push_str(more);
            continue;
        }
        if line.starts_with("#[") {
            continue;
        }
        let declared = line
            .strip_prefix("pub(super) ")
            .or_else(|| line.strip_prefix("pub "))
            .unwrap_or(line);
        let of_numbers = |kind: &str| {
            [
                "f64",
                "Length",
                "Airflow",
                "Pressure",
                "Angle",
                "Temperature",
            ]
            .iter()
            .any(|number| kind.contains(number))
        };
        let named = declared
            .strip_prefix("const ")
            .and_then(|rest| rest.split_once(": "))
            .filter(|(name, _)| !name.contains(char::is_lowercase));
        match named {
            Some((name, kind)) if of_numbers(kind.split('=').next().unwrap_or(kind)) => {
                if documentation.is_empty() {
                    documentation.clone_from(&inherited);
                }
                found.push((name.to_owned(), documentation.clone()));
                inherited.clone_from(&documentation);
            }
            _ => inherited.clear(),
        }
        documentation.clear();
    }
    found
}

/// No number of physics or of a code stands alone: each const says which source it rests on, that
/// source is in the code, and a clause's topic is in a rule set.
#[test]
fn every_const_with_a_figure_names_its_source() {
    let files = all_files();
    let is_declared = |name: &str| {
        let declared = format!("static {name} {{");
        files.iter().any(|(_, text)| text.contains(&declared))
    };
    let has_clause = |topic: &str| {
        let mut clauses = RULE_SETS.iter().flat_map(|set| set.clauses.iter());
        clauses.any(|clause| format!("{:?}", clause.topic) == topic)
    };
    let (mut walked, mut of_sources) = (0, 0);
    for (file, text) in &files {
        if !ROOMS_OF_FIGURES.iter().any(|room| is_of(file, room)) {
            continue;
        }
        for (name, documentation) in number_consts(text) {
            let place = format!("{}: {name}: {documentation}", file.display());
            walked += 1;
            match rests(&documentation) {
                Some(Rests::OnNothing) => {}
                Some(Rests::On(source)) => {
                    of_sources += 1;
                    assert!(is_declared(&source), "{place}");
                }
                Some(Rests::OnClause(topic)) => {
                    of_sources += 1;
                    assert!(has_clause(&topic), "{place}");
                }
                None => panic!("no source: {place}"),
            }
        }
    }
    assert!(walked > 60 && of_sources > 40, "{walked}, {of_sources}");
}

#[test]
fn the_reader_of_consts_finds_what_lacks_a_source() {
    let text = "/// A speed.\nconst SPEED: f64 = 3.0;\n/// A limit.\n/// Source: clause [`RuleTopic::Length`].\n\
                pub const LIMIT: Length = Length::from_feet(1.0);\nconst OTHER: f64 = 1.0;";
    let found = number_consts(text);
    let names: Vec<&str> = found.iter().map(|(name, _)| name.as_str()).collect();
    assert_eq!(names, ["SPEED", "LIMIT", "OTHER"]);
    assert_eq!(rests(&found[0].1), None);
    let clause = Some(Rests::OnClause("Length".to_owned()));
    assert_eq!(
        (rests(&found[1].1), rests(&found[2].1)),
        (clause, Some(Rests::OnClause("Length".to_owned())))
    );
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
    for source in rule_sources() {
        assert!(is_whole(source), "{source:?}");
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
