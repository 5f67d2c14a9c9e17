//! What heat and moisture give reason to remark on: where a wall is wet and its water freezes, and what a
//! wider duct does to the air's speed. Sources: water freezes at 0 °C; continuity, v1 A1 = v2 A2.

use crate::heat_properties::in_one_zone;
use crate::tally::Tally;
use elbowroom::plan::{AlongRun, Flow, LegState, Plan, Point, RunPoint, Zone, blank};
use elbowroom::system::{CompiledRun, Draw, Finding, assess, operating_point, wet_stretches};
use elbowroom::units::{Length, Temperature, UnitSystem, Velocity};

/// A plan whose run goes straight out, so many metres from the dryer.
fn straight_out(metres: f64, cfm: f64) -> Plan {
    let mut plan = blank("Straight out".to_owned());
    plan.flow = Flow::StatedAirflow {
        airflow: UnitSystem::UsCustomary.airflow_from(cfm),
    };
    let (outlet, way) = (plan.dryer.outlet(), plan.dryer.outlet_heading());
    plan.run.points[0].position = Point::new(outlet.x + metres * way.x, outlet.y + metres * way.y);
    plan
}

/// Water that a wall gathers freezes where the wall is colder than 0 °C, and nowhere else.
#[test]
fn water_freezes_on_walls_below_nought() {
    let mut tally = Tally::new("freezing");
    let (mut frozen, mut wet) = (0, 0);
    for degrees in [-30.0, -20.0, -10.0, 0.0, 5.0, 10.0] {
        let plan = in_one_zone(&straight_out(25.0, 20.0), degrees);
        for finding in assess(&plan).findings {
            let Finding::WetWall { stretch, freezes } = finding else {
                continue;
            };
            let coldest = stretch.coldest_wall.celsius();
            tally.equal(format!("{coldest} °C"), &freezes, &(coldest < 0.0));
            frozen += u32::from(freezes);
            wet += u32::from(!freezes);
        }
    }
    tally.holds("some water freezes", frozen > 0);
    tally.holds("some does not", wet > 0);
    tally.finish(4);
}

/// From 4 in to 5 in: 100 cfm is 1146 fpm before and 16/25 of that after (area pi/36 ft², derived).
#[test]
fn a_wider_duct_slows_the_air_by_its_area() {
    /// The speed is printed to a whole fpm.
    const PRINTED: f64 = 0.5 / 733.0;
    let mut plan = straight_out(2.0, 100.0);
    plan.exhaust.along_run = AlongRun::KeepsTemperature;
    let first = plan.run.points[0].clone();
    let (outlet, way) = (plan.dryer.outlet(), plan.dryer.outlet_heading());
    plan.run.points.push(RunPoint {
        id: "wider".into(),
        position: Point::new(outlet.x + 5.0 * way.x, outlet.y + 5.0 * way.y),
        leg: LegState {
            diameter: Some(Length::from_inches(5.0)),
            ..first.leg
        },
        ..first
    });
    let of = |plan: &Plan| {
        let findings = assess(plan).findings.into_iter();
        let slowed = findings.filter_map(|finding| match finding {
            Finding::UpsizingSlows { before, after, .. } => Some((before, after)),
            _ => None,
        });
        slowed.collect::<Vec<_>>()
    };
    let [(before, after)] = of(&plan)[..] else {
        panic!("{:?}", of(&plan))
    };
    let feet_a_minute = |velocity: Velocity| velocity.metres_per_second() / 0.3048 * 60.0;
    let mut tally = Tally::new("wider duct");
    tally.relative("before", feet_a_minute(before), 1146.0, PRINTED);
    tally.relative("after", feet_a_minute(after), 733.0, PRINTED);
    // A narrower one does not slow it.
    plan.run.points[1].leg.diameter = Some(Length::from_inches(3.0));
    tally.equal("narrower", &of(&plan).len(), &0);
    tally.finish(3);
}

/// Between two cold zones the duct passes a hot one, where its wall dries: what is told as wet is as long
/// as what is wet, and holds all the water.
#[test]
fn a_dry_stretch_parts_two_wet_ones() {
    /// Sums of the same figures in another order.
    const DUST: f64 = 1e-9;
    let mut plan = in_one_zone(&straight_out(12.0, 40.0), -10.0);
    let outlet = plan.dryer.outlet();
    let mut hot = plan.zones[1].clone();
    hot.id = "hot".into();
    hot.temperature = Temperature::from_celsius(60.0);
    (hot.y_m, hot.depth) = (outlet.y - 8.0, Length::from_metres(4.0));
    // The zone drawn later is the one that counts where two overlap; so each is tried first.
    plan.zones.insert(0, hot.clone());
    plan.zones.push(Zone {
        id: "hot too".into(),
        ..hot
    });
    let (run, _) = CompiledRun::of(&plan);
    let point = operating_point(&run, &Draw::LIKELY).expect("air moves");
    let profile = point.heat.expect("heat is followed");
    let stretches = wet_stretches(&run, &profile);
    let cells = || profile.cells.iter().filter(|cell| cell.water > 0.0);
    let mut tally = Tally::new("wet stretches");
    tally.equal("how many", &stretches.len(), &2);
    let told = stretches.iter().map(|it| (it.to - it.from).metres());
    let wet = cells().map(|cell| cell.length);
    tally.relative("length", told.sum(), wet.sum(), DUST);
    let told = stretches.iter().map(|it| it.water.kilograms_per_second());
    let wet = cells().map(|cell| cell.water);
    tally.relative("water", told.sum(), wet.sum(), DUST);
    tally.finish(3);
}
