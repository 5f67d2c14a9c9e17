//! The editor: state, action, and the pure step from one to the next with its effects.
//!
//! Knows neither the document object model nor clock nor threads.

mod action;
mod change;
mod change_openings;
mod change_things;
mod change_visits;
mod drag;
mod draw;
mod effect;
mod gesture;
mod history;
mod pick;
mod pick_mark;
mod rise;
mod snap;
mod state;
mod tool;
mod turn;
mod update;
mod view;

pub use action::{Action, NewThing};
pub use change_visits::VisitChange;
pub use draw::cursor;
pub use effect::Effect;
pub use gesture::{Gesture, Held};
pub use history::History;
pub use pick::{Hit, handles, pick, pick_thing};
pub use pick_mark::pick_mark;
pub use rise::{rise_at, stepped_rise};
pub use snap::Catch;
pub use state::State;
pub use tool::{Pen, Tool};
pub use turn::Turn;
pub use update::update;
pub use view::View;
