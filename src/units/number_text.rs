//! Plain numbers as people type them.

/// The number that `text` means, its decimals after a point or a comma; none where it is none, or where
/// the comma may as well part thousands.
///
/// ```
/// use elbowroom::units::parse_number;
/// assert_eq!(parse_number(" \u{2212}1,5 "), Some(-1.5));
/// assert_eq!(parse_number("0,125"), Some(0.125));
/// assert_eq!(parse_number("1,250"), None);
/// assert_eq!(parse_number("inf"), None);
/// ```
pub fn parse_number(text: &str) -> Option<f64> {
    let plain = text.trim().replace('\u{2212}', "-");
    if is_ambiguous(plain.trim_start_matches(['-', '+'])) {
        return None;
    }
    let number: f64 = plain.replacen(',', ".", 1).parse().ok()?;
    number.is_finite().then_some(number)
}

/// Whether an unsigned number's comma may part thousands or decimals. `1,250` is a thousand to some and
/// one and a quarter to others: it is asked again, not guessed. Nobody writes thousands from a nought.
pub(super) fn is_ambiguous(text: &str) -> bool {
    text.split_once(',')
        .is_some_and(|(before, after)| before != "0" && after.len() == 3)
}
