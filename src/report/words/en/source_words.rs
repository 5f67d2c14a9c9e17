//! Sources in one line.

use crate::source::Source;

pub(super) fn source(source: &Source) -> String {
    let standing = super::standing(source.standing);
    format!(
        "{}, {}; {} ({standing}).",
        source.title, source.edition, source.locator
    )
}
