//! What is bought and how pipe is cut.

use super::Page;
use crate::duct::tables::trade_parts::CRIMPED_END;
use crate::report::SheetPart;
use crate::report::cut_list::{CutList, cut_list};
use crate::report::cut_list_table::{cut_rows, length, part_rows};
use crate::report::words::{HandoverLabel, HandoverMessage};
use crate::units::Length;

impl Page<'_> {
    pub(super) fn parts(&mut self) {
        let run = &self.job.run;
        let list = cut_list(&run.plan, &run.figures);
        let (language, units) = (self.wish.language, self.wish.units);
        self.heading(HandoverLabel::PartsHeading);
        if !self.is_full() {
            self.parts_in_a_line(&list);
            return;
        }
        let head = [
            HandoverLabel::ColumnPart,
            HandoverLabel::ColumnPartSize,
            HandoverLabel::ColumnCount,
            HandoverLabel::ColumnPartLength,
        ];
        let head = head.map(|column| self.label(column)).to_vec();
        self.to
            .table(head, vec![2, 3], part_rows(&list, language, units));
        if list.is_too_long {
            let text = self.label(HandoverLabel::TooLong);
            self.to.paragraph(text);
        }
        if list.pipe.is_empty() {
            return;
        }
        self.heading(HandoverLabel::CutsHeading);
        for pipe in &list.pipe {
            let head = [
                HandoverLabel::ColumnPart,
                HandoverLabel::ColumnStock,
                HandoverLabel::ColumnCuts,
                HandoverLabel::ColumnLeft,
            ];
            let head = head.map(|column| self.label(column)).to_vec();
            self.to
                .table(head, vec![1, 3], cut_rows(pipe, language, units));
            let used: Length = pipe.pieces.iter().map(|piece| piece.length).sum();
            let bought = pipe.packing.bought();
            let over = bought - pipe.packing.least;
            let waste = self.tell(HandoverMessage::Waste {
                bought: Length::from_metres(bought),
                used,
                over_least: (!pipe.packing.is_best).then(|| Length::from_metres(over)),
            });
            self.to.push(SheetPart::Fine(waste));
        }
        let crimped_end = CRIMPED_END;
        let allowance = self.tell(HandoverMessage::Allowance { crimped_end });
        self.to.push(SheetPart::Fine(allowance));
        let mut pieces = list.pipe.iter().flat_map(|pipe| &pipe.pieces);
        if pieces.any(|piece| piece.is_estimated) {
            let text = self.label(HandoverLabel::PipeNotKnown);
            self.to.push(SheetPart::Fine(text));
        }
    }

    /// The parts without their cuts, for who does not cut them.
    fn parts_in_a_line(&mut self, list: &CutList) {
        let lines = list.parts.iter().map(|line| {
            let (name, size) = (
                self.tell(HandoverMessage::Part(&line.part)),
                self.tell(HandoverMessage::PartSize(&line.part)),
            );
            let comma = if size.is_empty() { "" } else { ", " };
            let much = length(line, self.wish.units);
            let much = line.count.map_or(much, |count| format!("{count} \u{d7}"));
            format!("{much} {name}{comma}{size}").trim().to_owned()
        });
        let lines: Vec<String> = lines.collect();
        self.to.paragraph(lines.join("; "));
        if list.is_too_long {
            let text = self.label(HandoverLabel::TooLong);
            self.to.paragraph(text);
        }
    }
}
