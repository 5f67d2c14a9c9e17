//! What a reading says by itself: what cannot be, the arithmetic of velocities, and the blower that two
//! points tell.

use crate::site_readings::{house, static_at, visit};
use crate::tally::Tally;
use elbowroom::diagnosis::{Objection, Plausibility, clean_readings, fit_blower, plausibility};
use elbowroom::duct::point_velocity;
use elbowroom::duct::tables::velocity_points::{CENTRE_AFTER_STRAIGHT, LOG_LINEAR_6};
use elbowroom::plan::{Against, Conditions, Entry, Input, Measured, Pattern, Plan, Reading, Spot};
use elbowroom::report::pressure_readings;
use elbowroom::units::{
    Density, Pressure, Temperature, TemperatureDifference, UnitSystem, Velocity,
};

fn velocities(points: &[f64], pattern: Pattern) -> Reading {
    let points = points.iter();
    Reading {
        at: Spot::Outlet,
        measured: Measured::Velocity {
            points: points
                .map(|it| Velocity::from_metres_per_second(*it))
                .collect(),
            pattern,
            resolution: Velocity::from_metres_per_second(0.1),
            tolerance: Velocity::from_metres_per_second(0.2),
        },
        conditions: Conditions::PLAIN,
    }
}

#[test]
fn nonsense_is_refused_or_doubted() {
    let plan = house();
    let judged = |reading: &Reading| plausibility(&plan, reading);
    let outlet = |pascals: f64| static_at(Spot::Outlet, pascals, Conditions::PLAIN);
    assert_eq!(judged(&outlet(110.0)), Plausibility::Fine);
    assert_eq!(
        judged(&outlet(-40.0)),
        Plausibility::Refused(Objection::Negative)
    );
    // The strongest assumed blower gives 500 Pa.
    for pascals in [600.0, 4_900.0, 4_999.0] {
        let found = judged(&outlet(pascals));
        assert!(matches!(found, Plausibility::Doubted(_)), "{pascals}");
    }
    assert!(matches!(
        judged(&outlet(5_100.0)),
        Plausibility::Refused(Objection::FarAboveShutOff { times }) if times > 10.0
    ));
    let temperature = |celsius: f64, heat: bool| Reading {
        at: Spot::Outlet,
        measured: Measured::Temperature {
            temperature: Temperature::from_celsius(celsius),
            resolution: TemperatureDifference::from_kelvins(0.1),
            tolerance: TemperatureDifference::from_kelvins(1.0),
        },
        conditions: Conditions {
            heat,
            ..Conditions::PLAIN
        },
    };
    assert_eq!(judged(&temperature(55.0, true)), Plausibility::Fine);
    assert_eq!(judged(&temperature(12.0, false)), Plausibility::Fine);
    assert_ne!(judged(&temperature(12.0, true)), Plausibility::Fine);
    assert_eq!(
        judged(&temperature(-8.0, true)),
        Plausibility::Refused(Objection::BelowAmbient)
    );
    assert!(matches!(
        judged(&temperature(140.0, true)),
        Plausibility::Refused(Objection::TooHot { .. })
    ));
    assert!(matches!(
        judged(&velocities(&[80.0], Pattern::CentreLine)),
        Plausibility::Refused(Objection::TooFast { .. })
    ));
    assert!(matches!(
        judged(&velocities(&[9.0, 1.0], Pattern::Traverse)),
        Plausibility::Doubted(Objection::Uneven)
    ));
}

/// A difference of 10 K is one of 18 °F. Source: the definition of the degree Fahrenheit.
#[test]
fn a_difference_of_temperatures_has_no_zero_to_shift() {
    for (units, shown) in [(UnitSystem::UsCustomary, "18.0"), (UnitSystem::Si, "10.0")] {
        assert_eq!(units.temperature_span(10.0), shown);
        let kelvins = units.temperature_span_from(shown.parse().unwrap());
        assert!((kelvins - 10.0).abs() < 1e-9, "{kelvins}");
    }
}

/// In a house held 5 Pa below outdoors, a gauge open to the room reads 5 Pa more than one open to
/// outdoors: the line is against outdoors. Source: the definition of gauge pressure.
#[test]
fn a_reading_is_put_on_the_line_against_outdoors() {
    let mut plan = house();
    plan.site.house_pressure = Pressure::from_pascals(-5.0);
    let against = |against: Against| {
        let mut reading = static_at(Spot::Outlet, 100.0, Conditions::PLAIN);
        if let Measured::StaticPressure { against: own, .. } = &mut reading.measured {
            *own = against;
        }
        let mut visit = visit();
        visit.entries.push(Entry::Reading(reading));
        pressure_readings(&plan, &visit, &[], &[])[0].read
    };
    assert!((against(Against::Room) - 95.0).abs() < 1e-9);
    assert!((against(Against::Outdoors) - 100.0).abs() < 1e-9);
}

