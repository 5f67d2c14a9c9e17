//! What a reading shows where certain faults are there, under every draw.

use super::cause::CauseKind;
use super::curves::Curves;
use super::evidence::{Planned, Quantity};
use super::model::Model;
use super::particle::Fault;

/// Fills `values` with the reading under each draw; gives the mean velocity pressure at its place, Pa.
#[allow(clippy::cast_precision_loss, reason = "a few hundred draws")]
pub(super) fn predict(model: &Model, at: &Planned, faults: &[Fault], values: &mut Vec<f64>) -> f64 {
    values.clear();
    let mut sum = 0.0;
    let draws = &model.air(at.setting.hot).draws;
    for (index, draw) in draws.iter().enumerate() {
        let flow = flow(model, at, faults, index, draw);
        let (value, q) = shown(model, at, draw, &flow);
        values.push(value);
        sum += q;
    }
    sum / draws.len() as f64
}

/// The airflow, m³/s, that the dryer sends out under each draw in the setting of `at`.
pub(super) fn airflows(model: &Model, at: &Planned, faults: &[Fault]) -> Vec<f64> {
    let draws = model.air(at.setting.hot).draws.iter().enumerate();
    draws
        .map(|(index, draw)| flow(model, at, faults, index, draw).at_outlet)
        .collect()
}

/// The air on its way.
struct Flow {
    at_outlet: f64,
    /// Past the leak.
    at_end: f64,
    /// Where the leak is.
    leak: usize,
    /// Resistance added beyond the place read, and that of the room, Pa per (m³/s)².
    beyond: f64,
    room: f64,
}

/// A severity at this draw: severities fill their cell, so that coarse cells leave no gaps.
fn severity(fault: &Fault, at: f64) -> f64 {
    fault.severity.0 + (fault.severity.1 - fault.severity.0) * at
}

fn flow(model: &Model, at: &Planned, faults: &[Fault], index: usize, draw: &Curves) -> Flow {
    let setting = at.setting;
    let end = setting.open.unwrap_or(model.elements.len());
    let joined = setting.open.is_none();
    let unit = model.unit(setting.hot, model.outlet_area);
    let (mut added, mut beyond, mut room) = (0.0, 0.0, 0.0);
    let (mut speed, mut leak) = (1.0, None);
    for fault in faults {
        let other = draw.within_other;
        match fault.kind {
            CauseKind::Blockage | CauseKind::CrushedFlex | CauseKind::FlapStuck => {
                let held = fault.kind == CauseKind::FlapStuck && setting.flap_held;
                if fault.place >= end || held {
                    continue;
                }
                let area = model.elements[fault.place].area;
                let resistance = fault.k[index] * model.unit(setting.hot, area);
                added += resistance;
                if fault.place >= at.place {
                    beyond += resistance;
                }
            }
            CauseKind::RoomStarved if joined && !setting.door_open => {
                let area = severity(fault, other);
                room += draw.unit_opening / (area * area);
            }
            CauseKind::LintScreen if !at.screen_clean => added += severity(fault, other) * unit,
            CauseKind::Blower => speed = severity(fault, other),
            CauseKind::Leak if fault.place < end => {
                leak = Some((fault.place, severity(fault, other) * draw.unit_leak));
            }
            _ => {}
        }
    }
    let total = (added + room) / unit;
    let at_outlet = if let Some((place, gap)) = leak {
        return leaking(model, at, draw, place, gap);
    } else if speed < 1.0 {
        let constant = model.constant(setting, draw);
        draw.airflow(constant, speed, draw.free_airflow * 1.5, |airflow| {
            model.resistance(setting, draw, airflow) + total * unit
        })
    } else {
        model.airflow(at.table, index, total)
    };
    Flow {
        at_outlet,
        at_end: at_outlet,
        leak: 0,
        beyond,
        room,
    }
}

/// The airflow of a run whose joint before `place` has a gap that passes `gap` m³/s at 1 Pa.
fn leaking(model: &Model, at: &Planned, draw: &Curves, place: usize, gap: f64) -> Flow {
    const STEPS: usize = 14;
    let setting = at.setting;
    let end = setting.open.unwrap_or(model.elements.len());
    let all = |airflow: f64| {
        let outlet = model.unit(setting.hot, model.outlet_area);
        model.resistance(setting, draw, airflow) + outlet
    };
    let constant = model.constant(setting, draw);
    let before_rise = model.air(setting.hot);
    let per_metre = if setting.open.is_some() {
        before_rise.stack_in_room
    } else {
        before_rise.stack
    };
    let upstream = per_metre * model.rise(0, place.min(end));
    let unit = model.unit(setting.hot, model.area_before(place));
    let outlet = model.unit(setting.hot, model.outlet_area);
    // Of the airflow at the end, the whole and what the blower has to spare.
    let balance = |at_end: f64| {
        let past = (all(at_end) - draw.before(place, at_end)) * at_end * at_end;
        let gauge = constant - upstream + past - unit * at_end * at_end;
        let escaped = gap * gauge.abs().sqrt().copysign(gauge);
        let whole = (at_end + escaped).max(0.0);
        let lost = constant + past + (draw.before(place, whole) - outlet) * whole * whole;
        (whole, draw.rise(whole, 1.0) - lost)
    };
    let (mut low, mut high) = (1e-5, draw.free_airflow * 1.5);
    for _ in 0..STEPS {
        let middle = f64::midpoint(low, high);
        if balance(middle).1 > 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    let at_end = f64::midpoint(low, high);
    Flow {
        at_outlet: balance(at_end).0,
        at_end,
        leak: place,
        beyond: 0.0,
        room: 0.0,
    }
}

/// What is shown, and the velocity pressure at the place, Pa.
fn shown(model: &Model, at: &Planned, draw: &Curves, flow: &Flow) -> (f64, f64) {
    let setting = at.setting;
    let all = model.elements.len();
    let end = setting.open.unwrap_or(all);
    let area = model.area_before(at.place);
    let here = if at.place >= flow.leak && flow.leak > 0 {
        flow.at_end
    } else {
        flow.at_outlet
    };
    let q = model.unit(setting.hot, area) * here * here;
    if at.quantity == Quantity::Velocity {
        return (here / area, q);
    }
    if at.place >= end {
        return (0.0, q);
    }
    let air = model.air(setting.hot);
    let square = flow.at_end * flow.at_end;
    let span =
        |from: usize, to: usize, airflow: f64| draw.between(from, to, airflow) * airflow * airflow;
    // Beyond the leak all is the end's airflow.
    let lost = if at.place < flow.leak {
        span(at.place, flow.leak.min(end), flow.at_outlet)
            + span(flow.leak.min(end), end, flow.at_end)
    } else {
        span(at.place, end, flow.at_end)
    };
    let rise = model.rise(at.place, end);
    // What the room is above the open air.
    let room = if setting.door_open || setting.open.is_some() {
        model.house
    } else {
        model.house - (draw.make_up + flow.room) * square
    };
    let against_room = if setting.open.is_some() {
        let exit = model.unit(setting.hot, model.area_before(end)) * square;
        lost + exit + air.stack_in_room * rise + flow.beyond * square - q
    } else {
        let flap = if setting.flap_held { 0.0 } else { draw.flap };
        lost + flap + air.stack * rise + flow.beyond * square - q - room
    };
    let value = match at.quantity {
        Quantity::AgainstOutdoors => against_room + room,
        _ => against_room,
    };
    (value, q)
}
