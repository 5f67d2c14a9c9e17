//! The plan: the document that a person draws, its geometry, and its file.
//!
//! Holds kinds of duct and fitting as names; knows nothing of physics.

mod bounds;
mod document;
mod element;
mod example;
mod file;
mod path;
mod point;
mod run;
mod uncertain;
mod validate;

pub use bounds::Bounds;
pub use document::{
    BendMethod, CodeChoice, Dryer, Energy, Exhaust, Flow, Obstacle, Opening, OpeningKind, Plan,
    RuleSetId, Site, Wall,
};
pub use element::{ElementId, NodeId, Part};
pub use example::{blank, example};
pub use file::{FileError, read, write};
pub use path::{Bend, Piece, PieceKind, RunPath};
pub use point::{Heading, Point};
pub use run::{
    ConcealedElbows, Duct, Elbow, ElbowKind, Estimate, Fitting, LegState, Riser, Run, RunPoint,
    Termination, TerminationKind,
};
pub use uncertain::{Input, Override};
pub use validate::{Field, ValueError, validate};
