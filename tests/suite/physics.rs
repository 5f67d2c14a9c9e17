//! Check values that need no table: conventions, derived figures, a warm riser.

use crate::tally::Tally;
use elbowroom::plan::{self, AlongRun, Flow, Input, Plan, Riser, Termination, TerminationKind};
use elbowroom::system::{Draw, Evaluation, Finding, INPUTS, assess};
use elbowroom::units::{Length, Temperature, UnitSystem};

/// Rounding in doubles.
const DUST: f64 = 1e-12;

/// A blank plan whose air keeps its temperature, so that its density is known everywhere.
fn blank(title: &str) -> Plan {
    let mut plan = plan::blank(title.to_owned());
    plan.exhaust.along_run = AlongRun::KeepsTemperature;
    plan
}

/// A dryer with nothing but its termination: the only point lies on the outlet.
fn without_duct() -> Plan {
    let mut plan = blank("Nothing but a hood");
    plan.run.points[0].position = plan.dryer.outlet();
    plan
}

fn with_cfm(mut plan: Plan, cfm: f64) -> Plan {
    plan.flow = Flow::StatedAirflow {
        airflow: UnitSystem::UsCustomary.airflow_from(cfm),
    };
    plan
}

fn evaluation(plan: &Plan) -> Evaluation {
    assess(plan).working.expect("air moves").0.evaluation
}

/// The hood's K and flap weight at the ends of their spans, the other inputs in the middle.
fn hood(k_quantile: f64, flap_quantile: f64) -> Draw {
    let mut quantiles = [0.5; INPUTS];
    quantiles[Input::WallHood as usize] = k_quantile;
    quantiles[Input::FlapWeight as usize] = flap_quantile;
    Draw::at(quantiles)
}

/// The velocity pressure that the exit loses is counted once, in the termination, and the gauge
/// reads static pressure: p_s = p_total - q. A hood of K 2 without duct reads q and its flap.
/// Source: the definitions of total and static pressure.
#[test]
fn a_hood_at_the_outlet_reads_one_velocity_pressure_and_its_flap() {
    let (k, flap_pascals) = (2.0, 5.0);
    let found = evaluation(&with_cfm(without_duct(), 120.0));
    let q = found.velocity_pressure.pascals();
    let mut tally = Tally::new("hood at the outlet");
    tally.relative(
        "total",
        found.total_pressure.pascals(),
        k * q + flap_pascals,
        DUST,
    );
    tally.relative(
        "static",
        found.back_pressure.pascals(),
        (k - 1.0) * q + flap_pascals,
        DUST,
    );
    tally.finish(2);
}

/// A bare open outlet reads nothing: an exit loses exactly its velocity pressure, K = 1. Source:
/// Borda-Carnot for a jet into still air, and p_s = p_total - q.
#[test]
fn a_bare_outlet_reads_zero() {
    let mut plan = without_duct();
    plan.run.termination = Termination::clean(TerminationKind::OpenEnd);
    let found = evaluation(&with_cfm(plan, 120.0));
    let q = found.velocity_pressure;
    assert!((found.total_pressure / q - 1.0).abs() < DUST, "{found:?}");
    assert!((found.back_pressure / q).abs() < DUST, "{found:?}");
}

/// Of a hood the gauge reads what its K has above 1: at two values of its K, without flap, the
/// straight line through both readings meets zero at K = 1. Source: as above.
#[test]
fn a_hood_reads_what_its_k_has_above_one() {
    let assessment = assess(&with_cfm(without_duct(), 120.0));
    let airflow = UnitSystem::UsCustomary.airflow_from(120.0);
    let reading = |quantile: f64| assessment.run.at(airflow, &hood(quantile, 0.0));
    let (low, high) = (reading(0.0), reading(1.0));
    let q = low.velocity_pressure;
    let (low_k, high_k) = (low.total_pressure / q, high.total_pressure / q);
    assert!(
        high_k - low_k > 1.0,
        "the hood's span shrank: {low_k} to {high_k}"
    );
    let slope = (high.back_pressure - low.back_pressure) / (high_k - low_k);
    let at_one = low.back_pressure + slope * (1.0 - low_k);
    assert!((at_one / q).abs() < DUST, "K = 1 reads {at_one:?}");
}

/// A plan whose run ends 5 m above the outlet.
fn riser_of_5_m(exhaust_humidity: f64, outdoor_humidity: f64) -> Plan {
    let mut plan = blank("A riser");
    plan.exhaust.temperature = Temperature::from_celsius(50.0);
    plan.exhaust.relative_humidity = exhaust_humidity;
    plan.site.outdoor_temperature = Temperature::from_celsius(0.0);
    plan.site.outdoor_relative_humidity = outdoor_humidity;
    let elbow = plan.run.outlet.elbow;
    plan.run.points[0].fitting.riser = Some(Riser {
        rise: Length::from_metres(5.0),
        elbow,
    });
    plan
}

