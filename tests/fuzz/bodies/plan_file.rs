//! Any bytes as a plan's file: they end in a plan or an error, and a plan is written, reads back the
//! same and can be worked out, said and drawn.

use elbowroom::plan::{read, write};
use elbowroom::report::words::{Language, Message, say};
use elbowroom::report::{drawing_svg, figures};
use elbowroom::scene::{elevation, scene};
use elbowroom::units::UnitSystem;

/// Fails by a panic.
pub fn plan_file(bytes: &[u8]) {
    let plan = match read(bytes) {
        Ok(plan) => plan,
        Err(error) => {
            let said = say(Language::English, UnitSystem::Si, Message::File(&error));
            assert!(!said.is_empty());
            return;
        }
    };
    let text = write(&plan);
    assert_eq!(read(text.as_bytes()).as_ref(), Ok(&plan));
    let (_, assessment) = figures(&plan);
    let ledger = assessment.working.as_ref().map(|(_, ledger)| ledger);
    let _ = (scene(&plan, ledger), elevation(&plan, ledger));
    let units = UnitSystem::UsCustomary;
    assert!(
        drawing_svg(&plan, ledger, Language::English, units)
            .trim_end()
            .ends_with("</svg>")
    );
}
