//! The published JSON Schema of a plan's file by itself: it leaves nothing open and nothing unsaid, has
//! the reader's names, and no part of it is there for nothing.
//! Source of what is right: JSON Schema, draft 2020-12, by the crate `jsonschema`; for the names, what
//! the reader says that it expected.

use crate::schema::{SCHEMA, VALIDATOR, full_documents, names_in_schema, without_field};
use crate::tally::Tally;
use elbowroom::plan::{
    Against, AlongRun, Axis, BendMethod, CodeChoice, ConcealedElbows, Conditions, Done, Dryer,
    Duct, Elbow, ElbowKind, Energy, Entry, Estimate, Exhaust, Fitting, Flow, Found, Handover,
    Input, Insulation, Level, Look, MakerLimits, Measured, Metal, Obstacle, ObstacleKind, Opening,
    OpeningKind, OutletSide, Override, Pattern, Phase, Picture, PictureCoding, Plan, Preparation,
    Reading, Riser, RuleSetId, RuleTopic, Run, RunPoint, Site, Taken, Termination, TerminationKind,
    Visit, VisitPicture, Wall, Zone, ZoneKind, read,
};
use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// The names that the reader would rather have seen than those in `probe`.
fn names_in_reader<T: DeserializeOwned>(probe: Value) -> BTreeSet<String> {
    let error = serde_json::from_value::<T>(probe)
        .err()
        .unwrap()
        .to_string();
    let (_, expected) = error.split_once("expected").unwrap();
    let quoted = expected.split('`').skip(1).step_by(2);
    quoted.map(str::to_owned).collect()
}

/// Every schema inside `schema`, with its pointer and the name of the field that it is of.
fn schemas(schema: &Value, pointer: &str, name: &str, found: &mut Vec<(String, String, Value)>) {
    found.push((pointer.to_owned(), name.to_owned(), schema.clone()));
    for group in ["properties", "$defs"] {
        for (name, schema) in schema
            .get(group)
            .and_then(Value::as_object)
            .into_iter()
            .flatten()
        {
            schemas(schema, &format!("{pointer}/{group}/{name}"), name, found);
        }
    }
    for group in ["oneOf", "anyOf"] {
        let choices = schema
            .get(group)
            .and_then(Value::as_array)
            .into_iter()
            .flatten();
        for (index, schema) in choices.enumerate() {
            schemas(schema, &format!("{pointer}/{group}/{index}"), "", found);
        }
    }
    if let Some(schema) = schema.get("items") {
        schemas(schema, &format!("{pointer}/items"), "", found);
    }
}

fn all_schemas() -> Vec<(String, String, Value)> {
    let mut found = Vec::new();
    schemas(&SCHEMA, "", "", &mut found);
    found
}

#[test]
fn the_schema_is_one_of_its_draft() {
    assert_eq!(
        SCHEMA["$schema"],
        "https://json-schema.org/draft/2020-12/schema"
    );
    jsonschema::draft202012::meta::validate(&SCHEMA).unwrap();
}

