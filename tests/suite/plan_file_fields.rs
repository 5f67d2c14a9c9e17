//! A field of a plan's file that is unknown, missing or of the wrong kind is refused and named.
//! Source of what is right: the description of version 1 of the format (one JSON object, unit in
//! each field's name, unknown fields refused).
//!
//! The lists of files serve the check of the published schema too.

use crate::example_file::{with, without};
use crate::file_fault::{Case, check, field};
use serde_json::{Value, json};

/// An unknown field is refused at every level, and named.
pub fn unknown_fields() -> Vec<Case> {
    let colour = || json!("blue");
    vec![
        ("plan", with("/colour", colour()), field("colour")),
        ("site", with("/site/colour", colour()), field("site.colour")),
        (
            "exhaust",
            with("/exhaust/colour", colour()),
            field("exhaust.colour"),
        ),
        // Tagged by kind: the reader of the kind buffers its fields, so only the whole is named.
        ("flow", with("/flow/colour", colour()), field("flow")),
        (
            "airflow with a blower",
            with("/flow/kind", json!("typical_blower")),
            field("flow"),
        ),
        ("code", with("/code/colour", colour()), field("code.colour")),
        (
            "wall",
            with("/walls/1/colour", colour()),
            field("walls[1].colour"),
        ),
        (
            "opening",
            with("/openings/0/colour", colour()),
            field("openings[0].colour"),
        ),
        (
            "obstacle",
            with("/obstacles/0/colour", colour()),
            field("obstacles[0].colour"),
        ),
        (
            "dryer",
            with("/dryer/colour", colour()),
            field("dryer.colour"),
        ),
        ("run", with("/run/colour", colour()), field("run.colour")),
        (
            "outlet",
            with("/run/outlet/colour", colour()),
            field("run.outlet.colour"),
        ),
        (
            "elbow",
            with("/run/outlet/elbow/colour", colour()),
            field("run.outlet.elbow.colour"),
        ),
        (
            "point",
            with("/run/points/2/colour", colour()),
            field("run.points[2].colour"),
        ),
        (
            "riser",
            with("/run/points/0/riser/colour", colour()),
            field("run.points[0].riser.colour"),
        ),
        (
            "riser's elbow",
            with("/run/points/0/riser/elbow/colour", colour()),
            field("run.points[0].riser.elbow.colour"),
        ),
        (
            "termination",
            with("/run/termination/colour", colour()),
            field("run.termination.colour"),
        ),
    ]
}

#[test]
fn unknown_fields_are_named() {
    check("unknown fields", unknown_fields());
}

/// A field that is missing is named by what it is missing from, or by itself.
pub fn missing_fields() -> Vec<Case> {
    vec![
        ("title", without("/title"), field(".")),
        ("run", without("/run"), field(".")),
        ("altitude", without("/site/altitude_m"), field("site")),
        (
            "humidity",
            without("/exhaust/relative_humidity"),
            field("exhaust"),
        ),
        ("kind of flow", without("/flow/kind"), field("flow")),
        ("airflow", without("/flow/airflow_m3_per_s"), field("flow")),
        ("wall's id", without("/walls/2/id"), field("walls[2]")),
        (
            "opening's wall",
            without("/openings/0/wall"),
            field("openings[0]"),
        ),
        (
            "point's x",
            without("/run/points/1/x_m"),
            field("run.points[1]"),
        ),
        (
            "point's duct",
            without("/run/points/1/duct"),
            field("run.points[1]"),
        ),
        (
            "radius",
            without("/run/outlet/elbow/centre_line_radius_m"),
            field("run.outlet.elbow"),
        ),
        (
            "rise",
            without("/run/points/0/riser/rise_m"),
            field("run.points[0].riser"),
        ),
        (
            "kind of end",
            without("/run/termination/kind"),
            field("run.termination"),
        ),
    ]
}

#[test]
fn missing_fields_are_named() {
    check("missing fields", missing_fields());
}

pub fn wrong_kinds() -> Vec<Case> {
    vec![
        (
            "number as text",
            with("/site/altitude_m", json!("0")),
            field("site.altitude_m"),
        ),
        ("text as number", with("/title", json!(7)), field("title")),
        ("null", with("/title", Value::Null), field("title")),
        (
            "null for a number",
            with("/dryer/x_m", Value::Null),
            field("dryer.x_m"),
        ),
        ("null for the run", with("/run", Value::Null), field("run")),
        ("list as object", with("/walls", json!({})), field("walls")),
        (
            "number as flag",
            with("/walls/0/outside", json!(1)),
            field("walls[0].outside"),
        ),
        (
            "list as number",
            with("/run/points/0/x_m", json!([1])),
            field("run.points[0].x_m"),
        ),
        (
            "unknown kind",
            with("/run/termination/kind", json!("pipe")),
            field("run.termination.kind"),
        ),
        (
            "unknown flow",
            with("/flow/kind", json!("wind")),
            field("flow.kind"),
        ),
        (
            "unknown rules",
            with("/code/rule_set", json!("irc_1066")),
            field("code.rule_set"),
        ),
        (
            "unknown limit of the maker",
            with("/code/maker", json!({"width_m": 1})),
            field("code.maker.width_m"),
        ),
        (
            "maker's length a text",
            with("/code/maker", json!({"length_m": "35 ft"})),
            field("code.maker.length_m"),
        ),
        (
            "unknown rule seen on site",
            with("/code/seen_on_site", json!(["no_screen", "no_lint"])),
            field("code.seen_on_site[1]"),
        ),
        (
            "unknown duct",
            with("/run/points/0/duct", json!("hose")),
            field("run.points[0].duct"),
        ),
        (
            "unknown energy",
            with("/dryer/energy", json!("steam")),
            field("dryer.energy"),
        ),
        (
            "riser a number",
            with("/run/outlet/riser", json!(1.0)),
            field("run.outlet.riser"),
        ),
    ]
}

