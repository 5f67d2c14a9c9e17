//! What each rule says: its section, what was measured, the limit and the margin.

use super::Page;
use crate::report::words::{HandoverLabel, Message};
use crate::rules::{RuleFinding, Verdict};

impl Page<'_> {
    pub(super) fn code(&mut self) {
        self.heading(HandoverLabel::CodeHeading);
        let figures = &self.job.run.figures;
        let (on_site, told): (Vec<&RuleFinding>, Vec<&RuleFinding>) = figures
            .code_check
            .findings
            .iter()
            .partition(|finding| finding.verdict == Verdict::CheckOnSite);
        let rows = told.iter().map(|finding| {
            vec![
                finding.section.to_owned(),
                self.say(Message::RuleTopic(finding.topic)),
                self.say(Message::Verdict(finding.verdict)),
                self.measured(finding),
            ]
        });
        let rows: Vec<Vec<String>> = rows.collect();
        let head = [
            HandoverLabel::ColumnSection,
            HandoverLabel::ColumnRule,
            HandoverLabel::ColumnVerdict,
            HandoverLabel::ColumnMeasured,
        ];
        let head = head.map(|column| self.label(column)).to_vec();
        let set = self.say(Message::RuleSet(figures.code.rule_set));
        self.to.paragraph(set);
        self.to.table(head, Vec::new(), rows);
        let seen = &self.job.run.plan.code.seen_on_site;
        let rows = on_site.iter().map(|finding| {
            let seen = if seen.contains(&finding.topic) {
                HandoverLabel::Seen
            } else {
                HandoverLabel::NotSeen
            };
            vec![
                finding.section.to_owned(),
                self.say(Message::RuleAsks(finding)),
                self.label(seen),
            ]
        });
        let rows: Vec<Vec<String>> = rows.collect();
        if rows.is_empty() {
            return;
        }
        self.heading(HandoverLabel::OnSiteHeading);
        let head = [
            HandoverLabel::ColumnSection,
            HandoverLabel::ColumnRule,
            HandoverLabel::ColumnVerdict,
        ];
        let head = head.map(|column| self.label(column)).to_vec();
        self.to.fine_table(head, rows);
    }

    /// What was measured against what, and where that is open what would settle it.
    pub(super) fn measured(&self, finding: &RuleFinding) -> String {
        let measured = self.say(Message::RuleMeasured(finding));
        let settles = finding.deciding.as_ref().map(|deciding| {
            let id = deciding.element();
            let element = id.and_then(|id| self.job.run.figures.element(id));
            let element = element.map(|it| &it.element);
            self.say(Message::Deciding { deciding, element })
        });
        let parts = [Some(measured), settles];
        let parts: Vec<String> = parts
            .into_iter()
            .flatten()
            .filter(|part| !part.is_empty())
            .collect();
        parts.join(" ")
    }
}
