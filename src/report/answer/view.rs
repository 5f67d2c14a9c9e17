//! A plan to look at: drawing and totals in words, for a page that shows it and changes nothing.

use crate::plan::{Part, PieceKind, Plan, RunPath};
use crate::report::words::{Caution, Label, Language, Message, TotalFormula, say};
use crate::report::{Figures, drawing_svg, figures};
use crate::system::ElementKind;
use crate::units::{Length, Shown, UnitSystem};
use serde::Serialize;

/// A plan to look at.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct View {
    /// The plan's title, as it was typed.
    pub title: String,
    /// The drawing, the text of an SVG file; whatever was typed is inert in it.
    pub drawing: String,
    /// The run in words, for those who do not see the drawing.
    pub run: String,
    /// The totals in the order in which they are told.
    pub totals: Vec<ShownTotal>,
    /// Which element costs the most; empty where no air moves.
    pub costliest: String,
    /// What the cautions stand under.
    pub cautions_name: String,
    /// What must stand beside any such figures.
    pub cautions: Vec<String>,
}

/// A total in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ShownTotal {
    /// What it is.
    pub name: String,
    /// The figure with its unit.
    pub figure: String,
    /// What it is held against, where there is a limit; else empty.
    pub against: String,
}

impl View {
    /// Of `plan`, with figures in `units`.
    pub fn of(plan: &Plan, units: UnitSystem) -> Self {
        let (figures, assessment) = figures(plan);
        let ledger = assessment.working.as_ref().map(|(_, ledger)| ledger);
        let gas = plan.dryer.energy == crate::plan::Energy::Gas;
        let words = |message: Message<'_>| say(Language::English, units, message);
        Self {
            title: plan.title.clone(),
            drawing: drawing_svg(plan, ledger, Language::English, units),
            run: tell_run(plan, &figures, words),
            totals: totals(&figures, units),
            costliest: costliest(&figures, units),
            cautions_name: words(Message::Label(Label::Cautions)),
            cautions: Caution::standing(gas)
                .map(|caution| words(Message::Caution(caution)))
                .collect(),
        }
    }
}

fn totals(figures: &Figures, units: UnitSystem) -> Vec<ShownTotal> {
    let words = |message: Message<'_>| say(Language::English, units, message);
    let none = || words(Message::Label(Label::NoAirflowFigure));
    let total = |name: TotalFormula, figure: Option<Shown>| ShownTotal {
        name: words(Message::TotalName(name)),
        figure: figure.map_or_else(none, |figure| figure.to_string()),
        against: String::new(),
    };
    let all = figures.totals.as_ref();
    let code = &figures.code;
    let verdict = words(Message::Verdict(code.verdict));
    let limit = code.limit.map(|limit| units.length(limit).to_string());
    vec![
        total(
            TotalFormula::Airflow,
            all.map(|all| units.airflow(all.airflow)),
        ),
        total(
            TotalFormula::BackPressure,
            all.map(|all| units.pressure(all.back_pressure)),
        ),
        total(
            TotalFormula::Velocity,
            all.map(|all| units.velocity(all.velocity)),
        ),
        ShownTotal {
            against: limit.map_or(verdict.clone(), |limit| format!("{verdict}, {limit}")),
            ..total(
                TotalFormula::CodeLength,
                Some(units.length(code.with_deductions)),
            )
        },
    ]
}

fn costliest(figures: &Figures, units: UnitSystem) -> String {
    Message::dominant(figures, 1).map_or_else(String::new, |message| {
        say(Language::English, units, message)
    })
}

/// Has the whole run told, in the order in which the air meets it.
pub fn tell_run<R>(plan: &Plan, figures: &Figures, tell: impl FnOnce(Message<'_>) -> R) -> R {
    let path = RunPath::of(plan);
    let elements = figures.elements.iter().map(|element| {
        let at = path.pieces.iter().position(|piece| piece.id == element.id);
        let rise = at
            .filter(|_| element.id.part == Part::Riser)
            .and_then(|at| Some(path.pieces.get(at + 1)?.height - path.pieces.get(at)?.height));
        (element.element, rise)
    });
    let elements: Vec<(ElementKind, Option<Length>)> = elements.collect();
    let mut pieces = path.pieces.iter().rev();
    let end = pieces.find(|piece| matches!(piece.kind, PieceKind::Termination));
    tell(Message::RunInOrder {
        outlet_height: plan.dryer.outlet_height,
        elements: &elements,
        end_height: end.map_or(plan.dryer.outlet_height, |piece| piece.height),
    })
}
