//! Each bound of the published schema is the reader's: at it, one step past it, and anywhere else.
//! Source of what is right: two statements of one limit, the schema's and the reader's, made apart.

use crate::schema::{SCHEMA, agreement, all_places, fullest};
use crate::seeded;
use crate::tally::Tally;
use elbowroom::plan::Field;
use proptest::prelude::*;
use serde_json::{Value, json};

/// The most that is read, bytes: 4 MiB.
const LARGEST: usize = 4 << 20;

/// Which field each number of the fullest plan is of; `*` stands for a place in a list.
const FIELDS: [(&str, Field); 71] = [
    ("/site/altitude_m", Field::ALTITUDE),
    ("/site/outdoor_temperature_degc", Field::OUTDOOR_TEMPERATURE),
    ("/site/outdoor_relative_humidity", Field::HUMIDITY),
    ("/site/house_pressure_pa", Field::HOUSE_PRESSURE),
    ("/site/make_up_free_area_m2", Field::FREE_AREA),
    ("/exhaust/temperature_degc", Field::EXHAUST_TEMPERATURE),
    ("/exhaust/relative_humidity", Field::HUMIDITY),
    ("/flow/airflow_m3_per_s", Field::AIRFLOW),
    ("/code/maker/length_m", Field::MAKER_LENGTH),
    ("/code/maker/deduction_45_m", Field::MAKER_DEDUCTION),
    ("/code/maker/deduction_90_m", Field::MAKER_DEDUCTION),
    ("/code/maker/back_pressure_pa", Field::MAKER_BACK_PRESSURE),
    ("/overrides/0/low", Field::OVERRIDE),
    ("/overrides/1/likely", Field::OVERRIDE),
    ("/overrides/2/high", Field::OVERRIDE),
    ("/walls/*/from_x_m", Field::COORDINATE),
    ("/walls/*/from_y_m", Field::COORDINATE),
    ("/walls/*/to_x_m", Field::COORDINATE),
    ("/walls/*/to_y_m", Field::COORDINATE),
    ("/walls/*/thickness_m", Field::THICKNESS),
    ("/openings/*/offset_m", Field::OFFSET),
    ("/openings/*/width_m", Field::SIZE),
    ("/obstacles/*/x_m", Field::COORDINATE),
    ("/obstacles/*/y_m", Field::COORDINATE),
    ("/obstacles/*/width_m", Field::SIZE),
    ("/obstacles/*/depth_m", Field::SIZE),
    ("/dryer/x_m", Field::COORDINATE),
    ("/dryer/y_m", Field::COORDINATE),
    ("/dryer/width_m", Field::SIZE),
    ("/dryer/depth_m", Field::SIZE),
    ("/dryer/turned_deg", Field::TURN),
    ("/ceiling_height_m", Field::CEILING),
    ("/obstacles/*/kind/framing/spacing_m", Field::SPACING),
    ("/zones/*/temperature_degc", Field::ZONE_TEMPERATURE),
    ("/zones/*/x_m", Field::COORDINATE),
    ("/zones/*/y_m", Field::COORDINATE),
    ("/zones/*/width_m", Field::SIZE),
    ("/zones/*/depth_m", Field::SIZE),
    ("/picture/x_m", Field::COORDINATE),
    ("/picture/y_m", Field::COORDINATE),
    ("/picture/width_m", Field::SIZE),
    ("/picture/depth_m", Field::SIZE),
    ("/dryer/outlet_height_m", Field::HEIGHT),
    ("/run/diameter_m", Field::DIAMETER),
    ("/run/points/*/x_m", Field::COORDINATE),
    ("/run/points/*/y_m", Field::COORDINATE),
    ("/run/points/*/diameter_m", Field::DIAMETER),
    ("/run/points/*/estimate/less_m", Field::ESTIMATE),
    ("/run/points/*/estimate/more_m", Field::ESTIMATE),
    (
        "/run/points/*/concealed_elbows/least",
        Field::CONCEALED_ELBOWS,
    ),
    (
        "/run/points/*/concealed_elbows/most",
        Field::CONCEALED_ELBOWS,
    ),
    ("/run/points/*/blockage_free_area", Field::FREE_SHARE),
    ("/run/points/*/leak_free_area_m2", Field::LEAK_AREA),
    (
        "/run/points/*/insulation/thickness_m",
        Field::INSULATION_THICKNESS,
    ),
    (
        "/run/points/*/insulation/resistance_m2_k_per_w",
        Field::INSULATION_RESISTANCE,
    ),
    ("/run/termination/free_area", Field::FREE_SHARE),
    (
        "*/short_of_full_stretch_percent",
        Field::SHORT_OF_FULL_STRETCH,
    ),
    ("*/centre_line_radius_m", Field::RADIUS),
    ("*/rise_m", Field::RISE),
    ("*/flat_rectangular/*", Field::RECTANGULAR_SIDE),
    ("*/static_pressure/pressure_pa", Field::READ_PRESSURE),
    ("*/velocity/points_m_per_s/*", Field::READ_VELOCITY),
    ("*/velocity_pressure/points_pa/*", Field::READ_PRESSURE),
    ("*/temperature/temperature_degc", Field::READ_TEMPERATURE),
    ("*/resolution_pa", Field::READ_ERROR),
    ("*/tolerance_pa", Field::READ_ERROR),
    ("*/resolution_m_per_s", Field::READ_ERROR),
    ("*/tolerance_m_per_s", Field::READ_ERROR),
    ("*/resolution_k", Field::READ_ERROR),
    ("*/tolerance_k", Field::READ_ERROR),
    ("/handover/stock_lengths_m/*", Field::STOCK_LENGTH),
];

