//! Checks the values of a plan's visits.

use super::validate::{Check, Path};
use super::{ElementId, Entry, Field, Measured, Mended, Plan, Spot, ValueError, VisitPicture};

impl Check {
    pub(super) fn visits(&mut self, plan: &Plan) {
        self.count(format_args!("visits"), plan.visits.len(), Field::VISITS);
        self.ids("visits", plan.visits.iter().map(|visit| &*visit.id));
        self.pictures_in_all(plan);
        for (index, visit) in plan.visits.iter().enumerate() {
            let path = format_args!("visits[{index}].entries");
            self.count(path, visit.entries.len(), Field::VISITS);
            self.pictures(index, &visit.pictures);
            for (index, entry) in visit.entries.iter().enumerate() {
                let path = format_args!("{path}[{index}]");
                match entry {
                    Entry::Reading(reading) => {
                        let path = format_args!("{path}.reading");
                        self.spot(format_args!("{path}.at"), Some(&reading.at));
                        let open = reading.conditions.open_joint.as_ref();
                        self.spot(format_args!("{path}.conditions.open_joint"), open);
                        self.measured(format_args!("{path}.measured"), &reading.measured);
                    }
                    Entry::Look(look) => self.element(format_args!("{path}.look.at"), &look.at),
                    Entry::Done(done) => {
                        if let Mended::Element(element) = &done.what {
                            self.element(format_args!("{path}.done.what"), element);
                        }
                    }
                }
            }
        }
    }

    /// All visits' pictures go into one file, which has an end.
    fn pictures_in_all(&mut self, plan: &Plan) {
        let field = Field::VISIT_PICTURES;
        let counts = plan.visits.iter().map(|visit| visit.pictures.len());
        let count: usize = counts.clone().sum();
        let mut so_far = 0;
        let first = counts.enumerate().find(|(_, more)| {
            so_far += more;
            !field.holds_count(so_far)
        });
        if let Some((visit, _)) = first {
            self.fail(ValueError::TooManyPictures {
                path: pictures_path(visit),
                count,
                field,
            });
        }
    }

    fn pictures(&mut self, visit: usize, pictures: &[VisitPicture]) {
        let path = pictures_path(visit);
        for (index, picture) in pictures.iter().enumerate() {
            let path = format_args!("{path}[{index}].data_base64");
            self.base64(path, &picture.data_base64, Field::VISIT_PICTURE);
        }
    }

    fn spot(&mut self, path: Path<'_>, spot: Option<&Spot>) {
        if let Some(Spot::Before(element)) = spot {
            self.element(path, element);
        }
    }

    /// A place may be gone from the run, but its name must be one that a file can hold.
    fn element(&mut self, path: Path<'_>, element: &ElementId) {
        if ElementId::from_key(&element.to_string()).as_ref() != Some(element) {
            self.fail(ValueError::BadId {
                path: path.to_string(),
            });
        }
    }

    fn measured(&mut self, path: Path<'_>, measured: &Measured) {
        match measured {
            Measured::StaticPressure {
                pressure,
                resolution,
                tolerance,
                ..
            } => {
                let path = format_args!("{path}.static_pressure");
                let pressure = pressure.pascals();
                self.value(
                    format_args!("{path}.pressure_pa"),
                    pressure,
                    Field::READ_PRESSURE,
                );
                self.errors(path, "pa", resolution.pascals(), tolerance.pascals());
            }
            Measured::Velocity {
                points,
                resolution,
                tolerance,
                ..
            } => {
                let path = format_args!("{path}.velocity");
                let values = points.iter().map(|point| point.metres_per_second());
                let list = format_args!("{path}.points_m_per_s");
                self.points(list, values.collect(), Field::READ_VELOCITY);
                let (resolution, tolerance) = (
                    resolution.metres_per_second(),
                    tolerance.metres_per_second(),
                );
                self.errors(path, "m_per_s", resolution, tolerance);
            }
            Measured::VelocityPressure {
                points,
                resolution,
                tolerance,
                ..
            } => {
                let path = format_args!("{path}.velocity_pressure");
                let values = points.iter().map(|point| point.pascals());
                let list = format_args!("{path}.points_pa");
                self.points(list, values.collect(), Field::READ_PRESSURE);
                self.errors(path, "pa", resolution.pascals(), tolerance.pascals());
            }
            Measured::Temperature {
                temperature,
                resolution,
                tolerance,
            } => {
                let path = format_args!("{path}.temperature");
                let temperature = temperature.celsius();
                self.value(
                    format_args!("{path}.temperature_degc"),
                    temperature,
                    Field::READ_TEMPERATURE,
                );
                self.errors(path, "k", resolution.kelvins(), tolerance.kelvins());
            }
        }
    }

    fn points(&mut self, path: Path<'_>, points: Vec<f64>, field: Field) {
        self.count(path, points.len(), Field::READ_POINTS);
        for (index, point) in points.into_iter().enumerate() {
            self.value(format_args!("{path}[{index}]"), point, field);
        }
    }

    fn errors(&mut self, path: Path<'_>, unit: &str, resolution: f64, tolerance: f64) {
        let mut check = |name: &str, value: f64| {
            self.value(
                format_args!("{path}.{name}_{unit}"),
                value,
                Field::READ_ERROR,
            );
        };
        check("resolution", resolution);
        check("tolerance", tolerance);
    }
}

fn pictures_path(visit: usize) -> String {
    format!("visits[{visit}].pictures")
}
