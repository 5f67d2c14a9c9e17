//! The published JSON Schema of a plan's file, `public/plan.schema.json`, and the reader of plans say
//! the same of every file, but for what a schema cannot say.
//!
//! Source of what is right: JSON Schema, draft 2020-12, as the crate `jsonschema` carries it out with
//! the draft's own meta-schema. It knows nothing of the reader; where the two differ, one is wrong.

use crate::example_file::{document, example, with_stated_airflow};
use crate::file_fault::{Case, Fault};
use crate::tally::Tally;
use crate::{plan_file_faults, plan_file_fields, reference};
use elbowroom::plan::{self, Field, FileError, ValueError, read, write};
use jsonschema::Validator;
use serde_json::{Value, json};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

/// Fewer than the plans of the reference sets.
const REFERENCE_PLANS: usize = 100;
pub static SCHEMA: LazyLock<Value> = LazyLock::new(|| {
    serde_json::from_str(include_str!("../../public/plan.schema.json")).expect("JSON")
});
pub static VALIDATOR: LazyLock<Validator> = LazyLock::new(|| {
    jsonschema::draft202012::new(&SCHEMA).unwrap_or_else(|error| panic!("no schema: {error}"))
});

/// Whether both take `document`, or how they differ where a schema could do better.
pub fn agreement(document: &Value) -> Result<bool, String> {
    let found = read(&serde_json::to_vec(document).unwrap());
    match (VALIDATOR.validate(document), found) {
        (Ok(()), Ok(_)) => Ok(true),
        (Err(_), Err(_)) => Ok(false),
        (Ok(()), Err(error)) if is_beyond_a_schema(&error, document) => Ok(false),
        (Ok(()), Err(error)) => Err(format!("the schema takes what ends in {error}")),
        (Err(error), Ok(_)) => Err(format!("the schema refuses ({error}) what is read")),
    }
}

/// What hangs on two places of a file at once: an id that another has, a wall by its id, values in
/// their order, an input that is set twice, the pictures of all visits.
fn is_beyond_a_schema(error: &FileError, document: &Value) -> bool {
    match error {
        FileError::Value(ValueError::NoSuchWall { .. } | ValueError::TooManyPictures { .. }) => {
            true
        }
        FileError::Value(ValueError::NotSettable { path }) => {
            let pointer = format!("/{}", path.replace(['[', '.'], "/").replace(']', ""));
            let input = document.pointer(&pointer);
            let overrides = document["overrides"].as_array().unwrap().iter();
            overrides.filter(|set| set.get("input") == input).count() > 1
        }
        FileError::Value(ValueError::BadId { path }) => {
            let (list, _) = path.rsplit_once('[').unwrap();
            let pointer = format!("/{}", path.replace(['[', '.'], "/").replace(']', ""));
            let id = document.pointer(&pointer);
            let list = document.pointer(&format!("/{}", list.replace('.', "/")));
            let items = list.and_then(Value::as_array).unwrap().iter();
            items.filter(|item| item.get("id") == id).count() > 1
        }
        FileError::Value(ValueError::OutOfRange { path, value, .. }) => {
            let among = |names: [&str; 2]| names.iter().any(|name| path.ends_with(name));
            let out_of_order = among(["].low", "].high"]) && Field::OVERRIDE.holds(*value);
            let over_most =
                path.ends_with(".concealed_elbows.least") && Field::CONCEALED_ELBOWS.holds(*value);
            out_of_order || over_most
        }
        _ => false,
    }
}

