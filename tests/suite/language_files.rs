//! The words of every language, read as source: what English says in an arm, each other language says
//! too, in words of its own. The exhaustive matches see to it that no key is without an arm; here no
//! arm is without a text, and none was left in English.
//!
//! Source of what is right: the English files, which are the first; that English words of the list
//! below are no Spanish words is common knowledge of the two languages, no source.

use crate::rust_text::{Kind, Token, plain_code, tokens};
use crate::tally::Tally;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

const FIRST: &str = "en";
const OTHERS: [&str; 1] = ["es"];
/// Far fewer arms with texts than there are: the tests must not pass over an empty folder.
const LEAST_ARMS: usize = 500;
/// A text without as many letters in a row is a figure, a symbol or a unit.
const LETTERS: usize = 3;

/// Texts that are the same in both languages, with the reason in a word.
const SAME: [(&str, &str); 10] = [
    ("Elbowroom", "name"),
    ("ft, in. w.c., cfm", "units"),
    ("Rennels & Hudson", "authors"),
    ("Miller", "author"),
    ("Ito", "author"),
    ("Idelchik", "author"),
    ("Total", "same word"),
    ("total", "same word"),
    ("gas", "same word"),
    ("factor {}", "same word"),
];

/// Functions whose sentence another language builds in another way, with the way.
const BUILT_OTHERWISE: [(&str, &str); 3] = [
    ("findings_count", "the verb agrees with its number"),
    ("named", "the article agrees with its noun"),
    ("numbered", "the plural comes from the caller"),
];

/// Words that English sentences are made of and that are no Spanish words, nor signs of units.
pub const ENGLISH: [&str; 56] = [
    "the", "of", "and", "with", "without", "for", "from", "by", "on", "at", "is", "are", "was",
    "were", "be", "not", "this", "that", "these", "its", "it", "which", "where", "there", "than",
    "or", "to", "as", "duct", "elbow", "elbows", "dryer", "hood", "length", "pressure", "airflow",
    "air", "leg", "run", "wall", "loss", "code", "limit", "heat", "lint", "screen", "joint",
    "blower", "reading", "outlet", "bend", "what", "each", "only", "same", "out",
];

/// Where a text stands: its file, function and arm.
type Place = (String, String, String);

fn folder(language: &str) -> PathBuf {
    let words = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/report/words");
    words.join(language)
}

fn file_names(language: &str) -> Vec<String> {
    let entries = std::fs::read_dir(folder(language)).unwrap();
    let names = entries.map(|entry| entry.unwrap().file_name().into_string().unwrap());
    let mut names: Vec<String> = names.collect();
    names.sort();
    names
}

fn is_built_otherwise((_, function, _): &Place) -> bool {
    BUILT_OTHERWISE.iter().any(|(name, _)| name == function)
}

/// The last path of two names, such as `Label::Undo`, that ends before `at`.
fn path_before(code: &[Token], at: usize) -> Option<String> {
    (3..at).rev().find_map(|end| {
        let (last, first) = (code[end].word()?, code[end - 3].word()?);
        let joined = code[end - 1].is_mark(':') && code[end - 2].is_mark(':');
        joined.then(|| format!("{first}::{last}"))
    })
}

/// All texts of a language with letters in them, by where they stand.
fn texts(language: &str) -> BTreeMap<Place, Vec<String>> {
    let mut found: BTreeMap<Place, Vec<String>> = BTreeMap::new();
    for name in file_names(language) {
        let text = std::fs::read_to_string(folder(language).join(&name)).unwrap();
        let code = plain_code(&tokens(&text));
        let (mut function, mut arm) = (String::new(), String::new());
        for (index, token) in code.iter().enumerate() {
            match &token.kind {
                Kind::Word(word) if word == "fn" => {
                    let next = code.get(index + 1).and_then(Token::word);
                    next.unwrap_or_default().clone_into(&mut function);
                    arm.clear();
                }
                Kind::Mark('>') if index > 0 && code[index - 1].is_mark('=') => {
                    arm = path_before(&code, index).unwrap_or_default();
                }
                Kind::Text(text) if has_words(&without_places(text)) => {
                    let place = (name.clone(), function.clone(), arm.clone());
                    found.entry(place).or_default().push(text.clone());
                }
                _ => {}
            }
        }
    }
    found
}

/// `text` without what stands in its braces, which are names in the code.
fn without_places(text: &str) -> String {
    let mut depth = 0_usize;
    let mut rest = String::new();
    for letter in text.chars() {
        match letter {
            '{' => depth += 1,
            '}' => depth = depth.saturating_sub(1),
            letter if depth == 0 => rest.push(letter),
            _ => {}
        }
    }
    rest
}

fn has_words(text: &str) -> bool {
    let words = text.split(|letter: char| !letter.is_alphabetic());
    words
        .into_iter()
        .any(|word| word.chars().count() >= LETTERS)
}

/// The English words of the list that stand in `text`; a path in a file, such as `run.points`, is none.
pub fn english_words(text: &str) -> Vec<String> {
    let parts = text
        .split_whitespace()
        .map(|part| part.trim_matches(|letter: char| !letter.is_alphabetic()))
        .filter(|part| !part.contains('.'));
    let words = parts.flat_map(|part| part.split(|letter: char| !letter.is_alphabetic()));
    words
        .map(str::to_lowercase)
        .filter(|word| ENGLISH.contains(&word.as_str()))
        .collect()
}

#[test]
fn every_language_has_the_same_files() {
    for language in OTHERS {
        assert_eq!(file_names(language), file_names(FIRST), "{language}");
    }
}

#[test]
fn what_one_language_says_the_other_says_too() {
    let mut tally = Tally::new("arms with a text");
    let first = texts(FIRST);
    for language in OTHERS {
        let other = texts(language);
        for place in first.keys() {
            let said = other.contains_key(place) || is_built_otherwise(place);
            tally.holds(format!("{language} says nothing at {place:?}"), said);
        }
    }
    tally.finish(LEAST_ARMS);
}

#[test]
fn no_text_was_left_as_it_was() {
    let mut tally = Tally::new("texts of their own");
    let first = texts(FIRST);
    let same = |text: &String| SAME.iter().any(|(allowed, _)| text == allowed);
    for language in OTHERS {
        let other = texts(language);
        for (place, said) in &first {
            for text in said.iter().filter(|text| !same(text)) {
                let left = other.get(place).is_some_and(|other| other.contains(text));
                tally.holds(format!("{place:?}: {text:?}"), !left);
            }
        }
    }
    tally.finish(LEAST_ARMS);
}

/// No English word of the list stands in another language; and the list is one that English trips
/// over, or the first half could not fail.
#[test]
fn no_english_word_stands_in_another_language() {
    let mut tally = Tally::new("English words");
    for language in OTHERS {
        for (place, said) in texts(language) {
            for text in said {
                let found = english_words(&without_places(&text));
                tally.holds(
                    format!("{place:?}: {found:?} in {text:?}"),
                    found.is_empty(),
                );
            }
        }
    }
    tally.finish(LEAST_ARMS);
    let english = texts(FIRST).into_values().flatten();
    let english: Vec<String> = english.filter(|text| text.contains(' ')).collect();
    let caught = english.iter().map(|text| without_places(text));
    let caught = caught
        .filter(|text| !english_words(text).is_empty())
        .count();
    assert!(
        caught * 10 >= english.len() * 6,
        "the list catches only {caught} of {} English texts with a blank",
        english.len()
    );
}
