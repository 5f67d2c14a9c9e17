//! A visit as a sheet for paper: what was made ready, read, seen and mended, what it means, before and
//! after, pictures and cautions. The handover sheet takes parts of it.

use super::sheet::{Sheet, SheetPart, SheetPicture};
use super::words::{Caution, Label, LanguageLabel, Message, SiteLabel, SiteMessage, say};
use super::{Figures, SiteSpeaker};
use crate::diagnosis::{CleanReading, Diagnosis, Suggestion, against_limit, before_and_after};
use crate::plan::{Energy, Entry, Measured, Plan, Preparation, Reading, Visit};
use crate::report::words::Language;
use crate::units::{Airflow, UnitSystem};

/// How many faults are listed, and the odds below which none is.
const LISTED: usize = 6;
/// Of the computation.
const LEAST_LISTED: f64 = 0.01;

/// What a sheet is made of.
#[derive(Debug, Clone, Copy)]
pub struct VisitSheet<'a> {
    /// The plan.
    pub plan: &'a Plan,
    /// Its figures.
    pub figures: &'a Figures,
    /// The visit's index in the plan.
    pub visit: usize,
    /// What the readings mean; none where that is not known.
    pub diagnosis: Option<&'a Diagnosis>,
    /// What a clean run would read, one an entry.
    pub clean: &'a [Option<CleanReading>],
    /// The language.
    pub language: Language,
    /// The units.
    pub units: UnitSystem,
}

/// The sheet; empty where there is no such visit.
pub fn visit_sheet(sheet: &VisitSheet<'_>) -> Sheet {
    let Some(mut page) = Page::of(sheet) else {
        return Sheet::default();
    };
    page.head();
    page.ready();
    page.entries();
    if let Some(diagnosis) = sheet.diagnosis {
        page.odds(diagnosis);
        page.next(diagnosis);
        page.after(diagnosis);
    }
    page.pictures();
    page.cautions();
    page.to
}

/// Before and after, added to another sheet.
pub(super) fn add_before_and_after(sheet: &VisitSheet<'_>, to: &mut Sheet) {
    if let (Some(mut page), Some(diagnosis)) = (Page::of(sheet), sheet.diagnosis) {
        page.after(diagnosis);
        to.parts.append(&mut page.to.parts);
    }
}

/// What was read and done in the visit, what it means, before and after, and its pictures, added to
/// another sheet.
pub(super) fn add_visit(sheet: &VisitSheet<'_>, to: &mut Sheet) {
    if let Some(mut page) = Page::of(sheet) {
        page.entries();
        if let Some(diagnosis) = sheet.diagnosis {
            page.odds(diagnosis);
            page.after(diagnosis);
        }
        page.pictures();
        to.parts.append(&mut page.to.parts);
    }
}

struct Page<'a> {
    sheet: &'a VisitSheet<'a>,
    visit: &'a Visit,
    speaker: SiteSpeaker<'a>,
    to: Sheet,
}

impl<'a> Page<'a> {
    fn of(sheet: &'a VisitSheet<'a>) -> Option<Self> {
        Some(Page {
            sheet,
            visit: sheet.plan.visits.get(sheet.visit)?,
            speaker: SiteSpeaker {
                language: sheet.language,
                units: sheet.units,
                elements: &sheet.figures.elements,
            },
            to: Sheet::default(),
        })
    }

    fn heading(&mut self, label: SiteLabel) {
        let text = self.speaker.label(label);
        self.to.heading(text);
    }

    fn table(&mut self, columns: &[SiteLabel], rows: Vec<Vec<String>>) {
        let head = columns.iter().map(|column| self.speaker.label(*column));
        self.to.table(head.collect(), Vec::new(), rows);
    }

    fn head(&mut self) {
        let title = self.speaker.label(SiteLabel::Heading);
        self.to.push(SheetPart::Title(title));
        self.to.paragraph(self.sheet.plan.title.clone());
        let heading = self.speaker.say(SiteMessage::Visit {
            number: self.sheet.visit + 1,
            date: &self.visit.date,
            entries: self.visit.entries.len(),
        });
        self.to.paragraph(heading);
        self.to.paragraph(self.visit.note.clone());
    }

