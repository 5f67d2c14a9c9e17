//! The page's list of keys is the keys that the drawing takes: each string of `src/web/keys.rs` is a
//! key, and the list in `src/web/keys_help.rs` has the same ones. Source: the project's own promise
//! that every key is listed.

use crate::rust_text::{Kind, Token, tokens};
use std::collections::BTreeSet;
use std::path::Path;

fn tokens_of(file: &str) -> Vec<Token> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("src/web")
        .join(file);
    tokens(&std::fs::read_to_string(path).unwrap())
}

/// The keys among `tokens`, without what is held beside them and without regard to case.
fn keys<'a>(tokens: impl IntoIterator<Item = &'a Token>) -> BTreeSet<String> {
    let texts = tokens.into_iter().filter_map(|token| match &token.kind {
        Kind::Text(text) => Some(text.as_str()),
        _ => None,
    });
    let alone = |text: &str| match text.rsplit_once('+') {
        Some((_, key)) if !key.is_empty() => key.to_lowercase(),
        _ => text.to_lowercase(),
    };
    texts.map(alone).collect()
}

#[test]
fn the_list_of_keys_has_each_key_of_the_drawing_and_no_other() {
    let taken = keys(&tokens_of("keys.rs"));
    let help = tokens_of("keys_help.rs");
    let start = help
        .iter()
        .position(|token| token.word() == Some("ON_DRAWING"))
        .unwrap();
    let listed = keys(help[start..].iter().take_while(|token| !token.is_mark(';')));
    assert!(taken.len() > 10, "no keys were read: {taken:?}");
    assert_eq!(taken, listed);
}
