//! One mark of the drawing.

use crate::plan::{
    ElementId, Heading, NodeId, ObstacleKind, PictureCoding, Point, ThingId, ZoneKind,
};
use crate::units::{Length, Temperature};
use std::sync::Arc;

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
    /// The thing about the run that it belongs to.
    pub thing: Option<ThingId>,
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
    /// An air intake.
    AirIntake,
    /// Something in the way.
    Obstacle,
    /// Something in the way over the ceiling or under the floor.
    ObstacleElsewhere,
    /// Studs or joists.
    Framing,
    /// A zone's outline.
    Zone,
    /// A floor plan's picture.
    Picture,
    /// What is being drawn.
    Draft,
    /// A line that what is drawn or dragged has settled on.
    Guide,
    /// The size of the whole room, or of what is being drawn.
    Size,
    /// A handle of a selected thing.
    Handle,
    /// The dryer's footprint.
    Dryer,
    /// A suggested run over the present one.
    Ghost,
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
    /// The stretch where water condenses.
    Wet,
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
    /// A likely place of a fault.
    Suspect,
    /// The letter of a likely place.
    SuspectLetter,
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

/// What a drawn or dragged point has settled on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Snap {
    /// Level or upright with the point before.
    Square,
    /// At 45 deg from the point before.
    Diagonal,
    /// In line with another end or corner.
    InLine,
    /// On a wall's end.
    WallEnd,
    /// On a wall's face.
    WallFace,
    /// Midway between two studs or joists.
    BetweenMembers,
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
    /// A picture, its sides along the sheet's.
    Picture {
        /// Its top left corner.
        corner: Point,
        /// How wide it is.
        width: Length,
        /// How deep it is.
        depth: Length,
        /// How it is coded.
        coding: PictureCoding,
        /// Its bytes in Base64.
        data: Arc<str>,
    },
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
    /// The rank of a likely place of a fault, from nought.
    Suspect(usize),
    /// The dryer.
    Dryer,
    /// A name that the user gave.
    Name(String),
    /// What an obstacle without a name is.
    Obstacle(ObstacleKind),
    /// What a zone is, and its temperature.
    Zone(ZoneKind, Temperature),
    /// A dimension, side by side of what is being drawn or of the room.
    Size(Length),
    /// What a snap line is.
    Snap(Snap),
}
