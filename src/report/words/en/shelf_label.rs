//! Fixed texts about the jobs that are kept.

use crate::report::words::ShelfLabel;

pub(super) const fn shelf_label(key: ShelfLabel) -> &'static str {
    match key {
        ShelfLabel::Jobs => "Jobs",
        ShelfLabel::Meaning => {
            "Every job that was changed is kept in this browser. Those that matter belong in a file too: a browser may clear what it keeps."
        }
        ShelfLabel::ThisJob => "Name of the open job",
        ShelfLabel::Note => "Note",
        ShelfLabel::Find => "Find by name or note",
        ShelfLabel::Name => "Name",
        ShelfLabel::OpenNow => "open now",
        ShelfLabel::Open => "Open",
        ShelfLabel::Copy => "Copy",
        ShelfLabel::Delete => "Delete",
        ShelfLabel::CopyOf => "copy",
        ShelfLabel::None => "No job is kept in this browser yet. The first change keeps one.",
        ShelfLabel::NoneFound => "No kept job has that in its name or note.",
        ShelfLabel::SaveAll => "Save all jobs as one file",
        ShelfLabel::AddFrom => "Add jobs from a file",
        ShelfLabel::Added => "Jobs added",
        ShelfLabel::NotRead => "Not read",
        ShelfLabel::Deleted => "Deleted",
        ShelfLabel::PutBack => "Put it back",
        ShelfLabel::StorageFailed => {
            "The browser did not do it. The jobs stay as they are; saving each as a file still works."
        }
        ShelfLabel::ChangedElsewhere => {
            "Another tab has changed this job meanwhile, so it was left alone. The list has it as it is now."
        }
        ShelfLabel::Unreadable => "This entry cannot be read as a plan. It is left as it is.",
        ShelfLabel::SaveEntry => "Save the entry as a file",
        ShelfLabel::KeepBoth => "Keep mine as another job",
        ShelfLabel::OpenOther => "Open the other one",
        ShelfLabel::FileName => "jobs",
    }
}
