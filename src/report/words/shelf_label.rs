//! The keys of the fixed texts about the jobs that are kept.

/// A fixed text about the jobs that are kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(
    missing_docs,
    reason = "each key says what it stands for; the words are in the language files"
)]
pub enum ShelfLabel {
    Jobs,
    Meaning,
    ThisJob,
    Note,
    Find,
    Name,
    OpenNow,
    Open,
    Copy,
    Delete,
    CopyOf,
    None,
    NoneFound,
    SaveAll,
    AddFrom,
    Added,
    NotRead,
    Deleted,
    PutBack,
    StorageFailed,
    ChangedElsewhere,
    Unreadable,
    SaveEntry,
    KeepBoth,
    OpenOther,
    FileName,
}