/// The example with every field that it can do without, every duct, elbow and input.
pub fn fullest() -> Value {
    let elbow = |kind: &str| json!({"kind": kind, "centre_line_radius_m": 0.15});
    let riser = json!({"rise_m": -0.6, "elbow": elbow("smooth")});
    let flexible = json!({"short_of_full_stretch_percent": 12.5});
    let ducts = [
        json!("rigid"),
        json!({"semi_rigid": flexible.clone()}),
        json!({"foil": flexible}),
        json!({"flat_rectangular": {"width_m": 0.15, "depth_m": 0.06}}),
    ];
    let kinds = ["smooth", "segmented", "sharp_mitre", "bent_flexible"];
    let mut document = document();
    document["site"]["house_pressure_pa"] = json!(-5.0);
    document["site"]["make_up_free_area_m2"] = json!(0.02);
    document["code"]["maker"] = json!({
        "length_m": 12.0, "deduction_45_m": 0.5, "deduction_90_m": 1.5, "back_pressure_pa": 150.0
    });
    document["code"]["seen_on_site"] = names_in_schema("/$defs/rule_topic").into_iter().collect();
    document["bend_method"] = json!("miller");
    // Each value of the first three can go from end to end of its field without leaving the order.
    let orders = [[0.5, 1e6, 1e6], [0.0, 0.5, 1e6], [0.0, 0.0, 0.5]];
    let orders = orders
        .into_iter()
        .chain(core::iter::repeat([1.0, 1.5, 2.0]));
    let inputs = names_in_schema("/$defs/input");
    let overrides = inputs.into_iter().zip(orders);
    let overrides = overrides.map(|(input, [low, likely, high])| {
        json!({"input": input, "low": low, "likely": likely, "high": high, "note": "as read"})
    });
    document["overrides"] = overrides.collect();
    document["exhaust"]["phase"] = json!("end_of_drying");
    document["exhaust"]["along_run"] = json!("cools");
    document["ceiling_height_m"] = json!(2.6);
    document["obstacles"][0]["kind"] = json!({"framing": {"members": "along_x", "spacing_m": 0.4}});
    document["obstacles"][0]["level"] = json!("ceiling_space");
    document["zones"] = json!([{
        "id": "z1", "kind": "garage", "level": "crawl_space", "temperature_degc": 4.5,
        "x_m": 0.5, "y_m": 0.25, "width_m": 2.0, "depth_m": 1.5
    }]);
    document["picture"] = json!({
        "coding": "png", "data_base64": "iVBORw0KGgo=",
        "x_m": -1.5, "y_m": 0.5, "width_m": 6.5, "depth_m": 4.5
    });
    document["dryer"]["outlet_side"] = json!("left");
    document["dryer"]["stacked"] = json!(true);
    document["run"]["outlet"]["riser"] = riser.clone();
    for (index, (duct, kind)) in ducts.into_iter().zip(kinds).enumerate() {
        let point = &mut document["run"]["points"][index];
        point["duct"] = duct;
        point["elbow"] = elbow(kind);
        point["riser"] = riser.clone();
        point["diameter_m"] = json!(0.125);
        point["estimate"] = json!({"less_m": 0.5, "more_m": 1.0});
        point["concealed_elbows"] = json!({"least": 0, "most": 12});
        point["blockage_free_area"] = json!(0.4);
        point["leak_free_area_m2"] = json!(0.0005);
        point["ends_in_wall_box"] = json!(true);
        point["insulation"] = if index % 2 == 0 {
            json!({"thickness_m": 0.05})
        } else {
            json!({"resistance_m2_k_per_w": 1.05})
        };
        point["metal"] = json!("aluminium");
    }
    document["run"]["termination"]["free_area"] = json!(0.75);
    document["visits"] = json!([visit()]);
    document["handover"] = json!({
        "date": "March", "made_for": "the owner", "made_by": "the installer", "remarks": "as built",
        "stock_lengths_m": [0.6096, 1.524]
    });
    document
}

/// A visit with every kind of entry.
fn visit() -> Value {
    let conditions = json!({
        "heat": false, "lint_screen_clean": true, "drum_empty": true, "flap_held": false,
        "door_open": false, "open_joint": "elbow-after-riser:p1"
    });
    let reading = |at: &str, measured: Value| json!({"reading": {"at": at, "measured": measured, "conditions": conditions.clone()}});
    json!({
        "id": "v1", "date": "March", "note": "as read", "always_heats": true,
        "preparation": names_in_schema("/$defs/preparation"),
        "entries": [
            reading("outlet", json!({"static_pressure": {
                "pressure_pa": 120.5, "against": "room", "resolution_pa": 0.5, "tolerance_pa": 2.5
            }})),
            reading("hood", json!({"velocity": {
                "points_m_per_s": [5.5, 6.5], "pattern": "traverse",
                "resolution_m_per_s": 0.5, "tolerance_m_per_s": 0.25
            }})),
            reading("leg:@outlet", json!({"velocity_pressure": {
                "points_pa": [25.5], "pattern": "centre_line",
                "resolution_pa": 0.5, "tolerance_pa": 2.5
            }})),
            reading("outlet", json!({"temperature": {
                "temperature_degc": 45.5, "resolution_k": 0.5, "tolerance_k": 1.5
            }})),
            {"look": {"at": "elbow:p1", "found": "blocked"}},
            {"done": {"what": "elbow:p1"}},
        ],
        "pictures": [{"taken": "after", "coding": "jpeg", "data_base64": "/9j/4AAQ"}]
    })
}

