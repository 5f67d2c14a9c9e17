//! The handover sheet: one content, read by the customer in plain words or by the trade in full.

mod code;
mod figures;
mod found;
mod grounds;
mod job;
mod parts;
mod steps;

pub use job::{HandoverJob, OtherRun, VisitFound, WorkedPlan};

use super::drawing::{DrawingWish, drawing_at, drawing_width, fitting_scale};
use super::sheet::{Sheet, SheetDrawing, SheetPart};
use super::sheet_html::Paper;
use super::visit_sheet::{VisitSheet, add_before_and_after, add_visit};
use super::words::{Caution, HandoverLabel, HandoverMessage, Label, Language, Message, say};
use crate::diagnosis::Suggestion;
use crate::plan::Energy;
use crate::report::words::SiteMessage;
use crate::units::UnitSystem;
use serde::{Deserialize, Serialize};

/// Whom a sheet is made for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SheetReading {
    /// Plain words, one page where little is to be said.
    #[default]
    Customer,
    /// Every figure.
    Trade,
}

/// How a sheet is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SheetWish {
    /// Whom it is for.
    pub reading: SheetReading,
    /// The paper.
    pub paper: Paper,
    /// The language.
    pub language: Language,
    /// The units.
    pub units: UnitSystem,
}

/// How high the drawing may be, mm: on a customer's sheet there is room for a short text below it.
const DRAWING_HEIGHT: f64 = 84.0;
const FULL_DRAWING_HEIGHT: f64 = 125.0;
/// A drawing as wide as this, mm, leaves room for text beside it.
const NARROW: f64 = 98.0;
/// White at each side of the paper, mm; the style has the same.
const PAPER_MARGIN: f64 = 15.0;

/// The sheet of `job`.
pub fn handover_sheet(job: &HandoverJob, wish: SheetWish) -> Sheet {
    let mut page = Page {
        job,
        wish,
        to: Sheet::default(),
    };
    page.head();
    page.drawing();
    page.found();
    page.figures();
    page.steps();
    page.visit();
    if page.is_full() {
        page.code();
        page.ledger();
    }
    page.parts();
    page.cautions();
    page.grounds();
    page.signature();
    page.to
}

/// A sheet on its way.
struct Page<'a> {
    job: &'a HandoverJob,
    wish: SheetWish,
    to: Sheet,
}

impl Page<'_> {
    /// Whether everything is told.
    fn is_full(&self) -> bool {
        self.wish.reading == SheetReading::Trade
    }

    fn say(&self, message: Message<'_>) -> String {
        say(self.wish.language, self.wish.units, message)
    }

    fn label(&self, label: HandoverLabel) -> String {
        self.tell(HandoverMessage::Label(label))
    }

    fn tell(&self, message: HandoverMessage<'_>) -> String {
        self.say(Message::Handover(message))
    }

    fn heading(&mut self, label: HandoverLabel) {
        let text = self.label(label);
        self.to.heading(text);
    }

    fn head(&mut self) {
        let title = self.label(HandoverLabel::SheetTitle);
        self.to.push(SheetPart::Title(title));
        let plan = &self.job.run.plan;
        self.to.paragraph(plan.title.clone());
        self.to.paragraph(plan.note.clone());
        let typed = [
            (HandoverLabel::Date, &plan.handover.date),
            (HandoverLabel::MadeFor, &plan.handover.made_for),
            (HandoverLabel::MadeBy, &plan.handover.made_by),
        ];
        let lines = typed.map(|(label, text)| (self.label(label), text.clone()));
        self.to.push(SheetPart::Blank(lines.to_vec()));
    }

    fn drawing(&mut self) {
        self.heading(HandoverLabel::DrawingHeading);
        let SheetWish {
            paper,
            language,
            units,
            ..
        } = self.wish;
        let run = &self.job.run;
        let (width, _) = paper.size();
        let height = if self.is_full() {
            FULL_DRAWING_HEIGHT
        } else {
            DRAWING_HEIGHT
        };
        let room = (width - 2.0 * PAPER_MARGIN, height);
        let scale = fitting_scale(&run.plan, run.ledger(), language, units, room);
        let drawing = DrawingWish {
            language,
            units,
            scale,
            tells_scale: true,
        };
        let name = self.label(HandoverLabel::DrawingName);
        let svg = drawing_at(&run.plan, run.ledger(), drawing);
        let is_narrow = drawing_width(&run.plan, run.ledger(), drawing) <= NARROW;
        self.to.push(SheetPart::Drawing(SheetDrawing {
            svg,
            name,
            is_narrow,
        }));
    }

    /// What was read and done on site; for the customer only what changed by it.
    fn visit(&mut self) {
        let Some(found) = &self.job.visit else {
            return;
        };
        let sheet = VisitSheet {
            plan: &self.job.run.plan,
            figures: &self.job.run.figures,
            visit: found.visit,
            diagnosis: found.diagnosis.as_ref(),
            clean: &found.clean,
            language: self.wish.language,
            units: self.wish.units,
        };
        if self.is_full() {
            add_visit(&sheet, &mut self.to);
        } else {
            add_before_and_after(&sheet, &mut self.to);
        }
    }

    /// Those that always stand, and those of the next test.
    fn cautions(&mut self) {
        let gas = self.job.run.plan.dryer.energy == Energy::Gas;
        let standing = Caution::standing(gas).map(|it| self.say(Message::Caution(it)));
        let next = self.job.diagnosis().and_then(|it| it.next.as_ref());
        let of_test = next.into_iter().flat_map(|Suggestion { cautions, .. }| {
            let cautions = cautions.iter();
            cautions.map(|it| self.say(Message::Site(SiteMessage::Caution(*it))))
        });
        let cautions: Vec<String> = standing.chain(of_test).collect();
        let heading = self.say(Message::Label(Label::Cautions));
        self.to.heading(heading);
        self.to.list(cautions);
    }

    fn signature(&mut self) {
        let remarks = self.job.run.plan.handover.remarks.clone();
        if !remarks.is_empty() {
            self.heading(HandoverLabel::Remarks);
            self.to.paragraph(remarks);
        }
        self.heading(HandoverLabel::SignHeading);
        let lines = [HandoverLabel::Date, HandoverLabel::Signature]
            .map(|label| (self.label(label), String::new()));
        self.to.push(SheetPart::Blank(lines.to_vec()));
    }
}
