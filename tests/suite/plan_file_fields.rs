//! A field of a plan's file that is unknown, missing or of the wrong kind is refused and named.
//! Source of what is right: the description of version 1 of the format (one JSON object, unit in
//! each field's name, unknown fields refused).

use crate::example_file::{with, without};
use crate::file_fault::{check, field};
use serde_json::{Value, json};

/// An unknown field is refused at every level, and named.
#[test]
fn unknown_fields() {
    let colour = || json!("blue");
    check(
        "unknown fields",
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
        ],
    );
}

/// A field that is missing is named by what it is missing from, or by itself.
#[test]
fn missing_fields() {
    check(
        "missing fields",
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
        ],
    );
}

#[test]
fn wrong_kinds() {
    check(
        "wrong kinds",
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
        ],
    );
}
