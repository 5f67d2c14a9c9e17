//! Questions and answers.

use super::Unanswered;
use crate::diagnosis::{VisitMeaning, visit_meaning};
use crate::plan::{Plan, Visit};
use crate::report::handover::{HandoverJob, SheetWish, handover_sheet};
use crate::report::{CheckFigures, CodeFigures, Figures, figures, sheet_file};
use crate::search::{Blocked, Options, Progress, Request, Search, Suggestion};
use crate::system::{Bands, bands};
use serde::Serialize;

/// What is asked of a plan.
#[derive(Debug, Clone, PartialEq)]
pub enum Question {
    /// Every figure of every element.
    Figures {
        /// Whether the totals' bands are wanted beside them.
        with_bands: bool,
    },
    /// What the chosen rule set says.
    Check,
    /// Other routes and upgrades.
    Reroute(Options),
    /// What the readings of a visit mean.
    Diagnose {
        /// The visit's id; none for the newest.
        visit: Option<String>,
    },
    /// The handover sheet, with what a visit came to where there is one.
    Sheet {
        /// The visit's id; none for the newest.
        visit: Option<String>,
        /// How it is wanted.
        wish: SheetWish,
    },
}

/// What a [`Question`] comes to; as JSON each field's name carries its SI unit.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(untagged)]
pub enum Answer {
    /// The figures.
    Figures(Box<Figures>),
    /// The figures with the bands of the totals.
    WithBands(Box<WithBands>),
    /// The code check.
    Check(Box<CheckAnswer>),
    /// Suggestions.
    Reroute(Box<RerouteAnswer>),
    /// What a visit means.
    Diagnosis(Box<VisitAnswer>),
    /// The sheet as the text of an HTML file; whatever was typed is inert in it.
    Sheet(String),
}

/// Figures with the bands of the totals.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WithBands {
    /// The figures.
    #[serde(flatten)]
    pub figures: Figures,
    /// The bands, in SI; none where a drawn blower moves no air.
    pub bands: Option<Bands>,
}

/// What the rules say, apart from the physics.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CheckAnswer {
    /// The code length.
    pub code: CodeFigures,
    /// Every rule of the chosen set, and the sets side by side.
    pub code_check: CheckFigures,
}

/// A whole search.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RerouteAnswer {
    /// The present run's figures; none where no air moves.
    pub present: Option<crate::search::Figures>,
    /// Whether the present run has room where it is drawn.
    pub has_present_room: bool,
    /// The suggestions, the best first.
    pub suggestions: Vec<Suggestion>,
    /// What is in the way where no new run reaches a place to end.
    pub blocked: Option<Blocked>,
    /// What was looked at.
    pub progress: Progress,
}

/// What a visit means.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct VisitAnswer {
    /// The visit's id.
    pub visit: std::sync::Arc<str>,
    /// What it comes to.
    #[serde(flatten)]
    pub meaning: VisitMeaning,
}

/// Partial routes between two looks at whether the search is over. Of the computation.
const BUDGET: usize = 10_000;

impl Question {
    /// The answer for `plan`.
    ///
    /// # Errors
    ///
    /// [`Unanswered`] where the plan has not what it is asked about.
    pub fn answer(&self, plan: &Plan) -> Result<Answer, Unanswered> {
        Ok(match self {
            Self::Figures { with_bands } => {
                let (figures, assessment) = figures(plan);
                if *with_bands {
                    let bands = bands(&assessment.run);
                    Answer::WithBands(Box::new(WithBands { figures, bands }))
                } else {
                    Answer::Figures(Box::new(figures))
                }
            }
            Self::Check => {
                let Figures {
                    code, code_check, ..
                } = figures(plan).0;
                Answer::Check(Box::new(CheckAnswer { code, code_check }))
            }
            Self::Reroute(options) => Answer::Reroute(Box::new(reroute(plan, options))),
            Self::Diagnose { visit } => {
                let (_, visit) = visit_of(plan, visit.as_deref())?;
                Answer::Diagnosis(Box::new(VisitAnswer {
                    visit: visit.id.clone(),
                    meaning: visit_meaning(plan, visit),
                }))
            }
            Self::Sheet { visit, wish } => Answer::Sheet(sheet(plan, visit.as_deref(), *wish)?),
        })
    }
}

/// The visit called `id` with its index, or the newest.
fn visit_of<'a>(plan: &'a Plan, id: Option<&str>) -> Result<(usize, &'a Visit), Unanswered> {
    let mut visits = plan.visits.iter().enumerate();
    match id {
        None => visits.next_back().ok_or(Unanswered::NoVisit),
        Some(id) => visits
            .find(|(_, visit)| &*visit.id == id)
            .ok_or_else(|| Unanswered::NoSuchVisit { id: id.to_owned() }),
    }
}

/// A whole HTML file.
fn sheet(plan: &Plan, visit: Option<&str>, wish: SheetWish) -> Result<String, Unanswered> {
    let visit = match visit {
        None => None,
        id => Some(visit_of(plan, id)?.0),
    };
    let job = HandoverJob::of(plan.clone(), visit);
    let sheet = handover_sheet(&job, wish);
    Ok(sheet_file(&sheet, &plan.title, wish.paper, wish.language))
}

fn reroute(plan: &Plan, options: &Options) -> RerouteAnswer {
    let mut search = Search::new(Request {
        plan: plan.clone(),
        options: options.clone(),
    });
    loop {
        let reply = search.advance(BUDGET);
        if reply.is_done {
            return RerouteAnswer {
                present: reply.present,
                has_present_room: reply.has_present_room,
                suggestions: reply.suggestions.unwrap_or_default(),
                blocked: reply.blocked,
                progress: reply.progress,
            };
        }
    }
}