/// The fullest plan, and it again with each value of what can be only one thing at a time.
pub fn full_documents() -> Vec<Value> {
    let mut changes = vec![("/flow", json!({"kind": "typical_blower"}))];
    for (pointer, in_schema) in [
        ("/bend_method", "/$defs/bend_method"),
        ("/exhaust/phase", "/$defs/phase"),
        ("/exhaust/along_run", "/$defs/exhaust/properties/along_run"),
        ("/run/points/0/metal", "/$defs/point/properties/metal"),
        ("/code/rule_set", "/$defs/code/properties/rule_set"),
        ("/dryer/energy", "/$defs/dryer/properties/energy"),
        ("/dryer/outlet_side", "/$defs/dryer/properties/outlet_side"),
        ("/openings/0/kind", "/$defs/opening/properties/kind"),
        ("/obstacles/0/level", "/$defs/level"),
        ("/zones/0/kind", "/$defs/zone/properties/kind"),
        ("/picture/coding", "/$defs/picture_coding"),
        ("/visits/0/pictures/0/coding", "/$defs/picture_coding"),
        (
            "/visits/0/pictures/0/taken",
            "/$defs/visit_picture/properties/taken",
        ),
        (
            "/obstacles/0/kind/framing/members",
            "/$defs/obstacle_kind/oneOf/4/properties/framing/properties/members",
        ),
        (
            "/visits/0/entries/4/look/found",
            "/$defs/look/properties/found",
        ),
        (
            "/visits/0/entries/0/reading/measured/static_pressure/against",
            "/$defs/against",
        ),
        (
            "/visits/0/entries/1/reading/measured/velocity/pattern",
            "/$defs/pattern",
        ),
        (
            "/run/termination/kind",
            "/$defs/termination/properties/kind",
        ),
    ] {
        let names = names_in_schema(in_schema).into_iter();
        changes.extend(names.map(|name| (pointer, json!(name))));
    }
    let plain = ["closed_area", "cabinet", "beam", "stack"];
    changes.extend(plain.map(|kind| ("/obstacles/0/kind", json!(kind))));
    let changed = changes.into_iter().map(|(pointer, value)| {
        let mut document = fullest();
        *document.pointer_mut(pointer).unwrap() = value;
        document
    });
    core::iter::once(fullest()).chain(changed).collect()
}

/// The names that the schema at `pointer` lets stand: of fields, or of the values of a choice.
pub fn names_in_schema(pointer: &str) -> BTreeSet<String> {
    let schema = SCHEMA.pointer(pointer).unwrap();
    if let Some(properties) = schema.get("properties") {
        return properties.as_object().unwrap().keys().cloned().collect();
    }
    let choices = schema["oneOf"].as_array().unwrap().iter();
    let name = |choice: &Value| {
        let tagged = choice.pointer("/properties/kind/const");
        let named = choice.get("const").or(tagged);
        named
            .unwrap_or_else(|| &choice["required"][0])
            .as_str()
            .unwrap()
            .to_owned()
    };
    choices.map(name).collect()
}

/// The pointer to everything in `value`.
fn places(value: &Value, pointer: &str, found: &mut Vec<String>) {
    found.push(pointer.to_owned());
    match value {
        Value::Object(fields) => {
            for (name, value) in fields {
                places(value, &format!("{pointer}/{name}"), found);
            }
        }
        Value::Array(items) => {
            for (index, value) in items.iter().enumerate() {
                places(value, &format!("{pointer}/{index}"), found);
            }
        }
        _ => {}
    }
}

pub fn all_places(document: &Value) -> Vec<String> {
    let mut found = Vec::new();
    places(document, "", &mut found);
    found
}

/// `document` without the field at `pointer`; none where a list's item stands there.
pub fn without_field(document: &Value, pointer: &str) -> Option<Value> {
    let mut document = document.clone();
    let (parent, name) = pointer.rsplit_once('/')?;
    document
        .pointer_mut(parent)?
        .as_object_mut()?
        .remove(name)?;
    Some(document)
}

/// Every JSON file below `folder`.
fn plan_files(folder: &Path) -> Vec<PathBuf> {
    let paths = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path());
    let (folders, files): (Vec<_>, Vec<_>) = paths.partition(|path| path.is_dir());
    let is_plan = |path: &PathBuf| {
        path.extension()
            .is_some_and(|extension| extension == "json")
    };
    let inside = folders.iter().flat_map(|folder| plan_files(folder));
    files.into_iter().filter(is_plan).chain(inside).collect()
}

#[test]
fn plans_are_taken() {
    let mut tally = Tally::new("plans");
    for plan in [example(), with_stated_airflow(), plan::blank(String::new())] {
        let document = serde_json::from_str(&write(&plan)).unwrap();
        tally.equal(plan.title, &agreement(&document), &Ok(true));
    }
    for document in full_documents() {
        tally.equal("full", &agreement(&document), &Ok(true));
        // What is written of it has every field too, and no other.
        let plan = read(&serde_json::to_vec(&document).unwrap()).unwrap();
        let written = serde_json::from_str(&write(&plan)).unwrap();
        tally.equal("full, written", &agreement(&written), &Ok(true));
    }
    let plans = plan_files(&reference::path(""));
    assert!(plans.len() >= REFERENCE_PLANS, "{} plans", plans.len());
    for path in plans {
        let document = serde_json::from_slice(&std::fs::read(&path).unwrap()).unwrap();
        tally.equal(path.display(), &agreement(&document), &Ok(true));
    }
    tally.finish(REFERENCE_PLANS + 20);
}

