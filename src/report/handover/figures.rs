//! The figures, before and after where there is another run, each with its band; and the ledger.

use super::{OtherRun, Page, WorkedPlan};
use crate::report::ledger_table;
use crate::report::words::{HandoverLabel, Label, Message};
use crate::system::Bands;
use crate::units::{Airflow, Pressure, Shown, UnitSystem, Velocity};

/// A total as it is shown, and its band.
struct Shows {
    label: Label,
    figure: fn(UnitSystem, &WorkedPlan) -> Option<Shown>,
    band: fn(UnitSystem, &Bands) -> Option<(Shown, Shown)>,
}

/// The totals that are told.
const TOLD: [Shows; 4] = [
    Shows {
        label: Label::Airflow,
        figure: |units, run| Some(units.airflow(run.figures.totals.as_ref()?.airflow)),
        band: |units, bands| {
            let show = |value| units.airflow(Airflow::from_cubic_metres_per_second(value));
            Some((show(bands.airflow.low), show(bands.airflow.high)))
        },
    },
    Shows {
        label: Label::BackPressure,
        figure: |units, run| Some(units.pressure(run.figures.totals.as_ref()?.back_pressure)),
        band: |units, bands| {
            let show = |value| units.pressure(Pressure::from_pascals(value));
            Some((
                show(bands.back_pressure.low),
                show(bands.back_pressure.high),
            ))
        },
    },
    Shows {
        label: Label::Velocity,
        figure: |units, run| Some(units.velocity(run.figures.totals.as_ref()?.velocity)),
        band: |units, bands| {
            let show = |value| units.velocity(Velocity::from_metres_per_second(value));
            Some((show(bands.velocity.low), show(bands.velocity.high)))
        },
    },
    Shows {
        label: Label::CodeLength,
        figure: |units, run| Some(units.length(run.figures.code.with_deductions)),
        band: |_, _| None,
    },
];

impl Page<'_> {
    pub(super) fn figures(&mut self) {
        self.heading(HandoverLabel::FiguresHeading);
        let job = self.job;
        let (columns, runs, note): (Vec<HandoverLabel>, Vec<&WorkedPlan>, _) = match &job.other {
            None => (
                vec![HandoverLabel::ColumnClean],
                vec![&job.run],
                HandoverLabel::PredictedNote,
            ),
            Some(OtherRun::Before(before)) => (
                vec![HandoverLabel::ColumnBefore, HandoverLabel::ColumnAfter],
                vec![&**before, &job.run],
                HandoverLabel::TakenNote,
            ),
            Some(OtherRun::Offered(after, _)) => (
                vec![HandoverLabel::ColumnBefore, HandoverLabel::ColumnOffered],
                vec![&job.run, &**after],
                HandoverLabel::OfferedNote,
            ),
        };
        let mut head = vec![self.label(HandoverLabel::ColumnFigure)];
        for column in columns {
            head.push(self.label(column));
            head.push(self.label(HandoverLabel::ColumnBand));
        }
        let rows = TOLD.iter().map(|told| {
            let name = self.say(Message::Label(told.label));
            let cells = runs.iter().flat_map(|run| self.cells(told, run));
            core::iter::once(name).chain(cells).collect()
        });
        let rows: Vec<Vec<String>> = rows.collect();
        let figures = (1..head.len()).collect();
        self.to.table(head, figures, rows);
        let note = self.label(note);
        self.to.push(crate::report::SheetPart::Fine(note));
    }

    /// A total of a run, and its band.
    fn cells(&self, told: &Shows, run: &WorkedPlan) -> [String; 2] {
        let units = self.wish.units;
        let figure = (told.figure)(units, run).map_or_else(
            || self.say(Message::Label(Label::NoAirflowFigure)),
            |shown| shown.to_string(),
        );
        let band = run
            .bands
            .as_ref()
            .and_then(|bands| (told.band)(units, bands));
        let band = band.map(|(low, high)| {
            self.say(Message::Band {
                low: &low.figure,
                high: &high.to_string(),
            })
        });
        [figure, band.unwrap_or_default()]
    }

    /// One row an element.
    pub(super) fn ledger(&mut self) {
        self.heading(HandoverLabel::LedgerHeading);
        let table = ledger_table(&self.job.run, self.wish.language, self.wish.units);
        self.to.table(table.head, table.figures, table.rows);
    }
}
