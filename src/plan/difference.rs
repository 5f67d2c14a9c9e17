//! What differs between two plans, one change at a time: whoever sets two runs side by side must know
//! how many things they changed.

use super::{
    Duct, Elbow, ElbowKind, ElementId, Insulation, NodeId, Part, Plan, RunPath, RunPoint,
    TerminationKind,
};
use crate::units::{Length, Pressure, Temperature};

/// One thing that differs. Corners and the legs that arrive at them are counted from 1 along the second
/// plan's run; 0 is the dryer's outlet.
#[derive(Debug, Clone, PartialEq)]
pub enum Difference {
    /// Corners that only the second has.
    MoreCorners(usize),
    /// Corners that only the first has.
    FewerCorners(usize),
    /// A corner stands elsewhere.
    Moved {
        /// Which.
        corner: usize,
        /// Whether it is the run's end.
        is_end: bool,
    },
    /// An elbow is of another kind or radius.
    Elbow {
        /// At which corner.
        corner: usize,
        /// Before.
        from: Elbow,
        /// After.
        to: Elbow,
    },
    /// A riser is there, gone or of another height.
    Rise {
        /// At which corner.
        corner: usize,
        /// Before; none for none.
        from: Option<Length>,
        /// After; none for none.
        to: Option<Length>,
    },
    /// A leg's duct.
    Duct {
        /// To which corner it leads.
        leg: usize,
        /// Before.
        from: Duct,
        /// After.
        to: Duct,
    },
    /// Something else about a leg.
    Leg {
        /// To which corner it leads.
        leg: usize,
        /// What.
        what: LegDifference,
    },
    /// What ends the run.
    Termination(TerminationKind, TerminationKind),
    /// The free share of its opening.
    TerminationFree(f64, f64),
    /// The run's diameter.
    Diameter(Length, Length),
    /// Where the dryer stands, how it is turned or how large it is, or its outlet.
    Dryer,
    /// The exhaust's temperature at the outlet.
    ExhaustTemperature(Temperature, Temperature),
    /// Its relative humidity.
    ExhaustHumidity(f64, f64),
    /// Whether it cools along the run, or its phase.
    Cooling,
    /// The outdoor air's temperature.
    OutdoorTemperature(Temperature, Temperature),
    /// Its relative humidity.
    OutdoorHumidity(f64, f64),
    /// Height above the sea.
    Altitude(Length, Length),
    /// The house's pressure less the outdoors'.
    HousePressure(Pressure, Pressure),
    /// The opening through which the room draws its air.
    MakeUpAir,
    /// What sets the airflow.
    Flow,
    /// The method for smooth elbows.
    BendMethod,
    /// Values set in place of the project's own.
    OwnValues,
    /// The code, or how it is read.
    Code,
    /// Walls, openings, obstacles, zones or the ceiling.
    Room,
}

/// What differs about a leg beside its duct and its ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LegDifference {
    /// Its own diameter.
    Diameter,
    /// How sure its length is.
    Estimate,
    /// What is hidden in it.
    Concealed,
    /// A blockage: the free share of its area, before and after; 1 for none.
    Blockage(f64, f64),
    /// A leak where it begins.
    Leak,
    /// The wall box that it ends in.
    WallBox,
    /// Its insulation, or the metal of its wall.
    Wall,
}

/// Every thing that differs between `first` and `second`, along the run and then about it. Names,
/// notes, pictures, visits and what else moves no figure are left out.
pub fn differences(first: &Plan, second: &Plan) -> Vec<Difference> {
    let mut found = Vec::new();
    corners(first, second, &mut found);
    let outlet = (&first.run.outlet, &second.run.outlet);
    fittings(first, second, &NodeId::Outlet, 0, outlet, &mut found);
    for (index, after) in second.run.points.iter().enumerate() {
        let Some(before) = first.run.index_of(&after.id) else {
            continue;
        };
        let before = &first.run.points[before];
        leg(before, after, index + 1, &mut found);
        let node = NodeId::Point(after.id.clone());
        let pair = (&before.fitting, &after.fitting);
        fittings(first, second, &node, index + 1, pair, &mut found);
    }
    about_the_run(first, second, &mut found);
    found
}

fn corners(first: &Plan, second: &Plan, found: &mut Vec<Difference>) {
    let only_in = |one: &Plan, other: &Plan| {
        let points = one.run.points.iter();
        points
            .filter(|point| other.run.index_of(&point.id).is_none())
            .count()
    };
    match only_in(second, first) {
        0 => {}
        count => found.push(Difference::MoreCorners(count)),
    }
    match only_in(first, second) {
        0 => {}
        count => found.push(Difference::FewerCorners(count)),
    }
    let last = second.run.points.len();
    for (index, after) in second.run.points.iter().enumerate() {
        let before = first.run.index_of(&after.id);
        if before.is_some_and(|before| first.run.points[before].position != after.position) {
            found.push(Difference::Moved {
                corner: index + 1,
                is_end: index + 1 == last,
            });
        }
    }
}