/// Dry air of 1 atm weighs 1.292 kg/m³ at 0 degC and 1.092 at 50 (Cengel, property table of air at
/// 1 atm; from memory): 5 m of it in the duct against 5 m outdoors assist by 9.81 Pa.
#[test]
fn a_warm_dry_riser_assists() {
    /// Pa: the table rounds each density to 0.0005 kg/m³; twice that times g times 5 m.
    const TABLE_ROUNDING: f64 = 0.05;
    let expected = -9.806_65 * 5.0 * (1.292 - 1.092);
    let stack = evaluation(&riser_of_5_m(0.0, 0.0)).stack.pascals();
    assert!(
        (stack - expected).abs() < TABLE_ROUNDING,
        "{stack} Pa, {expected} expected"
    );
}

/// The physics text's -10.5 Pa for 5 m, 50 degC inside, 0 degC outside: with the moist exhaust that
/// a plan starts with, relative humidity 0.3, and 0.5 outdoors. Steam tables (saturation 12,352 Pa
/// at 50 degC, 611 Pa at 0) and the two gas constants give the same by hand: 1.0773 kg/m³ inside,
/// 1.2908 outside.
#[test]
fn a_warm_moist_riser_assists_by_the_printed_figure() {
    /// Pa: the figure is printed to a tenth.
    const PRINTED: f64 = 0.05;
    let stack = evaluation(&riser_of_5_m(0.3, 0.5)).stack.pascals();
    assert!((stack + 10.5).abs() < PRINTED, "{stack} Pa");
}

/// A riser takes off from what the dryer must give, a drop adds; the losses stay.
#[test]
fn a_drop_adds_what_a_riser_takes_off() {
    let up = with_cfm(riser_of_5_m(0.3, 0.5), 100.0);
    let mut down = up.clone();
    if let Some(riser) = &mut down.run.points[0].fitting.riser {
        riser.rise = -riser.rise;
    }
    let (up, down) = (evaluation(&up), evaluation(&down));
    let mut tally = Tally::new("riser and drop");
    tally.relative("loss", down.loss.pascals(), up.loss.pascals(), DUST);
    tally.relative("stack", down.stack.pascals(), -up.stack.pascals(), DUST);
    tally.holds("the riser assists", up.total_pressure < up.loss);
    tally.holds("the drop weighs", down.total_pressure > down.loss);
    tally.finish(4);
}

/// Between laminar and turbulent flow nothing determines friction, and that is said. In 4 in duct the air
/// of a dryer has a Reynolds number of 330 to 380 a cfm (v D / nu, nu 1.55e-5 to 1.8e-5 m²/s for air of 20 to
/// 50 degC): 3 cfm is laminar, 7 is neither, 14 is turbulent. Source: laminar below about 2,000 to 2,300,
/// turbulent from 4,000 (Moody's critical zone).
#[test]
fn air_that_is_neither_laminar_nor_turbulent_is_told() {
    for (cfm, told) in [(3.0, false), (7.0, true), (14.0, false)] {
        let found = assess(&with_cfm(blank("Slow air"), cfm)).findings;
        let is_told = found.contains(&Finding::TransitionalFlow);
        assert_eq!(is_told, told, "{cfm} cfm");
    }
}

/// 4 in duct at 100, 150 and 200 cfm: 1146, 1719 and 2292 fpm (area pi/36 ft², derived), and
/// velocity pressures of 0.082, 0.184 and 0.327 in. w.c. at 70 degF (dry air at sea level; derived).
#[test]
fn velocity_and_velocity_pressure_in_a_four_inch_duct() {
    let mut tally = Tally::new("4 in duct");
    for (cfm, fpm, inches) in [
        (100.0, "1146 fpm", "0.082 in. w.c."),
        (150.0, "1719 fpm", "0.184 in. w.c."),
        (200.0, "2292 fpm", "0.327 in. w.c."),
    ] {
        let mut plan = with_cfm(blank("4 in"), cfm);
        plan.exhaust.temperature = Temperature::from_fahrenheit(70.0);
        plan.exhaust.relative_humidity = 0.0;
        let found = evaluation(&plan);
        let shown = UnitSystem::UsCustomary;
        tally.equal(
            cfm,
            &shown.velocity(found.velocity).to_string(),
            &fpm.to_owned(),
        );
        let pressure = shown.pressure(found.velocity_pressure).to_string();
        tally.equal(cfm, &pressure, &inches.to_owned());
    }
    tally.finish(6);
}

/// The typical blower's stated place (physics text): it puts a short clean run at 106 to 177 cfm
/// and 0.24 to 0.64 in. w.c., corner to corner. The likely inputs must lie inside.
#[test]
fn a_short_clean_run_lies_inside_the_blowers_stated_span() {
    let found = evaluation(&blank("Short and straight"));
    let cfm = found.airflow.cubic_metres_per_second() / 0.3048_f64.powi(3) * 60.0;
    let inches = found.back_pressure.pascals() / 248.84;
    assert!((106.0..177.0).contains(&cfm), "{cfm} cfm");
    assert!((0.24..0.64).contains(&inches), "{inches} in. w.c.");
}
