//! A plan mirrored, turned by quarters or moved about the sheet is the same run: every figure stays.
//! Source: geometry; nothing in the physics or the code knows a compass.

use crate::random_plan::{with_blower, with_stated_airflow};
use crate::seeded;
use elbowroom::plan::{self, Plan, Point};
use elbowroom::rules::{code_length, opening_distances};
use elbowroom::system::{OperatingPoint, assess};
use elbowroom::units::Temperature;
use proptest::prelude::*;

/// Of a figure, or in its unit where it is below 1: rounding of coordinates in doubles, as the
/// quality text sets it.
const TOLERANCE: f64 = 1e-9;
const CASES: u32 = 200;

/// A move of the sheet: mirrored left to right first, then turned clockwise by quarters, then
/// shifted.
#[derive(Debug, Clone, Copy)]
pub struct Move {
    mirrored: bool,
    quarters: u8,
    shift_m: (f64, f64),
}

pub fn moves() -> impl Strategy<Value = Move> {
    let shift_m = (-50.0..50.0_f64, -50.0..50.0_f64);
    (any::<bool>(), 0..4_u8, shift_m).prop_map(|(mirrored, quarters, shift_m)| Move {
        mirrored,
        quarters,
        shift_m,
    })
}

impl Move {
    fn point(self, point: Point) -> Point {
        let mut moved = point;
        if self.mirrored {
            moved.x = -moved.x;
        }
        for _ in 0..self.quarters {
            // Clockwise as seen, with y toward the foot of the sheet.
            moved = Point::new(-moved.y, moved.x);
        }
        Point::new(moved.x + self.shift_m.0, moved.y + self.shift_m.1)
    }

    pub fn plan(self, plan: &Plan) -> Plan {
        let mut moved = plan.clone();
        for wall in &mut moved.walls {
            let (from, to) = (self.point(wall.from()), self.point(wall.to()));
            (wall.from_x_m, wall.from_y_m) = (from.x, from.y);
            (wall.to_x_m, wall.to_y_m) = (to.x, to.y);
        }
        for obstacle in &mut moved.obstacles {
            let near = Point::new(obstacle.x_m, obstacle.y_m);
            let far = Point::new(
                near.x + obstacle.width.metres(),
                near.y + obstacle.depth.metres(),
            );
            let (near, far) = (self.point(near), self.point(far));
            (obstacle.x_m, obstacle.y_m) = (near.x.min(far.x), near.y.min(far.y));
            if self.quarters % 2 == 1 {
                core::mem::swap(&mut obstacle.width, &mut obstacle.depth);
            }
        }
        for zone in &mut moved.zones {
            let near = Point::new(zone.x_m, zone.y_m);
            let (width, depth) = (zone.width.metres(), zone.depth.metres());
            let far = Point::new(near.x + width, near.y + depth);
            let (near, far) = (self.point(near), self.point(far));
            (zone.x_m, zone.y_m) = (near.x.min(far.x), near.y.min(far.y));
            if self.quarters % 2 == 1 {
                core::mem::swap(&mut zone.width, &mut zone.depth);
            }
        }
        let centre = self.point(moved.dryer.centre());
        (moved.dryer.x_m, moved.dryer.y_m) = (centre.x, centre.y);
        let turned = moved.dryer.turned_deg;
        let turned = if self.mirrored { -turned } else { turned };
        let turned = turned + 90.0 * f64::from(self.quarters);
        // Back into the span that the file allows.
        moved.dryer.turned_deg = turned % 360.0;
        for point in &mut moved.run.points {
            point.position = self.point(point.position);
        }
        moved
    }
}

/// Every figure of a plan with its name, in a steady order.
fn figures(plan: &Plan) -> Vec<(String, f64)> {
    let assessment = assess(plan);
    let code = code_length(plan, &assessment.run, &assessment.findings);
    let (point, ledger) = assessment.working.as_ref().expect("air moves");
    let found = &point.evaluation;
    let named = |name: &str, value: f64| (name.to_owned(), value);
    let mut figures = vec![
        named("airflow", found.airflow.cubic_metres_per_second()),
        named("velocity", found.velocity.metres_per_second()),
        named("velocity pressure", found.velocity_pressure.pascals()),
        named("Reynolds number", found.reynolds),
        named("friction factor", found.friction_factor),
        named("loss", found.loss.pascals()),
        named("stack", found.stack.pascals()),
        named("total pressure", found.total_pressure.pascals()),
        named("back pressure", found.back_pressure.pascals()),
        named(
            "density",
            assessment.run.density.kilograms_per_cubic_metre(),
        ),
        named("rise", assessment.run.rise.metres()),
        named("code: measured", code.measured.metres()),
        named("code: with deductions", code.with_deductions.metres()),
        named("code: margin", code.margin.unwrap().metres()),
    ];
    for distance in opening_distances(plan, &plan::RunPath::of(plan)) {
        let name = format!("from opening {}", distance.opening);
        figures.push((name, distance.distance.metres()));
    }
    for (row, heat) in ledger.rows.iter().zip(heats(point)) {
        let id = &row.element.id;
        for (figure, value) in heat {
            figures.push((format!("{id}: {figure}"), value));
        }
        let mut add = |figure: &str, value: f64| figures.push((format!("{id}: {figure}"), value));
        add("length", row.element.developed_length.metres());
        add("loss", row.loss.pascals());
        add("share", row.share);
        add("equivalent length", row.equivalent_length.metres());
        add("coefficient", row.coefficient.likely);
    }
    figures
}