/// Whether `pattern` is of the number at `pointer`.
fn is_of(pattern: &str, pointer: &str) -> bool {
    let mut places = pointer.rsplit('/');
    let mut parts = pattern.rsplit('/');
    if let Some(end) = pattern.strip_prefix("*/") {
        parts = end.rsplit('/');
    } else if pattern.split('/').count() != pointer.split('/').count() {
        return false;
    }
    parts.all(|part| {
        places
            .next()
            .is_some_and(|place| part == "*" || part == place)
    })
}

/// The numbers of the fullest plan, each with its field. Of the overrides' values one of each kind
/// is free to go from end to end of it; the others stand in order.
fn bounded(document: &Value) -> Vec<(String, Field)> {
    let mut found = Vec::new();
    for pointer in all_places(document) {
        let fields = FIELDS
            .iter()
            .filter(|(pattern, _)| is_of(pattern, &pointer));
        let fields: Vec<Field> = fields.map(|(_, field)| *field).collect();
        let is_number = document.pointer(&pointer).unwrap().is_number();
        let needs_one = is_number && pointer != "/version" && !pointer.starts_with("/overrides/");
        assert!(
            fields.len() <= 1 && (is_number || fields.is_empty()),
            "{pointer} has {fields:?}"
        );
        assert!(!fields.is_empty() || !needs_one, "{pointer} has no field");
        found.extend(fields.into_iter().map(|field| (pointer.clone(), field)));
    }
    for (pattern, _) in FIELDS {
        let stands = found.iter().any(|(pointer, _)| is_of(pattern, pointer));
        assert!(stands, "{pattern} is of no number");
    }
    found
}

/// Whether both take the plan with `value` at `pointer`.
fn judged(document: &Value, pointer: &str, value: Value) -> Result<bool, String> {
    let mut document = document.clone();
    *document.pointer_mut(pointer).unwrap() = value;
    agreement(&document)
}

#[test]
fn each_bound_is_the_readers() {
    let document = fullest();
    let mut tally = Tally::new("bounds");
    for (pointer, Field { least, greatest }) in bounded(&document) {
        let whole = document.pointer(&pointer).unwrap().is_u64();
        #[allow(clippy::cast_possible_truncation, reason = "a count of elbows")]
        let number = |value: f64| {
            if whole {
                json!(value as i64)
            } else {
                json!(value)
            }
        };
        let (below, above) = if whole {
            (least - 1.0, greatest + 1.0)
        } else {
            (least.next_down(), greatest.next_up())
        };
        for (value, inside) in [
            (least, true),
            (greatest, true),
            (below, false),
            (above, false),
        ] {
            let label = format!("{pointer} of {value:e}");
            tally.equal(
                label,
                &judged(&document, &pointer, number(value)),
                &Ok(inside),
            );
        }
    }
    tally.finish(4 * FIELDS.len());
}

