//! All that is said of random plans, in every language: the same figures and names, each by every rule
//! set; sheets; the languages' tags; and the decimal sign of each.
//!
//! Sources: the two texts hold each other (`language_values.rs`); decimal signs are those of Unicode
//! CLDR 47 as Babel 2.18.0 carries it, in `tests/reference/data/number_signs.csv`; tags are those of
//! ISO 639-1 for English and Spanish.

use crate::language_files::english_words;
use crate::language_values::hold;
use crate::tally::Tally;
use crate::visits::house_with_readings;
use crate::{random_plan, reference, seeded};
use elbowroom::plan::{self, Plan, ThingId, Visit};
use elbowroom::report::handover::{HandoverJob, SheetReading, SheetWish, handover_sheet};
use elbowroom::report::words::{HeatFormula, Language, LanguageLabel, Message, TotalFormula, say};
use elbowroom::report::{Figures, Paper, SheetPart, VisitSheet, figures, sheet_html, visit_sheet};
use elbowroom::rules::RULE_SETS;
use elbowroom::system::ElementKind;
use elbowroom::units::UnitSystem;
use serde::Deserialize;
use std::cell::RefCell;

/// So many plans are told in every language, ten times as many in the full count.
const PLANS: u32 = 20;
/// Fewer messages than a plan has, times the plans.
const LEAST: usize = 50 * PLANS as usize;

fn hold_elements(tally: &mut Tally, found: &Figures) {
    for element in &found.elements {
        hold(tally, Message::Element(&element.element));
        hold(tally, Message::ElementSize(&element.element));
        hold(tally, Message::LossFormula(element));
        if let Some(totals) = &found.totals {
            hold(tally, Message::EquivalentLengthFormula(element, totals));
        }
        for (method, k) in element.air.iter().flat_map(|air| air.methods.iter()) {
            hold(
                tally,
                Message::BendMethod {
                    method: *method,
                    k: *k,
                },
            );
        }
    }
}

fn hold_totals(tally: &mut Tally, plan: &Plan, found: &Figures) {
    for which in TotalFormula::ALL {
        hold(tally, Message::TotalFormula(found, which));
    }
    for (heat, which) in found.heat.iter().flat_map(|heat| {
        let all = HeatFormula::ALL.into_iter();
        all.map(move |which| (heat, which))
    }) {
        hold(tally, Message::HeatFormula(heat, which));
    }
    for finding in &found.findings {
        hold(tally, Message::Finding(finding));
    }
    hold(tally, Message::Unpublished(&found.unpublished));
    let things: Vec<ThingId> = plan.things();
    for thing in things.iter().filter_map(|id| plan.thing(id)) {
        hold(tally, Message::Thing(&thing));
    }
}

fn hold_code(tally: &mut Tally, found: &Figures) {
    let element = |id| {
        found
            .elements
            .iter()
            .find(|element| Some(&element.id) == id)
    };
    let kind = |id| element(id).map(|element| &element.element);
    hold(tally, Message::RuleSet(found.code.rule_set));
    hold(
        tally,
        Message::CodeLengthSpan {
            least: found.code.least,
            most: found.code.most,
        },
    );
    for finding in &found.code_check.findings {
        hold(tally, Message::RuleTopic(finding.topic));
        hold(tally, Message::RuleAsks(finding));
        hold(tally, Message::RuleMeasured(finding));
        if let Some(deciding) = &finding.deciding {
            let element: Option<&ElementKind> = kind(deciding.element());
            hold(tally, Message::Deciding { deciding, element });
        }
    }
}

#[test]
fn random_plans_are_told_with_the_same_figures() {
    let tally = RefCell::new(Tally::new("random plans"));
    let tell = |mut plan: Plan| {
        let tally = &mut *tally.borrow_mut();
        let (found, _) = figures(&plan);
        hold_elements(tally, &found);
        hold_totals(tally, &plan, &found);
        for set in RULE_SETS {
            plan.code.rule_set = set.id;
            hold_code(tally, &figures(&plan).0);
        }
        Ok(())
    };
    seeded::check(PLANS, &random_plan::with_blower(), tell);
    seeded::check(PLANS, &random_plan::with_stated_airflow(), tell);
    tally.into_inner().finish(LEAST);
}

