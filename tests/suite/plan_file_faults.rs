//! A file that is no plan, and values that a plan cannot hold, end in an error that names them.
//! Source of what is right: the description of version 1 of the format (one JSON object, unit in
//! each field's name, unknown fields refused) and RFC 8259 for JSON itself.
//!
//! The lists of files serve the check of the published schema too.

use crate::example_file::{example, replaced, with, without};
use crate::file_fault::{Case, Fault, check, fault, range};
use elbowroom::plan::write;
use serde_json::{Value, json};

/// The most that is read, bytes: 4 MiB.
const LARGEST: usize = 4 << 20;

pub fn not_of_this_format() -> Vec<Case> {
    let example = write(&example());
    let half = example.as_bytes()[..example.len() / 2].to_vec();
    let mut latin_1 = example.clone().into_bytes();
    latin_1[20] = 0xe9;
    let deep = format!("{}{}", "[".repeat(100_000), "]".repeat(100_000));
    vec![
        ("nothing", Vec::new(), Fault::NotJson),
        ("blanks", b" \n\t".to_vec(), Fault::NotJson),
        ("not UTF-8", latin_1, Fault::NotText),
        ("UTF-16", b"\xff\xfe{\0}\0".to_vec(), Fault::NotText),
        (
            "a picture",
            b"\x89PNG\r\n\x1a\n\0\0".to_vec(),
            Fault::NotText,
        ),
        ("plain words", b"a plan of mine".to_vec(), Fault::NotJson),
        ("cut in half", half, Fault::NotJson),
        (
            "more after the end",
            format!("{example}x").into_bytes(),
            Fault::NotJson,
        ),
        (
            "two documents",
            format!("{example}{example}").into_bytes(),
            Fault::NotJson,
        ),
        (
            "a comma too many",
            replaced("0.05", "0.05,"),
            Fault::NotJson,
        ),
        ("1e999", replaced("0.05", "1e999"), Fault::NotJson),
        ("NaN", replaced("0.05", "NaN"), Fault::NotJson),
        ("deep nesting", deep.into_bytes(), Fault::NotJson),
        (
            "deep nesting of objects in a field",
            with_deep_note(),
            Fault::NotJson,
        ),
        ("over 4 MiB", vec![b'['; LARGEST + 1], Fault::TooLarge),
        ("null", b"null".to_vec(), Fault::NotAPlan),
        ("a list", b"[]".to_vec(), Fault::NotAPlan),
        ("an empty object", b"{}".to_vec(), Fault::NotAPlan),
        ("no format", without("/format"), Fault::NotAPlan),
        (
            "another format",
            with("/format", json!("drawing")),
            Fault::NotAPlan,
        ),
        (
            "format in capitals",
            with("/format", json!("Elbowroom-plan")),
            Fault::NotAPlan,
        ),
        (
            "format a list",
            with("/format", json!(["elbowroom-plan"])),
            Fault::NotAPlan,
        ),
    ]
}

#[test]
fn what_is_no_json_object_of_this_format() {
    check("not of this format", not_of_this_format());
}

fn with_deep_note() -> Vec<u8> {
    let deep = format!("{}0{}", "{\"a\":".repeat(5000), "}".repeat(5000));
    replaced("0.05", &deep)
}

pub fn other_versions() -> Vec<Case> {
    let version = |found: &str| Fault::Version(found.to_owned());
    vec![
        ("2", with("/version", json!(2)), version("2")),
        ("absent", without("/version"), version("")),
        ("in quotes", with("/version", json!("1")), version("\"1\"")),
        ("0", with("/version", json!(0)), version("0")),
        ("negative", with("/version", json!(-1)), version("-1")),
        ("null", with("/version", Value::Null), version("null")),
        ("not whole", with("/version", json!(1.5)), version("1.5")),
    ]
}

#[test]
fn other_versions_are_refused() {
    check("versions", other_versions());
}

