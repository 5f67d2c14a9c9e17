//! Moist air against `air.csv`: CoolProp 8.0.0 (Herrmann, Kretzschmar & Gatley 2009, real gas) and,
//! as a second opinion on the humidity ratio, PsychroLib 2.5.0 (ideal gas).

use crate::{reference, tally::Tally};
use elbowroom::air::{MoistAir, pressure_at_altitude, saturation_pressure};
use elbowroom::units::{Length, Pressure, Temperature};
use serde::Deserialize;

/// Of the figure: an ideal mixture lies up to 0.37 % from CoolProp's real one.
const DENSITY: f64 = 0.005;
/// Of the figure: mixing rules for moist air differ.
const VISCOSITY: f64 = 0.04;
/// Of the figure: the two libraries themselves lie up to 1.0 % apart.
const HUMIDITY_RATIO: f64 = 0.012;
/// K: the two libraries lie up to 0.03 K apart.
const DEW_POINT: f64 = 0.1;
/// Of the figure: Hyland & Wexler's fit promises 0.1 % of IAPWS.
const SATURATION: f64 = 0.001;
/// Of the figure: PsychroLib uses the same ideal mixture and saturation fit and rounds the ratio of
/// molar masses to six digits; its switch from ice to water at 0.01 degC instead of 0 costs 1e-4.
const PSYCHROLIB: f64 = 2e-4;
/// PsychroLib gives no humidity ratio under this.
const PSYCHROLIB_LEAST: f64 = 1e-7;
/// Of the figure: the same formula on both sides.
const PRESSURE: f64 = 1e-12;
/// The set's bar.
const ROWS: usize = 150;

#[derive(Deserialize)]
struct Row {
    temperature_degc: f64,
    relative_humidity: f64,
    altitude_m: f64,
    pressure_pa: f64,
    density_kg_per_m3: f64,
    viscosity_pa_s: f64,
    humidity_ratio_kg_per_kg: f64,
    dew_point_degc: Option<f64>,
    saturation_pressure_pa: f64,
    psychrolib_humidity_ratio_kg_per_kg: f64,
}

impl Row {
    fn temperature(&self) -> Temperature {
        Temperature::from_celsius(self.temperature_degc)
    }

    fn air(&self) -> MoistAir {
        let pressure = Pressure::from_pascals(self.pressure_pa);
        MoistAir::new(self.temperature(), pressure, self.relative_humidity)
    }

    fn label(&self) -> String {
        format!(
            "{} degC, {} humidity, {} m",
            self.temperature_degc, self.relative_humidity, self.altitude_m
        )
    }
}

fn rows() -> Vec<Row> {
    reference::rows("air.csv", ROWS)
}

#[test]
fn pressure_by_altitude() {
    let mut tally = Tally::new("pressure by altitude");
    for row in rows() {
        let found = pressure_at_altitude(Length::from_metres(row.altitude_m));
        tally.relative(row.label(), found.pascals(), row.pressure_pa, PRESSURE);
    }
    tally.finish(ROWS);
}

#[test]
fn density() {
    let mut tally = Tally::new("density");
    for row in rows() {
        let found = row.air().density().kilograms_per_cubic_metre();
        tally.relative(row.label(), found, row.density_kg_per_m3, DENSITY);
    }
    tally.finish(ROWS);
}

#[test]
fn viscosity() {
    let mut tally = Tally::new("viscosity");
    for row in rows() {
        let found = row.air().viscosity().pascal_seconds();
        tally.relative(row.label(), found, row.viscosity_pa_s, VISCOSITY);
    }
    tally.finish(ROWS);
}

#[test]
fn humidity_ratio() {
    let mut tally = Tally::new("humidity ratio");
    for row in rows() {
        let found = row.air().humidity_ratio();
        let expected = row.humidity_ratio_kg_per_kg;
        tally.relative(row.label(), found, expected, HUMIDITY_RATIO);
        let second = row.psychrolib_humidity_ratio_kg_per_kg;
        let label = format!("{}, PsychroLib", row.label());
        if second > PSYCHROLIB_LEAST {
            tally.relative(label, found, second, PSYCHROLIB);
        } else {
            tally.within(label, found, 0.0, PSYCHROLIB_LEAST);
        }
    }
    tally.finish(2 * ROWS);
}

#[test]
fn dew_point() {
    let mut tally = Tally::new("dew point");
    let mut dry = 0;
    for row in rows() {
        let found = row.air().dew_point().map(Temperature::celsius);
        match (found, row.dew_point_degc) {
            (Some(found), Some(expected)) => tally.within(row.label(), found, expected, DEW_POINT),
            (found, expected) => {
                dry += 1;
                tally.equal(row.label(), &found, &expected);
            }
        }
    }
    assert!(dry < ROWS / 5, "{dry} rows without a dew point");
    tally.finish(ROWS);
}

#[test]
fn saturation() {
    let mut tally = Tally::new("saturation pressure");
    for row in rows() {
        let found = saturation_pressure(row.temperature()).pascals();
        tally.relative(row.label(), found, row.saturation_pressure_pa, SATURATION);
    }
    tally.finish(ROWS);
}
