//! Every language says a message with the same figures and names in it, says something where English
//! does, and in words of its own: on samples of every kind.
//!
//! Source of what is right: the two texts hold each other; a figure in one and not in the other is a
//! fault, whichever of them has it.

use crate::language_files::english_words;
use crate::message_samples as samples;
use crate::tally::Tally;
use crate::{handover_samples, reroute_samples, side_samples, site_samples, trouble_samples};
use elbowroom::plan::{Input, Phase};
use elbowroom::report::words::{Caution, Language, LanguageLabel, Message, TotalFormula, say};
use elbowroom::rules::{DeductionNote, Practice, Verdict, rule_sources};
use elbowroom::source::{Reach, Standing};
use elbowroom::system::{COEFFICIENTS, SOURCES};
use elbowroom::units::UnitSystem;

const UNITS: [UnitSystem; 2] = [UnitSystem::UsCustomary, UnitSystem::Si];
/// Words that both languages write alike: units, authors, what the samples name, a name of the file
/// format.
const ALIKE: [&str; 9] = [
    "cfm", "fpm", "btu", "rennels", "hudson", "miller", "ito", "idelchik", "qxz",
];
/// Fewer samples than there are.
const LEAST_SAMPLES: usize = 700;

/// The figures in `text`, sorted: digits with what joins them.
fn numbers(text: &str) -> Vec<String> {
    let joins = |letter: char| letter.is_ascii_digit() || ".,/".contains(letter);
    let parts = text.split(|letter: char| !joins(letter));
    let parts = parts.map(|part| part.trim_matches(|letter: char| !letter.is_ascii_digit()));
    let mut found: Vec<String> = parts
        .filter(|part| !part.is_empty())
        .map(str::to_owned)
        .collect();
    found.sort();
    found
}

/// The words of three letters and more in `text` that are not alike in all languages.
fn own_words(text: &str) -> usize {
    let words = text.split(|letter: char| !letter.is_alphabetic());
    let own = words.filter(|word| word.chars().count() > 2);
    own.filter(|word| !ALIKE.contains(&word.to_lowercase().as_str()))
        .count()
}

/// What is wrong with `other` as a telling of `english`.
fn fault(english: &str, other: &str) -> Option<String> {
    let why = if english.is_empty() != other.is_empty() {
        "one says nothing"
    } else if numbers(english) != numbers(other) {
        "other figures"
    } else if english == other && own_words(english) > 0 {
        "not in words of its own"
    } else if english.matches("qxz").count() != other.matches("qxz").count() {
        "a name is lost"
    } else if !english_words(other).is_empty() {
        "English words"
    } else {
        return None;
    };
    Some(format!("{why}: {english:?} and {other:?}"))
}

/// Holds every language's telling of `message` against the English one, in all units.
pub fn hold(tally: &mut Tally, message: Message<'_>) {
    for units in UNITS {
        let english = say(Language::English, units, message);
        for language in Language::ALL.into_iter().skip(1) {
            let found = fault(&english, &say(language, units, message));
            tally.holds(found.as_deref().unwrap_or_default(), found.is_none());
        }
    }
}

#[test]
fn a_fault_between_two_tellings_is_found() {
    for (english, other) in [
        ("Airflow 120 cfm", "Flujo de aire 121 cfm"),
        ("Airflow 120 cfm", "Flujo de aire"),
        ("Airflow 120 cfm", "Airflow 120 cfm"),
        ("Airflow 120 cfm", "El airflow 120 cfm"),
        ("Wall qxz17", "Muro 17"),
        ("Wall", ""),
    ] {
        assert!(fault(english, other).is_some(), "{english}, {other}");
    }
    assert_eq!(fault("Airflow 1.5 cfm", "Flujo de aire 1.5 cfm"), None);
    assert_eq!(fault("1.5 cfm", "1.5 cfm"), None);
}