fn malformed() -> Vec<Case> {
    [
        plan_file_faults::not_of_this_format(),
        plan_file_faults::other_versions(),
        plan_file_faults::numbers_out_of_range(),
        plan_file_faults::legs_out_of_range(),
        plan_file_faults::optional_numbers_out_of_range(),
        plan_file_faults::bad_ids(),
        plan_file_fields::unknown_fields(),
        plan_file_fields::missing_fields(),
        plan_file_fields::wrong_kinds(),
        plan_file_fields::faults_of_legs(),
        plan_file_fields::faults_of_insulation(),
        plan_file_fields::faults_of_optional_fields(),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// What is malformed is refused by both, but for what hangs on two places at once.
#[test]
fn malformed_files_are_refused_alike() {
    const BEYOND_A_SCHEMA: [&str; 9] = [
        "least elbows over most",
        "one input set twice",
        "more pictures than go into a file, over two visits",
        "low over likely",
        "high below likely",
        "twice",
        "point twice",
        "no such wall",
        "no walls",
    ];
    let mut tally = Tally::new("malformed files");
    let mut beyond = Vec::new();
    for (name, bytes, fault) in malformed() {
        if matches!(fault, Fault::NotText | Fault::NotJson | Fault::TooLarge) {
            // A schema is asked of JSON alone.
            assert!(serde_json::from_slice::<Value>(&bytes).is_err(), "{name}");
            continue;
        }
        let document = serde_json::from_slice(&bytes).unwrap();
        tally.equal(name, &agreement(&document), &Ok(false));
        if VALIDATOR.is_valid(&document) {
            beyond.push(name);
        }
    }
    assert_eq!(beyond, BEYOND_A_SCHEMA);
    tally.finish(113);
}

/// Any one thing in a plan left out, or made something else, is taken or refused by both.
#[test]
fn any_one_change_is_judged_alike() {
    let others = [
        Value::Null,
        json!(true),
        json!(0),
        json!(1),
        json!(-1),
        json!(0.5),
        json!(1e7),
        json!(""),
        json!("x"),
        json!("not an id"),
        json!([]),
        json!([1]),
        json!({}),
        json!({"x": 1}),
    ];
    let mut tally = Tally::new("changes");
    let mut taken = 0;
    let mut judge = |label: String, document: &Value| {
        let judged = agreement(document);
        taken += usize::from(judged == Ok(true));
        tally.holds(format!("{label}: {judged:?}"), judged.is_ok());
    };
    let document = fullest();
    for place in all_places(&document) {
        if let Some(without) = without_field(&document, &place) {
            judge(format!("without {place}"), &without);
        }
        for other in &others {
            let mut changed = document.clone();
            *changed.pointer_mut(&place).unwrap() = other.clone();
            judge(format!("{place} made {other}"), &changed);
        }
        if document.pointer(&place).unwrap().is_object() {
            let mut changed = document.clone();
            changed.pointer_mut(&place).unwrap()["colour"] = json!("blue");
            judge(format!("{place} with another field"), &changed);
        }
    }
    assert!(taken > 300, "only {taken} of the changed plans are plans");
    tally.finish(4000);
}

/// What the reader refuses or takes by the way in which it is written: to a schema 1.0 is the whole
/// number 1, and the reader lets an object stand as the list of its values and a name as an object.
#[test]
fn the_reader_minds_other_things_of_the_writing() {
    let judged = |pointer: &str, value: Value| {
        let mut document = fullest();
        *document.pointer_mut(pointer).unwrap() = value;
        let found = read(&serde_json::to_vec(&document).unwrap());
        (VALIDATOR.is_valid(&document), found.is_ok())
    };
    let mut tally = Tally::new("the writing");
    for pointer in ["/version", "/run/points/0/concealed_elbows/least"] {
        tally.equal(pointer, &judged(pointer, json!(1.0)), &(true, false));
    }
    for (pointer, value) in [
        ("/exhaust", json!([50.0, 0.3])),
        ("/flow", json!(["stated_airflow", 0.05])),
        ("/run/outlet", json!([["smooth", 0.15], null])),
        ("/run/points/1/duct", json!({"rigid": null})),
        ("/run/outlet/elbow/kind", json!({"smooth": null})),
    ] {
        tally.equal(pointer, &judged(pointer, value), &(false, true));
    }
    tally.finish(7);
}
