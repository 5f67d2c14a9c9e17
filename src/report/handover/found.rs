//! What was found, in plain words.

use super::Page;
use crate::report::SiteSpeaker;
use crate::report::words::{HandoverLabel, HandoverMessage, Message, SiteMessage};
use crate::rules::Verdict;

/// A fault with lesser odds is not named in the summary. Of the computation.
const LEAST_NAMED: f64 = 0.3;
/// Odds of nothing wrong from which it is said. Of the computation.
const SURE_OF_NOTHING: f64 = 0.5;

impl Page<'_> {
    pub(super) fn found(&mut self) {
        self.heading(HandoverLabel::FoundHeading);
        let run = &self.job.run;
        let mut lines = Vec::new();
        if let Some(totals) = &run.figures.totals {
            let (airflow, back_pressure) = (
                self.wish.units.airflow(totals.airflow).to_string(),
                self.wish.units.pressure(totals.back_pressure).to_string(),
            );
            lines.push(self.tell(HandoverMessage::CleanRun {
                airflow: &airflow,
                back_pressure: &back_pressure,
            }));
        }
        lines.extend(self.readings());
        lines.extend(self.dominant());
        lines.push(self.code_count());
        let findings = run.figures.findings.iter();
        lines.extend(findings.map(|finding| self.say(Message::Finding(finding))));
        self.to.list(lines);
    }

    /// What the readings of the visit say.
    fn readings(&self) -> Vec<String> {
        let Some(diagnosis) = self.job.diagnosis() else {
            return Vec::new();
        };
        let speaker = SiteSpeaker {
            language: self.wish.language,
            units: self.wish.units,
            elements: &self.job.run.figures.elements,
        };
        let odds = |odds: f64| speaker.say(SiteMessage::Odds(odds));
        let caveats = diagnosis.caveats.iter();
        let mut lines: Vec<String> = caveats
            .map(|it| speaker.say(SiteMessage::Caveat(*it)))
            .collect();
        let (mean, low, high) = diagnosis.airflow_now;
        let now = speaker.say(SiteMessage::AirflowNow(mean, low, high));
        lines.push(self.tell(HandoverMessage::MovesNow(&now)));
        if diagnosis.nothing >= SURE_OF_NOTHING {
            lines.push(self.tell(HandoverMessage::NothingWrong(&odds(diagnosis.nothing))));
        }
        let likely = diagnosis.causes.first();
        if let Some(cause) = likely.filter(|cause| cause.probability >= LEAST_NAMED) {
            let name = speaker.cause(&cause.cause);
            lines.push(self.tell(HandoverMessage::Likely(&name, &odds(cause.probability))));
        }
        lines
    }

    /// The costliest element, in a sentence.
    fn dominant(&self) -> Option<String> {
        Some(self.say(Message::dominant(&self.job.run.figures, 1)?))
    }

    fn code_count(&self) -> String {
        let check = &self.job.run.figures.code_check;
        let count = |verdict: Verdict| {
            let findings = check.findings.iter();
            findings.filter(|it| it.verdict == verdict).count()
        };
        let counts = self.say(Message::FindingsCount {
            meet: count(Verdict::Meets),
            not: count(Verdict::DoesNotMeet),
            open: count(Verdict::CannotTell),
        });
        let set = self.say(Message::RuleSet(self.job.run.figures.code.rule_set));
        self.tell(HandoverMessage::CodeFound(&counts, &set))
    }
}