#[test]
fn samples_of_every_kind_hold_the_same_figures() {
    let mut tally = Tally::new("samples");
    for kind in &samples::elements() {
        hold(&mut tally, Message::Element(kind));
        hold(&mut tally, Message::ElementSize(kind));
    }
    for text in &samples::texts_of_the_drawing() {
        hold(&mut tally, Message::Drawing(text));
    }
    for finding in &samples::findings() {
        hold(&mut tally, Message::Finding(finding));
    }
    for upgrade in &samples::upgrades() {
        hold(&mut tally, Message::InsulationUpgrade(upgrade));
    }
    for (index, deciding) in samples::deciding().iter().enumerate() {
        let parts = samples::elements();
        let element = parts.get(index % (parts.len() + 1));
        hold(&mut tally, Message::Deciding { deciding, element });
    }
    for text in &reroute_samples::reroutes() {
        hold(&mut tally, Message::Reroute(text));
    }
    for refusal in &trouble_samples::refusals() {
        hold(&mut tally, Message::Refusal(refusal));
    }
    for error in &trouble_samples::file_errors() {
        hold(&mut tally, Message::File(error));
    }
    for error in &trouble_samples::length_errors() {
        hold(&mut tally, Message::LengthText(error));
    }
    site_samples::each_of_the_site(|message| hold(&mut tally, Message::Site(message)));
    side_samples::each_of_the_side(|message| hold(&mut tally, Message::Side(message)));
    handover_samples::each_of_the_handover(|message| {
        hold(&mut tally, Message::Handover(message));
    });
    samples::each_of_the_rest(|message| hold(&mut tally, message));
    tally.finish(LEAST_SAMPLES);
}

/// Publications keep their titles; what is no publication is said in the language's own words.
#[test]
fn what_is_no_publication_is_told_in_every_language() {
    let mut tally = Tally::new("sources that are no publications");
    let physics = SOURCES.iter().map(|(_, source)| *source);
    for source in physics.chain(rule_sources()) {
        let is_own = matches!(
            source.standing,
            Standing::Assumption | Standing::CommonPractice | Standing::Typed
        );
        if is_own {
            hold(&mut tally, Message::Source(source));
        }
    }
    tally.finish(50);
}

#[test]
fn keys_without_values_hold_the_same_figures() {
    let mut tally = Tally::new("keys");
    for input in Input::ALL {
        hold(&mut tally, Message::Input(input));
        hold(&mut tally, Message::InputShare { input, share: 0.42 });
        hold(&mut tally, Message::LeadingInput { input, share: 0.42 });
        let coefficient = &COEFFICIENTS[input as usize];
        hold(&mut tally, Message::InputRange { input, coefficient });
    }
    for (subject, _) in SOURCES {
        hold(&mut tally, Message::Subject(subject));
        let grounds = [(subject, Standing::Assumption)];
        hold(&mut tally, Message::Unpublished(&grounds));
    }
    for phase in Phase::ALL {
        hold(&mut tally, Message::Phase(phase));
    }
    for which in TotalFormula::ALL {
        hold(&mut tally, Message::TotalName(which));
    }
    for caution in Caution::standing(true) {
        hold(&mut tally, Message::Caution(caution));
    }
    for verdict in [
        Verdict::Meets,
        Verdict::DoesNotMeet,
        Verdict::CannotTell,
        Verdict::CheckOnSite,
    ] {
        hold(&mut tally, Message::Verdict(verdict));
    }
    for note in [
        DeductionNote::NextSmallerRadius,
        DeductionNote::NextLargerAngle,
        DeductionNote::OverNinety,
        DeductionNote::AtLeast,
        DeductionNote::InTheLimit,
        DeductionNote::NotNamed,
    ] {
        hold(&mut tally, Message::DeductionNote(note));
    }
    for practice in [Practice::OverGrade, Practice::Insulation, Practice::Fall] {
        hold(&mut tally, Message::Practice(practice));
    }
    for standing in [
        Standing::Published,
        Standing::SecondHand,
        Standing::CommonPractice,
        Standing::Assumption,
        Standing::Memory,
        Standing::Typed,
    ] {
        hold(&mut tally, Message::Standing(standing));
    }
    for reach in [Reach::Within, Reach::AtEdge, Reach::Beyond] {
        hold(&mut tally, Message::Reach(reach));
    }
    for label in [
        LanguageLabel::English,
        LanguageLabel::Spanish,
        LanguageLabel::AwaitsReview,
    ] {
        hold(&mut tally, Message::Language(label));
    }
    tally.finish(300);
}
