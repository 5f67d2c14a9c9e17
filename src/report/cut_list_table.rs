//! The cut list as tables of a sheet, and as CSV.

use super::csv::{CsvCell, CsvTable};
use super::cut_list::{CutList, PartKind, PartLine, PipeCuts};
use super::words::{HandoverLabel, HandoverMessage, Language, Message, say};
use crate::units::{Length, UnitSystem};

/// One row a kind of part: its name, its size, how many and how long.
pub(super) fn part_rows(list: &CutList, language: Language, units: UnitSystem) -> Vec<Vec<String>> {
    let tell = |message: HandoverMessage<'_>| say(language, units, Message::Handover(message));
    let rows = list.parts.iter().map(|line| {
        vec![
            tell(HandoverMessage::Part(&line.part)),
            tell(HandoverMessage::PartSize(&line.part)),
            count(line),
            length(line, units),
        ]
    });
    rows.collect()
}

fn count(line: &PartLine) -> String {
    let count = line.count.map(|count| count.to_string());
    count.unwrap_or_default()
}

/// Tape is no cut length: a decimal is enough.
pub(super) fn length(line: &PartLine, units: UnitSystem) -> String {
    let shown = line.length.map(|length| match line.part {
        PartKind::FoilTape { .. } => units.equivalent_length(length),
        _ => units.length(length),
    });
    shown.map_or_else(String::new, |shown| shown.to_string())
}

/// One row a bought length of pipe: what it is, its length, what it is cut into, what is left.
pub(super) fn cut_rows(pipe: &PipeCuts, language: Language, units: UnitSystem) -> Vec<Vec<String>> {
    let tell = |message: HandoverMessage<'_>| say(language, units, Message::Handover(message));
    let rows = pipe.packing.bars.iter().map(|bar| {
        let stock = Length::from_metres(bar.stock);
        let part = PartKind::Pipe {
            diameter: pipe.diameter,
            metal: pipe.metal,
            stock,
        };
        let cuts = bar.pieces.iter().map(|index| &pipe.pieces[*index]);
        let texts: Vec<String> = cuts
            .clone()
            .map(|piece| tell(HandoverMessage::Cut(piece)))
            .collect();
        vec![
            tell(HandoverMessage::Part(&part)),
            units.length(stock).to_string(),
            texts.join(" + "),
            units
                .length(left(stock, cuts.map(|cut| cut.length)))
                .to_string(),
        ]
    });
    rows.collect()
}

/// What is left of a bar; rounding leaves nothing less than nothing.
fn left(stock: Length, cuts: impl Iterator<Item = Length>) -> Length {
    let left = stock - cuts.sum();
    if left > Length::ZERO {
        left
    } else {
        Length::ZERO
    }
}

/// The cut list as the text of a CSV file: a line a kind of part, then a line a cut.
pub fn cut_list_csv(list: &CutList, language: Language, units: UnitSystem) -> String {
    let tell = |message: HandoverMessage<'_>| say(language, units, Message::Handover(message));
    let label = |label: HandoverLabel| tell(HandoverMessage::Label(label));
    let text = CsvCell::Text;
    let empty = || text(String::new());
    let mut rows = Vec::new();
    for line in &list.parts {
        rows.push(vec![
            text(label(HandoverLabel::CsvPart)),
            text(tell(HandoverMessage::Part(&line.part))),
            text(tell(HandoverMessage::PartSize(&line.part))),
            CsvCell::Figure(count(line)),
            text(length(line, units)),
            empty(),
            empty(),
        ]);
    }
    for pipe in &list.pipe {
        for bar in &pipe.packing.bars {
            let part = PartKind::Pipe {
                diameter: pipe.diameter,
                metal: pipe.metal,
                stock: Length::from_metres(bar.stock),
            };
            for index in &bar.pieces {
                let piece = &pipe.pieces[*index];
                rows.push(vec![
                    text(label(HandoverLabel::CsvCut)),
                    text(tell(HandoverMessage::Part(&part))),
                    text(tell(HandoverMessage::PartSize(&part))),
                    CsvCell::Figure("1".to_owned()),
                    text(units.length(piece.length).to_string()),
                    CsvCell::Figure(piece.element.to_string()),
                    text(units.length(Length::from_metres(bar.stock)).to_string()),
                ]);
            }
        }
    }
    let head = [
        HandoverLabel::CsvKind,
        HandoverLabel::ColumnPart,
        HandoverLabel::ColumnPartSize,
        HandoverLabel::ColumnCount,
        HandoverLabel::ColumnPartLength,
        HandoverLabel::CsvFromPart,
        HandoverLabel::ColumnStock,
    ];
    CsvTable {
        head: head.map(label).to_vec(),
        rows,
    }
    .text()
}