pub fn numbers_out_of_range() -> Vec<Case> {
    vec![
        (
            "too large",
            with("/dryer/x_m", json!(1e9)),
            range("dryer.x_m"),
        ),
        (
            "1e308",
            with("/walls/0/from_x_m", json!(1e308)),
            range("walls[0].from_x_m"),
        ),
        (
            "negative size",
            with("/dryer/width_m", json!(-0.7)),
            range("dryer.width_m"),
        ),
        (
            "no size",
            with("/obstacles/0/depth_m", json!(0)),
            range("obstacles[0].depth_m"),
        ),
        (
            "no airflow",
            with("/flow/airflow_m3_per_s", json!(0)),
            range("flow.airflow_m3_per_s"),
        ),
        (
            "humidity in percent",
            with("/exhaust/relative_humidity", json!(30)),
            range("exhaust.relative_humidity"),
        ),
        (
            "kelvins",
            with("/site/outdoor_temperature_degc", json!(278.0)),
            range("site.outdoor_temperature_degc"),
        ),
        (
            "no diameter",
            with("/run/diameter_m", json!(0.0)),
            range("run.diameter_m"),
        ),
        (
            "diameter in inches",
            with("/run/diameter_m", json!(4)),
            range("run.diameter_m"),
        ),
        (
            "negative radius",
            with("/run/outlet/elbow/centre_line_radius_m", json!(-0.1)),
            range("run.outlet.elbow.centre_line_radius_m"),
        ),
        (
            "radius after a riser",
            with("/run/points/0/riser/elbow/centre_line_radius_m", json!(9)),
            range("run.points[0].riser.elbow.centre_line_radius_m"),
        ),
        (
            "rise",
            with("/run/points/0/riser/rise_m", json!(31)),
            range("run.points[0].riser.rise_m"),
        ),
        (
            "under the floor",
            with("/dryer/outlet_height_m", json!(-0.1)),
            range("dryer.outlet_height_m"),
        ),
        (
            "turned twice",
            with("/dryer/turned_deg", json!(720)),
            range("dryer.turned_deg"),
        ),
        (
            "altitude",
            with("/site/altitude_m", json!(8848)),
            range("site.altitude_m"),
        ),
        (
            "opening's offset",
            with("/openings/0/offset_m", json!(-0.5)),
            range("openings[0].offset_m"),
        ),
        (
            "too many",
            with("/obstacles", obstacles(10_001)),
            range("obstacles"),
        ),
    ]
}

#[test]
fn numbers_out_of_range_are_named() {
    check("numbers out of range", numbers_out_of_range());
    assert_eq!(fault(&with("/obstacles", obstacles(10_000))), Fault::None);
}

fn obstacles(count: usize) -> Value {
    (0..count)
        .map(|index| {
            json!({"id": index.to_string(), "name": "", "x_m": 0, "y_m": 0, "width_m": 1, "depth_m": 1})
        })
        .collect()
}

/// Of a leg, what it can do without, and the ducts that have a state.
pub fn legs_out_of_range() -> Vec<Case> {
    let semi_rigid =
        |percent: f64| json!({"semi_rigid": {"short_of_full_stretch_percent": percent}});
    let flat =
        |width: f64, depth: f64| json!({"flat_rectangular": {"width_m": width, "depth_m": depth}});
    let estimate = |less: f64, more: f64| json!({"less_m": less, "more_m": more});
    vec![
        (
            "duct pushed to nothing",
            with("/run/points/1/duct", semi_rigid(80.5)),
            range("run.points[1].duct.semi_rigid.short_of_full_stretch_percent"),
        ),
        (
            "duct pulled past its full stretch",
            with(
                "/run/points/1/duct",
                json!({"foil": {"short_of_full_stretch_percent": -1}}),
            ),
            range("run.points[1].duct.foil.short_of_full_stretch_percent"),
        ),
        (
            "flat duct in inches",
            with("/run/points/0/duct", flat(6.0, 0.05)),
            range("run.points[0].duct.flat_rectangular.width_m"),
        ),
        (
            "flat duct without depth",
            with("/run/points/0/duct", flat(0.15, 0.0)),
            range("run.points[0].duct.flat_rectangular.depth_m"),
        ),
        (
            "a leg's diameter",
            with("/run/points/2/diameter_m", json!(0.02)),
            range("run.points[2].diameter_m"),
        ),
        (
            "negative estimate",
            with("/run/points/2/estimate", estimate(-0.1, 0.1)),
            range("run.points[2].estimate.less_m"),
        ),
        (
            "estimate in millimetres",
            with("/run/points/2/estimate", estimate(0.0, 300.0)),
            range("run.points[2].estimate.more_m"),
        ),
        (
            "too many concealed elbows",
            with(
                "/run/points/3/concealed_elbows",
                json!({"least": 0, "most": 13}),
            ),
            range("run.points[3].concealed_elbows.most"),
        ),
        (
            "least elbows over most",
            with(
                "/run/points/3/concealed_elbows",
                json!({"least": 3, "most": 2}),
            ),
            range("run.points[3].concealed_elbows.least"),
        ),
        (
            "wholly blocked",
            with("/run/points/3/blockage_free_area", json!(0)),
            range("run.points[3].blockage_free_area"),
        ),
        (
            "blockage in percent",
            with("/run/points/3/blockage_free_area", json!(50)),
            range("run.points[3].blockage_free_area"),
        ),
        (
            "insulation in millimetres",
            with("/run/points/3/insulation", json!({"thickness_m": 50})),
            range("run.points[3].insulation.thickness_m"),
        ),
        (
            "insulation that holds nothing",
            with(
                "/run/points/3/insulation",
                json!({"resistance_m2_k_per_w": 0}),
            ),
            range("run.points[3].insulation.resistance_m2_k_per_w"),
        ),
        (
            "leak in cm²",
            with("/run/points/3/leak_free_area_m2", json!(5)),
            range("run.points[3].leak_free_area_m2"),
        ),
    ]
}

