//! Lists in a sentence, of the words that a language gives.

/// Those of `parts` that are so, with commas between them.
pub(super) fn those_so<T: AsRef<str>>(parts: impl IntoIterator<Item = (bool, T)>) -> String {
    let so = parts.into_iter().filter(|(is_so, _)| *is_so);
    let so: Vec<T> = so.map(|(_, text)| text).collect();
    let texts: Vec<&str> = so.iter().map(AsRef::as_ref).collect();
    texts.join(", ")
}

/// "1, 2 and 5", with the language's own `and`.
pub(super) fn numbers(numbers: &[usize], and: &str) -> String {
    let texts: Vec<String> = numbers.iter().map(ToString::to_string).collect();
    match texts.split_last() {
        Some((last, [])) => last.clone(),
        Some((last, before)) => format!("{} {and} {last}", before.join(", ")),
        None => String::new(),
    }
}
