//! How a mark looks on paper.

use super::INK;
use crate::scene::{Mark, Role, cividis};

/// How a role looks on paper.
pub(super) struct Look {
    pub fill: String,
    pub stroke: String,
    pub width: f64,
    pub dashes: &'static str,
    pub opacity: f64,
}

impl Look {
    pub fn of(mark: &Mark, millimetres_per_metre: f64) -> Self {
        const HAIRLINE: f64 = 0.25;
        let to_scale = mark.width.metres() * millimetres_per_metre;
        let (fill, stroke, width) = match &mark.role {
            Role::OutsideWall => ("none".to_owned(), "#8a9099".to_owned(), to_scale),
            Role::InsideWall => ("none".to_owned(), "#b9bec6".to_owned(), to_scale),
            Role::Window | Role::AirIntake => ("#ffffff".to_owned(), INK.to_owned(), HAIRLINE),
            Role::ObstacleElsewhere | Role::Framing | Role::Zone => {
                ("none".to_owned(), "#6b7280".to_owned(), HAIRLINE)
            }
            Role::Door => ("#ffffff".to_owned(), "#6b7280".to_owned(), HAIRLINE),
            Role::Obstacle => ("#e8eaed".to_owned(), "#6b7280".to_owned(), HAIRLINE),
            Role::Dryer => ("none".to_owned(), INK.to_owned(), HAIRLINE),
            Role::Casing => ("none".to_owned(), INK.to_owned(), to_scale),
            Role::Bore => ("none".to_owned(), "#ffffff".to_owned(), to_scale),
            Role::Flat | Role::Concealed | Role::Corrugation => {
                ("none".to_owned(), INK.to_owned(), to_scale)
            }
            Role::Blockage | Role::Leak => ("none".to_owned(), INK.to_owned(), 4.0 * HAIRLINE),
            Role::WallBox | Role::Wet => ("none".to_owned(), INK.to_owned(), 2.0 * HAIRLINE),
            Role::Core => (
                "none".to_owned(),
                cividis(mark.weight).to_string(),
                to_scale,
            ),
            Role::Floor | Role::Dimension | Role::Extension => {
                ("none".to_owned(), INK.to_owned(), HAIRLINE)
            }
            Role::Picture
            | Role::Ghost
            | Role::Draft
            | Role::Guide
            | Role::Handle
            | Role::Size
            | Role::Label
            | Role::Rank
            | Role::Suspect
            | Role::SuspectLetter
            | Role::Corner(_)
            | Role::NewBend { .. } => ("none".to_owned(), "none".to_owned(), HAIRLINE),
        };
        let (dashes, opacity) = match &mark.role {
            Role::Corrugation => ("0.4 0.8", 0.5),
            Role::Concealed => ("2.5 1.5", 0.25),
            Role::Flat => ("none", 0.15),
            Role::ObstacleElsewhere | Role::Zone => ("1 1", 1.0),
            _ => ("none", 1.0),
        };
        Self {
            fill,
            stroke,
            width,
            dashes,
            opacity,
        }
    }
}