/// Of the rest of a plan, what it can do without.
pub fn optional_numbers_out_of_range() -> Vec<Case> {
    vec![
        (
            "a gale in the house",
            with("/site/house_pressure_pa", json!(-100.5)),
            range("site.house_pressure_pa"),
        ),
        (
            "make-up air through nothing",
            with("/site/make_up_free_area_m2", json!(0)),
            range("site.make_up_free_area_m2"),
        ),
        (
            "make-up area in square inches",
            with("/site/make_up_free_area_m2", json!(24)),
            range("site.make_up_free_area_m2"),
        ),
        (
            "flap shut",
            with("/run/termination/free_area", json!(0.01)),
            range("run.termination.free_area"),
        ),
        (
            "more than all free",
            with("/run/termination/free_area", json!(1.5)),
            range("run.termination.free_area"),
        ),
        (
            "negative override",
            with("/overrides", set("roof_cap", [-1.0, 2.0, 3.0])),
            range("overrides[0].low"),
        ),
        (
            "override past all bounds",
            with("/overrides", set("roof_cap", [1.0, 2.0, 2e6])),
            range("overrides[0].high"),
        ),
        (
            "one input set twice",
            with(
                "/overrides",
                json!([
                    {"input": "roof_cap", "low": 1, "likely": 2, "high": 3, "note": ""},
                    {"input": "roof_cap", "low": 1, "likely": 2.5, "high": 3, "note": ""}
                ]),
            ),
            Fault::NotSettable("overrides[1].input".to_owned()),
        ),
        (
            "more pictures than go into a file, over two visits",
            with("/visits", json!([visit("v1", 7), visit("v2", 6)])),
            Fault::TooManyPictures("visits[1].pictures".to_owned(), 13),
        ),
        (
            "low over likely",
            with("/overrides", set("roof_cap", [2.5, 2.0, 3.0])),
            range("overrides[0].low"),
        ),
        (
            "high below likely",
            with("/overrides", set("roof_cap", [1.0, 2.0, 1.5])),
            range("overrides[0].high"),
        ),
    ]
}

/// One override, as the list of them.
fn set(input: &str, [low, likely, high]: [f64; 3]) -> Value {
    json!([{"input": input, "low": low, "likely": likely, "high": high, "note": ""}])
}

/// A visit with so many pictures.
fn visit(id: &str, pictures: usize) -> Value {
    let picture = json!({"taken": "after", "coding": "jpeg", "data_base64": "/9j/4AAQ"});
    json!({"id": id, "entries": [], "pictures": vec![picture; pictures]})
}

#[test]
fn optional_numbers_out_of_range_are_named() {
    check("legs out of range", legs_out_of_range());
    check(
        "optional numbers out of range",
        optional_numbers_out_of_range(),
    );
}

pub fn bad_ids() -> Vec<Case> {
    let bad = |path: &str| Fault::BadId(path.to_owned());
    vec![
        (
            "twice",
            with("/walls/1/id", json!("w1")),
            bad("walls[1].id"),
        ),
        (
            "point twice",
            with("/run/points/3/id", json!("p1")),
            bad("run.points[3].id"),
        ),
        (
            "empty",
            with("/obstacles/0/id", json!("")),
            bad("obstacles[0].id"),
        ),
        (
            "too long",
            with("/openings/0/id", json!("o".repeat(41))),
            bad("openings[0].id"),
        ),
        (
            "with a blank",
            with("/walls/0/id", json!("w 1")),
            bad("walls[0].id"),
        ),
        (
            "with marks",
            with("/walls/0/id", json!("<w>")),
            bad("walls[0].id"),
        ),
        (
            "no such wall",
            with("/openings/1/wall", json!("w9")),
            Fault::NoSuchWall("openings[1].wall".to_owned()),
        ),
        (
            "no walls",
            with("/walls", json!([])),
            Fault::NoSuchWall("openings[0].wall".to_owned()),
        ),
        ("no points", with("/run/points", json!([])), Fault::NoPoints),
    ]
}

#[test]
fn ids_and_what_they_name() {
    check("ids", bad_ids());
}