    fn ready(&mut self) {
        self.heading(SiteLabel::PreparationHeading);
        let speaker = self.speaker;
        let ticked = &self.visit.preparation;
        let lines = Preparation::ALL.map(|line| {
            let done = if ticked.contains(&line) {
                SiteLabel::Done
            } else {
                SiteLabel::NotDone
            };
            let line = speaker.say(SiteMessage::Preparation(line));
            format!("{line}: {}", speaker.label(done))
        });
        let heats = self.visit.always_heats;
        let heats = heats.then(|| speaker.label(SiteLabel::AlwaysHeats));
        self.to.list(lines.into_iter().chain(heats));
    }

    fn read(&self, index: usize, reading: &Reading) -> String {
        let plain = match &reading.measured {
            Measured::StaticPressure { pressure, .. } => Some(pressure.pascals()),
            Measured::Temperature { temperature, .. } => Some(temperature.celsius()),
            _ => None,
        };
        let value = plain.or_else(|| self.clean_of(index).map(|clean| clean.read));
        value.map_or_else(String::new, |value| {
            self.speaker.shown(&reading.measured, value).to_string()
        })
    }

    fn clean_of(&self, index: usize) -> Option<CleanReading> {
        self.sheet.clean.get(index).copied().flatten()
    }

    fn clean(&self, index: usize, reading: &Reading) -> String {
        let Some(clean) = self.clean_of(index) else {
            return String::new();
        };
        let shown = |value: f64| self.speaker.shown(&reading.measured, value);
        let (low, high) = (
            shown(clean.band.low).figure,
            shown(clean.band.high).to_string(),
        );
        let band = Message::Band {
            low: &low,
            high: &high,
        };
        let band = say(self.sheet.language, self.sheet.units, band);
        format!("{} ({band})", shown(clean.likely))
    }

    /// A verdict, only where a limit was typed.
    fn limit(&self, reading: &Reading) -> String {
        let Some(found) = against_limit(self.sheet.plan, reading) else {
            return String::new();
        };
        let units = self.sheet.units;
        let verdict = say(self.sheet.language, units, Message::Verdict(found.verdict));
        let (limit, margin) = (
            units.pressure(found.limit).to_string(),
            units.pressure(found.margin).to_string(),
        );
        let limit = self.speaker.say(SiteMessage::Limit(&limit, &margin));
        format!("{verdict}, {limit}")
    }

    fn entries(&mut self) {
        self.heading(SiteLabel::EntriesHeading);
        if self.visit.entries.is_empty() {
            let nothing = self.speaker.label(SiteLabel::NothingYet);
            self.to.paragraph(nothing);
            return;
        }
        let entries = self.visit.entries.iter().enumerate();
        let rows: Vec<Vec<String>> = entries
            .map(|(index, entry)| {
                let mut row = vec![(index + 1).to_string(), self.speaker.entry(entry)];
                match entry {
                    Entry::Reading(reading) => row.extend([
                        self.read(index, reading),
                        self.clean(index, reading),
                        self.limit(reading),
                    ]),
                    _ => row.extend([String::new(), String::new(), String::new()]),
                }
                row
            })
            .collect();
        let columns = [
            SiteLabel::PrintNumber,
            SiteLabel::PrintEntry,
            SiteLabel::ColumnRead,
            SiteLabel::ColumnClean,
            SiteLabel::ColumnAgainst,
        ];
        self.table(&columns, rows);
    }

    fn airflow(&self, (mean, low, high): (f64, f64, f64)) -> String {
        self.speaker.say(SiteMessage::AirflowNow(mean, low, high))
    }

    /// Odds and airflow.
    fn odds(&mut self, diagnosis: &Diagnosis) {
        self.heading(SiteLabel::OddsHeading);
        let speaker = self.speaker;
        for caveat in &diagnosis.caveats {
            self.to.paragraph(speaker.say(SiteMessage::Caveat(*caveat)));
        }
        let odds = |odds: f64| speaker.say(SiteMessage::Odds(odds));
        let lines = [
            (SiteLabel::NothingWrong, odds(diagnosis.nothing)),
            (SiteLabel::NothingThatMatters, odds(diagnosis.harmless)),
            (SiteLabel::AirflowNow, self.airflow(diagnosis.airflow_now)),
        ];
        self.to
            .list(lines.map(|(label, figure)| format!("{}: {figure}", speaker.label(label))));
        let listed = diagnosis.causes.iter();
        let listed = listed.filter(|cause| cause.probability >= LEAST_LISTED);
        let rows = listed.take(LISTED).enumerate().map(|(index, cause)| {
            let free = cause
                .free_area
                .map(|(likely, low, high)| speaker.say(SiteMessage::FreeArea(likely, low, high)));
            vec![
                (index + 1).to_string(),
                speaker.cause(&cause.cause),
                odds(cause.probability),
                free.unwrap_or_default(),
                speaker.say(SiteMessage::AirflowLeft(cause.airflow_left)),
            ]
        });
        let columns = [
            SiteLabel::PrintRank,
            SiteLabel::PrintFault,
            SiteLabel::PrintOdds,
            SiteLabel::PrintFreeArea,
            SiteLabel::PrintAirflow,
        ];
        self.table(&columns, rows.collect());
    }

