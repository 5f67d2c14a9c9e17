//! What a reading on site may be off beside its instrument, and what can be read at all.

use crate::source::source;

source! {
    /// Of the errors and bounds of readings on site.
    pub static SOURCE {
        title: "Our assumption for readings on site: errors beside the instrument's own, and what is possible at all",
        edition: "2026",
        locator: "beside each figure of the fault-finder; none was measured",
        standing: Assumption,
    }
}
