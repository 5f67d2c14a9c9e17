//! An answer as rows of a table: one a plan, of reroutes one a suggestion. Names carry the SI unit.

use super::{Answer, Cell, CheckAnswer, Question, RerouteAnswer, VisitAnswer};
use crate::report::{CheckFigures, CodeFigures, ElementFigures, Figures, HeatFigures, Totals};
use crate::rules::Verdict;
use crate::search::Suggestion;
use crate::system::{Band, Bands};
use crate::units::{Length, Temperature};

/// A column's name, and what stands in it.
type Column<T> = (&'static str, fn(&T) -> Cell);

/// The names of the columns of a question's answers.
pub fn columns(question: &Question) -> Vec<&'static str> {
    fn names<T>(columns: &[Column<T>]) -> Vec<&'static str> {
        columns.iter().map(|(name, _)| *name).collect()
    }
    match question {
        Question::Figures { with_bands } => {
            let beside = with_bands.then(|| names(&bands()));
            [names(&FIGURES), beside.unwrap_or_default()].concat()
        }
        Question::Check => names(&CHECK),
        Question::Reroute(_) => names(&reroute()),
        Question::Diagnose { .. } => names(&DIAGNOSIS),
        Question::Sheet { .. } => vec!["sheet"],
    }
}

/// The rows of an answer, in the columns of its question.
pub fn rows(answer: &Answer) -> Vec<Vec<Cell>> {
    fn row<T>(columns: &[Column<T>], of: &T) -> Vec<Cell> {
        columns.iter().map(|(_, cell)| cell(of)).collect()
    }
    match answer {
        Answer::Figures(figures) => vec![row(&FIGURES, figures)],
        Answer::WithBands(both) => {
            let mut cells = row(&FIGURES, &both.figures);
            cells.extend(row(&bands(), &Banded(both.bands.as_ref())));
            vec![cells]
        }
        Answer::Check(check) => vec![row(&CHECK, check)],
        Answer::Reroute(whole) if whole.suggestions.is_empty() => {
            vec![row(&reroute(), &(whole.as_ref(), None))]
        }
        Answer::Reroute(whole) => {
            let suggestions = whole.suggestions.iter().enumerate();
            suggestions
                .map(|(index, suggestion)| {
                    row(&reroute(), &(whole.as_ref(), Some((index, suggestion))))
                })
                .collect()
        }
        Answer::Diagnosis(visit) => vec![row(&DIAGNOSIS, visit)],
        Answer::Sheet(text) => vec![vec![Cell::Text(text.clone())]],
    }
}

fn total(of: &Figures, figure: fn(&Totals) -> f64) -> Cell {
    of.totals.as_ref().map(figure).into()
}

fn heat(of: &Figures, figure: fn(&HeatFigures) -> Option<f64>) -> Cell {
    of.heat.as_ref().and_then(figure).into()
}

fn costliest(of: &Figures, cell: fn(&ElementFigures) -> Cell) -> Cell {
    let is_costliest =
        |element: &&ElementFigures| element.air.as_ref().is_some_and(|air| air.rank == 1);
    of.elements
        .iter()
        .find(is_costliest)
        .map_or(Cell::Empty, cell)
}

const fn metres(length: Length) -> f64 {
    length.metres()
}

