//! Prose stands in `report/words` alone, where it can be said in both languages. Source: the
//! project's architecture text.

use crate::rooms::report;
use crate::rust_text::{Kind, Token, plain_code, tokens, without_declared_by};

/// Where prose stands.
const WORDS: &str = "report/words";
/// A string with this many words in small letters is prose.
const PROSE_WORDS: usize = 3;

/// How many words in small letters `text` has, if there is a blank in it.
fn small_words(text: &str) -> usize {
    if !text.contains(' ') {
        return 0;
    }
    text.split_whitespace()
        .map(|word| word.trim_end_matches(['.', ',', '!', '?']))
        .filter(|word| word.len() > 1 && is_small(word))
        .count()
}

/// A name that can stand beside another in code.
fn is_keyword(word: &str) -> bool {
    const KEYWORDS: &[&str] = &[
        "as", "async", "await", "box", "break", "const", "continue", "crate", "dyn", "else",
        "enum", "extern", "fn", "for", "if", "impl", "in", "let", "loop", "match", "mod", "move",
        "mut", "pub", "ref", "return", "self", "static", "struct", "super", "trait", "type",
        "union", "unsafe", "use", "where", "while",
    ];
    KEYWORDS.contains(&word)
}

/// What reads like prose in the code of `text`: a string, or bare words in a row, as a view's macro
/// takes them.
fn prose(text: &str) -> Vec<String> {
    let code = without_declared_by(&plain_code(&tokens(text)), "source");
    let mut found = Vec::new();
    let mut row: Vec<&str> = Vec::new();
    for (index, token) in code.iter().enumerate() {
        match &token.kind {
            Kind::Word(word) if is_small(word) && !is_keyword(word) => {
                row.push(word);
                continue;
            }
            // A list of style classes is no prose.
            Kind::Text(text) if small_words(text) >= PROSE_WORDS && !is_class(&code, index) => {
                found.push(format!("line {}: {text:?}", token.line));
            }
            _ => {}
        }
        // A row that runs into one of these names the properties of a view's tag.
        let in_tag = ['>', '/', '='].iter().any(|mark| token.is_mark(*mark));
        if row.len() >= PROSE_WORDS && !in_tag {
            found.push(format!("line {}: {}", token.line, row.join(" ")));
        }
        row.clear();
    }
    found
}

fn is_small(word: &str) -> bool {
    word.chars().all(char::is_lowercase)
}

fn is_class(code: &[Token], index: usize) -> bool {
    index >= 2 && code[index - 1].is_mark('=') && code[index - 2].word() == Some("class")
}

#[test]
fn prose_stands_among_the_words_alone() {
    report("prose", |file| {
        if file.is_in(WORDS) {
            return Vec::new();
        }
        prose(&file.text)
    });
}

#[test]
fn prose_is_found_and_the_rest_let_pass() {
    for text in [
        "fn f() -> &'static str { \"this run is too long\" }",
        "let message = format!(\"{name} cannot be read here\");",
        "view! { <p>Draw the first leg of the run</p> }",
        "const HELP: &str = r#\"type feet and inches\"#;",
    ] {
        assert_eq!(prose(text).len(), 1, "{text}");
    }
    for text in [
        "/// This is what a comment may say.\nfn f() {}",
        "#[serde(rename = \"a name of some words\")] struct S;",
        "#[cfg(test)] mod tests { const S: &str = \"this run is too long\"; }",
        "source! { pub static S { title: \"one book of many\", edition: \"first\" } }",
        "let path = \"M 0 0 l 1 1 z\";",
        "<div class=\"tool open wide\" />",
        "const UNIT: &str = \"in. w.c.\";",
        "view! { <Fields element label names=NAMES/><Other one two three/> }",
        "for (one, other) in pairs { if let Some(x) = one { return other as usize; } }",
    ] {
        assert_eq!(prose(text), Vec::<String>::new(), "{text}");
    }
}
