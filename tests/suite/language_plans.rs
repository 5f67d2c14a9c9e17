//! All that is said of random plans, in every language: the same figures and names, each by every rule
//! set; the languages' tags; and the decimal sign of each.
//!
//! Sources: the two texts hold each other (`language_values.rs`); decimal signs are those of Unicode
//! CLDR 47 as Babel 2.18.0 carries it, in `tests/reference/data/number_signs.csv`; tags are those of
//! ISO 639-1 for English and Spanish.

use crate::language_files::english_words;
use crate::language_values::hold;
use crate::tally::Tally;
use crate::{random_plan, reference, seeded};
use elbowroom::plan::{self, Plan, ThingId, Visit};
use elbowroom::report::handover::{HandoverJob, SheetReading, SheetWish, handover_sheet};
use elbowroom::report::words::{HeatFormula, Language, LanguageLabel, Message, TotalFormula, say};
use elbowroom::report::{Figures, Paper, VisitSheet, figures, sheet_html, visit_sheet};
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
    hold(tally, Message::Flow(&plan.flow));
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

/// A sheet says once that its language awaits review, in that language; in English it says nothing of
/// the kind. A visit's sheet, which names no publication, holds no English then.
#[test]
fn a_sheet_in_a_language_that_awaits_review_says_so_once() {
    for language in Language::ALL {
        let mut plan = plan::blank(String::new());
        plan.visits.push(Visit::new("v1"));
        let (found, _) = figures(&plan);
        let visit = visit_sheet(&VisitSheet {
            plan: &plan,
            figures: &found,
            visit: 0,
            diagnosis: None,
            clean: &[],
            language,
            units: UnitSystem::Si,
        });
        let text = sheet_html(&visit).replace('<', " <").replace('>', "> ");
        let is_english = !english_words(&text).is_empty();
        assert_eq!(is_english, language == Language::English, "{text}");
        let job = HandoverJob::of(plan.clone(), Some(0));
        let wish = SheetWish {
            reading: SheetReading::Trade,
            paper: Paper::A4,
            language,
            units: UnitSystem::Si,
        };
        for sheet in [visit, handover_sheet(&job, wish)] {
            let sheet = sheet_html(&sheet);
            let mark = Message::Language(LanguageLabel::AwaitsReview);
            let mark = say(language, UnitSystem::Si, mark);
            let count = usize::from(language.awaits_review());
            assert_eq!(sheet.matches(&mark).count(), count, "{sheet}");
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
