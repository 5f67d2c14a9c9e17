//! A text's first letter where it moves into a sentence or to its head.

/// `text` with a capital at its head.
pub(super) fn upper_first(text: &str) -> String {
    with_first(text, |letter| letter.to_uppercase().collect())
}

/// `text` as it stands inside a sentence.
pub(super) fn lower_first(text: &str) -> String {
    with_first(text, |letter| letter.to_lowercase().collect())
}

fn with_first(text: &str, change: impl FnOnce(char) -> String) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(change).unwrap_or_default();
    format!("{first}{}", letters.as_str())
}
