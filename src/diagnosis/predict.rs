//! What a reading shows where certain faults are there, under every draw.

use super::cause::CauseKind;
use super::curves::Curves;
use super::evidence::{Planned, Quantity};
use super::model::Model;
use super::particle::Fault;
use crate::numeric::{RootError, falling_root};

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

/// The air on its way. All airflows are at the outlet's density.
struct Flow {
    at_outlet: f64,
    /// Past the leak.
    at_end: f64,
    /// Where the leak is; nought for none.
    leak: usize,
    added: Added,
}

/// Resistances that faults add, Pa per (m³/s)².
#[derive(Clone, Copy)]
struct Added {
    /// Before the leak, where the outlet's airflow passes, and past it.
    before: f64,
    past: f64,
    /// The same of those beyond the place read.
    beyond_before: f64,
    beyond_past: f64,
    /// Of the room.
    room: f64,
    /// The share of its speed at which the blower turns.
    speed: f64,
}

/// A severity at this draw: severities fill their cell, so that coarse cells leave no gaps.
fn severity(fault: &Fault, at: f64) -> f64 {
    fault.severity.0 + (fault.severity.1 - fault.severity.0) * at
}

fn flow(model: &Model, at: &Planned, faults: &[Fault], index: usize, draw: &Curves) -> Flow {
    let setting = at.setting;
    let end = setting.open.unwrap_or(model.elements.len());
    let leak = faults
        .iter()
        .find(|fault| fault.kind == CauseKind::Leak && fault.place < end);
    let leak_place = leak.map_or(0, |leak| leak.place);
    let added = added(model, at, faults, index, draw, leak_place);
    let unit = model.unit(setting.hot);
    let total = added.before + added.past + added.room;
    let at_outlet = if let Some(leak) = leak {
        let volume = model.air(setting.hot).at_joint(leak_place);
        // The outlet's cubic metres through the gap: denser air leaves more slowly, but weighs more.
        let gap = severity(leak, draw.within_other) * draw.unit_leak / volume.sqrt();
        let (at_outlet, at_end) = leaking(model, at, (index, draw), leak_place, gap, &added);
        return Flow {
            at_outlet,
            at_end,
            leak: leak_place,
            added,
        };
    } else if added.speed < 1.0 {
        let constant = model.constant(setting, draw);
        // By the fan laws this is the airflow already, but for flap, draught and Reynolds number.
        let start = model.airflow(at.table, index, total / unit) * added.speed;
        draw.airflow(constant, added.speed, start, |airflow| {
            model.resistance(setting, draw, airflow) + total
        })
    } else {
        model.airflow(at.table, index, total / unit)
    };
    Flow {
        at_outlet,
        at_end: at_outlet,
        leak: 0,
        added,
    }
}

/// What faults add, with a leak at the joint before `leak`.
fn added(
    model: &Model,
    at: &Planned,
    faults: &[Fault],
    index: usize,
    draw: &Curves,
    leak: usize,
) -> Added {
    let setting = at.setting;
    let end = setting.open.unwrap_or(model.elements.len());
    let joined = setting.open.is_none();
    let mut added = Added {
        before: 0.0,
        past: 0.0,
        beyond_before: 0.0,
        beyond_past: 0.0,
        room: 0.0,
        speed: 1.0,
    };
    for fault in faults {
        let other = draw.within_other;
        match fault.kind {
            CauseKind::Blockage | CauseKind::CrushedFlex | CauseKind::FlapStuck => {
                let held = fault.kind == CauseKind::FlapStuck && setting.flap_held;
                if fault.place >= end || held {
                    continue;
                }
                let resistance = fault.k[index] * model.unit_within(setting.hot, fault.place);
                let beyond = if fault.place >= at.place {
                    resistance
                } else {
                    0.0
                };
                if fault.place < leak {
                    added.before += resistance;
                    added.beyond_before += beyond;
                } else {
                    added.past += resistance;
                    added.beyond_past += beyond;
                }
            }
            CauseKind::RoomStarved if joined && !setting.door_open => {
                let area = severity(fault, other);
                added.room += draw.unit_opening / (area * area);
            }
            CauseKind::LintScreen if !at.screen_clean => {
                let resistance = severity(fault, other) * model.unit(setting.hot);
                // The screen lies before the outlet: every reading is beyond it.
                if leak > 0 {
                    added.before += resistance;
                } else {
                    added.past += resistance;
                }
            }
            CauseKind::Blower => added.speed = severity(fault, other),
            _ => {}
        }
    }
    added
}

