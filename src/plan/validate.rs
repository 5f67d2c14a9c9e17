//! Checks every value of a plan against its limits.

use super::element::is_id;
use super::{Field, Plan};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use std::fmt::Arguments;

/// Which value of a plan cannot be, and what could.
#[derive(Debug, Clone, PartialEq, thiserror::Error, Serialize, Deserialize)]
#[error("{self:?}")]
pub enum ValueError {
    /// A number lies outside its field.
    OutOfRange {
        /// The path to it in the file.
        path: String,
        /// The number.
        value: f64,
        /// What it may be.
        field: Field,
    },
    /// Two things have one id, or an id is empty or overlong.
    BadId {
        /// The path to the second.
        path: String,
    },
    /// An opening names a wall that is not there.
    NoSuchWall {
        /// The path to the name.
        path: String,
    },
    /// A run needs a point to end at.
    NoPoints,
    /// A picture's text is not Base64.
    NotBase64 {
        /// The path to it.
        path: String,
    },
    /// An input is set that is worked out for each element, or one is set twice.
    NotSettable {
        /// The path to it.
        path: String,
    },
    /// The visits have more pictures together than go into a plan's file.
    TooManyPictures {
        /// The path to those of the visit with the first that is too many.
        path: String,
        /// How many all visits have together.
        count: usize,
        /// How many they may have.
        field: Field,
    },
}

impl ValueError {
    /// The path to the value at fault in the file.
    pub fn path(&self) -> &str {
        match self {
            Self::OutOfRange { path, .. }
            | Self::BadId { path }
            | Self::NoSuchWall { path }
            | Self::NotBase64 { path }
            | Self::NotSettable { path }
            | Self::TooManyPictures { path, .. } => path,
            Self::NoPoints => "run.points",
        }
    }
}

/// Checks every value of `plan` against its [`Field`] and every id, and names the first that fails.
pub fn validate(plan: &Plan) -> Result<(), ValueError> {
    let mut check = Check::default();
    check.site(plan);
    check.room(plan);
    check.run(plan);
    check.overrides(plan);
    check.maker(plan);
    check.visits(plan);
    check.handover(plan);
    check.first.map_or(Ok(()), Err)
}

/// The path to a value in the file, written only where the value fails.
pub(super) type Path<'a> = Arguments<'a>;

#[derive(Default)]
pub(super) struct Check {
    first: Option<ValueError>,
}

impl Check {
    pub(super) fn fail(&mut self, error: ValueError) {
        self.first.get_or_insert(error);
    }

    pub(super) fn value(&mut self, path: Path<'_>, value: f64, field: Field) {
        if !field.holds(value) {
            self.fail(ValueError::OutOfRange {
                path: path.to_string(),
                value,
                field,
            });
        }
    }

    #[allow(clippy::cast_precision_loss, reason = "counts are far below 2^52")]
    pub(super) fn count(&mut self, path: Path<'_>, count: usize, field: Field) {
        self.value(path, count as f64, field);
    }

