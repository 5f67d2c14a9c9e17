//! Any bytes as a lesson's file: they end in a lesson or an error, and a lesson is written and reads back
//! the same.

use elbowroom::plan::{read_lesson, write_lesson};

/// Fails by a panic.
pub fn lesson_file(bytes: &[u8]) {
    if let Ok(lesson) = read_lesson(bytes) {
        let text = write_lesson(&lesson);
        assert_eq!(read_lesson(text.as_bytes()).as_ref(), Ok(&lesson));
    }
}
