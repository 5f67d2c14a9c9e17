//! American English.

mod action_name;
mod answer;
mod code;
mod code_label;
mod deciding;
mod derivation;
mod element;
mod fixed;
mod handover;
mod handover_label;
mod heat;
mod heat_grounds;
mod heat_label;
mod input_words;
mod language_label;
mod reroute;
mod room;
mod rule;
mod shelf_label;
mod side;
mod side_label;
mod site;
mod site_grounds;
mod site_label;
mod source_words;
mod trouble;

use super::{Label, Message, formula};
use crate::plan::BendMethod;
use crate::scene::Text;
use crate::source::{Reach, Standing};
use crate::system::{ElementKind, Finding};
use crate::units::{Airflow, Length, UnitSystem};
pub(super) use action_name::action_name;
pub(super) use code::verdict;
pub(super) use derivation::unpublished;
use element::{element, element_size};
use fixed::caution;
pub(super) use fixed::label;
pub(super) use trouble::refusal;
use trouble::{file, length_text};

#[allow(clippy::too_many_lines, reason = "one arm a message")]
pub(super) fn text(units: UnitSystem, message: Message<'_>) -> String {
    match message {
        Message::Label(key) => label(key).to_owned(),
        Message::CodeLabel(key) => code_label::code_label(key).to_owned(),
        Message::Language(key) => language_label::language_label(key).to_owned(),
        Message::Site(message) => site::site(units, message),
        Message::Side(message) => side::side(units, message),
        Message::Handover(message) => handover::handover(units, message),
        Message::ActionName(name) => action_name(name).to_owned(),
        Message::Refusal(why) => refusal(units, why),
        Message::Caution(key) => caution(key).to_owned(),
        Message::Element(kind) => element(*kind).to_owned(),
        Message::ElementSize(kind) => element_size(units, *kind),
        Message::Drawing(text) => drawing(units, text),
        Message::RunInOrder {
            outlet_height,
            elements,
            end_height,
        } => run_in_order(units, outlet_height, elements, end_height),
        Message::Finding(finding) => self::finding(units, finding),
        Message::InsulationUpgrade(upgrade) => heat::upgrade(units, upgrade),
        Message::HeatFormula(figures, which) => heat_grounds::formula(units, figures, which),
        Message::Water(water) => heat::water(units, water),
        Message::Phase(phase) => heat::phase(phase).to_owned(),
        Message::Verdict(verdict) => self::verdict(verdict).to_owned(),
        Message::DeductionNote(note) => code::deduction_note(note).to_owned(),
        Message::CodeLength { length, limit } => code::code_length(units, length, limit),
        Message::Reroute(text) => reroute::reroute(units, text),
        Message::RuleSet(set) => code::rule_set(set).to_owned(),
        Message::RuleTopic(topic) => rule::topic(topic).to_owned(),
        Message::RuleAsks(finding) => rule::asks(units, finding),
        Message::RuleMeasured(finding) => rule::measured(units, finding),
        Message::Deciding { deciding, element } => deciding::deciding(units, deciding, element),
        Message::Practice(practice) => code::practice(practice).to_owned(),
        Message::Disagreement {
            air,
            code,
            most,
            uncounted,
        } => code::disagreement(units, air, code, most, uncounted),
        Message::Times(factor) => code::times(factor),
        Message::SeenOnSite { seen, of } => format!("{seen} of {of} seen"),
        Message::FindingsCount { meet, not, open } => code::findings_count(meet, not, open),
        Message::Source(source) => source_words::source(source),
        Message::LossFormula(element) => formula::loss(units, element),
        Message::TotalFormula(figures, which) => derivation::total(units, figures, which),
        Message::TotalName(which) => derivation::name(which).to_owned(),
        Message::EquivalentLengthFormula(element, totals) => {
            formula::equivalent_length(units, element, totals)
        }
        Message::BandFormula { samples } => derivation::band(samples),
        Message::InputShare { input, share } => format!(
            "{}, {:.0} % of the spread",
            input_words::input(input),
            share * 100.0
        ),
        Message::CodeLengthSpan { least, most } => derivation::span(units, least, most),
        Message::Unpublished(grounds) => unpublished(grounds),
        Message::Subject(subject) => derivation::subject(subject).to_owned(),
        Message::Input(input) => input_words::input(input).to_owned(),
        Message::InputRange { input, coefficient } => input_words::range(units, input, coefficient),
        Message::LeadingInput { input, share } => format!(
            "{} moves the back pressure most: it accounts for {:.0} % of the spread. A reading or a \
             maker's figure for it would narrow the band most.",
            input_words::input(input),
            share * 100.0
        ),
        Message::Standing(standing) => self::standing(standing).to_owned(),
        Message::BendMethod { method, k } => bend_method(method, k),
        Message::Reach(reach) => self::reach(reach).to_owned(),
        Message::Band { low, high } => band(low, high),
        Message::NewTotals {
            airflow,
            back_pressure,
        } => new_totals(airflow, back_pressure),
        Message::Dominant {
            rank,
            element,
            share,
            equivalent_length,
            code_deduction,
        } => dominant(
            units,
            rank,
            *element,
            share,
            equivalent_length,
            code_deduction,
        ),
        Message::LengthText(error) => length_text(units, error),
        Message::NotANumber { text } => {
            format!(
                "“{text}” was not understood as a number. Write it without a comma, like 1200 or 12.5."
            )
        }
        Message::NotACount { text } => {
            format!("“{text}” is no count. Write a whole number from 0 on, like 2.")
        }
        Message::ThingsSelected(count) => format!("{count} things are selected"),
        Message::Thing(thing) => room::thing(units, thing),
        Message::File(error) => file(error),
        Message::Answer(message) => answer::answer(message),
    }
}

