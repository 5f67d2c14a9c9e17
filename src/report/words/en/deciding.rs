//! What would settle a verdict that is open.

use super::code::{doubt, named};
use crate::plan::Input;
use crate::report::words::first_letter::upper_first;
use crate::report::words::input_figure;
use crate::rules::{Deciding, Doubt};
use crate::system::ElementKind;
use crate::units::{Length, UnitSystem};

pub(super) fn deciding(
    units: UnitSystem,
    deciding: &Deciding,
    element: Option<&ElementKind>,
) -> String {
    let part = || element.map_or_else(|| "that part".to_owned(), |kind| named(units, *kind));
    match deciding {
        Deciding::Length { at_most, .. } if *at_most <= Length::ZERO => format!(
            "The length of {} was only estimated; with the others as drawn no length of it keeps the \
             limit.",
            part()
        ),
        Deciding::Length { at_most, .. } => format!(
            "The length of {} decides, and it was only estimated. Up to {} the limit is kept, over \
             that it is not. Measure it.",
            part(),
            units.length(*at_most)
        ),
        Deciding::Elbows {
            at_most: Some(count),
            ..
        } => format!(
            "The concealed elbows decide. With at most {count} of them the limit is kept, with more it \
             is not. Find out how many there are."
        ),
        Deciding::Elbows { at_most: None, .. } => {
            "The concealed elbows and other estimates decide; even the fewest elbows are over the \
             limit with the estimated lengths as drawn. Measure those lengths."
                .to_owned()
        }
        Deciding::ElbowDeduction {
            doubt,
            elbows,
            at_most,
            ..
        } => elbow_deduction(units, *doubt, *elbows, *at_most, &part()),
        Deciding::Part { doubt: about, .. } => {
            let mend = match about {
                Doubt::FlexibleInRun => "Rigid metal duct there settles it.",
                Doubt::DiameterNotInTable => {
                    "4 in (100 mm) duct there settles it, or the dryer maker's own length."
                }
                _ => "Move a corner so that they fit.",
            };
            format!("{} decides. {} {mend}", upper_first(&part()), doubt(*about))
        }
        Deciding::MakerLength => {
            "Type the longest duct that the dryer's instructions allow.".to_owned()
        }
        Deciding::OpeningHeight { differs_by } => format!(
            "The opening's height decides, which a plan does not show. The distance is kept if the \
             opening's nearest edge is at least {} higher or lower than the termination.",
            units.length(*differs_by)
        ),
        Deciding::RectangularDuct { .. } => format!(
            "{} decides: the text gives the size as a diameter, which it does not have. Ask whoever \
             enforces the code, or use round 4 in (100 mm) duct.",
            upper_first(&part())
        ),
        Deciding::Input { input, turns_at } => match turns_at {
            Some(value) => format!(
                "{} decides: it is uncertain, and the verdict turns where it is {}.",
                upper_first(input_name(*input)),
                input_figure::value(units, *input, *value)
            ),
            None => format!(
                "{} weighs most of what is uncertain, and together with the rest it decides. A \
                 reading at the dryer's outlet would settle it.",
                upper_first(input_name(*input))
            ),
        },
        Deciding::Airflow => {
            "No air moves through the run as drawn, so there is no pressure to compare.".to_owned()
        }
    }
}

fn elbow_deduction(
    units: UnitSystem,
    about: Doubt,
    elbows: usize,
    at_most: Length,
    part: &str,
) -> String {
    let which = match elbows {
        1 => part.to_owned(),
        _ => format!("{part} and {} more like it", elbows - 1),
    };
    let mend = match about {
        Doubt::RadiusBelowTable => "An elbow of at least 4 in (100 mm) radius there settles it.",
        Doubt::MakerElbowNotTyped => "Type the maker's deduction.",
        _ => "Ask whoever enforces the code what it counts for.",
    };
    format!(
        "{} {} The limit is kept as long as each takes off at most {}. {mend}",
        upper_first(&format!("{which} decides.")),
        doubt(about),
        units.length(at_most)
    )
}

fn input_name(input: Input) -> &'static str {
    match input {
        Input::RigidRoughness => "the roughness of rigid duct",
        Input::SemiRigidRoughness => "the roughness of semi-rigid duct",
        Input::FoilRoughness => "the roughness of foil duct",
        Input::FlexibleCompression => "what pushing flexible duct together does",
        Input::SmoothElbow => "the method for smooth elbows",
        Input::SegmentedElbow => "the loss coefficient of segmented elbows",
        Input::SharpMitre => "the loss of sharp mitres, as a factor,",
        Input::BentFlexible => "the loss of flexible duct bent by hand, as a factor,",
        Input::CloseElbows => "what one elbow close before another does",
        Input::Blockage => "the loss of the blockage, as a factor,",
        Input::WallHood => "the loss coefficient of the wall hood",
        Input::LouvredHood => "the loss coefficient of the louvred hood",
        Input::RoofCap => "the loss coefficient of the roof cap",
        Input::FlapWeight => "the pressure that lifts the hood's flap",
        Input::MakeUpDischarge => "the discharge coefficient of the make-up air's opening",
        Input::Estimates => "the estimated lengths and concealed elbows",
        Input::BlowerFreeAirflow => "the airflow that the blower gives with nothing against it",
        Input::BlowerShutOffPressure => "the pressure that the blower gives with no airflow",
        Input::BlowerExponent => "the shape of the blower's curve",
        Input::LeakDischarge => "the discharge coefficient of the leaking joint",
        Input::WallBox => "the loss coefficient of the recessed wall box",
    }
}
