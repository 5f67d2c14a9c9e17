//! The keys of what is said of the languages themselves.

/// A fixed text about the language of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LanguageLabel {
    /// English, as a choice.
    English,
    /// Spanish, as a choice: by its own name, and that it awaits review.
    Spanish,
    /// For the foot of a sheet: that its language awaits review by a native speaker.
    AwaitsReview,
}
