//! How far it is, on standard error where that is a terminal and the answers go elsewhere.

use elbowroom::report::words::{AnswerMessage, Language, Message, say};
use elbowroom::units::UnitSystem;
use std::io::{self, IsTerminal, Write};
use std::time::{Duration, Instant};

/// As often as an eye follows.
const EVERY: Duration = Duration::from_millis(100);

/// Tells how far it is.
pub struct Progress {
    is_told: bool,
    /// Items in all; none where that is not known.
    of: Option<usize>,
    last: Instant,
    has_line: bool,
}

impl Progress {
    /// Of so many items.
    pub fn of(of: Option<usize>) -> Self {
        Self {
            is_told: io::stderr().is_terminal() && !io::stdout().is_terminal(),
            of,
            last: Instant::now(),
            has_line: false,
        }
    }

    /// So many items are done, which held so many plans.
    pub fn tell(&mut self, items: usize, plans: usize, refused: usize) {
        if !self.is_told || self.last.elapsed() < EVERY {
            return;
        }
        self.last = Instant::now();
        self.has_line = true;
        // Files of jobs hold more plans than was known before.
        let of = self.of.map(|of| of + plans - items.min(plans));
        let text = told(plans, of, refused);
        // A clear to the end of the line (ECMA-48, EL) takes away what was longer.
        let _ = write!(io::stderr(), "\r{text}\u{1b}[K");
    }

    /// Takes the line away.
    pub fn clear(&mut self) {
        if self.has_line {
            let _ = write!(io::stderr(), "\r\u{1b}[K");
        }
    }
}

/// So many plans are done.
pub fn told(done: usize, of: Option<usize>, refused: usize) -> String {
    let message = AnswerMessage::Progress { done, of, refused };
    say(Language::English, UnitSystem::Si, Message::Answer(message))
}
