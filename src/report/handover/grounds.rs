//! What the sheet rests on: assumptions and sources, in small type.

use super::Page;
use crate::report::SheetPart;
use crate::report::words::{HandoverLabel, LanguageLabel, Message};
use crate::source::Source;

impl Page<'_> {
    pub(super) fn grounds(&mut self) {
        self.heading(HandoverLabel::SourcesHeading);
        let figures = &self.job.run.figures;
        let meaning = self.label(HandoverLabel::BandMeaning);
        let unpublished = self.say(Message::Unpublished(&figures.unpublished));
        let mut lines = vec![meaning];
        lines.extend(Some(unpublished).filter(|text| !text.is_empty()));
        if self.is_full() {
            let sources = self.sources();
            lines.extend(sources.iter().map(|it| self.say(Message::Source(it))));
        } else {
            lines.push(self.say(Message::Source(figures.code.source)));
        }
        if self.wish.language.awaits_review() {
            lines.push(self.say(Message::Language(LanguageLabel::AwaitsReview)));
        }
        self.to.push(SheetPart::FineList(lines));
    }

    /// Every source that a figure of this plan rests on, each once, in run order, then the rules'.
    fn sources(&self) -> Vec<&'static Source> {
        let figures = &self.job.run.figures;
        let air = figures.elements.iter().filter_map(|it| it.air.as_ref());
        let of_air = air.map(|air| air.coefficient.source);
        let of_rules = figures.code_check.findings.iter().map(|it| it.source);
        let mut found: Vec<&'static Source> = Vec::new();
        let own = [figures.code.source];
        for source in of_air.chain(own).chain(of_rules) {
            if !found.contains(&source) {
                found.push(source);
            }
        }
        found
    }
}
