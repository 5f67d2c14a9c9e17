//! The ledger as a table: on the sheet as it is shown, and as CSV with each unit in the column's name.

use super::csv::{CsvCell, CsvTable};
use super::handover::WorkedPlan;
use super::sheet::SheetTable;
use super::words::{HandoverLabel, HandoverMessage, Label, Language, Message, say};
use crate::units::{Length, Pressure, Shown, UnitSystem};

/// A cell: a text, or a figure with its unit.
enum Cell {
    Text(String),
    Figure(Shown),
    Missing,
}

/// The columns, each by its name and the unit of its figures.
fn columns(language: Language, units: UnitSystem) -> Vec<(String, &'static str)> {
    let label = |label: Label| say(language, units, Message::Label(label)).replace('\u{ad}', "");
    let own = |label: HandoverLabel| {
        let message = HandoverMessage::Label(label);
        say(language, units, Message::Handover(message))
    };
    let pressure = units.pressure_unit();
    let equivalent = units.equivalent_length_unit();
    let length = units.length(Length::ZERO).unit;
    vec![
        (own(HandoverLabel::ColumnNumber), ""),
        (label(Label::ColumnElement), ""),
        (label(Label::ColumnSize), ""),
        (own(HandoverLabel::ColumnLength), length),
        (label(Label::ColumnRank), ""),
        (label(Label::ColumnLoss), pressure),
        (own(HandoverLabel::ColumnLossLow), pressure),
        (own(HandoverLabel::ColumnLossHigh), pressure),
        (label(Label::ColumnShare), "%"),
        (label(Label::EquivalentLength), equivalent),
        (label(Label::ColumnCodeDeduction), equivalent),
    ]
}

fn rows(run: &WorkedPlan, language: Language, units: UnitSystem) -> Vec<Vec<Cell>> {
    let say = |message: Message<'_>| say(language, units, message);
    let plain = |figure: String| Cell::Figure(Shown { figure, unit: "" });
    let elements = run.figures.elements.iter().enumerate();
    let rows = elements.map(|(index, element)| {
        let air = element.air.as_ref();
        let detail = run.detail.as_ref();
        let band = detail.and_then(|detail| Some(detail.elements.get(index)?.loss));
        let loss = |pascals: f64| Cell::Figure(units.pressure(Pressure::from_pascals(pascals)));
        let of_air = |cell: Option<Cell>| cell.unwrap_or(Cell::Missing);
        vec![
            plain((index + 1).to_string()),
            Cell::Text(say(Message::Element(&element.element))),
            Cell::Text(say(Message::ElementSize(&element.element))),
            Cell::Figure(units.length(element.developed_length)),
            of_air(air.map(|air| plain(air.rank.to_string()))),
            of_air(air.map(|air| loss(air.loss.pascals()))),
            of_air(band.map(|band| loss(band.low))),
            of_air(band.map(|band| loss(band.high))),
            of_air(air.map(|air| plain(format!("{:.0}", air.share * 100.0)))),
            of_air(air.map(|air| Cell::Figure(units.equivalent_length(air.equivalent_length)))),
            element.code_deduction.map_or(Cell::Missing, |deduction| {
                Cell::Figure(units.equivalent_length(deduction))
            }),
        ]
    });
    rows.collect()
}

/// The ledger for a sheet, narrower than the file: an element stands with its size, its loss with its
/// band.
pub fn ledger_table(run: &WorkedPlan, language: Language, units: UnitSystem) -> SheetTable {
    let names = columns(language, units).into_iter().map(named);
    let names: Vec<String> = names.collect();
    let head = |column: usize| names[column].clone();
    let band = HandoverMessage::Label(HandoverLabel::ColumnBand);
    let band = say(language, units, Message::Handover(band));
    let rows = rows(run, language, units).into_iter().map(|row| {
        let cells = row.into_iter().map(|cell| match cell {
            Cell::Text(text) => text,
            Cell::Figure(shown) => shown.figure,
            Cell::Missing => String::new(),
        });
        let cells: Vec<String> = cells.collect();
        let [
            number,
            element,
            size,
            length,
            rank,
            loss,
            low,
            high,
            share,
            equivalent,
            code,
        ] = &cells[..]
        else {
            return cells;
        };
        let comma = if size.is_empty() { "" } else { ", " };
        let band = if low.is_empty() {
            String::new()
        } else {
            say(language, units, Message::Band { low, high })
        };
        let dash = |cell: &String| {
            if cell.is_empty() {
                "\u{2013}".to_owned()
            } else {
                cell.clone()
            }
        };
        vec![
            number.clone(),
            format!("{element}{comma}{size}"),
            dash(length),
            dash(rank),
            dash(loss),
            dash(&band),
            dash(share),
            dash(equivalent),
            dash(code),
        ]
    });
    SheetTable {
        rows: rows.collect(),
        figures: vec![0, 2, 3, 4, 5, 6, 7, 8],
        is_fine: false,
        head: vec![
            head(0),
            head(1),
            head(3),
            head(4),
            head(5),
            band,
            head(8),
            head(9),
            head(10),
        ],
    }
}

/// The ledger as the text of a CSV file.
pub fn ledger_csv(run: &WorkedPlan, language: Language, units: UnitSystem) -> String {
    let rows = rows(run, language, units).into_iter().map(|row| {
        let cells = row.into_iter().map(|cell| match cell {
            Cell::Text(text) => CsvCell::Text(text),
            Cell::Figure(shown) => CsvCell::Figure(shown.figure),
            Cell::Missing => CsvCell::Text(String::new()),
        });
        cells.collect()
    });
    CsvTable {
        rows: rows.collect(),
        head: columns(language, units).into_iter().map(named).collect(),
    }
    .text()
}

/// A column's name with the unit of its figures.
fn named((name, unit): (String, &'static str)) -> String {
    if unit.is_empty() {
        name
    } else {
        format!("{name}, {unit}")
    }
}