    pub(super) fn ids<'a>(&mut self, list: &str, ids: impl Iterator<Item = &'a str>) {
        let mut seen = BTreeSet::new();
        for (index, id) in ids.enumerate() {
            if !is_id(id) || !seen.insert(id) {
                self.fail(ValueError::BadId {
                    path: format!("{list}[{index}].id"),
                });
            }
        }
    }

    fn site(&mut self, plan: &Plan) {
        let site = &plan.site;
        self.value(
            format_args!("site.altitude_m"),
            site.altitude.metres(),
            Field::ALTITUDE,
        );
        let outdoors = site.outdoor_temperature.celsius();
        self.value(
            format_args!("site.outdoor_temperature_degc"),
            outdoors,
            Field::OUTDOOR_TEMPERATURE,
        );
        let humidity = site.outdoor_relative_humidity;
        self.value(
            format_args!("site.outdoor_relative_humidity"),
            humidity,
            Field::HUMIDITY,
        );
        let house = site.house_pressure.pascals();
        self.value(
            format_args!("site.house_pressure_pa"),
            house,
            Field::HOUSE_PRESSURE,
        );
        if let Some(area) = site.make_up_free_area_m2 {
            self.value(
                format_args!("site.make_up_free_area_m2"),
                area,
                Field::FREE_AREA,
            );
        }
        let exhaust = &plan.exhaust;
        let temperature = exhaust.temperature.celsius();
        self.value(
            format_args!("exhaust.temperature_degc"),
            temperature,
            Field::EXHAUST_TEMPERATURE,
        );
        self.value(
            format_args!("exhaust.relative_humidity"),
            exhaust.relative_humidity,
            Field::HUMIDITY,
        );
        if let super::Flow::StatedAirflow { airflow } = plan.flow {
            let airflow = airflow.cubic_metres_per_second();
            self.value(
                format_args!("flow.airflow_m3_per_s"),
                airflow,
                Field::AIRFLOW,
            );
        }
    }

    pub(super) fn base64(&mut self, path: Path<'_>, data: &str, field: Field) {
        self.count(path, data.len(), field);
        if !is_base64(data) {
            self.fail(ValueError::NotBase64 {
                path: path.to_string(),
            });
        }
    }

    fn run(&mut self, plan: &Plan) {
        let run = &plan.run;
        self.value(
            format_args!("run.diameter_m"),
            run.diameter.metres(),
            Field::DIAMETER,
        );
        self.fitting(format_args!("run.outlet"), &run.outlet);
        if run.points.is_empty() {
            self.fail(ValueError::NoPoints);
        }
        self.count(format_args!("run.points"), run.points.len(), Field::COUNT);
        self.ids("run.points", run.points.iter().map(|point| &*point.id));
        for (index, point) in run.points.iter().enumerate() {
            let path = format_args!("run.points[{index}]");
            self.value(
                format_args!("{path}.x_m"),
                point.position.x,
                Field::COORDINATE,
            );
            self.value(
                format_args!("{path}.y_m"),
                point.position.y,
                Field::COORDINATE,
            );
            self.leg(path, point);
            self.fitting(path, &point.fitting);
        }
        let free = run.termination.free_area;
        self.value(
            format_args!("run.termination.free_area"),
            free,
            Field::FREE_SHARE,
        );
    }

    fn overrides(&mut self, plan: &Plan) {
        self.count(
            format_args!("overrides"),
            plan.overrides.len(),
            Field::OVERRIDES,
        );
        for (index, set) in plan.overrides.iter().enumerate() {
            let path = format_args!("overrides[{index}]");
            let earlier = &plan.overrides[..index];
            if !set.input.is_settable() || earlier.iter().any(|other| other.input == set.input) {
                self.fail(ValueError::NotSettable {
                    path: format!("{path}.input"),
                });
            }
            self.value(format_args!("{path}.likely"), set.likely, Field::OVERRIDE);
            // The three stand in order.
            let below = Field {
                least: 0.0,
                greatest: set.likely,
            };
            self.value(format_args!("{path}.low"), set.low, below);
            let above = Field {
                least: set.likely,
                ..Field::OVERRIDE
            };
            self.value(format_args!("{path}.high"), set.high, above);
        }
    }

    fn handover(&mut self, plan: &Plan) {
        let handover = &plan.handover;
        let texts = [
            ("date", &handover.date),
            ("made_for", &handover.made_for),
            ("made_by", &handover.made_by),
            ("remarks", &handover.remarks),
        ];
        for (name, text) in texts {
            let path = format_args!("handover.{name}");
            self.count(path, text.chars().count(), Field::HANDOVER_TEXT);
        }
        let stock = &handover.stock_lengths;
        self.count(
            format_args!("handover.stock_lengths_m"),
            stock.len(),
            Field::STOCK_LENGTHS,
        );
        for (index, length) in stock.iter().enumerate() {
            let path = format_args!("handover.stock_lengths_m[{index}]");
            self.value(path, length.metres(), Field::STOCK_LENGTH);
        }
    }

    fn maker(&mut self, plan: &Plan) {
        let maker = &plan.code.maker;
        let lengths = [
            ("length_m", maker.length, Field::MAKER_LENGTH),
            ("deduction_45_m", maker.at_45, Field::MAKER_DEDUCTION),
            ("deduction_90_m", maker.at_90, Field::MAKER_DEDUCTION),
        ];
        for (name, length, field) in lengths {
            if let Some(length) = length {
                self.value(format_args!("code.maker.{name}"), length.metres(), field);
            }
        }
        if let Some(pressure) = maker.back_pressure {
            let path = format_args!("code.maker.back_pressure_pa");
            self.value(path, pressure.pascals(), Field::MAKER_BACK_PRESSURE);
        }
    }

    fn fitting(&mut self, path: Path<'_>, fitting: &super::Fitting) {
        let radius = fitting.elbow.radius.metres();
        self.value(
            format_args!("{path}.elbow.centre_line_radius_m"),
            radius,
            Field::RADIUS,
        );
        if let Some(riser) = &fitting.riser {
            self.value(
                format_args!("{path}.riser.rise_m"),
                riser.rise.metres(),
                Field::RISE,
            );
            let radius = riser.elbow.radius.metres();
            let path = format_args!("{path}.riser.elbow.centre_line_radius_m");
            self.value(path, radius, Field::RADIUS);
        }
    }
}

/// Whether `text` is Base64 with its padding: so nothing else can hide in a picture's address.
fn is_base64(text: &str) -> bool {
    let body = text.trim_end_matches('=');
    let plain = |letter: u8| letter.is_ascii_alphanumeric() || letter == b'+' || letter == b'/';
    text.len().is_multiple_of(4) && text.len() - body.len() <= 2 && body.bytes().all(plain)
}