pub(super) fn drawing(units: UnitSystem, text: &Text) -> String {
    match text {
        Text::LegLength(length) | Text::Size(length) => units.length(*length).to_string(),
        Text::Rise(rise) if *rise < Length::ZERO => format!("down {}", units.length(-*rise)),
        Text::Rise(rise) => format!("up {}", units.length(*rise)),
        Text::Height(height) => units.length(*height).to_string(),
        Text::Rank(rank) => rank.to_string(),
        Text::Suspect(rank) => ["A", "B", "C"].get(*rank).unwrap_or(&"").to_string(),
        Text::Dryer => "Dryer".to_owned(),
        Text::Name(name) => name.clone(),
        Text::Obstacle(kind) => room::obstacle(*kind).to_owned(),
        Text::Zone(kind, temperature) => {
            format!("{}, {}", room::zone(*kind), units.temperature(*temperature))
        }
        Text::Snap(snap) => room::snap(*snap).to_owned(),
    }
}

fn run_in_order(
    units: UnitSystem,
    outlet_height: Length,
    elements: &[(ElementKind, Option<Length>)],
    end_height: Length,
) -> String {
    let elements = elements.iter().map(|(kind, rise)| {
        let size = match rise {
            Some(rise) => drawing(units, &Text::Rise(*rise)),
            None => element_size(units, *kind),
        };
        let comma = if size.is_empty() { "" } else { ", " };
        format!("{}{comma}{size}", element(*kind))
    });
    let elements: Vec<String> = elements.collect();
    format!(
        "The run in order, from the dryer's outlet at {}: {}. It ends at {}.",
        height(units, outlet_height),
        elements.join("; "),
        height(units, end_height)
    )
}

fn height(units: UnitSystem, height: Length) -> String {
    if height < Length::ZERO {
        format!("{} below the floor", units.length(-height))
    } else {
        format!("{} above the floor", units.length(height))
    }
}

pub(super) fn band(low: &str, high: &str) -> String {
    format!("{low} to {high}")
}

pub(super) fn new_totals(airflow: &str, back_pressure: &str) -> String {
    format!("Airflow {airflow}, back pressure {back_pressure}.")
}

pub(super) fn dominant(
    units: UnitSystem,
    rank: usize,
    element: ElementKind,
    share: f64,
    equivalent_length: Length,
    code_deduction: Option<Length>,
) -> String {
    let rank = if rank == 1 { "Costliest" } else { "Next" };
    let name = self::element(element);
    let size = element_size(units, element);
    let comma = if size.is_empty() { "" } else { ", " };
    let costs = format!(
        "{rank}: {name}{comma}{size}. It takes {:.0} % of the loss, as much as {} of straight duct",
        share * 100.0,
        units.equivalent_length(equivalent_length)
    );
    match code_deduction {
        Some(deduction) => format!(
            "{costs}, where the code deducts {}.",
            units.equivalent_length(deduction)
        ),
        None => format!("{costs}."),
    }
}

fn bend_method(method: BendMethod, k: Option<f64>) -> String {
    let name = match method {
        BendMethod::Rennels => "Rennels & Hudson",
        BendMethod::Miller => "Miller",
        BendMethod::Ito => "Ito",
        BendMethod::Idelchik => "Idelchik",
    };
    match k {
        Some(k) => format!("{name}: K {k:.2}"),
        None => format!("{name}: does not cover this elbow"),
    }
}

fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Published => "published",
        Standing::SecondHand => "published, read at second hand",
        Standing::CommonPractice => "common practice, no source",
        Standing::Assumption => "assumption",
        Standing::Memory => "from memory",
        Standing::Typed => "typed by the user",
    }
}

fn reach(reach: Reach) -> &'static str {
    match reach {
        Reach::Within => "within the source's range",
        Reach::AtEdge => "at the edge of the source's range",
        Reach::Beyond => "beyond the source's range",
    }
}

fn finding(units: UnitSystem, finding: &Finding) -> String {
    match finding {
        Finding::WetWall { .. }
        | Finding::Dip(_)
        | Finding::SlowAir { .. }
        | Finding::UpsizingSlows { .. } => heat::finding(units, finding).unwrap_or_default(),
        Finding::ElbowsOverlap { overlap, .. } => format!(
            "Two fittings need {} more room than there is between them. Move a corner or take a \
             smaller radius.",
            units.length(*overlap)
        ),
        Finding::ElbowsClose { gap_diameters, .. } => format!(
            "Two elbows have only {gap_diameters:.1} duct diameters of straight between them: the \
             second one's loss is less sure than a single elbow's."
        ),
        Finding::PointsCoincide { .. } => {
            "Two corners lie on one another; the second is left out. Move or remove one.".to_owned()
        }
        Finding::OutsideSource { .. } => {
            "An elbow's angle or radius is beyond what its formula was measured for: its figure is \
             a guess."
                .to_owned()
        }
        Finding::TransitionalFlow => {
            "The air is so slow that it is neither smooth nor turbulent: friction is not determined."
                .to_owned()
        }
        Finding::NoRoom(clash) => room::clash(units, clash),
        Finding::JointLeaks { escaped, .. } if *escaped < Airflow::ZERO => format!(
            "The draught draws about {} into the run by a leaking joint. Seal it.",
            units.airflow(-*escaped)
        ),
        Finding::JointLeaks { escaped, .. } => format!(
            "A leaking joint lets about {} out into the house, with its moisture and lint. Codes want \
             joints tight: seal it with foil tape or a clamp.",
            units.airflow(*escaped)
        ),
        Finding::NoAirflow => {
            "The blower cannot move air through this run. Check rises and the stated air."
                .to_owned()
        }
    }
}