/// Every field is described, every object closed, every number bounded and its unit said, in the
/// words of the field's name where that has them; nothing lies outside the file.
#[test]
fn the_schema_leaves_nothing_open() {
    const UNITS: [(&str, &str); 7] = [
        ("_m3_per_s", "m³/s"),
        ("_m2", "m²"),
        ("_m", "m"),
        ("_degc", "°C"),
        ("_deg", "deg"),
        ("_pa", "Pa"),
        ("_percent", "percent"),
    ];
    let mut tally = Tally::new("the schema");
    let mut bounded = 0;
    for (pointer, name, schema) in all_schemas() {
        let text = |key: &str| schema.get(key).and_then(Value::as_str).unwrap_or_default();
        let reference = text("$ref");
        let stands_for_another = pointer.contains("/anyOf/") || pointer.ends_with("/items");
        tally.holds(
            format!("{pointer} is described"),
            stands_for_another || !(text("title").is_empty() || text("description").is_empty()),
        );
        tally.holds(
            format!("{pointer} stays inside"),
            reference.is_empty() || SCHEMA.pointer(reference.trim_start_matches('#')).is_some(),
        );
        let closed = schema.get("additionalProperties") == Some(&json!(false));
        let is_object = text("type") == "object";
        tally.holds(format!("{pointer} is closed"), closed == is_object);
        let one_type = schema.get("type").is_none_or(Value::is_string);
        tally.holds(format!("{pointer} is of one type"), one_type);
        let is_number = ["number", "integer"].contains(&text("type"));
        if is_number {
            bounded += 1;
            let ends = ["minimum", "maximum"].map(|key| schema.get(key).and_then(Value::as_f64));
            tally.holds(format!("{pointer} is bounded"), !ends.contains(&None));
            tally.holds(
                format!("{pointer} has a unit"),
                text("description").contains("Unit: "),
            );
        }
        if let Some((_, unit)) = UNITS.iter().find(|(end, _)| name.ends_with(end)) {
            let says = text("description").ends_with(&format!("Unit: {unit}."));
            tally.holds(format!("{pointer} is in {unit}"), says);
        }
    }
    assert!(bounded > 15, "{bounded} numbers");
    tally.finish(400);
}

