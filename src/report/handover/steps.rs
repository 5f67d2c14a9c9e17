//! What to do, in the order in which it is worth doing: the test that tells the most, what the code
//! finds, the change of the run.

use super::{OtherRun, Page};
use crate::report::SiteSpeaker;
use crate::report::words::{HandoverLabel, HandoverMessage, Message};
use crate::rules::Verdict;

impl Page<'_> {
    pub(super) fn steps(&mut self) {
        self.heading(HandoverLabel::StepsHeading);
        let mut steps: Vec<String> = self.next_test().into_iter().collect();
        steps.extend(self.by_code());
        steps.extend(self.change());
        if steps.is_empty() {
            let nothing = self.label(HandoverLabel::NothingToDo);
            self.to.paragraph(nothing);
        } else {
            self.to.push(crate::report::SheetPart::Steps(steps));
        }
    }

    fn next_test(&self) -> Option<String> {
        let diagnosis = self.job.diagnosis()?;
        let next = diagnosis.next.as_ref().filter(|_| !diagnosis.settled)?;
        let speaker = SiteSpeaker {
            language: self.wish.language,
            units: self.wish.units,
            elements: &self.job.run.figures.elements,
        };
        Some(speaker.test(&next.test))
    }

    /// What is not kept, then what cannot be told, then how much is to be looked at.
    fn by_code(&self) -> Vec<String> {
        let findings = &self.job.run.figures.code_check.findings;
        let of = |verdict: Verdict| findings.iter().filter(move |it| it.verdict == verdict);
        let topic = |topic| self.say(Message::RuleTopic(topic));
        let mut steps = Vec::new();
        for finding in of(Verdict::DoesNotMeet) {
            let asks = self.say(Message::RuleAsks(finding));
            let measured = self.measured(finding);
            let step = self.tell(HandoverMessage::PutRight(
                &topic(finding.topic),
                finding.section,
                format!("{asks} {measured}").trim_end(),
            ));
            steps.push(step);
        }
        for finding in of(Verdict::CannotTell) {
            let settles = self.measured(finding);
            steps.push(self.tell(HandoverMessage::Settle(&topic(finding.topic), &settles)));
        }
        let seen = &self.job.run.plan.code.seen_on_site;
        let unseen = of(Verdict::CheckOnSite).filter(|it| !seen.contains(&it.topic));
        let unseen = unseen.count();
        if unseen > 0 {
            steps.push(self.tell(HandoverMessage::LookOnSite(unseen)));
        }
        steps
    }

    fn change(&self) -> Option<String> {
        let Some(OtherRun::Offered(_, changes)) = &self.job.other else {
            return None;
        };
        let changes = changes.iter().map(|it| self.say(Message::Reroute(it)));
        let changes: Vec<String> = changes.collect();
        Some(self.tell(HandoverMessage::ChangeRun(&changes.join(" "))))
    }
}