/// Of a field's span from its least to its greatest: inside it, just outside, and far off.
fn share() -> impl Strategy<Value = f64> {
    prop_oneof![
        4 => 0.0..=1.0,
        2 => -1e-3..0.0,
        2 => 1.0..1.001,
        1 => -1e3..1e3,
    ]
}

#[test]
fn any_number_is_judged_alike() {
    let document = fullest();
    let mut bounded = bounded(&document);
    // Counts are whole; the test below goes through all of them.
    bounded.retain(|(pointer, _)| !document.pointer(pointer).unwrap().is_u64());
    let count = bounded.len();
    let inside = core::cell::Cell::new(0_u32);
    seeded::check(3000, &(0..count, share()), |(index, share)| {
        let (pointer, field) = &bounded[index];
        let value = field.least + share * (field.greatest - field.least);
        let expected = field.holds(value);
        inside.set(inside.get() + u32::from(expected));
        prop_assert_eq!(
            judged(&document, pointer, json!(value)),
            Ok(expected),
            "{} of {:e}",
            pointer,
            value
        );
        Ok(())
    });
    assert!(inside.get() > 1000, "only {} inside", inside.get());
}

#[test]
fn any_count_of_concealed_elbows_is_judged_alike() {
    let document = fullest();
    let mut tally = Tally::new("concealed elbows");
    for least in -2..=15 {
        for most in -2..=15 {
            let elbows = json!({"least": least, "most": most});
            let judged = judged(&document, "/run/points/0/concealed_elbows", elbows);
            let right = 0 <= least && least <= most && most <= 12;
            tally.equal(format!("{least} to {most}"), &judged, &Ok(right));
        }
    }
    tally.finish(18 * 18);
}

/// As many things as the reader lets stand, and one more.
#[test]
fn each_list_has_the_readers_length() {
    let elbow = json!({"kind": "smooth", "centre_line_radius_m": 1});
    let lists = [
        (
            "/overrides",
            json!({"input": "blockage", "low": 0, "likely": 0, "high": 0, "note": ""}),
            0,
            18,
        ),
        (
            "/walls",
            json!({"from_x_m": 0, "from_y_m": 0, "to_x_m": 0, "to_y_m": 0, "thickness_m": 1,
                "outside": true}),
            0,
            10_000,
        ),
        (
            "/openings",
            json!({"wall": "w1", "kind": "door", "offset_m": 0, "width_m": 1}),
            0,
            10_000,
        ),
        (
            "/obstacles",
            json!({"name": "", "x_m": 0, "y_m": 0, "width_m": 1, "depth_m": 1}),
            0,
            10_000,
        ),
        (
            "/zones",
            json!({"kind": "attic", "temperature_degc": 0, "x_m": 0, "y_m": 0, "width_m": 1,
                "depth_m": 1}),
            0,
            10_000,
        ),
        ("/visits", json!({"entries": []}), 0, 200),
        (
            "/run/points",
            json!({"x_m": 0, "y_m": 0, "duct": "rigid", "elbow": elbow}),
            1,
            10_000,
        ),
    ];
    let mut document = fullest();
    document["openings"] = json!([]);
    let inputs: Vec<Value> = SCHEMA["$defs"]["input"]["oneOf"]
        .as_array()
        .unwrap()
        .iter()
        .map(|input| input["const"].clone())
        .collect();
    let mut tally = Tally::new("lengths of lists");
    for (pointer, item, least, most) in lists {
        for (count, right) in [(0, least == 0), (1, true), (most, true), (most + 1, false)] {
            let numbered = |index: usize| {
                let mut item = item.clone();
                if pointer == "/overrides" {
                    // Each once; one more than there are has to be one of them again.
                    item["input"] = inputs[index % inputs.len()].clone();
                } else {
                    item["id"] = json!(index.to_string());
                }
                item
            };
            let items: Value = (0..count).map(numbered).collect();
            // Else the length of the file would stand in for that of the list.
            assert!(items.to_string().len() + 20_000 < LARGEST, "{pointer}");
            let label = format!("{count} {pointer}");
            tally.equal(label, &judged(&document, pointer, items), &Ok(right));
        }
    }
    tally.finish(4 * 7);
}
