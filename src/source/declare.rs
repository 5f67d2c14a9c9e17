//! Declares sources and uncertain numbers, so that their documentation is written from the very text
//! and figures that the page shows.

/// Declares a [`Source`](crate::source::Source); its documentation ends with the citation.
macro_rules! source {
    (
        $(#[$doc:meta])*
        $visibility:vis static $name:ident {
            title: $title:literal,
            edition: $edition:literal,
            locator: $locator:literal,
            standing: $standing:ident $(,)?
        }
    ) => {
        $(#[$doc])*
        #[doc = concat!(
            "\n\nSource: ", $title, "; edition ", $edition, "; ", $locator,
            ". Standing: ", stringify!($standing), "."
        )]
        $visibility static $name: $crate::source::Source = $crate::source::Source {
            title: $title,
            edition: $edition,
            locator: $locator,
            standing: $crate::source::Standing::$standing,
        };
    };
}

/// Declares an uncertain number, a [`Coefficient`](crate::source::Coefficient); its documentation ends
/// with its three values and a link to its source.
macro_rules! uncertain {
    (
        $(#[$doc:meta])*
        $visibility:vis const $name:ident {
            low: $low:expr,
            likely: $likely:expr,
            high: $high:expr,
            source: $source:ident $(,)?
        }
    ) => {
        $(#[$doc])*
        #[doc = concat!(
            "\n\nLow ", stringify!($low), ", likely ", stringify!($likely), ", high ",
            stringify!($high), ". Source: [`", stringify!($source), "`]."
        )]
        $visibility const $name: $crate::source::Coefficient = $crate::source::Coefficient {
            low: $low,
            likely: $likely,
            high: $high,
            source: &$source,
        };
    };
}

pub(crate) use {source, uncertain};
