//! Everything that a person can do.

use super::{Tool, Turn, VisitChange};
use crate::plan::{
    BendMethod, CodeChoice, Dryer, Duct, Elbow, ElementId, Exhaust, Flow, Handover, Heading, Input,
    LegState, NodeId, Obstacle, Opening, Override, Picture, Plan, Point, Run, Site, Termination,
    Wall, Zone,
};
use crate::units::{Length, UnitSystem};
use std::sync::Arc;

/// One act of the user.
#[derive(Debug, Clone, PartialEq)]
pub enum Action {
    /// A press on the drawing, with how far off it may still mean a thing.
    Press {
        /// Where, m on the plan.
        at: Point,
        /// How far off, m on the plan.
        reach: f64,
        /// Whether a thing is added to those that are selected, or taken from them.
        adds: bool,
    },
    /// The pointer moved without a press.
    Hover {
        /// Where to, m on the plan.
        at: Point,
        /// How near a line must be to catch it, m on the plan.
        reach: f64,
    },
    /// The pressed pointer moved.
    Drag {
        /// Where to.
        to: Point,
        /// How near a line must be to catch the corner, m on the plan.
        reach: f64,
    },
    /// A corner's rise is dragged; the first such act starts the drag, and `Release` ends it.
    DragRise {
        /// The node.
        node: NodeId,
        /// The rise under the pointer.
        rise: Length,
        /// Less than this off the rise that it had is no drag yet.
        slack: Length,
    },
    /// The pointer was let go.
    Release,
    /// The press is taken back: what it moved returns.
    Cancel,
    /// Select an element, or nothing.
    Select(Option<ElementId>),
    /// Take a tool in hand; what was being drawn is laid down.
    TakeTool(Tool),
    /// Set a point with the tool in hand, where the keys' cursor is.
    PutPoint,
    /// Set a point with the tool in hand at a typed length from the last one.
    PutLength {
        /// How far.
        length: Length,
        /// Which way; none for the way that the pen points.
        heading: Option<Heading>,
    },
    /// End what is being drawn.
    FinishDrawing,
    /// Select the thing after (or before) the selected one in the order of their list.
    SelectNextThing {
        /// After, or before.
        forward: bool,
    },
    /// Keep what is selected while `SelectNextThing` goes on: the next thing joins it.
    KeepThings,
    /// Select everything.
    SelectAll,
    /// Open a plan that was open before, the very same: the window on the sheet stays.
    Exchange(Arc<Plan>),
    /// Remove the selected corner or things.
    Remove,
    /// Copy the selected things.
    Copy,
    /// Turn or mirror the selected things.
    Turn(Turn),
    /// Put another thing in the place of the one with its name.
    SetThing(Box<NewThing>),
    /// Put a picture under the drawing, or take it away.
    SetPicture(Option<Box<Picture>>),
    /// Set the ceiling's height.
    SetCeiling(Length),
    /// Select the element after (or before) the selected one in run order.
    SelectNeighbour {
        /// Toward the termination, or toward the dryer.
        forward: bool,
    },
    /// Move the selected corner or things, or with a drawing tool the keys' cursor.
    Nudge {
        /// To the right.
        right: Length,
        /// Toward the foot of the sheet.
        down: Length,
    },
    /// Make a bend on the leg that arrives at a node.
    InsertBend {
        /// The node that the leg arrives at.
        leg: NodeId,
        /// Where; none for the leg's middle.
        at: Option<Point>,
    },
    /// Remove a corner.
    DeleteBend(NodeId),
    /// Set the length, corner to corner, of the leg that arrives at a node.
    SetLegLength {
        /// The node.
        node: NodeId,
        /// The length.
        length: Length,
    },
    /// Set the rise at a node; nought for none.
    SetRise {
        /// The node.
        node: NodeId,
        /// Up, or with a minus down.
        rise: Length,
    },
    /// Set an elbow.
    SetElbow {
        /// Which elbow.
        element: ElementId,
        /// What it becomes.
        elbow: Elbow,
    },
    /// Set the duct of the leg that arrives at a node, and what else is known of that leg.
    SetLeg {
        /// The node.
        node: NodeId,
        /// Its duct.
        duct: Duct,
        /// What else is known of it.
        leg: LegState,
    },
    /// Set the termination.
    SetTermination(Termination),
    /// Set a value in place of the project's own, or with none give the project's back.
    SetOverride {
        /// Which input.
        input: Input,
        /// The value.
        value: Option<Override>,
    },
    /// Set the method for smooth elbows.
    SetBendMethod(BendMethod),
    /// Set what moves the air.
    SetFlow(Flow),
    /// Name the job, and say what is to be said of it.
    SetTitle {
        /// Its name.
        title: String,
        /// A note below it.
        note: String,
    },
    /// Set what is typed for the handover sheet.
    SetHandover(Box<Handover>),
    /// Set the house's surroundings.
    SetSite(Site),
    /// Set the exhaust air.
    SetExhaust(Exhaust),
    /// Set the rule set and its reading.
    SetCode(CodeChoice),
    /// Change a visit, or the newest, which is begun where there is none.
    ChangeVisit {
        /// The visit's id; none for the newest.
        visit: Option<Arc<str>>,
        /// The change.
        change: Box<VisitChange>,
    },
    /// Set the page's units.
    SetUnits(UnitSystem),
    /// Put another plan in place of this one.
    Open(Box<Plan>),
    /// Put a suggested run, and the dryer as it stands for it, in place of the present ones.
    TakeReroute(Box<(Run, Dryer)>),
    /// Undo a step.
    Undo,
    /// Do an undone step again.
    Redo,
    /// The drawing's size on the screen, px.
    Resize {
        /// Width.
        width: f64,
        /// Height.
        height: f64,
    },
    /// Show the whole plan.
    ShowAll,
    /// Move the paper, px.
    Pan {
        /// To the right.
        right: f64,
        /// Down.
        down: f64,
    },
    /// Zoom about a place on the screen, px.
    Zoom {
        /// From the drawing's left.
        x: f64,
        /// From the drawing's top.
        y: f64,
        /// Above 1 to come nearer.
        factor: f64,
    },
}

/// A thing that takes the place of the one with its id.
#[derive(Debug, Clone, PartialEq)]
pub enum NewThing {
    /// A wall.
    Wall(Wall),
    /// An opening.
    Opening(Opening),
    /// An obstacle.
    Obstacle(Obstacle),
    /// A zone.
    Zone(Zone),
    /// The dryer.
    Dryer(Dryer),
}