/// Velocity pressures of 4 in duct at 100, 150 and 200 cfm and 70 °F: 0.082, 0.184 and 0.327 in. w.c.
/// are 1146, 1719 and 2292 fpm. Source: derived (area 0.08727 ft²; air of 0.075 lb/ft³).
#[test]
fn a_pitot_tube_reads_the_velocity() {
    let units = UnitSystem::UsCustomary;
    // 0.075 lb/ft³.
    let air = Density::from_kilograms_per_cubic_metre(1.2014);
    let mut tally = Tally::new("pitot");
    for (inches, feet_a_minute) in [(0.082, 1146.0), (0.184, 1719.0), (0.327, 2292.0)] {
        let velocity = point_velocity::of_pitot(units.pressure_from(inches), air);
        let found = velocity.metres_per_second() / 0.3048 * 60.0;
        // Half of the last digit of 0.082 is 0.3 % of the velocity.
        tally.relative(inches, found, feet_a_minute, 0.004);
    }
    tally.finish(3);
}

/// Six points of ISO 5802 on a power-law profile (1 - r)^(1/n) give its mean, 2 n²/((n+1)(2n+1)) of the
/// greatest velocity. Source: the integral, by hand; the profile as in Bird, Stewart & Lightfoot.
#[test]
fn a_traverse_gives_the_mean_of_a_turbulent_profile() {
    /// What six points leave off the mean of such profiles: the log-linear rule is meant for them.
    const TOLERANCE: f64 = 0.01;
    let mut tally = Tally::new("traverse");
    for n in [6.0_f64, 7.0, 8.0] {
        let at = |share: &f64| {
            let wall = share.min(1.0 - share) * 2.0;
            Velocity::from_metres_per_second(10.0 * wall.powf(n.recip()))
        };
        let points: Vec<Velocity> = LOG_LINEAR_6.iter().map(at).collect();
        let mean = point_velocity::mean(&points).unwrap().metres_per_second();
        let expected = 10.0 * 2.0 * n * n / ((n + 1.0) * (2.0 * n + 1.0));
        tally.relative(n, mean, expected, TOLERANCE);
    }
    // n of about 7 is where the factor of the centre line comes from.
    let factor = 98.0 / 120.0;
    tally.within("centre line", CENTRE_AFTER_STRAIGHT.likely, factor, 0.01);
    tally.finish(4);
}

/// Pressures of a traverse by hand: 16, 25, 36 Pa in air of 1.2 kg/m³ are 5.164, 6.455 and 7.746 m/s,
/// whose mean is 6.455; the root of the mean pressure, 6.551, would be wrong.
#[test]
fn a_traverse_averages_velocities_not_pressures() {
    let air = Density::from_kilograms_per_cubic_metre(1.2);
    let points = [16.0, 25.0, 36.0];
    let points = points.map(|it| point_velocity::of_pitot(Pressure::from_pascals(it), air));
    let mean = point_velocity::mean(&points).unwrap().metres_per_second();
    assert!((mean - 6.455).abs() < 0.001, "{mean}");
}

/// Two points of a known blower's curve give it back, and its band is narrower than the assumed one.
/// Source: the curve p0 (1 - (Q/Q0)^n) with Q0 0.085 m³/s, p0 280 Pa, n 2, worked by hand.
#[test]
fn two_points_fit_the_blower() {
    let plan = house();
    let area = core::f64::consts::FRAC_PI_4 * 0.1016 * 0.1016;
    let airflow = 0.045;
    let pressure = 280.0 * (1.0 - (airflow / 0.085_f64).powi(2));
    let mut visit = visit();
    let joined = velocities(&[airflow / area], Pattern::Traverse);
    let mut open = velocities(&[0.085 / area], Pattern::Traverse);
    open.conditions.open_joint = Some(Spot::Outlet);
    assert!(fit_blower(&plan, &visit, "").is_none());
    for reading in [
        static_at(Spot::Outlet, pressure, Conditions::PLAIN),
        joined,
        open,
    ] {
        visit.entries.push(Entry::Reading(reading));
    }
    let fit = fit_blower(&plan, &visit, "read on site").unwrap();
    assert_eq!(fit.points, 2);
    for set in &fit.overrides {
        let (expected, assumed) = match set.input {
            Input::BlowerFreeAirflow => (0.085, 0.100 - 0.066),
            _ => (280.0, 500.0 - 200.0),
        };
        // The curve is at the density of 1.2, the room's air at 1.199.
        assert!((set.likely / expected - 1.0).abs() < 0.01, "{set:?}");
        assert!(set.high - set.low < assumed, "{set:?}");
    }
    let mut fitted = plan.clone();
    fitted.overrides = fit.overrides;
    let reading = static_at(Spot::Outlet, 0.0, Conditions::PLAIN);
    let band = |plan: &Plan| {
        let band = clean_readings(plan, &[&reading])[0].unwrap().band;
        band.high - band.low
    };
    assert!(band(&fitted) < 0.8 * band(&plan));
}
