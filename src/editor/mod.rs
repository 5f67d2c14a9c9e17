//! The editor: state, action, and the pure step from one to the next with its effects.
//!
//! Knows neither the document object model nor clock nor threads.

mod action;
mod change;
mod effect;
mod gesture;
mod history;
mod pick;
mod pick_mark;
mod rise;
mod snap;
mod state;
mod update;
mod view;

pub use action::Action;
pub use effect::Effect;
pub use gesture::Gesture;
pub use history::History;
pub use pick::{Hit, pick};
pub use pick_mark::pick_mark;
pub use rise::{rise_at, stepped_rise};
pub use snap::snap;
pub use state::State;
pub use update::update;
pub use view::View;
