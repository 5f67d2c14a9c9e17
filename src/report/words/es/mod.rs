//! Spanish as the trade speaks it in Mexico and the United States. It awaits review by a native speaker.

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

use super::first_letter::lower_first;
use super::{Label, Message, formula};
use crate::plan::BendMethod;
use crate::scene::Text;
use crate::source::{Reach, Standing};
use crate::system::{ElementKind, Finding};
use crate::units::{Airflow, Length, UnitSystem};
use action_name::action_name;
use element::{article, contracted, element, element_size};
use fixed::{caution, label};
use trouble::{file, length_text, refusal};

#[allow(clippy::too_many_lines, reason = "one arm a message")]
pub(super) fn text(units: UnitSystem, message: Message<'_>) -> String {
    match message {
        Message::Label(key) => label(key).to_owned(),
        Message::CodeLabel(key) => code_label::code_label(key).to_owned(),
        Message::Language(key) => language_label::language_label(key).to_owned(),
        Message::Answer(message) => answer::answer(message),
        Message::Site(message) => site::site(units, message),
        Message::Handover(message) => handover::handover(units, message),
        Message::Side(message) => side::side(units, message),
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
        Message::Verdict(verdict) => code::verdict(verdict).to_owned(),
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
        Message::SeenOnSite { seen, of } => format!("{seen} de {of} revisados"),
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
            "{}, {:.0} % de la dispersión",
            input_words::input(input),
            share * 100.0
        ),
        Message::CodeLengthSpan { least, most } => derivation::span(units, least, most),
        Message::Unpublished(grounds) => derivation::unpublished(grounds),
        Message::Subject(subject) => derivation::subject(subject).to_owned(),
        Message::Input(input) => input_words::input(input).to_owned(),
        Message::InputRange { input, coefficient } => input_words::range(units, input, coefficient),
        Message::LeadingInput { input, share } => format!(
            "Lo que más mueve la contrapresión: {}, con el {:.0} % de la dispersión. Una lectura o un \
             dato del fabricante al respecto es lo que más estrecharía la banda.",
            lower_first(input_words::input(input)),
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
            format!("“{text}” no se entendió como un número. Escríbalo sin coma, como 1200 o 12.5.")
        }
        Message::NotACount { text } => {
            format!("«{text}» no es una cuenta. Escriba un número entero desde 0, como 2.")
        }
        Message::ThingsSelected(count) => format!("{count} cosas seleccionadas"),
        Message::Thing(thing) => room::thing(units, thing),
        Message::File(error) => file(error),
    }
}

fn band(low: &str, high: &str) -> String {
    format!("{low} a {high}")
}

fn new_totals(airflow: &str, back_pressure: &str) -> String {
    format!("Flujo de aire {airflow}, contrapresión {back_pressure}.")
}

fn drawing(units: UnitSystem, text: &Text) -> String {
    match text {
        Text::LegLength(length) | Text::Size(length) => units.length(*length).to_string(),
        Text::Rise(rise) if *rise < Length::ZERO => format!("baja {}", units.length(-*rise)),
        Text::Rise(rise) => format!("sube {}", units.length(*rise)),
        Text::Height(height) => units.length(*height).to_string(),
        Text::Rank(rank) => rank.to_string(),
        Text::Suspect(rank) => ["A", "B", "C"].get(*rank).unwrap_or(&"").to_string(),
        Text::Dryer => "Secadora".to_owned(),
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
        "El recorrido en orden, desde la salida de la secadora a {}: {}. Termina a {}.",
        height(units, outlet_height),
        elements.join("; "),
        height(units, end_height)
    )
}

fn height(units: UnitSystem, height: Length) -> String {
    if height < Length::ZERO {
        format!("{} bajo el piso", units.length(-height))
    } else {
        format!("{} sobre el piso", units.length(height))
    }
}

fn dominant(
    units: UnitSystem,
    rank: usize,
    element: ElementKind,
    share: f64,
    equivalent_length: Length,
    code_deduction: Option<Length>,
) -> String {
    let rank = if rank == 1 {
        "Lo que más cuesta"
    } else {
        "Lo que sigue"
    };
    let name = lower_first(self::element(element));
    let size = element_size(units, element);
    let comma = if size.is_empty() { "" } else { ", " };
    let costs = format!(
        "{rank}: {name}{comma}{size}. Causa el {:.0} % de la pérdida, tanto como {} de ducto recto",
        share * 100.0,
        units.equivalent_length(equivalent_length)
    );
    match code_deduction {
        Some(deduction) => format!(
            "{costs}, mientras que el código descuenta {}.",
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
        None => format!("{name}: no abarca este codo"),
    }
}

fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Published => "publicado",
        Standing::SecondHand => "publicado, leído de segunda mano",
        Standing::CommonPractice => "práctica común, sin fuente",
        Standing::Assumption => "supuesto",
        Standing::Memory => "de memoria",
        Standing::Typed => "escrito por el usuario",
    }
}

fn reach(reach: Reach) -> &'static str {
    match reach {
        Reach::Within => "dentro del alcance de la fuente",
        Reach::AtEdge => "en el límite del alcance de la fuente",
        Reach::Beyond => "fuera del alcance de la fuente",
    }
}

fn finding(units: UnitSystem, finding: &Finding) -> String {
    match finding {
        Finding::WetWall { .. }
        | Finding::Dip(_)
        | Finding::SlowAir { .. }
        | Finding::UpsizingSlows { .. } => heat::finding(units, finding).unwrap_or_default(),
        Finding::ElbowsOverlap { overlap, .. } => format!(
            "Dos accesorios necesitan {} más de espacio del que hay entre ellos. Mueva una esquina o use \
             un radio menor.",
            units.length(*overlap)
        ),
        Finding::ElbowsClose { gap_diameters, .. } => format!(
            "Entre dos codos hay solo {gap_diameters:.1} diámetros de ducto recto: la pérdida del segundo \
             es menos segura que la de un codo solo."
        ),
        Finding::PointsCoincide { .. } => {
            "Dos esquinas coinciden; la segunda no se toma en cuenta. Mueva o quite una.".to_owned()
        }
        Finding::OutsideSource { .. } => {
            "El ángulo o el radio de un codo está fuera de lo que se midió para su fórmula: su valor es \
             una conjetura."
                .to_owned()
        }
        Finding::TransitionalFlow => {
            "El aire va tan lento que su flujo no es laminar ni turbulento: la fricción queda \
             indeterminada."
                .to_owned()
        }
        Finding::NoRoom(clash) => room::clash(units, clash),
        Finding::JointLeaks { escaped, .. } if *escaped < Airflow::ZERO => format!(
            "Por una junta con fuga, el tiro hace entrar alrededor de {} en el recorrido. Séllela.",
            units.airflow(-*escaped)
        ),
        Finding::JointLeaks { escaped, .. } => format!(
            "Por una junta con fuga salen alrededor de {} a la casa, con su humedad y su pelusa. Los \
             códigos exigen juntas herméticas: séllela con cinta de aluminio o una abrazadera.",
            units.airflow(*escaped)
        ),
        Finding::NoAirflow => {
            "El soplador no puede mover aire por este recorrido. Revise las subidas y el aire indicado."
                .to_owned()
        }
    }
}
