//! Any text as a link's fragment: it ends in a job or an error that says something, and a job is put
//! into a link again and comes back the same.

use elbowroom::plan::{read_link, write_link};
use elbowroom::report::words::{Language, Message, SideMessage, say};
use elbowroom::units::UnitSystem;

/// Fails by a panic.
pub fn share_link(bytes: &[u8]) {
    let Ok(fragment) = core::str::from_utf8(bytes) else {
        return;
    };
    match read_link(fragment) {
        Ok(plan) => {
            if let Ok(link) = write_link(&plan, "") {
                assert_eq!(read_link(&link[1..]).as_ref(), Ok(&plan));
            }
        }
        Err(error) => {
            let message = Message::Side(SideMessage::Link(&error));
            assert!(!say(Language::English, UnitSystem::Si, message).is_empty());
        }
    }
}
