//! Any text as a typed length: a finite length that is shown and typed again as the same, or an error
//! that says something.

use elbowroom::report::words::{Language, Message, say};
use elbowroom::units::{UnitSystem, parse_length};

/// A sixteenth of an inch and what its display rounds by, m.
const SHOWN_WITHIN: f64 = 0.0254 / 32.0 + 1e-9;
/// Past this far the display has fewer figures than a sixteenth, m.
const DRAWN: f64 = 1000.0;

/// Fails by a panic.
pub fn typed_length(bytes: &[u8]) {
    let Ok(text) = core::str::from_utf8(bytes) else {
        return;
    };
    for units in [UnitSystem::UsCustomary, UnitSystem::Si] {
        match parse_length(text, units) {
            Ok(length) => {
                assert!(length.metres().is_finite());
                if length.metres().abs() > DRAWN || units == UnitSystem::Si {
                    continue;
                }
                let shown = units.length(length).to_string();
                let again = parse_length(&shown, units);
                let again = again.unwrap_or_else(|_| panic!("{shown} is not read again"));
                let off = (again.metres() - length.metres()).abs();
                assert!(off <= SHOWN_WITHIN, "{text} is shown as {shown}");
            }
            Err(error) => {
                let said = say(Language::English, units, Message::LengthText(&error));
                assert!(!said.is_empty());
            }
        }
    }
}