#[test]
fn wrong_kinds_are_named() {
    check("wrong kinds", wrong_kinds());
}

/// Of a leg, what it can do without, and the ducts that have a state.
pub fn faults_of_legs() -> Vec<Case> {
    vec![
        (
            "unknown field in an estimate",
            with(
                "/run/points/2/estimate",
                json!({"less_m": 0, "more_m": 1, "colour": "blue"}),
            ),
            field("run.points[2].estimate.colour"),
        ),
        (
            "estimate without less",
            with("/run/points/2/estimate", json!({"more_m": 1})),
            field("run.points[2].estimate"),
        ),
        (
            "estimate a number",
            with("/run/points/2/estimate", json!(0.3)),
            field("run.points[2].estimate"),
        ),
        (
            "half a concealed elbow",
            with(
                "/run/points/3/concealed_elbows",
                json!({"least": 0.5, "most": 2}),
            ),
            field("run.points[3].concealed_elbows.least"),
        ),
        (
            "fewer concealed elbows than none",
            with(
                "/run/points/3/concealed_elbows",
                json!({"least": -1, "most": 2}),
            ),
            field("run.points[3].concealed_elbows.least"),
        ),
        (
            "more concealed elbows than a byte holds",
            with(
                "/run/points/3/concealed_elbows",
                json!({"least": 0, "most": 256}),
            ),
            field("run.points[3].concealed_elbows.most"),
        ),
        (
            "concealed elbows without most",
            with("/run/points/3/concealed_elbows", json!({"least": 1})),
            field("run.points[3].concealed_elbows"),
        ),
        (
            "blockage as text",
            with("/run/points/3/blockage_free_area", json!("half")),
            field("run.points[3].blockage_free_area"),
        ),
        (
            "a leg's diameter as text",
            with("/run/points/2/diameter_m", json!("4 in")),
            field("run.points[2].diameter_m"),
        ),
        (
            "flexible duct without its state",
            with("/run/points/1/duct", json!("semi_rigid")),
            field("run.points[1].duct.semi_rigid"),
        ),
        (
            "rigid duct with a state",
            with(
                "/run/points/1/duct",
                json!({"rigid": {"short_of_full_stretch_percent": 0}}),
            ),
            field("run.points[1].duct.rigid"),
        ),
        (
            "unknown field of foil",
            with(
                "/run/points/1/duct",
                json!({"foil": {"short_of_full_stretch_percent": 0, "colour": "blue"}}),
            ),
            field("run.points[1].duct.foil.colour"),
        ),
        (
            "two ducts at once",
            with(
                "/run/points/1/duct",
                json!({
                    "foil": {"short_of_full_stretch_percent": 0},
                    "semi_rigid": {"short_of_full_stretch_percent": 0},
                }),
            ),
            field("run.points[1].duct"),
        ),
        (
            "flat duct without its depth",
            with(
                "/run/points/1/duct",
                json!({"flat_rectangular": {"width_m": 0.15}}),
            ),
            field("run.points[1].duct.flat_rectangular"),
        ),
    ]
}

/// Of what holds a leg's heat.
pub fn faults_of_insulation() -> Vec<Case> {
    vec![
        (
            "insulation by two measures",
            with(
                "/run/points/3/insulation",
                json!({"thickness_m": 0.05, "resistance_m2_k_per_w": 1}),
            ),
            field("run.points[3].insulation"),
        ),
        (
            "insulation by its price",
            with("/run/points/3/insulation", json!({"price": 5})),
            field("run.points[3].insulation"),
        ),
        (
            "unknown metal",
            with("/run/points/3/metal", json!("lead")),
            field("run.points[3].metal"),
        ),
    ]
}

/// Of the rest of a plan, what it can do without.
pub fn faults_of_optional_fields() -> Vec<Case> {
    vec![
        (
            "unknown input",
            with(
                "/overrides",
                json!([{"input": "luck", "low": 1, "likely": 1, "high": 1, "note": ""}]),
            ),
            field("overrides[0].input"),
        ),
        (
            "an input that is worked out for each element",
            with(
                "/overrides",
                json!([{"input": "smooth_elbow", "low": 1, "likely": 1, "high": 1, "note": ""}]),
            ),
            field("overrides[0].input"),
        ),
        (
            "override without its note",
            with(
                "/overrides",
                json!([{"input": "roof_cap", "low": 1, "likely": 1, "high": 1}]),
            ),
            field("overrides[0]"),
        ),
        (
            "overrides null",
            with("/overrides", Value::Null),
            field("overrides"),
        ),
        (
            "unknown phase",
            with("/exhaust/phase", json!("spin")),
            field("exhaust.phase"),
        ),
        (
            "temperature neither kept nor lost",
            with("/exhaust/along_run", json!(null)),
            field("exhaust.along_run"),
        ),
        (
            "unknown bend method",
            with("/bend_method", json!("guess")),
            field("bend_method"),
        ),
        (
            "free area null",
            with("/run/termination/free_area", Value::Null),
            field("run.termination.free_area"),
        ),
        (
            "house pressure null",
            with("/site/house_pressure_pa", Value::Null),
            field("site.house_pressure_pa"),
        ),
        (
            "make-up area as text",
            with("/site/make_up_free_area_m2", json!("open")),
            field("site.make_up_free_area_m2"),
        ),
    ]
}

#[test]
fn faults_of_optional_fields_are_named() {
    check("legs", faults_of_legs());
    check("insulation", faults_of_insulation());
    check("optional fields", faults_of_optional_fields());
}
