//! Fixed texts about the language of a sheet.

use crate::report::words::LanguageLabel;

pub(super) fn language_label(key: LanguageLabel) -> &'static str {
    match key {
        LanguageLabel::English => "Inglés (English)",
        LanguageLabel::Spanish => "Español, pendiente de revisión por un hablante nativo",
        LanguageLabel::AwaitsReview => {
            "El texto en español de esta hoja está pendiente de revisión por un hablante nativo."
        }
    }
}
