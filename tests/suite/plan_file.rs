//! The plan's file: what is written reads back.
//! Source of what is right: the description of version 1 of the format (one JSON object, unit in
//! each field's name, unknown fields refused).

use crate::example_file::{example, with_stated_airflow};
use elbowroom::plan::{self, FileError, read, write};

/// The most that is read, bytes: 4 MiB.
const LARGEST: usize = 4 << 20;

#[test]
fn what_is_written_reads_back_to_the_byte() {
    for plan in [example(), with_stated_airflow(), plan::blank(String::new())] {
        let text = write(&plan);
        let again = read(text.as_bytes()).unwrap();
        assert_eq!(again, plan);
        assert_eq!(write(&again), text);
    }
}

/// A file in the format's own words, laid out otherwise than ours.
#[test]
fn the_described_format_reads() {
    let text = r#"{"version": 1, "format": "elbowroom-plan", "title": "t", "note": "",
        "site": {"altitude_m": 0, "outdoor_temperature_degc": 5.0, "outdoor_relative_humidity": 0.5},
        "exhaust": {"temperature_degc": 50.0, "relative_humidity": 0.3},
        "flow": {"kind": "stated_airflow", "airflow_m3_per_s": 0.05},
        "code": {"rule_set": "irc_2021", "path_through_fittings_counts": true},
        "walls": [{"id": "w1", "from_x_m": 0, "from_y_m": 0, "to_x_m": 3, "to_y_m": 0,
            "thickness_m": 0.14, "outside": true}],
        "openings": [{"id": "o1", "wall": "w1", "kind": "window", "offset_m": 0.5, "width_m": 0.9},
            {"id": "o2", "wall": "w1", "kind": "door", "offset_m": 2.0, "width_m": 0.8}],
        "obstacles": [{"id": "b1", "name": "washer", "x_m": 1.0, "y_m": 0.5, "width_m": 0.7,
            "depth_m": 0.7}],
        "dryer": {"x_m": 1.0, "y_m": 1.0, "width_m": 0.69, "depth_m": 0.74, "turned_deg": 0.0,
            "outlet_height_m": 0.1, "energy": "gas"},
        "run": {"diameter_m": 0.1016,
            "outlet": {"elbow": {"kind": "smooth", "centre_line_radius_m": 0.1016},
                "riser": null},
            "points": [{"id": "p1", "x_m": 1.0, "y_m": 0.0, "duct": "rigid",
                "elbow": {"kind": "segmented", "centre_line_radius_m": 0.1016},
                "riser": {"rise_m": -1.2,
                    "elbow": {"kind": "smooth", "centre_line_radius_m": 0.1016}}}],
            "termination": {"kind": "wall_hood"}}}"#;
    let plan = read(text.as_bytes()).unwrap();
    assert_eq!(plan.walls.len(), 1);
    assert_eq!(plan.openings.len(), 2);
    assert_eq!(read(write(&plan).as_bytes()), Ok(plan));
}

/// Some editors put a byte order mark before the text.
#[test]
fn a_mark_before_the_text_is_let_pass() {
    let text = format!("\u{feff}{}", write(&example()));
    assert_eq!(read(text.as_bytes()), Ok(example()));
}

#[test]
fn the_largest_file_reads_and_one_byte_more_does_not() {
    let mut bytes = write(&example()).into_bytes();
    bytes.resize(LARGEST, b' ');
    assert_eq!(read(&bytes), Ok(example()));
    bytes.push(b' ');
    let error = FileError::TooLarge {
        bytes: LARGEST + 1,
        limit: LARGEST,
    };
    assert_eq!(read(&bytes), Err(error));
}
