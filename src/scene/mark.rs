//! One mark of the drawing.

use crate::plan::{ElementId, Heading, NodeId, Point};
use crate::units::Length;

/// One thing to draw.
#[derive(Debug, Clone, PartialEq)]
pub struct Mark {
    /// Unique in the scene, and the same while the thing is dragged about.
    pub id: String,
    /// What it stands for; decides its look.
    pub role: Role,
    /// Its outline.
    pub shape: Shape,
    /// Width of its line on the plan, to scale; nought for a hairline.
    pub width: Length,
    /// The element's loss over the greatest element's, 0..1; nought for what is no element.
    pub weight: f64,
    /// The element that it belongs to.
    pub element: Option<ElementId>,
}

/// What a mark stands for.
#[derive(Debug, Clone, PartialEq)]
pub enum Role {
    /// A wall to the outdoors.
    OutsideWall,
    /// A wall between rooms.
    InsideWall,
    /// A window.
    Window,
    /// A door.
    Door,
    /// Something in the way.
    Obstacle,
    /// The dryer's footprint.
    Dryer,
    /// The duct's outline.
    Casing,
    /// The duct's inside, on which the core lies.
    Bore,
    /// The duct's core, coloured and widened by its weight.
    Core,
    /// The folds of flexible duct.
    Corrugation,
    /// Flat rectangular duct, wider than the run.
    Flat,
    /// A stretch that is concealed or only estimated.
    Concealed,
    /// A blockage.
    Blockage,
    /// A joint that leaks.
    Leak,
    /// A recessed wall box.
    WallBox,
    /// The floor, seen from the side.
    Floor,
    /// A line that a measure is taken along.
    Dimension,
    /// A line that leads from a thing to where it is measured.
    Extension,
    /// A length or a name.
    Label,
    /// The rank of one of the costliest elements.
    Rank,
    /// A corner that can be dragged.
    Corner(NodeId),
    /// A place on a leg from which a new bend can be pulled.
    NewBend {
        /// The node that the leg arrives at.
        node: NodeId,
        /// The leg's length.
        leg: Length,
    },
}

/// The outline of a mark, m on the plan.
#[derive(Debug, Clone, PartialEq)]
pub enum Shape {
    /// A path.
    Path(Vec<Step>),
    /// A circle.
    Circle {
        /// Its centre.
        centre: Point,
        /// Its radius.
        radius: Length,
    },
    /// A dot of the same size at every zoom.
    Dot(Point),
    /// Text of the same size at every zoom.
    Text {
        /// Where it stands.
        at: Point,
        /// The way it is moved aside, clear of the line that it names.
        aside: Option<Heading>,
        /// What it says.
        text: Text,
    },
}

/// One step of a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Step {
    /// Lift the pen to here.
    Move(Point),
    /// A straight to here.
    Line(Point),
    /// An arc of less than half a circle to here.
    Arc {
        /// Its end.
        to: Point,
        /// Its radius, m.
        radius: f64,
        /// Whether it turns clockwise on the sheet.
        clockwise: bool,
    },
    /// Back to the last move.
    Close,
}

/// What a text mark says, before it is put into words and units.
#[derive(Debug, Clone, PartialEq)]
pub enum Text {
    /// A leg, corner to corner.
    LegLength(Length),
    /// A riser, or with a negative length a drop.
    Rise(Length),
    /// A height above the floor; negative below it.
    Height(Length),
    /// The rank of an element.
    Rank(usize),
    /// The dryer.
    Dryer,
    /// A name that the user gave.
    Name(String),
}