const FIGURES: [Column<Figures>; 20] = [
    ("airflow_m3_per_s", |it| {
        total(it, |all| all.airflow.cubic_metres_per_second())
    }),
    ("airflow_at_end_m3_per_s", |it| {
        total(it, |all| all.airflow_at_end.cubic_metres_per_second())
    }),
    ("back_pressure_pa", |it| {
        total(it, |all| all.back_pressure.pascals())
    }),
    ("loss_pa", |it| total(it, |all| all.loss.pascals())),
    ("velocity_m_per_s", |it| {
        total(it, |all| all.velocity.metres_per_second())
    }),
    ("developed_length_m", |it| {
        total(it, |all| metres(all.developed_length))
    }),
    ("equivalent_length_m", |it| {
        total(it, |all| metres(all.equivalent_length))
    }),
    ("costliest_element", |it| {
        costliest(it, |element| element.id.to_string().into())
    }),
    ("costliest_loss_pa", |it| {
        costliest(it, |element| {
            element.air.as_ref().map(|air| air.loss.pascals()).into()
        })
    }),
    ("costliest_share", |it| {
        costliest(it, |element| {
            element.air.as_ref().map(|air| air.share).into()
        })
    }),
    ("rule_set", |it| Cell::key(&it.code.rule_set)),
    ("code_length_m", |it| metres(it.code.with_deductions).into()),
    ("code_limit_m", |it| it.code.limit.map(metres).into()),
    ("code_margin_m", |it| it.code.margin.map(metres).into()),
    ("code_verdict", |it| Cell::key(&it.code.verdict)),
    ("leaving_degc", |it| {
        heat(it, |all| Some(all.leaving.celsius()))
    }),
    ("dew_point_degc", |it| {
        heat(it, |all| all.dew_point.map(Temperature::celsius))
    }),
    ("coldest_wall_degc", |it| {
        heat(it, |all| all.coldest_wall.map(Temperature::celsius))
    }),
    ("water_kg_per_s", |it| {
        heat(it, |all| Some(all.water.kilograms_per_second()))
    }),
    ("findings", |it| Cell::count(it.findings.len())),
];

/// The bands; none where no air moves.
struct Banded<'a>(Option<&'a Bands>);

fn band(of: &Banded<'_>, figure: fn(&Bands) -> Band, end: fn(&Band) -> f64) -> Cell {
    of.0.map(|bands| end(&figure(bands))).into()
}

/// A function, since a constant could not borrow.
fn bands<'a>() -> [Column<Banded<'a>>; 6] {
    [
        ("airflow_low_m3_per_s", |it| {
            band(it, |all| all.airflow, |of| of.low)
        }),
        ("airflow_high_m3_per_s", |it| {
            band(it, |all| all.airflow, |of| of.high)
        }),
        ("back_pressure_low_pa", |it| {
            band(it, |all| all.back_pressure, |of| of.low)
        }),
        ("back_pressure_high_pa", |it| {
            band(it, |all| all.back_pressure, |of| of.high)
        }),
        ("velocity_low_m_per_s", |it| {
            band(it, |all| all.velocity, |of| of.low)
        }),
        ("velocity_high_m_per_s", |it| {
            band(it, |all| all.velocity, |of| of.high)
        }),
    ]
}

fn count(check: &CheckFigures, verdict: Verdict) -> Cell {
    let findings = check.findings.iter();
    Cell::count(
        findings
            .filter(|finding| finding.verdict == verdict)
            .count(),
    )
}

/// The sections of the rules with `verdict`, each once.
fn sections(check: &CheckFigures, verdict: Verdict) -> Cell {
    let mut sections: Vec<&str> = Vec::new();
    for finding in &check.findings {
        if finding.verdict == verdict && !sections.contains(&finding.section) {
            sections.push(finding.section);
        }
    }
    sections.join("; ").into()
}

fn code(of: &CheckAnswer, length: fn(&CodeFigures) -> Option<Length>) -> Cell {
    length(&of.code).map(metres).into()
}

const CHECK: [Column<CheckAnswer>; 15] = [
    ("rule_set", |it| Cell::key(&it.code.rule_set)),
    ("section", |it| it.code.section.to_owned().into()),
    ("measured_length_m", |it| code(it, |of| Some(of.measured))),
    ("deductions_m", |it| code(it, |of| Some(of.deductions))),
    ("length_with_deductions_m", |it| {
        code(it, |of| Some(of.with_deductions))
    }),
    ("least_length_m", |it| code(it, |of| Some(of.least))),
    ("most_length_m", |it| code(it, |of| Some(of.most))),
    ("limit_m", |it| code(it, |of| of.limit)),
    ("margin_m", |it| code(it, |of| of.margin)),
    ("verdict", |it| Cell::key(&it.code.verdict)),
    ("rules_met", |it| count(&it.code_check, Verdict::Meets)),
    ("rules_not_met", |it| {
        count(&it.code_check, Verdict::DoesNotMeet)
    }),
    ("rules_open", |it| {
        count(&it.code_check, Verdict::CannotTell)
    }),
    ("rules_on_site", |it| {
        count(&it.code_check, Verdict::CheckOnSite)
    }),
    ("sections_not_met", |it| {
        sections(&it.code_check, Verdict::DoesNotMeet)
    }),
];

