//! The size and margins of the plots under the drawing, in their own units; they are scaled to the page.

/// Its width.
pub const PLOT_WIDTH: f64 = 640.0;
/// Its height.
pub const PLOT_HEIGHT: f64 = 190.0;
/// Before the lines, for the figures of the axis.
pub const PLOT_LEFT: f64 = 72.0;
/// After them.
pub const PLOT_RIGHT: f64 = 12.0;
/// Above them.
pub const PLOT_TOP: f64 = 20.0;
/// Below them, for the length.
pub const PLOT_FOOT: f64 = 34.0;
