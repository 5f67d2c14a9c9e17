//! Both runs in figures: the totals, and the elements that are not the same in both.

use super::side::Side;
use super::side_words::{say, side_text};
use super::store::Store;
use crate::plan::{ElementId, NodeId, Plan, Quantity};
use crate::report::words::{SideLabel, SideMessage};
use crate::report::{
    DifferenceBands, ElementLoss, ElementPair, SideBySide, TotalPair, quantity_shown, side_by_side,
};
use crate::units::Pressure;
use leptos::prelude::*;

/// A row as text: its name, both runs and the difference.
#[derive(Clone, PartialEq)]
struct Row {
    key: String,
    name: String,
    cells: [String; 3],
}

#[component]
pub(super) fn SideTable() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    let table = Memo::new(move |_| {
        side.with_both(store, |first, second| {
            let table = side_by_side(&first.figures, &second.figures);
            (table, corners(&first.plan, &second.plan))
        })
    });
    let rows = Memo::new(move |_| {
        table.with(|table| {
            let Some((table, corners)) = table else {
                return Vec::new();
            };
            let mut rows = Vec::new();
            let bands = side.bands.now(store, side);
            let totals = table.totals.iter();
            rows.extend(totals.map(|pair| total(store, pair, bands.as_ref())));
            rows.extend(others(store, table));
            let hides = side.hides();
            if hides {
                for row in &mut rows {
                    row.cells[1] = side_text(SideLabel::Hidden);
                    row.cells[2] = side_text(SideLabel::Hidden);
                }
            }
            let elements = table.elements.iter();
            let elements = elements.map(|pair| element(store, pair, corners, hides));
            // Before the row of the others, with which they add up.
            let at = rows.len() - usize::from(table.same > 0);
            rows.splice(at..at, elements);
            rows
        })
    });
    let body = move || {
        let row = |row: Row| {
            let [first, second, more] = row.cells;
            view! {
                <tr data-side=row.key>
                    <th scope="row">{row.name}</th>
                    <td>{first}</td>
                    <td>{second}</td>
                    <td>{more}</td>
                </tr>
            }
        };
        rows.get().into_iter().map(row).collect_view()
    };
    view! {
        <table class="side-table">
            <caption>{side_text(SideLabel::Figures)}</caption>
            <thead>
                <tr>
                    <th scope="col">{side_text(SideLabel::ColumnFigure)}</th>
                    <th scope="col">{side_text(SideLabel::First)}</th>
                    <th scope="col">{side_text(SideLabel::Second)}</th>
                    <th scope="col">{side_text(SideLabel::ColumnDifference)}</th>
                </tr>
            </thead>
            <tbody>{body}</tbody>
        </table>
    }
}

/// Where each node stands along the second run, or else along the first.
fn corners(first: &Plan, second: &Plan) -> Vec<(NodeId, usize)> {
    let of = |plan: &Plan| {
        let points = plan.run.points.iter().enumerate();
        let nodes = points.map(|(index, point)| (NodeId::Point(point.id.clone()), index + 1));
        nodes.collect::<Vec<_>>()
    };
    let mut nodes = of(second);
    nodes.extend(of(first));
    nodes
}

fn place(store: Store, id: &ElementId, corners: &[(NodeId, usize)]) -> String {
    let known = corners.iter().find(|(node, _)| *node == id.node);
    let corner = known.map_or(0, |(_, corner)| *corner);
    let part = id.part;
    say(store, SideMessage::Place { part, corner })
}

/// A difference with its sign; a dash where one of the two is missing.
fn more(store: Store, quantity: Quantity, more: Option<f64>, share: Option<f64>) -> String {
    let Some(more) = more else {
        return "\u{2013}".to_owned();
    };
    let shown = quantity_shown(store.units.get(), quantity, more.abs()).to_string();
    let nought = quantity_shown(store.units.get(), quantity, 0.0).to_string();
    if shown == nought {
        return shown;
    }
    say(
        store,
        SideMessage::More {
            shown: &shown,
            is_more: more > 0.0,
            percent: share.map(|share| share.abs() * 100.0),
        },
    )
}

fn total(store: Store, pair: &TotalPair, bands: Option<&DifferenceBands>) -> Row {
    let units = store.units.get();
    let shown = |figure: Option<f64>| {
        figure.map_or_else(
            || "\u{2013}".to_owned(),
            |figure| quantity_shown(units, pair.quantity, figure).to_string(),
        )
    };
    let band = match pair.quantity {
        Quantity::Airflow => bands.map(|bands| bands.airflow),
        Quantity::BackPressure => bands.map(|bands| bands.back_pressure),
        _ => None,
    };
    let band = band.filter(|band| band.high > band.low).map(|band| {
        let band = store.say_band(band, |units, figure| {
            quantity_shown(units, pair.quantity, figure)
        });
        format!("; {}", say(store, SideMessage::MoreBand(&band)))
    });
    Row {
        key: format!("{:?}", pair.quantity),
        name: say(store, SideMessage::Quantity(pair.quantity)),
        cells: [
            shown(pair.first),
            shown(pair.second),
            more(store, pair.quantity, pair.more(), pair.more_as_share())
                + &band.unwrap_or_default(),
        ],
    }
}

fn pascals(loss: Option<Pressure>) -> Option<f64> {
    loss.map(Pressure::pascals)
}

fn loss_row(store: Store, first: Option<f64>, second: Option<f64>) -> String {
    let pair = TotalPair {
        quantity: Quantity::Loss,
        first,
        second,
    };
    more(store, Quantity::Loss, pair.more(), pair.more_as_share())
}

fn element(store: Store, pair: &ElementPair, corners: &[(NodeId, usize)], hides: bool) -> Row {
    let units = store.units.get();
    let cell = |side: Option<&ElementLoss>, hides: bool| {
        let Some(side) = side else {
            return side_text(SideLabel::NotThere);
        };
        let name = store.say_element(&side.element);
        let loss = side.loss.filter(|_| !hides);
        let loss = loss.map(|loss| format!(": {}", units.pressure(loss)));
        format!("{name}{}", loss.unwrap_or_default())
    };
    // What is not there loses nothing.
    let loss = |side: Option<&ElementLoss>| side.map_or(Some(0.0), |side| pascals(side.loss));
    let (first, second) = (pair.first.as_ref(), pair.second.as_ref());
    Row {
        key: pair.id.to_string(),
        name: place(store, &pair.id, corners),
        cells: [
            cell(first, false),
            cell(second, hides),
            if hides {
                side_text(SideLabel::Hidden)
            } else {
                loss_row(store, loss(first), loss(second))
            },
        ],
    }
}

/// The elements that are the same in both, in one row.
fn others(store: Store, table: &SideBySide) -> Option<Row> {
    let [first, second] = table.same_loss.map(pascals);
    let shown = |figure: Option<f64>| {
        figure.map_or_else(
            || "\u{2013}".to_owned(),
            |figure| quantity_shown(store.units.get(), Quantity::Loss, figure).to_string(),
        )
    };
    (table.same > 0).then(|| Row {
        key: "others".to_owned(),
        name: say(store, SideMessage::SameElements(table.same)),
        cells: [shown(first), shown(second), loss_row(store, first, second)],
    })
}