/// What each element does to heat and moisture; nothing where the air keeps its temperature.
fn heats(point: &OperatingPoint) -> impl Iterator<Item = Vec<(&'static str, f64)>> {
    let elements = point.heat.iter().flat_map(|profile| &profile.elements);
    let figures = elements.map(|element| {
        let wall = element.coldest_wall.map_or(0.0, Temperature::celsius);
        vec![
            ("leaving", element.leaving.celsius()),
            ("coldest wall", wall),
            ("humidity ratio", element.humidity_ratio),
            ("water", element.water),
        ]
    });
    figures.chain(core::iter::repeat_with(Vec::new))
}

fn stays(plan: &Plan, by: Move) -> Result<(), TestCaseError> {
    same_figures(plan, &by.plan(plan))
}

/// Every figure of the two plans is the same.
pub fn same_figures(plan: &Plan, moved: &Plan) -> Result<(), TestCaseError> {
    let (before, after) = (figures(plan), figures(moved));
    prop_assert_eq!(before.len(), after.len());
    for ((name, before), (other, after)) in before.iter().zip(&after) {
        prop_assert_eq!(name, other);
        let allowed = TOLERANCE * before.abs().max(1.0);
        // An airflow is far below 1 in its unit: it is held to its own size.
        let allowed = if name == "airflow" {
            TOLERANCE * before
        } else {
            allowed
        };
        prop_assert!(
            (before - after).abs() <= allowed,
            "{name}: {before} became {after}"
        );
    }
    let verdict = |plan: &Plan| {
        let assessment = assess(plan);
        code_length(plan, &assessment.run, &assessment.findings).verdict
    };
    prop_assert_eq!(verdict(plan), verdict(moved));
    Ok(())
}

#[test]
fn a_moved_plan_keeps_its_figures_at_a_stated_airflow() {
    let values = (with_stated_airflow(), moves());
    seeded::check(CASES, &values, |(plan, by)| stays(&plan, by));
}

#[test]
fn a_moved_plan_keeps_its_figures_with_a_blower() {
    let values = (with_blower(), moves());
    seeded::check(CASES, &values, |(plan, by)| stays(&plan, by));
}

#[test]
fn the_example_keeps_its_figures() {
    let plan = plan::example("title".into(), "note".into(), "breast".into());
    for mirrored in [false, true] {
        for quarters in 0..4 {
            let by = Move {
                mirrored,
                quarters,
                shift_m: (3.7, -11.3),
            };
            if let Err(error) = stays(&plan, by) {
                panic!("{by:?}: {error}");
            }
        }
    }
}

/// The moves move: a move that left the plan as it was would prove nothing.
#[test]
fn the_moves_are_what_they_say() {
    let plan = plan::example("title".into(), "note".into(), "breast".into());
    let mirror = Move {
        mirrored: true,
        quarters: 0,
        shift_m: (0.0, 0.0),
    };
    let quarter = Move {
        mirrored: false,
        quarters: 1,
        shift_m: (0.0, 0.0),
    };
    let at = plan.run.points[2].position;
    let mirrored = mirror.plan(&plan).run.points[2].position;
    assert_eq!((mirrored.x, mirrored.y), (-at.x, at.y));
    let turned = quarter.plan(&plan).run.points[2].position;
    assert_eq!((turned.x, turned.y), (-at.y, at.x));
    // The outlet goes with the dryer.
    for by in [mirror, quarter] {
        let (moved, expected) = (by.plan(&plan).dryer.outlet(), by.point(plan.dryer.outlet()));
        assert!(moved.distance(expected).metres() < TOLERANCE);
    }
}
