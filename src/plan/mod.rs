//! The plan: the document that a person draws, its geometry, and its file.
//!
//! Holds kinds of duct and fitting as names; knows nothing of physics.

mod bounds;
mod clearance;
mod code;
mod difference;
mod direct_file;
mod document;
mod element;
mod example;
mod exhaust;
mod field;
mod file;
mod handover;
mod insulation;
mod jobs_file;
mod lesson;
mod only_object;
mod path;
mod point;
mod room;
mod rule_topic;
mod run;
mod share_link;
mod spot;
mod surroundings;
mod thing;
mod uncertain;
mod validate;
mod validate_leg;
mod validate_room;
mod validate_visits;
mod visit;
mod visit_picture;

pub use bounds::Bounds;
pub use clearance::{
    ALONG, Clash, ClashWith, HALF_MEMBER, LEAST_CUT, LUMBER_SOURCE, ROUTE_SOURCE, clashes,
    segment_distance,
};
pub use code::{CodeChoice, MakerLimits, RuleSetId};
pub use difference::{Difference, LegDifference, differences};
pub use direct_file::read_directly;
pub use document::{BendMethod, CEILING_SOURCE, Dryer, Energy, Flow, OutletSide, Plan, Site};
pub use element::{ElementId, NodeId, Part};
pub use example::{blank, example};
pub use exhaust::{AlongRun, Exhaust, Phase};
pub use field::Field;
pub use file::{FileError, read, write};
pub use handover::Handover;
pub use insulation::{Insulation, Metal};
pub use jobs_file::{read_jobs, write_jobs};
pub use lesson::{
    Lesson, LessonError, LessonPart, LessonText, Quantity, read_lesson, within_bounds, write_lesson,
};
pub use path::{Bend, Piece, PieceKind, RunPath};
pub use point::{Heading, Point};
pub use room::{
    Axis, Level, Obstacle, ObstacleKind, Opening, OpeningKind, Picture, PictureCoding, Wall, Zone,
    ZoneKind,
};
pub use rule_topic::RuleTopic;
pub use run::{
    ConcealedElbows, Duct, Elbow, ElbowKind, Estimate, Fitting, LegState, Riser, Run, RunPoint,
    Termination, TerminationKind,
};
pub use share_link::{LONGEST_LINK, LinkError, is_link, read_link, write_link};
pub use spot::{Mended, NoPlace, Spot, element_key};
pub use thing::{Thing, ThingId};
pub use uncertain::{Input, Override};
pub use validate::{ValueError, validate};
pub use visit::{
    Against, Conditions, Done, Entry, Found, INSTRUMENT_SOURCE, Look, Measured, Pattern,
    Preparation, Reading, Visit,
};
pub use visit_picture::{Taken, VisitPicture};
