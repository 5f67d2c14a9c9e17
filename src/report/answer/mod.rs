//! What other programs ask of a plan, and the one value that answers each: the terminal tool and the
//! JavaScript module print and hand over the same.

mod asking;
mod cell;
mod columns;
mod question;
mod refused;
mod view;
mod wishes;

pub use asking::view_units;
pub use cell::Cell;
pub use columns::{columns, rows};
pub use question::{Answer, CheckAnswer, Question, RerouteAnswer, VisitAnswer, WithBands};
pub use refused::{Refused, Unanswered};
pub use view::{ShownTotal, View, tell_run};
pub use wishes::{WishError, bounded, wishes};