/// A printed visit says once that its language awaits review, in that language, and holds no English;
/// in English it says nothing of the kind.
#[test]
fn a_sheet_in_a_language_that_awaits_review_says_so_once() {
    for language in Language::ALL {
        let mut plan = plan::blank(String::new());
        plan.visits.push(Visit::new("v1"));
        let (found, _) = figures(&plan);
        let sheet = sheet_html(&visit_sheet(&VisitSheet {
            plan: &plan,
            figures: &found,
            visit: 0,
            diagnosis: None,
            clean: &[],
            language,
            units: UnitSystem::Si,
        }));
        let mark = Message::Language(LanguageLabel::AwaitsReview);
        let mark = say(language, UnitSystem::Si, mark);
        let count = usize::from(language.awaits_review());
        assert_eq!(sheet.matches(&mark).count(), count, "{sheet}");
        let text = sheet.replace('<', " <").replace('>', "> ");
        let is_english = !english_words(&text).is_empty();
        assert_eq!(is_english, language == Language::English, "{sheet}");
    }
}

/// Every text of `part` but the foot, where publications keep their titles, and what was typed.
fn told_in(part: &SheetPart) -> Vec<&str> {
    match part {
        SheetPart::Title(text)
        | SheetPart::Heading(text)
        | SheetPart::Paragraph(text)
        | SheetPart::Fine(text) => vec![text],
        SheetPart::List(texts) | SheetPart::Steps(texts) => {
            texts.iter().map(String::as_str).collect()
        }
        SheetPart::FineList(_) => Vec::new(),
        SheetPart::Table(table) => {
            let cells = table.head.iter().chain(table.rows.iter().flatten());
            cells.map(String::as_str).collect()
        }
        SheetPart::Drawing(drawing) => vec![&drawing.name],
        SheetPart::Pictures(pictures) => pictures.iter().map(|it| it.name.as_str()).collect(),
        SheetPart::Blank(lines) => lines.iter().map(|(name, _)| name.as_str()).collect(),
    }
}

/// The handover sheet of a visited house, told for either reader: no English in Spanish, and that it
/// awaits review said once.
#[test]
fn a_handover_sheet_is_told_in_its_language() {
    let mut plan = house_with_readings();
    plan.title = String::new();
    plan.note = String::new();
    let job = HandoverJob::of(plan, None);
    for reading in [SheetReading::Customer, SheetReading::Trade] {
        for language in Language::ALL {
            let sheet = handover_sheet(
                &job,
                SheetWish {
                    reading,
                    paper: Paper::Letter,
                    language,
                    units: UnitSystem::UsCustomary,
                },
            );
            let mark = Message::Language(LanguageLabel::AwaitsReview);
            let mark = say(language, UnitSystem::UsCustomary, mark);
            let count = sheet_html(&sheet).matches(&mark).count();
            assert_eq!(count, usize::from(language.awaits_review()));
            let told: Vec<&str> = sheet.parts.iter().flat_map(told_in).collect();
            let english = told.iter().filter(|text| !english_words(text).is_empty());
            let english: Vec<_> = english.collect();
            let is_english = language == Language::English;
            assert_eq!(!english.is_empty(), is_english, "{english:?} of {told:?}");
        }
    }
}

#[test]
fn a_language_is_found_by_its_tag() {
    let tags = Language::ALL.map(Language::tag);
    assert_eq!(tags, ["en", "es"]);
    for language in Language::ALL {
        assert_eq!(Language::of_tag(language.tag()), Some(language));
    }
    assert_eq!(Language::of_tag("xx"), None);
    assert_eq!(Language::default(), Language::English);
    assert!(Language::SPANISH.awaits_review() && !Language::English.awaits_review());
}

#[derive(Debug, Deserialize)]
struct Signs {
    locale: String,
    decimal_sign: String,
}

/// Spanish is meant for Mexico and the United States, and its figures have the sign that both use; the
/// set holds Spain's too, which another sign belongs to.
#[test]
fn figures_have_the_decimal_sign_of_their_locale() {
    let rows: Vec<Signs> = reference::rows("number_signs.csv", 5);
    let sign = |locale: &str| {
        let row = rows.iter().find(|row| row.locale == locale).unwrap();
        match row.decimal_sign.as_str() {
            "point" => '.',
            "comma" => ',',
            other => panic!("{other}"),
        }
    };
    assert_eq!(sign("es_ES"), ',');
    let meant = [
        (Language::English, "en_US"),
        (Language::SPANISH, "es_MX"),
        (Language::SPANISH, "es_US"),
    ];
    for (language, locale) in meant {
        let times = say(language, UnitSystem::Si, Message::Times(3.4));
        let sign = sign(locale);
        assert!(
            times.starts_with(&format!("3{sign}4 ")),
            "{locale}: {times}"
        );
    }
}