/// The fields and choices of the schema are those that the reader knows, neither more nor fewer.
#[test]
#[allow(clippy::too_many_lines, reason = "a line a type of the file")]
fn the_schema_has_the_readers_names() {
    let mut tally = Tally::new("names");
    let mut of_plan = names_in_schema("");
    for head in ["format", "version"] {
        assert!(of_plan.remove(head));
    }
    tally.equal("plan", &of_plan, &names_in_reader::<Plan>(json!({"?": 0})));
    macro_rules! equal {
        ($type:ty, $probe:expr, $($pointer:expr),+) => {
            let expected = names_in_reader::<$type>($probe);
            $(tally.equal($pointer, &names_in_schema($pointer), &expected);)+
        };
    }
    let field = || json!({"?": 0});
    equal!(Site, field(), "/$defs/site");
    equal!(Exhaust, field(), "/$defs/exhaust");
    equal!(CodeChoice, field(), "/$defs/code");
    equal!(MakerLimits, field(), "/$defs/maker_limits");
    equal!(RuleTopic, json!("?"), "/$defs/rule_topic");
    equal!(Override, field(), "/$defs/override");
    equal!(Wall, field(), "/$defs/wall");
    equal!(Opening, field(), "/$defs/opening");
    equal!(Obstacle, field(), "/$defs/obstacle");
    equal!(Zone, field(), "/$defs/zone");
    equal!(Picture, field(), "/$defs/picture");
    equal!(ObstacleKind, json!("?"), "/$defs/obstacle_kind");
    let framing = "/$defs/obstacle_kind/oneOf/4/properties/framing";
    equal!(ObstacleKind, json!({"framing": {"?": 0}}), framing);
    let members = "/$defs/obstacle_kind/oneOf/4/properties/framing/properties/members";
    equal!(Axis, json!("?"), members);
    equal!(Level, json!("?"), "/$defs/level");
    equal!(ZoneKind, json!("?"), "/$defs/zone/properties/kind");
    let coding = "/$defs/picture_coding";
    equal!(PictureCoding, json!("?"), coding);
    let side = "/$defs/dryer/properties/outlet_side";
    equal!(OutletSide, json!("?"), side);
    equal!(Dryer, field(), "/$defs/dryer");
    equal!(Run, field(), "/$defs/run");
    equal!(Fitting, field(), "/$defs/fitting");
    equal!(RunPoint, field(), "/$defs/point");
    equal!(Riser, field(), "/$defs/riser");
    equal!(Elbow, field(), "/$defs/elbow");
    equal!(Estimate, field(), "/$defs/estimate");
    equal!(ConcealedElbows, field(), "/$defs/concealed_elbows");
    equal!(Termination, field(), "/$defs/termination");
    equal!(Visit, field(), "/$defs/visit");
    equal!(VisitPicture, field(), "/$defs/visit_picture");
    equal!(Handover, field(), "/$defs/handover");
    let taken = "/$defs/visit_picture/properties/taken";
    equal!(Taken, json!("?"), taken);
    equal!(Preparation, json!("?"), "/$defs/preparation");
    equal!(Entry, json!("?"), "/$defs/entry");
    equal!(Reading, field(), "/$defs/reading");
    equal!(Conditions, field(), "/$defs/conditions");
    equal!(Measured, json!("?"), "/$defs/measured");
    for (index, kind) in [
        "static_pressure",
        "velocity",
        "velocity_pressure",
        "temperature",
    ]
    .into_iter()
    .enumerate()
    {
        let pointer = format!("/$defs/measured/oneOf/{index}/properties/{kind}");
        equal!(Measured, json!({kind: {"?": 0}}), pointer.as_str());
    }
    equal!(Against, json!("?"), "/$defs/against");
    equal!(Pattern, json!("?"), "/$defs/pattern");
    equal!(Look, field(), "/$defs/look");
    equal!(Found, json!("?"), "/$defs/look/properties/found");
    equal!(Done, field(), "/$defs/done");
    equal!(Flow, json!({"kind": "?"}), "/$defs/flow");
    equal!(Duct, json!("?"), "/$defs/duct");
    for duct in ["semi_rigid", "foil"] {
        equal!(Duct, json!({duct: {"?": 0}}), "/$defs/flexible");
    }
    let flat = "/$defs/duct/oneOf/3/properties/flat_rectangular";
    equal!(Duct, json!({"flat_rectangular": {"?": 0}}), flat);
    equal!(Phase, json!("?"), "/$defs/phase");
    let along = "/$defs/exhaust/properties/along_run";
    equal!(AlongRun, json!("?"), along);
    equal!(Metal, json!("?"), "/$defs/point/properties/metal");
    for (place, one) in ["thickness_m", "resistance_m2_k_per_w"].iter().enumerate() {
        let names = names_in_schema(&format!("/$defs/insulation/oneOf/{place}"));
        tally.equal(*one, &names, &BTreeSet::from([(*one).to_owned()]));
    }
    let expected = names_in_reader::<Insulation>(json!("?"));
    tally.equal(
        "insulation",
        &names_in_schema("/$defs/insulation"),
        &expected,
    );
    equal!(BendMethod, json!("?"), "/$defs/bend_method");
    equal!(Input, json!("?"), "/$defs/input");
    equal!(RuleSetId, json!("?"), "/$defs/code/properties/rule_set");
    equal!(OpeningKind, json!("?"), "/$defs/opening/properties/kind");
    equal!(Energy, json!("?"), "/$defs/dryer/properties/energy");
    equal!(ElbowKind, json!("?"), "/$defs/elbow/properties/kind");
    equal!(
        TerminationKind,
        json!("?"),
        "/$defs/termination/properties/kind"
    );
    tally.finish(44);
}

/// Nothing in the schema is there for nothing: each part of it describes something in a plan that
/// is read. What it says of a field that is left out is what the reader takes.
#[test]
fn every_part_of_the_schema_is_met() {
    let mut met = BTreeSet::new();
    let mut tally = Tally::new("defaults");
    for document in full_documents() {
        for entry in VALIDATOR.evaluate(&document).iter_annotations() {
            met.insert(entry.schema_location.to_owned());
            let Some(default) = entry.annotations.value().get("default") else {
                continue;
            };
            let place = entry.instance_location.as_str();
            let without = without_field(&document, place).unwrap();
            let mut stated = document.clone();
            *stated.pointer_mut(place).unwrap() = default.clone();
            let plan = |document| read(&serde_json::to_vec(document).unwrap());
            tally.equal(place, &plan(&without), &plan(&stated));
        }
    }
    tally.finish(100);
    let titled = all_schemas()
        .into_iter()
        .filter(|(_, _, schema)| schema.get("title").is_some());
    let unmet: Vec<_> = titled
        .map(|(pointer, ..)| pointer)
        .filter(|it| !met.contains(it))
        .collect();
    assert_eq!(unmet, Vec::<String>::new());
}
