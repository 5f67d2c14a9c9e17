//! Fixed texts about the language of a sheet.

use crate::report::words::LanguageLabel;

pub(super) fn language_label(key: LanguageLabel) -> &'static str {
    match key {
        LanguageLabel::English => "English",
        LanguageLabel::Spanish => "Spanish (español), awaiting review by a native speaker",
        LanguageLabel::AwaitsReview => {
            "The wording of this sheet awaits review by a native speaker of its language."
        }
    }
}