/// The whole answer, and one of its suggestions with its index; none where there is no suggestion.
type Suggested<'a> = (&'a RerouteAnswer, Option<(usize, &'a Suggestion)>);

fn own(of: &Suggested<'_>, cell: fn(&Suggestion) -> Cell) -> Cell {
    of.1.map_or(Cell::Empty, |(_, suggestion)| cell(suggestion))
}

/// The kinds of change that a suggestion makes.
fn changes(of: &Suggestion) -> Cell {
    let kind = |change| {
        let value = serde_json::to_value(change).ok()?;
        Some(value.get("kind")?.as_str()?.to_owned())
    };
    let kinds: Vec<String> = of.changes.iter().filter_map(kind).collect();
    kinds.join("; ").into()
}

/// A function, since a constant could not borrow.
fn reroute<'a>() -> [Column<Suggested<'a>>; 11] {
    [
        ("present_airflow_m3_per_s", |it| {
            it.0.present
                .map(|at| at.airflow.cubic_metres_per_second())
                .into()
        }),
        ("present_back_pressure_pa", |it| {
            it.0.present.map(|at| at.back_pressure.pascals()).into()
        }),
        ("suggestion", |it| {
            it.1.map(|(index, _)| Cell::count(index + 1)).into()
        }),
        ("changes", |it| own(it, changes)),
        ("airflow_m3_per_s", |it| {
            own(it, |of| of.figures.airflow.cubic_metres_per_second().into())
        }),
        ("back_pressure_pa", |it| {
            own(it, |of| of.figures.back_pressure.pascals().into())
        }),
        ("code_length_m", |it| {
            own(it, |of| metres(of.figures.code_length).into())
        }),
        ("developed_length_m", |it| {
            own(it, |of| metres(of.figures.developed_length).into())
        }),
        ("parts", |it| own(it, |of| Cell::count(of.figures.parts))),
        ("gained_airflow_m3_per_s", |it| {
            own(it, |of| {
                of.gain
                    .map(|gain| gain.airflow.cubic_metres_per_second())
                    .into()
            })
        }),
        ("is_proven", |it| Cell::key(&it.0.progress.is_proven)),
    ]
}

fn meaning(of: &VisitAnswer, cell: fn(&crate::diagnosis::Diagnosis) -> Cell) -> Cell {
    of.meaning.diagnosis.as_ref().map_or(Cell::Empty, cell)
}

const DIAGNOSIS: [Column<VisitAnswer>; 11] = [
    ("visit", |it| it.visit.to_string().into()),
    ("nothing_wrong", |it| meaning(it, |of| of.nothing.into())),
    ("nothing_that_matters", |it| {
        meaning(it, |of| of.harmless.into())
    }),
    ("airflow_share_mean", |it| {
        meaning(it, |of| of.airflow_now.0.into())
    }),
    ("airflow_share_low", |it| {
        meaning(it, |of| of.airflow_now.1.into())
    }),
    ("airflow_share_high", |it| {
        meaning(it, |of| of.airflow_now.2.into())
    }),
    ("likeliest_fault", |it| {
        meaning(it, |of| {
            of.causes
                .first()
                .map(|first| Cell::key(&first.cause.kind))
                .into()
        })
    }),
    ("at_element", |it| {
        meaning(it, |of| {
            let element = of
                .causes
                .first()
                .and_then(|first| first.cause.element.as_ref());
            element.map(ToString::to_string).into()
        })
    }),
    ("probability", |it| {
        meaning(it, |of| {
            of.causes.first().map(|first| first.probability).into()
        })
    }),
    ("is_settled", |it| meaning(it, |of| Cell::key(&of.settled))),
    ("next_test", |it| {
        meaning(it, |of| {
            of.next
                .as_ref()
                .map(|next| next.test.name().to_owned())
                .into()
        })
    }),
];