/// The airflows at the outlet and past the leak of a run whose joint before `place` has a gap that
/// passes `gap` m³/s at 1 Pa.
fn leaking(
    model: &Model,
    at: &Planned,
    (index, draw): (usize, &Curves),
    place: usize,
    gap: f64,
    added: &Added,
) -> (f64, f64) {
    /// m³/s. Of the computation.
    const TOLERANCE: f64 = 2e-6;
    /// m³/s. Of the computation.
    const LEAST_AIRFLOW: f64 = 1e-5;
    /// Of the free airflow: a draught may help. Of the computation.
    const MOST_SHARE: f64 = 1.5;
    let setting = at.setting;
    let end = setting.open.unwrap_or(model.elements.len());
    let outlet = model.unit(setting.hot);
    let tight = added.before + added.past + added.room;
    let all = |airflow: f64| model.resistance(setting, draw, airflow) + outlet + added.room;
    let constant = model.constant(setting, draw);
    let air = model.air(setting.hot);
    let upstream = air.stack(0, place.min(end), setting.open.is_none());
    let unit = model.unit_before(setting.hot, place);
    // Of the airflow at the end, the whole and what the blower has to spare.
    let balance = |at_end: f64| {
        let past = (all(at_end) - draw.before(place, at_end) + added.past) * at_end * at_end;
        let gauge = constant - upstream + past - unit * at_end * at_end;
        let escaped = gap * gauge.abs().sqrt().copysign(gauge);
        let whole = (at_end + escaped).max(0.0);
        let before = draw.before(place, whole) + added.before - outlet;
        let lost = constant + past + before * whole * whole;
        (whole, draw.rise(whole, added.speed) - lost)
    };
    let start = model.airflow(at.table, index, tight / outlet) * added.speed;
    let most = draw.free_airflow * MOST_SHARE;
    let spare = |at_end: f64| balance(at_end).1;
    let at_end = match falling_root(spare, start, |_| start, LEAST_AIRFLOW, most, TOLERANCE) {
        Ok(at_end) => at_end,
        Err(RootError::NotBracketed { at_lower, .. }) if at_lower > 0.0 => most,
        // All that the blower moves leaves by the leak.
        Err(_) => LEAST_AIRFLOW,
    };
    (balance(at_end).0, at_end)
}

/// What is shown, and the velocity pressure at the place, Pa.
fn shown(model: &Model, at: &Planned, draw: &Curves, flow: &Flow) -> (f64, f64) {
    let setting = at.setting;
    let all = model.elements.len();
    let end = setting.open.unwrap_or(all);
    let here = if at.place >= flow.leak && flow.leak > 0 {
        flow.at_end
    } else {
        flow.at_outlet
    };
    let air = model.air(setting.hot);
    let q = model.unit_before(setting.hot, at.place) * here * here;
    match at.quantity {
        Quantity::Velocity => {
            let speed = here * air.at_joint(at.place) / model.area_before(at.place);
            return (speed, q);
        }
        Quantity::Temperature => {
            let temperatures = model.temperatures(setting.hot);
            let celsius = temperatures.map_or(0.0, |temperatures| {
                temperatures.at(at.place, here.max(1e-4), draw.exhaust_off)
            });
            return (celsius, q);
        }
        _ if at.place >= end => return (0.0, q),
        _ => {}
    }
    let (whole, square) = (flow.at_outlet * flow.at_outlet, flow.at_end * flow.at_end);
    let span =
        |from: usize, to: usize, airflow: f64| draw.between(from, to, airflow) * airflow * airflow;
    // Beyond the leak all is the end's airflow.
    let lost = if at.place < flow.leak {
        span(at.place, flow.leak.min(end), flow.at_outlet)
            + span(flow.leak.min(end), end, flow.at_end)
    } else {
        span(at.place, end, flow.at_end)
    } + flow.added.beyond_before * whole
        + flow.added.beyond_past * square;
    // What the room is above the open air.
    let room = if setting.door_open || setting.open.is_some() {
        model.house
    } else {
        model.house - (draw.make_up + flow.added.room) * square
    };
    let stack = air.stack(at.place, end, setting.open.is_none());
    let against_room = if setting.open.is_some() {
        let exit = model.unit_before(setting.hot, end) * square;
        lost + exit + stack - q
    } else {
        let flap = if setting.flap_held { 0.0 } else { draw.flap };
        lost + flap + stack - q - room
    };
    let value = match at.quantity {
        Quantity::AgainstOutdoors => against_room + room,
        _ => against_room,
    };
    (value, q)
}
