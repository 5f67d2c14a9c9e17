//! Plan and results become a list of marks. The page renders them keyed by id and the exported
//! drawing writes the same marks; nothing else decides what is drawn.
//!
//! Knows neither the page nor paper.

mod draft;
mod elevation;
mod ghost;
mod heat_plot;
mod label_row;
mod leg_marks;
mod mark;
mod measure;
mod obstacle;
mod plot_size;
mod pressure_plot;
mod ramp;
mod room;
mod run;
mod scale_bar;
mod suspects;
mod unrolled;
mod wet;

pub use draft::{Draft, DraftKind, Guide, draft_marks};
pub use elevation::{Elevation, OUTLET_HEIGHT, TERMINATION_HEIGHT, elevation};
pub use ghost::ghost_marks;
pub use heat_plot::{HeatLine, HeatPlot};
pub use label_row::label_rows;
pub use mark::{Mark, Role, Shape, Snap, Step, Text};
pub use plot_size::{PLOT_FOOT, PLOT_HEIGHT, PLOT_LEFT, PLOT_RIGHT, PLOT_TOP, PLOT_WIDTH};
pub use pressure_plot::{PlotPoint, PressurePlot};
pub use ramp::{Colour, cividis};
pub use room::is_same_room;
pub use scale_bar::scale_bar;
pub use suspects::suspect_marks;

use crate::plan::{Plan, RunPath};
use crate::system::Ledger;

/// The marks of `plan`, back to front, weighted by `ledger` where there is one.
pub fn scene(plan: &Plan, ledger: Option<&Ledger>) -> Vec<Mark> {
    let mut marks = room_marks(plan);
    marks.append(&mut run_marks(plan, ledger));
    marks
}

/// Those of them that are the room's and the dryer's: they stay where the plan keeps the same room.
pub fn room_marks(plan: &Plan) -> Vec<Mark> {
    let mut marks = Vec::new();
    room::draw(plan, &mut marks);
    marks
}

/// Those that are the run's, over the room's.
pub fn run_marks(plan: &Plan, ledger: Option<&Ledger>) -> Vec<Mark> {
    let path = RunPath::of(plan);
    let mut marks = Vec::new();
    run::draw(plan, &path, ledger, &mut marks);
    measure::draw(plan, &path, &mut marks);
    marks
}