    /// What to do next.
    fn next(&mut self, diagnosis: &Diagnosis) {
        let speaker = self.speaker;
        self.heading(SiteLabel::NextHeading);
        if diagnosis.settled {
            self.to.paragraph(speaker.label(SiteLabel::PrintSettled));
        }
        if let Some(Suggestion { test, cautions, .. }) = &diagnosis.next {
            self.to.paragraph(speaker.test(test));
            let cautions = cautions.iter();
            self.to
                .list(cautions.map(|caution| speaker.say(SiteMessage::Caution(*caution))));
        }
    }

    fn after(&mut self, diagnosis: &Diagnosis) {
        let Some(before) = diagnosis.airflow_before else {
            return;
        };
        self.heading(SiteLabel::AfterHeading);
        let speaker = self.speaker;
        let gained = diagnosis.airflow_now.0 - before.0;
        let gained = Airflow::from_cubic_metres_per_second(gained * diagnosis.clean_airflow);
        let shown = self.sheet.units.airflow(gained).to_string();
        let restored = (gained > Airflow::ZERO).then(|| speaker.say(SiteMessage::Restored(&shown)));
        let lines = [
            (SiteLabel::AirflowBefore, self.airflow(before)),
            (SiteLabel::AirflowNow, self.airflow(diagnosis.airflow_now)),
        ];
        let lines = lines.map(|(label, figure)| format!("{}: {figure}", speaker.label(label)));
        self.to.list(lines.into_iter().chain(restored));
        let reading = |index: usize| match &self.visit.entries[index] {
            Entry::Reading(reading) => Some(reading),
            _ => None,
        };
        let rows: Vec<Vec<String>> = before_and_after(self.visit)
            .into_iter()
            .filter_map(|pair| {
                let (before, after) = (reading(pair.before)?, reading(pair.after)?);
                Some(vec![
                    speaker.entry(&self.visit.entries[pair.after]),
                    self.read(pair.before, before),
                    self.read(pair.after, after),
                    self.clean(pair.after, after),
                ])
            })
            .collect();
        if !rows.is_empty() {
            let columns = [
                SiteLabel::PrintEntry,
                SiteLabel::ColumnBefore,
                SiteLabel::ColumnAfter,
                SiteLabel::ColumnClean,
            ];
            self.table(&columns, rows);
        }
    }

    fn pictures(&mut self) {
        if self.visit.pictures.is_empty() {
            return;
        }
        self.heading(SiteLabel::PicturesHeading);
        let pictures = self.visit.pictures.iter().enumerate();
        let pictures = pictures.map(|(index, picture)| SheetPicture {
            name: self
                .speaker
                .say(SiteMessage::Picture(picture.taken, index + 1)),
            kind: picture.coding.media_type(),
            data_base64: picture.data_base64.to_string(),
        });
        let pictures = SheetPart::Pictures(pictures.collect());
        self.to.push(pictures);
    }

    fn cautions(&mut self) {
        let say = |message: Message<'_>| say(self.sheet.language, self.sheet.units, message);
        let heading = say(Message::Label(Label::Cautions));
        let gas = self.sheet.plan.dryer.energy == Energy::Gas;
        let cautions: Vec<String> = Caution::standing(gas)
            .map(|caution| say(Message::Caution(caution)))
            .collect();
        self.to.heading(heading);
        self.to.list(cautions);
        let foot = self.speaker.label(SiteLabel::PrintFoot);
        self.to.paragraph(foot);
        if self.sheet.language.awaits_review() {
            self.to
                .paragraph(say(Message::Language(LanguageLabel::AwaitsReview)));
        }
    }
}