/// The elbows and the riser at a node; an elbow that neither run has built says nothing.
fn fittings(
    first: &Plan,
    second: &Plan,
    node: &NodeId,
    corner: usize,
    (before, after): (&super::Fitting, &super::Fitting),
    found: &mut Vec<Difference>,
) {
    let is_built = |part: Part| {
        let id = ElementId::new(node, part);
        let has = |plan: &Plan| RunPath::of(plan).pieces.iter().any(|piece| piece.id == id);
        has(first) && has(second)
    };
    let (from, to) = (before.elbow, after.elbow);
    if !is_same_elbow(from, to) && is_built(Part::Elbow) {
        found.push(Difference::Elbow { corner, from, to });
    }
    let rise = |fitting: &super::Fitting| fitting.riser.map(|riser| riser.rise);
    if rise(before) != rise(after) {
        found.push(Difference::Rise {
            corner,
            from: rise(before),
            to: rise(after),
        });
    }
    if let (Some(before), Some(after)) = (before.riser, after.riser)
        && !is_same_elbow(before.elbow, after.elbow)
        && is_built(Part::ElbowAfterRiser)
    {
        let (from, to) = (before.elbow, after.elbow);
        found.push(Difference::Elbow { corner, from, to });
    }
}

fn is_same_elbow(one: Elbow, other: Elbow) -> bool {
    let has_no_radius = one.kind == ElbowKind::SharpMitre;
    one.kind == other.kind && (has_no_radius || one.radius == other.radius)
}

fn leg(before: &RunPoint, after: &RunPoint, leg: usize, found: &mut Vec<Difference>) {
    let (from, to) = (before.duct, after.duct);
    if from != to {
        found.push(Difference::Duct { leg, from, to });
    }
    let (one, other) = (&before.leg, &after.leg);
    let wall = |leg: &super::LegState| -> (Option<Insulation>, super::Metal) {
        (leg.insulation, leg.metal)
    };
    let free = |leg: &super::LegState| leg.blockage_free_area.unwrap_or(1.0);
    let differ = [
        (one.diameter != other.diameter, LegDifference::Diameter),
        (one.estimate != other.estimate, LegDifference::Estimate),
        (one.concealed != other.concealed, LegDifference::Concealed),
        (
            one.blockage_free_area != other.blockage_free_area,
            LegDifference::Blockage(free(one), free(other)),
        ),
        (
            one.leak_free_area_m2 != other.leak_free_area_m2,
            LegDifference::Leak,
        ),
        (
            one.ends_in_wall_box != other.ends_in_wall_box,
            LegDifference::WallBox,
        ),
        (wall(one) != wall(other), LegDifference::Wall),
    ];
    let differ = differ.into_iter().filter(|(differs, _)| *differs);
    found.extend(differ.map(|(_, what)| Difference::Leg { leg, what }));
}

#[allow(clippy::float_cmp, reason = "what was not changed is the very same")]
fn about_the_run(first: &Plan, second: &Plan, found: &mut Vec<Difference>) {
    let (end, other_end) = (first.run.termination, second.run.termination);
    let (air, other_air) = (&first.exhaust, &second.exhaust);
    let (site, other_site) = (&first.site, &second.site);
    let dryer = super::Dryer {
        energy: second.dryer.energy,
        stacked: second.dryer.stacked,
        ..first.dryer
    };
    let room = |plan: &Plan| {
        (
            plan.walls.clone(),
            plan.openings.clone(),
            plan.obstacles.clone(),
            plan.zones.clone(),
            plan.ceiling_height,
        )
    };
    let code = |plan: &Plan| {
        let code = plan.code.clone();
        (code.rule_set, code.path_through_fittings_counts, code.maker)
    };
    let differ = [
        (
            end.kind != other_end.kind,
            Difference::Termination(end.kind, other_end.kind),
        ),
        (
            end.free_area != other_end.free_area,
            Difference::TerminationFree(end.free_area, other_end.free_area),
        ),
        (
            first.run.diameter != second.run.diameter,
            Difference::Diameter(first.run.diameter, second.run.diameter),
        ),
        (dryer != second.dryer, Difference::Dryer),
        (
            air.temperature != other_air.temperature,
            Difference::ExhaustTemperature(air.temperature, other_air.temperature),
        ),
        (
            air.relative_humidity != other_air.relative_humidity,
            Difference::ExhaustHumidity(air.relative_humidity, other_air.relative_humidity),
        ),
        (
            (air.along_run, air.phase) != (other_air.along_run, other_air.phase),
            Difference::Cooling,
        ),
        (
            site.outdoor_temperature != other_site.outdoor_temperature,
            Difference::OutdoorTemperature(
                site.outdoor_temperature,
                other_site.outdoor_temperature,
            ),
        ),
        (
            site.outdoor_relative_humidity != other_site.outdoor_relative_humidity,
            Difference::OutdoorHumidity(
                site.outdoor_relative_humidity,
                other_site.outdoor_relative_humidity,
            ),
        ),
        (
            site.altitude != other_site.altitude,
            Difference::Altitude(site.altitude, other_site.altitude),
        ),
        (
            site.house_pressure != other_site.house_pressure,
            Difference::HousePressure(site.house_pressure, other_site.house_pressure),
        ),
        (
            site.make_up_free_area_m2 != other_site.make_up_free_area_m2,
            Difference::MakeUpAir,
        ),
        (first.flow != second.flow, Difference::Flow),
        (
            first.bend_method != second.bend_method,
            Difference::BendMethod,
        ),
        (first.overrides != second.overrides, Difference::OwnValues),
        (code(first) != code(second), Difference::Code),
        (room(first) != room(second), Difference::Room),
    ];
    let differ = differ.into_iter().filter(|(differs, _)| *differs);
    found.extend(differ.map(|(_, what)| what));
}
